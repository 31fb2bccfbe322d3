"""The last two answers put together: the lake wall's area and the north wall's, "add the two together"; and how much more one is.

Only where the line before asked the same of another thing: a value that was put right is no second one.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.several import told_of
from assistant.speech import spoken
from intents.question import Question

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_LEAD = r"(?:(?:and|so|ok|now|then|what(?:'?s| is| are| about)|how much (?:is|are)|the total (?:of|for)|total (?:of|for))[ ,]+)*"
_TWO = (
    r"(?:(?:the|those|these) two|both|them both|them|the two of them|both of (?:them|those)"
    r"|both (?:the )?(?:walls|sides|ends|gables|rakes))"
)
_LINE = re.compile(
    rf"{_LEAD}(?:(?:add|put) {_TWO} (?:together|up)|{_TWO} (?:added )?together|{_TWO} (?:added up|combined|in all|in total)"
    r"|(?:the )?total (?:of|for) (?:the two|both)(?: of them)?)(?: then| now| please)*",
    re.IGNORECASE,
)
_MORE = re.compile(
    r"(?:(?:and|so|ok|then)[ ,]+)*how much (?:more|less|longer|shorter|deeper|bigger|smaller|higher|wider|thicker|extra)"
    r"(?: (?:is|was|does|would) (?:that|it)(?: (?:be|make|come to))?)?(?: than before)?",
    re.IGNORECASE,
)
_ANOTHER = re.compile(
    r"\b(?:other|another|beside|next|second|lake|ramp|north|south|east|west|front|back|left|right|gable|one)\b", re.IGNORECASE
)
_NO_SUM = ("deg", "in12", "percent", "degC", "degF", "yesno", "word", "ratio")  # which nobody adds
_PAIR = "rake length"
_PUT_RIGHT = re.compile(r"\W*(?:no|nope|sorry|i meant|i said|actually|wait)\b", re.IGNORECASE)


def both_together(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts the last two answers together, or asks how far they are apart; then that is worked."""
    line = text.strip(" .!?").replace("’", "'")
    together, apart = _LINE.fullmatch(line), _MORE.fullmatch(line)
    before = _before(c) if (together or apart) and c.pending is None else None
    if before is None or c.last is None:
        return False
    heard = c.last.record.get("heard", "")
    if together and (_PUT_RIGHT.match(heard) or not (_ANOTHER.search(heard) or c.last.text == heard)):
        return False
    if together and c.last.topic.name == _PAIR and not re.search(r"\b(?:add|two|put)\b", line, re.IGNORECASE):
        return False  # both rakes of that gable
    value = Fraction(str(before["value"]))
    last = replace(c.last, plus=value if together else -value)
    c.finish(record, [c.worked(last, told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"{'With' if together else 'Against'} the {before['text']} before. ") + record["say"]
    return True


def _before(c: Conversation) -> dict[str, object] | None:
    """The answer before the last, where it is of the same kind."""
    now = c.last.record.get("answer") if c.last else None
    answered = [kept for kept in c.records if kept["outcome"] == "answered" and kept is not (c.last.record if c.last else None)]
    was = answered[-1] if answered else None
    if not now or was is None or c.last is None or was["topic"] != c.last.topic.name or now["value"] is None:
        return None
    same = was["answer"]["unit"] == now["unit"] and was["answer"]["name"] == now["name"]
    return was["answer"] if same and now["unit"] not in _NO_SUM else None
