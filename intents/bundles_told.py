"""Bundles for so many squares, at so many to a square: "how many bundles for 22 squares at 3 a square"; and what they are nailed
with."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from intents.chart import Chart, quantities
from intents.question import Heard, Question
from intents.rates_told import RATE, SCORE
from intents.reading import Reading
from solvers.quantities import Area, Number

_PACKS = frozenset("bundle bundles pack packs box boxes carton cartons".split())
_TO_A = frozenset("a per each every the to in for".split())
_FIXINGS = frozenset("nail nails screw screws staple staples clip clips".split())
_MOST, _MOST_NAILS = 12, 1000  # to a square
_MONEY = frozenset("$ £ € dollars dollar bucks cents quid euros euro cost costs price priced".split())
_CLOSE = 3  # words from how many to "a square"


def bundles_told(chart: Chart) -> Question | None:
    """The rate of a line with two quantities: the squares there are, and how many packs each of them takes."""
    words = chart.words
    nailed = not _FIXINGS.isdisjoint(words)
    if (_PACKS.isdisjoint(words) and not nailed) or "square" not in words or not _MONEY.isdisjoint(words):
        return None
    found = [r for r in quantities(chart, 0, len(words)) if words[r.start] not in _TO_A]  # "a square" is no area here
    areas = [r for r in found if isinstance(r.value, Area) and r.value.unit == "square"]
    each = [r for r in found if isinstance(r.value, Number) and _to_a_square(words, r, _MOST_NAILS if nailed else _MOST)]
    if len(found) != 2 or len(areas) != 1 or len(each) != 1:
        return None
    many, squares = each[0], areas[0]
    said = (" ".join(words[r.start : r.end]) for r in (many, squares))
    took, area = next(said), next(said)
    return Question(
        RATE,
        {
            "many": Heard(Number(many.value.value, "none", took), many.start, many.end, took),  # type: ignore[union-attr]
            "area_done": Heard(Area(Fraction(1), "square", "1 square"), many.end, many.end + 1, "1 square"),
            "area": Heard(Area(squares.value.value, "square", area), squares.start, squares.end, area),  # type: ignore[union-attr]
        },
        SCORE,
        words=["how", "many", "rate"],
    )


def _to_a_square(words: Sequence[str], reading: Reading, most: int) -> bool:
    """Whether "a square", or "to the square", follows close behind a whole number that is no more than that."""
    value = reading.value
    if not isinstance(value, Number) or value.value.denominator != 1 or not 0 < value.value <= most:
        return False
    after = words[reading.end : reading.end + _CLOSE + 1]
    at = after.index("square") if "square" in after else 0
    return at > 0 and all(word in _TO_A | _PACKS | _FIXINGS for word in after[:at]) and not _TO_A.isdisjoint(after[:at])
