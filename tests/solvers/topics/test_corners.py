"""Corners, joints and polygons: the cut pieces are laid together as shapes and must close."""

from __future__ import annotations

from fractions import Fraction
from math import cos, isclose, radians, sin, tan
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon
from shapely.affinity import affine_transform

from solvers.quantities import Angle, Count, Pitch
from solvers.topics.corners import Fascia
from solvers.topics.joints import CutOf
from solvers.topics.polygons import SIDES, Shape
from tests.working import also, answer, work

corners = st.fractions(5, 175, max_denominator=10).map(lambda degrees: Angle(degrees, "deg"))
pitches = st.fractions(Fraction(1, 2), 24, max_denominator=8).map(lambda rise: Pitch(rise, "in12"))
few = settings(max_examples=40, deadline=None)
WIDE = 3.5


def strip(saw: float, long: float = 60.0) -> Polygon:
    """A piece lying along +x from its heel at the origin, cut at the saw setting, its longer edge below."""
    return Polygon([(0, 0), (long, 0), (long, -WIDE), (-WIDE * tan(radians(saw)), -WIDE)])


def turned(piece: Polygon, degrees: float, mirrored: bool = False) -> Polygon:
    c, s = cos(radians(degrees)), sin(radians(degrees))
    flip = -1 if mirrored else 1
    return affine_transform(piece, [c, -s * flip, s, c * flip, 0, 0])


@few
@given(corners)
def test_a_corner_by_its_turn_is_the_same_corner(corner: Angle) -> None:
    turn = Angle(180 - corner.value, "deg")
    three = Count(Fraction(3), "count")
    assert answer("miter for a corner", turn=turn) == answer("miter for a corner", corner=corner)
    several = answer("corner in several pieces", turn=turn, parts=three)
    assert several == answer("corner in several pieces", corner=corner, parts=three)


def test_a_turn_that_is_not_of_the_corner_is_refused_and_neither_is_asked_for() -> None:
    corner, turn = Angle(Fraction(120), "deg"), Angle(Fraction(30), "deg")
    assert "no turn" in str(work("miter for a corner", corner=corner, turn=turn).refused)
    assert work("miter for a corner").asks == "What is the corner angle, in degrees?"


@few
@given(corners)
def test_a_miter_and_its_mirror_close_any_corner(corner: Angle) -> None:
    saw, angle = answer("miter for a corner", corner=corner), float(corner.value)
    long = 20 + 3 * WIDE * max(1.0, tan(radians(saw)))
    first, second = strip(saw, long), turned(strip(saw, long), angle, mirrored=True)
    assert first.intersection(second).area < 1e-6 * first.area
    joint = first.buffer(1e-7).intersection(second.buffer(1e-7))  # they touch all along the cut
    assert joint.length / 2 == pytest.approx(WIDE / cos(radians(saw)), rel=1e-4)


@few
@given(corners)
def test_edge_angle_and_turn_go_with_the_setting(corner: Angle) -> None:
    worked = work("miter for a corner", corner=corner)
    saw = answer("miter for a corner", corner=corner)
    assert isclose(also(worked, "edge angle") + saw, 90, rel_tol=1e-12)
    assert isclose(also(worked, "turn") + float(corner.value), 180, rel_tol=1e-12)


@few
@given(pitches)
def test_joints_on_a_gable_by_the_directions_of_their_pieces(pitch: Pitch) -> None:
    rake = np.array([12.0, float(pitch.value)])
    other, plumb, level = rake * [-1, 1], np.array([0.0, 1.0]), np.array([-1.0, 0.0])

    def between(a: Any, b: Any) -> float:
        return float(np.degrees(np.arccos(a @ b / np.linalg.norm(a) / np.linalg.norm(b))))

    for topic, corner in (
        ("rake return", between(plumb, rake)),
        ("peak joint", between(-rake, -other)),
        ("rake to level joint", between(level, rake)),
    ):
        worked = work(topic, pitch=pitch)
        assert also(worked, "corner") == pytest.approx(corner, abs=1e-6)
        assert answer(topic, pitch=pitch) == pytest.approx((180 - corner) / 2, abs=1e-6)
    assert answer("plumb cut", pitch=pitch) == pytest.approx(90 - between(plumb, rake), abs=1e-6)
    assert answer("end cut along the rake", pitch=pitch) == pytest.approx(180 - between(level, rake), abs=1e-6)


