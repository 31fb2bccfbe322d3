"""What the words of a story leave a length of it to do: "3 1/2 either side" is added or taken off twice, whatever else is said.

The second reader of sums learned what lengths do from sentences, and is at times sure of a casing taken once though it stands on
either side. What is told in so many words is therefore not left to it.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.chart import Chart, once
from intents.features import Mention
from intents.learned import NOTHING
from intents.sum_counts import ENDS, counted, counts_things, ends_said
from intents.sum_cues import is_plural
from intents.sum_parts import Found, Parts
from intents.sum_words import STOPS
from intents.whole_sums import ADDED, ADDED_TWICE, LENGTHWAYS, OF_LAST, OF_NEXT, TAKEN, TAKEN_TWICE
from solvers.quantities import Length, Number
from solvers.sums import MINUS, PLUS, TIMES, Part, Sum

# Where these are said, each side may be what is left at it: centred, half each side, same both ends.
SHARED = frozenset(
    "half halves halve halved centre center centred centered middle mid midway same equal equally even evenly split share"
    " divide divided halfway midpoint centreline centerline centring centering balance".split()
)
_COUNTED = frozenset("of between for".split())  # each side | of three boards
_ALREADY = frozenset("already included counted counting including includes".split())
MOST_LEADING = 8  # words from one length to the next
_FACES, _NEAR = frozenset("walls wall groove grooves stile stiles face faces jambs jamb leaf leaves".split()), 3
_LEDS = frozenset("on at off for from into to in".split())
_DOUBLED, _ALTOGETHER = (TAKEN_TWICE, ADDED_TWICE), frozenset(("altogether", "total", "overall"))
_SIDEWAYS = frozenset("wide long high deep thick tall".split())
_PLACED = frozenset("marks holes notches joists lines screws studs joints bolts".split())  # at a place, and not of a size
_AT = frozenset(("at", "of", "@"))
_ASKED = frozenset("what whats what's which how".split())
_ROWS = frozenset("courses boards slats pickets panels battens straps rows posts shelves treads risers spaces gaps".split())


class _Plain(Parts):
    """The parts of a line, none in brackets."""

    def chain(self, i: int) -> Found | None:
        """Nothing."""
        return None


@once
def parts_of(chart: Chart) -> Parts:
    """The parts of a sum that a sentence holds, by place."""
    return _Plain(chart.tokens, chart.every, True)


def bound(chart: Chart, found: Sequence[Mention], names: Sequence[list[str]]) -> list[list[str]]:
    """What each quantity may do, of what it could by its kind alone."""
    names = [[OF_NEXT] if _counts_at(chart, found, n) and OF_NEXT in mine else mine for n, mine in enumerate(names)]
    names = [[NOTHING] if _stands_between(chart, found[n]) else mine for n, mine in enumerate(names)]
    if "each" in chart.words and any(isinstance(mention.reading.value, Length) for mention in found):
        rows = [_of_rows(chart, mention) for mention in found]
        names = [[n for n in mine if not (row and n in LENGTHWAYS)] for row, mine in zip(rows, names, strict=True)]
    if "again" in chart.words:
        names = [[ADDED_TWICE] if _same_again(chart.words, found[n].end) else mine for n, mine in enumerate(names)]
    once_only = [_in_all(chart, found, n) for n in range(len(found))]
    names = [[n for n in mine if not (once and n in _DOUBLED)] for once, mine in zip(once_only, names, strict=True)]
    words = set(chart.words)
    if not words.isdisjoint(SHARED | _ALREADY):
        return [*names]
    twice = (_twice(chart, found, n) or _on_both(chart, found, n) for n in range(len(found)))
    return [[TAKEN_TWICE, ADDED_TWICE, NOTHING] if both else mine for both, mine in zip(twice, names, strict=True)]


def _of_rows(chart: Chart, mention: Mention) -> bool:
    """Whether a whole number counts courses or the like, and is no length where each is asked for: 2 inches short, 14 courses."""
    value = mention.reading.value
    whole = isinstance(value, Number) and value.unit == "none" and value.value.denominator == 1 and value.value > 1
    return whole and not _ROWS.isdisjoint(chart.words[mention.end : mention.end + 1])


def _stands_between(chart: Chart, mention: Mention) -> bool:
    """Whether a number counts what something is between: 14 1/2 between 2 studs."""
    led = chart.words[max(0, mention.start - 1) : mention.end] in (["between", "2"], ["between", "two"])
    return led and SHARED.isdisjoint(chart.words) and counts_things(parts_of(chart), parts_of(chart).value(mention.start))


def _same_again(words: Sequence[str], end: int) -> bool:
    """Whether a length is told once more in so many words: 28 3/4 | plus the same again."""
    after = [word for word in words[end : end + _NEAR + 2] if word not in ("the", ",")]
    return after[:1] in (["plus"], ["and"], ["then"]) and after[1:3] == ["same", "again"]


def _in_all(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a length is told of all of them together: a quarter of shim | altogether, half an inch play overall."""
    after = chart.words[found[n].end : found[n].end + _NEAR + 2]
    stop = next((at for at, word in enumerate(after) if word in STOPS or word in ("and", "so", "what", "how")), len(after))
    only = any(a == "one" and b in ("end", "side") for a, b in pairwise(after[:stop])) or "only" in after[:stop]
    return only or not _ALTOGETHER.isdisjoint(after[:stop])


