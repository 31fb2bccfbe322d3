"""A line that goes on from an answer, right after one that came to nothing: "nineteen mil" was no gap, and then "in inches".

The number of the line between was let fall, so "that" would be of an older answer than the person means; it is asked first.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from assistant.acts import CHANGES
from assistant.asked_back import asked_back, left_for_another
from assistant.pending import Pending
from assistant.record import Record, blank, put_asked
from assistant.said_over import places_of
from assistant.told_round import put_back, state_of
from assistant.waits import back_to_it
from intents.elsewhere import outside_of
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation

    Work = Callable[[Conversation, Record, str], bool]

_FIRST = "I did not take"
_CHANGES = expression(r"\W*(?:and an?|and the|less|minus|plus|add|take|without|with an?)\b", re.IGNORECASE)  # less the lap
_SHARES = expression(r"\b(?:half|third|quarter|twice|double) (?:of )?(?:that|it|them)\b", re.IGNORECASE)
_IN_UNIT = expression(  # could you give me that in feet and inches
    r"\W*(?:(?:and|so|ok|please|could you|can you|would you|give|tell|show|me|us|what|is|would|that|it|be|have|put|say)\W+)*"
    r"(?:in|to|into|as) (?:feet and inches|feet|foot|inches|mm|millimet(?:re|er)s|cm|centimet(?:re|er)s|met(?:re|er)s|metric"
    r"|kilos|kilograms|kg|pounds|square (?:feet|met(?:re|er)s)|fahrenheit|celsius)(?: please| too| instead)?\W*",
    re.IGNORECASE,
)
_EXPLICIT = ("goes_back", "back_and_change")  # which say what they go on from


def goes_on_from(c: Conversation, record: Record, text: str, works: Sequence[Work]) -> bool:
    """Whether one of these takes the line as of the last answer; where a line between was let fall, that is asked about."""
    if left_for_another(c, record, text) or asked_back(c, record, text) or back_to_it(c, record, text):
        return True
    before = let_fall(c) or _asked_of_another(c, text)
    if before is None or c.last is None:
        return any(work(c, record, text) for work in works)
    state, kept = state_of(c), c.shown
    trial = blank(record["heard"], record["via"], record["job"], record["file"])
    took = next((work for work in works if work(c, trial, text)), None)
    put_back(c, state)
    c.shown = kept
    if (took is None and not _IN_UNIT.fullmatch(text)) or (took is not None and took.__name__ in _EXPLICIT):
        return took is not None and took(c, record, text)
    answer = c.last.record["answer"]
    said, shown = before["heard"].strip(), f"{answer['name']} {answer['text']}"
    whose = f"Is this of the answer before it, {shown}? Say yes, or say that line again in other words."
    put_asked(record, "follow-up", f"{_FIRST} “{said}”. {whose}")
    c.pending = Pending(lines=[text])
    return True


def _asked_of_another(c: Conversation, text: str) -> Record | None:
    """The line right before, where what it means is still asked, and it is of another topic than the answer put in a unit."""
    last = c.records[-1] if c.records else None
    if last is None or c.last is None or c.pending is None or c.pending.asked is None or not c.last.record.get("answer"):
        return None
    other = c.pending.asked.topic is not c.last.topic and last["outcome"] == "asks" and bool(places_of(last["heard"]))
    return last if other and _IN_UNIT.fullmatch(text) else None


def let_fall(c: Conversation) -> Record | None:
    """The line right before, where it told a number, came to nothing, and nothing waits for a reply to it."""
    last = c.records[-1] if c.records else None
    if last is None or c.pending is not None or c.last is None or not c.last.record.get("answer"):
        return None
    if outside_of(last["heard"]) is not None or all(kept is not c.last.record for kept in c.records):
        return None  # or this very line told which it was
    told = bool(places_of(last["heard"]) or _CHANGES.match(last["heard"]) or _SHARES.search(last["heard"]))
    told = told or last["topic"] in CHANGES  # now only once: what was to be changed is still asked
    fell = last["outcome"] in ("asks", "declined") and not str(last["ask"]).startswith(_FIRST) and told
    return last if fell else None
