"""Loads told without their area or in two lots: "a strip a foot wide and 38 ft long at 4 pounds a square foot", "18 bags at 50
pounds plus 6 pallets at 40".
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.per_what import LOADS, PER_AREA
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from solvers.quantities import Area, Count, Length, Number, Quantity, Weight

WEIGHT = "weight"
_SURE = 0.8
_WIDE, _LONG = frozenset(("wide", "across", "deep")), frozenset(("long", "in length", "run"))
_AT = frozenset(("at", "@", "of", "weighing", "each"))
_EACH = frozenset(("each", "apiece", "a", "piece", "ea"))
_AND = frozenset((",", "and", "plus", "&", "+", "with", "then", ";"))
_HEAVY = frozenset("weight weigh weighs weighing heavy load lbs kilos".split())
_OTHERS = frozenset("square sq foot metre meter per less minus off".split())
MOST_LOTS, MOST_NAMES, MOST_COUNT = 6, 3, 5000
_SCORE = 9.0  # as of a rule that fits whole


def loads_told(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Put the area of a strip, or the weight of all lots together, in its place."""
    first = next(iter(questions), None)
    if first is None or first.topic not in LOADS or not topics:
        return
    _strip(chart, first)
    if first.topic == WEIGHT and not _HEAVY.isdisjoint(chart.words) and _OTHERS.isdisjoint(chart.words):
        lots = _lots(chart)
        whole = _together(chart, lots) if lots is not None else None
        if whole is not None:
            one = Heard(Count(Fraction(1), "count", "1"), whole.start, whole.end, "1")
            questions[:] = [Question(WEIGHT, {"weight": whole, "count": one}, _SCORE, words=first.words, manner=first.manner)]


def _strip(chart: Chart, question: Question) -> None:
    """The area of a strip so wide and so long, of what is told by the area."""
    per = question.givens.get("per")
    kind = PER_AREA.get(str(getattr(per.value, "name", per.value))) if per is not None else None
    if kind is None or {"area", "count", "wall_height", "pitch", "gable_height"} & question.givens.keys():
        return
    rate = question.givens.get("weight") or question.givens.get("price")
    told = range(*places_of(chart, per)) if per is not None and per.end > per.start else range(0)
    rated = range(*places_of(chart, rate)) if rate is not None and rate.end > rate.start else range(0)
    sizes = [r for r in _lengths(chart) if r.start not in told and r.start not in rated]
    wide = [r for r in sizes if not _WIDE.isdisjoint(chart.words[r.end : r.end + 1])]
    long = [r for r in sizes if not _LONG.isdisjoint(chart.words[r.end : r.end + 1])]
    if len(sizes) != 2 or len(wide) != 1 or len(long) != 1:
        return
    (across,), (along,) = wide, long
    assert isinstance(across.value, Length) and isinstance(along.value, Length)
    unit = "m2" if along.value.unit in ("m", "mm", "cm") else "ft2"
    side = "m" if unit == "m2" else "ft"
    size = along.value.to(side).value * across.value.to(side).value
    said = [chart.said(r.start, r.end) for r in (across, along)]
    start, end = chart.tokens[min(across.start, along.start)].start, chart.tokens[max(across.end, along.end) - 1].end
    text = f"{said[0]} × {said[1]}"
    kept = {name: heard for name, heard in question.givens.items() if name not in ("length", "wall_length", "piece")}
    question.givens = kept | {"area": Heard(Area(size, unit, text), start, end, text)}
    question.swaps, question.rival, question.missing = [], False, []
    question.unplaced = [text for text in question.unplaced if text not in said]


def _lengths(chart: Chart) -> list[Reading]:
    """The lengths of the line, the longest at each place."""
    found: list[Reading] = []
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if r.kind == "length" and r.sure >= _SURE]
        best = max(here, key=lambda r: r.end, default=None)
        if best is not None:
            found.append(best)
        at = best.end if best is not None else at + 1
    return found


def _lots(chart: Chart) -> list[tuple[Reading, Reading]] | None:
    """Each count with what one weighs; None where the line holds any other number, or but one lot."""
    lots: list[tuple[Reading, Reading]] = []
    at = 0
    while at < len(chart.words):
        lot = _lot(chart, at)
        if lot is not None:
            lots.append(lot)
            at = lot[1].end
        elif any(isinstance(r.value, Quantity) and r.kind != "plural" and r.sure >= _SURE for r in chart.readings[at]):
            return None
        else:
            at += 1
    if not 2 <= len(lots) <= MOST_LOTS:
        return None
    joints = (chart.words[a[1].end : b[0].start] for a, b in pairwise(lots))
    return lots if all(set(joint) <= _AND | _EACH for joint in joints) else None


def _lot(chart: Chart, at: int) -> tuple[Reading, Reading] | None:
    """18 sand bags at | 50 pounds."""
    count = next((r for r in chart.readings[at] if r.kind == "number" and r.sure >= _SURE and _counts(r)), None)
    if count is None:
        return None
    place = count.end
    while place - count.end < MOST_NAMES and _names(chart, place):
        place += 1
    if place == count.end or place >= len(chart.words) or chart.words[place] not in _AT:
        return None
    rows = chart.readings[place + 1] if place + 1 < len(chart.words) else []
    each = [r for r in rows if r.kind in ("weight", "number") and r.sure >= _SURE]
    return (count, max(each, key=lambda r: (r.kind == "weight", r.end))) if each else None


def _names(chart: Chart, place: int) -> bool:
    """Whether a word may be the name of what is counted."""
    word = chart.words[place] if place < len(chart.words) else ""
    return word.isalpha() and word not in _AT and not any(isinstance(r.value, Quantity) for r in chart.readings[place])


def _counts(reading: Reading) -> bool:
    value = reading.value
    return isinstance(value, Number) and value.value.denominator == 1 and 1 <= value.value <= MOST_COUNT


def _together(chart: Chart, lots: list[tuple[Reading, Reading]]) -> Heard | None:
    """The weight of all lots, in the unit that one of them has; none where they have several, or none."""
    units = {each.value.unit for _, each in lots if isinstance(each.value, Weight)}
    if len(units) != 1:
        return None
    total = Fraction(0)
    for count, each in lots:
        assert isinstance(count.value, Number) and isinstance(each.value, Weight | Number)
        total += count.value.value * each.value.value
    said = [f"{chart.said(c.start, c.end)} × {chart.said(e.start, e.end)}" for c, e in lots]
    start, end = chart.tokens[lots[0][0].start].start, chart.tokens[lots[-1][1].end - 1].end
    text = " + ".join(said)
    return Heard(Weight(total, units.pop(), text), start, end, text)
