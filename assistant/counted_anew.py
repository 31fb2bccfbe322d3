"""What was counted and then priced, counted again with something else in it: how many with no waste, how many at 5 inches."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.record import Record, become, blank
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.per_what import LOADS
from intents.question import Question
from intents.talk import numbers_in
from solvers.registry import Topic

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_HOW_MANY = expression(r"\W*\bhow many\b(?: (?:is|are|would|do|will)\b(?: (?:that|it|i|we)\b)*(?: (?:be|need))?)?\W*", re.I)
_NO_WASTE = expression(r"\b(?:no|without(?: the| any)?|zero) waste\b", re.I)
_OTHER = expression(
    r"\b(?:other|another|next|second|different|new|north|south|east|west|lake|ramp|front|back|left|right|whole|rest|total)\b",
    re.IGNORECASE,
)


def counted_again(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """The question whose count was priced, where one of the same topic lacks what that was given."""
    counted = _counted(c)
    if counted is None or counted.topic is not topic or question.unplaced or _OTHER.search(text):
        return None
    if not c.ways(question)[0].worked.asks:
        return None
    return counted if c.ways(question, counted)[0].worked.working else None


def counted_anew(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many there are with something changed of the question that was priced; then that is worked."""
    counted, found = _counted(c), _HOW_MANY.search(text)
    changed = bool(numbers_in(text)) or _NO_WASTE.search(text) is not None
    if counted is None or found is None or c.pending is not None or not changed or _OTHER.search(text):
        return False
    best = next((q for q in c.read(text).questions if q.score > 0), None)
    if best is not None and best.topic != counted.topic.name and not (best.lacking or best.missing):
        return False
    state = state_of(c)
    c.last, trial = counted, blank(text, record["via"], c.job, record["file"])
    c.take(trial, f"{text[: found.start()]} {text[found.end() :]}".strip())
    if trial["outcome"] == "answered" and trial["topic"] == counted.topic.name:
        become(record, trial)
        if c.last is not None:
            c.last.record = record
        return True
    put_back(c, state)
    return False


def _counted(c: Conversation) -> Asked | None:
    """The question before the price that was answered last, where that was of its count."""
    if c.last is None or c.last.topic.name not in LOADS or not c.last.record.get("answer"):
        return None
    before = next((asked for asked in reversed(c.earlier) if asked.topic.name not in LOADS), None)
    return before if before is not None and before.record["answer"]["unit"] in ("count", "square") else None
