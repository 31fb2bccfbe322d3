"""Strips across a coil's width: which width is the coil's, what the girth is by its legs, and how long the coil is, which tells
nothing of it: "2.5 + 2.5 + 0.5 + 0.5 flattened out, coil 24", "a fifty foot roll eighteen inches wide, strips of 2 1/4".
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, span
from intents.in_line import Item, all_taken, aside, counts_unused, inches, items
from intents.question import Heard, Question
from solvers.quantities import Length, Number
from solvers.slots import Parameter

TOPIC, SCORE = "strips from a coil", 9.0
_COIL = frozenset("coil coils roll rolls stock".split())
_COILS = frozenset(("coils", "rolls"))
_GIRTH = frozenset("girth stretchout stretch developed flattened blank strip strips rips ribbons pieces".split())
_LEGS = frozenset(
    "leg legs face top bottom back front hem hems kick return returns flange flanges lip side sides drip edge nose vertical"
    " horizontal foot turn up down upstand wall roof bend".split()
)
_SEVERAL = frozenset("legs hems returns flanges lips sides kicks".split())
_JOINS = frozenset(("+", "plus", "and", ",", "&", "then"))
_OFTEN = frozenset("both each either twice double per".split())  # a leg that may be meant twice
_WORDS_NEAR = 3  # words from a width to the coil it is of
_LEAST_LONG, _WIDEST = 96, 120  # in: of a coil's length, and of its width
_MOST_LEGS, _MOST_TIMES = 8, 4
_ELSE = frozenset("cost price square squares sheets bend bends degrees lap".split())


def coil_told(chart: Chart) -> Question | None:
    """The question of a line whose every number is the coil's width, its length, the girth or one of its legs."""
    if not _ELSE.isdisjoint(chart.words) or _COIL.isdisjoint(chart.words):
        return None
    left = aside(chart)
    found = items(chart, left)
    if not all_taken(chart, found, left) or not all(isinstance(item.reading.value, Length | Number) for item in found):
        return None
    if any(_counts_things(item) for item in found):
        return None  # we have 4 chimneys to flash
    longs = [item for item in found if _is_length_of_coil(item)]
    if len(longs) == 1 and len(found) > len(longs) + 1:
        found.remove(longs[0])
        left |= span(longs[0].reading.start, longs[0].reading.end)
    elif longs:
        return None
    coil = _coil(found)
    legs = [item for item in found if item is not coil]
    if coil is None or not legs:
        return None
    width, girth = _heard(chart, [coil], _width(chart, coil, legs)), _girth(chart, legs, coil)
    if girth is None or not 0 < inches(girth.value) <= inches(width.value) <= _WIDEST:
        return None
    return Question(TOPIC, {"girth": girth, "coil": width}, SCORE, left=chart.said_in(left), words=["coil"])


