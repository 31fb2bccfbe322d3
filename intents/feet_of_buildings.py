"""What is said with no unit of a building, a deck or a slab is in feet: a 40 by 64 pole barn, corner to corner.

Where any length has a unit, that one tells; a window in the barn is no barn.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.question import Question
from intents.stated_units import stated_metric
from solvers.quantities import Length

_TOPICS = frozenset(("square check", "out of square", "right triangle"))
_BUILDINGS = frozenset(
    "barn house garage building shed slab foundation footing footings deck addition cabin cottage boathouse workshop carport pad"
    " patio yard".split()
)
_SMALLER = frozenset(
    "window windows door doors frame sash hatch gate panel opening shutter screen box brace cabinet shelf table gusset vent"
    " louvre louver sign inch inches in rafter strut stringer".split()
)
LEAST, MOST = 6, 120  # of feet that a side of one is
_SAID = 0.5  # a length no surer than this was put together of bare numbers


def feet_of_buildings(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Give the sides of a building their feet."""
    words = chart.words
    if not topics or _BUILDINGS.isdisjoint(words) or not _SMALLER.isdisjoint(words) or stated_metric(words):
        return
    if any(r.kind == "length" and r.sure > _SAID for row in chart.readings for r in row):
        return
    for question in questions:
        sides = {n: h for n, h in question.givens.items() if isinstance(h.value, Length) and h.end > h.start}
        plain = all(h.value.value.denominator <= 2 and LEAST <= h.value.value <= MOST for h in sides.values())
        if question.topic in _TOPICS and sides and plain:
            feet = {n: replace(h, value=Length(h.value.value, "ft", h.text), others=()) for n, h in sides.items()}
            question.givens, question.swaps = question.givens | feet, []
