"""Quantities: exact values, units that belong to them, conversions held against pint."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import (
    Angle,
    Area,
    Length,
    Pitch,
    Quantity,
    Temperature,
    TemperatureChange,
    UnitError,
    Volume,
    Weight,
)  # fmt: skip

PINT = pint.UnitRegistry()
NAMES = {
    "in": "inch", "ft": "foot", "mm": "millimeter", "cm": "centimeter", "m": "meter", "ft2": "foot**2",
    "in2": "inch**2", "m2": "meter**2",
    "in3": "inch**3", "ft3": "foot**3", "gal": "gallon", "L": "liter", "floz": "fluid_ounce",
    "lb": "pound", "kg": "kilogram", "degF": "degF", "degC": "degC", "dF": "delta_degF", "dC": "delta_degC",
}  # fmt: skip
PAIRS = [
    (kind, a, b)
    for kind in (Length, Area, Volume, Weight, Temperature, TemperatureChange)
    for a in kind.units
    for b in kind.units
    if a in NAMES and b in NAMES
]
VALUES = st.fractions(min_value=Fraction(1, 64), max_value=2000, max_denominator=64)


@pytest.mark.parametrize(("kind", "a", "b"), PAIRS, ids=[f"{a} to {b}" for _, a, b in PAIRS])
def test_conversions_agree_with_pint(kind: type[Quantity], a: str, b: str) -> None:
    for value in (Fraction(1), Fraction(37, 16), Fraction(1000, 3)):
        theirs = PINT.Quantity(float(value), NAMES[a]).to(NAMES[b]).magnitude
        assert float(kind(value, a).to(b).value) == pytest.approx(theirs, rel=1e-12, abs=1e-12)


@settings(max_examples=60, deadline=None, derandomize=True, database=None)
@given(VALUES, st.sampled_from(PAIRS))
def test_there_and_back_is_exact(value: Fraction, pair: tuple[type[Quantity], str, str]) -> None:
    kind, a, b = pair
    assert kind(value, a).to(b).to(a) == kind(value, a)


def test_a_square_of_cladding_is_a_hundred_square_feet() -> None:
    assert Area(Fraction(3), "square").to("ft2").value == 300


def test_a_unit_belongs_to_its_dimension() -> None:
    with pytest.raises(UnitError, match="deg is not a unit of length"):
        Length(Fraction(1), "deg")
    with pytest.raises(UnitError, match="in is not a unit of angle"):
        Angle(Fraction(1), "deg").to("in")
    with pytest.raises(UnitError):
        Temperature(Fraction(1), "degF").to("dF")


def test_a_pitch_said_as_an_angle_is_not_quietly_turned() -> None:
    assert Pitch(Fraction(5), "in12").to("in12").value == 5
    with pytest.raises(UnitError):
        Pitch(Fraction(22), "deg").to("in12")


def test_metric_is_what_was_said_in_metric() -> None:
    assert [unit for unit in Length.units if Length(Fraction(1), unit).metric] == ["mm", "cm", "m"]


def test_words_are_remembered() -> None:
    assert Length(Fraction(12), "ft").said("12 foot").to("in").text == "12 foot"
