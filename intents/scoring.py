"""What a question is worth: the words it explains, less those it does not; and the most that is left to hope for.

The bound never falls below the score that placing comes to, so what it rules out need not be placed at all: a page of
numbers would otherwise be handed out to each of a hundred patterns.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import reduce
from operator import or_
from typing import NamedTuple

from intents.beside import tied
from intents.chart import Chart, Hit, once, span
from intents.fitting import KINDS
from intents.phrases import Phrases
from intents.placing import CONTRASTED, Placed
from intents.question import Question
from intents.reading import SIZED, Dims, Reading
from solvers.quantities import Angle, Count, Length, Number
from solvers.slots import Parameter
from solvers.sums import Measure, Sum

UNKNOWN = 0.25  # what a word that means nothing here costs
STRAY = 0.8  # what a word that means something elsewhere costs
STRAY_NUMBER = 1.3  # what a quantity that no parameter takes costs
MISSING = 0.35  # what a required parameter that was not said costs
UNSURE = 0.5  # what a given costs whose unit or reading had to be guessed, when it is not sure at all
LOOSE = 0.05  # what a given costs whose place no words beside it told
SLIP = 0.1  # what a forgiven misspelling costs
LEAST_SCORE = 0.0  # below it too little of the sentence was understood
LEAST_SHARE = 0.4  # of the words that carry meaning, what a topic must explain
BARE = (Length, Count, Number, Measure, Angle)  # what a number with no unit may be for where no word beside it tells
ROUNDING = 1e-6  # of sums made in another order


def score(question: Question, chart: Chart, phrases: Phrases, placed: Placed) -> None:
    """Words explained, less what they leave unexplained."""
    explained = (placed.covered & chart.weighs).bit_count()
    total: float = explained
    cost = 0.0
    for bit, word in _words_of(chart):
        if placed.covered & bit:
            question.words.append(word)
        elif chart.known & bit:
            cost += STRAY
            total += 1
        elif word in phrases.ordinary:
            cost += UNKNOWN / 2
        else:
            question.unknown.append(word)
            cost += UNKNOWN
            total += UNKNOWN
    cost += STRAY_NUMBER * len(question.unplaced) + MISSING * len(question.missing)
    cost += LOOSE * len(placed.loosely) + UNSURE * sum(1 - heard.sure for heard in placed.givens.values())
    total += len(question.unplaced)
    question.score = explained - cost - SLIP * len(chart.changed)
    if total == 0 or explained / total < LEAST_SHARE:
        question.score = min(question.score, LEAST_SCORE - 1)


@once
def _words_of(chart: Chart) -> list[tuple[int, str]]:
    """The words that carry meaning, each with its bit; quantities are counted apart, each once."""
    mask = chart.weighs & ~chart.numbers
    return [(1 << i, word) for i, word in enumerate(chart.words) if mask >> i & 1]


class _Room(NamedTuple):
    """What a topic could take of a sentence's quantities without a word beside them."""

    takes: int  # how many
    where: int  # mask of the tokens of those it could take
    listed: bool  # whether one of its parameters is a list, which takes any number of them
    names: frozenset[str]  # parameters


