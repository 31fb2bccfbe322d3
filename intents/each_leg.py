"""One length told of both legs of a right triangle: "32 inches on each leg", "3 foot both ways", "legs both 30"."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Question
from intents.reading import Reading
from solvers.quantities import Length

TRIANGLE = "right triangle"
_BOTH = frozenset("each both equal same two".split())
_LEGS = frozenset("leg legs way ways side sides".split())
_BRACES = frozenset("brace braces hypotenuse hyp gusset".split())
_PAIRS = frozenset((("legs", "both"), ("legs", "each"), ("sides", "both")))
_ASKED = frozenset("long long's longs long’s is are".split())
_SCORE = 3.0  # of a reading that only these words make


def each_leg(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Give the one length to rise and run, where words tell that it is of both."""
    words = chart.words
    if _LEGS.isdisjoint(words):
        return
    both = any((a in _BOTH and b in _LEGS) or (a, b) in _PAIRS for a, b in pairwise(words))
    trios = zip(words, words[1:], words[2:], strict=False)
    if any(asked in _ASKED and side in _BOTH and leg in _LEGS for asked, side, leg in trios):
        return  # how long's each side if it's 10 foot across: which is asked, and nobody's leg is 10 foot
    first = next(iter(questions), None)
    told = _alone(chart)
    if told is None or not (both or words[told.end : told.end + 1] == ["legs"]):
        return
    if (first is not None and first.topic != TRIANGLE) or (first is None and _BRACES.isdisjoint(words)):
        return
    if first is None:
        questions.append(first := Question(TRIANGLE, score=_SCORE, words=["legs"]))
    places = {p.name: p for p in topics[TRIANGLE]}
    heard = {name: heard_as(chart, places[name], told, True) for name in ("rise", "run")}
    if None in heard.values():
        return
    kept = {name: value for name, value in first.givens.items() if name == "wanted"}
    first.givens = {**kept, **heard}  # type: ignore[dict-item]
    first.missing, first.unplaced, first.swaps, first.lacking = [], [], [], 0


def _alone(chart: Chart) -> Reading | None:
    """The one length of the sentence; beside it nothing may stand but the two that counts the legs, and 45 degrees."""
    found: list[Reading] = []
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if isinstance(r.value, Length) or r.kind in ("number", "angle")]
        best = max(here, key=lambda r: (r.end, r.kind != "number"), default=None)
        at = best.end if best else at + 1
        if best and not _counts(chart.words, best) and not _half_square(chart.words, best):
            found.append(best)
    return found[0] if len(found) == 1 and found[0].kind != "angle" else None


def _counts(words: list[str], reading: Reading) -> bool:
    return words[reading.start] in ("two", "2") and not _LEGS.isdisjoint(words[reading.end : reading.end + 1])


def _half_square(words: list[str], reading: Reading) -> bool:
    """45 degrees, or a 45 brace: both legs are alike in any case."""
    bare = reading.kind == "number" and not _BRACES.isdisjoint(words[reading.end : reading.end + 1])
    return (reading.kind == "angle" or bare) and reading.value.value == 45  # type: ignore[union-attr]
