"""So many nails a stud: screws 2 a stud, 19 studs, 14 boards."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.placing import place_of
from intents.question import Heard, Question
from solvers.quantities import Count, Number

TOPIC = "fasteners"
_PLACES = frozenset("stud rafter joist batten strap".split())
MOST = 6  # nails at one place


def counted_in_whole(_chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Leave out what counts straps or studs by a fraction: "3/4 straps, 1 1/2 in the stud" counts neither."""
    questions[:] = [question for question in questions if question.topic != TOPIC or _in_whole(question)] or questions


def at_a_stud(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take a number before "a stud" for how many go in each, and not for a spacing or a length."""
    words = chart.words
    at = next((at for at in range(1, len(words) - 1) if words[at] in ("a", "per") and words[at + 1] in _PLACES), 0)
    found = next((r for r in chart.readings[at - 1] if isinstance(r.value, Number) and r.end == at), None) if at else None
    if found is None or not isinstance(found.value, Number) or not 0 < found.value.value <= MOST:
        return
    start, end, text = place_of(chart, found.start, found.end)
    for question in questions:
        if question.topic != TOPIC:
            continue
        given = {name: heard for name, heard in question.givens.items() if not start <= heard.start < end}
        given["at_each"] = Heard(Count(Fraction(found.value.value), "count", text), start, end, text)
        question.givens, question.swaps = given, []
        question.unplaced = [one for one in question.unplaced if one != text]
        if "studs" in given:
            question.missing = [name for name in question.missing if name not in ("length", "spacing")]


def _in_whole(question: Question) -> bool:
    """Whether what is counted is told in whole numbers."""
    counts = [question.givens[name].value for name in ("rows", "studs") if name in question.givens]
    return all(getattr(count, "value", Fraction(1)).denominator == 1 for count in counts)
