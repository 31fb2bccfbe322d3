"""Fasteners: how long, through the layers and into the stud."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.constants import MM_PER_INCH
from solvers.exact import Term
from solvers.layers import layer_terms, named
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Layer, Slot
from solvers.strips import stack_view
from solvers.working import Working

ASK_PENETRATION = "How much penetration into the stud? 1 1/4 in is a common minimum."
STOCKED = tuple(
    Fraction(text)
    for text in (
        "3/4",
        "1",
        "5/4",
        "3/2",
        "13/8",
        "7/4",
        "2",
        "9/4",
        "5/2",
        "11/4",
        "3",
        "13/4",
        "7/2",
        "4",
        "9/2",
        "5",
        "6",
        "7",
        "8",
        "10",
        "12",
    )
)
STOCKED_MM = (
    20,
    25,
    30,
    35,
    40,
    45,
    50,
    55,
    60,
    65,
    70,
    75,
    80,
    90,
    100,
    110,
    120,
    130,
    140,
    150,
    160,
    180,
    200,
    220,
    240,
    260,
    280,
    300,
)
LEAST_PENETRATION = Fraction(5, 4)  # in; the common minimum of COMMON
STOCK_SOURCE = "lengths stocked: common practice"
COMMON = (
    "penetration: vinyl 1 1/4 in into nailable substrate (IRC R703.11.1.2, from memory); "
    "fibre cement nails 1 in into studs (IBC 1405.16, published)"
)
FASTENING_CAUTION = (
    "A common minimum; the cladding's maker and the code in force decide. Eyes covered; mind wires and pipes behind."
)


@topic("fastener length", "fastening")
def fastener_length(
    work: Working,
    layers: Annotated[tuple[Layer, ...], Slot("Through which layers, and how thick? Like 5/8 cladding, 3/4 strapping.")],
    penetration: Annotated[Length, Slot(ASK_PENETRATION, bare=("in",), above=0, most=12, usual=(Fraction(1, 2), 4))],
) -> None:
    """Least length of a nail or screw, inches: all the layers and the penetration.

    Refuses layers and penetration of nothing. Penetration is asked for when not said, with the common minimum named.
    """
    terms = layer_terms(work, layers)
    through = work.step("layers", sum(terms[1:], terms[0]), "all it goes through", unit="in") if len(terms) > 1 else terms[0]
    least = work.answer("least length", through + penetration, "the layers and what holds", "in", "L")
    _stocked(work, least)
    work.also("through the layers", through)
    inverse = work.step("holding", least - through, "what is left past the layers", unit="in")
    work.check("that length holds as much as was asked", inverse, ">=", penetration)
    parts = [work.term(term.name, term.value * MM_PER_INCH.value, "mm") for term in [*terms, penetration]]
    work.check("the same in millimetres", sum(parts[1:], parts[0]) / MM_PER_INCH, "=", least)
    work.caution(FASTENING_CAUTION)
    work.source(STOCK_SOURCE, COMMON)
    stack = [(layer.what, term) for layer, term in zip(reversed(named(layers)), reversed(terms), strict=True)]
    stack_view(work, "section, from the stud out", stack, through)
    view = work.views[-1]
    deep, inside = float(work.value(through)), float(penetration.value)
    view.line((-inside, deep * 0.1), (deep, deep * 0.1), "cut")
    view.label((0, -deep * 0.5), f"fastener {work.text(least)}")


@topic("fastener penetration", "fastening")
def fastener_penetration(
    work: Working,
    layers: Annotated[tuple[Layer, ...], Slot("Through which layers, and how thick? Like 5/8 cladding, 3/4 strapping.")],
    fastener: Annotated[Length, Slot("How long is the nail or screw?", bare=("in",), above=0, most=24, usual=(1, 14), cued=True)],
) -> None:
    """How far a nail or screw goes into what holds it, inches: its length less all the layers.

    Refuses layers of nothing, and a fastener that ends within them. What is called enough is the maker's and the code's.
    """
    terms = layer_terms(work, layers)
    through = work.step("layers", sum(terms[1:], terms[0]), "all it goes through", unit="in") if len(terms) > 1 else terms[0]
    long, thick = work.text(fastener), work.text(through)
    work.refuse_when(fastener.value <= through.value, f"{long} ends within the {thick} that it goes through: it holds nothing")
    holds = work.answer("penetration", fastener - through, "what is left past the layers", "in", "p")
    work.also("through the layers", through)
    work.also("against the common minimum of 1 1/4 in", holds - LEAST_PENETRATION, "in")
    parts = [work.term(term.name, term.value * MM_PER_INCH.value, "mm") for term in [fastener, *terms]]
    work.check("the same in millimetres", (parts[0] - sum(parts[2:], parts[1])) / MM_PER_INCH, "=", holds)
    work.caution(FASTENING_CAUTION)
    work.source(COMMON)
    stack = [(layer.what, term) for layer, term in zip(reversed(named(layers)), reversed(terms), strict=True)]
    stack_view(work, "section, from the stud out", stack, through)
    view = work.views[-1]
    deep = float(work.value(through))
    view.line((-float(work.value(holds)), deep * 0.1), (deep, deep * 0.1), "cut")
    view.label((0, -deep * 0.5), f"holds {work.text(holds)}")


def _stocked(work: Working, least: Term) -> None:
    """The next length that shops have, in the system it was asked in."""
    if work.metric:
        tens = work.step("least in mm", least * MM_PER_INCH, "shops sell by the millimetre", unit="mm")
        found = next((size for size in STOCKED_MM if size >= tens.value), None)
        value = None if found is None else Fraction(found) / MM_PER_INCH.value
    else:
        value = next((size for size in STOCKED if size >= least.value), None)
    if value is None:
        work.also_word(
            "next stocked length", "none in common stock: a structural screw to order, or strap and fasten in two steps"
        )
        return
    stocked = work.term("stocked", value, "in")
    work.also("next stocked length", stocked)
    work.check("the stocked length is long enough", stocked, ">=", least)
