"""The area of a roof from its plan and its pitch."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import HEIGHT_CAUTION, AnyPitch
from solvers.coverage import TEN_PERCENT, Waste
from solvers.errors import NeedMore
from solvers.exact import Term, cos, sqrt
from solvers.quantities import Area, Length
from solvers.registry import topic
from solvers.roof import rise_per_inch, theta_of
from solvers.slots import Choice, Slot
from solvers.working import Working

Long = Annotated[
    Length, Slot("How long and how wide is the roof in plan?", unit="ft", bare=("ft",), above=0, most=1000, usual=(4, 200))
]
Wide = Annotated[Length, Slot("How wide is the roof in plan?", unit="ft", bare=("ft",), above=0, most=1000, usual=(4, 150))]
Plan = Annotated[
    Area, Slot("How much area is the plan?", above=0, most=1_000_000, name="plan area", cued=True, usual=(20, 20_000))
]
AllRound = Annotated[
    Length,
    Slot(
        "How much overhang is there?", bare=("in",), least=0, most=96, kept="overhang", name="overhang all round", usual=(0, 48)
    ),
]
NONE = Length(Fraction(0), "in", "none")


class RoofIn(Choice):
    """What of a roof is asked for in place of its area."""

    SQUARES = "squares"


@topic("roof area", "takeoff")
def roof_area(
    work: Working,
    pitch: AnyPitch,
    length: Long | None = None,
    width: Wide | None = None,
    plan: Plan | None = None,
    overhang: AllRound = NONE,
    waste: Waste = TEN_PERCENT,
    asked: Annotated[RoofIn, Slot("Do you want squares?", name="roof in")] | None = None,
) -> None:
    """Area of a roof along its slopes, ft², from the plan of the building and one pitch; gable or hip, it is the same.

    Where squares are asked for, those are the answer, with the waste, which goes into them alone. The overhang is level and
    all round. Refuses a negative pitch. Source: geometry.
    """
    flat = _plan(work, length, width, plan, overhang)
    ratio = rise_per_inch(work, pitch)
    factor = work.step("slope factor", sqrt(1 + ratio**2), "so much of slope lies over each foot of plan", "none")
    theta = theta_of(work, pitch)
    why, by_hundreds = "the plan, by that factor", "a hundred square feet each, with the waste"
    if asked is RoofIn.SQUARES:
        area = work.step("area", flat * factor, why, "ft2")
        work.answer("squares with the waste", area * (1 + waste / 100) / 100, by_hundreds, "square", "squares")
        work.also("roof area", area)
    else:
        area = work.answer("roof area", flat * factor, why, "ft2")
        squares = work.step("squares", area * (1 + waste / 100) / 100, by_hundreds, "square")
        work.also("squares with the waste", squares)
    work.also("plan area", flat)
    work.also("slope factor", factor)
    work.also("roof angle", theta)
    work.check("the roof's shadow on the level is its plan", area * cos(theta), "=", flat)
    work.caution("Every slope is taken at that one pitch; dormers are not in it.", HEIGHT_CAUTION)


def _plan(work: Working, length: Term | None, width: Term | None, plan: Term | None, overhang: Term) -> Term:
    """What the roof covers on the level, ft²."""
    if plan is not None and length is None:
        more = work.value(overhang) > 0
        work.refuse_when(more, "I can't put an overhang round an area: say the length and the width, or take the overhang in")
        return plan
    if length is None:
        raise NeedMore("length", "How long and how wide is the roof in plan?")
    if width is None:
        raise NeedMore("width", "How wide is the roof in plan?")
    if work.value(overhang) > 0:
        length = work.step("length with the overhang", length + 2 * overhang / 12, "an overhang at each end", "ft")
        width = work.step("width with the overhang", width + 2 * overhang / 12, "and at each eave", "ft")
    flat = work.step("plan", length * width, "length by width", "ft2")
    wide, long = float(width.value), float(length.value)
    view = work.view("plan")
    view.polygon([(0, 0), (long, 0), (long, wide), (0, wide)], fill="wall")
    view.line((0, wide / 2), (long, wide / 2), "hidden")
    view.dimension((0, 0), (long, 0), work.text(length), side=-1)
    view.dimension((0, 0), (0, wide), work.text(width), side=1)
    return flat
