"""Joints and end cuts of trim and cladding on a gable: at the peak, at the level trim, along the rake, and plumb."""

from __future__ import annotations

from typing import Annotated

from solvers.binding import Slope
from solvers.common import DUST_CAUTION, HEIGHT_CAUTION, JIG_CAUTION, RoofPitch
from solvers.exact import Term, acos, atan, cos, sin, sqrt, tan
from solvers.joint import saw_cautions, shared_joint
from solvers.quantities import Length
from solvers.registry import topic
from solvers.roof import theta_of
from solvers.saw_drawing import meeting, on_the_jig, on_the_saw
from solvers.slope_drawing import number
from solvers.slots import Choice, Slot
from solvers.working import Working

EndExposure = Annotated[Length, Slot("What is the exposure?", bare=("in",), above=0, most=36, kept="exposure", usual=(2, 16))]


def _slope_length(pitch: Slope) -> object:
    return sqrt(pitch.rise**2 + pitch.run**2)


@topic("peak joint", "corners")
def peak_joint(work: Working, pitch: RoofPitch) -> None:
    """Saw setting where two rakes of one pitch meet in a plumb joint at the peak, degrees.

    Refuses a pitch of 0. Source: geometry.
    """
    theta = theta_of(work, pitch)
    turn = work.step("τ", 2 * theta, "up at θ and down at θ")
    _, edge = shared_joint(work, turn, ("left rake", "right rake"))
    corner = work.step("γ", 180 - turn, "the angle between the two rakes")
    work.also("corner", corner)
    work.also("turn", turn)
    work.also("roof angle", theta)
    opposite = (pitch.rise**2 - pitch.run**2) / (pitch.rise**2 + pitch.run**2)
    work.check("the corner between the two rakes, by their directions", acos(opposite), "=", corner)
    work.caution(HEIGHT_CAUTION)
    meeting(work, "side view", 360 - float(theta.value), corner, edge, ("right rake", "left rake"))


@topic("rake to level joint", "corners")
def rake_to_level_joint(work: Working, pitch: RoofPitch) -> None:
    """Saw setting where rake trim meets level trim, degrees: half the roof angle on each.

    Refuses a pitch of 0. Source: geometry.
    """
    theta = theta_of(work, pitch)
    turn = work.step("τ", theta, "from level to the rake the trim turns by the roof angle")
    _, edge = shared_joint(work, turn, ("level piece", "rake piece"))
    corner = work.step("γ", 180 - turn, "the angle between the two pieces")
    work.also("corner", corner)
    work.also("turn", turn)
    work.also("roof angle", theta)
    work.check("the corner by the directions of level and rake", acos(-pitch.run / _slope_length(pitch)), "=", corner)
    work.caution(HEIGHT_CAUTION)
    meeting(work, "side view", 180, corner, edge, ("level", "rake"))


@topic("end cut along the rake", "corners")
def end_cut_along_the_rake(work: Working, pitch: RoofPitch, exposure: EndExposure | None = None) -> None:
    """Edge angle of level cladding that ends under the rake, degrees from the board's long edge.

    Refuses a pitch of 0. Source: geometry; the rake crosses every level edge at the roof angle.
    """
    theta = work.answer("edge angle", theta_of(work, pitch))
    saw = work.step("s", 90 - theta, "what the saw reads, 0° being a square cut")
    work.also("saw setting", saw)
    work.also("dial against a square jig", theta)
    if exposure is not None:
        step = work.step("step", exposure / tan(theta), "each course ends that much further in", unit="in")
        along = work.step("along", exposure / sin(theta), "the same course, along the rake", unit="in")
        work.also("step per course", step)
        work.also("along the rake per course", along)
        work.check("squares of exposure and step", exposure**2 + step**2, "=", along**2)
    work.check("angle between level and rake, by directions", acos(pitch.run / _slope_length(pitch)), "=", theta)
    saw_cautions(work, saw, theta)
    work.caution(DUST_CAUTION, HEIGHT_CAUTION)
    _courses_under_a_rake(work, theta)
    on_the_saw(work, saw, theta, ("right end", "left end"))
    on_the_jig(work, theta)


