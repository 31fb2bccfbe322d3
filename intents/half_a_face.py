"""A wall is told by its length and its height: one of them alone is no face; what is told in all, of squares, is an area.

"14 courses round a shed 64 foot round" is how long a course is, not how long the wall; "the walls add up to 2,410" is square feet
where squares are asked.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question
from solvers.slots import Parameter

SQUARES = "squares"
_SIDES = frozenset(("wall_length", "wall_height"))
_GABLE = frozenset(("pitch", "gable_height"))
_IN_ALL = frozenset("all altogether total totals add adds come comes cover side".split())
_MANY, _SQUARE = frozenset(("many", "what", "much")), frozenset(("square", "sq"))
_UNITS = frozenset("feet foot ft metres meters".split())
_NAMES = {
    "area": "faces", "wall_length": "length", "wall_height": "height", "pitch": "pitch", "gable_height": "peak",
    "openings": "openings", "opened": "opened",
}  # fmt: skip
_AREAS = ("wall area", "gable area")
_ASKED, _FEET, _SQFT = frozenset("many in to into".split()), frozenset(("feet", "foot", "ft")), frozenset(("sqft", "sf", "ft2"))
LEAST_AREA = 150  # ft²: a bare number from here on is no side of a wall


def half_a_face(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Leave only the ways in which a wall has both its sides; a bare number told in all is the area of squares."""
    question = next(iter(questions), None)
    if question is None or not _SIDES & {p.name for p in topics.get(question.topic, ())}:
        return
    if question.topic == SQUARES and not _SIDES & question.givens.keys():
        _told_in_all(chart, question, topics)
    ways = [question.givens, *question.swaps]
    whole = [way for way in ways if not _half(way)]
    if whole and len(whole) < len(ways) and not question.missing:
        question.givens, question.swaps = whole[0], whole[1:]


def _half(way: Mapping[str, Heard]) -> bool:
    """Whether something is told of a wall or its gable, and no face is made of it: a wall is long, and high or gabled besides."""
    told = (_SIDES | _GABLE) & way.keys()
    return bool(told) and not ("wall_length" in told and len(told) > 1)


def _answered_in_feet(words: Sequence[str], question: Question) -> None:
    """An area of metric sides is given in square feet where it is asked in those: 381 by 244 cm, how many square feet."""
    if question.topic not in _AREAS or "system" in question.manner:
        return
    square = (b in _SQUARE and c in _FEET and a in _ASKED for a, b, c in zip(words, words[1:], words[2:], strict=False))
    if any(square) or any(a in _ASKED and b in _SQFT for a, b in pairwise(words)):
        question.manner["system"] = "imperial"


def _told_in_all(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """The walls add up to 2,410: the one number that has no place, where squares lack their area."""
    if "area" in question.givens or len(question.unplaced) != 1 or _IN_ALL.isdisjoint(chart.words):
        return
    area = next(p for p in topics[SQUARES] if p.name == "area")
    for reading in (r for row in chart.readings for r in row if r.kind == "number"):
        if not question.unplaced or chart.said(reading.start, reading.end) != question.unplaced[0].removesuffix(" in"):
            continue
        heard = heard_as(chart, area, reading, True)
        if heard is not None and heard.value.unit == "ft2" and heard.value.value >= LEAST_AREA:
            question.givens["area"], question.missing, question.unplaced = heard, [], []


def in_square_feet(chart: Chart, question: Question) -> None:
    """The area of walls asked in square feet is no squares, with no waste: both ends are 22 by 9, how many square feet."""
    words = chart.words
    _answered_in_feet(words, question)
    if question.topic != SQUARES or SQUARES in words or "waste" in question.givens:
        return
    asked = any(a in _MANY and b in _SQUARE and c in _UNITS for a, b, c in zip(words, words[1:], words[2:], strict=False))
    if asked and question.givens.keys() <= _NAMES.keys():
        question.topic, question.lacking = "wall area", 0
        question.givens = {_NAMES[name]: heard for name, heard in question.givens.items()}
        question.swaps = [{_NAMES[n]: h for n, h in way.items()} for way in question.swaps if way.keys() <= _NAMES.keys()]
