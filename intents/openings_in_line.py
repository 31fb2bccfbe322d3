"""The openings of a line with how many there are of each, wherever that is said: "800 x 600 window x 6", "the window holes are 25
by 37 and there are two", "six windows along the lake wall, each one 3 foot by 4-6".

Every size of two sides is one of an opening, and every whole number counts one of them; where a number could count neither, or
several openings are named and nothing tells how many, there is no such list.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from intents.chart import Chart
from intents.in_line import Item, items
from intents.lengths import METRES
from intents.listed import Amount
from intents.listed_openings import NAMES, lengths_of
from intents.question import Heard
from intents.reading import Dims, Reading
from intents.stated_units import stated_metric
from solvers.quantities import Length, Number, Quantity
from solvers.slots import Opening

_WIDE, _HIGH = frozenset("wide across width w".split()), frozenset("high tall height h".split())
_JOINS = frozenset(("and", "by", "×", ",", "x"))
_JOINED = frozenset("and , plus & + also one a an then".split())
_LINKS = frozenset(  # between how many there are and how big they are
    "at @ of off no . , : - ( ) each each's one all are is there's there more measuring that's that about they're being some"
    " little x × them alike same size the ones".split()
)
_THERE = frozenset(
    "i we you got there there's theres are is of it them those and , we've got i've the have x × ( @ all so".split()
)
_THEM = frozenset("them em 'em those these such off".split())
_TWO_IN_ONE = frozenset("french double patio sliding bifold bi-fold barn folding garage pair saloon barn".split())  # one opening
_TWICE = frozenset(("twice",))
_NAME_AFTER = 4  # words from a size to the name of what it is of
_MOST = 200  # openings of one size
_NO_TRIM = frozenset("trim casing architrave surround head sill frame jamb side sides wall".split())
_STOPS = frozenset((".", ",", ";", "?", "and", "plus", "one"))
_UNITS_SAID = {"inches": "in", "millimetres": "mm", "millimeters": "mm", "mm": "mm"}


class Sized(NamedTuple):
    """Two sides: the tokens they were said in, width and height, and each as it was read."""

    start: int
    end: int
    sides: tuple[Quantity, Quantity]
    parts: tuple[Reading, Reading]


class Openings(NamedTuple):
    """The openings, and what of their line is not of them."""

    told: Heard
    sizes: list[Sized]
    what: list[str]
    rest: list[Item]  # quantities that are of no opening
    uncounted: str = ""  # the name of several of which nothing tells how many there are


def openings_in(chart: Chart, passed: int) -> Openings | None:
    """Every opening of a line but what the mask `passed` holds; None where it holds none, or their sizes are not told apart."""
    sizes, singles = sizes_in(items(chart, passed, pairs=True))
    if not sizes:
        return None
    what = [_what(chart, sizes, n) for n in range(len(sizes))]
    what = ["door" if one == "opening" and _is_a_door(chart, what) else one for one in what]
    if not all(what):
        return None
    counts, rest, places = _counted(chart, sizes, singles)
    if counts is None or any(not (counts[n] or _own(chart, sizes, n)) for n in range(1, len(sizes))):
        return None
    uncounted = ""
    openings, sure = [], 1.0
    for n, size in enumerate(sizes):
        several = _several(chart, sizes, n)
        both = ("both", several) in pairwise(chart.words)
        counts[n] = counts[n] or (2 if several and both else 0)
        if several and not counts[n]:
            uncounted = several
        (width, height), doubt = lengths_of(_metric(chart), _amounts(chart, size), what[n])
        sure = min(sure, doubt)
        openings.append(Opening(counts[n] or 1, width, height, what[n]))
    return Openings(_heard(chart, sizes, places, tuple(openings), sure), sizes, what, rest, uncounted)


def sizes_in(found: list[Item], *wide: frozenset[str]) -> tuple[list[Sized], list[Item]]:
    """The sizes of two sides, said by each other or named one after another (by `wide`, as `size_at` has it), and the rest."""
    sizes, singles, at = list[Sized](), list[Item](), 0
    while at < len(found):
        size, used = size_at(found, at, *wide)
        if size is None:
            singles.append(found[at])
        else:
            sizes.append(size)
        at += used
    return sizes, singles


def size_at(found: list[Item], at: int, wide: frozenset[str] = _WIDE) -> tuple[Sized | None, int]:
    """A size of two sides that begins with an item, by which word names its width, and how many items it takes."""
    item, after = found[at], found[at + 1] if at + 1 < len(found) else None
    value, start, end = item.reading.value, item.reading.start, item.reading.end
    if isinstance(value, Dims):
        one, two = value.parts
        turned = item.after[:1] and item.after[0] in wide and _said_high(item)
        return _sized(start, end, *((two, one) if turned else (one, two))), 1
    if not isinstance(value, Length | Number):
        return None, 1
    if item.after[:2] == ("each", "way") or item.after[:1] == ("square",):
        return _sized(start, end, item.reading, item.reading), 1
    if after is None or not isinstance(after.reading.value, Length | Number) or len(item.after) > 3:
        return None, 1
    led = item.after[:1] and item.after[0] in wide | _HIGH and {*item.after[1:]} <= _JOINS
    first = led and item.after[0] in wide
    other = after.after[0] if after.after else ""
    named = other in (_HIGH if first else wide) or (led and len(item.after) > 1)
    if not led or not named:
        return None, 1
    ways = (item.reading, after.reading) if first else (after.reading, item.reading)
    return _sized(start, after.reading.end, *ways), 2


def _sized(start: int, end: int, one: Reading, other: Reading) -> Sized:
    return Sized(start, end, (one.value, other.value), (one, other))  # type: ignore[arg-type]


def _said_high(item: Item) -> bool:
    """Whether the second side of a size is told to be the width: 7 by 16 wide is; 3 by 5 across the front is none."""
    return item.after[0] == "wide"


def _what(chart: Chart, sizes: list[Sized], n: int) -> str:
    """What an opening is called: by the word after its size, else by the one last said before it, else by any."""
    words, size = chart.words, sizes[n]
    after = words[size.end : size.end + _NAME_AFTER]
    stop = next((at for at, word in enumerate(after) if word in _STOPS), len(after))
    for at, word in enumerate(after[:stop]):
        if word in NAMES and (after[at + 1 : at + 2] == [] or after[at + 1] not in _NO_TRIM):
            return NAMES[word]
    start = sizes[n - 1].end if n else 0
    before = [word for word in words[start : size.start] if word in NAMES]
    if before:
        return NAMES[before[-1]]
    if n:
        return _what(chart, sizes, n - 1)
    return next((NAMES[word] for word in words if word in NAMES), "")


def _own(chart: Chart, sizes: list[Sized], n: int) -> bool:
    """Whether a size is that of one more opening: it has a name of its own, or is joined to the one before it."""
    between = chart.words[sizes[n - 1].end : sizes[n].start]
    after = chart.words[sizes[n].end : sizes[n].end + _NAME_AFTER]
    named = any(word in NAMES for word in (*between[1:], *after))
    return named or {*between} <= _JOINED


def _is_a_door(chart: Chart, what: list[str]) -> bool:
    """Whether an opening is a door's, as nothing else is named: French doors, opening 1.5 m wide."""
    return "window" not in what and not frozenset(("door", "doors", "doorway")).isdisjoint(chart.words)


