"""What the assistant says to a line, at the end of a conversation."""

from __future__ import annotations

from typing import Any

from assistant.conversation import Conversation


def last(*lines: str) -> dict[str, Any]:
    """The record of the last of the lines, said one after the other."""
    conversation = Conversation()
    return [conversation.answer(line) for line in lines][-1]
