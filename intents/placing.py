"""Quantities to parameters: first by the words beside them, then by what is left for each dimension.

Where two lengths could change places, both ways are kept as swaps: the conversation works both and asks which.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from functools import reduce
from operator import or_
from typing import Any

from intents.chart import LIGHT, Chart, Hit, once, signs, span
from intents.counting import is_no, packed, pronoun
from intents.expansions import PER_SOME_DEGREE
from intents.fitting import KINDS, Fit, dimensions_of, fit, may_fit
from intents.listed import CONTRASTED
from intents.loose_ways import in_order, ways_of
from intents.plurals import can_be
from intents.question import Heard
from intents.reading import SIZED, Dims, Reading
from intents.repeats import said_again
from intents.stated_units import in_millimetres
from intents.unsaid_units import SOME_MM, SURE_UNIT, beside_feet, in_inches, in_metres, large_bare, metric, millimetres, off_tape
from solvers.quantities import Angle, Count, Expansion, Length, Quantity, Ratio, Temperature, TemperatureChange, factor
from solvers.slots import Parameter

PLACED_IN = 0.4  # a length in inches no surer than this may be a number with a place after it
LEAST_MM = 10  # a bare number among metric lengths is millimetres from here on, metres below
LEAST_ANGLE, MOST_ANGLE = 5, 180  # degrees that a bare number can be with no word beside it
UNNAMED = frozenset("for and is how what can will if on".split())  # words after a number that it does not count
STATES = frozenset("at be from to too hits sees reaches".split())  # hung at 30 F, to 0 F: how warm it is, and no change
WARMEST = 60  # degrees Celsius that metal gets to in the sun; what is more may be Fahrenheit
SCALE_WORDS = {"fahrenheit": "F", "celsius": "C", "centigrade": "C"}
ANYTHING = "*"  # wanted: any parameter may be changed, defaults included


@dataclass(slots=True)
class Placed:
    """What went where, which tokens that explains, and what found no place."""

    givens: dict[str, Heard] = field(default_factory=dict)
    swaps: list[dict[str, Heard]] = field(default_factory=list)
    covered: int = 0  # mask of the tokens explained
    unplaced: list[str] = field(default_factory=list)
    unplaced_kinds: set[str] = field(default_factory=set)
    manner: dict[str, Any] = field(default_factory=dict)
    loosely: set[str] = field(default_factory=set)  # givens that no words beside them placed

    def leave(self, chart: Chart, reading: Reading) -> None:
        """Name a quantity that found no place; "the one window", "each one" and "the two ends" count nothing."""
        if tuple(chart.words[max(0, reading.start - 2) : reading.start]) in CONTRASTED:
            return  # seven sixteenths instead of three quarters
        if reading.kind in ("length", "percent") and isinstance(reading.value, Quantity) and not reading.value.value:
            return  # ignore the kerf
        word, before = chart.words[reading.start], chart.words[reading.start - 1] if reading.start else ""
        counted = reading.end == reading.start + 1 and (word == "one" or (word == "two" and before == "the"))
        if counted or said_again(chart, reading, self.givens):
            return
        self.unplaced.append(chart.said(reading.start, reading.end))
        self.unplaced_kinds |= dimensions_of(reading.kind)


def place(
    chart: Chart, chosen: list[Hit], parameters: tuple[Parameter, ...], wanted: str = "", manner: Sequence[Hit] = (),
    beside: int = 0,
) -> Placed:  # fmt: skip
    """Hand the sentence's quantities to a topic's parameters; `wanted` is one that was asked for, or ANYTHING.

    `beside` is the mask of those that the topic passes over.
    """
    placed = Placed()
    by_name = {parameter.name: parameter for parameter in parameters}
    for hit in (*chosen, *manner):
        placed.covered |= hit.mask
    for hit in chosen:
        _captures(chart, hit, by_name, placed)
    for hit in manner:
        found = dict(hit.found)
        for name, at, fixed in hit.captures:
            placed.manner[name] = fixed or found[at].value.value  # type: ignore[union-attr]
    _place_left(chart, parameters, placed, wanted, beside)
    return placed


def sureness(chart: Chart, hit: Hit, by_name: Mapping[str, Parameter]) -> float:
    """How sure the least sure of an island's givens is; 0 where one can't be what its parameter is."""
    least = 1.0
    found = hit.found
    for name, at, _ in hit.captures if found else ():
        parameter = by_name.get(name)
        for place, reading in found if parameter is not None else ():
            if place == at and not isinstance(reading.value, Dims):
                least = min(least, _sure_of(chart, parameter, reading))  # type: ignore[arg-type]
    return least


def _sure_of(chart: Chart, parameter: Parameter, reading: Reading) -> float:
    """How sure a reading is for a parameter that words beside it tell; worked once a sentence, as islands share quantities."""
    key = (id(reading), id(parameter))
    sure = chart.sure.get(key)
    if sure is None:
        heard = heard_as(chart, parameter, reading, cued=True)
        likely = 0.0 if heard is None else heard.sure * possible(parameter, heard.value)
        sure = chart.sure[key] = likely * _outdone(chart, reading)
    return sure


def possible(parameter: Parameter, value: Any) -> float:
    """A length or an angle past what its parameter can be counts for next to nothing: an exposure of 16 ft."""
    slot = parameter.slot
    whole = not isinstance(value, Count) or value.value.denominator == 1  # half of one is no count, as is told elsewhere
    if not whole or (slot.most is None and not slot.least) or not isinstance(value, (Length, Angle, Count, Ratio)):
        return 1.0
    size, parts = value.value.numerator, value.value.denominator  # whole numbers: fractions take five times as long
    if isinstance(value, Length) and value.unit != (slot.unit or "in"):
        by = factor(Length, value.unit, slot.unit or "in")
        size, parts = size * by.numerator, parts * by.denominator
    out = (slot.most is not None and size > slot.most * parts) or (slot.least and 0 < size < slot.least * parts)
    return 0.1 if out else 1.0


def _can_be(parameter: Parameter, heard: Heard) -> bool:
    """Whether a quantity is within what its parameter can be, in the unit it was taken in or another it may have."""
    return bool(heard.others) or possible(parameter, heard.value) == 1


def _outdone(chart: Chart, reading: Reading) -> float:
    """A bare number counts for little where the same words are surely something else: 9/12, eight twelve."""
    if reading.kind != "number":
        return 1.0
    others = (r for r in chart.readings[reading.start] if r.kind == "pitch" and r.end >= reading.end and r.sure >= 0.8)
    return 0.3 if any(others) else 1.0


@once
def _in_sizes(chart: Chart) -> int:
    """Mask of the tokens that are part of sizes said together: 3 by 4."""
    sizes = [r for row in chart.readings for r in row if isinstance(r.value, Dims)]
    return reduce(or_, (span(r.start, r.end) for r in sizes), 0)


def _stands_alone(chart: Chart, reading: Reading) -> bool:
    """Whether a bare number counts nothing that is named after it: "corner 95, face 3 1/2"; not 12 pieces."""
    after = chart.words[reading.end] if reading.end < len(chart.words) else ""
    if _in_sizes(chart) >> reading.start & 1 or _in_twelve(chart, reading):
        return False
    named = bool(after) and (chart.weighs >> reading.end & 1 or after in LIGHT) and after not in UNNAMED
    bare = reading.kind == "number" and isinstance(reading.value, Quantity)
    return bare and LEAST_ANGLE <= reading.value.value <= MOST_ANGLE and not named  # type: ignore[union-attr]


def _in_twelve(chart: Chart, reading: Reading) -> bool:
    """Whether a bare number is the run of a pitch: "what's that in twelve", "per twelve"."""
    is_twelve = reading.kind == "number" and isinstance(reading.value, Quantity) and reading.value.value == 12
    return is_twelve and reading.start > 0 and chart.words[reading.start - 1] in ("in", "per")


def _slopes(chart: Chart, reading: Reading) -> bool:
    """Whether a bare number is no length, being outright a pitch: 7/12."""
    readings = chart.readings[reading.start] if reading.kind == "number" else ()
    return any(r.kind == "pitch" and r.end == reading.end and r.sure >= SURE_UNIT for r in readings)


def _captures(chart: Chart, hit: Hit, by_name: dict[str, Parameter], placed: Placed) -> None:
    found = dict(hit.found)
    for name, at, fixed in hit.captures:
        if at < 0 or at not in found:
            if fixed and name in by_name:
                at_words = place_of(chart, hit.start, hit.end)
                told = Heard(fixed_value(by_name[name].kind, fixed, at_words[2]), *at_words)
                placed.givens[name] = max(told, placed.givens.get(name, told), key=lambda one: " " in one.text)  # plumb fascia
            continue
        reading = found[at]
        given = [_give(chart, by_name, part_name, part, placed, cued=True) for part_name, part in parts_of(name, reading)]
        if not any(given):
            placed.covered &= ~span(reading.start, reading.end)  # no number is taken for explained that went nowhere


def parts_of(name: str, reading: Reading) -> Iterator[tuple[str, Reading]]:
    """Each parameter that an island's tag names, with what it is given: "length,height" of 32 by 9 names two."""
    if "," not in name:
        return iter(((name.strip(), reading),))
    names = [part.strip() for part in name.split(",")]
    parts = reading.value.parts if isinstance(reading.value, Dims) and len(names) > 1 else (reading,)
    return zip(names, parts, strict=False)


