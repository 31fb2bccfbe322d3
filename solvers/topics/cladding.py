"""Boards and squares of cladding, and soffit panels."""

from __future__ import annotations

from typing import Annotated

from solvers.common import DUST_CAUTION, HEIGHT_CAUTION
from solvers.coverage import (
    NO_WASTE,
    ORDER_CAUTION,
    TEN_PERCENT,
    BoardExposure,
    BoardLength,
    CoverArea,
    Waste,
    check_whole,
    whole_pieces,
    with_waste,
)
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, floor
from solvers.quantities import Area, Count, Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.wall_faces import Face, FaceLong, FaceOpenings, FaceTall, GablePitch, GableTall
from solvers.wall_parts import OpenedArea
from solvers.working import Working

CourseLength = Annotated[
    Length,
    Slot(
        "How long is each course?", unit="ft", bare=("ft",), above=0, most=2000, name="course length", cued=True, usual=(6, 200)
    ),
]
SoffitRun = Annotated[
    Length, Slot("How long is the run of soffit?", unit="ft", bare=("ft",), above=0, most=5000, over="cover", usual=(3, 400))
]
SquaresArea = Annotated[
    Area, Slot("How much area, in square feet?", bare=("ft",), above=0, most=1_000_000, name="area", usual=(20, 20_000))
]  # squares are of area alone, so plain feet are square feet
SoffitDepth = Annotated[
    Length, Slot("What is the depth of the soffit?", bare=("in",), above=0, most=240, unless="cover", usual=(4, 72))
]
PanelCover = Annotated[
    Length,
    Slot(
        "What width does one panel cover?", bare=("in",), above=0, most=60, kept="panel cover", name="panel cover", usual=(3, 24)
    ),
]
PanelLength = Annotated[
    Length,
    Slot(
        "How long is a panel as bought?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=100,
        name="panel length",
        cued=True,
        usual=(4, 24),
    ),
]


class BoardsAs(Choice):
    """What of the boards is asked for in place of their number."""

    LENGTH = "length in all"


@topic("cladding boards", "takeoff")
def cladding_boards(
    work: Working,
    area: CoverArea | None = None,
    courses: Annotated[Count, Slot("How many courses?", least=1, most=2000, cued=True, usual=(1, 150))] | None = None,
    exposure: BoardExposure | None = None,
    board_length: BoardLength | None = None,
    course_length: CourseLength | None = None,
    waste: Waste = TEN_PERCENT,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
    wanted: Annotated[BoardsAs | None, Slot("Boards, or their length in all?", name="asked")] = None,
) -> None:
    """How many boards clad an area, a wall or a gable at an exposure, or so many courses of a length; waste of 10 % assumed.

    Where their length in all is asked and that of one is not known, it is that, ft. Refuses nothing but sizes that can't be.
    Source: arithmetic; the waste is common practice.
    """
    if courses is not None and (course_length is not None or area is None):
        area = None  # courses of a length are nearer to what is nailed up than an area
        length = _from_courses(work, courses, course_length)
    else:
        area = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened).measured(work)
        length = _from_area(work, area, exposure)
    if board_length is None and wanted is None:
        raise NeedMore("board_length", "How long are the boards?")
    need = with_waste(work, "with waste", length, waste)
    if board_length is None:
        work.answer("length of boards", need, "the boards in all, end to end", "ft")
        work.also("total length, no waste", length)
        work.check("the boards in all cover the length", need, ">=", length)
        work.caution(ORDER_CAUTION, DUST_CAUTION)
        return
    boards = whole_pieces(work, "boards", need, board_length, "whole boards, rounded up", "the boards, end to end,")
    work.also("total length", length)
    if exposure is not None:
        covers = work.step("one board covers", board_length * exposure / 12, "its length by the exposure", "ft2")
        squares = work.step("squares", length * exposure / 12 * (1 + waste / 100) / 100, "100 ft² each, waste and all", "square")
        work.also("squares", squares)
        work.also("area per board", covers)
        if area is not None:
            work.check("boards by the area each covers", boards * covers, ">=", area * (1 + waste / 100))
    work.caution(ORDER_CAUTION, DUST_CAUTION)
    work.source("waste of 10 % unless said otherwise: common practice")
    _draw_board(work, board_length, exposure, boards)


def _from_area(work: Working, area: Term | None, exposure: Term | None) -> Term:
    if area is None:
        raise NeedMore("area", "How much area, in square feet, or how many courses of what length?")
    if exposure is None:
        raise NeedMore("exposure")
    return work.step("total length", area / (exposure / 12), "area over the exposure, both in feet", "ft")


