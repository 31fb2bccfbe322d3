"""A sum that is halved or doubled once the thing it took off was named: 10 foot minus a 32 inch door, halved.

The reading of the sum ends before the name; what is done to all of it was said all the same.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of
from intents.sum_places import scaled
from solvers.quantities import Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Sum

SUM = "tape arithmetic"
_DONE = {"halved": (DIVIDED, 2), "doubled": (TIMES, 2), "tripled": (TIMES, 3)}
_THE = frozenset("the a an of my our your".split())
_NAMED = 4  # words between the sum and what is done to it


def sum_halved(chart: Chart, question: Question) -> None:
    """Do to the whole sum what is said to be done to it after a name."""
    heard = question.givens.get("sum") if question.topic == SUM else None
    if heard is None or heard.end <= heard.start or _DONE.keys().isdisjoint(chart.words):
        return
    whole, (_, end) = heard.value, places_of(chart, heard)
    after = chart.words[end : end + _NAMED]
    done = next((word for word in after if word in _DONE), "")
    if not done or not isinstance(whole, Sum) or whole.operation not in (PLUS, MINUS) or scaled(whole):
        return
    between = range(end, end + after.index(done))
    if any(chart.readings[at] for at in between) or chart.words[between.stop - 1] in _THE:
        return  # less 90 for the doubled top plates
    operation, by = _DONE[done]
    made = Sum(operation, whole, Number(Fraction(by), "none"))
    question.givens["sum"] = replace(heard, value=made, text=f"({heard.text}) {done}")
    question.swaps = []
