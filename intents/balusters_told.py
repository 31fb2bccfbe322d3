"""Balusters of a width between posts, with so much between them at most: 9 ft 4 between posts, 1 1/2 balusters, 4 inch max.

The number beside their name that is no whole one, or has a unit, is how wide one is; the one that may not be passed is the gap;
the longest is what they stand in. Only where these are all the numbers of the line.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart, quantities
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number

_SPACED = "equal spacing"
_PICKETS = frozenset("picket pickets baluster balusters spindle spindles slat slats paling palings".split())
_MOST = frozenset("max maximum most tops".split())
_TOLD = _MOST | frozenset("more less under over exceed below".split())
_BEFORE = frozenset((("max",), ("maximum",), ("most",), ("more", "than"), ("less", "than"), ("not", "over"),
                     ("nothing", "over"), ("never", "over"), ("be", "over"), ("go", "over"), ("exceed",), ("under",),
                     ("below",)))  # fmt: skip
_PARTS, _LEAST = 3, 3  # numbers of such a line; and times as long as a picket is wide, that they stand in
_REACH = 3  # words after a number that say that it is the most


def balusters_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Give the three lengths of a row of balusters their places, where what there is has them otherwise."""
    if _PICKETS.isdisjoint(chart.words) or _TOLD.isdisjoint(chart.words):
        return
    question = next((one for one in questions if one.topic == _SPACED), None)
    told = [row for row in quantities(chart, 0, len(chart.words)) if isinstance(row.value, Length | Number)]
    wide, most = ([row for row in told if says(chart, row)] for says in (_is_width, _is_most))
    if question is None or len(told) != _PARTS or len(wide) != 1 or len(most) != 1 or wide == most:
        return
    long = next(row for row in told if row not in (*wide, *most))
    metric = any(isinstance(row.value, Length) and row.value.unit in ("mm", "cm", "m") for row in told)
    small = "mm" if metric else "in"
    inside, width, gap = _heard(chart, long, small), _heard(chart, wide[0], small), _heard(chart, most[0], small)
    if not metric and not isinstance(long.value, Length) and inside.value.value < _FEET:
        inside = replace(inside, value=replace(inside.value, unit="ft"))
    if any(one.value.value <= 0 for one in (inside, width, gap)):
        return
    between, wide_in, most_in = (one.value.to("in").value for one in (inside, width, gap))
    if between < _LEAST * wide_in or most_in >= between:
        return
    givens = {"length": inside, "width": width, "widest": gap}
    if "ends" in question.givens:
        givens["ends"] = question.givens["ends"]
    if {name: heard.value for name, heard in question.givens.items()} == {name: heard.value for name, heard in givens.items()}:
        return
    question.givens, question.unplaced, question.swaps, question.missing, question.lacking = givens, [], [], [], 0


_FEET = 40  # from which on a bare number is inches


def _is_width(chart: Chart, row: Reading) -> bool:
    """Whether a number stands before the name of a picket and is no count of them."""
    after = chart.words[row.end : row.end + 2]
    named = not _PICKETS.isdisjoint(after[:1]) or (after[:1] in (["wide"], ["square"]) and len(after) > 0)
    return named and (isinstance(row.value, Length) or (isinstance(row.value, Number) and row.value.value.denominator != 1))


def _is_most(chart: Chart, row: Reading) -> bool:
    """Whether a number may not be passed: 4 inch max, no more than 4."""
    before = tuple(chart.words[max(0, row.start - 2) : row.start])
    after = chart.words[row.end : row.end + _REACH]
    return before in _BEFORE or before[-1:] in _BEFORE or any(word in _MOST for word in after[:_REACH] if "," not in after)


def _heard(chart: Chart, row: Reading, unit: str) -> Heard:
    """A number as a length, a bare one in this unit."""
    start, end = chart.tokens[row.start].start, chart.tokens[row.end - 1].end
    said = chart.text[start:end]
    if isinstance(row.value, Length):
        return Heard(replace(row.value, text=said), start, end, said)
    assert isinstance(row.value, Number)
    return Heard(Length(row.value.value, unit, said), start, end, said)
