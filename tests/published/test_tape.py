"""Conversions against the regulations and Pint, tape readings against worked examples."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest

from solvers.quantities import Area, Length, Number, Quantity, Temperature, Volume, Weight
from solvers.sums import Measure, Sum
from solvers.topics.conversion import CODES, Unit
from tests.working import answer, work

REGISTRY = pint.UnitRegistry()
PINT = {
    "in": "inch",
    "ft": "foot",
    "mm": "millimeter",
    "cm": "centimeter",
    "m": "meter",
    "ft2": "foot**2",
    "in2": "inch**2",
    "m2": "meter**2",
    "in3": "inch**3",
    "ft3": "foot**3",
    "gal": "gallon",
    "L": "liter",
    "lb": "pound",
    "kg": "kilogram",
    "degF": "degF",
    "degC": "degC",
}
GIVEN: list[Quantity] = [
    Length(Fraction("13.5"), "in"),
    Length(Fraction("7.25"), "ft"),
    Length(Fraction(845), "mm"),
    Length(Fraction("2.4"), "m"),
    Area(Fraction(128), "ft2"),
    Area(Fraction("9.29"), "m2"),
    Volume(Fraction(3), "gal"),
    Volume(Fraction("11.4"), "L"),
    Volume(Fraction(54), "in3"),
    Weight(Fraction(10), "lb"),
    Weight(Fraction("4.5"), "kg"),
    Temperature(Fraction(14), "degF"),
    Temperature(Fraction(-40), "degC"),
]


@pytest.mark.parametrize("given", GIVEN, ids=str)
def test_every_unit_beside_pint(given: Quantity) -> None:
    """LIB Pint 0.25, all units of the dimension."""
    for to, code in CODES.items():
        if code in given.units and code in PINT:
            expected = REGISTRY.Quantity(float(given.value), PINT[given.unit]).to(PINT[code]).magnitude
            assert answer("conversion", value=Measure(given), to=to) == pytest.approx(expected, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize(
    ("given", "to", "expected"),
    [
        # published: 16 CFR 500.19, exact
        (Length(Fraction(1), "in"), Unit.CENTIMETRES, 2.54),
        (Length(Fraction(1), "ft"), Unit.CENTIMETRES, 30.48),
        (Area(Fraction(1), "ft2"), Unit.SQUARE_METRES, 0.09290304),
        (Area(Fraction(1), "in2"), Unit.SQUARE_METRES, 0.00064516),
        # published: 16 CFR 500.19, six digits
        (Volume(Fraction(1), "in3"), Unit.LITRES, 0.0163871),
        (Volume(Fraction(1), "gal"), Unit.LITRES, 3.78541),
        (Weight(Fraction(1), "lb"), Unit.KILOGRAMS, 0.453592),
        # published: NIST Handbook 44, Appendix C, exact
        (Volume(Fraction(1), "gal"), Unit.CUBIC_INCHES, 231),
        # common practice of roofing and siding: a square is 100 ft²
        (Area(Fraction(5), "square"), Unit.SQUARE_FEET, 500),
        (Area(Fraction(1), "square"), Unit.SQUARE_METRES, 9.290304),
        # from memory: the two scales meet at −40; water boils at 212 °F
        (Temperature(Fraction(-40), "degF"), Unit.CELSIUS, -40),
        (Temperature(Fraction(100), "degC"), Unit.FAHRENHEIT, 212),
    ],
)
def test_published_factors(given: Quantity, to: Unit, expected: float) -> None:
    assert answer("conversion", value=Measure(given), to=to) == pytest.approx(expected, rel=3e-6)


@pytest.mark.parametrize(
    ("given", "mark"), [("1000 mm", "39 3/8 in"), ("140 mm", "5 1/2 in"), ("19 mm", "3/4 in"), ("10 mm", "3/8 in")]
)
def test_nearest_tape_mark(given: str, mark: str) -> None:
    """Geometry: the nearest sixteenth of an inch."""
    value, unit = given.split()
    worked = work("conversion", value=Measure(Length(Fraction(value), unit)), to=Unit.INCHES)
    assert worked.working is not None
    assert next(line.text for line in worked.working.also_lines if line.name == "on the tape") == mark


def test_navy_rafter_of_sixteen_foot_span() -> None:
    """Published: US Navy Builder manual, NAVEDTRA 14044: 8 × 13.89 in is 111.12 in, 9 ft 3 1/8 in on the tape."""
    said = Sum("×", Number(Fraction(8), "none"), Length(Fraction("13.89"), "in"))
    worked = work("tape arithmetic", sum=said)
    assert worked.working is not None
    assert next(line.text for line in worked.working.also_lines if line.name == "in feet and inches") == "9 ft 3 1/8 in"
    assert answer("tape arithmetic", sum=said) == pytest.approx(111.12)


def test_six_courses_of_the_navy_window() -> None:
    """Published: NAVEDTRA 14044, fig. 4-3: 61 in by 6 courses is 10 1/6 in; 31 in by 3 is 10 1/3 in."""
    for height, courses, exposure in ((61, 6, Fraction(61, 6)), (31, 3, Fraction(31, 3))):
        said = Sum("÷", Length(Fraction(height), "in"), Number(Fraction(courses), "none"))
        assert answer("tape arithmetic", sum=said) == pytest.approx(float(exposure))
