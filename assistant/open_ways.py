"""What a reply leaves open of the ways to mean a question, and what it then is with what the reply tells."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.asked_piece import named
from assistant.no_place import in_another_place, without_them
from assistant.units_kept import in_one_system, told_together
from assistant.usual import unusual
from assistant.ways import Way, differences, on_one_scale
from assistant.while_open import puts_right
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending

MOST_WORKED = 6  # ways from which on no more of what was open are worked: the question back names two of them
# Another try, which settles nothing of the one before.
_ANOTHER_TRY = expression(r"\W*(?:and|or|what about|how about|what if)\b(?! the other)", re.IGNORECASE)


def ways_with(c: Conversation, more: Question, pending: Pending, text: str) -> tuple[list[Way], Question]:
    """The ways to mean what is open with what the reply tells, and that as it is then taken."""
    assert pending.asked is not None
    doubtful = _still_in_doubt(more, pending, None if _ANOTHER_TRY.match(text) else c.last, text)
    bases = [(told_together(more, one.asked, doubtful), without_them(one.asked, pending.left)) for one in doubtful]
    found: list[Way] = []
    for told, base in bases:
        found += c.ways(told, base) if len(found) < MOST_WORKED else []
    ways = in_one_system(on_one_scale(found))
    ways = [way for way in ways if not way.worked.refused] or ways  # no low is 30 °C on a night that frost is asked of
    base = without_them(_without_doubt(pending), pending.left)
    ways = ways or in_one_system(on_one_scale(c.ways(told_together(more, base), base)))
    odd = ways[0].worked.refused or (pending.wanted and unusual(ways[0].asked) == pending.wanted)
    if odd and not named(more, pending) and (moved := in_another_place(c, more, pending.asked, pending.wanted)):
        return [way for way, _ in moved], moved[0][1]
    return ways, more


def _still_in_doubt(more: Question, pending: Pending, last: Asked | None, text: str) -> list[Way]:
    """The ways in doubt that still are: all of them, unless the reply tells what set them apart; or that which it tells.

    What is told anew was not what the number in doubt was for: 55, of a temperature or a humidity, and then "at 60 F".
    """
    if not pending.ways:  # the long side of my triangle is 10 feet | the run is 8 feet
        return [way for way in pending.alike if more.givens.keys().isdisjoint(way.asked.givens)] or pending.alike
    apart = set(differences(pending.ways))
    told = more.givens.keys() & apart
    if not told:
        return pending.ways
    said = {name: heard.value for name, heard in more.givens.items() if name in told}
    right = [way for way in pending.ways if all(_given(way, name) == _bare_value(value) for name, value in said.items())]
    as_before = [way for way in pending.ways if last and all(_given(way, name) == _was(last, name) for name in told)]
    if not right and len(as_before) == 1 and last is not None and last.topic is as_before[0].asked.topic:
        return as_before
    other = [way for way in pending.ways if told.isdisjoint(way.asked.givens)]
    if not right and other and not puts_right(text):
        return other
    return right[:1] or (pending.ways if apart - told else [])


def _was(last: Asked, name: str) -> object:
    given = last.givens.get(name)
    return _bare_value(given.value) if given is not None else None


def _given(way: Way, name: str) -> object:
    given = way.asked.givens.get(name)
    return _bare_value(given.value) if given is not None else None


def _bare_value(value: object) -> object:
    return (value.value, value.unit) if isinstance(value, Quantity) else value


def _without_doubt(pending: Pending) -> Asked:
    """The question without what its ways differ in, where a reply tells other values: 10 of either scale is of none."""
    assert pending.asked is not None
    apart = differences(pending.ways) if pending.ways else []
    return replace(pending.asked, givens={name: given for name, given in pending.asked.givens.items() if name not in apart})
