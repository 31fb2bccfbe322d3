"""Lengths in a row ("2, 3 and 1 1/2 inch legs") and layers of a wall ("7/16 sheathing and 3/4 strapping")."""

from __future__ import annotations

from collections.abc import Iterator

from intents.listed import STOCK, Amount, Item, Listing, beginnings, chains, with_units
from intents.reading import Reading
from solvers.slots import Layer

_WAYS = frozenset(
    [
        "up",
        "down",
        "out",
        "in",
        "back",
        "over",
        "under",
        "across",
        "the",
        "wall",
        "face",
        "kick",
        "hem",
        "return",
        "leg",
        "legs",
        "drop",
        "roof",
        "fascia",
        "flange",
        "lip",
        "top",
        "bottom",
        "then",
        "turned",
        "bent",
        "and",
    ]
)
_BY = frozenset(("by", "×"))
_LOOSE = frozenset(
    ("by", "×", "in", "out", "the", "bent", "then")
)  # at the end of a list, these belong to what follows
_THICK = frozenset(("of", "thick", "a"))
_AMOUNT_FIRST_ENDS = frozenset(
    [
        "into",
        "to",
        "on",
        "over",
        "with",
        "from",
        "for",
        "behind",
        "under",
        "at",
        "and",
        "plus",
        "through",
        "then",
        "is",
        "are",
        "in",
        "how",
        "what",
        ",",
        ";",
        "&",
        "+",
        "the",
    ]
)
_STANDS = frozenset((*"is are at of : @ that we're were we putting up going on it's its itself".split(), "behind"))
MOST_LAYERS, MOST_BETWEEN = 20, 7
MOST_BARE = 4  # inches; a layer said with no unit is a fraction, or not many inches
LAYER_WORDS = frozenset(
    [
        "sheathing",
        "ply",
        "plywood",
        "osb",
        "board",
        "boards",
        "foam",
        "insulation",
        "strapping",
        "straps",
        "strap",
        "battens",
        "batten",
        "furring",
        "lath",
        "siding",
        "cladding",
        "clapboard",
        "clapboards",
        "mesh",
        "mat",
        "drainage",
        "panel",
        "panels",
        "trim",
        "shim",
        "shims",
        "gypsum",
        "drywall",
        "membrane",
        "wrap",
        "housewrap",
        "flashing",
        "shingles",
        "shake",
        "shakes",
        "fascia",
        "soffit",
        "fiberboard",
        "fibreboard",
        "plank",
        "planks",
        "slat",
        "slats",
        "counterbatten",
        "counterbattens",
        "stucco",
        "weatherboard",
        "weatherboards",
        "shiplap",
        "lap",
        "gap",
        "layer",
        "cement",
        "clapboard",
        "larch",
        "cedar",
        "pine",
        "spruce",
    ]
)


def lengths(listing: Listing) -> Iterator[Reading]:
    """Lists of two lengths or more."""
    chain_list = chains(listing, lambda i: _length(listing, i), lambda before, item, separated: True)
    for chain in chain_list:
        for part in beginnings(chain, least=2):
            if len(part) > 1:
                yield _lengths_reading(listing, part)


def _length(listing: Listing, i: int) -> Item | None:
    for amount in listing.amounts(listing.past(i, frozenset(("a", "an")), 1)) or listing.amounts(i):
        if _of_something_else(listing, amount):
            continue
        end = amount.end
        if listing.words[end] in _BY and listing.number_at(end + 1):
            end += 1
        else:
            end = _past_way(listing, end)
        return Item(i, end, (amount,))
    return None


def _of_something_else(listing: Listing, amount: Amount) -> bool:
    """The size of the coil or stock, or how many legs; but "40 mm, coil 600 mm" says the coil's size after it."""
    word, after = listing.words[amount.end], listing.words[amount.end + 1]
    if word in ("leg", "legs"):
        return not amount.unit and after in (",", ":", "of", "at") and listing.number_at(amount.end + 2)
    return word in STOCK and not (word in ("coil", "exposure") and listing.number_at(amount.end + 1))


def _past_way(listing: Listing, end: int) -> int:
    """Past "up the wall" or "out", when another length comes after it or nothing does."""
    at = listing.past(end, _WAYS)
    while at > end and listing.words[at - 1] == "and":
        at -= 1
    return at


def _lengths_reading(listing: Listing, items: list[Item]) -> Reading:
    amounts = [item.sizes[0] for item in items]
    default = "in"
    if listing.metric and max(amount.value for amount in amounts) >= 10:
        default = "mm"
    value, plain = with_units(amounts, default)
    sure = 1.0 if plain else 0.7
    end = items[-1].end
    while end > items[-1].sizes[0].end and listing.words[end - 1] in _LOOSE:
        end -= 1
    return Reading("lengths", items[0].start, end, tuple(value), sure)


def layers(listing: Listing) -> Iterator[Reading]:
    """Lists of layers: a thickness and what it is, either first."""
    for chain in _layer_chains(listing):
        for part in beginnings(chain):
            amounts = [item.sizes[0] for item in part]
            default = "mm" if max(amount.value for amount in amounts) >= 4 else "in"
            value, plain = with_units(amounts, default)
            found = tuple(Layer(length, item.what) for length, item in zip(value, part, strict=True))
            yield Reading("layers", part[0].start, part[-1].end, found, 1.0 if plain else 0.7)


def _layer_chains(listing: Listing) -> Iterator[list[Item]]:
    """The layers from each place on, with a few words between ("over", "on", "if I run") but no other quantity."""
    items = [_layer(listing, i) for i in range(len(listing.chart))]
    for first in items:
        if first is None:
            continue
        chain = [first]
        while len(chain) < MOST_LAYERS:
            at = _next_layer(listing, items, chain[-1].end)
            if at is None:
                break
            chain.append(at)
        yield chain


def _next_layer(listing: Listing, items: list[Item | None], end: int) -> Item | None:
    for at in range(end, min(end + MOST_BETWEEN + 1, len(items))):
        if items[at] is not None:
            return items[at]
        nominal = listing.words[at + 1] == "×" or listing.words[at] == "×"  # 1x strapping: a name, not a thickness
        if listing.number_at(at) and not nominal and listing.words[at] not in ("a", "an"):
            return None
    return None


def _layer(listing: Listing, i: int) -> Item | None:
    for amount in listing.amounts(i):
        if not amount.unit and abs(amount.value) >= MOST_BARE and not listing.metric:
            continue  # 22 straps are so many, not so thick
        start = listing.past(amount.end, _THICK, 2)
        end = _name_end(listing, start)
        if end > start:
            return Item(i, end, (amount,), what=" ".join(listing.words[start:end]))
    end = _name_end(listing, i)
    if end > i:
        for amount in listing.amounts(listing.past(end, _STANDS, 5)):
            if _name_end(listing, listing.past(amount.end, _THICK, 2)) == listing.past(amount.end, _THICK, 2):
                return Item(i, amount.end, (amount,), what=" ".join(listing.words[i:end]))
    return None


def _name_end(listing: Listing, start: int) -> int:
    """The end of a layer's name: up to three plain words, the last of them a layer's."""
    end = start
    for at in range(start, start + 3):
        word = listing.words[at]
        if not word.isalpha() or word in _AMOUNT_FIRST_ENDS or listing.number_at(at):
            break
        if word in LAYER_WORDS:
            end = at + 1
    return end
