"""The clauses of a long line that its question is made of: those that ask, name the topic, or hold a quantity with a role.

"So dad swears it's a 6/12, that's what he ordered, but the level gives us 6 1/2 in 12, what's that as an angle": where the
words of a story keep a line from being read, it is read again without them (`assistant/told_by_clauses.py`).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from intents.chart import Chart
from intents.learned import Learned
from intents.no_role import IDLE, TOPICS, USED, shares_of
from intents.phrases import Phrases
from intents.remarks import ASKING
from intents.taken_back import TOOK_BACK
from solvers.slots import Parameter

LEAST_WORDS = 14  # of a line that is looked at
POSSIBLE = 0.2  # how likely a topic must be in the whole line
MOST = 2  # topics that are tried
_STOPS = frozenset((",", ".", ";", "?", "!", "-", "–", "—", "(", ")", ":"))
_TURNS = frozenset("but because cause 'cause though although".split())
_ASKS = ASKING | frozenset("what's whats how's where's need needs want wants give gimme tell find figure work pls please".split())
_WHOLE = frozenset("number length pitch angle dims plural money".split())  # readings that are not cut in two
# A clause with one of these may say how the question is meant.
_TELLS = frozenset("both either each half halve twice double further instead except unless without".split())
_POINTS = frozenset("that's thats is it's its".split())
_ASKS -= frozenset("is are do does will would can could where when who".split())


class Used(NamedTuple):
    """A line without the clauses that a topic has no use for, and the quantities that went with them."""

    topic: str
    text: str
    left: list[str]


def clauses_used(
    chart: Chart, phrases: Phrases, topics: Mapping[str, tuple[Parameter, ...]], model: Learned
) -> Iterator[Used]:  # fmt: skip
    """The line as each topic that it may be about would have it, the likeliest first."""
    if len(chart.words) < LEAST_WORDS or len(places := list(_clauses(chart))) < MOST:
        return
    if any(pair in TOOK_BACK for pair in pairwise(chart.words)):
        return  # what was taken back and still stands is asked about
    likely = sorted((t for t, share in chart.likely.items() if share >= POSSIBLE), key=lambda t: -chart.likely[t])
    for topic in likely[:MOST]:
        used = _without(chart, phrases, topic, topics[topic], model, places) if topic in TOPICS else None
        if used is not None:
            yield used


def _without(
    chart: Chart, phrases: Phrases, topic: str, parameters: tuple[Parameter, ...], model: Learned,
    places: Sequence[tuple[int, int]],
) -> Used | None:  # fmt: skip
    told = [(mention.start, mention.end, share) for mention, share in shares_of(chart, phrases, topic, parameters, model)]
    if any(USED < share < IDLE for _, _, share in told) or all(share >= IDLE for _, _, share in told):
        return None
    numbers = phrases.numbers.get(topic, set())
    named = [hit for hit in chart.hits if hit.pattern in numbers]
    text, left = chart.text, []
    for start, end in places:
        inside = [share for first, last, share in told if start <= first and last <= end]
        if any(share <= USED for share in inside) or _matters(chart.words[start:end]):
            continue
        if not inside and any(start <= hit.start and hit.end <= end and hit.mask & chart.weighs for hit in named):
            continue
        first, last = chart.tokens[start].start, chart.tokens[end - 1].end
        left += [chart.said(at, stop) for at, stop, _ in told if start <= at and stop <= end]
        text = f"{text[:first]}{' ' * (last - first)}{text[last:]}"
    return Used(topic, text, left) if text != chart.text else None


def _matters(clause: Sequence[str]) -> bool:
    """Whether a clause asks, or may say how the question is meant; because that's what he ordered does neither."""
    asks = _ASKS.intersection(clause)
    pointed = asks == {"what"} and any(a in _POINTS and b == "what" for a, b in pairwise(clause))
    return not _TELLS.isdisjoint(clause) or (bool(asks) and not pointed)


def _clauses(chart: Chart) -> Iterator[tuple[int, int]]:
    """Where the clauses of a line begin and end; no quantity is cut in two."""
    inside = {at for row in chart.readings for r in row for at in range(r.start + 1, r.end) if r.kind in _WHOLE}
    start = 0
    for at, word in enumerate(chart.words):
        if at in inside or (word not in _STOPS and word not in _TURNS):
            continue
        if at > start:
            yield start, at
        start = at if word in _TURNS else at + 1
    if start < len(chart.words):
        yield start, len(chart.words)