def _twice(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a length is told of both ends, and is counted by no number besides."""
    reader, end = parts_of(chart), found[n].end
    if n and counts_next(chart, found, n - 1):
        return False
    past = ends_said(reader, end)
    if not past:
        return _led_by_ends(reader, found, n)
    return reader.words[past] not in _COUNTED and _ASKED.isdisjoint(chart.words[end:past])


def _counts_at(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a number counts things at a size: nine risers at | seven and a quarter."""
    if n + 1 >= len(found):
        return False
    between, size = chart.words[found[n].end : found[n + 1].start], found[n + 1].reading.value
    after = [word for word in chart.words[found[n + 1].end : found[n + 1].end + 2] if word not in _SIDEWAYS]
    things = 0 < len(between) <= _NEAR and any(map(is_plural, between)) and STOPS.isdisjoint(between)
    if things and after[:1] in (["each"], ["apiece"]):
        return True  # two side panels | 19 3/4 each
    exact = isinstance(size, Length) or size.value.denominator > 1  # type: ignore[union-attr]
    return len(between) == 2 and between[1] in _AT and is_plural(between[0]) and between[0] not in _PLACED and exact


def _on_both(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a length is told of both of two walls or grooves: 3/4 on both walls, 1/2 into each groove, both 31 1/2."""
    words, start, end = chart.words, found[n].start, found[n].end
    if words[start - 1 : start] == ["both"]:
        return words[end : end + 1] not in (["and"], [","], ["&"])
    at = next((at for at in range(end, min(end + _NEAR, len(words))) if words[at] in ("both", "each", "either")), None)
    return at is not None and words[at + 1 : at + 2] != [] and words[at + 1] in _FACES and _LEDS.issuperset(words[end:at])


def _led_by_ends(reader: Parts, found: Sequence[Mention], n: int) -> bool:
    """Whether both ends are named before a length, and go with no length before that: siding both ends, | 5/8."""
    start = found[n - 1].end if n else 0
    between = reader.words[start : found[n].start]
    if len(between) > MOST_LEADING or (n and ends_said(reader, start)):
        return False
    for at in range(len(between) - 1):
        if n and STOPS.isdisjoint(between[:at]):
            continue  # 1/4 less each side | than the 34 3/4
        if between[at + 1] not in ENDS or not _ASKED.isdisjoint(between[at:]):
            continue
        placed = between[at - 1 : at] in (["at"], ["on"], ["off"]) or between[at + 2 : at + 3] == [","]
        if between[at] in ("each", "either") or (between[at] == "both" and placed):
            return True
    return False


def counts_next(chart: Chart, found: Sequence[Mention], n: int) -> bool:
    """Whether a number counts the length after it: three | pieces at 22, two | ten footers."""
    if n + 1 >= len(found):
        return False
    several = counted(parts_of(chart), found[n].start)
    return several is not None and isinstance(several.part, Sum) and found[n + 1].end <= several.end


def adds_a_count(chart: Chart, found: Sequence[Mention], roles: Sequence[str]) -> bool:
    """Whether what is added or taken off counts things whose size is not told: 96 less 2 plates are not 94."""
    reader = parts_of(chart)
    once = [mention for mention, role in zip(found, roles, strict=True) if role in (ADDED, TAKEN)]
    return any(counts_things(reader, reader.value(mention.start)) for mention in once[1:])


def each_untold(whole: Part) -> Sum | None:
    """The sum with so many of a size that is not told in the place of how many they are; None where it is another shape."""
    if not isinstance(whole, Sum) or whole.operation not in (PLUS, MINUS) or not isinstance(whole.right, Number):
        return None
    return Sum(whole.operation, whole.left, Sum(TIMES, whole.right, None))


def drops_count(chart: Chart, found: Sequence[Mention], roles: Sequence[str]) -> bool:
    """Whether a length is taken in once that a number before it counts: two ten footers, less 8, are not ten foot less 8."""
    return any(
        role == NOTHING and roles[n + 1] != NOTHING and OF_LAST not in roles[n + 1 : n + 3] and counts_next(chart, found, n)
        for n, role in enumerate(roles[:-1])
    )

