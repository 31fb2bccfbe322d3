"""A corner told by how far it is from square: "2 degrees over square", "a degree and a half shy of ninety", "out of square by 2".

Each is the angle of the corner itself. Where nothing tells which way it is out, both corners are named and the conversation asks;
where the corner is said as well ("1 degree out of square, 91"; "less than 90, it's 87"), that only says it again and is not read.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.degrees import DEGREES
from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Angle, Number

Rows = list[list[Reading]]

SURE = 0.95
MOST = 60  # degrees from square; a corner further out is told as it is
RIGHT = 90
MORE = frozenset("over past above beyond more wider bigger greater larger open obtuse fat fatter proud".split())
LESS = frozenset("under shy short below less tighter smaller closed acute lean tight".split())
_OUT = frozenset(("out", "off"))
_SMALL = frozenset("of than from the a true being dead it to is".split())
_SQUARE = (("square",), ("90",), ("ninety",), ("right", "angle"), ("a", "right", "angle"))
_CORNERS = frozenset("corner corners angle cnr joint wall walls bend turn turns".split())
_MEASURED = frozenset("area length money percent weight".split())
_CUES = MORE | LESS | _OUT
_SAWS = frozenset("saw saws cut cuts set setting blade scale detent".split())  # how far these are out is no corner
_AFTER, _SAW_NEAR = 4, 5


def from_square(tokens: list[Token], rows: Rows) -> Iterator[Reading]:
    """The corners that are told by how far they are from square."""
    words = [token.text for token in tokens]
    if _CUES.isdisjoint(words) or {"square", "90", "ninety", "right", "obtuse", "acute"}.isdisjoint(words):
        return
    for at, off in _sizes(words, rows):
        told = _told_after(words, off.end) or _told_before(words, at)
        if told is None or not _in_degrees(words, off):
            continue
        way, start, end = told
        value = off.value.value  # type: ignore[union-attr]
        more, less = Angle(RIGHT + value, "deg"), Angle(RIGHT - value, "deg")
        if way:
            yield Reading("angle", min(at, start), max(off.end, end), more if way > 0 else less, SURE)
        elif _SAWS.isdisjoint(words[max(0, at - _SAW_NEAR) : at]):
            yield Reading("angle", min(at, start), max(off.end, end), more, SURE, (less,))


def without_said_again(tokens: list[Token], rows: Rows) -> list[Token] | None:
    """The tokens without how far, or which way, a corner is out of square, where it is said as well; None where it is not."""
    words = [token.text for token in tokens]
    if _CUES.isdisjoint(words) or _CORNERS.isdisjoint(words):
        return None
    for at, off in _sizes(words, rows):
        told = _told_after(words, off.end) or _told_before(words, at) or _just_out(words, off.end)
        if told is None or not _SAWS.isdisjoint(words[max(0, at - _SAW_NEAR) : at]):
            continue
        way, start, end = told
        first, last = min(at, start), max(off.end, end)
        value = off.value.value  # type: ignore[union-attr]
        corners = {RIGHT + value} if way > 0 else {RIGHT - value} if way < 0 else {RIGHT + value, RIGHT - value}
        if any(r.value.value in corners for place, r in _sizes(words, rows, RIGHT + MOST) if not first <= place < last):  # type: ignore
            return [*tokens[:first], *tokens[last:]]
    return _without_bound(tokens, words, rows)


def _without_bound(tokens: list[Token], words: list[str], rows: Rows) -> list[Token] | None:
    """The tokens without which side of square a corner is on, where it is said: less than 90, it's 87."""
    for at, cue in enumerate(words):
        square = _square_at(words, at + 1) if cue in MORE or cue in LESS else 0
        if not square or any(r.end == at for _, r in _sizes(words, rows)):
            continue
        if any(r.kind in _MEASURED and r.sure > 0.6 for row in rows[at + 1 : square] for r in row):
            continue  # less 90 square feet of glass
        others = (r.value.value - RIGHT for n, r in _sizes(words, rows, RIGHT + MOST) if not at <= n < square)  # type: ignore[union-attr]
        if any(0 < (off if cue in MORE else -off) <= MOST for off in others):
            return [*tokens[:at], *tokens[square:]]
    return None


def _sizes(words: list[str], rows: Rows, most: int = MOST) -> Iterator[tuple[int, Reading]]:
    """The angles and bare numbers of a line that may be of degrees, none inside another."""
    past = 0
    for at, row in enumerate(rows):
        if at < past or not row:
            continue
        found = [r for r in row if r.kind in ("angle", "number") and isinstance(r.value, Angle | Number)]
        others = max((r.end for r in row if r.kind in ("length", "money", "pitch", "area") and r.sure > 0.6), default=0)
        best = max(found, key=lambda r: (r.end, r.kind == "angle"), default=None)
        if best is not None:
            past = max(best.end, others)
        if best is not None and others <= best.end and 0 < best.value.value <= most:  # type: ignore[union-attr]
            yield at, best


def _in_degrees(words: list[str], off: Reading) -> bool:
    """Whether it is said to be of degrees, or is a small number told of a corner."""
    bare = off.kind == "number" and isinstance(off.value, Number) and off.value.value.denominator <= 4
    return off.kind == "angle" or (bare and off.value.value >= Fraction(1, 2) and not _CORNERS.isdisjoint(words))  # type: ignore


def _told_after(words: list[str], end: int) -> tuple[int, int, int] | None:
    """Over square, shy of ninety, out of square; obtuse: which way (0: not told), and where the words start and end."""
    end += words[end : end + 1] in (["too"], ["or"], ["bit"])
    cue = words[end] if end < len(words) else ""
    way = 1 if cue in MORE else -1 if cue in LESS else 0
    if cue in ("obtuse", "acute"):
        return way, end, end + 1
    square = _square_at(words, end + 1) if cue in _CUES else 0
    return (way, end, square) if square else None


def _told_before(words: list[str], start: int) -> tuple[int, int, int] | None:
    """Out of square by 2 degrees, over square by 3: the same, said before."""
    if words[start - 1 : start] not in (["by"], ["about"]):
        return None
    for at in range(max(0, start - 1 - _AFTER), start - 1):
        if words[at] in _CUES and _square_at(words, at + 1) == start - 1:
            return 1 if words[at] in MORE else -1 if words[at] in LESS else 0, at, start
    return None


def _just_out(words: list[str], end: int) -> tuple[int, int, int] | None:
    """A degree out: what is told nothing of, where the corner is said beside it."""
    return (0, end, end + 1) if words[end : end + 1] == ["out"] else None


def _square_at(words: list[str], at: int) -> int:
    """Where the word for a right angle ends that stands at a place, past small words; 0 where there is none."""
    while at < len(words) and words[at] in _SMALL:
        at += 1
    for square in _SQUARE:
        if tuple(words[at : at + len(square)]) == square:
            end = at + len(square)
            return end + (words[end : end + 1] != [] and words[end] in DEGREES)
    return 0
