"""Roof slope: pitch, angle, and the rise that goes with a run."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import AnyPitch, From, MeasuredFrom
from solvers.exact import Term, atan, cos, nearest, sin, sqrt, tan
from solvers.quantities import Angle, Length
from solvers.registry import topic
from solvers.roof import Across, Measured, RiseLength, RunLength, rise_per_inch, run_of, sloped, theta_of
from solvers.slope_drawing import slope_view
from solvers.slots import Choice, Slot
from solvers.working import Working

RoofAngle = Annotated[Angle, Slot("What is the angle, in degrees from level?", least=0, below=90)]
# The pitch is a ratio of the two, so bare numbers only have to be in one unit: inches do.
MeasuredRise = Annotated[Length, Slot("What is the rise?", bare=("in",), least=0, usual=(Fraction(1, 2), 240))]
MeasuredRun = Annotated[Length, Slot("What is the run?", bare=("in",), alike=True, above=0, usual=(2, 600))]
Tail = Annotated[Length, Slot("How long is the tail?", bare=("in",), above=0, most=96, name="overhang", cued=True, usual=(2, 48))]


class SlopeAs(Choice):
    """What a slope is wanted in; an angle unless said."""

    ANGLE = "degrees"
    GRADE = "percent"
    PITCH = "pitch"


class TailMeasured(Choice):
    """How the tail of a rafter was measured."""

    LEVEL = "level"
    SLOPE = "along the slope"


class PartAsked(Choice):
    """What of a slope is asked for in place of its rise."""

    RUN = "run"
    SPAN = "span"


class UpTo(Choice):
    """What was measured in place of the rise."""

    RAFTER = "common rafter"


@topic("roof angle", "slope")
def roof_angle(work: Working, pitch: AnyPitch, asked: SlopeAs | None = None) -> None:
    """Angle of a roof from level, degrees, from its pitch; its percent grade when that is asked.

    Refuses a negative pitch and one over 48 in 12. Source: geometry.
    """
    theta = work.step("θ", atan(pitch.rise / pitch.run), "rise over run is the tangent")
    grade = work.step("grade", 100 * pitch.rise / pitch.run, "rise in a hundred of run", unit="percent")
    if asked is SlopeAs.GRADE:
        work.answer("percent grade", grade)
        work.also("roof angle", theta)
    elif asked is SlopeAs.PITCH:
        twelve = work.term("run", 12, "in")
        work.answer("pitch", twelve * pitch.rise / pitch.run, "rise, had the run been 12", "in12", "rise")
        work.also("roof angle", theta)
        work.also("percent grade", grade)
    else:
        work.answer("roof angle", theta)
        work.also("percent grade", grade)
    plumb = work.step("from plumb", 90 - theta, "the same slope, measured from plumb")
    work.also("angle from plumb", plumb)
    work.also("pitch", pitch.rise, "in12")
    work.check("rise and run close on the slope", pitch.run * sin(theta), "=", pitch.rise * cos(theta))
    slope_view(work, pitch.run, pitch.rise, theta)


@topic("pitch of an angle", "slope")
def pitch_of_an_angle(work: Working, angle: RoofAngle, measured: MeasuredFrom | None = None) -> None:
    """Pitch, rise in 12, of a roof whose angle from level, or from plumb, is known.

    Refuses an angle of 90° and over. Source: geometry.
    """
    if measured is From.PLUMB:
        work.refuse_when(angle.value == 0, "a roof that stands plumb is a wall and has no pitch: say the angle again")
        angle = work.step("angle from level", 90 - angle, "level is square to plumb")
    twelve, half = work.term("run", 12, "in"), work.term("half", Fraction(1, 2), "in12")
    rise = work.answer("pitch", twelve * tan(angle), "the tangent is rise over run, and the run is 12", "in12", "rise")
    common = work.step("nearest", nearest(rise, half), "the nearest pitch to half an inch", unit="in12")
    work.also("nearest pitch", common)
    work.also("its angle", work.step("its angle", atan(common / twelve), "what that nearest pitch reads"))
    work.also("percent grade", 100 * rise / twelve, "percent")
    work.check("rise and run close on the slope", twelve * sin(angle), "=", rise * cos(angle))
    slope_view(work, twelve, work.term("rise", rise.value, "in"), angle)


@topic("pitch from rise and run", "slope")
def pitch_from_rise_and_run(
    work: Working,
    rise: MeasuredRise,
    run: MeasuredRun,
    across: Measured = None,
    asked: SlopeAs | None = None,
    rise_as: Annotated[UpTo, Slot("Is that the rise, or the rafter?", names="rise")] | None = None,
) -> None:
    """Pitch, rise in 12, from a rise and a run as measured; of a gable, half the width is the run; a rafter is the long side.

    The rise may be told `rise_as` the rafter, which the run then has to be shorter than.
    `asked` for the grade or the angle, that is the answer, and the pitch stands beside it.

    Refuses a run of nothing and a negative rise. Source: geometry.
    """
    if across is Across.RAFTER:
        work.refuse_when(work.value(run) <= work.value(rise), f"a rafter of {work.text(run)} does not rise {work.text(rise)}")
        run = _beside_rafter(work, "run", run, rise)
    else:
        run = run_of(work, run, across)
    if rise_as is UpTo.RAFTER:
        work.refuse_when(work.value(rise) <= work.value(run), f"a rafter of {work.text(rise)} does not reach {work.text(run)}")
        rise = _beside_rafter(work, "rise", rise, run)
    if asked is SlopeAs.GRADE:
        work.answer("percent grade", 100 * rise / run, "rise in a hundred of run", "percent")
        pitch = work.step("pitch", 12 * rise / run, "the rise, had the run been 12", "in12")
        work.also("pitch", pitch)
    elif asked is SlopeAs.ANGLE:
        pitch = work.step("pitch", 12 * rise / run, "the rise, had the run been 12", "in12")
        work.also("pitch", pitch)
        work.also("percent grade", 100 * rise / run, "percent")
    else:
        pitch = work.answer("pitch", 12 * rise / run, "the rise, had the run been 12", "in12")
        work.also("percent grade", 100 * rise / run, "percent")
    if asked is SlopeAs.ANGLE:
        theta = work.answer("roof angle", atan(rise / run), "rise over run is the tangent", "deg", "θ")
    else:
        theta = work.step("θ", atan(rise / run), "rise over run is the tangent")
        work.also("roof angle", theta)
    work.also("length along the slope", sqrt(rise**2 + run**2), "in")
    work.check("twelve of run at that angle rise as much", 12 * tan(theta), "=", pitch)
    slope_view(work, run, rise, theta)


def _beside_rafter(work: Working, name: str, rafter: Any, leg: Any) -> Term:
    """The leg, inches, that a rafter and the other leg leave."""
    rafter = work.term("rafter", work.value(rafter), "in")
    return work.step(name, sqrt(rafter**2 - leg**2), "the rafter is the long side of rise and run", unit="in")


@topic("sloped length", "slope")
def sloped_length(
    work: Working,
    pitch: AnyPitch,
    run: RunLength | None = None,
    rise: RiseLength | None = None,
    across: Measured = None,
    tail: Tail | None = None,
    measured: TailMeasured | None = None,
) -> None:
    """Length along the slope, inches, over a level run (or up a rise) at a pitch, and down to the end of a tail that is told.

    A tail is measured level and added to the run, unless it was said along the slope.
    Refuses a run or rise of nothing, and a rise and run that are not at that pitch. Source: geometry.
    """
    run, rise, theta = sloped(work, pitch, run if run is None else run_of(work, run, across), rise)
    if tail is not None and work.value(tail) > 0:
        plate = work.step("to the plate", run / cos(theta), "the run is the slope's shadow on the level", unit="in")
        out = tail
        if measured is TailMeasured.SLOPE:
            out = work.step("out", tail * cos(theta), "the tail along the slope, seen level", unit="in")
        run = work.step("whole run", run + out, "the tail goes further out", unit="in")
        rise = work.step("whole rise", run * rise_per_inch(work, pitch), "and as much lower", unit="in")
        work.also("without the tail", plate)
        work.also_word("overhang taken", (measured or TailMeasured.LEVEL).value)
    slope = work.answer("sloped length", run / cos(theta), "the run is the slope's shadow on the level", "in", "slope")
    work.also("rise", rise)
    work.also("run", run)
    work.also("roof angle", theta)
    work.check("squares of rise and run", rise**2 + run**2, "=", slope**2)
    slope_view(work, run, rise, theta, slope)


@topic("rise over a run", "slope")
def rise_over_a_run(
    work: Working, pitch: AnyPitch, run: RunLength, across: Measured = None, asked: PartAsked | None = None
) -> None:  # fmt: skip
    """Rise, inches, over a level run at a pitch; or the run, or twice it, where the rise or the rafter was told.

    Refuses a run of nothing and a negative pitch. Source: geometry.
    """
    asked = asked if across in (Across.RISE, Across.RAFTER) else None
    run = run_of(work, run, across, pitch)
    if asked is PartAsked.SPAN:
        work.answer("span", 2 * run, "as far again on the other side of the peak", "in", "span")
        work.also("run", run)
    elif asked is PartAsked.RUN:
        work.answer("run", run)
    per_inch = rise_per_inch(work, pitch)
    rise = work.step("rise", run * per_inch, "every inch of run climbs that much", unit="in")
    if asked is None:
        work.answer("rise", rise)
    else:
        work.also("rise", rise)
    theta = theta_of(work, pitch)
    slope = work.step("slope", run / cos(theta), "the run is the slope's shadow on the level", unit="in")
    work.also("sloped length", slope)
    work.also("roof angle", theta)
    work.check("the sloped length, stood up by its angle", slope * sin(theta), "=", rise)
    slope_view(work, run, rise, theta)
