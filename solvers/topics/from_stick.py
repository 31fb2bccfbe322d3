"""How many pieces of one length a stick gives."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import DUST_CAUTION, SAW_CAUTION
from solvers.exact import floor
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.story_pole import Mark, draw_strip, put_marks, refuse_crowd
from solvers.topics.cutlist import EIGHTH, Kerf
from solvers.working import Working


@topic("pieces from a stick", "takeoff")
def pieces_from_a_stick(
    work: Working,
    piece: Annotated[Length, Slot("How long is each piece?", bare=("in",), above=0, name="piece", usual=(2, 200))],
    stock: Annotated[
        Length,
        Slot("How long is the stick?", bare=("ft", "in"), plain=24, above=0, most=1200, kept="stock length", name="stick",
             usual=(36, 300)),
    ],
    kerf: Kerf = EIGHTH,
    sticks: Annotated[Count, Slot("How many sticks?", least=1, most=10_000, cued=True, quiet=True, usual=(1, 200))] | None = None,
) -> None:  # fmt: skip
    """How many pieces of one length come out of a stick (or of so many), and what is left of it; no kerf after a piece that
    ends flush.

    Refuses a piece longer than the stick. Source: arithmetic.
    """
    work.refuse_when(
        work.value(piece) > work.value(stock),
        f"a piece of {work.text(piece)} is longer than the stick of {work.text(stock)}: it needs longer stock or a joint",
    )
    refuse_crowd(work, work.value(stock / piece), "pieces", piece)
    whole, why = floor((stock + kerf) / (piece + kerf)), "each with its kerf, but none after the last"
    if sticks is None:
        count = work.answer("pieces", whole, why, "count")
    else:
        count = work.step("pieces of one", whole, why, "count")
        work.answer("pieces", sticks * count, "as many of every stick", "count")
        work.also("pieces of one stick", count)
    used = work.step("used", count * piece + (count - 1) * kerf, "the pieces and the kerfs between them", "in")
    left = work.step("left", stock - used, "what is left of the stick, its own kerf not taken off", "in")
    work.also("left over", left)
    work.also("pieces with no kerf at all", floor(stock / piece))
    work.check("the pieces and their kerfs fit the stick", used, "<=", stock)
    work.check("one more does not", used + kerf + piece, ">=", stock)
    work.caution(SAW_CAUTION, DUST_CAUTION)
    step = Fraction(work.value(piece)) + Fraction(work.value(kerf))
    ends = [Mark(f"end of piece {n + 1}", n * step + Fraction(work.value(piece))) for n in range(int(work.value(count)))]
    put_marks(work, ends)
    draw_strip(work, ends, float(work.value(stock)), "one stick, from the fresh end")
