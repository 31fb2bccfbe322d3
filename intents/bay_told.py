"""A bay told by a bare number somewhere behind the word: "the bay out front is 45" turns so far, it has no 45 sides."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from solvers.quantities import Angle, Quantity

TOPIC, MITER = "polygon", "miter for a corner"
_SIDES = frozenset("sides sided side pieces".split())
_SIDED = frozenset("ring full regular octagon hexagon turret gazebo column".split())
_IS = frozenset(("is", "at", "turns", "measures", "reads", "about", "a"))
LEAST, MOST = 20, 90  # degrees that a bay turns
_WIDE = frozenset("wide across inches inch in feet foot ft mm".split())
_TURNS = frozenset("turns turn turned turning angled".split())
_BY = frozenset("off out back in at by to away".split())
_CORNER, _BLUNTEST = "corner", 175  # degrees; what the walls of a bay meet at is the corner, wider than it turns
_MEET = frozenset("meet meets meeting between corner corners inside included".split())
_REACH = 6
_SCORE = 3.0  # of a reading that only these words make


def bay_told(chart: Chart, question: Question) -> None:
    """Make the sides of a polygon what its bay turns, where no ring has so many and a bay is spoken of."""
    sides = question.givens.get("sides") if question.topic == TOPIC else None
    if sides is None or sides.end <= sides.start or "bay" not in chart.words or not _SIDES.isdisjoint(chart.words):
        return
    start = places_of(chart, sides)[0]
    before = chart.words[max(0, start - _REACH) : start]
    if not LEAST <= sides.value.value <= MOST or "bay" not in before or before[-1] not in _IS or len(question.givens) > 1:
        return
    question.givens = {"bay": replace(sides, value=Angle(sides.value.value, "deg", sides.text), others=())}
    question.swaps = []


def turns_so_far(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """The number right after "turns" is what a bay turns; how wide it is has no part in that: 72 wide, each side turns 30."""
    first = next(iter(questions), None)
    if first is None or first.topic != TOPIC or "bay" not in chart.words or not first.givens.keys() <= {"bay", "sides"}:
        return
    bay = first.givens.get("bay")
    wide = bay is not None and bay.end > bay.start and _wide(chart, places_of(chart, bay)[1])
    turns = [r for row in chart.readings for r in row if r.kind in ("number", "angle") and r.start and _turned(chart, r.start)]
    turns = [r for r in turns if isinstance(r.value, Quantity) and LEAST <= r.value.value <= MOST]
    place = next(p for p in topics[TOPIC] if p.name == "bay")
    heard = heard_as(chart, place, max(turns, key=lambda r: (r.end, r.kind == "angle")), True) if turns else None
    if heard is not None and (bay is None or wide):
        questions[:] = [Question(TOPIC, {"bay": heard}, _SCORE, words=first.words, manner=first.manner)]
    elif wide:
        first.givens, first.swaps = {}, []


def _wide(chart: Chart, end: int) -> bool:
    """Whether the number that ends there is how wide something is."""
    return not _WIDE.isdisjoint(chart.words[end - 1 : end + 1])


def _turned(chart: Chart, at: int) -> bool:
    """Whether the number there is right after a word of turning, small words aside: the sides turn off at 45."""
    while at and chart.words[at - 1] in _BY:
        at -= 1
    return chart.words[at - 1 : at] != [] and chart.words[at - 1] in _TURNS


def bay_of_sides(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """A bay is no ring: where what it turns is told beside how many sides it has, that is what it is cut by."""
    first = next(iter(questions), None)
    sides = first.givens.get("sides") if first is not None and first.topic == TOPIC else None
    if first is not None and first.topic == TOPIC and not first.givens and "bay" in chart.words:
        at = chart.tokens[chart.words.index("bay")]
        first.givens, first.missing = {"shape": Heard("BAY", at.start, at.end, "bay")}, []
    if first is None or sides is None or "bay" not in chart.words or _SIDES.isdisjoint(chart.words):
        return
    told = places_of(chart, sides)[0]
    place = next(p for p in topics[TOPIC] if p.name == "bay")
    said = [r for row in chart.readings for r in row if r.kind in ("number", "angle", "plural") and r.start != told]
    said = [r for r in said if isinstance(r.value, Quantity)]
    corners = [r for r in said if MOST < r.value.value <= _BLUNTEST]  # type: ignore[union-attr]
    if corners and not _MEET.isdisjoint(chart.words):
        _corner_of_bay(chart, questions, topics, max(corners, key=lambda r: (r.end, r.kind == "angle")))
        return
    turns = [r for r in said if LEAST <= r.value.value <= MOST]  # type: ignore[union-attr]
    heard = heard_as(chart, place, max(turns, key=lambda r: (r.end, r.kind == "angle")), True) if turns else None
    if heard is not None:
        questions[:] = [Question(TOPIC, {"bay": heard}, _SCORE, words=first.words, manner=first.manner)]
    elif _SIDED.isdisjoint(chart.words):  # so many sides tell no angle of it
        first.givens, first.swaps = {"shape": replace(sides, value="BAY", others=())}, []


def _corner_of_bay(chart: Chart, questions: list[Question], topics: Mapping[str, Any], said: Reading) -> None:
    """What the walls of a bay meet at is its corner: a bay with three sides, the walls meet at 135."""
    heard = heard_as(chart, next(p for p in topics[MITER] if p.name == _CORNER), said, True)
    if heard is not None:
        questions[:] = [Question(MITER, {_CORNER: heard}, _SCORE, words=["bay"])]
