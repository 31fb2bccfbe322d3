"""Sticks of trim for a total length, and fasteners for rows of them."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import DUST_CAUTION, HEIGHT_CAUTION, SAW_CAUTION
from solvers.coverage import NO_WASTE, Waste, check_whole, whole_pieces, with_waste
from solvers.errors import NeedMore
from solvers.exact import Term, ceil
from solvers.quantities import Count, Length, Percent
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
        "What is the length of each one?", unit="ft", bare=("ft",), above=0, most=2000, over="spacing", unless="studs in_each",
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
        unless="studs in_each",
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
    rows: Annotated[
        Count,
        Slot(
            "How many courses or straps?",
            least=1,
            most=10_000,
            name="courses or straps",
            usual=(1, 200),
            unless="things",
            instead=("things",),
        ),
    ]
    | None = None,
    length: RowLength | None = None,
    spacing: FastenerSpacing | None = None,
    box: Annotated[Count, Slot("How many in a box?", least=1, most=100_000, name="box", cued=True, usual=(20, 10_000))]
    | None = None,
    at_each: Annotated[Count, Slot("How many at each place?", least=1, most=20, name="at each place", cued=True, usual=(1, 6))]
    | None = None,
    studs: Annotated[Count, Slot("How many studs does each one cross?", least=1, most=10_000, cued=True, usual=(2, 300))]
    | None = None,
    in_each: Annotated[
        Count, Slot("How many in each?", least=1, most=1000, name="in each", cued=True, quiet=True, usual=(1, 200))
    ]
    | None = None,
    things: Annotated[
        Count, Slot("How many are there?", least=1, most=100_000, name="how many", cued=True, quiet=True, usual=(1, 20_000))
    ]
    | None = None,
    spares: Annotated[Percent, Slot("How many spares, in percent?", above=0, most=100, cued=True, quiet=True, usual=(1, 35))]
    | None = None,
) -> None:
    """How many nails or screws for courses or straps of a length: one at each end and at most the spacing between, or
    so many at each place (`at_each`); or so many for each stud that each of them crosses; or so many in each (`in_each`).

    Source: arithmetic. For the greatest spacing that is allowed, ask the cladding's maker or the code in force.
    """
    counted = rows if things is None else things
    if in_each is not None and counted is not None:
        total = _all_of_them(work, counted * in_each, "so many in each", spares, box)
        work.check("shared among them again", total / counted, "=", in_each)
        return
    if rows is None:
        raise NeedMore("rows")
    if studs is not None:
        each = studs if at_each is None else work.step("each", studs * at_each, "so many at each stud", "count")
        total = _all_of_them(work, rows * each, "for all of them", spares, box)
        work.also("fasteners in each", each)
        work.check("shared among them again", total / rows, "=", each)
        return
    if length is None or spacing is None:
        raise NeedMore("length" if length is None else "spacing")
    refuse_crowd(work, work.value(12 * length / spacing), "fasteners in a row", spacing, MOST_IN_A_ROW)
    spaces = work.step("spaces", ceil(12 * length / spacing), "spaces along one, none wider than the spacing", "count")
    places = work.step("places", spaces + 1, "one more place than spaces, as there is one at each end", "count")
    each = places if at_each is None else work.step("each", places * at_each, "so many at each place", "count")
    _all_of_them(work, rows * each, "for all of them", spares, box)
    work.also("fasteners in each", each)
    even = work.step("even spacing", 12 * length / spaces, "if they are spread evenly", "in")
    work.also("even spacing", even)
    work.check("spaces of the even size make the length", even * (places - 1), "=", 12 * length)
    work.check("the even spacing is within the spacing", even, "<=", spacing)
    _draw_row(work, length, even, places)


def _all_of_them(work: Working, amount: Any, why: str, spares: Term | None, box: Term | None) -> Term:
    """The answer, with the spares where they are told, in boxes where those are; what it is with none is given back."""
    if spares is None:
        total = bought = work.answer("fasteners", amount, why, "count")
    else:
        total = work.step("with no spares", amount, why, "count")
        bought = work.answer("fasteners", ceil(total * (1 + spares / 100)), "the spares put to it, whole ones", "count")
        work.also("with no spares", total)
    _boxed(work, bought, box)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION)
    if spares is None:
        work.caution("No spares in it: a few are always dropped.")
    return total


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
