"""Waste that is in the sum already: "the waste's in there", "waste included". None is to be added."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from intents.chart import Chart
from intents.question import Heard, Question
from solvers.quantities import Percent
from solvers.slots import Parameter

_WASTE = frozenset(("waste", "wastage"))
_SMALL = frozenset("is are already all was has been it's".split())
_TOLD = (("included",), ("in", "there"), ("in", "it"), ("in", "that"), ("built", "in"), ("allowed",))
WITHIN = 6  # words after the waste


def waste_in_it(chart: Chart, question: Question, parameters: Iterable[Parameter]) -> None:
    """Give the waste as none, where the words tell that it is in what was given."""
    if "waste" in question.givens or _WASTE.isdisjoint(chart.words):
        return
    parameter = next((p for p in parameters if p.name == "waste"), None)
    at = next(i for i, word in enumerate(chart.words) if word in _WASTE)
    after = [word for word in chart.words[at + 1 : at + WITHIN] if word not in _SMALL]
    if parameter is not None and any(tuple(after[: len(told)]) == told for told in _TOLD):
        token = chart.tokens[at]
        said = chart.text[token.start : token.end]
        question.givens["waste"] = Heard(Percent(Fraction(0), "percent", "none: it is in there"), token.start, token.end, said)
