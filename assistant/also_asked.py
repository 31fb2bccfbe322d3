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
            r"\b(?:how long|wh(?:at|ich) (?:length|size))\b[^.;?]*\bladder|\bladder length|\blength of (?:the |my )?ladder", re.I
        ),
        ("working length", "length for 3 ft past the landing"),
    ),
    "arc": (
        re.compile(
            r"\bhow long\b[^.;?]*\b(?:trim|curve|arc|bead|piece|strip|casing|bend\w*|bent|moulding|molding)"
            r"|\b(?:arc|curve) length|\blength of (?:the )?(?:arc|curve|trim)",
            re.I,
        ),
        ("arc length",),
    ),
}  # fmt: skip


def also_asked(record: Record) -> list[str]:
    """What else a line asks for by name, to be said with its answer; none where it asks for nothing else."""
    asks, names = _ASKED.get(record["topic"] or "", (None, ()))
    if asks is None or not asks.search(record["heard"]):
        return []
    return [f"{line['name']}: {line['text']}" for line in record["also"] if line["name"] in names]
