"""A quantity said a second time in other words, to make sure: "22 foot, 264 inches", "6 inches wide, six", "9/12, nine in 12".

The repeat has no role of its own, so the question is read without it. Only the same value counts, beside the first; the same
words again are two of a row ("4, 4 and 6").
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from intents.put_right import KINDS, Rows, ending
from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Length, Number, Percent, Quantity

_ALL_TOLD = (("all", "told"), ("in", "all"), ("altogether",), ("in", "total"), ("total",), ("all", "up"), ("all", "together"))
_TOLD = frozenset(("told", "all", "altogether", "total", "so"))
_COUNTED = frozenset(("at", "of", "@"))  # four at 70
_THINGS = frozenset("pieces bits lengths boards cuts".split())
_SAYS = (("that", "is"), ("thats",), ("that",), ("which", "is"), ("ie",), ("meaning",), ("(",), ())  # after a comma, or alone
_BY = frozenset(("by", "x", "×"))
_STOPS = frozenset(", . ; : ? ! ) -".split())
_GOES_ON = _STOPS | frozenset(
    "and with at for by from over under how what where which when so is are on in to per if but long wide high tall deep thick "
    "across total overall exactly".split()
)  # what may follow a repeat: any other word makes it a thing of its own, as the 96 inch panels of an 8 foot wall
_SIZES_NAMED: dict[str, int | None] = {"square corner": 90, "square corners": 90}
_TRAIL = 2  # words between the first and its repeat: 6 inches wide, six


def without_echoes(tokens: list[Token], rows: Rows) -> list[Token] | None:
    """The tokens without the quantities that only repeat the one before; None where there are none."""
    words = [token.text for token in tokens]
    gone: set[int] = set()
    at = 1
    while at < len(words):
        start = _said_from(words, at) if words[at] in (",", "that", "thats", "which", "(") else at
        found = _echo(words, rows, at, start, gone) if at < start < len(rows) and rows[start] else None
        if found is None:
            at += 1
            continue
        gone.update(found)
        at = max(found) + 1
    gone.update(_totals(words, rows) if not gone and not _TOLD.isdisjoint(words) else ())
    return [token for i, token in enumerate(tokens) if i not in gone] if gone else None


def _totals(words: list[str], rows: Rows) -> Iterator[int]:
    """The tokens of what only adds up the quantities before it: "so one and seven eighths all told"."""
    sizes: list[Fraction] = []
    counts: list[Fraction] = []
    past = 0
    for at, row in enumerate(rows):
        found = [r for r in row if r.kind in ("length", "number") and isinstance(r.value, Quantity)] if at >= past else []
        if not found:
            continue
        said = max(found, key=lambda r: (r.end, r.sure))
        size = said.value.to("in").value if isinstance(said.value, Length) else said.value.value  # type: ignore[union-attr]
        told = next((len(told) for told in _ALL_TOLD if tuple(words[said.end : said.end + len(told)]) == told), 0)
        if told and any(sum(sizes[-n:]) == size for n in range(2, len(sizes) + 1)):
            yield from range(_led_from(words, at), said.end + told)
        elif len(counts) > 1 and sum(counts) == size and words[at - 1] == "so" and not _THINGS.isdisjoint(words[said.end :][:1]):
            yield from range(_led_from(words, at), said.end + 1)  # four at 70 and two at 36, so six pieces
        sizes.append(size)
        counts += [size] if not _COUNTED.isdisjoint(words[said.end :][:1]) else []
        past = said.end


def _led_from(words: list[str], at: int) -> int:
    while at and words[at - 1] in ("so", "that", "is", "thats", ",", "makes", "making"):
        at -= 1
    return at


def _said_from(words: list[str], at: int) -> int:
    """The place after what leads to a repeat: a comma, "that's"."""
    at += words[at] == ","
    return at + next(len(says) for says in _SAYS if tuple(words[at : at + len(says)]) == says)


def _echo(words: list[str], rows: Rows, at: int, start: int, gone: set[int]) -> range | None:
    """The tokens that fall away where the quantity at `start` repeats the one before `at`."""
    first, trail = _before(rows, at, gone), 0
    while not first and trail < _TRAIL and at - trail > 1 and words[at - trail - 1].isalpha():
        trail += 1
        first = _before(rows, at - trail, gone)
    same = _same(words, rows, first, start) or _named(words, rows, at, start)
    if same is None:
        return None
    bare, after = same.kind == "number", words[same.end : same.end + 1]
    if after and after[0] not in (_STOPS | {"and"} if bare else _GOES_ON):
        return None
    if after == ["-"] and "".join(words[same.end + 1 : same.end + 2])[:1].isdecimal():
        return None  # 6/12, 6-1/2 exposure
    if after and after[0] in _BY and any(getattr(one.value, "unit", "") == getattr(same.value, "unit", " ") for one in first):
        return None  # 10 feet high, 10 foot by 100 foot rolls
    beyond = same.end + sum(word in (",", "and") for word in words[same.end : same.end + 2])
    if bare and same.end < beyond < len(rows) and rows[beyond]:
        return None  # one of a row of numbers
    if first and all(one.kind == "number" for one in first) and not bare and words[at] == ",":
        if words[first[0].start - 1] in ("by", "×", "x") or (trail and same.kind != "percent"):
            return None  # a door three by seven, seven inch to the weather
        return range(first[0].start, first[0].end if trail else start)  # 12, 12 inches: the one with its unit stays
    return range(at, same.end)


def _before(rows: Rows, stop: int, gone: set[int]) -> list[Reading]:
    """The quantities that end before token `stop` and begin first, passing over what fell away."""
    while stop - 1 in gone:
        stop -= 1
    return ending(rows, stop)


def _same(words: list[str], rows: Rows, firsts: Sequence[Reading], start: int) -> Reading | None:
    """The longest quantity at `start` that is one of `firsts` in other words."""
    for said in sorted(rows[start], key=lambda r: (-r.end, r.kind == "number")):
        if said.kind not in KINDS or not isinstance(said.value, Quantity):
            continue
        for first in firsts:
            other = words[first.start : first.end] != words[said.start : said.end]
            if other and isinstance(first.value, Quantity) and _equal(first.value, said.value):
                return said
    return None


def _named(words: list[str], rows: Rows, at: int, start: int) -> Reading | None:
    """The number at `start` where the words before say it by a name: a square corner, ninety; no kerf, zero."""
    none = 0 if words[at - 2 : at - 1] in (["no"], ["without"]) else None
    size = _SIZES_NAMED.get(" ".join(words[at - 2 : at]), none)
    return next((r for r in rows[start] if isinstance(r.value, Number) and r.value.value == size), None)


def _equal(first: Quantity, said: Quantity) -> bool:
    """Whether two quantities are one: lengths in any unit, a bare number in the unit of the first, a share as a percent."""
    if isinstance(first, Length) and isinstance(said, Length):
        return first.to("in").value == said.to("in").value
    if isinstance(first, Number) and isinstance(said, Percent):
        return first.value * 100 == said.value
    if isinstance(said, Number) or isinstance(first, Number):
        return first.value == said.value
    return type(first) is type(said) and (first.value, first.unit) == (said.value, said.unit)
