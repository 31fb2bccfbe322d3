"""The answer before in a unit that its question was not asked in: "and in Fahrenheit", "what's that in kilos"."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.meant_for import said_bare
from assistant.pending import Asked
from assistant.record import Record, put_asked, put_noted, say_first
from assistant.several import told_of
from assistant.speech import spoken
from assistant.units_kept import UNITS
from intents.expressions import expression
from intents.question import Question
from solvers.printing import decimal
from solvers.quantities import Area, Length, Quantity, Temperature, Volume, Weight
from solvers.slots import Given
from solvers.sums import Measure

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_CONVERSION = "conversion"
_ASKED = expression(
    r"\W*(?:(?:and|so|ok|now|or|please|what'?s|what is|whats|that|it|be|would|make it|give me|say it|how much is)\W+)*"
    r"(?:(?:in|to|into|as)|how (?:many|much)(?= litres| liters| gallons| kilos| pounds))"
    r"\s+(?:degrees\s+)?((?:(?:square|sq\.?)\s+)?[a-z]+)(?: (?:is|are|of) (?:that|it|them|those|they))?(?:\s+please)?\W*",
    re.IGNORECASE,
)
_DECIMAL = expression(
    r"\W*(?:(?:and|so|ok|now|please|what'?s|what is|that|it)\W+)*(?:in|as|to)(?: a)? "
    r"(?:decimals?(?: (?P<of>inch(?:es)?|feet))?|(?P<yards>yards))"
    r"\W*",
    re.IGNORECASE,
)
_ALONE = expression(r"\W*(?:(?:and|now|ok)\W+)*(inch(?:es)?|feet|mm|millimet(?:re|er)s|cm|met(?:re|er)s)\W*", re.IGNORECASE)
_UNITS: dict[str, tuple[type[Quantity], str]] = {
    **dict.fromkeys(("fahrenheit", "f"), (Temperature, "FAHRENHEIT")),
    **dict.fromkeys(("celsius", "centigrade", "c"), (Temperature, "CELSIUS")),
    **dict.fromkeys(("kg", "kilos", "kilograms", "kilo"), (Weight, "KILOGRAMS")),
    **dict.fromkeys(("pounds", "lb", "lbs", "pound"), (Weight, "POUNDS")),
    **dict.fromkeys(("square metres", "square meters", "square m", "sq m", "sq metres", "m2"), (Area, "SQUARE_METRES")),
    **dict.fromkeys(("square feet", "square foot", "sq ft", "sq feet"), (Area, "SQUARE_FEET")),
    **dict.fromkeys(("square inches", "square inch", "sq in", "sq inches"), (Area, "SQUARE_INCHES")),
    "squares": (Area, "SQUARES"),
    **dict.fromkeys(("litres", "liters", "litre", "liter"), (Volume, "LITRES")),
    **dict.fromkeys(("gallons", "gallon", "gal"), (Volume, "GALLONS")),
}


_LENGTH = expression(
    r"\W*(?:(?:and|so|ok|now|or|please|what'?s|what is|whats|that|it|be|would|make it|give me|say it|how much is|to"
    r"|(?:each|one) of (?:those|these|them)|each one|each)\W+)*"
    r"(?:(?:in|into|as) )?(?P<unit>feet and inches|feet|foot|ft|inches|inch|met(?:re|er)s?|centimet(?:re|er)s?|cms?"
    r"|mm|millimet(?:re|er)s?|metric)"
    r"(?:\W+please)?\W*"
    r"|\W*(?:(?:and|so|ok|now)\W+)*how many (?P<many>feet|foot|inches|met(?:re|er)s|centimet(?:re|er)s)"
    r"(?: (?:is|are|would) (?:that|it|they)(?: be)?)?\W*",
    re.IGNORECASE,
)
_BEFORE = expression(r"\b(?:in|into|as|to|how many)\s", re.IGNORECASE)
_TOLD = {"m": ("in metres", "m", 1000), "c": ("in centimetres", "cm", 10)}  # by the first letter of its name


_OF_TWO = expression(r"\b(?:the (?:pair|two)|both|added|together|summed|combined)\b", re.IGNORECASE)  # and not of the last


def last_in_unit(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the last answer in another unit of its kind; if so that is converted."""
    if _OF_TWO.search(text):
        return False
    if _in_decimals(c, record, text) or _length_in(c, record, text) or _bare_unit(c, record, text):
        return True
    asked = _ASKED.fullmatch(text)
    kind, unit = _UNITS.get(" ".join(asked[1].lower().replace(".", "").split()), (None, "")) if asked else (None, "")
    answer = _of_kind(c.last.record, kind) if c.last and kind is not None else None
    if kind is None or answer is None:
        return False
    if unit == "SQUARES" and c.last is not None and c.last.times == 1:  # with their waste, as a question of their own
        return False
    topic = c.topics[_CONVERSION]
    value = Measure(kind(Fraction(str(answer["value"])), answer["unit"], answer["text"]))
    to = topic.parameter("to").kind[unit]  # type: ignore[index]
    givens = {"value": Given("value", value, "earlier"), "to": Given("to", to, "asked")}
    before = c.last
    c.finish(record, [c.worked(Asked(topic, {}), givens)], Question(_CONVERSION))
    c.last = before  # what comes next changes the question, and not the unit
    return True


