"""Layers that are named and whose thickness is not said: "over strapping", "and the sheathing", "1x4 strapping".

A sum of layers that leaves one of them out is a wrong number, so such a layer goes into the list without a thickness,
and the topic asks for it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction

from intents.listed import Amount, Item, Listing

# Words for one layer, by what it is: one that was told in other words is not asked for again.
_KINDS = {
    word: kind
    for kind, words in {
        "sheathing": "sheathing sheeting plywood ply osb",
        "strapping": "strapping straping straps strap batten battens furring lath laths",
        "foam": "foam insulation polyiso styrofoam rockwool eps xps",
        "drywall": "drywall plasterboard gypsum",
        "cladding": "siding cladding clapboard clapboards shiplap weatherboard weatherboards",
    }.items()
    for word in words.split()
}
_JOINS = frozenset("then over on and plus onto & + behind under with".split())
_FIRST = frozenset("with for through : , got have had is".split())  # before a list of layers
_FASTENERS = frozenset("nail nails screw screws staple staples".split())  # the siding nail
_SMALL = frozenset("the a my our some".split())
_AFTER = frozenset(
    ("", *"how what whats with into build total going in to so then screw nail fastener behind beneath ? . ! ;".split())
)
_IS = frozenset("at is are being so ( actual actually really net".split())  # how thick it is follows
_ON_TOP = _IS | frozenset(("on", "top", "which", "that", "thats", ",", "it"))
_NAMED_BY = frozenset("of is are being".split())
_FLAT = frozenset(("laid", "flat", "flatwise"))  # 2x4s | laid flat
_SORTS = frozenset(
    "bevel lap t g & tongue groove rough sawn pine cedar fir spruce larch pvc treated clear primed channel".split()
)
_SPACED = frozenset("centres centers centre center oc apart feet foot ft".split())
ACTUAL = {
    Fraction(1): Fraction(3, 4),
    Fraction(5, 4): Fraction(1),
    Fraction(2): Fraction(3, 2),
}  # in; how thick lumber is, by what it is called
_WIDTHS = (2, 3, 4, 5, 6, 8, 10, 12)  # in; by which it is called
_BARE_ENDS = frozenset(("", ",", ".", "?", ";", "and", "plus", "over", "on", "with", "then"))  # after a 1x4 of no name
_SAID_WIDTHS = {"two": 2, "three": 3, "four": 4, "six": 6, "eight": 8} | {str(wide): wide for wide in _WIDTHS}
_WHICH = frozenset("which that thats is at being".split())
_THICK = frozenset(("", ",", ".", ";", "?", "and", "thick", "over", "on", "plus"))
_TIMES = frozenset(("×", "by"))
_SEVERAL_SIZES = frozenset("twos threes fours sixes eights".split())
_LAID = frozenset("laid flat on the for as edge".split())
_INCH = frozenset(("in", "inch", "mm", '"'))
_NUMBERED = frozenset("number no wall screws nails size by".split())
LEAST_FALLEN = 3  # two, one: counts as often as thicknesses
MOST_NOMINAL = 8  # in; a whole number of inches said with another is a name: 1x4, 2 by 2
MOST_SHEET = 30  # mm; battens are told wider
LEAST_ACTUAL = 10  # what is said of a nominal size is how thick it is while it is less


def kind_of(word: str) -> str:
    """What a layer of this name is: plywood is sheathing, battens are strapping; else the name itself."""
    return _KINDS.get(word, word.removesuffix("s"))


def with_untold(listing: Listing, chain: list[Item]) -> list[Item]:
    """The layers of a list, and those named right before or after it without a thickness."""
    before, after = _before(listing, chain), _after(listing, chain)
    return [*([before] if before else ()), *chain, *([after] if after else ())]


def _after(listing: Listing, chain: Iterable[Item]) -> Item | None:
    *_, last = chain
    at = last.end + (listing.words[last.end] == ",")
    if listing.words[at] not in _JOINS:
        return None
    joint = listing.words[at]
    start = listing.past(at + 1, _SMALL, 1)
    end = _named(listing, start)
    # The siding stands over what it is nailed to: "over the siding" is a place.
    kind = _KINDS.get(listing.words[end - 1], "")
    if end == start or _told(kind, chain) or (kind == "cladding" and joint not in ("and", "plus", "&", "+")):
        return None
    ends = listing.words[end] in _AFTER or (listing.words[end] == "," and not _sized(listing, end + 1))
    return Item(last.end, end, (), what=" ".join(listing.words[start:end])) if ends else None


def _before(listing: Listing, chain: list[Item]) -> Item | None:
    at = chain[0].start - 1
    while at > 0 and listing.words[at] in _SMALL:
        at -= 1
    if at < 1 or listing.words[at] not in _JOINS:
        return None
    start = at - 1
    while start > 0 and at - start < 2 and listing.words[start - 1].isalpha() and listing.words[start - 1] in _KINDS:
        start -= 1
    kind = _KINDS.get(listing.words[at - 1], "")
    led = start - 1 if listing.words[start - 1] not in _SMALL else start - 2
    if not kind or led < 0 or listing.words[led] not in _FIRST or _told(kind, chain):
        return None
    return Item(start, chain[0].start, (), what=" ".join(listing.words[start:at]))


def _told(kind: str, chain: Iterable[Item]) -> bool:
    return any(_KINDS.get(word) == kind for item in chain for word in item.what.split())


def _named(listing: Listing, start: int) -> int:
    """The end of the name of a layer of one of the kinds, of one or two words, or `start`."""
    for end in (start + 1, start + 2):
        if listing.words[end - 1] in _KINDS and listing.words[end] not in _KINDS and listing.words[end] not in _FASTENERS:
            return end
    return start


def _sized(listing: Listing, start: int) -> bool:
    """Whether a thickness is told right after a name and a comma: "strapping, which is 3/4", "sheathing, 1/2 inch, and"."""
    if listing.words[start] in _WHICH:
        return any(listing.number_at(at) for at in range(start, start + 4))
    return any(listing.words[amount.end] in _THICK for amount in listing.amounts(start))


def nominal(listing: Listing, i: int, names: frozenset[str]) -> Item | None:
    """1x4 strapping, 2 by 2 furring, 1x strapping: a name, and no thickness; 19x64 mm battens and 3/4x3 straps tell theirs."""
    led = listing.words[i] in names  # furring of | 1x4, the trim is | 1x6
    start, i = (i, i + 1 + (listing.words[i + 1] in _NAMED_BY)) if led else (i, i)
    first = next(iter(listing.amounts(i)), None)
    if first is None or listing.words[first.end] not in _TIMES:
        return None
    second = _apart(listing, first) or next(iter(listing.amounts(first.end + 1)), None)
    several = listing.words[first.end + 1] in _SEVERAL_SIZES  # two by fours
    one_by = first.value == 1 and listing.words[first.end + 1] in _KINDS  # 1-by furring
    if second is None and listing.words[first.end] == "by" and not several and not one_by:
        return None
    end = second.end if second else first.end + 1 + several
    end = listing.past(end, _LAID, 3) if several else end
    if second and listing.words[end] in _SORTS and listing.words[past := listing.past(end, _SORTS, 3)] in names:
        end = past  # 1x8 rough cedar | boards
    name = end + (listing.words[end] in names)
    if led and name > end:
        return None
    what = listing.words[end] if name > end else listing.words[start] if led else ""
    if not what and second and listing.words[end] in _FLAT:
        what, name = "layer", listing.past(end, _FLAT, 3)
    if told := _told_thick(listing, name):
        named = told.end + (name == end and listing.words[told.end] in names)  # 1x3 so 3/4 | strap
        return Item(start, named, (told,), what=listing.words[named - 1] if named > told.end else what or "layer")
    if not what and second and _stands_bare(listing, start, end, first, second):
        return replace(_by_name(listing, Item(start, end, (), what="layer"), first, second) or Item(start, end, ()), led=False)
    if not what or (second is None and what not in _KINDS and not one_by):
        return None
    return _by_name(listing, Item(start, name, (), what=what), first, second)


def _apart(listing: Listing, first: Amount) -> Amount | None:
    """The width of lumber that another layer is told after: a 1x4 | and 1/2 inch ply; no lumber is called a 1x4 1/2."""
    at = first.end + 1
    wide = _SAID_WIDTHS.get(listing.words[at])
    if wide is None or first.value != 1 or listing.words[at + 1] not in ("and", "&"):
        return None
    return Amount(at + 1, Fraction(wide), "", "", listing.words[at])


def _stands_bare(listing: Listing, start: int, end: int, first: Amount, second: Amount) -> bool:
    """Whether lumber is called by its size and nothing else, and is not what something goes into: foam and a 1x4."""
    before = start - 1 - (listing.words[start - 1] in _SMALL)
    into = start > 0 and listing.words[before] in ("in", "into", "onto", "to")
    return first.value == 1 and second.value in _WIDTHS and listing.words[end] in _BARE_ENDS and not into


def _by_name(listing: Listing, item: Item, first: Amount, second: Amount | None) -> Item | None:
    """The thickness of a layer said by both its sizes, or by what lumber is called: a 1x4 is 3/4 thick, which is assumed.

    2 x 12 mm ply is two of them.
    """
    if second and not first.unit and first.value in (2, 3) and second.unit == "mm" and second.value <= MOST_SHEET:
        return replace(item, sizes=(second,), count=int(first.value))
    if (second and second.unit in ("mm", "cm")) or first.unit in ("mm", "cm"):
        unit = first.unit or (second.unit if second else "")
        return replace(item, sizes=(replace(first, unit=unit, carries=unit),))
    whole = first.value.denominator == 1 and first.unit in ("", "in")
    if whole and second and listing.metric == "mm" and first.value > MOST_NOMINAL:  # 38 × 50 battens, laid flat; not 50 × 38
        return item if first.value > second.value else replace(item, sizes=(replace(first, unit="mm", carries="mm"),))
    if (whole and first.value <= MOST_NOMINAL) or first.value == Fraction(5, 4):
        actual = ACTUAL.get(first.value) if second is None or second.value in _WIDTHS else None
        if actual is None or listing.metric:
            return item
        called = f"{first.value}x{second.value if second else ''}"
        return replace(item, sizes=(Amount(first.end, actual, "in", ""),), assumed=called)
    return replace(item, sizes=(first,)) if first.value < 1 or (second and second.value > first.value and not whole) else None


def _told_thick(listing: Listing, at: int) -> Amount | None:
    """How thick the lumber is that was called by its size: 1x4 straps | at 3/4; 1x3, so 3/4 | strap; 1x4 (three quarters)."""
    start = listing.past(at, _ON_TOP, 4)
    told = next(iter(listing.amounts(start)), None) if not _IS.isdisjoint(listing.words[at:start]) else None
    if told is None or told.value >= LEAST_ACTUAL or told.unit == "ft" or listing.words[told.end] in _SPACED:
        return None
    return told


def let_fall(words: Sequence[str], taken: Sequence[tuple[int, int]]) -> list[str]:
    """Bare numbers among those that found a place, and that did not: batten 20, rigid barrier | 7, and 40 into the stud.

    Only where a name stands before and a comma after: the number of a screw, or of a wall, is said otherwise.
    """
    first, last = min((start for start, _ in taken), default=0), max((end for _, end in taken), default=0)
    return [
        words[at] for at in range(first + 1, last - 1)
        if words[at].isdecimal() and int(words[at]) >= LEAST_FALLEN and words[at - 1].isalpha() and words[at + 1] == ","
        and words[at - 1] not in _NUMBERED and not any(start <= at < end for start, end in taken)
    ]  # fmt: skip


def studs_among(words: Sequence[str], start: int, end: int) -> list[str]:
    """The depth of the studs, taken for a layer that is built out from them: 5 1/2 in studs, 1/2 ply."""
    found = []
    for at in range(start + 2, min(end + 1, len(words))):
        if words[at] == "studs" and words[at - 1] in _INCH and words[at - 2].isdecimal():
            first = at - 2
            while first > start and (words[first - 1].isdecimal() or words[first - 1] == "/"):
                first -= 1
            found.append(" ".join(words[first:at]).replace(" / ", "/"))
    return found
