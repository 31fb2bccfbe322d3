"""Fits one view of a figure onto paper: the part the terminal and the SVG renderers share.

A figure is data: views of lines, polygons, arcs, angles, dimensions, labels and ticks, y upward, any scale. Here a view
becomes strokes, fills and placed words in device units, y downward; a device unit is a dot or a pixel.
Words are placed on a grid of cells so that none lies on a line or on another word; a word with no room is keyed by a
letter and spelled out under the drawing. FigureError, one sentence, when the data can't be drawn.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from assistant.drawing_words import Room, Wish, Word, place_words

Point = tuple[float, float]
View = dict[str, Any]

ARC_STEP = 6.0  # degrees of arc a chord: no flat shows at the size of a page
FITTING_ROUNDS = 4  # margins settle in two or three
LEAST_SHARE = 0.35  # of the paper kept for the lines, however long the words


class FigureError(ValueError):
    """A figure that can't be drawn; the message is one sentence for a person."""


@dataclass(frozen=True, slots=True)
class Pen:
    """What a device can do, in device units: the grid that words sit on, and how far things stand off."""

    cell: Point  # width and height of one cell; a letter is one cell wide
    rows: int  # cells in the height of a line of words
    gap: float  # a dimension line stands this far from its points
    tick: float  # half a tick
    least_arc: float  # an angle mark is never smaller than this
    strip: float  # a pole or strip of marks is no wider than this
    blur: float  # marks nearer than this run together


@dataclass(frozen=True, slots=True)
class Stroke:
    """A run of straight pieces in device units; its style is the figure's, or dimension, reach, angle or tick."""

    points: list[Point]
    style: str


@dataclass(frozen=True, slots=True)
class Fill:
    """A closed region in device units, and what it is: piece, opening, wall or ground."""

    points: list[Point]
    fill: str


@dataclass(slots=True)
class Paper:
    """A view ready to render: strokes and fills in device units, words in cells, notes to go underneath."""

    strokes: list[Stroke] = field(default_factory=list)
    fills: list[Fill] = field(default_factory=list)
    wishes: list[Wish] = field(default_factory=list)
    words: list[Word] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Fit:
    """The map from the view's own coordinates to device units."""

    x0: float
    y0: float
    across: float
    up: float
    left: float
    foot: float

    def at(self, point: Any) -> Point:
        """A point of the figure, on the paper."""
        x, y = point
        return self.left + (float(x) - self.x0) * self.across, self.foot - (float(y) - self.y0) * self.up

    def round_(self, shape: View, least: float = 0.0) -> list[Point]:
        """An arc of the figure as points on the paper; its radius is at least `least` device units."""
        x, y = self.at(shape["centre"])
        wide, high = shape["radius"] * self.across, shape["radius"] * self.up
        grow = max(1.0, least / max(min(wide, high), 1e-9))
        start, sweep = float(shape["start"]), (float(shape["end"]) - float(shape["start"])) % 360 or 360.0
        count = max(2, math.ceil(sweep / ARC_STEP))
        turns = [math.radians(start + sweep * i / count) for i in range(count + 1)]
        return [(x + grow * wide * math.cos(t), y - grow * high * math.sin(t)) for t in turns]


def views_of(figure: dict[str, Any]) -> list[View]:
    """The views that hold something to draw."""
    try:
        return [view for view in figure["views"] if view["shapes"]]
    except (KeyError, TypeError) as error:
        raise FigureError("The drawing has no views that can be read.") from error


def shape_points(shape: View) -> Iterator[Any]:
    """The points of a shape that the paper must hold, in the figure's own coordinates."""
    yield from (shape[key] for key in ("from", "to", "at") if key in shape)
    yield from shape.get("points", ())
    if shape["kind"] in ("arc", "angle"):
        fit = Fit(0, 0, 1, 1, 0, 0)
        yield shape["centre"]
        yield from ((x, -y) for x, y in fit.round_(shape))


def bounds(view: View) -> tuple[float, float, float, float]:
    """Least x, least y, greatest x, greatest y of a view, in its own units; FigureError when there are none."""
    try:
        points = [(float(x), float(y)) for shape in view["shapes"] for x, y in shape_points(shape)]
        xs, ys = [x for x, _ in points], [y for _, y in points]
        if not all(map(math.isfinite, xs + ys)):
            raise ValueError("a coordinate is not finite")
        return min(xs), min(ys), max(xs), max(ys)
    except (KeyError, TypeError, ValueError, AttributeError) as error:
        raise FigureError("The drawing has a shape that can't be read.") from error


