"""What is asked of a hip is not what is asked of the roof: its plumb cut, its backing, the angle it lies at, how long it is.

A jack is cut like a common rafter, though it runs to the hip.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

CUT, ANGLE, LENGTH, SLOPED = "plumb cut", "roof angle", "hip or valley length", "sloped length"
_HIPS = frozenset("hip hips valley valleys".split())
_COMMONS = frozenset("common commons jack jacks".split())
_NOT = frozenset("not isnt instead than nor".split())
_ROOFS = frozenset("roof roofs roofed jack jacks".split())
_RUNS, _RISES = frozenset(("run", "runs")), frozenset("rise rises high tall".split())
_ASKED = _RUNS | _RISES
_IS = frozenset("is of at a s the".split())
_DONE = frozenset("done finished already".split())
_BACKS = frozenset("backing backed".split())


def hips_told(chart: Chart, question: Question) -> None:
    """Put right which of hip and roof is cut, and that a backing is asked for."""
    words = chart.words
    if question.topic == CUT and "asked" not in question.givens and _level_now(words):
        question.givens["asked"] = Heard("LEVEL", 0, 0, "")
    if question.topic == SLOPED and question.givens.keys() <= {"pitch", "run"} and _roofs_meet(words):
        question.topic, question.swaps = LENGTH, []
    if question.topic not in (CUT, ANGLE) or (_HIPS.isdisjoint(words) and _BACKS.isdisjoint(words)):
        return
    if question.topic == CUT:
        if "piece" in question.givens and _cuts_commons(words):
            del question.givens["piece"]
        return
    if not _BACKS.isdisjoint(words) and not _HIPS.isdisjoint(words):
        question.topic = CUT
        question.givens = {"pitch": question.givens["pitch"], "asked": Heard("BACKING", 0, 0, "")}
    elif any(word in _HIPS and after not in _ROOFS for word, after in pairwise((*words, ""))):
        question.lacking = question.lacking or 1


def _cuts_commons(words: list[str]) -> bool:
    """Whether it is a common or a jack that is cut, and not said to be none: on the hip, not the commons."""
    ats = (at for at, word in enumerate(words) if word in _COMMONS)
    return any(_NOT.isdisjoint(words[max(0, at - 3) : at]) for at in ats)


def _level_now(words: list[str]) -> bool:
    """Whether the plumb cuts are done and the level cut is asked for: I've done the plumb cuts, now I want the level cut."""
    if "level" not in words or "plumb" not in words or words.index("level") < words.index("plumb"):
        return False
    return not _DONE.isdisjoint(words[: words.index("level")]) or "have" in words[: words.index("plumb")]


def _roofs_meet(words: list[str]) -> bool:
    """Whether the rafter is a hip or a valley by where it lies: the inside corner where two roofs meet."""
    roofs = [at for at, word in enumerate(words) if word == "roofs"]
    if "rafter" in words and {"diagonal", "diagonally"} & {*words} and "corner" in words and "roof" not in words:
        return True  # the rafter that goes diagonally to the corner
    return any({"meet", "meets", "join", "come"} & {*words[at + 1 : at + 3]} for at in roofs)


def hip_backwards(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for the run, or for the rise alone, of a hip that was measured."""
    for question in questions:
        if question.topic == LENGTH and _told_long(chart, question):
            _backwards(question, chart.words)


def _backwards(question: Question, words: list[str]) -> None:
    run = question.givens["run"]
    question.givens["across"] = Heard("ALONG", run.start, run.end, run.text)
    question.givens["asked"] = Heard("RISE" if _RUNS.isdisjoint(words) else "RUN", 0, 0, "")
    question.swaps = []


def _told_long(chart: Chart, question: Question) -> bool:
    """Whether what was taken for the run is how long the hip is, and its run or rise is asked: hip length 17 foot, what run."""
    run, words = question.givens.get("run"), chart.words
    if run is None or run.end <= run.start or "across" in question.givens or _ASKED.isdisjoint(words):
        return False
    start, end = places_of(chart, run)
    before = [word for word in words[max(0, start - 3) : start] if word not in _IS][-1:]
    long = words[end : end + 1] == ["long"] or before == ["length"]
    return long and _ASKED.isdisjoint((*before, *words[end : end + 2]))
