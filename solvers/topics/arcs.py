"""Arcs and round heads: the radius to swing, the length of the curve, and offsets to mark it by."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from sympy import Pow, S, pi, sqrt

from solvers.common import DUST_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Exact, Term, add, asin, atan, cos, real, root, sin, snapped, times
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.working import Working

SPACES = 8  # equal spaces across the width when none are asked for
MOST_MARKS = 100


class Head(Choice):
    """A round head by its name."""

    HALF = "half round"


class ArcPart(Choice):
    """What of an arc is asked for in place of its radius."""

    CURVE = "length of the curve"


@topic("arc", "triangles")
def arc(
    work: Working,
    width: Annotated[Length, Slot("What is the width of the arc?", bare=("in",), above=0, usual=(8, 360))],
    rise: Annotated[
        Length, Slot("What is the rise of the arc at the middle?", bare=("in",), above=0, usual=(Fraction(1, 4), 240))
    ]
    | None = None,
    radius: Annotated[Length, Slot("What is the radius of the arc?", bare=("in",), above=0, usual=(4, 600))] | None = None,
    every: Annotated[
        Length,
        Slot("How far apart are the marks?", bare=("in",), above=0, cued=True, name="marks every", usual=(Fraction(1, 2), 48)),
    ]
    | None = None,
    head: Head | None = None,
    asked: ArcPart | None = None,
) -> None:
    """Radius of an arc or round head from its width and rise, inches (or its rise, from the radius; or the curve, when asked).

    Refuses a radius that does not reach across, and a rise over half the width. Source: intersecting chords.
    """
    if rise is None and radius is None and head is Head.HALF:
        rise = work.step("half round", width / 2, "a half round rises half its width", unit="in")
    if rise is not None:
        _refuse_horseshoe(work, width, rise)
        swing, half = _radius(work, width, rise)
        work.also("rise", rise)
        if radius is not None:
            _refuse_mismatch(work, swing, radius)
    elif radius is not None:
        _refuse_short(work, width, radius)
        swing, (rise, half) = radius, _rise(work, width, radius)
        work.also("radius", radius)
    else:
        raise NeedMore("rise", "What is the rise of the arc at the middle (or say its radius)?")
    length = work.step("arc length", 2 * swing * half * pi / 180, "along the curve", "in")
    drop = work.step("drop", swing - rise, "how far under the spring line the trammel's point stands", "in")
    if asked is ArcPart.CURVE:
        work.answer("arc length", length)
        if radius is None:
            work.also("radius", swing)
    else:
        work.also("arc length", length)
    work.also("trammel point under the spring line", drop)
    work.also("angle the arc turns", 2 * half, "deg")
    points = _offsets(work, width, swing, drop, every)
    work.caution(DUST_CAUTION, "Swing it on scrap first: a trammel that bends draws another circle.")
    _draw(work, width, rise, swing, half, points)


def _radius(work: Working, width: Term, rise: Term) -> tuple[Term, Term]:
    radius = work.answer("radius", ((width / 2) ** 2 + rise**2) / (2 * rise), "half the width and the rise fix the circle", "in")
    half = work.step("half angle", 2 * atan(2 * rise / width), "half of what the arc turns")
    work.check("the radius by its angle", width / (2 * sin(half)), "=", radius)
    return radius, half


def _rise(work: Working, width: Term, radius: Term) -> tuple[Term, Term]:
    rise = work.answer("rise", radius - sqrt(radius**2 - (width / 2) ** 2), "what the circle stands over its chord", "in")
    half = work.step("half angle", asin(width / (2 * radius)), "half of what the arc turns")
    work.check("the rise by its angle", radius * (1 - cos(half)), "=", rise)
    return rise, half


def _refuse_horseshoe(work: Working, width: Term, rise: Term) -> None:
    work.refuse_when(
        work.value(rise) > work.value(width) / 2,
        f"a rise of {work.text(rise)} is more than half the width of {work.text(width)}, so the arc would swell "
        "wider than its opening: check which is the rise",
    )


def _refuse_short(work: Working, width: Term, radius: Term) -> None:
    work.refuse_when(
        work.value(radius) < work.value(width) / 2,
        f"a radius of {work.text(radius)} does not reach across {work.text(width)}: it must be at least half that, "
        f"{work.text(width / 2, 'in')}",
    )


def _refuse_mismatch(work: Working, swing: Term, radius: Term) -> None:
    work.refuse_when(
        abs(real(work.value(swing - radius))) > real(work.tape_step),
        f"a radius of {work.text(radius)} does not go with that width and rise, which make {work.text(swing)}: leave one out",
    )


def _offsets(work: Working, width: Term, radius: Term, drop: Term, every: Term | None) -> list[tuple[Exact, Exact]]:
    """Heights of the curve over the spring line at marks from the left end; shown as a step at the first of them."""
    wide = work.value(width)
    space = wide / SPACES if every is None else work.value(every)
    work.refuse_when(space >= wide, f"marks every {work.text(work.term('', space, 'in'))} find no place in {work.text(width)}")
    work.refuse_when(wide / space > MOST_MARKS, f"that is more than {MOST_MARKS} marks: set them further apart")
    places = [space * i for i in range(int(wide / space) + 1)]
    if places[-1] != wide:
        places.append(wide)
    heights = [_height(wide / 2 - place, radius.value, drop.value) for place in places]
    x = work.term("along", places[1], "in")
    first = Pow(radius**2 - (width / 2 - x) ** 2, S.Half, evaluate=False) - drop  # nothing to simplify, and that takes long
    up = work.step("height at the first mark", first, f"the curve over the spring line, {work.text(x)} along", "in")
    work.check("the first mark as it is listed", work.term("mark", heights[1], "in"), "=", up)
    for place, height in zip(places, heights, strict=True):
        work.mark(f"up at {work.text(work.term('', place, 'in'))}", height)
    return list(zip(places, heights, strict=True))


def _height(from_middle: Exact, radius: Exact, drop: Exact) -> Exact:
    """How far the circle stands over the spring line at a distance from the middle."""
    square = add(times(radius, radius), times(Fraction(-1), times(from_middle, from_middle)))
    return snapped(add(root(square), times(Fraction(-1), drop)))


def _draw(work: Working, width: Term, rise: Term, radius: Term, half: Term, points: list[tuple[Exact, Exact]]) -> None:
    wide, swing, turn = float(work.value(width)), float(work.value(radius)), float(work.value(half))
    up = float(work.value(rise))
    view = work.view("front view")
    view.line((0, 0), (wide, 0), "level")
    view.arc((wide / 2, up - swing), swing, 90 - turn, 90 + turn)
    for place, height in points[1:-1]:
        view.line((float(place), 0), (float(place), float(height)), "mark")
    view.dimension((0, 0), (wide, 0), work.text(width), -1)
    view.dimension((wide, 0), (wide, up), work.text(rise), -1)
    view.label((wide / 2, up * 0.5), f"radius {work.text(radius)}")
    along = work.view("offsets along the spring line", stretch=True)
    along.line((0, 0), (wide, 0))
    for (place, _), mark in zip(points, work.marks, strict=True):
        along.tick((float(place), 0), mark.text)