def fixed_value(kind: type, fixed: str, text: str) -> Any:
    """What a tag gives outright: a count, an angle in degrees ("square corner"), inches ("per foot"), or a choice."""
    if kind is Count:
        return Count(Fraction(fixed), "count", text)
    return Angle(Fraction(fixed), "deg", text) if kind is Angle else Length(Fraction(fixed), "in") if kind is Length else fixed


def place_of(chart: Chart, start: int, end: int) -> tuple[int, int, str]:
    first, last = chart.tokens[start].start, chart.tokens[end - 1].end
    return first, last, chart.text[first:last]


def _give(chart: Chart, by_name: dict[str, Parameter], name: str, reading: Reading, placed: Placed, cued: bool) -> bool:
    heard = heard_as(chart, by_name.get(name), reading, cued)
    if heard is not None:
        placed.givens[name] = heard
    return heard is not None


def heard_as(chart: Chart, parameter: Parameter | None, reading: Reading, cued: bool) -> Heard | None:
    """What a reading is for a parameter; worked once a sentence, since every topic asks."""
    if parameter is None or not may_fit(parameter.kind, reading):
        return None
    key, heard = (id(reading), id(parameter), cued), chart.heard
    if key not in heard:
        heard[key] = _fitted(chart, parameter, reading, cued)
    return heard[key]  # type: ignore[no-any-return]


