"""Openings of a wall: "two windows 3 by 4 and a 3-0 by 6-8 door", "a six foot by four foot window", "no openings"."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.listed import METRIC, PAIRS, STOCK, Amount, Item, Listing, Pair, beginnings, chains
from intents.listed_totals import THEM
from intents.reading import Dims, Reading
from solvers.quantities import Length, Quantity
from solvers.slots import Opening

NAMES = {
    "wdw": "window", "wdws": "window", "dor": "door",
    "window": "window", "win": "window", "wins": "window", "windows": "window", "door": "door", "doors": "door",
    "opening": "opening", "openings": "opening",
    "hole": "opening", "holes": "opening", "vent": "vent", "vents": "vent", "slider": "door", "sliders": "door",
    "doorway": "door", "doorways": "door", "hatch": "opening", "louvre": "vent", "louver": "vent", "louvers": "vent",
    "porthole": "opening", "portholes": "opening",
}  # fmt: skip
_KINDS = frozenset(
    "little wee garage patio front back entry man big small sliding french double single overhead picture bathroom bay"
    " swing of the".split()
)
# A word before "door" or "window" that nobody here has heard of says which kind; these are things of their own, or no name.
_NO_KIND = frozenset(
    "wall walls and with a an no by in on at for from per to or over is are has have gable board boards roof siding trim plus"
    " less minus stock stick sticks coil joint lap tall high wide long each two three four five six both exposure".split()
)
_BETWEEN = frozenset(
    (
        "at",
        "of",
        ":",
        "is",
        "are",
        "each",
        "measuring",
        "that",
        "that's",
        "@",
        "(",
        "about",
        ",",
        "being",
        "in",
        "her",
        "it",
        "which",
        "both",
        "all",
        "there",
    )
)
_LEADS = frozenset(("minus", "less", "without", "except", "subtract", "deduct"))
_ONE_MORE = frozenset(("oh", "there", "is", "are", "and", "also"))  # oh and there's also a window 3 by 4
_TAILS = frozenset(("each", ")", "in", "it", "size", "opening", "openings"))
_OUT = frozenset("out off less minus take taking taken deduct subtract without".split())  # what is taken out of a wall is open
_SOLD = frozenset(("stock", "sticks", "pieces"))
_AFTER_UNNAMED = _OUT | {"", "s", ",", ".", "and", "&", "gone", "?"}
_MARKS = frozenset((":", "-"))
_NOUGHT = frozenset(("oh", "o", "nought"))
_NO_HOLES = frozenset("joint lap laps wall walls gable gables roof side shed house building garage deck porch".split())
_OF_AREA = frozenset("feet foot ft inch inches metre metres meter meters m yard yards on cut and by of".split())
_OFTEN = {"twice": 2, "once": 1}
_ASIDE, _MOST = frozenset((",", "-", "(")), 60
_COUNTED = frozenset((",", "each", "of", "measuring", "all"))
_AT = frozenset(("at", "of", "@"))
_THERE = frozenset(("it", "there", "that", "the", "this"))
# An opening, besides numbers.
_BEGINS = frozenset((*NAMES, *_KINDS, *_LEADS, "oh", "there", "a", "an", "one", "another", "(", *PAIRS))
_NONE = ("no", "without", "zero")
_WIDE, _HIGH = frozenset(("wide", "across", "width")), frozenset(("high", "tall", "height", "deep"))
_SIDES = _WIDE | _HIGH
_AND = frozenset(("by", "and", "×", ","))
_METRES_UNDER = Fraction(5, 2)  # feet, which few openings are both ways
_MM_FROM, _INCHES_FROM, _DOUBT_FROM = 300, 21, 12  # no opening is 21 ft wide and none 300 in
_METRES_TO = 6  # no opening is six millimetres, or six metres, wide
_VENT_FEET, _LONG_VENT = 3, 5  # a vent 2 by 2 is of feet, and so is one 3 by 4; one 4 by 4 or 12 by 18 is of inches
_USUAL_DOOR, _NARROWEST = Fraction(36), 18  # inches


def openings(listing: Listing) -> Iterator[Reading]:
    """The lists of openings, with shorter beginnings of each, and "no openings"."""
    for i in range(len(listing.tokens)):
        if listing.words[i] in _NONE and listing.words[i + 1] in NAMES:
            end = i + 2 + 2 * (listing.words[i + 2] in ("or", "and", "nor") and listing.words[i + 3] in NAMES)
            yield Reading("openings", i, end, ())
    if NAMES.keys().isdisjoint(listing.words) and not _unnamed(listing):
        return
    for chain in chains(listing, lambda i: _item(listing, i), lambda before, item, separated: separated or item.led):
        if not chain[0].what:
            continue
        for part in beginnings(chain):
            if not _takes_the_wall(listing, part):
                yield _reading(listing, part)


def _takes_the_wall(listing: Listing, part: list[Item]) -> bool:
    """Whether the last size is that of the wall itself, no other being said: a door 3 by 5 ft, 49 by 12."""
    last = part[-1]
    if last.what or last.led or len(part) < 2:
        return False
    places = (k for k in range(len(listing.tokens)) if not part[0].start <= k < last.end)
    return not any(listing.number_at(k) for k in places)


def _item(listing: Listing, i: int) -> Item | None:
    if not listing.chart[i] and listing.words[i] not in _BEGINS:
        return None
    start = i
    i = listing.past(i, _ONE_MORE, 4) if listing.words[i] in ("oh", "there") else i
    i += listing.words[i] in _LEADS
    led = i > start or listing.words[i] in ("a", "an", "one", "another")
    at = i + (listing.words[i] in ("a", "an", "another"))
    whole = [(at, 1)] if _door_by(listing, at) else []
    for after, count in (*whole, *listing.counts(at), (at, 1)):
        end = after + 2 * (listing.words[after : after + 2] == ["no", "."] and after > at)  # 1 no. opening
        found = _named_first(listing, end, end > at) or _door_by(listing, end)
        found = found or _sized_first(listing, end) or _pair_door(listing, end)
        if found is None and (end > at or led):
            found = _bare_size(listing, start, at, end)
        if found is not None:
            found.start, found.count, found.led = start, max(count, found.count), led or end > at
            found.end = _past_place(listing, found.end)
            return _so_often(listing, found)
    return _sizes_only(listing, at) if at == start else None


def _so_often(listing: Listing, found: Item) -> Item:
    """With how many there are, said after the size: a 4 by 3 window twice; 3 by 5 windows, four of them."""
    if listing.words[found.end] in _OFTEN:
        found.count *= _OFTEN[listing.words[found.end]]
        found.end += 1
    elif found.count == 1:
        at = listing.past(found.end, _ASIDE, 1)
        counted = ((end, n) for end, n in listing.counts(at) if listing.words[end] == "of" and listing.words[end + 1] in THEM)
        found.end, found.count = next(((end + 2, n) for end, n in counted if 0 < n <= _MOST), (found.end, 1))
    return found


def _past_place(listing: Listing, end: int) -> int:
    """Past "in it", "on that wall" or "out of it", where the openings before it are; more of them may come after."""
    at = end - (listing.words[end - 1] == "in")
    if listing.words[at] == "out" and listing.words[at + 1] in ("of", "off") and listing.words[at + 2] in _THERE:
        return at + 3 + (listing.words[at + 3] == "wall" and listing.words[at + 2] not in ("it", "there"))
    if listing.words[at] not in ("in", "on") or listing.words[at + 1] not in _THERE:
        return end
    return at + 2 + (listing.words[at + 2] == "wall" and listing.words[at + 1] not in ("it", "there"))


def _named_first(listing: Listing, i: int, counted: bool = False) -> Item | None:
    """Windows 3 by 4; after so many, of whatever kind they are: four | sash windows 3 by 4."""
    at = listing.past(i, _KINDS)
    if counted and listing.words[at] not in NAMES and listing.words[at] not in _OF_AREA:
        at = _past_unheard_kind(listing, at)
    what = NAMES.get(listing.words[at])
    if what is None:
        return None
    told = listing.past(at + 1, _MARKS, 1)  # windows (2) 3 by 4; openings 4 at 3 by 4
    counts = [(end, n) for end, n in listing.counts(told) if listing.words[told] == "(" or listing.words[end] in ("@", "at")]
    if not counts and listing.words[at + 1] == ":":  # windows: five, each 30 by 54
        counts = [(end, n) for end, n in listing.counts(told) if listing.words[end] in _COUNTED]
    after, count = counts[0] if counts else (at + 1, 1)
    after += listing.words[after : after + 2] == ["out", "of"]  # two windows out of it, 3 by 5 each
    at = listing.past(after, _BETWEEN, 5)
    found = (_feet_each_way(listing, at, both=True) if what == "door" else None) or _sizes(listing, at)
    found = found or (_door_digits(listing, at) if what == "door" else None)
    if found:
        found = _with_inches(listing, *found)
    return Item(i, listing.past(found[0], _TAILS, 1), found[1], count, what=what) if found else None


def _sized_first(listing: Listing, i: int) -> Item | None:
    """3 by 4 window."""
    found = _sizes(listing, i)
    if found is None:
        return None
    if (door := listing.past(found[0] + 1, _KINDS)) and NAMES.get(listing.words[door]) == "door":  # six by six eight slider
        found = _and_inches(listing, *found)
    at = listing.past(found[0], _KINDS)
    if listing.words[at] not in NAMES:
        at = _past_unheard_kind(listing, at)
    what = NAMES.get(listing.words[at])
    return Item(i, at + 1, found[1], what=what) if what else None


def _bare_size(listing: Listing, start: int, at: int, end: int) -> Item | None:
    """A size with its count and no name, in a list of openings (and one 2 by 3) or taken out (two 4x5s out)."""
    if end > at and any(r.end > end and r.sure >= 0.6 for r in listing.chart[at]):
        return None  # thirty | six by ten
    end = listing.past(end, _AT, 1) if end > at else end
    found = _unnamed_size(listing, end) if _first_told(listing) < start else None
    return found or (_sizes_only(listing, end) if end > start else None)  # two 4 by 4s and | a 2 by 3


def _first_told(listing: Listing) -> int:
    """The first token that is a size or an opening."""
    if listing.first < 0:
        count = len(listing.words)
        listing.first = next((k for k in range(count) if listing.number_at(k) or listing.words[k] in NAMES), count)
    return listing.first


def _unnamed(listing: Listing) -> bool:
    """Whether sizes with no name are openings, being taken out of a wall: 30x10, two 4x5s out."""
    out = "net" in listing.words or not _OUT.isdisjoint(listing.words)
    return out and _SOLD.isdisjoint(listing.words)


def _unnamed_size(listing: Listing, i: int) -> Item | None:
    """4x5s, or a 3 by 7, that is taken out."""
    found = _sizes(listing, i) if _unnamed(listing) else None
    if found is None or listing.words[found[0]] not in _AFTER_UNNAMED:
        return None
    return Item(i, found[0] + (listing.words[found[0]] == "s"), found[1], what="opening", sure=0.9)


def _past_unheard_kind(listing: Listing, at: int) -> int:
    """Past one or two words for a kind of door or window: overhead, roll up, casement; the place given where they are none."""
    for end in (at + 1, at + 2):
        kind = listing.words[end - 1]
        if not kind.isalpha() or kind in _NO_KIND or listing.number_at(end - 1):
            return at
        if listing.words[end] in NAMES:
            return end
    return at


def _sizes_only(listing: Listing, i: int) -> Item | None:
    """A further size after a named one: windows 3 by 4 and 2 by 3. Told from boards and rolls by what follows."""
    found = _sizes(listing, i)
    if found is None or listing.words[found[0]] in STOCK or listing.words[found[0]] in _NO_HOLES:
        return None
    return Item(i, found[0], found[1], led=False)


def _sizes(listing: Listing, i: int) -> Pair | None:
    """Width and height from i: the surest and longest "A by B", or "A wide B high"."""
    if i >= len(listing.chart) or not listing.chart[i]:
        return None
    if i not in listing.pairs:
        listing.pairs[i] = _sizes_at(listing, i)
    return listing.pairs[i]


def _sizes_at(listing: Listing, i: int) -> Pair | None:
    row = listing.chart[i]
    pairs = [r for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2 and r.sure >= 0.4]
    whole = [r for r in pairs if listing.words[r.end] != "-" or not listing.number_at(r.end + 1)]
    pairs = whole or pairs  # a door 3 by 6 | -8
    if pairs:
        best = max(pairs, key=lambda r: (r.sure >= 0.75, r.end, r.sure))
        assert isinstance(best.value, Dims)
        return listing.past(best.end, _HIGH, 1), tuple(_amount(part) for part in best.value.parts)
    for first in listing.amounts(i):
        side = listing.words[first.end]
        if side == "square" and listing.words[first.end + 1] not in _OF_AREA and (first.unit or first.value < _INCHES_FROM):
            return first.end + 1, (first, first)  # two windows 4 foot square
        at = listing.past(first.end + 1, _AND, 1)
        if side not in _SIDES:
            continue
        for second in listing.amounts(at):
            if listing.words[second.end] in _SIDES and (listing.words[second.end] in _WIDE) != (side in _WIDE):
                return second.end + 1, (first, second) if side in _WIDE else (second, first)
    return None


def _amount(part: Reading) -> Amount:
    assert isinstance(part.value, Quantity)
    unit = part.value.unit if part.kind == "length" else ""
    return Amount(part.end, part.value.value, unit, unit)


def _with_inches(listing: Listing, end: int, sizes: tuple[Amount, ...]) -> Pair:
    """A door three by six eight is 6 ft 8 in high."""
    more = listing.words[end + 1] in ("", ".", ",", "!", "?", "and", "in", "please", "what", "how")
    return _and_inches(listing, end, sizes) if more else (end, sizes)


def _and_inches(listing: Listing, end: int, sizes: tuple[Amount, ...]) -> tuple[int, tuple[Amount, ...]]:
    """The size with the inches of a door's height that stand after it."""
    wide, high = sizes
    inches = next((n for at, n in listing.counts(end) if at == end + 1 and 0 <= n < 12), None)
    if inches is None or high.unit or wide.unit or high.value not in range(3, 9):
        return end, sizes
    return end + 1, (Amount(wide.end, wide.value, "ft", "ft"), Amount(end + 1, _feet(int(high.value), inches), "in", "ft"))


