"""What is told to be remembered and is none of the values a job keeps: "remember the north wall is 32 feet" is noted."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant import acts, hearing
from assistant.record import Record
from intents.expressions import expression
from intents.talk import Said

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_REMEMBER = expression(
    r"\W*(?:please\W+|ok\W+|and\W+)?(?:remember|keep in mind|bear in mind|(?:do not|don['’]?t) forget)\W+(?:that\W+)?"
    r"((?:the|our|my|this|there(?:['’]s)?|it(?:['’]s)?|we(?:['’]ve)?|\w+ (?:wall|gable|window|door))\b.+)",
    re.IGNORECASE | re.DOTALL,
)


def noted_as_told(c: Conversation, record: Record, text: str) -> bool:
    """Note what a line that asks nothing wants remembered, where it came to no question and no value of the job.

    Asked about instead, it would be taken for a size of the next question.
    """
    found = _REMEMBER.fullmatch(text)
    if found is None or hearing.asks_too(text) or text.rstrip().endswith("?"):
        return False
    return acts.perform(c, record, Said("note", words={"note": found[1].strip()}), text)
