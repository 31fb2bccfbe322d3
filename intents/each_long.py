"""Pieces that are so many and so long, where a foot of them is priced: 40 boards of 12 ft at $1.65 a foot are 480 ft.

Where the length could be of each or of all, and how many there are was said, it is of each: else the count would count nothing.
"""

from __future__ import annotations

from intents.question import Question

_LOADS = ("cost", "weight")
_BY_LENGTH = frozenset(("FT", "M"))


def each_long(question: Question) -> None:
    """Of the ways to hand out the quantities of a load that is priced by the foot, keep those that use its count."""
    if question.topic not in _LOADS or not question.swaps:
        return
    ways = [question.givens, *question.swaps]
    kept = [way for way in ways if {"count", "piece", "per"} <= way.keys() and "length" not in way]
    if len(kept) != 1 or getattr(kept[0]["per"].value, "name", str(kept[0]["per"].value)) not in _BY_LENGTH:
        return
    if all({"count", "length"} <= way.keys() for way in ways if way is not kept[0]):
        question.givens, question.swaps, question.rival = kept[0], [], False
