"""A quantity between two names: in "depth 14 in: soffit panels" it may be the depth, or what a panel covers.

Where the words on the other side of it tell another role, and the quantity in that role was put there by no words at
all, the two could be the other way round, and both ways go on.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.phrases import Phrases
from intents.placing import possible
from intents.question import Heard, Question
from intents.second_reader import heard_any, spans_of, told_by
from solvers.slots import Parameter

Span = tuple[int, int]


def other_way_round(chart: Chart, phrases: Phrases, question: Question, parameters: Mapping[str, Parameter]) -> None:
    """Add the way in which a quantity has the other role that is told of it."""
    told = told_by(hit for hit in chart.hits if phrases.patterns[hit.pattern].topic == question.topic)
    if not any(len(roles) > 1 for roles in told.values()):
        return
    where = {name: span for name, heard in question.givens.items() for span in spans_of(chart, [heard])}
    for name, span in where.items():
        for other in told.get(span, set()) - {name}:
            loose = where.get(other)
            if loose is not None and not told.get(loose):
                swap = _swapped(chart, question, parameters, (name, span), (other, loose))
                question.swaps += [swap] if swap is not None else []


def _swapped(
    chart: Chart, question: Question, parameters: Mapping[str, Parameter], one: tuple[str, Span], two: tuple[str, Span]
) -> dict[str, Heard] | None:  # fmt: skip
    """The givens with two of them in each other's place, where both can be that."""
    swap = dict(question.givens)
    for (name, _), (_, (start, end)) in ((one, two), (two, one)):
        parameter = parameters[name]
        found = (heard_any(chart, parameter, r) for r in chart.readings[start] if r.end == end)
        heard = next((heard for heard in found if heard is not None), None)
        if heard is None or possible(parameter, heard.value) < 1:
            return None
        swap[name] = heard
    return swap
