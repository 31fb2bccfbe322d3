"""Feet or inches of a bare width, by what fills it: six planks 5 1/2 wide across 36, a 72 1/2 ceiling in 3 1/4 boards.

Pieces whose width was said in inches fill a good part of what they stand in, and nobody balances two hundred boards. Only where
one of the units makes sense of it is it taken; the page shows the unit. Posts stand far apart and are asked about as before.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Count, Length

_FILLS, _FULL, _FAR = Fraction(2, 5), Fraction(1), Fraction(1, 10)  # of the width: by pieces close together, by those far apart
_TAPE_FILLS = Fraction(1, 5)  # where the width is told to a part of an inch, or pickets fill it
_PICKETS = frozenset("picket pickets baluster balusters spindle spindles slat slats".split())
_MOST_BOARDS = 60
_LEAST_BOARDS = 3
_UNDER = frozenset((("under",), ("below",), ("max",), ("maximum",), ("less", "than"), ("more", "than")))
SPACED, _NAME = "equal spacing", 5  # letters
_APART = frozenset(
    "post posts column columns pier piers light lights joist joists rafter rafters stud studs truss trusses bracket brackets"
    " fence bay bays hook hooks beam beams".split()
)


def fills_it(chart: Chart, question: Question) -> None:
    """Take the bare width of a question for the only one of its units that what fills it leaves."""
    if question.topic == SPACED:
        _things_are_counted(chart, question)
        _under(chart, question)
    if question.topic == "marks on centre":
        _first_one(chart, question)
    name = {SPACED: "length", "balanced panels": "width"}.get(question.topic)
    heard = question.givens.get(name) if name else None
    if heard is None or not heard.others or question.swaps:
        return
    fits = _pieces(chart, question, heard) if question.topic == SPACED else _panels(question)
    if fits is None:
        return
    left = [value for value in (heard.value, *heard.others) if isinstance(value, Length) and fits(value.to("in").value)]
    if len(left) == 1:
        question.givens[name or ""] = replace(heard, value=left[0], others=())


def _things_are_counted(chart: Chart, question: Question) -> None:
    """Leave only the ways in which so many things are no length: 13 palings between posts 1800 apart."""
    question.keep_ways(lambda way: not ("length" in way and _names_things(chart, way["length"])))


def _under(chart: Chart, question: Question) -> None:
    """A gap that is to stay under so much is the greatest there may be, and none to come near to: under 4 inch gap."""
    gap = question.givens.get("gap")
    if gap is None or "widest" in question.givens or gap.end <= gap.start or not isinstance(gap.value, Length):
        return
    start, _ = places_of(chart, gap)
    before = tuple(chart.words[max(0, start - 2) : start])
    if before[-1:] in _UNDER or before in _UNDER:
        question.givens["widest"] = question.givens.pop("gap")


def _names_things(chart: Chart, heard: Heard) -> bool:
    """Whether a bare number stands before the name of things."""
    if not heard.bare or heard.end <= heard.start:
        return False
    after = chart.words[places_of(chart, heard)[1] :][:1]
    return bool(after) and after[0].isalpha() and after[0].endswith("s") and len(after[0]) >= _NAME


def _first_one(chart: Chart, question: Question) -> None:
    """The first one is no mark an inch from the end."""
    first = question.givens.get("first")
    if first is not None and first.end > first.start and first.text == "one":
        start, _ = places_of(chart, first)
        if chart.words[max(0, start - 1) : start] == ["first"]:
            del question.givens["first"]


def _pieces(chart: Chart, question: Question, heard: Heard) -> Callable[[Fraction], bool] | None:
    """Whether so many pieces fill a width of so many inches, as those close together do."""
    count, width = question.givens.get("count"), question.givens.get("width")
    if count is None or width is None or width.others or not isinstance(count.value, Count):
        return None
    told = _on_tape(heard)
    if not told and not _APART.isdisjoint(chart.words):
        return None
    filled = count.value.value * width.value.to("in").value
    others = [value.to("in").value for value in (heard.value, *heard.others)]
    if not any(filled < _FAR * size for size in others):
        return None
    close = told or not _PICKETS.isdisjoint(chart.words)
    return lambda size: (_TAPE_FILLS if close else _FILLS) * size <= filled < _FULL * size


def _panels(question: Question) -> Callable[[Fraction], bool] | None:
    cover = question.givens.get("cover")
    if cover is None or cover.others:
        return None
    wide = cover.value.to("in").value
    return lambda size: _LEAST_BOARDS * wide <= size <= _MOST_BOARDS * wide


def _on_tape(heard: Heard) -> bool:
    """Whether it is told to a part of an inch: 39 1/2, seventy two and a half; nobody has 39 1/4 feet."""
    value = heard.value.value
    return value.denominator in (2, 4, 8, 16) and "." not in heard.text
