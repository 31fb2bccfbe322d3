""" "Both eaves", "each of the two sides": an amount that was said once and is wanted twice, or was said of the two together.

Where nothing took these words in (a run of two, sides, gables), the amount worked would be of one, and it is asked.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.listed_totals import AMOUNTS, NOUNS
from intents.question import Question
from solvers.quantities import Count

# Topics whose answer is an amount, which is double for two of a thing.
_TOGETHER = frozenset("total altogether combined together all overall between comes come".split())
_BY_ENDS = ("strapping", "fasteners")
_OF_ONE = frozenset(("vent opening", "water in a channel"))
_COUNTED = frozenset("both two three four five six 2 3 4 5 6".split())
_REACH, _PAIR = 3, 2


def of_both(chart: Chart, question: Question) -> list[str]:
    """The words for two of a thing that the question took no account of, as they were said."""
    if question.topic in _OF_ONE:
        return _of_several(chart)
    if question.topic not in AMOUNTS or not ("both" in chart.words or "two" in chart.words):
        return []
    for i, word in enumerate(chart.words):
        if word != "both" and (word != "two" or chart.words[i - 1 : i] != ["the"]):
            continue
        noun = next((k for k in range(i + 1, min(i + _REACH, len(chart.words))) if chart.words[k] in NOUNS), 0)
        ends = question.topic in _BY_ENDS and chart.words[noun] == "ends"  # one strap at both ends is what is counted
        if noun and not ends and not _taken(chart, question, i, noun):
            return [chart.said(i, noun + 1)]
    return []


def _of_several(chart: Chart) -> list[str]:
    """So many of a thing, of which the topic works one: two walls 24 ft each, both walls 24 ft."""
    words = chart.words
    for i, word in enumerate(words[:-1]):
        if word not in _COUNTED or not words[i + 1].endswith("s") or not words[i + 1].isalpha():
            continue
        if word == "both" or not {"each", "apiece"}.isdisjoint(words[i + 2 :]):
            return [chart.said(i, i + 2)]
    return []


def _taken(chart: Chart, question: Question, start: int, noun: int) -> bool:
    """Whether a given was said in these words, or they come with the whole: both eaves, 72 ft altogether."""
    at, end = chart.tokens[start].start, chart.tokens[noun].end
    heard = question.givens.values()
    inside = any(given.start < end and at < given.end for given in heard)
    counted = any(isinstance(given.value, Count) and given.value.value == _PAIR for given in heard)
    return inside or counted or not _TOGETHER.isdisjoint(chart.words)
