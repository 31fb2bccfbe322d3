"""A wall as the take-offs need it: gross, openings, gable and net, checked by its corners, and drawn."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Annotated, Any

from solvers.binding import Slope
from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.quantities import Area, Length, Pitch
from solvers.slots import Choice, Opening, Slot
from solvers.working import Working

WallLong = Annotated[Length, Slot("What is the length of the wall?", unit="ft", bare=("ft",), above=0, most=2000, usual=(6, 200))]
WallTall = Annotated[
    Length, Slot("What is the height of the wall?", unit="ft", bare=("ft", "in"), plain=30, above=0, most=200, usual=(5, 60))
]
WallOpenings = Annotated[tuple[Opening, ...], Slot("What openings are in it?")]
OpenedArea = Annotated[
    Area, Slot("How much area is open?", above=0, most=100_000, name="area of the openings", cued=True, usual=(2, 3000))
]
# The job's pitch is taken only where it is said that there is a gable: it must not change the answer otherwise.
GableOver = Annotated[Pitch, Slot("What is the pitch of the gable over it?", above=0, kept="pitch", name="pitch of the gable")]


class Gable(Choice):
    """Whether the triangle over the wall counts."""

    IN = "in"


GableIn = Annotated[Gable, Slot("Is there a gable over it?", name="gable over the wall")]


@dataclass(frozen=True, slots=True)
class Wall:
    """The areas of a wall in ft², as Terms on the page; `openings` and `gable` are None when there are none."""

    gross: Term
    net: Term
    openings: Term | None
    gable: Term | None
    rise: Term | None  # height of the gable over the wall, ft
    placed: tuple[Opening, ...] = ()  # the openings, turned where only that way they fit


def measure_wall(
    work: Working,
    length: Term,
    height: Term,
    openings: tuple[Opening, ...] | None,
    pitch: Slope | None = None,
    opened: Term | None = None,
    peak: Term | None = None,
    over: Gable | None = None,
) -> Wall:
    """Work the areas and check them by the corners; `peak` is the gable's height over the wall, where that was said.

    `over` says that a gable counts: its pitch or height is asked for. Refuses openings that do not fit the wall.
    """
    if over is Gable.IN and pitch is None and peak is None:
        raise NeedMore("pitch", "What is the pitch of the gable over it?")
    wall = work.step("wall", length * height, "length by height", "ft2")
    rise = gable = None
    gross = wall
    if peak is not None:
        rise = peak
    elif pitch is not None:
        rise = work.step("gable height", length / 2 * pitch.rise / pitch.run, "the pitch over half the width", "ft")
    if rise is not None:
        gable = work.step("gable", length * rise / 2, "half of width by height, a triangle", "ft2")
        gross = work.step("gross", wall + gable, "the wall and the gable over it", "ft2")
    placed = _turned(work, openings or (), length, height + rise if rise else height)
    taken = opening_area(work, placed)
    if opened is not None:
        taken = opened if taken is None else work.step("all openings", taken + opened, "those by size and the rest", "ft2")
    net = gross
    if taken is not None:
        _refuse_misfits(work, placed, length, height + rise if rise else height)
        work.refuse_when(
            work.value(gross - taken) <= 0,
            f"the openings come to {work.text(taken)} and the whole wall is {work.text(gross)}: check their sizes",
        )
        net = work.step("net", gross - taken, "what is left when the openings are out", "ft2")
        work.check("net and openings make the gross", net + taken, "=", gross)
    corners = [(0, 0), (length, 0), (length, height), *([(length / 2, height + rise)] if rise else []), (0, height)]
    work.check("gross area by the corners (shoelace rule)", shoelace(corners), "=", gross)
    return Wall(gross, net, taken, gable, rise, placed)


def shoelace(corners: Sequence[tuple[Any, Any]]) -> Any:
    """Area of a polygon from its corners, counter-clockwise."""
    pairs = zip(corners, [*corners[1:], corners[0]], strict=True)
    return sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs) / 2


def sides_of(work: Working, openings: tuple[Opening, ...], unit: str) -> Iterator[tuple[Opening, str, Term, Term]]:
    """Each opening with the name it has in the working, and its width and height in `unit`; says which sizes are assumed."""
    for number, opening in enumerate(openings, 1):
        label = opening.what if len(openings) == 1 else f"{opening.what} {number}"
        sides = (("width", opening.width), ("height", opening.height))
        wide, high = (work.term(f"{label} {way}", size.to(unit).value, unit) for way, size in sides)
        yield opening, label, wide, high
        if opening.assumed:
            work.caution(f"Assumed: {opening.assumed}. Say it as 3-0 by 6-8 to be sure.")


def opening_area(work: Working, openings: tuple[Opening, ...]) -> Term | None:
    """All openings together, ft²; None when there are none. Refuses sizes and counts that can't be."""
    total: Any = 0
    for opening, _, wide, high in sides_of(work, openings, "ft"):
        refuse_no_opening(work, opening, wide, high, "take out")
        total += opening.count * (wide * high)
    return work.step("openings", total, "width by height of each", "ft2") if openings else None


