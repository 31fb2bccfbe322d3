"""Two people who tell it differently: the owner says five twelve and the framer says six twelve. It is asked which."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Quantity

_SAYS = frozenset("says said reckons thinks claims swears".split())
_REACH = 7  # words from who says it to what is said
_SETTLED = frozenset("measured taped checked actually really turns truth level".split())


def two_tellers(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Put what the other says beside what was taken, as another way to mean the first question."""
    question = next(iter(questions), None)
    says = [at for at, word in enumerate(chart.words) if word in _SAYS]
    if question is None or len(says) != 2 or question.swaps or _measured(chart.words):
        return
    told = [next((r for r in quantities(chart, at, min(at + _REACH, len(chart.words)))), None) for at in says]
    one, other = told
    if one is None or other is None or one.kind != other.kind or not isinstance(one.value, Quantity):
        return
    for parameter in topics.get(question.topic, ()):
        heard = question.givens.get(parameter.name)
        if heard is None or not isinstance(heard.value, Quantity) or heard.end <= heard.start:
            continue
        start, _ = places_of(chart, heard)
        rest = {one.start: other, other.start: one}.get(start)
        if rest is not None:
            found = heard_as(chart, parameter, rest, True)
            if found is not None and found.value.value != heard.value.value:
                question.swaps = [question.givens | {parameter.name: found}]
            return


def _measured(words: list[str]) -> bool:
    """Whether it is told which of the two it is: it turns out to be, I measured it."""
    return any(word in _SETTLED and not {"nobody", "no", "not"} & {*words[max(0, at - 6) : at]} for at, word in enumerate(words))
