"""Follow-ups and corrections when there is nothing before them to change."""

from __future__ import annotations

from assistant.acts import Talk, act
from assistant.record import put_asked


@act("follow-up")
def follow_up(talk: Talk) -> None:
    """Ask the last question again with something changed."""
    put_asked(talk.record, "follow-up", _what(talk))


@act("correct")
def correct(talk: Talk) -> None:
    """Put right the one thing that was heard wrong."""
    put_asked(talk.record, "correct", _what(talk))


def _what(talk: Talk) -> str:
    if talk.conversation.last is None:
        return "What should I change? Nothing was asked before: ask a whole question."
    return f"What should I change about the {talk.conversation.last.topic.name}?"
