"""Lengths that are only listed, or whose whole is asked for: "2400 and a 1200 and a 900", "total height if the plinth's 100,
carcass 720 and worktop 38"; and what stands between the inside of a thing and its outside.

Each shape says what every quantity does, or None where it is not so told (`sum_told.py`).
"""

from __future__ import annotations

from intents.sum_cues import Line, is_plural
from intents.sum_told_words import AFTER, BURIED, DOWN, FRAME, LAPPED, LESS, MIDDLE, PLAY
from intents.whole_sums import ADDED, ADDED_TWICE, TAKEN_TWICE

Told = tuple[tuple[str, ...], bool]

_JOINED = frozenset(
    "and a an plus then & another the that what what's whats is do does make makes come comes to up all total how much".split()
)
_WHOLE = frozenset("total overall altogether combined together".split())
_ALONE = frozenset(  # with one of these not all that is told is part of the whole
    "each every of from between than under below above past beyond left remaining need needs allow half middle centre"
    " center already still divide divided split share equal twice not no without spare over both either hundreds".split()
)
_INSIDE, _OUTSIDE = frozenset("inside internal between clear".split()), frozenset("outside external overall".split())
_STUFF = frozenset("stuff timber wood ply plywood material stock".split())
_ROWS = {("end", "to", "end"), ("side", "by", "side"), ("in", "a", "row"), ("butted", "up", "together")}
_FEW = 3


def listed(line: Line) -> Told | None:
    """Lengths with nothing but and between them."""
    if len(line.spans) < 2 or any(line.counts()) or not _JOINED.issuperset(line.said - {",", ".", "?"}):
        return None
    between = [line.between(n) for n in range(1, len(line.spans))]
    joined = all({"and", "plus", "&", "then"} & {*words} for words in between[-1:]) and all(between)
    return ((ADDED,) * len(line.spans), False) if joined else None


def all_of_it(line: Line) -> Told | None:
    """What several lengths are in all, that being asked for, where nothing is taken off."""
    if len(line.spans) < _FEW or any(line.counts()) or (line.asks.isdisjoint(_WHOLE) and not _in_a_row(line.asked)):
        return None
    if any(line.twice(n) or line.counts_things(n) for n in range(len(line.spans))):
        return None
    against = LESS | PLAY | BURIED | LAPPED | DOWN | MIDDLE | _ALONE | {word for word, sign in AFTER.items() if sign < 0}
    return ((ADDED,) * len(line.spans), False) if line.said.isdisjoint(against) else None


def _in_a_row(asked: list[str]) -> bool:
    """Whether it is asked how long things are one after the other."""
    return any(tuple(asked[at : at + 3]) in _ROWS for at in range(len(asked)))


def inside_out(line: Line) -> Told | None:
    """What is inside of a thing and what outside, told by its sides: 54 1/2 inside, the rails are 1 3/8, what's it outside."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) or line.sizes[1] * 4 >= line.sizes[0]:
        return None
    left = line.left[1]
    sides = any(is_plural(word) and word in FRAME for word in left) or (line.twice(1) and not FRAME.isdisjoint(line.beside(1)))
    sides = sides or (not (FRAME | _STUFF).isdisjoint(left) and "thick" in line.right[1][:1])  # frame stuff's 44 thick
    if not sides or not {"one", "only"}.isdisjoint(line.said) or not (LESS | PLAY).isdisjoint(line.beside(1)):
        return None
    own, asks = line.beside(0), line.asks
    if not own.isdisjoint(_INSIDE) and not asks.isdisjoint(_OUTSIDE) and asks.isdisjoint(_INSIDE):
        return (ADDED, ADDED_TWICE), False
    within = not asks.isdisjoint(_INSIDE) or "between" in line.said
    if not own.isdisjoint(_OUTSIDE) and within and own.isdisjoint(_INSIDE) and asks.isdisjoint(_OUTSIDE):
        return (ADDED, TAKEN_TWICE), False
    return None
