"""Triangles and arcs: what must hold for any of them, and what must be refused."""

from __future__ import annotations

from fractions import Fraction
from math import atan2, degrees, hypot, radians, tan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.common import From
from solvers.quantities import Angle, Length
from solvers.topics.right_triangle import Part
from tests.working import also, answer, work

SIXTEENTHS = st.integers(16, 16 * 400)  # 1 in to 400 in


def inches(sixteenths: int) -> str:
    return f"{sixteenths}/16 in"


def lengths(*feet: int) -> tuple[Length, ...]:
    return tuple(Length(Fraction(value), "ft") for value in feet)


@settings(max_examples=40, deadline=None)
@given(SIXTEENTHS, SIXTEENTHS)
def test_the_true_diagonal_is_not_out(side: int, other: int) -> None:
    diagonal = answer("square check", side=inches(side), other_side=inches(other))
    assert diagonal == pytest.approx(hypot(side, other) / 16, rel=1e-12)
    out = answer("out of square", side=inches(side), other_side=inches(other), diagonal=f"{Fraction(diagonal)} in")
    assert abs(out) < 1e-9


@settings(max_examples=30, deadline=None)
@given(SIXTEENTHS, SIXTEENTHS)
def test_three_four_five_fits_and_no_bigger_one_does(side: int, other: int) -> None:
    worked = work("square check", side=inches(side), other_side=inches(other))
    short, long = sorted((side / 16, other / 16))
    legs = [line for line in worked.working.also_lines if line.name.startswith("3-4-5")] if worked.working else []
    if short >= 36 and long >= 48:
        parts = also(worked, "3-4-5, short leg") / 3
        assert 3 * parts <= short and 4 * parts <= long
        assert parts % 12 == 0
        assert 3 * (parts + 12) > short or 4 * (parts + 12) > long
    assert len(legs) == 3


@settings(max_examples=30, deadline=None)
@given(SIXTEENTHS, SIXTEENTHS)
def test_any_two_parts_give_the_same_triangle(rise: int, run: int) -> None:
    slope, angle = hypot(rise, run) / 16, degrees(atan2(rise, run))
    by_angle = f"{Fraction(angle)} deg"
    by_slope = f"{Fraction(slope)} in"
    assert answer("right triangle", rise=inches(rise), run=inches(run)) == pytest.approx(slope)
    assert answer("right triangle", rise=inches(rise), angle=by_angle) == pytest.approx(slope)
    assert answer("right triangle", run=inches(run), angle=by_angle) == pytest.approx(slope)
    assert answer("right triangle", slope=by_slope, angle=by_angle, wanted=Part.RUN) == pytest.approx(run / 16)
    assert answer("right triangle", slope=by_slope, angle=by_angle) == pytest.approx(rise / 16)


@settings(max_examples=30, deadline=None)
@given(SIXTEENTHS, st.fractions(Fraction(1, 50), Fraction(1, 2)))
def test_an_arc_from_its_rise_and_from_its_radius_are_one(width: int, share: Fraction) -> None:
    rise = Fraction(width, 16) * share
    radius = answer("arc", width=inches(width), rise=f"{rise} in")
    again = (
        answer("arc", width=inches(width), radius=f"{Fraction(radius)} in")
        if share < Fraction(49, 100)
        else float(rise)
    )
    assert again == pytest.approx(float(rise), rel=1e-6)
    worked = work("arc", width=inches(width), rise=f"{rise} in")
    assert worked.working
    marks = [float(mark.value or 0) for mark in worked.working.marks]
    assert marks == pytest.approx(marks[::-1])
    assert max(marks) == pytest.approx(float(rise))
    assert also(worked, "arc length") > width / 16


@pytest.mark.parametrize(
    ("topic", "givens", "named"),
    [
        ("square check", {"side": "12 ft", "other_side": "-5 ft"}, "other side"),
        ("out of square", {"side": "3 ft", "other_side": "4 ft", "diagonal": "8 ft"}, "diagonal of 96 in"),
        ("out of square", {"side": "3 ft", "other_side": "10 ft", "diagonal": "6 ft"}, "too short"),
        ("right triangle", {"lengths": lengths(3, 4, 6)}, "60 in"),
        ("right triangle", {"lengths": lengths(3, 4, 5, 6)}, "three sides"),
        ("right triangle", {"rise": "3 ft", "run": "4 ft", "slope": "6 ft"}, "right angle"),
        ("right triangle", {"run": "12 ft", "slope": "10 ft"}, "longest side"),
        ("right triangle", {"run": "10 ft", "angle": "95 deg"}, "95"),
        ("right triangle", {"run": "10 ft", "rise": "10 ft", "angle": "40 deg"}, "45"),
        ("arc", {"width": "36 in", "rise": "0 in"}, "rise"),
        ("arc", {"width": "48 in", "radius": "20 in"}, "radius of 20 in"),
        ("arc", {"width": "48 in", "rise": "30 in"}, "rise of 30 in"),
        ("arc", {"width": "72 in", "rise": "12 in", "radius": "40 in"}, "60 in"),
    ],
)
def test_refusals_name_what_is_wrong(topic: str, givens: dict[str, object], named: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None
    assert named in worked.refused


def test_three_sides_that_agree_give_the_angle() -> None:
    assert answer("right triangle", lengths=lengths(3, 4, 5)) == pytest.approx(degrees(atan2(3, 4)))


@pytest.mark.parametrize(
    ("topic", "givens", "word"),
    [
        ("square check", {"side": "12 ft"}, "side"),
        ("out of square", {"side": "12 ft", "other_side": "16 ft"}, "diagonal"),
        ("right triangle", {"rise": "5 ft"}, "run"),
        ("right triangle", {}, "rise"),
        ("arc", {"width": "36 in"}, "rise"),
    ],
)
def test_a_missing_piece_is_asked_for(topic: str, givens: dict[str, object], word: str) -> None:
    assert word in work(topic, **givens).asks


def test_a_long_diagonal_opens_the_corners_it_faces() -> None:
    long = work("out of square", side="12 ft", other_side="16 ft", diagonal="241 in")
    short = work("out of square", side="12 ft", other_side="16 ft", diagonal="239 in")
    assert also(long, "corner facing the measured diagonal") > 90 > also(short, "corner facing the measured diagonal")
    assert long.working and short.working
    words = [
        next(x.text for x in w.working.also_lines if x.name == "which corner opens") for w in (long, short) if w.working
    ]
    assert words[0].startswith("the two corners facing")
    assert words[1].startswith("the two corners the measured diagonal runs into")


def test_the_angle_at_the_top_is_the_other_one() -> None:
    """35° from plumb: the run is the rise times its tangent (geometry)."""
    rise, angle = Length(Fraction(4), "ft"), Angle(Fraction(35), "deg")
    plumb = answer("right triangle", rise=rise, angle=angle, measured=From.PLUMB, wanted=Part.RUN)
    assert plumb == pytest.approx(48 * tan(radians(35)))
    level = answer("right triangle", rise=rise, angle=Angle(Fraction(55), "deg"), wanted=Part.RUN)
    assert plumb == pytest.approx(level)
