"""What was said and has no place in the question ("What is the 28x9?"), or not the one it was put in: a gap of 40 feet."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.pending import Asked, Pending
from assistant.record import Record, given_lines, listed, put_asked
from assistant.usual import is_usual
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ways import Way

_LET_GO = expression(
    r"\W*(?:(?:just|no|ok|oh|then|please|you can|well)\W+)*"
    r"(?:leave (?:it|that|them|those) out|(?:ignore|drop|lose) (?:it|that|them|those)|without (?:it|that|them)|nothing|no|nope"
    r"|yes|yeah|yep|ok)(?:\W+(?:then|please|of it))?\W*",
    re.IGNORECASE,
)
_AMOUNTS = ("takeoff", "courses", "water", "movement")  # where what is let fall makes another amount, or is how warm it is
_EACH = ("cost", "weight")  # of things that may be told by their sizes


def without_them(asked: Asked, left: Sequence[str]) -> Asked:
    """The question without what was said and changed nothing."""
    kept = {name: given for name, given in asked.givens.items() if getattr(given.value, "text", "") not in left}
    return replace(asked, givens=kept) if left else asked


def lets_go(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the reply says that what has no place is to be left out; then the rest is worked, and says so."""
    if not pending.left or pending.asked is None or pending.wanted or not _LET_GO.fullmatch(text):
        return False
    asked = without_them(pending.asked, pending.left)
    c.finish(record, [c.worked(asked, asked.givens)], Question(asked.topic.name, left=list(pending.left)))
    return True


def still_no_place(c: Conversation, record: Record, pending: Pending, ways: list[Way], left: list[str]) -> bool:
    """Whether a reply left open what has no place, of an amount that it may be part of; that is asked once more."""
    first = ways[0]
    if not left or pending.repeated or not first.worked.working or first.asked.topic.name in _EACH:
        return False
    if first.asked.topic.family not in _AMOUNTS:
        return False
    is_ = "has" if len(left) == 1 else "have"
    question = f"The {listed(left, 'and')} {is_} no place yet: say what it is, or “leave it out”."
    c.pending = Pending(first.asked, ways=ways, left=left, repeated=True, question=question)
    put_asked(record, first.asked.topic.name, question, given_lines(first.worked.topic, first.worked.givens))
    return True


def in_another_place(c: Conversation, more: Question, last: Asked, wanted: str = "") -> list[tuple[Way, Question]]:
    """The ways of a change whose one length can't be what it was taken for, where one place alone that was not told takes it:
    40 foot of an opening whose gap was told, and not its length; or 60 feet, where the width of a joint is `wanted`."""
    ((name, heard),) = more.givens.items() if len(more.givens) == 1 else (("", None),)
    if heard is None or not isinstance(heard.value, Length):
        return []
    told = {n for n, given in last.givens.items() if given.source != "assumed"}
    open_ = [p for p in last.topic.parameters if p.kind is Length and p.name not in told and p.name != name and p.default is None]
    usual = [p for p in open_ if is_usual(p.slot, heard.value, 1)]
    if (name not in told and name != wanted) or len(usual) != 1:
        return []
    anew = replace(more, givens={usual[0].name: replace(heard, sure=1.0)})  # its doubt was of the place it was put in
    ways = [way for way in c.ways(anew, last) if not way.worked.refused]
    return [(way, anew) for way in ways]
