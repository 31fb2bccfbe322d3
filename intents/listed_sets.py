"""How many times a list of pieces is wanted: "three windows, each takes two at 60 and two at 38"."""

from __future__ import annotations

from intents.listed import Listing

_THINGS = frozenset(
    "windows doors openings corners gables frames sets dormers sides boxes columns posts bays panels gates shutters units ends"
    " walls screens".split()
)
_EACH = frozenset(("each", "every", "apiece"))
_TAKES = frozenset(
    "each every one of them these those which takes take needs need has have gets wants want with at : , . is being a window door"
    " opening corner gable set frame i it and that's that requires uses use made of".split()
)
_REACH, MOST = 9, 40


def sets_before(listing: Listing, start: int, counts: list[int]) -> tuple[int, int]:
    """How many times the list of so many pieces that starts at a place is wanted, and where that is said; one where nothing is.

    "Three windows: 6 at 54 and 3 at 39" are the pieces of all three: they are wanted once.
    """
    words = listing.words
    at = start - 1
    while at >= 0 and start - at <= _REACH and words[at] in _TAKES:
        at -= 1
    if at < 0 or words[at] not in _THINGS:
        return 1, start
    each = not _EACH.isdisjoint(words[at + 1 : start])
    for first in (at - 1, at - 2, at - 3):
        if first < 0:
            break
        for end, count in listing.counts(first):
            if 1 < count <= MOST and end in (at, at - 1) and not any(listing.number_at(k) for k in range(end, at)):
                if each:
                    return count, first
                of_all = all(n % count == 0 for n in counts) and max(counts) >= 2 * count
                return 1, first if of_all else start
    return 1, start
