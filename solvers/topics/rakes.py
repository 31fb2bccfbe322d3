"""Lengths on a roof's edges: rakes, gables, hips and valleys."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import HEIGHT_CAUTION, RoofPitch
from solvers.exact import Term, acos, atan, cos, sin, sqrt, tan
from solvers.quantities import Length
from solvers.registry import topic
from solvers.roof import Across, GableWidth, MeasuredWidth, RunLength, half_of, rise_per_inch, run_of, theta_of
from solvers.roof import Measured as MeasuredRun
from solvers.slope_drawing import gable_view, number
from solvers.slots import Choice, Slot
from solvers.working import Working

Overhang = Annotated[Length, Slot("How much overhang?", bare=("in",), least=0, most=96, kept="overhang", usual=(0, 48))]
WallUnder = Annotated[
    Length, Slot("How high is the wall?", bare=("ft",), above=0, name="wall height", cued=True, usual=(60, 300))
]
NO_OVERHANG = Length(Fraction(0), "in")


class Measured(Choice):
    """How an overhang on the rake was measured."""

    LEVEL = "level"
    SLOPE = "along the slope"


@topic("rake length", "slope")
def rake_length(
    work: Working,
    pitch: RoofPitch,
    width: GableWidth,
    overhang: Overhang = NO_OVERHANG,
    measured: Measured | None = None,
    across: MeasuredWidth = None,
) -> None:
    """Length of one rake, inches, from the peak down to the end of the overhang.

    The overhang is measured level and added to the run, unless it was said along the slope. Refuses a pitch of 0.
    Source: geometry.
    """
    theta = theta_of(work, pitch)
    half, width = half_of(work, width, across, pitch)
    per_inch = rise_per_inch(work, pitch)
    height = work.step("height", half * per_inch, "every inch of run climbs that much", unit="in")
    out, run = overhang, half
    if measured is Measured.SLOPE:
        out = work.step("out", overhang * cos(theta), "the overhang along the slope, seen level", unit="in")
    if overhang.value:
        run = work.step("whole run", half + out, "the overhang goes further out", unit="in")
    rake = work.answer("rake length", run / cos(theta), "the run is the rake's shadow on the level", "in", "rake")
    work.also("gable height", height)
    work.also("roof angle", theta)
    work.also("both rakes", 2 * rake, "in")
    if overhang.value:
        drop = work.step("drop", out * tan(theta), "the tail hangs below the plate", unit="in")
        work.also("drop of the overhang", drop)
        work.also_word("overhang taken", (measured or Measured.LEVEL).value)
    work.check("squares of the whole run and its rise", sqrt(run**2 + (run * per_inch) ** 2), "=", rake)
    work.caution(HEIGHT_CAUTION)
    gable_view(work, width, height, theta, rake, out)


@topic("gable height", "slope")
def gable_height(
    work: Working, pitch: RoofPitch, width: GableWidth, across: MeasuredWidth = None, wall: WallUnder | None = None
) -> None:
    """Height of a gable from plate to peak, inches, and how high the peak is where the height of the wall under it was told.

    Refuses a pitch of 0, which has no gable. Source: geometry; the peak is over the middle.
    """
    half, width = half_of(work, width, across, pitch)
    per_inch = rise_per_inch(work, pitch)
    height = work.answer("gable height", half * per_inch, "every inch of run climbs that much", "in", "height")
    theta = theta_of(work, pitch)
    rake = work.step("rake", half / cos(theta), "the rake without any overhang", unit="in")
    if wall is not None:
        peak = work.step("peak", wall + height, "the gable stands on the wall", unit="in")
        work.also("peak above the foot of the wall", peak)
        work.said = f"Gable height: {work.text(height)}; with the wall under it the peak is {work.text(peak)} up"
    work.also("rake length", rake)
    work.also("roof angle", theta)
    work.check("the rake, stood up by its angle", rake * sin(theta), "=", height)
    work.caution(HEIGHT_CAUTION)
    gable_view(work, width, height, theta)


class HipAsked(Choice):
    """What of a hip that was measured is asked for."""

    RUN = "run"
    RISE = "rise"


@topic("hip or valley length", "slope")
def hip_or_valley_length(
    work: Working,
    pitch: RoofPitch,
    run: RunLength,
    across: MeasuredRun = None,
    asked: Annotated[HipAsked | None, Slot("Is that the run or the rise of the hip?")] = None,
) -> None:
    """Length of a regular hip or valley, inches, over the run of the common rafter, both roofs at one pitch.

    Where the hip itself was measured, the run of the common rafter, or the rise. Refuses a pitch of 0.
    Source: geometry; the hip runs at 45° in plan, so its run is the common run × √2.
    """
    run, per_inch = run_of(work, run, across, pitch), rise_per_inch(work, pitch)
    rise = work.step("rise", run * per_inch, "the hip climbs as high as the common rafter", unit="in")
    level = work.step("hip run", run * sqrt(2), "in plan it crosses the corner at 45°", unit="in")
    backwards = across is Across.ALONG
    if backwards:
        _told_backwards(work, run, rise, asked)
    hip = work.step("hip", sqrt(level**2 + rise**2), "squares of its run and its rise", "in")
    if not backwards:
        work.answer("length", hip)
    foot = work.step("per foot", 12 * hip / run, "for each foot of common run", unit="in")
    seat = work.step("hip angle", atan(rise / level), "shallower than the roof, for its run is longer")
    work.also("per foot of run", foot)
    work.also("plumb cut of the hip", seat)
    work.also("level cut of the hip", work.step("level cut", 90 - seat, "square to the plumb cut"))
    work.also("run of the hip", level)
    common = work.step("common rafter", sqrt(run**2 + rise**2), "the squares of the common run and the rise", unit="in")
    work.also("longer than the common", hip - common, "in")
    if not backwards:
        work.also("rise", rise)
    backing = work.step("backing", atan(rise / hip), "length of the hip and its rise, set on the square")
    between = work.step("between", 180 - 2 * backing, "the two roofs lean away from the hip alike")
    work.also("backing", backing)
    work.also("angle between the roofs", between)
    theta = theta_of(work, pitch)
    work.check("the two roofs' normals, as vectors", acos(-(cos(theta) ** 2)), "=", between)
    work.check("run, run and rise are the edges of one box", sqrt(run**2 + run**2 + rise**2), "=", hip)
    work.check("a foot of run in the framing-square table", sqrt(2 * pitch.run**2 + pitch.rise**2), "=", foot)
    work.caution(HEIGHT_CAUTION)
    _hip_views(work, run, level, rise, hip, seat)


def _told_backwards(work: Working, run: Term, rise: Term, asked: HipAsked | None) -> None:
    """Answer with what is asked of a hip that was measured, and put the other beside it."""
    if asked is HipAsked.RISE:
        work.answer("rise", rise)
        work.also("run of the common rafter", run)
    else:
        work.answer("run of the common rafter", run)
        work.also("rise", rise)


def _hip_views(work: Working, run: Term, level: Term, rise: Term, hip: Term, seat: Term) -> None:
    """Plan, where the hip crosses the corner, and the hip seen square from its side."""
    plan = work.view("plan")
    side = number(work, run)
    plan.polygon([(0, 0), (side, 0), (side, side), (0, side)], "none", "level")
    plan.line((0, 0), (side, side), "cut")
    plan.dimension((0, 0), (side, 0), work.text(run), -1)
    plan.angle((0, 0), side * 0.25, 0, 45, "45°")
    view = work.view("the hip from its side")
    out, high = number(work, level), number(work, rise)
    view.line((0, 0), (out, 0), "level")
    view.line((out, 0), (out, high), "hidden")
    view.line((0, 0), (out, high))
    view.angle((0, 0), out * 0.3, 0, seat.value, work.text(seat))
    view.dimension((0, 0), (out, 0), work.text(level), -1)
    view.dimension((0, 0), (out, high), work.text(hip), 1)
