"""Call out: the marks of the last layout one at a time, for somebody with a pencil and both hands on the pole."""

from __future__ import annotations

from assistant.acts import Talk, act
from assistant.record import put_asked, put_noted
from assistant.speech import spoken
from solvers.quantities import Quantity

NO_MARKS = "Which marks? Ask for a layout first, like “9 foot wall, 7 inch exposure, lay out the courses”."


@act("call out")
def call_out(talk: Talk) -> bool | None:
    """Call a mark of the last layout: the first, the next, the one before, again, the last, or one by its number."""
    record = talk.conversation.last.record if talk.conversation.last else None
    marks = record["marks"] if record else []
    if not marks:
        if "turn" not in talk.said.words:
            return False  # "course 5" may be a question
        put_asked(talk.record, "call out", NO_MARKS)
        return None
    shown = talk.conversation.mark_called
    turns = {"first": 0, "next": shown + 1, "back": shown - 1, "again": max(shown, 0), "last": len(marks) - 1}
    at = turns.get(talk.said.words.get("turn", ""), _numbered(talk))
    if not 0 <= at < len(marks):
        _put(talk, f"There are {len(marks)} marks, from {_reading(marks[0])} to {_reading(marks[-1])}")
        return None
    talk.conversation.mark_called = at
    rest = len(marks) - 1 - at
    more = "that is the last" if not rest else f"{rest} more"
    named = str(marks[at]["name"]).startswith("mark")
    _put(talk, f"{'' if named else f'Mark {at + 1}, '}{_reading(marks[at])}; {more}")
    return None


def _numbered(talk: Talk) -> int:
    """The mark asked for by its number, counted from 0; -1 when none was."""
    for reading in talk.said.values.get("mark", ()):
        if isinstance(reading.value, Quantity) and reading.value.value.denominator == 1:
            return int(reading.value.value) - 1
    return -1


def _reading(mark: dict[str, object]) -> str:
    return f"{mark['name']}, {mark['text']}"


def _put(talk: Talk, words: str) -> None:
    put_noted(talk.record, "call out", spoken(words))
