"""Coefficients of linear thermal expansion: "58 millionths per kelvin", 5.8e-5 /K, 0.000032 per °F, 70 μm/m·K.

A maker's own figure is better than a table's, so people read it off the sheet and give it.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.degrees import DEGREES, SCALES
from intents.numbers import Line
from intents.reading import Head, Reading
from solvers.quantities import Expansion

_MILLIONTHS = frozenset(("millionths", "millionth", "ppm"))
_MICRONS = frozenset(("μm", "um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"))
_INCHES = frozenset(("in", "inch", "inches"))
_METRES = frozenset(("m", "metre", "metres", "meter", "meters"))
_SAME = (_INCHES, _METRES, frozenset(("mm",)), frozenset(("ft", "foot", "feet")))
_PER = frozenset(("per", "/", "a", "an", "each", "every", "·", "for"))
_SCALES = {"k": "perC", "kelvin": "perC"} | {word: f"per{scale[-1]}" for word, scale in SCALES.items()}
STARTS = _MILLIONTHS | _MICRONS | frozenset(("e", "×", "mm", "hundred", "in", "per"))
LEAST_PARTS = 1000  # a plain figure per degree is far under one of so many: more is no coefficient
_SMALL = Fraction(1, LEAST_PARTS)
_MOST = Fraction(1, 1000)
PER_SOME_DEGREE = 0.6  # how sure, where no scale is said
_BARE = 0.5  # nor that it is per degree at all


def expansions(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """A coefficient made of a head at i and what comes after it."""
    word = line.words[head.unit]
    if word not in STARTS and not (0 < head.value < _SMALL):
        return
    at, size, told = _size(line, head)
    if not size or not 0 < head.value * size < _MOST:
        return
    at = _same_units(line.words, at)
    end, per = _degree(line.words, at)
    if not told and end == at:
        return
    value = head.value * size
    if per:
        yield Reading("expansion", i, end, Expansion(value, per), head.sure)
    else:
        sure = (PER_SOME_DEGREE if end > at else _BARE) * head.sure
        yield Reading("expansion", i, end, Expansion(value, "perC"), sure, (Expansion(value, "perF"),))


def _size(line: Line, head: Head) -> tuple[int, Fraction, bool]:
    """Where the figure ends, what it counts in, and whether that alone tells it to be a coefficient; 0 for none."""
    words, at = line.words, head.unit
    word, after = words[at], words[at + 1]
    if word in _MILLIONTHS:
        return at + 1, Fraction(1, 10**6), True
    if word == "hundred" and after in ("thousandths", "thousandth"):
        return at + 2, Fraction(1, 10**5), True
    if word in _MICRONS and after in _PER and words[at + 2] in _METRES:
        return at + 3, Fraction(1, 10**6), True
    if word == "mm" and after in _PER and words[at + 2] in _METRES:
        return at + 3, Fraction(1, 1000), False
    if word == "e" or (word == "×" and after == "10"):
        return _power(words, at + (1 if word == "e" else 2))
    if word in ("in", "per"):
        below = next((p for p in line.pieces(at + 1) if p.value in (10**5, 10**6)), None)
        if below:
            return below.end, 1 / below.value, False
    return at, Fraction(0 < head.value < _SMALL), False


def _power(words: list[str], at: int) -> tuple[int, Fraction, bool]:
    """A negative power of ten, whose minus may have gone: e-5, × 10^-6, × 10⁻⁶, 10 to the minus 6."""
    while words[at] in ("^", "-", "minus", "to", "the"):
        at += 1
    if words[at] in ("4", "5", "6", "7"):
        return at + 1, Fraction(1, 10 ** int(words[at])), True
    return at, Fraction(0), False


def _same_units(words: list[str], at: int) -> int:
    """Past "in per in", "m/m": a length of a length counts for nothing."""
    start = at + (words[at] in ("per", "/"))
    for units in _SAME:
        if words[start] in units:
            if words[start + 1] in _PER and words[start + 2] in units:
                return start + 3
            if start == at + 1:  # per inch, per degree
                return start + 1
    return at


def _degree(words: list[str], at: int) -> tuple[int, str]:
    """Where "per degree F" ends, and its unit; "" where no scale is said."""
    start = at
    while words[start] in _PER:
        start += 1
    if start == at and words[at] not in _SCALES:
        return at, ""
    end = start + (words[start] in DEGREES)
    if words[end] in _SCALES:
        return end + 1, _SCALES[words[end]]
    return (end if end > start else at), ""
