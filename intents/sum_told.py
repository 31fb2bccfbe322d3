"""What each length of a story does, by rules of the trade: clearance comes off, a tenon goes on, what is stacked adds up.

Whether a length is added or taken off is told by the word beside it ("less", "off", "above that"), else by what it is of (play,
a frame, what is buried in the other piece) against what is asked: the stiles come off the sash for the daylight, and the
casings go on the opening for the outside. Where any length is left open there is no sum. It answers nothing alone: where the
sum that the second reader learned comes to the same, that may be answered, and where it does not, it is asked about
(`second_sums.py`).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from intents.sum_counts import BOTH as EACH
from intents.sum_cues import QUESTIONS, STOPS, Line
from intents.sum_fitted import around_it, fitted, left_of, stands_on, trimmed, within
from intents.sum_listed import all_of_it, inside_out, listed
from intents.sum_outer import cut_off, far_side, missed_by, opening_for, outside_of_it
from intents.sum_rules import RULES, both, from_to
from intents.sum_told_words import (
    AFTER,
    APART,
    BETWEEN_EACH_SET,
    BETWEEN_TWO,
    BID,
    CENTRED,
    CENTRES,
    CLEAR,
    COMPARED,
    DAYLIGHT,
    DOWN,
    EMPTY,
    EVEN,
    FLOORS,
    FRAME,
    GAINS,
    GAPS,
    HALF_WORDS,
    HEADROOM,
    INNER,
    INWARD,
    JOINED,
    LAPPED,
    LEFT,
    LENGTHENS,
    LESS,
    LONG_BY,
    LOWER,
    MIDDLE,
    MORE,
    MOST_CENTRED,
    MOVES,
    NAMING,
    NEAR,
    NEAR_BY,
    PARTS,
    PAST,
    PIECE,
    PIECES,
    PLACES,
    PLAY,
    RAISED,
    SAME_AGAIN,
    SHORT_OF,
    SHORTENS,
    SHOULD,
    SIGNED,
    SPENT,
    STANDS_ON,
    STOCK,
    STOOD,
    THAN,
    TOTAL,
    UP,
)  # fmt: skip
from intents.sum_words import SO_FAR
from intents.whole_sums import ADDED, DIVIDES, OF_LAST, OF_NEXT, TAKEN

Told = tuple[tuple[str, ...], bool]


_WHICH_FLOOR = FLOORS - {"floor", "floors", "ground"}
_MIDDLES = MIDDLE | {"half"}
_CLEARS = HEADROOM | {"clear", "gap"}


def told_by_rules(line: Line) -> Told | None:
    """What each quantity does, and whether all is halved; None where that is not told of each."""
    return next((found for shape in _SHAPES if (found := shape(line)) is not None), None)


def at_centres(line: Line) -> Told | None:
    """The clear between two posts and one post: how far they stand, middle to middle."""
    if len(line.spans) != 2 or line.asks.isdisjoint(CENTRES) or line.said.isdisjoint(CLEAR) or not line.asks.isdisjoint(CLEAR):
        return None
    return (ADDED, ADDED), False


def halved(line: Line) -> Told | None:
    """The middle, or half, of one length."""
    return ((ADDED,), True) if len(line.spans) == 1 and not line.said.isdisjoint(HALF_WORDS | MIDDLE) else None


def centred(line: Line) -> Told | None:
    """What stands in the middle of something longer, and what is left each side of it."""
    count = len(line.spans)
    if not 2 <= count <= MOST_CENTRED or any(line.counts()) or line.said.isdisjoint(CENTRED) or "back" in line.said:
        return None  # centre it and come back 18: from the middle on
    each = any(a in ("each", "either") and b not in PARTS for a, b in pairwise([*line.asked, ""]))
    if not each and not any((a in EACH or a == "the") and b in PLACES for a, b in pairwise(line.out)):
        return None
    if any(line.twice(n) and EVEN.isdisjoint(both(line.clause(n))) for n in range(count)):
        return None
    if not line.said.isdisjoint(JOINED):
        return (ADDED,) * count, True  # the middle of both, end to end
    if not line.said.isdisjoint((MORE | AFTER.keys()) - {"off", "short"}):
        return None
    largest = base_of(line, range(count))
    return tuple(ADDED if n == largest else TAKEN for n in range(count)), True


def difference(line: Line) -> Told | None:
    """How far two lengths are apart."""
    if len(line.spans) != 2 or any(line.counts()) or halves_it(line) or line.twice(0) or line.twice(1):
        return None
    if line.counts_things(0) or line.counts_things(1):
        return None  # four shelves in 60 inches
    near = max(line.sizes) <= NEAR_BY * min(line.sizes)
    near = near and not line.asks.isdisjoint(GAPS)
    if near and (line.beside(0) | line.beside(1)).isdisjoint(MORE | LESS | FRAME | PLAY):
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False
    if {"far", "near"} <= line.said and {"from", "both"} & line.said:
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False  # to the far jamb, to the near one
    if "than" in line.asks and not line.asks.isdisjoint(THAN):
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False
    told = frozenset((*line.left[0], *line.left[1], *line.right[0][:NEAR], *(line.right[1] if "how" in line.left[0] else ())))
    if not told.isdisjoint((MORE | AFTER.keys() | {"another"}) - {"with", "off", "short", "add"}):
        return None
    asks = line.asks
    apart = not asks.isdisjoint(("difference", "apart", "distance")) or ("how" in asks and not asks.isdisjoint(APART))
    if not apart and not _levels(line):
        return None
    if not _levels(line) and any(not (UP | DOWN).isdisjoint(right) for right in line.right[:1]):
        return None
    return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False


def _levels(line: Line) -> bool:
    """Whether both lengths are told as places: the sill's at 31 3/4 and the head at 79 1/2, how tall is the opening."""
    at = all(left[-1:] == ["at"] or left[:1] == ["at"] for left in line.left)
    return at and not line.asks.isdisjoint(BETWEEN_TWO)


