"""What is usual on a job: a quantity outside of it is put in the unit that was left out, or asked about, never used as it is.

No window arch is 1200 inches wide and no wall 2.4 feet high. Where the number was said with no unit, the unit that makes
it usual is a second way to mean it (or the only one, where the rest is said in that system). Where its unit was said, or
no unit helps, it is asked whether it was meant.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.fitting import TAKEN
from intents.number_words import ORDINALS, SMALL, TAPE
from intents.question import Heard
from intents.untold_layers import kind_of
from intents.vocabulary import COUNTING
from solvers.binding import PAGE_UNIT, past_limits
from solvers.printing import decimal
from solvers.quantities import Angle, Area, Count, Length, Pitch, Quantity, Temperature, TemperatureChange
from solvers.rounding import reading
from solvers.slots import Given, Layer, Limit, Opening, Parameter, Slot

if TYPE_CHECKING:
    from assistant.pending import Asked

THICKEST = {"sheathing": 3, "strapping": 4, "cladding": 4}  # in; common practice
THICKEST_OF_ALL = 12  # in
SCALES: dict[type[Quantity], str] = {Temperature: "degF", TemperatureChange: "dF"}
GUESSED = 0.05  # how sure a unit is that nothing but the size tells: asked about, where it is the only way that can be
STRETCH = 3  # so far outside of what is usual, a size said with its unit is asked about; of 33,287 lines one more than at 10
NAMES = {"mm": "millimetres", "m": "metres", "ft": "feet", "in": "inches"}
_ROOF = "the roof as it is known"
NO_INCHES, PAST = 500, 3  # a whole number that nobody counts inches to; and so many times what is usual
_A_FIFTH_MORE = Fraction(6, 5)
SMALL_GABLE = 9  # ft; under it a gable is rather so many metres wide, where the roof is told in degrees
LOWEST_DOOR, LARGE = 4, 100  # ft; a whole number that is no size in inches
_FROM_FEET = 96  # inches, from which what is usual is said in feet
ODD = "It is mostly"  # as is asked of what no such given is
METRIC, IMPERIAL = ("mm", "m"), ("ft", "in")  # nobody leaves out centimetres
METRIC_UNITS = frozenset(("mm", "cm", "m", "m2", "cm2", "mm2", "degC", "dC", "kg", "L"))
_POINT = expression(r"\.|\bpoint\b", re.IGNORECASE)
_MARKS = {ord(mark): None for mark in "/.,"}
_NUMBERS = COUNTING | ORDINALS.keys() | frozenset("and a an point".split())

_FALL = expression(
    r"(?:1|one|a)\W+in\W+(?:[2-9]\d|\d{3}|a hundred|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety).*)", re.IGNORECASE
)
_ONLY = frozenset("only just about now".split())

Givens = dict[str, Heard]


def in_usual_units(givens: Givens, slots: dict[str, Slot], roofed: bool = False) -> list[Givens]:
    """The ways to mean the lengths that were said with no unit, the likeliest first; mostly the one there is. `roofed`: words
    tell of a roof or a run."""
    warm = [name for name, heard in givens.items() if heard.others and isinstance(heard.value, Temperature) and name in slots]
    givens = _all_metric(_doors_in_metres(givens) | {name: _usual_only(givens[name], slots[name]) for name in warm}, slots)
    doubtful = [name for name, heard in givens.items() if heard.others and name in slots]
    givens = givens | {name: _usual_only(givens[name], slots[name]) for name in doubtful}
    strange = [name for name, heard in givens.items() if name in slots and _strange(heard, slots[name])]
    strange = strange or _small_gable(givens, slots)
    if (metres := _decimal_metres(givens, strange, slots)) is not None:
        return [metres]
    if not strange:
        return _in_metres(givens, slots, roofed) or [givens]
    if any("/" in givens[name].text for name in strange):  # a part on the tape is of an inch
        return [givens]
    metric = [w for unit in METRIC if (w := _all_in(unit, givens, strange, slots)) is not None]
    imperial = [w for unit in IMPERIAL if (w := _all_in(unit, givens, strange, slots)) is not None]
    others = [heard for name, heard in givens.items() if name not in strange]
    large = all(givens[name].value.value.denominator == 1 and givens[name].value.value >= LARGE for name in strange)
    odd = any(isinstance(heard.value, Length) and no_unit(heard) and no_tape_shows(heard) for heard in others)
    bare = all(no_unit(heard) for heard in _lengths(givens))
    if any(_metric(heard) for heard in others) or (large and odd and bare):
        inches = [way for way in imperial if all(way[name].value.unit == "in" and not slots[name].unit for name in strange)]
        return metric[:1] or inches[:1] or [givens]  # studs at 16 on a wall of 11 m
    unsaid = [heard for heard in _lengths(givens) if no_unit(heard)]
    figures = all(heard.text.replace(".", "").isdecimal() for heard in unsaid)  # five ten may be feet and inches
    if figures and metric and not imperial and any(_past_inches(givens[name], slots[name]) for name in strange):
        return metric[:1]
    guessed = [{n: replace(heard, sure=GUESSED) if n in strange else heard for n, heard in way.items()}
               for way in (*metric[:1], *imperial[:1])]  # fmt: skip
    return [givens, *guessed]


def _past_inches(heard: Heard, slot: Slot) -> bool:
    """Whether a whole number with no unit is past all that is told in inches: a strut 500 long, a channel 40 wide."""
    size, most = heard.value.value, slot.usual[1] if slot.usual else 0
    return bool(size.denominator == 1 and (size >= NO_INCHES or (heard.value.unit == "in" and size > PAST * most)))


def _lengths(givens: Givens) -> list[Heard]:
    return [heard for heard in givens.values() if isinstance(heard.value, Length)]


def _doors_in_metres(givens: Givens) -> Givens:
    """The givens with openings in metres, where one is a door with no unit that is in decimals, and too small for one in feet."""
    changed = dict(givens)
    for name, heard in givens.items():
        doors = [one for one in heard.value if isinstance(one, Opening)] if isinstance(heard.value, tuple) else []
        sizes = [size for one in doors for size in (one.width, one.height) if isinstance(size, Length)]
        small = any("door" in one.what and _largest(one) < LOWEST_DOOR for one in doors)
        if small and _POINT.search(heard.text) and all(size.unit == "ft" for size in sizes) and len(sizes) == 2 * len(doors):
            changed[name] = replace(heard, value=_in_m_too(tuple(doors)))
    return changed


def _largest(opening: Opening) -> Fraction:
    """The larger of its sizes, in feet; nothing of one whose sizes are not told."""
    sizes = [size.to("ft").value for size in (opening.width, opening.height) if isinstance(size, Length)]
    return Fraction(max(sizes, default=LOWEST_DOOR))


def _in_m(size: Quantity) -> Length:
    return Length(size.value, "m")


def _decimal_metres(givens: Givens, strange: list[str], slots: dict[str, Slot]) -> Givens | None:
    """The lengths in metres, where none has a unit, all are decimals, and one that no tape shows would be what none is in feet: a
    wall 2.4 high."""
    lengths = {name: heard for name, heard in givens.items() if isinstance(heard.value, Length)}
    listed = {name: heard for name, heard in givens.items() if isinstance(heard.value, tuple)}
    if not strange or not all(map(_bare_openings, listed.values())) or not lengths.keys() <= slots.keys():
        return None
    pointed = all(no_unit(heard) and _POINT.search(heard.text) for heard in lengths.values())
    small = strange == _small_gable(givens, slots)
    odd = pointed and all(no_tape_shows(lengths[name]) and (small or _far_off(lengths[name], slots[name])) for name in strange)
    way = _all_in("m", givens, list(lengths), slots) if odd else None
    return None if way is None else way | {name: replace(heard, value=_in_m_too(heard.value)) for name, heard in listed.items()}


def _bare_openings(heard: Heard) -> bool:
    """Whether openings were told in decimals with no unit, and taken for feet: two windows 1.2 by 1.0."""
    if not all(isinstance(one, Opening) for one in heard.value) or (heard.value and not _POINT.search(heard.text)):
        return False  # none at all is of any unit
    return all(isinstance(size, Length) and size.unit == "ft" for one in heard.value for size in (one.width, one.height))


def _in_m_too(told: tuple[Opening, ...]) -> tuple[Opening, ...]:
    return tuple(replace(one, width=_in_m(one.width), height=_in_m(one.height)) for one in told)


def _far_off(heard: Heard, slot: Slot) -> bool:
    """Whether a length is so small that it would be unusual at a fifth more: no wall is 2.4 ft high, one of 4.2 may be."""
    values = (heard.value, *heard.others)
    return not any(is_usual(slot, replace(value, value=value.value * _A_FIFTH_MORE), 1) for value in values)


def beside_degrees(givens: Givens, slots: dict[str, Slot]) -> list[Givens]:
    """The ways to mean the lengths with no unit where the roof is known in degrees, and the line does not say so."""
    beside = givens | {_ROOF: Heard(Pitch(Fraction(0), "deg"), 0, 0, "")}
    ways = in_usual_units(beside, slots | {_ROOF: Slot("")})
    return [{name: heard for name, heard in way.items() if name != _ROOF} for way in ways]


def _in_degrees(givens: Givens) -> bool:
    """Whether a roof's pitch is told in degrees, as those tell it who measure in metres."""
    return any(isinstance(heard.value, Pitch) and heard.value.unit == "deg" for heard in givens.values())


