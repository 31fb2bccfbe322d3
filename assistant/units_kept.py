"""The unit of what was said bare in a change: that of the value in whose place it comes, or of the wall it is in."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.acts.memory import short
from assistant.meant_for import Wanted, said_bare, shared_unit
from assistant.said_over import of_feet
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Area, Length, Pitch, Temperature, TemperatureChange, Volume
from solvers.slots import Given, Opening

if TYPE_CHECKING:
    from assistant.pending import Asked

UNITS = {"feet": "ft", "foot": "ft", "inches": "in", "inch": "in", "millimetres": "mm", "millimeters": "mm", "mm": "mm",
         "centimetres": "cm", "cm": "cm", "metres": "m", "meters": "m"}  # fmt: skip
_SCALE = {"degF": "F", "dF": "F", "degC": "C", "dC": "C"}
_SCALE_SAID = re.compile(r"(?:\d|°|\b)(?:f|c|fahrenheit|celsius|centigrade)\b", re.IGNORECASE)
BY_UNIT = (Length, Pitch, Angle, Area, Temperature, Volume)  # what a bare number says nothing of until its unit is known


def openings(value: object) -> bool:
    """Whether a value is a list of openings."""
    return isinstance(value, tuple) and bool(value) and isinstance(value[0], Opening)


def _in_metres(heard: Heard, last: Asked) -> Heard:
    """Openings that were said bare, of a wall that is in metres: 1.2 by 1.5 is no feet there."""
    units = {given.value.unit for given in last.givens.values() if isinstance(given.value, Length)}
    said = numbers_in(heard.text)
    if "m" not in units or any(row.kind != "number" for row in said):
        return heard
    metres = [replace(one, **{side: Length(size.value, "m") for side in ("width", "height")
              if (size := getattr(one, side)).unit == "ft"}) for one in heard.value]  # fmt: skip
    return replace(heard, value=tuple(metres))


def in_its_unit(heard: Heard, before: Given | None, last: Asked) -> Heard:
    """A bare number takes the unit of the value in whose place it comes: 12 foot or 60 F, then "if it was twenty"."""
    value = heard.value
    if openings(value):
        return _in_metres(heard, last)
    if before is None or not isinstance(value, BY_UNIT) or type(value) is not type(before.value):
        return heard
    said = numbers_in(heard.text)
    if len(said) != 1 or said[0].kind != "number":
        return heard
    unit = "ft" if of_feet(value.value, before.value, before.value.text) else before.value.unit
    if isinstance(value, Volume) and "ml" in before.value.text.lower():
        value = replace(value, value=value.value / 1000)  # 300 ml is kept in litres
    return replace(heard, value=replace(value, unit=unit, text=short(replace(value, unit=unit, text=""))), others=())


def on_known_scale(question: Question, known: dict[str, Given]) -> Question:
    """The question with its temperatures of no scale on that of those already given: low of 2 C, and then a dew point of -1."""
    scales = {_SCALE[given.value.unit] for given in known.values() if isinstance(given.value, Temperature | TemperatureChange)}
    if len(scales) != 1:
        return question
    (scale,) = scales
    ways = [{name: _on_scale(heard, scale) for name, heard in way.items()} for way in (question.givens, *question.swaps)]
    return replace(question, givens=ways[0], swaps=ways[1:])


def _on_scale(heard: Heard, scale: str) -> Heard:
    """A temperature, or a change of it, on a scale, where its own was not said."""
    value = heard.value
    if not isinstance(value, Temperature | TemperatureChange) or _SCALE_SAID.search(heard.text):
        return heard
    unit = f"{'deg' if isinstance(value, Temperature) else 'd'}{scale}"
    return replace(heard, value=replace(value, unit=unit), others=(), sure=1.0)


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
