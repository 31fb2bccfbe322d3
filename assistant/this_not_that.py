"""A number put right while a question is open, which says what it takes the place of: "2.7 high not 2.4", "25 foam, not 50".

The old number tells which given is meant, so that the new one never passes for the piece that is waited for.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.layer_changes import layers_changed
from assistant.openings_told import still_asked
from assistant.said_over import Place, places_of
from assistant.units_kept import UNITS, in_one_system
from assistant.while_open import anew
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Heard, Question
from intents.talk import Said, numbers_in, talk_of
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending
    from assistant.record import Record
    from assistant.ways import Way

_SPLIT = expression(r"\s*[,;:]\s*|\s+(?:but|it's|its|it is)\s+", re.IGNORECASE)


def this_not_that(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a line gives a number of the open question another value, and says what it was; then that is asked on with."""
    found = _new_and_old(talk_of(text, c.places))
    if found is None or pending.asked is None:
        return False
    ways: list[Way] = []
    question = None
    for base in [way.asked for way in pending.ways or pending.alike] or [pending.asked]:
        if (changed := _changed(c, base, *found)) is not None:
            question = changed
            ways += c.ways(changed, base)
    if question is None:
        return False
    c.finish(record, in_one_system(ways), question)
    return True


def without_old(c: Conversation, text: str, pending: Pending) -> str:
    """The line without a number that it says was never meant, where nothing that was told has it: "8, not 6" is 8."""
    found = _new_and_old(talk_of(text, c.places)) if pending.wanted else None
    known = pending.asked.givens.values() if pending.asked is not None else ()
    return text if found is None or not unheard(found[2], known) else found[0]


def unit_told(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a line is the unit alone of a number that was to be converted: how many feet is 4,200 | millimetres."""
    unit = text.strip(" .!?").lower()
    if pending.asked is None or pending.asked.topic.name != "conversion" or pending.wanted != "value" or unit not in UNITS:
        return False
    said = next(iter(still_asked(c, "conversion")), "")
    places = places_of(said)
    if len(places) != 1 or places[0].value.unit != "none":
        return False
    c.take(record, f"{said[: places[0].end]} {unit}{said[places[0].end :]}")
    return True


def _new_and_old(said: Said | None) -> tuple[str, Place, str] | None:
    """What a correction says of the new number, that number, and the old one; None where it says no such thing."""
    if said is None or said.topic != "correct":
        return None
    old, new = said.words.get("old", ""), said.words.get("rest", "")
    if "swap" in said.words:
        parts = _SPLIT.split(said.words["swap"], maxsplit=1)
        old, new = (parts[0], parts[1]) if len(parts) > 1 else ("", "")
    told, places = places_of(old), places_of(new)
    return (new, places[0], old) if len(told) == len(places) == 1 else None


def _changed(c: Conversation, asked: Asked, text: str, new: Place, old: str) -> Question | None:
    """The open question with the one given that had the old value at the new one."""
    topic = asked.topic
    more = read_as(text, topic.name, c.parameters)
    layered = layers_changed(text, old, asked, more)
    if layered:
        return layered[0]
    was, rows = places_of(old)[0].value, numbers_in(text)
    had = [n for n, given in asked.givens.items() if given.source != "assumed" and _is_that(given.value, was)]
    if len(had) != 1 or len(rows) != 1:
        return None
    value = anew(rows[0], topic.parameter(had[0]), asked.givens[had[0]].value, text[new.start : new.end])
    if value is None:
        return None
    heard = Heard(value, 0, len(text), text[new.start : new.end])
    return replace(Question(topic.name, score=1.0), givens={had[0]: heard})


def _is_that(value: object, was: Quantity) -> bool:
    """Whether a given has the value that is said to be what it was, in its unit or none."""
    return isinstance(value, Quantity) and value.value == was.value and was.unit in ("none", value.unit)
