"""The best questions that the islands found in a sentence make, each topic's one.

Patterns are placed in the order of what their islands could explain. One that can't come among the questions handed on
is passed over without being placed (see scoring.Hope): in a long line that is nearly all of them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache, cached_property, reduce
from operator import or_
from typing import Any

from intents.beside import passed
from intents.chart import Chart, Hit
from intents.neighbours import of_something_else
from intents.phrases import MANNER, Capture, Pattern, Phrases
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
HOPEFUL = 1000.0  # more than any sentence can score
NONE = 99  # islands lacking where nothing that must be there is
LEAST_LACKING = 0.05  # a topic less likely than this is not searched for without one of its plain islands
HOW = Pattern(MANNER, [False] * 9, [frozenset()] * 9)


@dataclass(slots=True)
class _Turn:
    """A pattern of a search: its islands and the mask of them, how many it lacks, and what is to be hoped of it."""

    number: int
    pattern: Pattern
    hits: list[Hit]
    islands: int
    lacks: int
    most: float  # words that its islands could explain, less those that mean something elsewhere
    hope: float = HOPEFUL  # the most it could score, where that was looked into
    chosen: list[Hit] = field(default_factory=list)  # those of its islands that go together
    question: Question | None = None  # what it came to

    @property
    def topic(self) -> str:
        """What it asks for."""
        return self.pattern.topic


class Search:
    """One sentence searched for the questions of some topics.

    Patterns have their turns in the order of what their islands could explain; one so much worse than another before
    it that it could be neither answered nor asked about ends the search. Of equals the first is the best.
    """

    def __init__(self, chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> None:
        self.chart, self.topics = chart, topics
        self.by_pattern = by_pattern(chart)
        self.turns: tuple[list[_Turn], list[_Turn]] = ([], [])  # of the patterns that lack no plain island, and that lack one
        manner: list[Hit] = []
        for number, hits in self.by_pattern.items():
            pattern = phrases.patterns[number]
            if pattern.topic in topics and (not wanted or pattern.topic in wanted):
                self._take_turn(number, pattern, hits)
            elif pattern.topic == MANNER:
                manner += hits
        for turns in self.turns:
            turns.sort(key=lambda turn: (-turn.most, turn.number))
        self.asker = Asker(chart, phrases, manner)

    def _take_turn(self, number: int, pattern: Pattern, hits: list[Hit]) -> None:
        """Add a pattern whose words are there, if its islands could explain enough."""
        lacks = lacking(pattern, hits)
        if lacks > 1 or (lacks and self.chart.unlikely and self.chart.likely.get(pattern.topic, 1.0) < LEAST_LACKING):
            return
        islands, chart = 0, self.chart
        for hit in hits:
            islands |= hit.mask
        reach = chart.numbers | islands
        most = (reach & chart.weighs).bit_count() - STRAY * (chart.known & ~reach).bit_count()
        if most >= LEAST_SCORE - MARGIN:
            self.turns[lacks].append(_Turn(number, pattern, hits, islands, lacks, most))

    @cached_property
    def hope(self) -> Hope:
        """What to expect of patterns; a short line never asks."""
        return Hope(self.chart, self.asker.phrases, self.asker.manner_mask)

    def strict(self) -> list[Question]:
        """The best question of each topic that is among the best few, best first."""
        turns = self.turns[0]
        top = max(LEAST_SCORE, self._question(turns[0]).score) if turns else LEAST_SCORE
        turns = turns[:1] + [turn for turn in turns[1:] if turn.most >= top - MARGIN]  # most lines say one thing plainly
        self.turns = (turns, self.turns[1])
        if len({turn.topic for turn in turns}) > KEEP:
            for turn in turns:
                turn.hope = self._hope(turn)[0]
        best: dict[str, int] = {}
        for at in sorted(range(len(turns)), key=lambda at: -turns[at].hope):
            scores = sorted((self._question(turns[kept]).score for kept in best.values()), reverse=True)
            if len(scores) >= KEEP and turns[at].hope < scores[KEEP - 1]:
                break
            if self._in_time(turns, at):
                self._try(best, turns, at)
        order = sorted(best, key=lambda topic: next(at for at, turn in enumerate(turns) if turn.topic == topic))
        questions = {topic: self._question(turns[best[topic]]) for topic in order}
        for question in sorted(questions.values(), key=lambda q: -q.score)[:REFINED]:
            questions[question.topic] = self._refined(turns[best[question.topic]], question)
        return sorted(questions.values(), key=lambda q: -q.score)

    def loose(self, strict: list[Question]) -> list[Question]:
        """The complete questions that lack one of the plain islands of their rule, of topics not complete without."""
        turns = self.turns[1]
        complete = {question.topic for question in strict if question.complete and not self._passed(question.topic)}
        top = LEAST_SCORE
        for at, turn in enumerate(turns):
            if turn.most < top - MARGIN:
                turns = turns[:at]
                break
            turn.hope, over = self._hope(turn)
            turn.hope -= LACKING
            if not (over or turn.topic in complete or self.hope.lacks(turn.topic, self.topics[turn.topic], turn.hits)):
                top = max(top, self._question(turn).score)
        best: dict[str, int] = {}
        for topic in dict.fromkeys(turn.topic for turn in turns if turn.question and turn.question.complete):
            for at, turn in enumerate(turns):
                if turn.topic == topic and self._in_time(turns, at):
                    self._try(best, turns, at)
        found = [self._question(turns[at]) for at in best.values()]
        return [q for q in sorted(found, key=lambda q: -q.score) if q.complete and not self._complete(q.topic, strict)]

    def _hope(self, turn: _Turn) -> tuple[float, bool]:
        return self.hope.most(turn.topic, self.topics[turn.topic], turn.islands)

    def _in_time(self, turns: list[_Turn], at: int) -> bool:
        """Whether no pattern before this one is so much better that the search ends there."""
        limit = turns[at].most + MARGIN
        return all(turn.hope <= limit or self._question(turn).score <= limit for turn in turns[:at])

    def _try(self, best: dict[str, int], turns: list[_Turn], at: int) -> None:
        """Keep a pattern where it is the best of its topic."""
        topic, score = turns[at].topic, self._question(turns[at]).score
        kept = best.get(topic)
        if kept is None or (score, -at) > (self._question(turns[kept]).score, -kept):
            best[topic] = at

    def _question(self, turn: _Turn) -> Question:
        """The question of a pattern, placed when it is first asked for."""
        if turn.question is None:
            parameters = self.topics[turn.topic]
            turn.chosen = self.asker.chosen(turn.pattern, turn.hits, parameters)
            turn.question = self.asker.question(turn.topic, turn.chosen, parameters)
            turn.question.lacking = turn.lacks
            turn.question.score -= LACKING * turn.lacks
            if turn.pattern.whole and lacking(turn.pattern, turn.chosen):  # two of its islands would have the same words
                turn.question.score = LEAST_SCORE - MARGIN
        return turn.question

    def _passed(self, topic: str) -> bool:
        """Whether a strict pattern of a topic was never placed, having no hope to be among the best few."""
        return any(turn.topic == topic and turn.question is None for turn in self.turns[0])

    def _complete(self, topic: str, strict: list[Question]) -> bool:
        """Whether a topic is complete without lacking anything, be it by a pattern that was passed over."""
        question = next((q for q in strict if q.topic == topic), None)
        if self._passed(topic):
            turns, best = self.turns[0], dict[str, int]()
            for at, turn in enumerate(turns):
                if turn.topic == topic and self._in_time(turns, at):
                    self._try(best, turns, at)
            other = self._question(turns[best[topic]]) if best else None
            question = other if question is None or (other and other.score > question.score) else question
        return question is not None and question.complete

    def _refined(self, turn: _Turn, question: Question) -> Question:
        """The question, or a better one without some island that took a quantity another role needed."""
        if question.complete and all(h.sure >= SURE for h in question.givens.values()):
            return question
        parameters = self.topics[question.topic]
        for hit in [hit for hit in turn.chosen if hit.captures]:
            same = [h for h in turn.hits if h.mask != hit.mask or h.captures != hit.captures]
            if not _claimed(self.chart, hit, same) or lacking(turn.pattern, same):
                continue
            islands = reduce(or_, [h.mask for h in same], 0)
            if self.hope.most(question.topic, parameters, islands)[0] <= question.score:
                continue
            chosen = self.asker.chosen(turn.pattern, same, parameters)
            if not _claimed(self.chart, hit, chosen):
                continue
            other = self.asker.question(question.topic, chosen, parameters)
            if other.score > question.score:
                question = other
        return question


class Asker:
    """Makes questions of islands. `manner` are the islands that say how to answer."""

    def __init__(self, chart: Chart, phrases: Phrases, manner: list[Hit]) -> None:
        self.chart, self.phrases = chart, phrases
        self.ranks: dict[int, tuple[bool, bool, int, float, int, int]] = {}  # by the island
        self.how = self.chosen(HOW, manner, ()) if manner else []
        self.manner_mask = reduce(or_, [hit.mask for hit in self.how], 0)

    def question(
        self, topic: str, chosen: list[Hit], parameters: tuple[Parameter, ...], wanted: str = ""
    ) -> Question:  # fmt: skip
        """What a pattern's chosen islands ask, with every quantity of the sentence where it can go."""
        chart = self.chart
        used = reduce(or_, [hit.mask for hit in chosen], 0)
        beside = 0 if wanted else passed(chart, topic, parameters)
        placed = place(chart, chosen, parameters, wanted, [hit for hit in self.how if not used & hit.mask], beside)
        question = Question(topic, placed.givens, swaps=placed.swaps, manner=placed.manner)
        question.missing = [p.name for p in parameters if p.lacks(placed.givens)]
        question.unplaced, question.unplaced_kinds = placed.unplaced, placed.unplaced_kinds
        score(question, chart, self.phrases, placed)
        if not wanted:  # counted in no score: the topic stays as likely, but it asks
            question.unplaced = [*question.unplaced, *of_something_else(chart, self.phrases, placed, parameters)]
        return question

    def chosen(self, pattern: Pattern, hits: list[Hit], parameters: tuple[Parameter, ...]) -> list[Hit]:
        """Islands that do not overlap, the plain ones that must be there first, then the longest, the surest; each once."""
        chart, ranks = self.chart, self.ranks
        by_name = {parameter.name: parameter for parameter in parameters} if len(hits) > 1 else {}
        for hit in hits if len(hits) > 1 else ():
            if id(hit) not in ranks:
                ranks[id(hit)] = self._rank(pattern, hit, by_name)
        chosen: list[Hit] = []
        used, taken, numbers = 0, 0, 0  # masks of all islands, and of those that share no word
        filled: set[str] = set()
        beside = passed(chart, pattern.topic, parameters) if parameters else 0
        for hit in sorted(hits, key=lambda hit: ranks[id(hit)]) if len(hits) > 1 else hits:
            # The word that names the topic may tell a role as well: the sticks of "12 foot sticks for 90 feet of trim".
            if numbers >> hit.number & 1 or (hit.mask & used and hit.mask & (taken if _may_share(chart, hit, used) else used)):
                continue
            gives = _gives(hit.captures)
            if gives & filled or (hit.found and gives and hit.mask & beside and not _layered(hit)):
                continue
            chosen.append(hit)
            used |= hit.mask
            taken |= 0 if pattern.plain >> hit.number & 1 else hit.mask
            numbers |= 1 << hit.number
            filled |= gives
        return chosen

    def _rank(self, pattern: Pattern, hit: Hit, by_name: Mapping[str, Parameter]) -> tuple[bool, bool, int, float, int, int]:
        """What comes first is chosen first. An island is of one pattern, so its rank stays the same."""
        plain = bool(pattern.plain >> hit.number & 1)
        content = (hit.mask & self.chart.weighs).bit_count()
        sure = sureness(self.chart, hit, by_name) if hit.captures else 1.0
        return (not plain, sure < POSSIBLE, -content, -sure, hit.end - hit.start, hit.start)