def _several(chart: Chart, sizes: list[Sized], n: int) -> str:
    """The name of an opening where it is of several: the windows are all 36 by 48; not French doors, which are one."""
    start, size = sizes[n - 1].end if n else 0, sizes[n]
    stop = sizes[n + 1].start if n + 1 < len(sizes) else size.end + _NAME_AFTER
    near = (*range(start, size.start), *range(size.end, min(stop, size.end + _NAME_AFTER, len(chart.words))))
    named = [at for at in near if chart.words[at] in NAMES]
    if not named:
        return ""
    before = [at for at in named if at < size.start]
    at = before[-1] if before else named[0]
    word = chart.words[at]
    one = not _TWO_IN_ONE.isdisjoint(chart.words[max(0, at - 2) : at])
    return word if word.endswith("s") and not one else ""


def several_named(chart: Chart) -> bool:
    """Whether openings are named in the plural, and not as what is one opening: French doors."""
    ats = (at for at, word in enumerate(chart.words) if word in NAMES and word.endswith("s"))
    return any(_TWO_IN_ONE.isdisjoint(chart.words[max(0, at - 2) : at]) for at in ats)


def _counted(chart: Chart, sizes: list[Sized], singles: list[Item]) -> tuple[list[int] | None, list[Item], list[int]]:
    """How many there are of each size, 0 where nothing tells, the quantities that count none, and where the counts stand; None
    where that is open.
    """
    counts, rest, places = [0] * len(sizes), list[Item](), list[int]()
    for single in singles:
        if not 1 <= single.whole <= _MOST:
            rest.append(single)
            continue
        n = _of_which(chart, sizes, single)
        if n is None or counts[n]:
            return None, rest, places
        counts[n] = single.whole
        places.append(single.reading.start)
    for n, size in enumerate(sizes):
        if not counts[n] and not {*chart.words[size.end : size.end + 3]}.isdisjoint(_TWICE):
            counts[n] = 2
    return counts, rest, places


