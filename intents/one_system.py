"""Sizes said in a row are of one system: legs of 50, 75 and 20 mil are millimetres, and none of them inches."""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.question import Heard, Question
from solvers.quantities import Length

_METRIC = frozenset(("mm", "cm", "m"))


def one_system(chart: Chart, question: Question) -> None:
    """Leave out the ways in which a list has lengths of both systems, where another has one."""
    if not question.swaps or "lengths" not in question.givens:
        return
    question.keep_ways(lambda way: not _mixed(way))


def _mixed(way: Mapping[str, Heard]) -> bool:
    listed = way["lengths"].value if "lengths" in way else ()
    units = {size.unit in _METRIC for size in listed if isinstance(size, Length)} if isinstance(listed, tuple) else set()
    return len(units) > 1
