"""A number of the question before that is said to be of another given than it was taken for: "one point four is the radius, not
across", "no, 30 is the rise not the run". It goes there, and what it was taken for is no longer given."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.record import become, blank, put_asked
from assistant.said_over import places_of, same_value
from assistant.several import told_of
from assistant.speech import spoken
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Quantity
from solvers.slots import Choice, Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 120  # characters of such a line
_NAME = r"(?:the |its |a |my )?(?P<{}>[a-z]+(?: [a-z]+)?)"
_LINE = expression(
    r"\W*(?:(?:no|sorry|oh|wait|actually|but|ah|hang on|hold on|oops|my mistake|so)\b[\s,.]*)*(?P<n>that|it|\S.*?)(?:['’]s|"
    r" is| was)(?: really| actually"
    r"| meant to be)? " + _NAME.format("new") + r",? (?:and )?not " + _NAME.format("old")
    + r"(?P<ask>[\s,.;]+(?:so |and |then |now )*(?:whats?|how)\b[^\d]*)?\W*",
    re.IGNORECASE,
)  # fmt: skip
_CALLED = {"radius": ("radius of the circle", "radius"), "across": ("across", "width"), "diameter": ("across",),
           "span": ("gable width", "width"), "height": ("height", "rise"), "width": ("width", "gable width"),
           "length": ("length", "slope")}  # fmt: skip


def said_to_be(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells that a number is of another given; then the question is worked so."""
    last = c.last
    found = _LINE.fullmatch(text.strip(" .!?")) if last is not None and c.pending is None and len(text) <= LONGEST else None
    if last is None or found is None or not last.record.get("answer"):
        return False
    told = told_of(last)
    old, new = (_parameter(found[name], last) for name in ("old", "new"))
    given = told.get(old)
    if not new or given is None or not _is_it(found["n"], given) or not isinstance(given.value, last.topic.parameter(new).kind):
        return False
    said = getattr(given.value, "text", "")
    kept = {name: one for name, one in told.items() if name != old and not isinstance(one.value, Choice)}
    kept |= {old: Given(old, told[new].value, "asked")} if new in told else {}  # each number stays, in the other's place
    kept[new] = Given(new, given.value, "asked")
    state = state_of(c)
    trial = blank(record["heard"], record["via"], c.job, record["file"])
    c.finish(trial, [c.worked(last, kept)], Question(last.topic.name))
    now = c.last.givens.get(new) if c.last is not None else None
    if trial["outcome"] != "answered" or now is None or not same_value(now.value, given.value):
        put_back(c, state)
        names = f"the {last.topic.parameter(new).label} or the {last.topic.parameter(old).label}"
        put_asked(record, "correct", f"What is {said}: {names}? Say the whole question.")
        return True
    become(record, trial)
    if c.last is not None:
        c.last.record, c.last.text = record, last.text
    says = spoken(f"With {last.topic.parameter(new).label} {said}. ")
    if found["ask"]:
        beside_it = blank(record["heard"], record["via"], c.job, record["file"])
        now_last = c.last
        c.take(beside_it, found["ask"].strip(" .,;"))
        if beside_it["outcome"] == "noted" and beside_it["also"]:
            become(record, beside_it)
        c.last, c.pending = now_last, None
    record["say"] = says + record["say"]
    return True


def _is_it(words: str, given: Given) -> bool:
    """Whether the words are the number that was taken for a given, or only point at it."""
    if not isinstance(given.value, Quantity):
        return False
    places, text = places_of(words), given.value.text.lower()
    same = len(places) == 1 and places[0].value.value == given.value.value
    return words.lower() in ("that", "it") or same or text.startswith(f"{words.lower()} ")


def _parameter(words: str, last: Asked) -> str:
    """The one given of the question that words name; "" for none."""
    said = words.lower()
    labels = (*_CALLED.get(said.split()[0], (said,)), said, said.split()[0])
    return next((p.name for label in labels for p in last.topic.parameters if p.label == label), "")
