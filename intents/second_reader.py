"""The second reader: where no rule of a grammar fits a sentence, what sentences like it meant.

It knows which topic a sentence is likely about by its words, and which parameter each quantity is for by the words
around it, from all the question sets (see learned.py). It answers for nothing alone: roles it is not sure of are
kept as other ways to read the sentence, which the conversation works and asks about where they differ.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import cache, reduce
from math import exp, log
from operator import or_
from typing import NamedTuple

from intents.beside import passed
from intents.chart import Chart, Hit, once, span
from intents.encoder import knows, roles_told
from intents.features import Mention, mentions, of_mentions
from intents.fitting import may_fit
from intents.idle_numbers import counts_a_thing, may_be_idle
from intents.learned import NOTHING, Learned, shares_of
from intents.listed import CONTRASTED
from intents.listed_layers import LAYER_WORDS
from intents.listed_lengths import WIDEST_LEG
from intents.phrases import Phrases
from intents.placing import fixed_value, heard_as, parts_of, place_of, possible
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.repeats import said_again
from solvers.quantities import Length, Quantity
from solvers.slots import Layer, Parameter, Slot
from solvers.sums import Sum

WIDTH = 16  # ways to hand out the quantities that are followed at once
LEAST_ROLE = 0.01  # a role less likely than this is not tried
BESIDE = 8.0  # how far the score of a role may be below the likeliest: it is one of three thousand then
LIKELY = 0.15  # of the likeliest way: another way as likely as this is kept and asked about
IDLE = 0.9  # a quantity this surely without a role is let be; another is named as having no place, and each of a new topic
MOST_MENTIONS = 10
_STOCKED = frozenset("lengths stock coil sticks".split())  # a size before these is of what is bought, and no leg
GATHERED = ("layers", "lengths")  # lists whose sizes are found one by one

Way = tuple[float, tuple[str, ...]]  # log of how likely, and the role of each quantity


class Sentence(NamedTuple):
    """What is known of a sentence read as one topic: its quantities, and what the grammar's islands told of them."""

    chart: Chart
    topic: str
    by_name: dict[str, Parameter]
    found: list[Mention]
    told: dict[tuple[int, int], set[str]]
    listed: int = 0  # mask of the layers as the grammar listed them; -1 where it listed none


class Second(NamedTuple):
    """A question, and how likely its roles are, from 0 to 1."""

    question: Question
    sure: float


def read_again(
    chart: Chart, phrases: Phrases, model: Learned, topic: str, parameters: tuple[Parameter, ...], first: Question | None,
    least: float = 0.0,
) -> Second | None:  # fmt: skip
    """The sentence as a question of a topic, each quantity in its likeliest role; None where it can't tell.

    `first` is what the grammar made of it for the same topic: its lists and choices are kept. Less sure than `least` it
    is of no use.
    """
    if any(p.kind is Sum for p in parameters):  # a sum is parsed, not guessed
        return None
    question, sentence = prepared(chart, phrases, topic, parameters, first)
    if len(sentence.found) > MOST_MENTIONS:
        return None
    likely = roles_of(sentence, model)
    (best, roles), *others = ways_of(likely)
    sure = 1 / (1 + sum([exp(way - best) for way, _ in others]))
    if sure < least:
        return None
    give(sentence, question.givens, roles)
    question.unplaced = [
        chart.said(one.reading.start, one.reading.end)
        for one, role, shares in zip(sentence.found, roles, likely, strict=True)
        if role == NOTHING and not _in_choice(chart, question, one) and not said_again(chart, one.reading, question.givens)
        and not (topic in model.topics and shares[NOTHING] >= IDLE and may_be_idle(topic, chart, sentence.found, one))
    ]
    question.missing = [p.name for p in parameters if p.lacks(question.givens)]
    idle = {n for n, role in enumerate(roles) if role == NOTHING}
    for way, other in others:  # a quantity that has a role is not let fall in another way to read the sentence
        if way - best > log(LIKELY) and idle.issuperset(n for n, role in enumerate(other) if role == NOTHING):
            swap = {name: heard for name, heard in question.givens.items() if name not in roles}
            give(sentence, swap, other)
            question.swaps.append(swap)
    if first is not None:
        _named_as(first, [question.givens, *question.swaps])
    question.words = [w for i, w in enumerate(chart.words) if chart.known >> i & 1 and not chart.numbers >> i & 1]
    return Second(question, sure)


