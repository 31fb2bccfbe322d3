"""The air that a dew point is asked of, told right beside it: "it was twelve below when we started, what's the dew point at 20".

How warm it was before is no temperature of the air that is asked about.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Question
from solvers.quantities import Number, Temperature

TOPIC, AIR = "dew point", "temperature"
_NEAR, _AT = 4, 2  # words before the humidity that are looked at, and how many may stand between
_LED = frozenset("at of for".split())


def dew_at(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Take the number right after "dew point at" for how warm the air is, where another was taken for it."""
    words = chart.words
    if "dew" not in words:
        return
    for question in questions:
        if question.topic == TOPIC and question.unplaced:
            _beside_the_humidity(chart, question, topics)
    at = next((n + 3 for n in range(len(words) - 3) if words[n : n + 2] == ["dew", "point"] and words[n + 2] in _LED), 0)
    if not at:
        return
    rows = [r for r in chart.readings[at] if isinstance(r.value, Number | Temperature) and r.kind in ("number", "temperature")]
    reading = max(rows, key=lambda r: (r.end, isinstance(r.value, Temperature)), default=None)
    if reading is None or words[reading.end : reading.end + 1] in (["percent"], ["%"]):
        return
    for question in questions:
        old = question.givens.get(AIR) if question.topic == TOPIC else None
        parameter = next(p for p in topics[TOPIC] if p.name == AIR) if old is not None else None
        heard = heard_as(chart, parameter, reading, True) if parameter is not None else None
        if old is None or heard is None or old.start == heard.start:
            continue
        question.givens[AIR] = heard
        question.swaps = []
        question.unplaced = [text for text in question.unplaced if text != heard.text]
        question.left = [*question.left, old.text]


def _beside_the_humidity(chart: Chart, question: Question, topics: Mapping[str, Any]) -> None:
    """Take the number right before the humidity for how warm the air is, where another was: minus 12 out, 21 at 40 percent."""
    damp, old = question.givens.get("humidity"), question.givens.get(AIR)
    if damp is None or old is None or damp.end <= damp.start:
        return
    first = next((n for n, token in enumerate(chart.tokens) if token.start >= damp.start), 0)
    near = [reading for n in range(max(0, first - _NEAR), first) for reading in chart.readings[n]
            if reading.kind in ("number", "temperature") and first - _AT <= reading.end <= first]  # fmt: skip
    reading = max(near, key=lambda r: (r.end, -r.start), default=None)
    parameter = next(p for p in topics[TOPIC] if p.name == AIR)
    heard = heard_as(chart, parameter, reading, True) if reading is not None else None
    if heard is None or heard.start == old.start or heard.text not in question.unplaced:
        return
    question.givens[AIR], question.swaps = heard, []
    question.unplaced = [text for text in question.unplaced if text != heard.text]
    question.left = [*question.left, old.text]
