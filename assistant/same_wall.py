"""The wall that was just asked about, for what is asked of it next: its straps, its courses, the boards for those courses.

Its sizes are taken only where the line names no other wall and tells no size of one, and they are said with the answer.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.pending import Asked
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Count
from solvers.registry import Topic
from solvers.slots import Given, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation

# Another wall than the one before, or a part of it.
_ANOTHER = expression(
    r"\b(?:other|another|next|second|different|new|north|south|east|west|lake|ramp|front|back|left|right|whole|rest|if|garage"
    r"|shed|gables?|dormers?|porch|house|barn|cabin|window|door|soffits?|fence|deck|floor|roof)\b",
    re.IGNORECASE,
)
_LAYOUT, _BOARDS = "course layout", "cladding boards"
_ASKS = {  # what is asked for a size of a wall, and which size that is
    "What is the length of the wall?": "length", "What is the height of the wall?": "height", "How long is the wall?": "length",
    "How high is the wall?": "height", "What is the height to fill?": "height",
}  # fmt: skip


def of_the_same_wall(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """What the question lacks of the wall that the one before was of; None where it lacks something else, or names another."""
    last = c.last
    if last is None or last.topic is topic or question.unplaced or question.lacking or last.times != 1 or _ANOTHER.search(text):
        return None
    if topic.name == _BOARDS and last.topic.name == _LAYOUT:
        return _its_courses(c, last, topic, question)
    known = {_size(last.topic.parameter(name)): given for name, given in last.givens.items() if given.source != "assumed"}
    sizes = [p for p in topic.parameters if _size(p) and _size(p) in known]
    told = {_size(p) for p in topic.parameters if p.name in question.givens and _size(p)}
    if told or not question.missing or not set(question.missing) <= {p.name for p in sizes}:
        return None
    return Asked(topic, {p.name: Given(p.name, known[_size(p)].value, "earlier") for p in sizes})


def _its_courses(c: Conversation, last: Asked, topic: Topic, question: Question) -> Asked | None:
    """So many courses as were just laid out, for the boards that go on them."""
    courses = next((line for line in last.record.get("also", ()) if line["name"] == "courses"), None)
    if courses is None or {"area", "courses", "wall_height"} & question.givens.keys() or question.missing:
        return None
    if "course" not in c.ways(question)[0].worked.asks:
        return None
    return Asked(topic, {"courses": Given("courses", Count(Fraction(courses["value"]), "count", courses["text"]), "earlier")})


def _size(parameter: Parameter) -> str:
    return _ASKS.get(parameter.slot.ask, "")
