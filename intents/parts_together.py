"""An amount that was told in its parts, where a topic takes the whole: front and back eaves of 14 and 22 ft are a run of 36.

The parts were added up as they were said (`listed_parts.py`, `listed_totals.py`). Where a question took one of them for its
amount, another for something else or none, the whole takes their place.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

from intents.chart import Chart, quantities, span
from intents.listed_totals import NOUNS
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import SIZED, Reading
from intents.second_reader import places_of, tokens_of
from solvers.quantities import Area, Count, Length
from solvers.slots import Parameter

_RUNS = {
    "soffit panels": "run", "trim sticks": "total", "sealant": "length", "wall area": "length", "cost": "length",
    "weight": "length", "take-off": "length", "squares": "wall_length", "cladding boards": "wall_length",
    "membrane rolls": "wall_length",
}  # fmt: skip
_AREAS = {
    "wall area": "faces", "squares": "area", "cladding boards": "area", "membrane rolls": "area", "cost": "area",
    "weight": "area",
}  # fmt: skip
_BESIDE = {"wall_length": "wall_height"}  # a run of walls is none without how high they are
_KINDS = frozenset(("runs", "areas", "rows"))
_SIDEWAYS = frozenset("high tall deep wide thick apart".split())  # such a size is of no run
_HOLES = frozenset("windows doors openings vents holes louvres louvers".split())
STEPS = "step flashing"
SURE = 1.0


def parts_together(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Put the whole in the place of its parts, in the first question."""
    question = next(iter(questions), None)
    if question is None or question.topic not in _RUNS.keys() | {STEPS}:
        return
    totals = (r for row in chart.readings for r in row if r.kind in _KINDS and r.sure >= SURE)
    found = [r for r in totals if isinstance(r.value, tuple) and len(r.value) == 1]
    parameters = {p.name: p for p in topics.get(question.topic, ())}
    found = [r for r in found if _SIDEWAYS.isdisjoint(chart.words[r.end : r.end + 1])]
    whole = [r for r in found if not any(_within(r, other) for other in found)]
    for reading in sorted(whole, key=lambda r: r.start - r.end):
        if question.topic == STEPS:
            _as_sides(chart, question, reading, parameters)
        elif _put(chart, question, reading, parameters):
            return


def _as_sides(chart: Chart, question: Question, reading: Reading, parameters: Mapping[str, Parameter]) -> None:
    """Each side is stepped by itself: so many sides where they are alike, and else the question stays as it is."""
    sizes = [size for size in quantities(chart, reading.start, reading.end) if isinstance(size.value, Length)]
    length, mask = question.givens.get("length"), span(reading.start, reading.end)
    alike = len({(size.value.value, size.value.unit) for size in sizes}) == 1  # type: ignore[union-attr]
    if length is None or not alike or len(sizes) < 2 or not tokens_of(chart, length) & mask:
        return
    place = _place(chart, reading)
    sides = question.givens.setdefault("sides", Heard(Count(Fraction(len(sizes)), "count", place[2]), *place))
    if sides.value.value != len(sizes):  # three sides, 6 ft and 6 ft
        question.unplaced = [place[2]]
        return
    question.unplaced, question.swaps = _left_over(chart, question, mask), []


def _within(reading: Reading, other: Reading) -> bool:
    """Whether it is of a part of what another is the whole of."""
    longer = other.end - other.start > reading.end - reading.start
    return longer and other.start <= reading.start and reading.end <= other.end


def _put(chart: Chart, question: Question, reading: Reading, parameters: Mapping[str, Parameter]) -> bool:
    """Give the whole to the question; False where it is none of its amount, or has its place already."""
    area = isinstance(reading.value[0], Area)  # type: ignore[index]
    name = (_AREAS if area else _RUNS).get(question.topic, "")
    if area and not _HOLES.isdisjoint(chart.words[reading.start : reading.end]) and "opened" in parameters:
        name = "opened"  # with 3 windows at 12 square feet each
        if question.givens.get("faces") is not None and question.givens["faces"].value == reading.value[0]:  # type: ignore[index]
            question.givens.pop("faces")
    parameter, mask = parameters.get(name), span(reading.start, reading.end)
    there = question.givens.get(name)
    if parameter is None or (there is not None and not tokens_of(chart, there) & mask and not _counts_parts(chart, there)):
        return False
    whole = Heard(reading.value[0], *_place(chart, reading))  # type: ignore[index]
    if reading.kind != "rows" and heard_as(chart, parameter, reading, True) is None:
        return False
    left = _left_over(chart, question, mask)
    first = _with(chart, question.givens, name, whole, mask)
    if first == question.givens and not question.swaps and len(left) == len(question.unplaced):
        return False
    missing = [p.name for p in parameters.values() if p.lacks(first)]
    if missing and question.complete and question.plain:
        return False  # 14 foot round each, 1/4 by 1/4: what goes round is no quarter
    if (reading.kind == "rows" and (missing or left)) or (name in _BESIDE and _BESIDE[name] not in first):
        return False
    ways = [_with(chart, way, name, whole, mask) for way in question.swaps]
    question.givens, question.unplaced, question.missing = first, left, missing
    question.swaps = [way for n, way in enumerate(ways) if way != first and way not in ways[:n]]
    question.rival = question.rival and bool(question.swaps)
    return True


def _counts_parts(chart: Chart, there: Heard) -> bool:
    """Whether what was taken for the amount is how many parts there are: two runs of joint, 45 foot and 70 foot."""
    after = chart.words[places_of(chart, there)[1] :][:1] if there.end > there.start else []
    return there.bare and not NOUNS.isdisjoint(after)


def _with(chart: Chart, givens: Mapping[str, Heard], name: str, whole: Heard, mask: int) -> dict[str, Heard]:
    """The givens with the whole, and without what was taken from one of its parts."""
    kept = {n: h for n, h in givens.items() if h.end <= h.start or not tokens_of(chart, h) & mask & chart.numbers}
    return {**kept, name: replace(whole)}


def _left_over(chart: Chart, question: Question, mask: int) -> list[str]:
    """What found no place, without what is a part of the whole."""
    inside = {
        chart.said(r.start, r.end) for row in chart.readings for r in row
        if isinstance(r.value, SIZED) and not span(r.start, r.end) & ~mask
    }  # fmt: skip
    return [text for text in question.unplaced if text not in inside]


def _place(chart: Chart, reading: Reading) -> tuple[int, int, str]:
    start, end = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
    return start, end, chart.text[start:end]
