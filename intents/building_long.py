"""How long a building is, along its ridge: the barn's 36 foot long, a 40 ft long house.

Neither the rise nor the rafter nor the gable has to do with that: it is the width, or half of it, that they are worked from.
Beside another length it is passed over; alone it is none of the givens, and the run or the width is asked for (`not_across.py`).
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.reading import Reading
from intents.remarks import STOPS
from solvers.quantities import Length

TOPICS = {
    "sloped length": "run", "rise over a run": "run", "hip or valley length": "run", "pitch from rise and run": "run",
    "rake length": "width", "gable height": "width", "gable area": "width", "gable courses": "width",
}  # and the length across each takes
CUES = frozenset(("long",))
_BUILDINGS = frozenset(
    "building house barn cabin boathouse boatshed shed garage workshop hall bungalow cottage byre stable stables outbuilding"
    " church school chapel bothy woodshed greenhouse roof ridge wing extension place lean-to leanto lean".split()
)
_OWN = frozenset(("'s", "is", "was", "measures", "about", "around", "just", "only", "all", "of"))  # between a thing and its size
_ALONG = frozenset("up along down on over from eave eaves slope rafter".split())  # a roof 14 foot long up the slope
LEAST = 6  # ft


def building_long(words: Sequence[str], reading: Reading, sizes: Sequence[Reading]) -> bool:
    """Whether a length is told to be how long a building is, and another may be how wide; `words` end in empty ones."""
    others = any(r is not reading and _may_be(r) for r in sizes)
    return others and _may_be(reading) and told_long(words, reading.start, reading.end)


def told_long(words: Sequence[str], start: int, end: int) -> bool:
    """Whether the length at a place is told to be how long a building is; `words` end in empty ones."""
    if words[end] != "long" or words[end + 1] in _ALONG or words[end + 1 : end + 3] == ["and", "up"]:
        return False
    return _base(words[end + 1]) in _BUILDINGS or _subject(words, start) in _BUILDINGS


def _may_be(reading: Reading) -> bool:
    if isinstance(reading.value, Length):
        return bool(reading.value.to("ft").value >= LEAST)
    return reading.kind == "number" and bool(reading.value.value >= LEAST)  # type: ignore[union-attr]


def _subject(words: Sequence[str], start: int) -> str:
    """The word that a length is told of: the barn's about | 36 foot long, the house is | 40."""
    at = start - 1
    while at > 0 and words[at] in _OWN:
        at -= 1
    return _base(words[at]) if at >= 0 and words[at] not in STOPS else ""


def _base(word: str) -> str:
    return word.removesuffix("'s").removesuffix("’s")
