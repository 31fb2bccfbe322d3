"""Figures as data: lines, arcs, dimensions and labels in a solver's own coordinates (x right, y up).

A solver adds shapes; the renderers of the assistant draw them. Coordinates come from the working's values, so a
drawing cannot say something else than the page.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

Point = tuple[float, float]


class View:
    """One drawing of a figure; shapes are plain JSON, see the module's renderers for what each looks like."""

    def __init__(self, title: str, stretch: bool = False) -> None:
        self.title, self.stretch = title, stretch
        self.shapes: list[dict[str, Any]] = []

    def line(self, start: Point, end: Point, style: str = "edge") -> None:
        """A line; style edge, cut, level, hidden or mark."""
        self.shapes.append({"kind": "line", "from": _point(start), "to": _point(end), "style": style})

    def polygon(self, points: Sequence[Point], fill: str = "piece", style: str = "edge") -> None:
        """A closed shape; fill piece, opening, wall, ground or none."""
        self.shapes.append({"kind": "polygon", "points": [_point(p) for p in points], "fill": fill, "style": style})

    def arc(self, centre: Point, radius: Any, start: Any, end: Any, style: str = "edge") -> None:
        """An arc, counter-clockwise, degrees from +x."""
        self.shapes.append({"kind": "arc", "centre": _point(centre), "radius": float(radius),
                            "start": float(start), "end": float(end), "style": style})  # fmt: skip

    def angle(self, centre: Point, radius: Any, start: Any, end: Any, text: str) -> None:
        """An angle mark with its reading."""
        self.shapes.append({"kind": "angle", "centre": _point(centre), "radius": float(radius),
                            "start": float(start), "end": float(end), "text": text})  # fmt: skip

    def dimension(self, start: Point, end: Point, text: str, side: int = 1) -> None:
        """A dimension line beside two points; side 1 is to the left going from start to end."""
        self.shapes.append({"kind": "dimension", "from": _point(start), "to": _point(end), "text": text, "side": side})

    def label(self, at: Point, text: str, anchor: str = "middle") -> None:
        self.shapes.append({"kind": "label", "at": _point(at), "text": text, "anchor": anchor})

    def tick(self, at: Point, text: str) -> None:
        """A mark on a strip or pole, with its reading."""
        self.shapes.append({"kind": "tick", "at": _point(at), "text": text})

    def data(self) -> dict[str, Any]:
        view: dict[str, Any] = {"title": self.title, "shapes": self.shapes}
        if self.stretch:
            view["stretch"] = True
        return view


def _point(point: Point) -> list[float]:
    return [float(point[0]), float(point[1])]
