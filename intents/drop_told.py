"""What rises or drops so much in so far: the first is the rise, as "it drops 650 in 1800" can be meant one way only."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

_VERBS = frozenset("rise rises rising climb climbs climbing drop drops dropping fall falls falling".split())
_IN = frozenset("in over per every".split())


def drop_told(chart: Chart, question: Question) -> None:
    """Leave only the ways in which what a roof drops is the rise, where the run is told right after it."""
    if question.swaps:
        question.keep_ways(lambda way: _dropped(chart, way.get("rise"), way.get("run")))


def _dropped(chart: Chart, rise: Heard | None, run: Heard | None) -> bool:
    """Whether the words are "drops" the rise "in" the run."""
    if rise is None or run is None or min(rise.end - rise.start, run.end - run.start) <= 0:
        return False
    (start, end), (after, _) = places_of(chart, rise), places_of(chart, run)
    return not _VERBS.isdisjoint(chart.words[max(0, start - 1) : start]) and chart.words[end:after] in [[word] for word in _IN]