def halves_it(line: Line, parted: bool = False) -> bool:
    """Whether the line asks for the middle or half of something, where the sum would have to be halved."""
    if not line.said.isdisjoint(HALF_WORDS) or any(line.words[a:b] == ["half"] for a, b in line.spans):
        return True
    if not parted and not line.said.isdisjoint(EVEN) and not line.said.isdisjoint(EACH | {"gaps"}):
        return True
    middles = (at for at, word in enumerate(line.out) if word in MIDDLE)
    return not line.asks.isdisjoint(MIDDLE) or any(line.out[at - 1] in ("the", "dead", "in", "its", "find") for at in middles)


def middle_of_rest(line: Line) -> Told | None:
    """The middle of what is left of a length: 17'4 less a foot for the box end, middle of what's left."""
    words, last = line.words, line.spans[-1][1]
    middles = (at for at in range(last, len(words) - 1) if words[at + 1] == "of" and words[at] in _MIDDLES)
    at = next(middles, None)
    if at is None or not any(tuple(words[at + 2 : at + 2 + len(so)]) == so for so in SO_FAR):
        return None
    story = _story(line, of_rest=True)
    return (story[0], True) if story is not None else None


def _story(line: Line, of_rest: bool = False) -> Told | None:
    """One length, and what is added to it or taken off; `of_rest`, so that the middle of that is asked for."""
    roles = line.counts()
    if len(line.spans) < 2 or "twice" in line.said or (not of_rest and halves_it(line, DIVIDES in roles)):
        return None
    lengths = [n for n, role in enumerate(roles) if not role]
    if OF_NEXT in roles and (not line.said.isdisjoint(LAPPED) or not BETWEEN_EACH_SET.isdisjoint(pairwise(line.words))):
        return _two_lapped(line, roles)  # else so many with a gap between each
    if not lengths or any(line.counts_things(n) for n in lengths):
        return None
    if len(lengths) + sum(role in (DIVIDES, OF_LAST, OF_NEXT) for role in roles) < 2:
        return None
    largest = base_of(line, lengths)
    if all(n and roles[n - 1] == OF_NEXT for n in lengths) and line.said.isdisjoint(LESS):
        return tuple(role or ADDED for role in roles), False  # so many of each
    bases = (largest,) if from_to(line, largest) else dict.fromkeys((largest, lengths[0]))
    for base in bases:
        signs = _signs(line, base, lengths)
        less = any(sign < 0 for sign in signs.values())
        if 0 in signs.values() or (less and base != largest):
            continue
        for n, sign in signs.items():
            twice = line.twice(n) and not (n == base and less) and not (n and roles[n - 1] == OF_NEXT)
            roles[n] = (ADDED if sign > 0 else TAKEN) * (1 + twice)
        return tuple(roles), False
    return None


