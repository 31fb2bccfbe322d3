"""Wood across the grain: how much a board's width changes with its moisture."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.constants import MM_PER_INCH
from solvers.errors import NeedMore
from solvers.exact import Term, smaller
from solvers.quantities import Length, Percent
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.strips import growth_view
from solvers.wood_coefficients import MOVEMENT, Movement, Species, derived
from solvers.working import Working

ASK_SPECIES = "Which species: western red cedar, yellow cedar, Douglas-fir, redwood, red oak, white oak?"
ASK_MOISTURE = "From what moisture to what moisture, in percent?"
VALID = (6, 14)  # percent of moisture the handbook's coefficients are given for
ROUNDED = Fraction(2, 100_000)  # the table prints five places, of shrinkages printed to a tenth
BOARD_CAUTION = "An average: any one board may move a quarter more or less. Leave the gap for the wetter season."


class Grain(Choice):
    """How the board was sawn."""

    FLAT = "flat grain"
    VERTICAL = "vertical grain"


class Moisture(Choice):
    """Which way the moisture goes."""

    GAINS = "gaining moisture"
    LOSES = "drying"


def _moisture(ask: str, name: str) -> Slot:
    return Slot(ask, name=name, least=0, most=200, instead=("change", "way"))


@topic("wood movement", "movement")
def wood_movement(
    work: Working,
    width: Annotated[Length, Slot("How wide is the board? What width?", bare=("in",), above=0, usual=(1, 36))],
    species: Annotated[Species | None, Slot(ASK_SPECIES)] = None,
    grain: Grain = Grain.FLAT,
    wet: Annotated[Percent | None, _moisture(ASK_MOISTURE, "moisture before")] = None,
    dry: Annotated[Percent | None, _moisture("What moisture does it go to, in percent?", "moisture after")] = None,
    change: Annotated[
        Percent | None,
        Slot(ASK_MOISTURE, name="moisture change", least=-200, most=200, cued=True, instead=("wet", "dry")),
    ] = None,
    way: Annotated[Moisture | None, Slot("Is it drying or gaining moisture?")] = None,
) -> None:
    """Change of a board's width, inches, between two moistures: positive for swelling, negative for shrinkage.

    Refuses a negative moisture. Moisture over fibre saturation moves nothing and is not counted.
    Source: USDA Wood Handbook, table 13-5, meant for 6 to 14 % moisture.
    """
    if (change is None and (wet is None or dry is None)) or (change is not None and (wet is None) != (dry is None)):
        raise NeedMore("dry" if wet is not None else "wet", ASK_MOISTURE if wet is None else "")
    if species is None:
        raise NeedMore("species", ASK_SPECIES)
    row = MOVEMENT[species]
    change_term = _change(work, row, wet, dry, change, way)
    tangential = grain is Grain.FLAT
    value = row.tangential if tangential else row.radial
    coefficient = work.term("C", value, "none")
    moved = work.answer(
        "change of width", width * coefficient * change_term, "width, coefficient and change of moisture", "in", "ΔW"
    )
    after = work.step("width after", width + moved, "what it ends at", unit="in")
    work.also("width after", after)
    work.also("coefficient used, per percent", coefficient)
    other = work.term("C", row.radial if tangential else row.tangential, "none")
    work.also(f"were it {'vertical' if tangential else 'flat'} grain", width * other * change_term, "in")
    if row.shrinkage:
        _check_table(work, row, coefficient, tangential)
    work.check(
        "the same width in millimetres, back in inches",
        work.term("width", width.value * MM_PER_INCH.value, "mm") * coefficient * change_term / MM_PER_INCH,
        "=",
        moved,
    )
    work.caution(BOARD_CAUTION)
    _outside(work, wet, dry)
    work.source(row.source)
    growth_view(work, width, moved)


def _change(work: Working, row: Movement, wet: Term | None, dry: Term | None, change: Term | None, way: Moisture | None) -> Term:
    """The change of moisture that moves the board, in percent, signed."""
    if wet is not None and dry is not None:
        limit = work.term("fibre saturation", row.saturation, "percent")
        ends = [
            work.step(name, smaller(term, limit), "wetter than this, wood no longer moves", unit="percent")
            if term.value > row.saturation
            else term
            for name, term in (("M1", wet), ("M2", dry))
        ]
        return work.step("ΔM", ends[1] - ends[0], "from before to after", unit="percent")
    assert change is not None
    if way is Moisture.LOSES and change.value > 0:
        return work.step("ΔM", -change, "it dries, so it shrinks", unit="percent")
    return change


def _check_table(work: Working, row: Movement, coefficient: Term, tangential: bool) -> None:
    """The coefficient against the shrinkage of another table of the handbook."""
    assert row.shrinkage
    from_shrinkage = work.term("from shrinkage", derived(row.shrinkage[int(tangential)], row.saturation), "none")
    apart = abs(coefficient.value - from_shrinkage.value)
    work.check(
        "the coefficient agrees with the green to oven-dry shrinkage of table 4-3",
        work.term("apart", apart, "none"),
        "<=",
        work.term("its rounding", ROUNDED, "none"),
    )


def _outside(work: Working, *moistures: Term | None) -> None:
    said = [term for term in moistures if term is not None]
    if any(not VALID[0] <= term.value <= VALID[1] for term in said):
        work.caution(f"The coefficients are meant for {VALID[0]} to {VALID[1]} % moisture; outside that this is a little rough.")
