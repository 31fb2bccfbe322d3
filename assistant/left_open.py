"""A question that is still open after a line that was no reply to it: a question back, a remark, a value that can't be, a sum.

"What do you need that for", and then "three quarters deep": the depth was asked for before, and still is.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.acts import CHANGES
from assistant.acts.explaining import NOTHING
from assistant.hearing import asks_too
from assistant.names import SUM
from assistant.record import put_asked
from assistant.usual import is_usual
from intents.elsewhere import outside_of
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Reading
from intents.talk import numbers_in, talk_of
from solvers.quantities import Quantity, Temperature

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending
    from assistant.record import Record

_NOTHING_BEFORE = "Nothing was "  # worked out, or asked: what a line that changes or compares something is told
_MEANWHILE = (SUM, "conversion")  # what is worked on the way to a piece, and done with
_OF_THE_SUM = expression(  # which goes on from it, and tells no piece
    r"\b(?:of (?:that|it|them|those)|(?:half|twice|double|triple|halve) (?:that|it)|that (?:times|plus|less|minus|over|by))\b"
    r"|^\W*(?:(?:and|so|ok|then)\W+)*(?:times|plus|minus|less|divided?|split|another|add|take|subtract|knock|halve|double)\b"
    r"|\b(?:more|off)\W*$",
    re.IGNORECASE,
)
_WHAT_IS = expression(
    r"\W*(?:(?:and|so|ok|wait|hang on|first|quick|but)\W+)*(?:what['’]?s|what is|how many|how much is)\b(?! the\b)", re.IGNORECASE
)


_LEAVES = (
    r"(?:(?:skip|leave|forget|drop|scratch|scrap|park) (?:it|that|this|that one)(?: for now| for later)?"
    r"|never ?mind(?: (?:it|that))?)"
)
_UNKNOWN = r"(?:(?:i )?(?:don['’]?t|do not) know(?: that| it)?(?: yet)?|no idea|not sure(?: yet)?|ok|well|just|so|no|ah|oh)"
_LETS_GO = expression(rf"\W*(?:{_UNKNOWN}[\s,.;–—-]+)*{_LEAVES}[\s,.;–—-]+", re.IGNORECASE)


def leave_open(c: Conversation, record: Record, text: str, waited: Pending | None, before: Asked | None) -> None:
    """Leave what was asked open, where the line neither told it nor came to anything else; and say so.

    What is unclear is asked about once; a second time it is dropped.
    """
    if waited is None or not waited.question or c.pending is not None or waited.forget or waited.lines:
        _pass_on(c, before)
        return
    unclear = record["outcome"] == "declined" and c.last is before and not waited.repeated
    nothing = record["ask"] == NOTHING or (_NOTHING_BEFORE in record["ask"] and not waited.repeated)
    if record["outcome"] == "answered" and record["topic"] in _MEANWHILE and c.last is not None and c.last is not before:
        c.last.open_ = replace(waited, repeated=True)
        record["say"] += f" Still open: {waited.question}"
    elif nothing or (unclear and not numbers_in(text) and outside_of(text) is None):
        c.pending = replace(waited, repeated=True)
        put_asked(record, waited.asked.topic.name if waited.asked and not waited.topics else None, waited.question)
    elif unclear or (record["outcome"] == "declined" and _refused(c, record, waited)):
        c.pending = replace(waited, repeated=True)
        record["say"] += f" Still open: {waited.question}"


def asks_a_sum(text: str, reading: Reading, pending: Pending) -> bool:
    """Whether a line asks a sum or a conversion of its own while a piece of something else is waited for: what's 34 foot in
    inches."""
    best = reading.questions[0] if reading.questions else None
    if best is None or pending.asked is None or pending.asked.topic.name in _MEANWHILE or not _WHAT_IS.match(text):
        return False
    return best.topic in _MEANWHILE and best.whole


def _refused(c: Conversation, record: Record, waited: Pending) -> bool:
    """Whether what was told for the piece that is waited for is what can't be: minus 9 foot."""
    last, asked = c.last, waited.asked
    if last is None or asked is None or last.record is not record or last.topic is not asked.topic:
        return False
    return bool(waited.wanted) and waited.wanted in last.givens and waited.wanted not in asked.givens


def _pass_on(c: Conversation, before: Asked | None) -> None:
    """Leave open what was open before a sum, where that goes on as another: and in millimetres."""
    last = c.last
    if before is not None and last is not None and last is not before and last.topic.name in _MEANWHILE:
        last.open_ = last.open_ or (before.open_ if before.topic.name in _MEANWHILE else None)


def take_up(c: Conversation, text: str) -> str:
    """The line, without the words that let go of what is open before another question: skip it, miter on a 135 corner.

    What was open before a sum is taken up again where the line tells the piece that it waits for.
    """
    found = _LETS_GO.match(text) if c.pending is not None else None
    rest = text[found.end() :] if found is not None else ""
    best = next((q for q in c.read(rest).questions if q.score > 0), None) if rest else None
    if best is not None and not best.lacking and (asks_too(rest) or len(best.words) > 1):
        c.pending = None
        return rest
    _take_up_again(c, text)
    return text


def _take_up_again(c: Conversation, text: str) -> None:
    """Take up the question that was open before a sum, where the line tells the piece that it waits for."""
    open_ = c.last.open_ if c.last is not None and c.pending is None else None
    if open_ is None or open_.asked is None or not open_.wanted or open_.ways:
        return
    parameter = open_.asked.topic.parameter(open_.wanted)
    if _OF_THE_SUM.search(text) and not issubclass(parameter.kind, Temperature):  # minus 10
        return
    said = talk_of(text, c.places)
    if said is not None and (said.topic in CHANGES or (said.topic not in ("remember", "greeting") and not said.loose)):
        return
    best = next((q for q in c.read(text).questions if q.score > 0), None)
    if best is not None and best.whole and best.words and best.topic != open_.asked.topic.name and asks_too(text):
        return
    more = read_as(text, open_.asked.topic.name, c.parameters, wanted=open_.wanted)
    heard = more.givens.get(open_.wanted)
    if heard is None or (isinstance(heard.value, Quantity) and not is_usual(parameter.slot, heard.value, 1)):
        return
    c.pending = open_
