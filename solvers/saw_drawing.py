"""The drawings of a corner: two mitred pieces where they meet, and the same two on the saw as they come off it."""

from __future__ import annotations

from math import cos, radians, sin, tan

from solvers.exact import Term
from solvers.figure import Point, View
from solvers.working import Working

WIDE = 1.0  # of a piece, in the drawing's own unit; the other sizes are read against it


def meeting(work: Working, title: str, first: float, corner: Term, edge: Term, names: tuple[str, str]) -> View:
    """Two mitred pieces round the outside of a corner, as they stand on the wall.

    `first` is the direction of the first leg in degrees from level; the second leg lies clockwise of it.
    """
    view = work.view(title)
    angle = float(corner.value)
    second, half = first - angle, first - angle / 2
    tip = _towards(half, -WIDE / sin(radians(angle / 2)))
    leg = 3.5 * WIDE + 1.2 * WIDE / tan(radians(angle / 2))
    for name, along, across in ((names[0], first, first + 90), (names[1], second, second - 90)):
        end, out = _towards(along, leg), _towards(across, WIDE)
        view.polygon([(0, 0), end, _sum(end, out), tip], "piece")
        view.label(_sum(_towards(along, leg * 0.75), _towards(across, WIDE / 2)), name)
    view.line((0, 0), tip, "cut")
    view.angle((0, 0), leg * 0.35, second, first, work.text(corner))
    view.angle(tip, leg * 0.4, half, first, work.text(edge))
    return view


def on_the_saw(work: Working, saw: Term, edge: Term, names: tuple[str, str] = ("piece 1", "piece 2")) -> None:
    """Both pieces lying on the saw as they come off it: which end, which face up, which way the handle goes."""
    view = work.view("on the saw, seen from above")
    swing, apart = float(saw.value), 1.2 * WIDE
    _fence(view, swing, apart)
    _lying(view, 0, swing, names[0], kept_left=True, handle_right=True)
    _lying(view, apart, swing, names[1], kept_left=False, handle_right=False)
    view.label((-_long(swing) / 2, -WIDE * 0.35), "handle to the right, long edge to you")
    view.label((apart + _long(swing) / 2, -WIDE * 0.35), "handle to the left: the mirror")
    view.line((0, 0), (0, WIDE), "hidden")
    if swing > 0:
        view.angle((0, 0), WIDE * 0.7, 90, 90 + swing, work.text(saw))
    view.angle((apart, 0), WIDE * 0.9, 0, 90 - swing, work.text(edge))


def flat_on_a_left_tilt(work: Working, miter: Term, inside: bool) -> None:
    """Both pieces of a sprung corner flat on a saw that tilts left: edge to the fence, handle, and the end kept."""
    view = work.view(f"{'inside' if inside else 'outside'} corner, flat on the saw, blade tilted left")
    swing = float(miter.value)
    apart = 2 * _long(swing) + WIDE
    _fence(view, swing, apart)
    for at, left_piece in ((0.0, True), (apart, False)):
        ceiling = left_piece == inside
        name = "left piece" if left_piece else "right piece"
        _lying(view, at, swing, name, kept_left=inside, handle_right=ceiling)
        out = at + (-1 if inside else 1) * _long(swing) / 2
        view.label((out, -WIDE * 0.35), f"{'ceiling' if ceiling else 'wall'} edge to the fence")
        if swing > 0:
            view.line((at, 0), (at, WIDE), "hidden")
            start = 90.0 if ceiling else 90 - swing  # the handle right slants the cut to the left
            view.angle((at, 0), WIDE * 0.7, start, start + swing, work.text(miter))


def _long(swing: float) -> float:
    """Length drawn of a piece cut at this setting."""
    return WIDE * tan(radians(swing)) + 3 * WIDE


def _fence(view: View, swing: float, apart: float) -> None:
    view.line((-_long(swing) - 0.3, WIDE), (apart + _long(swing) + 0.3, WIDE))
    view.label((apart / 2, WIDE * 1.25), "fence")


def _lying(view: View, at: float, swing: float, name: str, *, kept_left: bool, handle_right: bool) -> None:
    """One piece face up against the fence, cut through (at, near edge); the handle right slants the cut to the left."""
    over = WIDE * tan(radians(swing)) * (-1 if handle_right else 1)
    end = at + (-1 if kept_left else 1) * _long(swing)
    view.polygon([(end, 0), (at, 0), (at + over, WIDE), (end, WIDE)], "piece")
    view.line((at, 0), (at + over, WIDE), "cut")
    inset = 0.2 if kept_left else -0.2
    view.label((end + inset, WIDE / 2), f"{name}, face up", "start" if kept_left else "end")


def on_the_jig(work: Working, dial: Term) -> None:
    """A piece stood against a square jig, seen from above: its length at right angles to the fence."""
    view = work.view("against a square jig, seen from above")
    turn = float(dial.value)
    across = 2 * WIDE * tan(radians(turn))
    view.line((-3 * WIDE, 0), (4 * WIDE, 0))
    view.label((3 * WIDE, WIDE * 0.25), "fence")
    view.polygon([(-2 * WIDE, 0), (-0.5 * WIDE, 0), (-0.5 * WIDE, -3.2 * WIDE), (-2 * WIDE, -3.2 * WIDE)], "wall")
    view.label((-1.25 * WIDE, -1.6 * WIDE), "jig")
    view.polygon([(-0.5 * WIDE, 0), (0.5 * WIDE, 0), (0.5 * WIDE, -4 * WIDE), (-0.5 * WIDE, -4 * WIDE)], "piece")
    view.label((0.8 * WIDE, -3.4 * WIDE), "piece, square to the fence", "start")
    view.line((0, 0), (across, -2 * WIDE), "cut")
    view.line((0, 0), (0, -2 * WIDE), "hidden")
    if turn > 0:
        view.angle((0, 0), WIDE * 1.4, 270, 270 + turn, work.text(dial))


def _towards(degrees: float, far: float) -> Point:
    return far * cos(radians(degrees)), far * sin(radians(degrees))


def _sum(a: Point, b: Point) -> Point:
    return a[0] + b[0], a[1] + b[1]
