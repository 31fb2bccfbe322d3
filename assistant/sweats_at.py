"""A surface's temperature, told after a dew point by what the surface does: "would it sweat at 9", "so at 48 it gets wet?"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of
from assistant.units_kept import in_its_unit
from intents.expressions import expression
from intents.fitting import fit
from intents.question import Heard, Question
from intents.reading import Reading
from intents.talk import numbers_in
from solvers.slots import Parameter

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SWEATS = expression(r"\b(?:sweat|fog|drip|condens|bead|mist|weep)(?:s|es|e|ing)?\b|\bgets? wet\b|\bstays? dry\b", re.IGNORECASE)
_OF_AIR = expression(r"\b(?:air|inside|indoors|outside|room|shop|house|humid\w*|rh|percent)\b|%", re.IGNORECASE)
_IN_THERE = expression(
    r"\W*(?:(?:and|but|so|ok|no|oh|sorry|actually|what if|if)[ ,]+)*(?:it['’]?s|its|it is|the air['’]?s|the air is|air['’]?s)"
    r" (?:(?:only|just|really|about|more like|actually) )*(?P<n>[^,;?]+?)(?: degrees| deg|°)?"
    r" (?:in (?:there|here|the (?:room|shop|house|loft|attic|shed|boathouse))|inside|indoors)\W*",
    re.IGNORECASE,
)
_SCORE = 3.0  # of a change that only these words make
_TOLD_SO = 9.0  # of one that says so whole: no angle of 12 degrees is "in there"


def sweats_at(wanted: Wanted, last: Asked) -> list[Question]:
    """The dew point just worked, held against the temperature at which the line asks whether something sweats.

    The air has its temperature already: what is named with the sweating is the surface's, unless the line speaks of the air.
    """
    rest = wanted.rest
    parameter = next((p for p in last.topic.parameters if p.name == "surface"), None)
    if last.topic.name != "dew point" or parameter is None or not _SWEATS.search(rest) or _OF_AIR.search(rest):
        return []
    rows, places = numbers_in(rest), places_of(rest)
    if len(rows) != 1 or len(places) != 1:
        return []
    text = rest[places[0].start : places[0].end]
    heard = _heard(rows[0], parameter, text)
    return [Question(last.topic.name, {parameter.name: heard}, _SCORE)] if heard is not None else []


def air_told(wanted: Wanted, last: Asked) -> list[Question]:
    """The dew point just worked, with the air as warm as the line says it is in there."""
    parameter = next((p for p in last.topic.parameters if p.name == "temperature"), None)
    found = _IN_THERE.fullmatch(f"{wanted.lead}{wanted.rest}")
    if last.topic.name != "dew point" or parameter is None or found is None or parameter.name not in last.givens:
        return []
    text = found["n"]
    rows, whole = numbers_in(text), numbers_in(f"{text} degrees")
    if len(rows) == len(whole) == 1 and rows[0].value.value != whole[0].value.value:  # type: ignore[union-attr]
        text = str(whole[0].value.value)  # type: ignore[union-attr]  # twenty too degrees, of which twenty is half
        rows = numbers_in(text)
    heard = _heard(rows[0], parameter, text) if len(rows) == 1 and rows[0].kind == "number" else None
    if heard is None:
        return []
    return [Question(last.topic.name, {parameter.name: in_its_unit(heard, last.givens[parameter.name], last)}, _TOLD_SO)]


def _heard(row: Reading, parameter: Parameter, text: str) -> Heard | None:
    """A number as a value of the parameter that its words tell it is; None where it can be none."""
    fitted = fit(row, parameter, text, cued=True)
    return Heard(fitted.value, 0, len(text), text, fitted.sure, fitted.others) if fitted is not None else None
