"""The drawings of a slope: the triangle of rise and run, and a gable from the front."""

from __future__ import annotations

from typing import Any

from solvers.exact import Term
from solvers.figure import Point
from solvers.working import Working


def number(work: Working, value: Any) -> float:
    """An expression's value as a drawing's coordinate."""
    return float(work.value(value))


def slope_view(work: Working, run: Term, rise: Term, theta: Term, slope: Term | None = None) -> None:
    """Side view: level run, plumb rise, the roof line, the angle where it is."""
    view = work.view("side view")
    foot: Point = (0.0, 0.0)
    out: Point = (number(work, run), 0.0)
    top: Point = (out[0], number(work, rise))
    view.line(foot, out, "level")
    view.line(out, top, "hidden")
    view.line(foot, top)
    view.dimension(foot, out, work.text(run), -1)
    view.dimension(out, top, work.text(rise), -1)
    if theta.value > 0:
        view.angle(foot, out[0] * 0.3, 0, theta.value, work.text(theta))
    if slope is not None:
        view.dimension(foot, top, work.text(slope), 1)


def gable_view(work: Working, width: Term, height: Term, theta: Term, rake: Term | None = None, past: Any = 0) -> None:
    """The gable from the front: width, height, the angle at the plate, and the rake with what hangs past the wall."""
    view = work.view("gable from the front")
    half, high, over = number(work, width) / 2, number(work, height), number(work, past)
    low = -over * high / half
    view.polygon([(-half, 0), (half, 0), (0, high)], "wall")
    view.line((0, 0), (0, high), "hidden")
    view.dimension((-half, 0), (half, 0), work.text(width), -1)
    view.dimension((0, 0), (0, high), work.text(height), -1)
    view.angle((-half, 0), half * 0.35, 0, theta.value, work.text(theta))
    if rake is not None:
        view.line((-half - over, low), (0, high), "cut")
        view.line((half + over, low), (0, high), "cut")
        view.dimension((-half - over, low), (0, high), work.text(rake), 1)
