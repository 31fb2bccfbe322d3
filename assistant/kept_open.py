"""A question that was put back stays open over a line that comes to nothing: "what's usual", "why do you want that".

What is said next may still be its piece; the record says that it is open. A whole new question closes it, but no sum that is
asked in between ("what's 22 feet divided by 2"): a line after that which tells more of the open question goes on with it.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant import replies
from assistant.acts.manners import why_needed
from assistant.asked_piece import read_piece
from assistant.names import ASIDE
from assistant.record import Record, become, blank, put_asked
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending
    from intents.question import Question

_NOTHING = "Nothing was "  # worked out, or asked before this
_GOES_ON = expression(  # from the sum in between
    r"\W*(?:(?:and|then|now|so)\W+)*(?:less|minus|plus|add|take|times|divided|half|double|twice|make (?:it|that)"
    r"|(?:what|how) about|what if|in (?:feet|inches|mm|metres|meters|cm)\b|to the nearest)",
    re.IGNORECASE,
)
_SAME = 1e-6  # inches
_BESIDE = frozenset(("explain", "compare", "review", "greeting"))  # talk that puts nothing in the place of the question


def resumes(c: Conversation, record: Record, text: str) -> bool:
    """Whether a line after a sum in between tells more of the question that was open before it; then that goes on.

    A word of that question, a value that no sum is of, or the sum's own answer tells so: what's 14'7 plus 9'5 | so it's 24 feet.
    """
    open_ = c.last.over if c.last is not None and c.pending is None else None
    if open_ is None or open_.asked is None or _GOES_ON.match(text):
        return False
    reading = c.read(text)
    more, wanted = read_piece(text, open_, c.parameters)
    ours = more.givens and (wanted in more.givens or more.givens.keys() <= open_.asked.givens.keys())
    if not ours or more.unplaced or any(q.topic in ASIDE and q.whole for q in reading.questions[:1]):
        return False
    plain = all(isinstance(heard.value, Length) for heard in more.givens.values())
    if plain and not more.words and not _is_the_answer(c, more):
        return False
    state = state_of(c)
    trial = blank(record["heard"], record["via"], record["job"], record["file"])
    open_.repeated = False
    if not replies.settle(c, trial, text, reading, open_) or trial["topic"] != open_.asked.topic.name or open_.repeated:
        put_back(c, state)
        return False
    become(record, trial)
    if c.last is not None and c.last.record is trial:
        c.last.record = record
    return True


def _is_the_answer(c: Conversation, more: Question) -> bool:
    """Whether the one length that a line tells is what the last answer came to."""
    answer = c.last.record.get("answer") if c.last is not None else None
    sizes = [heard.value.to("in").value for heard in more.givens.values()]
    if not answer or answer["value"] is None or len(sizes) != 1 or answer["unit"] not in Length.units:
        return False
    return abs(float(sizes[0]) - answer["value"] * float(Length(Fraction(1), answer["unit"]).to("in").value)) < _SAME


def _joined(waited: Pending | None, now: Asked, record: Record) -> str:
    """The words of a question over several lines, as one sentence."""
    open_ = waited.asked if waited is not None else None
    if open_ is None or open_.topic is not now.topic or not open_.text or open_.text == record["heard"]:
        return now.text or str(record["heard"])
    return f"{open_.text.strip(' .!?')}, {record['heard'].strip(' .!?')}"


def keep_open(c: Conversation, record: Record, waited: Pending | None, before: Asked | None) -> None:
    """Leave what waited for a reply open, where the line was none and nothing else waits; and note how it was put."""
    if c.pending is not None:
        if record["outcome"] == "asks" and not c.pending.question:
            c.pending.question = record["ask"]
        if c.pending.asked is not None and record["topic"] == c.pending.asked.topic.name:
            c.pending.asked.text = _joined(waited, c.pending.asked, record)
        return
    if c.last is not None and c.last is not before and c.last.text == record["heard"]:
        c.last.text = _joined(waited, c.last, record)
    if record["outcome"] == "answered" and record["topic"] in ASIDE and c.last is not None and c.last is not before:
        c.last.over = waited if waited is not None and waited.wanted else before.over if before is not None else None
        return
    if record["topic"] == "never mind" and c.last is not None:
        c.last.over = None
    if waited is None or waited.asked is None or not (waited.wanted or waited.ways) or not waited.question:
        return
    if waited.repeated and record["outcome"] == "declined" and c.last is before:
        return  # what was asked twice and twice not told is let go
    vain = record["outcome"] == "asks" and _NOTHING in record["ask"]
    if vain:
        put_asked(record, waited.asked.topic.name, why_needed(waited))
    elif record["outcome"] == "declined" or (record["outcome"] == "noted" and record["topic"] in _BESIDE):
        record["say"] += f" Still open: {waited.question}"
    else:
        return
    c.pending = waited
