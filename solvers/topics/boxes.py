"""How many boxes so many things come in."""

from __future__ import annotations

from typing import Annotated

from solvers.coverage import check_whole
from solvers.exact import ceil
from solvers.quantities import Count
from solvers.registry import topic
from solvers.slots import Slot
from solvers.working import Working


@topic("boxes", "takeoff")
def boxes(
    work: Working,
    count: Annotated[Count, Slot("How many are needed?", least=1, most=10_000_000, name="count", usual=(1, 100_000))],
    box: Annotated[Count, Slot("How many in a box?", least=1, most=100_000, name="box", usual=(2, 10_000))],
    each: Annotated[Count, Slot("How many for each?", least=1, most=1000, cued=True, quiet=True, usual=(1, 50))] | None = None,
) -> None:
    """How many whole boxes hold so many things, or so many of them for each of a count, and what is over.

    Source: arithmetic. No spares are in it.
    """
    need = count if each is None else work.step("needed", count * each, "so many for each", "count")
    whole = work.answer("boxes", ceil(need / box), "whole boxes, rounded up", "count")
    over = work.step("over", whole * box - need, "what is left in the last one", "count")
    if each is not None:
        work.also("needed", need)
    work.also("left over", over)
    check_whole(work, whole, need, box, "the boxes")
    work.caution("No spares in it: a few are always dropped.")
