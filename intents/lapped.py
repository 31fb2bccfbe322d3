"""What shows of a board by how wide it is and how much it laps: "8 1/4 siding with a 1 1/4 lap" shows 7 inches."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Length, Number

_LAPS = frozenset("lap laps lapped lapping overlap overlaps overlapped overlapping".split())
_BOARDS = frozenset(
    "siding cladding board boards plank planks clapboard clapboards weatherboard weatherboards lapboard shiplap bevel slats"
    " shingles shakes course courses".split()
)
_BETWEEN = _BOARDS | frozenset("with and , a an lap cedar pine that which are is inch wide of cement fibre fiber".split())
_ON = frozenset(("on", "with", "for"))
_LED = frozenset("of by is at about".split())
_MOST_BETWEEN = 5
WIDE, DEEP = (Fraction(3), Fraction(16)), (Fraction(1, 4), Fraction(4))  # in, of a board and of its lap
_SURE = 0.95
_MM = Fraction(254, 10)


def lapped(tokens: Sequence[Token], chart: list[list[Reading]]) -> Iterator[Reading]:
    """Readings of kind length: the width of a board less its lap, over the words that tell both."""
    words = [token.text for token in tokens] + [""] * 8
    if _LAPS.isdisjoint(words) or _BOARDS.isdisjoint(words):
        return
    for at, row in enumerate(chart):
        for wide in _sizes(row):
            found = _with_lap(words, chart, wide) or _on_boards(words, chart, wide)
            if found is not None and not _BOARDS.isdisjoint(words[max(0, at - 3) : found.end + 1]):
                if any(row and not found.start <= n < found.end for n, row in enumerate(chart)):
                    yield found  # alone it is a sum: what is left of the board
                return


def _with_lap(words: list[str], chart: list[list[Reading]], wide: Reading) -> Reading | None:
    """The board from its width on to the end of what tells its lap; None where none is told."""
    at = wide.end
    while at < len(chart) and at - wide.end < _MOST_BETWEEN:
        if words[at] in _LAPS and (lap := _after(words, chart, at + 1)) is not None:
            return _shows(wide, lap, lap.end)
        for lap in _sizes(chart[at]) if at > wide.end else ():  # 5 1/2 lap siding is 5 1/2
            if words[lap.end] in _LAPS:
                return _shows(wide, lap, lap.end + 1)
        if words[at] not in _BETWEEN:
            return None
        at += 1
    return None


def _on_boards(words: list[str], chart: list[list[Reading]], lap: Reading) -> Reading | None:
    """A lap told before the boards: a lap of 30 on 175 boards."""
    before = words[max(0, lap.start - 2) : lap.start]
    if _LAPS.isdisjoint(before) or words[lap.end] not in _ON:
        return None
    at = lap.end + 1 + (words[lap.end + 1] in ("a", "an"))
    wide = next(_sizes(chart[at]), None) if at < len(chart) else None
    if wide is None or _BOARDS.isdisjoint(words[wide.end : wide.end + 2]):
        return None
    shown = _shows(wide, lap, wide.end)
    return replace(shown, start=lap.start - 1 - (before[-1] in _LED)) if shown is not None else None


def _after(words: list[str], chart: list[list[Reading]], at: int) -> Reading | None:
    """The size right after a word for a lap: lapped | an inch, overlap of | 30."""
    at += words[at] in _LED
    return next(_sizes(chart[at]), None) if at < len(chart) else None


def _shows(wide: Reading, lap: Reading, end: int) -> Reading | None:
    """The width less the lap, where they can be those of a board; a bare lap is in the unit of the width."""
    unit = _unit(wide) or _unit(lap) or ("mm" if _value(wide) > DEEP[0] * 100 else "in")
    one, other = _inches(wide, unit), _inches(lap, unit)
    if not (WIDE[0] <= one <= WIDE[1] and DEEP[0] <= other <= DEEP[1] and 2 * other < one):
        return None
    shown = one - other
    value = Length(shown * _MM, "mm") if unit == "mm" else Length(shown, "in")
    return Reading("length", wide.start, end, value, _SURE)


def _sizes(row: Sequence[Reading]) -> Iterator[Reading]:
    """The lengths of a place in inches or metric, then its numbers, the longest first."""
    yield from (r for r in row if r.kind == "length" and isinstance(r.value, Length) and r.value.unit in ("in", "mm", "cm"))
    yield from (r for r in row if r.kind == "number" and isinstance(r.value, Number))


def _unit(reading: Reading) -> str:
    value = reading.value
    return ("in" if value.unit == "in" else "mm") if isinstance(value, Length) else ""


def _value(reading: Reading) -> Fraction:
    return reading.value.value if isinstance(reading.value, Length | Number) else Fraction(0)


def _inches(reading: Reading, unit: str) -> Fraction:
    value = reading.value
    if isinstance(value, Length):
        return value.to("in").value
    return _value(reading) / _MM if unit == "mm" else _value(reading)