def _two_lapped(line: Line, roles: Sequence[str]) -> Told | None:
    """Two of a length that lap each other once."""
    two = line.sizes[0] == 2 and tuple(roles) == (OF_NEXT, "", "")
    return ((OF_NEXT, ADDED, TAKEN), False) if two and not line.beside(2).isdisjoint(LAPPED) else None


def base_of(line: Line, lengths: Sequence[int]) -> int:
    return max(lengths, key=lambda n: line.sizes[n])


def _signs(line: Line, base: int, lengths: Sequence[int]) -> dict[int, int]:
    """For each length 1 where it is added, -1 where it is taken off, 0 where that is open."""
    signs: dict[int, int] = {}
    for n in lengths:
        signs[n] = 1 if n == base else _sign(line, n, base, signs)
    return signs


def before_it(line: Line, n: int, base: int, signs: dict[int, int]) -> int:
    """What is done with the length before one; the first and largest counts where it is added itself: add | 18, 22 and 11."""
    if n - 1 != base:
        return signs.get(n - 1, 0)
    added = any(words and words[0] in BID for words in line.left[: base + 1])
    return int(added and signs.get(0, 1) > 0)


def _sign(line: Line, n: int, base: int, signs: dict[int, int]) -> int:
    before = before_it(line, n, base, signs)
    said = said_of(line, n, before)
    if said or (not SHOULD.isdisjoint(line.said) and not line.twice(n)):
        return said
    if is_left(line.asked) or (not SPENT.isdisjoint(line.right[n]) and not STOCK.isdisjoint(line.beside(base))):
        return -1
    for rule in RULES:
        sign = rule(line, n, base)
        if sign is not None:
            return sign
    total = TOTAL - {"build"} if ("i", "build") in pairwise(line.asked) else TOTAL
    if not line.asks.isdisjoint(total) and line.asks.isdisjoint(DAYLIGHT):
        return int(line.asks.isdisjoint(EMPTY) and not (n < base and from_to(line, base)))
    if not line.asks.isdisjoint(INNER | DAYLIGHT):
        return -1
    tall = not line.asks.isdisjoint(STOOD) or ("top" in line.asks and "up" in line.said)
    tall = tall or ("height" in line.asks and line.asks.isdisjoint(PIECE | {"opening"}))
    stacked = tall and not line.asks.isdisjoint(QUESTIONS) and line.asks.isdisjoint(LOWER)
    stacked = stacked and "height" not in line.beside(n) and line.beside(n).isdisjoint(DOWN | LESS | PLAY)
    return int(stacked and not from_to(line, base))


