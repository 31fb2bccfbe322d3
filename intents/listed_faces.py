"""Faces of a house told one by one, with words between: "one's 30 by 9 and the other is 24 by 9", "side walls 36 by 8, both of
them, end walls 24 by 8, both", "a wall forty by eight and another thirty by eight".

Those that stand in a row with a count each are read in `listed_rounds.py`.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise, takewhile

from intents.listed import METRIC, Listing
from intents.listed_parts import PLACES
from intents.listed_rounds import LOWEST, MOST_WALLS, SHORTEST, pairs, sides
from intents.reading import Dims, Reading
from solvers.quantities import Area, Length

_WALLS = frozenset("wall walls elevation elevations face faces side sides end ends".split())
_NAMED = frozenset("wall walls elevation elevations".split())
_ONE = frozenset(("one", "one's", "ones"))
_JOINTS = (
    _WALLS | PLACES | _ONE | frozenset(
        ", . ; and & plus + the a an my our is are it it's its that that's then at of @ : by other's both twice them those long"
        " high tall also with each measuring being feet foot more others other".split()
    )
)  # fmt: skip
_LONG, _SHORT = frozenset("long longer longest side".split()), frozenset("short shorter shortest end gable".split())
_PLURAL, _ONCE, _LED = frozenset("walls ones sides ends".split()), frozenset(("together", "combined", "in")), 4
_FORMER = frozenset(("of", ",", ".", ";", "and", "&", "", "them", "each", "plus", "twice", "?"))
_OTHERS = frozenset(  # a size with one of these after it is of something else
    "window windows door doors slider sliders opening openings roll rolls sheet sheets board boards panel panels garage deck"
    " building house shed garage barn cabin footprint joist joists ft2".split()
)
_BEFORE = frozenset(
    "door doors window windows openings opening garage roll rolls sheets panels building house shed less minus out off".split()
)
_MORE = frozenset(("more", "others", "other"))
_STOPS = frozenset((",", ".", ";", "and", "&"))
_FOLLOWS = _WALLS | PLACES | _MORE | {"are"}
_ARE = frozenset("are of them these those".split())
_NEAR = 3  # words before a size, which may name what it is of
_REACH, _MM_FROM, _LONGEST = 6, 1000, 400  # ft


def faces_told(listing: Listing) -> Iterator[Reading]:
    """Readings of kind `areas`: what the faces come to, from the first of them or how many there are."""
    if _NAMED.isdisjoint(listing.words) and _ONE.isdisjoint(listing.words) and {"sides", "ends"}.isdisjoint(listing.words):
        return
    if _WALLS.isdisjoint(listing.words) or sum(any(isinstance(r.value, Dims) for r in row) for row in listing.chart if row) < 2:
        return
    chain: list[Reading] = []
    counts: list[int] = []
    for size in _all(listing):
        between = _between(listing, chain[-1].end, size.start) if chain else None
        if not _is_face(listing, size) or (chain and between is None):
            if len(chain) > 1:
                break
            chain, counts = [], []
            if not _is_face(listing, size):
                continue
            between = None
        if between is not None:
            counts[-1] = counts[-1] * between[0]
            counts.append(between[1])
        else:
            counts.append(1)
        chain.append(size)
    if len(chain) > 1:
        yield from _summed(listing, chain, counts)


def _all(listing: Listing) -> Iterator[Reading]:
    """The sizes said together, one after another."""
    at = 0
    while at < len(listing.chart):
        size = next(iter(pairs(listing, at)), None)
        if size is not None:
            yield size
        at = size.end if size is not None else at + 1


def _is_face(listing: Listing, size: Reading) -> bool:
    low, long = sorted(side.to("ft").value for side in _sides(listing, size))
    after = listing.words[size.end : size.end + 2]
    before = takewhile(lambda word: word not in _WALLS, reversed(listing.words[max(0, size.start - _NEAR) : size.start]))
    return low >= LOWEST and SHORTEST <= long <= _LONGEST and _OTHERS.isdisjoint(after) and _BEFORE.isdisjoint([*before])


def _sides(listing: Listing, size: Reading) -> list[Length]:
    """Both sides; with no unit they are feet, and metres or millimetres where another length is metric."""
    assert isinstance(size.value, Dims)
    values = sides(size.value, False)
    bare = [part.value for part in size.value.parts if not isinstance(part.value, Length)]
    if not bare or listing.metric not in METRIC:
        return values
    unit = "mm" if max(side.value for side in values) >= _MM_FROM else "m"
    return [Length(side.value, unit) if side.unit == "ft" else side for side in values]


def _between(listing: Listing, start: int, end: int) -> tuple[int, int] | None:
    """How many there are of the face before, and of the one after; None where something else is said between."""
    former, latter, at = 1, 1, start
    while at < end:
        word = listing.words[at]
        if word == "twice" or (word == "both" and listing.words[at + 1] in _FORMER):
            former = 2
        elif word == "both":
            latter = 2
        elif word not in _JOINTS:
            counted = next(((stop, n) for stop, n in listing.counts(at) if stop <= end), None)
            if counted is None or not 0 < counted[1] <= MOST_WALLS or listing.words[counted[0]] not in _FOLLOWS:
                return None
            first, at = at == start, counted[0] + sum(1 for _ in takewhile(_WALLS.__contains__, listing.words[counted[0] + 1 :]))
            if first and listing.words[at + 1] in _STOPS and at + 1 < end:  # 14 by 7 two sides, 10 by 7 two ends
                former = counted[1]
            else:
                latter = counted[1]
            continue
        at += 1
    return former, latter


def _summed(listing: Listing, chain: list[Reading], counts: list[int]) -> Iterator[Reading]:
    """What they come to; how many there are must be how many were told."""
    start, told = _counted(listing, chain[0].start)
    at, few = _are(listing, chain[0].start)
    if few and max(counts) == 1:  # three walls, two are 30 by 9
        start, counts, told = at, [few, *counts[1:]], 1
        start, told = next(((n, told) for n in range(max(0, at - _LED), at) if (told := _in_all(listing, n)) > 1), (start, told))
    if max(counts) == 1 and told <= 2 and _long_and_short(listing, chain):  # the two long walls are, the short ones are
        counts, told = [2] * len(chain), 1
    end = chain[-1].end + (listing.words[chain[-1].end] == "each")
    both = listing.words[end : end + 2]
    after = next((at for at in (0, 1) if both[at] in ("both", "twice")), -1)
    if after >= 0:
        counts[-1], end = 2, end + after + 1
        end += 2 * (listing.words[end : end + 2] == ["of", "them"])
    trailing = next(((stop, n) for stop, n in listing.counts(end) if _PLURAL & {*listing.words[stop : stop + 2]}), None)
    if trailing is not None and counts[-1] == 1 and max(counts) > 1:
        counts[-1], end = trailing[1], trailing[0] + 1
    of_first = _next_to(listing, start, chain[0].start) or listing.words[chain[0].end] == "each" or max(counts[1:]) > 1
    if told > 1 and (told != sum(counts) or (of_first and _told_one_by_one(listing, chain))):
        if counts[0] != 1 or told > MOST_WALLS or not of_first:
            return
        counts[0] = told
    metric = any(side.unit in METRIC for size in chain for side in _sides(listing, size))
    total, said = Fraction(0), []
    for count, size in zip(counts, chain, strict=True):
        first, second = (side.to("m" if metric else "ft").value for side in _sides(listing, size))
        total += count * first * second
        said.append((f"{count} × " if count > 1 else "") + listing.said(size.start, size.end))
    unit = "m2" if metric else "ft2"
    value = Area(total, unit).said(f"{' + '.join(said)} = {float(total):g} {'m²' if metric else 'sq ft'}")
    yield Reading("areas", start, end, (value,))


def _long_and_short(listing: Listing, chain: list[Reading]) -> bool:
    """Whether the sizes are of the walls of a house, two of each: the long walls are 36 by 8 and the short ones 20 by 8."""
    if len(chain) != 2 or listing.words[chain[1].end] in _ONCE:
        return False
    named = [_kind(listing.words[max(0, size.start - _LED) : size.start]) for size in chain]
    return sorted(named) == ["long", "short"]


def _kind(words: list[str]) -> str:
    """Whether walls that are led to are the long or the short ones of a house: "the short ones are"."""
    for word, then in pairwise(words):
        if then in _PLURAL:
            return "long" if word in _LONG else "short" if word in _SHORT else ""
    return ""


def _counted(listing: Listing, first: int) -> tuple[int, int]:
    """Where the faces begin to be told, and how many there are: two walls, one is 30 by 9; 1 where that is not said."""
    start = first
    for at in range(first - 1, max(-1, first - _REACH - 1), -1):
        word = listing.words[at]
        if word == "both" or (listing.counts(at) and word not in _ONE):
            count = 2 if word == "both" else next((n for _, n in listing.counts(at)), 1)
            named = not _WALLS.isdisjoint(listing.words[at + 1 : at + 4])
            return (at, count) if named else (start, 1)
        if word not in _JOINTS:
            break
        start = at
    return start, 1


def _are(listing: Listing, first: int) -> tuple[int, int]:
    """How many there are of the first, and where that is told: two are | 30 by 9, two of them are | 30 by 9."""
    at = first - 1
    while at > 0 and listing.words[at] in _ARE:
        at -= 1
    if listing.words[at] in _WALLS and listing.words[at - 1] == "both" and at:
        return at - 1, 2
    said = "are" in listing.words[at + 1 : first] and listing.words[at] not in _ONE
    count = next((n for stop, n in listing.counts(at) if stop == at + 1), 0) if said else 0
    return at, count if 1 < count <= MOST_WALLS else 0


def _in_all(listing: Listing, at: int) -> int:
    """How many walls there are, where that is told at a place: three walls."""
    return next((n for stop, n in listing.counts(at) if listing.words[stop] in _WALLS), 1)


def _told_one_by_one(listing: Listing, chain: list[Reading]) -> bool:
    """Whether each face after the first is said to be one: two walls at 34 by 8 and one at 20 by 8, and another 20 by 8."""
    between = (listing.words[a.end : b.start] for a, b in pairwise(chain))
    return all(not {"one", "a", "another"}.isdisjoint(words) for words in between)


def _next_to(listing: Listing, start: int, first: int) -> bool:
    """Whether a count is of the first face alone: two side walls 36 by 8."""
    return _ONE.isdisjoint(listing.words[start + 1 : first]) and {",", ".", ";"}.isdisjoint(listing.words[start + 1 : first])


