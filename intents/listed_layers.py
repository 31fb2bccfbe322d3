"""Layers of a wall said in a row: "7/16 sheathing and 3/4 strapping", "siding is 5/8 and the mesh is 3/8"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from intents.listed import CONTRASTED, PAIRS, SEPARATORS, Amount, Item, Listing, beginnings, with_units
from intents.no_layers import held_in_frame, is_no_layer, speaks_of_some
from intents.reading import Reading
from intents.untold_layers import kind_of, nominal, with_untold
from solvers.quantities import Length
from solvers.slots import Layer

_ONE = (
    "sheathing sheeting sheath shthg shtg ply plywood osb board foam insulation strapping straping strap batten furring furr "
    "lath strip siding cladding clad clapboard clapbd mesh mat drainage panel trim casing shim gypsum drywall membrane wrap "
    "housewrap "
    "flashing shingle shake fascia soffit fiberboard fibreboard plank slat counterbatten stucco weatherboard shiplap lap "
    "gap layer cement larch cedar pine spruce fir hardboard mortar render veneer underlay felt stone brick tile polyiso "
    "styrofoam rockwool eps xps lumber timber hardwood particleboard subfloor sarking airspace cavity steel metal vinyl "
    "moulding molding backer nailer bracing cleat packer packing spacer firring boarding decking barnboard featheredge ledger "
    "lining bargeboard rubber plasterboard chipboard deck"
).split()
_IMPERIAL = frozenset("in inch inches \" ' foot feet ft / half quarter quarters eighth eighths sixteenth sixteenths".split())
_HELD_IN = frozenset("solid the stud studs wood timber framing frame my".split())  # 35 in solid wood
LEAST_MM, MOST_MM = 9, 200  # of a layer
SEVERAL = 2  # numbers of such a size, which tell that all are millimetres
LAYER_WORDS = frozenset(("plies", *(word for one in _ONE for word in (one, one + "s"))))
_NO_PLURALS = frozenset(word for word in _ONE if not word.endswith("s"))  # through 100 insulation; 22 straps are so many
# A thickness before one of these is of something else than a layer whose name nobody here has heard of.
_ROLES = frozenset(
    "penetration pen bite biting embedment embed grip hold exposure exposed reveal overhang kerf spacing spaced centres "
    "centers centre center oc apart long wide high tall deep length width height depth pitch slope miter mitre cut total "
    "nail nails screw screws fastener fasteners stud studs framing frame how what thick inch inches face opening window "
    "door wall roof gable of more less plus minus times and or by showing lands percent into coil legs leg hem drop rise "
    "run bevel radius square wood plate stick sticks stock drip kick kickout flange return lip up down sizes each courses "
    "course joint bead diagonal out back under between minimum min least max bigger smaller longer shorter wider gaps off "
    "past all altogether combined thread threads wanted purchase grab draw shank head heads pilot bit drill washer washers"
    " twice".split()
)
_THICK, _AT = frozenset(("of", "thick", "a")), frozenset(("at",))
_NAME_ENDS = frozenset(
    "into to on over with from for behind under at and plus through then is are in how what , ; & + the".split()
)
_STANDS = frozenset((*"is are at of : @ that we're were we putting up going on it's its itself".split(), "behind"))
_AGAIN = frozenset(
    ", ( that thats the which is it so real really actually actual net true dressed planed milled to down about only"
    " measures just".split()
)
_RESTATES = frozenset("( that thats which actually real really true".split())
_TRULY = frozenset("true real actual net dressed planed milled".split())
_ACTUAL = frozenset(("thick", "actual", "actually", "really", "net", ","))
_QUARTERS = frozenset(("5/4", "five quarter", "five quarters", "five-quarter"))  # boards that are called so are 1 in thick
_TRIMS = frozenset("trim board boards casing fascia plank planks decking".split())
_CALLED = (Fraction(1), Fraction(5, 4), Fraction(3, 2), Fraction(2))  # in; what lumber is called by, and is less
_OVER = frozenset(("over", "on", "onto", "through"))
_AFTER_NAMELESS = frozenset(("and", "with", ",", ".", ";", "then"))
_SEVERAL = frozenset("layers layer courses sheets plies thicknesses".split())
_TELLING = LAYER_WORDS | _SEVERAL
_HOLDS = frozenset("penetration pen bite biting embedment embed into hold grip".split())
_FASTENERS = frozenset("screw screws nail nails".split())  # 2 1/2 in trim screws are no trim of that thickness
_LEADS = frozenset((",", ":", "of", "at", "are", "-", "one"))
_ENDS = frozenset(("", ",", ";", "&", "+", ".", "?", *"and over on plus then behind under with onto total".split()))
MOST_NAMED = 3  # words of a layer's name
_COUNTING = frozenset(("double", "(", *PAIRS))  # besides numbers, what a count of layers begins with
MOST_LAYERS, MOST_BETWEEN, MOST_APART = 20, 16, 3
MOST_COUNTED = 6  # layers whose count is said before their thicknesses
MOST_ALIKE = 4  # layers of one thickness said together
MOST_INCHES = 14
MOST_BARE = 4  # inches; a layer said with no unit is a fraction, or not many inches


def layers(listing: Listing) -> Iterator[Reading]:
    """Lists of layers: a thickness and what it is, either first."""
    for chain in (*_layer_chains(listing), *_counted_chains(listing)):
        for part in (with_untold(listing, chain), *list(beginnings(chain))[1:]):
            every = [item for item in _once_each(part) for _ in range(item.count)]
            amounts = [item.sizes[0] for item in every if item.sizes]
            default = "mm" if max((amount.value for amount in amounts), default=0) >= 4 else "in"
            value, plain = with_units(amounts, default)
            thick = iter(value)
            found = tuple(Layer(next(thick) if item.sizes else None, item.what, item.assumed) for item in every)
            sure = (1.0 if plain else 0.7) * min(item.sure for item in part)
            yield Reading("layers", part[0].start, part[-1].end, found, sure)


def _once_each(part: list[Item]) -> list[Item]:
    """Without what was only called by its size where a layer of that kind has its thickness told: 3/4 straps, the 1x4 stuff."""
    told = {kind_of(item.what.split()[-1]) for item in part if item.sizes and not item.assumed}
    return [item for item in part if not item.assumed or kind_of(item.what.split()[-1]) not in told]


def _layer_chains(listing: Listing) -> Iterator[list[Item]]:
    """The layers from each place on, with a few words between ("over", "on", "if I run") but no other quantity."""
    if _TELLING.isdisjoint(listing.words):
        return
    named = {at - before for at, word in enumerate(listing.words) if word in LAYER_WORDS for before in range(MOST_NAMED)}
    items = [
        nominal(listing, i, LAYER_WORDS) or _several(listing, i) or _layer(listing, i)
        if row or i in named or listing.words[i] in _COUNTING else None
        for i, row in enumerate(listing.chart)
    ]  # fmt: skip
    if not any(items):
        return
    items = [item or _unheard_of(listing, i) or _nameless(listing, i) for i, item in enumerate(items)]
    items = [None if item and _contrasted(listing.words, i) else item for i, item in enumerate(items)]
    none = _no_layers(listing)
    items = [None if item and none[item.start : item.end].count(True) else item for item in items]
    for first in items:
        if first is None:
            continue
        chain = [first]
        while len(chain) < MOST_LAYERS:
            at = _next_layer(listing, items, chain[-1], none)
            if at is None:
                break
            chain.append(at)
        if any(item.led for item in chain):
            yield [*chain, *_last_nameless(listing, chain)]


def _contrasted(words: list[str], i: int) -> bool:
    """Whether a layer is the one that another stands in the place of: instead of (the) 3/8 mesh."""
    at = i - (words[i - 1] in ("the", "a", "my"))
    return tuple(words[max(0, at - 2) : at]) in CONTRASTED


def _in_contrast(words: list[str], i: int) -> bool:
    """Whether a number is part of the size of such a layer: the 3, the 8 of instead of 3/8 mesh."""
    return any(_contrasted(words, start) for start in range(max(2, i - 2), i + 1))


def _counted_chains(listing: Listing) -> Iterator[list[Item]]:
    """So many layers and then as many thicknesses: "two layers, 1/2 inch and 3/4 inch"."""
    for i in range(len(listing.chart)):
        for end, count in listing.counts(i):
            if not 1 < count <= MOST_COUNTED or listing.words[end] != "layers":
                continue
            chain: list[Item] = []
            at = listing.past(end + 1, _LEADS, 2)
            while (amount := next(iter(listing.amounts(at)), None)) and _thin(listing, amount) and len(chain) <= count:
                chain.append(Item(at if chain else i, amount.end, (amount,), what="layer"))
                at = listing.past(amount.end, SEPARATORS, 2)
            if len(chain) == count and listing.words[chain[-1].end] not in _HOLDS:
                yield chain


def _no_layers(listing: Listing) -> list[bool]:
    """For each token whether it is of a size that is no layer's."""
    none = [False] * len(listing.words)
    for i in range(len(listing.chart)) if speaks_of_some(listing.words) else ():
        amount = max(listing.amounts(i), key=lambda a: a.end, default=None)
        if amount is not None and (is_no_layer(listing.words, i, amount.end) or held_in_frame(listing.words, amount.end)):
            none[i : amount.end] = [True] * (amount.end - i)
    return none


