"""A slope asked backwards: its run by what it rises or by its rafter, its rise by the rafter, and twice the run where a width is.

"The rise is 5 foot at 7/12, what run", "how far in to get 3 foot of rise", "16 foot rafter at 4/12, what's the run", "the rake's
15 foot, how tall is the gable": the one length is told by the words beside it to be none of what is asked.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Length

RISE = "rise over a run"
_TOPICS = frozenset((RISE, "sloped length", "rake length", "gable height"))
_RISES = frozenset("rise rises rising climb climbs".split())
_HIGH = frozenset("tall high".split())  # after a length only, and of the gable or peak
_RAFTERS = frozenset("rafter rafters rake rakes".split())
_SLOPES = frozenset("slope rafter rake".split())
_IS = frozenset("is was are be being a an at : = by of".split())
_LONG = frozenset(("long", "length"))
_RUNS, _SPANS = frozenset(("run", "runs")), frozenset(("span", "spans", "width"))
_LEVEL = _RUNS | _SPANS | frozenset("wide gable building across overhang wall out".split())
_INWARD = frozenset("in out back".split())
_HEIGHTS = frozenset("rise rises height".split())
_ASKS = frozenset("how what whats which need find".split())
_SCORE = 3.0  # of a reading that only these words make


def backwards_slope(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for what is asked, where a length was taken for that very thing."""
    for question in questions:
        if question.topic not in _TOPICS or question.unplaced or question.left:
            continue
        lengths = [h for h in question.givens.values() if h.end > h.start and isinstance(h.value, Length)]
        told = _told(chart, lengths[0]) if len(lengths) == 1 else ""
        asked = _asked(chart.words, told) if told else ""
        if asked:
            pitch = {name: heard for name, heard in question.givens.items() if name == "pitch"}
            given = {**pitch, "run": lengths[0], "across": Heard(told, *_place(lengths[0]))}
            if asked != "RISE":
                given["asked"] = Heard(asked, 0, 0, "")
            questions[:] = [Question(RISE, given, _SCORE, words=question.words, manner=question.manner)]
            questions[0].missing = [] if pitch else ["pitch"]
            return


def _place(heard: Heard) -> tuple[int, int, str]:
    return heard.start, heard.end, heard.text


def _told(chart: Chart, length: Heard) -> str:
    """What the words right beside a length say it is: RISE, RAFTER, or nothing of these."""
    start, end = places_of(chart, length)
    words = chart.words
    at = start
    while at and words[at - 1] in _IS:
        at -= 1
    before = words[max(0, at - 2) : at]
    after = [word for word in words[end : end + 3] if word not in ("of", "common", "the", "long")]
    of_rafter = at < start and not _RAFTERS.isdisjoint(after[:1]) and after[1:2] != ["length"]  # the run of a 16 foot rafter
    if not _LEVEL.isdisjoint(after[:1]) or (not of_rafter and not (_RUNS | _SPANS).isdisjoint(before[-1:])):
        return ""
    if after and after[0] in _RISES | _RAFTERS | {"slope"}:
        return "RISE" if after[0] in _RISES else "RAFTER"
    if after[:2] in (["up", "slope"], ["along", "slope"], ["up", "roof"], ["on", "slope"]):
        return "RAFTER"
    if after and after[0] in _HIGH:
        return "RISE" if {"gable", "peak", "ridge"} & {*words[max(0, start - 3) : start]} else ""
    if (len(before) == 2 and before[1] in _LONG and before[0] in _SLOPES) or (before and before[-1] in _RAFTERS | {"slope"}):
        return "RAFTER"
    return "RISE" if before and before[-1] in _RISES else ""


def _asked(words: list[str], told: str) -> str:
    """What is asked, where the words leave one thing; RUN, SPAN, RISE."""
    pairs = {*pairwise(words)}
    found = set()
    if not _RUNS.isdisjoint(words) or any(a == "far" and b in _INWARD for a, b in pairs):
        found.add("RUN")
    if ("how", "wide") in pairs or any(a in _ASKS and b in _SPANS for a, b in _near(words)):
        found.add("SPAN")
    high = any(pair in pairs for pair in (("how", "high"), ("how", "tall"))) or not _HEIGHTS.isdisjoint(words)
    if told == "RAFTER" and high:
        found.add("RISE")
    return found.pop() if len(found) == 1 and not _ASKS_LONG & pairs else ""


_ASKS_LONG = {("how", "long"), ("what", "length")}


def _near(words: list[str]) -> list[tuple[str, str]]:
    """Each word with those up to three further on: what is the span."""
    return [(a, b) for at, a in enumerate(words) for b in words[at + 1 : at + 4]]
