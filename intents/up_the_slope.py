"""What is asked up or along the slope is the length there, and no rise: how far up the slope is it over a 13 foot run."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.question import Question

_RISE = "rise over a run"
_FAR, _WAYS = frozenset(("far", "long", "length", "distance")), frozenset(("up", "along", "down"))
_SLOPES, _SMALL = frozenset(("slope", "pitch", "rake")), frozenset(("the", "a", "that", "roof"))
_CLOSE = 3  # words between how far and up the slope
_LESS = 1.0


def up_the_slope(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Leave the rise behind the length along the slope, where that is what the line asks."""
    if not topics or not _asked_along(chart.words):
        return
    for question in questions:
        if question.topic == _RISE:
            question.score -= _LESS
    questions.sort(key=lambda question: -question.score)


def _asked_along(words: list[str]) -> bool:
    for at, word in enumerate(words):
        if word not in _WAYS or _FAR.isdisjoint(words[max(0, at - _CLOSE) : at]):
            continue
        if next((other for other in words[at + 1 :] if other not in _SMALL), "") in _SLOPES:
            return True
    return False
