"""What is asked of a hip is not what is asked of the roof: its plumb cut, its backing, the angle it lies at.

A jack is cut like a common rafter, though it runs to the hip.
"""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

CUT, ANGLE, LENGTH = "plumb cut", "roof angle", "hip or valley length"
_HIPS = frozenset("hip hips valley valleys".split())
_COMMONS = frozenset("common commons jack jacks".split())
_ROOFS = frozenset("roof roofs roofed jack jacks".split())
_ASKED = frozenset("run rise rises high tall".split())
_IS = frozenset("is of at a s the".split())
_BACKS = frozenset("backing backed".split())


def hips_told(chart: Chart, question: Question) -> None:
    """Put right which of hip and roof is cut, and that a backing is asked for."""
    words = chart.words
    if question.topic == LENGTH and _told_long(chart, question):
        question.lacking = question.lacking or 1
    if question.topic not in (CUT, ANGLE) or (_HIPS.isdisjoint(words) and _BACKS.isdisjoint(words)):
        return
    if question.topic == CUT:
        if "piece" in question.givens and not _COMMONS.isdisjoint(words):
            del question.givens["piece"]
        return
    if not _BACKS.isdisjoint(words) and not _HIPS.isdisjoint(words):
        question.topic = CUT
        question.givens = {"pitch": question.givens["pitch"], "asked": Heard("BACKING", 0, 0, "")}
    elif any(word in _HIPS and after not in _ROOFS for word, after in pairwise((*words, ""))):
        question.lacking = question.lacking or 1


def _told_long(chart: Chart, question: Question) -> bool:
    """Whether what was taken for the run is how long the hip is, and its run or rise is asked: hip length 17 foot, what run."""
    run, words = question.givens.get("run"), chart.words
    if run is None or run.end <= run.start or "across" in question.givens or _ASKED.isdisjoint(words):
        return False
    start, end = places_of(chart, run)
    before = [word for word in words[max(0, start - 3) : start] if word not in _IS][-1:]
    long = words[end : end + 1] == ["long"] or before == ["length"]
    return long and _ASKED.isdisjoint((*before, *words[end : end + 2]))
