"""Sizes said together: 10 by 12, 3' x 4', 32 by 9 foot, 2 by 4 by 8 foot."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from intents.lengths import FEET, PAIR
from intents.number_words import TAPE
from intents.numbers import Line
from intents.reading import Dims, Reading
from solvers.quantities import Length, Quantity

BY = frozenset(("by", "×", "buy", "bye"))  # the last two heard for the first
_SIDES = frozenset(["wide", "high", "long", "deep", "tall", "thick"])
_SHARES = frozenset(
    ["divide", "divided", "divvy", "split", "times", "multiply", "multiplied", "halve", "cut"]
)  # by 7: a sum, no size
_SHARED = 0.8  # "32 by 9 foot": the unit is nearly always meant for both


def sizes(line: Line, chart: list[list[Reading]], i: int) -> Iterator[Reading]:
    """The pairs and triples whose first part starts at i."""
    for first in _parts(chart[i]):
        for second in _next(line, chart, first):
            longer = False
            for third in _next(line, chart, second):
                longer = True
                yield _dims((first, second, third), line, 1.0)
            yield _dims((first, second), line, 0.5 if longer else 1.0)


def _parts(row: list[Reading]) -> list[Reading]:
    """The number and length readings a size can be made of: the longest of each that is not a slip of a longer one."""
    found = [reading for reading in row if reading.kind in ("number", "length") and reading.sure >= 0.5]
    return sorted(found, key=lambda reading: -reading.end)


def _next(line: Line, chart: list[list[Reading]], part: Reading) -> Iterator[Reading]:
    """What follows `part` and "by": the longest length, and the longest number without a unit."""
    words, at = line.words, part.end
    at += words[at] in _SIDES
    if words[at] not in BY or at + 1 >= len(chart):
        return
    seen: set[str] = set()
    for reading in (*_feet_too(line, chart, part, at + 1), *_parts(chart[at + 1])):
        if reading.kind not in seen:
            seen.add(reading.kind)
            yield reading


def _feet_too(line: Line, chart: list[list[Reading]], part: Reading, at: int) -> Iterator[Reading]:
    """A spoken pair after feet, with neither said: nine foot by | fourteen six; "by ten six windows" counts the windows."""
    if part.kind != "length" or FEET.isdisjoint(line.words[part.start : part.end]):
        return
    pairs = [r for r in chart[at] if r.kind == "length" and r.sure == PAIR and r.end == at + 2]
    if pairs and not line.words[at + 2].endswith("s") and line.words[at + 2] not in ("foot", "by", "×", "and"):
        yield replace(pairs[0], sure=0.9)


def _dims(parts: tuple[Reading, ...], line: Line, sure: float) -> Reading:
    unit = next((_said_unit(part, line) for part in reversed(parts) if part.kind == "length"), None)
    shared = tuple(_with_unit(part, unit, len(parts)) if unit and part.kind == "number" else part for part in parts)
    if all(_said_pair(part, line) for part in shared):  # 3-0 by 6-8: two of them together can hardly be anything else
        shared = tuple(replace(part, sure=max(part.sure, 0.9)) for part in shared)
    before = line.words[max(0, parts[0].start - 4) : parts[0].start]
    if not _SHARES.isdisjoint(before):
        sure *= 0.3
    return Reading("dims", parts[0].start, parts[-1].end, Dims(shared), sure * min(part.sure for part in shared))


def _said_unit(part: Reading, line: Line) -> str:
    """The unit a length shares with a bare number beside it: the first one said in it."""
    said = line.words[part.start : part.end]
    if any(word in FEET for word in said) or _said_pair(part, line):
        return "ft"
    return part.value.unit if isinstance(part.value, Length) else "in"


def _said_pair(part: Reading, line: Line) -> bool:
    """Whether a length is a feet-and-inches pair with neither said."""
    return part.kind == "length" and "-" in line.words[part.start : part.end] and part.sure == 0.6


def _with_unit(part: Reading, unit: str, sides: int) -> Reading:
    """A bare number with the unit said beside it; not feet for 3/8, nor for the 2 by 4 of an 8 foot stick."""
    if not isinstance(part.value, Quantity) or (unit == "ft" and (sides == 3 or part.value.value < 1)):
        return part
    parts = TAPE if unit == "mm" else TAPE - {2, 4} if unit in ("cm", "m") else ()  # halves and quarters are said of metres too
    if part.end > part.start + 1 and part.value.value.denominator in parts:
        return part  # 3/8 by 6 mm is off a tape; 36 1/2 by 900 mm may be
    return Reading("length", part.start, part.end, Length(part.value.value, unit), _SHARED * part.sure)
