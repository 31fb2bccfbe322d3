"""The next question about the same piece of work: the nails for the courses just laid out, the courses of the gable just worked.

What the answer before holds is carried over; what the next lacks is asked.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.pending import Asked, Pending
from assistant.record import put_asked
from intents.expressions import expression
from intents.matcher import read_as
from solvers.quantities import Count, Length
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record
    from intents.question import Question
    from solvers.registry import Topic

_LEAD = r"\W*(?:(?:and|so|ok|okay|then|now|right|but)\W+)*"
_THAT = r"(?:it|that|those|them|these|this|the (?:courses|rows|straps|battens|strapping|gable|wall))"
_NAILS = expression(
    _LEAD + r"(?:how many |what about (?:the )?|the )?(?:nails|screws|fasteners|staples)"
    rf"(?: (?:is|are|for|in|on|do|does|will|would|to (?:hang|fix|nail|hold)) {_THAT}\b| (?:for|in) all {_THAT}"
    r"| do (?:i|we) need\b)"
    r"(?P<rest>[^?]*)\??",
    re.IGNORECASE,
)
_COURSES = expression(
    _LEAD + r"(?:how many |what about (?:the )?|the )?(?:courses|rows|boards up)"
    rf"(?: (?:is|are|for|in|on|up|do|does|will|would) (?:all )?{_THAT}\b| do (?:i|we) need\b| up\b)?(?P<rest>[^?]*)\??",
    re.IGNORECASE,
)
_COIL = expression(
    r"\W*(?:(?:and|so|ok|okay|then|now)\W+)*(?:how many )?(?:pieces|strips|bits|flashings)"
    r"(?: (?:do|can|will|would) (?:i|we|you) get)? (?:from|out of|off|in|per|to)(?: an?| the)? coil(?: width)?"
    r"(?: (?:of|for) (?:that|it|them|those))?\W*",
    re.IGNORECASE,
)
_SO_LONG = expression(
    r"\b(?:that long|that size|that length|so long|of those|of them|like (?:that|those|it)|(?:those|these) pieces)\b",
    re.IGNORECASE,
)
_ROWS = ("courses", "straps")
_GABLE, _COURSED = "gable courses", "course layout"
_LONGEST = 80  # characters of such a line
_OTHER = expression(r"\b(?:other|another|next|different|new|north|south|east|west|lake|ramp|front|back|instead)\b", re.IGNORECASE)


def so_long_each(topic: Topic, question: Question, text: str, answer: Mapping[str, Any]) -> Asked | None:
    """The piece of a question how many come from a stick, where that is as long as the answer before: how many that long."""
    if topic.name != "pieces from a stick" or "piece" not in question.missing or question.unplaced or not _SO_LONG.search(text):
        return None
    if answer["value"] is None or answer["unit"] not in Length.units:
        return None
    long = Length(Fraction(str(answer["value"])), answer["unit"], answer["text"])
    return Asked(topic, {"piece": Given("piece", long, "earlier")})


def nails_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the fasteners of the courses or straps just worked; then those are asked about, or counted."""
    last = c.last if c.pending is None and len(text) <= _LONGEST else None
    if last is None or not last.record.get("answer") or not _NAILS.fullmatch(text) or _OTHER.search(text):
        return False
    rows = rows_of(last)
    if rows is None:
        return False
    known = {"rows": Given("rows", rows, "earlier")}
    if last.topic.name == "strapping" and "height" in last.givens:  # each is as long as the wall is high
        known["length"] = Given("length", last.givens["height"].value, "earlier")
    return _asked(c, record, text, "fasteners", known)


def courses_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many courses go up the gable, or the wall, just worked; then that is asked about, or worked."""
    last = c.last if c.pending is None and len(text) <= _LONGEST else None
    if last is None or not last.record.get("answer") or not _COURSES.fullmatch(text) or _OTHER.search(text):
        return False
    if last.topic.name in (_GABLE, _COURSED) or any(line["name"] == "courses" for line in last.record["also"]):
        return False  # which is read off
    known = {name: given for name, given in last.givens.items() if given.source != "assumed"}
    gable = {name: Given(name, known[name].value, "earlier") for name in known if name in ("width", "pitch")}
    if len(gable) > 1:
        return _asked(c, record, text, _GABLE, gable)
    height = {"height": Given("height", known["height"].value, "earlier")} if "height" in known else {}
    return bool(height) and _asked(c, record, text, _COURSED, height)


def rows_of(last: Asked) -> Count | None:
    """How many courses or straps were just laid out, where that is one number."""
    lines = [last.record["answer"], *last.record["also"]]
    counted = [line for line in lines if line["name"] in _ROWS and line["unit"] == "count"]
    return Count(Fraction(str(counted[0]["value"])), "count", counted[0]["text"]) if len(counted) == 1 else None


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


def _asked(c: Conversation, record: Record, text: str, topic: str, known: dict[str, Given]) -> bool:
    """Work the topic with what is known, and what the line tells more."""
    more = read_as(text, topic, c.parameters)
    if more.unplaced or known.keys() & more.givens.keys():
        return False
    asked = Asked(c.topics[topic], known)
    c.finish(record, c.ways(more, asked), more)
    return True
