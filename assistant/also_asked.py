"""What is asked beside an answer, and stands on its page: how long a ladder is, how long the bent trim of an arch.

The answer of a topic is one value, by whatever is asked; what else was asked by name is said with it.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from assistant.record import Record

_ASKED = {
    "ladder footing": (
        re.compile(
            r"\b(?:how long|wh(?:at|ich) (?:length|size))\b[^.;?]*\bladder"
            r"|\bwh(?:at|ich) ladder|\bladder length|\blength of (?:the |my )?ladder", re.I
        ),
        ("working length", "length for 3 ft past the landing"),
    ),
    "arc": (
        re.compile(
            r"\bhow long\b[^.;?]*\b(?:trim|curve|arc|bead|piece|strip|casing|bend\w*|bent|moulding|molding)"
            r"|\b(?:arc|curve|trim) length|\blength of (?:the )?(?:arc|curve|trim)",
            re.I,
        ),
        ("arc length",),
    ),
    "rake return": (re.compile(r"\bother (?:corner|one|cut|joint)\b|\bboth corners\b", re.I), ("the other corner's setting",)),
    "compound cut": (re.compile(r"\bbevels?\b(?! ga?u)", re.I), ("bevel",)),
    "rake length": (
        re.compile(r"\b(?:both|two) (?:rakes|sides|of them)\b|\b(?:rakes|sides) (?:together|in all)\b|\btotal\b", re.I),
        ("both rakes",),
    ),
    "roof angle": (re.compile(r"(?<![\d%])(?<!\d )\b(?:percent|percentage)\b", re.I), ("percent grade",)),
    "rise over a run": (re.compile(r"\bhow long\b|\brafter length|\bslope length|\bsloped length", re.I), ("sloped length",)),
    "sloped length": (re.compile(r"\bhow (?:high|tall)\b|\b(?:and|what) (?:the )?rise\b", re.I), ("rise",)),
    "gable height": (re.compile(r"\b(?:how long|length)\b[^.;?]*\brakes?\b|\brake length", re.I), ("rake length",)),
    "hip or valley length": (re.compile(r"\bplumb cut|\bbacking", re.I), ("plumb cut of the hip", "backing")),
    "right triangle": (re.compile(r"\b(?:and|what|both|other|plus) (?:the |its )?angles?\b", re.I), ("angle", "other angle")),
    "square check": (re.compile(r"\b3.4.5\b|\bthree four five\b", re.I),
                     ("3-4-5, short leg", "3-4-5, long leg", "3-4-5, diagonal")),
}  # fmt: skip


_AT_EDGE = re.compile(r"\bedge angle|\b(?:what|set)\b[^.;?]*\b(?:ga?uge|bevel square|protractor)\b", re.I)
_TURNS = re.compile(r"\b(?:what|how much|how far)\b[^.;?]*\bturns?\b|^turn\b|, turn\b", re.I)
_JOINTS = frozenset(
    ("miter for a corner", "rake return", "peak joint", "rake to level joint", "polygon", "corner in several pieces")
)


def also_asked(record: Record) -> list[str]:
    """What else a line asks for by name, to be said with its answer; none where it asks for nothing else."""
    topic, heard = record["topic"] or "", record["heard"]
    asks, told = _ASKED.get(topic, (None, ()))
    names = {*told} if asks is not None and asks.search(heard) else set[str]()
    if topic in _JOINTS:
        names |= {name for name, way in (("edge angle", _AT_EDGE), ("turn", _TURNS)) if way.search(heard)}
    return [f"{line['name']}: {line['text']}" for line in record["also"] if line["name"] in names]
