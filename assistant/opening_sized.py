"""One side of an opening told anew: "the door is two metres high", "windows are 1.2 wide"; which is no side of the wall."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.said_over import places_of, stem
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length, Number
from solvers.slots import Opening

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SIDE = expression(
    r"\W*(?:(?:no|sorry|and|but|oh|actually|wait|if|what if|the|that|both|all)\b\W*)*(?P<what>door|window|opening|vent|slider)s?"
    r"(?:['’]?s|['’]re| is| are| was| were| should be)? (?:only |really |actually |just )*(?P<n>[^,;?]+?)"
    r" (?P<side>high|tall|wide|across)(?: (?:actually|though|not .+))?\W*",
    re.IGNORECASE,
)
_THEM = expression(
    r"\W*(?:(?:no|sorry|and|but|oh|actually|wait)\b\W*)*(?:they(?:['’]re| are)|those are|each(?: one)?(?:['’]s| is)"
    r"|it(?:['’]s| is) (?=[^,;?]+ (?:wide|across)\b)) ?",
    re.IGNORECASE,
)
_SCORE = 3.0  # of a change that only these words make
_UPRIGHT = 1.5  # times as high as wide, from which on a door stands, whichever of its sides was said first


def side_told(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one side of its one opening of a name as the line tells it; none where it tells no such thing."""
    said = _SIDE.fullmatch(_named(wanted.rest, last))
    places = places_of(said["n"]) if said is not None else []
    if said is None or len(places) != 1 or not isinstance(places[0].value, Length | Number):
        return []
    for name, given in last.givens.items():
        row = given.value if isinstance(given.value, tuple) else ()
        named = [isinstance(one, Opening) and stem(str(one.what).split()[-1]) == said["what"].lower() for one in row]
        at = [n for n, alike in enumerate(named) if alike]
        if len(at) != 1:
            continue
        one: Opening = row[at[0]]
        wide, new = _is_width(one, said["side"].lower()), places[0].value
        unit = new.unit if isinstance(new, Length) else (one.width if wide else one.height).unit
        size = Length(new.value, unit)
        anew = replace(one, width=size) if wide else replace(one, height=size)
        now = (*row[: at[0]], anew, *row[at[0] + 1 :])
        return [Question(last.topic.name, {name: Heard(now, 0, len(wanted.rest), wanted.rest)}, _SCORE)]
    return []


def _named(rest: str, last: Asked) -> str:
    """The line with the openings that were told last by their name: they're 1.5 wide, which no wall is."""
    them = _THEM.match(rest)
    lists = {name: given.value for name, given in last.givens.items() if isinstance(given.value, tuple) and given.value}
    openings = {name: value for name, value in lists.items() if isinstance(value[0], Opening)}
    if them is None or len(openings) != 1:
        return rest
    ((name, told),) = openings.items()
    meant = last.changed == {name} or (len(told) == 1 and (told[0].count > 1 or "it" not in them[0].lower()))
    return f"{str(told[-1].what).split()[-1]}s are {rest[them.end() :]}" if meant else rest


def _is_width(one: Opening, word: str) -> bool:
    """Whether a word tells of the side that was said first: a door that was said 2.1 by 0.9 is 2.1 high."""
    across = word in ("wide", "across")
    lies = "door" in str(one.what) and one.width.to("in").value >= _UPRIGHT * one.height.to("in").value
    return across is not lies