class Hope:
    """The most each pattern could come to in one sentence. `always` is the mask of what goes with any pattern."""

    def __init__(self, chart: Chart, phrases: Phrases, always: int) -> None:
        words = {i: word for i, word in enumerate(chart.words) if (chart.weighs & ~chart.numbers) >> i & 1}
        new = {i: word for i, word in words.items() if not chart.known >> i & 1}
        self.chart, self.always = chart, always
        self.strays = chart.known & ~chart.numbers
        self.ordinary = sum(1 << i for i, word in new.items() if word in phrases.ordinary)
        self.unknown = sum(1 << i for i in new) & ~self.ordinary
        said = [reading for row in chart.readings for reading in row]
        plain = [reading for reading in said if isinstance(reading.value, SIZED)]
        self.kinds: dict[str, int] = {}  # where quantities of each kind stand
        for reading in said:
            self.kinds[reading.kind] = self.kinds.get(reading.kind, 0) | span(reading.start, reading.end)
        self.sized = any(isinstance(reading.value, Dims) for reading in plain)
        self.in_lists = 0
        for reading in said:
            self.in_lists |= 0 if isinstance(reading.value, SIZED) else span(reading.start, reading.end)
        free = sum(word == "more" for word in chart.words)  # see repeats.said_again, and Placed.leave
        free += len(tied(chart))
        self.free = free + sum(pair in CONTRASTED for pair in zip(chart.words, chart.words[1:], strict=False))
        self.apart, self.apart_of_lists = _apart(chart, plain, plain), _apart(chart, plain, said)
        self.rooms: dict[str, _Room] = {}

    def most(self, topic: str, parameters: tuple[Parameter, ...], islands: int) -> tuple[float, bool]:
        """The most that a pattern could score with `islands` (a mask), and whether some quantity surely has no place."""
        room = self._room(topic, parameters)
        reach = islands | self.always | (self.in_lists if room.listed else 0)
        apart = self.apart_of_lists if room.listed else self.apart
        left = [mask for mask in apart if not mask & reach]
        places = min(room.takes, sum(bool(mask & room.where) for mask in left))
        over = max(0, len(left) - places - self.free)
        chart = self.chart
        explained = ((reach | chart.numbers) & chart.weighs).bit_count() - (0 if self.sized else over)
        strays = (self.strays & ~reach).bit_count()
        unknown = (self.unknown & ~reach).bit_count()
        most = explained - STRAY * strays - UNKNOWN * unknown - UNKNOWN / 2 * (self.ordinary & ~reach).bit_count()
        most -= STRAY_NUMBER * over + SLIP * len(chart.changed) - ROUNDING
        if explained < (LEAST_SHARE - ROUNDING) * (explained + strays + UNKNOWN * unknown + over):
            most = min(most, LEAST_SCORE - 1 + ROUNDING)
        return most, over > 0

    def lacks(self, topic: str, parameters: tuple[Parameter, ...], hits: Iterable[Hit]) -> bool:
        """Whether something that must be known was surely not said."""
        names = self._room(topic, parameters).names
        told = {part.strip() for hit in hits for name, _, _ in hit.captures for part in name.split(",")}
        return any(parameter.lacks(names | told) for parameter in parameters)

    def _room(self, topic: str, parameters: tuple[Parameter, ...]) -> _Room:
        if topic not in self.rooms:
            open_ = [p for p in parameters if (p.required or p.default is None) and not p.slot.cued]
            where = {p.name: here for p in open_ if (here := self._where(p.kind))}
            listed = any(p.kind in (tuple, Sum) for p in open_ if p.name in where)
            self.rooms[topic] = _Room(len(where), reduce(or_, where.values(), 0), listed, frozenset(where))
        return self.rooms[topic]

    def _where(self, kind: type) -> int:
        """Where quantities stand that a parameter of this kind could take with no word beside them."""
        if kind is tuple:
            return self.in_lists
        kinds = [name for name in KINDS.get(kind, ()) if name != "number" or kind in BARE]
        return reduce(or_, (self.kinds.get(name, 0) for name in kinds), self.kinds.get("dims", 0) if kind is Length else 0)


def _apart(chart: Chart, plain: list[Reading], said: list[Reading]) -> list[int]:
    """The masks of quantities no two of which could be one. `said` are the readings that could join two.

    A quantity said again is not asked about where it has its place once, so of those with the same first word only one
    is counted, and its mask is of all.
    """
    text = chart.text
    typed = [text[token.start : token.end].lower() for token in chart.tokens]
    found: list[int] = []
    seen: set[str] = set()
    ends: dict[int, int] = {}  # of the longest reading from each place
    for reading in said:
        ends[reading.start] = max(reading.end, ends.get(reading.start, 0))
    free = 0  # the first token that no reading of the last one reaches
    for at, shortest in _shortest(plain).items():
        if at < free or not chart.weighs >> at & 1 or chart.words[at] in ("one", "two"):
            continue
        free = max(end for start, end in ends.items() if start <= at < end)
        if typed[at] not in seen:
            again = (1 << i for i, word in enumerate(typed) if word == typed[at])
            found.append(reduce(or_, again, span(at, shortest)))
        seen.update(typed[at:free])
    return found


def _shortest(plain: list[Reading]) -> dict[int, int]:
    """Where the quantities start, and where the shortest of each ends; from left to right."""
    ends: dict[int, int] = {}
    for reading in plain:
        ends[reading.start] = min(reading.end, ends.get(reading.start, reading.end))
    return ends
