"""Money told by the way, of which most topics take none: "my last box was nineteen dollars"."""

from __future__ import annotations

from functools import reduce
from operator import or_

from intents.chart import Chart, once, span
from solvers.quantities import Money
from solvers.slots import Parameter

_SIGNS = frozenset("$ € £ dollars dollar bucks buck quid euro euros cents".split())  # pounds are of weight as well


def money_told(chart: Chart, parameters: tuple[Parameter, ...]) -> int:
    """Mask of what is told in money, where a topic takes none."""
    return 0 if any(p.kind is Money for p in parameters) else _in_money(chart)


@once
def _in_money(chart: Chart) -> int:
    money = (r for row in chart.readings for r in row if r.kind == "money")
    found = (r for r in money if not _SIGNS.isdisjoint(chart.words[r.start : r.end]))
    return reduce(or_, (span(r.start, r.end) for r in found), 0)
