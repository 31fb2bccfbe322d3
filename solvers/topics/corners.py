"""Corners of trim and what the saw is set to."""

from __future__ import annotations

from typing import Annotated

from solvers.common import Corner, RoofPitch, Turn
from solvers.exact import Term, acos, sqrt
from solvers.joint import corner_and_turn, saw_cautions, shared_joint
from solvers.registry import topic
from solvers.roof import theta_of
from solvers.saw_drawing import meeting
from solvers.slots import Choice, Slot
from solvers.working import Working


class TurnTold(Choice):
    """What is told in place of a turn."""

    SETTING = "saw setting"
    EDGE = "edge angle"


Told = Annotated[TurnTold, Slot("Is that how far it turns, or what the saw is set to?", name="turn told as", names="turn")]


class Fascia(Choice):
    """How the fascia stands."""

    PLUMB = "plumb"
    SQUARE = "square to the rake"


@topic("miter for a corner", "corners")
def miter_for_a_corner(work: Working, corner: Corner | None = None, turn: Turn | None = None, told: Told | None = None) -> None:
    """Saw setting for each of two pieces that share a corner, degrees, from the corner or from the turn at it.

    From what both were cut at, the corner they make; from what a bevel gauge reads on the edge, the setting that cuts it.
    Refuses either outside 0–180°, an edge angle of 90° and over, and a corner and a turn of different corners.
    Source: geometry, the turn of the trim is the supplement of its corner.
    """
    if told is TurnTold.SETTING and turn is not None and corner is None:
        _corner_made(work, turn)
        return
    if told is TurnTold.EDGE and turn is not None and corner is None:
        work.refuse_when(work.value(turn) >= 90, f"an edge angle of {work.text(turn)} is a square cut or none: say the corner")
        corner, turn = work.step("γ", 2 * turn, "the edges of both pieces make the corner"), None
    corner, turn = corner_and_turn(work, corner, turn)
    _, edge = shared_joint(work, turn)
    work.also("turn", turn)
    work.check("two edge angles make the corner", 2 * edge, "=", corner)
    meeting(work, "the corner", 90, corner, edge, ("piece 1", "piece 2"))


def _corner_made(work: Working, setting: Term) -> None:
    """The corner that two pieces make, both cut at one setting."""
    turn = work.step("τ", 2 * setting, "each piece turns by its setting")
    corner = work.answer("corner", 180 - turn, "what the turn leaves of straight on", symbol="γ")
    edge = work.step("e", 90 - setting, "what a bevel gauge reads on the piece's edge")
    work.also("turn", turn)
    work.also("edge angle", edge)
    work.check("two edge angles make the corner", 2 * edge, "=", corner)
    saw_cautions(work, setting, edge)
    meeting(work, "the corner", 90, corner, edge, ("piece 1", "piece 2"))


@topic("rake return", "corners")
def rake_return(work: Working, pitch: RoofPitch, fascia: Fascia = Fascia.PLUMB) -> None:
    """Saw setting where trim comes down the fascia and turns back up under the rake, degrees.

    A fascia square to the rake makes a corner of 90°. Refuses a pitch of 0. Source: geometry.
    """
    theta = theta_of(work, pitch)
    square = work.term("square", 90, "deg")
    plumb = fascia is Fascia.PLUMB
    if plumb:
        corner = work.step("γ", 90 - theta, "a plumb fascia stands square to level")
    else:
        corner = work.step("γ", square, "the fascia stands square to the rake")
    turn = work.step("τ", 180 - corner, "the trim goes round the outside of that corner")
    saw, edge = shared_joint(work, turn, ("fascia piece", "rake piece"))
    work.also("corner", corner)
    work.also("turn", turn)
    work.also("roof angle", theta)
    if plumb:
        other = work.step("other", (90 - theta) / 2, "under the rake, trim turns up a plumb face at a corner of 90 + θ")
        work.also("the other corner's setting", other)
        apart = acos(pitch.rise / sqrt(pitch.rise**2 + pitch.run**2))
        work.check("the corner between a plumb line and the rake, by their directions", apart, "=", corner)
    work.check("both cuts and the corner make a half turn", 2 * saw + corner, "=", 180)
    first = 90 if plumb else 90 + float(theta.value)
    meeting(work, "side view", first, corner, edge, ("fascia", "rake"))
