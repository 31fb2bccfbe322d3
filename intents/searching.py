"""The best questions that the islands found in a sentence make, each topic's one.

Patterns are placed in the order of what their islands could explain. One that can't come among the questions handed on
is passed over without being placed (see scoring.Hope): in a long line that is nearly all of them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, reduce
from operator import or_
from typing import NamedTuple

from intents.chart import Chart, Hit
from intents.neighbours import of_something_else
from intents.phrases import Pattern, Phrases
from intents.placing import place, sureness
from intents.question import Question
from intents.scoring import LEAST_SCORE, STRAY, Hope, score
from solvers.slots import Parameter

Topics = Mapping[str, tuple[Parameter, ...]]

LACKING = 1.5  # what a plain island costs that was not said, where nothing else fits
KEEP = 4  # readings handed on
MARGIN = 1.0  # a topic this far behind the best is neither answered nor asked about
REFINED = 3  # leading topics whose quantities are tried in other places
POSSIBLE = 0.2  # a given less sure than this can hardly be right
OWN_WORDS = 3  # words of its own from which on a choice may share a word with the name of the topic
SURE = 0.9  # a given this sure was said outright
NONE = 99  # islands lacking where nothing that must be there is
MANNER = "manner"  # the topic of the rules that say how to answer ("to the nearest 32nd"); they go with any other
HOW = Pattern(MANNER, [False] * 9, [frozenset()] * 9)


class _Said(NamedTuple):
    """One pattern as far as it was said: its islands and the mask of them, and how many of those it needs are not there."""

    number: int
    pattern: Pattern
    hits: list[Hit]
    islands: int
    lacks: int


class _Best(NamedTuple):
    """The best question of a topic so far, which pattern it is of, and when that one's turn was."""

    question: Question
    said: _Said
    turn: int


@dataclass(slots=True)
class _Turn:
    """A pattern of the loose search: the most its islands could explain, the most it could score, and what it came to."""

    most: float
    said: _Said
    hope: float = 0.0
    question: Question | None = None


