"""What each length of a sum does, as its writer marked it or as the answer tells: what the second reader of sums learns from."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import product
from typing import Any, NamedTuple

from intents.chart import Chart, chart_of
from intents.features import Mention
from intents.learned import NOTHING, Learned
from intents.matcher import speller
from intents.phrases import compiled
from intents.question import Heard, Question
from intents.second_sums import (
    ADDED,
    ADDED_TWICE,
    DIVIDES,
    HALF,
    MOST,
    OF_NEXT,
    SLOT,
    TAKEN,
    TOPIC,
    features_of,
    half_features,
    lengths_of,
    names_of,
    sum_of,
    ways_of,
)  # fmt: skip
from solvers.constants import MM_PER_INCH
from solvers.quantities import LENGTH
from solvers.sums import Sum, in_millimetres, with_units
from tests.understanding import SAME, lines

IN_MM = {unit: size * MM_PER_INCH.value for unit, size in LENGTH.items()}
NEAR = Fraction(1, 2000)  # millimetres in one, relative
SLIGHT = {"a", "an", "the", "even", "exactly", "about", "of", "-", "minus", "oc"}  # words in a mark, no part of its quantity
WIDTH = 4000  # ways tried where nothing is learned yet


class Summed(NamedTuple):
    """A sentence, its quantities, what each does, and whether all is halved."""

    chart: Chart
    found: list[Mention]
    roles: tuple[str, ...]
    half: bool


def by_answer(case: dict[str, Any], model: Learned | None) -> Summed | None:
    """The likeliest sum of the quantities said that gives the case's answer, or None where none does."""
    if "value" not in case or len(lines(case)) > 1 or case["unit"] not in SAME or SAME[case["unit"]][0] != "length":
        return None
    chart = chart_of(lines(case)[0], compiled(), speller())
    found = lengths_of(chart)
    if not 0 < len(found) <= MOST:
        return None
    wanted = Fraction(case["value"]) * Fraction(SAME[case["unit"]][1]) * IN_MM["in"]
    halves = (False, True)
    for roles, half in ((roles, half) for roles in _ways(chart, found, model) for half in halves):
        whole = None if half and ADDED_TWICE in roles else sum_of(chart, found, roles, half)
        if whole is not None and any(abs(value - wanted) <= NEAR * max(1, abs(wanted)) for value in _values(whole)):
            return Summed(chart, found, roles, half)
    return None


def _ways(chart: Chart, found: list[Mention], model: Learned | None) -> Iterator[tuple[str, ...]]:
    if model is not None:
        yield from (roles for _, roles in ways_of(chart, found, model))
        return
    order = {ADDED: 0.5, TAKEN: 0.6, OF_NEXT: 1.5, DIVIDES: 2, NOTHING: 2.5}
    names = [[*names_of(mention), NOTHING] for mention in found]
    every = [roles for n, roles in enumerate(product(*names)) if n < 10 * WIDTH]
    yield from sorted(every, key=lambda roles: sum(order.get(role, 1.8) for role in roles))[:WIDTH]


def _values(whole: Sum) -> Iterator[Fraction]:
    """What the sum comes to in millimetres, with its bare numbers in each unit."""
    for unit in (None, *IN_MM):  # that a bare number may be in
        try:
            turned = with_units(whole, unit) if unit else whole
            value = in_millimetres(turned)
        except (ZeroDivisionError, AssertionError):
            continue
        yield value
        if unit:
            yield value * IN_MM[unit]


def as_marked(chart: Chart, marks: Sequence[tuple[int, int, str]], half: bool) -> Summed:
    """The sum as marked: `marks` are tokens and what they do. Raises ValueError where one is no quantity, or no sum is made."""
    found = lengths_of(chart, [(start, end) for start, end, _ in marks])
    roles = []
    left = list(marks)
    for mention in found:
        mark = next((mark for mark in left if mark[0] <= mention.start and mention.end <= mark[1]), None)
        if mark is not None:
            left.remove(mark)
            if not {*chart.words[mark[0] : mention.start], *chart.words[mention.end : mark[1]]} <= SLIGHT:
                raise ValueError(f"read only in part: {chart.said(mark[0], mark[1])}")
        role = mark[2] if mark else NOTHING
        if role not in (*names_of(mention), NOTHING):
            raise ValueError(f"{chart.said(mention.start, mention.end)} can't be {role}")
        roles.append(role)
    if lost := [chart.said(start, end) for start, end, role in left if chart.words[start:end] != ["one"]]:
        raise ValueError(f"not read: {', '.join(lost)}")
    if sum_of(chart, found, roles, half) is None:
        raise ValueError("no sum")
    return Summed(chart, found, tuple(roles), half)


def mentioned(summed: Summed) -> Iterator[tuple[list[str], list[str], str]]:
    """What there is to learn from one: features, possible roles and the one it has, of each quantity and of halving."""
    for mention, features, role in zip(summed.found, features_of(summed.chart, summed.found), summed.roles, strict=True):
        yield features, names_of(mention), role
    yield half_features(summed.chart, compiled()), [HALF], HALF if summed.half else NOTHING


def sum_question(summed: Summed) -> Question:
    """The question that the sum is."""
    whole = sum_of(summed.chart, summed.found, summed.roles, summed.half)
    text = summed.chart.text
    return Question(TOPIC, {SLOT: Heard(whole, 0, len(text), text)})
