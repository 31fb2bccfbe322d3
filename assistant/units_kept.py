"""The unit of what was said bare in a change: that of the value in whose place it comes, or of the wall it is in."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.acts.memory import short
from assistant.meant_for import Wanted, said_bare, shared_unit
from assistant.pieces_added import in_their_unit
from assistant.said_over import of_feet
from assistant.usual import GUESSED, IMPERIAL, METRIC_UNITS, beside_degrees, in_metric_beside, is_usual, no_tape_shows, no_unit
from assistant.ways import SCALE_SAID, Way, differences
from intents.expressions import expression
from intents.fitting import TAKEN
from intents.number_words import TAPE
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Area, Length, Pitch, Quantity, Temperature, TemperatureChange, Volume, Weight
from solvers.registry import Topic
from solvers.slots import Given, Opening, Slot
from solvers.sums import Measure

if TYPE_CHECKING:
    from assistant.pending import Asked

UNITS = {"feet": "ft", "foot": "ft", "inches": "in", "inch": "in", "millimetres": "mm", "millimeters": "mm", "mm": "mm",
         "centimetres": "cm", "cm": "cm", "metres": "m", "meters": "m"}  # fmt: skip
_DECIMAL = expression(r"\d\.\d|\bpoint\b", re.IGNORECASE)
_SCALE = {"degF": "F", "dF": "F", "degC": "C", "dC": "C"}
_SCALE_SAID = expression(r"(?:\d|°|\b)(?:f|c|fahrenheit|celsius|centigrade)\b", re.IGNORECASE)
BY_UNIT = (Length, Pitch, Angle, Area, Temperature, Volume, Weight)  # what a bare number says nothing of until its unit is known


def openings(value: object) -> bool:
    """Whether a value is a list of openings."""
    return isinstance(value, tuple) and bool(value) and isinstance(value[0], Opening)


def _in_metres(heard: Heard, last: Asked) -> Heard:
    """Openings that were said bare, of a wall that is in metres: 1.2 by 1.5 is no feet there."""
    units = {given.value.unit for given in last.givens.values() if isinstance(given.value, Length)}
    said = numbers_in(heard.text)
    if "m" not in units or any(row.kind != "number" for row in said):
        return heard
    return replace(heard, value=tuple(in_metres(one) for one in heard.value))


def in_metres(opening: Opening) -> Opening:
    """An opening with the sizes in metres that were taken for feet."""
    width, height = (Length(size.value, "m") if size.unit == "ft" else size for size in (opening.width, opening.height))
    return replace(opening, width=width, height=height)


def in_its_unit(heard: Heard, before: Given | None, last: Asked) -> Heard:
    """A bare number takes the unit of the value in whose place it comes: 12 foot or 60 F, then "if it was twenty"."""
    value = heard.value
    if openings(value):
        return _in_metres(heard, last)
    if isinstance(value, tuple):
        return in_their_unit(heard, before)
    if isinstance(value, Measure) and before is not None and isinstance(before.value, Measure):
        inner = in_its_unit(replace(heard, value=value.quantity), replace(before, value=before.value.quantity), last)
        return replace(inner, value=Measure(inner.value))  # 3.2 m in feet | no, 4.5
    if before is None or not isinstance(value, BY_UNIT) or type(value) is not type(before.value):
        return heard
    said = numbers_in(heard.text)
    if len(said) != 1 or said[0].kind != "number" or (isinstance(value, Temperature) and before.sure < SCALE_SAID):
        return heard  # its scale was never said: that of what is told now is known together
    unit = "ft" if of_feet(value.value, before.value, before.value.text) else before.value.unit
    was = [one for known in last.past if isinstance(one := known.get(before.name), type(value)) and one.value == value.value]
    unit = was[-1].unit if was else unit  # back to the 108, which was inches
    if _odd_in(unit, heard, last.topic.parameter(before.name).slot):
        return heard  # 300, in place of 3 metres of exposure: it is as it was read
    if isinstance(value, Volume) and "ml" in before.value.text.lower():
        value = replace(value, value=value.value / 1000)  # 300 ml is kept in litres
    read = replace(value, unit=unit, text=short(replace(value, unit=unit, text="")))
    slot = last.topic.parameter(before.name).slot
    odd = isinstance(read, Length) and is_usual(slot, before.value, 1) and not is_usual(slot, read, 1)
    return replace(heard, value=read, others=(), sure=GUESSED if odd else heard.sure)  # 42, after sticks of 16 feet


def _odd_in(unit: str, heard: Heard, slot: Slot) -> bool:
    """Whether a bare length is what none is in a metric unit, and is usual as it was read: in another one."""
    if not isinstance(heard.value, Length) or unit == heard.value.unit or {unit, heard.value.unit} - {"mm", "cm", "m"}:
        return False
    return not is_usual(slot, Length(heard.value.value, unit), 1) and is_usual(slot, heard.value, 1)


def on_known_scale(
    question: Question, known: dict[str, Given], topic: Topic, facts: Mapping[str, object], before: Sequence[Asked] = ()
) -> Question:  # fmt: skip
    """The question with its temperatures of no scale on that of those already given (low of 2 C, and then a dew point of -1),
    and its bare lengths metric beside metric ones (those of the talk, where it has none itself: panels of 1.2 m, then a flue
    150 across), or beside a roof that is known in degrees."""
    slots = {parameter.name: parameter.slot for parameter in topic.parameters}
    values = [given.value for given in known.values()]
    if not any(isinstance(value, Length | Area) for value in values):
        values += [] if _tells_inches(question) else _told_in(before)
    roof = next((p.name for p in topic.parameters if p.kind is Pitch and p.slot.kept == "pitch"), "")
    pitch = known[roof].value if roof in known else facts.get("pitch")
    if roof and roof not in question.givens and isinstance(pitch, Pitch) and pitch.unit == "deg":
        ways = [each for way in (question.givens, *question.swaps) for each in beside_degrees(way, slots)]
        question = replace(question, givens=ways[0], swaps=ways[1:])
    metric = [in_metric_beside(way, values, slots) for way in (question.givens, *question.swaps)] if values else []
    question = replace(question, givens=metric[0], swaps=metric[1:]) if metric else question
    warm = {name: given for name, given in known.items() if isinstance(given.value, Temperature | TemperatureChange)}
    scales = {_SCALE[given.value.unit] for given in warm.values()}
    if len(scales) != 1 or (warm.keys() <= question.givens.keys() and all(given.sure < SCALE_SAID for given in warm.values())):
        return question  # or no scale was said yet, as it made no difference, and all of them are told anew
    (scale,) = scales
    sure = max(given.sure for given in warm.values())
    ways = [{name: _on_scale(heard, scale, sure) for name, heard in way.items()} for way in (question.givens, *question.swaps)]
    return replace(question, givens=ways[0], swaps=ways[1:])


def _told_in(before: Sequence[Asked]) -> list[object]:
    """The sizes that were told in the questions before."""
    return [given.value for asked in before for given in asked.givens.values() if given.source == "asked"]


def _tells_inches(question: Question) -> bool:
    """Whether one of a question's own lengths was told in feet or inches."""
    lengths = [heard for heard in question.givens.values() if isinstance(heard.value, Length)]
    return any(heard.value.unit in IMPERIAL and not no_unit(heard) for heard in lengths)


