"""Squareness of a frame: the diagonal it should have, and how far out a measured one is."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.exact import Term, acos, asin, atan, cos, floor, smaller, sqrt
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.working import Working

Side = Annotated[Length, Slot("How long is one side?", bare=("ft", "in"), plain=30, doubt=(20, 60), above=0, usual=(6, 1200))]
OtherSide = Annotated[
    Length, Slot("How long is the other side?", bare=("ft", "in"), plain=30, doubt=(20, 60), above=0, usual=(6, 1200))
]
SIDES_CAUTION = "A true diagonal squares the frame only when opposite sides are equal: measure all four sides first."
MODULES = {False: (Fraction(12), Fraction(1), Fraction(1, 16)), True: (Fraction(1000, 254), Fraction(10, 254))}


@topic("square check", "triangles")
def square_check(work: Working, side: Side, other_side: OtherSide) -> None:
    """Diagonal of a rectangle from its two sides, inches, and the largest 3-4-5 that fits inside.

    Refuses a side of nothing or less. Source: Pythagoras.
    """
    diagonal = work.answer("diagonal", sqrt(side**2 + other_side**2), "corner to corner, both ways alike", "in")
    angle = work.step("a", atan(other_side / side), "how steep the diagonal lies on the first side")
    work.check("the diagonal by its angle", side / cos(angle), "=", diagonal)
    _three_four_five(work, side, other_side)
    work.also("diagonal's angle to the first side", angle)
    work.caution(SIDES_CAUTION)
    _draw_frame(work, side, other_side, diagonal)


def _three_four_five(work: Working, side: Term, other_side: Term) -> None:
    """The largest 3-4-5 that fits: parts of whole feet, of inches or sixteenths on a small frame; metric likewise."""
    short, long = sorted((side, other_side), key=work.value)
    fits = min(Fraction(work.value(short)) / 3, Fraction(work.value(long)) / 4)
    size = next((size for size in MODULES[work.metric] if fits >= size), None)
    if size is None:
        return
    unit = work.term("one part", size, "in")
    why = f"how many times 3 and 4 parts of {work.text(unit)} go into the sides"
    parts = work.step("k", floor(smaller(short / (3 * unit), long / (4 * unit))), why, "count")
    for name, times in (("3-4-5, short leg", 3), ("3-4-5, long leg", 4), ("3-4-5, diagonal", 5)):
        work.also(name, times * parts * unit, "in")


@topic("out of square", "triangles")
def out_of_square(
    work: Working,
    side: Side,
    other_side: OtherSide,
    diagonal: Annotated[
        Length,
        Slot(
            "What does the diagonal measure?",
            bare=("ft", "in"),
            plain=30,
            doubt=(20, 60),
            above=0,
            name="measured diagonal",
            usual=(8, 1500),
        ),
    ],
) -> None:
    """How far a measured diagonal is from the true one, inches: more than nothing when it measures long.

    Refuses a diagonal that no frame with these sides can have. Source: Pythagoras and the law of cosines.
    """
    work.refuse_when(
        work.value(diagonal - side - other_side) >= 0,
        f"a diagonal of {work.text(diagonal)} can't be right: it is as long as both sides together "
        f"({work.text(side + other_side, 'in')}), so measure the diagonal again",
    )
    work.refuse_when(
        work.value(diagonal) <= max(work.value(side), work.value(other_side)),  # no frame leans so far that is built
        f"a diagonal of {work.text(diagonal)} can't be right: it is too short to reach across sides of "
        f"{work.text(side)} and {work.text(other_side)}, so check which number is which",
    )
    true = work.step("true diagonal", sqrt(side**2 + other_side**2), "what a square frame would measure", "in")
    out = work.answer("out of square", diagonal - true, "measured less true", "in")
    slide = work.step("slide", (diagonal**2 - true**2) / (2 * side), "how far the other side leans along the first", "in")
    corner = work.step(
        "corner",
        acos((side**2 + other_side**2 - diagonal**2) / (2 * side * other_side)),
        "the corner facing that diagonal",
    )
    other = work.step("other diagonal", sqrt(2 * true**2 - diagonal**2), "what the other diagonal then reads", "in")
    work.also("true diagonal", true)
    work.also("corner facing the measured diagonal", corner)
    work.also("slide it back along the first side", slide)
    work.also("other diagonal, if opposite sides are equal", other)
    work.also_word("which corner opens", _opens(work, out))
    work.check("the corner by its lean", 90 + asin(slide / other_side), "=", corner)
    work.caution(SIDES_CAUTION)
    _draw_racked(work, side, other_side, slide, diagonal, corner)


def _opens(work: Working, out: Term) -> str:
    if work.value(out) == 0:
        return "none: it is square"
    if work.value(out) > 0:
        return "the two corners facing the measured diagonal are over 90°, the two it runs into are under"
    return "the two corners the measured diagonal runs into are over 90°, the two facing it are under"


def _draw_frame(work: Working, side: Term, other_side: Term, diagonal: Term) -> None:
    wide, high = float(work.value(side)), float(work.value(other_side))
    view = work.view("frame from above")
    view.polygon([(0, 0), (wide, 0), (wide, high), (0, high)], fill="none")
    view.line((0, 0), (wide, high), "mark")
    view.line((0, high), (wide, 0), "hidden")
    view.dimension((0, 0), (wide, 0), work.text(side), -1)
    view.dimension((wide, 0), (wide, high), work.text(other_side), -1)
    view.label((wide / 2, high * 0.6), work.text(diagonal))


def _draw_racked(work: Working, side: Term, other_side: Term, slide: Term, diagonal: Term, corner: Term) -> None:
    wide, lean = float(work.value(side)), float(work.value(slide))
    up = float(work.value(sqrt(other_side**2 - slide**2)))
    seen = lean if abs(lean) > wide / 12 else (wide / 12 if lean > 0 else -wide / 12 if lean < 0 else 0.0)
    view = work.view("frame from above, the lean drawn large")
    view.polygon([(0, 0), (wide, 0), (wide, up), (0, up)], fill="none", style="hidden")
    view.polygon([(0, 0), (wide, 0), (wide + seen, up), (seen, up)], fill="none")
    view.line((0, 0), (wide + seen, up), "mark")
    view.label((wide / 2, up * 0.6), work.text(diagonal))
    view.label((wide * 0.8, up * 0.15), work.text(corner))
    view.dimension((0, 0), (wide, 0), work.text(side), -1)
    view.dimension((wide, up), (wide + seen, up), f"slide {work.text(slide)}", 1)
