"""Quantities that words alone tell are none of what is asked: a price by the yard, what a maker allows, the size of a tile.

Only for topics whose givens are the sizes of one thing (`no_role.py`), and only where the question is whole without them.
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.chart import Chart, quantities, span
from intents.reading import Reading
from intents.remarks import ENDS
from solvers.quantities import Length, Number

_EACH = frozenset(("a", "an", "per"))
_SOLD_BY = frozenset("yard yards sheet stick length bundle square bag board load day hour night roll".split())
# What is allowed: not under 5 degrees, no less than 4 in 12. Topics that take such a bound are not asked.
_BOUNDS = (
    ["not", "under"], ["not", "below"], ["not", "less", "than"], ["no", "less", "than"], ["not", "over"], ["not", "above"],
    *([word, way] for word in ("nothing", "anything") for way in ("under", "over", "below")),
)  # fmt: skip
_BOUNDED = frozenset(("course layout", "courses to openings", "equal spacing", "can my saw cut it", "gable courses"))
_THINGS = frozenset("tile tiles blocks block bricks brick nails nail screws screw".split())
_IS = frozenset(("is", "are", "of"))
_RULES = frozenset(("code", "code's", "regs", "regulations"))  # which the gap that is asked must keep within
_BALLS = frozenset(("ball", "sphere"))
_BETWEEN = "equal spacing"
_ON = frozenset("so and but what how here anyway".split())
CUES = _SOLD_BY | frozenset("under below less over above".split()) | _THINGS | _RULES | _BALLS


def not_of_it(chart: Chart, topic: str) -> int:
    """The mask of the quantities that are told of something else than a topic asks about."""
    if CUES.isdisjoint(chart.words):
        return 0
    words, mask = [*chart.words, "", ""], 0
    for reading in quantities(chart, 0, len(chart.words)):
        if _priced(words, reading):
            mask |= span(reading.start, reading.end + 2)
        elif (topic not in _BOUNDED and _is_bound(words, reading)) or _of_a_thing(words, reading, topic):
            mask |= span(reading.start, reading.end)
    return mask


def _priced(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is what so much of a thing costs: concrete's 165 a yard."""
    return reading.kind == "number" and words[reading.end] in _EACH and words[reading.end + 1] in _SOLD_BY


def _is_bound(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is the least or the most that somebody allows: the sheets say not under 5 degrees."""
    return any(list(words[max(0, reading.start - len(lead)) : reading.start]) == lead for lead in _BOUNDS)


def _of_a_thing(words: Sequence[str], reading: Reading, topic: str) -> bool:
    """Whether it is the size of what lies about, with nothing else said of it: the tiles are 18 inch, code's four inches."""
    if not isinstance(reading.value, Length | Number):
        return False
    before = words[max(0, reading.start - 2) : reading.start]
    after = words[reading.end]
    ends = not after or after in ENDS or after in _ON
    if topic == _BETWEEN and after in _BALLS:
        return True  # the inspector's got a four inch ball
    named = _THINGS if topic != _BETWEEN else _RULES
    said = bool(before) and ((before[-1] in _IS and before[0] in named) or before[-1] in named)
    return said and ends
