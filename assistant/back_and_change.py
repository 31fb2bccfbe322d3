"""Back to a value of before, and something else besides: "back to sixty but 20 high", "back to plumb, at 7/12".

The line is taken as the two changes it tells, one after the other; where the one or the other is none, nothing is changed.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.line_apart import without_opening
from assistant.record import become, blank
from assistant.told_round import put_back, state_of
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 100  # characters of such a line
_LEAD = r"\W*(?:(?:ok|okay|right|so|now|and|then|no|actually|go|going)[ ,]+)*"
_BACK = expression(rf"{_LEAD}(?P<line>back to .+)", re.IGNORECASE)
_FOOTER = expression(r"[ -]foot(?:er)\b", re.IGNORECASE)  # back to the 18 footer
_JOINS = (expression(r"[ ,;]+(?:but|only|with)[ ,]+|[,;:] ?", re.IGNORECASE), expression(r" and ", re.IGNORECASE))


def back_and_change(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes back to a value and changes another; then the question is answered with both."""
    last = c.last
    found = _BACK.fullmatch(text.strip(" .!?")) if last is not None and c.pending is None and len(text) <= LONGEST else None
    if last is None or found is None or not last.record.get("answer"):
        return False
    pairs = [join.split(found["line"], maxsplit=1) for join in _JOINS]
    return any(_both(c, record, pair[0], pair[1], last) for pair in pairs if len(pair) > 1)


def _both(c: Conversation, record: Record, back: str, rest: str, last: Asked) -> bool:
    """Whether both parts of a line are changes of the last question, which is then answered with both."""
    before = state_of(c)
    trial = record
    for part in (back, rest):
        trial = blank(part, record["via"], c.job, record["file"])
        c.take(trial, without_opening(_FOOTER.sub(" foot", part), c.last))
        read_off = part is rest and (trial["outcome"], trial["topic"]) == ("noted", "explain")  # how long a ladder do I want
        if not read_off and (trial["outcome"] != "answered" or trial["topic"] != last.topic.name or c.pending is not None):
            put_back(c, before)
            return False
    become(record, trial)
    if c.last is not None and trial["outcome"] == "answered":
        c.last.record = record
    return True