def _fitted(chart: Chart, parameter: Parameter, reading: Reading, cued: bool) -> Heard | None:
    warm = parameter.kind is TemperatureChange and chart.words[max(0, reading.start - 1)] in STATES
    if warm or (parameter.kind in (Length, Angle) and _slopes(chart, reading)):
        return None
    if reading.kind == "length" and reading.sure <= PLACED_IN:
        if reading.value.unit == "in" and (metric(chart) or large_bare(chart)):  # type: ignore[union-attr]
            return None  # 40 | in the stud, where all else is metric
        if packed(chart.words, reading.end - 1):
            return None  # 8 | in a box
    if reading.kind == "number" and is_no(chart, parameter.kind, reading):
        return None
    cued = cued or (parameter.kind is Angle and parameter.required and _stands_alone(chart, reading))
    if reading.kind in ("number", "plural") and not can_be(chart.words, reading.start, reading.end, parameter):
        return None
    if reading.start and chart.readings[reading.start - 1]:
        reading = _with_sign(chart, reading)
    place = place_of(chart, reading.start, reading.end)
    text = place[2]
    fitted = fit(reading, parameter, text, cued)
    if fitted is None:
        return None
    bare_side = reading.kind == "number" and isinstance(fitted.value, Length) and parameter.slot.alike
    if bare_side and (feet := beside_feet(chart, fitted.value)):
        fitted = Fit(feet[0], fitted.sure, feet[1:])
    if not cued and isinstance(fitted.value, Length) and _in_twelve(chart, reading):
        return None
    bare_length = reading.kind == "number" and isinstance(fitted.value, Length) and not _off_tape(chart, parameter, reading)
    dotted = bare_length and "." in text and large_bare(chart) > 0  # every 600 along 4.3
    if bare_length and (dotted or metric(chart) or millimetres(chart, reading) or _too_long(chart, parameter, fitted.value)):
        value = fitted.value.value
        metres = dotted or in_metres(chart, value, parameter)
        likely, other = ("mm", "m") if abs(value) >= LEAST_MM and not metres else ("m", "mm")
        large = parameter.slot.unit == "ft" and possible(parameter, Length(value, "m", text)) == 1
        halves = value.denominator == 2 and reading.end > reading.start + 1
        others: tuple[Length, ...] = (Length(value, "in", text),) if halves else ()  # 36 1/2 beside millimetres may be of a tape
        others += () if likely == "mm" or metres or large else (Length(value, other, text),)  # no wall is 2.4 mm high
        return Heard(Length(value, likely, text), *place, fitted.sure, others)
    fitted = _on_scale(chart, fitted)
    return Heard(fitted.value, *place, fitted.sure, fitted.others)


