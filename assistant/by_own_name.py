"""A given of the question before told anew by its own name, in a line that could be another question: "the corner really measures
96" after a corner in several pieces, "with a one foot overhang all the way round" after a roof's area.

It changes that question, and asks no other: nothing in the line asks for anything.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.changed_says import with_what
from assistant.said_over import Place, places_of, same_value
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.fitting import fit
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Length

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 90  # characters of such a line
_LEAD = r"\W*(?:(?:hm+|and|so|but|no|nah|sorry|oh|ah|actually|well|ok|okay|wait|right|now|damn|turns out|hang on)\b[\s,.]*)*"
_SURE = r"(?:really|actually|more like|nearer|closer to|about|only|just|at|to|as|out|up|a|an)"
_MEASURES = expression(
    rf"{_LEAD}(?:(?:the|that|this|my|our) )?(?P<name>[a-z]+(?: [a-z]+)??)(?: {_SURE})*"
    rf" (?:measures?|measured|reads?|tapes?|(?:came|comes|turns|turned|works|worked) out|(?:is|was|are) (?:really|actually))"
    rf"(?: {_SURE})*\s+N(?: (?:degrees?|now|though|then|instead|mind(?: you)?))*\W*",
    re.IGNORECASE,
)
_ROUND = r"(?:(?:all (?:the way )?|right |the whole way )?(?:round|around)|on (?:all|both|every|each) (?:sides?|ends?))"
_WITH = expression(
    rf"{_LEAD}(?:with|plus|add|allow|give it|put|it has|it['’]s got|there['’]?s)(?: about)?(?: an?)?"
    rf" N (?:of )?(?P<name>[a-z]+)(?: {_ROUND})?(?: (?:too|now|then|as well))*\W*",
    re.IGNORECASE,
)
_KINDS = (Angle, Length)


def by_own_name(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells a given of the question before by its name, and asks for nothing; then that is worked."""
    last = c.last
    places = places_of(text) if last is not None and c.pending is None and len(text) <= LONGEST else []
    if last is None or len(places) != 1 or not last.record.get("answer"):
        return False
    place = places[0]
    line = f"{text[: place.start]}N{text[place.end :]}"
    measured = _MEASURES.fullmatch(line)
    found = measured or _WITH.fullmatch(line)
    name = _called(found["name"].lower(), last, measured is None) if found is not None else ""
    heard = _value(text, place, name, last) if name else None
    if heard is None:
        return False
    state, more = state_of(c), Question(last.topic.name, {name: heard}, 1.0)
    c.finish(record, c.ways(more, last), more)
    now = c.last.givens.get(name) if c.last is not None and record["outcome"] == "answered" else None
    if c.last is None or now is None or not same_value(now.value, heard.value):
        put_back(c, state)
        return False
    c.last.changed, c.last.text = frozenset(more.givens), last.text
    record["say"] = with_what(c.last, more) + record["say"]
    return True


def _called(name: str, last: Asked, untold: bool) -> str:
    """The one given of that name, told or (`untold`) not; "" where none, or several are called so."""
    of_kind = [p for p in last.topic.parameters if issubclass(p.kind, _KINDS) and (untold or p.name in last.givens)]
    whole = [p.name for p in of_kind if p.label == name]
    found = whole or [p.name for p in of_kind if p.label.startswith(f"{name} all round")]
    return found[0] if len(found) == 1 else ""


def _value(text: str, place: Place, name: str, last: Asked) -> Heard | None:
    """The number as that given; a bare one in the unit that one had."""
    words = text[place.start : place.end]
    readings = numbers_in(words)
    fitted = fit(readings[0], last.topic.parameter(name), words, cued=True) if len(readings) == 1 else None
    was = last.givens[name].value if name in last.givens and last.givens[name].source != "assumed" else None
    if fitted is None or not isinstance(fitted.value, _KINDS if was is None else type(was)):
        return None
    bare = place.value.unit == "none" and isinstance(fitted.value, Length)
    if bare and not isinstance(was, Length):
        return None  # of how many of what it is can't be told
    value = Length(place.value.value, was.unit, words) if bare and isinstance(was, Length) else fitted.value
    return Heard(value, place.start, place.end, words)
