"""What a quantity that was said can be for a parameter: units for bare numbers, degrees for a pitch, scales unsaid."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

from intents.expressions import expression
from intents.number_words import ORDINALS
from intents.reading import Dims, Reading
from solvers.quantities import (
    Angle,
    Area,
    Count,
    Expansion,
    Length,
    Money,
    Number,
    Percent,
    Pitch,
    Quantity,
    Ratio,
    Temperature,
    TemperatureChange,
    Volume,
    Weight,
)
from solvers.slots import Layer, Opening, Parameter, Piece, Slot
from solvers.sums import Measure, Sum

# Which kinds of reading may stand for a parameter's type, the best first. "number" only where words beside it tell the
# role, or where the topic leaves no other reading (see `loose`).
KINDS: dict[type, tuple[str, ...]] = {
    Length: ("length", "number", "plural"),
    Pitch: ("pitch", "angle", "number"),
    Angle: ("angle", "number"),
    Count: ("number",),
    Percent: ("percent", "number"),
    Ratio: ("ratio", "number"),
    Temperature: ("temperature", "angle", "number"),
    TemperatureChange: ("tempchange", "temperature", "angle", "number"),
    Area: ("area", "number", "length"),
    Money: ("money", "number"),
    Volume: ("volume", "number"),
    Weight: ("weight", "number"),
    Number: ("number",),
    Expansion: ("expansion",),
    Sum: ("sum",),
    Measure: ("length", "area", "temperature", "tempchange", "volume", "weight", "number"),
}
ONE_IN, MOST_ONE_IN = 10, 600  # a bare number from the one to the other, told for a ratio, is what it is one of
EDGE_KINDS = {
    "length": ("length", "number"),
    "pitch": ("pitch", "angle", "number"),
    "angle": ("angle", "number"),
    "temperature": ("temperature", "angle", "number"),
    "tempchange": ("tempchange", "temperature", "angle", "number"),
    "percent": ("percent", "number"),
    "area": ("area", "number", "length"),
    "money": ("money", "number"),
    "volume": ("volume", "number"),
    "weight": ("weight", "number"),
    "ratio": ("ratio",),
    "expansion": ("expansion",),
}  # a symbol #kind in a phrase also takes these, since the words beside it tell the role
STANDS_IN = {
    kind: [(edge, f"#{edge}") for edge, kinds in EDGE_KINDS.items() if kind in kinds and edge != kind]
    for kind in ("number", "angle", "temperature", "length")
}  # the other way round, without itself
OTHER_SCALE: dict[type, str] = {Temperature: "degC", TemperatureChange: "dC"}
TAPE_PARTS = (8, 16, 32, 64)  # a bare 32 3/8 comes off a tape in inches: nobody says feet so
# "twenty two fifty" is a price of 22.50; a sum that large would be said with its hundreds.
TWO_PART = expression(
    r"(?!.*(?:hundred|thousand))(?:[a-z]+[ -]){1,2}"
    r"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -][a-z]+)?)",
    re.I,
)
ORDINAL = expression(r"\d+(?:st|nd|rd|th)", re.I)
STEEP_RISE, STEEPEST_RISE = 12, 24  # in 12; steeper roofs are rare, and past the second there are none
STOCK = "stock length"  # sold by the foot: an 8 1/4 board is named by its width
LEAST_QUARTERED = 12  # 20 1/4 comes off a tape too; of feet nobody says a quarter past twelve
TOTALS = ("runs", "areas")  # lengths and areas of several, added up: only where a phrase asks for them
_MAY_FIT = {kind: frozenset((*kinds, *TOTALS)) for kind, kinds in KINDS.items()}
LEAST_FEET = 200  # of wall, from which on they are square feet
TAKEN = ", taken as "  # in the text of a value: what it was said as, and what it was taken as
UNIT_GUESS = 0.75  # how sure a unit is that was not said


@cache
def dimensions_of(said: str) -> frozenset[str]:
    """The dimensions that a kind of reading could be, as class names."""
    return frozenset(kind.__name__ for kind, kinds in KINDS.items() if said in kinds)


def may_fit(kind: type, reading: Reading) -> bool:
    """Whether a reading could be of a parameter's kind at all: nearly always the answer is no, and this is soon told."""
    if kind is tuple:
        return isinstance(reading.value, tuple)
    return reading.kind in _MAY_FIT.get(kind, TOTALS)


