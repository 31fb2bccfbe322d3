"""A quantity whose name comes a clause later: "twelve foot six, that's the run", "9 foot, which is the rise".

Of the ways to hand out the quantities only those stay in which it is what it is said to be.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.slots import Parameter

_IT = frozenset("that thats that's this it its it's which".split())
_IS = frozenset("is was being be".split())
_THE = frozenset("the my our just only his a total overall".split())
_MOST = 4  # small words between a quantity and its name


def named_later(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Keep the ways that give a quantity to what it is named after its clause."""
    if not _IT.isdisjoint(chart.words):
        for question in questions:
            if question.swaps:
                _keep(chart, question, topics)


def _keep(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    names = {p.name: {p.name, p.label.lower().split()[-1]} for p in topics.get(question.topic, ())}
    ways = [question.givens, *question.swaps]
    for heard in {h.start: h for way in ways for h in way.values() if h.end > h.start}.values():
        word = _name_after(chart.words, places_of(chart, heard)[1])
        role = [name for name, called in names.items() if word in called] if word else []
        if len(role) == 1:
            ways = [way for way in ways if _same(way.get(role[0]), heard)] or ways
    question.givens, question.swaps = ways[0], ways[1:]


def _same(one: Heard | None, other: Heard) -> bool:
    return one is not None and (one.start, one.end) == (other.start, other.end)


def _name_after(words: Sequence[str], end: int) -> str:
    """The word that names what was said before: ", that is the | run"."""
    at = end + (words[end : end + 1] in ([","], ["-"], [";"], ["…"]))
    if at >= len(words) or words[at] not in _IT:
        return ""
    for place in range(at + 1, min(at + 2 + _MOST, len(words))):
        if words[place] not in _IS | _THE:
            return words[place]
    return ""
