"""Which quantities of a story are no part of its sum: what is set aside in so many words, and a number that only says how many
things there are ("the two piers", "three drawers stacked, 19 1/4, 22 3/4 and 14", "three plates coming to 4 1/2 all told").
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents import by_the_way
from intents.chart import Chart, span
from intents.features import Mention
from intents.reading import Dims
from intents.remarks import clauses
from intents.sum_cues import is_plural
from intents.sum_retold import retold
from intents.told_aside import told_aside
from solvers.quantities import Length, Number

_THESE = frozenset("the these those between both all my our".split())
_EACH = frozenset("each apiece every at of @".split())
_COMES = frozenset("coming come comes total totals totalling totaling adding add amounting".split())
_ALTOGETHER = frozenset("told altogether together all total between".split())
_JOINS = frozenset((",", "and", "a", "an", "then", "one", "the", "another", "&", "plus", "last"))
_OF_LENGTH = frozenset("inches inch feet foot ft mm millimetres millimeters metres meters m cm in of".split())
_ANGLES, _IS = (60, 179), frozenset("is of reads opens measures".split())  # degrees
_MOST, _NEAR = 12, 4  # things; words
_NOMINAL = ((1, 2, 4, 6), (2, 3, 4, 6, 8, 10, 12))  # inches, by what lumber is called


def of_the_sum(chart: Chart, found: Sequence[Mention]) -> list[Mention]:
    """The quantities without those that are none of the sum's."""
    aside, sections = told_aside(chart) | retold(chart, found), _sections(chart)
    places = list(clauses(chart.words)) if not by_the_way.CUES.isdisjoint(chart.words) else []
    return [
        each for n, each in enumerate(found)
        if not (aside | sections) & span(each.start, each.end)
        and not (_by_the_way(chart, places, each) or _names_how_many(chart, found, n) or _said_again(chart, found, n))
    ]  # fmt: skip


def of_a_corner(words: Sequence[str], found: Sequence[Mention]) -> bool:
    """Whether a bare number is the angle of a corner, which no length is put on or taken off: the corner is 118."""
    bare = (m for m in found if isinstance(m.reading.value, Number) and _ANGLES[0] <= m.reading.value.value <= _ANGLES[1])
    return any(_IS.issuperset(words[m.start - 1 : m.start]) and words[m.start - 2 : m.start - 1] == ["corner"] for m in bare)


def spaced(words: Sequence[str], found: Sequence[Mention]) -> bool:
    """Whether the one number of a line is a spacing, of which there is no half: go 12 on centre; not on the centre of 12."""
    after = [*words[found[0].end :], "", "", ""] if len(found) == 1 else [""] * 3
    at = after[0] in ("in", "inch", "inches", "mm")
    return after[at] == "on" and after[at + 1] in ("centre", "center", "centres", "centers") and after[at + 2] != "of"


def counts_things(words: Sequence[str], found: Sequence[Mention]) -> bool:
    """Whether it is asked how many things there are, and lengths are told, which come to no count of them; or one is the most
    that may be: posts at 8 foot max."""
    if any(words[m.end : m.end + 1] in (["max"], ["maximum"]) for m in found):
        return True
    asked = [after for word, after in pairwise([*words, ""]) if word == "many"]
    lengths = any(isinstance(m.reading.value, Length) for m in found)
    return lengths and bool(asked) and _OF_LENGTH.isdisjoint(asked)


def _sections(chart: Chart) -> int:
    """Mask of what lumber is called by: a 2x8 ledger, a two by six wall."""
    mask = 0
    for row in chart.readings:
        for reading in row:
            if reading.kind == "dims" and isinstance(reading.value, Dims) and len(reading.value.parts) == len(_NOMINAL):
                sizes = [part.value.value for part in reading.value.parts if isinstance(part.value, Number)]
                if len(sizes) == len(_NOMINAL) and all(size in may for size, may in zip(sizes, _NOMINAL, strict=True)):
                    mask |= span(reading.start, reading.end)
    return mask


def idle_tokens(chart: Chart, every: Sequence[Mention], found: Sequence[Mention]) -> frozenset[int]:
    """The tokens of the quantities that are none of the sum's, now or by what was left out before."""
    idle = {at for each in every if each not in found for at in range(each.start, each.end)}
    gone = chart.kept.get("gone", 0)
    return frozenset(idle | {at for at in range(len(chart.words)) if gone >> at & 1})


def _by_the_way(chart: Chart, places: Sequence[tuple[int, int]], mention: Mention) -> bool:
    words = chart.words
    place = next((each for each in places if each[0] <= mention.start < each[1]), None)
    if place is None:
        return False
    if by_the_way.set_aside(words, mention.reading):
        return True
    others = frozenset(words[: place[0]] + words[place[1] :])
    return by_the_way.by_the_way(words, place, mention.reading, others)


def _names_how_many(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a number only says how many things there are, and multiplies nothing."""
    value, words, end = found[n].reading.value, chart.words, found[n].end
    if not isinstance(value, Number) or value.value.denominator > 1 or not 1 < value.value <= _MOST:
        return False
    if end >= len(words) or not is_plural(words[end]) or n + 1 >= len(found):
        return False
    between = words[end : found[n + 1].start]
    if not _EACH.isdisjoint(between) or not _EACH.isdisjoint(words[found[n + 1].end : found[n + 1].end + 1]):
        return False
    if words[found[n].start - 1 : found[n].start] and words[found[n].start - 1] in _THESE and len(between) > 1:
        return True
    if not _COMES.isdisjoint(between):
        return not _ALTOGETHER.isdisjoint(words[found[n + 1].end : found[n + 1].end + 2])
    return "," in between and _listed(words, found[n + 1 :]) == value.value


def _said_again(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether the same size comes again, after a so: three thirty-seconds all round so | 3/32 each end."""
    if not n or chart.words[found[n].start - 1] != "so":
        return False
    one, other = found[n - 1].reading.value, found[n].reading.value
    return bool(one.value == other.value and found[n].start - found[n - 1].end <= _NEAR)  # type: ignore[union-attr]


def _listed(words: Sequence[str], found: Sequence[Mention]) -> int:
    """How many lengths stand in a row."""
    count = 1
    for before, after in pairwise(found):
        if not _JOINS.issuperset(words[before.end : after.start]):
            break
        count += 1
    return count