def lay_out(view: View, width: float, height: float, pen: Pen) -> Paper:
    """The view on paper of `width` × `height` device units, as large as its words allow; FigureError if unreadable."""
    box = bounds(view)
    margins = [pen.cell[0], pen.cell[1] / 2, pen.cell[0], pen.cell[1] / 2]
    slim = slimness(view, pen) if view.get("stretch") else None
    paper = Paper()
    for _ in range(FITTING_ROUNDS):
        fit = fitted(box, width, height, margins, slim)
        paper = drawn(view, fit, pen)
        spill = overflow(paper, width, height, pen)
        if max(spill) <= 0.5:
            break
        margins = [margin + max(0.0, over) for margin, over in zip(margins, spill, strict=True)]
    room = Room(int(width // pen.cell[0]), int(height // pen.cell[1]))
    for stroke in paper.strokes:
        room.cross(stroke.points, pen.cell)
    paper.words, notes = place_words(paper.wishes, room, pen.cell, pen.rows)
    paper.notes += notes
    return paper


def slimness(view: View, pen: Pen) -> Point:
    """The most a stretched view may take across and up the paper: a pole of marks stays slim, whatever its numbers."""
    ticks = [as_point(shape["at"]) for shape in view["shapes"] if shape["kind"] == "tick"]
    if not ticks:
        return math.inf, math.inf
    return (pen.strip, math.inf) if upright(ticks) else (math.inf, pen.strip)


def as_point(point: Any) -> Point:
    """A point of the figure as it stands."""
    x, y = point
    return float(x), float(y)


def upright(points: list[Point]) -> bool:
    """Whether marks climb a pole rather than run along a strip."""
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(ys) - min(ys) >= max(xs) - min(xs)


def fitted(
    box: tuple[float, float, float, float], width: float, height: float, margins: list[float], slim: Point | None
) -> Fit:
    """The largest scale at which the box fits inside the margins, centred; one scale both ways unless `slim`."""
    x0, y0, x1, y1 = box
    left, top, right, foot = squeezed(margins, width, height)
    room_x, room_y = width - left - right, height - top - foot
    across = room_x / (x1 - x0) if x1 > x0 else math.inf
    up = room_y / (y1 - y0) if y1 > y0 else math.inf
    if slim is None:
        across = up = min(across, up)
    else:
        across, up = across * min(1.0, slim[0] / room_x), up * min(1.0, slim[1] / room_y)
    across = across if math.isfinite(across) else 1.0
    up = up if math.isfinite(up) else 1.0
    spare_x, spare_y = room_x - (x1 - x0) * across, room_y - (y1 - y0) * up
    return Fit(x0, y0, across, up, left + spare_x / 2, height - foot - spare_y / 2)


def squeezed(margins: list[float], width: float, height: float) -> tuple[float, float, float, float]:
    """Margins scaled down where they would leave the lines less than their share of the paper."""
    left, top, right, foot = margins
    side = min(1.0, (1 - LEAST_SHARE) * width / max(left + right, 1e-9))
    ends = min(1.0, (1 - LEAST_SHARE) * height / max(top + foot, 1e-9))
    return left * side, top * ends, right * side, foot * ends


def overflow(paper: Paper, width: float, height: float, pen: Pen) -> list[float]:
    """How far strokes and words reach past the left, top, right and foot of the paper (negative inside)."""
    xs = [x for stroke in paper.strokes for x, _ in stroke.points]
    ys = [y for stroke in paper.strokes for _, y in stroke.points]
    for wish in paper.wishes:
        x, y, wide, high = wish.box(pen.cell, pen.rows)
        xs += [x, x + wide]
        ys += [y, y + high]
    if not xs:
        return [0.0, 0.0, 0.0, 0.0]
    return [-min(xs), -min(ys), max(xs) - width, max(ys) - height]


def drawn(view: View, fit: Fit, pen: Pen) -> Paper:
    """Every shape of the view as strokes, fills and wished words; kinds not known here are left out."""
    paper = Paper()
    try:
        for shape in view["shapes"]:
            add = SHAPES.get(shape["kind"])
            if add:
                add(paper, shape, fit, pen)
        add_ticks(paper, [shape for shape in view["shapes"] if shape["kind"] == "tick"], fit, pen)
    except (KeyError, TypeError, ValueError) as error:
        raise FigureError("The drawing has a shape that can't be read.") from error
    return paper


def add_line(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """A straight line."""
    paper.strokes.append(Stroke([fit.at(shape["from"]), fit.at(shape["to"])], shape.get("style", "edge")))


def add_polygon(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """A closed outline, filled or not."""
    points = [fit.at(point) for point in shape["points"]]
    if shape.get("fill", "none") != "none":
        paper.fills.append(Fill(points, shape["fill"]))
    paper.strokes.append(Stroke([*points, points[0]], shape.get("style", "edge")))


def add_arc(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """Part of a circle."""
    paper.strokes.append(Stroke(fit.round_(shape), shape.get("style", "edge")))


def add_angle(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """An angle mark, its words outside the middle of the arc."""
    points = fit.round_(shape, pen.least_arc)
    paper.strokes.append(Stroke(points, "angle"))
    (cx, cy), (x, y) = fit.at(shape["centre"]), points[len(points) // 2]
    far = math.hypot(x - cx, y - cy) or 1.0
    paper.wishes.append(Wish(str(shape["text"]), (x, y), ((x - cx) / far, (y - cy) / far)))


def add_dimension(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """A dimension line beside its two points, joined to them by reaches; side 1 is on the left going from → to."""
    (ax, ay), (bx, by) = fit.at(shape["from"]), fit.at(shape["to"])
    run, fall = bx - ax, by - ay
    size = math.hypot(run, fall) or 1.0
    side = 1 if shape.get("side", 1) >= 0 else -1
    nx, ny = side * fall / size, -side * run / size
    reach = (nx * pen.gap, ny * pen.gap)
    a, b = (ax + reach[0], ay + reach[1]), (bx + reach[0], by + reach[1])
    paper.strokes += [Stroke([a, b], "dimension"), Stroke([(ax, ay), a], "reach"), Stroke([(bx, by), b], "reach")]
    paper.wishes.append(Wish(str(shape["text"]), ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), (nx, ny)))


def add_label(paper: Paper, shape: View, fit: Fit, pen: Pen) -> None:
    """Words at a point: starting there, ending there, or centred on it."""
    lean = {"start": (1.0, 0.0), "end": (-1.0, 0.0)}.get(shape.get("anchor", "middle"), (0.0, 0.0))
    paper.wishes.append(Wish(str(shape["text"]), fit.at(shape["at"]), lean))


def add_ticks(paper: Paper, ticks: list[View], fit: Fit, pen: Pen) -> None:
    """Marks along a pole (upright) or a strip (level); where they crowd, every so many are named and a note says so."""
    if not ticks:
        return
    stands = upright([as_point(tick["at"]) for tick in ticks])
    axis = 1 if stands else 0
    spots = sorted(((fit.at(tick["at"]), str(tick.get("text", ""))) for tick in ticks), key=lambda spot: spot[0][axis])
    along = [spot[0][axis] for spot in spots]
    stride = stride_for(
        along, pen.rows * pen.cell[1] if stands else (max(len(text) for _, text in spots) + 2) * pen.cell[0]
    )
    blurred = stride > 1 and stride_for(along, pen.blur) > 1
    if stands:
        spots.reverse()  # counted from the bottom, as the marks are
    for index, ((x, y), text) in enumerate(spots):
        named = index % stride == 0
        tip = (x + pen.tick, y) if stands else (x, y + pen.tick)
        if named or not blurred:
            paper.strokes.append(Stroke([(x - pen.tick, y) if stands else (x, y - pen.tick), tip], "tick"))
        if named:
            paper.wishes.append(Wish(text, tip, (1.0, 0.0) if stands else (0.0, 1.0), level=stands, square=not stands))
    if stride > 1:
        shown = "drawn" if blurred else "named"
        paper.notes.append(f"Every {stride}{suffix(stride)} mark is {shown} here; the list has them all.")


def stride_for(along: list[float], need: float) -> int:
    """The least step through sorted positions that keeps every two taken `need` apart, wherever the count starts."""
    for stride in range(1, len(along)):
        if all(b - a >= need for a, b in zip(along, along[stride:], strict=False)):
            return stride
    return max(1, len(along))


def suffix(count: int) -> str:
    """The ending of an ordinal: 1st, 2nd, 3rd, 4th, 11th."""
    return "th" if count % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(count % 10, "th")


SHAPES = {
    "line": add_line,
    "polygon": add_polygon,
    "arc": add_arc,
    "angle": add_angle,
    "dimension": add_dimension,
    "label": add_label,
}