def _on_scale(chart: Chart, fitted: Fit) -> Fit:
    """Degrees of no scale take the one scale that is named anywhere in the sentence: "50F now, hottest 110"."""
    if not fitted.others:
        return fitted
    choices = (fitted.value, *fitted.others)
    if not all(isinstance(value, (Temperature, TemperatureChange, Expansion)) for value in choices):
        return fitted
    named = _scales(chart) or ({"C"} if fitted.value.value <= WARMEST and metric(chart) else set())  # 3 m, 15 degrees today
    if fitted.sure < PER_SOME_DEGREE and isinstance(fitted.value, Expansion):
        named = named - {"F"}  # 30 millionths come off a metric sheet as often
    on_it = [value for value in choices if value.unit[-1] in named]
    return Fit(on_it[0], SURE_UNIT) if len(named) == 1 and on_it else fitted


@once
def _scales(chart: Chart) -> set[str]:
    """The temperature scales that are named, by words or on a number."""
    named = {scale for word, scale in SCALE_WORDS.items() if word in chart.words}
    said = [r for row in chart.readings for r in row if isinstance(r.value, Temperature | TemperatureChange | Expansion)]
    return named | {r.value.unit[-1] for r in said if r.sure >= SURE_UNIT}  # type: ignore[union-attr]


def _with_sign(chart: Chart, reading: Reading) -> Reading:
    """The reading with the minus before it, where there is one: an island must not drop a sign."""
    if not isinstance(reading.value, Quantity):
        return reading
    for signed in chart.readings[reading.start - 1]:
        same = signed.kind == reading.kind and signed.end == reading.end
        if same and isinstance(signed.value, Quantity) and signed.value.value == -reading.value.value:
            return signed
    return reading


def _off_tape(chart: Chart, parameter: Parameter, reading: Reading) -> bool:
    return off_tape(chart, reading, possible(parameter, Length(reading.value.value, "m")) == 1)  # type: ignore[union-attr]


def _too_long(chart: Chart, parameter: Parameter, value: Length) -> bool:
    """Whether a bare number is past what its parameter can be in inches and feet, but not in millimetres: 155 a course."""
    if possible(parameter, value) == 1:
        return False
    most = parameter.slot.most or SOME_MM  # a nail goes into the stud by 35 mm, never by so many inches
    whole = value.value.denominator == 1 and value.value >= min(most, SOME_MM)
    whole = whole and not in_inches(chart) and possible(parameter, Length(value.value, "mm")) == 1
    return whole or in_millimetres(chart.words)


