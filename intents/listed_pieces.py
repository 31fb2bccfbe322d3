"""Pieces to cut: "four at 40 inches, three at 32", "ten pieces of 19 inches and five of 43", "71 1/8, 71 1/8, 26"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from intents.lengths import UNITS
from intents.listed import STOCK, Amount, Item, Listing, beginnings, chains, with_units
from intents.listed_sets import THINGS, sets_of
from intents.number_words import SMALL
from intents.reading import Reading
from intents.tokens import literal
from solvers.slots import Piece

_NOUNS = frozenset(
    "piece pieces pcs pc off lengths length bits strips rips blocks boards sticks more cuts ea each jambs legs heads"
    " sills".split()
)
_JOINTS = frozenset(("at", "@", "of", "×", ":", "measuring", "cut", "that", "are", "is", "exactly", "just", "about", "only"))
_TAILS = frozenset("each ea long piece pieces pcs s off apiece lengths".split())
_TAKEN = frozenset(("minus", "less", "-"))
_OTHERS = frozenset("a an and with from out for on in the kerf stock no".split())
_NO_NAMES = _OTHERS | {"need", "cut", "list", "of", "at", "is", "are", "want", "or", "to", "then", "plus", "also"}
_THICK, _WIDE = frozenset("1 2 4 6".split()), frozenset("2 3 4 5 6 8 10 12".split())  # inches by which boards are named
_THEM = ("them", "those", "these", "em")
_ARTICLES = ("a", "an", "another")
_OF_THE = frozenset(("at", "of", "the", "@"))
_SHEETS = frozenset("sheet sheets ply plywood osb panel panels".split())  # a 4x8 sheet is no 4 pieces of 8
_TO_SAME, _ENDS = 4, frozenset(".;?")  # words between
_SMALL = 20  # a plain number over this before a times sign is the size, not the count
_ROW_FROM = 24  # inches; bare pairs of less are spoken feet and inches, or a pitch
_NO_INCHES = 400  # nobody cuts pieces so many inches long
_FEET_DOUBT = 12  # a bare number under this may be feet: a piece of 8 inches, or of 8 foot


def pieces(listing: Listing) -> Iterator[Reading]:
    """The lists of pieces, with shorter beginnings of each."""
    of_them = _of_them(listing)
    for chain in chains(listing, lambda i: _item(listing, i), _joined):
        if listing.words[chain[0].start + 1 : chain[0].start + 3] == ["each", "of"]:
            chain[:] = [replace(item, count=chain[0].count, led=True) for item in chain]  # two each of 96, 72 and 48
        elif listing.words[chain[0].start + 1] == "each" and chain[0].count > 1 and not any(item.led for item in chain[1:]):
            chain[:] = [replace(item, count=chain[0].count) for item in chain]  # 2 each 45 and 30
        if of_them and len(chain) == 1:
            chain[0].count = of_them
        _of_each(listing, chain)
        chain.extend(_same_again(listing, chain[-1]))
        counts = [item.count for item in chain] if all(item.led for item in chain) else []
        place = chain[0].start, chain[-1].end
        sets, start, end = sets_of(listing, *place, counts) if counts else (1, *place)
        if (start, end) != place:
            found = _reading(listing, [replace(item, count=item.count * sets) for item in chain])
            yield Reading(found.kind, start, end, found.value, found.sure)
        for part in beginnings(chain):
            if (len(part) > 1 or part[0].led) and listing.words[part[-1].end] not in _SHEETS:
                yield _reading(listing, part)


def _of_each(listing: Listing, chain: list[Item]) -> None:
    """Count all the sizes where it is told after them how many there are of each: 5 foot 1 and 3 foot 7, ten of each."""
    at = chain[-1].end + (listing.words[chain[-1].end] in (",", "and"))
    told = next(((end, n) for end, n in listing.counts(at) if listing.words[end : end + 2] == ["of", "each"]), None)
    start = chain[0].start
    if told is None and listing.words[max(0, start - 2) : start] == ["of", "each"] and start > 2:
        told = next(((chain[-1].end - 2, n) for end, n in listing.counts(start - 3) if end == start - 2), None)
        chain[0].start -= 3 * (told is not None)  # three of each, 40 and 32
    if told is not None and all(item.count == 1 for item in chain):
        chain[:] = [replace(item, count=told[1], led=True) for item in chain]
        chain[-1].end = told[0] + 2


def _same_again(listing: Listing, item: Item) -> list[Item]:
    """So many more of the size before: 2 at 8 foot 10 and outside 4 at the same."""
    for at in range(item.end, min(item.end + _TO_SAME, len(listing.tokens))):
        if listing.words[at] in _ENDS:
            return []
        for end, count in listing.counts(at):
            stop = listing.past(listing.past(end, _NOUNS), _OF_THE, 2)
            if count > 0 and item.led and listing.words[stop] == "same" and stop > end:
                return [Item(at, stop + 1 + (listing.words[stop + 1] in ("length", "size")), item.sizes, count)]
    return []


def _of_them(listing: Listing) -> int:
    """The count of "I need six of them"; 0 when nothing like it is said."""
    for i, word in enumerate(listing.words[: len(listing.tokens)]):
        if word == "of" and listing.words[i + 1] in _THEM and i:
            return next((count for end, count in listing.counts(i - 1) if end == i), 0)
    return 0


def _joined(before: Item, item: Item, separated: bool) -> bool:
    """Bare sizes stand only beside bare sizes, or after counted ones; counted ones need no comma between."""
    if not before.led and item.led:
        return False
    return separated or item.led or _bare_row(before, item)


def _bare_row(before: Item, item: Item) -> bool:
    """Sizes with nothing between: 55 55 55 40. From a foot on: smaller ones are more likely a size and its fraction."""
    sizes = (*before.sizes, *item.sizes)
    return not before.led and not item.led and all(not size.unit and size.value >= _ROW_FROM for size in sizes)


def _item(listing: Listing, i: int) -> Item | None:
    chart = listing.chart
    if not chart[i] and listing.words[i] not in _ARTICLES and not (i + 1 < len(chart) and chart[i + 1]):
        return None  # most words: an item begins with a number, an article, or a name before a number
    before = listing.words[max(0, i - 2) : i]
    if before[-1:] == ["×"]:
        return None
    if (past := _past_section(listing, i)) > i:  # 1x4s at 40 inches, 22 of them
        found = _size_first(listing, past)
        return None if found is None else replace(found, start=i)
    if before[-1:] == ["/"]:
        return None  # the 4 of 5/4x4 trim
    if not _TAKEN.isdisjoint(before[-1:]) or (before[-1:] == ["a"] and not _TAKEN.isdisjoint(before)):
        return None  # what is taken off a length: less a 9 foot 7 piece
    return _counted(listing, i) or _size_first(listing, i) or _name_first(listing, i) or _one(listing, i)


def _past_section(listing: Listing, i: int) -> int:
    """The place past a board that is named by its section, where one stands: 1 × 4 s at | 40, 2 × 6 at | 7 foot."""
    thick, by, wide, after = (*listing.words[i : i + 4], "", "", "", "")[:4]
    if thick not in _THICK or by != "×" or wide not in _WIDE or after not in ("s", "at", "@"):
        return i
    return listing.past(i + 3 + (after == "s"), _JOINTS)


def _counted(listing: Listing, i: int) -> Item | None:
    """Count, what they are, the size: six at 48, two jambs at 81 inches, three four foot pieces."""
    words = listing.words
    one = [(i + 1, 1)] if words[i] in _ARTICLES else []  # a head at 43
    for end, count in (*listing.counts(i), *one):
        if count < 1:
            continue  # minus two returns are taken off
        at = listing.past(end, _NOUNS)
        known = at > end
        if not known:
            at = _unknown_noun(listing, end)
        elif words[at] == "of" and words[past := _unknown_noun(listing, at + 1)] in ("at", "@") and past > at + 1:
            at = past  # eleven pieces of corner trim | at 9 foot 2
        at += known and words[at : at + 2] == [",", "each"]  # thirty blocks, each 7 1/4
        joint = listing.past(at, _JOINTS | {"each"} if words[at - 1] == "," else _JOINTS)
        joint = _past_section(listing, joint)
        if joint == at and not known and at > end and not _each_at(listing, at):
            continue
        if (end, 1) in one and (at in (joint, end) or words[at] not in ("at", "@")):
            continue
        if words[joint + 1] == "/" and words[joint + 2] == "12":
            continue  # sticks at 6/12 are at a pitch
        for amount in listing.amounts(joint):
            named = amount.unit or words[amount.end] in ("s", "piece", "pieces", "pcs") or words[end - 1] == ")"
            told = named or _spelled_apart(listing, i, end, amount)
            if joint == end and (not told or words[amount.end] in STOCK | {"lengths"}):
                continue  # with nothing between, a unit or a plural tells the size: three four foot pieces, two 36s
            if joint == end and _one_number(listing, i, amount):
                continue
            times = words[joint - 1] == "×" and not amount.unit and count > _SMALL >= amount.value
            if times or _of_stock(listing, amount.end):
                continue
            return Item(i, listing.past(amount.end, _TAILS), (amount,), count)
    return None


def _of_stock(listing: Listing, at: int) -> bool:
    """Whether a size is of what a word after it names, and that has no size of its own: 2 @ 7-3, stock is 12 ft."""
    own = listing.words[at + 1] in ("is", "are", "=", ":") or listing.number_at(at + 1)
    return listing.words[at] in ("kerf", "stock", "coil") and not own


def _spelled_apart(listing: Listing, i: int, end: int, amount: Amount) -> bool:
    """Whether a count in words stands before a size in digits, as no one number is said: ten 1085, five 54 1/4."""
    word, size = listing.words[i], listing.words[end]
    return end == i + 1 and word in SMALL and word != "one" and literal(size) and amount.value > _FEET_DOUBT


def _one_number(listing: Listing, i: int, amount: Amount) -> bool:
    """Whether a count and a size with nothing between are one length: twenty two and a half inches."""
    return any(r.kind == "length" and r.end == amount.end and r.sure >= 0.9 for r in listing.chart[i])


_NO_NOUNS = _OTHERS | _JOINTS | UNITS


def _unknown_noun(listing: Listing, at: int) -> int:
    """Past one or two words that are no list word, when "at" or "of" comes after them."""
    for end in (at + 1, at + 2):
        said = listing.words[at:end]
        if not all(word.isalpha() and word not in _NO_NOUNS for word in said):
            return at
        if any(listing.number_at(place) for place in range(at, end)):
            return at
        if listing.words[end] in ("at", "@", "of") or listing.words[end : end + 2] == ["that", "are"]:
            return end
        if _each_at(listing, end):
            return end
    return at


def _each_at(listing: Listing, at: int) -> bool:
    """Whether the size of each is said there: nine battens | 1090 mm each."""
    return any(size.unit and listing.words[size.end] in ("each", "ea", "apiece") for size in listing.amounts(at))


def _name_first(listing: Listing, i: int) -> Item | None:
    """What they are, count, size: heads 3 @ 34."""
    word = listing.words[i]
    if not listing.number_at(i + 1) or not word.isalpha() or word in _NO_NAMES or word in STOCK or listing.number_at(i):
        return None
    if not any(listing.words[end] in ("@", "at", "×") for end, _ in listing.counts(i + 1)):
        return None
    found = _counted(listing, i + 1)
    if found is not None:
        found.start = i
    return found


def _size_first(listing: Listing, i: int) -> Item | None:
    """Size, times sign, count: 40" x 4; size, how many of them: 40 inches, 22 of them."""
    for amount in listing.amounts(i):
        at = amount.end + (listing.words[amount.end] in (",", "and"))
        for end, count in listing.counts(at) if amount.unit or amount.value >= _ROW_FROM else ():
            if count > 0 and listing.words[end] == "of" and listing.words[end + 1] in _THEM:
                return Item(i, end + 2, (amount,), count, led=True)
        if listing.words[amount.end] != "×" or (not amount.unit and amount.value <= _SMALL):
            continue
        for end, count in listing.counts(amount.end + 1):
            if 0 < count <= 1000 and not any(size.unit for size in listing.amounts(amount.end + 1)):
                return Item(i, listing.past(end, _TAILS), (amount,), count, sure=0.9)
    return None


