"""A stair's stringer by its whole rise and its whole going: "rise 2600, going 3340, how long is the stringer"."""

from __future__ import annotations

from intents.chart import Chart, quantities
from intents.in_line import heard, inches
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number

TOPIC = "right triangle"
_STRINGERS = frozenset("stringer stringers string strings".split())
_RISE, _GOING = frozenset(("rise", "height")), frozenset(("going", "run", "goes"))
_ASKS = frozenset("long length".split())
_ELSE = frozenset("treads risers tread riser steps chalk line per each".split())  # one riser's rise is no whole one
_IS = frozenset("is of the a total overall whole = : being".split())
_LEAST_MM = 400  # a bare number from there on is of millimetres
_SCORE = 9.0  # as of a rule that fits whole


def stringer_told(chart: Chart) -> Question | None:
    """The long side of such a stair; None where anything else is told."""
    words = chart.words
    if _STRINGERS.isdisjoint(words) or _ASKS.isdisjoint(words) or not _ELSE.isdisjoint(words):
        return None
    found = quantities(chart, 0, len(words))
    parts: dict[str, Reading] = {}
    for reading in found:
        name = _called(words, reading)
        if not name or name in parts or not isinstance(reading.value, Length | Number):
            return None
        parts[name] = reading
    if parts.keys() != {"rise", "run"}:
        return None
    told = {name: heard(chart, reading, _sized(reading)) for name, reading in parts.items()}
    return Question(TOPIC, {**told, "wanted": Heard("SLOPE", 0, 0, "")}, _SCORE, words=["slope"])


def _called(words: list[str], reading: Reading) -> str:
    """The part of the triangle that a length is, by the name right before it, or after it."""
    before = [word for word in words[: reading.start] if word not in _IS][-1:]
    after = [word for word in words[reading.end :] if word not in _IS][:1]
    for name, said in (("rise", _RISE), ("run", _GOING)):
        if not said.isdisjoint(before):
            return name
    return next((name for name, said in (("rise", _RISE), ("run", _GOING)) if not said.isdisjoint(after)), "")


def _sized(reading: Reading) -> Length:
    """A length as it was told; a bare number is of inches, or of millimetres where it is many."""
    if isinstance(reading.value, Length):
        return reading.value
    number = inches(reading.value)
    return Length(number, "mm" if number >= _LEAST_MM else "in")