def coils_counted(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Ask about a whole number that a question has no place for: of three coils there are three times as many strips."""
    if question.complete:
        question.unplaced += counts_unused(chart, question, counts=_of_coils)


def _of_coils(item: Item) -> bool:
    """Whether a number is so many coils: three coils 24 wide, four of them."""
    return not _COILS.isdisjoint(item.after[:2]) or (item.after[:1] == ("of",) and item.after[1:2] in (("them",), ("em",)))


def _is_length_of_coil(item: Item) -> bool:
    """Whether it is how long the coil is: a fifty foot roll, 100 ft long; no coil is so wide."""
    value = item.reading.value
    return isinstance(value, Length) and value.unit in ("ft", "m") and inches(value) >= _LEAST_LONG


def _coil(found: list[Item]) -> Item | None:
    """The width that is the coil's by the word beside it, or the widest where no word or more than one tells."""
    named = [item for item in found if _beside_coil(item)]
    sized = [item for item in found if _is_size(item)]
    widest = max(sized, key=lambda item: inches(item.reading.value), default=None)
    one = named[0] if len(named) == 1 else widest
    alike = sum(inches(item.reading.value) == inches(widest.reading.value) for item in sized) if widest is not None else 0
    return one if len(named) == 1 or alike == 1 else None


def _beside_coil(item: Item) -> bool:
    before, after = item.before[-_WORDS_NEAR:], item.after[:_WORDS_NEAR]
    stop = next((at for at, word in enumerate(after) if word in (",", ".", "and")), len(after))
    last = max((at for at, word in enumerate(before) if word in (",", ".")), default=-1)
    return not _COIL.isdisjoint(after[:stop]) or not _COIL.isdisjoint(before[last + 1 :])


def _is_size(item: Item) -> bool:
    return not (item.whole and item.after[:1] and item.after[0] in _SEVERAL)


def _width(chart: Chart, coil: Item, legs: list[Item]) -> Length:
    return _as_length(chart, coil, next((leg.reading.value.unit for leg in legs if isinstance(leg.reading.value, Length)), "in"))


def _as_length(chart: Chart, item: Item, unit: str) -> Length:
    """A width in the unit it was said in, or in that of what stands with it."""
    value = item.reading.value
    if isinstance(value, Length):
        return value
    assert isinstance(value, Number)
    metric = unit in ("mm", "cm", "m") or value.value >= _WIDEST
    return Length(value.value, "mm" if metric else "in", chart.said(item.reading.start, item.reading.end))


def _girth(chart: Chart, legs: list[Item], coil: Item) -> Heard | None:
    """The girth as it is told, or its legs added up."""
    beside = coil.reading.value
    units = [leg.reading.value.unit for leg in legs if isinstance(leg.reading.value, Length)]
    unit = units[-1] if units else beside.unit if isinstance(beside, Length) else "in"
    unit = "in" if unit in ("ft", "in") else unit
    if len(legs) == 1:
        return None if _counted(legs[0]) else _heard(chart, legs, _as_length(chart, legs[0], unit))
    times = [leg for leg, after in pairwise(legs) if _times(leg, after)]
    sizes = [leg for leg in legs if leg not in times]
    if not _OFTEN.isdisjoint(chart.words) or not 1 <= len(sizes) <= _MOST_LEGS or any(_counted(leg) for leg in sizes):
        return None
    if not all(_joined(before, after) or _is_leg(after) for before, after in pairwise(legs) if after not in times):
        return None
    whole = Fraction(0)
    for size in sizes:
        at = legs.index(size)
        often = legs[at - 1].whole if at and legs[at - 1] in times else 1
        whole += often * inches(_as_length(chart, size, unit))
    return _heard(chart, legs, Length(whole, "in") if unit == "in" else Length(whole * Fraction(254, 10), "mm"))


def _counted(item: Item) -> bool:
    """Whether a whole number counts strips, coils or runs and is no width."""
    return bool(item.whole and item.after[:1] and (item.after[0] in _COIL | _GIRTH and item.after[0].endswith("s")))


def _counts_things(item: Item) -> bool:
    after = item.after[0] if item.whole and item.after else ""
    return after.isalpha() and after.endswith("s") and after not in _LEGS | {"is", "across"}


def _times(leg: Item, after: Item) -> bool:
    """Whether a number tells how often the leg after it is there: two hems at half inch."""
    several = 1 < leg.whole <= _MOST_TIMES and leg.after[:1] and leg.after[0] in _SEVERAL
    return bool(several) and after.reading.start >= leg.reading.end


def _joined(before: Item, after: Item) -> bool:
    return not _JOINS.isdisjoint(before.after) and (_is_leg(before) or _is_leg(after) or {*before.after} <= _JOINS)


def _is_leg(item: Item) -> bool:
    """Whether a size is named as a leg: 6 inch face, bottom leg 1 1/4."""
    return not _LEGS.isdisjoint((*item.before[-2:], *item.after[:2]))


def _heard(chart: Chart, found: list[Item], value: Length) -> Heard:
    first, last = found[0].reading, found[-1].reading
    start, end = chart.tokens[first.start].start, chart.tokens[last.end - 1].end
    text = chart.text[start:end]
    return Heard(Length(value.value, value.unit, text), start, end, text)
