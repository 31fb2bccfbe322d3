"""How many courses another wall took is no count of this one: we did the north wall with 14 courses, the lake wall's 8 foot 3
and 7 max, how many on that one."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

TOPIC = "course layout"
_WALLS = frozenset("wall side gable end face elevation job house one".split())
_STOPS = frozenset((",", ".", ";", "but", "?"))
_NO_NAMES = frozenset("a an the that this of on in is for with each every one whole my our".split())
_THIS = frozenset("this here".split())


def another_wall(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Leave out a count of courses whose clause names another wall than that of the height."""
    for question in questions:
        count, height = question.givens.get("count"), question.givens.get("height")
        if question.topic != TOPIC or count is None or height is None or "exposure" not in question.givens:
            continue
        of_count, of_height = _named(chart, count), _named(chart, height)
        if of_count and of_height and of_count.isdisjoint(of_height):
            del question.givens["count"]
            question.swaps = [way for way in question.swaps if "count" not in way]
            question.left = [*question.left, count.text]


def _named(chart: Chart, heard: Heard) -> frozenset[str]:
    """The walls that the clause of a given names, "this" for the one at hand."""
    if heard.end <= heard.start:
        return frozenset()
    low, high = places_of(chart, heard)
    while low and chart.words[low - 1] not in _STOPS:
        low -= 1
    while high < len(chart.words) and chart.words[high] not in _STOPS:
        high += 1
    words = chart.words[low:high]
    named = {a for a, b in pairwise(words) if b in _WALLS and a not in _NO_NAMES}
    return frozenset(named | ({"this"} if not _THIS.isdisjoint(words) else set()))
