"""The one side of a wall from its area and the other."""

from __future__ import annotations

from typing import Annotated

from solvers.errors import NeedMore
from solvers.quantities import Area, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.working import Working


@topic("side of a wall", "takeoff")
def side_of_a_wall(
    work: Working,
    area: Annotated[Area, Slot("How much area is the wall?", above=0, most=1_000_000, name="area", usual=(20, 20_000))],
    height: Annotated[
        Length,
        Slot("How high is the wall?", unit="ft", bare=("ft", "in"), plain=30, above=0, most=200, cued=True, usual=(2, 60)),
    ]
    | None = None,
    length: Annotated[
        Length, Slot("How long is the wall?", unit="ft", bare=("ft",), above=0, most=2000, cued=True, usual=(4, 400))
    ]
    | None = None,
) -> None:
    """How long a wall of a known area and height is, or how high, ft; a plain rectangle with nothing taken out.

    Refuses both sides. Source: geometry.
    """
    work.refuse_when(
        height is not None and length is not None,
        "with both sides of the wall told there is nothing left to find: ask for its area, or leave one side out",
    )
    told = height if height is not None else length
    if told is None:
        raise NeedMore("height", "How high is the wall, or how long?")
    other = work.answer("height" if height is None else "length", area / told, "the area, shared out along the other side", "ft")
    work.also("area in squares", area / 100, "square")
    work.check("the sides give the area back", other * told, "=", area)
    work.caution("A plain rectangle is taken, with no openings out of it and no gable on it.")
    long, tall = (float(other.value), float(told.value)) if length is None else (float(told.value), float(other.value))
    view = work.view("the wall")
    view.polygon([(0, 0), (long, 0), (long, tall), (0, tall)], fill="wall")
    view.dimension((0, 0), (long, 0), work.text(other if length is None else told), side=-1)
    view.dimension((0, 0), (0, tall), work.text(told if length is None else other), side=1)
