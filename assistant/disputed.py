"""A sum that somebody says is wrong, or was to be done otherwise: "that's wrong, it's 18", and "no, divided by 3".

What it comes to by somebody else's reckoning is set beside the answer, and takes no part's place; another thing done with the
number that was said last is done in place of what was, and not to what came out.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant import acts
from assistant.names import SUM
from assistant.record import Record
from intents.expressions import expression
from intents.question import Question
from intents.talk import Said, numbers_in
from solvers.quantities import Length, Number
from solvers.slots import Given
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Sum

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_TOPICS = (SUM, "conversion", "divide evenly")
_WRONG = expression(
    r"\W*(?:(?:no|nah|nope|hang on|wait)\W+)*(?:that|it)(?:['’]?s| is) (?:wrong|not right|not it|off|out|rubbish)\b\W*"
    r"(?:but |and )?(?:it(?:['’]?s| is| should be| comes to)|should be|i (?:get|got|make it))\s+(?P<n>.+)",
    re.IGNORECASE,
)
_OTHERWISE = expression(
    r"\W*(?:no|nope|nah|sorry|wait|oops|i mean|i meant|i said)\b[ ,]+"
    r"(?P<does>plus|add|minus|less|times|divided? by|over|x|×)\s+(?P<n>.+?)\W*",
    re.IGNORECASE,
)
_RATHER = expression(  # ah no not half i want three equal bits out of it
    r"\W*(?:(?:ah|oh|no|nope|nah|wait|sorry|hang on|actually|well)\W+)*not (?:in |a |into )?(?:half|halves|two|thirds?"
    r"|quarters?|2|3|4)[ ,]*"
    r"(?:(?:and|but|so)\W+)?(?:(?:i|we)(?:['’]?(?:d|m|re))? ?(?:want|wanted|need|needed|meant|said|after|mean|cut)?"
    r"|it['’]?s|into|in|make it)"
    r"(?: (?:it|that))?(?: (?:in|into|to))? (?P<n>[a-z]+|\d{1,2})(?: (?:equal|even|same))?"
    r" (?:bits|parts|pieces|lengths|sections|shares)(?: (?:out of|from|of) (?:it|that))?\W*",
    re.IGNORECASE,
)
_PART = expression(  # no not half, a third
    r"\W*(?:(?:ah|oh|no|nope|nah|wait|sorry|actually|well)\W+)*not (?:in |a |into )?(?:half|halves|two|thirds?"
    r"|quarters?|2|3|4)[ ,]+"
    r"(?:(?:and|but|so|i (?:want|meant|need|said)|it['’]?s|make it)\W+)*(?:an? |one |in(?:to)? )?(?P<part>half|halves"
    r"|thirds?|quarters?"
    r"|fifths?|sixths?)(?: (?:of (?:it|that)))?\W*",
    re.IGNORECASE,
)
_PARTS = {"hal": 2, "thi": 3, "qua": 4, "fif": 5, "six": 6}
_WAITS = expression(r"\W*(?:wait|oops)\b", re.IGNORECASE)  # which may go on
_DOES = {"plus": PLUS, "add": PLUS, "minus": MINUS, "less": MINUS, "times": TIMES, "x": TIMES, "×": TIMES, "over": DIVIDED}


def disputed(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line disputes the sum that was just worked; then it is set beside it, or done otherwise."""
    last = c.last
    if last is None or c.pending is not None or last.topic.name not in _TOPICS or not last.record.get("answer"):
        return False
    wrong = _WRONG.fullmatch(text)
    said = tuple(numbers_in(wrong["n"])) if wrong is not None else ()
    if wrong is not None and said:
        return acts.perform(c, record, Said("compare", {"value": said}, {"value": wrong["n"]}), text)
    other = _OTHERWISE.fullmatch(text)
    given = last.givens.get("sum")
    whole = given.value if given is not None else None
    if isinstance(whole, Sum) and _shared_otherwise(c, record, text, last, whole):
        return True
    if other is None or not isinstance(whole, Sum) or last.times != 1:
        return False
    numbers = [row.value for row in numbers_in(other["n"]) if isinstance(row.value, Length | Number)]
    right = whole.right
    if len(numbers) != 1 or not isinstance(right, Length | Number) or right.value != numbers[0].value:
        return False
    made = Sum(_DOES.get(other["does"].lower(), DIVIDED), whole.left, right)
    c.finish(record, [c.worked(last, {**last.givens, "sum": Given("sum", made, "asked")})], Question(SUM))
    return True


def _shared_otherwise(c: Conversation, record: Record, text: str, last: Asked, whole: Sum) -> bool:
    """Whether the line parts a sum otherwise than it was just parted, whole: not half, three equal bits; no, divided by 3."""
    rather, other = _RATHER.fullmatch(text), _OTHERWISE.fullmatch(text)
    shared = 0 < last.times < 1
    divides = other is not None and other["does"].lower().startswith(("div", "over")) and not _WAITS.match(text)
    found = rather or (other if divides else None)
    said = [row.value for row in numbers_in(found["n"])] if found is not None else []
    if part := _PART.fullmatch(text):
        said = [Number(Fraction(_PARTS[part["part"].lower()[:3]]), "none", str(_PARTS[part["part"].lower()[:3]]))]
    if len(said) != 1 or not isinstance(said[0], Number) or said[0].value.denominator != 1 or said[0].value < 1:
        return False
    if not shared and whole.operation != DIVIDED:
        return False
    made = Sum(DIVIDED, whole if shared else whole.left, said[0])
    c.finish(record, [c.worked(replace(last, times=1), {**last.givens, "sum": Given("sum", made, "asked")})], Question(SUM))
    return True
