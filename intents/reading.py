"""What a stretch of words can mean: the readings the matcher chooses between."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from intents.numbers import Line
from solvers.quantities import Quantity

STRESSES = frozenset("full good solid whole true actual honest".split())  # between "a" and its inch or degree


@dataclass(slots=True, unsafe_hash=True)
class Reading:
    """Tokens start to end (exclusive) read as one value of a kind. Never changed; to say so in code takes four times as long.

    `sure` is under 1 when the words may mean something else; `also` holds other values the same words could have.
    """

    kind: str
    start: int
    end: int
    value: Quantity | Dims | tuple[object, ...]  # a tuple of Piece, Opening, Layer or Length for what is said in a row
    sure: float = 1.0
    also: tuple[Quantity, ...] = ()


@dataclass(frozen=True, slots=True)
class Dims:
    """Two or three sizes said together ("10 by 12"): each part is a number or a length reading."""

    parts: tuple[Reading, ...]


SIZED = (Quantity, Dims)  # what numbers and units alone say; a union is made anew each time that it is asked of


class Head(NamedTuple):
    """A number with the index of the word after it, where a unit may stand: 3/8 of an | inch."""

    unit: int
    value: Fraction
    sure: float = 1.0
    also: tuple[Fraction, ...] = ()
    form: str = "whole"


def heads(line: Line, i: int) -> Iterator[Head]:
    """The numbers at i that a unit may follow, longest first, "an" and "half an" among them."""
    words = line.words
    for piece in line.pieces(i):
        end, form = piece.end, piece.form
        yield Head(end, piece.value, piece.sure, piece.also, form)
        if form == "decimal" and words[end] == "of" and words[end + 1] in ("a", "an"):
            yield Head(end + 2, piece.value, piece.sure, piece.also, form)  # 0.6 of a foot
        if form in ("fraction", "bare", "mixed"):
            after = end + 1 if words[end] == "of" else end
            if words[after] in ("a", "an"):
                yield Head(after + 1, piece.value, 1.0 if form == "bare" else piece.sure, piece.also, form)
            elif after > end:
                yield Head(after, piece.value, piece.sure * 0.9, piece.also, form)
    if words[i] in ("a", "an"):
        stressed = words[i + 1] in STRESSES and words[i + 2] in ("inch", "foot", "degree")
        yield Head(i + 1 + stressed, Fraction(1), form="one")
