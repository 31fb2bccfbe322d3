"""A sum that somebody says is wrong, or was to be done otherwise: "that's wrong, it's 18", and "no, divided by 3".

What it comes to by somebody else's reckoning is set beside the answer, and takes no part's place; another thing done with the
number that was said last is done in place of what was, and not to what came out.
"""

from __future__ import annotations

import re
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
    if other is None or not isinstance(whole, Sum) or last.times != 1:
        return False
    numbers = [row.value for row in numbers_in(other["n"]) if isinstance(row.value, Length | Number)]
    right = whole.right
    if len(numbers) != 1 or not isinstance(right, Length | Number) or right.value != numbers[0].value:
        return False
    made = Sum(_DOES.get(other["does"].lower(), DIVIDED), whole.left, right)
    c.finish(record, [c.worked(last, {**last.givens, "sum": Given("sum", made, "asked")})], Question(SUM))
    return True
