"""Whether a story tells outright what each of its lengths does: by a word beside each ("half an inch more", "the finials eat
1 3/8"), by asking how far two are apart, or for the middle.

Of 700 such sums told by rules 685 were right, and most of the rest are told apart here: what the saw takes with each cut,
"a sixteenth strong of", and what is raised under what is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.sum_cues import Line
from intents.sum_fitted import around_it, fitted, stands_on, trimmed, within
from intents.sum_listed import all_of_it, inside_out, listed
from intents.sum_told import (
    Told,
    at_centres,
    base_of,
    before_it,
    centred,
    difference,
    halved,
    is_left,
    middle_of_rest,
    said_of,
)
from intents.whole_sums import ADDED, ADDED_TWICE, DIVIDES, LENGTHWAYS, OF_LAST, OF_NEXT, TAKEN_TWICE

_EACH_CUT = frozenset(
    (("each", "cut"), ("every", "cut"), ("per", "cut"), ("a", "cut"), ("each", "time"), ("every", "time"), ("every", "one"))
)
_SHARES = frozenset((part, "of") for part in ("quarter", "quarters", "third", "thirds", "half"))
_TO_BE = _SHARES | {("strong", "of"), ("shy", "a"), ("shy", "of"), ("over", "of"), ("smaller", "from"), ("divide", "by")}
_GROWN = frozenset("thicker wider longer taller bigger raised".split())  # of a thing that stands in what is asked
_SPACE = frozenset("opening clearance clear headroom gap between space left".split())
_PARTED = frozenset("equal equally evenly divide divided shared parts spaced".split())
_MIDDLE = frozenset("middle centre center centred centered".split())
_BLADE = frozenset("blade kerf saw".split())
_SHARED = frozenset("divide divided split third thirds quarter times twice double same".split())
_SHAPES = (  # each tells a whole sum
    trimmed, halved, at_centres, centred, listed, difference, fitted, around_it, within, inside_out, stands_on, all_of_it,
    middle_of_rest,
)  # fmt: skip


def outright(line: Line, told: Told) -> bool:
    """Whether every part of the sum that the rules made is told in so many words."""
    pairs = frozenset(pairwise(line.words))
    if not pairs.isdisjoint(_EACH_CUT | _TO_BE) or not line.said.isdisjoint(_SHARED):
        return False
    if not line.said.isdisjoint(_BLADE) and not is_left(line.asked):
        return False  # to which side of the blade
    if any(line.left[n][-1:] == ["the"] and line.sizes[n] in line.sizes[:n] for n in range(len(line.spans))):
        return False  # the one inch that was burned
    shape = next((shape for shape in _SHAPES if shape(line) == told), None)
    if shape is not None:
        return True
    if not line.said.isdisjoint(_GROWN) and not line.asks.isdisjoint(_SPACE):
        return False
    counts = line.counts()
    lengths = [n for n, role in enumerate(counts) if not role]
    base = base_of(line, lengths)
    signs: dict[int, int] = {}
    for n in lengths:
        signs[n] = 1 if n == base else said_of(line, n, before_it(line, n, base, signs))
    return all(signs.values())


def lets_parts_fall(line: Line, found: Told) -> bool:
    """Whether equal parts are spoken of, or what each is, and the sum makes none, nor takes any length more than once."""
    several = any(role in (OF_NEXT, OF_LAST, ADDED_TWICE, TAKEN_TWICE) for role in found[0])
    parted = not line.said.isdisjoint(_PARTED) or not (several or {"each", "apiece"}.isdisjoint(line.said))
    return parted and DIVIDES not in found[0] and not found[1]


def in_the_middle(line: Line) -> Told | None:
    """What stands in the middle of something longer, what is left each side being asked in those words."""
    asks = line.asks
    if line.said.isdisjoint(_MIDDLE) or {"each", "either"}.isdisjoint(asks):
        return None
    return centred(line)


def contradicted(line: Line, roles: Sequence[str]) -> bool:
    """Whether a sum adds a length that the word beside it takes off, or the other way: sank half an inch, two inches more."""
    lengths = [n for n, role in enumerate(line.counts()) if not role]
    base = base_of(line, lengths) if lengths else -1
    signs = ((said_of(line, n, 0), roles[n][0]) for n in lengths if n != base and roles[n] in LENGTHWAYS)
    return any((said < 0 and role == ADDED) or (said > 0 and role != ADDED) for said, role in signs)
