"""What goes in an opening, and what is left of it: sums told by where two things meet, with no word of taking off.

"The bay's 2400 between posts and I'm leaving 10 mil each end for the panel, panel width" takes the 10 off twice; "slab to sill
is 44 1/8 and the window's 38 1/2 tall, where's the head" adds. Each shape says what every quantity does, or None where it is not
so told (`sum_told.py`).
"""

from __future__ import annotations

from intents.sum_cues import ENDS, QUESTIONS, Line
from intents.sum_told_words import LESS, MORE, PAST, PIECE, PLAY, STICKS
from intents.whole_sums import ADDED, ADDED_TWICE, TAKEN, TAKEN_TWICE

Told = tuple[tuple[str, ...], bool]

_OPENS = frozenset("opening between alcove gap hole recess doorway".split())
_ROOM = frozenset(
    "leave leaving leaves want wants allow allowing give giving slides runners play gap gaps clearance clear hold".split()
)
_GOES_IN = PIECE | frozenset(
    "door doors drawer box panel gate sash shutter insert unit worktop countertop lid mirror".split()
)
_OUTSIDE = frozenset(
    "opening hole ro rough outside overall out total all altogether sum between gap sill architrave casing head".split()
)
_NOT_IN = MORE | PAST | STICKS | frozenset(
    "reveal reveals sticking poking proud bigger larger wider longer casing casings architrave architraves".split()
)
_LIDS = frozenset("worktop top counter countertop lid cap capping coping tabletop slab roof sheet cloth".split())
_BOXES = frozenset("cabinet cupboard box carcass carcase bookcase drawer crate case cube unit".split())
_INSIDE = frozenset("shelf shelves inside between divider bottom clear internal".split())
_STANDS = frozenset("tall high".split())
_ON = frozenset("sill base slab floor counter bench plinth ledge step plate worktop".split())
_IN_ALL, _TRIM = frozenset("altogether overall total".split()), frozenset("trim trims casing casings architrave board".split())
_TOPS = frozenset("head top".split())


def fitted(line: Line) -> Told | None:
    """What goes in an opening: the opening less the play that is left at both its ends."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) == line.twice(1):
        return None
    play = 0 if line.twice(0) else 1
    base = 1 - play
    if line.sizes[play] * 4 >= line.sizes[base] or line.beside(base).isdisjoint(_OPENS):
        return None
    own = line.beside(play) - ENDS
    if not own.isdisjoint(_NOT_IN) or not (LESS - {"cut"}).isdisjoint(own) or own.isdisjoint(_ROOM | PLAY):
        return None
    asked = not line.asks.isdisjoint(QUESTIONS | _GOES_IN)
    named, others = (line.asks, line.asks) if asked else (line.said, line.said - line.beside(base))
    if named.isdisjoint(_GOES_IN) or not others.isdisjoint(_OUTSIDE):
        return None
    return tuple(TAKEN_TWICE if n == play else ADDED for n in (0, 1)), False


def around_it(line: Line) -> Told | None:
    """What reaches past a thing at both its ends: 4 inches of counter either side of it; a 30 overhang both sides of the top."""
    if len(line.spans) != 2 or any(line.counts()) or not line.twice(1) or line.twice(0):
        return None
    own, right = line.beside(1), line.right[1]
    if not (LESS | PLAY).isdisjoint(own) or not _OPENS.isdisjoint(line.beside(0) | line.asks) or "clear" in line.asks:
        return None
    of_it = right[:1] == ["of"] and right[1:2] != [] and right[1] in line.asks and right[1] not in line.beside(0)
    lid = not own.isdisjoint(STICKS) and not line.asks.isdisjoint(_LIDS) and bool(line.left[0]) and _LIDS.isdisjoint(line.left[0])
    return ((ADDED, ADDED_TWICE), False) if of_it or lid else None


def trimmed(line: Line) -> Told | None:
    """How wide a thing is with what is put on either side of it: trim 3 1/4 either side of a 35 7/8 window, altogether."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) == line.twice(1) or line.asks.isdisjoint(_IN_ALL):
        return None
    trim = 0 if line.twice(0) else 1
    own, right = line.beside(trim), line.right[trim]
    of_it = {"of", "round"} & {*right[:4]} and not own.isdisjoint(_TRIM) and (LESS | PLAY).isdisjoint(own - _TRIM)
    smaller = line.sizes[trim] * 2 < line.sizes[1 - trim]
    return (tuple(ADDED_TWICE if n == trim else ADDED for n in (0, 1)), False) if of_it and smaller else None


def within(line: Line) -> Told | None:
    """What goes between the sides of a box: a cabinet 762 wide with 18 mm sides, how wide is the shelf."""
    if len(line.spans) != 2 or any(line.counts()) or not line.twice(1) or line.asks.isdisjoint(_INSIDE):
        return None
    boxed = not line.beside(0).isdisjoint(_BOXES) and line.right[1][:1] == ["sides"]
    return ((ADDED, TAKEN_TWICE), False) if boxed and line.sizes[1] * 4 < line.sizes[0] else None


def left_of(line: Line) -> Told | None:
    """What is left of the last length when all before it are out of it: add 3/4 and 7/16 and tell me what's left of 2 1/4."""
    last = len(line.spans) - 1
    if last < 1 or any(line.counts()) or any(line.twice(n) for n in range(last + 1)) or line.left[last][-2:] != ["left", "of"]:
        return None
    return ((*(TAKEN,) * last, ADDED), False) if line.sizes[last] > sum(line.sizes[:last]) else None


def stands_on(line: Line) -> Told | None:
    """How high the head is of what is so tall and stands on a sill that is so high."""
    if len(line.spans) != 2 or any(line.counts()) or line.twice(0) or line.twice(1) or line.asks.isdisjoint(_TOPS):
        return None
    low, tall = line.clause(0)[0] + line.clause(0)[1], line.right[1][:2]
    to_sill = line.right[0][:2] == ["to", "the"] and line.right[0][2:3] != [] and line.right[0][2] in _ON
    told = to_sill or ("at" in line.left[0][-1:] and not _ON.isdisjoint(low))
    if not told or _STANDS.isdisjoint(tall) or {"difference", "between", "above"} & line.asks or "down" in line.said:
        return None
    return (ADDED, ADDED), False