def _next_layer(listing: Listing, items: list[Item | None], last: Item, none: list[bool]) -> Item | None:
    end = last.end
    for at in range(end, min(end + MOST_BETWEEN + 1, len(items))):
        item = items[at]
        if item is not None:  # a name that nobody here has heard of has to stand beside one that is known
            return item if (item.led and last.led) or at - end <= MOST_APART else None
        nominal = listing.words[at + 1] == "×" or listing.words[at] == "×"  # 1x strapping: a name, not a thickness
        if not listing.number_at(at) or nominal or none[at] or listing.words[at] in ("a", "an"):
            continue
        if not _in_contrast(listing.words, at):
            return None
    return None


def _several(listing: Listing, i: int) -> Item | None:
    """Two layers of half inch ply, double 5/8 drywall."""
    starts = [(i + 1, 2)] if listing.words[i] == "double" else list(listing.counts(i))
    for end, count in starts:
        told = listing.words[end] in _SEVERAL
        if not told and (pieces := _pieces(listing, i, end, count)):
            return pieces
        if not (told or count > 1) or not 1 <= count <= MOST_ALIKE or (listing.words[i] != "double" and not told):
            continue
        at = listing.past(end, _SEVERAL | _THICK | _AT, 3)
        if told and (each := _each(listing, listing.past(at, _LEADS, 2))):
            return Item(i, each.end + 1, (each,), count, "layer")
        if told and "each" in listing.words[end + 1 : end + 5]:  # two thicknesses overlap, each 5/16
            amount = next(iter(listing.amounts(listing.words.index("each", end + 1) + 1)), None)
            if amount is not None:
                return Item(i, amount.end, (amount,), count, "layer")
        one = _layer(listing, at)
        if one is not None:
            return replace(one, start=i, count=count)
        for amount in listing.amounts(at) if told else ():
            return Item(i, amount.end, (amount,), count, "layer")
    return None