def refuse_no_opening(work: Working, opening: Opening, wide: Term, high: Term, verb: str) -> None:
    """Refuse an opening of no size, and fewer than one of it to do with what `verb` says."""
    for size, way in ((wide, "wide"), (high, "high")):
        work.refuse_when(
            work.value(size) <= 0, f"an opening can't be {work.text(size)} {way}: say the {opening.what}'s size again"
        )
    work.refuse_when(opening.count < 1, f"I can't {verb} {opening.count} openings: say how many there are")


def _turned(work: Working, openings: tuple[Opening, ...], length: Term, height: Any) -> tuple[Opening, ...]:
    """The openings, those turned that are higher than the wall as said and fit it the other way: a 7 by 9 garage door."""
    long, tall = float(work.value(12 * length)), float(work.value(12 * height))
    found = []
    for opening in openings:
        wide, high = opening.width.to("in").value, opening.height.to("in").value
        if high > tall and wide <= tall and high <= long:
            sizes = [work.text(work.term("", side / 12, "ft")) for side in (high, wide)]
            work.caution(f"Assumed: the {opening.what} is {sizes[0]} wide and {sizes[1]} high, since it fits no other way.")
            found.append(replace(opening, width=opening.height, height=opening.width))
        else:
            found.append(opening)
    return tuple(found)


def _refuse_misfits(work: Working, openings: tuple[Opening, ...], length: Term, height: Any) -> None:
    for opening in openings:
        for size, room, way in ((opening.width, length, "wide"), (opening.height, height, "high")):
            term = work.term("", size.to("ft").value, "ft")
            work.refuse_when(
                work.value(room - term) < 0,
                f"an opening {work.text(term)} {way} does not fit a wall of {work.text(room, 'ft')}: say it again",
            )


def draw_wall(work: Working, wall: Wall, length: Term, height: Term) -> None:
    """The wall to scale; openings stand evenly along it, as where they are was not said."""
    long, tall = float(length.value), float(height.value)
    view = work.view("the wall, openings not in place" if wall.placed else "the wall")
    corners = [(0.0, 0.0), (long, 0.0), (long, tall)]
    if wall.rise is not None:
        corners.append((long / 2, tall + float(wall.rise.value)))
    view.polygon([*corners, (0.0, tall)], fill="wall")
    each = [opening for opening in wall.placed for _ in range(min(opening.count, 12))]
    room = (long - sum(float(o.width.to("ft").value) for o in each)) / (len(each) + 1) if each else 0.0
    at = max(room, 0.0)
    for opening in each:
        wide, high = float(opening.width.to("ft").value), float(opening.height.to("ft").value)
        bottom = 0.0 if opening.what == "door" else max((tall - high) / 2, 0.0)
        view.polygon([(at, bottom), (at + wide, bottom), (at + wide, bottom + high), (at, bottom + high)], fill="opening")
        at += wide + max(room, 0.0)
    view.dimension((0, 0), (long, 0), work.text(length), side=-1)
    view.dimension((0, 0), (0, tall), work.text(height), side=1)
    view.label((long / 2, tall * 0.9), f"net {work.text(wall.net)}")
