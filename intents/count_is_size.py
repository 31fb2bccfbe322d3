"""A number that words after it make a size is no count of pieces, and sides that are something else's are no polygon's."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Question

_SPACED, _COUNT = "equal spacing", "count"
_OF_SIDES = ("both", "each", "either", "one", "two", "other")
_SIZES = frozenset("long high tall deep".split())
_THINGS = frozenset("piece pieces baluster balusters board boards picket pickets slat slats post posts".split())


def no_polygon(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Drop polygons of which no number is said, where the sides are those of something else: both sides, each side."""
    pairs = set(pairwise(chart.words))
    if not any((word, side) in pairs for word in _OF_SIDES for side in ("side", "sides")):
        return
    questions[:] = [one for one in questions if one.topic != "polygon" or one.givens]


def count_is_size(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Drop questions of equal spacing whose count is how long a wall is: the number before "long" that no piece is named by."""
    if "wall" not in chart.words:
        return
    for question in [one for one in questions if one.topic == _SPACED and _COUNT in one.givens]:
        count = question.givens[_COUNT]
        after = chart.text[count.end :].lower().split()[:1]
        if after and after[0].strip(",.;") in _SIZES and _THINGS.isdisjoint(chart.words):
            questions.remove(question)
