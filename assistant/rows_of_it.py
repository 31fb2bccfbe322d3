"""What a line asks of the courses or straps just laid out, or of the height just worked: how many nails is that gonna be, how
many courses on that.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.pending import Asked, Pending
from assistant.record import Record, put_asked
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from solvers.quantities import Count, Length, Quantity
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation

ROWS = ("courses", "straps")
_LEAD = r"\W*(?:(?:and|so|ok|okay|then|now)\W+)*how many "
_OF_THAT = (
    r"(?: (?:is|are|does|do|will|would|on|in|for|up|to|of|that|it|those|them|these|this|i|we|all|gonna|going|be|take|need|want"
    r"|make|come|fill|in all|altogether))+(?: then)?\W*"
)
_FASTENERS = expression(rf"{_LEAD}(?:nails|screws|fasteners|staples){_OF_THAT}", re.IGNORECASE)
_COURSES = expression(rf"{_LEAD}(?:courses|rows){_OF_THAT}(?:\bat (?P<n>[^,;?]+))?", re.IGNORECASE)
_COIL = expression(
    r"\W*(?:(?:and|so|ok|okay|then|now)\W+)*(?:how many )?(?:pieces|strips|bits|flashings)"
    r"(?: (?:do|can|will|would) (?:i|we|you) get)? (?:from|out of|off|in|per|to)(?: an?| the)? coil(?: width)?"
    r"(?: (?:of|for) (?:that|it|them|those))?\W*",
    re.IGNORECASE,
)
_POINTS = expression(r"\b(?:that|it|those|them|these|this)\b", re.IGNORECASE)


def of_the_rows(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the fasteners of the rows just laid out, or the courses of the height just worked."""
    last = c.last if c.pending is None else None
    if last is None or not last.record.get("answer"):
        return False
    points = _POINTS.search(text) or c.records[-1] is last.record
    if points and _FASTENERS.fullmatch(text) and (rows := rows_of(last)) is not None:
        return _ask(c, record, "fasteners", "rows", rows)
    answer, found = last.record["answer"], _COURSES.fullmatch(text)
    if found is None or not _POINTS.search(text) or "height" not in answer["name"] or answer["unit"] not in Length.units:
        return False
    height = Length(Fraction(str(answer["value"])), answer["unit"], answer["text"])
    return _ask(c, record, "course layout", "height", height, f"exposure {found['n']}" if found["n"] else "")


def of_the_coil(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many pieces of the bend just worked a coil gives; then how wide that is, is asked."""
    last = c.last if c.pending is None else None
    if last is None or not last.record.get("answer") or "coil" not in {p.name for p in last.topic.parameters}:
        return False
    if "coil" in last.givens or not _COIL.fullmatch(text):
        return False
    question = last.topic.parameter("coil").slot.ask
    c.pending = Pending(last, wanted="coil", question=question)
    put_asked(record, last.topic.name, question)
    return True


def rows_of(last: Asked) -> Count | None:
    """How many courses or straps were just laid out, where that is one number."""
    lines = [last.record["answer"], *last.record["also"]]
    counted = [line for line in lines if line["name"] in ROWS and line["unit"] == "count"]
    return Count(Fraction(str(counted[0]["value"])), "count", counted[0]["text"]) if len(counted) == 1 else None


def _ask(c: Conversation, record: Record, topic: str, name: str, value: Quantity, told: str = "") -> bool:
    question = read_as(told, topic, c.parameters) if told else Question(topic)
    base = Asked(c.topics[topic], {name: Given(name, value, "earlier")})
    c.finish(record, c.ways(question, base), question)
    return True
