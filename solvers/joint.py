"""A joint shared by two pieces: half the turn on each, what a bevel gauge reads, and the check that both close."""

from __future__ import annotations

from solvers.common import SAW_CAUTION, SMALL_PIECE_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, cos, sin, tan
from solvers.saw_drawing import on_the_saw
from solvers.working import Working

FAR_SWING = 50  # degrees; common practice: many miter saws stop between 45° and 60°


def shared_joint(work: Working, turn: Term, pieces: tuple[str, str] = ("piece 1", "piece 2")) -> tuple[Term, Term]:
    """Saw setting (the answer) and edge angle of each of two pieces round a turn, with check, cautions and drawing."""
    saw = work.answer("saw setting", turn / 2, "half the turn on each piece", symbol="s")
    edge = work.step("e", 90 - saw, "what a bevel gauge reads on the piece's edge")
    work.also("edge angle", edge)
    closes(work, saw, turn)
    saw_cautions(work, saw, edge)
    on_the_saw(work, saw, edge, pieces)
    return saw, edge


def corner_and_turn(work: Working, corner: Term | None, turn: Term | None) -> tuple[Term, Term]:
    """The corner, and how far the trim turns at it, degrees, from either. Refuses the two of different corners."""
    if corner is None:
        if turn is None:
            raise NeedMore("corner")
        return work.step("γ", 180 - turn, "what the turn leaves of straight on"), turn
    work.refuse_when(
        turn is not None and work.value(corner + turn) != 180,
        f"a corner of {work.text(corner)} is no turn of {work.text(turn or corner)}: say one of the two",
    )
    return corner, work.step("τ", 180 - corner, "how far the trim changes direction")


def closes(work: Working, saw: Term, turn: Term) -> None:
    """The check of a joint from two straight strips, an inch wide, whose outer edges are made to cross."""
    what = "the outer edges of two strips an inch wide cross this far past the inner corner"
    work.check(what, tan(saw), "=", (1 - cos(turn)) / sin(turn))


def saw_cautions(work: Working, saw: Term, edge: Term) -> None:
    """What a setting needs said at the saw."""
    work.caution(SAW_CAUTION, SMALL_PIECE_CAUTION)
    if saw.value > FAR_SWING:
        dial = work.text(edge)
        work.caution(f"Past 50° many saws stop: then stand the piece against a square jig and dial {dial}, clamped.")
