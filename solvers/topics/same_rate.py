"""How many it takes, where so many did so much: 3 tubes did 40 ft, so 160 ft takes 12."""

from __future__ import annotations

from typing import Annotated

from solvers.coverage import check_whole, with_waste
from solvers.errors import NeedMore
from solvers.exact import Term, ceil
from solvers.quantities import Area, Count, Length, Number, Percent
from solvers.registry import topic
from solvers.slots import Slot
from solvers.working import Working

LengthDone = Annotated[
    Length,
    Slot("How far did they go?", unit="ft", bare=("ft",), above=0, most=100_000, cued=True, name="work done", usual=(1, 5000)),
]
AreaDone = Annotated[
    Area, Slot("How much did they cover?", above=0, most=1_000_000, cued=True, name="work done", usual=(1, 20_000))
]
NumberDone = Annotated[Count, Slot("How many did they do?", above=0, most=100_000, cued=True, name="work done", usual=(1, 5000))]
LengthNow = Annotated[
    Length,
    Slot("How far do they go now?", unit="ft", bare=("ft",), above=0, most=100_000, name="work to do", usual=(1, 10_000)),
]
AreaNow = Annotated[Area, Slot("How much do they cover now?", above=0, most=1_000_000, name="work to do", usual=(1, 50_000))]
NumberNow = Annotated[
    Count, Slot("How many do they do now?", above=0, most=1_000_000, cued=True, name="work to do", usual=(1, 50_000))
]
Took = Annotated[Number, Slot("How many did that take?", above=0, most=100_000, cued=True, name="number used")]


@topic("by the same rate", "takeoff")
def by_the_same_rate(
    work: Working,
    many: Took | None = None,
    length_done: LengthDone | None = None,
    length: LengthNow | None = None,
    area_done: AreaDone | None = None,
    area: AreaNow | None = None,
    number_done: NumberDone | None = None,
    number: NumberNow | None = None,
    waste: Annotated[Percent, Slot("How much waste, in percent?", above=0, most=100, cued=True, quiet=True, usual=(1, 35))]
    | None = None,
) -> None:
    """How many are needed for a length, area or number, where one (or `many`) went so far; whole ones, rounded up.

    Source: arithmetic.
    """
    done, now = _pair(((length_done, length), (area_done, area), (number_done, number)))
    if waste is not None:
        now = with_waste(work, "with waste", now, waste)
    unit = "none" if done.unit == "count" else done.unit
    each = done if many is None else work.step("one goes over", done / many, "that is shared among them", unit)
    check_whole(work, work.answer("needed", ceil(now / each), "whole ones, rounded up", "count"), now, each, "those")
    exact = work.step("to the tenth of one", now / each, "before it is rounded up", "none")
    work.also("before rounding up", exact)
    if many is not None:
        work.also("one goes over", each)
    work.caution("The same joint, lap and hand as before: where it is wider or rougher it takes more.")


def _pair(pairs: tuple[tuple[Term | None, Term | None], ...]) -> tuple[Term, Term]:
    """What was done and what is to be done, of one kind."""
    for done, now in pairs:
        if done is not None and now is not None:
            return done, now
    raise NeedMore("length_done" if all(done is None for done, _ in pairs) else "length")
