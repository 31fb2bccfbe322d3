"""What a question takes from the one before it: the same pitch, its answer ("can my saw cut it?"), its area or count."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.asked_after import asked_after
from assistant.last_in_unit import last_in_unit
from assistant.pending import Asked
from assistant.put_to_it import put_to_it
from assistant.same_wall import of_the_same_wall
from intents.question import Question
from solvers.quantities import Area, Count, Money, Quantity
from solvers.registry import Topic
from solvers.slots import Given, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_POINTS = {"it", "that", "this", "them"}
_PRICED = ("cost", "weight")
_MEASURED = ("ft2", "m2")  # squares have their waste in them
_ASKS_AREA = re.compile(r"How much area\b")
_COVERS = ("squares", "cladding boards", "membrane rolls")  # what is asked of the wall that was just measured
# Another wall than the one before, or an area that is still to be told.
_ANOTHER = re.compile(
    r"\b(?:other|another|next|second|different|new|north|south|east|west|lake|ramp|front|back|left|right|whole|rest|total|if)\b",
    re.IGNORECASE,
)
_EACH = re.compile(r"\b(?:each|apiece|(?:per|an?) (?:stick|board|piece|panel|roll|tube|length))\b", re.IGNORECASE)


_PRICED_AT = re.compile(
    r"(?:(?:and|so|ok|okay|then|now|what['’]?s|what is|what would|what do|what does|what['’]ll|how much(?: is| for)?|that|it|they"
    r"|them|those|come to|comes to|cost|be|if|are|is|['’]s|['’]re|at|for|say)[ ,]*)*"
    r"(?P<how>\b(?:at|for|cost|costs)\s+|[$£€])?(?P<n>\d+(?P<cents>\.\d\d)?)\s*(?P<money>dollars|bucks|quid|euros?)?\s+"
    r"(?P<of>each|apiece|(?:an?|per|the) (?P<noun>[a-z]+(?: foot| feet| metre| meter)?))",
    re.IGNORECASE,
)
_OF_AREA = {"ft2": ("foot", "sq foot", "square foot"), "m2": ("metre", "meter", "square metre", "square meter")}


def of_the_last(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line only asks something of the last answer: a share of it, a value beside it, it in another unit, its cost."""
    return any(of_it(c, record, text) for of_it in (put_to_it, last_in_unit, asked_after, priced))


def priced(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells what each of the things just counted, or a foot of the area just worked, costs: what they cost."""
    answer = c.last.record.get("answer") if c.last and c.pending is None else None
    found = _PRICED_AT.fullmatch(text.strip(" .!?")) if answer else None
    if c.last is None or not answer or found is None or any(p.kind is Money for p in c.last.topic.parameters):
        return False
    if not (found["how"] or found["cents"] or found["money"] or re.search(r"\b(?:at|for|cost)\s+[\d.]+ ", text)):
        return False  # 26 each may be pounds
    noun = (found["noun"] or "").lower()
    area = answer["unit"] in _OF_AREA and noun in _OF_AREA[answer["unit"]]
    by_length = noun in ("foot", "metre", "meter") and not area  # of how many feet it can't be told: asked
    if (answer["unit"] != "count" and not area) or noun in ("hour", "day"):
        return False
    of = f"per {_OF_AREA[answer['unit']][-1]}" if area else f"a {noun}" if by_length else "each"
    questions = [q for q in c.read(f"cost at {found['n']} dollars {of}").questions if q.topic == "cost"]
    for question in questions[:1]:
        parameter = c.topics["cost"].parameter("area" if area else "count")
        value = (Area if area else Count)(Fraction(str(answer["value"])), answer["unit"], answer["text"])
        c.finish(record, c.ways(question, None if by_length else _with(c.topics["cost"], parameter, value)), question)
        if record["outcome"] == "answered":
            record["say"] = f"With the {parameter.label} {answer['text']} as before. {record['say']}"
    return bool(questions)


def carried(base: Asked, parameters: Sequence[Parameter]) -> dict[str, Given]:
    """What another topic was given under a name that values are kept under ("and the peak joint?": the same pitch)."""
    known = {}
    for name, given in base.givens.items():
        kept = base.topic.parameter(name).slot.kept
        if kept and given.source != "assumed":
            known[kept] = given
    found = {
        p.name: Given(p.name, known[p.slot.kept].value, known[p.slot.kept].source)
        for p in parameters
        if p.slot.kept in known and isinstance(known[p.slot.kept].value, p.kind)
    }
    for told in (p for p in base.topic.parameters if p.slot.names and p.name in base.givens):
        same = next((p for p in parameters if p.kind is told.kind and p.slot.names in found), None)
        if same is not None:
            found[same.name] = base.givens[told.name]
        else:  # a run that stood for the gable's width is no width elsewhere
            kept = base.topic.parameter(told.slot.names).slot.kept
            found = {p.name: found[p.name] for p in parameters if p.name in found and p.slot.kept != kept}
    return found


def pointed(c: Conversation, text: str, question: Question) -> Asked | None:
    """What a question that lacks a value takes of the last answer, which it points at or plainly goes on from."""
    answer = c.last.record.get("answer") if c.last else None
    if not answer or answer["value"] is None:
        return None
    topic = c.topics[question.topic]
    same = of_the_same_wall(c, topic, question, text) or _same_corner(c, topic, question, text)
    if same is not None:
        return same
    value = Fraction(str(answer["value"]))
    if _POINTS & set(text.lower().strip("?.! ").split()):
        for parameter in (topic.parameter(name) for name in question.missing):
            named = set(parameter.label.split()) <= set(answer["name"].lower().split())
            if named and issubclass(parameter.kind, Quantity) and answer["unit"] in parameter.kind.units:
                return _with(topic, parameter, parameter.kind(value, answer["unit"], answer["text"]))
    return _covering(c, topic, question, text, answer["unit"], value, answer["text"])


def _same_corner(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """The corner that was just worked, for another joint of it: in three pieces."""
    corner = c.last.givens.get("corner") if c.last and c.last.topic is not topic and not _ANOTHER.search(text) else None
    if corner is None or question.missing != ["corner"] or question.unplaced or question.lacking:
        return None
    return Asked(topic, {"corner": Given("corner", corner.value, "earlier")})


def _covering(
    c: Conversation, topic: Topic, question: Question, text: str, unit: str, value: Fraction, said: str
) -> Asked | None:
    """The area just worked, for what covers it; the count just worked, for what each of them costs or weighs."""
    parameters = {parameter.label: parameter for parameter in topic.parameters}
    if c.last is not None and c.last.topic.name in _COVERS and isinstance(c.last.givens.get("area"), Given):  # squares of it
        was = c.last.givens["area"].value
        unit, value, said = was.unit, was.value, was.text
    area = unit in _MEASURED and topic.name in (*_COVERS, *_PRICED) and not _ANOTHER.search(text)
    count = unit == "count" and topic.name in _PRICED and _EACH.search(text)
    parameter = parameters.get("area") if area else parameters.get("count") if count else None
    if parameter is None or parameter.name in question.givens or question.missing or question.unplaced:
        return None
    asks = c.ways(question)[0].worked.asks
    if not _ASKS_AREA.match(asks) if area else not asks.startswith("How many"):
        return None  # it lacks something else
    kind = Area if area else Count
    known = carried(c.last, topic.parameters) if c.last else {}
    return Asked(topic, {**known, **_with(topic, parameter, kind(value, unit, said)).givens})


def _with(topic: Topic, parameter: Parameter, value: Quantity) -> Asked:
    return Asked(topic, {parameter.name: Given(parameter.name, value, "earlier")})