def _of_kind(record: Record, kind: type[Quantity]) -> dict[str, Any] | None:
    """The answer, where it has such a unit; beside a count, the one number that has: the volume of a sealant told in tubes."""
    answer = record.get("answer")
    if not answer or answer["value"] is None:
        return None
    if answer["unit"] in kind.units:
        return answer
    found = [line for line in record["also"] if line["unit"] in kind.units] if answer["unit"] == "count" else []
    return found[0] if len(found) == 1 else None


def _length_in(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the last length in feet, or in metres; then it is worked again for that tape.

    What the numbers of a sum were is no part of that: 5 3/8 times 9 "in feet" are 4 feet and 3/8, and no 48 feet.
    """
    asked = _LENGTH.fullmatch(text.replace("’", "'"))
    answer = c.last.record.get("answer") if c.last and c.pending is None else None
    if asked is None or c.last is None or not answer or not _BEFORE.search(text) or c.last.topic.name == _CONVERSION:
        return False
    if answer["value"] is None or answer["unit"] not in Length.units:
        return False
    unit = (asked["unit"] or asked["many"]).lower()
    told = None if unit == "metric" or unit[:2] in ("mm", "mi") else _TOLD.get(unit[0])
    last = replace(c.last, metric=unit[0] in _TOLD)
    c.finish(record, [c.worked(last, told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered" and (line := next((one for one in record["also"] if one["name"] == last.asked_for), None)):
        say_first(record, line)  # what was asked for beside the topic's own answer
    if told is not None and record["outcome"] == "answered" and record["answer"]["unit"] == "mm":
        name, code, size = told
        value = Fraction(str(record["answer"]["value"])) / size
        line = {"name": name, "value": float(value), "unit": code, "text": f"{decimal(value, 3)} {code}"}
        record["also"].append(line)
        record["say"] = spoken(f"That is {line['text']}. ") + record["say"]
    return True


def _bare_unit(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line is the name of a unit alone: the answer in that, or, where a number was said with none, asked which."""
    said, last = _ALONE.fullmatch(text), c.last if c.pending is None else None
    answer = last.record.get("answer") if last else None
    unit = UNITS.get(said[1].lower(), "") if said else ""
    if said is None or last is None or not answer or answer["unit"] not in Length.units or not unit:
        return False
    lengths = [g.value for g in last.givens.values() if isinstance(g.value, Length) and g.source != "assumed"]
    bare = [value for value in lengths if said_bare(value) and value.unit != unit]
    if not bare:
        c.take(record, f"in {said[1]}")
        return True
    ask = f"Is that the answer in {said[1]}, or the {bare[0].text}? Say “in {said[1]}”, or “I meant {said[1]}”."
    put_asked(record, last.topic.name, ask)
    return True


def _in_decimals(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the last length in decimals, or in yards; then it is told."""
    asked, answer = _DECIMAL.fullmatch(text), c.last.record.get("answer") if c.last and c.pending is None else None
    if asked is None or c.last is None or c.last.topic.name == _CONVERSION or not answer:
        return False
    if answer["value"] is None or answer["unit"] not in Length.units:
        return False
    inches = Length(Fraction(str(answer["value"])), answer["unit"]).to("in").value
    unit = "yards" if asked["yards"] else "feet" if (asked["of"] or "").lower() == "feet" else "inches"
    value = decimal(inches / {"yards": 36, "feet": 12, "inches": 1}[unit], 4)
    put_noted(record, "explain", f"That is {value} {unit}")
    return True
