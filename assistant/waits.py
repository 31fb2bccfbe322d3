"""A question that waited for a piece while another was asked and answered: its piece may come late.

"How many sticks for 74 feet of trim" waits for how long they are; "12 foot 6 less 3 1/2" is worked meanwhile; and "they're 16
footers" is of the sticks. A line goes back to it where it names the piece, or tells a size after a sum, which has no names.
"""

from __future__ import annotations

import re
from itertools import takewhile
from typing import TYPE_CHECKING

from assistant.names import NO_NAMES
from assistant.record import become, blank, put_asked
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question, Reading
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Pending
    from assistant.record import Record

_ANOTHER = expression(
    r"\W*(?:(?:ok|so|no|oh)\W+)*(?:and|make (?:it|that)|change|in|to|into|or|from|but|no|sorry)\b", re.IGNORECASE
)
_BACK = expression(
    r"\W*(?:(?:ok|okay|so|and|right|well|then|now|oh)\W+)*(?:back to|for|on) (?:the |that |my |our )?"
    r"(?P<what>[a-z]+(?: [a-z]+)?)\b",
    re.IGNORECASE,
)
_PUTS = expression(
    r"\W*(?:(?:and|then|ok|so|now)\W+)*(?:a |an )?(?:plus|minus|less|times|divided|half|third|quarter|add|take|twice|double)\b",
    re.IGNORECASE,
)
_ASKS = expression(r"\?|\b(?:how|what|what['’]?s|whats|which|when|where|why|can|could|will|would|does|do)\b", re.IGNORECASE)
_NOTHING = "Nothing was "  # worked out, or asked: what a line that changes or compares something is told
_MOST_TOLD = 3  # numbers of such a line
_LONGEST = 80  # characters of such a line


def displaced(c: Conversation, record: Record, waited: Pending | None) -> None:
    """After a line: what waited for a piece stays open where the line came to nothing, and is kept where another was asked."""
    if c.last is not None and c.last.topic.name not in NO_NAMES and record["outcome"] == "answered":
        c.waiting = None
    if waited is None or waited.asked is None or not waited.wanted or waited.ways or record["topic"] == "never mind":
        return
    last = c.last if c.last is not None and c.last.record is record else None
    refused = last is not None and waited.wanted in last.givens and waited.wanted not in waited.asked.givens  # 140 percent
    if c.pending is None and record["outcome"] == "asks" and _NOTHING in str(record["ask"]):
        c.pending = waited
        put_asked(record, waited.asked.topic.name, f"Still open: {waited.question}")
    elif c.pending is None and record["outcome"] == "declined" and (last is None or refused):
        c.pending = waited
        record["say"] = f"{record['say'].rstrip('.')}. Still open: {waited.question}"
    elif record["outcome"] == "answered" and record["topic"] != waited.asked.topic.name:
        topics = (waited.asked.topic.name, None)
        of_it = takewhile(lambda kept: kept["topic"] in topics, reversed(c.records))
        waited.said = " ".join(kept["heard"] for kept in of_it)
        c.waiting = waited
        if record["topic"] in NO_NAMES:
            record["say"] += f" Still open: {waited.question}"


def back_to_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line is the piece of a question that waited while another was worked; then that goes on."""
    waits = c.waiting
    if waits is None or waits.asked is None or c.pending is not None or len(text) > _LONGEST:
        return False
    if not 1 <= len(numbers_in(text)) <= _MOST_TOLD or _ASKS.search(text) or _PUTS.match(text):
        return False
    more = read_as(text, waits.asked.topic.name, c.parameters, wanted=waits.wanted)
    right = bool(more.words) and bool(more.givens) and more.givens.keys() <= waits.asked.givens.keys()  # what was told, put right
    told = waits.wanted in more.givens or right
    if not told or more.unplaced or not (_named(c, text, more, waits) or _goes_back(text, waits)):
        return False
    own = [q for q in c.read(text).questions if q.score > 0 and q.whole and q.topic != waits.asked.topic.name and q.words]
    if any(c.ways(question)[0].worked.working for question in own):
        return False
    from assistant.replies import settle  # which goes on from answers itself, and so from here

    c.waiting, waits.repeated = None, False
    trial = blank(record["heard"], record["via"], record["job"], record["file"])
    if settle(c, trial, text, Reading(text), waits) and not waits.repeated:
        become(record, trial)
        if c.last is not None and c.last.record is trial:
            c.last.record = record
        return True
    c.pending, c.waiting = None, waits
    return False


def _named(c: Conversation, text: str, more: Question, waits: Pending) -> bool:
    """Whether the piece is called by its name, or told as a size where the question between has no names."""
    assert waits.asked is not None
    label = waits.asked.topic.parameter(waits.wanted).label
    named = bool(set(label.split()) & {*more.words, *text.lower().split()})
    if c.last is None or c.last.topic.name in NO_NAMES:
        return named or bool(more.words) or _ANOTHER.match(text) is None
    others = {word for parameter in c.last.topic.parameters for word in parameter.label.split()}
    return named and not others & set(label.split())


def _goes_back(text: str, waits: Pending) -> bool:
    """Whether the line says that it goes back, with a word of the question that waits: back to the ramp wall, it's 30 foot."""
    found = _BACK.match(text)
    return found is not None and any(word in waits.said.lower().split() for word in found["what"].lower().split())
