"""A wall's sizes told where its area was asked for: "how much area?" "the wall's 32 by 9", "36 long 9 high"."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.fitting import fit
from intents.listed import METRIC
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Pending
    from solvers.slots import Parameter

_SIDES = ("wall_length", "wall_height")
_FACE = expression(
    r"\W*(?:(?:it['’]?s|it is|the|my|our|that|walls?(?:['’]s)?|is|are|about|a|for|of|one|lake|ramp|north|south|east|west)\W+)*"
    r"(?P<long>[^,;]*?\d[^,;]*?)(?:\s+(?:long|wide|across))?\s*(?:\bby\b|\bx\b|×|,|\band\b|(?<=long)|(?<=wide))\s*"
    r"(?P<high>[^,;]*?\d[^,;]*?)(?:\s+(?:high|tall|up))?\W*",
    re.IGNORECASE,
)


def face_told(text: str, pending: Pending) -> Question | None:
    """The length and the height of a wall that a reply gives for its area; None where it is no such reply."""
    asked = pending.asked
    places = {p.name: p for p in asked.topic.parameters if p.name in _SIDES} if asked else {}
    if asked is None or pending.wanted != "area" or len(places) < len(_SIDES) or set(_SIDES) & asked.givens.keys():
        return None
    found = _FACE.fullmatch(text)
    sides = [_side(found[group], places[name]) for name, group in zip(_SIDES, ("long", "high"), strict=True)] if found else []
    told = _of_one_unit([side for side in sides if side is not None])
    return Question(asked.topic.name, dict(zip(_SIDES, told, strict=True)), 1.0) if len(told) == len(_SIDES) else None


def _of_one_unit(sides: list[Heard]) -> list[Heard]:
    """The sides, one said with no unit in the metric unit of the other: 10 by 4 m."""
    metric = next((side.value.unit for side in sides if side.value.unit in METRIC), "")
    return [replace(side, value=replace(side.value, unit=metric), others=()) if metric and side.bare else side for side in sides]


def _side(words: str, place: Parameter) -> Heard | None:
    said = numbers_in(words)
    fitted = fit(said[0], place, words, cued=True) if len(said) == 1 else None
    if fitted is None or not isinstance(fitted.value, Length):
        return None
    return Heard(fitted.value, 0, len(words), words.strip(), fitted.sure, fitted.others)
