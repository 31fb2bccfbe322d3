"""Nails by the penny: an 8d is a 2 1/2 inch nail."""

from __future__ import annotations

# Lengths in inches of common nails, as they are said: as boxes of them are marked (ASTM F1667 has the same, from memory).
PENNY = {
    "2": "1", "3": "1 1/4", "4": "1 1/2", "5": "1 3/4", "6": "2", "7": "2 1/4", "8": "2 1/2", "9": "2 3/4", "10": "3",
    "12": "3 1/4", "16": "3 1/2", "20": "4",
}  # fmt: skip
_SAID = dict(zip("two three four five six seven eight nine ten twelve sixteen twenty".split(), PENNY, strict=True))
SIGNS = frozenset(("d", "ds", "penny"))
_NAILS = frozenset(("nail", "nails"))


def nail_of(number: str, sign: str, after: str) -> list[str]:
    """The words that so many pennies stand for: two and a half inch nail; none where it is no such number."""
    said = PENNY.get(_SAID.get(number, number)) if sign in SIGNS else None
    if said is None:
        return []
    return [*said.replace("/", " / ").split(), "inch", *([] if after in _NAILS else ["nails" if sign == "ds" else "nail"])]
