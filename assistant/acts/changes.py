"""Follow-ups and corrections that name nothing to change, or have nothing before them."""

from __future__ import annotations

import re
from enum import Enum

from assistant.acts import Talk, act
from assistant.names import SUM
from assistant.pending import Asked
from assistant.record import put_asked
from assistant.said_over import places_of
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Length, Number
from solvers.slots import Given
from solvers.sums import Part, Sum, leaves, plain_size

_TAKES = expression(r"\b(?:takes?|eats?|loses?|lost|saw|kerf|blade|off|more|another|add|plus|minus|less)\b", re.IGNORECASE)
NEAR = 2  # times as large, or as small
MOST_PARTS = 3  # of a sum, between which it is asked
NOTHING = "What should I change? Nothing was asked before this: ask a whole question."


@act("follow-up")
def follow_up(talk: Talk) -> None:
    """Ask the last question again with something changed."""
    _ask(talk)


@act("correct")
def correct(talk: Talk) -> None:
    """Put right the one thing that was heard or said wrong, and answer again."""
    _ask(talk)


def _ask(talk: Talk) -> None:
    last = talk.conversation.last
    if last is None:
        put_asked(talk.record, talk.said.topic, NOTHING)
        return
    if last.topic.name == SUM and _which_part(talk, last):
        return
    sizes = [parameter for parameter in last.topic.parameters if not issubclass(parameter.kind, Enum)] or last.topic.parameters
    needs = " or ".join(dict.fromkeys(f"the {parameter.label}" for parameter in sizes[:3]))
    put_asked(talk.record, talk.said.topic, f"What should I change about the {last.topic.name}: {needs}?")


def _which_part(talk: Talk, last: Asked) -> bool:
    """Whether a number alone may take the place of one or another part of a sum; then it is asked which."""
    given, places = last.givens.get("sum"), places_of(talk.record["heard"])
    whole = given.value if given is not None else None
    if not isinstance(whole, Sum) or len(places) != 1 or not isinstance(places[0].value, Length | Number):
        return False
    c, text, count = talk.conversation, talk.record["heard"], len(leaves(whole))
    new = places[0].value.said(text[places[0].start : places[0].end])
    if not 2 <= count <= MOST_PARTS:
        return False
    at = _places_for(whole, new)
    anew = [Given("sum", _with_part(whole, n, new), "asked") for n in at]
    ways = [c.worked(last, {**last.givens, "sum": one}) for one in anew]
    if not ways or any(way.worked.working is None for way in ways) or _TAKES.search(text):
        return False
    c.finish(talk.record, ways, Question(SUM))
    if c.last is not None and c.last is not last and len(at) == 1:  # and then 18 of them: of the new length
        old = leaves(whole)[at[0]].text
        c.last.text = last.text.replace(old, new.text) if old and last.text.count(old) == 1 else str(anew[0].value)
    return True


def _places_for(whole: Sum, new: Length | Number) -> list[int]:
    """Which parts a number may take the place of, counted from the left: those it is near in size."""
    sizes = [plain_size(part) for part in leaves(whole)]
    size = plain_size(new)
    return [n for n, old in enumerate(sizes) if min(old, size) > 0 and max(old, size) <= NEAR * min(old, size)]


def _with_part(whole: Sum, at: int, new: Length | Number) -> Sum:
    """The sum with another length or number in the place of one of its parts, counted from the left."""

    def put(part: Part | None, first: int) -> Part | None:
        if isinstance(part, Sum):
            left = put(part.left, first)
            return Sum(part.operation, left, put(part.right, first + len(leaves(part.left))))
        if first != at or part is None:
            return part
        bare = new.unit == "none" and isinstance(part, Length)
        return Length(new.value, part.unit, new.text) if bare else new

    made = put(whole, 0)
    assert isinstance(made, Sum)
    return made
