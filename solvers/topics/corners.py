"""Corners of trim and what the saw is set to."""

from __future__ import annotations

from solvers.common import SAW_CAUTION, CornerAngle, RoofPitch
from solvers.exact import atan
from solvers.registry import topic
from solvers.slots import Choice
from solvers.working import Working


class Fascia(Choice):
    """How the fascia stands."""

    PLUMB = "plumb"
    SQUARE = "square to the rake"


@topic("miter for a corner", "corners")
def miter_for_a_corner(work: Working, corner: CornerAngle) -> None:
    """Saw setting for each of two pieces that share a corner, degrees.

    Refuses a corner outside 0–180°. Source: geometry, the turn of the trim is the supplement of its corner.
    """
    turn = work.step("turn", 180 - corner, "how far the trim changes direction")
    saw = work.answer("saw setting", turn / 2, "half the turn on each piece", symbol="s")
    edge = work.step("edge angle", 90 - saw, "what a bevel gauge reads on the piece's edge")
    work.also("edge angle", edge)
    work.also("turn", turn)
    work.check("two edge angles make the corner", 2 * edge, "=", corner)
    work.caution(SAW_CAUTION)


@topic("rake return", "corners")
def rake_return(work: Working, pitch: RoofPitch, fascia: Fascia = Fascia.PLUMB) -> None:
    """Saw setting where trim comes down the fascia and turns back up under the rake, degrees.

    A fascia square to the rake makes a corner of 90°. Refuses a pitch of 0. Source: geometry.
    """
    theta = work.step("θ", atan(pitch.rise / pitch.run), "the pitch, as an angle from level")
    square = work.term("square", 90, "deg")
    if fascia is Fascia.PLUMB:
        corner = work.step("γ", 90 - theta, "a plumb fascia stands square to level")
    else:
        corner = work.step("γ", square, "the fascia stands square to the rake")
    turn = work.step("τ", 180 - corner, "the trim goes round the outside of that corner")
    saw = work.answer("saw setting", turn / 2, "half the turn on each piece", symbol="s")
    edge = work.step("e", 90 - saw, "what a bevel gauge reads on the piece's edge")
    work.also("edge angle", edge)
    work.also("corner", corner)
    work.also("turn", turn)
    work.also("roof angle", theta)
    work.check("both cuts and the corner make a half turn", 2 * saw + corner, "=", 180)
    work.caution(SAW_CAUTION)
