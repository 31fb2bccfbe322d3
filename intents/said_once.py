"""The quantities of a line, each said once: without what was put right in the same breath, or said again to make sure."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from intents.echoes import without_echoes
from intents.from_square import without_said_again
from intents.measures import readings
from intents.not_that import not_that
from intents.put_right import put_right
from intents.reading import Reading
from intents.tokens import Token

MOST = 4  # corrections and rounds of repeats of one line


Rows = list[list[Reading]]
Work = Callable[[list[Token], Rows], list[Token] | None]


def meant_once(tokens: list[Token]) -> tuple[list[Token], Rows]:
    """The same, without what a quantity of the line is said not to be: 24 wide, not 22."""
    return _worked(*said_once(tokens), (not_that,))


def said_once(tokens: list[Token], mend: bool = True, rows: Rows | None = None) -> tuple[list[Token], Rows]:
    """The tokens and their readings; without `mend`, what was put right stays beside what it was put right to.

    `rows` are the readings of these tokens, where they are known.
    """
    rows = readings(tokens) if rows is None else rows
    return _worked(tokens, rows, (put_right, without_echoes, without_said_again) if mend else (without_echoes,))


def _worked(tokens: list[Token], rows: Rows, works: Sequence[Work]) -> tuple[list[Token], Rows]:
    for work in works:
        for _ in range(MOST):
            found = work(tokens, rows)
            if found is None:
                break
            tokens, rows = found, readings(found)
    return tokens, rows
