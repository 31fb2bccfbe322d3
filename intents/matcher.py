"""From words to Questions: which topic's islands were said, which quantity goes to which parameter, how well it fits.

A topic is considered when all the plain islands of one of its patterns stand in the sentence, in any order. What was
said but belongs to no island counts against it; what is missing is named. The best few readings go to the
conversation, which asks where two are near.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from pathlib import Path

from intents.chart import LIGHT, Chart, Hit, chart_of
from intents.claims import claim_of, without
from intents.consulting import consult
from intents.grammars import FOLDER
from intents.learned import learned
from intents.measures import broken_number
from intents.neighbours import cut_off, of_something_else
from intents.phrases import Pattern, Phrases, compiled
from intents.placing import ANYTHING, Placed, place, sureness
from intents.question import Question, Reading
from intents.spelling import Speller
from intents.sum_words import OWN
from intents.tokens import Token, tokenize
from intents.vocabulary import NUMBER_WORDS
from solvers.slots import Parameter

Topics = Mapping[str, tuple[Parameter, ...]]

LONGEST = 440  # tokens of a cut list: sixty pieces with their fractions and commas
MOST = 110  # tokens of anything else: the longest question of the sets has 73, and a page is none
CHARTS = 8  # sentences kept as they were read: one is read as a question, as a reply, as a change
COMMAS = 1 / 12  # of the tokens of a list, at least
TOO_LONG = "that is more than I can take in at once: ask one thing at a time, in a sentence or two"
UNKNOWN = 0.25  # what a word that means nothing here costs
STRAY = 0.8  # what a word that means something elsewhere costs
STRAY_NUMBER = 1.3  # what a quantity that no parameter takes costs
MISSING = 0.35  # what a required parameter that was not said costs
UNSURE = 0.5  # what a given costs whose unit or reading had to be guessed, when it is not sure at all
LACKING = 1.5  # what a plain island costs that was not said, where nothing else fits
LOOSE = 0.05  # what a given costs whose place no words beside it told
NEAR_LACKING = 0.5  # what a plain island not said counts against a topic that is offered where nothing fits
SLIP = 0.1  # what a forgiven misspelling costs
LEAST_SCORE = 0.0  # below it too little of the sentence was understood
LEAST_SHARE = 0.4  # of the words that carry meaning, what a topic must explain
KEEP = 4  # readings handed on
MARGIN = 1.0  # a topic this far behind the best is neither answered nor asked about
REFINED = 3  # leading topics whose quantities are tried in other places
POSSIBLE = 0.2  # a given less sure than this can hardly be right
OWN_WORDS = 3  # words of its own from which on a choice may share a word with the name of the topic
SURE = 0.9  # a given this sure was said outright
MANNER = "manner"  # the topic of the rules that say how to answer ("to the nearest 32nd"); they go with any other
HOW = Pattern(MANNER, [False] * 9, [frozenset()] * 9)


@cache
def speller(folder: Path = FOLDER) -> Speller:
    """The speller of a folder's grammars."""
    phrases = compiled(folder)
    known = phrases.vocabulary | NUMBER_WORDS | OWN
    return Speller(known, phrases.fillers | phrases.ordinary | phrases.talk | LIGHT, phrases.ordinary)


@lru_cache(maxsize=CHARTS)
def _typed(text: str) -> list[Token]:
    return tokenize(text[: LONGEST * 12])


@lru_cache(maxsize=CHARTS)
def _chart(text: str, folder: Path) -> Chart:
    return chart_of(text, compiled(folder), speller(folder), _typed(text)[:LONGEST])


def otherwise(text: str, folder: Path = FOLDER) -> list[str]:
    """The line again for each small word of it that may have been a number ("forty for"), with the number in its place."""
    chart = _chart(text, folder)
    words = ((chart.tokens[at], number) for at, number in chart.doubts)
    return [f"{text[: token.start]}{number}{text[token.end :]}" for token, number in words]


def read(text: str, topics: Topics, folder: Path = FOLDER, only: Iterable[str] = (), seconds: bool = True) -> Reading:
    """All ways worth considering to read a sentence, best first.

    `only` reads it as one of these topics; without `seconds` the grammar reads alone.
    """
    phrases = compiled(folder)
    reading = Reading(text)
    typed = _typed(text)
    listed = sum(token.text == "," for token in typed) >= COMMAS * len(typed)
    if len(typed) > (LONGEST if listed else MOST):
        reading.too_long = TOO_LONG
        return reading
    chart = _chart(text, folder)
    reading.changed = chart.changed
    reading.broken = broken_number(chart.tokens) or ""
    wanted = set(only)
    _by_grammar(reading, chart, phrases, topics, wanted)
    reading.unaided = reading.questions
    model = learned(folder) if seconds and not wanted else None
    if model is not None:
        consult(reading, chart, phrases, topics, model)
    for question in reading.questions:
        question.unplaced = [*question.unplaced, *(cut_off(chart, phrases, question) if question.complete else ())]
    return reading


