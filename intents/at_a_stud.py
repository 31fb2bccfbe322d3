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
_ROWS = frozenset("rows courses straps battens boards planks strips".split())
_COUNTS = ("rows", "studs")
MOST = 6  # nails at one place


def counted_in_whole(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Leave out what counts straps or studs by a fraction: "3/4 straps, 1 1/2 in the stud" counts neither."""
    kept = [question for question in questions if question.topic != TOPIC or _in_whole(question)]
    for question in questions if not kept else ():
        for name in [name for name in _COUNTS if name in question.givens and not _whole(question.givens[name].value)]:
            question.left.append(question.givens.pop(name).text)
            question.missing = [*question.missing, name] if name == "rows" else question.missing
        _told_in_whole(chart, question)
    questions[:] = kept or questions


def at_a_stud(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take a number before "a stud" for how many go in each, and not for a spacing or a length."""
    words = chart.words
    at = next((at for at in range(1, len(words) - 1) if words[at] in ("a", "per") and words[at + 1] in _PLACES), 0)
    found = next((r for r in chart.readings[at - 1] if isinstance(r.value, Number) and r.end == at), None) if at else None
    if found is None or not isinstance(found.value, Number) or not 0 < found.value.value <= MOST:
        return
    start, end, text = place_of(chart, found.start, found.end)
    for question in questions:
        if question.topic != TOPIC or "in_each" in question.givens:
            continue
        given = {name: heard for name, heard in question.givens.items() if not start <= heard.start < end}
        given["at_each"] = Heard(Count(Fraction(found.value.value), "count", text), start, end, text)
        question.givens, question.swaps = given, []
        question.unplaced = [one for one in question.unplaced if one != text]
        if "studs" in given:
            question.missing = [name for name in question.missing if name not in ("length", "spacing")]


def _told_in_whole(chart: Chart, question: Question) -> None:
    """Take the whole number of rows that are told besides: for 5/8 board, | 12 rows."""
    for at, word in enumerate(chart.words):
        if "rows" in question.givens or word not in _ROWS or not at:
            continue
        found = next((r for r in chart.readings[at - 1] if r.end == at and isinstance(r.value, Number) and _whole(r.value)), None)
        if found is not None and isinstance(found.value, Number):
            start, end, text = place_of(chart, found.start, found.end)
            question.givens["rows"] = Heard(Count(found.value.value, "count", text), start, end, text)
            question.missing = [name for name in question.missing if name != "rows"]
            question.unplaced = [one for one in question.unplaced if one != text]


def _in_whole(question: Question) -> bool:
    """Whether what is counted is told in whole numbers."""
    return all(_whole(question.givens[name].value) for name in _COUNTS if name in question.givens)


def _whole(count: Any) -> bool:
    return getattr(count, "value", Fraction(1)).denominator == 1
