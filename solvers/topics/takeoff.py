"""The take-off of a wall in one breath: everything to load for it, as one list."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import DUST_CAUTION, HEIGHT_CAUTION
from solvers.coverage import ORDER_CAUTION, TEN_PERCENT, BoardExposure, BoardLength, Waste, whole_pieces, with_waste
from solvers.exact import Term, ceil
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Opening, Slot
from solvers.topics.rolls import refuse_wide_lap
from solvers.wall_parts import GableOver, OpenedArea, Wall, WallLong, WallOpenings, WallTall, draw_wall, measure_wall
from solvers.working import Working

StrapSpacing = Annotated[
    Length,
    Slot(
        "How far apart are the straps?", bare=("in",), above=0, most=48, kept="stud spacing", name="strap spacing", usual=(8, 32)
    ),
]
RollWidth = Annotated[
    Length, Slot("How wide is the membrane?", bare=("ft",), above=0, kept="roll width", name="roll width", usual=(18, 144))
]
RollLength = Annotated[
    Length, Slot("How long is a roll?", unit="ft", bare=("ft",), above=0, kept="roll length", name="roll length", usual=(15, 500))
]
Lap = Annotated[Length, Slot("How wide are the laps?", bare=("in",), least=0, kept="lap", name="membrane lap", usual=(0, 24))]
SIXTEEN, NINE_FEET = Length(Fraction(16), "in"), Length(Fraction(9), "ft")
HUNDRED_FEET, SIX_INCHES = Length(Fraction(100), "ft"), Length(Fraction(6), "in")


@topic("take-off", "takeoff")
def take_off(
    work: Working,
    length: WallLong,
    height: WallTall,
    exposure: BoardExposure,
    board_length: BoardLength,
    openings: WallOpenings | None = None,
    pitch: GableOver | None = None,
    opened: OpenedArea | None = None,
    waste: Waste = TEN_PERCENT,
    strap_spacing: StrapSpacing = SIXTEEN,
    roll_width: RollWidth = NINE_FEET,
    roll_length: RollLength = HUNDRED_FEET,
    lap: Lap = SIX_INCHES,
) -> None:
    """What to load for a wall: boards, then squares, starter, corners, channel, strapping, membrane, screen, fasteners.

    Boards and squares are by net area with waste; strapping, membrane and fasteners run past the openings, as they are
    bought. Two outside corners are taken. Refuses openings that do not fit. Source: arithmetic, common practice.
    """
    wall = measure_wall(work, length, height, openings, pitch, opened)
    _boards(work, wall, exposure, board_length, waste)
    _trim(work, length, height, wall.placed)
    _strapping(work, wall, length, height, exposure, strap_spacing)
    _membrane(work, wall, roll_width, roll_length, lap)
    work.caution("Two outside corners are taken, and a plain rectangle but for its gable.", ORDER_CAUTION)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION)
    work.source("waste, two outside corners, one fastener for each course at each strap: common practice")
    draw_wall(work, wall, length, height)


def _boards(work: Working, wall: Wall, exposure: Term, board_length: Term, waste: Term) -> None:
    run = work.step("boards end to end", wall.net / (exposure / 12), "net area over the exposure, both in feet", "ft")
    need = with_waste(work, "with waste", run, waste)
    boards = whole_pieces(work, "boards", need, board_length, "whole boards, rounded up", "the boards, end to end,")
    covers = work.step("one board covers", board_length * exposure / 12, "its length by the exposure", "ft2")
    area = work.step("area with waste", wall.net * (1 + waste / 100), "for the squares", "ft2")
    work.check("boards by the area each covers", boards * covers, ">=", area)
    work.also("net wall area", wall.net)
    work.also("gross area", wall.gross)
    if wall.openings is not None:
        work.also("openings", wall.openings)
    if wall.gable is not None:
        work.also("gable area", wall.gable)
    work.also("squares", area / 100, "square")


def _trim(work: Working, length: Term, height: Term, openings: tuple[Opening, ...]) -> None:
    work.also("starter", work.step("starter", length, "along the bottom", "ft"))
    work.also("corner trim", work.step("corner trim", 2 * height, "an outside corner at each end", "ft"))
    around: Any = 0
    for number, opening in enumerate(openings, 1):
        label = opening.what if len(openings) == 1 else f"{opening.what} {number}"
        wide = work.term(f"{label} width", opening.width.to("ft").value, "ft")
        high = work.term(f"{label} height", opening.height.to("ft").value, "ft")
        around += opening.count * ((wide + 2 * high) if opening.what == "door" else 2 * (wide + high))
    if openings:
        work.also("channel", work.step("channel", around, "round every opening, three sides of a door", "ft"))
    work.also("bug screen", work.step("bug screen", 2 * length, "in at the bottom and out at the top", "ft"))


def _strapping(work: Working, wall: Wall, length: Term, height: Term, exposure: Term, spacing: Term) -> None:
    straps = work.step("straps", ceil(12 * length / spacing) + 1, "one at each end, none further apart than the spacing", "count")
    courses = work.step("courses", ceil(12 * height / exposure), "up the wall, rounded up", "count")
    total, nails = straps * height, straps * courses
    if wall.gable is not None:
        total += wall.gable / (spacing / 12)
        nails += ceil(wall.gable / (exposure / 12) / (spacing / 12))
    strapping = work.step("strapping", total, "all straps end to end, openings not taken out", "ft")
    fasteners = work.step("cladding fasteners", nails, "one for each course at each strap", "count")
    work.also("straps, each the height of the wall", straps)
    work.also("strapping", strapping)
    work.also("courses", courses)
    work.also("cladding fasteners", fasteners)
    work.check("straps reach the end of the wall", (straps - 1) * spacing, ">=", 12 * length)
    work.check("courses reach the top", courses * exposure, ">=", 12 * height)


def _membrane(work: Working, wall: Wall, roll_width: Term, roll_length: Term, lap: Term) -> None:
    refuse_wide_lap(work, lap, roll_width)
    each = work.step("one roll covers", (roll_width - lap) / 12 * roll_length, "less its lap, by its length", "ft2")
    rolls = work.step("membrane rolls", ceil(wall.gross / each), "whole rolls over the gross area", "count")
    work.also("membrane rolls", rolls)
    work.check("the rolls cover the gross area", rolls * each, ">=", wall.gross)