_LISTED: dict[str, tuple[type, ...]] = {"pieces": (Piece,), "openings": (Opening,), "layers": (Layer, Length)}


@dataclass(slots=True)
class Fit:
    """A value for a parameter, how sure, and what else it could be."""

    value: Any
    sure: float = 1.0
    others: tuple[Any, ...] = ()


def _of_its_things(name: str, listed: tuple[Any, ...]) -> bool:
    """Whether a list holds what a parameter lists: two bare lengths are no pieces, and pieces no layers."""
    things: tuple[type, ...] = next((things for start, things in _LISTED.items() if name.startswith(start)), (object,))
    return all(isinstance(one, things) for one in listed)


def fit(reading: Reading, parameter: Parameter, text: str, cued: bool) -> Fit | None:
    """The reading as a value of the parameter, or None when it can't be. `cued`: words beside it told the role."""
    kind = parameter.kind
    if kind is tuple:
        listed = reading.value if isinstance(reading.value, tuple) else None
        if listed is None or not (parameter.name.startswith(reading.kind) or cued):
            return None
        return Fit(listed, reading.sure) if _of_its_things(parameter.name, listed) else None
    if reading.kind in TOTALS:
        total, *rest = reading.value if isinstance(reading.value, tuple) else ()
        return Fit(total, reading.sure, tuple(rest)) if cued and type(total) is kind else None
    if kind not in KINDS or reading.kind not in KINDS[kind] or isinstance(reading.value, Dims):
        return None
    if reading.kind in ("number", "plural"):
        nth = kind is Length and ORDINAL.fullmatch(text) is not None  # the 5th one up
        return None if nth else _bare(reading, parameter, text, cued)
    if text == "no" and kind is Length and parameter.slot.above is not None:
        return None  # no lap over the gutter: no rise
    if kind is Area and reading.kind == "length":
        return _plain_feet(reading, parameter, text, cued)
    values = [_as(value, kind, text) for value in (reading.value, *reading.also)]
    found = [value for value in values if value is not None]
    if not found:
        return None
    if kind is Measure and isinstance(reading.value, Length):  # a mil is no thousandth beside millimetres
        found = [measure for measure in found if measure.quantity.metric == reading.value.metric]
    if reading.kind == "angle" and kind in OTHER_SCALE:  # degrees of neither scale: both are kept
        found += [type(value)(value.value, OTHER_SCALE[kind], text) for value in found]
    return Fit(found[0], reading.sure, tuple(found[1:]))


def _as(value: Any, kind: type, text: str) -> Any:
    """A quantity as one of another dimension where the trade says one for the other."""
    if type(value) is kind:
        return value.said(text)  # type: ignore[attr-defined]
    if kind is Measure:
        return Measure(value.said(text))
    if kind is Pitch and isinstance(value, Angle):
        return Pitch(value.value, "deg", text)
    if kind is Temperature and isinstance(value, Angle):
        return Temperature(value.value, "degF", text)
    if kind is TemperatureChange and isinstance(value, Temperature):
        return TemperatureChange(value.value, "dF" if value.unit == "degF" else "dC", text)
    if kind is TemperatureChange and isinstance(value, Angle):
        return TemperatureChange(value.value, "dF", text)
    return None


def _plain_feet(reading: Reading, parameter: Parameter, text: str, cued: bool) -> Fit | None:
    """An area said in plain feet: "640 foot of wall", "squares for 900 feet". Less may be the length of a wall."""
    length = reading.value
    if not isinstance(length, Length) or length.unit != "ft" or length.value < (LEAST_FEET if cued else 1):
        return None
    if not cued and "ft" not in parameter.slot.bare:
        return None
    return Fit(Area(length.value, "ft2", f"{text}{TAKEN}square feet"), UNIT_GUESS)


def _off_a_tape(reading: Reading) -> bool:
    """Whether a number is told in eighths or smaller parts, as no price is: six pieces at 17 5/8."""
    value = reading.value
    return isinstance(value, Number) and value.value.denominator in TAPE_PARTS and reading.end - reading.start > 1