def prepared(
    chart: Chart, phrases: Phrases, topic: str, parameters: tuple[Parameter, ...], first: Question | None
) -> tuple[Question, Sentence]:
    """The question with what its words alone give it, and what is left to hand out."""
    question = Question(topic, manner=first.manner if first else {})
    if first is not None:
        covered = _kept(chart, first, question)
    else:
        hits = [hit for hit in chart.hits if hit.pattern in phrases.numbers.get(topic, set())]
        covered = _choices(chart, hits, parameters, question) | _lists(chart, parameters, question)
    covered |= _not_meant(chart) | passed(chart, topic, parameters)
    by_name = {p.name: each_of(p) for p in parameters if p.name not in question.givens}
    layers = first.givens.get("layers") if first else None
    listed = tokens_of(chart, layers) if layers else -1
    found = mentions(chart, covered, spans_of(chart, first.givens.values() if first else ()))
    return question, Sentence(chart, topic, by_name, found, told_of(chart, phrases, topic), listed)


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


@once
def _not_meant(chart: Chart) -> int:
    """Mask of the quantities that another stands in the place of: 3/4 strapping instead of 3/8 mesh."""
    words = chart.words
    after = [at + 2 for at in range(len(words) - 2) if tuple(words[at : at + 2]) in CONTRASTED]
    rows = [chart.readings[at + (words[at] == "the" and at + 1 < len(words))] for at in after]
    return reduce(or_, (span(r.start, r.end) for row in rows for r in row if isinstance(r.value, Quantity)), 0)


def _kept(chart: Chart, first: Question, question: Question) -> int:
    """Keep what the grammar's reading has by words alone, and its lists of pieces and openings; the lists as a mask."""
    covered = 0
    for name, heard in first.givens.items():
        by_words = isinstance(heard.value, str) or not tokens_of(chart, heard) & chart.numbers
        if by_words or (isinstance(heard.value, tuple) and (not _gathered(name) or _nominal(chart, heard))):
            question.givens[name] = heard
            covered |= tokens_of(chart, heard) if isinstance(heard.value, tuple) else 0
    return covered


_RESTATED = frozenset("× layers double each actual actually real net dressed".split())


def _nominal(chart: Chart, heard: Heard) -> bool:
    """Whether a list has numbers in it that are no thickness of a layer: those of 1x4 strapping, two layers, 5/4 (1 actual)."""
    said = {word for i, word in enumerate(chart.words) if tokens_of(chart, heard) >> i & 1}
    times = not said.isdisjoint(_RESTATED) or _lumber_in(chart, tokens_of(chart, heard))
    return times or any(isinstance(layer, Layer) and layer.thickness is None for layer in heard.value)


def _lumber_in(chart: Chart, mask: int) -> bool:
    """Whether a stick goes by its two sizes among these tokens: two by fours laid flat."""
    return any(isinstance(r.value, Dims) for at, row in enumerate(chart.readings) if mask >> at & 1 for r in row)


def _in_choice(chart: Chart, question: Question, mention: Mention) -> bool:
    """Whether a number is part of the words of a choice: the ratio of "one to one fifty"."""
    choices = (heard for heard in question.givens.values() if isinstance(heard.value, str))
    return any(tokens_of(chart, heard) >> mention.start & 1 for heard in choices)


def spans_of(chart: Chart, givens: Iterable[Heard]) -> set[tuple[int, int]]:
    """The tokens of each quantity among these givens, as the grammar took it."""
    masks = [tokens_of(chart, heard) for heard in givens if isinstance(heard.value, Quantity)]
    return {_ends_of(mask) for mask in masks if mask}


def _lists(chart: Chart, parameters: tuple[Parameter, ...], question: Question) -> int:
    """Give the longest list that a topic must have; its tokens as a mask."""
    covered = 0
    said = [r for row in chart.readings for r in row if isinstance(r.value, tuple)]
    for parameter in (p for p in parameters if p.kind is tuple and p.required and not _gathered(p.name)):
        fits = [r for r in said if not covered & span(r.start, r.end) and heard_as(chart, parameter, r, False)]
        longest = max(fits, key=lambda r: r.end - r.start, default=None)
        heard = heard_as(chart, parameter, longest, False) if longest else None
        if heard is not None:
            question.givens[parameter.name] = heard
            covered |= tokens_of(chart, heard)
    return covered


def _gathered(name: str) -> bool:
    """Whether a list is gathered from its sizes wherever they stand: layers and legs, not pieces with their counts."""
    return name.startswith(GATHERED)


def each_of(parameter: Parameter) -> Parameter:
    """The parameter, or what one size of a gathered list is asked as."""
    return _size_of(parameter) if parameter.kind is tuple and _gathered(parameter.name) else parameter


@cache
def _size_of(parameter: Parameter) -> Parameter:
    """Made once: what a reading is for a parameter is kept by which parameter it is (see placing.heard_as)."""
    return Parameter(parameter.name, Length, Slot(parameter.slot.ask, bare=("in",)), parameter.required)


