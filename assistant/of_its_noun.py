"""A number anew with the very word that the old one was said with: "seventy skirting", of a skirting of one twenty."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of
from assistant.told_values import told_anew
from assistant.units_kept import in_its_unit
from intents.expressions import expression
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked
    from intents.question import Question


_NONE = expression(r"\b(?:no|without|none)\b(?!,)", re.IGNORECASE)  # no gaps at the ends, 10 slats: more than the number is told


def of_its_noun(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one length or count as the line tells it anew; none where it is more than a number and its word."""
    text = f"{wanted.lead}{wanted.rest}"
    if wanted.old or len(places_of(text)) != 1 or _NONE.search(text):
        return []
    told = told_anew(text, last)
    if told is None or not all(isinstance(heard.value, Length) or name == "things" for name, heard in told.givens.items()):
        return []
    told.givens = {name: in_its_unit(heard, last.givens.get(name), last) for name, heard in told.givens.items()}
    return [told]
