"""What a short line asks of the last answer: a value that stands beside it, or one of its marks; read off its page."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from assistant.also_asked import beside, mark_asked
from assistant.change_words import is_no_change
from assistant.names import by_its_name
from assistant.record import put_noted
from assistant.speech import spoken
from intents.question import Question
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

A_NAME = 2  # words that only name a value on the page: height?
LONGEST = 11  # words of such a line
# Another thing than the last answer is of, or a change of it.
_ANOTHER = re.compile(
    r"\b(?:other(?! (?:corner|cut|joint|setting))|another|next(?! (?:size|length))|different|new|north|south|east|west|lake|ramp"
    r"|front|back|if|instead|make|change|(?:left|right)[ -](?:side|wall|hand|end|one))\b",
    re.IGNORECASE,
)
_SETTING = re.compile(
    r"\W*(?:(?:and|so|what['’]?s|what is|whats|the|my)\W+)*(?:miter|mitre|saw setting|setting)\W*", re.IGNORECASE
)
_HALF_THERE = re.compile(r"\bhalf (?=(?:at|in|on|low|high|up|down|goes)\b)", re.IGNORECASE)  # no half of the answer
_SQUARES = re.compile(r"\bsquares\b", re.IGNORECASE)  # which have a waste in them


def asked_after(c: Conversation, record: Record, text: str) -> bool:
    """Whether a short line asks for a value, or a mark, that stands beside the last answer; then that is read."""
    if c.last is None or c.pending is not None:
        return False
    last = c.last.record
    if not last.get("answer") or len(text.split()) > LONGEST or _ANOTHER.search(text):
        return False
    if by_its_name(text, c.topics) is not None or _SQUARES.search(text):  # asked as a question of its own, with its working
        return False
    lines = mark_asked(last, text)
    if not lines and (is_no_change(text, [], c.last) or not numbers_in(_HALF_THERE.sub("", text))):
        lines = beside(last, last["topic"] or "", text)
    if not lines and _SETTING.fullmatch(text) and last["answer"]["name"] in ("saw setting", "miter"):
        lines = [f"{last['answer']['name']}: {last['answer']['text']}"]
    if len(text.split()) > A_NAME and _of_its_own(c, record, last, lines):
        return True
    if lines:
        put_noted(record, "explain", said_of(lines))
        record["also"] = [
            line for line in lines_of(last) if {f"{line['name']}: {line['text']}", f"{line['name']} {line['text']}"} & {*lines}
        ]
    return bool(lines)


def _of_its_own(c: Conversation, record: Record, last: Record, lines: list[str]) -> bool:
    """Whether the one value asked for is what another topic answers, from the same givens; then that is worked: the rake."""
    shown = [line for line in last["also"] if lines == [f"{line['name']}: {line['text']}"]]
    topic = c.topics.get(shown[0]["name"]) if len(shown) == 1 and c.last and c.last.times == 1 else None
    if topic is None or topic is c.last.topic:  # type: ignore[union-attr]
        return False
    question = Question(topic.name)
    ways = c.ways(question, c.last)
    result = ways[0].worked.working.result if len(ways) == 1 and ways[0].worked.working else None
    if result is None or result.text != shown[0]["text"]:
        return False
    c.finish(record, ways, question)
    return True


def lines_of(last: Record) -> list[dict[str, Any]]:
    """All the values of an answer that can be read back: itself, those beside it, its marks."""
    return [last["answer"], *last["also"], *last["marks"]]


def said_of(lines: list[str]) -> str:
    """Such values as they are spoken."""
    return spoken(". ".join(line[:1].upper() + line[1:] for line in lines))
