"""From what there is to cover to whole pieces: waste, boards, sticks, and the check that one fewer will not do."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.exact import Term, ceil
from solvers.quantities import Area, Length, Percent
from solvers.slots import Slot
from solvers.working import Working

TEN_PERCENT = Percent(Fraction(10), "percent", "10 percent")
NO_WASTE = Percent(Fraction(0), "percent", "none")
Waste = Annotated[Percent, Slot("How much waste, in percent?", least=0, most=100, kept="waste", name="waste", usual=(0, 35))]
CoverArea = Annotated[
    Area,
    Slot(
        "How much area, in square feet?", above=0, most=1_000_000, name="area", usual=(20, 20_000),
        instead=("count", "length", "courses", "course_length", "wall_length", "wall_height", "pitch", "gable_height")),
]  # fmt: skip
BoardExposure = Annotated[
    Length, Slot("What is the exposure?", bare=("in",), above=0, most=36, kept="exposure", name="exposure", usual=(3, 16))
]
BoardLength = Annotated[
    Length,
    Slot(
        "How long are the boards?", unit="ft", bare=("ft", "in"), plain=24, least=1, most=40, kept="stock length",
        name="board length", usual=(5, 24)),
]  # fmt: skip
MOST_PIECES = 1_000_000
ORDER_CAUTION = "Waste is a guess until the wall is measured: odd angles, bad ends and short walls take more."


def with_waste(work: Working, name: str, amount: Term, waste: Term) -> Term:
    """The amount and its waste; the amount itself when no waste is asked for."""
    if waste.value == 0:
        return amount
    return work.step(name, amount * (1 + waste / 100), "the waste added before rounding up", amount.unit)


def whole_pieces(work: Working, name: str, need: Any, each: Any, why: str, unit_words: str, symbol: str = "") -> Term:
    """How many pieces of `each` cover `need` (both in one unit), as the answer, with both checks of a rounding up."""
    count = work.answer(name, ceil(need / each), why, "count", symbol or name)
    check_whole(work, count, need, each, unit_words)
    return count


def check_whole(work: Working, count: Term, need: Any, each: Any, unit_words: str) -> None:
    """That many reach, and one fewer does not."""
    work.refuse_when(work.value(count) > MOST_PIECES, f"that comes to {work.text(count)}: check the sizes you gave me")
    work.check(f"{unit_words} reach", count * each, ">=", need)
    work.check("one fewer does not", need, ">=", (count - 1) * each)
