"""Jack rafters: how much longer each is than the one before, and how it is cut against the hip or valley."""

from __future__ import annotations

from typing import Annotated

from solvers.common import HEIGHT_CAUTION, RoofPitch
from solvers.exact import atan, cos, sqrt
from solvers.quantities import Length
from solvers.registry import topic
from solvers.roof import rise_per_inch, theta_of
from solvers.slope_drawing import number
from solvers.slots import Slot
from solvers.working import Working

Centres = Annotated[
    Length, Slot("How far apart are the jacks, on centre?", bare=("in",), above=0, most=96, name="centres", usual=(8, 48))
]


@topic("jack rafters", "slope")
def jack_rafters(work: Working, pitch: RoofPitch, spacing: Centres) -> None:
    """How much longer each jack rafter is than the one before, inches along the slope, both roofs at one pitch.

    Beside it the cuts: the plumb cut is the common rafter's, and the saw leans over by 45° along it for the side cut.
    Refuses a pitch of 0. Source: geometry; the US Navy's Builder manual, NAVEDTRA 14044, has the same for a framing square.
    """
    theta, per_inch = theta_of(work, pitch), rise_per_inch(work, pitch)
    run = work.step("run", 1 * spacing, "in plan the hip is at 45°: as far in as on along the plate", unit="in")
    longer = work.answer("difference", run / cos(theta), "that run, along the slope", "in", "difference")
    rise = work.step("rise", run * per_inch, "each starts so much higher on the hip", unit="in")
    bevel = work.step("bevel", atan(run / spacing), "the hip's face stands plumb, and crosses at that in plan")
    work.also("higher up the hip each", rise)
    work.also("plumb cut", theta)
    work.also("bevel of the side cut", bevel)
    if spacing.unit in ("in", "ft"):  # the square is in inches
        blade = work.step("blade", 12 * cos(theta), "with 12 on the other leg of the square", unit="in")
        work.also("side cut on the framing square, 12 and", blade)
    work.check("squares of its run and its rise", sqrt(run**2 + rise**2), "=", longer)
    foot = sqrt(pitch.run**2 + pitch.rise**2) / pitch.run
    work.check("the common rafter in the framing-square table", run * foot, "=", longer)
    work.caution(HEIGHT_CAUTION)
    view = work.view("jacks against the hip, in plan")
    side = number(work, run)
    view.line((0, 0), (3 * side, 3 * side), "cut")
    for at in (1, 2):
        view.line((at * side, 0), (at * side, at * side))
    view.dimension((side, 0), (2 * side, 0), work.text(run), -1)
