"""A line with reasons and remarks round it: "how did you get that, because the old fella says you halve it".

Where a line came to nothing, and without the clauses that only say why, or what somebody thinks of it, it is an answer, a value
to keep, or a line about the answer before, it is that. A clause with a number in it, or one that asks or names what a topic
goes by, is never left out; but a number that was given before and is told of another thing ("it's the other wing that's
thirteen") puts nothing in.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.leans_on_it import leans_on_it
from assistant.line_apart import look_between
from assistant.look_for_change import look_for_change, say_what_was_read
from assistant.plainer import look_past_telling
from assistant.record import Record
from assistant.told_round import State, take_shorter
from intents.elsewhere import outside_of
from intents.expressions import expression
from intents.heat_told import STUFF
from intents.matcher import read_as
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

LONGEST = 400  # characters of a line that is looked at so
GONE_BACK = "Back to the "  # as what is asked of a question begins that a line goes back to
WHOLE = (GONE_BACK, "How wide is each leg")  # and what else is asked of a whole line, none of which may be let fall
TOLD = frozenset(("remember", "recall", "explain", "review"))  # talk that a line may be without its remarks
_WHO = (
    r"(?:i|we|he|she|they|you|it|that|this|there|somebody|someone|nobody|everybody"
    r"|(?:the|my|our|his|her|your) (?:\w+ ){0,2}?(?:lads?|fella|fellas|fellow|guys?|man|men|boss|owner|wife|husband|helper|crew"
    r"|yard|brother|dad|mate|kid|kids|weather|light|truck|rain|wind|day))"
)
_REASON = expression(
    r"(?:\s*[,;:.–—-]\s*|\s+)(?:and )?(?:because|cause|'cause|since|seeing (?:as|that)|being as|whatever|no matter)\s+.*$",
    re.I | re.S,
)
_REMARK = expression(rf"\s*[,;.–—]\s*(?:and |but |so |for |as |though |while )?{_WHO}(?:'\w+)?\b[^,;]*\W*$", re.I)
_BETWEEN = expression(r"\s*,\s*(?:which|who|whose)\b[^,;?]*,\s*", re.I)
_SAY = expression(rf"\s*,\s*(?:so |or so )?{_WHO} (?:says?|said|reckons?|thinks?|tells? me|told me|guess)\s*,\s*", re.I)
_OTHER = expression(r"\s*[,;.–—]\s*(?:it's|its|it is|that's|that is|and|the)\b[^,;]*\bother\b[^,;]*\W*$", re.I)
_LEAD = expression(r"^[^?]*[,;.–—]\s*(?=(?:so |and )?(?:what|which|how|when|did|have|remind|read|tell)\b[^,;]*$)", re.I)
_DO_AGAIN = expression(
    r"\s*[,;.–—]\s*(?:so )?(?:do|run|work|try|give me) (?:it|that|them)(?: out)? (?:again|over)"
    r"(?: (?:with|for|at|on) [^,;]+)?\W*$",
    re.I,
)
_ASKS = expression(
    r"\?|\b(?:how|what|what's|whats|which|need|want|wants|where|can|could|would|should|give|tell|work|figure|make|use|try"
    r"|check)\b",
    re.I,
)
_WOOD = expression(r"\b(?:cedar|oak|fir|birch|pine)\b", re.I)  # several woods each, so none that is named
_HOLD_ON = expression(
    r"\W*(?:hold on|hold up|hang on|hang about|one sec|just a sec(?:ond)?|wait a (?:sec|minute))\b[,.:;!]? (?=\S)", re.I
)
_OF_IT = expression(r"\b(?:those|that|them|it|too|instead)\b", re.I)  # which go on from what was asked
_HOW_SO = expression(  # how did you get that, the apprentice wants to see it done longhand
    r"^(\W*(?:so |and |ok |wait )*(?:how (?:did|do) you|why|how come|where (?:did|does)|what did you)\b[^,;.?]*)[,;.?]\s+\D+$",
    re.I,
)
_SO_HOW = expression(r"[,;.?]\s+(?:and |so |but )*(how (?:did|do) you (?:get|work|come|figure|make)\b[^,;.?]*)\W*$", re.I)
_BEGAN = expression(r"\W*(?:and|so|or|what about|how about|what if|now)\b", re.I)
_TURNS = expression(
    r"\b(?:no|not|nope|wait|sorry|scratch|forget|wrong|actually|never|mind|instead|except|unless|without|meant)\b", re.I
)


def look_past_remarks(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line that came to nothing without its reasons and remarks, where it is whole without them; or as a plain change."""
    if str(record["ask"]).startswith(WHOLE):
        if not str(record["ask"]).startswith(GONE_BACK):
            leans_on_it(c, record, text, before)
        return
    _look_past(c, record, text, before)
    look_for_change(c, record, text, before)
    leans_on_it(c, record, text, before)
    say_what_was_read(c, record, text)