def _courses_under_a_rake(work: Working, theta: Term) -> None:
    """Three courses that end under the rake, the angle at the end of the lowest."""
    view = work.view("side view")
    step = 1 / number(work, tan(theta))
    right = 3 * step + 4
    for i in range(3):
        view.polygon([(i * step, i), (right, i), (right, i + 1), ((i + 1) * step, i + 1)], "piece")
    view.line((-0.3 * step, -0.3), (3.3 * step, 3.3), "cut")
    view.angle((0, 0), max(1.5, 0.6 * step), 0, theta.value, work.text(theta))
    view.label((2.2 * step - 0.4, 2.6), "rake", "end")


class CutOf(Choice):
    """Which of the two cuts is asked for."""

    PLUMB = "plumb"
    LEVEL = "level"
    BACKING = "backing"


class CutPiece(Choice):
    """What is cut; a piece along the common slope unless said."""

    HIP = "hip or valley"


@topic("plumb cut", "corners")
def plumb_cut(work: Working, pitch: RoofPitch, asked: CutOf | None = None, piece: CutPiece | None = None) -> None:
    """Saw setting for a plumb cut on a piece that lies along the slope, degrees; or for the level cut.

    A hip or valley lies flatter than the roof. Refuses a pitch of 0. Source: geometry.
    """
    if asked is CutOf.BACKING:
        _backing(work, pitch)
        return
    run = pitch.run
    if piece is CutPiece.HIP:
        run = work.step("hip run", pitch.run * sqrt(2), "in plan it crosses the corner at 45°", unit="in")
        theta = work.step("θ", atan(pitch.rise / run), "a hip or valley climbs the same over its longer run")
    else:
        theta = theta_of(work, pitch)
    level = work.step("level cut", 90 - theta, "level stands square to plumb")
    if asked is CutOf.LEVEL:
        work.answer("level cut", level)
        work.also("plumb cut", theta)
    else:
        work.answer("plumb cut", theta)
        work.also("level cut", level)
    work.also("edge angle of the plumb cut", level)
    work.check("angle between plumb and slope, by directions", acos(pitch.rise / sqrt(run**2 + pitch.rise**2)), "=", level)
    saw_cautions(work, theta, level)
    work.caution(JIG_CAUTION)
    _plumb_and_level(work, theta, level)
    on_the_saw(work, theta, level, ("left rake, top end", "right rake, top end"))


def _backing(work: Working, pitch: Slope) -> None:
    """The bevel along the top of a hip, both roofs at one pitch, that its two faces lie in the roofs."""
    hip = work.step("hip", sqrt(2 * pitch.run**2 + pitch.rise**2), "length of the hip for so much run", unit="in")
    backing = work.answer("backing", atan(pitch.rise / hip), "length of the hip and its rise, set on the square")
    between = work.step("between", 180 - 2 * backing, "the two roofs lean away from the hip alike")
    work.also("angle between the roofs", between)
    theta = theta_of(work, pitch)
    work.check("the two roofs' normals, as vectors", acos(-(cos(theta) ** 2)), "=", between)
    saw_cautions(work, backing, work.step("edge", 90 - backing, "what a bevel gauge reads on its edge"))
    meeting(work, "across the hip", 90, between, work.step("half", between / 2, "on each side of its middle"), ("roof", "roof"))


def _plumb_and_level(work: Working, theta: Term, level: Term) -> None:
    """The tail of a sloping piece: cut plumb at its end, then level from the plumb cut back to its lower edge."""
    view = work.view("side view")
    tangent = number(work, tan(theta))
    deep = 1 / number(work, sin(level))  # a piece 1 wide, measured plumb
    back = 0.5 * deep / tangent  # the level cut starts half way down the plumb cut
    out = back + 3
    view.polygon([(0, 0), (back, 0), (out, 3 * tangent), (out, 3 * tangent + deep), (0, 0.5 * deep)], "piece")
    view.line((0, 0), (0, 0.5 * deep), "cut")
    view.line((0, 0), (back, 0), "cut")
    view.angle((back, 0), 1.2, 0, theta.value, work.text(theta))
    view.angle((0, 0.5 * deep), 1.2, theta.value, 90, work.text(level))
    view.label((-0.15, 0.25 * deep), "plumb", "end")
    view.label((back / 2, -0.3), "level")
