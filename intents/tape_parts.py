"""How many marks of the tape a length has: "how many sixteenths in 2 3/8" is 38 of them, and no 2 3/8 in another unit."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, Sum

TOPIC, SLOT, SCORE = "tape arithmetic", "sum", 9.0  # as of a rule that fits whole
_MARKS = {
    "halves": 2, "quarters": 4, "4ths": 4, "eighths": 8, "8ths": 8, "sixteenths": 16, "16ths": 16, "32nds": 32, "64ths": 64,
}  # fmt: skip
_IN = frozenset("in is are make makes to equal equals".split())
_LIGHT = frozenset("there an inch inches of does ?".split())  # besides; four of a half inch is none


def tape_parts(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """The length, divided by the part of an inch that is counted in it; of a line that says no more."""
    words = chart.words
    if words[:2] != ["how", "many"] or len(words) < 5 or words[2] not in _MARKS or words[3] not in _IN | _LIGHT:
        return
    after = [r for row in chart.readings[4:] for r in row if isinstance(r.value, Length | Number)]
    best = max(after, key=lambda r: (r.end - r.start, r.kind == "length"), default=None)
    if best is None or not {*words[3 : best.start], *words[best.end :]} <= _IN | _LIGHT:
        return
    mark = Length(Fraction(1, _MARKS[words[2]]), "in", f"1/{_MARKS[words[2]]} in")
    start, end, said = place_of(chart, best.start, best.end)
    whole = Sum(DIVIDED, _length(best, said), mark)
    questions[:] = [Question(TOPIC, {SLOT: Heard(whole, start, end, said)}, SCORE, words=words[:3])]


def _length(reading: Reading, said: str) -> Length:
    value = reading.value
    assert isinstance(value, Length | Number)
    return Length(value.value, value.unit if isinstance(value, Length) else "in", said)
