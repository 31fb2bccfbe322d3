"""What the lengths said with a unit tell of those said without: feet among feet, millimetres among millimetres."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from intents.chart import Chart, once
from intents.fitting import TAPE_PARTS
from intents.lengths import INCHES
from intents.question import Heard, Question
from intents.reading import Reading
from intents.stated_units import MILLIMETRES, square_metres, stated_metric
from intents.vocabulary import COUNTING
from solvers.quantities import Length, Quantity
from solvers.slots import Layer, Parameter

PLAIN_MM, SOME_MM = 600, 100  # bare lengths from here on are millimetres; beside one, smaller ones are too
ASKED_MM = 300  # and from here on, where the answer is asked in millimetres
LEAST_BESIDE = 30  # beside a bare 2150 a bare 90 is in millimetres too; 16 and 24 may be on centre
_MILLIMETRES = MILLIMETRES | {"mils", "mill"}
# What is measured of a roof, a frame or an arch, never of a gap: said beside metres, and of their size, it is in metres too.
_LINES = frozenset("rise run slope side other_side diagonal radius height".split())
_OF_METRES = 20  # so many times a length said in metres, or a part of it, a bare number may be and is metres
THICKEST = 8  # in, of a layer with no unit said
FEET, MOST_BESIDE = frozenset(("foot", "feet", "ft", "'", "′")), 40  # up to this a whole number beside feet may be feet
SURE_UNIT = 0.9  # a length this sure was said with its unit


@once
def in_feet(chart: Chart) -> bool:
    """Whether lengths are said in feet, and in nothing else."""
    lengths = (r for row in chart.readings for r in row if isinstance(r.value, Length) and r.sure >= SURE_UNIT)
    return {r.value.unit for r in lengths} == {"ft"}  # type: ignore[union-attr]


def beside_feet(chart: Chart, bare: Length) -> tuple[Length, ...]:
    """What a number is beside lengths in feet, likeliest first: feet too, or inches where they were told in feet and inches."""
    feet, inches = (replace(bare, unit=unit) for unit in ("ft", "in"))
    if in_feet(chart):
        return (feet,)
    if bare.value > MOST_BESIDE or bare.value.denominator > 1:
        return ()
    lengths = [r for row in chart.readings for r in row if isinstance(r.value, Length) and r.sure >= SURE_UNIT]
    both = any(not FEET.isdisjoint(chart.words[r.start : r.end]) for r in lengths)
    return (feet, inches) if both and all(r.value.unit in ("ft", "in") for r in lengths) else ()  # type: ignore[union-attr]


@once
def in_inches(chart: Chart) -> bool:
    """Whether some length is said in inches: then no bare number is of millimetres by its size alone."""
    lengths = (r for row in chart.readings for r in row if isinstance(r.value, Length) and r.sure >= SURE_UNIT)
    return any(r.value.unit == "in" and not INCHES.isdisjoint(chart.words[r.start : r.end]) for r in lengths)  # type: ignore[union-attr]


@once
def metric(chart: Chart) -> bool:
    """Whether every length said with a unit is metric, and there is one: then a number said with none is too."""
    units = {
        r.value.unit for here in chart.readings for r in here if isinstance(r.value, Length) and r.sure >= SURE_UNIT
    }
    return units <= {"mm", "cm", "m"} if units else bool(stated_metric(chart.words)) or square_metres(chart.words)


def in_metres(chart: Chart, value: Fraction, parameter: Parameter) -> bool:
    """Whether a bare number is surely of metres: up 1.15 m in 2.3. Of a gap or a board beside a long wall nothing is sure."""
    line = parameter.name in _LINES or "ft" in parameter.slot.bare or "arc" in parameter.slot.ask
    return line and any(stated / _OF_METRES <= abs(value) <= stated * _OF_METRES for stated in _stated_metres(chart))


@once
def _stated_metres(chart: Chart) -> set[Fraction]:
    """The lengths that are said in metres."""
    return {
        abs(r.value.value) for row in chart.readings for r in row
        if isinstance(r.value, Length) and r.sure >= SURE_UNIT and r.value.unit == "m"
    }  # fmt: skip


def millimetres(chart: Chart, reading: Reading) -> bool:
    """Whether a bare number is of millimetres by its size, as "900 by 1200" is where no other unit is said."""
    own = reading.value.value  # type: ignore[union-attr]
    if own.denominator > 1 or own.numerator < LEAST_BESIDE:
        return False
    if own.numerator < SOME_MM:
        plain = PLAIN_MM if large_bare(chart) > 0 else ASKED_MM if _asks_millimetres(chart) else None
        return plain is not None and any(word.isdecimal() and int(word) >= plain for word in chart.words)
    return large_bare(chart) > 0 or _asks_millimetres(chart)


@once
def _asks_millimetres(chart: Chart) -> bool:
    """Whether the answer is asked in millimetres, and no length is said in another unit."""
    asked = any(chart.words[at] == "in" and word in _MILLIMETRES for at, word in enumerate(chart.words[1:]))
    return asked and metric_alone(chart)


@once
def metric_alone(chart: Chart) -> bool:
    """Whether no length is said in feet or inches."""
    lengths = (r for row in chart.readings for r in row if isinstance(r.value, Length) and r.sure >= SURE_UNIT)
    return all(r.value.unit in ("mm", "cm", "m") for r in lengths)  # type: ignore[union-attr]


@once
def large_bare(chart: Chart) -> int:
    """How many bare numbers are plainly millimetres by their size; none where anything is said in a unit."""
    rows = [r for row in chart.readings for r in row]
    if any(r.kind in ("length", "area", "money", "weight") and r.sure >= SURE_UNIT for r in rows):
        return 0
    return sum(r.value.value >= PLAIN_MM for r in rows if r.kind == "number" and isinstance(r.value, Quantity))


def no_inches(givens: dict[str, Heard], name: str, least: int) -> None:
    """Take a whole number with no unit, from `least` inches on, for the millimetres that it can only be."""
    heard = givens.get(name)
    bare = heard is not None and all(word.isdigit() or word in COUNTING for word in heard.text.lower().replace("-", " ").split())
    if heard is not None and bare and heard.text and heard.value.unit == "in" and heard.value.value >= least:
        givens[name] = replace(heard, value=Length(heard.value.value, "mm", heard.text), others=())


def off_tape(chart: Chart, reading: Reading, metres: bool) -> bool:
    """Whether a number is read off a tape in inches, whatever stands beside it: 15/32 ply, 10 mm mesh; 36 1/4 by 900 mm. Quarters
    may be of metres where some are said and this can be so many (`metres`): four and a quarter by 6 m."""
    if reading.end <= reading.start + 1:
        return False
    value = reading.value.value  # type: ignore[union-attr]
    if value.denominator == 4 and not (metres and _stated_metres(chart)):
        return True
    return value.denominator in TAPE_PARTS or (value.denominator in (2, 4) and value < 1)


def layers_no_inches(question: Question) -> None:
    """Bare layers of which one is too thick for inches are all in millimetres, as they are where so much is to go in:
    19 cladding, 20 batten, 9 ply; 6 lining, and 25 into the batten."""
    question.givens = _layers_in_mm(question.givens)
    if "penetration" in question.givens:
        question.swaps = [_layers_in_mm(way) for way in question.swaps]


def _layers_in_mm(way: dict[str, Heard]) -> dict[str, Heard]:
    heard, held = way.get("layers"), way.get("penetration")
    sizes = [layer.thickness for layer in heard.value if isinstance(layer, Layer) and layer.thickness] if heard else []
    bare = all(size.unit == "in" and size.text.removesuffix(".5").isdecimal() for size in sizes)
    deepest = held.value.value if held is not None and held.text.isdecimal() else 0
    if heard is None or not sizes or not bare or max(deepest, *(size.value for size in sizes)) <= THICKEST:
        return way
    layers = [replace(each, thickness=each.thickness and replace(each.thickness, unit="mm")) for each in heard.value]
    return way | {"layers": replace(heard, value=tuple(layers))}