def _metric_slope(givens: Givens, roofed: bool) -> bool:
    """Whether the slope is told as those tell it who measure in metres: a roof's in degrees, a fall of 1 in 40."""
    falls = any(isinstance(h.value, Pitch) and _FALL.fullmatch(h.text.strip()) for h in givens.values())
    return falls or (roofed and _in_degrees(givens))


def _small_gable(givens: Givens, slots: dict[str, Slot]) -> list[str]:
    """The width of a gable with no unit that is small for one in feet, where the pitch is told in degrees: 6 wide, 40 degrees."""
    return [
        name for name, heard in givens.items()
        if _in_degrees(givens) and name in slots and slots[name].kept == "gable width" and no_unit(heard)
        and isinstance(heard.value, Length) and heard.value.unit == "ft" and heard.value.value < SMALL_GABLE
    ]  # fmt: skip


def _all_metric(givens: Givens, slots: dict[str, Slot]) -> Givens:
    """The lengths that were said with no unit in millimetres or metres, where another was that can be nothing else (centres
    of 600, an overhang of 250), or one is a decimal that no tape shows beside what was told in metric units."""
    lengths = [heard for heard in givens.values() if isinstance(heard.value, Length)]
    others = [heard for heard in givens.values() if _metric(heard)]
    bare = any(_metric(heard) and no_unit(heard) and not heard.others for heard in lengths)
    bare = bare or any(isinstance(heard.value, Area) for heard in others)
    odd = [name for name, heard in givens.items() if heard in lengths and no_unit(heard) and no_tape_shows(heard)]
    if not others or any(heard.value.value and not _metric(heard) and not no_unit(heard) for heard in lengths):
        return givens
    return _put_in_metric(givens, [*givens] if bare else odd, slots)


