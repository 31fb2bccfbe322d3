"""Openings told after a wall without their sizes: "there's two windows", "minus a door"; how big each is, is asked.

Until that is known nothing is taken off, and the sizes that come next ("3 by 5") are theirs, and no new wall's.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.pending import Pending
from assistant.record import Record, put_asked, put_declined
from assistant.several import told_of
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Number
from solvers.slots import Given, Opening, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_N = r"(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|\d{1,2}|a couple of|a pair of)"
_WHAT = r"(?P<kind>window|door|opening|skylight|vent)s?"
_LEAD = (
    r"(?:(?:and|but|oh|so|ok|now|also|yeah|then|actually|with|less|minus|take (?:out|off|away)|deduct|subtract|plus|it'?s got"
    r"|it has|has|got|there(?:'s| is| are|'re|s)|(?:i|we)(?:'ve| have)?(?: got)?|what about|what if (?:there's|it has))[ ,]+)*"
)
_TAIL = r"(?:[ ,]+(?:in (?:it|that|there|the wall)|too|as well|off|out|on (?:it|that)|there|though|then|please|i forgot))*"
_TOLD = re.compile(rf"{_LEAD}(?P<said>{_N} (?:(?!for|of|to|in)\w+ )?{_WHAT}){_TAIL}", re.IGNORECASE)
_BY = re.compile(r"\b(?:by|x)\b|×|\d\s*x\s*\d", re.IGNORECASE)
_MORE = re.compile(r"\b(?:and|plus|also|another|more|too|as well)\b", re.IGNORECASE)
MANY = 2  # of one more it can't be told whether it is another
_SIZES = 2  # a width and a height


def openings_told(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells of openings in the wall just worked, and not how big they are; then that is asked."""
    last = c.last if c.pending is None else None
    found = _TOLD.fullmatch(text.strip(" .!?").replace("’", "'")) if last is not None and last.record.get("answer") else None
    if last is None or found is None:
        return False
    if _so_many_now(c, record, last, found):
        return True
    if re.search(rf"\b{found['kind']}s?\b", last.text, re.IGNORECASE):
        return False  # eight windows, of what was asked for six
    if not any(_takes_openings(p) for p in last.topic.parameters):
        if any("count" in p.name or p.kind is tuple for p in last.topic.parameters):
            return False  # so many of them may be what is counted
        put_declined(record, f"A {found['kind'].lower()} changes nothing of the {last.topic.name}: ask a whole question of it")
        return True
    question = f"How big is each {found['kind'].lower()}: how wide by how high?"
    c.pending = Pending(last, told=f"with {found['said']}", question=question)
    put_asked(record, last.topic.name, question)
    return True


def _so_many_now(c: Conversation, record: Record, last: Asked, found: re.Match[str]) -> bool:
    """Whether openings of that kind were told before, and this is how many of them there are now: 3 windows, of two."""
    kind = found["kind"].lower()
    numbers = numbers_in(found["said"])
    held = [(name, g.value) for name, g in last.givens.items() if isinstance(g.value, tuple) and g.source != "assumed"]
    alike = [(name, n) for name, value in held for n, one in enumerate(value) if isinstance(one, Opening) and one.what == kind]
    count = numbers[0].value if len(numbers) == 1 else None
    if len(alike) != 1 or not isinstance(count, Number) or count.value < MANY or _MORE.search(found.string):
        return False
    name, at = alike[0]
    openings = list(last.givens[name].value)
    openings[at] = replace(openings[at], count=int(count.value))
    givens = {**told_of(last), name: Given(name, tuple(openings), "asked")}
    c.finish(record, [c.worked(last, givens)], Question(last.topic.name))
    return True


def sized(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line tells how big the openings are that were told before it; then they are taken off."""
    if not _BY.search(text) and len(numbers_in(text)) < _SIZES:
        return False
    c.take(record, f"{pending.told} {text}")
    return True


def _takes_openings(parameter: Parameter) -> bool:
    return parameter.kind is tuple and parameter.name.startswith("openings")
