"""Sticks of trim for a total length, and fasteners for rows of them."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import DUST_CAUTION, HEIGHT_CAUTION, SAW_CAUTION
from solvers.coverage import NO_WASTE, Waste, check_whole, whole_pieces, with_waste
from solvers.errors import NeedMore
from solvers.exact import Term, ceil
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.story_pole import Mark, draw_strip, put_marks, refuse_crowd
from solvers.working import Working

Stock = Annotated[
    Length,
    Slot(
        "How long is your stock?",
        unit="ft",
        bare=("ft", "in"),
        plain=24,
        above=0,
        most=100,
        kept="stock length",
        name="stock",
        usual=(4, 24),
    ),
]
TotalLength = Annotated[
    Length,
    Slot(
        "What is the total length of trim?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=100_000,
        name="total length",
        usual=(4, 3000),
        over="stock",
    ),
]
RowLength = Annotated[
    Length,
    Slot(
        "What is the length of each one?", unit="ft", bare=("ft",), above=0, most=2000, over="spacing", unless="studs",
        usual=(3, 200),
    ),
]  # fmt: skip
FastenerSpacing = Annotated[
    Length,
    Slot(
        "What is the spacing of the fasteners?",
        bare=("in",),
        above=0,
        most=120,
        kept="fastener spacing",
        usual=(2, 36),
        unless="studs",
        name="spacing",
    ),
]
MOST_DRAWN, MOST_IN_A_ROW = 60, 20_000


@topic("trim sticks", "takeoff")
def trim_sticks(work: Working, total: TotalLength, stock: Stock, waste: Waste = NO_WASTE) -> None:
    """How many sticks of a stock length make a total length of trim, joints anywhere; no waste unless said.

    For pieces that must be whole, the cut list gives the proven least. Source: arithmetic.
    """
    need = with_waste(work, "with waste", total, waste)
    sticks = whole_pieces(work, "sticks", need, stock, "whole sticks, rounded up", "the sticks, end to end,")
    left = work.step("left over", sticks * stock - need, "what is left of the last stick", "ft")
    work.also("length bought", sticks * stock, "ft")
    work.also("left over", left)
    work.check("full sticks and the part of the last one used", (sticks - 1) * stock + (stock - left), "=", need)
    work.caution(
        "Joints may fall anywhere: where every piece must be whole, give me the pieces and I make the cut list.",
        SAW_CAUTION,
    )
    end = 12 * Fraction(stock.value)
    marks = [Mark(f"end of stick {number}", number * end) for number in range(1, min(int(sticks.value), MOST_DRAWN))]
    put_marks(work, marks)
    draw_strip(work, marks, float(12 * need.value), "sticks end to end")


@topic("fasteners", "takeoff")
def fasteners(
    work: Working,
    rows: Annotated[Count, Slot("How many courses or straps?", least=1, most=10_000, name="courses or straps", usual=(1, 200))],
    length: RowLength | None = None,
    spacing: FastenerSpacing | None = None,
    box: Annotated[Count, Slot("How many in a box?", least=1, most=100_000, name="box", cued=True, usual=(20, 10_000))]
    | None = None,
    at_each: Annotated[Count, Slot("How many at each place?", least=1, most=20, name="at each place", cued=True, usual=(1, 6))]
    | None = None,
    studs: Annotated[Count, Slot("How many studs does each one cross?", least=1, most=10_000, cued=True, usual=(2, 300))]
    | None = None,
) -> None:
    """How many nails or screws for courses or straps of a length: one at each end and at most the spacing between, or
    so many at each place (`at_each`); or so many for each stud that each of them crosses.

    Source: arithmetic. For the greatest spacing that is allowed, ask the cladding's maker or the code in force.
    """
    if studs is not None:
        _at_studs(work, rows, studs, at_each, box)
        return
    if length is None or spacing is None:
        raise NeedMore("length" if length is None else "spacing")
    refuse_crowd(work, work.value(12 * length / spacing), "fasteners in a row", spacing, MOST_IN_A_ROW)
    spaces = work.step("spaces", ceil(12 * length / spacing), "spaces along one, none wider than the spacing", "count")
    places = work.step("places", spaces + 1, "one more place than spaces, as there is one at each end", "count")
    each = places if at_each is None else work.step("each", places * at_each, "so many at each place", "count")
    total = work.answer("fasteners", rows * each, "for all of them", "count")
    work.also("fasteners in each", each)
    even = work.step("even spacing", 12 * length / spaces, "if they are spread evenly", "in")
    work.also("even spacing", even)
    _boxed(work, total, box)
    work.check("spaces of the even size make the length", even * (places - 1), "=", 12 * length)
    work.check("the even spacing is within the spacing", even, "<=", spacing)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION, "No spares in it: a few are always dropped.")
    _draw_row(work, length, even, places)


def _at_studs(work: Working, rows: Term, studs: Term, at_each: Term | None, box: Term | None) -> None:
    """So many for each stud that each course crosses."""
    each = studs if at_each is None else work.step("each", studs * at_each, "so many at each stud", "count")
    total = work.answer("fasteners", rows * each, "for all of them", "count")
    work.also("fasteners in each", each)
    work.check("shared among them again", total / rows, "=", each)
    _boxed(work, total, box)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION, "No spares in it: a few are always dropped.")


def _boxed(work: Working, total: Term, box: Term | None) -> None:
    if box is not None:
        boxes = work.step("boxes", ceil(total / box), "whole boxes", "count")
        work.also("boxes", boxes)
        check_whole(work, boxes, total, box, "the boxes")


def _draw_row(work: Working, length: Term, even: Term, places: Term) -> None:
    step = Fraction(even.value)
    marks = [Mark(f"fastener {number + 1}", number * step) for number in range(min(int(places.value), MOST_DRAWN))]
    put_marks(work, marks)
    draw_strip(work, marks, float(12 * length.value), "one of them, spread evenly")
