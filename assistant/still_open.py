"""A line that goes on from an answer, right after one that came to nothing: "nineteen mil" was no gap, and then "in inches".

The number of the line between was let fall, so "that" would be of an older answer than the person means; it is asked first.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from itertools import takewhile
from typing import TYPE_CHECKING

from assistant.acts import CHANGES
from assistant.asked_back import asked_back, left_for_another
from assistant.change_learned import model, numbers_of, of_line
from assistant.pending import Asked, Pending
from assistant.record import Record, become, blank, given_lines, put_asked
from assistant.said_over import places_of
from assistant.told_round import State, put_back, state_of
from assistant.waits import back_to_it
from assistant.ways import differences
from intents.elsewhere import outside_of
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation

    Work = Callable[[Conversation, Record, str], bool]

STAYS = 0.5  # how likely a line that was let fall must be about the question before it, for its loss to be asked about
_FIRST, _AGAIN = "I did not take", "Do you mean the "
_CHANGES = expression(r"\W*(?:and an?|and the|less|minus|plus|add|take|without|with an?)\b", re.IGNORECASE)  # less the lap
_DIFFERS = expression(r"\bsame\b.{0,24}\b(?:but|except|without|only)\b|\b(?:but|and) (?:no|without)\b", re.IGNORECASE)
_SEVERAL = expression(
    r"\b(?:both|the pair|all (?:of )?(?:them|three|four|round)|(?:the )?other (?:side|one|end|wall|gable|half|slope)"
    r"|same again|as well)\b",
    re.IGNORECASE,
)
_SHARES = expression(r"\b(?:half|third|quarter|twice|double) (?:of )?(?:that|it|them)\b", re.IGNORECASE)
_IN_UNIT = expression(  # could you give me that in feet and inches
    r"\W*(?:(?:and|so|ok|please|could you|can you|would you|give|tell|show|me|us|what|is|would|that|it|be|have|put|say)\W+)*"
    r"(?:in|to|into|as) (?:feet and inches|feet|foot|inches|mm|millimet(?:re|er)s|cm|centimet(?:re|er)s|met(?:re|er)s|metric"
    r"|kilos|kilograms|kg|pounds|square (?:feet|met(?:re|er)s)|fahrenheit|celsius)(?: please| too| instead)?\W*",
    re.IGNORECASE,
)
_BACK = expression(r"\bback\b", re.IGNORECASE)  # to the panels: it says itself whose it is
_EXPLICIT = ("goes_back", "back_and_change")  # which say what they go on from

_DOUBTED = "Did you say "


def goes_on_from(c: Conversation, record: Record, text: str, works: Sequence[Work]) -> bool:
    """Whether one of these takes the line as of the last answer; where a line between was let fall, that is asked about."""
    if left_for_another(c, record, text) or asked_back(c, record, text) or back_to_it(c, record, text):
        return True
    before = let_fall(c) or _asked_of_another(c, text)
    if before is not None and before["heard"].strip() == text.strip() and str(before["ask"]).startswith(_FIRST):
        before = None  # a yes takes that very line
    if before is None or c.last is None:
        return any(work(c, record, text) for work in works)
    state, kept = state_of(c), c.shown
    trial = blank(record["heard"], record["via"], record["job"], record["file"])
    took = next((work for work in works if work(c, trial, text)), None)
    put_back(c, state)
    c.shown = kept
    if (took is None and not _IN_UNIT.fullmatch(text)) or (took is not None and took.__name__ in _EXPLICIT):
        return took is not None and took(c, record, text)
    _ask_whose(c, record, text, before, c.last)
    return True


def hold_to_what_fell(c: Conversation, record: Record, text: str, before: State) -> None:
    """Ask whose change a line is that changed the answer before, where the line between was let fall though such lines are
    mostly of that answer: "put two at every spot", and then "open it out to 16 inches". A correction says that line over."""
    pending, last = before[:2]
    if not isinstance(last, Asked) or c.last is None or record["outcome"] != "answered":
        return
    changed = c.last.changed
    if isinstance(pending, Pending) and (
        _takes_what_is_doubted(record, pending) or _goes_on_without(record, pending, text, changed)
    ):
        put_back(c, before)
        asked = blank(text, record["via"], c.job, record["file"])
        put_asked(asked, last.topic.name, pending.question, given_lines(last.topic, last.givens.values()))
        become(record, asked)
        return
    if isinstance(pending, Pending) and any(_same_givens(way.asked, c.last) for way in pending.ways):
        return  # a yes settled it
    other = isinstance(pending, Pending) and not pending.question.startswith(_AGAIN)
    if isinstance(pending, Pending) and other and (pending.asked is None or pending.asked.topic is last.topic or pending.ways):
        return  # what is asked is of that answer itself
    fell = let_fall(c, last)
    if fell is None or c.last is last or _said_over(fell, text):
        return
    again = isinstance(pending, Pending) and pending.question.startswith(_AGAIN)  # which was asked, as such lines mostly are
    takes = _carried(c.last, last) or (again and any(given["from"] == "earlier" for given in record["givens"]))
    if not (c.last.changed or again if record["topic"] == last.topic.name else takes):
        return
    if _BACK.search(text) or (not again and _stays(c, fell["heard"], last) < STAYS):
        return  # or what fell was chat, or of another thing
    put_back(c, before)
    asked = blank(text, record["via"], c.job, record["file"])
    _ask_whose(c, asked, text, fell, last)
    become(record, asked)


def _same_givens(one: Asked, other: Asked) -> bool:
    mine, theirs = ({name: given.value for name, given in asked.givens.items()} for asked in (one, other))
    return mine == theirs


def _goes_on_without(record: Record, pending: Pending, text: str, changed: frozenset[str]) -> bool:
    """Whether it is asked whose a line was, and this one takes over what that line may have changed."""
    if not pending.lines or text.strip() in pending.lines:
        return False
    if pending.question.startswith(_DOUBTED):  # for or four, which was not said yet: a line that tells another number is of that
        heard = {place.value.value for line in pending.lines for place in places_of(line)}
        return bool(changed) and any(place.value.value not in heard for place in places_of(text))
    return pending.question.startswith(_FIRST) and any(given["from"] == "earlier" for given in record["givens"])


def _takes_what_is_doubted(record: Record, pending: Pending) -> bool:
    """Whether another question took over a value of which it is still asked what it is: the pitch of that same roof."""
    if len(pending.ways) < 2 or pending.asked is None or record["topic"] == pending.asked.topic.name:
        return False
    doubted = {pending.asked.topic.parameter(name).label for name in differences(pending.ways)}
    return any(given["from"] == "earlier" and given["name"] in doubted for given in record["givens"])


def _carried(now: Asked, last: Asked) -> bool:
    """Whether a question took the answer before it for one of its givens: how many strips of that."""
    text = last.record["answer"]["text"]
    taken = any(getattr(given.value, "text", None) == text for given in now.givens.values())
    return taken and text not in now.record.get("heard", "")


def _ask_whose(c: Conversation, record: Record, text: str, fell: Record, last: Asked) -> None:
    """Ask whether a line is of the last answer, though the one between was not taken; a yes takes it so."""
    answer = last.record["answer"]
    whose = f"Is this of the answer before it, {answer['name']} {answer['text']}? Say yes, or say that line again in other words."
    put_asked(record, "follow-up", f"{_FIRST} “{fell['heard'].strip()}”. {whose}")
    c.pending = Pending(lines=[text])


def _said_over(fell: Record, text: str) -> bool:
    """Whether a line says a number of the one between again, and so what that was to tell."""
    said = {place.value.value for place in places_of(text)}
    return any(place.value.value in said for place in places_of(fell["heard"]))


def _stays(c: Conversation, text: str, last: Asked) -> float:
    """How likely a line is about the question before it, as lines like it are; as likely as any where nothing was learned."""
    known = model()
    return known.stay(of_line(text, last, len(numbers_of(text, last)), c.parameters)) if known else 1.0


def _asked_of_another(c: Conversation, text: str) -> Record | None:
    """The line right before, where what it means is still asked, and it is of another topic than the answer put in a unit."""
    last = c.records[-1] if c.records else None
    if last is None or c.last is None or c.pending is None or c.pending.asked is None or not c.last.record.get("answer"):
        return None
    other = c.pending.asked.topic is not c.last.topic or bool(c.pending.left)  # or it has a number with no place yet
    other = other and last["outcome"] == "asks" and bool(places_of(last["heard"]))
    return last if other and _IN_UNIT.fullmatch(text) else None


def let_fall(c: Conversation, asked: Asked | None = None) -> Record | None:
    """The line right before, where it told a number, came to nothing, and nothing waits for a reply to it; `asked` is the
    question that was answered before it, once another is."""
    last = c.records[-1] if c.records else None
    whose = asked or c.last
    if asked is None and last is not None and str(last["ask"]).startswith(_FIRST):
        return last  # it was not said yet whose that is
    if last is None or (c.pending is not None and asked is None) or whose is None or not whose.record.get("answer"):
        return None
    if outside_of(last["heard"]) is not None or all(kept is not whose.record for kept in c.records):
        return None  # or this very line told which it was
    if asked is not None:  # a line that tells nothing does not settle the one before it
        since = takewhile(lambda kept: kept is not whose.record and kept["outcome"] in ("asks", "declined"), reversed(c.records))
        return next((kept for kept in since if _fell(kept)), None)
    return last if _fell(last) else None


def _fell(last: Record) -> bool:
    """Whether a line told a number, or a change, and came to nothing."""
    told = bool(places_of(last["heard"]) or _CHANGES.match(last["heard"]) or _SHARES.search(last["heard"]))
    told = told or _DIFFERS.search(last["heard"]) is not None  # the same wall but no windows
    told = told or (last["topic"] is None and _SEVERAL.search(last["heard"]) is not None)  # and the other side too
    told = told or last["topic"] in CHANGES  # now only once: what was to be changed is still asked
    return last["outcome"] in ("asks", "declined") and not str(last["ask"]).startswith(_FIRST) and told
