"""What is left each side of something in its opening: "rough opening 36 1/2, the unit's 35 3/4, what's the gap each side".

That is half of what is left in all. Read only where the line tells an opening, what goes in it, and no other size.
"""

from __future__ import annotations

from fractions import Fraction

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.sum_outlines import line_of, whole_line
from solvers.quantities import Number
from solvers.sums import DIVIDED, MINUS, Part, Sum, plain_size, told_as_length

_EACH_SIDE = expression(
    r"\b(?:gap|clearance|space|room|play|shims?|shimming|slack|left|leave|leaves|reveal)\b(?: \w+){0,4}? "
    r"(?:each|either|per|every|a) (?:side|end)\b"
)
_OPENINGS = frozenset("opening openings ro hole frame alcove recess gap jambs".split())
_GOES_IN = frozenset("unit window door fridge cabinet panel box sash frame stove oven vanity shower tub insert screen it".split())
_TAKEN = frozenset("casing trim boards board slats balusters posts pickets tiles tile want wants need pitch exposure".split())
_TWO = Number(Fraction(2), "none", "2")
_NEAR = Fraction(3, 2)  # times the size of what goes in, at most


def each_side(chart: Chart) -> Question | None:
    """Half of the difference between an opening and what goes in it, where the gap each side is asked."""
    said = frozenset(chart.words)
    if said.isdisjoint(_OPENINGS) or said.isdisjoint(_GOES_IN) or not said.isdisjoint(_TAKEN):
        return None
    line = line_of(chart)
    if line is None or not _EACH_SIDE.search(line.words):
        return None
    sizes: list[Part] = [part for part in line.parts if told_as_length(part)]
    sizes = sizes if len(sizes) == 2 else line.parts
    if len(sizes) != 2:
        return None
    small, large = sorted(sizes, key=plain_size)
    if not 0 < plain_size(small) < plain_size(large) <= _NEAR * plain_size(small):
        return None
    whole = Sum(DIVIDED, Sum(MINUS, large, small), _TWO)
    return whole_line(chart, whole, sorted(said & _OPENINGS))
