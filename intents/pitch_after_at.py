"""A pitch told by its rise alone after "at": a rafter for 13 foot 4 of run at 6 and a half, the rake of a 24 foot gable at 7.

With a run and a bare number there is a triangle too, of which that would be the rise; nobody tells a rise so.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Length, Pitch

TRIANGLE, SLOPED, RAKE = "right triangle", "sloped length", "rake length"
_AT, _LEVEL = frozenset(("at", "@", "on")), frozenset("run rafter rafters gable roof common".split())
LEAST, MOST = 1, 24


def pitch_after_at(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take a bare number after "at" for the pitch, where it went to a rise or an overhang."""
    for question in questions:
        name = "rise" if question.topic == TRIANGLE else "overhang" if question.topic == RAKE else ""
        told = question.givens.get(name)
        if told is None or "pitch" in question.givens or not _bare_at(chart, told):
            continue
        pitch = Heard(Pitch(told.value.value, "in12", told.text), told.start, told.end, told.text, told.sure)
        kept = {one: heard for one, heard in question.givens.items() if one != name}
        if question.topic == RAKE and "pitch" in question.missing:
            question.givens, question.swaps = kept | {"pitch": pitch}, []
            question.missing = [one for one in question.missing if one != "pitch"]
        elif question.topic == TRIANGLE and "run" in kept and kept.keys() <= {"run", "wanted"} and _of_slope(chart, kept):
            question.topic, question.givens, question.swaps = SLOPED, {"pitch": pitch, "run": kept["run"]}, []
            question.missing, question.rival = [], False


def _bare_at(chart: Chart, heard: Heard) -> bool:
    """Whether a length is a bare number right after "at" that can be a rise in 12."""
    start, end = places_of(chart, heard)
    bare = isinstance(heard.value, Length) and any(r.kind == "number" and r.end == end for r in chart.readings[start])
    return bare and start > 0 and chart.words[start - 1] in _AT and LEAST <= heard.value.value <= MOST


def _of_slope(chart: Chart, kept: Mapping[str, Heard]) -> bool:
    """Whether how long the slope is is asked of a roof: with a run, not of a brace or a stair."""
    wanted = kept.get("wanted")
    slope = wanted is None or str(getattr(wanted.value, "name", wanted.value)) == "SLOPE"
    return slope and not _LEVEL.isdisjoint(chart.words)
