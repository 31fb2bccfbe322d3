"""Runs longer than the stock: four runs of fascia at 28 feet out of 16 footers are spliced, so the sticks make the total.

A piece that is longer than the stock can't be cut from it, and a cut list says so. Where what is so long is a run of
something (an eave, a rake, a side), nobody wants it in one piece.
"""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from solvers.quantities import Length
from solvers.slots import Piece

_KINDS = frozenset(("runs", "rows"))


def spliced(chart: Chart, question: Question) -> None:
    """Turn a cut list, all of whose pieces are runs longer than the stock, into sticks for their total."""
    if question.topic != "cut list" or question.missing or question.unplaced or question.swaps:
        return
    pieces, stock = question.givens.get("pieces"), question.givens.get("stock_length")
    if pieces is None or stock is None or not isinstance(stock.value, Length) or not isinstance(pieces.value, tuple):
        return
    longest = stock.value.to("in").value
    lengths = [each.length for each in pieces.value if isinstance(each, Piece)]
    if not lengths or not all(isinstance(each, Length) and each.to("in").value > longest for each in lengths):
        return
    total = _total(chart, pieces)
    if total is None:
        return
    kept = {name: heard for name, heard in question.givens.items() if name == "waste"}
    question.topic = "trim sticks"
    question.givens = {"total": total, "stock": replace(stock, others=()), **kept}


def _total(chart: Chart, pieces: Heard) -> Heard | None:
    """What the runs come to, where the pieces were told as runs."""
    start, end = places_of(chart, pieces)
    found: list[Reading] = [
        r for row in chart.readings[: start + 1] for r in row
        if r.kind in _KINDS and r.sure >= 1 and r.start <= start and r.end >= end and isinstance(r.value, tuple)
    ]  # fmt: skip
    if not found:
        return None
    first, last = chart.tokens[found[0].start].start, chart.tokens[found[0].end - 1].end
    value = found[0].value[0]  # type: ignore[index]
    return Heard(value, first, last, chart.text[first:last]) if isinstance(value, Length) else None
