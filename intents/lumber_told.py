"""A gap told by the lumber that makes it: one by threes behind the cladding, 1x4s flat, a 2x4 laid flat.

Lumber is thinner than it is called, and no side of it is the gap's depth but how thick it is; a 2x4 stands on edge as often
as it lies, so that is taken only where it is said to lie flat.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from intents.chart import Chart, span
from intents.placing import place_of
from intents.question import Heard, Question
from intents.second_reader import tokens_of
from intents.untold_layers import ACTUAL
from solvers.quantities import Length
from solvers.slots import Parameter

DEPTHS = {"air gap": "depth", "vent opening": "gap"}
_TIMES = frozenset(("×", "by"))
_THICK = {word: ACTUAL[Fraction(called)] for called, words in ((1, ("1", "one")), (2, ("2", "two"))) for word in words}
_WIDE = frozenset("2 3 4 6 two three four six twos threes fours sixes 2s 3s 4s 6s".split())
_THIN = frozenset(("1", "one"))
_SQUARE = frozenset(("2", "two", "twos", "2s"))
_FLAT = frozenset(("flat", "flatwise"))
_ENDS = frozenset("ft foot feet ' mm cm m metres × by / - .".split())  # a size of two lengths, and no name
_AFTER = 4


def lumber_told(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the depth of the first question's gap where it is told by what lumber is called."""
    question = next(iter(questions), None)
    name = DEPTHS.get(question.topic) if question else None
    if question is None or name is None or _TIMES.isdisjoint(chart.words):
        return
    for start, end, thick in _lumber(chart.words):
        mask, given = span(start, end), question.givens.get(name)
        if given is not None and not tokens_of(chart, given) & mask:
            continue  # its depth is told beside it: one by two laid flat, so 19 mm
        place = place_of(chart, start, end)
        question.givens[name] = Heard(Length(thick, "in", place[2]), *place)
        question.missing = [each for each in question.missing if each != name]
        question.unplaced = [each for each in question.unplaced if each not in place[2]]
        question.swaps = []
        if question.claim is not None and span(question.claim.start, question.claim.end) & mask:
            question.claim = None  # is 1 by 4 furring enough
        return


def _lumber(words: list[str]) -> Iterator[tuple[int, int, Fraction]]:
    """Where lumber is called by its size, and how thick it is as it lies."""
    for start, word in enumerate(words[:-2]):
        if word not in _THICK or words[start + 1] not in _TIMES or words[start + 2] not in _WIDE:
            continue
        end = start + 3
        end += words[end : end + 1] == ["s"]
        after = words[end : end + _AFTER]
        named = not after or after[0] not in _ENDS
        if named and (word in _THIN or words[start + 2] in _SQUARE or not _FLAT.isdisjoint(after)):
            yield start, end, _THICK[word]
