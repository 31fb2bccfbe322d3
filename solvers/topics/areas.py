"""Areas of walls and gables."""

from __future__ import annotations

from typing import Annotated

from solvers.binding import Slope
from solvers.common import HEIGHT_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, sqrt
from solvers.quantities import Area, Count, Length, Pitch
from solvers.registry import topic
from solvers.slots import Opening, Slot
from solvers.wall_faces import refuse_unlike
from solvers.wall_parts import GableIn, GableOver, OpenedArea, WallOpenings, draw_wall, measure_wall, opening_area
from solvers.working import Working

GableWidth = Annotated[
    Length, Slot("What is the width of the gable?", unit="ft", bare=("ft",), above=0, most=500, kept="gable width", usual=(4, 80))
]
GableTall = Annotated[
    Length,
    Slot(
        "How high is the gable at its peak?", unit="ft", bare=("ft", "in"), plain=40, above=0, most=200, cued=True, usual=(1, 40),
        instead=("pitch",)),
]  # fmt: skip
OverWall = Annotated[
    Length,
    Slot("How high is the gable over the wall?", unit="ft", bare=("ft", "in"), plain=40, above=0, most=200, cued=True,
         name="height of the gable", usual=(1, 40)),
]  # fmt: skip
EachLong = Annotated[
    Length, Slot("What is the length of the wall?", unit="ft", bare=("ft",), above=0, most=2000, unless="faces", usual=(6, 200))
]
EachTall = Annotated[
    Length,
    Slot(
        "What is the height of the wall?",
        unit="ft",
        bare=("ft", "in"),
        plain=30,
        above=0,
        most=200,
        unless="faces",
        usual=(5, 60),
    ),
]
Faces = Annotated[
    Area, Slot("How much area are the walls in all?", above=0, most=1_000_000, name="walls in all", cued=True, usual=(50, 50_000))
]


@topic("wall area", "takeoff")
def wall_area(
    work: Working,
    length: EachLong | None = None,
    height: EachTall | None = None,
    openings: WallOpenings | None = None,
    pitch: GableOver | None = None,
    opened: OpenedArea | None = None,
    peak: OverWall | None = None,
    over: GableIn | None = None,
    faces: Faces | None = None,
) -> None:
    """Net area of a wall, or of several together (`faces`), ft², openings taken out and the gable over it put in.

    Refuses openings that are greater than the wall, in one or all together. Source: geometry.
    """
    if faces is not None:
        _several_walls(work, faces, openings or (), opened)
        return
    wall = measure_wall(work, length, height, openings, pitch, opened, peak, over)
    work.answer("net wall area", wall.net)
    work.also("gross area", wall.gross)
    if wall.openings is not None:
        work.also("openings", wall.openings)
    if wall.gable is not None:
        work.also("gable area", wall.gable)
    work.also("net area in squares", wall.net / 100, "square")
    draw_wall(work, wall, length, height)


def _several_walls(work: Working, faces: Term, openings: tuple[Opening, ...], opened: Term | None) -> None:
    """Walls of several sizes, whose faces were added up as they were said."""
    taken = opening_area(work, openings)
    if opened is not None:
        taken = opened if taken is None else work.step("all openings", taken + opened, "those by size and the rest", "ft2")
    net = faces if taken is None else faces - taken
    work.refuse_when(work.value(net) <= 0, "the openings come to all of the walls or more: check their sizes")
    answer = work.answer("net wall area", net, "the walls together, openings out", "ft2")
    work.also("gross area", faces)
    if taken is not None:
        work.also("openings", taken)
    work.also("net area in squares", answer / 100, "square")
    work.check("net and openings make the walls", answer + (taken or 0), "=", faces)


@topic("gable area", "takeoff")
def gable_area(
    work: Working,
    width: GableWidth,
    pitch: Annotated[Pitch, Slot("What is the pitch, or the height of the gable?", kept="pitch", instead=("height",))]
    | None = None,
    height: GableTall | None = None,
    count: Annotated[Count, Slot("How many gables?", least=1, most=100, name="gables", cued=True, usual=(1, 12))] | None = None,
    openings: WallOpenings | None = None,
) -> None:
    """Area of the triangle of a gable, ft², from its width and the pitch, or its height where that is said; or of so many.

    Openings come out of it. Refuses a flat roof, which has no gable, and openings that leave nothing. Source: geometry.
    """
    if height is None or pitch is not None:
        rise = _height(work, width, pitch, "height" if height is None else "height by the pitch")
        refuse_unlike(work, width, height, rise)
        height = height or rise
    half = width * height / 2
    triangle = _opened(work, half, openings, count) if openings else _of_one(work, half, count)
    rake = work.step("rake", sqrt((width / 2) ** 2 + height**2), "each rake, over half the width", "ft")
    work.also("height of the gable", height)
    work.also("each rake, no overhang", rake)
    work.also("pitch of the gable", 24 * height / width, "in12")
    net = work.answered[1] if openings and work.answered else triangle
    work.also("area in squares", net / 100, "square")
    around = work.step("half around", (width + 2 * rake) / 2, "half of the three sides, for the check", "ft")
    heron = sqrt(around * (around - width) * (around - rake) ** 2)
    work.check("area from the three sides alone (Heron's rule)", heron, "=", triangle)
    work.caution(HEIGHT_CAUTION)
    _draw_gable(work, width, height, triangle)


def _opened(work: Working, half: object, openings: tuple[Opening, ...], count: Term | None) -> Term:
    """The area of a gable with its openings out, which is the answer; the whole triangle is given back."""
    many = count is not None and work.value(count) > 1
    work.refuse_when(many, "are the openings in each gable, or in one? Ask for one gable alone")
    triangle = work.step("triangle", half, "half of width by height, a triangle", "ft2")
    taken = opening_area(work, openings)
    net = triangle if taken is None else triangle - taken
    work.refuse_when(work.value(net) <= 0, "the openings come to all of the gable or more: check their sizes")
    work.answer("gable area", net, "openings out", "ft2")
    work.also("gross area", triangle)
    if taken is not None:
        work.also("openings", taken)
    return triangle


def _of_one(work: Working, half: object, count: Term | None) -> Term:
    """The area of one gable; the answer is that, or of so many alike."""
    why = "half of width by height, a triangle"
    if count is None:
        return work.answer("gable area", half, why, "ft2")
    area = work.step("area of one", half, why, "ft2")
    work.answer("gable area", area * count, "so many alike", "ft2")
    work.also("area of one", area)
    return area


def _height(work: Working, width: Term, pitch: Slope | None, name: str) -> Term:
    if pitch is None:
        raise NeedMore("pitch", "What is the pitch, or the height of the gable?")
    said = pitch.given.text or work.text(work.term("", pitch.given.value, pitch.given.unit))
    work.refuse_when(pitch.rise.value == 0, f"a roof of {said} is flat, so there is no gable: give a pitch over 0 in 12")
    return work.step(name, width / 2 * pitch.rise / pitch.run, "the pitch over half the width", "ft")


def _draw_gable(work: Working, width: Term, height: Term, area: Term) -> None:
    wide, tall = float(width.value), float(height.value)
    view = work.view("the gable")
    view.polygon([(0, 0), (wide, 0), (wide / 2, tall)], fill="wall")
    view.line((wide / 2, 0), (wide / 2, tall), "hidden")
    view.dimension((0, 0), (wide, 0), work.text(width), side=-1)
    view.dimension((wide / 2, 0), (wide / 2, tall), work.text(height), side=-1)
    view.label((wide / 4, tall / 6), work.text(area))
