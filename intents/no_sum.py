"""Sums that are none: "13 risers out of it" are parts of a length and no inches off it, "22 bags, 9.85 each" is money."""

from __future__ import annotations

import re
from collections.abc import Mapping
from itertools import pairwise

from intents.chart import Chart, quantities
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Count, Length, Money, Quantity
from solvers.slots import Parameter

SUM = "tape arithmetic"
_OUT = ("out", "of")
_IT = frozenset("it that this them those".split())
_EACH = frozenset(("each", "apiece", "ea"))
_ALIKE = frozenset("each every equal even same evenly equally apiece".split())
_PRICE = re.compile(r"\d{1,4}\.\d\d")
_UNITS = frozenset("in inch inches ft feet foot m mm cm metres meters metre meter long wide".split())
_NEAR = 3  # words of the name of a thing


def no_sum(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Make the first question, where it is a sum, of what it asks: parts of a length, or money."""
    question = next(iter(questions), None)
    if question is None or question.topic != SUM:
        return
    if not _EACH.isdisjoint(chart.words):
        _bought_each(chart, question)
    if question.topic == SUM and "out" in chart.words and (parts := _parts_out_of_it(chart)) is not None:
        _divide(chart, question, parts)


def _divide(chart: Chart, question: Question, parts: Reading) -> None:
    """As many parts of the one length that was told; a sum that may be meant is asked about."""
    lengths = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Length)]
    if len(lengths) != 1 or _ALIKE.isdisjoint(chart.words):
        question.lacking = 1
        return
    place = place_of(chart, lengths[0].start, lengths[0].end)
    assert isinstance(lengths[0].value, Length)
    length = Heard(Length(lengths[0].value.value, lengths[0].value.unit, place[2]), *place)
    question.topic, question.swaps, question.lacking = "divide evenly", [], 0
    question.givens = {"length": length, "parts": _heard(chart, parts, Count, "count")}


def _parts_out_of_it(chart: Chart) -> Reading | None:
    """How many things are to come out of a length: 13 | risers out of it."""
    words = chart.words
    for at, pair in enumerate(pairwise(words)):
        if pair != _OUT or _IT.isdisjoint(words[at + 2 : at + 3]):
            continue
        for start in range(max(0, at - _NEAR), at - 1):
            counts = [r for r in chart.readings[start] if r.kind == "number" and r.end < at]
            if counts and all(_names(word) for word in words[counts[0].end : at]):
                return counts[0]
    return None


def _bought_each(chart: Chart, question: Question) -> None:
    """Make a cost of things that are so much each, where no length is told: 22 bags of mortar 9.85 each."""
    said = list(quantities(chart, 0, len(chart.words)))
    if len(said) != 2 or any(r.kind != "number" for r in said) or not _UNITS.isdisjoint(chart.words):
        return
    count, price = said
    named = chart.words[count.end : price.start]
    if not named or not named[0].endswith("s") or not all(_names(word) for word in named):
        return
    if _PRICE.fullmatch(chart.said(price.start, price.end)) is None or chart.words[price.end] not in _EACH:
        return
    question.topic, question.swaps = "cost", []
    question.givens = {"count": _heard(chart, count, Count, "count"), "price": _heard(chart, price, Money, "money")}


def _heard(chart: Chart, reading: Reading, kind: type[Quantity], unit: str) -> Heard:
    place = place_of(chart, reading.start, reading.end)
    assert isinstance(reading.value, Quantity)
    return Heard(kind(reading.value.value, unit, place[2]), *place)


def _names(word: str) -> bool:
    return word.isalpha() and word not in _UNITS
