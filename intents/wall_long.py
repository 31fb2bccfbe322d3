"""A wall named by how high it is, and how long it is told besides: a 9 foot wall 30 foot long."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Length

_TOPICS = ("strapping", "wall area")
_LONG = frozenset(("long", "wide", "across"))


def wall_long(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Put what was told to be long for the length, and what stood before the wall for its height."""
    for question in questions:
        _as_long_as_the_wall(chart, question)
    if "wall" not in chart.words or _LONG.isdisjoint(chart.words):
        return
    long = [r for r in quantities(chart, 0, len(chart.words)) if not _LONG.isdisjoint(chart.words[r.end : r.end + 1])]
    for question in questions if len(long) == 1 else ():
        wall, high = question.givens.get("length"), question.givens.get("height")
        if question.topic not in _TOPICS or wall is None or wall.end <= wall.start or not isinstance(wall.value, Length):
            continue
        end = places_of(chart, wall)[1]
        parameters = {p.name: p for p in topics[question.topic]}
        length = heard_as(chart, parameters["length"], long[0], True)
        if chart.words[end : end + 1] != ["wall"] or length is None or wall.start == length.start:
            continue
        if high is None or high.start == length.start:
            question.givens |= {"length": length, "height": wall}
            question.unplaced = [text for text in question.unplaced if text != length.text]
            question.swaps, question.rival = [], False


def _as_long_as_the_wall(chart: Chart, question: Question) -> None:
    """Courses are as long as the wall is said to be, and no board is: boards for a 30 foot wall with 20 courses."""
    board = question.givens.get("board_length")
    if question.topic != "cladding boards" or board is None or board.end <= board.start or "course_length" in question.givens:
        return
    if "area" not in question.givens and chart.words[places_of(chart, board)[1] :][:1] == ["wall"]:
        question.givens["course_length"] = question.givens.pop("board_length")
