"""What a story of lengths tells was so before, and that another has taken the place of: no part of its sum.

"The wall was 31 foot 2 yesterday but that was over the old trim, it's 30 foot 10, less 5 1/2 each end", "had it at 66 1/4 but
make that 65 3/4, less an eighth each end", "last board was 40 and way too long". Where how far the two are apart is asked, both
stay.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.chart import Chart, once, span
from intents.features import Mention
from intents.remarks import ENDS
from intents.whole_sums import sizes_of

_LONG_AGO = frozenset("yesterday originally previously earlier initially".split())
_FORMER = frozenset("old last previous original first".split())
_WAS = frozenset("was were had measured cut came".split())
_NOW = frozenset("now make new its it's actually really today taped finished call".split())
_APART = frozenset(
    "difference differ than change changed grow grown grew shrink shrunk move moved moves swell swelled gain gained apart average"
    " settled sunk sank dropped rose lost replaced together total altogether combined both sum plus add".split()
)
CUES = _LONG_AGO | _FORMER | frozenset(("had", "before"))
_NEAR = 1.2  # times as long, at most, of two sizes of one thing
_FEWEST = 3  # lengths
_AFTER_LEAD = 3  # words from the old one to was


@once
def _clauses(chart: Chart) -> list[tuple[int, int]]:
    """The stretches between stops, and the words that turn to what holds."""
    stops = [at for at, word in enumerate(chart.words) if word in ENDS or word in ("but", "so")]
    bounds = [-1, *stops, len(chart.words)]
    return [(a + 1, b) for a, b in pairwise(bounds) if b > a + 1]


def retold(chart: Chart, found: Sequence[Mention]) -> int:
    """Mask of what was so before, where another of about the same size holds now."""
    words = chart.words
    if len(found) < _FEWEST or CUES.isdisjoint(words) or not _APART.isdisjoint(words) or ("how", "much") in pairwise(words):
        return 0
    sizes = sizes_of(found)
    mask = 0
    for place in _clauses(chart):
        told = [n for n, each in enumerate(found) if place[0] <= each.start < place[1]]
        if len(told) != 1:
            continue
        n = told[0]
        others = [m for m, size in enumerate(sizes) if m != n and max(size, sizes[n]) <= _NEAR * min(size, sizes[n])]
        before = words[place[0] : found[n].start]
        if len(others) == 1 and _was_so(words[place[0] : place[1]], before, words, found[n].end, found[others[0]]):
            mask |= span(found[n].start, found[n].end)
    return mask


def _was_so(clause: Sequence[str], before: Sequence[str], words: Sequence[str], end: int, other: Mention) -> bool:
    """Whether a clause tells how something was, against what another length says that it is."""
    former = next((at for at, word in enumerate(before) if word in _FORMER), None)
    if former is not None and not _WAS.isdisjoint(before[former : former + _AFTER_LEAD + 1]) and "is" not in before:
        return True  # the old sill was | 41, last board was | 40
    later = other.start > end and not _NOW.isdisjoint(words[max(end, other.start - _AFTER_LEAD) : other.start])
    if not later or _WAS.isdisjoint(before):
        return False
    return not _LONG_AGO.isdisjoint(clause) or "had" in before or words[end : end + 1] == ["before"]
