"""A question told with clauses that it is not made of: "so dad swears it's a 6/12, but the level gives us 6 1/2 in 12, what's
that as an angle".

Where a line came to nothing, it is read again without the clauses in which its likeliest topic has no use for anything: no
quantity with a role, no word of its rule, nothing asked. It is answered where it then is whole, and what was left out is said.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.record import Record, become, blank, leave_out
from intents.elsewhere import outside_of
from intents.matcher import likely_topics, shorter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

LIKELY = 0.5  # how likely the topic must be of what is left


def look_past_clauses(c: Conversation, record: Record, text: str) -> None:
    """Answer a line that came to nothing by those of its clauses that its question is made of."""
    if record["outcome"] not in ("asks", "declined") or outside_of(text) is not None:
        return
    before = c.pending, c.last, c.just_kept
    found: list[tuple[Record, Asked]] = []
    for used in shorter(text, c.parameters):
        questions = [question for question in c.read(used.text).questions if question.score > 0]
        likely = likely_topics(used.text, c.parameters).get(used.topic, 0.0) >= LIKELY
        if not likely or not questions or questions[0].topic != used.topic or any(question.claim for question in questions):
            continue
        trial = blank(text, record["via"], c.job, record["file"])
        c.pending = c.last = None
        c.work(trial, questions)
        if trial["outcome"] == "answered" and trial["topic"] == used.topic and c.last is not None:
            leave_out(trial, used.left)
            found.append((trial, c.last))
    c.pending, c.last, c.just_kept = before
    if len(found) == 1:
        become(record, found[0][0])
        c.pending, c.last = None, found[0][1]
        c.last.record = record
