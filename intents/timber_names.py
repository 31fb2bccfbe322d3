"""What a timber or a trim is called by its section: a 4x4, out of a two by six, the skirt is five quarter by six.

It measures nothing that is asked of: an angle has no section, and a brace has two legs besides what it is cut from.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from intents.chart import Chart
from intents.reading import Dims, Reading
from intents.remarks import ENDS
from solvers.quantities import Length, Number

_THICK, _WIDE = (1, 2, 3, 4, 6, 8, Fraction(5, 4)), (2, 3, 4, 6, 8, 10, 12)  # in
_TIMBERS = frozenset(
    "brace braces strut post posts beam stuff stock lumber timber prop kicker rafter rafters stringer stringers joist"
    " joists".split()
)
_OF = (["out", "of"], ["made", "of"], ["is", "in"], ["cut", "from"])
_FIVE_QUARTER = (["five", "quarter"], ["5", "quarter"])
_LEGS = 2
MADE_OF = frozenset("ply plywood osb cedar pine spruce larch fir hardboard mdf".split())
_STRAPS = frozenset("battens strapping furring lath laths straps mesh".split())
_THICKEST = 4  # in
_FASTENERS = frozenset("nail nails screw screws staple staples fastener fasteners".split())
_KINDS = frozenset("deck trim roofing siding ring stainless galvanized galvanised wood finish structural coated".split())
_MOST_GAUGE = 31
_LONGEST = 13  # in, of a screw; and the widest face


def section(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is the section of a piece, of which an angle has none: the skirt is 5/4 by 6, five quarter pine."""
    if reading.kind == "number" and list(words[reading.start : reading.end]) in _FIVE_QUARTER:
        return True
    return _nominal(reading)


def timber(chart: Chart, reading: Reading) -> bool:
    """Whether it is what a timber is called, in words too: a 4x4, out of | two by six, 2 by 4 brace."""
    if not _nominal(reading):
        return False
    words = chart.words
    if words[reading.end - 1][-1:] == "s" and words[reading.end - 1][:-1].isdecimal():
        return True  # 2x4s are what I have
    before, after = words[max(0, reading.start - 2) : reading.start], words[reading.end : reading.end + 1]
    ends = not after or after[0] in ENDS
    if ends and (before[-1:] in (["a"], ["an"]) or before in _OF):
        return True
    alone = ends and before[-1:] == [","] and sum(r.kind == "length" for _, row in chart.starts() for _, r in row) >= _LEGS
    return alone or (bool(after) and after[0] in _TIMBERS)


def made_of(chart: Chart, reading: Reading) -> bool:
    """Whether it is how thick the stuff is that a thing is made of: 1/4 ply, 3/4 battens; three battens are so many."""
    value, after = reading.value, chart.words[reading.end : reading.end + 1]
    if not isinstance(value, Number | Length) or (MADE_OF.isdisjoint(after) and _STRAPS.isdisjoint(after)):
        return False
    if MADE_OF.isdisjoint(after) and isinstance(value, Number) and value.value.denominator == 1:
        return False
    thick = value.to("in").value if isinstance(value, Length) else value.value
    return reading.kind in ("number", "length") and thick < _THICKEST


def of_fastener(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is how long the nails or screws are that are counted: 2 1/2 inch nails; 16 nails are so many."""
    after = words[reading.end : reading.end + 2]
    named = not _FASTENERS.isdisjoint(after[:1]) or (len(after) == 2 and after[1] in _FASTENERS and after[0] in _KINDS)
    value = reading.value
    long = isinstance(value, Length) and value.to("in").value < _LONGEST
    return named and (long or (reading.kind == "number" and isinstance(value, Number) and value.value.denominator > 1))


def _nominal(reading: Reading) -> bool:
    """Whether two bare numbers said together are what lumber is called by."""
    parts = reading.value.parts if isinstance(reading.value, Dims) else ()
    sizes = [part.value.value for part in parts if isinstance(part.value, Number)]
    return len(sizes) == len(parts) == 2 and sizes[0] in _THICK and sizes[1] in _WIDE


def on_tape(reading: Reading) -> bool:
    """Whether a bare number is so many inches and a part of one, as no angle or count is told: a 5 1/2 board."""
    value = reading.value.value if isinstance(reading.value, Number) else None
    return value is not None and value < _LONGEST and value.denominator in (2, 4, 8, 16)


def gauge(words: Sequence[str], reading: Reading) -> bool:
    """Whether it tells how thick wire or sheet is: 12 gauge."""
    thick = reading.value.value if isinstance(reading.value, Number) else _MOST_GAUGE
    return words[reading.end : reading.end + 1] == ["gauge"] and thick < _MOST_GAUGE
