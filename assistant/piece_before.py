"""A piece that a question lacks, as an earlier one of the talk was given it or came to it; the last that has it first.

Nothing is found where two values of one question could be it, where that question is of another thing than the rest (another
roof, or wall), or where a number was told after it that came to nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.at_the_saw import JOINTS, SAW
from assistant.pending import Asked
from assistant.roles_alike import ALTERED, ANSWERS, NO_OPENINGS, OF_ONE_THING, ROLES, SEVERAL
from assistant.said_over import stem
from assistant.several import told_of
from assistant.usual import no_unit
from intents.expressions import expression
from intents.matcher import read_as
from intents.talk import numbers_in
from solvers.quantities import Area, Length, Quantity
from solvers.registry import Topic
from solvers.slots import Given, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation

BACK = 2  # questions that are looked at: of 677 lines of talk none wanted one before them
BY_RISE_AND_RUN = "pitch from rise and run"
_BOTH_ENDS, _ENDS_OF_YEAR = ("end gap", "thermal movement"), {"hottest", "coldest", "extreme", "opposite"}
_AREAS = ("ft2", "m2")
_FACE = ("wall length", "wall height", "openings")  # which tell an area together
_LOADS = ("cost", "weight")
_ON_SOFAR = (*_LOADS, "conversion", "boxes", SAW)  # which go on from what is before them
_THING = expression(
    r"\b(?:an?|per) (?P<each>[a-z]+)"
    r"|\b(?:cost|price|weight) (?:of|for) (?:(?:the|my|some|all|of|those|these|that) )*(?P<of>[a-z]+)"
)
_ANY_THING = frozenset(  # which are no things of their own
    "piece one unit pop go throw bit lot it that them those these this all everything each dollar buck quid pound kilo lb kg foot"
    " square sq ft metre meter m hundred thousand couple".split()
)
_AT_THAT_PITCH = expression(r"\b(?:that|this|same|the same) (?:pitch|slope|angle)\b", re.IGNORECASE)  # and of nothing else of it
_MEMBERS = ("sloped length", "hip or valley length")  # and the hip at that pitch, over the run of the common
_AGAIN = expression(r"\b(?:again|back to|same|anyway|that|those)\b", re.IGNORECASE)
_AMOUNTS = frozenset(("area", "total", "cost length", "joint length"))  # of which there is more where there are several
_WHOLE = expression(  # of so much trim in all, of which the joints may fall anywhere
    r"\b(?:no|without(?: any)?|zero) (?:splic\w*|joins?|joints?|butts?)\b|\b(?:whole|full|one|single) (?:piece|length)s?\b",
    re.IGNORECASE,
)


def piece(c: Conversation, topic: Topic, wanted: str, known: dict[str, Given], text: str) -> dict[str, Given]:
    """What is wanted, from the last question that has it; nothing where two values could be it, or it is of another thing."""
    members = topic.name in _MEMBERS and c.last is not None and c.last.topic.name in _MEMBERS and not numbers_in(text)
    if _AT_THAT_PITCH.search(text) and not members and ROLES.get((topic.name, wanted), wanted) not in ("pitch", "setting"):
        return {}
    if (wanted == "total" and _WHOLE.search(text)) or (wanted == "layers" and ALTERED.search(text)) or NO_OPENINGS.search(text):
        return {}
    for asked in [*reversed(c.earlier)][:BACK]:
        if stale(c, asked):
            return {}
        if asked.topic is topic:
            told = {name: Given(name, given.value, "earlier") for name, given in told_of(asked).items() if name not in known}
            return told if _AGAIN.search(text) and wanted in told and asked.times == 1 else {}
        ways = [way for way in _ways(c, topic, wanted, known, asked, text) if way]
        if not ways:
            if _differs(topic, known, asked):
                return {}  # it is of another roof, or wall
            continue
        first = ways[0]
        roles = {_role(topic, topic.parameter(name)) for name in first}
        if asked.times == 1 and roles & (_AMOUNTS | {"wall length"}) and SEVERAL.search(text):
            return {}  # boards to do the pair of them, where the area is of one
        if _differs(topic, known, asked) or any(not _same(first, way) for way in ways[1:]):
            return {}
        return first
    return {}


def stale(c: Conversation, asked: Asked) -> bool:
    """Whether a number was told after a question that may have been of it, and came to nothing: what it came to may not hold."""
    at = next((at for at, kept in enumerate(c.records) if kept is asked.record), len(c.records))
    for kept in c.records[at + 1 :]:
        if kept["outcome"] == "answered" and kept["topic"] != asked.topic.name:
            return False
        nothing = kept["outcome"] in ("asks", "declined") and kept["topic"] in (None, "follow-up", "correct", asked.topic.name)
        if nothing and numbers_in(kept["heard"]):
            return True
    return False


def legs_of(c: Conversation, asked: Asked) -> tuple[Given, Given] | None:
    """The rise and the run that the question before was told both of: climbs 850 mm over a level run of 2.9 m."""
    told = told_of(asked)
    if asked.topic.name == BY_RISE_AND_RUN:
        return (told["rise"], told["run"]) if told.keys() - {"asked"} == {"rise", "run"} else None
    pitch = told.get("pitch")
    parts = read_as(pitch.value.text, BY_RISE_AND_RUN, c.parameters).givens if pitch is not None and pitch.value.text else {}
    if parts.keys() != {"rise", "run"} or any(heard.bare or no_unit(heard) for heard in parts.values()):
        return None
    return Given("rise", parts["rise"].value, "earlier"), Given("run", parts["run"].value, "earlier")


def _ways(
    c: Conversation, topic: Topic, wanted: str, known: dict[str, Given], asked: Asked, text: str
) -> Iterator[dict[str, Given]]:  # fmt: skip
    """Each way in which an earlier question tells what is wanted."""
    if topic.name in _LOADS and _of_another_thing(text, asked):
        return
    ends = told_of(asked) if (topic.name, asked.topic.name) == _BOTH_ENDS and wanted in _ENDS_OF_YEAR else {}
    if {"start", "end"} <= ends.keys() and not known.keys() & _ENDS_OF_YEAR:
        yield {name: Given(name, ends[end].value, "earlier") for name, end in (("extreme", "start"), ("opposite", "end"))}
        return
    for name in _instead(topic, wanted, known):
        parameter = next((p for p in topic.parameters if p.name == name), None)
        if parameter is None or name in known:
            continue
        role = _role(topic, parameter)
        if role == "area" and (face := _face_of(topic, asked)):
            yield face
            return
        value = _of_answer(role, parameter, asked)
        if value is not None:
            yield {name: Given(name, value, "earlier")}
            return
        if asked.times == 1 or role not in (*_FACE, *_AMOUNTS, "count"):
            found = [*_of_givens(c, topic, parameter, role, asked)]
            yield from found
            if found:
                return


def _of_another_thing(text: str, asked: Asked) -> bool:
    """Whether a price or a weight is of a thing that the earlier question was not about: at 30 a box, the cost of trim."""
    answer = asked.record.get("answer") or {}
    words = {stem(word) for word in re.findall(r"[a-z]+", f"{asked.text} {answer.get('name', '')} {asked.topic.name}".lower())}
    named = (found["of"] or found["each"] for found in _THING.finditer(text.lower()))
    return any(stem(noun) not in words and noun not in _ANY_THING for noun in named)


def _instead(topic: Topic, wanted: str, known: dict[str, Given]) -> list[str]:
    """What is wanted, and what tells the same another way, by what the earlier question came to."""
    names = {p.name for p in topic.parameters}
    if topic.name in _LOADS:
        per = getattr(known["per"].value, "name", "") if "per" in known else ""
        counted = per in ("EACH", "HUNDRED", "THOUSAND") or not per
        return ["count"] if counted else ["area"] if per in ("FT2", "M2", "SQUARE") else ["length"]
    if wanted in ("area", "wall_length") and "area" in names and "wall_length" in names:
        return ["area", "courses"] if "courses" in names else ["area"]
    if wanted == "corner":  # of an octagon, its sides tell the corner
        return ["sides", "corner"] if topic.name == "compound cut" else ["corner", "turn"]
    return [wanted]


def _role(topic: Topic, parameter: Parameter) -> str:
    return ROLES.get((topic.name, parameter.name), "") or parameter.slot.kept


def _of_answer(role: str, parameter: Parameter, asked: Asked) -> Quantity | None:
    """The answer of an earlier question, or a value beside it, that is this piece."""
    record = asked.record
    answer = record.get("answer")
    if not answer:
        return None
    names = [name for topic, name in ANSWERS.get(role, ()) if topic == asked.topic.name]
    if role == "setting" and asked.topic.name in JOINTS:
        names = [""]
    if role == "count" and answer["unit"] == "count":
        names = [""]
    if role == "cost length" and answer["unit"] in Length.units:
        names = [""]
    for name in names:
        line = answer if not name else next((each for each in _lines(record) if each["name"] == name), None)
        if line is None or line["value"] is None or not issubclass(parameter.kind, Quantity):
            continue
        if line["unit"] in parameter.kind.units:
            return _value(parameter, line)
    return None


def _lines(record: dict[str, Any]) -> list[dict[str, Any]]:
    return [record["answer"], *record["also"]]


def _value(parameter: Parameter, line: dict[str, Any]) -> Quantity:
    value: Quantity = parameter.kind(Fraction(str(line["value"])), line["unit"], line["text"])
    return value


def _face_of(topic: Topic, asked: Asked) -> dict[str, Given]:
    """The area that an earlier question came to, or was about; or the sizes of the wall that it was about."""
    parameter = topic.parameter("area")
    answer = asked.record.get("answer")
    if answer is None or (asked.topic.name in _ON_SOFAR and "area" not in asked.givens):
        return {}
    line = answer if answer["unit"] in _AREAS and "vent" not in asked.topic.name else None
    if line is None and asked.topic.name == "roof area":  # squares have the waste in them
        line = next((each for each in asked.record["also"] if each["unit"] in _AREAS and "plan" not in each["name"]), None)
    if line is not None:
        return {"area": Given("area", _value(parameter, line), "earlier")}
    if asked.times != 1:
        return {}
    covered = asked.givens.get("area")
    if covered is not None and isinstance(covered.value, Area) and ROLES.get((asked.topic.name, "area")) == "area":
        return {"area": Given("area", covered.value, "earlier")}
    sizes = {ROLES.get((asked.topic.name, name)): given for name, given in told_of(asked).items()}
    if not {"wall length", "wall height"} <= sizes.keys():
        return {}
    mine = {ROLES.get((topic.name, p.name)): p.name for p in topic.parameters}
    return {mine[role]: Given(mine[role], sizes[role].value, "earlier") for role in _FACE if role in sizes and role in mine}


def _of_givens(c: Conversation, topic: Topic, parameter: Parameter, role: str, asked: Asked) -> Iterator[dict[str, Given]]:
    """What an earlier question was given of this piece, with the choice that says how it was measured."""
    told = told_of(asked)
    for name, given in told.items():
        other = asked.topic.parameter(name)
        if not role or _role(asked.topic, other) != role or not isinstance(given.value, parameter.kind):
            continue
        found = {parameter.name: Given(parameter.name, given.value, "earlier", given.sure)}
        measured = next((told[p.name] for p in asked.topic.parameters if p.slot.names == name and p.name in told), None)
        if measured is not None:
            names = [p for p in topic.parameters if p.slot.names == parameter.name and isinstance(measured.value, p.kind)]
            as_ = next(iter(names), None)
            if as_ is None:
                continue  # a rafter that stood for the run is no run elsewhere
            found[as_.name] = Given(as_.name, measured.value, "earlier")
        yield found
    yield from _made(c, topic, parameter, role, asked, told)


def _made(
    c: Conversation, topic: Topic, parameter: Parameter, role: str, asked: Asked, told: dict[str, Given]
) -> Iterator[dict[str, Given]]:  # fmt: skip
    """A piece that an earlier question was told another way: the run by the width of a gable, or within a pitch."""
    if role == "run" and asked.topic.name != BY_RISE_AND_RUN and (legs := legs_of(c, asked)) is not None:
        yield {parameter.name: Given(parameter.name, legs[1].value, "earlier")}
    wide = next((told[n] for n in told if ROLES.get((asked.topic.name, n)) == "gable width"), None)
    measured = any(p.slot.names == "width" and p.name in told for p in asked.topic.parameters)
    across = next((p for p in topic.parameters if p.slot.names == parameter.name and p.name == "across"), None)
    if role == "run" and wide is not None and not measured and across is not None:
        yield {
            parameter.name: Given(parameter.name, wide.value, "earlier"),
            across.name: Given(across.name, next(iter(across.kind)), "earlier"),  # type: ignore[call-overload]
        }
    if role == "row length" and asked.topic.name == "strapping" and "height" in told:  # each is as long as the wall is high
        yield {parameter.name: Given(parameter.name, told["height"].value, "earlier")}


def _differs(topic: Topic, known: dict[str, Given], asked: Asked) -> bool:
    """Whether an earlier question is of another thing: it was told another of what the question has from one after it."""
    mine = {_role(topic, topic.parameter(name)): given for name, given in known.items() if given.source == "earlier"}
    theirs = {_role(asked.topic, asked.topic.parameter(name)): given for name, given in told_of(asked).items()}
    both = OF_ONE_THING & mine.keys() & theirs.keys()
    return any(not _alike(mine[role].value, theirs[role].value) for role in both)


def _alike(one: Any, other: Any) -> bool:
    if isinstance(one, Quantity) and isinstance(other, Quantity):
        same = type(one) is type(other)
        if same and isinstance(one, Length):
            return bool(one.to("in").value == other.to("in").value)
        return same and (one.value, one.unit) == (other.value, other.unit)
    return bool(one == other)


def _same(one: dict[str, Given], other: dict[str, Given]) -> bool:
    return one.keys() == other.keys() and all(_alike(one[name].value, other[name].value) for name in one)
