"""Movement with heat and moisture against handbooks; each value names its source."""

from __future__ import annotations

from fractions import Fraction

import pytest

from solvers.coefficients import COEFFICIENTS, Material
from solvers.quantities import Percent, TemperatureChange
from solvers.topics.wood import Grain
from solvers.wood_coefficients import MOVEMENT, Species, derived
from tests.working import answer, work


def change(value: int, unit: str) -> TemperatureChange:
    return TemperatureChange(Fraction(value), unit)


def percent(value: int) -> Percent:
    return Percent(Fraction(value), "percent")


@pytest.mark.parametrize(
    ("material", "length", "swing", "least", "most"),
    [
        # rigid PVC 3.0 to 4.0e-5 per °F in cladding practice (from memory), 80e-6 per °C published: 18 ft over 100 °F
        (Material.VINYL, "18 ft", change(100, "dF"), 0.648, 0.964),
        # aluminium 12.8e-6 per °F (from memory) to 24e-6 per °C (published engineering table): 10 ft over 100 °F
        (Material.ALUMINIUM, "10 ft", change(100, "dF"), 0.1530, 0.1600),
        # steel 6.5e-6 per °F (from memory) to 12e-6 per °C (published engineering table): 20 ft over 120 °F
        (Material.STEEL, "20 ft", change(120, "dF"), 0.187, 0.192),
        # copper 9.3 to 9.4e-6 per °F (published table 9.4): 10 ft over 120 °F
        (Material.COPPER, "10 ft", change(120, "dF"), 0.1339, 0.1361),
    ],
)
def test_growth_lies_in_the_published_range(
    material: Material, length: str, swing: TemperatureChange, least: float, most: float
) -> None:
    assert least <= answer("thermal movement", material=material, length=length, change=swing) <= most


def test_glass() -> None:
    """Published engineering tables: plate glass 8 to 9e-6 per °C; 2 m over 40 °C at 9e-6 is 0.72 mm."""
    moved = answer("thermal movement", material=Material.GLASS, length="2 m", change=change(40, "dC"))
    assert moved == pytest.approx(0.72, abs=1e-9)


def test_wood_along_the_grain() -> None:
    """USDA Wood Handbook, ch. 4 (from memory): 3.1 to 4.5e-6 per °C; 4 m over 40 °C is 0.50 to 0.72 mm."""
    moved = answer("thermal movement", material=Material.WOOD, length="4 m", change=change(40, "dC"))
    assert 0.496 <= moved <= 0.72


@pytest.mark.parametrize("material", list(Material))
def test_every_coefficient_lies_in_its_range_and_has_a_source(material: Material) -> None:
    row = COEFFICIENTS[material]
    assert row.least <= row.used <= row.most and row.source
    worked = work("thermal movement", material=material, length="10 ft", change=change(50, "dF"))
    assert worked.working is not None and row.source in worked.working.sources


# USDA Wood Handbook, table 13-5: hardwoods published; softwoods from memory, reproduced from table 4-3.
TABLE_13_5 = [
    (Species.RED_ALDER, ".00151", ".00256"),
    (Species.BEECH, ".00190", ".00431"),
    (Species.CHERRY, ".00126", ".00248"),
    (Species.MAPLE, ".00165", ".00353"),
    (Species.WHITE_OAK, ".00180", ".00365"),
    (Species.RED_OAK, ".00158", ".00369"),
    (Species.WALNUT, ".00190", ".00274"),
    (Species.WESTERN_RED_CEDAR, ".00111", ".00234"),
    (Species.DOUGLAS_FIR, ".00165", ".00267"),
    (Species.INCENSE_CEDAR, ".00112", ".00180"),
    (Species.YELLOW_CEDAR, ".00095", ".00208"),
    (Species.BALSAM_FIR, ".00099", ".00241"),
    (Species.REDWOOD, ".00120", ".00205"),
]


@pytest.mark.parametrize(("species", "radial", "tangential"), TABLE_13_5)
def test_table_13_5(species: Species, radial: str, tangential: str) -> None:
    for grain, coefficient in ((Grain.VERTICAL, radial), (Grain.FLAT, tangential)):
        moved = answer("wood movement", species=species, width="1 in", grain=grain, wet=percent(8), dry=percent(9))
        assert moved == pytest.approx(float(Fraction(coefficient)))


# USDA Wood Handbook, table 4-3 (published): radial and tangential shrinkage, green to oven-dry, percent.
TABLE_4_3 = [
    (Species.WESTERN_RED_CEDAR, "2.4", "5.0", 22),
    (Species.DOUGLAS_FIR, "4.8", "7.6", 30),
    (Species.INCENSE_CEDAR, "3.3", "5.2", 30),
    (Species.YELLOW_CEDAR, "2.8", "6.0", 30),
    (Species.BALSAM_FIR, "2.9", "6.9", 30),
    (Species.WHITE_FIR, "3.3", "7.0", 30),
    (Species.RED_ALDER, "4.4", "7.3", 30),
    (Species.BEECH, "5.5", "11.9", 30),
    (Species.CHERRY, "3.7", "7.1", 30),
    (Species.POPLAR, "4.6", "8.2", 30),
]


@pytest.mark.parametrize(("species", "radial", "tangential", "saturation"), TABLE_4_3)
def test_the_coefficients_follow_from_the_shrinkage(
    species: Species, radial: str, tangential: str, saturation: int
) -> None:
    row = MOVEMENT[species]
    assert float(row.radial) == pytest.approx(float(derived(Fraction(radial), saturation)), abs=2e-5)
    assert float(row.tangential) == pytest.approx(float(derived(Fraction(tangential), saturation)), abs=2e-5)


def test_white_oak_floor_board() -> None:
    """Published (a flooring text citing the Wood Handbook): 5 in flat-sawn white oak, 6 to 9 %, moves 0.055 in."""
    moved = answer("wood movement", species=Species.WHITE_OAK, width="5 in", wet=percent(6), dry=percent(9))
    assert moved == pytest.approx(0.055, abs=5e-4)


def test_white_fir_board() -> None:
    """USDA Wood Handbook, ch. 13 (from memory): 232 mm flat-grain white fir, 8 to 11 %, moves 1.705 mm."""
    moved = answer("wood movement", species=Species.WHITE_FIR, width="232 mm", wet=percent(8), dry=percent(11))
    assert moved == pytest.approx(1.705, abs=5e-4)


def test_cedar_siding() -> None:
    """Geometry from the table: 7 1/4 in western red cedar, 12 to 16 %: 0.068 in flat, 0.032 in vertical grain."""
    givens = {"species": Species.WESTERN_RED_CEDAR, "width": "7 1/4 in", "wet": percent(12), "dry": percent(16)}
    assert answer("wood movement", **givens) == pytest.approx(0.068, abs=5e-4)
    assert answer("wood movement", grain=Grain.VERTICAL, **givens) == pytest.approx(0.032, abs=5e-4)
