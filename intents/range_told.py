"""A least and a greatest exposure told as a range: "courses 4 to 6" says nothing of how high the wall is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Length

TOPIC = "course layout"
_TO = ["to"]


def range_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take a height and an exposure with "to" between them for the least and the greatest exposure."""
    for question in questions:
        height, exposure = question.givens.get("height"), question.givens.get("exposure")
        told = question.topic == TOPIC and height and exposure and "least" not in question.givens
        if told and height and exposure and _a_range(chart, height, exposure):
            least = Length(height.value.value, exposure.value.unit, height.text)
            question.givens["least"] = Heard(least, height.start, height.end, height.text, height.sure)
            del question.givens["height"]
            question.missing, question.swaps = [*question.missing, "height"], []


def _a_range(chart: Chart, one: Heard, other: Heard) -> bool:
    """Whether two lengths are all but one number to another, the first of them bare and the less."""
    (_, end), (start, _) = places_of(chart, one), places_of(chart, other)
    return one.bare and chart.words[end:start] == _TO and one.value.value < other.value.value
