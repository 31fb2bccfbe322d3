"""What the question before was given and may do without is left out of it: "lose the tail", "no tail, how much does it rise over
that run". Where so much of it as none can be, none is what it becomes, elsewhere; a rafter's tail is there or it is not.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.line_apart import without_opening
from assistant.record import become, blank
from assistant.several import told_of
from assistant.speech import spoken
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.question import Question

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record
    from solvers.registry import Parameter

LONGEST = 140  # characters of such a line
HOW = "measured"  # the given that only tells how what is left out was measured
_GONE = expression(
    r"\W*(?:(?:no|ok|oh|actually|so|and|but|with|what about|how about|what if|if|we|i|just|please|can you|could you|we['’]?ll"
    r"|i['’]?ll|let['’]?s|they|he|she|there['’]?s|theres|it['’]?s got|client wants|forget it)\b\W*)*?"
    r"(?:no|without|lose|drop|skip|scrap|forget|ditch|leave off|leave out|take off|cut off|minus|never mind|don['’]?t"
    r" (?:want|need|bother with))"
    r"(?: about)?(?: (?:the|that|any|a|my))? (?P<what>[a-z]+(?: [a-z]+)?)"
    r"(?: (?:off|out|at all|altogether|after all|now|then|this time|please|on (?:it|that)))*\s*(?:[,.;:/–—-]+\s*(?P<rest>.+)"
    r"|\W*)",
    re.IGNORECASE,
)
_CALLED = {"tail": "overhang", "tails": "overhang", "eave": "overhang", "eaves": "overhang"}
_JOINS = expression(r"\W*(?:(?:and|so|then|now|but|just)\b\W*)*", re.IGNORECASE)


def gone_from_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line leaves out a given of the question before, and asks for nothing else or for what is answered without"
    " it."""
    last = c.last
    found = _GONE.fullmatch(text.strip(" .!?")) if last is not None and c.pending is None and len(text) <= LONGEST else None
    if last is None or found is None or not last.record.get("answer"):
        return False
    name = found["what"].lower()
    dropped = next((p for p in last.topic.parameters if p.label == _CALLED.get(name, name) and p.name in last.givens), None)
    if dropped is None or not _there_or_not(dropped) or last.givens[dropped.name].source == "assumed":
        return False
    before = state_of(c)
    kept = {key: given for key, given in told_of(last).items() if key not in (dropped.name, HOW)}
    again = replace(last, past=(*last.past, {key: given.value for key, given in last.givens.items()}), text="", record={})
    trial = blank(record["heard"], record["via"], c.job, record["file"])
    c.finish(trial, [c.worked(again, kept)], Question(last.topic.name))
    rest = _JOINS.sub("", found["rest"] or "", count=1)
    if trial["outcome"] == "answered" and c.last is not None and rest:
        c.last.text, c.last.record = last.text, trial
        trial = blank(rest, record["via"], c.job, record["file"])
        c.take(trial, without_opening(rest, c.last))
    if trial["outcome"] not in ("answered", "noted") or (trial["outcome"] == "noted" and trial["topic"] != "explain"):
        put_back(c, before)
        return False
    become(record, trial)
    if c.last is not None and trial["outcome"] == "answered":
        c.last.record = record
    record["say"] = spoken(f"With no {dropped.label}. ") + record["say"]
    return True


def _there_or_not(parameter: Parameter) -> bool:
    """Whether the topic works without such a given, and none of it is no size it can be."""
    return not parameter.required and parameter.default is None and parameter.slot.above == 0
