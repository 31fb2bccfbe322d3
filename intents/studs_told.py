"""How many studs, joists or rafters stand at so far apart in so long a wall: "how many 2x4s at 16 for a 20 foot wall".

Most lines about joists ask what they carry, and are none of ours; this one has how far apart they are, how long the row is, and
no other number.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, quantities
from intents.in_line import heard
from intents.question import Question
from intents.reading import Dims, Reading
from solvers.quantities import Length, Number

TOPIC = "marks on centre"
_FRAMED = frozenset("stud studs joist joists rafter rafters truss trusses".split())
_TWO_BY = frozenset("4 6 8 10 12 four six eight ten twelve".split())
_CENTRES = frozenset("centre centres center centers oc".split())
_SPACED = (12, 16, 19.2, 24, 300, 400, 406, 450, 488, 600, 610)  # as they are set out, in inches or in millimetres
_LEAST_MM = 100  # a bare number from there on is of millimetres
_SCORE = 9.0  # as of a rule that fits whole
_ELSE = frozenset(  # what makes it another question: what they carry, how high they are, what else is nailed to them
    "span spans carry hold size load high tall height each per stick sticks length lengths nails screws straps strapping siding"
    " sheets sheathing courses layers double doubled both first corner corners opening openings window windows door doors".split()
)
_AT = frozenset(("at", "@", "every", "on"))


def studs_told(chart: Chart) -> Question | None:
    """The marks of such a line; None where it tells more, or less."""
    words = chart.words
    if ("how", "many") not in pairwise(words) or not _ELSE.isdisjoint(words):
        return None
    lumber = _lumber(chart)
    if lumber is None and _FRAMED.isdisjoint(words):
        return None
    start, end = lumber or (0, 0)
    found = [r for r in quantities(chart, 0, len(words)) if not start <= r.start < end]
    spaced = [r for r in found if _spacing(words, r)]
    if len(found) != 2 or len(spaced) != 1:
        return None
    row = next(r for r in found if r is not spaced[0])
    if not isinstance(row.value, Length) or row.kind != "length":
        return None
    apart = spaced[0].value
    inches = isinstance(apart, Number) and apart.value < _LEAST_MM
    unit = apart.unit if isinstance(apart, Length) else "in" if inches else "mm"
    spacing = heard(chart, spaced[0], Length(Fraction(apart.value), unit))  # type: ignore[union-attr]
    length = heard(chart, row, row.value)
    return Question(TOPIC, {"length": length, "spacing": spacing}, _SCORE, words=["how", "many", "marks"])


def _lumber(chart: Chart) -> tuple[int, int] | None:
    """Where what is counted goes by its two sizes: how many 2x4s."""
    said = next((at for at in range(2, len(chart.words) - 2) if _two_by(chart.words[at : at + 3])), 0)
    if said and chart.words[said - 2 : said] == ["how", "many"]:
        return said, said + 3
    for row in chart.readings:
        for reading in row:
            after = chart.words[reading.start : reading.end]
            if isinstance(reading.value, Dims) and after[:1] in (["2"], ["two"]) and not _TWO_BY.isdisjoint(after[1:]):
                before = chart.words[max(0, reading.start - 2) : reading.start]
                return (reading.start, reading.end) if before == ["how", "many"] else None
    return None


def _two_by(words: list[str]) -> bool:
    """Whether these are a two by four, or several of them."""
    return words[:2] == ["two", "by"] and not {words[2], words[2].removesuffix("s")}.isdisjoint(_TWO_BY)


def _spacing(words: list[str], reading: Reading) -> bool:
    """Whether it is how far apart they are, as studs are set out."""
    value = reading.value
    if not isinstance(value, Number | Length) or float(value.value) not in _SPACED:
        return False
    after = words[reading.end : reading.end + 2]
    return not _CENTRES.isdisjoint(after) or not _AT.isdisjoint(words[max(0, reading.start - 1) : reading.start])