def told_together(more: Question, asked: Asked, alike: Sequence[Way] = ()) -> Question:
    """A reply with the lengths of no unit that were told before it, where it tells the unit of those, as it would in one line:
    a roof in degrees, 6 wide | 40 degrees; millimetres, a 2.55 wall | 150; another decimal, rise 1.9 | run 2.6. A reply of no
    unit is in feet, as what was told is. `alike`: the ways that are in doubt for want of a unit.
    """
    lengths = {name: given.value for name, given in asked.givens.items() if isinstance(given.value, Length)}
    more = _in_feet_too(more, asked, lengths)
    degrees = any(isinstance(heard.value, Pitch) and heard.value.unit == "deg" for heard in more.givens.values())
    tells = any(_tells_metric(heard, asked.topic.parameter(name).slot) for name, heard in more.givens.items())
    known = {name: _as_read(name, value, alike) for name, value in lengths.items() if name not in more.givens}
    bare = {name: heard for name, heard in known.items() if no_unit(heard)}
    decimal = any(_DECIMAL.search(heard.text) for heard in bare.values())
    bare = bare | _openings_too(asked) if degrees or (tells and decimal) else {}
    return replace(more, givens=more.givens | bare, swaps=[way | bare for way in more.swaps]) if bare else more


def in_one_system(ways: list[Way]) -> list[Way]:
    """The ways, each once, without those that take one decimal of no unit for feet and another for metres: 4.8 by 3.6."""
    each = {str([(name, _bare(given.value)) for name, given in sorted(way.asked.givens.items())]): way for way in ways[::-1]}
    once = [way for way in ways if any(way is one for one in each.values())]
    return [way for way in once if len(_systems(way)) <= 1] or once


