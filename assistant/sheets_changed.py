"""Sheets of another size for what was just counted: "4 by 9 sheets", "in 4 by 12 drywall"."""

from __future__ import annotations

from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from intents.sheets_told import SHEETS

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SIZE = frozenset(("sheet_width", "sheet_length"))
_SHEETS = expression(r"\b(?:sheets?|ply|plywood|osb|drywall|board|boards|foam|plasterboard)\b")
_ASKS = expression(r"\b(?:how (?:long|high|much)|walls?|gables?|cost|stack)\b")


def sheets_changed(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with the size of its sheets as the line tells it; none where it tells more, or no size."""
    said = wanted.rest.lower()
    if last.topic.name != SHEETS or not _SHEETS.search(said) or _ASKS.search(said):
        return []
    found = read_as(wanted.rest, SHEETS, {SHEETS: last.topic.parameters})
    return [found] if found.givens.keys() == _SIZE and not found.unplaced else []
