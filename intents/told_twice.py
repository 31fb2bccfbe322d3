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
from intents.reading import Dims
from intents.second_reader import heard_any, spans_of, told_of
from solvers.slots import Parameter

Span = tuple[int, int]
REACH = 8  # tokens of the longest size said together, to where it starts


def other_way_round(
    chart: Chart, phrases: Phrases, question: Question, parameters: Mapping[str, Parameter]
) -> dict[str, Heard] | None:  # fmt: skip
    """The way in which a quantity has the other role that is told of it.

    Where the quantity it changes places with is told that role, there is no doubt: the question is put right.
    """
    told = told_of(chart, phrases, question.topic)
    if not any(len(roles) > 1 for roles in told.values()):
        return None
    where = {name: span for name, heard in question.givens.items() for span in spans_of(chart, [heard])}
    for name, span in where.items():
        for other in sorted(told.get(span, set()) - {name}):
            loose = where.get(other)
            if loose is None or other in told.get(loose, ()) or _in_size(chart, loose):
                continue
            swap = _swapped(chart, question, parameters, (name, span), (other, loose))
            if swap is not None and name in told.get(loose, ()):
                question.givens = swap
                return None
            if swap is not None:
                return swap
    return None


def _in_size(chart: Chart, place: Span) -> bool:
    """Whether a quantity is a part of a size, which is said in its order: 26 ft by 9 ft."""
    rows = chart.readings[max(0, place[0] - REACH) : place[0] + 1]
    return any(isinstance(r.value, Dims) and r.start <= place[0] and place[1] <= r.end for row in rows for r in row)


def _swapped(
    chart: Chart, question: Question, parameters: Mapping[str, Parameter], one: tuple[str, Span], two: tuple[str, Span]
) -> dict[str, Heard] | None:  # fmt: skip
    """The givens with two of them in each other's place, where both can be that."""
    swap = dict(question.givens)
    for (name, _), (place, (start, end)) in ((one, two), (two, one)):
        parameter = parameters[name]
        found = (heard_any(chart, parameter, r) for r in chart.readings[start] if r.end == end)
        heard = next((heard for heard in found if heard is not None), None)
        if heard is None or possible(parameter, heard.value) < 1 or heard.value.unit != question.givens[place].value.unit:
            return None
        swap[name] = heard
    return swap if _in_order(swap, parameters) else None


def _in_order(givens: Mapping[str, Heard], parameters: Mapping[str, Parameter]) -> bool:
    """Whether what is always more than something else is so: the total of a trim and a stick of it."""
    for name, heard in givens.items():
        less = givens.get(parameters[name].slot.over) if name in parameters else None
        if less is not None and heard.value.to("in").value <= less.value.to("in").value:
            return False
    return True
