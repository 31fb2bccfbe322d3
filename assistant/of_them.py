"""Another count of what the question before counts: "make it six of them", "what if there's only four of those"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Count, Number

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SCORE = 3.0  # of a change that only these words make
COUNTED = ("equal spacing", "divide evenly", "height of courses")  # in which a count of them is no multiple of the answer
_OF_THEM = expression(
    r"\W*(?:(?:and|so|ok|no|but|then|now|what if|if|make it|make that|say|with|only|just|try|there['’]?s|there are|there"
    r" were|we have|i have"
    r"|i['’]ve|we['’]ve|got|use|for)\b[\s,]*)*(?P<n>[a-z]+|\d+) of (?:them|those|these|em|['’]em)(?: (?:instead|now|then|in"
    r" all))*\W*",
    re.IGNORECASE,
)


def of_them(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with as many of what it counts as the line says; none where it counts no one thing."""
    found = _OF_THEM.fullmatch(wanted.line or f"{wanted.lead}{wanted.rest}") if last.topic.name in (*COUNTED, "cost") else None
    counts = [name for name, given in last.givens.items() if isinstance(given.value, Count) and given.source != "assumed"]
    said = places_of(found["n"]) if found is not None else []
    if len(counts) != 1 or len(said) != 1 or not isinstance(said[0].value, Number) or said[0].value.value.denominator != 1:
        return []
    value = Count(said[0].value.value, "count", str(found["n"]) if found is not None else "")
    return [Question(last.topic.name, {counts[0]: Heard(value, 0, len(wanted.rest), value.text)}, _SCORE)]
