"""Talk about the job itself: remembering, recalling, explaining, comparing, marking and finding.

An act is one function, registered under the topic of its rule in grammars/job.jsgf; it fills in the record. One that
finds the line is not its business after all returns False, and the line is read as a question.
"""

from __future__ import annotations

import pkgutil
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING

from intents.talk import Said
from solvers.registry import Registry, Topic

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

CHANGES = frozenset(("follow-up", "correct"))  # acts that work the last question again, changed
VALUES = frozenset(("remember", "compare"))  # acts whose words could also be the piece that was asked for
BEFORE = frozenset(("follow-up", "correct", "explain", "compare"))  # acts about an answer before
ACTS = Registry()


@dataclass(slots=True)
class Talk:
    """One line that is an act: the conversation it belongs to, the record to fill, how it was read, and its words."""

    conversation: Conversation
    record: Record
    said: Said
    text: str


def act(name: str, family: str = "job") -> Callable[[Callable[..., bool | None]], Callable[..., None]]:
    """Register a function(talk) as the act `name`."""
    return ACTS.topic(name, family)  # type: ignore[return-value]


@cache
def load() -> dict[str, Topic]:
    """All acts by name; imports every module of this package once."""
    for module in pkgutil.iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return ACTS.topics


def perform(conversation: Conversation, record: Record, said: Said, text: str) -> bool:
    """Do the act a line was read as; False when the line is none of its business, or it had nothing to say of it."""
    done: bool | None = load()[said.topic].work(Talk(conversation, record, said, text))  # type: ignore[func-returns-value]
    return done is not False and bool(record["say"] or record["ask"])
