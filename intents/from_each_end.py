"""Things set so far in from each end: 9 brackets on 16 foot starting 6 inches in from each end. What is told of the ends is no
width of theirs; the rest of the length is shared by the spaces between."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Count, Length

SPACING, DIVIDE = "equal spacing", "divide evenly"
_IN, _EACH = frozenset(("in", "from", "off", "back")), frozenset(("each", "both", "either", "the"))
_ENDS = frozenset("end ends side sides edge edges".split())
LEAST = 2  # things


def from_each_end(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Share what is between the first and the last of so many things, where the line tells how far in those are."""
    for question in questions:
        width, length, count = (question.givens.get(name) for name in ("width", "length", "count"))
        if width is not None and length is not None and _in_from_ends(chart, length):
            width, length = length, width
        if question.topic != SPACING or DIVIDE not in topics or width is None or length is None or count is None:
            continue
        lengths = isinstance(width.value, Length) and isinstance(length.value, Length)
        if not lengths or not isinstance(count.value, Count) or count.value.value <= LEAST or not _in_from_ends(chart, width):
            continue
        inner = length.value.to("in").value - 2 * width.value.to("in").value
        if inner <= 0:
            continue
        said = f"{length.text} less {width.text} at each end"
        unit = width.value.unit
        rest = replace(length, value=Length(Length(inner, "in").to(unit).value, unit).said(said), text=said, others=())
        parts = replace(count, value=Count(Fraction(count.value.value - 1), "count").said(f"{count.text} less one"), others=())
        question.topic, question.swaps, question.rival = DIVIDE, [], False
        question.givens, question.missing = {"length": rest, "parts": parts}, []


def _in_from_ends(chart: Chart, heard: Heard) -> bool:
    """Whether a length is told to be in from each end by the words after it."""
    if heard.end <= heard.start:
        return False
    _, end = places_of(chart, heard)
    after = chart.words[end : end + 4]
    return bool(after) and after[0] in _IN and not _EACH.isdisjoint(after) and not _ENDS.isdisjoint(after)
