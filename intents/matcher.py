"""From words to Questions: which topic's islands were said, which quantity goes to which parameter, how well it fits.

A topic is considered when all the plain islands of one of its patterns stand in the sentence, in any order. What belongs to none
counts against it; what is missing is named. The best few readings go to the conversation, which asks where two are near.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from pathlib import Path
from typing import ClassVar

from intents.along_ground import along_ground
from intents.amounts_in_doubt import amounts_in_doubt
from intents.anothers import of_another
from intents.asked_given import asks_for_given
from intents.asked_instead import area_rather, asked_instead
from intents.at_each_place import at_each_place, vents_told
from intents.bay_told import bay_told
from intents.by_labels import by_labels
from intents.chart import LIGHT, Chart, Guess, Hit, Worded, chart_of, span, worded
from intents.claims import claim_of
from intents.clauses_used import Used, clauses_used
from intents.consulting import OUTSIDE, consult
from intents.corner_told import no_corner
from intents.counted_things import no_broken_count, other_count
from intents.crossed import crossed
from intents.each_long import each_long
from intents.either_choice import either_choice
from intents.encoder import beside
from intents.features import of_sentence
from intents.fills_it import fills_it
from intents.gable_again import gable_again
from intents.gable_over import gable_over
from intents.grammars import FOLDER
from intents.half_a_face import half_a_face, in_square_feet
from intents.held_in import held_between, held_in
from intents.hips_told import hips_told
from intents.in_doubt import in_doubt, other_topic, take_back
from intents.its_answer import have_enough
from intents.kicked_out import kicked_out
from intents.known_topic import known_topic
from intents.layers_gone import layers_gone
from intents.learned import Learned, learned
from intents.left_out import does_as_well, left_out, price_gone, sums_all, takes_less, without
from intents.lists import KINDS
from intents.lumber_told import lumber_told
from intents.measures import broken_number
from intents.movement_told import movement_told
from intents.named_later import named_later
from intents.neighbours import cut_off
from intents.no_role import left_of, may_hold_more, most_gone, took, without_role
from intents.no_sum import no_sum
from intents.not_across import not_across
from intents.of_both import of_both
from intents.one_system import one_system
from intents.only_way import only_way, rather
from intents.overhang_aside import overhang_aside
from intents.parts_together import parts_together
from intents.per_what import per_what
from intents.phrases import Pattern, Phrases, compiled
from intents.placing import ANYTHING
from intents.pole_told import pole_told
from intents.question import Question, Reading
from intents.rolls_told import rolls_told
from intents.roofs_and_frames import roofs_and_frames
from intents.run_told import no_pitch_asked, run_told
from intents.saw_labels import saw_labels
from intents.scoring import LEAST_SCORE, MISSING
from intents.searching import KEEP, MANNER, Asker, Search, by_pattern, lacking
from intents.sold_in import sold_in
from intents.spelling import Speller
from intents.spliced import spliced
from intents.standing_gable import from_the_ground, standing_gable
from intents.sum_around import around
from intents.sum_halved import sum_halved
from intents.sum_joints import all_of_them
from intents.sum_words import OWN
from intents.taken_out import in_squares, taken_out
from intents.tokens import Token, tokenize
from intents.told_by_topic import outright
from intents.told_over import put_over
from intents.untold_overhang import untold_overhang
from intents.vocabulary import NUMBER_WORDS
from intents.wall_sizes import wall_sizes
from intents.waste_in_it import waste_in_it
from solvers.slots import Parameter

Topics = Mapping[str, tuple[Parameter, ...]]

LONGEST = 440  # tokens of a cut list: sixty pieces with their fractions and commas
MOST = 110  # tokens of anything else: the longest question of the sets has 73, and a page is none
LEAST_LIKELY = 0.01  # a topic less likely than this is not looked for: of unseen questions one in a thousand is about such a one
CHARTS = 8  # sentences kept as they were read: one is read as a question, as a reply, as a change
COMMAS = 1 / 12  # of the tokens of a list, at least
TOO_LONG = "that is more than I can take in at once: ask one thing at a time, in a sentence or two"
NEAR_LACKING = 0.5  # what a plain island not said counts against a topic that is offered where nothing fits


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
def _worded(text: str, folder: Path) -> Worded:
    return worded(_typed(text)[:LONGEST], speller(folder))


@lru_cache(maxsize=CHARTS)
def full_chart(text: str, folder: Path = FOLDER) -> Chart:
    return chart_of(text, compiled(folder), speller(folder), _worded(text, folder))


_PLACES = (
    parts_together, standing_gable, wall_sizes, taken_out, sold_in, saw_labels, movement_told, lumber_told, held_between,
    roofs_and_frames, named_later, pole_told, half_a_face, no_sum, rolls_told, gable_again, at_each_place, by_labels,
    vents_told, no_broken_count, either_choice)  # fmt: skip
_TOLD = (bay_told, hips_told, kicked_out, along_ground, around, overhang_aside, fills_it, one_system, in_square_feet, sum_halved)


class _Lists:
    """Which kinds of lists each of some topics takes with no word beside them; the same for as long as the topics are."""

    known: ClassVar[dict[int, _Lists]] = {}

    def __init__(self, topics: Topics) -> None:
        self.topics = topics
        named = {topic: [p.name for p in parameters if p.kind is tuple] for topic, parameters in topics.items()}
        self.kinds = {t: {k for k in KINDS if any(name.startswith(k) for name in names)} for t, names in named.items()}

    @classmethod
    def of(cls, topics: Topics) -> _Lists:
        """Those of these topics, made once."""
        found = cls.known.get(id(topics))
        if found is None or found.topics is not topics:
            found = cls.known[id(topics)] = cls(topics)
        return found


@lru_cache(maxsize=CHARTS)
def _chart(text: str, folder: Path, lists: _Lists) -> Chart:
    model, phrases = learned(folder), compiled(folder)
    if model is None:
        return full_chart(text, folder)

    def guess(chart: Chart) -> Guess:
        likely = model.likely(of_sentence(chart, phrases))
        best = max(likely, key=likely.__getitem__)
        if best in phrases.searched or best == OUTSIDE:
            best = max(likely := beside(chart, folder, likely), key=likely.__getitem__)
        if best not in phrases.searched and best != OUTSIDE:
            return Guess(likely)  # talk about the job is told by its own rules
        less = [topic for topic, share in likely.items() if share < LEAST_LIKELY]
        unlikely = phrases.searched.intersection(less) - model.seldom
        rest, none = phrases.searched - unlikely, set[str]()
        kinds = none.union(*[phrases.kinds.get(topic, none) | lists.kinds.get(topic, none) for topic in rest])
        return Guess(likely, unlikely, KINDS & kinds)

    return chart_of(text, phrases, speller(folder), _worded(text, folder), guess)


def _chart_for(text: str, wanted: Iterable[str], folder: Path, topics: Topics) -> Chart:
    """The sentence as it is read for one of the topics that are wanted."""
    chart = _chart(text, folder, _Lists.of(topics))
    return chart if chart.unlikely.isdisjoint(wanted) else full_chart(text, folder)


def otherwise(text: str, folder: Path = FOLDER) -> list[str]:
    """The line again for each small word of it that may have been a number ("forty for"), with the number in its place."""
    said = _worded(text, folder)
    words = ((said.tokens[at], number) for at, number in said.doubts)
    return [f"{text[: token.start]}{number}{text[token.end :]}" for token, number in words]


def read(text: str, topics: Topics, folder: Path = FOLDER, only: Iterable[str] = (), seconds: bool = True) -> Reading:
    """All ways worth considering to read a sentence, best first.

    `only` reads it as one of these topics; without `seconds` the grammar reads alone.
    """
    phrases = compiled(folder)
    reading = Reading(text)
    typed = _typed(text)
    listed = [token.text for token in typed].count(",") >= COMMAS * len(typed)
    if len(typed) > (LONGEST if listed else MOST):
        reading.too_long = TOO_LONG
        return reading
    wanted = set(only)
    chart = _chart_for(text, wanted, folder, topics) if seconds else full_chart(text, folder)
    reading.changed = chart.changed
    reading.broken = broken_number(chart.tokens) or ""
    model = learned(folder) if seconds and not wanted else None
    _by_grammar(reading, chart, phrases, topics, wanted)
    reading.unaided = reading.questions
    row = outright(chart) if model is not None else None
    if row is not None:
        reading.questions = [row]
    elif model is not None:
        consult(reading, chart, phrases, topics, model)
        all_of_them(chart, reading)
    _to_their_places(chart, reading.questions, topics)
    less = _without_remarks(reading, chart, phrases, topics, wanted, model) if seconds and row is None else None
    if less is None and model is not None and row is None:
        less = _without_role(reading, chart, phrases, topics, model)
    chart = less or chart
    rather(chart, reading)
    area_rather(chart, reading)
    for question in reading.questions:
        _put_right(chart, question, topics.get(question.topic, ()))
        if question.complete:
            _doubt(chart, phrases, question)
    no_pitch_asked(reading.questions)
    first = {question.topic: question for question in reversed(reading.questions)}
    reading.questions = [question for question in reading.questions if first[question.topic] is question]
    return reading


def _put_right(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """What can be only one way, in a question that lacks nothing."""
    per_what(chart, question)
    spliced(chart, question)
    if not question.complete:
        return
    for once_whole in (only_way, *_TOLD, gable_over, put_over):
        once_whole(chart, question)
    each_long(question)
    waste_in_it(chart, question, parameters)
    for once_whole in (in_squares, run_told, not_across, take_back, of_another):
        once_whole(chart, question)
    if turned := crossed(question, parameters):
        question.swaps = [turned]


def _doubt(chart: Chart, phrases: Phrases, question: Question) -> None:
    """What a question that lacks nothing is asked about all the same; layers that go are taken out of one that is in no doubt."""
    doubts = cut_off(chart, phrases, question) or of_both(chart, question) or other_count(chart, question)
    doubts = doubts or amounts_in_doubt(chart, question) or untold_overhang(chart, question)
    doubts = doubts or in_doubt(chart, phrases, question) or from_the_ground(chart, question)
    other = other_topic(chart, question) or no_corner(chart, question) or asks_for_given(chart, question)
    other = other or asked_instead(chart, question)
    question.unplaced, question.lacking = doubts, question.lacking or int(other)
    if not doubts:
        have_enough(chart, question)
        layers_gone(chart, question)
        held_in(chart, question)


def _without_remarks(
    reading: Reading, chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str], model: Learned | None
) -> Chart | None:  # fmt: skip
    """The sentence without what is hardly of the job, which the reading then is of; None where it is no plainer so."""
    first = reading.questions[0] if _plain(reading) and not asks_for_given(chart, reading.questions[0]) else None
    if sums_all(chart, reading.questions) or (less := left_out(chart, first)) is None:
        return None
    again = Reading(reading.text)
    _by_grammar(again, less, phrases, topics, wanted)
    if model is not None:
        consult(again, less, phrases, topics, model)
    _to_their_places(less, again.questions, topics)
    told_anew = first is not None and takes_less(chart, first, again.questions)
    told_anew = told_anew or (first is None and _lacks_what_is_kept(reading, again, topics))
    if not (_plain(again) or told_anew) or price_gone(less, again.questions[0]) or most_gone(chart, less, again.questions[0]):
        return None
    if first is not None and not (told_anew or does_as_well(first, again.questions[0])):
        return None
    for question in again.questions if first is None else ():
        question.left = left_of(chart, less, question)
        have_enough(chart, question)
    reading.questions, reading.trace = again.questions, again.trace
    return less


def _lacks_what_is_kept(reading: Reading, again: Reading, topics: Topics) -> bool:
    """Whether all that is open now is what the job may remember (its pitch), where a number had no place before."""
    before, now = next(iter(reading.questions), None), next(iter(again.questions), None)
    if before is None or now is None or not now.missing or now.missing != before.missing or before.topic != now.topic:
        return False
    kept = {p.name for p in topics[now.topic] if p.slot.kept}
    return bool(before.unplaced) and kept.issuperset(now.missing) and not (now.unplaced or now.swaps or now.rival or now.lacking)


def _without_role(reading: Reading, chart: Chart, phrases: Phrases, topics: Topics, model: Learned) -> Chart | None:
    """The sentence without the quantities that have no role in it, which the reading then is of; None where it is not plain."""
    first = reading.questions[0] if _plain(reading) else None
    if first is not None and not may_hold_more(chart, first):
        return None
    less = without_role(chart, phrases, topics, model, reading.questions)
    if less is None or (first is not None and not took(chart, first, less)):
        return None
    again = Reading(reading.text)
    _by_grammar(again, less, phrases, topics, set())
    consult(again, less, phrases, topics, model)
    _to_their_places(less, again.questions, topics)
    topic = again.questions[0].topic if _plain(again) else ""
    if topic != max(chart.likely, key=chart.likely.__getitem__) or (first is not None and topic != first.topic):
        return None
    for question in again.questions:
        question.left = left_of(chart, less, question)
    reading.questions, reading.trace = again.questions, again.trace
    return less


def _to_their_places(chart: Chart, questions: list[Question], topics: Topics) -> None:
    """What the words beside quantities alone tell, where neither reader has a place for them."""
    for work in _PLACES:
        work(chart, questions, topics)


def _plain(reading: Reading) -> bool:
    """Whether one question is whole, and nothing speaks for another."""
    first = next(iter(reading.questions), None)
    return first is not None and first.whole and not (first.swaps or first.rival)


def _by_grammar(reading: Reading, chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> None:
    """What the rules of the grammar make of a sentence."""
    search = Search(chart, phrases, topics, wanted)
    found = search.strict()
    if not found or found[0].score <= LEAST_SCORE or not found[0].complete:
        claimed = _claimed_in(chart, phrases, topics, wanted)
        if claimed:
            reading.questions = claimed
            return
        found += search.loose(found)
    reading.questions = sorted(found, key=lambda q: -q.score)[:KEEP]
    if not reading.questions or reading.questions[0].score <= LEAST_SCORE:
        _explain(reading, chart, phrases, search.by_pattern)


def _claimed_in(chart: Chart, phrases: Phrases, topics: Topics, wanted: set[str]) -> list[Question]:
    """The questions that are whole once a quantity is set aside that is only held against the answer."""
    claim = claim_of(chart)
    if claim is None:
        return []
    found = Search(without(chart, span(claim.start, claim.end)), phrases, topics, wanted).strict()
    if not found or found[0].score <= LEAST_SCORE or not found[0].complete:
        return []
    for question in found:
        question.claim = claim
    return found[:KEEP]


def shorter(text: str, topics: Topics, folder: Path = FOLDER) -> list[Used]:
    """The line without the clauses that its question is not made of, as each of its likeliest topics would have it."""
    model = learned(folder)
    return [] if model is None else list(clauses_used(_chart(text, folder, _Lists.of(topics)), compiled(folder), topics, model))


def likely_topics(text: str, topics: Topics, folder: Path = FOLDER) -> Mapping[str, float]:
    """How likely it is, by its words, that a line is about each topic; those that are hardly likely may be left out."""
    return _chart(text, folder, _Lists.of(topics)).likely


def read_as(text: str, topic: str, topics: Topics, folder: Path = FOLDER, wanted: str = "") -> Question:
    """The sentence as more about a topic already known (a missing piece, a change): no word need name it.

    `wanted` is the parameter that was asked for: it comes first for whatever no other words claim.
    """
    phrases = compiled(folder)
    chart = _chart_for(text, (topic,), folder, topics)
    hits = by_pattern(chart)
    asker = Asker(chart, phrases, [hit for n, found in hits.items() if phrases.patterns[n].topic == MANNER for hit in found])
    mine = [(hits.get(n, []), pattern) for n, pattern in enumerate(phrases.patterns) if pattern.topic == topic]
    bare = next((pattern for there, pattern in mine if not there), None)  # those of which nothing was said are all one
    said = [(there, pattern) for there, pattern in mine if there or pattern is bare] or [([], Pattern(topic))]
    chosen = (asker.chosen(pattern, there, topics[topic]) for there, pattern in said)
    found = [asker.question(topic, islands, topics[topic], wanted or ANYTHING) for islands in chosen]
    best = max(found, key=lambda q: (q.score + MISSING * len(q.missing), len(q.givens)))
    known_topic(chart, best, topics)
    return best


def _explain(reading: Reading, chart: Chart, phrases: Phrases, said: dict[int, list[Hit]]) -> None:
    """Which words meant something, which did not, and the topics whose phrases account for most of what was said."""
    for i, word in enumerate(chart.words):
        if chart.weighs >> i & 1 and not chart.numbers >> i & 1:
            symbols = [word, *(name for name, _ in chart.classes[i])]
            means = any(phrases.topics_of.get(symbol) for symbol in symbols)
            (reading.understood if means else reading.unknown).append(word)
    best: dict[str, float] = {}
    for number, hits in said.items():
        pattern = phrases.patterns[number]
        lacks = lacking(pattern, hits)
        if pattern.topic == MANNER or lacks > 1:
            continue
        reach = 0
        for hit in hits:
            reach |= hit.mask
        near = (reach & chart.weighs).bit_count() - NEAR_LACKING * lacks
        best[pattern.topic] = max(best.get(pattern.topic, near), near)
    reading.near = sorted(best, key=lambda topic: -best[topic])[:3]
