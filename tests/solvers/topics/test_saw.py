"""What a saw reaches and how far open a joint stands."""

from __future__ import annotations

from fractions import Fraction
from math import cos, radians, tan
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Angle, Length
from solvers.topics.gaps import Joint
from solvers.topics.saw import Asked, Side
from tests.working import also, answer, work

few = settings(max_examples=40, deadline=None)


def words(name: str, **givens: Any) -> str:
    working = work("can my saw cut it", **givens).working
    assert working is not None
    return next(line.text for line in working.also_lines if line.name == name)


@few
@given(st.fractions(0, 89, max_denominator=10), st.fractions(1, 90, max_denominator=10))
def test_yes_when_the_scale_reaches_it_and_a_way_round_when_not(setting: Fraction, limit: Fraction) -> None:
    givens = {"setting": Angle(setting, "deg"), "limit": Angle(limit, "deg")}
    assert answer("can my saw cut it", **givens) == (setting <= limit)
    dial = answer("can my saw cut it", **givens, asked=Asked.HOW)
    assert dial == pytest.approx(float(setting if setting <= limit else 90 - setting))
    if setting > limit and 90 - setting > limit:
        assert "by hand" in words("how", **givens)


def test_against_a_square_jig_the_blade_leaves_the_edge_angle_of_the_setting() -> None:
    """The piece stands square to the fence, the blade swings from square to the fence: the angle left on the edge."""
    dial = also(work("can my saw cut it", setting="56 deg", limit="52 deg"), "dial against a square jig")
    piece = np.array([0.0, -1.0])
    cut = np.array([np.sin(radians(dial)), -np.cos(radians(dial))])
    assert np.degrees(np.arccos(piece @ cut)) == pytest.approx(90 - 56)


def test_swings_from_the_other_side_when_only_that_reaches() -> None:
    both = {"setting": "55 deg", "left": "50 deg", "right": "60 deg"}
    assert answer("can my saw cut it", **both) == 1
    assert "other side: right to 55°" in words("how", **both, side=Side.LEFT)
    assert "face down" in words("how", **both)
    assert words("how", **both, side=Side.RIGHT) == "swing right to 55°"


def test_a_bevel_must_be_on_its_scale_too() -> None:
    compound = {"setting": "31.6 deg", "limit": "50 deg", "bevel": "33.9 deg"}
    assert answer("can my saw cut it", **compound, bevel_limit="45 deg") == 1
    assert answer("can my saw cut it", **compound, bevel_limit="30 deg") == 0
    assert "sprung against the fence" in words("tilt", **compound, bevel_limit="30 deg")
    assert "end for end" in words("tilt", **compound, bevel_limit="45 deg", tilt=Side.LEFT)
    assert work("can my saw cut it", **compound).wanted == "bevel_limit"


def test_it_asks_for_the_saw_and_declines_what_is_no_cut() -> None:
    asked = work("can my saw cut it", setting="56 deg")
    assert asked.wanted == "limit" and "saw" in asked.asks
    assert work("can my saw cut it", setting="56 deg", left="50 deg").wanted == "right"
    assert "95" in work("can my saw cut it", setting="95 deg", limit="60 deg").refused


@few
@given(
    st.fractions(40, 170, max_denominator=10),
    st.fractions(Fraction(-6), 6, max_denominator=10),
    st.fractions(1, 12, max_denominator=16),
)
def test_gap_between_two_pieces_laid_on_the_real_corner(made: Fraction, error: Fraction, wide: Fraction) -> None:
    """Both cuts laid out from where they touch; the gap is what a rule reads between their far ends."""
    corner = made + error
    saw = (180 - made) / 2
    line = float(wide) / cos(radians(float(saw)))
    first = float(made) / 2  # direction of the first cut from its edge, at the touching end
    second = float(corner) - float(made) / 2
    ends = [line * np.array([np.cos(radians(a)), np.sin(radians(a))]) for a in (first, second)]
    givens = {"corner": Angle(corner, "deg"), "face": Length(wide, "in"), "setting": Angle(saw, "deg")}
    if saw >= 70:
        return
    assert answer("how far open", **givens) == pytest.approx(float(np.linalg.norm(ends[0] - ends[1])), abs=1e-9)


def test_where_it_opens_and_whether_it_matters() -> None:
    def said(name: str, **givens: Any) -> str:
        working = work("how far open", **givens).working
        assert working is not None
        return next(line.text for line in working.also_lines if line.name == name)

    wide = {"corner": "92 deg", "setting": "45 deg", "face": "3 1/2 in"}
    assert said("opens at", **wide) == "the inside edge" and said("matters", **wide).startswith("yes")
    assert said("opens at", **{**wide, "corner": "88 deg"}) == "the outside edge"
    assert said("opens at", **{**wide, "corner": "90 deg"}).startswith("nowhere")
    assert said("matters", **{**wide, "corner": "90.1 deg"}).startswith("hardly")


def test_the_cut_can_be_told_by_its_corner_or_by_both_settings() -> None:
    told = answer("how far open", corner="88 deg", face="5 1/2 in", cut_for="90 deg")
    assert told == pytest.approx(answer("how far open", corner="88 deg", face="5 1/2 in", setting="45 deg"))
    assert told == pytest.approx(answer("how far open", corner="88 deg", face="5 1/2 in", setting="90 deg"))
    assert told == pytest.approx(
        answer("how far open", corner="88 deg", face="5 1/2 in", setting="44 deg", other="46 deg")
    )


def test_half_a_degree_is_told_beside_it() -> None:
    worked = work("how far open", corner="90 deg", face="3 1/2 in", setting="45 deg")
    near = 2 * 3.5 / cos(radians(45)) * tan(radians(0.25))
    assert also(worked, "half a degree opens") == pytest.approx(near, rel=1e-4)
    assert answer("how far open", corner="90 deg", face="3 1/2 in", setting="45 deg") == 0


@pytest.mark.parametrize("joint", list(Joint))
def test_a_rounded_pitch_opens_what_its_corners_say(joint: Joint) -> None:
    topic, givens = joint.value, {"pitch": "5 1/4 in12", "cut_pitch": "5 in12", "face": "3 1/2 in"}
    real, cut = work(topic, pitch="5 1/4 in12"), answer(topic, pitch="5 in12")
    corner = Fraction(also(real, "corner")).limit_denominator(10**9)
    told = answer("how far open", corner=Angle(corner, "deg"), face="3 1/2 in", setting=exact_angle(cut))
    assert answer("rounded pitch", **givens, joint=joint) == pytest.approx(told, abs=1e-6)


def exact_angle(degrees: float) -> Angle:
    return Angle(Fraction(degrees).limit_denominator(10**9), "deg")


def test_half_a_degree_off_is_told_without_a_corner() -> None:
    off = answer("angle off", face="3 1/2 in", setting="45 deg", error="1/2 deg")
    assert off == pytest.approx(answer("how far open", face="3 1/2 in", setting="45 deg", corner="90.5 deg"))
    assert work("how far open", face="3 1/2 in", setting="45 deg").wanted == "corner"


@pytest.mark.parametrize(
    ("givens", "word"),
    [
        ({"corner": "190 deg", "setting": "45 deg", "face": "3 in"}, "190"),
        ({"corner": "92 deg", "setting": "45 deg", "face": "-3 in"}, "face"),
    ],
)
def test_refused(givens: dict[str, str], word: str) -> None:
    worked = work("how far open", **givens)
    assert worked.working is None and word in worked.refused
