"""What the assistant says to a line, or to each line of a conversation."""

from __future__ import annotations

from typing import Any

from assistant.conversation import Conversation


def records(*lines: str) -> list[dict[str, Any]]:
    """The record of each of the lines, said one after the other."""
    conversation = Conversation()
    return [conversation.answer(line) for line in lines]


def last(*lines: str) -> dict[str, Any]:
    """The record of the last of the lines, said one after the other."""
    return records(*lines)[-1]
