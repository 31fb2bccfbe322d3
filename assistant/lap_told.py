"""Another lap, or another board, of an exposure that was told by both: 8 1/4 siding with a 1 1/4 lap, and then "1 1/2 lap"."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.said_over import places_of
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length, Number

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_LAP = expression(r"\b(?:over)?lap(?:s|ped|ping)?\b", re.IGNORECASE)
_BOARD = expression(r"\b(?:boards?|siding|planks?|clapboards?|weatherboards?)\b", re.IGNORECASE)
_BOTH = 2  # sizes of an exposure that was told so
_SCORE = 3.0  # of a change that only these words make


def lap_told(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with the lap, or the width of the board, as the line tells it; none where it tells neither."""
    given = last.givens.get("exposure")
    said = given.value.text if given is not None and isinstance(given.value, Length) else ""
    places = places_of(said) if _LAP.search(said) else []
    new = places_of(wanted.rest)
    laps = bool(_LAP.search(wanted.rest))
    if given is None or len(places) != _BOTH or len(new) != 1 or laps == bool(_BOARD.search(wanted.rest)):
        return []
    unit = given.value.unit
    sizes = [_size(place.value, unit) for place in (*places, *new)]
    if not all(isinstance(size, Length) for size in sizes):
        return []
    wide, lap, told = (size.to(unit).value for size in sizes if size is not None)
    shows = wide - told if laps else told - lap
    if shows <= 0:
        return []
    at = places[1] if laps else places[0]
    text = said[: at.start] + wanted.rest[new[0].start : new[0].end] + said[at.end :]
    value = replace(given.value, value=shows, text=text)
    return [Question(last.topic.name, {"exposure": Heard(value, 0, len(text), text)}, _SCORE)]


def _size(value: object, unit: str) -> Length | None:
    """A size as a length; a bare one is in the unit of the exposure."""
    if isinstance(value, Number):
        return Length(value.value, unit)
    return value if isinstance(value, Length) else None
