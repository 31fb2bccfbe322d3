"""The second reader: where no rule of a grammar fits a sentence, what sentences like it meant.

It knows which topic a sentence is likely about by its words, and which parameter each quantity is for by the words
around it, from all the question sets (see learned.py). It answers for nothing alone: roles it is not sure of are
kept as other ways to read the sentence, which the conversation works and asks about where they differ.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from math import exp, log
from typing import NamedTuple

from intents.chart import Chart, Hit, span
from intents.features import Mention, mentions, of_mentions
from intents.learned import NOTHING, Learned
from intents.phrases import Phrases
from intents.placing import fixed_value, heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from solvers.slots import Parameter
from solvers.sums import Sum

WIDTH = 16  # ways to hand out the quantities that are followed at once
LEAST_ROLE = 0.01  # a role less likely than this is not tried
LIKELY = 0.15  # of the likeliest way: another way as likely as this is kept and asked about
IDLE = 0.9  # a quantity this surely without a role is let be; another is named as having no place
MOST_MENTIONS = 10

Way = tuple[float, tuple[str, ...]]  # log of how likely, and the role of each quantity


class Sentence(NamedTuple):
    """What is known of a sentence read as one topic: its quantities, and what the grammar's islands told of them."""

    chart: Chart
    topic: str
    by_name: dict[str, Parameter]
    found: list[Mention]
    told: dict[tuple[int, int], set[str]]


class Second(NamedTuple):
    """A question, and how likely its roles are, from 0 to 1."""

    question: Question
    sure: float


def read_again(
    chart: Chart, phrases: Phrases, model: Learned, topic: str, parameters: tuple[Parameter, ...], first: Question | None
) -> Second | None:
    """The sentence as a question of a topic, each quantity in its likeliest role; None where it can't tell.

    `first` is what the grammar made of it for the same topic: its lists and choices are kept.
    """
    if any(p.kind is Sum for p in parameters):  # a sum is parsed, not guessed
        return None
    hits = [hit for hit in chart.hits if phrases.patterns[hit.pattern].topic == topic]
    question = Question(topic, manner=first.manner if first else {})
    covered = _choices(chart, hits, parameters, question) | _lists(chart, parameters, first, question)
    by_name = {p.name: p for p in parameters if p.name not in question.givens}
    sentence = Sentence(chart, topic, by_name, mentions(chart, covered), told_by(hits))
    if len(sentence.found) > MOST_MENTIONS:
        return None
    likely = _roles(sentence, model)
    (best, roles), *others = _ways(likely)
    _give(sentence, question.givens, roles)
    question.unplaced = [
        chart.said(mention.reading.start, mention.reading.end)
        for mention, role, shares in zip(sentence.found, roles, likely, strict=True)
        if role == NOTHING and shares[NOTHING] < IDLE
    ]
    question.missing = [p.name for p in parameters if p.required and p.name not in question.givens]
    for way, other in others:
        if way - best > log(LIKELY):
            swap = {name: heard for name, heard in question.givens.items() if name not in roles}
            _give(sentence, swap, other)
            question.swaps.append(swap)
    question.words = [w for i, w in enumerate(chart.words) if chart.known >> i & 1 and not chart.numbers >> i & 1]
    return Second(question, 1 / (1 + sum(exp(way - best) for way, _ in others)))


def _choices(chart: Chart, hits: list[Hit], parameters: tuple[Parameter, ...], question: Question) -> int:
    """Give what words of the topic give outright (vinyl, no waste), the longest first; their tokens as a mask."""
    kinds = {p.name: p.kind for p in parameters}
    covered = 0
    for hit in sorted(hits, key=lambda hit: (hit.start - hit.end, hit.start)):
        for name, at, fixed in hit.captures:
            if at < 0 and fixed and name in kinds and name not in question.givens and not covered & hit.mask:
                place = place_of(chart, hit.start, hit.end)
                question.givens[name] = Heard(fixed_value(kinds[name], fixed, place[2]), *place)
                covered |= hit.mask if not hit.found else 0
    return covered & ~chart.numbers


def _lists(chart: Chart, parameters: tuple[Parameter, ...], first: Question | None, question: Question) -> int:
    """Give the lists (pieces, openings, layers) as the grammar read them, or the longest; their tokens as a mask."""
    covered = 0
    for parameter in (p for p in parameters if p.kind is tuple):
        heard = first.givens.get(parameter.name) if first else None
        if heard is None:
            said = [r for row in chart.readings for r in row if isinstance(r.value, tuple)]
            fits = [r for r in said if not covered & span(r.start, r.end) and heard_as(chart, parameter, r, False)]
            longest = max(fits, key=lambda r: r.end - r.start, default=None)
            heard = heard_as(chart, parameter, longest, False) if longest else None
        if heard is not None:
            question.givens[parameter.name] = heard
            covered |= _tokens(chart, heard)
    return covered


def _tokens(chart: Chart, heard: Heard) -> int:
    inside = (1 << i for i, t in enumerate(chart.tokens) if heard.start <= t.start and t.end <= heard.end)
    return sum(inside)


def told_by(hits: Iterable[Hit]) -> dict[tuple[int, int], set[str]]:
    """Which parameters the grammar's islands would give each quantity to, by its tokens."""
    told: dict[tuple[int, int], set[str]] = {}
    for hit in hits:
        found = dict(hit.found)
        for name, at, _ in hit.captures:
            if at in found:
                for part_name, part in _parts(name, found[at]):
                    told.setdefault((part.start, part.end), set()).add(part_name)
    return told


def _parts(name: str, reading: Reading) -> Iterator[tuple[str, Reading]]:
    names = [part.strip() for part in name.split(",")]
    parts = reading.value.parts if isinstance(reading.value, Dims) and len(names) > 1 else (reading,)
    return zip(names, parts, strict=False)


def _roles(sentence: Sentence, model: Learned) -> list[dict[str, float]]:
    """For each quantity the roles it could have, with how likely each is."""
    likely = []
    chart, topic, by_name, found, told = sentence
    for mention, features in zip(found, of_mentions(chart, found), strict=True):
        reading = mention.reading
        names = [n for n, p in by_name.items() if p.kind is not tuple and heard_as(chart, p, reading, True)]
        said = told.get((reading.start, reading.end), set()) & set(names)
        shares = model.role(topic, [*names, NOTHING], features, said)
        likely.append(dict(zip([*names, NOTHING], shares, strict=True)))
    return likely


def _ways(likely: list[dict[str, float]]) -> list[Way]:
    """The likeliest ways to hand out the quantities, each role once; the likeliest first."""
    ways: list[Way] = [(0.0, ())]
    for roles in likely:
        ways = [
            (sure + log(share), (*taken, role))
            for sure, taken in ways
            for role, share in roles.items()
            if role == NOTHING or (share >= LEAST_ROLE and role not in taken)
        ]
        ways = sorted(ways, key=lambda way: -way[0])[:WIDTH]
    return ways


def _give(sentence: Sentence, givens: dict[str, Heard], roles: tuple[str, ...]) -> None:
    for mention, role in zip(sentence.found, roles, strict=True):
        if role != NOTHING:
            heard = heard_as(sentence.chart, sentence.by_name[role], mention.reading, True)
            if heard is not None:
                givens[role] = heard
