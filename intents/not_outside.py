"""What is a question for this program though most lines in such words are not."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question
from solvers.quantities import Area, Length, Weight
from solvers.sums import TIMES, Sum, leaves

_CROSS = frozenset("diagonal diag hypotenuse hypoteneuse hypotenus hyp catercorner cattycorner kittycorner".split())
_BRACED = frozenset("brace braces bracing board boards boarding siding sheathing strap straps".split())
_FRAMED = frozenset("joist joists stud studs rafter rafters batten battens".split())


def ours_all_the_same(chart: Chart, top: Question) -> bool:
    """Whether it is in litres what a channel of three sizes holds, most such lines being of paint; a diagonal; nails a joist;
    a weight or an area in another unit, whatever it is of; so many times a length.
    """
    if top.topic == "fasteners":
        return {"rows", "at_each", "studs"} <= top.givens.keys() and not _FRAMED.isdisjoint(chart.words)
    if top.topic == "marks on centre":  # studs in a wall: no load that they carry
        return {"spacing", "length"} <= top.givens.keys() and not _FRAMED.isdisjoint(chart.words) and top.complete
    if top.topic == "square check":
        return any(a in _CROSS and b not in _BRACED for a, b in zip(chart.words, [*chart.words[1:], ""], strict=True))
    if top.topic == "conversion":
        told = top.givens["value"].value if "to" in top.givens else None
        return isinstance(getattr(told, "quantity", told), Area | Weight)
    if top.topic == "tape arithmetic":
        heard = top.givens.get("sum")
        return heard is not None and isinstance(heard.value, Sum) and top.complete and _measured(heard.value)
    return top.topic == "water in a channel" and "held_in" in top.givens


def _measured(whole: Sum) -> bool:
    """Whether so many times a length that was told with its unit is all of a sum: fourteen times 3 3/8 inches."""
    sizes = [leaf for leaf in leaves(whole) if isinstance(leaf, Length)]
    return whole.operation == TIMES and len(sizes) == 1 and bool(sizes[0].text)