def _one(listing: Listing, i: int) -> Item | None:
    """One piece: a 48, or a size in a list of sizes."""
    led = listing.words[i] in ("a", "an")
    for amount in listing.amounts(i + led):
        after = listing.words[amount.end]
        if not amount.unit and amount.value < _ROW_FROM and after not in ("a", "an") and listing.number_at(amount.end):
            continue  # and six | 19 1/4
        if not amount.unit and after == "of" and listing.words[amount.end + 1] in (*_THEM, "each"):
            continue  # ten | of each
        if not amount.unit and after in THINGS and after not in _NOUNS:
            continue  # five windows
        if not amount.unit and "same" in listing.words[amount.end : amount.end + 4]:
            continue  # and two | more of the same
        if after in STOCK or after in ("lengths", "length") or (led and amount.value < 1 and not amount.unit):
            continue
        return Item(i, listing.past(amount.end, _TAILS), (amount,), led=led)
    return None


def _reading(listing: Listing, items: list[Item]) -> Reading:
    amounts = [item.sizes[0] for item in items]
    lengths, plain = with_units(amounts, _default(listing, amounts))
    value = tuple(Piece(item.count, length) for item, length in zip(items, lengths, strict=True))
    sure = min(item.sure for item in items) * (1 if plain else 0.7)
    counted = [item.led for item in items]
    if counted[0] and not all(counted):
        sure *= 0.8  # "four at 40, 32 and 26": four of the first, or of each
    if not any(amount.unit for amount in amounts) and min(amount.value for amount in amounts) < _FEET_DOUBT:
        sure *= 0.9
    return Reading("pieces", items[0].start, items[-1].end, value, sure)


def _default(listing: Listing, amounts: list[Amount]) -> str:
    """The unit of a list that names none: inches, or millimetres where the rest of the sentence is metric."""
    if not listing.metric:
        return "mm" if max(amount.value for amount in amounts) >= _NO_INCHES else "in"
    return "mm" if max(amount.value for amount in amounts) >= 50 else listing.metric
