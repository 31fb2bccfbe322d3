"""Trim round windows and doors: how much of it there is, and the pieces it is in."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import DUST_CAUTION, SAW_CAUTION
from solvers.coverage import NO_WASTE, Waste, whole_pieces, with_waste
from solvers.cut_plan import order_of, planned
from solvers.errors import NeedMore
from solvers.exact import ceil
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Choice, Opening, Piece, Slot
from solvers.slots import Stock as Sold
from solvers.topics.cutlist import EIGHTH
from solvers.topics.sticks import Stock
from solvers.wall_parts import refuse_no_opening, sides_of
from solvers.working import Working

LONGER = "Measured along the opening's edge: a piece mitred at both ends is longer by twice the trim's width, less any reveal."


class Sides(Choice):
    """Which sides of an opening are trimmed; of a door the legs and the head, of anything else all four, unless said."""

    ALL = "all four sides"
    THREE = "two legs and a head"


class Faces(Choice):
    """Whether an opening is trimmed inside and outside."""

    BOTH = "both faces of the wall"


Trimmed = Annotated[tuple[Opening, ...], Slot("Which openings, and how big: how wide by how high?")]


@topic("trim round openings", "takeoff")
def trim_round_openings(
    work: Working,
    openings: Trimmed,
    sides: Annotated[Sides | None, Slot("All four sides, or two legs and a head?", name="sides trimmed")] = None,
    faces: Annotated[Faces | None, Slot("One face of the wall, or both?", name="faces trimmed")] = None,
    stock: Stock | None = None,
    waste: Waste = NO_WASTE,
) -> None:
    """Length of trim round openings, inches, along their edges, or sticks of it; none at a door's floor, no waste unless said.

    Refuses openings of no size. Source: arithmetic; what is trimmed is common practice.
    """
    if not openings:
        raise NeedMore("openings", "What size are the openings that are trimmed?")
    total: Any = 0
    round_: Any = 0
    mixed = len({"door" in one.what for one in openings}) > 1
    for opening, label, wide, high in sides_of(work, openings, "in"):
        refuse_no_opening(work, opening, wide, high, "trim")
        heads = _heads(opening, sides, mixed)
        each = work.step(f"round {label}", 2 * high + heads * wide, _why(opening, heads), "in")
        total += opening.count * each
        round_ += opening.count * (2 * (wide + high) - (2 - heads) * wide)
    if faces is Faces.BOTH:
        total, round_ = 2 * total, 2 * round_
    length = work.step("round them all", total, "so many of each" + (", on both faces of the wall" if faces else ""), "in")
    need = with_waste(work, "with waste", length, waste)
    pieces = _pieces(openings, sides, mixed)
    if stock is None:
        work.answer("length of trim", need)
    else:
        _sticks(work, pieces * (2 if faces is Faces.BOTH else 1), need, stock)
        work.also("length of trim", length)
    said = [f"{one.count} at {work.text(work.term('', one.length.to('in').value, 'in'))}" for one in pieces]
    work.also_word("pieces on a face", ", ".join(said))
    work.check("all round, less what is left off at the floor", round_, "=", length)
    work.caution(LONGER, SAW_CAUTION, DUST_CAUTION)
    work.source("doors: two legs and a head, other openings: all four sides unless said: common practice")
    _draw(work, openings[0], _heads(openings[0], sides, mixed) == 1)


def _pieces(openings: tuple[Opening, ...], sides: Sides | None, mixed: bool) -> list[Piece]:
    """Every piece of trim on one face of the wall, so many of a length."""
    both = ((Piece(2 * one.count, one.height), Piece(_heads(one, sides, mixed) * one.count, one.width)) for one in openings)
    return [piece for pair in both for piece in pair]


def _sticks(work: Working, pieces: list[Piece], need: Any, stock: Any) -> None:
    """How many sticks: as many as the length needs, or as the pieces can be cut from where that is more.

    A piece that is longer than a stick is joined, and the length alone tells.
    """
    stick = Fraction(stock.value) * 12
    by_length = work.value(ceil(need / 12 / stock))
    whole = all(piece.length.to("in").value <= stick for piece in pieces)
    cut = sum(one.times for one in planned(order_of(work, pieces, (Sold(Length(stick, "in")),), EIGHTH.value))[1]) if whole else 0
    if cut <= by_length:
        whole_pieces(work, "sticks", need / 12, stock, "whole sticks, rounded up", "the sticks, end to end,")
        return
    count = work.term("by the cut list", cut, "count")
    why = "the fewest that the pieces can be cut from, with 1/8 in for each cut and no piece joined; a cut list tells each stick"
    sticks = work.answer("sticks", 1 * count, why, "count", "sticks")
    work.check("the sticks, end to end, reach", sticks * stock, ">=", need / 12)


def _heads(opening: Opening, sides: Sides | None, mixed: bool) -> int:
    """How many of its pieces lie level: the head of a door, head and sill of anything else, unless said.

    All four sides of windows and doors together are said of the windows: nobody trims a floor.
    """
    door = "door" in opening.what
    legs_and_head = door if sides is None or (mixed and sides is Sides.ALL) else sides is Sides.THREE
    return 1 if legs_and_head else 2


def _why(opening: Opening, heads: int) -> str:
    return "two legs and a head" if heads == 1 else "two sides, the head and the sill"


def _draw(work: Working, opening: Opening, open_below: bool) -> None:
    """The first opening with what is trimmed of it."""
    wide, high = (float(size.to("in").value) for size in (opening.width, opening.height))
    view = work.view(f"{opening.what}, its trimmed edges solid")
    view.line((0, 0), (0, high))
    view.line((0, high), (wide, high))
    view.line((wide, high), (wide, 0))
    view.line((wide, 0), (0, 0), "hidden" if open_below else "edge")
    view.dimension((0, high), (wide, high), work.text(work.term("", opening.width.to("in").value, "in")), side=1)
    view.dimension((wide, 0), (wide, high), work.text(work.term("", opening.height.to("in").value, "in")), side=-1)