def _place_left(chart: Chart, parameters: tuple[Parameter, ...], placed: Placed, wanted: str, beside: int) -> None:
    """Quantities outside all islands go to the parameters that are still open, by dimension and in order."""
    open_ = [p for p in parameters if p.name not in placed.givens]
    takers = [p for p in open_ if (p.required or p.default is None or wanted == ANYTHING) and not p.slot.cued]
    asked_for = [p for p in open_ if p.name == wanted]
    takers = asked_for + [p for p in takers if p.name != wanted]
    left = _left(chart, takers, placed, wanted, beside)
    by_name = {p.name: p for p in parameters}
    waiting: list[Reading] = []
    for reading in left:
        if isinstance(reading.value, Dims):
            names = [p.name for p in takers if p.name not in placed.givens and p.kind is Length]
            for name, part in zip(names, reading.value.parts, strict=False):
                _give(chart, by_name, name, part, placed, cued=False)
            placed.covered |= span(reading.start, reading.end)
            if len(names) < len(reading.value.parts):
                placed.leave(chart, reading)
        else:
            waiting.append(reading)
    if waiting:
        takers = [p for p in takers if p.name not in placed.givens]
        _hand_out(chart, waiting, takers, placed, wanted)


def _left(chart: Chart, takers: list[Parameter], placed: Placed, wanted: str, beside: int) -> list[Reading]:
    """Readings in the uncovered stretches: at each place the longest some open parameter takes, else the longest."""
    found: list[Reading] = []
    own = {KINDS[p.kind][0] for p in takers if p.name == wanted and p.kind in KINDS} if wanted else set()  # 5/12 is a pitch first
    at, covered = 0, placed.covered & ~signs(chart)
    for start, row in chart.starts():
        free = start >= at and not (covered | beside) >> start & 1
        here = [r for mask, r in row if free and not beside & mask and (_unit_names(r) or not covered & mask)]
        if not here:
            continue
        useful = [r for r in here if _useful(chart, r, takers, wanted)]
        plain = useful or [r for r in here if isinstance(r.value, SIZED)]  # a list nobody takes hides what is in it
        if not plain:
            continue
        best = max(plain, key=lambda r: (r.end, r.kind in own, r.sure, r.kind != "number"))
        if wanted or not pronoun(chart, best):
            found.append(best)
        at = best.end
    return found


def _unit_names(reading: Reading) -> bool:
    """Whether the unit of a quantity may name a topic as well, and the quantity is there nevertheless: 212 square feet."""
    return reading.kind == "area" and reading.sure >= SURE_UNIT


def _useful(chart: Chart, reading: Reading, takers: list[Parameter], wanted: str) -> bool:
    if isinstance(reading.value, Dims):
        return sum(p.kind is Length for p in takers) >= len(reading.value.parts)
    return any(heard_as(chart, p, reading, p.name == wanted) is not None for p in takers if may_fit(p.kind, reading))


def _hand_out(chart: Chart, waiting: list[Reading], takers: list[Parameter], placed: Placed, wanted: str) -> None:
    """Each reading to a parameter that can take it; where there is a choice, the other choices become swaps."""
    fits = {
        (i, p.name): heard
        for i, reading in enumerate(waiting)
        for p in takers
        if may_fit(p.kind, reading) and (heard := heard_as(chart, p, reading, cued=p.name == wanted)) is not None
        and (wanted or _can_be(p, heard))
    }
    usable = sorted({i for i, _ in fits})
    for i, reading in enumerate(waiting):
        if i not in usable and isinstance(reading.value, SIZED):
            placed.leave(chart, reading)
    ways = ways_of(usable, [p.name for p in takers], fits)
    required = {p.name for p in takers if p.required or p.name == wanted}  # what must be known comes before what may be
    most = max((len(required & way.keys()) for way in ways), default=0)
    ways = [way for way in ways if len(required & way.keys()) == most]
    ways = [way for way in ways if in_order(way, takers, fits)] or ways
    if not ways:
        for i in usable:
            placed.leave(chart, waiting[i])
        return
    first, *others = ways
    placed.loosely |= first.keys()
    for name, i in first.items():
        placed.givens[name] = fits[i, name]
    taken = set(first.values())
    for i in usable:
        if i in taken:
            placed.covered |= span(waiting[i].start, waiting[i].end)
        else:
            placed.leave(chart, waiting[i])
    placed.swaps = [{**placed.givens, **{n: fits[i, n] for n, i in way.items()}} for way in others]
    for swap, way in zip(placed.swaps, others, strict=True):
        for name in first:
            if name not in way:
                del swap[name]