def _bare(reading: Reading, parameter: Parameter, text: str, cued: bool) -> Fit | None:
    """A number with no unit."""
    assert isinstance(reading.value, Quantity)
    value, kind, slot = reading.value.value, parameter.kind, parameter.slot
    others = tuple(other.value for other in reading.also)
    if kind is Length:
        return _bare_length(value, slot, text, min(reading.sure, UNIT_GUESS if slot.bare else 0.6))
    if kind is Count:
        if value.numerator == 1 and ORDINALS.get(text.lower()) == value.denominator > 2:  # the tenth course up
            return Fit(Count(Fraction(value.denominator), "count", text), reading.sure)
        counted = Fit(Count(value, "count", text), reading.sure, tuple(Count(v, "count", text) for v in others))
        return counted if cued or value.denominator == 1 else None  # nobody counts three and a half of anything
    if kind is Number:
        return Fit(Number(value, "none", text), reading.sure)
    if kind is Measure:  # five eighths in millimetres: a part of the tape is of an inch
        part = value.denominator in (2, 4, *TAPE_PARTS)
        return Fit(Measure(Length(value, "in", text)), 0.7) if part else None
    if not cued or (kind is Money and (_off_a_tape(reading) or (0 < value < 1 and "/" in text))) or _no_degrees(kind, text):
        return None  # nothing costs 1/8 of a dollar: it is an inch's
    if kind is Money and value >= 100 and TWO_PART.fullmatch(text):
        return Fit(Money(value / 100, "money", text), UNIT_GUESS)
    if kind is Pitch:
        return _bare_pitch(value, text, reading.sure, others)
    if kind is Angle:
        return Fit(Angle(value, "deg", text), reading.sure, tuple(Angle(v, "deg", text) for v in others))
    if kind is Temperature:
        return Fit(Temperature(value, "degF", text), 0.6, (Temperature(value, "degC", text),))
    if kind is TemperatureChange:
        return Fit(TemperatureChange(value, "dF", text), 0.6, (TemperatureChange(value, "dC", text),))
    if kind is Percent and 0 < value < 1:  # a tenth for waste, two thirds open; 3/8 is of an inch
        return None if value.denominator in (2, 4, *TAPE_PARTS) else Fit(Percent(value * 100, "percent", text), reading.sure)
    units: dict[type, str] = {
        Percent: "percent",
        Area: "ft2",
        Money: "money",
        Ratio: "ratio",
        Volume: "floz",
        Weight: "lb",
    }
    unit = slot.unit or units[kind]
    told = 1 / value if kind is Ratio and ONE_IN <= value <= MOST_ONE_IN else value  # one in three hundred
    return None if kind is Ratio and told > MOST_ONE_IN else Fit(kind(told, unit, text), reading.sure)


def _no_degrees(kind: type, text: str) -> bool:
    """Whether a number is read off a tape, and no thermometer: a gap of 3/8 is no coldest."""
    return "/" in text and kind in (Temperature, TemperatureChange)


def _bare_pitch(value: Fraction, text: str, sure: float, others: tuple[Fraction, ...]) -> Fit:
    """A pitch of 6 is a rise in 12; one of 18 may be degrees, and one of 35 is, as half the world says it."""
    rises = tuple(Pitch(each, "in12", text) for each in (value, *others))
    degrees = Pitch(value, "deg", text)
    if value > STEEPEST_RISE:
        return Fit(degrees, min(sure, UNIT_GUESS))
    if value > STEEP_RISE:
        return Fit(rises[0], min(sure, UNIT_GUESS), (*rises[1:], degrees))
    return Fit(rises[0], sure, rises[1:])


def _bare_length(value: Fraction, slot: Slot, text: str, sure: float) -> Fit:
    """A bare length takes the unit people leave out for it; where two are likely, both are kept."""
    units = slot.bare or ("in",)
    if 0 < value < 1 and "/" in text:
        return Fit(Length(value, "in", text), sure)  # nobody says 5/8 of a foot so
    first = units[0]
    size = value if value.numerator >= 0 else -value
    if len(units) > 1 and slot.plain is not None and size > slot.plain:
        first = units[1]
    if "in" in units and (value.denominator in TAPE_PARTS or (slot.kept == STOCK and value.denominator == 4)):
        return Fit(Length(value, "in", text), sure)
    length = Length(value, first, text)
    if len(units) > 1 and slot.doubt and slot.doubt[0] < size < slot.doubt[1]:
        if "in" in units and value.denominator == 4 and size > LEAST_QUARTERED:
            return Fit(Length(value, "in", text), sure)
        other = units[1] if first == units[0] else units[0]
        return Fit(length, 0.5, (Length(value, other, text),))
    return Fit(length, sure)
