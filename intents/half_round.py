"""A half round by its name: its width alone tells its rise, whatever else of it is asked."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question

ARC, CIRCLE = "arc", "circle"
ROUND_IT = frozenset("circumference perimeter far".split())
AREAS = frozenset("area square sq sqft sf ft2 m2 footage footprint".split())
_HALVES = frozenset((("half", "round"), ("half", "circle"), ("half", "moon"), ("semi", "circle")))
_NAMES = frozenset(("semicircle", "semicircular", "semicircles"))
_TOLD = frozenset(("rise", "radius", "head"))


def half_round(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Say that it is a half round, where an arc of which only the width is told goes by that name."""
    words = chart.words
    first = next(iter(questions), None)
    if first is None or first.topic != ARC or "width" not in first.givens or not _TOLD.isdisjoint(first.givens):
        return
    if not _NAMES.isdisjoint(words) or not _HALVES.isdisjoint(pairwise(words)):
        first.givens["head"] = Heard("HALF", 0, 0, "")
        first.lacking = 0


def circle_area(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Say that the area of a circle is asked, where that is named and how far round it is is not."""
    for question in questions:
        if question.topic == CIRCLE and not AREAS.isdisjoint(chart.words) and ROUND_IT.isdisjoint(chart.words):
            question.givens["asked"] = Heard("AREA", 0, 0, "")
