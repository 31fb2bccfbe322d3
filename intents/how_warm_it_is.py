"""How warm it is, told where nothing asked turns on it: "it's 30 C out here, how long is the rake", "freezing in here".

Passed over in every topic that takes no temperature, where it is the only one: two are told of a piece that moves. A bare
number of degrees only where words after it say that it is the air.
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.chart import Chart, once, span
from solvers.quantities import Temperature, TemperatureChange
from solvers.slots import Parameter

_SCALES = frozenset("f c fahrenheit celsius centigrade farenheit °f °c".split())
_COLD, _ZERO = "freezing", frozenset(("zero", "freezing", "below"))
_STOPS = frozenset(("", ",", ".", ";", "and", "out", "outside", "here", "today", "tonight"))
_DEGREES = frozenset("degrees degree °".split())
_CUES = _SCALES | _DEGREES | _ZERO
_OUTDOORS = (
    ("out", "here"), ("out", "there"), ("outside",), ("in", "the", "shade"), ("in", "the", "sun"), ("in", "here"),
    ("out", "today"), ("out", "and"), ("out", ","), ("today",), ("up", "here"),
)  # fmt: skip
_FEET = 4  # tokens of a length before its last
_CONVERTED = frozenset(("conversion", "tape arithmetic"))
LEAST_SURE, HOTTEST = 0.5, 125  # no air is hotter, in any degrees
_IT = frozenset("it's it its is was hit hits hitting near nearly about at already only".split())


def how_warm(chart: Chart, topic: str, parameters: tuple[Parameter, ...]) -> int:
    """Mask of the temperatures that a topic has no use for."""
    if topic in _CONVERTED or _CUES.isdisjoint(chart.words):
        return 0
    if any(p.kind in (Temperature, TemperatureChange) for p in parameters):
        return 0
    return _warmth(chart)


@once
def _warmth(chart: Chart) -> int:
    found, others, words = [], 0, chart.words
    for at, row in chart.starts():
        warm = [r for _, r in row if isinstance(r.value, Temperature) and r.kind == "temperature"]
        best = max(warm, key=lambda r: (r.end, r.sure), default=None)
        if best is None or any(r.end > best.end and r.kind == "length" for _, r in row):
            continue
        if abs(best.value.value) > HOTTEST:  # type: ignore[union-attr]
            continue  # a corner of a hundred and thirty five degrees outside
        if any(r.end > at for row in chart.readings[max(0, at - _FEET) : at] for r in row if r.kind == "length"):
            continue  # 8 ft 3 | below
        said = words[best.end - 1]
        after = words[best.end] if best.end < len(words) else ""
        scaled = said in _SCALES | {_COLD, "zero"} or (said == "below" and after in _STOPS)  # no 10 below the head
        if scaled or (said in _DEGREES and _of_the_air(words, at, best.end)):
            found.append(span(at, best.end))
        else:
            others += best.sure >= LEAST_SURE and said not in _DEGREES
    return found[0] if len(found) == 1 and not others else 0


def _of_the_air(words: Sequence[str], start: int, end: int) -> bool:
    """It's 85 degrees | out here; a corner that is 92 degrees is led by no "it"."""
    after = tuple(words[end : end + 3])
    return words[start - 1 : start] != [] and words[start - 1] in _IT and any(after[: len(each)] == each for each in _OUTDOORS)
