"""A leg of a triangle that lies on the ground: "24 inches high and 20 foot long on the ground" tells the run, not the slope."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of

TOPIC = "right triangle"
_ON = frozenset("on along across over".split())
_SMALL = frozenset("long the a it's in plan".split())
_LEVEL = frozenset("ground floor flat level slab concrete".split())


def along_ground(chart: Chart, question: Question) -> None:
    """Make what was taken for the slope the run, where the words after it say that it lies level."""
    slope = question.givens.get("slope") if question.topic == TOPIC else None
    if slope is None or slope.end <= slope.start or "run" in question.givens:
        return
    end = places_of(chart, slope)[1]
    after = [word for word in chart.words[end : end + 4] if word not in _SMALL]
    if len(after) < 2 or after[0] not in _ON or after[1] not in _LEVEL:
        return
    kept = {name: heard for name, heard in question.givens.items() if name not in ("slope", "wanted")}
    question.givens, question.swaps = {**kept, "run": slope}, []