class Search:
    """One sentence searched for the questions of some topics."""

    def __init__(self, chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> None:
        self.chart, self.topics = chart, topics
        self.by_pattern = by_pattern(chart)
        hits = {n: (phrases.patterns[n], found) for n, found in self.by_pattern.items()}
        self.patterns = [
            _Said(n, pattern, found, reduce(or_, [hit.mask for hit in found]), lacks(pattern, found))
            for n, (pattern, found) in hits.items()
            if pattern.topic in topics and not (wanted and pattern.topic not in wanted)
        ]
        self.asker = Asker(chart, phrases, [hit for pattern, found in hits.values() if pattern.topic == MANNER for hit in found])
        self.passed: dict[str, list[tuple[int, _Said]]] = {}  # patterns of the strict search that were passed over, by topic

    @cached_property
    def hope(self) -> Hope:
        """What to expect of patterns; most short lines never ask."""
        return Hope(self.chart, self.asker.phrases, self.asker.manner_mask)

    def strict(self) -> list[Question]:
        """The best question of each topic that is among the best few, best first."""
        best: dict[str, _Best] = {}
        turns: dict[str, int] = {}  # of each topic's first pattern: of equals the first is the best
        top = least = LEAST_SCORE
        for turn, (most, said) in enumerate(self._promising(0)):
            if most < top - MARGIN:
                break
            topic = said.pattern.topic
            turns.setdefault(topic, turn)
            if len(best) >= KEEP and self._most(said)[0] < least:
                self.passed.setdefault(topic, []).append((turn, said))
                continue
            self._try(best, turn, said)
            top = max(top, best[topic].question.score)
            if len(best) >= KEEP:
                least = sorted((found.question.score for found in best.values()), reverse=True)[KEEP - 1]
        questions = {topic: best[topic].question for topic in turns if topic in best}
        for question in sorted(questions.values(), key=lambda q: -q.score)[:REFINED]:
            questions[question.topic] = self._refined(best[question.topic].said, question)
        return sorted(questions.values(), key=lambda q: -q.score)

    def loose(self, strict: list[Question]) -> list[Question]:
        """The complete questions that lack one of the plain islands of their rule, of topics not complete without."""
        complete = {question.topic for question in strict if question.complete and question.topic not in self.passed}
        turns = [_Turn(most, said) for most, said in self._promising(1)]
        top = LEAST_SCORE
        for at, turn in enumerate(turns):
            if turn.most < top - MARGIN:
                turns = turns[:at]
                break
            topic = turn.said.pattern.topic
            turn.hope, over = self._most(turn.said)
            if not (over or topic in complete or self.hope.lacks(topic, self.topics[topic], turn.said.hits)):
                top = max(top, self._loosely(turn).score)
        found: dict[str, Question] = {}
        for topic in dict.fromkeys(t.said.pattern.topic for t in turns if t.question and t.question.complete):
            mine = [at for at, turn in enumerate(turns) if turn.said.pattern.topic == topic and self._in_time(turns, at)]
            if mine:
                found[topic] = max((self._loosely(turns[at]) for at in mine), key=lambda q: q.score)
        return [q for q in sorted(found.values(), key=lambda q: -q.score) if q.complete and not self._complete(q.topic, strict)]

    def _in_time(self, turns: list[_Turn], at: int) -> bool:
        """Whether no pattern before this one is so much better that the search ends there."""
        limit = turns[at].most + MARGIN
        return all(turn.hope - LACKING <= limit or self._loosely(turn).score <= limit for turn in turns[:at])

    def _loosely(self, turn: _Turn) -> Question:
        """The question of a pattern that lacks an island, placed when it is first asked for."""
        if turn.question is None:
            said = turn.said
            turn.question = self.asker.question(said.pattern, said.hits, self.topics[said.pattern.topic])
            turn.question.lacking = 1
            turn.question.score -= LACKING
        return turn.question

    def _complete(self, topic: str, strict: list[Question]) -> bool:
        """Whether a topic is complete without, be it by a pattern that had no hope to be among the best few."""
        best: dict[str, _Best] = {}
        for turn, said in self.passed.get(topic, ()):
            self._try(best, turn, said)
        least = best[topic].question.score if best else None
        better = (q for q in strict if q.topic == topic and (least is None or q.score >= least))
        question = next(better, best[topic].question if best else None)
        return question is not None and question.complete

    def _most(self, said: _Said) -> tuple[float, bool]:
        return self.hope.most(said.pattern.topic, self.topics[said.pattern.topic], said.islands)

    def _try(self, best: dict[str, _Best], turn: int, said: _Said) -> None:
        """Place a pattern; it is kept where it is the best of its topic, of equals the one whose turn was first."""
        topic = said.pattern.topic
        question = self.asker.question(said.pattern, said.hits, self.topics[topic])
        kept = best.get(topic)
        if kept is None or (question.score, -turn) > (kept.question.score, -kept.turn):
            best[topic] = _Best(question, said, turn)

    def _promising(self, lacking: int) -> list[tuple[float, _Said]]:
        """The patterns whose words are there, with the most their islands could explain, the most promising first."""
        chart = self.chart
        found: list[tuple[float, _Said]] = []
        for said in self.patterns:
            if said.lacks == lacking:
                reach = chart.numbers | said.islands
                strays = (chart.known & ~reach).bit_count()
                found.append(((reach & chart.weighs).bit_count() - STRAY * strays, said))
        return sorted(found, key=lambda pair: (-pair[0], pair[1].number))

    def _refined(self, said: _Said, question: Question) -> Question:
        """The question, or a better one without some island that took a quantity another role needed."""
        if question.complete and all(h.sure >= SURE for h in question.givens.values()):
            return question
        parameters = self.topics[question.topic]
        for hit in [hit for hit in self.asker.chosen(said.pattern, said.hits, parameters) if hit.captures]:
            same = [h for h in said.hits if h.mask != hit.mask or h.captures != hit.captures]
            if lacks(said.pattern, same):
                continue
            islands = reduce(or_, [h.mask for h in same])
            if self.hope.most(question.topic, parameters, islands)[0] <= question.score:
                continue
            if not _claimed(self.chart, hit, self.asker.chosen(said.pattern, same, parameters)):
                continue
            other = self.asker.question(said.pattern, same, parameters)
            if other.score > question.score:
                question = other
        return question


class Asker:
    """Makes questions of islands. `manner` are the islands that say how to answer."""

    def __init__(self, chart: Chart, phrases: Phrases, manner: list[Hit]) -> None:
        self.chart, self.phrases = chart, phrases
        self.how = self.chosen(HOW, manner, ()) if manner else []
        self.manner_mask = reduce(or_, [hit.mask for hit in self.how], 0)

    def question(
        self, pattern: Pattern, hits: list[Hit], parameters: tuple[Parameter, ...], wanted: str = ""
    ) -> Question:  # fmt: skip
        """What a pattern's islands ask, with every quantity of the sentence where it can go."""
        chart = self.chart
        chosen = self.chosen(pattern, hits, parameters)
        used = reduce(or_, [hit.mask for hit in chosen], 0)
        placed = place(chart, chosen, parameters, wanted, [hit for hit in self.how if not used & hit.mask])
        question = Question(pattern.topic, placed.givens, swaps=placed.swaps, manner=placed.manner)
        question.missing = [p.name for p in parameters if p.lacks(placed.givens)]
        question.unplaced, question.unplaced_kinds = placed.unplaced, placed.unplaced_kinds
        score(question, chart, self.phrases, placed)
        if not wanted:  # counted in no score: the topic stays as likely, but it asks
            question.unplaced = [*question.unplaced, *of_something_else(chart, self.phrases, placed, parameters)]
        return question

    def chosen(self, pattern: Pattern, hits: list[Hit], parameters: tuple[Parameter, ...]) -> list[Hit]:
        """Islands that do not overlap, the plain ones that must be there first, then the longest, the surest; each once."""
        chart = self.chart

        def rank(hit: Hit) -> tuple[bool, bool, int, float, int, int]:
            plain = bool(pattern.plain >> hit.number & 1)
            content = (hit.mask & chart.weighs).bit_count()
            sure = sureness(chart, hit, parameters) if hit.captures else 1.0
            return (not plain, sure < POSSIBLE, -content, -sure, hit.end - hit.start, hit.start)

        chosen: list[Hit] = []
        used, taken, numbers = 0, 0, 0  # masks of all islands, and of those that share no word
        filled: set[str] = set()
        for hit in sorted(hits, key=rank) if len(hits) > 1 else hits:
            # The word that names the topic may tell a role as well: the sticks of "12 foot sticks for 90 feet of trim".
            if numbers >> hit.number & 1 or hit.mask & (taken if _may_share(chart, hit, used) else used):
                continue
            gives = {name for name, _, _ in hit.captures}
            if gives & filled:
                continue
            chosen.append(hit)
            used |= hit.mask
            taken |= 0 if pattern.plain >> hit.number & 1 else hit.mask
            numbers |= 1 << hit.number
            filled |= gives
        return chosen


def by_pattern(chart: Chart) -> dict[int, list[Hit]]:
    """The islands found, by the number of their pattern."""
    found: dict[int, list[Hit]] = {}
    for hit in chart.hits:
        found.setdefault(hit.pattern, []).append(hit)
    return found


def lacks(pattern: Pattern, hits: list[Hit]) -> int:
    """How many of the plain islands that must be there are not; NONE when nothing that must be there is."""
    there = 0
    for hit in hits:
        there |= 1 << hit.number
    return (pattern.plain & ~there).bit_count() if pattern.needed & there else NONE


def _claimed(chart: Chart, hit: Hit, chosen: list[Hit]) -> bool:
    """Whether other islands claim the quantities of one left out: none may lose its role and go where there is room."""
    claimed = 0
    for other in chosen:
        if other.captures:
            claimed |= other.mask
    return not hit.mask & chart.numbers & ~claimed


def _may_share(chart: Chart, hit: Hit, used: int) -> bool:
    """Whether an island may share the word that names the topic: it places a quantity, is a number in itself (a square
    corner is one of 90°), or tells a choice by more words of its own ("equal gaps, and one at each end")."""
    own = (hit.mask & chart.weighs & ~used).bit_count()
    return bool(hit.found) or any(fixed.isdecimal() or own >= OWN_WORDS for _, _, fixed in hit.captures)
