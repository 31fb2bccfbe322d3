"""Step flashing up a wall, and flashing bent from coil."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import HEIGHT_CAUTION
from solvers.coverage import check_whole, whole_pieces
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, floor
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.story_pole import Mark, draw_strip, put_marks, refuse_crowd
from solvers.working import Working

MOST_STRIPS_MARKED = 60  # more are on no coil that is sold
METAL_CAUTION = "Cut metal is sharp: gloves and eyes; it holds the sun's heat too."
MOST_MARKS = 60
WIDEST_LEG = 60  # in; no coil is as wide
MOST_LEGS, LEAST_LEGS = 12, 2
SlopeRun = Annotated[
    Length,
    Slot(
        "What is the length of the rake or wall, along the roof?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=1000,
        name="length",
        over="exposure",
        usual=(2, 80),
    ),
]
ShingleExposure = Annotated[Length, Slot("What is the exposure?", bare=("in",), above=0, most=36, kept="exposure", usual=(3, 12))]
Sides = Annotated[Count, Slot("How many sides?", least=1, most=100, name="sides", cued=True, usual=(1, 12))]
Legs = Annotated[tuple[Length, ...], Slot("How wide is each leg?", name="legs")]
Coil = Annotated[
    Length,
    Slot(
        "How wide is the coil?", bare=("in",), above=0, most=120, kept="coil width", name="coil width", cued=True, usual=(8, 60)
    ),
]


@topic("step flashing", "takeoff")
def step_flashing(work: Working, length: SlopeRun, exposure: ShingleExposure, sides: Sides | None = None) -> None:
    """Pieces of step flashing up a rake or wall, or each of several sides, one to a course; one more for the start beside.

    The length is along the roof. Refuses an exposure of nothing. Source: arithmetic; the size is IRC R905.2.8.3.
    """
    refuse_crowd(work, work.value(12 * length / exposure), "pieces", exposure)
    if sides is None:
        pieces = whole_pieces(
            work, "pieces", 12 * length, exposure, "one for every course, rounded up", "the pieces, an exposure apart,"
        )
        more = work.step("with the start", pieces + 1, "one more under the first course", "count")
    else:
        pieces = work.step("pieces a side", ceil(12 * length / exposure), "one for every course, rounded up", "count")
        check_whole(work, pieces, 12 * length, exposure, "the pieces of a side, an exposure apart,")
        work.answer("pieces", sides * pieces, "for all sides", "count")
        more = work.step("with the start", sides * (pieces + 1), "one more under the first course of each", "count")
        work.caution(f"Taken as {work.text(length)} on each side.")
    work.also("with one more for the start, to spare", more)
    last = work.step("last course", 12 * length - (pieces - 1) * exposure, "what the last one covers", "in")
    work.check("full courses and the last one make the length", (pieces - 1) * exposure + last, "=", 12 * length)
    step = Fraction(exposure.value)
    marks = [Mark(f"piece {number + 1}", number * step) for number in range(min(int(pieces.value), MOST_MARKS))]
    put_marks(work, marks)
    work.caution("Lap each piece at least 2 in over the one below, nail it to the roof only.", HEIGHT_CAUTION, METAL_CAUTION)
    work.source(
        "published: at least 4 in by 4 in, turned out at the end of the wall, IRC R905.2.8.3",
        "the 2 in lap: common practice",
    )
    draw_strip(work, marks, float(12 * length.value), "up the wall, from the eave")


@topic("bent flashing", "takeoff")
def bent_flashing(
    work: Working,
    lengths: Legs,
    coil: Coil | None = None,
    count: Annotated[Count, Slot("How many pieces?", least=1, most=100_000, name="count", cued=True, quiet=True, usual=(1, 500))]
    | None = None,
) -> None:
    """Girth (stretch-out) of a bent flashing, inches, the bend lines, and how many come out of a coil's width.

    Legs are measured outside; a hem is a leg of its own. Nothing is allowed for the bends: on thin metal that is usual
    (common practice). Refuses a leg of nothing or less. Source: arithmetic.
    """
    if len(lengths) < LEAST_LEGS:
        raise NeedMore("lengths", "How wide is each leg?")
    legs = _leg_terms(work, lengths)
    total: Any = sum(legs[1:], start=legs[0])
    girth = work.answer("girth", total, "all legs laid flat", "in")
    if coil is not None:
        _from_coil(work, girth, coil, count)
    work.also("bends, per piece", work.term("bends", len(legs) - 1, "count"))
    at, marks = Fraction(0), []
    for number, leg in enumerate(legs[:-1], 1):
        at += Fraction(leg.value)
        marks.append(Mark(f"bend {number}", at))
    put_marks(work, marks)
    last = work.term("last bend line", at, "in")
    work.check("from the last bend line to the edge is the last leg", girth - last, "=", legs[-1])
    work.caution(METAL_CAUTION, "Nothing allowed for the metal's thickness: bend a short test piece and measure it.")
    draw_strip(work, marks, float(girth.value), "flat, with bend lines")


def _leg_terms(work: Working, lengths: tuple[Length, ...]) -> list[Term]:
    work.refuse_when(len(lengths) > MOST_LEGS, f"{len(lengths)} legs are more than I can draw: up to {MOST_LEGS}")
    terms = [work.term(f"leg {number}", leg.to("in").value, "in") for number, leg in enumerate(lengths, 1)]
    for term in terms:
        work.refuse_when(term.value <= 0, f"a leg can't be {work.text(term)}: say the legs again, each over 0")
        wide = f"a leg of {work.text(term)} is wider than any coil: say the legs again, in inches"
        work.refuse_when(term.value > WIDEST_LEG, wide)
    return terms


def _from_coil(work: Working, girth: Term, coil: Term, count: Term | None) -> None:
    strips = _strips(work, girth, coil)
    work.also("pieces per coil width", strips)
    _left_of_width(work, girth, coil, strips)
    if count is not None:
        lengths = work.step("lengths of coil", ceil(count / strips), "whole lengths, each a piece long", "count")
        work.also("lengths off the coil, each a piece long", lengths)
        check_whole(work, lengths, count, strips, "the strips")


def _strips(work: Working, girth: Term, coil: Term) -> Term:
    """How many strips a coil gives across; refuses one that is wider than it."""
    work.refuse_when(
        work.value(girth) > work.value(coil),
        f"the girth is {work.text(girth)}, wider than the coil of {work.text(coil)}: widen it or make it in two",
    )
    return work.step("strips", floor(coil / girth), "whole strips across the coil's width", "count")


def _left_of_width(work: Working, girth: Term, coil: Term, strips: Term) -> None:
    left = work.step("left", coil - strips * girth, "what is left of the width", "in")
    work.also("left over of the coil's width", left)
    work.check("one more strip would be too wide", (strips + 1) * girth, ">=", coil)
    work.check("strips and what is left make the coil", strips * girth + left, "=", coil)


@topic("strips from a coil", "takeoff")
def strips_from_a_coil(
    work: Working,
    girth: Annotated[
        Length, Slot("How wide is each strip, its girth?", bare=("in",), above=0, most=120, name="girth", usual=(1, 48))
    ],
    coil: Annotated[
        Length,
        Slot("How wide is the coil?", bare=("in",), above=0, most=120, kept="coil width", name="coil width", over="girth",
             usual=(8, 60)),
    ],
) -> None:  # fmt: skip
    """How many whole strips of a girth come out of a coil's width, and what is left of it; nothing is lost to a shear.

    Refuses a strip wider than the coil. Source: arithmetic.
    """
    strips = work.answer("strips", _strips(work, girth, coil))
    _left_of_width(work, girth, coil, strips)
    work.caution(METAL_CAUTION)
    count = int(work.value(strips))
    if count > MOST_STRIPS_MARKED:
        work.caution(f"More than {MOST_STRIPS_MARKED} strips: the marks are not listed.")
        return
    marks = [Mark(f"strip {number}", number * Fraction(work.value(girth))) for number in range(1, count + 1)]
    put_marks(work, marks)
    draw_strip(work, marks, float(work.value(coil)), "across the coil")