@cache
def _gives(captures: tuple[Capture, ...]) -> frozenset[str]:
    """The parameters that an island gives: 3x7 gives a length and a height. There are as many as in the grammar."""
    return frozenset(part.strip() for name, _, _ in captures for part in name.split(","))


def manner_of(chart: Chart, phrases: Phrases, taken: int) -> dict[str, Any]:
    """How a sentence says to answer, besides the tokens that are taken: for a question that no rule made."""
    hits = [hit for hit in chart.hits if phrases.patterns[hit.pattern].topic == MANNER and not hit.mask & taken]
    return place(chart, [], (), manner=Asker(chart, phrases, hits).how).manner if hits else {}


def by_pattern(chart: Chart) -> dict[int, list[Hit]]:
    """The islands found, by the number of their pattern."""
    found: dict[int, list[Hit]] = {}
    for hit in chart.hits:
        mine = found.get(hit.pattern)
        if mine is None:
            found[hit.pattern] = [hit]
        else:
            mine.append(hit)
    return found


def lacking(pattern: Pattern, hits: list[Hit]) -> int:
    """How many of the plain islands that must be there are not; NONE when nothing that must be there is."""
    there = 0
    for hit in hits:
        there |= 1 << hit.number
    if pattern.whole and pattern.needed & ~there:
        return NONE
    return (pattern.plain & ~there).bit_count() if pattern.needed & there else NONE


def _claimed(chart: Chart, hit: Hit, chosen: list[Hit]) -> bool:
    """Whether other islands claim the quantities of one left out: none may lose its role and go where there is room."""
    claimed = 0
    for other in chosen:
        if other.captures:
            claimed |= other.mask
    return not hit.mask & chart.numbers & ~claimed


def _layered(hit: Hit) -> bool:
    """Whether an island is a list of layers, which left out itself what is none of them."""
    return any(reading.kind == "layers" for _, reading in hit.found)


def _may_share(chart: Chart, hit: Hit, used: int) -> bool:
    """Whether an island may share the word that names the topic: it places a quantity, is a number in itself (a square
    corner is one of 90°), or tells a choice by more words of its own ("equal gaps, and one at each end")."""
    if hit.found or not hit.captures:
        return bool(hit.found)
    own = (hit.mask & chart.weighs & ~used).bit_count()
    return own >= OWN_WORDS or any(fixed.isdecimal() for _, _, fixed in hit.captures)
