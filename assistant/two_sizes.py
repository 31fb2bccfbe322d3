"""Both sizes of a wall said again: "and 30 by 10", "what about 12 by 8", after one that was 25 by 10.

Two sizes said together take the places of the two that were, in the order they are told in.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.meant_for import Wanted
from assistant.said_over import Place, as_length, of_feet
from assistant.usual import is_usual
from intents.expressions import expression
from intents.question import Heard, Question
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.quantities import Length, Number
from solvers.rounding import reading
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.pending import Asked

_PAIRS = (("wall_length", "wall_height"), ("length", "height"), ("width", "height"), ("side", "other_side"))
_LEGS = ("run", "rise")  # of a brace, told one by the other
_BY = expression(
    r"(?:(?:the|my|our|an?|another|other|wall|gable|one|is|of|at) )*(\S.*?) ?(?:\bby\b|[x×]) ?(\S.*?)(?: (?:wall|gable|one))?",
    re.IGNORECASE,
)


def again(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with both sizes of its wall as the line says them; none where it says no such two."""
    givens = _sizes(wanted, last)
    return [Question(last.topic.name, givens, 1.0)] if givens and not of_no_wall(wanted, last) else []


def of_no_wall(wanted: Wanted, last: Asked) -> bool:
    """Whether the two sizes of a line are those of no wall: 3 by 7 is a door."""
    return any(not is_usual(last.topic.parameter(n).slot, heard.value, 1) for n, heard in _sizes(wanted, last).items())


def _sizes(wanted: Wanted, last: Asked) -> dict[str, Heard]:
    """Both sizes of the last question's wall as the line says them; nothing where it says no such two."""
    line = _BY.fullmatch(wanted.rest.strip(" .!?"))
    pairs = (*_PAIRS, _LEGS) if last.topic.name == "right triangle" else _PAIRS
    pair = next((pair for pair in pairs if all(_told(last, name) for name in pair)), None)
    if line is None or pair is None or wanted.old:
        return {}
    sizes = [_size(said) for said in line.groups()]
    said = next((size for size in sizes if isinstance(size, Length)), None)
    givens = {}
    for name, size in zip(pair, sizes, strict=True):
        if size is None:
            return {}
        was = last.givens[name].value
        feet = not isinstance(size, Length) and of_feet(size.value, was, was.text)  # nine, in place of seven foot six
        unit = ("ft" if feet else was.unit) if said is None else "ft" if said.unit == "in" else said.unit
        value = as_length(size, unit)
        givens[name] = Heard(replace(value, text=""), 0, len(wanted.rest), wanted.rest)
    return givens


def _size(said: str) -> Length | Number | None:
    """The one number or length that words are."""
    rows = numbers_in(said)
    whole = len(rows) == 1 and (rows[0].start, rows[0].end) == (0, len(tokenize(said)))
    return rows[0].value if whole and isinstance(rows[0].value, Length | Number) else None


def frame_of(places: list[Place], last: Asked) -> dict[str, Given]:
    """Both sides of a frame as a line tells them, a bare number in the unit that the one before it had."""
    sides = {}
    for name, place in zip(("side", "other_side"), places, strict=True):
        value = as_length(place.value, last.givens[name].value.unit)
        sides[name] = Given(name, replace(value, text=reading(value.value, value.unit)), "asked")
    return sides


def _told(last: Asked, name: str) -> bool:
    given = last.givens.get(name)
    return given is not None and given.source != "assumed" and isinstance(given.value, Length)