def _pair_door(listing: Listing, i: int) -> Item | None:
    """A 6 8 door is 6 ft 8 in high, as the trade says it; a 2 8 6 8 door has its width as well."""
    at, digits = _digits(listing, i, 4)
    if len(digits) not in (2, 4) or NAMES.get(listing.words[at]) != "door" or digits[-2] not in (6, 7, 8):
        return None
    high = Amount(at, _feet(*digits[-2:]), "in", "ft")
    wide = Amount(at, _feet(*digits[:2]) if len(digits) == 4 else _USUAL_DOOR, "in", "ft")
    assumed = "" if len(digits) == 4 else "the width of the door was not said, so 3 ft is taken"
    return Item(i, at + 1, (wide, high), what="door", sure=0.9, assumed=assumed)


def _door_digits(listing: Listing, at: int) -> Pair | None:
    """The size of doors that were named before it: 2 doors | 3-0 6-8."""
    end, digits = _digits(listing, at, 4)
    if len(digits) != 4 or digits[2] not in (6, 7, 8):
        return None
    return end, (Amount(end, _feet(*digits[:2]), "in", "ft"), Amount(end, _feet(*digits[2:]), "in", "ft"))


def _digits(listing: Listing, at: int, most: int) -> tuple[int, list[int]]:
    """Feet and inches said one after another: 2 8 6 8, three-oh six-eight; where they end."""
    digits: list[int] = []
    while len(digits) < most:
        single = [value for end, value in listing.counts(at) if end == at + 1 and 0 <= value < 12]
        if not single and not (digits and listing.words[at] in _NOUGHT):
            break
        digits.append(single[0] if single else 0)
        at += 1 + (listing.words[at + 1] == "-")
    return at, digits


