"""Stock by its metric length and no unit: "in 5.4s", "out of 4.8s", "3.6 lengths", "from 2400s".

Sticks go up by 0.3 m and nobody sells them by tenths of a foot. Where feet or inches are said, nothing is taken for metres.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from intents.lengths import METRES
from intents.reading import Reading
from solvers.quantities import Length

_STEP, _LEAST, _MOST = Fraction(3, 10), Fraction(9, 5), Fraction(36, 5)  # m
_SOLD = frozenset(("lengths", "sticks", "stock"))
_IMPERIAL = frozenset("ft foot feet ' \" in inch inches footer footers".split())


def metric_stock(words: Sequence[str], i: int) -> Iterator[Reading]:
    """The stock that a number at a place names by its length."""
    text, after = words[i], words[i + 1]
    if (after != "s" and after not in _SOLD) or not text[0].isdecimal():
        return
    if any(word == text and words[at + 1] in METRES for at, word in enumerate(words) if at != i):
        return  # our 5.1s, that's 5.1 m cladding
    whole = text.isdecimal() and len(text) == 4
    if not whole and (len(text) != 3 or text[1] != "."):
        return
    metres = Fraction(text) / (1000 if whole else 1)
    sold = _LEAST <= metres <= _MOST and not (metres / _STEP).denominator - 1
    said = {word for at, word in enumerate(words) if word in _IMPERIAL and not (word == "in" and _is_in(words, at))}
    if sold and not said:
        yield Reading("length", i, i + 1 + (after == "s"), Length(Fraction(text), "mm" if whole else "m"))


def _is_in(words: Sequence[str], at: int) -> bool:
    """Whether "in" is the small word: 77 metres of scotia | in 5.4s."""
    return not at or not words[at - 1][:1].isdecimal()
