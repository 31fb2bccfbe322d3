"""A screw whose length is told and whose bite is asked: "3/4 strapping, 7/16 osb, screw 2 1/2, bite?".

The size beside the screw is how long it is, and no penetration, where the line does not ask for a length.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of

_LENGTH, _HOLD = "fastener length", "fastener penetration"
_FASTENERS = frozenset("screw screws nail nails lag lags fastener fasteners".split())
_ARE = frozenset("is are was were of at".split())  # screws | are 3 inch
_INTO = frozenset("in into past".split())
_BITES = frozenset("bite bites penetration hold holds grip grips embedment".split())
_ASKS_LONG = frozenset((("how", "long"), ("what", "length"), ("which", "length"), ("what", "size"), ("length", "?")))


def bite_asked(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Make a length that is asked of a screw of known length what is asked of it: how far it holds."""
    words = chart.words
    if not _ASKS_LONG.isdisjoint(pairwise(words)):
        return
    for at, question in enumerate(questions):
        heard = question.givens.get("penetration") if question.topic == _LENGTH else None
        if heard is None or heard.end <= heard.start:
            continue
        start, end = places_of(chart, heard)
        led = start - 1 - (words[max(0, start - 1)] in _ARE)
        if led < 0 or words[led] not in _FASTENERS or not _INTO.isdisjoint(words[end : end + 1]):
            continue
        if _BITES.isdisjoint(words) and led == start - 1:
            continue  # nothing tells which of the two it is
        givens = {name: given for name, given in question.givens.items() if name == "layers"} | {"fastener": heard}
        missing = [name for name in question.missing if name == "layers"]
        other = replace(question, topic=_HOLD, givens=givens, missing=missing, swaps=[])
        if _BITES.isdisjoint(words[end : end + 1]):
            questions[at] = other
        else:
            questions.insert(at + 1, other)  # screw 2 1/2 bite: the one or the other
            return
