"""Talk about the job itself: remembering, recalling, explaining, comparing, marking and finding.

An act is declared like a topic, by a function whose signature says what to look for; it fills in the record.
"""

from __future__ import annotations

import pkgutil
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING, Any

from assistant.ways import ways_of
from intents.question import Question
from solvers.registry import Registry, Topic

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

CHANGES = frozenset(("follow-up", "correct"))  # acts that work the last question again, changed
ACTS = Registry()


@dataclass(slots=True)
class Talk:
    """One line that is an act: the conversation it belongs to, the record to fill, and how it was read."""

    conversation: Conversation
    record: Record
    question: Question
    text: str


def act(name: str) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Register a function(talk, **givens) as the act `name`."""
    return ACTS.topic(name, "job")


@cache
def load() -> dict[str, Topic]:
    """All acts by name; imports every module of this package once."""
    for module in pkgutil.iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return ACTS.topics


def perform(conversation: Conversation, record: Record, question: Question, text: str) -> None:
    """Do the act a line was read as."""
    topic = load()[question.topic]
    givens: dict[str, Any] = {given.name: given.value for given in ways_of(question, topic.parameters)[0].values()}
    topic.work(Talk(conversation, record, question, text), **givens)
