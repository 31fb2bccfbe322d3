"""Pitches told by what a roof rises in a run: "climbs 125 mm in every 300", "rise 400, run 1000", "7 inches of rise in 16"."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Length, Number, Pitch

SURE = 0.75  # the rise and the run stay lengths as well
LEAST_SURE = 0.7  # of each of the two
SLIGHT = 1 / 24  # of a run: half an inch in a foot
MOST_BETWEEN = 6  # words between the two
_RISE = frozenset(
    "rise rises rising rose climb climbs climbing up vertical vertically drop drops fall falls higher gains gain".split()
)
_RUN = frozenset("run runs running level horizontal horizontally across out back along flat".split())
_PER = frozenset("in over per every each across for".split())
_EACH = frozenset("every each per".split())
_LONG = frozenset("long length lengths distance hypotenuse".split())  # asked of a rise and a run, they are no pitch
_SMALL = frozenset(
    "a an the of is are at by to and with on its it it's it’s , ; for in over per every each from that = : its".split()
)
_GABLES = frozenset("gable gables peak ridge apex span".split())  # what these are across is their width: twice the run
_NOUNS = frozenset(("rise", "run"))
_SIZED = ("length", "number")


_BETWEEN = _SMALL | _RISE | _RUN


def grades(tokens: list[Token], found: list[list[Reading]]) -> Iterator[Reading]:
    """The pitches that two sizes said one after the other make, where words tell which is the rise."""
    words = [token.text for token in tokens]
    if _RISE.isdisjoint(words) and _RUN.isdisjoint(words) and _PER.isdisjoint(words):
        return
    sizes_matter = not _LONG.isdisjoint(words)
    for first, second in pairwise(_sizes(words, found)):
        between = words[first.end : second.start]
        if sizes_matter and _EACH.isdisjoint(between):
            continue
        if not 0 < len(between) <= MOST_BETWEEN or not _BETWEEN.issuperset(between):
            continue
        if "across" in (*between, *words[second.end : second.end + 1]) and not _GABLES.isdisjoint(words):
            continue
        bare = "number" in (first.kind, second.kind)
        near = (*words[max(0, first.start - 2) : first.start], *between, *words[second.end : second.end + 2])
        if bare and _PER.isdisjoint(between) and _NOUNS.isdisjoint(near):
            continue
        order = _order(words, first, second, between)
        slope = _slope(*order) if order is not None else None
        if slope is not None and 0 < slope <= 2:
            end = second.end + (words[second.end : second.end + 1] == ["run"])
            end += 2 * (words[second.end : second.end + 2] == ["of", "run"])
            yield Reading("pitch", first.start, end, Pitch(slope * 12, "in12"), SURE)


def _slope(rise: Reading, run: Reading) -> Fraction | None:
    """Rise over run. Where one has no unit it has that of the other; where neither has, any will do."""
    up, along = rise.value, run.value
    if isinstance(up, Length) and isinstance(along, Length):
        return up.to("in").value / along.to("in").value if along.value else None
    if not isinstance(up, Length | Number) or not isinstance(along, Length | Number) or not along.value:
        return None
    feet = next((size for size in (up, along) if isinstance(size, Length) and size.unit in ("ft", "m")), None)
    return None if feet is not None else up.value / along.value  # 4 feet in 12: feet, or 4 in 12


def _sizes(words: list[str], found: list[list[Reading]]) -> Iterator[Reading]:
    """The sizes and bare numbers of a line in order, none inside another."""
    past = 0
    for at, row in enumerate(found):
        if not row or at < past:
            continue
        sized = [r for r in row if r.kind in _SIZED and r.sure >= LEAST_SURE and isinstance(r.value, (Length, Number))]
        if not sized:
            continue
        best = max(sized, key=lambda r: (r.end, r.kind == "length", r.sure))
        pitch = best.kind == "number" and any(r.kind == "pitch" and r.end == best.end and r.sure > SURE for r in row)
        others = [r for r in row if (pitch or r.end > best.end) and r.kind not in _SIZED]  # five degrees, 9/12 over 6 ft, 40 %
        if not others:
            yield best
        past = max((r.end for r in others if r.sure >= SURE), default=best.end)  # of a nine twelve, twelve is no size either


def _slight(rise: Reading, run: Reading) -> bool:
    """Whether the first is so small beside the second that the two are a fall."""
    slope = _slope(rise, run) if isinstance(rise.value, Length) and isinstance(run.value, Length) else None
    return slope is not None and 0 < slope <= SLIGHT


def _order(words: list[str], first: Reading, second: Reading, between: list[str]) -> tuple[Reading, Reading] | None:
    """(rise, run), or None where no words tell."""
    if {*between} & _PER and {*between} <= _PER - {"over", "across", "for"} and _slight(first, second):
        return first, second  # a quarter inch in ten feet
    before = next((word for word in reversed(words[: first.start]) if word not in _SMALL), "")
    after = words[second.end : second.end + 2]
    told = [word for word in between if word in _RISE | _RUN]
    if before in _RISE:
        per = not _PER.isdisjoint(between)
        runs = any(word in _RUN for word in (*told, *after[:1])) or after == ["of", "run"]
        return (first, second) if (per or runs) and not any(word in _RISE for word in told) else None
    if before in _RUN and any(word in _RISE for word in (*told, *after[:1])):
        return second, first
    if told and told[0] in _RISE and (not _PER.isdisjoint(between) or any(w in _RUN for w in (*told[1:], *after))):
        return first, second
    if told and told[0] in _RUN and any(word in _RISE for word in (*told[1:], *after)):
        return second, first
    return None
