"""Every way to read the quantities of a line one after the other, with none of them let fall; the surest first.

"fifty by thirty two ten twelve two foot" is 50 by 32, 10 in 12 and 2 feet, or 50 by 30, 2-10 in 12 and 2 feet. A topic's own
reader takes the first way in which each quantity has a place by the words beside it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import reduce
from itertools import islice
from operator import or_

from intents.chart import Chart, once, span
from intents.reading import SIZED, Dims, Reading

Row = tuple[Reading, ...]
WAYS, PARTED = 24, 0.8  # ways that are followed; and how much surer one reading is than the same words read as two
_ARTICLES = frozenset("a an one for to too ate no".split())  # which may be no number
HARDLY = 0.2  # how sure what is hardly said is
_MOST = 9  # quantities of a line that a reader looks at


def every_size(chart: Chart, fits: Callable[[Reading], bool]) -> list[Row]:
    """The ways to read all quantities of the line by readings that fit, the surest first."""
    ways: list[tuple[float, int, Row]] = [(1.0, 0, ())]
    done: list[tuple[float, Row]] = []
    while ways:
        ways.sort(key=lambda way: -way[0])
        grown: list[tuple[float, int, Row]] = []
        for sure, so_far, row in islice(ways, WAYS):
            at = _next(chart, so_far)
            if at == len(chart.words):
                done.append((sure, row))
                continue
            here = [r for r in (*_as_read(chart, at), *_cut_short(chart, at)) if fits(r)]
            here += [r for n in range(so_far, at) for r in chart.readings[n] if r.end > at and fits(r)]  # foam 3 in
            if len(row) < _MOST:
                grown += [(sure * PARTED * r.sure, r.end, (*row, r)) for r in here]
            if chart.words[at] in _ARTICLES:
                grown.append((sure * (PARTED if here else 1.0), at + 1, row))
        ways = grown
    return [row for _, row in sorted(done, key=lambda way: -way[0])]


def _as_read(chart: Chart, at: int) -> Iterator[Reading]:
    """What begins at a place; 5/12 is no number where it is a pitch."""
    row = chart.readings[at]
    pitches = {r.end for r in row if r.kind == "pitch" and r.sure == 1}
    return (r for r in row if r.kind != "number" or r.end not in pitches)


def _cut_short(chart: Chart, at: int) -> Iterator[Reading]:
    """Sizes said together whose last was read with a part of the pitch after it: 40x28 | 5/12, thirty by forty | ten twelve."""
    for size in chart.readings[at]:
        if not isinstance(size.value, Dims):
            continue
        *rest, last = size.value.parts
        for part in chart.readings[last.start]:
            pitched = part.end < size.end and any(r.kind == "pitch" and r.end >= size.end for r in chart.readings[part.end])
            if pitched and part.kind in ("number", "length"):
                yield Reading(size.kind, at, part.end, Dims((*rest, part)), part.sure)


def _next(chart: Chart, at: int) -> int:
    """The next token that is part of a quantity."""
    mask = _said(chart)
    while at < len(chart.words) and not mask >> at & 1:
        at += 1
    return at


@once
def _said(chart: Chart) -> int:
    """Mask of the tokens of quantities that are likely to be said: no "a square" of house."""
    sure = (r for row in chart.readings for r in row if isinstance(r.value, SIZED) and r.sure > HARDLY)
    return reduce(or_, (span(r.start, r.end) for r in sure), 0)


def before(chart: Chart, reading: Reading, row: Sequence[Reading], far: int) -> list[str]:
    """The words right before a quantity of the row, back to the quantity before it, as many as `far`, the nearest last."""
    start = max((r.end for r in row if r.end <= reading.start), default=0)
    return chart.words[max(start, reading.start - far) : reading.start]


def after(chart: Chart, reading: Reading, row: Sequence[Reading], far: int) -> list[str]:
    """The words right after a quantity of the row, up to the next quantity, as many as `far`."""
    end = min((r.start for r in row if r.start >= reading.end), default=len(chart.words))
    return chart.words[reading.end : min(end, reading.end + far)]


def clause(words: Sequence[str], *, backwards: bool = False) -> list[str]:
    """The words up to a stop, or back to one: no word of another clause tells what a quantity is."""
    order = [*reversed(words)] if backwards else [*words]
    taken = list(_up_to_stop(order))
    return [*reversed(taken)] if backwards else taken


def _up_to_stop(words: Sequence[str]) -> Iterator[str]:
    for word in words:
        if word in _STOPS:
            return
        yield word


_STOPS = frozenset(".,;:?!")
