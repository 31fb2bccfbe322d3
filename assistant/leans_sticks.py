"""Rows of `leans_on_it.py` for sticks: another stick, "out of a sixteen"; and what tells which sticks are meant."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.plain_lines import Plain
from assistant.said_over import as_length, stem, whole
from assistant.several import told_of
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length, Quantity

if TYPE_CHECKING:
    from assistant.pending import Asked

PIECES = "pieces from a stick"
_OUT_OF = expression(  # and from a 3.6 length; what about out of a sixteen
    r"(?:(?:and|or|so|what about|how about|what if (?:it'?s|it was|i used?|i cut(?: them)?|i went)|if (?:it'?s|i used?)|say|try"
    r"|how many) )*(?:out of|from|off of|off|in|with) (?:an?|one|the) (?P<n>[^,;?]+?)"
    r"(?: (?:one|length|stick|board|plank|piece|bar|instead|then|now))*",
    re.IGNORECASE,
)
_FOOTER = expression(r"[ -]?(?:foot|ft)(?:er)?s?$", re.IGNORECASE)
OF_STICKS = frozenset("stick length board bar plank footer batten stock".split())


def out_of_another(line: str, last: Asked) -> Iterator[Plain]:
    """Another stick to cut from, in the unit that the one before was in where it is told bare: sixteen, and no 16 inch piece."""
    found = _OUT_OF.fullmatch(line) if last.topic.name == PIECES else None
    stock = last.givens.get("stock")
    if found is None or stock is None or not isinstance(stock.value, Length):
        return
    said = _FOOTER.sub(" foot", found["n"])
    place = whole(said)
    if place is None:
        return
    value, unit = place.value, _unit_of(stock.value)
    long = as_length(value, unit)
    if not isinstance(value, Length) and unit not in ("ft", "m"):
        return
    piece = last.givens["piece"].value
    if isinstance(piece, Length) and long.to("in").value > piece.to("in").value:
        told = f"{float(long.value):g} {_SAID.get(long.unit, long.unit)}"
        yield Plain(f"make the stick {told}", told=told, holds=lambda now, before: _as_it_was(now, before, "piece"))


_SAID = {"ft": "foot", "m": "metre", "in": "inch"}


def _unit_of(stock: Length) -> str:
    return "m" if stock.unit in ("m", "mm", "cm") else stock.unit


def _as_it_was(now: Asked, before: Asked, name: str) -> bool:
    return name in now.givens and now.givens[name].value == before.givens[name].value


def same_stick(which: str, last: Asked) -> bool:
    """Whether words name the sticks just worked by how long they are, or by what they are called, or not at all."""
    words = which.strip().lower()
    if not words or (stem(words.split()[-1]) in OF_STICKS and not numbers_in(words)):
        return True
    said = re.sub(r"(?<=[a-z\d])'?s$", "", _FOOTER.sub("", words)).strip()
    value = [row.value for row in numbers_in({"sixe": "six"}.get(said, said))]
    stock = last.givens["stock"].value
    return len(value) == 1 and isinstance(stock, Length) and value[0].value in (stock.value, stock.to(_unit_of(stock)).value)  # type: ignore[union-attr]


def whole_of(words: str) -> int:
    """The one whole number that words are; 0 for any other."""
    said = [row.value for row in numbers_in(words)]
    one = said[0] if len(said) == 1 else None
    return int(one.value) if isinstance(one, Quantity) and one.value.denominator == 1 else 0


def number_of(asked: Asked, name: str) -> int:
    """How many a given tells of, where it was told; else 0."""
    given = told_of(asked).get(name)
    return int(given.value.value) if given is not None and isinstance(given.value, Quantity) else 0