def _pieces(listing: Listing, i: int, end: int, count: int) -> Item | None:
    """Two 3/4 boards, three half inch plies, two 13 mm plasterboards: so many, each under an inch or told with its unit, where
    the number is a word and the name of several."""
    if end != i + 1 or not 1 < count <= MOST_ALIKE or not listing.words[i].isalpha():
        return None
    one = _layer(listing, end)
    if one is None or not one.what.endswith("s") or (one.sizes[0].value >= 1 and one.sizes[0].unit not in ("mm", "in")):
        return None
    if any(amount.value < 1 for amount in listing.amounts(i)):
        return None  # three quarter boards
    return replace(one, start=i, count=count)


def _each(listing: Listing, at: int) -> Amount | None:
    """The thickness of every one of them: "(two layers,) half inch each"."""
    return next((amount for amount in listing.amounts(at) if listing.words[amount.end] in ("each", "apiece")), None)


def _layer(listing: Listing, i: int) -> Item | None:
    for amount in listing.amounts(i):
        if not _thin(listing, amount) or _counts_layers(listing, amount):
            continue
        start = listing.past(amount.end, _THICK, 2)
        end = _name_end(listing, start)
        if end > start and listing.words[end] not in _FASTENERS:
            return _restated(listing, _told_twice(listing, Item(i, end, (amount,), what=" ".join(listing.words[start:end]))))
    end = _name_end(listing, i)
    if end > i:
        for amount in listing.amounts(listing.past(end, _STANDS, 5)):
            after = listing.past(amount.end, _THICK, 2)
            if _name_end(listing, after) == after and _thin(listing, amount) and listing.words[after] not in _HOLDS:
                return _restated(
                    listing, _told_twice(listing, Item(i, amount.end, (amount,), what=" ".join(listing.words[i:end])))
                )
    return None


def _told_twice(listing: Listing, item: Item) -> Item:
    """Twice over, where the word after says so: 5/16 lap twice."""
    return replace(item, end=item.end + 1, count=2) if listing.words[item.end] == "twice" else item


def _restated(listing: Listing, item: Item) -> Item:
    """With the true thickness that is said after a nominal one: "5/4 trim, that's an inch thick"."""
    at = listing.past(item.end, _AGAIN, 5)
    told = not _RESTATES.isdisjoint(listing.words[item.end : at])
    for amount in listing.amounts(at):
        truly = not _TRULY.isdisjoint(listing.words[item.end : amount.end]) or _thick_beside(listing, item, at, amount)
        after = listing.words[amount.end]
        if not (told or truly or after in ("actual", "actually", "net")):
            continue
        if truly and after not in _ACTUAL and after not in LAYER_WORDS | _HOLDS and _thin(listing, amount):
            return replace(item, end=amount.end, sizes=(amount,))
        if after in _ACTUAL and _thin(listing, amount):
            return replace(item, end=amount.end + (after != ","), sizes=(amount,))
    quarters = item.sizes[0].text in _QUARTERS and not listing.metric and item.what.split()[-1] in _TRIMS
    return replace(item, sizes=(Amount(item.end, Fraction(1), "in", ""),), assumed="5/4") if quarters else item