def _named_as(first: Question, ways: list[dict[str, Heard]]) -> None:
    """Take a list as the grammar read it, with its names, where it has the same sizes."""
    for name, heard in first.givens.items():
        for givens in ways if _gathered(name) else ():
            if name in givens and sizes_in(givens[name].value) == sizes_in(heard.value):
                givens[name] = heard


def sizes_in(listed: tuple[object, ...]) -> list[Length]:
    """The sizes of a list of lengths or layers."""
    lengths = [item.thickness if isinstance(item, Layer) else item for item in listed]
    return sorted((length.said("") for length in lengths if isinstance(length, Length)), key=lambda each: each.to("in").value)


def tokens_of(chart: Chart, heard: Heard) -> int:
    """Mask of the tokens that a given was said in."""
    starts, ends = _edges(chart)
    if heard.start in starts and heard.end in ends:
        return span(starts[heard.start], ends[heard.end])
    inside = (1 << i for i, t in enumerate(chart.tokens) if heard.start <= t.start and t.end <= heard.end)
    return sum(inside)


def places_of(chart: Chart, heard: Heard) -> tuple[int, int]:
    """The tokens that a given was said in: the first, and the one after the last."""
    return _ends_of(tokens_of(chart, heard))


def _ends_of(mask: int) -> tuple[int, int]:
    return (mask & -mask).bit_length() - 1, mask.bit_length()


@once
def _edges(chart: Chart) -> tuple[dict[int, int], dict[int, int]]:
    """The first token that starts at a character, and the one after the last that ends at one."""
    starts = {token.start: i for i, token in reversed([*enumerate(chart.tokens)])}
    return starts, {token.end: i for i, token in enumerate(chart.tokens, 1)}


def told_of(chart: Chart, phrases: Phrases, topic: str) -> dict[tuple[int, int], set[str]]:
    """Which parameters of a topic the grammar's islands would give each quantity to; found once a sentence."""
    key = f"told of {topic}"
    if key not in chart.kept:
        numbers = phrases.numbers.get(topic, set())
        chart.kept[key] = told_by([hit for hit in chart.hits if hit.pattern in numbers])
    return chart.kept[key]  # type: ignore[no-any-return]


def told_by(hits: Iterable[Hit]) -> dict[tuple[int, int], set[str]]:
    """Which parameters the grammar's islands would give each quantity to, by its tokens."""
    told: dict[tuple[int, int], set[str]] = {}
    for _, _, captures, _, _, _, found in hits:
        for name, at, _ in captures if found else ():
            for place, reading in found:
                if place != at:
                    continue
                for part_name, part in parts_of(name, reading) if "," in name else ((name, reading),):
                    told.setdefault((part.start, part.end), set()).add(part_name)
    return told


def roles_of(sentence: Sentence, model: Learned) -> list[dict[str, float]]:
    """For each quantity the roles it could have, with how likely each is."""
    likely = []
    chart, topic, by_name, found, told, _ = sentence
    for mention, features in zip(found, of_mentions(chart, found), strict=True):
        reading = mention.reading
        names = [n for n, p in by_name.items() if p.kind is not tuple and may_be(p, reading)]
        hinted = told.get((reading.start, reading.end), set())  # what no sentence taught, only words beside it can tell
        names = [n for n in names if not by_name[n].slot.cued or n in hinted or knows(chart, model, topic, n)]
        if reading.kind == "number" and _whole_number(reading) and (
            not sentence.listed & span(reading.start, reading.end) or chart.words[reading.end : reading.end + 1] == ["layers"]
        ):
            names = [name for name in names if name != "layers"]  # two layers are no 2 in of anything, nor is detail 4
        if chart.words[reading.end : reading.end + 1] == ["into"] and "penetration" in by_name:
            names = [name for name in names if name != "layers"]  # 30 into the timber holds, and is no layer
        if not _STOCKED.isdisjoint(chart.words[reading.end : reading.end + 1]):
            names = [name for name in names if name != "lengths"]
        if counts_a_thing(topic, chart, mention):
            names = [name for name in names if not _gathered(name)]  # five flats: no width of one
        likely.append(_fitting(sentence, model, mention, names, features))
    return likely


def _fitting(
    sentence: Sentence, model: Learned, mention: Mention, names: list[str], features: list[str]
) -> dict[str, float]:  # fmt: skip
    """How likely a quantity has each of the roles that it fits; it is tried in those alone that are likely beside them."""
    if not names:
        return {NOTHING: 1.0}
    reading = mention.reading
    hinted = sentence.told.get((reading.start, reading.end), set())
    every = [*names, NOTHING]
    found = model.roles_of(sentence.topic, every, features, hinted.intersection(names))
    found = roles_told(sentence.chart, model, sentence.topic, (mention.start, mention.part), every, found)
    scores = dict(zip(every, found, strict=True))
    most = scores.pop(NOTHING)
    fits: dict[str, float] = {NOTHING: most}
    for name in sorted(scores, key=scores.__getitem__, reverse=True):
        if scores[name] < most - BESIDE:
            break
        parameter = sentence.by_name[name]
        heard = heard_any(sentence.chart, parameter, reading)
        if heard is not None and (heard.others or possible(parameter, heard.value) == 1):
            fits[name] = scores[name]
            most = max(most, scores[name])
    order = [name for name in (*names, NOTHING) if name in fits]
    return dict(zip(order, shares_of([fits[name] for name in order]), strict=True))


