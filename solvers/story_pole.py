"""The story pole: course marks, cumulative and exact, and the drawings they stand on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from solvers.exact import Exact, Term
from solvers.figure import Point, View
from solvers.working import Working

MOST_MARKS = 400  # more courses or marks than this on one wall is a slip of the tongue, and a page nobody reads


@dataclass(frozen=True, slots=True)
class Mark:
    """A place on the pole, exact inches from its start, and what it is."""

    name: str
    at: Exact


def courses_between(start: Fraction, end: Fraction, count: int, first: int = 1) -> list[Mark]:
    """The top of each of `count` equal courses: each mark is worked from the start, never stepped off."""
    return [Mark(f"course {first + i}", start + (end - start) * (i + 1) / count) for i in range(count)]


def put_marks(work: Working, marks: Sequence[Mark]) -> None:
    """Marks into the record, each rounded for itself."""
    for mark in marks:
        work.mark(mark.name, mark.at)


def draw_pole(work: Working, marks: Sequence[Mark], end: float, title: str = "story pole") -> None:
    """An upright strip with the reading of every mark of the record, measured from the bottom."""
    width = max(end, 1.0) / 20
    view = work.view(title, stretch=True)
    view.polygon([(0, 0), (width, 0), (width, end), (0, end)], fill="piece")
    _tick(work, view, [(0.0, float(mark.at)) for mark in marks])


def draw_strip(work: Working, marks: Sequence[Mark], end: float, title: str) -> None:
    """A level strip with the reading of every mark of the record, measured from the left."""
    height = max(end, 1.0) / 20
    view = work.view(title, stretch=True)
    view.polygon([(0, 0), (end, 0), (end, height), (0, height)], fill="piece")
    _tick(work, view, [(float(mark.at), 0.0) for mark in marks])


def _tick(work: Working, view: View, places: Sequence[Point]) -> None:
    """A tick for each mark of the record, with its reading there."""
    for place, line in zip(places, work.marks, strict=True):
        view.tick(place, line.text)


def refuse_crowd(work: Working, count: Exact, what: str, spacing: Term, most: int = MOST_MARKS) -> None:
    """Refuses more marks than anybody would set out."""
    work.refuse_when(count > most, f"{work.text(spacing)} would make more than {most} {what}: check the {spacing.name}")
