"""Sizes told of another wall than the one asked about, of somebody's own place, or of a part that is gone from what is left.

"The lake wall is 41 foot, the east gable only 22 … the vent area for the lake wall", "my uncle's place is 2,000", "the water
heater takes up 2 feet of the wall so I've 15 foot 4 left". Such a size is left out only where the question has no place for it
and is whole without (`left_out.py`).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from intents.reading import Reading
from intents.remarks import ASKING, clauses

_WALLS = frozenset("wall gable side elevation dormer porch roof".split())
_NO_NAMES = frozenset(
    "the a an my our his her their your its it's this that these those each every either per of one other same whole long short"
    " inside outside far near stud block brick in on at for and or to by with from is are was up down out off next back-to-back"
    " high low both opposite two three four solid blank bare clear net open straight finished".split()
)
_TOGETHER = frozenset("both together total altogether combined than same sum difference each every".split())
_ALL = frozenset((("in", "all"), ("all", "of"), ("all", "the"), ("all", "walls"), ("all", "four"), ("all", "three")))
_PEOPLE = frozenset(
    "uncle aunt cousin brother sister neighbour neighbor dad father mum mom mate buddy boss nephew grandad granddad grandpa"
    " brother-in-law father-in-law son daughter friend".split()
)
_PLACES = frozenset("place house shed garage barn cabin cottage boathouse porch deck roof loft attic one job".split())
_IS = frozenset("is was has had are were ran came".split())
_TAKES = frozenset(("takes", "took", "uses", "used", "eats", "ate", "taking"))
_LEFT = frozenset(("left", "leaves", "leaving", "remaining"))
_NEIGHBOURS = frozenset("neighbour neighbours neighbor neighbors".split())
_OTHER_ONES = frozenset("ones were was clears clear fine did last other".split())
_COUNTS = frozenset("add plus minus less waste also both same including include oh forgot actually sorry no not".split())
_SMALL = frozenset("about only just nearly around roughly a an the".split())
_AS_HIS = frozenset("same like as match matching also too alike ours mine".split())
CUES = _PEOPLE | _TAKES | _NEIGHBOURS | frozenset(("next", "?"))


def two_named(words: Sequence[str]) -> bool:
    """Whether two walls or more are told apart by name."""
    return not _WALLS.isdisjoint(words) and len({name for _, name in _named(words)}) > 1


def of_other_things(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a quantity in the clause at a place is told of something else than what is asked about."""
    if of_his_place(words, place, reading) or _taken_up(words, reading) or _of_other_wall(words, place, reading):
        return True
    return _afterthought(words, reading) or (
        tells_of_next_door(words[place[0] : reading.start]) and _AS_HIS.isdisjoint(words)
    )


def tells_of_next_door(words: Sequence[str]) -> bool:
    """Whether words that lead to something say that it is a neighbour's: the bank next door is | aluminium."""
    return bool(words) and (not _NEIGHBOURS.isdisjoint(words) or ("next", "door") in pairwise(words))


def _afterthought(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is told after the question of other pieces, or of what it is held against: …? The 8 inch ones were fine."""
    if "?" not in words[: reading.start]:
        return False
    start = max(at + 1 for at in range(reading.start) if words[at] in (".", "?", "!"))
    end = next((at for at in range(reading.end, len(words)) if words[at] in (".", "?", "!")), len(words))
    told = words[start:end]
    return not _OTHER_ONES.isdisjoint(told) and (ASKING - {"is", "are"}).isdisjoint(told) and _COUNTS.isdisjoint(told)


def of_his_place(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """My uncle's place is | 2,000; a possessive's own ending is gone by here."""
    if _PLACES.isdisjoint(words):
        return False
    at = reading.start
    while at > place[0] and words[at - 1] in _SMALL:
        at -= 1
    before = list(words[max(place[0], at - 4) : at])
    his = len(before) > 2 and before[-1] in _IS and before[-2] in _PLACES and before[-3] in _PEOPLE
    return his and _AS_HIS.isdisjoint(words)


def _taken_up(words: Sequence[str], reading: Reading) -> bool:
    """The stove takes up | 2 feet, where what is left is told too."""
    at = reading.start
    while at and words[at - 1] in _SMALL:
        at -= 1
    return at > 1 and words[at - 1] == "up" and words[at - 2] in _TAKES and not _LEFT.isdisjoint(words[reading.end :])


def _of_other_wall(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether its clause names one wall, and what is asked names another alone."""
    here = {name for _, name in _named(words[place[0] : place[1]])}
    wall = asked_wall(words) if len(here) == 1 else ""
    return bool(wall) and wall not in here and place not in _asked(words)


def asked_wall(words: Sequence[str]) -> str:
    """The one wall that is asked about by name where others are named too; "" where it is of more than one, or none."""
    if not (two_named(words) and _TOGETHER.isdisjoint(words) and _ALL.isdisjoint(pairwise(words))):
        return ""
    names = {name for start, end in _asked(words) for _, name in _named(words[start:end])}
    return next(iter(names)) if len(names) == 1 else ""


def _asked(words: Sequence[str]) -> list[tuple[int, int]]:
    """The clauses that ask; else the last."""
    stretches = list(clauses(words))
    return [(start, end) for start, end in stretches if not ASKING.isdisjoint(_asking(words[start:end]))] or stretches[-1:]


def _asking(clause: Sequence[str]) -> set[str]:
    """The words of a clause that may ask: "is" asks only where it begins."""
    return {*clause[:1], *(word for word in clause[1:] if word in ("how", "what", "which"))}


def _named(words: Sequence[str]) -> Iterator[tuple[int, str]]:
    """The walls that are named, and where: the east gable."""
    for at, (name, thing) in enumerate(pairwise(words)):
        if thing in _WALLS and name.isalpha() and name not in _NO_NAMES:
            yield at, name
