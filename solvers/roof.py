"""Steps that several roof topics share: the roof angle, and the run, rise and angle of one slope."""

from __future__ import annotations

from typing import Annotated

from solvers.binding import Slope
from solvers.errors import NeedMore
from solvers.exact import Term, atan, cos, sqrt
from solvers.quantities import Length
from solvers.slots import Choice, Slot
from solvers.working import Working

RunLength = Annotated[Length, Slot("What is the run?", bare=("ft", "in"), plain=30, doubt=(24, 48), above=0, usual=(14, 480))]
RiseLength = Annotated[Length, Slot("What is the rise?", bare=("ft", "in"), plain=30, doubt=(24, 48), above=0, usual=(6, 360))]
GableWidth = Annotated[
    Length, Slot("How wide is the gable?", bare=("ft",), above=0, name="gable width", kept="gable width", usual=(48, 900))
]


class Across(Choice):
    """What was measured where a run is wanted; the run unless said."""

    RUN = "run"
    GABLE = "width of the building"
    RISE = "rise"
    RAFTER = "common rafter"
    HIP = "run of the hip"
    ALONG = "length of the hip"


_WHICH = "Is that the run, or the whole width of the building?"
Measured = Annotated[Across | None, Slot(_WHICH, name="run measured as", names="run")]
MeasuredWidth = Annotated[Across | None, Slot(_WHICH, name="width measured as", names="width")]
AGREE = 0.02  # of the rise: measured twice, a rise and a run differ by no more from the pitch that was said


def theta_of(work: Working, pitch: Slope) -> Term:
    """The step most roof topics start with."""
    return work.step("θ", atan(pitch.rise / pitch.run), "the pitch, as an angle from level")


def rise_per_inch(work: Working, pitch: Slope) -> Term:
    """The pitch as a plain ratio, exact; it keeps every rise that follows exact."""
    return work.step("r", pitch.rise / pitch.run, "rise for each inch of run", unit="none")


def run_of(work: Working, run: Term, across: Across | None, pitch: Slope | None = None) -> Term:
    """The run of the common rafter where the width, the rise, the rafter or the hip's own run was measured in its place."""
    if across is Across.GABLE:
        return work.step("run", run / 2, "the peak stands over the middle of the building", unit="in")
    if across is Across.HIP:
        return work.step("run", run / sqrt(2), "in plan the hip crosses the corner at 45°", unit="in")
    if pitch is None or across in (None, Across.RUN):
        return run
    if across is Across.ALONG:
        foot = work.step("hip per inch", sqrt(2 + (pitch.rise / pitch.run) ** 2), "out, across and up", "none")
        return work.step("run", run / foot, "the hip, by what it is for each inch of common run", unit="in")
    if across is Across.RAFTER:
        return work.step("run", run * cos(theta_of(work, pitch)), "the run is the rafter's shadow on the level", unit="in")
    work.refuse_when(pitch.rise.value == 0, "a pitch of 0 never rises: say the run")
    return work.step("run", run / (pitch.rise / pitch.run), "as many inches of run as it takes to climb so far", unit="in")


def half_of(work: Working, width: Term, across: Across | None, pitch: Slope) -> tuple[Term, Term]:
    """The run of a gable and its whole width, from the width or from what was measured in its place."""
    if across in (None, Across.GABLE):
        return work.step("run", width / 2, "the peak is over the middle of the gable", unit="in"), width
    run = run_of(work, width, across, pitch)
    return run, work.step("width", 2 * run, "as far again on the other side of the peak", unit="in")


def sloped(work: Working, pitch: Slope, run: Term | None, rise: Term | None) -> tuple[Term, Term, Term]:
    """Run, rise and angle of a slope from its pitch and either of the two.

    Raises NeedMore when neither is known, Refusal when both are and are not at that pitch.
    """
    theta = theta_of(work, pitch)
    if run is None and rise is None:
        raise NeedMore("run")
    per_inch = rise_per_inch(work, pitch)
    if run is not None:
        worked = work.step("rise", run * per_inch, "every inch of run climbs that much", unit="in")
        if rise is not None:
            off = abs(float(work.value(worked - rise)))
            work.refuse_when(
                off > AGREE * float(rise.value),
                f"a rise of {work.text(rise)} over a run of {work.text(run)} is not at that pitch, which would rise "
                f"{work.text(worked)}: say the pitch with the run or the rise, not with both",
            )
        return run, worked, theta
    assert rise is not None
    flat = pitch.rise.value == 0
    work.refuse_when(flat, f"a pitch of 0 never rises {work.text(rise)}: say the run, or give a pitch over 0 in 12")
    run = work.step("run", rise / per_inch, "as many inches of run as it takes to climb so far", unit="in")
    return run, rise, theta