def said_of(line: Line, n: int, before: int) -> int:
    """What the word beside a length says: less, off it, plus; or the same that was done with the one before."""
    left, right = line.left[n], line.right[n]
    place = right[:1] == ["off"] and not STANDS_ON.isdisjoint(right[1:4])
    first = AFTER.get(right[0], 0) if right and not place else 0
    if "floor" in line.asks and not line.beside(n).isdisjoint(_WHICH_FLOOR):
        return 0  # off the floor that was, or that will be
    if not GAINS.isdisjoint(right[:NEAR]):
        return 1  # shaved by 25, which gains us that
    if left[-1:] == ["by"] and left[-2:-1] != [] and left[-2] in COMPARED:
        return COMPARED[left[-2]]  # taller by 3/4
    if (not SHOULD.isdisjoint(line.said) and not line.twice(n)) or left[-1:] == ["by"]:
        return _as_it_should(left, right) or _by_so_much(line.said)
    if first < 0 or right[:2] == ["out", "of"] or _set_in(left, right) or _comes_down(left):
        return -1
    near = [word for before, word, after in zip(["", *left], left, [*left[1:], ""], strict=False)
            if word not in PIECES or (after != "of" and before not in NAMING)][-NEAR:]  # a rip of, the trim  # fmt: skip
    trail = line.between(n)
    joint = trail[-len(left) - 1 : -len(left)] if left else []
    if joint and joint[0] in SIGNED:
        near = [joint[0], *near]
    cues = [1 if word in MORE else -1 for word in near if word in MORE or word in LESS]
    if near and near[-1] in RAISED and not line.asks.isdisjoint(_CLEARS):
        return 0  # what stands under it, or hangs over it
    if cues:
        return cues[-1]
    if first:
        return before if before and right[0] in ("more", "again") else first
    if _overhangs(line, n):
        return 1
    if before and line.between(n)[-1:] in (["and"], [","]):
        return before  # ripped 19 off the end and | 140 for the chase
    gap = [word for word in line.between(n) if word not in STOPS]
    again = gap and SAME_AGAIN.issuperset(gap)
    if before and (again or "another" in left):
        return before
    walks = "then" in line.between(n) and not line.asks.isdisjoint(("far", "where")) and line.beside(n).isdisjoint(DOWN)
    on = right[:2] in (["on", "top"], ["on", "it"], ["on", "that"]) or ("back", "on") in pairwise(right[:4])
    return int("another" in left or walks or on)


def _set_in(left: Sequence[str], right: Sequence[str]) -> bool:
    """Whether a thing stands so far in: 4 1/2 back from the corner, legs in | 4 1/2 from each end."""
    if right[1:2] == ["from"] and right[0] in INWARD:
        return True
    if right[:1] == ["back"] and left[-1:] in (["go"], ["come"], ["move"], ["going"], ["step"]):
        return True
    return right[:1] == ["from"] and right[1:2] in (["each"], ["both"], ["either"]) and left[-1:] in (["in"], ["back"])


def _comes_down(left: Sequence[str]) -> bool:
    """Whether a thing is to come down so much: it has to come down | 1 7/16."""
    return any(a in MOVES and b == "down" for a, b in pairwise(left[-NEAR:]))


def _by_so_much(said: frozenset[str]) -> int:
    """Whether something is shortened by a length, or made longer."""
    less, more = not SHORTENS.isdisjoint(said), not LENGTHENS.isdisjoint(said)
    return 0 if less == more else -1 if less else 1


def _overhangs(line: Line, n: int) -> bool:
    """Whether a length hangs over, or stands past, what the first is the size of: 6 over each side."""
    right = line.right[n]
    led = line.left[n][-3:]
    past = (right[:1] != [] and right[0] in PAST) or (led[:1] != [] and led[0] in PAST and led[1:2] == ["the"])
    return line.twice(n) and past


def _as_it_should(left: Sequence[str], right: Sequence[str]) -> int:
    """What is made good of a length that came out too short, or too long, for what it should have been."""
    beside = {*left[-NEAR:], *right[:NEAR]}
    short, long = (not beside.isdisjoint(way) for way in (SHORT_OF, LONG_BY))
    return 0 if short == long else 1 if short else -1


def is_left(asked: Sequence[str]) -> bool:
    """Whether it is asked what is left, or over."""
    if not LEFT.isdisjoint(asked) and {"right", "hand"}.isdisjoint(asked):
        return True
    if any(a == "that" and b in ("leave", "leaves") for a, b in pairwise(asked)):
        return True
    return any(a == "over" and b in ("", "?", "when", "once", ",", "after") for a, b in pairwise([*asked, ""]))


_SHAPES: tuple[Callable[[Line], Told | None], ...] = (
    trimmed, halved, at_centres, centred, listed, outside_of_it, opening_for, missed_by, far_side, cut_off, difference, fitted,
    around_it, within, inside_out, left_of, stands_on, all_of_it, middle_of_rest, _story,
)  # fmt: skip
