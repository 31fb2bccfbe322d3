"""What a board shows is the number that its name stands right after: three hundred cover on a two point four wall, either way."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

_NAMES = frozenset("cover coverage exposure exposed gauge margin".split())


def cover_told(chart: Chart, question: Question) -> None:
    """Leave out the ways in which a number with that name after it is the height, where another has it for the exposure."""
    if question.swaps:
        question.keep_ways(lambda way: _named(chart, way.get("exposure")) and not _named(chart, way.get("height")))


def _named(chart: Chart, heard: Heard | None) -> bool:
    """Whether such a name stands right after a quantity."""
    if heard is None or heard.end <= heard.start:
        return False
    return not _NAMES.isdisjoint(chart.words[places_of(chart, heard)[1] :][:1])
