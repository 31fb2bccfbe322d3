"""The unit of what was said bare in a change: that of the value in whose place it comes, or of the wall it is in."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.acts.memory import short
from assistant.meant_for import FEET, Wanted, said_bare, shared_unit
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Area, Length, Pitch, Temperature, TemperatureChange, Volume
from solvers.slots import Given, Opening

if TYPE_CHECKING:
    from assistant.pending import Asked

UNITS = {"feet": "ft", "foot": "ft", "inches": "in", "inch": "in", "millimetres": "mm", "millimeters": "mm", "mm": "mm",
         "centimetres": "cm", "cm": "cm", "metres": "m", "meters": "m"}  # fmt: skip
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
    if before is not None and heard.others and isinstance(value, Temperature | TemperatureChange):
        return _on_its_scale(heard, before)
    if before is None or not isinstance(value, BY_UNIT) or type(value) is not type(before.value):
        return heard
    said = numbers_in(heard.text)
    if len(said) != 1 or said[0].kind != "number":
        return heard
    unit = "ft" if _in_feet_too(value, before.value) else before.value.unit
    if isinstance(value, Volume) and "ml" in before.value.text.lower():
        value = replace(value, value=value.value / 1000)  # 300 ml is kept in litres
    return replace(heard, value=replace(value, unit=unit, text=short(replace(value, unit=unit, text=""))), others=())


def _on_its_scale(heard: Heard, before: Given) -> Heard:
    """Degrees of no scale, on that of the value in whose place they come: a swing of 90 F, then sixty degrees."""
    unit = getattr(before.value, "unit", "")
    alike = next((value for value in (heard.value, *heard.others) if value.unit == unit), None)
    if alike is None or re.search(r"\b(?:f|c|fahrenheit|celsius|centigrade)\b", heard.text, re.IGNORECASE):
        return heard
    return replace(heard, value=alike, others=())


def _in_feet_too(value: object, before: object) -> bool:
    """Whether a bare number is feet, in place of feet and inches that it is near in feet and not in inches: 23'6, then 22."""
    if not isinstance(value, Length) or not isinstance(before, Length) or before.unit != "in":
        return False
    if min(value.value, before.value) <= 0:
        return False
    sizes = (Length(value.value, unit).to("in").value / before.value for unit in ("in", "ft"))
    inches, feet = (max(ratio, 1 / ratio) for ratio in sizes)
    return bool(FEET.search(before.text)) and feet < inches


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
