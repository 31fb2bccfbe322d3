"""What stands outside of a thing, or past where it should: outside to outside of the casings, the opening for a door in its
jambs, what was cut too long, the far side of a window that starts so far along.

Each shape says what every quantity does, or None where it is not so told (`sum_told.py`).
"""

from __future__ import annotations

from itertools import pairwise

from intents.sum_cues import Line
from intents.sum_told_words import FRAME, HOLE, INNER, LESS, OUTER, PLAY
from intents.whole_sums import ADDED, ADDED_TWICE, NOTHING, TAKEN

Told = tuple[tuple[str, ...], bool]

_CUTS = frozenset("cut take trim plane shave saw rip".split())
_SET_IN = frozenset("in from back".split())  # legs in 4 1/2 from each end
_ROUND_IT = (FRAME | PLAY) - {"side", "sides"}
_WANTED = frozenset("wanted needed meant supposed should shoulda want need".split())
_TOO_LONG = frozenset("overshot over long proud overcut overran".split())
_TOO_SHORT = frozenset("undershot short shy under undercut".split())
_CAME_OUT = (
    ("did", "i"), ("have", "i"), ("i", "cut"), ("i", "got"), ("is", "it"), ("it", "come"), ("it", "measure"), ("long", "is"),
)  # fmt: skip
_SHOULD_BE = frozenset("should supposed add fix make adjust off".split())
_NEAR_SIDE = frozenset("left near first closest nearest".split())
_FAR_SIDE = frozenset("right far other second".split())
_SIDE = frozenset("jamb jambs side edge end casing face".split())
_WIDE = frozenset("window door opening wide frame unit vent panel for across".split())


def outside_of_it(line: Line) -> Told | None:
    """A thing with a trim at each of its sides, from the outside of the one to the outside of the other."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) == line.twice(1):
        return None
    sides = 0 if line.twice(0) else 1
    tail = line.words[line.spans[-1][1] :]  # outside to outside is what
    across = any(a in OUTER and b == "to" for a, b in pairwise(tail)) or "overall" in line.asks
    own = line.beside(sides)
    trim = not own.isdisjoint(FRAME) and own.isdisjoint((LESS - FRAME) | PLAY | _SET_IN)
    if not across or line.sizes[sides] * 4 >= line.sizes[1 - sides] or not trim:
        return None
    return tuple(ADDED_TWICE if n == sides else ADDED for n in (0, 1)), False


def opening_for(line: Line) -> Told | None:
    """The opening that a door or window needs, its jambs and its play at each side of it."""
    if len(line.spans) < 2 or any(line.counts()) or line.asks.isdisjoint(HOLE) or not line.asks.isdisjoint(INNER - HOLE):
        return None
    base = max(range(len(line.spans)), key=lambda n: line.sizes[n])
    others = [n for n in range(len(line.spans)) if n != base]
    if line.twice(base) or {"opening", "hole", "between"} & line.beside(base):
        return None
    if any(not line.twice(n) or line.beside(n).isdisjoint(_ROUND_IT) or line.sizes[n] * 4 >= line.sizes[base] for n in others):
        return None
    return tuple(ADDED if n == base else ADDED_TWICE for n in range(len(line.spans))), False


def missed_by(line: Line) -> Told | None:
    """What a thing came out at that should have been so long, and is so much over or under it."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) or line.twice(1):
        return None
    base = 0 if line.sizes[0] > line.sizes[1] else 1
    if line.beside(base).isdisjoint(_WANTED) or not _SHOULD_BE.isdisjoint(line.asks):
        return None
    if not any(pair in _CAME_OUT for pair in pairwise(line.asked)):
        return None
    own = line.beside(1 - base) - line.beside(base)
    over, under = not own.isdisjoint(_TOO_LONG), not own.isdisjoint(_TOO_SHORT)
    if over == under:
        return None
    return tuple(ADDED if n == base or over else TAKEN for n in (0, 1)), False


def far_side(line: Line) -> Told | None:
    """How far along the far side of a thing is, that starts so far along and is so wide."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) or line.twice(1):
        return None
    near = line.right[0][:3]
    to_near = near[:1] == ["to"] and not _NEAR_SIDE.isdisjoint(near)
    far = any(a in _FAR_SIDE and b in _SIDE for a, b in pairwise(line.asked))
    if not to_near or not far or line.beside(1).isdisjoint(_WIDE) or not (LESS | PLAY).isdisjoint(line.beside(1)):
        return None
    return (ADDED, ADDED), False


def cut_off(line: Line) -> Told | None:
    """How much comes off a thing, and not what is left of it: what goes under it and what is to be clear of it, together."""
    asked = "much" in line.asks and any(a in _CUTS and "off" in (b, c) for a, b, c in _threes(line.asked))
    if not asked or len(line.spans) < 3 or any(line.counts()):
        return None
    base = max(range(len(line.spans)), key=lambda n: line.sizes[n])
    others = [n for n in range(len(line.spans)) if n != base]
    if line.twice(base) or any(line.sizes[n] * 4 >= line.sizes[base] for n in others):
        return None
    return tuple(NOTHING if n == base else ADDED_TWICE if line.twice(n) else ADDED for n in range(len(line.spans))), False


def _threes(words: list[str]) -> list[tuple[str, str, str]]:
    padded = [*words, "", ""]
    return list(zip(padded, padded[1:], padded[2:], strict=False))