def _in_metres(givens: Givens, slots: dict[str, Slot], roofed: bool) -> list[Givens]:
    """The same in metres too, where a decimal that no tape shows was taken for feet and no length has a unit: 3.6 by 2.7."""
    lengths = {name: heard for name, heard in givens.items() if isinstance(heard.value, Length)}
    odd = [n for n, heard in lengths.items() if n in slots and heard.value.unit in IMPERIAL and no_tape_shows(heard)]
    said = any(not no_unit(heard) for heard in lengths.values()) or any(isinstance(h.value, tuple) for h in givens.values())
    way = _all_in("m", givens, odd, slots) if odd and not said else None
    if way is None:
        return []
    wide = any(slots[name].kept == "gable width" for name in odd)  # which may be so many feet, where it is no small one
    if len(odd) == len(lengths) and _metric_slope(givens, roofed and not wide):
        return [way]
    return [way, givens] if len(odd) == len(lengths) else [givens, way]


def in_metric_beside(givens: Givens, known: Iterable[object], slots: dict[str, Slot]) -> Givens:
    """The lengths that were said with no unit in millimetres or metres, where every size known before is: a wall of 4.2 m,
    and then 2.7 high; 118 square metres, and then rolls of 1.5 by 50."""
    sizes = [value for value in known if isinstance(value, Length | Area)]
    if not sizes or any(value.unit not in METRIC_UNITS for value in sizes):
        return givens
    return _put_in_metric(givens, [*givens], slots)


def _put_in_metric(givens: Givens, names: Iterable[str], slots: dict[str, Slot]) -> Givens:
    """The givens with those of these names that are lengths of no unit in the metric one that makes them usual; no part of a
    tape is metric."""
    changed = dict(givens)
    for name in names:
        heard, slot = givens[name], slots.get(name)
        bare = isinstance(heard.value, Length) and no_unit(heard) and not _metric(heard) and "/" not in heard.text
        if slot is None or slot.usual is None or not bare or not heard.value.value:
            continue
        fitting = [length for unit in METRIC if is_usual(slot, length := _taken(heard, unit), 1)]
        if fitting:
            changed[name] = replace(heard, value=fitting[0], others=())
    return changed


