"""Lengths in a row: "2, 3 and 1 1/2 inch legs"."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from intents.listed import STOCK, Amount, Item, Listing, beginnings, chains, with_units
from intents.listed_layers import LAYER_WORDS
from intents.reading import Reading
from intents.stated_units import MILLIMETRES
from intents.untold_layers import nominal

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
_SIDES_OF_BEND = frozenset("back front top bottom vertical horizontal upper lower first second third".split())
_BY = frozenset(("by", "×"))
_ARTICLES = frozenset(("a", "an"))
_BEGINS = _SIDES_OF_BEND | _ARTICLES  # besides numbers
_LOOSE = frozenset(("by", "×", "in", "out", "the", "bent", "then"))  # at the end of a list, these belong to what follows
# A bare number before one of these counts them.
_COUNTED = frozenset("pieces pcs piece pans flashings strips flats bends folds legs gauge ga".split())
_HOLDS = frozenset("penetration bite embedment".split())  # what a nail has in the stud is no layer of those before
LEAST_PLAIN = 600  # from here on a length with no unit is in millimetres, where nothing is told in feet or inches
_IMPERIAL = frozenset("foot feet ft ' inch inches ins \" footer footers yard yards".split())
WIDEST_LEG = 24  # in; of bent metal, as wide as the coil: what is more was said in millimetres


def lengths(listing: Listing) -> Iterator[Reading]:
    """Lists of two lengths or more."""
    chain_list = chains(listing, lambda i: _length(listing, i), lambda before, item, separated: True)
    for chain in chain_list:
        for part in beginnings(chain, least=2):
            if len(part) > 1:
                yield _lengths_reading(listing, part)


def _length(listing: Listing, i: int) -> Item | None:
    """A length at i, or after the name of its leg: back leg 2 3/4."""
    if not listing.chart[i] and listing.words[i] not in _BEGINS:
        return None
    if listing.words[i] in _SIDES_OF_BEND:
        named = listing.past(i, _SIDES_OF_BEND | _WAYS)
        found = _plain_length(listing, named) if listing.words[named - 1] in ("leg", "flange", "lip", "return", "hem") else None
        return Item(i, found.end, found.sizes) if found else None
    return _plain_length(listing, i)


def _plain_length(listing: Listing, i: int) -> Item | None:
    for amount in listing.amounts(listing.past(i, _ARTICLES, 1)) or listing.amounts(i):
        if _of_something_else(listing, amount) or _counts_legs(listing, i, amount):
            continue
        end = amount.end
        if nominal(listing, i, LAYER_WORDS):
            return None  # 1 by 3 strapping
        if listing.words[end] in _BY and listing.number_at(end + 1):
            end += 1
        else:
            end = _past_way(listing, end)
        return Item(i, end, (amount,))
    return None


def _of_something_else(listing: Listing, amount: Amount) -> bool:
    """The size of the coil or stock, or how many legs; but "40 mm, coil 600 mm" says the coil's size after it."""
    word, after = listing.words[amount.end], listing.words[amount.end + 1]
    if word == "leg" and after.isalpha():
        return not amount.unit and after not in _WAYS  # 3 leg flashing
    if word == "legs":
        return not amount.unit and after in (",", ":", "of", "at") and listing.number_at(amount.end + 2)
    if word in _COUNTED or (word == "of" and after == "them"):
        return not amount.unit  # 3, 4 and 5, 8 pieces
    if "sheet" in (word, after) and word in ("sheet", "wide"):
        return not listing.number_at(amount.end + 1)
    of_it = word in ("coil", "exposure") and listing.number_at(amount.end + 1)
    return word == "lengths" or word in _HOLDS or (word in STOCK and not of_it)


def _counts_legs(listing: Listing, i: int, amount: Amount) -> bool:
    """Whether a number tells how many legs there are, their sizes after it: with three legs | 50, 75 and 20 mm."""
    alone = not amount.unit and amount.value.denominator == 1 and listing.words[i - 1] not in (",", "and", "by", "×")
    return alone and listing.words[amount.end] == "legs" and listing.number_at(amount.end + 1)


def _past_way(listing: Listing, end: int) -> int:
    """Past "up the wall" or "out", when another length comes after it or nothing does."""
    at = listing.past(end, _WAYS)
    while at > end and listing.words[at - 1] == "and":
        at -= 1
    hem = listing.words[at : at + 2] == ["with", "a"] and listing.number_at(at + 2)  # 2 down with a | 1/2 hem
    return at + hem


def _lengths_reading(listing: Listing, items: list[Item]) -> Reading:
    amounts = [item.sizes[0] for item in items]
    default = "in"
    most = max(amount.value for amount in amounts)
    asked = most > WIDEST_LEG and any(a.isalpha() and b in MILLIMETRES for a, b in pairwise(listing.words))
    plainly = most >= LEAST_PLAIN and _IMPERIAL.isdisjoint(listing.words) and not any(amount.unit for amount in amounts)
    if plainly or (listing.metric and most >= 10) or (asked and not any(amount.unit for amount in amounts)):
        default = "mm"
    value, plain = with_units(amounts, default)
    sure = 1.0 if plain else 0.7
    end = items[-1].end
    while end > items[-1].sizes[0].end and listing.words[end - 1] in _LOOSE:
        end -= 1
    return Reading("lengths", items[0].start, end, tuple(value), sure)
