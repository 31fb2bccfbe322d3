"""Pitches told by what a roof rises in a run: "climbs 125 mm in every 300 mm", "rise 400 mm, run 1000 mm"."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Length, Pitch

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
_SMALL = frozenset("a an the of is are at by to and with on its it it's it’s , ; for in over per every each from that".split())


def grades(tokens: list[Token], found: list[list[Reading]]) -> Iterator[Reading]:
    """The pitches that two lengths said one after the other make, where words tell which is the rise."""
    words = [token.text for token in tokens]
    sized = [length for row in found if (length := _length(row)) is not None]
    sizes_matter = not _LONG.isdisjoint(words)
    for first, second in pairwise(sized):
        between = words[first.end : second.start]
        if sizes_matter and _EACH.isdisjoint(between):
            continue
        if not 0 < len(between) <= MOST_BETWEEN or not set(between) <= _SMALL | _RISE | _RUN:
            continue
        order = _order(words, first, second, between)
        if order is None:
            continue
        rise, run = (reading.value.to("in").value for reading in order)  # type: ignore[union-attr]
        if rise > 0 and run > 0 and rise <= 2 * run:
            end = second.end + (words[second.end : second.end + 1] == ["run"])
            yield Reading("pitch", first.start, end, Pitch(rise * 12 / run, "in12"), SURE)


def _length(row: list[Reading]) -> Reading | None:
    """The longest length said with its unit at a place."""
    lengths = [r for r in row if r.kind == "length" and r.sure >= LEAST_SURE and isinstance(r.value, Length)]
    return max(lengths, key=lambda r: (r.end, r.sure), default=None)


def _slight(rise: Reading, run: Reading) -> bool:
    """Whether the first is so small beside the second that the two are a fall."""
    small, large = (reading.value.to("in").value for reading in (rise, run))  # type: ignore[union-attr]
    return bool(0 < small <= SLIGHT * large)


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
