"""The order list: what the take-offs of the notebook add up to, for the trip to the yard."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

from assistant.notebook_entry import Entry
from intents.expressions import expression

ORDER_TOPICS = (
    "take-off",
    "cladding boards",
    "squares",
    "soffit panels",
    "trim sticks",
    "trim round openings",
    "cut list",
    "membrane rolls",
    "sheets",
    "fasteners",
    "sealant",
    "step flashing",
    "strapping",
    "bent flashing",
)

# What is bought, and the unit it is added up in. Units that are not here are of sizes or angles, not amounts.
ORDER_UNITS: dict[str, tuple[str, float]] = {
    "count": ("count", 1),
    "in": ("ft", 1 / 12),
    "ft": ("ft", 1),
    "mm": ("m", 1 / 1000),
    "cm": ("m", 1 / 100),
    "m": ("m", 1),
    "in2": ("ft2", 1 / 144),
    "ft2": ("ft2", 1),
    "m2": ("m2", 1),
    "square": ("square", 1),
    "gal": ("gal", 1),
    "L": ("L", 1),
    "lb": ("lb", 1),
    "kg": ("kg", 1),
}
_SHOWN = {"ft2": "ft²", "m2": "m²", "square": "squares"}

# Sizes and by-products that stand beside an amount; adding these up would give a number that means nothing.
_NOT_BOUGHT = expression(
    r"\b(per|each|offcuts?|girth|exposure|spacing|gross|net|areas?|openings?|courses?|kerf|left over|lost|bought|volume"
    r"|to spare|in all)\b"
)


@dataclass(slots=True)
class OrderLine:
    """One thing to order. `value` is in `unit`; `text` is what a person reads, rounded up.

    `entries` are the ids it was added up from; `repeats` of them put the same question again with the same givens, so
    that the person can strike those that were not meant twice.
    """

    name: str
    piece: str
    unit: str
    value: float = 0.0
    entries: list[str] = field(default_factory=list)
    repeats: int = 0

    @property
    def text(self) -> str:
        """The total, rounded up to what can be bought: whole pieces and squares, tenths of the rest."""
        if self.unit == "count":
            return f"{_up(self.value):,.0f} {self.piece or self.name}"
        amount = _up(self.value) if self.unit == "square" else _up(self.value * 10) / 10
        return f"{amount:,g} {_SHOWN.get(self.unit, self.unit)}"


def order_lines(entries: Iterable[Entry]) -> list[OrderLine]:
    """The lines of the order list, in the order first asked. Struck and corrected entries are left out."""
    lines: dict[tuple[str, str, str], OrderLine] = {}
    asked: set[str] = set()
    for entry in entries:
        if entry.struck or entry.corrected_by or entry.outcome != "answered" or entry.topic not in ORDER_TOPICS:
            continue
        question = _question(entry)
        for name, piece, unit, amount in _items(entry):
            line = lines.setdefault((name.casefold(), _singular(piece), unit), OrderLine(name, piece, unit))
            line.value += amount
            line.piece = max(line.piece, piece, key=len)  # the plural, once there is more than one
            line.entries.append(entry.id)
            line.repeats += question in asked
        asked.add(question)
    return list(lines.values())


def _items(entry: Entry) -> Iterator[tuple[str, str, str, float]]:
    """(name, piece, unit, amount) of everything an entry says to buy."""
    record = entry.record
    for item in [record["answer"], *record["also"]]:
        if item["unit"] not in ORDER_UNITS or item["value"] is None or _NOT_BOUGHT.search(item["name"].casefold()):
            continue
        unit, factor = ORDER_UNITS[item["unit"]]
        amount = float(_up(item["value"])) if unit == "count" else item["value"] * factor
        yield item["name"], _piece(item) if unit == "count" else "", unit, amount


def _piece(item: dict[str, Any]) -> str:
    """What is counted, from a text such as "7 sticks of 12 ft"; "" when the text does not begin with the count."""
    found = re.match(r"([\d,]+)\s+(\D.*)", item["text"])
    if not found or int(found[1].replace(",", "") or 0) != _up(item["value"]):
        return ""
    return found[2].strip()


def _singular(piece: str) -> str:
    """The piece with its first word in the singular, so that "1 stick of 12 ft" joins "7 sticks of 12 ft"."""
    first, _, rest = piece.casefold().partition(" ")
    return re.sub(r"(?<=x|h)es$|(?<!s)s$", "", first) + " " + rest


def _question(entry: Entry) -> str:
    """What was asked, as a key: topic, job and givens."""
    givens = sorted((str(given["name"]), str(given["value"]), str(given["unit"])) for given in entry.record["givens"])
    return json.dumps([entry.topic, entry.job, givens])


def _up(value: float) -> int:
    """The next whole number; a hair over a whole one is float noise, not another piece."""
    return math.ceil(value - 1e-9)
