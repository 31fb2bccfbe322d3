"""A question that was put back stays open over a line that comes to nothing: "what's usual", "why do you want that".

What is said next may still be its piece; the record says that it is open. A whole new question closes it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.record import Record, put_asked

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending

_NOTHING = "Nothing was "  # worked out, or asked before this
_BESIDE = frozenset(("explain", "compare", "review", "greeting"))  # talk that puts nothing in the place of the question


def keep_open(c: Conversation, record: Record, waited: Pending | None, before: Asked | None) -> None:
    """Leave what waited for a reply open, where the line was none and nothing else waits; and note how it was put."""
    if c.pending is not None:
        if record["outcome"] == "asks" and not c.pending.question:
            c.pending.question = record["ask"]
        return
    if waited is None or waited.asked is None or not (waited.wanted or waited.ways) or not waited.question:
        return
    if waited.repeated and record["outcome"] == "declined" and c.last is before:
        return  # what was asked twice and twice not told is let go
    vain = record["outcome"] == "asks" and _NOTHING in record["ask"]
    if vain:
        put_asked(record, waited.asked.topic.name, f"Still open: {waited.question}")
    elif record["outcome"] == "declined" or (record["outcome"] == "noted" and record["topic"] in _BESIDE):
        record["say"] += f" Still open: {waited.question}"
    else:
        return
    c.pending = waited
