"""Another of the same put to what was just worked: "add the other side, it's 12 foot", "plus the back wall, 20 by 9".

The other is worked as it would be by itself, and then both are one answer. What is bought for a length or an area is worked again
for both together, so that it is rounded up once.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.record import Record, become, blank
from assistant.several import TOGETHER, told_of
from assistant.speech import spoken
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Length
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_LINE = expression(
    r"\W*(?:(?:and|so|ok|okay|now|then|oh|also|but)\W+)*(?:add(?: in| on)?|plus|put on|throw in|tack on)\W+"
    r"(?P<rest>(?:(?:the|my|our|that|a)\W+)?(?:other|second|next|back|front|far|north|south|east|west|lake|ramp|left|right|end)\b"
    r".*)",
    re.IGNORECASE | re.DOTALL,
)
_NONE = expression(r"%|\b(?:percent|per cent|window|windows|door|doors|opening|openings|tax|together)\b", re.IGNORECASE)
_COUNTED = frozenset((
    "wall area", "gable area", "strapping", "step flashing", "fasteners", "weight", "cost", "squares", "marks on centre",
    *TOGETHER,
))  # fmt: skip


def added_to_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts another of the same to the last answer; then both are worked together."""
    last, found = c.last, _LINE.fullmatch(text.strip())
    answer = last.record.get("answer") if last is not None and c.pending is None else None
    if last is None or not answer or found is None or _NONE.search(text) or last.topic.name not in _COUNTED:
        return False
    if not numbers_in(found["rest"]):
        return False
    state = state_of(c)
    trial = blank(text, record["via"], c.job, record["file"])
    c.take(trial, found["rest"])
    if trial["outcome"] != "answered" or c.last is None or c.last.topic is not last.topic or c.last is last:
        put_back(c, state)
        return False
    other = c.last
    name = TOGETHER.get(last.topic.name, ("", ""))[0]
    if name and _only_that_differs(last, other, name):
        before, more = last.givens[name].value, other.givens[name].value
        both = Length(before.to("in").value + more.to("in").value, "in").to(before.unit) if isinstance(before, Length) else None
        both = both or replace(before, value=before.value + more.to(before.unit).value, text="")
        c.finish(record, [c.worked(last, {**told_of(last), name: Given(name, both)})], Question(last.topic.name))
    else:
        plus = replace(other, plus=Fraction(str(answer["value"])))
        c.finish(record, [c.worked(plus, told_of(other))], Question(last.topic.name))
    if record["outcome"] != "answered":
        put_back(c, state)
        become(record, trial)
        return False
    record["say"] = spoken(f"With the {answer['text']} before. ") + record["say"]
    return True


def _only_that_differs(last: Asked, other: Asked, name: str) -> bool:
    """Whether two questions were given the same but for one length or area."""
    if name not in last.givens or name not in other.givens or last.givens.keys() != other.givens.keys():
        return False
    same = ((last.givens[each].value, other.givens[each].value) for each in last.givens if each != name)
    return all(getattr(a, "value", a) == getattr(b, "value", b) for a, b in same)
