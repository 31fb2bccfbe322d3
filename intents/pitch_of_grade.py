"""A pitch asked of what is told as another slope: "pitch of a 33% grade", "1 in 4 in pitch", "200 mm per metre as a pitch"."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question

ANGLE, SURE = "roof angle", 0.7
_TOPICS = frozenset((ANGLE, "pitch of an angle", "pitch from rise and run"))
_TWELVES = frozenset(("12", "twelve", "twelves"))
_PER = frozenset(("per", "in", "over"))
_ASKS = frozenset("what what's whats in as of a the to is into".split())
_SCORE = 3.0  # of a reading that only these words make


def pitch_of_grade(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for the pitch, where the one quantity is a slope told in another way and nothing is whole."""
    words = chart.words
    if any(question.topic in _TOPICS and question.whole for question in questions):
        return
    per = None if _TWELVES.isdisjoint(words) else _per_twelve(chart)
    if per is None and ("pitch" not in words or any(question.topic not in _TOPICS for question in questions)):
        return
    slopes = [r for row in chart.readings for r in row if r.kind == "pitch" and r.sure >= SURE]
    if len({r.start for r in slopes}) != 1:
        return
    slope = max(slopes, key=lambda r: r.end)
    outside = [at for at in (*range(slope.start), *range(slope.end, len(words))) if per is None or at != per + 1]
    if any(r.kind in ("length", "number") and at in outside for at, row in enumerate(chart.readings) for r in row):
        return
    beside = [words[at] for at in (slope.start - 1, slope.end) if 0 <= at < len(words)]
    if not _TWELVES.isdisjoint(words[slope.start : slope.end]) or ("pitch" in beside and _ASKS.isdisjoint(words)):
        return
    pitch = heard_as(chart, next(p for p in topics[ANGLE] if p.name == "pitch"), slope, True)
    if pitch is not None:
        questions[:] = [Question(ANGLE, {"pitch": pitch, "asked": Heard("PITCH", 0, 0, "")}, _SCORE, words=["pitch"])]


def _per_twelve(chart: Chart) -> int | None:
    """Where it is asked how much that is in twelve, of no unit."""
    pairs = enumerate(pairwise(chart.words))
    at = next((at for at, pair in pairs if pair[0] in _PER and pair[1] in _TWELVES), None)
    sized = at is not None and any(r.kind == "length" and r.end > at + 2 for r in chart.readings[at + 1])  # per 12 inch
    return None if sized else at
