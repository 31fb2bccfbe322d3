"""What is worked so without being said: straps that start at nought."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question

_TOPICS = frozenset(("fasteners", "strapping"))
_ZERO = expression(r"\b(?:start(?:ing|s)?|from|at|begin(?:ning|s)?)(?: (?:at|from))? (?P<n>nought|naught|zero|0)\b", 2)


def said_anyway(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Leave out of what has no place what is so by itself."""
    for question in questions:
        if question.topic in _TOPICS and question.unplaced:
            zero = [match["n"] for match in _ZERO.finditer(chart.text)]
            question.unplaced = [text for text in question.unplaced if text not in zero]
