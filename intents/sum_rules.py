"""What a length of a story does by what it is of, against what is asked: play comes off the opening for the door, a tenon goes
on, a floor that comes up takes off the door, what sticks out past a thing comes off for that thing.

Each rule tells 1 where a length is added, -1 where it is taken off, 0 where that is open, and None where it does not know
(`sum_told.py`).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from intents.sum_cues import Line
from intents.sum_told_words import (
    BETWEEN_POSTS,
    BLANK,
    BOTTOM,
    BURIED,
    CENTRED_AT,
    DOWN,
    DUG,
    FINISH,
    FLOORS,
    FOOTING,
    FRAME,
    FROM_THERE,
    HEADROOM,
    HIGHEST,
    HOLE,
    INNER,
    LAPPED,
    LESS,
    LIFTS,
    MADE,
    NEEDED,
    OPENING,
    OUTER,
    OVER,
    PIECE,
    PLATES,
    PLAY,
    SEEN,
    SHORT_CLAUSE,
    SIDES,
    STANDS_ON,
    STICKS,
    STUDS,
    TOTAL,
    UNDER,
    UP,
    VERBS,
    VISIBLE,
)  # fmt: skip


def both(clause: tuple[list[str], list[str]]) -> list[str]:
    """The words to both sides."""
    return [*clause[0], *clause[1]]


def _play(line: Line, n: int, base: int) -> int | None:
    """Clearance comes off the opening for what hangs in it, and goes on that for the opening."""
    said, asks = line.beside(n), line.asks
    if said.isdisjoint(PLAY) or "stack" in asks:
        return None
    outer = not asks.isdisjoint(OUTER) and asks.isdisjoint(PIECE)
    if asks == {"post", "to"} or (not asks.isdisjoint(HOLE) and "in" not in asks) or outer:
        return 1
    if not asks.isdisjoint(TOTAL) and line.beside(base).isdisjoint(OPENING):
        return 1
    if not asks.isdisjoint(PIECE) or not line.beside(base).isdisjoint(OPENING):
        return -1
    return 0


def _rises(line: Line, n: int, base: int) -> int | None:
    """What stands on what, where it is asked how high it comes off the floor."""
    asks = line.asks
    led = zip(line.asked, line.asked[1:], [*line.asked[2:], ""], strict=False)
    if LIFTS.isdisjoint(asks) or not any(a in ("off", "above", "from") and {b, c} & FOOTING for a, b, c in led):
        return None
    if not BOTTOM.isdisjoint(asks) or not (HIGHEST | DOWN).isdisjoint((*line.left[base], *line.right[base])):
        return None
    return 1 if (DOWN | LESS).isdisjoint(line.beside(n)) else None


def _on_centre(line: Line, n: int, base: int) -> int | None:
    """A post comes off how far they stand middle to middle, for what is between."""
    centred = not line.beside(base).isdisjoint(CENTRED_AT) and line.asks.isdisjoint(CENTRED_AT)
    return -1 if centred and not line.said.isdisjoint(BETWEEN_POSTS) else None


def _made_to(line: Line, n: int, base: int) -> int | None:
    """What goes on top comes off the finished height for what it stands on, and plates come off it for the stud."""
    if not line.beside(base).isdisjoint(FINISH) and not line.asks.isdisjoint(MADE) and line.asks.isdisjoint(HOLE):
        return -1
    plate = not line.beside(n).isdisjoint(PLATES) and not line.asks.isdisjoint(STUDS) and line.sizes[n] < line.sizes[base]
    return -1 if plate and line.beside(base).isdisjoint(STUDS | PLATES) else None


def _past(line: Line, n: int, base: int) -> int | None:
    """What sticks out past a thing comes off for that thing."""
    if line.beside(n).isdisjoint(STICKS):
        return None
    words = both(line.clause(n))
    at = next((at for at, word in enumerate(words) if word in STICKS), len(words))
    named = {c for a, b, c in zip(words[at:], words[at + 1 :], words[at + 2 :], strict=False) if a in OVER and b == "the"}
    return -1 if named & line.asks else None


def _floors(line: Line, n: int, base: int) -> int | None:
    """A floor that comes up takes off the door."""
    if not line.beside(n).isdisjoint(FLOORS) and not line.asks.isdisjoint(FLOORS) and "off" in line.asks:
        return 0  # off the floor that was, or that will be
    floor = not line.beside(n).isdisjoint(FLOORS) and line.asks.isdisjoint(FLOORS | TOTAL)
    room = not line.asks.isdisjoint(PIECE | HEADROOM) or {"head", "room"} <= line.asks
    return -1 if floor and room else None


def _buried(line: Line, n: int, base: int) -> int | None:
    """A tenon goes on what shows between the shoulders, for the length; what is lapped comes off what shows."""
    asks = line.asks
    if line.beside(n).isdisjoint(BURIED):
        return None
    if len(line.spans) > 2 and not line.twice(n) and not line.beside(n).isdisjoint(LAPPED) and not asks.isdisjoint(TOTAL):
        return -1
    if not line.beside(base).isdisjoint(SEEN) and asks.isdisjoint(VISIBLE):
        return 1
    if not asks.isdisjoint(VISIBLE) or (not asks.isdisjoint(INNER) and asks.isdisjoint(PIECE)):
        return -1
    both = line.twice(n) or not line.beside(base).isdisjoint(OPENING) or not asks.isdisjoint(BLANK)
    return int(both and not asks.isdisjoint(PIECE | OUTER))


def _through(line: Line, n: int, base: int) -> int | None:
    """From the underside of a thing to its top, and down again."""
    own, asks = line.beside(base), line.asks
    if not own.isdisjoint(BOTTOM) and "top" in asks:
        return 1
    return -1 if "top" in own and not asks.isdisjoint(BOTTOM) else None


def _upward(line: Line, n: int, base: int) -> int | None:
    """What stands above, and what hangs below, against the way the first is measured and what is asked."""
    own, asks = line.beside(base), line.asks
    if not own.isdisjoint(DUG):
        return -1 if "how" in asks else 0
    whole = from_to(line, base)
    if whole and ((not asks.isdisjoint(UNDER) and "off" not in asks) or not asks.isdisjoint(("cut", "piece"))):
        return -1
    if _over_asked(line, n):
        return -1
    up, down = (not line.beside(n).isdisjoint(way) for way in (UP, DOWN))
    if up == down:
        return 0 if up else None
    if down and not asks.isdisjoint(("long", "length")):
        return 0  # what hangs below the sill is of the siding too
    if up and whole and asks.isdisjoint(FROM_THERE):
        return 0
    if n == base + 1 and line.right[base] == line.left[n]:
        own = frozenset(line.left[base])  # 96 | drop 1 1/2: what is said between is of the one that drops
    downward = not own.isdisjoint(DOWN) and own.isdisjoint(UP)
    return 1 if up != downward else -1


def _over_asked(line: Line, n: int) -> bool:
    """Whether a length lies over the thing that is asked of: the cripple over the header, how far up is the header."""
    left = line.left[n]
    over = (left[at + 2] for at in range(len(left) - 2) if left[at] in ("over", "above") and left[at + 1] == "the")
    return any(word in line.asks and word not in STANDS_ON for word in over)


def from_to(line: Line, n: int) -> bool:
    """Whether a length is told from one thing to another."""
    clause = both(line.clause(n))
    to = any(a == "to" and b not in VERBS for a, b in pairwise([*clause, "the"]))
    whole = to and ("from" in clause or len(clause) <= SHORT_CLAUSE)
    return whole or not {"between", "apart"}.isdisjoint(clause)


def _frame(line: Line, n: int, base: int) -> int | None:
    """Casings go on for the outside, stiles come off for the inside."""
    if line.beside(n).isdisjoint(FRAME) and not line.twice(n):
        return None
    if not line.twice(n) and not SIDES.isdisjoint(line.left[n][-2:]):
        return 0  # the returns are 2 3/8: one of them, or both
    outer = not line.asks.isdisjoint(OUTER | NEEDED)
    return 1 if outer else -1 if not line.asks.isdisjoint(INNER) else None


RULES: tuple[Callable[[Line, int, int], int | None], ...] = (
    _past, _made_to, _on_centre, _floors, _rises, _play, _buried, _through, _upward, _frame,
)  # fmt: skip
