"""Corners in a ring or in several pieces: polygons, boxes, bays, and a corner broken into more than two pieces."""

from __future__ import annotations

from fractions import Fraction
from math import cos, pi, sin
from typing import Annotated

from solvers.common import Corner, Turn
from solvers.errors import NeedMore
from solvers.exact import Term, real
from solvers.exact import cos as cosine
from solvers.exact import sin as sine
from solvers.joint import corner_and_turn, shared_joint
from solvers.quantities import Angle, Count
from solvers.registry import topic
from solvers.saw_drawing import meeting
from solvers.slots import Choice, Slot
from solvers.working import Working

Sides = Annotated[
    Count, Slot("How many sides?", least=3, most=60, name="number of sides", usual=(3, 24), instead=("bay", "shape"))
]
Bay = Annotated[
    Angle, Slot("What is the bay angle, in degrees?", above=0, below=180, name="bay angle", instead=("sides", "shape"))
]
Parts = Annotated[Count, Slot("How many pieces?", cued=True, least=2, most=1000, name="number of pieces", usual=(2, 12))]
MOST_DRAWN = 24  # sides; past it a ring reads as a circle


class Shape(Choice):
    """A ring by its name."""

    TRIANGLE = "triangle"
    SQUARE = "square"
    PENTAGON = "pentagon"
    HEXAGON = "hexagon"
    HEPTAGON = "heptagon"
    OCTAGON = "octagon"
    NONAGON = "nonagon"
    DECAGON = "decagon"
    DODECAGON = "dodecagon"
    BAY = "bay"  # no ring: how many sides it has does not tell its angles


Ring = Annotated[Shape, Slot("What shape is the ring?", name="shape", instead=("sides", "bay"))]
SIDES = dict(zip(list(Shape)[:-1], (3, 4, 5, 6, 7, 8, 9, 10, 12), strict=True))


@topic("polygon", "corners")
def polygon(work: Working, sides: Sides | None = None, bay: Bay | None = None, shape: Ring | None = None) -> None:
    """Saw setting for each joint of a regular ring of n sides, or of a bay by its angle, degrees.

    A bay angle is the turn at each joint. Refuses fewer than three sides. Source: geometry.
    """
    if shape is Shape.BAY and bay is None:
        raise NeedMore("bay")
    if sides is None and shape is not None and shape is not Shape.BAY:
        sides = work.term(f"sides of {shape.value}", SIDES[shape], "count")
    if bay is not None:
        turn = work.step("τ", bay, "a bay angle is how far the front turns at the joint")
    elif sides is not None:
        turn = work.step("τ", work.term("full turn", 360, "deg") / sides, "once round, shared by the joints")
    else:
        raise NeedMore("sides")
    _, edge = shared_joint(work, turn)
    corner = work.step("γ", 180 - turn, "the corner inside the material")
    work.also("corner", corner)
    work.also("turn", turn)
    if bay is None and sides is not None:
        work.check("the corners of a ring of n sides make n − 2 half turns", sides * corner, "=", 180 * (sides - 2))
        _ring(work, sides, corner)
    else:
        work.check("two edge angles make the corner", 2 * edge, "=", corner)
        meeting(work, "plan", 180, corner, edge, ("wall", "bay"))


def _ring(work: Working, sides: Term, corner: Term) -> None:
    """The ring in plan with its joints, one corner marked."""
    view = work.view("plan")
    n = min(int(work.value(sides)), MOST_DRAWN)
    start = -pi / 2 - pi / n  # a side lies level at the bottom
    outer = [(4 * cos(start + 2 * pi * i / n), 4 * sin(start + 2 * pi * i / n)) for i in range(n)]
    inner = [(0.8 * x, 0.8 * y) for x, y in outer]
    view.polygon(outer, "piece")
    view.polygon(inner, "none")
    for a, b in zip(inner, outer, strict=True):
        view.line(a, b, "cut")
    if n == work.value(sides):
        view.angle(inner[0], 1, 0, corner.value, work.text(corner))
    view.label((0, 0), f"{work.text(sides)} sides")


@topic("corner in several pieces", "corners")
def corner_in_several_pieces(
    work: Working, parts: Parts, corner: Corner | None = None, turn: Turn | None = None
) -> None:  # fmt: skip
    """Saw setting per joint where a corner is gone round in n pieces, both legs counted, degrees.

    Each of the n − 1 joints takes an equal share of the turn. Refuses one piece and a corner outside 0–180°.
    Source: geometry.
    """
    corner, turn = corner_and_turn(work, corner, turn)
    joints = work.step("joints", parts - 1, "one fewer than the pieces, both legs counted", unit="count")
    share = work.step("share", turn / joints, "each joint turns as much")
    _, edge = shared_joint(work, share)
    between = work.step("joint corner", 180 - share, "the corner at each joint")
    work.also("corner at each joint", between)
    work.also("turn at each joint", share)
    work.also("joints", joints)
    ring = 180 * (parts - 2) + corner
    work.check("the corners of a ring through the joints and the corner", joints * between, "=", ring)
    _walked(work, joints, share, turn)
    meeting(work, "one joint", 90, between, edge, ("piece", "next piece"))


def _walked(work: Working, joints: Term, share: Term, turn: Term) -> None:
    """The check that walking from joint to joint comes out facing along the second leg."""
    east, north = real(Fraction(1)), real(Fraction(0))
    c, s = real(work.value(cosine(share))), real(work.value(sine(share)))
    for _ in range(int(work.value(joints))):
        east, north = east * c - north * s, north * c + east * s
    faces = work.term("last piece east", east, "none")
    work.check("turned joint by joint, the last piece faces as the second leg does", faces, "=", cosine(turn))
