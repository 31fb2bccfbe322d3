"""A unit said once for all the sizes of a sentence, or before its number: "75, 30, 20. Millimetres.", "metres: 29"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from intents.lengths import INCHES, METRES
from intents.numbers import Line
from intents.reading import Reading
from solvers.quantities import Length

MILLIMETRES = frozenset("mm millimetres millimeters millimetre millimeter mil".split())
_CENTIMETRES = frozenset("cm centimetres centimeters".split())
_METRIC = MILLIMETRES | _CENTIMETRES
_STOPS = frozenset(("", ".", ",", ";", "(", ")", "!", "?"))
_ALL = frozenset("all everything sizes numbers measurements dimensions".split())  # all in millimetres
_OF_AREA = frozenset("square sq cubic cu".split())
_SQUARE, _SQUARE_METRES = frozenset(("square", "sq")), frozenset(("m2", "m²", "sqm"))
_FEET = frozenset(("feet", "foot", "ft"))
_IMPERIAL = _FEET | INCHES | frozenset(("/", "'", '"', "in"))
_ASKED = frozenset("in to into of many nearest as".split())  # so many of them are asked for, of sizes in another unit
LEAST_WORDS, LEAST_LARGE = 3, 40


def stated_metric(words: Sequence[str]) -> str:
    """The metric unit that a sentence names on its own, for every size in it; "" when it names none so."""
    if _METRIC.isdisjoint(words):
        return ""
    for i, word in enumerate(words):
        if word not in _METRIC:
            continue
        before, after = (words[i - 1] if i else ""), (words[i + 1] if i + 1 < len(words) else "")
        alone = before in _STOPS and i > 0
        if after in _STOPS and (alone or (before == "in" and i > 1 and words[i - 2] in _ALL)):
            return "mm" if word in MILLIMETRES else "cm"
    return _at_the_end(words)


def _at_the_end(words: Sequence[str]) -> str:
    """Millimetres named last, after a word or a stop, where nothing is said in feet or inches: 90 dia, circumference mm."""
    said = [word for word in words if word not in _STOPS]
    if len(said) < LEAST_WORDS or said[-1] not in MILLIMETRES or not _IMPERIAL.isdisjoint(said):
        return ""
    sizes = [float(word) for word in said if word[:1].isdecimal() and word.replace(".", "").isdecimal()]
    led = said[-2][-1:].isdecimal() or said[-2] in _ASKED
    return "" if (led and "," not in words[-4:]) or max(sizes, default=0) < LEAST_LARGE else "mm"


def square_metres(words: Sequence[str]) -> bool:
    """Whether square metres are named, given or asked for."""
    if not _SQUARE_METRES.isdisjoint(words):
        return True
    if "squared" in words and any(b == "squared" and a in METRES for a, b in pairwise(words)):
        return True
    return not _SQUARE.isdisjoint(words) and any(a in _SQUARE and b in METRES for a, b in pairwise(words))


def in_millimetres(words: Sequence[str]) -> bool:
    """Whether millimetres are named anywhere: what is far too much in inches is then in those."""
    return not MILLIMETRES.isdisjoint(words)


def led_lengths(line: Line, i: int) -> Iterator[Reading]:
    """A length whose unit and a colon stand before its number: metres: 29."""
    word = line.words[i]
    if line.words[i + 1] not in (":", "=") or (i and (line.pieces(i - 1) or line.words[i - 1] in _OF_AREA)):
        return
    unit = "mm" if word in MILLIMETRES else "cm" if word in _CENTIMETRES else "m" if word in METRES else ""
    unit = unit or ("ft" if word in _FEET else "in" if word in INCHES and len(word) > 2 else "")
    for piece in line.pieces(i + 2) if unit else ():
        yield Reading("length", i, piece.end, Length(Fraction(piece.value), unit), piece.sure)
