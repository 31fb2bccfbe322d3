"""What is added up to be taken off together: "take 18 plus 6 plus 3 off it", "it needs 18 plus 6 taken from it".

What is joined by "plus" between the verb and what it is taken off goes off as a whole; read from left to right only the first
of them would.
"""

from __future__ import annotations

from functools import reduce

from intents.reading import Reading
from intents.sum_parts import Found, Parts
from solvers.sums import MINUS, PLUS, Sum, plain_size

_TAKE = frozenset("take taking knock knocking deduct subtract cut".split())
_OFF = frozenset("off from out".split())
_TAKEN = frozenset("taken knocked cut deducted subtracted coming to".split())
_AWAY = frozenset("come take knock".split())  # 18 plus 6 to | come off
_PLUS = frozenset(("plus", "+"))
MOST_SAID = 8  # quantities of a line that is looked at


def taken_together(reader: Parts) -> Reading | None:
    """One length, and several joined by plus that are taken off it."""
    words = reader.words
    if _PLUS.isdisjoint(words) or (_TAKE | _TAKEN).isdisjoint(words) or _OFF.isdisjoint(words):
        return None
    said = _said(reader)
    group = _joined(words, said)
    rest = [each for each in said if each not in group]
    if len(group) < 2 or len(rest) != 1 or not _goes_off(words, group[0][0], group[-1][1].end):
        return None
    base, parts = rest[0][1], [found.part for _, found in group]
    if plain_size(base.part) <= sum(plain_size(part) for part in parts):
        return None
    off = reduce(lambda whole, part: Sum(PLUS, whole, part), parts)
    return Reading("sum", 0, len(reader.tokens), Sum(MINUS, base.part, off))  # type: ignore[arg-type]


def _said(reader: Parts) -> list[tuple[int, Found]]:
    """The quantities of the line with where each begins; none where there are many."""
    found: list[tuple[int, Found]] = []
    at = 0
    while at < len(reader.tokens):
        part = reader.part(at) if reader.chart[at] else None
        if part is not None and part.part is not None:
            found.append((at, part))
        at = max(at + 1, part.end if part is not None else 0)
    return found if len(found) <= MOST_SAID else []


def _joined(words: list[str], said: list[tuple[int, Found]]) -> list[tuple[int, Found]]:
    """The longest run of them with nothing but plus between."""
    best: list[tuple[int, Found]] = []
    run: list[tuple[int, Found]] = []
    for each in said:
        joined = bool(run) and each[0] == run[-1][1].end + 1 and words[each[0] - 1] in _PLUS
        run = [*run, each] if joined else [each]
        best = run if len(run) > len(best) else best
    return best


def _goes_off(words: list[str], start: int, end: int) -> bool:
    """Whether the words on either side say that all between is taken off."""
    led = words[start - 1] if start else ""
    if led in _TAKE or (led in _OFF and start > 1 and words[start - 2] in _TAKE):
        return not _OFF.isdisjoint(words[end : end + 1])
    after = words[end : end + 3]
    come = after[:1] == ["to"] and after[1:2] != [] and after[1] in _AWAY
    return (come and after[2:3] != [] and after[2] in _OFF) or (
        after[:1] != ["to"] and not _TAKEN.isdisjoint(after[:1]) and not _OFF.isdisjoint(after[1:2])
    )