def may_be(parameter: Parameter, reading: Reading) -> bool:
    """Whether a quantity could be of a parameter's kind, by any of its readings."""
    return reading.kind == "number" or may_fit(parameter.kind, reading)


def _whole_number(reading: Reading) -> bool:
    return isinstance(reading.value, Quantity) and reading.value.value.denominator == 1


def heard_any(chart: Chart, parameter: Parameter, reading: Reading) -> Heard | None:
    """What the same words are for a parameter, by whichever of their readings it takes: 1/300 is a ratio or a number."""
    heard = heard_as(chart, parameter, reading, cued=True)
    if heard is not None or reading.kind != "number":
        return heard
    same = (r for r in chart.readings[reading.start] if r.end == reading.end and r.kind != "number")
    found = (heard_as(chart, parameter, r, cued=True) for r in same)
    return next((heard for heard in found if heard is not None), None)


def ways_of(likely: list[dict[str, float]], width: int = WIDTH) -> list[Way]:
    """The likeliest ways to hand out the quantities, each role once; the likeliest first."""
    ways: list[Way] = [(0.0, ())]
    for roles in likely:
        tried = [
            (role, log(share), role == NOTHING or _gathered(role))
            for role, share in roles.items() if role == NOTHING or share >= LEAST_ROLE
        ]  # fmt: skip
        ways = [
            (sure + more, (*taken, role)) for sure, taken in ways for role, more, often in tried if often or role not in taken
        ]
        ways = sorted(ways, key=lambda way: -way[0])[:width]
    return ways


def give(sentence: Sentence, givens: dict[str, Heard], roles: tuple[str, ...]) -> None:
    """Give each quantity to its role; the sizes of a list together."""
    listed: dict[str, list[Heard]] = {}
    for mention, role in zip(sentence.found, roles, strict=True):
        heard = heard_any(sentence.chart, sentence.by_name[role], mention.reading) if role != NOTHING else None
        if heard is not None and _gathered(role):
            what = _thing(sentence, mention)
            value = Layer(heard.value, what) if role.startswith("layers") else heard.value
            listed.setdefault(role, []).append(replace(heard, value=value))
        elif heard is not None:
            givens[role] = heard
    for name, items in listed.items():
        start, end = min(item.start for item in items), max(item.end for item in items)
        sure = min(item.sure for item in items)
        value = _as_listed(sentence.chart, name, tuple(item.value for item in items))
        givens[name] = Heard(value, start, end, sentence.chart.text[start:end], sure)


def _as_listed(chart: Chart, name: str, found: tuple[object, ...]) -> tuple[object, ...]:
    """The list as it was said in a row somewhere, with its names, where that has the same sizes."""
    said = (r.value for row in chart.readings for r in row if name.startswith(r.kind) and isinstance(r.value, tuple))
    return next((value for value in said if sizes_in(value) == sizes_in(found) or _in_other_unit(value, found)), found)


def _in_other_unit(said: tuple[object, ...], found: tuple[object, ...]) -> bool:
    """Whether bare legs that were taken for inches one by one are millimetres in their row: 25 up, 40 over, 12 down in mm."""
    legs = [leg for leg in said if isinstance(leg, Length) and leg.unit == "mm"]
    alone = [leg for leg in found if isinstance(leg, Length) and leg.unit == "in" and leg.text[-1:].isdigit()]
    same = [leg.value for leg in legs] == [leg.value for leg in alone]
    return same and len(legs) == len(said) and len(alone) == len(found) and max(leg.value for leg in alone) > WIDEST_LEG


def _thing(sentence: Sentence, mention: Mention) -> str:
    """What a layer is: the name after its size, before the next size; else the name before it."""
    words, taken = sentence.chart.words, {at for other in sentence.found for at in range(other.start, other.end)}
    if mention.start and words[mention.start - 1] in LAYER_WORDS and LAYER_WORDS.isdisjoint(words[mention.end : mention.end + 1]):
        return words[mention.start - 1]  # strapping 25, cladding 21
    for way in (range(mention.end, len(words)), range(mention.start - 1, -1, -1)):
        for at in way:
            if at in taken:
                break
            if words[at] in LAYER_WORDS:
                return words[at]
    return "layer"
