"""How many legs a bend has is none of their sizes: 2 legs, 1 1/4 and 3."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from solvers.quantities import Length, Number

_LEGS = "lengths"
_COUNTED = frozenset(("leg", "legs", "sides", "bends"))


def legs_counted(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Leave the number of legs out of their sizes, where so many sizes are told besides."""
    counts = _counts(chart) if topics else set()
    for question in questions if counts else ():
        ways = [_without(way, counts) for way in (question.givens, *question.swaps)]
        question.givens = ways[0]
        question.swaps = [way for n, way in enumerate(ways[1:], 1) if all(_sizes(way) != _sizes(other) for other in ways[:n])]


def _counts(chart: Chart) -> set[int]:
    """The whole numbers said right before legs."""
    found: set[int] = set()
    for after, word in enumerate(chart.words):
        if word in _COUNTED and after:
            values = [row.value for row in chart.readings[after - 1] if row.end == after]
            found.update(int(n.value) for n in values if isinstance(n, Number) and n.value.denominator == 1)
    return found


def _without(way: dict[str, Heard], counts: set[int]) -> dict[str, Heard]:
    heard = way.get(_LEGS)
    legs = heard.value if heard is not None else ()
    if heard is None or not isinstance(legs, tuple) or len(legs) - 1 not in counts or not isinstance(legs[0], Length):
        return way
    counted = legs[0].value == len(legs) - 1 and legs[0].text.isalnum()
    return {**way, _LEGS: replace(heard, value=legs[1:])} if counted else way


def _sizes(way: dict[str, Heard]) -> object:
    heard = way.get(_LEGS)
    return [leg.value for leg in heard.value if isinstance(leg, Length)] if heard is not None else None
