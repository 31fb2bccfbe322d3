"""How many times a list of pieces is wanted: "three windows, each takes two at 60 and two at 38"."""

from __future__ import annotations

from intents.listed import Listing

THINGS = frozenset(
    "windows doors openings corners gables frames sets dormers sides boxes columns posts bays panels gates shutters units ends"
    " walls screens".split()
)
_EACH = frozenset(("each", "every", "apiece"))
_TAKES = frozenset(
    "each every one of them these those which takes take needs need has have gets wants want with at : , . is being a window door"
    " opening corner gable set frame i it and that's that requires uses use made of".split()
)
_THERE = frozenset("there is are i've we've got have and so i it's , . : ;".split())
_FOR, _PER = frozenset(("for", "on", "at", ",", "to")), frozenset(("each", "every", "of", "per", "a"))
_NEEDS = frozenset("needs takes gets wants has".split())
_REACH, MOST = 9, 40


def sets_of(listing: Listing, start: int, end: int, counts: list[int]) -> tuple[int, int, int]:
    """How many times the list of so many pieces from start to end is wanted, and where it begins and ends with that.

    "Three windows: 6 at 54 and 3 at 39" are the pieces of all three: they are wanted once.
    """
    words = listing.words
    if (per := _per_thing(listing, start, end)) is not None:
        return per
    if (after := _for_each(listing, end)) is not None:
        return after[1], start, after[0]
    at = start - 1
    while at >= 0 and start - at <= _REACH and words[at] in _TAKES:
        at -= 1
    if at < 0 or words[at] not in THINGS:
        return 1, start, end
    each = not _EACH.isdisjoint([*words[at + 1 : start], *words[end + (words[end] == "for") :][:1]])
    for first in (at - 1, at - 2, at - 3):
        if first < 0:
            break
        for past, count in listing.counts(first):
            if 1 < count <= MOST and past in (at, at - 1) and not any(listing.number_at(k) for k in range(past, at)):
                if each:
                    return count, first, end
                of_all = all(n % count == 0 for n in counts) and max(counts) >= 2 * count
                return 1, first if of_all else start, end
    return 1, start, end


def _per_thing(listing: Listing, start: int, end: int) -> tuple[int, int, int] | None:
    """How many things there are where a list is told of one: per window | two at 54, one at 40. Five windows."""
    words = listing.words
    name = start - 1 - (words[start - 1] in (":", ","))
    name -= words[name] in _NEEDS  # each window needs | two at 62 and two at 40, and there's four windows
    if name < 1 or words[name - 1] not in ("per", "each", "every") or f"{words[name]}s" not in THINGS:
        return None
    for at in range(len(listing.tokens)):
        for last, count in listing.counts(at):
            if 1 < count <= MOST and words[last] == f"{words[name]}s":
                told = end <= at and all(word in _THERE for word in words[end:at])
                return count, name - 1, last + 1 if told else end
    return None


def _for_each(listing: Listing, end: int) -> tuple[int, int] | None:
    """How many things a list is wanted for, told after it, and where that ends: for each of five doors; per door, five doors."""
    words = listing.words
    at = listing.past(end, _FOR, 1)
    if words[at] not in _PER:
        return None
    each = listing.past(at, _PER, 2)
    if f"{words[each]}s" in THINGS:
        each = listing.past(listing.past(each + 1, frozenset((",", ".", ";", "and", "for")), 2), _THERE)
    for last, count in listing.counts(each):
        named = last + (words[last] not in THINGS)
        if 1 < count <= MOST and words[named] in THINGS:
            return named + 1, count
    return None