def _look_past(c: Conversation, record: Record, text: str, before: State) -> None:
    if record["outcome"] not in ("asks", "declined") or len(text) > LONGEST or outside_of(text) is not None:
        return
    last: Asked | None = before[1]  # type: ignore[assignment]
    if not take_shorter(c, record, text, before, _shorter(text, last), lambda trial, left: _good(c, trial, left, last)):
        look_between(c, record, text, before)
        look_past_telling(c, record, text, before)


def _good(c: Conversation, trial: Record, left: str, last: Asked | None) -> bool:
    """Whether the shorter line came to something, and what was left out says nothing of that."""
    if trial["outcome"] == "noted":
        return trial["topic"] in TOLD
    if trial["outcome"] != "answered" or trial["topic"] not in c.topics:
        return False
    told = STUFF if trial["topic"] in STUFF else (trial["topic"],)  # because the boss bought cedar: no vinyl any more
    if _WOOD.search(left) and told is STUFF:
        return False
    known = last.givens if last is not None else {}  # he let us down on the vinyl again: it was vinyl
    new = (heard for topic in told for heard in read_as(left, topic, c.parameters).givens.items())
    return all(n in known and getattr(known[n].value, "name", known[n].value) == heard.value for n, heard in new)


def _shorter(text: str, last: Asked | None) -> Iterator[tuple[str, str]]:
    """The line without what may be left out, and that; the least first."""
    held = _HOLD_ON.match(text)
    if held is not None and not _OF_IT.search(text):
        yield text[held.end() :], ""
    inner = text
    for clause in (_SAY, _BETWEEN):
        found = clause.search(inner)
        if found and _idle(found[0]):
            inner = f"{inner[: found.start()]} {inner[found.end() :]}"
    if inner != text:
        yield inner, ""
    for clause in (_REASON, _REMARK, _OTHER):
        found = clause.search(inner)
        idle = found is not None and found.start() > 0
        told = found[0] if found else ""
        if clause is _REASON and _BEGAN.match(inner):
            told = told.rstrip(" ?")  # and at eight twelve, since the gable's steeper? asks no more than it would without
        idle = idle and (_told_before(told, last) if clause is _OTHER else _idle(told))
        if found is not None and idle:
            yield inner[: found.start()], "" if clause is _OTHER else found[0]
    again = _DO_AGAIN.search(inner)
    if again is not None and again.start() > 0 and _said_before(again[0], inner[: again.start()]):
        yield inner[: again.start()], ""
    first = _HOW_SO.match(inner)
    if first is not None:
        yield first[1], ""
    end = _SO_HOW.search(inner)
    if end is not None and not numbers_in(inner[: end.start()]):
        yield end[1], ""
    lead = _LEAD.match(inner)
    if lead is not None and _idle(lead[0]):
        yield inner[lead.end() :], lead[0]


def _idle(clause: str) -> bool:
    """Whether a clause holds no number, asks nothing and turns nothing round."""
    return not (numbers_in(clause) or _ASKS.search(clause) or _TURNS.search(clause))


def _said_before(clause: str, line: str) -> bool:
    """Whether each number of a clause was said in the line before it."""
    said = {row.value for row in numbers_in(line)}
    return all(row.value in said for row in numbers_in(clause))


def _told_before(clause: str, last: Asked | None) -> bool:
    """Whether all numbers of a clause about another thing are of the question before: they hold there, and no longer here."""
    return last is not None and bool(numbers_in(clause)) and not unheard(clause, last.givens.values())
