"""Sums of the only two lengths of a line, told by what is asked of them and no plus or less.

"From the 16 inch mark to the 61 inch mark", "a 46 inch window in the middle of 10 ft 4, how much each side", "one's 6'8, the
other's 5'11, total".
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.reading import Reading
from intents.sum_apart import OTHERS
from intents.sum_parts import Parts
from intents.sum_places import MIDDLE, two_lengths
from solvers.quantities import Number
from solvers.sums import DIVIDED, MINUS, PLUS, Part, Sum, plain_size, told_as_length

_MARKS, _APART = frozenset(("mark", "marks")), frozenset("from between distance apart".split())
_CENTRED = MIDDLE | frozenset("centred centered dead-centre".split())
_SIDES = frozenset((which, side) for which in ("each", "either", "both") for side in ("side", "end", "sides", "ends"))
_ASKS = frozenset("what what's whats how where ?".split())
_OTHER, _TOTAL = frozenset(("other", "second")), frozenset("total together altogether combined overall".split())
_LESS = frozenset(
    "each apiece longer shorter difference apart than left minus less off every gap gaps equal spaced centres".split()
)
_LAID_OUT = frozenset(  # marks on centre, panels with the same rip each side: no sum of the two
    "centres centers spacing every spaced spaces o.c oc panel panels cover covers coverage rip rips strip strips full whole"
    " layout lay laid start row rows pieces tile tiles flats".split()
)
CUES = _MARKS | _CENTRED | _OTHER
_ROOM = 1.1  # so many times as long as what stands in its middle, at the least
_HALF = Number(Fraction(2), "none")


def told_of_two(reader: Parts) -> Reading | None:
    """The sum that the whole line tells of its two lengths."""
    words = frozenset(reader.words)
    if CUES.isdisjoint(words) or not _LAID_OUT.isdisjoint(words) or words.isdisjoint(_ASKS | _APART | _TOTAL):
        return None
    said = None if words & OTHERS - _MARKS else two_lengths(reader)
    if said is None or not any(told_as_length(found.part) for _, found in said):
        return None
    (_, first), (_, second) = said
    long, short = sorted((first.part, second.part), key=plain_size, reverse=True)
    whole: Part | None = None
    if _marked(reader) and not _APART.isdisjoint(words) and MIDDLE.isdisjoint(words):
        whole = Sum(MINUS, long, short)
    elif not _CENTRED.isdisjoint(words) and any(pair in _SIDES for pair in pairwise(reader.words[second.end :])):
        room = plain_size(long) >= _ROOM * plain_size(short)  # type: ignore[operator]
        whole = Sum(DIVIDED, Sum(MINUS, long, short), _HALF) if room else None
    elif "one" in words and not _OTHER.isdisjoint(words) and not _TOTAL.isdisjoint(words) and _LESS.isdisjoint(words):
        whole = Sum(PLUS, first.part, second.part)
    return Reading("sum", 0, len(reader.tokens), whole) if whole is not None else None  # type: ignore[arg-type]


def _marked(reader: Parts) -> bool:
    """Whether both lengths are marks on a tape."""
    return sum(word == "mark" for word in reader.words) > 1 or "marks" in reader.words
