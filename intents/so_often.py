"""How often something is added or taken off, told at the end: take 2 foot 7 off 9 foot 1 twice; 10 foot minus 6 and 3/4 three
times. It is said of the last thing done, and not of all of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.question import Question
from intents.sum_places import scaled
from solvers.quantities import Number
from solvers.sums import MINUS, PLUS, TIMES, Sum

TOPIC, SLOT = "tape arithmetic", "sum"
_STOPS = frozenset("? . ! , please".split())
_TWO = Number(Fraction(2), "none", "2")
_ALL = frozenset("that it all lot this whole them".split())


def so_often(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take the last length of a sum so many times, where the line ends on how often."""
    words = [*chart.words]
    while words and words[-1] in _STOPS:
        words.pop()
    often, of_all = _often(chart, words), words[-1:] == ["twice"] and words[-2:-1] != [] and words[-2] in _ALL
    if often is None and not of_all:
        return
    for question in questions:
        heard = question.givens.get(SLOT) if question.topic == TOPIC else None
        if heard is None or not isinstance(heard.value, Sum):
            continue
        all_twice = Sum(TIMES, _TWO, heard.value) if of_all and not scaled(heard.value) else None
        whole = _last_so_often(heard.value, often) if often is not None else all_twice
        if whole is not None:
            question.givens[SLOT] = replace(heard, value=whole, text=str(whole))


def _often(chart: Chart, words: list[str]) -> Number | None:
    """How often, as the last words tell it: twice, three times; None where it is told of all of it, or not."""
    if words[-1:] == ["twice"]:
        return None if words[-2:-1] != [] and words[-2] in _ALL else _TWO
    if words[-1:] != ["times"] or len(words) < 3:
        return None
    at = len(words) - 2
    count = next((r.value for r in chart.readings[at] if isinstance(r.value, Number) and r.end == at + 1), None)
    if not isinstance(count, Number) or count.value.denominator != 1 or words[at - 1] in _ALL | {",", "and"}:
        return None
    return count


def _last_so_often(whole: Sum, often: Number) -> Sum | None:
    if whole.operation == TIMES:
        for count, inner in ((whole.left, whole.right), (whole.right, whole.left)):
            same = isinstance(count, Number) and count.value == often.value
            if same and isinstance(inner, Sum) and inner.operation in (PLUS, MINUS) and inner.right is not None:
                return Sum(inner.operation, inner.left, Sum(TIMES, often, inner.right))
    if whole.operation == MINUS and whole.right is not None and not scaled(whole):
        return Sum(MINUS, whole.left, Sum(TIMES, often, whole.right))
    return None