def _systems(way: Way) -> set[bool]:
    """Whether the decimals of no unit are metric, or are not, as one way takes them."""
    lengths = [given.value for given in way.asked.givens.values() if isinstance(given.value, Length)]
    heard = [Heard(value, 0, 0, value.text.split(TAKEN)[0]) for value in lengths]
    return {one.value.unit in METRIC_UNITS for one in heard if no_unit(one) and _DECIMAL.search(one.text)}


def _bare(value: object) -> object:
    return replace(value, text="") if isinstance(value, Quantity) else value


def _as_read(name: str, value: Length, alike: Sequence[Way]) -> Heard:
    """A length that was told before, as it was before its unit was taken to be one that nobody said."""
    values = [way.asked.givens[name].value for way in alike if name in way.asked.givens]
    read = next((one for one in values if isinstance(one, Length) and one.unit in IMPERIAL), value)
    return Heard(read, 0, 0, read.text.split(TAKEN)[0], 1.0)


def _openings_too(asked: Asked) -> dict[str, Heard]:
    """The openings that were told before in decimals that no tape shows, as metres: three windows 1.2 by 1.4."""
    told = {name: given.value for name, given in asked.givens.items() if openings(given.value)}
    return {name: Heard(tuple(in_metres(one) for one in value), 0, 0, "") for name, value in told.items() if _odd_feet(value)}


def _odd_feet(told: Sequence[Opening]) -> bool:
    """Whether all sizes of openings were taken for feet, and one is a decimal that no tape shows."""
    sizes = [size for one in told for size in (one.width, one.height)]
    return all(size.unit == "ft" for size in sizes) and any(size.value.denominator not in (1, *TAPE) for size in sizes)


def _tells_metric(heard: Heard, slot: Slot) -> bool:
    """Whether a reply may tell that what was told before it is metric: it is so itself, or a decimal that no tape shows."""
    if not isinstance(heard.value, Length):
        return False
    return heard.value.unit in METRIC_UNITS or _of_millimetres(heard, slot) or (no_unit(heard) and no_tape_shows(heard))


def _in_feet_too(more: Question, asked: Asked, lengths: dict[str, Length]) -> Question:
    """A reply of no unit in feet, where what was told is in feet and nothing else: rise 7 foot | 14."""
    said = [value for name, value in lengths.items() if asked.givens[name].source == "asked"]
    if not said or any(value.unit != "ft" or no_unit(Heard(value, 0, 0, value.text)) for value in said):
        return more
    bare = {name for name, heard in more.givens.items() if isinstance(heard.value, Length) and no_unit(heard)}
    bare = {name for name in bare if asked.topic.parameter(name).slot.alike and name not in lengths}
    feet = {name: replace(more.givens[name], value=replace(more.givens[name].value, unit="ft"), others=()) for name in bare}
    return replace(more, givens=more.givens | feet) if feet else more


def _of_millimetres(heard: Heard, slot: Slot) -> bool:
    """Whether a length of no unit is what none is, unless it is of millimetres."""
    if not isinstance(heard.value, Length) or not no_unit(heard):
        return False
    others = [value for value in (heard.value, *heard.others) if value.unit != "mm"]
    return not any(is_usual(slot, value, 1) for value in others) and is_usual(slot, Length(heard.value.value, "mm"), 1)