def _door_by(listing: Listing, i: int) -> Item | None:
    """A door of feet and inches each way: a 2 8 by 6 8 door; a six eight by three foot door."""
    if "door" not in listing.words or listing.words[i - 1] in ("by", "×"):
        return None
    found = _feet_each_way(listing, i)
    if found is None:
        return None
    end, sizes = found
    at = listing.past(end + (listing.words[end] in ("foot", "ft", "feet")), _KINDS)
    return Item(i, at + 1, sizes, what="door") if listing.words[at] == "door" else None


def _feet_each_way(listing: Listing, i: int, both: bool = False) -> Pair | None:
    """Both sizes of a door in feet and inches with no word for either: 3 0 by 6 8; the narrower is the width.

    `both`: each must have its inches, as nothing else tells where they end: doors 3 x 7, 10 percent.
    """
    if i >= len(listing.chart) or not listing.chart[i]:
        return None
    end, first = _digits(listing, i, 2)
    if not first or listing.words[end] not in ("by", "×"):
        return None
    end, second = _digits(listing, end + 1, 2)
    feet = [side[0] for side in (first, second) if len(side) == 2]
    wide, high = sorted(_feet(*[*side, 0][:2]) for side in (first, second or [0]))
    if not {*feet} & {6, 7, 8} or wide < _NARROWEST or (both and len(feet) < len((first, second))):
        return None
    return end, (Amount(end, wide, "in", "ft"), Amount(end, high, "in", "ft"))