def _by_grammar(reading: Reading, chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> None:
    """What the rules of the grammar make of a sentence."""
    by_pattern = _by_pattern(chart)
    strict = _best(chart, phrases, by_pattern, topics, wanted, lacking=0)
    if not strict or strict[0].score <= LEAST_SCORE or not strict[0].complete:
        claimed = _claimed_in(chart, phrases, topics, wanted)
        if claimed:
            reading.questions = claimed
            return
        loose = _best(chart, phrases, by_pattern, topics, wanted, lacking=1)
        strict += [q for q in loose if q.complete and q.topic not in {other.topic for other in strict if other.complete}]
    reading.questions = sorted(strict, key=lambda q: -q.score)[:KEEP]
    if not reading.questions or reading.questions[0].score <= LEAST_SCORE:
        _explain(reading, chart, phrases, by_pattern)


def _claimed_in(chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> list[Question]:
    """The questions that are whole once a quantity is set aside that is only held against the answer."""
    claim = claim_of(chart)
    if claim is None:
        return []
    rest = without(chart, claim)
    found = _best(rest, phrases, _by_pattern(rest), topics, wanted, lacking=0)
    if not found or found[0].score <= LEAST_SCORE or not found[0].complete:
        return []
    for question in found:
        question.claim = claim
    return found[:KEEP]


def _best(
    chart: Chart,
    phrases: Phrases,
    by_pattern: dict[int, list[Hit]],
    topics: Topics,
    wanted: set[str],
    lacking: int,
) -> list[Question]:
    """The best question of each topic, best first; `lacking` 1 lets a pattern do without one of its plain islands."""
    manner = [hit for n, hits in by_pattern.items() if phrases.patterns[n].topic == MANNER for hit in hits]
    best: dict[str, Question] = {}
    origin: dict[str, int] = {}
    top = LEAST_SCORE
    for most, number in _promising(chart, phrases, by_pattern, topics, wanted, lacking):
        if most < top - MARGIN:
            break
        pattern = phrases.patterns[number]
        question = _question(chart, phrases, pattern, by_pattern[number], topics[pattern.topic], manner)
        question.lacking = lacking
        question.score -= LACKING * lacking
        top = max(top, question.score)
        if pattern.topic not in best or question.score > best[pattern.topic].score:
            best[pattern.topic] = question
            origin[pattern.topic] = number
    if lacking:
        return sorted(best.values(), key=lambda q: -q.score)
    for question in sorted(best.values(), key=lambda q: -q.score)[:REFINED]:
        number = origin[question.topic]
        parameters = topics[question.topic]
        better = _refined(chart, phrases, phrases.patterns[number], by_pattern[number], parameters, manner, question)
        best[question.topic] = better
    return sorted(best.values(), key=lambda q: -q.score)


def _promising(
    chart: Chart,
    phrases: Phrases,
    by_pattern: dict[int, list[Hit]],
    topics: Topics,
    wanted: set[str],
    lacking: int,
) -> list[tuple[float, int]]:
    """The patterns whose words are there, with the most each could score, the most promising first."""
    found: list[tuple[float, int]] = []
    for number, hits in by_pattern.items():
        pattern = phrases.patterns[number]
        if pattern.topic not in topics or (wanted and pattern.topic not in wanted) or _lacks(pattern, hits) != lacking:
            continue
        reach = chart.numbers
        for hit in hits:
            reach |= hit.mask
        strays = (chart.known & ~reach).bit_count()
        found.append(((reach & chart.weighs).bit_count() - STRAY * strays, number))
    return sorted(found, key=lambda pair: (-pair[0], pair[1]))


def read_as(text: str, topic: str, topics: Topics, folder: Path = FOLDER, wanted: str = "") -> Question:
    """The sentence as more about a topic already known (a missing piece, a change): no word need name it.

    `wanted` is the parameter that was asked for: it comes first for whatever no other words claim.
    """
    phrases = compiled(folder)
    chart = _chart(text, folder)
    by_pattern = _by_pattern(chart)
    manner = [hit for n, hits in by_pattern.items() if phrases.patterns[n].topic == MANNER for hit in hits]
    parameters = topics[topic]
    found = [
        _question(chart, phrases, pattern, by_pattern.get(n, []), parameters, manner, wanted or ANYTHING)
        for n, pattern in enumerate(phrases.patterns)
        if pattern.topic == topic
    ] or [_question(chart, phrases, Pattern(topic), [], parameters, manner, wanted or ANYTHING)]
    return max(found, key=lambda q: (q.score + MISSING * len(q.missing), len(q.givens)))


def _by_pattern(chart: Chart) -> dict[int, list[Hit]]:
    found: dict[int, list[Hit]] = {}
    for hit in chart.hits:
        found.setdefault(hit.pattern, []).append(hit)
    return found


def _has_words(pattern: Pattern, hits: list[Hit]) -> bool:
    """Whether every plain island that must be there is, and any that must be there at all."""
    return _lacks(pattern, hits) == 0


def _lacks(pattern: Pattern, hits: list[Hit]) -> int:
    """How many of the plain islands that must be there are not; 99 when nothing that must be there is."""
    there = 0
    for hit in hits:
        there |= 1 << hit.number
    return (pattern.plain & ~there).bit_count() if pattern.needed & there else 99


def _refined(
    chart: Chart,
    phrases: Phrases,
    pattern: Pattern,
    hits: list[Hit],
    parameters: tuple[Parameter, ...],
    manner: list[Hit],
    question: Question,
) -> Question:
    """The question, or a better one without some island that took a quantity another role needed."""
    if question.complete and all(h.sure >= SURE for h in question.givens.values()):
        return question
    for hit in [hit for hit in _chosen(chart, pattern, hits, parameters) if hit.captures]:
        same = [h for h in hits if h.mask != hit.mask or h.captures != hit.captures]
        if not _has_words(pattern, same) or not _claimed(chart, hit, _chosen(chart, pattern, same, parameters)):
            continue
        other = _question(chart, phrases, pattern, same, parameters, manner)
        if other.score > question.score:
            question = other
    return question


def _claimed(chart: Chart, hit: Hit, chosen: list[Hit]) -> bool:
    """Whether other islands claim the quantities of one left out: none may lose its role and go where there is room."""
    claimed = 0
    for other in chosen:
        if other.captures:
            claimed |= other.mask
    return not hit.mask & chart.numbers & ~claimed


def _question(
    chart: Chart,
    phrases: Phrases,
    pattern: Pattern,
    hits: list[Hit],
    parameters: tuple[Parameter, ...],
    manner: list[Hit],
    wanted: str = "",
) -> Question:
    chosen = _chosen(chart, pattern, hits, parameters)
    used = 0
    for hit in chosen:
        used |= hit.mask
    how = [hit for hit in _chosen(chart, HOW, manner, ()) if not used & hit.mask] if manner else []
    placed = place(chart, chosen, parameters, wanted, how)
    question = Question(pattern.topic, placed.givens, swaps=placed.swaps, manner=placed.manner)
    question.missing = [p.name for p in parameters if p.lacks(placed.givens)]
    question.unplaced, question.unplaced_kinds = placed.unplaced, placed.unplaced_kinds
    _score(question, chart, phrases, placed)
    if not wanted:  # counted in no score: the topic stays as likely, but it asks
        question.unplaced = [*question.unplaced, *of_something_else(chart, phrases, placed, parameters)]
    return question


def _chosen(chart: Chart, pattern: Pattern, hits: list[Hit], parameters: tuple[Parameter, ...]) -> list[Hit]:
    """Islands that do not overlap, the plain ones that must be there first, then the longest, the surest; each once."""

    def rank(hit: Hit) -> tuple[bool, bool, int, float, int, int]:
        plain = bool(pattern.plain >> hit.number & 1)
        content = (hit.mask & chart.weighs).bit_count()
        sure = sureness(chart, hit, parameters) if hit.captures else 1.0
        return (not plain, sure < POSSIBLE, -content, -sure, hit.end - hit.start, hit.start)

    chosen: list[Hit] = []
    used, taken, numbers = 0, 0, 0  # masks of all islands, and of those that share no word
    filled: set[str] = set()
    for hit in sorted(hits, key=rank):
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


def _may_share(chart: Chart, hit: Hit, used: int) -> bool:
    """Whether an island may share the word that names the topic: it places a quantity, is a number in itself (a square
    corner is one of 90°), or tells a choice by more words of its own ("equal gaps, and one at each end")."""
    own = (hit.mask & chart.weighs & ~used).bit_count()
    return bool(hit.found) or any(fixed.isdecimal() or own >= OWN_WORDS for _, _, fixed in hit.captures)


def _score(question: Question, chart: Chart, phrases: Phrases, placed: Placed) -> None:
    """Words explained, less what they leave unexplained."""
    explained = (placed.covered & chart.weighs).bit_count()
    total: float = explained
    cost = 0.0
    for i, word in enumerate(chart.words):
        bit = 1 << i
        if not chart.weighs & bit or chart.numbers & bit:
            continue  # quantities are counted below, each once
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


def _explain(reading: Reading, chart: Chart, phrases: Phrases, by_pattern: dict[int, list[Hit]]) -> None:
    """Which words meant something, which did not, and the topics whose phrases account for most of what was said."""
    for i, word in enumerate(chart.words):
        if chart.weighs >> i & 1 and not chart.numbers >> i & 1:
            symbols = [word, *(name for name, _ in chart.classes[i])]
            means = any(phrases.topics_of.get(symbol) for symbol in symbols)
            (reading.understood if means else reading.unknown).append(word)
    best: dict[str, float] = {}
    for number, hits in by_pattern.items():
        pattern = phrases.patterns[number]
        lacks = _lacks(pattern, hits)
        if pattern.topic == MANNER or lacks > 1:
            continue
        reach = 0
        for hit in hits:
            reach |= hit.mask
        near = (reach & chart.weighs).bit_count() - NEAR_LACKING * lacks
        best[pattern.topic] = max(best.get(pattern.topic, near), near)
    reading.near = sorted(best, key=lambda topic: -best[topic])[:3]
