"""How much materials grow with heat: linear coefficients with their ranges and where they come from.

The value used is a middling one of the published range; the range goes into the answer, because the make decides.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from solvers.printing import decimal
from solvers.slots import Choice

TABLES = "published general engineering tables of linear thermal expansion"


class Material(Choice):
    """What the piece is made of."""

    VINYL = "vinyl"
    PVC = "PVC trim"
    ALUMINIUM = "aluminium"
    STEEL = "steel"
    STAINLESS = "stainless steel"
    COPPER = "copper"
    ZINC = "zinc"
    LEAD = "lead"
    GLASS = "glass"
    WOOD = "wood, along the grain"
    FIBRE_CEMENT = "fibre cement"
    POLYCARBONATE = "polycarbonate"


@dataclass(frozen=True, slots=True)
class Coefficient:
    """Growth per unit of length and kelvin: the value used, the published range, and the source."""

    used: Fraction
    least: Fraction
    most: Fraction
    source: str


def _millionths(used: str, least: str, most: str, source: str) -> Coefficient:
    return Coefficient(Fraction(used) / 10**6, Fraction(least) / 10**6, Fraction(most) / 10**6, source)


_RIGID_PVC = _millionths(
    "67",
    "54",
    "80",
    "rigid PVC: 54 to 72 millionths per °C in cladding practice (3 to 4 per 100,000 and °F, from memory), 80 in "
    f"{TABLES}; the middle, 67, is used, and the make decides",
)
COEFFICIENTS: dict[Material, Coefficient] = {
    Material.VINYL: _RIGID_PVC,
    Material.PVC: _RIGID_PVC,
    Material.ALUMINIUM: _millionths("23", "23", "24", f"aluminium alloy 23, pure 24 millionths per °C: {TABLES}"),
    Material.STEEL: _millionths(
        "12", "11", "12.5", f"carbon steel 12 millionths per °C: {TABLES}; 11 to 12.5 by grade (from memory)"
    ),
    Material.STAINLESS: _millionths("17", "16", "17.3", f"austenitic stainless steel 17 millionths per °C: {TABLES}"),
    Material.COPPER: _millionths(
        "17", "16.5", "17", f"copper 17 millionths per °C: {TABLES}; 16.5 pure at 20 °C (CRC Handbook, from memory)"
    ),
    Material.ZINC: _millionths(
        "22", "22", "30", f"rolled zinc alloy 22 millionths per °C (from memory); pure zinc 30: {TABLES}"
    ),
    Material.LEAD: _millionths("29", "28", "29", f"lead 29 millionths per °C: {TABLES}"),
    Material.GLASS: _millionths("9", "8", "9", f"plate glass 9 millionths per °C: {TABLES}; 8 in another"),
    Material.WOOD: _millionths(
        "3.8", "3.1", "4.5", "along the grain 3.1 to 4.5 millionths per °C: USDA Wood Handbook, chapter 4 (from memory)"
    ),
    Material.POLYCARBONATE: _millionths(
        "67", "65", "70", f"polycarbonate sheet 65 to 70 millionths per °C: {TABLES} (from memory)"
    ),
    Material.FIBRE_CEMENT: _millionths(
        "10", "8", "12", "fibre cement 8 to 12 millionths per °C (from memory, a weak figure)"
    ),
}


def own(used: Fraction) -> Coefficient:
    """A maker's own figure, per kelvin, as the person gave it."""
    return Coefficient(used, used, used, "the coefficient you gave; the make decides, so its own sheet is the best there is")


def beyond(used: Fraction, material: Material | None) -> str:
    """A caution where a figure given for a material is outside what is published of it; "" where it isn't."""
    if material is None or COEFFICIENTS[material].least <= used <= COEFFICIENTS[material].most:
        return ""
    least, most = (decimal(each * 10**6, 1) for each in (COEFFICIENTS[material].least, COEFFICIENTS[material].most))
    return (
        f"{decimal(used * 10**6, 1)} millionths per °C is outside the {least} to {most} published for {material.value}: "
        "see whether it was per °C or per °F."
    )
