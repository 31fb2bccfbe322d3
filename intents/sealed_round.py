"""What a joint is round, told by its size: every opening of "round 8 windows 36 by 48 and two 3-0 by 6-8 doors"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.placing import place_of
from intents.question import Heard, Question
from intents.second_reader import places_of

TOPIC = "sealant"


def sealed_round(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Put the whole list of openings for a length that is round the first of them only."""
    question = next(iter(questions), None)
    length = question.givens.get("length") if question is not None and question.topic == TOPIC else None
    if question is None or length is None or length.end <= length.start or "openings" in question.givens:
        return
    start, end = places_of(chart, length)
    taken = [places_of(chart, given) for name, given in question.givens.items() if name != "length" and given.end > given.start]
    lists = [
        r for row in chart.readings for r in row
        if r.kind == "openings" and r.start < end < r.end and r.start >= start - 1
        and not any(a < r.end and r.start < b for a, b in taken)
    ]  # fmt: skip
    best = max(lists, key=lambda r: r.end - r.start, default=None)
    if best is None:
        return
    place = place_of(chart, best.start, best.end)
    question.givens = {name: given for name, given in question.givens.items() if name != "length"}
    question.givens["openings"] = Heard(best.value, *place, best.sure)
    question.unplaced = [text for text in question.unplaced if text not in place[2]]
    question.swaps, question.rival = [], False
