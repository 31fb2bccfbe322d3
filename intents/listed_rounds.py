"""All the way round: the lengths round buildings and openings ("round a 24 by 32 building", "round six windows 3 by 4"),
and the faces of several walls of different sizes ("two walls 36 by 9 and two 24 by 9")."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.listed import Listing
from intents.listed_totals import PLACES
from intents.reading import Dims, Reading
from solvers.quantities import Area, Length, Quantity

_ROUND = frozenset("round around perimeter surround surrounding encircle circling".split())
_AT_THE_FOOT = frozenset("starter skirt skirting skirtboard waterboard".split())  # what goes all the way round
_LEADS = frozenset("all the way right clear full of a an the".split())
_AFTER = frozenset("building house shed garage cabin barn boathouse footprint box".split())
_BETWEEN = _AFTER | frozenset("a an the of my our this that is are each with : , at about".split())
_WINDOWS = frozenset("window windows opening openings".split())
_DOORS = frozenset("door doors".split())  # trim goes up, over and down: no perimeter
_FACES = frozenset("walls wall elevations faces sides gables ends".split())
_SURE, _WITHIN = 0.6, 6
_INCHES_FROM = 21  # no opening is 21 ft wide
MOST_WALLS = 12
LOWEST, SHORTEST = 6, 8  # ft: of a wall, how high and how long
_WALLS = frozenset("walls elevations faces sides".split())
_AFTER_WALL = _FACES | frozenset(
    ("", "s", *"high tall each , . ; ? ! and & plus + less minus with total in for at on exposure".split())
)


def rounds(listing: Listing) -> Iterator[Reading]:
    """Readings of kind `runs`: the length round what is said, from "round" to its sizes or from the sizes to "round"."""
    if _ROUND.isdisjoint(listing.words):
        if not _AT_THE_FOOT.isdisjoint(listing.words):
            yield from _of_building(listing)
        return
    for i, word in enumerate(listing.words[: len(listing.tokens)]):
        if word not in _ROUND:
            continue
        start = _back(listing, i)
        ahead = _sized_after(listing, i + 1)
        if ahead is not None:
            yield _perimeter(listing, start, *ahead)
        for at in range(max(0, start - _WITHIN), start):
            for size in pairs(listing, at):
                if size.end <= start and all(word in _AFTER | _BETWEEN | {"and"} for word in listing.words[size.end : start]):
                    yield _perimeter(listing, at, i + 1, 1, size, False)


def _of_building(listing: Listing) -> Iterator[Reading]:
    """Round the building that a strip goes on which goes all the way round: starter strip for a house 30 by 50."""
    for at in range(len(listing.chart)):
        for size in pairs(listing, at):
            before = next((k for k in range(at - 1, max(-1, at - 4), -1) if listing.words[k] not in _BETWEEN - _AFTER), -1)
            if before >= 0 and listing.words[before] in _AFTER:
                yield _perimeter(listing, before, size.end, 1, size, False)
            elif listing.words[size.end] in _AFTER:
                yield _perimeter(listing, at, size.end + 1, 1, size, False)


def _back(listing: Listing, i: int) -> int:
    """Where "all the way round" begins."""
    while i and listing.words[i - 1] in _LEADS:
        i -= 1
    return i


def _sized_after(listing: Listing, at: int) -> tuple[int, int, Reading, bool] | None:
    """Where it ends, how many, the size, and whether of windows: round six windows 3 by 4, round a 24 by 32 building."""
    at, count, windows = listing.past(at, _BETWEEN), 1, False
    for end, number in listing.counts(at):
        if listing.words[end] in _WINDOWS or any(r.start == end for r in pairs(listing, end)):
            at, count = end, number
            break
    if listing.words[at] in _WINDOWS:
        at, windows = listing.past(at + 1, _BETWEEN), True
    size = next(iter(pairs(listing, at)), None)
    if size is None or count < 1:
        return None
    after = listing.words[size.end]
    if after in _DOORS:
        return None
    windows = windows or after in _WINDOWS
    return size.end + (after in _AFTER | _WINDOWS), count, size, windows


def pairs(listing: Listing, at: int) -> list[Reading]:
    """The two sizes said as one at a place, if any."""
    row = listing.chart[at] if at < len(listing.chart) else []
    found = [r for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2 and r.sure >= _SURE]
    return sorted(found, key=lambda r: -r.end)[:1]


def _perimeter(listing: Listing, start: int, end: int, count: int, size: Reading, windows: bool) -> Reading:
    assert isinstance(size.value, Dims)
    lengths = sides(size.value, windows)
    said_in = lengths[0].unit
    total = 2 * count * sum((side.to(said_in).value for side in lengths), Fraction(0))
    unit = "ft" if said_in == "in" else said_in
    value = Length(total, said_in).to(unit)
    times = f"{count} × " if count > 1 else ""
    said = f"{times}round {listing.said(size.start, size.end)} = {float(value.value):g} {unit}"
    return Reading("runs", start, end, (value.said(said),))


def sides(size: Dims, windows: bool) -> list[Length]:
    """The sizes as lengths; with no unit they are feet, and large ones of windows inches."""
    values = [part.value for part in size.parts if isinstance(part.value, Quantity)]
    bare = [value.value for value in values if not isinstance(value, Length)]
    unit = "in" if windows and bare and max(bare) >= _INCHES_FROM else "ft"
    return [value if isinstance(value, Length) else Length(value.value, unit) for value in values]


def faces(listing: Listing) -> Iterator[Reading]:
    """Readings of kind `areas`: walls of two sizes or more, each said with how many: two walls 36 by 9 and two 24 by 9."""
    if _FACES.isdisjoint(listing.words) and PLACES.isdisjoint(listing.words):
        return
    if sum(any(isinstance(r.value, Dims) for r in row) for row in listing.chart if row) < 2:
        return
    for i in range(len(listing.tokens)):
        chain = [*_chain(listing, i)]
        walls = _FACES & set(listing.words[max(0, i - 2) : i])  # four walls, two 30 by 8 and two 20 by 8
        if len(chain) > 1 and (walls or any(named for *_, named in chain)):
            yield _sum(listing, i, chain)
    yield from listed_faces(listing)


def _chain(listing: Listing, i: int) -> Iterator[tuple[int, int, Reading, bool]]:
    """Count and size, one after another: where each ends, how many, the size, whether it was called a wall."""
    at = i
    for _ in range(MOST_WALLS):
        found = _counted_face(listing, at)
        if found is None:
            return
        yield found
        at = listing.past(found[0], frozenset((",", "and", "&", "plus", "+")), 2)
        if at == found[0]:
            return


def _counted_face(listing: Listing, at: int) -> tuple[int, int, Reading, bool] | None:
    starts = [*listing.counts(at), *([(at + 1, 1)] if listing.words[at] in ("a", "an", "another") else [])]
    for end, count in starts:
        named = listing.words[end] in _FACES
        place = listing.past(end + named, frozenset(("at", "of", "@", ":", "are", "is", "that", "measuring", "each")), 2)
        for size in pairs(listing, place) if 0 < count <= MOST_WALLS else ():
            after = size.end + (listing.words[size.end] == "s")
            named = named or listing.words[after] in _FACES
            if listing.words[after] not in _WINDOWS | _DOORS:
                return after + (listing.words[after] in _FACES), count, size, named
    return None


def listed_faces(listing: Listing) -> Iterator[Reading]:
    """Walls told by their sizes alone, or each by its place: walls are 20x9, 14x9 and 20x8; north 30x9, east 20x9."""
    at = 0
    while at < len(listing.tokens):
        chain = [*_sizes_in_a_row(listing, at)]
        start = _counted_walls(listing, at, len(chain)) if len(chain) > 1 else -1
        one_more = 0 <= start < at and "another" in listing.words[at : chain[-1][0]]  # two walls 30x9 and another 24x9 are three
        if start < 0 or one_more:
            at += 1
            continue
        yield _sum(listing, start, chain)
        at = chain[-1][0]


def _sizes_in_a_row(listing: Listing, at: int) -> Iterator[tuple[int, int, Reading, bool]]:
    """Sizes as big as walls, one after another: where each ends, one of it, the size, whether a place names it."""
    for _ in range(MOST_WALLS):
        place = listing.past(at, frozenset(("the", "a", "my")), 1)
        named = listing.words[place] in PLACES
        if named:
            place = listing.past(place + 1, _FACES | frozenset(("is", ":", "at", "-", "side", "end")), 3)
        size = next(iter(pairs(listing, place if named else at)), None)
        if size is None or not _as_a_wall(listing, size):
            return
        end = listing.past(size.end, _FACES | {"high", "tall"}, 1)
        yield end, 1, size, named
        at = listing.past(end, frozenset((",", "and", "&", "plus", "+", ";")), 2)
        if at == end:
            return


def _as_a_wall(listing: Listing, size: Reading) -> bool:
    """Whether a size is as big as a wall, and no word after it says that it is of something else."""
    assert isinstance(size.value, Dims)
    lengths = sorted(side.to("ft").value for side in sides(size.value, False))
    return lengths[0] >= LOWEST and lengths[1] >= SHORTEST and listing.words[size.end] in _AFTER_WALL


def _counted_walls(listing: Listing, at: int, many: int) -> int:
    """Where walls told by so many sizes begin; -1 where they are none, or another number of them was said."""
    if listing.words[at] in PLACES or listing.words[at + 1] in PLACES:
        return at
    walls = next((k for k in range(at - 1, max(-1, at - _WITHIN), -1) if listing.words[k] in _WALLS), -1)
    if walls < 0 or any(listing.number_at(k) for k in range(walls + 1, at)):
        return -1
    counts = [(k, n) for k in range(max(0, walls - 2), walls) for end, n in listing.counts(k) if end <= walls]
    if not counts:
        return at
    return counts[0][0] if counts[0][1] == many else -1


def _sum(listing: Listing, start: int, chain: list[tuple[int, int, Reading, bool]]) -> Reading:
    total, said = Fraction(0), []
    for _, count, size, _ in chain:
        assert isinstance(size.value, Dims)
        first, second = (side.to("ft").value for side in sides(size.value, False))
        total += count * first * second
        said.append((f"{count} × " if count > 1 else "") + listing.said(size.start, size.end))
    value = Area(total, "ft2").said(f"{' + '.join(said)} = {float(total):g} sq ft")
    return Reading("areas", start, chain[-1][0], (value,))
