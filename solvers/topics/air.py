"""The air behind the cladding: what a gap of a depth does, and how far the layers bring the face out."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import CODE_CAUTION
from solvers.constants import MM_PER_INCH
from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.layers import layer_terms, named
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Choice, Layer, Slot
from solvers.strips import stack_view
from solvers.working import Working

THREE_EIGHTHS, THREE_QUARTERS, TEN = Fraction(3, 8), Fraction(3, 4), 10  # in, in, mm
NBC_SOURCE = "National Building Code of Canada 9.27.2.2.(1): a capillary break is a drained and vented space of at least 10 mm"
PRACTICE = "3/8 in and over ventilated, 3/4 in roomier: common practice"
HALF_MM = "3/8 in is 9.525 mm, about half a millimetre short of 10 mm: where the rule says 10 mm, a 3/8 in batten does not pass."
GapDepth = Annotated[
    Length, Slot("How deep is the gap? What depth?", bare=("in",), above=0, most=12, name="depth", usual=(Fraction(1, 16), 4))
]


@topic("air gap", "water")
def air_gap(work: Working, depth: GapDepth) -> None:
    """What kind of air gap a depth behind the cladding makes: drainage only, or ventilated from 3/8 in.

    Refuses a depth of nothing and over 12 in. Sources: NBC 9.27.2.2 for 10 mm; common practice for 3/8 and 3/4 in.
    """
    work.metric = False  # both scales are shown, whichever it was said in
    millimetres = work.step("depth in mm", depth * MM_PER_INCH, "1 in is exactly 25.4 mm", unit="mm")
    small = work.term("three eighths", THREE_EIGHTHS, "in")
    ten = work.term("10 mm", TEN, "mm")
    over = work.step("over three eighths", depth - small, "against 3/8 in; negative is short of it", unit="in")
    over_ten = work.step("over 10 mm", millimetres - ten, "against 10 mm; negative is short of it", unit="mm")
    ventilated = over.value >= 0
    kind = "ventilated" if ventilated else "drainage only"
    work.word("kind", kind)
    work.also("depth", depth)
    work.also("depth", millimetres)
    work.also("against 3/8 in", over)
    work.also("against 10 mm", over_ten)
    work.also_word("by the 10 mm rule", "deep enough" if over_ten.value >= 0 else "not deep enough")
    work.also_word("room", "roomier: 3/4 in or more" if depth.value >= THREE_QUARTERS else "less than 3/4 in")
    # 10 mm stands 0.475 mm over 3/8 in: the two comparisons must be that far apart.
    work.check("the two comparisons lie 10 mm less 3/8 in apart", over * MM_PER_INCH - over_ten, "=", ten - small * MM_PER_INCH)
    if ventilated != (over_ten.value >= 0):
        work.caution(HALF_MM)
    work.caution(CODE_CAUTION)
    work.source(NBC_SOURCE, PRACTICE)
    _say_kind(work, depth, ventilated, over_ten.value >= 0)
    _gap_view(work, depth, millimetres)


def _say_kind(work: Working, depth: Term, ventilated: bool, ten: bool) -> None:
    work.said = "ventilated" if ventilated else "drainage only, it is under 3/8 of an inch"
    if ventilated and depth.value >= THREE_QUARTERS:
        work.said += ", and roomier: 3/4 of an inch or more"
    if ventilated and not ten:
        work.said += (
            ", but half a millimetre short of the 10 millimetre rule"
            if depth.value == THREE_EIGHTHS
            else (", but short of the 10 millimetre rule")
        )


def _gap_view(work: Working, depth: Term, millimetres: Term) -> None:
    """The section: wall, gap, cladding, with 3/8 in marked."""
    view = work.view("section")
    gap, tall = float(depth.value), max(float(depth.value) * 2, 1.5)
    view.polygon([(-0.5, 0), (0, 0), (0, tall), (-0.5, tall)], fill="wall")
    view.polygon([(gap, 0), (gap + 0.5, 0), (gap + 0.5, tall), (gap, tall)])
    view.dimension((0, 0), (gap, 0), f"{work.text(depth)}, {work.text(millimetres)}", side=-1)
    view.line((float(THREE_EIGHTHS), 0), (float(THREE_EIGHTHS), tall), "hidden")
    view.label((float(THREE_EIGHTHS), tall * 1.05), "3/8 in")
    view.label((gap + 0.25, tall * 0.5), "cladding")


class Swap(Choice):
    """One layer in the place of another: of the two that were said, which goes."""

    FOR = "the first out, the second in"


@topic("build-out", "water")
def build_out(
    work: Working,
    layers: Annotated[
        tuple[Layer, ...], Slot("Which layers, from the stud out, and how thick? Like 1/2 sheathing, 3/4 strapping.")
    ],
    swap: Annotated[Swap | None, Slot("Is one layer taken out and the other put in?")] = None,
    gone: Annotated[
        Length | None, Slot("How thick is the layer that goes out?", bare=("in",), above=0, cued=True, usual=(Fraction(1, 16), 6))
    ] = None,
) -> None:
    """Depth from the stud to the face of the cladding, inches: the sum of the layers; what a swap of two changes.

    Refuses a layer of nothing or less, and asks for the others where only one was said.
    `also` says what going from a 3/8 in to a 3/4 in gap adds.
    """
    terms = layer_terms(work, layers)
    if swap is not None or (gone is not None and len(terms) == 1):
        _swapped(work, [gone, *terms] if gone is not None else terms)  # type: ignore[list-item]
        return
    if not terms:
        raise NeedMore("layers", "Which layers are there, from the stud out, and how thick?")
    if len(terms) == 1:
        raise NeedMore("layers", "Which other layers are there, and how thick? The face stands off by all of them.")
    total = terms[0]
    for term in terms[1:]:
        total = work.step("depth", total + term, f"and the {term.name}", unit="in")
    work.answer("depth to the face", total)
    more = work.term("from 3/8 to 3/4 in", THREE_QUARTERS - THREE_EIGHTHS, "in")
    work.also("a 3/4 in gap for a 3/8 in one adds to trim and jamb depth", more)
    work.also("adds to fastener length", more)
    work.also("adds free area per foot, before the screen", more * 12, "in2perft")
    first = work.term(terms[0].name, terms[0].value * MM_PER_INCH.value, "mm")
    work.check(
        "the layers in millimetres, back in inches",
        sum((work.term(term.name, term.value * MM_PER_INCH.value, "mm") for term in terms[1:]), first) / MM_PER_INCH,
        "=",
        total,
    )
    work.caution("Measure the real thickness of each layer: names and sizes differ, and two layers of membrane add up.")
    stack_view(
        work,
        "section, from the stud out",
        list(zip((layer.what for layer in named(layers)), terms, strict=True)),
        total,
    )


def _swapped(work: Working, terms: list[Term]) -> None:
    """How much further out the face comes when one layer takes the place of another; negative for less."""
    if len(terms) != 2:
        raise NeedMore("layers", "Which layer goes out and which comes in? Say the two, with their thicknesses.")
    out, into = terms
    more = work.answer("face further out by", into - out, "the one comes out where the other goes in", "in")
    work.also("adds to trim and jamb depth", more)
    work.also("adds to fastener length", more)
    work.check("the old layer and what it gains make the new one", out + more, "=", into)
