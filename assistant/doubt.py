"""A recording as a line of the conversation: what was heard with little sureness is worked both ways."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.record import Record, blank, put_declined

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ears import Heard


def answer_heard(conversation: Conversation, heard: Heard, file: str) -> Record:
    """The record of what was heard; speech that was refused is declined with the ear's reason."""
    if heard.refused or not heard.text:
        record = blank(heard.text, "file", conversation.job, file)
        put_declined(record, heard.reason or "I heard no words in that")
        return record
    doubtful = [word for word in heard.words if word.alternatives]
    record = conversation.answer(heard.text, "file", file, alternatives=[
        (word.word, other) for word in doubtful for other in word.alternatives
    ])  # fmt: skip
    record["doubt"] = [
        {"word": word.word, "confidence": round(word.confidence, 3), "or": list(word.alternatives)} for word in doubtful
    ]
    return record
