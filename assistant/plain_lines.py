"""A plain line that a line of a talk stands for, with what must be so of its answer (`leans_on_it.py`)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from assistant.said_over import same_value
from assistant.several import told_of

if TYPE_CHECKING:
    from assistant.pending import Asked


def anything(now: Asked, last: Asked) -> bool:
    """What is so of every answer."""
    return True


def told_otherwise(now: Asked, last: Asked) -> list[str]:
    """The givens that a question tells and the one before it did not, or told otherwise."""
    was = told_of(last)
    return [name for name, given in told_of(now).items() if name not in was or not same_value(given.value, was[name].value)]


@dataclass(frozen=True, slots=True)
class Plain:
    """A plain line: its words, its topics (none: that of the question before), how many givens it changes, a number that must be
    in them, and what else must be so of the question it makes."""

    line: str
    topics: tuple[str, ...] = ()
    changes: int = 1
    told: str = ""
    holds: Callable[[Asked, Asked], bool] = anything
