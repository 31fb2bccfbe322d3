"""What goes on from a value that was only read back: "how long is the rake", and then "double that", "in feet", "less an inch".

Such a line is of the value that was read, and no longer of the answer beside which it stands.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.acts.comparing import DIFFERENCE
from assistant.from_last import priced, sticks_of_it
from assistant.goes_on import goes_on
from assistant.pending import Asked
from assistant.put_to_it import put_to_it
from assistant.record import Record
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Length
from solvers.slots import Given
from solvers.sums import Measure

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_CONVERSION = "conversion"
_UNIT = expression(
    r"\W*(?:(?:and|so|ok|now|what(?:'?s| is)|whats|that|it|give me)\W+)*(?:in|to|as)\s+(?:a )?"
    r"(?P<unit>[a-z]+(?: and inches)?)\W*",
    re.IGNORECASE,
)
_PARTS = expression(
    r"\W*(?:(?:and|or|now|what about)\W+)*(?:into|by|in) (?:\d+|[a-z]+ (?:parts|pieces)|two|three|four|five|six|seven"
    r"|eight|nine|ten|eleven|twelve)\b",
    re.IGNORECASE,
)  # so many parts of the whole, and not of its third mark
_BY = expression(r"^\W*(?:(?:and|so|ok|now)\W+)*divided?(?: (?:that|it))? by\b", re.IGNORECASE)
_TOLD = {"m": "MILLIMETRES", "f": "FEET", "i": "INCHES", "c": "CENTIMETRES"}  # by the first letter, and where that is not enough:
_LONG = {"metres": "METRES", "meters": "METRES", "metre": "METRES", "meter": "METRES", "m": "METRES", "metric": "METRIC"}


def of_the_shown(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes on from the length that the line before read back; then that is worked."""
    line, c.shown = c.shown, None
    if line is None or c.pending is not None or _PARTS.match(text) or line["unit"] not in Length.units or line["value"] is None:
        return False
    text = _BY.sub("split that in", text)
    before, c.last = c.last, _as_asked(c, line)
    if line["name"] != DIFFERENCE and (sticks_of_it(c, record, text) or priced(c, record, text)):
        return True
    works = (_in_unit,) if line["name"] == DIFFERENCE else (goes_on, put_to_it, _in_unit)  # an inch less is of the answer
    worked = any(work(c, record, text) for work in works)
    c.last = before  # a change is still one of the question beside whose answer it stands
    c.shown = record["answer"] if worked else None
    return worked


def shows(c: Conversation, record: Record) -> None:
    """Keep in mind the one value that a line read back."""
    if record["outcome"] == "noted" and record["topic"] == "explain" and len(record["also"]) == 1:
        c.shown = record["also"][0]


def _as_asked(c: Conversation, line: dict[str, Any]) -> Asked:
    """A length that was read back as a question of its own: so many inches."""
    topic = c.topics[_CONVERSION]
    value = Measure(Length(Fraction(str(line["value"])), line["unit"], line["text"]))
    unit = "MILLIMETRES" if line["unit"] == "mm" else "INCHES"
    to = topic.parameter("to").kind[unit]  # type: ignore[index]
    givens = {"value": Given("value", value, "earlier"), "to": Given("to", to, "earlier")}
    record = {"answer": line, "also": [], "marks": [], "topic": _CONVERSION, "heard": ""}
    return Asked(topic, givens, metric=line["unit"] == "mm", record=record)


def _in_unit(c: Conversation, record: Record, text: str) -> bool:
    asked = _UNIT.fullmatch(text)
    said = asked["unit"].lower() if asked else ""
    unit = _LONG.get(said) or ("IMPERIAL" if "and" in said else _TOLD.get(said[:1], ""))
    if not unit or c.last is None or not re.fullmatch(r"m\w*|f(?:ee|oo)?t.*|in(?:ch(?:es)?)?|c\w*", said):
        return False
    topic = c.last.topic
    givens = {**c.last.givens, "to": Given("to", topic.parameter("to").kind[unit], "asked")}  # type: ignore[index]
    c.finish(record, [c.worked(Asked(topic, {}), givens)], Question(topic.name))
    return True
