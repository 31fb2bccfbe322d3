"""Whether a number that was said is in what was answered: no line that names a new value is answered as if it had not."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import fields, is_dataclass
from fractions import Fraction
from typing import Any

from intents.expressions import expression
from intents.question import Heard
from intents.talk import numbers_in
from solvers.quantities import Length, Quantity
from solvers.slots import Given

_DENIED = expression(r"\bnot(?: (?:an?|the))?\s*$", re.IGNORECASE)


def unheard(text: str, givens: Iterable[Given]) -> list[str]:
    """The numbers of a line that are in none of these givens, as values with their units."""
    held = {size for given in givens for size in _sizes(given.value)}
    said = [row.value for row in numbers_in(text) if isinstance(row.value, Quantity)]
    return [f"{value.value} {value.unit}" for value in said if held.isdisjoint(_both(value))]


def denied(text: str, heard: Iterable[Heard]) -> bool:
    """Whether one of these numbers is what it is not: 6 inches, not 5."""
    return any(_DENIED.search(text[: one.start]) for one in heard)


def _sizes(value: Any) -> Iterator[tuple[Fraction, str]]:
    """Every number in a value, be it one quantity, a list or a sum: as it stands, and lengths in inches too."""
    if isinstance(value, Quantity):
        yield from _both(value)
    elif isinstance(value, int | Fraction) and not isinstance(value, bool):
        yield Fraction(value), "none"
    elif isinstance(value, tuple):
        for part in value:
            yield from _sizes(part)
    elif is_dataclass(value) and not isinstance(value, type):
        for field in fields(value):
            yield from _sizes(getattr(value, field.name))


def _both(value: Quantity) -> set[tuple[Fraction, str]]:
    """A quantity as it is known again: by its bare number, and a length by its inches."""
    inches = {(value.to("in").value, "in")} if isinstance(value, Length) else set()
    return {(value.value, "none"), *inches}