def _of_which(chart: Chart, sizes: list[Sized], count: Item) -> int | None:
    """The place of the size that a number counts the openings of; None where the words leave that open."""
    words, start, end = chart.words, count.reading.start, count.reading.end
    following = next((n for n, size in enumerate(sizes) if size.start >= end), None)
    before = next((n for n in reversed(range(len(sizes))) if sizes[n].end <= start), None)
    if following is not None:
        between = words[end : sizes[following].start]
        named = any(word in NAMES for word in between) or any(
            word in NAMES for word in words[sizes[following].end : sizes[following].end + 2]
        )
        alone = {*between} <= _LINKS
        lead = before is None or not _leads_back(words[sizes[before].end : start]) or bool(between and between[0] in NAMES)
        if (alone or named) and lead and not any(word in _NO_TRIM for word in between[:1]):
            return following
        if before is None:
            return None
    if before is None:
        return None
    gap, after = words[sizes[before].end : start], words[end : end + 2]
    gone = [word for word in gap if word not in NAMES and word not in _WIDE | _HIGH]
    of_them = after[:1] == ["of"] and after[1:2] != [] and after[1] in _THEM
    told = {*gone} <= _THERE and (bool(gone) or of_them)
    no_more = not after or after[0] in {".", ",", "?", ";", "of", "off", ")", "all", "in", "total"} or after[0] in NAMES
    return before if told and no_more else None


def _leads_back(gap: list[str]) -> bool:
    """Whether a number after a size is told to be of it: window × | 6, and there are | two."""
    return bool(gap) and (gap[-1] == "×" or gap[-1] in ("are", "there's", "theres"))


_ASKED_IN = frozenset(("many", "in", "total"))


def _metric(chart: Chart) -> str:
    """A unit that is said of all sizes: 44 wide and 44 high, inches."""
    units = (r.value.unit for row in chart.every for r in row if isinstance(r.value, Length) and r.value.metric)
    asked = any(a in _ASKED_IN and b in METRES for a, b in pairwise(chart.words))  # how many metres, total in metres
    return stated_metric([*chart.words, "", ""]) or next(units, "") or ("m" if asked else "")


def _amounts(chart: Chart, size: Sized) -> tuple[Amount, ...]:
    """The two sides as a list reader has them; the unit of one goes for both."""
    units = [side.unit for side in size.sides if isinstance(side, Length)]
    after = chart.words[size.end : size.end + 3]
    said = next((_UNITS_SAID[word] for word in after if word in _UNITS_SAID), "")
    one = units[-1] if len(units) == 1 else said if not units else ""
    made = []
    for side in size.sides:
        own = side.unit if isinstance(side, Length) else one
        made.append(Amount(size.end, Fraction(side.value), own, own))
    return tuple(made)


def _heard(chart: Chart, sizes: list[Sized], places: list[int], value: tuple[Opening, ...], sure: float) -> Heard:
    first, last = min(sizes[0].start, *places, len(chart.words)), max(sizes[-1].end - 1, *places, 0)
    start, end = chart.tokens[first].start, chart.tokens[last].end
    return Heard(value, start, end, chart.text[start:end], sure)
