"""A number that was taken back and still stands in the question: nothing was put in its place, or it is not plain what.

It must never be worked with, so it is asked about: "overhang 300, scratch that", "16, no we've gone all the way down to 12".
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.chart import Chart
from intents.question import Heard, Question
from intents.reading import Reading
from intents.remarks import ENDS
from intents.taken_back import TOOK_BACK, begins_anew, near
from solvers.quantities import Quantity

_NOES = frozenset("no nope nah wait sorry".split())
_TURNS = _NOES | frozenset("well actually rather call say make scratch".split())  # which may put another in the place of a number
_BEFORE, _AFTER = 7, 22  # words from what takes back to the numbers on either side, at most


def taken_back(chart: Chart, question: Question) -> list[str]:
    """What the question is worked with though it was taken back, or what was to stand for it: it is asked."""
    words = chart.words
    if (whole := chart.kept.get("whole")) is not None and (fallen := _fallen(chart, whole, question)):
        return [fallen]
    if _NOES.isdisjoint(words) and "that" not in words:
        return []
    for at, word in enumerate(words):
        gone = tuple(words[at : at + 2]) in TOOK_BACK
        if gone or (word in _NOES and begins_anew(words[at + 1 :])):
            doubt = _left_standing(chart, question, at, gone)
            if doubt:
                return [doubt]
    return []


def _fallen(chart: Chart, whole: Chart, question: Question) -> str:
    """What was left out of the whole sentence though it may take the place of a number that is used: 46 foot, well say 48."""
    words, gone = chart.words, chart.kept["gone"]
    for at in (at for at, word in enumerate(words) if word in _TURNS):
        end = next((n for n in range(at + 1, len(words)) if words[n] in ENDS), len(words))
        earlier, later = _last(whole, max(0, at - _BEFORE), at), _first(whole, at + 1, end)
        if earlier is None or later is None or not gone >> later.start & 1 or not _taken(chart, question, earlier):
            continue
        if near(earlier, later) and (earlier.kind == later.kind or "number" in (earlier.kind, later.kind)):
            return chart.said(later.start, later.end)
    return ""


def _left_standing(chart: Chart, question: Question, at: int, gone: bool) -> str:
    earlier = _last(chart, max(0, at - _BEFORE), at)
    later = _first(chart, at + 1, min(len(chart.words), at + _AFTER))
    if earlier is None or not _taken(chart, question, earlier):
        return ""
    if gone and later is None:
        return chart.said(earlier.start, earlier.end)
    if later is None or not near(earlier, later) or _taken(chart, question, later):
        return ""
    return chart.said(later.start, later.end)


def _last(chart: Chart, start: int, stop: int) -> Reading | None:
    """The last quantity that ends between two places."""
    found = (r for at in range(start, stop) for r in chart.readings[at] if r.end <= stop and isinstance(r.value, Quantity))
    return max(found, key=lambda r: (r.end, -r.start), default=None)


def _first(chart: Chart, start: int, stop: int) -> Reading | None:
    for at in range(start, stop):
        found = [r for r in chart.readings[at] if isinstance(r.value, Quantity)]
        if found:
            return max(found, key=lambda r: r.end)
    return None


def _taken(chart: Chart, question: Question, said: Reading) -> bool:
    start, end = chart.tokens[said.start].start, chart.tokens[said.end - 1].end
    heard: Sequence[Heard] = [*question.givens.values()]
    return any(given.start <= start and end <= given.end and given.end > given.start for given in heard)
