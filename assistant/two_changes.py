"""A line that changes two things of the question before it, each in words of its own: "make the sill two hundred and put it back
to a quarter to the foot", "finder says it's 100 not 90, and do it in 5 pieces".

Where such a line came to nothing, or to an answer without all that it tells, it is taken in its two parts, one after the other;
each must change one thing alone, and no number of it may be let fall.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.dropped_first import dropped_first
from assistant.heard_all import unheard
from assistant.likely_change import as_is_likely
from assistant.line_apart import without_opening
from assistant.pending import Asked
from assistant.plain_lines import told_otherwise
from assistant.record import Record, become, blank
from assistant.said_over import places_of
from assistant.several import told_of
from assistant.tail_clauses import look_past_remarks
from assistant.told_round import State, may_take, put_back, state_of
from intents.elsewhere import outside_of
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation

LONGEST = 120  # characters of such a line
MOST = 1  # place at which it is parted, the first with a number on either side: of 9,132 lines two were good by a second
_PARTS = expression(r"\s*[,;.]?\s+(?:and|but|with|also|plus|then|n)\s+(?:then |also |now )?|\s*[,;.]\s+", re.IGNORECASE)
_NOT = expression(r"(?:not|no|instead|rather)\b", re.IGNORECASE)
_DROPS = expression(
    r"\b(?:forget|no|without|skip|drop|lose|losing|leave|leaving|gone|just|scrap|ditch|never mind|take|taking|isn['’]?t|not)\b",
    re.IGNORECASE,
)
_BACK = expression(r"\W*(?:(?:ok|okay|so|right|anyway)\W+)*back\b", re.IGNORECASE)


def two_changes(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line in its two parts, where only so all that it tells is changed."""
    last = before[1]
    if dropped_first(c, record, text, before):
        return
    if before[0] is not None or not isinstance(last, Asked) or not last.record.get("answer") or len(text) > LONGEST:
        return
    if len(places_of(text)) < 2 or _BACK.match(text) or (record["outcome"] == "declined" and outside_of(text) is not None):
        return
    if record["outcome"] not in ("asks", "declined") and not _lacks(c, record, text, last):
        return
    if "°" in str(record["ask"]):
        return  # all of it is taken, on one scale or the other
    if not may_take(c, text):
        return
    after = state_of(c)
    put_back(c, before)
    if not in_two(c, record, text, last):
        put_back(c, after)


def in_two(c: Conversation, record: Record, text: str, last: Asked, before: int = 0) -> bool:
    """Whether a line, taken in two parts after a question, changes two things of it; then the record is of that.

    `before` is what was taken before it came to this question.
    """
    state = state_of(c)
    for first, second in _parted(text):
        if not may_take(c, first + second, before):
            break
        put_back(c, state)
        one = _changed(c, record, first, last)
        between = c.last
        two = _changed(c, record, second, between) if one is not None and between is not None else None
        if one is None or two is None or c.last is None or between is None or between.changed & c.last.changed:
            continue
        become(record, two)
        record["say"] = _first_said(one, two) + record["say"]
        c.last.record, c.last.changed = record, c.last.changed | between.changed
        return True
    put_back(c, state)
    return False


def _lacks(c: Conversation, record: Record, text: str, last: Asked) -> bool:
    """Whether an answer of the same topic has not all that the line tells, or fewer of a list than there were."""
    now = c.last
    if record["outcome"] != "answered" or now is None or now is last or now.topic is not last.topic:
        return False
    if unheard(text, [*now.givens.values(), *last.givens.values()]):  # which 18 was, of 22 and not 18
        return True
    if _DROPS.search(text):
        return False
    lists = [(given.value, now.givens[name].value) for name, given in told_of(last).items() if name in now.givens]
    return any(isinstance(was, tuple) and isinstance(is_, tuple) and len(is_) < len(was) for was, is_ in lists)


def _parted(text: str) -> Iterator[tuple[str, str]]:
    """The two parts of a line, each with a number."""
    tried = 0
    for found in _PARTS.finditer(text):
        first, second = text[: found.start()].strip(), text[found.end() :].strip()
        if tried < MOST and places_of(first) and places_of(second) and not _NOT.match(second):
            tried += 1
            yield first, second


def _changed(c: Conversation, record: Record, part: str, last: Asked) -> Record | None:
    """The record of a part that changes one thing of a question and nothing else; None where it does not."""
    state, trial = state_of(c), blank(part, record["via"], c.job, record["file"])
    c.take(trial, without_opening(part, last))
    if trial["outcome"] != "answered":
        look_past_remarks(c, trial, part, state)
        as_is_likely(c, trial, part, state)
    now = c.last
    if trial["outcome"] != "answered" or c.pending is not None or now is None or now is last or now.topic is not last.topic:
        return None
    gone = [name for name in told_of(last) if name not in now.givens and not _instead(now, last, name)]
    if (
        gone
        or len(told_otherwise(now, last)) != 1
        or unheard(part, [*now.givens.values(), *last.givens.values()])
        or now.times != last.times
    ):
        return None
    return trial


def _instead(now: Asked, last: Asked, name: str) -> bool:
    """Whether what is told otherwise takes the place of a given that is gone: so much to the foot, of a slope in percent."""
    return any(name in last.topic.parameter(other).slot.instead for other in told_otherwise(now, last))


def _first_said(one: Record, two: Record) -> str:
    """What the first part changed, said as it was, before what the second did."""
    said = str(one["say"]).partition(". ")[0]
    return f"{said}. " if said.startswith("With ") and said not in str(two["say"]) else ""
