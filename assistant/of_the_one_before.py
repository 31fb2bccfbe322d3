"""A number that names a given of the question before the last, after what things cost, weigh or come in: "now 600 centres", of
17 studs at 4.75 each.

It is no count of those things: the question that has such a given is gone back to and changed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.pending import Asked
from assistant.record import become, blank
from assistant.said_over import places_of, same_value, stem
from assistant.told_round import State, put_back, state_of
from intents.tokens import tokenize
from solvers.quantities import Count, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_GOES_ON = ("cost", "weight", "boxes")  # whose count is what was worked before
_SIZES = {"wide": "width", "long": "length", "high": "height", "tall": "height", "deep": "depth", "centers": "centre"}
_BACK = 3  # questions that are looked at, the last first


def of_the_one_before(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line for a change of the question whose given it names, where it was taken for a count of the last."""
    last: Asked | None = before[1]  # type: ignore[assignment]
    if record["outcome"] != "answered" or last is None or c.last is None or last.topic.name not in _GOES_ON:
        return
    if c.last.topic is not last.topic or c.last.record is not record or not _counts_anew(c.last, last):
        return
    named = _named(text)
    earlier = next((one for one in [*reversed(c.earlier)][:_BACK] if one.topic is not last.topic and _has(one, named)), None)
    if earlier is None or _has(last, named):
        return
    now, trial = state_of(c), blank(record["heard"], record["via"], c.job, record["file"])
    put_back(c, before)
    c.last = earlier
    c.take(trial, text)
    if trial["outcome"] == "answered" and trial["topic"] == earlier.topic.name:
        become(record, trial)
        if c.last is not None:
            c.last.record = record
        return
    put_back(c, now)


def _counts_anew(now: Asked, last: Asked) -> bool:
    """Whether another count is all that a line changed."""
    said = [name for name, given in now.givens.items() if given.source == "asked" and _changed(now, last, name)]
    return len(said) == 1 and isinstance(now.givens[said[0]].value, Count)


def _changed(now: Asked, last: Asked, name: str) -> bool:
    was, is_ = last.givens.get(name), now.givens[name].value
    return was is None or not (isinstance(is_, Quantity) and isinstance(was.value, Quantity) and same_value(is_, was.value))


def _named(text: str) -> str:
    """The word after the one number of a line; "" where there is none, or more numbers."""
    places = places_of(text)
    after = [token.text for token in tokenize(text[places[0].end :])] if len(places) == 1 else []
    return stem(_SIZES.get(after[0], after[0])) if after and after[0].isalpha() else ""


def _has(asked: Asked, named: str) -> bool:
    labels = {stem(word) for parameter in asked.topic.parameters for word in parameter.label.split()}
    return bool(named) and named in labels | {stem(word) for word in asked.topic.name.split()} - {"on", "of", "a"}