def test_the_return_and_the_other_corner_make_a_right_angle() -> None:
    worked = work("rake return", pitch="5 in12")
    other = also(worked, "the other corner's setting")
    assert answer("rake return", pitch="5 in12") + other == pytest.approx(90)


def test_the_level_cut_answers_when_it_is_asked_for() -> None:
    assert answer("plumb cut", pitch="6 in12", asked=CutOf.LEVEL) + answer(
        "plumb cut", pitch="6 in12"
    ) == pytest.approx(90)


def test_a_fascia_square_to_the_rake_is_a_plain_45() -> None:
    worked = work("rake return", pitch="8 in12", fascia=Fascia.SQUARE)
    assert answer("rake return", pitch="8 in12", fascia=Fascia.SQUARE) == 45 and also(worked, "corner") == 90


def test_end_cut_gives_the_step_when_the_exposure_is_known() -> None:
    worked = work("end cut along the rake", pitch="6 in12", exposure="7 in")
    assert also(worked, "step per course") == pytest.approx(14)
    assert also(worked, "saw setting") + answer("end cut along the rake", pitch="6 in12") == pytest.approx(90)
    metric = work("end cut along the rake", pitch="8 in12", exposure="150 mm")
    assert also(metric, "step per course") == pytest.approx(225)


@few
@given(st.integers(3, 60))
def test_a_ring_of_pieces_comes_back_to_where_it_began(sides: int) -> None:
    saw = answer("polygon", sides=Count(Fraction(sides), "count"))
    at, heading = 0j, 1 + 0j
    for _ in range(sides):
        at += heading
        heading *= complex(cos(radians(2 * saw)), sin(radians(2 * saw)))
    assert abs(at) < 1e-9 and abs(heading - 1) < 1e-9


@few
@given(corners, st.integers(2, 20))
def test_a_corner_in_pieces_turns_from_leg_to_leg(corner: Angle, parts: int) -> None:
    saw = answer("corner in several pieces", corner=corner, parts=Count(Fraction(parts), "count"))
    assert saw * 2 * (parts - 1) == pytest.approx(180 - float(corner.value))
    if parts == 2:
        assert saw == pytest.approx(answer("miter for a corner", corner=corner))


def test_a_shape_by_its_name_is_its_number_of_sides() -> None:
    assert set(Shape) == {*SIDES, Shape.BAY}  # which is no ring, and is asked for its angle
    for shape, sides in SIDES.items():
        assert answer("polygon", shape=shape) == pytest.approx(180 / sides)


def test_a_bay_angle_is_the_turn() -> None:
    assert answer("polygon", bay="30 deg") == 15
    assert also(work("polygon", bay="30 deg"), "corner") == 150


def test_the_drawing_shows_both_pieces_and_the_working_says_how_to_be_safe() -> None:
    worked = work("rake return", pitch="5 in12").working
    assert worked is not None and any("guard" in line for line in worked.cautions)
    figure = worked.figure()
    assert figure is not None
    pieces = [shape for view in figure["views"] for shape in view["shapes"] if shape.get("fill") == "piece"]
    assert len(pieces) == 4  # two where they meet, the same two on the saw
    texts = [shape.get("text", "") for view in figure["views"] for shape in view["shapes"]]
    assert {"67.4°", "56.3°", "33.7°"} <= set(texts)


@pytest.mark.parametrize(
    ("topic", "givens", "word"),
    [
        ("miter for a corner", {"corner": "190 deg"}, "190"),
        ("miter for a corner", {"corner": "180 deg"}, "180"),
        ("miter for a corner", {"corner": "0 deg"}, "0"),
        ("miter for a corner", {"corner": "-45 deg"}, "corner"),
        ("rake return", {"pitch": "0 in12"}, "flat"),
        ("peak joint", {"pitch": "0 in12"}, "flat"),
        ("rake to level joint", {"pitch": "400 in12"}, "400"),
        ("plumb cut", {"pitch": "-6 in12"}, "pitch"),
        ("polygon", {"sides": "2 count"}, "sides"),
        ("polygon", {"sides": "7/2 count"}, "whole"),
        ("corner in several pieces", {"corner": "90 deg", "parts": "1 count"}, "pieces"),
        ("corner in several pieces", {"corner": "200 deg", "parts": "3 count"}, "200"),
    ],
)
def test_refused(topic: str, givens: dict[str, Any], word: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None and word in worked.refused


def test_asks_for_sides() -> None:
    assert "sides" in work("polygon").asks
