"""What a bare number can't be: one that counts things is no share and no area, and "this one" is no number at all."""

from __future__ import annotations

from intents.chart import Chart
from intents.reading import Reading
from solvers.quantities import Area, Count, Length, Percent, Temperature, TemperatureChange

NEVER_ONE = (Area, Percent, Temperature, TemperatureChange)  # with no unit: in one piece, one wall
POINTS = frozenset("this that which every other another last same".split())  # before a "one" that stands for a thing
WEIGHS = frozenset("is weighs costs runs".split())  # one bundle is 61 pounds
# A number before one of these is no length either.
OPENINGS = frozenset("windows doors openings corners gables dormers pieces storey storeys story stories ends".split())
END_PANELS = (["end", "panels"], ["end", "pieces"], ["end", "boards"])
GAUGES = range(12, 33)  # of sheet metal: 26 gauge is how thick it is, and no length
STICKS = (["2"], ["3"], ["4"], ["6"])  # the other size of a 1x2, a 1x3
_DAY_ENDS = frozenset(("", ",", ".", "i", "we", "he", "she", "they", "of"))  # after the day of a month
# A number before one of these counts them: it is no share and no area, and is a factor of what is asked.
COUNTED = frozenset(
    "screw screws nail nails fastener fasteners clip clips staple staples windows doors openings gables dormers bundles pieces"
    " battens straps slats planks panels strips sides sheets tubes flats flat bends folds boards".split()
)


def is_no(chart: Chart, kind: type, reading: Reading) -> bool:
    """Whether a bare number can't be of a kind: "16s" are pieces of that length, one wall or four windows no area, and
    "this one" is no number at all."""
    after = chart.words[reading.end : reading.end + 1]
    if after == ["s"]:
        return kind in (Percent, Count, Area)
    if pronoun(chart, reading) and (
        chart.words[max(0, reading.start - 1)] in POINTS or not WEIGHS.isdisjoint(chart.words[reading.end + 1 : reading.end + 2])
    ):
        return True
    if kind in (Area, Percent) and not COUNTED.isdisjoint(after):
        return True
    if _names_one(chart, reading) or (kind is Length and _no_size(chart, reading)) or (kind is Count and _no_count(chart, reading)):
        return True
    return (kind is not Count and not OPENINGS.isdisjoint(after)) or (kind in NEVER_ONE and pronoun(chart, reading))


def pronoun(chart: Chart, reading: Reading) -> bool:
    """Whether a lone "one" stands for a thing ("this one", "one end") and not for a number, as it does with no unit."""
    return reading.kind == "number" and reading.end == reading.start + 1 and chart.words[reading.start] == "one"


def _names_one(chart: Chart, reading: Reading) -> bool:
    """Whether a number says which one of several, or which day: gable no. 2, on the 3rd."""
    words, start, end = chart.words, reading.start, reading.end
    day = words[start][:1].isdecimal() and words[start][-2:] in ("st", "nd", "rd", "th") and words[max(0, start - 2) : start] == ["on", "the"]
    return words[max(0, start - 2) : start] == ["no", "."] or (day and (words[end : end + 1] or [""])[0] in _DAY_ENDS)


def _no_size(chart: Chart, reading: Reading) -> bool:
    """Whether a number is of a gauge of metal, or of the two ends of a row: 26 gauge, two end panels."""
    words, end = chart.words, reading.end
    gauge = words[end : end + 1] in (["gauge"], ["ga"]) and reading.value.value in GAUGES  # type: ignore[union-attr]
    return gauge or words[end : end + 2] in END_PANELS


def _no_count(chart: Chart, reading: Reading) -> bool:
    """Whether a number is part of the name of a stick (1x3), or a width: 4 is the widest hole."""
    words, start, end = chart.words, reading.start, reading.end
    first = reading.value.value == 1 and words[end : end + 1] == ["×"]  # type: ignore[union-attr]
    stick = (first and words[end + 1 : end + 2] in STICKS) or (words[max(0, start - 2) : start] == ["1", "×"] and words[start:end] in STICKS)
    return stick or "widest" in words[end : end + 3]
