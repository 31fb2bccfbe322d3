"""One amount told in its parts, by where each is: "front 14 ft, back 22 ft", "45 foot on the north and 70 on the south", or by
how many there are of each: "two walls at 16 foot, two at 24".

They are added up as several of one size are (`listed_totals.py`). Parts that nothing names ("61 and 49 feet to run") are of
kind `rows`, which no rule takes: `parts_together.py` uses them where the question is whole with them and not without.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from intents.listed import Listing
from intents.listed_totals import AMOUNTS, BOTH, NOUNS, PLACES
from intents.reading import SIZED, Reading
from solvers.quantities import Area, Length, Quantity

_SLOPED = frozenset("sloped sloping slopes slants slanted".split())  # a wall so high at one end and so high at the other
_TWO = frozenset(("sides", "ends"))
_NOUNS = frozenset("side sides wall walls eave eaves elevation end face run soffit overhang one part corner bit stretch".split())
_IS = frozenset(("is", "are", "at", ":", "has", "runs", "of", "being", "comes", "to", "for", "just", "about", "-", "and", "by"))
_ON = frozenset(("on", "at", "along", "up", "for", "down", "across", "to", "in", "round", "around", "of", "off", "over"))
_THE = frozenset(("the", "a", "my", "our", "his", "her", "its", "their"))
_BETWEEN = frozenset((",", "and", "&", "plus", "+", "then", "also", ";", "."))
_ALL, _JOIN = frozenset(("together", "total", "altogether", "combined", "all")), frozenset(("and", "&", "plus", "+"))
_SIZES = frozenset(  # after a length it is of something else than how far a thing runs
    "deep high tall wide thick apart cover coverage covers exposure exposed reveal showing centres centers centre center oc o"
    " stock sticks stick footers footer lengths boards board panels panel rolls roll by × x each apiece ea per a an spacing wide"
    " / - % percent tubes planks pieces off out less minus lap laps window windows door doors opening openings glass".split()
)
_NOT_BEFORE = frozenset("by × less minus every showing shows cover covers deep exposure in from out of at @ lap".split())
_SAID, _MOST, _UNLIKE, _SPOKEN = 0.6, 12, 12, 6
_LEAST_BARE, _MOST_BARE = 8, 300  # ft
_LEAST = 2  # ft: of a run or the part of one
SURE = 1.0


@dataclass(slots=True)
class _Part:
    start: int
    end: int
    size: Reading
    count: int = 1

    @property
    def bare(self) -> bool:
        return self.size.kind == "number"


_BEGINS = PLACES | _THE | _TWO | BOTH.keys()  # what a part may begin with besides a number
TOPICS = AMOUNTS - {"strapping"}  # in which an amount may be told in its parts


def parts(listing: Listing) -> Iterator[Reading]:
    """Readings of kind `runs`, `areas` and `rows`: what the parts come to, from the first to the last."""
    sized = [at for at, row in enumerate(listing.chart) if row and any(r.kind in ("length", "area") for r in row)]
    if not sized or sum(map(bool, listing.chart)) < 2:
        return
    words = set(listing.words)
    if not PLACES.isdisjoint(words) and _SLOPED.isdisjoint(words):  # "the other" is one of them
        yield from _chains(listing, _placed, "")
    if not NOUNS.isdisjoint(words):
        yield from _chains(listing, _counted, "")
    if len(sized) <= _SPOKEN and not _JOIN.isdisjoint(words):
        yield from _chains(listing, _plain, "rows")


def _chains(listing: Listing, item: object, kind: str) -> Iterator[Reading]:
    """The longest chains of two parts or more, each part read by `item`."""
    at = 0
    while at < len(listing.tokens):
        if not listing.chart[at] and listing.words[at] not in _BEGINS:
            at += 1
            continue
        chain = _chain(listing, at, item)
        found = _sum(listing, chain, kind) if len(chain) > 1 else None
        if found is not None:
            yield found
        at = found.end if found is not None else at + 1


def _chain(listing: Listing, at: int, item: object) -> list[_Part]:
    chain: list[_Part] = []
    while len(chain) < _MOST:
        part = item(listing, at, chain)  # type: ignore[operator]
        if part is None:
            break
        chain.append(part)
        at = listing.past(part.end, _BETWEEN, 2)
    return chain


def _placed(listing: Listing, at: int, before: list[_Part]) -> _Part | None:
    """A size and where it is, either first: 45 foot on the north side; the north side is 45 foot."""
    words = listing.words
    for size in _sizes(listing, at, True):
        end = size.end + (words[size.end] in ("long", "feet", "foot"))
        on = listing.past(listing.past(end, _ON, 2), _THE, 1)
        one = words[on] == "one" and words[on + 1] in ("side", "end")
        if one or (words[on] in PLACES and words[on + 1] not in _SIZES):
            return _Part(at, _past_noun(listing, on + 1), size)
    name = listing.past(at, _THE, 1)
    if words[name] not in PLACES and not (before and words[name] in _TWO):
        return None
    noun = _past_noun(listing, name + 1)
    told = listing.past(noun, _IS, 2)
    for size in _sizes(listing, told, True, each=words[name] in _TWO):
        end = size.end + (words[size.end] == "long")
        both = words[name] in _TWO and words[end] in ("each", "apiece")  # front 32, sides 24 each
        if words[name] in _TWO and not both:
            return None
        return _Part(at, end + both, size, 1 + both)
    return None


def _past_noun(listing: Listing, at: int) -> int:
    return listing.past(at, _NOUNS, 2)


def _counted(listing: Listing, at: int, before: list[_Part]) -> _Part | None:
    """How many of a thing, and the size of each: two walls at 16 foot, two at 24."""
    words = listing.words
    counts = [*listing.counts(at), *([(at + 1, BOTH[words[at]])] if words[at] in BOTH else [])]
    for end, count in counts:
        noun = next((k + 1 for k in range(end, end + 3) if words[k] in NOUNS), end)
        if not 0 < count <= _MOST or (noun == end and not before) or any(listing.number_at(k) for k in range(end, noun)):
            continue
        told = listing.past(noun, frozenset(("at", "of", "@", "each", "are", "is", ":", "that")), 2)
        if told == noun:
            continue
        for size in _sizes(listing, told, bool(before), each=True):
            return _Part(at, listing.past(size.end, frozenset(("each", "long", "apiece")), 2), size, count)
    return None


def _plain(listing: Listing, at: int, before: list[_Part]) -> _Part | None:
    """A size that nothing names, in a row of such."""
    if not before and (at == 0 or listing.words[at - 1] in _NOT_BEFORE):
        return None
    sizes = list(_sizes(listing, at, True))
    return _Part(at, sizes[0].end, sizes[0]) if sizes else None


def _sizes(listing: Listing, at: int, bare: bool, each: bool = False) -> Iterator[Reading]:
    """The longest length or area at a place that is of nothing else; a number alone where `bare`."""
    row = listing.chart[at] if at < len(listing.chart) else []
    if any(r.kind in ("dims", "money", "percent", "weight", "volume") for r in row):
        return
    said = [r for r in row if r.kind in ("length", "area") and isinstance(r.value, Length | Area) and r.sure >= _SAID]
    numbers = [r for r in row if bare and r.kind == "number" and r.sure >= _SAID and isinstance(r.value, Quantity)]
    found = max(said or numbers, key=lambda r: (r.end, r.sure), default=None)
    after = listing.words[found.end] if found is not None else ""
    if found is None or listing.words[at - 1] in ("by", "×"):
        return
    if after not in _SIZES or (each and after in ("each", "apiece")):
        yield found


def _sum(listing: Listing, chain: list[_Part], kind: str) -> Reading | None:
    """What the parts come to; None where they are of two kinds, or too unlike to be parts of one thing."""
    told = [part.size for part in chain if not part.bare]
    if not told and not _bare_feet(listing, chain):
        return None
    if any(type(size.value) is not type(told[0].value) for size in told):
        return None
    if any(_cut(listing, part.size) for part in chain) or (kind == "rows" and not _in_a_row(listing, chain)):
        return None
    area = bool(told) and isinstance(told[0].value, Area)
    unit = told[0].value.unit if told else "ft"  # type: ignore[union-attr]
    page = unit if area or unit not in ("in",) else "ft"
    values: list[Fraction] = []
    for part in chain:
        value = part.size.value
        assert isinstance(value, Quantity)
        if part.bare:
            value = Area(value.value, unit) if area else Length(value.value, "ft" if unit == "in" else unit)
        if area and value.unit != unit:
            return None
        values.append(value.value if area else value.to(page).value)  # type: ignore[attr-defined]
    least = _LEAST * Fraction(3048, 10_000) if page == "m" else Fraction(_LEAST)
    if min(values) <= 0 or max(values) >= _UNLIKE * min(values) or (not area and page in ("ft", "m") and min(values) < least):
        return None
    total = sum((value * part.count for value, part in zip(values, chain, strict=True)), Fraction(0))
    how = " + ".join((f"{p.count} × " if p.count > 1 else "") + listing.said(p.size.start, p.size.end) for p in chain)
    square = page.replace("ft2", "sq ft").replace("m2", "m²")
    value = (Area if area else Length)(total, page).said(f"{how} = {float(total):g} {square}")
    start = chain[0].start
    if kind == "rows" and (counted := _so_many(listing, start, len(chain))) >= 0:
        kind, start = "runs", counted
    return Reading(kind or ("areas" if area else "runs"), start, chain[-1].end, (value,), SURE)


def _so_many(listing: Listing, start: int, many: int) -> int:
    """Where so many runs begin whose lengths come after: three sides, 20, 30 and 20 foot; -1 where they were not counted."""
    for at in range(max(0, start - _SPOKEN), start):
        for end, count in listing.counts(at):
            named = next((k for k in range(end, min(end + 2, start)) if listing.words[k] in NOUNS), -1)
            if count == many and named >= 0 and set(listing.words[named + 1 : start]) <= _IS | {",", "long"}:
                return at
    return -1


def _bare_feet(listing: Listing, chain: list[_Part]) -> bool:
    """Whether parts with no unit said can only be feet: front eave 40, back eave 40."""
    sizes = [part.size.value.value for part in chain]  # type: ignore[union-attr]
    return not listing.metric and min(sizes) >= _LEAST_BARE and max(sizes) <= _MOST_BARE


def _cut(listing: Listing, size: Reading) -> bool:
    """Whether a size is a piece of a longer one: one thousand and | twelve square feet, 6 and | a half feet."""
    rows = listing.chart[max(0, size.start - _SPOKEN) : size.start + 1]
    longer = (r for row in rows for r in row if isinstance(r.value, SIZED) and r.sure >= _SAID)
    return any(r.end > size.start and (r.end > size.end or r.start < size.start) for r in longer)


def _in_a_row(listing: Listing, chain: list[_Part]) -> bool:
    """Whether lengths stand one after the other with "and" before the last, as 62, 49 and 44 feet do."""
    last = listing.words[chain[-2].end : chain[-1].start]
    return chain[-1].size.kind == "length" and bool(_JOIN & set(last))
