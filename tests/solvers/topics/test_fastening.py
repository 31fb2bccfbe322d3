"""Fasteners and ladders: properties that can fail, and refusals."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Length
from solvers.slots import Layer
from tests.working import also, answer, work

QUICK = settings(max_examples=40, deadline=None)
SIXTEENTHS = st.integers(2, 40).map(lambda n: Length(Fraction(n, 16), "in"))


@given(st.lists(SIXTEENTHS, min_size=1, max_size=4), SIXTEENTHS)
@QUICK
def test_a_fastener_goes_through_and_holds(sizes: list[Length], penetration: Length) -> None:
    layers = tuple(Layer(size, "layer") for size in sizes)
    worked = work("fastener length", layers=layers, penetration=penetration)
    least = answer("fastener length", layers=layers, penetration=penetration)
    assert least == pytest.approx(float(sum(size.value for size in (*sizes, penetration))))
    assert also(worked, "through the layers") + float(penetration.value) == pytest.approx(least)
    if least <= 12:
        assert least <= also(worked, "next stocked length") <= least + 2


def test_metric_fasteners_are_stocked_in_millimetres() -> None:
    layers = tuple(Layer(Length(Fraction(size), "mm"), "layer") for size in (16, 19, 11))
    worked = work("fastener length", layers=layers, penetration="30 mm")
    assert answer("fastener length", layers=layers, penetration="30 mm") == pytest.approx(76)
    assert also(worked, "next stocked length") == pytest.approx(80)


def test_thicknesses_without_names_are_layers_too() -> None:
    layers = (Length(Fraction(3, 4), "in"), Length(Fraction(1, 2), "in"))
    assert answer("fastener length", layers=layers, penetration="5/4 in") == pytest.approx(2.5)


@given(st.integers(36, 480))
@QUICK
def test_the_ladder_foot_is_a_quarter_of_the_height(inches: int) -> None:
    height = Length(Fraction(inches, 12), "ft")
    worked = work("ladder footing", height=height)
    out = answer("ladder footing", height=height)
    assert out == pytest.approx(float(height.to("in").value) / 4)
    assert also(worked, "a quarter of the working length") > out
    assert (
        also(worked, "length for 3 ft past the landing") > also(worked, "working length") > float(height.to("in").value)
    )
    assert worked.working is not None and any("tie it off" in caution for caution in worked.working.cautions)


@pytest.mark.parametrize(
    ("topic", "givens", "says"),
    [
        ("ladder footing", {"height": Length(Fraction(-12), "ft", "minus 12 feet")}, "minus 12 feet"),
        ("ladder footing", {"height": "60 ft"}, "scaffold"),
        ("ladder footing", {"height": "2 ft"}, "how far out"),
        (
            "fastener length",
            {"layers": (Layer(Length(Fraction(1), "in"), "board"),), "penetration": "-1 in"},
            "penetration",
        ),
        (
            "fastener length",
            {"layers": (Layer(Length(Fraction(-5, 8), "in", "minus 5/8"), "siding"),), "penetration": "1 in"},
            "minus 5/8",
        ),
    ],
)
def test_what_can_not_be_right_is_refused(topic: str, givens: dict[str, Any], says: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None and says in worked.refused


def test_penetration_is_asked_for_with_the_common_minimum() -> None:
    asked = work("fastener length", layers=(Layer(Length(Fraction(1), "in"), "board"),)).asks
    assert "penetration" in asked and "1 1/4 in" in asked
    assert "layers" in work("fastener length", penetration="1 in").asks
    assert "height" in work("ladder footing").asks
