"""Sheets of plywood, board or rigid foam over a wall or an area."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import HEIGHT_CAUTION
from solvers.coverage import NO_WASTE, ORDER_CAUTION, CoverArea, Waste, whole_pieces, with_waste
from solvers.errors import NeedMore
from solvers.exact import Term, ceil
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.wall_faces import Face, FaceLong, FaceOpenings, FaceTall, GablePitch, GableTall
from solvers.wall_parts import OpenedArea
from solvers.working import Working

SheetWidth = Annotated[
    Length,
    Slot("What is the width of a sheet?", unit="ft", bare=("ft", "in"), plain=12, least=1, most=20, name="sheet width",
         cued=True, usual=(2, 16)),
]  # fmt: skip
SheetLength = Annotated[
    Length,
    Slot("How long is a sheet?", unit="ft", bare=("ft", "in"), plain=20, least=1, most=20, name="sheet length",
         cued=True, usual=(2, 16)),
]  # fmt: skip
SheetThick = Annotated[
    Length,
    Slot("How thick is a sheet?", bare=("in",), above=0, most=6, name="sheet thickness", cued=True, usual=(Fraction(1, 8), 4)),
]
Alike = Annotated[Count, Slot("How many of them are there?", least=1, most=100, name="faces alike", cued=True, usual=(1, 12))]
FOUR_FEET = Length(Fraction(4), "ft", "4 ft")
EIGHT_FEET = Length(Fraction(8), "ft", "8 ft")


@topic("sheets", "takeoff")
def sheets(
    work: Working,
    area: CoverArea | None = None,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
    alike: Alike | None = None,
    sheet_width: SheetWidth = FOUR_FEET,
    sheet_length: SheetLength = EIGHT_FEET,
    sheet_thickness: SheetThick | None = None,
    waste: Waste = NO_WASTE,
) -> None:
    """How many sheets cover an area, a wall or a gable, by area; sheets of 4 by 8 ft and no waste unless said.

    Of a thickness, how high they stack is named beside it; of a wall without openings or gable, the sheets where no offcut
    is used again, standing and lying.
    Source: arithmetic.
    """
    if sheet_width.value > sheet_length.value:  # said the long way first
        sheet_width, sheet_length = sheet_length, sheet_width
    whole = area is None and wall_length is not None and wall_height is not None and not (openings or opened)
    face = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened).measured(work)
    if face is None:
        raise NeedMore("area")
    if alike is not None:
        face = work.step("all faces", face * alike, "as many alike", "ft2")
    need = with_waste(work, "area with waste", face, waste)
    each = work.step("one sheet covers", sheet_width * sheet_length, "its width by its length", "ft2")
    count = whole_pieces(work, "sheets", need, each, "whole sheets, rounded up", "the sheets")
    work.also("area each sheet covers", each)
    work.also("area to cover", face)
    if sheet_thickness is not None:
        work.also("height of the stack", count * sheet_thickness, "in")
    if whole and pitch is None and gable_height is None and wall_length is not None and wall_height is not None:
        _unpieced(work, wall_length, wall_height, sheet_width, sheet_length, 1 if alike is None else alike)
    work.check("what the sheets cover over the need is less than a sheet", each, ">=", count * each - need)
    work.caution(
        "By area, so what is cut off one place is used in another; gaps between sheets are the maker's.", ORDER_CAUTION,
        HEIGHT_CAUTION,
    )  # fmt: skip


def _unpieced(work: Working, long: Term, high: Term, width: Term, length: Term, alike: Term | int) -> None:
    """The sheets where no offcut is used again, standing on end and lying down."""
    for name, across, up in (("standing", width, length), ("lying", length, width)):
        rows = work.step(f"rows, {name}", ceil(high / up), "sheets one over another", "count")
        row = work.step(f"in a row, {name}", ceil(long / across), "sheets side by side", "count")
        work.also(f"sheets {name}, no offcut used again", rows * row * alike, "count")
