"""A wall that is higher at one end than at the other: 9 foot at one end and 8 at the other, 20 foot long.

Its two heights are no run of so much, and none of them is how long it is: it is as high as half of both together.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.leaning_told import told_of_lengths
from intents.placing import heard_as
from intents.question import Heard, Question
from solvers.quantities import Length

_SIDES = {
    "wall area": ("length", "height"), "squares": ("wall_length", "wall_height"),
    "cladding boards": ("wall_length", "wall_height"), "membrane rolls": ("wall_length", "wall_height"),
}  # fmt: skip
_END = r"(?:one|other|low|high|short|tall|front|back|far|near)"
_HIGH = expression(
    rf"@(?: (?:high|tall))?(?: (?:at|on))?(?: the)? {_END}\b(?: (?:end|side))?"
    r"(?! (?:wall|walls|elevation|gable|building|house)\b)"
    r"|\b(?:slopes|goes|drops|runs|tapers|rises|falls) from @|\bfrom L(?: high| tall)?(?: (?:down|up))? to @"
)
_LONG = expression(r"@ (?:long|wide|across)\b|\blength(?: of| is)? @")
SIZES = 3


def two_ends(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Make one height of both ends', and give the wall its length."""
    first = next(iter(questions), None)
    sides = _SIDES.get(first.topic) if first is not None else None
    told = told_of_lengths(chart) if sides else None
    if first is None or sides is None or told is None or len(told.found) != SIZES:
        return
    lines = [told.at(n) for n in range(SIZES)]
    high = [n for n, line in enumerate(lines) if _HIGH.search(line)]
    long = [n for n, line in enumerate(lines) if n not in high and _LONG.search(line)]
    if len(high) != 2 or len(long) != 1:
        return
    places = {p.name: p for p in topics[first.topic]}
    heard = {n: heard_as(chart, places[sides[0 if n in long else 1]], reading, True) for n, reading in enumerate(told.found)}
    if any(h is None or not isinstance(h.value, Length) for h in heard.values()):
        return
    one, other = (heard[n] for n in high)
    height = _middle(one, other, [told.found[n].kind == "number" for n in high])  # type: ignore[arg-type]
    taken = [(h.start, h.end) for h in heard.values() if h is not None]
    kept = {n: h for n, h in first.givens.items() if not any(h.start < end and start < h.end for start, end in taken)}
    first.givens = kept | {sides[0]: heard[long[0]], sides[1]: height}  # type: ignore[assignment]
    first.unplaced, first.swaps, first.missing = [], [], []


def _middle(one: Heard, other: Heard, bare: list[bool]) -> Heard:
    """Half of both together; a height with no unit is in that of the other."""
    first, second = one.value, other.value
    if bare[0] != bare[1]:
        first = replace(first, unit=second.unit) if bare[0] else first
        second = replace(second, unit=first.unit) if bare[1] else second
    text = f"half of {one.text} + {other.text}"
    return replace(other, value=Length((first.value + second.to(first.unit).value) / 2, first.unit, text), text=text, others=())
