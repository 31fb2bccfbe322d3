"""Choices that were stated beside no question: "fascia is square to the rake", "the trim is PVC".

They hold no number, so no name keeps them; the words stay in mind, and a question that leaves the choice out reads it
there. What the question says itself goes first, and what was said last before what was said earlier.
"""

from __future__ import annotations

import re
from enum import Enum
from typing import TYPE_CHECKING, Any

from assistant.record import Record, listed, put_noted
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from intents.talk import numbers_in
from solvers.registry import Topic
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation

MOST = 6  # choices kept in mind
LONGEST = 80  # characters of a line that states one
# Choices of how a thing is built; how a question is asked is none that holds for the next.
BUILT = frozenset("fascia material species grain ends screen measured".split())
_STATES = expression(r"\b(?:is|are|was|were|will be|stays?)\b|\w's\b|\w’s\b", re.IGNORECASE)
_ASKS = expression(r"\?|\b(?:how|what|which|when|where|why|can|could|would|does|do|did)\b|^\W*(?:is|are|was|were)\b", re.I)
_TRADE = expression(r"\b(?:fascias?|trim|boards?|siding|cladding|flashings?|spring|overhang|gaps?|screen|pieces|panels?)\b", re.I)


def states_choice(c: Conversation, text: str) -> bool:
    """Whether a line, or part of one, states a choice and nothing else."""
    return _named_in(c, text) != []


def keep_choice(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line states a choice; if so it stays in mind, and that is said."""
    named = _named_in(c, text)
    if named:
        remember_choice(c, text)
        put_noted(record, "remember", f"Kept in mind: {listed(named, 'and')}")
    return bool(named)


def remember_choice(c: Conversation, text: str) -> None:
    """Keep a line that states a choice in mind, the last first."""
    c.chosen = [text, *(line for line in c.chosen if line != text)][:MOST]


def _named_in(c: Conversation, text: str) -> list[str]:
    """The choices a line states, each with what it is a choice of."""
    states = len(text) <= LONGEST and _STATES.search(text) and _TRADE.search(text) and not _ASKS.search(text)
    if not states or numbers_in(_plain(text)):
        return []
    if any(q.topic in text.lower() for q in c.read(text).questions):
        return []  # the miter for the rake return, fascia's plumb: that is asked
    found: dict[str, None] = {}
    for topic in c.topics.values():
        for parameter in _built(topic):
            more = read_as(text, topic.name, c.parameters)
            if parameter.name in more.givens and len(more.givens) == 1 and _all_told(more):
                found[f"{parameter.label} {_value(parameter.kind, more.givens[parameter.name].value).value}"] = None
    return list(found)[:1]


def _plain(text: str) -> str:
    return re.sub(r"\b(?:square|one)\b", "", text, flags=re.IGNORECASE)  # no fascia of 90°, and this one is not 1


def _all_told(more: Question) -> bool:
    return bool(more.words) and not (more.unknown or more.unplaced)


def _built(topic: Topic) -> list[Any]:
    return [p for p in topic.parameters if p.name in BUILT and issubclass(p.kind, Enum)]


def _value(kind: Any, value: Any) -> Any:
    return kind[value] if isinstance(value, str) else value


def with_choices(c: Conversation, topic: Topic, givens: dict[str, Given]) -> dict[str, Given]:
    """The givens, with the choices that stay in mind where none was said."""
    found = dict(givens)
    for parameter in _built(topic) if c.chosen else ():
        for text in c.chosen if parameter.name not in found else ():
            heard = read_as(text, topic.name, c.parameters).givens.get(parameter.name)
            if heard is not None and parameter.name not in found:
                found[parameter.name] = Given(parameter.name, _value(parameter.kind, heard.value), "earlier")
    return found
