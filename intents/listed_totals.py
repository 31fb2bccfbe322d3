"""Several of one size and sizes of several, as one: "both eaves, 36 ft each", "three walls at 320 square feet each",
"lake wall 432 sq ft and ramp wall 268 sq ft together"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.listed import PAIRS, Listing
from intents.reading import Dims, Reading
from solvers.quantities import Area, Length, Number

NOUNS = frozenset(
    "sides eaves eves overhangs walls windows doors openings rakes gables joints beads runs perimeters corners edges ends faces"
    " elevations chimneys dormers roofs posts columns frames valleys jambs slopes verges barges lines cheeks cheek".split()
)
AMOUNTS = frozenset(  # topics of how much or how many it takes
    ("wall area", "gable area", "cladding boards", "squares", "soffit panels", "trim sticks", "membrane rolls", "fasteners",
     "sealant", "weight", "cost", "step flashing", "take-off", "strapping")
)  # fmt: skip
PLACES = frozenset(
    "front back rear north south east west left right lake ramp street road garden yard house garage porch dormer other upper"
    " lower first second third another main far near short long uphill downhill water shed bay".split()
)
_FACES = frozenset("walls elevations faces".split())
_ALL_SIDES, _LOWEST, _HIGHEST = frozenset(("sides", "ends")), 6, 14  # ft
_WHOLE_FACES = _FACES | frozenset("sides gables".split())
_SPOKEN = 6  # words of a number: two hundred and ninety six
_MOST_UNLIKE = 12  # so many times as large is no face of one house beside another: 8 and 240 sq ft
_ROW = frozenset((",", "and", "&", "+", "plus"))
SINGLE = {"eave": "eaves", "side": "sides", "chimney": "chimneys"}
BOTH = {"both": 2, "twin": 2, "two": 2}
_EACH = frozenset("each apiece ea".split())
_THE = frozenset(("the", "my", "our"))
_PER = frozenset(("per", "a", "an", "the", "each", "every", "/", "on", "round", "around", "along"))
_JOINTS = frozenset(("at", "of", "@", ":", ",", "is", "are", "each", "measuring", "that", "being", "with", "one"))
_NO_FACES = frozenset("roll rolls wrap window windows door doors opening openings panel panels sheet sheets".split())
_TAKEN = frozenset("total altogether combined all together overall between".split())  # the size is of them all already
_THE_LOT = {("the", "pair"), ("the", "lot"), ("for", "both"), ("for", "two"), ("the", "two")}  # and so it is with these
_COME, _ARE = frozenset("come comes coming came total add adds make makes totals".split()), frozenset(("is", "are"))
_ABOUT = frozenset("to about just".split())
_SET = frozenset("the all my our his her their these those".split())  # before a count: the four walls there are
THEM = frozenset("them those these em".split())
_THERE = frozenset(("there", "is", "are", "i've", "have", "got", "it's"))  # rakes are 19 feet each and there's four of them
_NO_NAMES = frozenset(
    "and deep wide long high tall thick in of for at on with to by ft feet foot inch inches sq sqft sf"
    " square m2 ft2 m mm cm metre metres meter meters percent lb lbs kg pounds dollars".split()
)
_MARKS = frozenset((":", ",", "-"))
_PAIRED, _FEW = 3, 6
_WITHIN = 7  # words between the things and their size
_UNIT_AREAS = frozenset(("per", "a", "an", "each", "/", "every"))  # pounds a square foot: no area of its own
_TOGETHER = frozenset(("together", "total", "altogether", "combined", "all", "both", "plus", "another", "+"))
_NOT_COVERED = frozenset(
    "opening openings window windows door doors glass less minus off out deduct subtract per at weighs covers cover".split()
)
MOST_TIMES, SURE, DOUBTED = 200, 1.0, 0.5
SAID, DOUBTED_UNIT = 0.6, 0.3  # how sure a size is whose unit was said, and one whose "in" may be a small word


_BEGINS = frozenset((*NOUNS, *PLACES, *BOTH, *PAIRS, "("))  # besides numbers, what tells how many there are


def totals(listing: Listing) -> Iterator[Reading]:
    """Lengths of several runs (kind `runs`) and areas of several faces (kind `areas`): a tuple of what each could be."""
    for i in () if NOUNS.isdisjoint(listing.words) and PLACES.isdisjoint(listing.words) else range(len(listing.tokens)):
        if not listing.chart[i] and listing.words[i] not in _BEGINS:
            continue
        for end, count in _things(listing, i):
            yield from _after(listing, i, end, count)
            yield from _before(listing, i, end, count)
        if listing.words[i] in NOUNS:
            yield from _of_them(listing, i)
    yield from _summed(listing)


def _things(listing: Listing, i: int) -> Iterator[tuple[int, int]]:
    """Both eaves, four joints, nine window perimeters, front and back: where the words end, and how many."""
    word = listing.words[i]
    if word in PLACES and listing.words[i + 1] in ("and", "&"):
        other = listing.past(i + 2, _THE, 1)
        if listing.words[other] in PLACES:
            yield listing.past(other + 1, NOUNS, 1), 2
    if word in NOUNS:  # butt joints: 96 of them
        at = listing.past(i + 1, _MARKS, 1)
        if "," in listing.words[at : at + 3] and "them" in listing.words[at : at + _WITHIN]:
            at = listing.words.index(",", at) + 1  # porch posts to wrap, | eight of them
        for end, count in listing.counts(at):
            if 1 < count <= MOST_TIMES and listing.words[end] == "of" and listing.words[end + 1] in THEM:
                yield end + 2, count
    counts = [(i + 1, BOTH[word])] if word in BOTH else []
    for end, count in (*listing.counts(i), *counts):
        if not 1 < count <= MOST_TIMES:
            continue
        for at in range(end, end + 3):
            if listing.words[at] in NOUNS:
                yield at + 1 + (listing.words[at + 1] in NOUNS), count
                return
            if at == end and count <= _FEW and listing.words[at] == "long" and listing.words[at + 1] in _WHOLE_FACES:
                continue  # the two long walls
            if not listing.words[at].isalpha() or listing.words[at] in _NO_NAMES or listing.number_at(at):
                break


def _of_them(listing: Listing, i: int) -> Iterator[Reading]:
    """The size of each, then how many there are: rakes are 17 ft 8 each, four of them."""
    for at in range(i + 1, min(i + 1 + _WITHIN, len(listing.chart))):
        for size in _sizes(listing, at):
            each = _each(listing, size.end)
            past = listing.past(listing.past(each, _MARKS | _ROW, 2), _THERE) if each else each
            for end, count in listing.counts(past) if each else ():
                if 1 < count <= MOST_TIMES and listing.words[end] == "of" and listing.words[end + 1] in THEM:
                    yield _times(listing, i, end + 2, size, count, SURE)
        if listing.number_at(at):
            return


def _after(listing: Listing, i: int, end: int, count: int) -> Iterator[Reading]:
    """The size after the things: both eaves, 36 ft each; four joints of 11 ft; both sides of a chimney, 38 in a side."""
    for at in range(end, min(end + _WITHIN, len(listing.chart))):
        if listing.number_at(at):
            yield from _faces(listing, i, at, count, listing.words[end - 1])
            for size in _sizes(listing, at):
                each = _each(listing, size.end)
                if size.kind == "area" and not each and _of_all(listing, i, end, at):
                    yield _times(listing, i, size.end, size, 1, SURE)
                    continue
                joined = all(word in _JOINTS for word in listing.words[end:at])
                said = listing.words[end : end + 1] != [","] and joined and at > end
                lot = tuple(listing.words[size.end : size.end + 2]) in _THE_LOT
                if lot or _TAKEN & set(listing.words[size.end : size.end + 3]):
                    if joined and (lot or "between" in listing.words[size.end : size.end + 2]):  # 560 square feet between them
                        assert isinstance(size.value, Length | Area)
                        yield _times(listing, i, size.end, size, 1, SURE)
                    continue
                if each or said or "each" in listing.words[end:at] or "each" in listing.words[max(0, i - 3) : i]:
                    yield _times(listing, i, each or size.end, size, count, SURE)
                elif joined:
                    yield _times(listing, i, size.end, size, count, DOUBTED)
            return


def _of_all(listing: Listing, i: int, end: int, at: int) -> bool:
    """Whether an area is of all the things together: the four walls are 352 sq ft, all three come to 96."""
    joint = set(listing.words[end:at])
    return bool(joint & _COME) or (listing.words[i - 1] in _SET and bool(joint & _ARE) and joint <= _ARE | _ABOUT)


def _faces(listing: Listing, i: int, at: int, count: int, name: str, stop: int = 0) -> Iterator[Reading]:
    """Three walls 30 by 8: their area, all together; each wall is 30 by 8, three walls, which end at `stop`."""
    sizes = [r for r in listing.chart[at] if isinstance(r.value, Dims) and len(r.value.parts) == 2 and r.sure >= SAID]
    if name not in _FACES | _ALL_SIDES | PLACES or not sizes:
        return
    size = max(sizes, key=lambda r: r.end)
    assert isinstance(size.value, Dims)
    taken = _TAKEN & set(listing.words[size.end : size.end + 3]) and not _each(listing, size.end)  # 12 by 8 each, total
    if taken or (name in _ALL_SIDES and not _as_a_wall(listing, at, size.value)):
        return
    more = listing.past(size.end, _ROW, 2)
    others = (r for r in (listing.chart[more] if more < len(listing.chart) else ()) if isinstance(r.value, Dims))
    if more > size.end and any(_NO_FACES.isdisjoint(listing.words[r.end : r.end + 2]) for r in others):
        return  # three walls: 20x9, 14x9 and 20x8
    sides = [part.value if isinstance(part.value, Length) else Length(part.value.value, "ft") for part in size.value.parts]  # type: ignore[union-attr]
    unit = "m" if sides[0].metric else "ft"
    area = count * sides[0].to(unit).value * sides[1].to(unit).value
    total = _said(Area(area, f"{unit}2"), f"{count} × {listing.said(size.start, size.end)}")
    yield Reading("areas", min(i, at), stop or _each(listing, size.end) or size.end, (total,))


def _as_a_wall(listing: Listing, at: int, size: Dims) -> bool:
    """Whether it is the size of a wall: both ends are 22 by 9; not of a window, nor of the plan of a | shed 14 by 20."""
    if listing.words[at - 1] not in _JOINTS:
        return False
    values = [part.value for part in size.parts]
    feet = [value.to("ft").value if isinstance(value, Length) else value.value for value in values]  # type: ignore[union-attr]
    return _LOWEST <= min(feet) <= _HIGHEST


def _before(listing: Listing, i: int, end: int, count: int) -> Iterator[Reading]:
    """The size before the things: 64 feet per side, two sides; 16 ft each for nine windows."""
    for at in range(i - 1, max(i - _WITHIN, -1), -1):
        sizes = [(size, each) for size in _sizes(listing, at) if (each := _each(listing, size.end)) and each <= i]
        for size, _ in sizes:
            yield _times(listing, at, end, size, count, SURE)
        if "each" in listing.words[max(0, at - _PAIRED) : at] and listing.number_at(at):
            yield from _faces(listing, i, at, count, listing.words[end - 1], end)
        if sizes:
            return


def _each(listing: Listing, at: int) -> int:
    """Where "each" or "a side" after a size ends; 0 where nothing like it is said."""
    at += listing.words[at] in ("long", "high", "tall")
    if listing.words[at] in _EACH and listing.words[at + 1] not in ("way", "end"):
        return at + 1
    if listing.words[at] == "of":  # 13 foot | of casing each, 11 ft | of corner board apiece
        named = next((k for k in (at + 2, at + 3) if listing.words[k] in _EACH), 0)
        return named + 1 if named and listing.words[at + 1].isalpha() else 0
    past = listing.past(at, _PER, 2)
    word = listing.words[past]
    if past > at and listing.words[past - 1] == "each":
        return past  # 15 ft round each
    return past + 1 if past > at and (f"{word}s" in NOUNS or SINGLE.get(word) or word == "each") else 0


def _sizes(listing: Listing, at: int) -> list[Reading]:
    """Lengths and areas said with their unit at a place, none of them a part of sizes said together."""
    row = listing.chart[at] if at < len(listing.chart) else []
    if any(r.kind == "dims" for r in row) or listing.words[at - 1] in ("by", "×"):
        return []
    found = [r for r in row if r.kind in ("length", "area") and isinstance(r.value, Length | Area)]
    found = [r for r in found if r.sure >= SAID or (r.sure >= DOUBTED_UNIT and _each(listing, r.end))]  # 38 in a side
    return sorted(found, key=lambda r: -r.end)[:1]


def _times(listing: Listing, start: int, end: int, size: Reading, count: int, sure: float) -> Reading:
    value = size.value
    assert isinstance(value, Length | Area)
    one = listing.said(size.start, size.end)
    total = _said(type(value)(value.value * count, value.unit), f"{count} × {one}") if count > 1 else value.said(one)
    kind = "areas" if isinstance(value, Area) else "runs"
    others = () if sure == SURE else (value.said(listing.said(size.start, size.end)),)
    return Reading(kind, start, end, (total, *others), sure)


def _said(value: Length | Area, how: str) -> Length | Area:
    number = f"{float(value.value):g}"
    return value.said(f"{how} = {number} {value.unit.replace('ft2', 'sq ft')}")


def _summed(listing: Listing) -> Iterator[Reading]:
    """Areas with "together", "plus" or "and another": all of them, or two with "less" between."""
    areas = _apart([r for at, row in enumerate(listing.chart) if row for r in _areas(listing, at)])
    if len(areas) == 1:
        areas = _in_a_row(listing, areas[0])
    if len(areas) < 2 or any(a.value.unit != areas[0].value.unit for a in areas):  # type: ignore[union-attr]
        return
    words = set(listing.words)
    between = [w for a, b in pairwise(areas) for w in listing.words[a.end : b.start]]
    numbers = any(listing.number_at(k) for a, b in pairwise(areas) for k in range(a.end, b.start)
                  if listing.words[k] not in ("a", "an", "one", "another"))  # fmt: skip
    of_each = _of_each(listing, areas) if _alone(listing, areas) else None
    end = areas[-1].end
    near = set(between) | set(listing.words[end : end + 3])
    near -= {"at"} if not {"percent", "%"}.isdisjoint(listing.words[end + 1 : end + 5]) else set()  # squares at 10 percent
    if numbers or near & _NOT_COVERED or not (words & _TOGETHER or of_each is not None):
        return
    total = sum((a.value.value for a in areas), Fraction(0))  # type: ignore[union-attr]
    how = " + ".join(listing.said(a.start, a.end) for a in areas)
    start = areas[0].start if of_each is None else of_each
    yield Reading("areas", start, areas[-1].end, (_said(Area(total, areas[0].value.unit), how),))  # type: ignore[union-attr]


def _apart(areas: list[Reading]) -> list[Reading]:
    """The areas that are no piece of another: seventeen hundred square feet is no hundred besides."""
    kept: list[Reading] = []
    for area in areas:
        if not kept or area.start >= kept[-1].end:
            kept.append(area)
    return kept


def _in_a_row(listing: Listing, last: Reading) -> list[Reading]:
    """The areas of which only the last has its unit said: 212, 318 and 190 sq ft."""
    assert isinstance(last.value, Area)
    row = [last]
    while listing.words[(at := row[0].start) - 1] in _ROW and at > 1:
        while at and listing.words[at - 1] in _ROW:
            at -= 1
        spoken = (r for k in range(max(0, at - _SPOKEN), at) for r in listing.chart[k] if r.end == at and r.sure >= SAID)
        before = next((r for r in spoken if isinstance(r.value, Number) and "," not in listing.words[r.start : at]), None)
        if before is None:
            break
        row.insert(0, replace(before, kind="area", value=Area(before.value.value, last.value.unit)))  # type: ignore[union-attr]
    sizes = [area.value.value for area in row]  # type: ignore[union-attr]
    return row if min(sizes) * _MOST_UNLIKE > max(sizes) > 0 else [last]


def _alone(listing: Listing, areas: list[Reading]) -> bool:
    """Whether nothing but a comma or an "and" stands between areas, and nothing after them says what they are of."""
    between = {word for a, b in pairwise(areas) for word in listing.words[a.end : b.start]}
    return between <= _ROW and listing.words[areas[-1].end] not in ("of", "is", "are", "for", "in")


def _of_each(listing: Listing, areas: list[Reading]) -> int | None:
    """Where so many faces begin whose areas these are: 3 walls, 212 and 190 sq ft; where the areas do with no count said."""
    faces = next((at for at in range(areas[0].start) if listing.words[at] in _WHOLE_FACES), None)
    if faces is None:
        return None
    counts = [(count, at) for at in range(faces + 1) for end, count in _things(listing, at) if end == faces + 1]
    if not counts:
        return areas[0].start
    joined = set(listing.words[faces + 1 : areas[0].start]) <= _JOINTS
    return counts[0][1] if counts[0][0] == len(areas) and joined else None


def _areas(listing: Listing, at: int) -> Iterator[Reading]:
    found = [r for r in listing.chart[at] if r.kind == "area" and isinstance(r.value, Area) and r.sure >= 0.6]
    if found and listing.words[at] not in _UNIT_AREAS and listing.words[at - 1] not in _UNIT_AREAS:
        yield max(found, key=lambda r: r.end)
