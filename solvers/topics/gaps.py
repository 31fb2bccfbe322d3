"""How far open a joint stands when it was cut for another angle than it has."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from math import cos as cosine
from math import radians
from math import sin as sine
from typing import Annotated, Any

from solvers.common import SAW_CAUTION, RoofPitch
from solvers.errors import NeedMore
from solvers.exact import Term, atan, cos, larger, real, sin, smaller, sqrt
from solvers.figure import Point
from solvers.quantities import Angle, Length, Pitch
from solvers.registry import topic
from solvers.roof import theta_of
from solvers.slots import Choice, Slot
from solvers.working import Working

CutAt = Annotated[Angle, Slot("What was each piece cut at, in degrees?", least=0, below=180, name="saw setting")]
Other = Annotated[Angle, Slot("What was the other piece cut at?", least=0, below=90, name="other setting")]
CutFor = Annotated[Angle, Slot("What corner was it cut for?", above=0, below=180, name="corner cut for", quiet=True)]
Actual = Annotated[
    Angle, Slot("What is the corner really, in degrees?", least=10, below=180, name="corner", usual=(55, 179))
]
Face = Annotated[
    Length, Slot("How wide is the face?", bare=("in",), above=0, most=48, name="face width", usual=(Fraction(3, 4), 16))
]
ErrorOf = Annotated[Angle, Slot("How far off is it, in degrees?", least=0, most=30, name="error", usual=(0, 15))]
CutPitch = Annotated[Pitch, Slot("What pitch was it cut for?", above=0, name="pitch it was cut for")]
SHOWS = Fraction(1, 32)  # in; common practice: a tighter joint closes under paint or a bead
NAMED_BY_CORNER = 75  # degrees; common practice: "a 90 degree miter" is one for a corner of 90°, cut at 45°
MOST_ERROR = 40  # degrees; no joint is cut so far off its corner: what was said is the angle of the edge
SEEN = 5.0  # degrees, the least error that is drawn
HALF_DEGREE = Fraction(1, 2)  # degrees, what a saw's scale and a hand's reading are good for


class Joint(Choice):
    """A joint on a gable whose corner goes with the pitch."""

    RETURN = "rake return"
    PEAK = "peak joint"
    LEVEL = "rake to level joint"


@topic("how far open", "corners")
def how_far_open(
    work: Working,
    corner: Actual,
    face: Face,
    setting: CutAt | None = None,
    other: Other | None = None,
    cut_for: CutFor | None = None,
) -> None:
    """Gap at the joint, inches, when two mitred pieces meet at another corner than they were cut for.

    The gap is at the far edge of the face, along the miter line. Refuses a corner outside 0–180°. Source: geometry.
    """
    saw = _setting(work, setting, other, cut_for)
    made = work.step("made", 180 - 2 * saw, "the corner the two cuts make")
    far = abs(real(corner.value) - real(made.value)) > MOST_ERROR
    edge = far and abs(2 * real(saw.value) - real(corner.value)) < MOST_ERROR / 2
    sentence = f"{work.text(saw)} on the saw is for a corner of {work.text(made)}: say the saw setting, not the edge angle"
    work.refuse_when(edge, sentence)
    _open(work, corner, made, saw, face)


@topic("angle off", "corners")
def angle_off(work: Working, error: ErrorOf, setting: CutAt, face: Face) -> None:
    """Gap at a mitred joint, inches, when the corner is so many degrees off what the two cuts make.

    Refuses an error over 30°. Source: geometry.
    """
    saw = _setting(work, setting, None, None)
    made = work.step("made", 180 - 2 * saw, "the corner the two cuts make")
    corner = work.step("corner", made + error, "the corner is off by so much")
    _open(work, corner, made, saw, face)


@topic("rounded pitch", "corners")
def rounded_pitch(work: Working, pitch: RoofPitch, cut_pitch: CutPitch, face: Face, joint: Joint = Joint.RETURN) -> None:
    """Gap at a joint on a gable, inches, when it was cut for a pitch near the roof's own.

    Refuses a pitch of 0. Source: geometry.
    """
    theta = theta_of(work, pitch)
    used = work.step("θ used", atan(cut_pitch.rise / cut_pitch.run), "the pitch it was cut for, as an angle from level")
    corner = work.step("γ", CORNERS[joint](theta), f"the corner of a {joint.value} at the roof's pitch")
    made = work.step("made", CORNERS[joint](used), "the corner it was cut for")
    saw = work.step("s", (180 - made) / 2, "half the turn of the corner it was cut for")
    _open(work, corner, made, saw, face)
    work.also("roof angle", theta)
    work.also("angle it was cut for", used)


# The corner of each joint by the roof angle, as their own topics work it.
CORNERS: dict[Joint, Callable[[Term], Any]] = {
    Joint.RETURN: lambda theta: 90 - theta,
    Joint.PEAK: lambda theta: 180 - 2 * theta,
    Joint.LEVEL: lambda theta: 180 - theta,
}


def _open(work: Working, corner: Term, made: Term, saw: Term, face: Term) -> None:
    """The gap between two cuts that make `made` at a corner that is `corner`, and what goes with it."""
    error = work.step("error", larger(corner, made) - smaller(corner, made), "how far the two corners differ")
    line = work.step("line", face / cos(saw), "the cut is longer than the face is wide", unit="in")
    gap = work.answer("gap", 2 * line * sin(error / 2), "the far ends of two equal cuts that angle apart", "in", "gap")
    right = work.step("right setting", (180 - corner) / 2, "half the turn of the corner as it is, on each piece")
    half = work.term("half a degree", HALF_DEGREE, "deg")
    slip = work.step("half", 2 * line * sin(half / 2), "what half a degree does here", unit="in")
    work.also("corner the cuts make", made)
    work.also("error", error)
    work.also("setting that closes it", right)
    work.also("half a degree opens", slip)
    work.also_word("opens at", _where(corner, made))
    work.also_word("matters", _matters(work, gap))
    ends = sqrt((line - line * cos(error)) ** 2 + (line * sin(error)) ** 2)
    work.check("between the far ends of the cuts, by their places", ends, "=", gap)
    work.source("common practice: a gap over 1/32 in shows")
    work.caution(SAW_CAUTION)
    _joint(work, corner, made, gap)


def _setting(work: Working, setting: Term | None, other: Term | None, cut_for: Term | None) -> Term:
    """The saw setting of each piece; of two different ones, their mean."""
    if setting is not None and other is None and setting.value >= NAMED_BY_CORNER:
        return work.step("s", (180 - setting) / 2, "no saw swings that far: a miter said so is named by its corner")
    if setting is not None and other is not None:
        sentence = f"no piece is cut at {work.text(setting)}: say what each was cut at, under 90 degrees"
        work.refuse_when(setting.value >= 90, sentence)
        return work.step("s", (setting + other) / 2, "the mean of the two settings")
    if setting is not None:
        return setting
    if cut_for is not None:
        return work.step("s", (180 - cut_for) / 2, "half the turn of the corner it was cut for")
    raise NeedMore("setting")


def _where(corner: Term, made: Term) -> str:
    if corner.value == made.value:
        return "nowhere: it is closed"
    return "the inside edge" if corner.value > made.value else "the outside edge"


def _matters(work: Working, gap: Term) -> str:
    if real(gap.value) > real(SHOWS):
        return f"yes: {work.text(gap)} shows, and lets water in"
    return "hardly: it is within 1/32 in"


def _joint(work: Working, corner: Term, made: Term, gap: Term) -> None:
    """The two pieces as they lie at the corner, each with the cut it has; a small error drawn as 5° to show."""
    view = work.view("the joint, its gap drawn wider than it is")
    stands, cut = float(corner.value), float(made.value)
    drawn = cut if stands == cut else cut + max(SEEN, abs(stands - cut)) * (1 if stands > cut else -1)
    length = 1 / sine(radians(cut / 2))
    ends = []
    for along, inward in ((90.0, -1), (90.0 - drawn, 1)):
        toward = _towards(along + inward * cut / 2, length)  # from the tip at the outer edge to the heel at the inner
        tip = (0.0, 0.0) if stands >= cut else (-toward[0], -toward[1])
        heel = (tip[0] + toward[0], tip[1] + toward[1])
        out, across = _towards(along, 4 + length), _towards(along + inward * 90, 1)
        far = (tip[0] + out[0], tip[1] + out[1])
        view.polygon([tip, far, (far[0] + across[0], far[1] + across[1]), heel], "piece")
        view.line(tip, heel, "cut")
        ends.append(heel if stands >= cut else tip)
    if stands != cut:
        view.dimension(ends[0], ends[1], work.text(gap), 1 if stands > cut else -1)
    view.label(_towards(90 - drawn / 2, 2.2 + length), f"corner {work.text(corner)}")


def _towards(degrees: float, far: float) -> Point:
    return far * cosine(radians(degrees)), far * sine(radians(degrees))
