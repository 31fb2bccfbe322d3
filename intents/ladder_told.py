"""How far out a ladder's foot stands, told and not asked: "ladder's foot is out 4 feet, how high can it bear".

Such a size is no height that it bears at, which is asked for instead.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of

TOPIC, HEIGHT = "ladder footing", "height"
_OUT = frozenset("out away off".split())
_HIGH = frozenset((("how", "high"), ("what", "height"), ("how", "tall"), ("how", "far", "up"), ("right", "height")))


def foot_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take back a height that is how far out the foot stands, where how high it bears is asked."""
    if all(question.topic != TOPIC for question in questions):
        return
    words = chart.words
    asks_high = any(tuple(words[at : at + len(pair)]) == pair for pair in _HIGH for at in range(len(words)))
    for question in questions:
        heard = question.givens.get(HEIGHT) if question.topic == TOPIC else None
        if heard is None or heard.end <= heard.start:
            continue
        start, end = places_of(chart, heard)
        told = words[end : end + 1] == ["out"] and "how" not in words  # what if it's only 3 feet out
        if not (asks_high or told):
            continue
        beside = {*words[max(0, start - 1) : start], *words[end : end + 1]}
        if not beside.isdisjoint(_OUT):
            del question.givens[HEIGHT]
            question.missing = [*question.missing, HEIGHT]
            question.swaps = []
