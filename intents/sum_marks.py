"""How many parts of an inch a length has: "how many sixteenths in 2 and 3/8" is 38, and no length."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart
from intents.question import Question
from intents.sum_bound import parts_of
from intents.sum_outlines import whole_line
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, Sum

_MARKS = {
    "halves": 2, "quarters": 4, "eighths": 8, "8ths": 8, "sixteenths": 16, "16ths": 16, "32nds": 32, "thirtyseconds": 32,
    "64ths": 64,
}  # fmt: skip
_BETWEEN = frozenset("of an inch inches are is in there to make makes does do a".split())
_ENDS = frozenset(("?", ".", "!", "please", "long", "is", "that"))


def counted_marks(chart: Chart) -> Question | None:
    """The sum of a line that asks how many parts of an inch a length has."""
    words = chart.words
    at = next((n for n, pair in enumerate(pairwise(words)) if pair == ("how", "many")), -1)
    mark = _MARKS.get(words[at + 2], 0) if 0 <= at < len(words) - 3 else 0
    if not mark:
        return None
    start = at + 3 + 3 * (words[at + 3 : at + 6] == ["of", "an", "inch"])
    while start < len(words) and words[start] in _BETWEEN and not (words[start] in ("a", "an") and chart.readings[start]):
        start += 1
    found = parts_of(chart).value(start) if start < len(words) and chart.readings[start] else None
    if found is None or not isinstance(found.part, Length | Number) or not _ENDS.issuperset(words[found.end :]):
        return None
    size = found.part if isinstance(found.part, Length) else Length(found.part.value, "in", found.part.text)
    whole = Sum(DIVIDED, size, Length(Fraction(1, mark), "in", f"1/{mark} in"))
    return whole_line(chart, whole, [words[at + 2]])
