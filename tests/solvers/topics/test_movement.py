"""Movement with heat and moisture: properties that can fail, and refusals."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.coefficients import Material
from solvers.quantities import Length, Percent, Temperature, TemperatureChange
from solvers.topics.movement import Swing
from solvers.topics.wood import Grain, Moisture
from solvers.wood_coefficients import Species
from tests.working import also, answer, work

QUICK = settings(max_examples=40, deadline=None)
FEET = st.integers(1, 40).map(lambda n: Length(Fraction(n), "ft"))
MATERIALS = st.sampled_from(Material)


def fahrenheit(value: Any) -> Temperature:
    return Temperature(Fraction(value), "degF")


def swing(value: Any, unit: str = "dF") -> TemperatureChange:
    return TemperatureChange(Fraction(value), unit)


def percent(value: Any) -> Percent:
    return Percent(Fraction(value), "percent")


@given(MATERIALS, FEET, st.integers(1, 150))
@QUICK
def test_what_warms_by_as_much_as_it_cools_comes_back(material: Material, length: Length, degrees: int) -> None:
    up = answer("thermal movement", material=material, length=length, change=swing(degrees))
    down = answer("thermal movement", material=material, length=length, change=swing(degrees), swing=Swing.DOWN)
    assert up == pytest.approx(-down) and up > 0


@given(MATERIALS, FEET, st.integers(1, 150))
@QUICK
def test_a_difference_has_no_offset(material: Material, length: Length, degrees: int) -> None:
    in_fahrenheit = answer("thermal movement", material=material, length=length, change=swing(degrees * 9))
    assert in_fahrenheit == pytest.approx(
        answer("thermal movement", material=material, length=length, change=swing(degrees * 5, "dC"))
    )


@given(MATERIALS, FEET, st.integers(-20, 60), st.integers(61, 140))
@QUICK
def test_two_temperatures_are_their_difference(material: Material, length: Length, start: int, end: int) -> None:
    by_ends = answer("thermal movement", material=material, length=length, start=fahrenheit(start), end=fahrenheit(end))
    assert by_ends == pytest.approx(
        answer("thermal movement", material=material, length=length, change=swing(end - start))
    )


@given(MATERIALS, FEET, st.integers(-30, 20), st.integers(21, 60), st.integers(61, 140))
@QUICK
def test_the_gap_today_and_the_shrinkage_make_the_whole_year(
    material: Material, length: Length, cold: int, now: int, hot: int
) -> None:
    givens: dict[str, Any] = {"material": material, "length": length, "now": fahrenheit(now)}
    worked = work("end gap", hottest=fahrenheit(hot), coldest=fahrenheit(cold), **givens)
    year = answer("thermal movement", material=material, length=length, change=swing(hot - cold))
    assert also(worked, "gap at the coldest") == pytest.approx(year)
    unsorted = answer("end gap", extreme=fahrenheit(cold), opposite=fahrenheit(hot), **givens)
    assert unsorted == pytest.approx(answer("end gap", hottest=fahrenheit(hot), coldest=fahrenheit(cold), **givens))


def test_hung_at_its_hottest_it_needs_no_gap() -> None:
    givens: dict[str, Any] = {"material": Material.VINYL, "length": "12 ft", "now": fahrenheit(110)}
    assert answer("end gap", hottest=fahrenheit(110), coldest=fahrenheit(0), **givens) == 0


@given(st.sampled_from(Species), st.sampled_from(Grain), st.integers(6, 13), st.integers(1, 8))
@QUICK
def test_wood_swells_wet_and_shrinks_dry(species: Species, grain: Grain, wet: int, more: int) -> None:
    givens: dict[str, Any] = {"species": species, "grain": grain, "width": "8 in"}
    swells = answer("wood movement", wet=percent(wet), dry=percent(wet + more), **givens)
    shrinks = answer("wood movement", wet=percent(wet + more), dry=percent(wet), **givens)
    assert swells > 0 and swells == pytest.approx(-shrinks)
    assert shrinks == pytest.approx(answer("wood movement", change=percent(more), way=Moisture.LOSES, **givens))


@pytest.mark.parametrize(("species", "saturation"), [(Species.DOUGLAS_FIR, 30), (Species.WESTERN_RED_CEDAR, 22)])
def test_over_fibre_saturation_nothing_moves(species: Species, saturation: int) -> None:
    soaked = answer("wood movement", species=species, width="6 in", wet=percent(60), dry=percent(12))
    full = answer("wood movement", species=species, width="6 in", wet=percent(saturation), dry=percent(12))
    assert soaked == pytest.approx(full)


def test_flat_grain_moves_more_than_vertical() -> None:
    for species in Species:
        flat, vertical = (
            answer("wood movement", species=species, width="6 in", grain=grain, wet=percent(8), dry=percent(12))
            for grain in (Grain.FLAT, Grain.VERTICAL)
        )
        assert flat > vertical > 0


@pytest.mark.parametrize(
    ("topic", "givens", "says"),
    [
        (
            "thermal movement",
            {"material": Material.VINYL, "length": "12 ft", "start": fahrenheit(60), "end": fahrenheit(-600)},
            "absolute zero",
        ),
        ("thermal movement", {"material": Material.VINYL, "length": "-12 ft", "change": swing(60)}, "length"),
        (
            "end gap",
            {
                "material": Material.VINYL,
                "length": "12 ft",
                "now": fahrenheit(50),
                "hottest": fahrenheit(10),
                "coldest": fahrenheit(40),
            },
            "hottest",
        ),
        (
            "end gap",
            {
                "material": Material.VINYL,
                "length": "12 ft",
                "now": fahrenheit(90),
                "hottest": fahrenheit(80),
                "coldest": fahrenheit(0),
            },
            "hottest",
        ),
        ("wood movement", {"species": Species.BEECH, "width": "6 in", "wet": percent(-3), "dry": percent(12)}, "−3"),
        ("wood movement", {"species": Species.BEECH, "width": "-6 in", "wet": percent(8), "dry": percent(12)}, "width"),
    ],
)
def test_what_can_not_be_right_is_refused(topic: str, givens: dict[str, Any], says: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None and says in worked.refused


@pytest.mark.parametrize(
    ("topic", "givens", "asks"),
    [
        ("thermal movement", {"length": "12 ft", "change": swing(60)}, "material"),
        ("thermal movement", {"material": Material.VINYL, "length": "12 ft"}, "temperature"),
        ("end gap", {"material": Material.VINYL, "length": "12 ft", "hottest": fahrenheit(100)}, "now"),
        (
            "end gap",
            {"material": Material.VINYL, "length": "12 ft", "now": fahrenheit(40), "coldest": fahrenheit(0)},
            "hottest",
        ),
        ("wood movement", {"width": "6 in", "wet": percent(8), "dry": percent(12)}, "species"),
        ("wood movement", {"width": "6 in", "species": Species.BEECH}, "moisture"),
    ],
)
def test_what_is_missing_is_asked_for(topic: str, givens: dict[str, Any], asks: str) -> None:
    assert asks in work(topic, **givens).asks