def no_tape_shows(heard: Heard) -> bool:
    """Whether it is a decimal of no part of the tape's."""
    return _POINT.search(heard.text) is not None and heard.value.value.denominator not in (1, *TAPE)


def _usual_only(heard: Heard, slot: Slot) -> Heard:
    """A length that could be of several units, or a temperature of either scale, without those that make it unusual."""
    if not isinstance(heard.value, Length | Temperature) or slot.usual is None:
        return heard
    usual = [value for value in (heard.value, *heard.others) if is_usual(slot, value, 1)]
    return replace(heard, value=usual[0], others=tuple(usual[1:])) if usual else heard


def far_out(givens: Givens, slots: dict[str, Slot], most: int) -> bool:
    """Whether one of them is outside of what is usual in every unit it could have, with its unit `most` times so."""
    for name, heard in givens.items():
        limited = name in slots and slots[name].usual is not None and isinstance(heard.value, Quantity)
        stretch = min(most, _stretch(heard))
        if limited and not any(is_usual(slots[name], value, stretch) for value in (heard.value, *heard.others)):
            return True
    return False


def impossible(givens: Givens, slots: dict[str, Slot]) -> bool:
    """Whether one of them can't be what it was taken for, in any unit it could have: a spring angle of 90 degrees."""
    for name, heard in givens.items():
        if name in slots and isinstance(heard.value, Quantity) and not isinstance(heard.value, Pitch):
            slot, values = slots[name], (heard.value, *heard.others)
            sizes = [value.to(slot.unit or PAGE_UNIT.get(type(value), value.unit)).value for value in values]
            if all(past_limits(slot, size) for size in sizes):
                return True
    return False


def _all_in(unit: str, givens: Givens, strange: list[str], slots: dict[str, Slot]) -> Givens | None:
    """The givens with all that is strange in one unit, where that makes all of it usual; metric ones bring the others along."""
    changed = dict(givens)
    for name in strange:
        heard = givens[name]
        length = _taken(heard, unit)
        if not is_usual(slots[name], length, 1):
            return None
        changed[name] = replace(heard, value=length, others=())
    if unit not in METRIC:
        return changed
    for name, heard in givens.items():
        if name in strange or name not in slots or not isinstance(heard.value, Length) or _metric(heard) or not no_unit(heard):
            continue
        lengths = [_taken(heard, metric) for metric in METRIC]
        fitting = [length for length in lengths if is_usual(slots[name], length, 1)]
        if fitting:
            changed[name] = replace(heard, value=fitting[0], others=())
    return changed


def _taken(heard: Heard, unit: str) -> Length:
    """The length in a unit that was not said, which its text says; two digits in words are metres and a tenth of them."""
    digits = [SMALL.get(word, 10) for word in heard.text.lower().split()]
    if unit == "m" and len(digits) == 2 and 0 < digits[0] < 10 > digits[1]:
        return Length(digits[0] + Fraction(digits[1], 10), unit, f"{heard.text}{TAKEN}{NAMES[unit]}")
    return Length(heard.value.value, unit, f"{heard.text}{TAKEN}{NAMES[unit]}")


def _strange(heard: Heard, slot: Slot) -> bool:
    """Whether it is a length with no unit, outside of what is usual in each unit it could have."""
    if not isinstance(heard.value, Length) or slot.usual is None or not no_unit(heard):
        return False
    return not any(is_usual(slot, value, 1) for value in (heard.value, *heard.others))


def _metric(heard: Heard) -> bool:
    """Whether it is of the metric system; openings told as 1200 by 900 are."""
    if isinstance(heard.value, tuple):
        sizes = [getattr(each, side, None) for each in heard.value for side in ("width", "length", "thickness")]
        return any(isinstance(size, Quantity) and size.unit in METRIC_UNITS for size in sizes)
    return isinstance(heard.value, Quantity) and heard.value.unit in METRIC_UNITS


def no_unit(heard: Heard) -> bool:
    """Whether nothing but a number was said."""
    words = [word for word in heard.text.lower().replace("-", " ").split() if word not in _ONLY]
    return bool(words) and all(word in _NUMBERS or word.translate(_MARKS).isdigit() for word in words)


