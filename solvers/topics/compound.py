"""Compound cuts: trim sprung off the wall, or sides that lean, cut lying flat on the saw."""

from __future__ import annotations

from math import cos as cosine
from math import radians
from math import sin as sine
from typing import Annotated

from solvers.common import JIG_CAUTION, SAW_CAUTION, SMALL_PIECE_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, acos, asin, atan, cos, sin, tan
from solvers.quantities import Angle, Count
from solvers.registry import topic
from solvers.saw_drawing import flat_on_a_left_tilt, on_the_saw
from solvers.slots import Choice, Slot
from solvers.working import Working

Spring = Annotated[
    Angle, Slot("What is the spring angle, in degrees from the wall?", above=0, below=90, name="spring angle")
]
Corner = Annotated[Angle, Slot("What is the corner angle, in degrees?", above=0, below=180, name="corner")]
Sides = Annotated[Count, Slot("How many sides?", least=3, most=60, name="number of sides", usual=(3, 24))]


# How each piece of a sprung corner lies face up on a saw whose blade tilts left; the tests find these from vectors.
LEFT_TILT = {
    "inside corner, left piece": "ceiling edge to the fence, handle right, keep what lies left of the blade",
    "inside corner, right piece": "wall edge to the fence, handle left, keep what lies left of the blade",
    "outside corner, left piece": "wall edge to the fence, handle left, keep what lies right of the blade",
    "outside corner, right piece": "ceiling edge to the fence, handle right, keep what lies right of the blade",
}


class From(Choice):
    """What a spring or lean was measured from."""

    WALL = "from the wall"
    CEILING = "from the ceiling"


@topic("compound cut", "corners")
def compound_cut(
    work: Working,
    spring: Spring,
    corner: Corner | None = None,
    sides: Sides | None = None,
    measured: From = From.WALL,
) -> None:
    """Miter and bevel of sprung or leaning trim lying flat on the saw, degrees; the miter is the answer.

    Spring is from the wall (a lean from plumb) unless said from the ceiling (from level). A ring of n sides has a
    corner of 180° − 360°/n. Refuses a spring outside 0–90°, a corner outside 0–180°. Source: geometry.
    """
    corner = _corner(work, corner, sides)
    lean = spring
    if measured is From.CEILING:
        lean = work.step("spring", 90 - spring, "from the ceiling, turned to from the wall")
    half = work.step("h", corner / 2, "the joint stands plumb in the middle of the corner")
    miter = work.answer("miter", atan(sin(lean) / tan(half)), "the slant of the cut across the face", symbol="miter")
    bevel = work.step("bevel", asin(cos(lean) * cos(half)), "the tilt of the blade through the thickness")
    work.also("bevel", bevel)
    face = work.step("dihedral", 180 - 2 * bevel, "the angle between the two faces once joined")
    work.also("angle between the faces", face)
    work.also("corner", corner)
    edge = work.step("edge", 90 - miter, "what a bevel gauge reads across the face")
    work.also("edge angle of the miter", edge)
    _in_three_dimensions(work, lean, corner, miter, bevel)
    work.caution(SAW_CAUTION, SMALL_PIECE_CAUTION, JIG_CAUTION)
    _section(work, lean)
    if sides is None:
        _sprung_on_the_saw(work, miter)
    else:
        on_the_saw(work, miter, edge)
    _blade(work, bevel)


def _sprung_on_the_saw(work: Working, miter: Term) -> None:
    for name, how in LEFT_TILT.items():
        work.also_word(name, how)
    flat_on_a_left_tilt(work, miter, inside=True)
    flat_on_a_left_tilt(work, miter, inside=False)


def _corner(work: Working, corner: Term | None, sides: Term | None) -> Term:
    if corner is not None:
        return corner
    if sides is None:
        raise NeedMore("corner")
    full = work.term("full turn", 360, "deg")
    return work.step("corner", 180 - full / sides, "the corner of a ring of that many sides")


def _in_three_dimensions(work: Working, lean: Term, corner: Term, miter: Term, bevel: Term) -> None:
    """Both pieces as vectors: x along the first piece, z plumb; the second is the first turned about z."""
    turn = work.step("τ", 180 - corner, "how far the trim changes direction")
    # Face normals n = (0, −cos, sin) and the same turned: their dot product has only these two parts.
    between = acos(cos(lean) ** 2 * cos(turn) + sin(lean) ** 2)
    work.check("the face normals, as vectors, stand two bevels apart", between, "=", 2 * bevel)
    # The plane cut has normal (cos m cos b) along the piece, so the piece meets its mirror image at twice this angle.
    mirrored = 2 * asin(cos(miter) * cos(bevel))
    work.check("mirrored in the plane the saw cuts, the piece makes the corner", mirrored, "=", corner)
    # A plumb line is cos(lean) up the face and sin(lean) through it; in the cut plane it leaves nothing of the normal.
    leaves, through = sin(miter) * cos(bevel) * cos(lean), sin(bevel) * sin(lean)
    work.check("the joint stands plumb: up the face and through it balance", leaves, "=", through)


def _section(work: Working, lean: Term) -> None:
    """The trim in section between wall and ceiling, the spring angle where it is."""
    view = work.view("section at the wall")
    s, c = sine(radians(float(lean.value))), cosine(radians(float(lean.value)))
    view.line((0, -0.6), (0, 4.4), "edge")
    view.line((0, 4.4), (4.8, 4.4), "edge")
    foot = (0.0, 4.4 - 4 * c)
    top = (4 * s, 4.4)
    view.polygon([foot, top, (top[0] + 0.35 * c, top[1] - 0.35 * s), (foot[0] + 0.35 * c, foot[1] - 0.35 * s)], "piece")
    view.angle(foot, 1.5, 90 - float(lean.value), 90, work.text(lean))
    view.label((-0.2, 0.2), "wall", "end")
    view.label((3.4, 4.75), "ceiling")


def _blade(work: Working, bevel: Term) -> None:
    """The piece flat on the table, seen from the front: the tilt where the face comes out longer than the back."""
    view = work.view("from the front: the blade's tilt, outside corner")
    tilt = radians(float(bevel.value))
    across = sine(tilt) / cosine(tilt)
    view.line((-3, 0), (4, 0), "edge")
    view.polygon([(4, 0), (0, 0), (-across, 1), (4, 1)], "piece")
    view.line((0, 0), (-1.8 * across, 1.8), "cut")
    view.line((0, 0), (0, 1.8), "hidden")
    if bevel.value > 0:
        view.angle((0, 0), 1.3, 90, 90 + float(bevel.value), work.text(bevel))
    view.label((2, 0.5), "face up")
    view.label((3.4, -0.35), "table")
