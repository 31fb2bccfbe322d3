"""Follow-ups and corrections that name nothing to change, or have nothing before them."""

from __future__ import annotations

from enum import Enum

from assistant.acts import Talk, act
from assistant.record import put_asked

NOTHING = "What should I change? Nothing was asked before this: ask a whole question."


@act("follow-up")
def follow_up(talk: Talk) -> None:
    """Ask the last question again with something changed."""
    _ask(talk)


@act("correct")
def correct(talk: Talk) -> None:
    """Put right the one thing that was heard or said wrong, and answer again."""
    _ask(talk)


def _ask(talk: Talk) -> None:
    last = talk.conversation.last
    if last is None:
        put_asked(talk.record, talk.said.topic, NOTHING)
        return
    sizes = [parameter for parameter in last.topic.parameters if not issubclass(parameter.kind, Enum)] or last.topic.parameters
    needs = " or ".join(dict.fromkeys(f"the {parameter.label}" for parameter in sizes[:3]))
    put_asked(talk.record, talk.said.topic, f"What should I change about the {last.topic.name}: {needs}?")
