"""A sum that is halved or doubled once the thing it took off was named: 10 foot minus a 32 inch door, halved.

The reading of the sum ends before the name; what is done to all of it was said all the same. Numbers of a thousand and more
that are a size of the work are millimetres: half of 1785 for the centre line.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of
from intents.sum_places import scaled
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, leaves

SUM = "tape arithmetic"
_DONE = {"halved": (DIVIDED, 2), "doubled": (TIMES, 2), "tripled": (TIMES, 3)}
_SIZED = frozenset(
    "centre center centreline centerline middle mark marks batten battens opening gap gaps wall rail post posts reveal stud studs"
    " baluster balusters bay bays panel panels strap straps frame sill head door doorway window".split()
)
LEAST_MM, LEAST_THIN = 1000, 40  # no size in inches; no reveal is 40 in deep
_THIN = frozenset("reveal reveals rebate rebates".split())
_NAMED = 4  # words between the sum and what is done to it


def sum_halved(chart: Chart, question: Question) -> None:
    """Do to the whole sum what is said to be done to it after a name."""
    heard = question.givens.get("sum") if question.topic == SUM else None
    if heard is not None and _sized(chart, question):
        question.givens["sum"] = heard = replace(heard, value=_in_mm(heard.value))
    if heard is None or heard.end <= heard.start or _DONE.keys().isdisjoint(chart.words):
        return
    whole, (_, end) = heard.value, places_of(chart, heard)
    after = chart.words[end : end + _NAMED]
    done = next((word for word in after if word in _DONE), "")
    if not done or not isinstance(whole, Sum) or whole.operation not in (PLUS, MINUS) or scaled(whole):
        return
    between = range(end, end + after.index(done))
    if any(chart.readings[at] for at in between):
        return
    operation, by = _DONE[done]
    made = Sum(operation, whole, Number(Fraction(by), "none"))
    question.givens["sum"] = replace(heard, value=made, text=f"({heard.text}) {done}")
    question.swaps = []


def _sized(chart: Chart, question: Question) -> bool:
    """Whether a sum of numbers alone is of a size: 4270 divided by 7, battens; never 1200 boards less 300."""
    whole = question.givens["sum"].value
    if not isinstance(whole, Sum) or whole.operation == TIMES or "bare" in question.givens or _SIZED.isdisjoint(chart.words):
        return False
    parts = list(leaves(whole))
    plain = all(isinstance(part, Number) and part.unit == "none" and part.value.denominator == 1 for part in parts)
    least = LEAST_MM if _THIN.isdisjoint(chart.words) else LEAST_THIN
    if not plain or max(part.value for part in parts) < least:  # type: ignore[union-attr]
        return False
    return all(chart.words[at - 1][:1].isalpha() or chart.words[at - 1] in ",." for at in _named(chart) if at)


def _in_mm(part: Part | None) -> Any:
    """The sizes of a sum in millimetres; what it is divided by stays a number."""
    if isinstance(part, Sum):
        right = part.right if part.operation == DIVIDED else _in_mm(part.right)
        return replace(part, left=_in_mm(part.left), right=right)
    return Length(part.value, "mm", part.text) if isinstance(part, Number) else part


def _named(chart: Chart) -> list[int]:
    """Where the words stand that a size is of."""
    return [at for at, word in enumerate(chart.words) if word in _SIZED]