def is_usual(slot: Slot, value: Quantity, stretch: int) -> bool:
    """Whether a quantity is within what is usual for its slot, or `stretch` times outside."""
    if slot.usual is None:
        return True
    size = value.to(_page_unit(slot, value)).value
    least, most = slot.usual
    return least <= size * stretch and size <= most * stretch


def _page_unit(slot: Slot, value: Quantity) -> str:
    """The unit that a slot's limits are in."""
    return slot.unit or SCALES.get(type(value)) or PAGE_UNIT.get(type(value), value.unit)


def unusual(asked: Asked, lacks: bool = False) -> str:
    """The name of a given of this line that is outside of what is usual and was not confirmed; "" if there is none.

    `lacks`: something else is missing, which is asked first where it may tell the unit of what was said without one.
    """
    for parameter in asked.topic.parameters:
        given = asked.givens.get(parameter.name)
        if given is None or given.source != "asked" or parameter.name in asked.meant or not _outside(asked, parameter, given):
            continue
        text = getattr(given.value, "text", "").split(TAKEN)[0]
        if not (lacks and isinstance(given.value, Length) and no_unit(Heard(given.value, 0, 0, text))):
            return parameter.name
    return ""


def _as_all_others(asked: Asked, given: Given) -> bool:
    """Whether a length is metric by its size, as all the others of the question are: a mark at 300."""
    told = [one for one in asked.givens.values() if one.source != "assumed" and isinstance(one.value, Length) and one.value.value]
    return len(told) > 1 and given in told and METRIC_UNITS.issuperset(one.value.unit for one in told)


def _outside(asked: Asked, parameter: Parameter, given: Given) -> bool:
    value = given.value
    if not isinstance(value, Quantity):
        return isinstance(value, tuple) and any(too_thick(layer) for layer in value)
    if given.sure == GUESSED and not _as_all_others(asked, given):
        return True
    return not is_usual(parameter.slot, value, _stretch(Heard(value, 0, 0, value.text.split(TAKEN)[0])))


def _stretch(heard: Heard) -> int:
    """So many times outside of what is usual a quantity is taken as it was said: a count or an angle never."""
    return 1 if isinstance(heard.value, Count | Angle | Temperature | TemperatureChange) or no_unit(heard) else STRETCH


def too_thick(layer: object) -> bool:
    """Whether a layer is thicker than any of its name: 8 inches of plywood."""
    if not isinstance(layer, Layer) or layer.thickness is None:
        return False
    kind = kind_of(layer.what.split()[-1]) if layer.what else ""
    return layer.thickness.to("in").value > THICKEST.get(kind, THICKEST_OF_ALL)


def is_it_meant(parameter: Parameter, given: Given) -> str:
    """The question whether an unusual quantity was meant."""
    if isinstance(given.value, tuple):
        layer = next(layer for layer in given.value if too_thick(layer))
        thick = reading(layer.thickness.value, layer.thickness.unit).split(" (")[0]
        return f"Is the {layer.what} {thick} thick? Say yes, or say all the layers again with their units."
    assert parameter.slot.usual is not None
    least, most = (_shown(parameter, given.value, limit) for limit in parameter.slot.usual)
    said = reading(given.value.value, given.value.unit).split(" (")[0]
    return f"Is the {parameter.label} {said}? {ODD} {least} to {most}: say yes, or say it again with its unit."


def mostly(parameter: Parameter) -> str:
    """What is usual for a parameter, as a sentence; "" where that is not known."""
    unit = parameter.slot.unit or SCALES.get(parameter.kind) or PAGE_UNIT.get(parameter.kind, "")
    if parameter.slot.usual is None or not unit:
        return ""
    in_feet = unit == "in" and parameter.slot.usual[1] >= _FROM_FEET
    least, most = (Fraction(limit) / (12 if in_feet else 1) for limit in parameter.slot.usual)
    shown = "ft" if in_feet else unit
    return f"The {parameter.label} is mostly {decimal(least, 2)} to {reading(most, shown).split(' (')[0]}."


def _shown(parameter: Parameter, value: Quantity, limit: Limit) -> str:
    """A limit in the unit of what was said."""
    unit = _page_unit(parameter.slot, value)
    size = type(value)(limit, unit).to(value.unit).value  # type: ignore[arg-type]
    return f"{decimal(size, 0 if abs(size) >= 10 else 2)}"
