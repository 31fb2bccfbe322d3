"""Prices with no word for money: "twenty two fifty apiece" is 22.50, as "fifteen ninety nine" is 15.99."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.listed import Listing
from intents.reading import Reading
from solvers.quantities import Money

_EACH = frozenset("each apiece ea a per for".split())
_SURE = 0.8


def prices(listing: Listing) -> Iterator[Reading]:
    """Two numbers in words, the second of two figures, before "each" or "a board"."""
    for i, word in enumerate(listing.words[: len(listing.tokens)]):
        if not word.isalpha():
            continue
        for end, whole in listing.counts(i):
            if not 0 < whole < 100 or not listing.words[end].isalpha():
                continue
            for last, cents in listing.counts(end):
                if 10 <= cents < 100 and listing.words[last] in _EACH:
                    yield Reading("money", i, last, Money(whole + Fraction(cents, 100), "money"), _SURE)