def _on_scale(heard: Heard, scale: str, sure: float) -> Heard:
    """A temperature, or a change of it, on a scale, where its own was not said."""
    value = heard.value
    if not isinstance(value, Temperature | TemperatureChange) or _SCALE_SAID.search(heard.text):
        return heard
    unit = f"{'deg' if isinstance(value, Temperature) else 'd'}{scale}"
    return replace(heard, value=replace(value, unit=unit), others=(), sure=sure)


def units_as_before(ways: list[Way], before: Sequence[Asked]) -> list[Way]:
    """Of ways that differ in the unit of what was said bare, the one with the units that the same was told in before:
    22 by 30 diagonal, after one of 12 by 16 foot."""
    ways = _in_the_system_of_the_talk(ways, before) if len(ways) > 1 else ways
    told = next((one for one in reversed(before) if ways and one.topic is ways[0].asked.topic), None)
    if told is None or len(ways) == 1:
        return ways
    names = differences(ways)
    known = [told.givens[name].value for name in names if name in told.givens and told.givens[name].source != "assumed"]
    if len(known) != len(names) or not all(isinstance(value, Length) for value in known):
        return ways
    units = {name: told.givens[name].value.unit for name in names}
    alike = [way for way in ways if units == {name: _unit_in(way, name) for name in names}]
    return alike if len(alike) == 1 else ways


def _in_the_system_of_the_talk(ways: list[Way], before: Sequence[Asked]) -> list[Way]:
    """Of ways that differ in nothing but the unit or scale of what was said without one, those in the system that all was
    told in so far: metres and Celsius where the talk is metric, and the scale that temperatures were told on."""
    given_before = [given for asked in before for given in asked.givens.values() if given.source != "assumed"]
    told = [one.value for one in given_before if one.sure >= SCALE_SAID or not isinstance(one.value, Temperature)]
    units = {value.unit for value in told if isinstance(value, (Length, Area))}
    scales = {_SCALE[value.unit] for value in told if isinstance(value, (Temperature, TemperatureChange))}
    metric = bool(units) and units <= METRIC_UNITS
    scale = next(iter(scales)) if len(scales) == 1 else "C" if metric and not scales else ""
    names = differences(ways)
    values = {name: [way.asked.givens[name].value for way in ways if name in way.asked.givens] for name in names}
    if not names or any(len({getattr(value, "value", value) for value in each}) > 1 for each in values.values()):
        return ways

    def of_it(value: object) -> bool:
        if isinstance(value, (Temperature, TemperatureChange)):
            return not scale or _SCALE[value.unit] == scale
        return not metric or (isinstance(value, Quantity) and value.unit in METRIC_UNITS)

    return [way for way in ways if all(of_it(way.asked.givens[name].value) for name in names if name in way.asked.givens)] or ways


def _unit_in(way: Way, name: str) -> str:
    """The unit of a given of one way; "" where that way gives it nothing."""
    given = way.asked.givens.get(name)
    return str(getattr(given.value, "unit", "")) if given is not None else ""


def unit_only(wanted: Wanted, last: Asked) -> list[Question]:
    """ "I meant feet": the lengths that were said bare, or else those in another unit, in that unit."""
    words = wanted.rest.lower().strip(" .!?").split()
    unit = UNITS.get(words[0], "") if len(words) == 1 and wanted.corrects else ""
    known = {name: given for name, given in last.givens.items() if given.source != "assumed"}
    lengths = {
        name: given for name, given in known.items() if unit and isinstance(given.value, Length) and given.value.unit != unit
    }
    heard = last.record.get("heard", "").lower()
    bare = {n: given for n, given in lengths.items() if said_bare(given.value) and not shared_unit(given.value.text, heard)}
    givens = {
        name: Heard(replace(given.value, unit=unit, text=""), 0, 0, wanted.rest) for name, given in (bare or lengths).items()
    }
    return [Question(last.topic.name, givens, len(givens))] if givens else []
