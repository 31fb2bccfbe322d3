"""Sums of things whose sizes and counts are told apart: "board 5 1/2, gap 3/16, nine boards with eight gaps, overall width".

Read only where every quantity of the line is the size of a thing or counts it, and each thing has both.
"""

from __future__ import annotations

from functools import reduce

from intents.reading import Reading
from intents.stated_units import MILLIMETRES
from intents.sum_counts import MOST_COUNT
from intents.sum_parts import Found, Parts
from solvers.quantities import Length, Number
from solvers.sums import PLUS, TIMES, Part, Sum, told_as_length

_ASKS = frozenset("overall total altogether width length run far wide long what whats sum".split())
_LINKS = frozenset("is are at of : = @".split())
_NO_THINGS = frozenset("rise run height width length depth".split())  # sizes of something, and no things in a row
LEAST_MM = 25  # the largest of sizes in millimetres: no board is 25 in wide and its gap told in whole inches


def named(reader: Parts) -> Reading | None:
    """The sum of so many of each thing, where the sizes are told first."""
    if _ASKS.isdisjoint(reader.words):
        return None
    sizes: dict[str, Found] = {}
    counts: dict[str, Number] = {}
    at = 0
    while at < len(reader.tokens):
        found = reader.value(at) if reader.chart[at] else None
        if found is None:
            at += 1
            continue
        name, last = _counted(reader, found), _named_before(reader, at)
        if name and name in sizes and name not in counts:
            assert isinstance(found.part, Number)
            counts[name] = found.part
        elif last and last not in sizes and not (name and isinstance(found.part, Number) and last in counts):
            sizes[last] = found
        else:
            return None
        at = found.end
    if len(sizes) < 2 or sizes.keys() != counts.keys():
        return None
    return _summed(reader, sizes, counts)


def _counted(reader: Parts, found: Found) -> str:
    """The name of the things that a number counts: nine | boards."""
    word = reader.words[found.end]
    whole = isinstance(found.part, Number) and found.part.value.denominator == 1 and 1 <= found.part.value <= MOST_COUNT
    return word.removesuffix("s") if whole and word.isalpha() and word.endswith("s") and len(word) > 3 else ""


def _named_before(reader: Parts, at: int) -> str:
    """The name of the thing that a size is of: deck board | 5 1/2; gaps of | 3/16."""
    before = at - 1
    while before > 0 and reader.words[before] in _LINKS:
        before -= 1
    word = reader.words[before] if before >= 0 else ""
    name = word.removesuffix("s")
    return name if word.isalpha() and len(word) > 2 and not reader.chart[before] and name not in _NO_THINGS else ""


def _summed(reader: Parts, sizes: dict[str, Found], counts: dict[str, Number]) -> Reading | None:
    parts = {name: found.part for name, found in sizes.items()}
    numbers = [part for part in parts.values() if isinstance(part, Number)]
    if len(numbers) == len(parts) and not MILLIMETRES.isdisjoint(reader.words):
        if max(part.value for part in numbers) < LEAST_MM or any(part.value.denominator > 1 for part in numbers):
            return None
        parts = {name: Length(part.value, "mm", part.text) for name, part in zip(parts, numbers, strict=True)}
    if not any(told_as_length(part) for part in parts.values()):
        return None
    products: list[Part] = [Sum(TIMES, counts[name], part) for name, part in parts.items()]
    whole = reduce(lambda total, each: Sum(PLUS, total, each), products)
    return Reading("sum", 0, len(reader.tokens), whole)  # type: ignore[arg-type]
