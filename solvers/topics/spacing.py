"""Spacing along a line: equal gaps, marks on centre, equal parts."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import DUST_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, floor, larger, nearest
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.story_pole import MOST_MARKS, Mark, draw_strip, put_marks, refuse_crowd
from solvers.working import Working

ONE_END_CAUTION = "Pull every mark from the one end, tape hooked once: stepping off lets the error grow."
TOO_MANY_CAUTION = f"More than {MOST_MARKS} parts: the marks are not listed."
NOTHING = Length(Fraction(0), "in", "0 in")

Whole = Annotated[
    Length, Slot("What is the whole length?", bare=("ft", "in"), plain=40, doubt=(2, 41), above=0, name="length", usual=(12, 600))
]
PieceWidth = Annotated[
    Length, Slot("What is the width of each piece?", bare=("in",), above=0, name="width", usual=(Fraction(1, 2), 60))
]
GreatestGap = Annotated[
    Length, Slot("What is the greatest gap?", bare=("in",), above=0, cued=True, name="greatest gap", usual=(Fraction(1, 4), 96))
]


class Ends(Choice):
    """Where the gaps are."""

    BETWEEN = "between the pieces only"
    BOTH = "at both ends too"
    HALF = "between, and half of one at each end"


MORE_GAPS = {Ends.BETWEEN: -1, Ends.BOTH: 1, Ends.HALF: 0}  # than pieces


@topic("equal spacing", "courses")
def equal_spacing(
    work: Working,
    length: Whole,
    width: PieceWidth,
    count: Annotated[Count, Slot("How many pieces?", least=1, most=MOST_MARKS, name="pieces", usual=(1, 200))] | None = None,
    gap: Annotated[
        Length, Slot("About what gap?", bare=("in",), above=0, cued=True, name="gap wanted", usual=(Fraction(1, 8), 96))
    ]
    | None = None,
    ends: Annotated[Ends, Slot("Is there a gap at both ends too?", name="gaps")] = Ends.BETWEEN,
    widest: GreatestGap | None = None,
) -> None:
    """The equal gap between pieces of one width in a length, inches, and where each piece starts.

    From a count of pieces, or the count whose gap comes nearest a wanted gap, or the least count whose gap is no more
    than the greatest allowed. Refuses pieces that take more than the length, and a count whose gap is over the greatest.
    Source: arithmetic.
    """
    counted = count
    if count is None:
        most = widest is not None
        count = _least_count(work, length, width, widest, ends) if most else _best_count(work, length, width, gap, ends)
    taken = work.step("taken", count * width, "what the pieces take by themselves", "in")
    work.refuse_when(
        work.value(taken) > work.value(length),
        f"{work.text(count)} pieces of {work.text(width)} take {work.text(taken)}, more than the {work.text(length)} there is",
    )
    work.refuse_when(
        work.value(count) == 1 and ends is Ends.BETWEEN,
        "one piece has no gap between: say more pieces, or a gap at both ends too",
    )
    gaps = work.step("gaps", count + MORE_GAPS[ends], ends.value, "count")
    even = work.answer("gap", (length - taken) / gaps, "what is left, shared out", "in")
    centre = work.step("centre to centre", even + width, "from the middle of one piece to the middle of the next", "in")
    if widest is not None:
        work.refuse_when(
            work.value(even) > work.value(widest),
            f"{work.text(count)} pieces leave gaps of {work.text(even)}, over the greatest of {work.text(widest)}: "
            "say more pieces",
        )
        work.check("no gap is over the greatest", even, "<=", widest)
    if counted is None:
        work.also("pieces", count)
    work.also("gaps", gaps)
    work.also("centre to centre", centre)
    starts = _starts(work, centre, even, count, ends)
    put_marks(work, starts)
    end = work.term("end of the last piece", Fraction(starts[-1].at) + Fraction(work.value(width)), "in")
    left = {Ends.BETWEEN: 0, Ends.BOTH: even, Ends.HALF: even / 2}[ends]
    work.check("the last piece ends where it should", end + left, "=", length)
    work.check("pieces and gaps fill the length", count * width + gaps * even, "=", length)
    work.caution(ONE_END_CAUTION)
    _draw_pieces(work, starts, width, length)


def _best_count(work: Working, length: Term, width: Term, gap: Term | None, ends: Ends) -> Term:
    if gap is None:
        raise NeedMore("count", "How many pieces, or about what gap?")
    sign = -MORE_GAPS[ends]
    refuse_crowd(work, work.value(length / (width + gap)), "pieces", gap)
    least = 2 if ends is Ends.BETWEEN else 1
    work.refuse_when(
        work.value(least * width) > work.value(length),
        f"{least} piece{'s' if least > 1 else ''} of {work.text(width)} take more than the {work.text(length)} there is",
    )
    count = nearest((length + sign * gap) / (width + gap), 1)
    return work.step("pieces", larger(least, count), "the whole count whose gap comes nearest what you want", "count")


def _least_count(work: Working, length: Term, width: Term, widest: Term, ends: Ends) -> Term:
    """The fewest pieces that leave no gap over the greatest: a baluster more, never a gap a head goes through."""
    refuse_crowd(work, work.value(length / (width + widest)), "pieces", widest)
    least = 2 if ends is Ends.BETWEEN else 1
    count = ceil((length - MORE_GAPS[ends] * widest) / (width + widest))
    return work.step("pieces", larger(least, count), "the fewest that leave no gap over the greatest", "count")


def _starts(work: Working, centre: Term, even: Term, count: Term, ends: Ends) -> list[Mark]:
    first = Fraction(work.value(even)) * {Ends.BETWEEN: 0, Ends.BOTH: 1, Ends.HALF: Fraction(1, 2)}[ends]
    pitch = Fraction(work.value(centre))
    return [Mark(f"piece {i + 1} starts", first + i * pitch) for i in range(int(work.value(count)))]


@topic("marks on centre", "courses")
def marks_on_centre(
    work: Working,
    length: Annotated[
        Length, Slot("What is the length to mark?", bare=("ft", "in"), plain=60, doubt=(40, 90), above=0, usual=(24, 1200))
    ],
    spacing: Annotated[Length, Slot("What is the spacing on centre?", bare=("in",), above=0, kept="stud spacing", usual=(4, 60))],
    first: Annotated[Length, Slot("Where is the first mark?", bare=("in",), least=0, name="first mark", usual=(0, 60))] = NOTHING,
) -> None:
    """How many marks on centre fit along a length, and every mark from the one end.

    From the first mark while the mark is within the length. Refuses a first mark past the end. Source: arithmetic.
    """
    work.refuse_when(
        work.value(first) > work.value(length),
        f"the first mark at {work.text(first)} is past the end of the {work.text(length)}",
    )
    refuse_crowd(work, work.value((length - first) / spacing), "marks", spacing)
    spaces = work.step("spaces", floor((length - first) / spacing), "whole spaces after the first mark", "count")
    count = work.answer("marks", spaces + 1, "one more mark than spaces", "count")
    last = work.step("last mark", first + spaces * spacing, "measured from the end, not stepped off", "in")
    left = work.step("left over", length - last, "from the last mark to the end", "in")
    work.also("last mark", last)
    work.also("left after the last mark", left)
    if work.value(left) > 0:
        work.also("with one at the far end too", count + 1)
    start, pitch = Fraction(work.value(first)), Fraction(work.value(spacing))
    marks = [Mark(f"mark {i + 1}", start + i * pitch) for i in range(int(work.value(count)))]
    put_marks(work, marks)
    work.check("the last mark is within the length", work.term("last mark", marks[-1].at, "in"), "<=", length)
    work.check("one more would be past it", marks[-1].at + spacing, ">=", length)
    work.check("the marks end where the count says", work.term("last mark", marks[-1].at, "in"), "=", last)
    work.caution(ONE_END_CAUTION)
    draw_strip(work, marks, float(work.value(length)), "marks from the left end")


@topic("divide evenly", "courses")
def divide_evenly(
    work: Working,
    length: Annotated[Length, Slot("What is the length to divide?", bare=("in",), above=0, usual=(6, 720))],
    parts: Annotated[Count, Slot("Into how many parts?", least=1, most=2000, usual=(2, 60))],
) -> None:
    """Each of a number of equal parts of a length, inches, and the marks between them.

    No saw kerf is allowed for. Of more marks than anybody would set out none is listed. Refuses no parts or less.
    Source: arithmetic.
    """
    part = work.answer("part", length / parts, "the length shared out", "in")
    count, whole = int(work.value(parts)), Fraction(work.value(length))
    listed = range(1, count if count <= MOST_MARKS else 1)
    marks = [Mark(f"mark {i}", whole * i / count) for i in listed]
    put_marks(work, marks)
    last = work.term("last part", whole - whole * (count - 1) / count, "in")
    work.also("parts", parts)
    work.check("what is left after the last mark is one part", last, "=", part)
    work.check("the parts laid end to end", parts * part, "=", length)
    pulled = ONE_END_CAUTION if count <= MOST_MARKS else TOO_MANY_CAUTION
    work.caution(pulled, "No saw kerf allowed for: to cut, keep to one side of each line.", DUST_CAUTION)
    draw_strip(work, marks, float(work.value(length)), "marks from the left end")


def _draw_pieces(work: Working, starts: list[Mark], width: Term, length: Term) -> None:
    long, wide = float(work.value(length)), float(work.value(width))
    view = work.view("pieces from the left", stretch=True)
    view.line((0, 0), (long, 0), "level")
    for mark, line in zip(starts, work.marks, strict=True):
        at = float(mark.at)
        view.polygon([(at, 0), (at + wide, 0), (at + wide, long / 12), (at, long / 12)], fill="piece")
        view.tick((at, 0), line.text)
    view.dimension((0, long / 12), (long, long / 12), work.text(length))
