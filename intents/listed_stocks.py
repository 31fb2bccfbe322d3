"""Lengths that stock is sold in: "8, 12 and 16 foot stock", "12 footers at $14 and 16 footers at $20"; "no kerf"."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.listed import Item, Listing, beginnings, chains, with_units
from intents.reading import Reading
from solvers.quantities import Length, Money, Percent
from solvers.slots import Stock

_NOUNS = frozenset(
    "stock stick sticks board boards footer footers lengths length long ones trim siding cladding fascia sold".split()
)
_AT = frozenset(("at", "for", "@", ":", "cost", "costs", "are", "is"))
_EACH = frozenset(("each", "apiece", "ea", "a", "stick", "piece"))
_STICKS = frozenset(("stock", "sticks", "stocks", "lengths"))
SHORTEST_FEET = 6  # of a stick that is sold; what is shorter are pieces
LONGEST_FEET = 30  # no stock is sold that long: a bare number from here on is inches
_WASTE = frozenset("waste waist wastage extra spare overage allowance".split())
_NAUGHT = frozenset(("nothing", "none"))
_THROWN = frozenset("throw throwing thrown threw".split())
_LEFT_OUT = frozenset("skip forget ignore ignoring omit omitting neglect".split())
_SMALL_WORDS = frozenset("the any about".split())
_WASTE_SAID = _WASTE | {"wasted", "added"}
_NOTHING = frozenset(("no", "without", "zero"))
_KERFS = frozenset("kerf kerfs lap laps blade".split())


def stocks(listing: Listing) -> Iterator[Reading]:
    """Two lengths of stock or more, or with prices; a plain list of lengths must be called stock at its end."""
    for chain in chains(listing, lambda i: _item(listing, i), lambda before, item, separated: separated):
        for part in beginnings(chain, least=2):
            named = listing.words[part[-1].end - 1] in _NOUNS or _led(listing, part)
            if len(part) > 1 and (named or all(item.what for item in part)):
                yield _reading(listing, part)


def _led(listing: Listing, part: list[Item]) -> bool:
    """Whether lengths in feet stand after the word for stock: sticks 10', 12', 16'."""
    before = listing.words[part[0].start - 1] if part[0].start else ""
    return before in _STICKS and all(item.sizes[0].unit == "ft" and item.sizes[0].value >= SHORTEST_FEET for item in part)


def _item(listing: Listing, i: int) -> Item | None:
    """A length, what it is called, and its price (kept in `what` as the place of the money reading)."""
    for amount in listing.amounts(i):
        end = listing.past(amount.end, _NOUNS, 2)
        at = listing.past(end, _AT, 2)
        money = next((r for r in listing.chart[at] if r.kind == "money"), None) if at < len(listing.chart) else None
        if money is not None:
            return Item(i, listing.past(money.end, _EACH, 2), (amount,), what=f"{at}")
        return Item(i, end, (amount,))
    return None


def _reading(listing: Listing, items: list[Item]) -> Reading:
    lengths, _ = with_units([item.sizes[0] for item in items], "ft", LONGEST_FEET)
    if not any(item.sizes[0].unit for item in items):
        lengths = [Length(length.value, "ft" if length.value < LONGEST_FEET else "in") for length in lengths]
    value = tuple(Stock(length, _price(listing, item)) for length, item in zip(lengths, items, strict=True))
    return Reading("stocks", items[0].start, items[-1].end, value, 1.0)


def _price(listing: Listing, item: Item) -> Money | None:
    if not item.what:
        return None
    money = next(r.value for r in listing.chart[int(item.what)] if r.kind == "money")
    assert isinstance(money, Money)
    return money


_DONT, _KEPT = frozenset(("don't", "dont", "never")), frozenset("forget leave leaving skip drop ignore lose miss".split())


def nothings(listing: Listing) -> Iterator[Reading]:
    """ "No" before kerf or waste is a nought of it; "every foot" is one foot."""
    for i, word in enumerate(listing.words[: len(listing.tokens)]):
        if word in ("foot", "inch", "metre", "meter") and listing.words[i - 1] == "every" and i:
            yield Reading("length", i, i + 1, Length(Fraction(1), {"foot": "ft", "inch": "in"}.get(word, "m")))
        after = listing.words[i : i + 5]
        if word in _DONT and "waste" in after and "to" not in after[:4] and _KEPT.isdisjoint(after):
            yield Reading("percent", i, i + 1, Percent(Fraction(0), "percent"))
        if word in _NAUGHT and (listing.words[i - 1] in _THROWN or not _WASTE_SAID.isdisjoint(listing.words[i + 1 : i + 3])):
            yield Reading("percent", i, i + 1, Percent(Fraction(0), "percent"))  # nothing for waste; throw none away
        if word in _LEFT_OUT and _DONT.isdisjoint(listing.words[max(0, i - 2) : i]):  # don't forget the waste
            yield from _left_out(i, listing.words[listing.past(i + 1, _SMALL_WORDS)])
        if word in _NOTHING:
            if listing.words[i + 1] in _KERFS:
                yield Reading("length", i, i + 1, Length(Fraction(0), "in"))
            elif listing.words[i + 1] in _WASTE:
                yield Reading("percent", i, i + 1, Percent(Fraction(0), "percent"))


def _left_out(i: int, what: str) -> Iterator[Reading]:
    """Forget the waste; ignore the kerf."""
    if what in _WASTE:
        yield Reading("percent", i, i + 1, Percent(Fraction(0), "percent"))
    elif what in _KERFS:
        yield Reading("length", i, i + 1, Length(Fraction(0), "in"))
