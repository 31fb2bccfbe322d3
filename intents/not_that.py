"""A quantity told with the one it is not: crown at 45, not the 38; 24 wide not 22; turned out 138 not 135."""

from __future__ import annotations

from fractions import Fraction

from intents.put_right import Rows, ending
from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Length, Quantity

_FILL, _ROLE = frozenset("the a an my your those these".split()), 3  # words of the one that is meant, at most, before "not"
_NEAR = Fraction(9, 5)  # times as large; farther off it is no slip of the same size
_LEAST = 3  # quantities of a line: a shorter one puts something right that was told before it
_COUNTS_THINGS = frozenset("times windows doors boards pieces sides faces courses".split())


def not_that(tokens: list[Token], rows: Rows) -> list[Token] | None:
    """The tokens without a quantity that is said not to be; None where there is none."""
    words = [token.text for token in tokens]
    if "not" not in words or _quantities(rows) < _LEAST:
        return None
    for at, word in enumerate(words[:-1]):
        if word != "not" or at < 1:
            continue
        start = at + 1 + (words[at + 1] in _FILL)
        denied = _longest(rows, start)
        meant = _before(words, rows, at)
        if denied is None or meant is None or not _alike(rows, meant, denied) or _counts(words, denied):
            continue
        cut = at - (words[at - 1] == ",")
        return [*tokens[:cut], *tokens[denied.end :]]
    return None


def _quantities(rows: Rows) -> int:
    """How many quantities are told, one after the other."""
    count = at = 0
    while at < len(rows):
        found = _longest(rows, at)
        count, at = (count + 1, found.end) if found is not None else (count, at + 1)
    return count


def _longest(rows: Rows, at: int) -> Reading | None:
    found = [r for r in rows[at] if isinstance(r.value, Quantity)] if at < len(rows) else []
    return max(found, key=lambda r: r.end, default=None)


def _before(words: list[str], rows: Rows, at: int) -> Reading | None:
    """The quantity before "not", a few plain words between."""
    stop = at
    while stop > 0 and at - stop <= _ROLE:
        found = ending(rows, stop)
        if found:
            return found[0]
        if not words[stop - 1].isalpha() and words[stop - 1] != ",":
            return None
        stop -= 1
    return None


def _alike(rows: Rows, meant: Reading, denied: Reading) -> bool:
    """Whether the two are of one kind and nearly of a size."""
    kinds = [{r.kind for r in rows[one.start] if r.end == one.end} for one in (meant, denied)]
    if kinds[0].isdisjoint(kinds[1]) and "number" not in kinds[0] | kinds[1]:
        return False
    one, other = meant.value, denied.value
    if not isinstance(one, Quantity) or not isinstance(other, Quantity) or min(one.value, other.value) <= 0:
        return False
    if isinstance(one, Length) and isinstance(other, Length):
        sizes = (one.to("in").value, other.to("in").value)
    else:
        sizes = (one.value, other.value)
    return sizes[0] != sizes[1] and max(sizes) <= min(sizes) * _NEAR


def _counts(words: list[str], denied: Reading) -> bool:
    return bool(words[denied.end : denied.end + 1]) and words[denied.end] in _COUNTS_THINGS
