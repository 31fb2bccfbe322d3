"""The length of all boards asked for, and not how many: lineal feet of siding for 340 square feet at 6 inch exposure."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question

TOPIC = "cladding boards"
_LINEAL = frozenset("lineal linear running lm lf".split())
_PAIRS = frozenset((("lin", "ft"), ("total", "length"), ("total", "feet")))
_COUNTED = frozenset("feet metres meters foot".split())


def lineal_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Ask for the length of the boards in all, where that is said and no board's length is."""
    if all(question.topic != TOPIC for question in questions):
        return
    words = chart.words
    asked = not _LINEAL.isdisjoint(words) or any(pair in _PAIRS for pair in pairwise(words))
    asked = asked or any(words[at : at + 2] == ["how", "many"] and words[at + 2] in _COUNTED for at in range(len(words) - 2))
    for question in questions if asked else ():
        if question.topic == TOPIC and "board_length" not in question.givens:
            question.givens["wanted"] = Heard("LENGTH", 0, 0, "")