def _from_courses(work: Working, courses: Term, course_length: Term | None) -> Term:
    if course_length is None:
        raise NeedMore("course_length", "How long is each course?")
    return work.step("total length", courses * course_length, "every course, end to end", "ft")


def _draw_board(work: Working, board_length: Term, exposure: Term | None, boards: Term) -> None:
    view = work.view("one board (not to scale)", stretch=True)
    view.polygon([(0, 0), (10, 0), (10, 1), (0, 1)])
    view.dimension((0, 1), (10, 1), work.text(board_length), side=1)
    if exposure is not None:
        view.dimension((0, 0), (0, 1), f"{work.text(exposure)} shows", side=1)
    view.label((5, 0.5), f"{work.text(boards)} of these")


@topic("squares", "takeoff")
def squares(
    work: Working,
    area: SquaresArea | None = None,
    waste: Waste = TEN_PERCENT,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
) -> None:
    """Squares of cladding or shingles to cover an area, a wall or a gable, 100 ft² each; waste of 10 % assumed.

    Shown to a hundredth; `also` has whole squares to order. Source: arithmetic; the waste is common practice.
    """
    area = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened).measured(work)
    if area is None:
        raise NeedMore("area", "How much area, in square feet?")
    need = with_waste(work, "with waste", area, waste)
    found = work.answer("squares", need / 100, "a square is 100 ft²", "square", "squares")
    whole = work.step("whole squares", ceil(found), "rounded up to order", "square")
    work.also("whole squares bought", whole)
    work.also("area with waste", need)
    work.check("squares of 10 ft by 10 ft", found * 10 * 10, "=", area + area * waste / 100)
    check_whole(work, whole, found, 1, "whole squares")
    work.caution(ORDER_CAUTION)
    work.source("waste of 10 % unless said otherwise: common practice")


@topic("soffit panels", "takeoff")
def soffit_panels(
    work: Working,
    run: SoffitRun,
    cover: PanelCover,
    depth: SoffitDepth | None = None,
    panel_length: PanelLength | None = None,
    waste: Waste = NO_WASTE,
) -> None:
    """How many soffit panels, cut to the depth, close in a run of eave; with the edge channel, and the area where it is said.

    Given the length a panel is bought in, also how many to buy. Refuses one shorter than the depth. Source: arithmetic.
    """
    need = with_waste(work, "run with waste", run, waste)
    panels = whole_pieces(work, "panels", 12 * need, cover, "whole panels side by side, rounded up", "the panels, side by side,")
    if depth is not None:
        work.also("soffit area", work.step("area", run * depth / 12, "run by depth", "ft2"))
    elif panel_length is not None:
        raise NeedMore("depth")
    channel = work.step("edge channel", 2 * run, "one at the wall and one at the fascia, the whole run", "ft")
    work.also("edge channel, two runs", channel)
    if depth is not None and panel_length is not None:
        _bought(work, panels, depth, panel_length)
    last = work.step("last panel", cover - (panels * cover - 12 * need), "what the last panel has to cover", "in")
    work.also("last panel covers, per run", last)
    work.check("full panels and the last one make the run", (panels - 1) * cover + last, "=", 12 * need)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION)
    if depth is not None:
        _draw_soffit(work, run, depth, cover, panels)


def _bought(work: Working, panels: Term, depth: Term, panel_length: Term) -> None:
    work.refuse_when(
        work.value(12 * panel_length) < work.value(depth),
        f"a panel {work.text(panel_length)} long does not reach over a depth of {work.text(depth)}: say it again",
    )
    each = work.step("from each length", floor(12 * panel_length / depth), "whole pieces of the depth from one", "count")
    lengths = work.step("lengths to buy", ceil(panels / each), "rounded up", "count")
    work.also("pieces per panel length", each)
    work.also("panel lengths to buy", lengths)
    check_whole(work, lengths, panels, each, "pieces from those lengths")


def _draw_soffit(work: Working, run: Term, depth: Term, cover: Term, panels: Term) -> None:
    long, deep = 12 * float(run.value), float(depth.value)
    view = work.view("looking up at the soffit", stretch=True)
    count = int(panels.value)
    view.polygon([(0, 0), (long, 0), (long, deep), (0, deep)])
    for number in range(1, min(count, 60)):
        at = number * float(cover.value)
        view.line((at, 0), (at, deep), "level")
    view.dimension((0, 0), (long, 0), work.text(run), side=-1)
    view.dimension((0, 0), (0, deep), work.text(depth), side=1)
    view.label((long / 2, deep / 2), f"{count} panels covering {work.text(cover)}")
