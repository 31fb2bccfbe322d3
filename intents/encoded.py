"""A sentence as the encoder sees it: its words in order, each quantity as a sign of its kind, unit and rough size.

No number is seen itself, only how many doublings it is from one, how it ranks among its kind and how fine it is, so that
no number is ever learned by heart. See encoder.py for what is done with them.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import log2
from typing import NamedTuple

from intents.chart import Chart
from intents.features import size_of, wholes
from intents.reading import Dims, Reading

UNITS = ("", "none", "in", "ft", "yd", "mm", "cm", "m", "in2", "ft2", "m2", "deg", "degC", "degF", "dollar", "percent")
LEAST_SIZE, MOST_SIZE = -7, 14  # doublings
RANKS, FINEST = 5, 16
BY = "by"
MOST_KEPT = 4096  # words kept as signs


class Sign(NamedTuple):
    """One word, or one quantity: its kind ("#length") and the numbers of its unit, size, rank and fineness; `key` tells it."""

    word: str
    unit: int = 0
    size: int = 0
    rank: int = 0
    fine: int = 0
    key: tuple[int, int] = (-1, 0)  # the token a quantity starts at, and which part of a size of several it is


def encoder_signs(chart: Chart) -> list[Sign]:
    """The signs of a sentence, from left to right."""
    found: list[Sign | tuple[Reading, int, int]] = []
    past = 0
    for whole in wholes(chart):
        found += map(_word, chart.words[past : whole.start])
        if isinstance(whole.value, Dims):
            for n, part in enumerate(whole.value.parts, 1):
                found += [Sign(BY)] if n > 1 else []
                found.append((part, whole.start, n))
        else:
            found.append((whole, whole.start, 0))
        past = whole.end
    found += map(_word, chart.words[past:])
    quantities = [each[0] for each in found if not isinstance(each, Sign)]
    sizes = sorted({(reading.kind, size_of(reading)) for reading in quantities})
    return [each if isinstance(each, Sign) else _sign(*each, sizes) for each in found]


@lru_cache(maxsize=MOST_KEPT)
def _word(word: str) -> Sign:
    return Sign(word)


def _sign(reading: Reading, start: int, part: int, sizes: list[tuple[str, float]]) -> Sign:
    size, unit = size_of(reading), getattr(reading.value, "unit", "")
    same = [each for kind, each in sizes if kind == reading.kind]
    doublings = round(log2(abs(size))) if size else LEAST_SIZE
    value = getattr(reading.value, "value", None)
    return Sign(
        f"#{reading.kind}",
        UNITS.index(unit) if unit in UNITS else 0,
        min(max(doublings, LEAST_SIZE), MOST_SIZE) - LEAST_SIZE + 1,
        min(same.index(size), RANKS - 1) + 1,
        min(value.denominator, FINEST) if isinstance(value, Fraction) else 0,
        (start, part),
    )

