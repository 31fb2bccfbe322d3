"""What was asked in several lines, as the one sentence that says all of it: 5 pickets in 48 inches | 3 1/2 wide.

What comes after it is then read as after a question of one line: 6 of them, and the 48 is 52.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.price_kept import price_what_was_counted
from assistant.ways import same_answer
from intents.tokens import tokenize

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Pending
    from assistant.record import Record

LONGEST = 48  # tokens: the longest of the question sets that is answered so has 35


def told_in_parts(c: Conversation, record: Record, text: str, waited: Pending | None) -> None:
    """Keep the lines that a question was told in as its words, where they are read as that very question together."""
    price_what_was_counted(c, record, waited)
    last, asked = c.last, waited.asked if waited is not None else None
    if last is None or asked is None or record["outcome"] != "answered" or last.record is not record:
        return
    last.piece = waited.wanted if waited is not None and waited.wanted in last.givens else ""
    lines = [text]
    for before in reversed(c.records):
        if before["outcome"] != "asks" or before["topic"] not in (None, last.topic.name):
            break
        lines.insert(0, before["heard"].strip(" .!?"))
    told = ", ".join(lines)
    if last.topic is not asked.topic or len(lines) == 1 or len(tokenize(told)) > LONGEST:
        return
    whole = next((q for q in c.read(told).questions if q.score > 0), None)
    if whole is None or whole.topic != last.topic.name or whole.unplaced:
        return
    now = c.worked(last, last.givens)
    if same_answer([now.worked, *(way.worked for way in c.ways(whole))]):
        last.text = told
