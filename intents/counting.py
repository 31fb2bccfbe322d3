"""What a bare number can't be: one that counts things is no share and no area, and "this one" is no number at all."""

from __future__ import annotations

from intents.chart import Chart
from intents.reading import Reading
from solvers.quantities import Area, Count, Length, Percent, Pitch, Temperature, TemperatureChange

NEVER_ONE = (Area, Percent, Temperature, TemperatureChange)  # with no unit: in one piece, one wall
POINTS = frozenset("this that which every other another last same".split())  # before a "one" that stands for a thing
WEIGHS = frozenset("is weighs costs runs".split())  # one bundle is 61 pounds
# A number before one of these is no length either.
OPENINGS = frozenset("windows doors openings corners gables dormers pieces storey storeys story stories ends".split())
# The two ends of a row: two end panels are no 2 in.
END_PANELS = (["end", "panels"], ["end", "pieces"], ["end", "boards"])
HAVING = frozenset("i've have got has there theres we've they've had".split())
SIZED = frozenset(("by", "×"))
RISEN = (["up"], ["rises"])  # a gable that goes up 1.8 has no slope of 1.8
STICKS = (["2"], ["3"], ["4"], ["6"])  # the other size of a 1x2, a 1x3
_SQUARES = frozenset(("sqaure", "sqaures", "squre", "sqare"))  # 41 sqaure metres, slipped, is no side of 41
_ONE_OF = frozenset("side way end leg edge of face board piece wall corner rake slope course row".split())  # one side
_PACKS = frozenset("box boxes pack packs bundle carton case packet bag square tub tubs bucket pail".split())
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
    if kind is Length and chart.words[reading.end : reading.end + 2] in END_PANELS:
        return True
    if kind is Pitch and chart.words[reading.start - 1 : reading.start] in RISEN:
        return True
    if kind is Length and pronoun(chart, reading) and not _ONE_OF.isdisjoint(after):
        return True
    if kind is Length and not _SQUARES.isdisjoint(after) and chart.words[reading.end + 1 : reading.end + 2] != ["to"]:
        return True
    if kind is Length and packed(chart.words, reading.end):
        return True
    if kind is Count and _no_count(chart, reading):
        return True
    if kind is Length and not COUNTED.isdisjoint(after) and chart.words[max(0, reading.start - 1)] in HAVING:
        # I've 30 boards cut; not I've 3/4 straps behind
        return reading.kind != "number" or reading.value.value.denominator == 1  # type: ignore[union-attr]
    if kind is Length and after == ["walls"] and chart.words[max(0, reading.start - 1)] not in SIZED:
        return True  # four walls; not twenty by thirty walls
    return (kind is not Count and not OPENINGS.isdisjoint(after)) or (kind in NEVER_ONE and pronoun(chart, reading))


def packed(words: list[str], end: int) -> bool:
    """Whether what was counted up to a place is packed: 8 | in a box, ten | to the bundle, 6 | per pack."""
    to = words[end : end + 1]
    at = end + 2 if to in (["in"], ["to"]) and words[end + 1 : end + 2] in (["a"], ["the"], ["each"]) else end + 1
    return to in (["in"], ["to"], ["per"], ["a"]) and not _PACKS.isdisjoint(words[at : at + 1])


def pronoun(chart: Chart, reading: Reading) -> bool:
    """Whether a lone "one" stands for a thing ("this one", "one end") and not for a number, as it does with no unit."""
    return reading.kind == "number" and reading.end == reading.start + 1 and chart.words[reading.start] == "one"


def _no_count(chart: Chart, reading: Reading) -> bool:
    """Whether a number is part of the name of a stick (1x3), or a length: 4 is the widest hole, 70 1/2 between posts."""
    words, start, end = chart.words, reading.start, reading.end
    if words[end : end + 1] in (["between"], ["clear"], ["wide"], ["thick"], ["deep"]):
        return True
    first = words[start : end + 1] == ["1", "×"] and words[end + 1 : end + 2] in STICKS
    second = words[max(0, start - 2) : start] == ["1", "×"] and words[start:end] in STICKS
    return first or second or "widest" in words[end : end + 3]
