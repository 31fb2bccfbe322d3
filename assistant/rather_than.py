"""A number that was told and is said to be another, both said in one line: 24 not 22; the strap is 1 1/2, not 3/4; the 5/8
siding is really 7/8. It holds while a piece is waited for, and within lists, where no name tells one number from another."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from assistant.said_over import Place, places_of, whole
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length, Number, Quantity
from solvers.slots import Layer

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.meant_for import Wanted
    from assistant.pending import Asked, Pending
    from assistant.record import Record

_NOT = expression(r"\b(?:not|instead of|rather than|in place of|and not|isn['’]?t)\s+(?:an? |the |about |at )*$", re.IGNORECASE)
_REALLY = expression(
    r"^[^\d,;]*\b(?:(?:is|was|are|were|['’]s) (?:really|actually)|should(?:['’]ve| have)? (?:be|been|read)|ought to be)\b",
    re.IGNORECASE,
)
_ASKS = expression(r"\?|\b(?:how|what|which|why|does|do|will|can)\b", re.IGNORECASE)

_PAIR = 2  # what it was, and what it is


@dataclass(frozen=True, slots=True)
class _Told:
    """A number among what was told: of which given, and where in its list."""

    name: str
    at: int | None
    value: Quantity
    called: str

_INSTEAD = expression(
    r"\W*(?:(?:and|so|ok|but|now|what|if|say|suppose)\W+)*(?:the |my )?(?P<what>[a-z]+(?: [a-z]+)?) (?:is|was|were|at|goes to)"
    r" (?P<new>[^,;?]+?) (?:instead of|rather than|and not|not) (?P<old>[^,;?]+?)\W*",
    re.IGNORECASE,
)


def anew(text: str, asked: Asked) -> Question | None:
    """The question with one number that was told as the line says it is; none where that can't be told for certain."""
    places = places_of(text)
    if len(places) != _PAIR or _ASKS.search(text):
        return None
    first, second = places
    if _NOT.search(text[: second.start]) and text[first.end : second.start].strip():
        gone, new = second, first
    elif _NOT.search(text[: first.start]) or _REALLY.search(text[first.end : second.start]):
        gone, new = first, second
    else:
        return None
    held = [told for told in _told(asked) if _is(told.value, gone.value)]
    named = [told for told in held if told.called and told.called in text.lower()]
    held = named or held
    value = _in_its_place(new, held[0], text) if len(held) == 1 else None
    if value is None:
        return None
    before = asked.givens[held[0].name].value
    return Question(asked.topic.name, {held[0].name: Heard(_with(before, held[0].at, value), 0, len(text), text)}, 1.0)


def only_the_new(text: str, last: Asked) -> str:
    """What a line puts right, without the other numbers that it tells as they were: six bags did the fourteen, not five."""
    places = places_of(text)
    if len(places) <= _PAIR or _ASKS.search(text):
        return ""
    old = [place for place in places if _NOT.search(text[: place.start])]
    known = [told.value for told in _told(last)]
    new = [place for place in places if place not in old and not any(_is(value, place.value) for value in known)]
    if len(new) != 1 or len(old) != 1 or not any(_is(value, old[0].value) for value in known):
        return ""
    return f"{text[new[0].start : new[0].end]} not {text[old[0].start : old[0].end]}"


def instead_of(text: str, last: Asked) -> str:
    """A given by its name, with what it is in the place of what was told: what if the exposure is 5 5/8 instead of 5."""
    found = _INSTEAD.fullmatch(text)
    new, old = (whole(found[name]) for name in ("new", "old")) if found is not None else (None, None)
    if found is None or new is None or old is None:
        return ""
    named = [
        given for name, given in last.givens.items()
        if last.topic.parameter(name).label.lower() == found["what"].lower() and _is(given.value, old.value)
    ]  # fmt: skip
    return f"make the {found['what']} {found['new']}" if len(named) == 1 else ""


def rather_than(wanted: Wanted, last: Asked) -> list[Question]:
    """A reader of a whole change: of what was told in a list."""
    found = anew(wanted.line or wanted.rest, last)
    return [found] if found and any(isinstance(heard.value, tuple) for heard in found.givens.values()) else []


def put_rather(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line says of a number told that it is another, while something is waited for; that goes on with it."""
    if pending.asked is None or pending.topics or (pending.ways and pending.wanted):
        return False
    bases = [way.asked for way in pending.ways] or [pending.asked]
    found = [(more, base) for base in bases if (more := anew(text, base)) is not None]
    if len(found) != len(bases):
        return False
    c.finish(record, [way for more, base in found for way in c.ways(more, base)], found[0][0])
    return True


def _told(asked: Asked) -> Iterator[_Told]:
    """Every number that was told, with what it is called."""
    for name, given in asked.givens.items():
        if given.source == "assumed":
            continue
        label = asked.topic.parameter(name).label
        if isinstance(given.value, Quantity):
            yield _Told(name, None, given.value, label)
        for at, part in enumerate(given.value if isinstance(given.value, tuple) else ()):
            size = part.thickness if isinstance(part, Layer) else part
            if isinstance(size, Quantity):
                yield _Told(name, at, size, part.what if isinstance(part, Layer) else "")


def _is(value: Quantity, said: Quantity) -> bool:
    if isinstance(value, Length) and isinstance(said, Length):
        return value.to("in").value == said.to("in").value
    return value.value == said.value and (isinstance(said, Number) or isinstance(value, Number) or value.unit == said.unit)


def _in_its_place(new: Place, told: _Told, text: str) -> Quantity | None:
    """The new number as what the old one was, in its unit where it has none."""
    words = text[new.start : new.end]
    if isinstance(new.value, Number):
        return replace(told.value, value=new.value.value, text=words)
    return replace(new.value, text=words) if isinstance(new.value, type(told.value)) else None


def _with(before: Any, at: int | None, value: Quantity) -> Any:
    if at is None:
        return value
    part = before[at]
    return (*before[:at], replace(part, thickness=value, assumed="") if isinstance(part, Layer) else value, *before[at + 1 :])
