"""The width of a gable said again beside its wall: "34 foot by 9 with a gable on it 34 wide, 6/12", "28 by 9 and a 28 foot gable
over it, 8 12".

A gable over a wall is as wide as the wall: the number is the one that was said before, and no pitch nor height of its own.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from solvers.quantities import Length, Number
from solvers.slots import Parameter

_LONG = {"wall area": "length", "take-off": "length", "squares": "wall_length", "cladding boards": "wall_length"}
_OWN = frozenset(("pitch", "over", "peak", "gable_height"))
_GABLES = frozenset(("gable", "peak", "triangle"))
_NEAR, _MOST_FEET = 5, 200


def gable_again(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Leave out the second telling of how wide the first question's wall is, and give it the pitch that was said."""
    question = next(iter(questions), None)
    if question is None or question.topic not in _LONG or _GABLES.isdisjoint(chart.words):
        return
    name = _LONG[question.topic]
    length = question.givens.get(name)
    if length is None or not isinstance(length.value, Length) or length.end <= length.start:
        return
    again = [r for r in quantities(chart, 0, len(chart.words)) if _said_again(chart, length, r)]
    pitches = [r for row in chart.readings for r in row if r.kind == "pitch" and not any(_meet(r, one) for one in again)]
    best = [r for r in pitches if not any(r is not other and _meet(r, other) and other.sure > r.sure for other in pitches)]
    if len(again) != 1 or len(best) != 1:
        return
    pitch = heard_as(chart, next(p for p in topics[question.topic] if p.name == "pitch"), best[0], True)
    if pitch is None:
        return
    said = {chart.said(again[0].start, again[0].end), pitch.text}
    given = {heard.text for name, heard in question.givens.items() if name in _OWN}
    taken = bool(question.unplaced) or chart.said(again[0].start, again[0].end) in given
    if not taken or not said.issuperset(question.unplaced):
        return
    kept = {n: h for n, h in question.givens.items() if n not in _OWN}
    question.givens = {**kept, "pitch": pitch}
    question.unplaced, question.swaps, question.rival = [], [], False


def _meet(one: Reading, other: Reading) -> bool:
    return one.start < other.end and other.start < one.end


def _said_again(chart: Chart, length: Heard, reading: Reading) -> bool:
    """Whether a size near the word for the gable is as long as the wall, and not that length itself."""
    start, end = places_of(chart, length)
    if start <= reading.start < end or reading.kind not in ("number", "length"):
        return False
    value = reading.value
    if not isinstance(value, Length | Number):
        return False
    feet = length.value.to("ft").value
    same = feet <= _MOST_FEET and (value.to("ft").value if isinstance(value, Length) else value.value) == feet
    near = chart.words[max(0, reading.start - _NEAR) : reading.end + _NEAR]
    return bool(same) and not _GABLES.isdisjoint(near)