def _feet(feet: int, inches: int) -> Fraction:
    return Fraction(feet * 12 + inches)


def _reading(listing: Listing, items: list[Item]) -> Reading:
    value: list[Opening] = []
    sure, what = min(item.sure for item in items), "opening"
    for item in items:
        what = item.what or what
        (width, height), doubt = lengths_of(listing.metric, item.sizes, what)
        sure *= doubt
        value.append(Opening(item.count, width, height, what, item.assumed))
    return Reading("openings", items[0].start, items[-1].end, tuple(value), sure)


def lengths_of(metric: str, sizes: tuple[Amount, ...], what: str) -> tuple[tuple[Length, Length], float]:
    """Width and height with the unit people leave out, and how sure that is; `metric` is a unit said elsewhere."""
    bare = [amount.value for amount in sizes if not amount.unit]
    unit, doubt = "ft", 1.0
    if bare and max(map(abs, bare)) >= _MM_FROM:
        unit = "mm"
    elif bare and max(map(abs, bare)) >= _INCHES_FROM:
        unit = "in"
    elif bare and (metric in METRIC or _of_metres(bare)) and max(map(abs, bare)) < 6:
        unit = "m"
    elif bare and ((what == "vent" and _small_vent(bare)) or (what != "door" and min(map(abs, bare)) >= _DOUBT_FROM)):
        unit, doubt = "in", 0.8
    first, second = (Length(amount.value, _beside(amount.value, amount.unit or unit)) for amount in sizes)
    return (first, second), doubt


def _of_metres(sides: list[Fraction]) -> bool:
    """Whether sides with no unit are of metres by their decimals: no window is 1.05 ft wide."""
    return len(sides) > 1 and max(sides) < _METRES_UNDER and any(side.denominator not in (1, 2, 4, 8, 16) for side in sides)


def _small_vent(sides: list[Fraction]) -> bool:
    """Whether a vent is so many inches by so many: a square one is a duct's, an oblong one that is small is a gable's in feet."""
    most = max(map(abs, sides))
    return most > (_VENT_FEET if len({*sides}) == 1 else _LONG_VENT)


def _beside(value: Fraction, unit: str) -> str:
    """The unit of one side: metres beside millimetres, of a window 1.2 by 900."""
    return "m" if unit == "mm" and 0 < value < _METRES_TO else unit
