"""A bay told by a bare number somewhere behind the word: "the bay out front is 45" turns so far, it has no 45 sides."""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Angle

TOPIC = "polygon"
_SIDES = frozenset("sides sided side pieces".split())
_IS = frozenset(("is", "at", "turns", "measures", "reads", "about", "a"))
LEAST, MOST = 20, 90  # degrees that a bay turns
_REACH = 6


def bay_told(chart: Chart, question: Question) -> None:
    """Make the sides of a polygon what its bay turns, where no ring has so many and a bay is spoken of."""
    sides = question.givens.get("sides") if question.topic == TOPIC else None
    if sides is None or sides.end <= sides.start or "bay" not in chart.words or not _SIDES.isdisjoint(chart.words):
        return
    start = places_of(chart, sides)[0]
    before = chart.words[max(0, start - _REACH) : start]
    if not LEAST <= sides.value.value <= MOST or "bay" not in before or before[-1] not in _IS or len(question.givens) > 1:
        return
    question.givens = {"bay": replace(sides, value=Angle(sides.value.value, "deg", sides.text), others=())}
    question.swaps = []
