"""A whole circle: how far round it is, and its area."""

from __future__ import annotations

from typing import Annotated

from sympy import pi

from solvers.errors import NeedMore
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.working import Working


class CirclePart(Choice):
    """What of a circle is asked for in place of its circumference."""

    AREA = "area"


@topic("circle", "triangles")
def circle(
    work: Working,
    across: Annotated[
        Length, Slot("How far across is the circle?", bare=("in",), above=0, most=12_000, name="across", usual=(1, 240))
    ]
    | None = None,
    circle_radius: Annotated[
        Length,
        Slot("What is its radius?", bare=("in",), above=0, most=6000, name="radius of the circle", cued=True, usual=(1, 240)),
    ]
    | None = None,
    asked: Annotated[CirclePart, Slot("Do you want its area?", name="asked of the circle")] | None = None,
) -> None:
    """How far round a circle is, inches, from how far across it is or its radius; or its area, square feet, where asked.

    Refuses both where they differ. Source: geometry.
    """
    if across is None and circle_radius is None:
        raise NeedMore("across")
    if across is not None and circle_radius is not None:
        work.refuse_when(
            work.value(across) != work.value(2 * circle_radius),
            f"a circle {work.text(across)} across has half of that for its radius, and you said {work.text(circle_radius)}: "
            "leave one out",
        )
    if across is None:
        assert circle_radius is not None
        across = work.step("across", 2 * circle_radius, "twice the radius", "in")
    round_ = work.step("all the way round", pi * across, "the distance across, times π", "in")
    area = work.step("area in the circle", pi * (across / 12) ** 2 / 4, "π times the square of it, over four", "ft2")
    if asked is CirclePart.AREA:
        work.answer("area", area * 1, "in square feet", "ft2", symbol="area")
        work.also("circumference", round_, "in")
    else:
        work.answer("circumference", round_ * 1, "all the way round", "in", symbol="round")
        work.also("area", area, "ft2")
    work.check("a quarter of the way round by the radius", round_ / 4, "=", pi * across / 2 / 2)
    work.check("the area by the way round and the radius", area, "=", round_ / 12 * (across / 24) / 2)