def _thick_beside(listing: Listing, item: Item, at: int, amount: Amount) -> bool:
    """Whether the thickness of lumber that was called by another follows: 5/4 board | 1 in thick; never 1 in thick foam."""
    nominal = item.sizes[0].value in _CALLED and listing.words[amount.end] == "thick" and amount.value < item.sizes[0].value
    return nominal and _name_end(listing, listing.past(amount.end + 1, _THICK, 2)) == listing.past(amount.end + 1, _THICK, 2)


def _counts_layers(listing: Listing, amount: Amount) -> bool:
    """Whether a number says how many layers there are: two layers are not 2 in of something."""
    return not amount.unit and amount.value.denominator == 1 and listing.words[amount.end] == "layers"


def _thin(listing: Listing, amount: Amount) -> bool:
    """Whether a size can be how thick a layer is: 22 straps are so many, 12 feet of siding are so long."""
    if not amount.unit:
        return abs(amount.value) < MOST_BARE or bool(listing.metric) or _all_millimetres(listing)
    return Length(amount.value, amount.unit).to("in").value <= MOST_INCHES


def _all_millimetres(listing: Listing) -> bool:
    """Whether bare numbers can only be millimetres: several that are whole and large, and no inch or foot is spoken of."""
    said = {
        word for at, word in enumerate(listing.words)
        if word in _IMPERIAL and not (_in_what(listing.words, at) or (word == "in" and listing.words[at + 1] in _HELD_IN))
    }  # fmt: skip
    if said:
        return False
    at, large = 0, 0
    while at < len(listing.tokens) and large < SEVERAL:  # in figures or in words: twenty two cladding
        end, value = max(listing.counts(at), default=(at + 1, 0))
        through = at > 0 and listing.words[at - 1] == "through" and listing.words[end] in _NO_PLURALS
        at, large = end, large + (LEAST_MM <= value <= MOST_MM) * (SEVERAL if through else 1)
    return large >= SEVERAL


def _in_what(words: list[str], at: int) -> bool:
    """Whether "in" at a place is the small word: 38 | in the stud."""
    return words[at] == "in" and words[at + 1] in ("the", "my", "our", "that", "its")


def _unheard_of(listing: Listing, i: int) -> Item | None:
    """A thickness and the name of a layer that nobody here has heard of, where known ones are said too."""
    for amount in listing.amounts(i):
        told = amount.unit in ("in", "mm") or amount.value.denominator > 1 or listing.metric == "mm"
        if not told or not _thin(listing, amount):
            continue
        start = listing.past(amount.end, _THICK, 2)
        end = start
        while end < start + 2 and _names(listing, end):
            end += 1
        if end > start and listing.words[end] in _ENDS:
            return Item(i, end, (amount,), what=" ".join(listing.words[start:end]), sure=0.9, led=False)
    return None


def _nameless(listing: Listing, i: int) -> Item | None:
    """A thickness over which another layer is said to go, itself with no name: trim over 7/16 and so much in the framing."""
    if i == 0 or listing.words[i - 1] not in _OVER:
        return None
    for amount in listing.amounts(i):
        told = amount.unit in ("in", "mm") or amount.value.denominator > 2
        if told and _thin(listing, amount) and listing.words[amount.end] in _AFTER_NAMELESS:
            return Item(i, amount.end, (amount,), what="layer", sure=0.9, led=False)
    return None


def _last_nameless(listing: Listing, chain: list[Item]) -> list[Item]:
    """The thickness of a last layer, itself with no name, after one that is called by its size: 1x3 strapping and 5/8."""
    at = listing.past(chain[-1].end, SEPARATORS, 2)
    if at == chain[-1].end or not any(item.assumed for item in chain):
        return []
    ends = ("", ".", "?", ";")
    found = [a for a in listing.amounts(at) if a.value < 1 and a.value.denominator > 1 and listing.words[a.end] in ends]
    return [Item(at, a.end, (a,), what="layer", sure=0.9, led=False) for a in found[:1]]


def _names(listing: Listing, at: int) -> bool:
    word = listing.words[at]
    return len(word) > 2 and word.isalpha() and word not in _ROLES and word not in _NAME_ENDS and not listing.number_at(at)


def _name_end(listing: Listing, start: int) -> int:
    """The end of a layer's name: up to three plain words, the last of them a layer's."""
    end = start
    for at in range(start, start + MOST_NAMED):
        word = listing.words[at]
        if not word.isalpha() or word in _NAME_ENDS or listing.number_at(at):
            break
        if word in LAYER_WORDS:
            end = at + 1
    return end
