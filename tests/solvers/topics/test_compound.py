"""Compound cuts in three dimensions: both boards cut on the saw as told, stood up, and brought together."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Angle, Count
from solvers.topics.compound import LEFT_TILT, From
from tests.solvers.boards import Vector, angle_between, blade, cut_face, stood_up, turned
from tests.working import also, answer, work

springs = st.fractions(2, 88, max_denominator=10)
corners = st.fractions(20, 170, max_denominator=10)
few = settings(max_examples=40, deadline=None)


def settings_of(spring: Fraction, corner: Fraction) -> tuple[float, float]:
    givens = {"spring": Angle(spring, "deg"), "corner": Angle(corner, "deg")}
    worked = work("compound cut", **givens)
    return answer("compound cut", **givens), also(worked, "bevel")


@few
@given(springs, corners)
def test_both_pieces_meet_face_to_face_at_the_corner(spring: Fraction, corner: Fraction) -> None:
    """Cut faces coincide edge by edge, the pieces make the corner, their faces the dihedral that is told."""
    miter, bevel = settings_of(spring, corner)
    s, turn = float(spring), 180 - float(corner)
    left = stood_up(cut_face(blade(miter, bevel)), s)
    right = turned("z", -turn).apply(stood_up(cut_face(blade(-miter, -bevel)), s))
    assert np.abs(left - right).max() < 1e-9 * max(1.0, np.abs(left).max())
    along = np.array([1.0, 0.0, 0.0])
    assert angle_between(-along, turned("z", -turn).apply(along)) == pytest.approx(float(corner), abs=1e-6)
    face = stood_up(np.array([[0.0, 0.0, 1.0]]), s)[0]
    between = angle_between(face, turned("z", -turn).apply(face))
    told = also(
        work("compound cut", spring=Angle(spring, "deg"), corner=Angle(corner, "deg")), "angle between the faces"
    )
    assert told == pytest.approx(180 - between, abs=1e-6)


@few
@given(springs, corners)
def test_a_wrong_setting_leaves_the_joint_open(spring: Fraction, corner: Fraction) -> None:
    """The check can fail: two degrees more miter, and the cut faces part by what that is at the edge."""
    miter, bevel = settings_of(spring, corner)
    turn = 180 - float(corner)
    left = stood_up(cut_face(blade(miter + 2, bevel)), float(spring))
    right = turned("z", -turn).apply(stood_up(cut_face(blade(-miter - 2, -bevel)), float(spring)))
    assert np.abs(left - right).max() > 0.01


@few
@given(springs, corners, st.sampled_from(sorted(LEFT_TILT)))
def test_the_way_a_piece_lies_on_a_left_tilting_saw(spring: Fraction, corner: Fraction, which: str) -> None:
    """Each line of the table cuts the plane that halves its corner, and keeps the right side of it."""
    miter, bevel = settings_of(spring, corner)
    how, inside, left_piece = LEFT_TILT[which], which.startswith("inside"), "left piece" in which
    normal = blade(miter if "handle right" in how else -miter, bevel)
    outward = normal if "keep what lies left" in how else -normal  # from the kept piece into the waste
    if "wall edge to the fence" in how:
        outward = outward * [-1, -1, 1]  # the board lies turned end for end, face still up
    stood = stood_up(outward[np.newaxis], float(spring))[0]
    assert np.abs(stood - joint_plane(float(corner), inside, left_piece)).max() < 1e-9


def joint_plane(corner: float, inside: bool, left_piece: bool) -> Vector:
    """Outward normal, at its corner end, of a piece on a wall along x with the room toward −y: it halves the corner."""
    half = np.radians(corner / 2)
    toward_room = -1 if inside else 1
    return np.array([np.sin(half) * (1 if left_piece else -1), np.cos(half) * toward_room, 0.0])


@few
@given(springs, st.integers(3, 30))
def test_a_hopper_is_a_ring_of_sprung_corners(lean: Fraction, sides: int) -> None:
    ring = {"spring": Angle(lean, "deg"), "sides": Count(Fraction(sides), "count")}
    corner = Angle(180 - Fraction(360, sides), "deg")
    assert answer("compound cut", **ring) == pytest.approx(answer("compound cut", spring=ring["spring"], corner=corner))


def test_from_the_ceiling_is_the_other_part_of_a_right_angle() -> None:
    ceiling = answer("compound cut", spring="52 deg", corner="90 deg", measured=From.CEILING)
    assert ceiling == pytest.approx(answer("compound cut", spring="38 deg", corner="90 deg"))


def test_flat_and_upright_are_the_two_plain_cuts() -> None:
    """Nearly flat on the wall it is all bevel, nearly flat on the ceiling all miter."""
    assert settings_of(Fraction(1, 1000), Fraction(90)) == pytest.approx((0, 45), abs=0.01)
    assert settings_of(Fraction(89999, 1000), Fraction(90)) == pytest.approx((45, 0), abs=0.01)


@pytest.mark.parametrize(
    ("givens", "word"),
    [
        ({"spring": "38 deg", "corner": "190 deg"}, "190"),
        ({"spring": "95 deg", "corner": "90 deg"}, "spring"),
        ({"spring": "0 deg", "corner": "90 deg"}, "spring"),
        ({"spring": "38 deg", "sides": "2 count"}, "sides"),
    ],
)
def test_refused(givens: dict[str, str], word: str) -> None:
    worked = work("compound cut", **givens)
    assert worked.working is None and word in worked.refused


def test_asks_for_the_corner_and_the_spring() -> None:
    assert work("compound cut", spring="38 deg").wanted == "corner"
    assert work("compound cut", corner="90 deg").wanted == "spring"
