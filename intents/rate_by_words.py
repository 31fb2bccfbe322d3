"""What goes at so much for so many, told in any order: which quantity is how many that took, what was done, and what is to do.

Two of the three are of one kind or of one thing ("11 windows ate up 4 cans of foam, 38 windows to go"): the third is how many
that took, and what was done is told in its clause. Where the words leave two ways, nothing is changed, and it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from intents.boxes_told import in_one
from intents.chart import Chart, once
from intents.counted_line import (
    ARTICLES,
    CountedLine,
    Told,
    counted_line,
    heard,
    how_many_units,
    one_of_a_size,
    ones,
    settle,
    stem,
    without_packs,
    without_sizes,
)
from intents.question import Heard, Question
from intents.rates_told import RATE, SCORE
from solvers.quantities import Area, Count, Length, Number, Percent
from solvers.slots import Parameter

_DOES = frozenset(
    "did do does done doing cover covers covered goes go went gone lasted lasts fill fills filled seal seals sealed ran run runs"
    " got gave give gives made make makes held hold holds laid lay served painted wrapped cutting hung did handled fix"
    " fixes fixed tie tied ties".split()
)
_DID = frozenset(
    "did does cover covers covered fill fills filled seal seals sealed made makes went goes lasted gave gives".split()
)
_TAKES = frozenset(
    "took take takes taken used use uses need needs needed ate eat eats eaten want wants swallowed consumed required had through"
    " burned spent".split()
)
_JOINS = frozenset("for on per to in over at with off into onto along around every".split())  # 5 tubes for 40 feet
_SAME_AS, _OPENS = frozenset("= / @ is was were".split()), frozenset("if when given where since because".split())
_AND = frozenset("and but so".split())
_STOPS, _PAUSES = frozenset((".", "?", ";", "!")), frozenset((",", "-", ":"))
_ASKS = frozenset("how what what's whats what'll".split())
_NOW = frozenset("now next this new rest remaining tomorrow".split())
_TO_GO = frozenset("left remaining remain remains more still next further rest go coming other".split())
_BEFORE = frozenset("did done last yesterday yesterday's first used took already before".split())
_PART_OF = frozenset("of by × x out".split())  # 40 of the 160 feet
_WASTE = frozenset("waste wastage extra add plus + top offcut offcuts allow allowing spare breakage drops cuts reckon".split())
_NOT_OURS = frozenset(  # what no count is a rate of: people, and time
    stem(word)
    for word in (
        "man men guy lad crew people bloke hand person worker carpenter roofer helper day hour minute week month coat year dollar"
        " buck euro quid degree hrs min"
    ).split()
)
_TIMES = frozenset("day days hour hours minute minutes week weeks month months coats".split())
_WHEN = frozenset("last this that other next".split())
_NEEDED = frozenset("take takes need needs want wants use eat eats buy needed wanted used".split())
_ELSE = frozenset(
    "cost costs paid pay price worth charge bill invoice code gate po room unit year old age phone order euro euros quid dollars"
    " clock am pm".split()
)
SET_OUT = frozenset("posts joists studs rafters balusters pickets spindles battens marks holes".split())
_ONE_SET_OUT = frozenset(stem(word) for word in SET_OUT)
_FOR = frozenset("for on per every".split())
_PANELLED = frozenset(("soffit", "soffits"))  # whose panels have a rule of their own
_ASKED, _NEAR = 12, 8  # words before what is to do, among which it is asked what it takes
_SIZED = frozenset("high wide deep thick tall apart centres centers".split())
_TWICE = frozenset("both either twice double".split())
_BEFORE_IT = 4  # words before the first of two, among which a verb tells of both: went through | 14 lengths on 168 ft
_TRIO, _PAIR, _LEAST = 3, 2, 2  # quantities; how much closer one must be said with how many that took than the other
_APART = -3  # how closely two are told that do not belong together
_KINDS = {"length": Length, "area": Area, "number": Count}


class Rate(NamedTuple):
    """What each quantity is for; `took` is None for one of them."""

    took: Told | None
    done: Told
    now: Told
    kind: str
    unit: str


class _Found(NamedTuple):
    line: CountedLine
    rate: Rate
    givens: dict[str, Heard]
    left: list[str]


def rate_by_words(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Give the quantities of a question about a rate the places that the words beside them tell."""
    told = any(name in question.givens for name in ("length_done", "area_done", "number_done"))
    now = any(name in question.givens for name in _KINDS)
    if not (question.plain and told and now):
        found = _found(chart)
        if found is not None:
            settle(question, found.givens, found.left)


@once
def rate_outright(chart: Chart) -> Question | None:
    """The question of a line that tells a rate with its doing and asks for the same thing again, whatever it is of."""
    words = chart.words
    if (_DOES | _TAKES | _FOR | {"eight", "rate"}).isdisjoint(words) or not _PANELLED.isdisjoint(words):
        return None
    found = _found(chart)
    if found is None or found.rate.took is None:
        return None
    line, rate, took = found.line, found.rate, found.rate.took
    if any(in_one(line.words, one) for one in line.told) or not (rate.unit or rate.done.things or rate.now.things):
        return None  # 75 in a tub; three numbers of nothing
    named = took.things and line.asked
    goes_for = _goes_for(line.words, rate) and (named or "per" in words)
    told = _does_beside(line.words, rate) if took.things else _does_next(line.words, took)
    if not (told or goes_for) or not (line.asked.intersection(took.things) if named else _asks(line.words, rate)):
        return None
    return Question(RATE, found.givens, SCORE, words=["how", "many", "rate"], left=found.left)


def _does_beside(words: Sequence[str], rate: Rate) -> bool:
    """Whether a word for what was done, or what it took, stands with the two that belong together."""
    assert rate.took is not None
    first, last = sorted((rate.took, rate.done), key=lambda one: one.start)
    before = words[max(0, first.start - _BEFORE_IT) : first.start]
    said = [*words[first.end : last.start], *(before if _ASKS.isdisjoint(before) else ())]
    return not (_DOES | _TAKES | {"rate"}).isdisjoint(said)


def _does_next(words: Sequence[str], took: Told) -> bool:
    """Whether a number with no thing of its own does something, or is what was taken: 4 did 50, nine windows used 5."""
    return not _DOES.isdisjoint(words[took.end : took.end + 1]) or not _TAKES.isdisjoint(words[took.start - 1 : took.start])


def _goes_for(words: Sequence[str], rate: Rate) -> bool:
    """Whether so many are told for so far: 3 cartridges for 12 m; a spacing is none of it."""
    assert rate.took is not None
    between = words[rate.took.end : rate.done.start]
    apart = rate.unit in ("in", "mm") or not _ONE_SET_OUT.isdisjoint(rate.took.things)
    return rate.kind in ("length", "area") and not apart and between[-1:] != [] and between[-1] in _FOR


def _asks(words: Sequence[str], rate: Rate) -> bool:
    """Whether it is asked how many it takes, with no name of them: how many do I bring, what do 205 metres eat, 50 panes?"""
    now = rate.now
    if ("how", "many") in pairwise(words):
        return True
    after = words[now.end : now.end + 2 + len(now.things)]
    before = words[max(0, now.start - 2) : now.start]
    needed = _NEEDED.isdisjoint(words[max(0, now.start - _NEAR) :])
    takes = not (_ASKS.isdisjoint(words[max(0, now.start - _ASKED) : now.start]) or needed)
    per = "per" in words[: now.start] and not after
    return takes or per or "?" in after or before[-1:] in (["what's"], ["whats"]) or before == ["what", "about"]


def _found(chart: Chart) -> _Found | None:
    """The givens of a rate, and what is left out; None where the words leave more than one way."""
    line = counted_line(chart)
    if line is None or len(line.told) < _PAIR or how_many_units(line.words) or _timed(line.words):
        return None
    told, waste, left = _of_line(chart, line)
    rate = _rate(chart, line, told) if told else None
    if rate is None or (_more_asked(line.words) and _TO_GO.isdisjoint(_around(line.words, rate.now))):
        return None
    kind = _KINDS[rate.kind]
    unit = "count" if rate.kind == "number" else rate.unit
    givens = {f"{rate.kind}_done": heard(chart, rate.done, kind, rate.done.unit or unit)}
    givens[rate.kind] = heard(chart, rate.now, kind, rate.now.unit or unit)
    if rate.took is not None:
        givens["many"] = heard(chart, rate.took, Number, "none")
    if waste is not None:
        givens["waste"] = heard(chart, waste, Percent, "percent")
    return _Found(line, rate, givens, left)


def _timed(words: Sequence[str]) -> bool:
    """Whether it is of days or coats, or of both of something; last week only tells when that was."""
    times = any(word in _TIMES and before not in _WHEN for before, word in pairwise(["", *words]))
    return times or not _TWICE.isdisjoint(words)


def _of_line(chart: Chart, line: CountedLine) -> tuple[list[Told], Told | None, list[str]]:
    """The quantities that are of the rate, its waste, and sizes of things, left out; none where one is of nothing here."""
    told = one_of_a_size(line)
    if told is None:
        return [], None, []
    told, left = without_sizes(chart, told)
    told, packs = without_packs(chart, told)
    left += packs
    percents = [one for one in told if one.kind == "percent"]
    rest = [one for one in told if one.kind != "percent"]
    waste = percents[0] if percents else None
    if len(percents) > 1 or (waste is not None and _WASTE.isdisjoint(line.words[max(0, waste.start - 3) : waste.end + 4])):
        return [], None, []
    return rest, waste, left


def _rate(chart: Chart, line: CountedLine, told: list[Told]) -> Rate | None:
    words, asked = line.words, line.asked
    if any(not _NOT_OURS.isdisjoint(one.things) for one in told) or not _NOT_OURS.isdisjoint(asked):
        return None
    if len(told) == _PAIR:
        said = {thing for other in told for thing in other.things} | asked
        for one in ones(chart):
            if said.intersection(one.things[:2]) or (not one.things and words[one.end : one.end + 1] and words[one.end] in _DOES):
                return _of_three(words, sorted([*told, one], key=lambda each: each.start), asked)
        return _of_two(words, told, asked)
    return _of_three(words, told, asked) if len(told) == _TRIO else None


def _of_three(words: Sequence[str], told: list[Told], asked: frozenset[str]) -> Rate | None:
    """The one way that three quantities can be handed out."""
    ways = []
    for took in told:
        pair = [one for one in told if one is not took]
        kind = _alike(pair)
        if words[took.start - 1 : took.start] == ["of"] and words[took.start - 2 : took.start - 1] not in (["out"], ["rate"]):
            continue  # boxes of 144
        if took.kind != "number" or not kind or (took.things and asked and not asked.intersection(took.things)):
            continue
        if any(asked.intersection(one.things) and not asked.intersection(took.things) for one in pair):
            continue
        ways.append((took, pair, kind))
    named = [way for way in ways if asked.intersection(way[0].things)]
    if len(ways) > 1:
        alike = [way for way in ways if not set(way[1][0].things).isdisjoint(way[1][1].things)]
        ways = named or alike or [way for way in ways if _told_by_verb(words, told, way[0])]
    if len(ways) != 1:
        return None
    took, pair, kind = ways[0]
    if kind == "number" and any(one.value.denominator != 1 for one in pair):
        return None
    done = _done(words, took, pair)
    if done is None or _other_way(words, took, done):
        return None
    now = next(one for one in pair if one is not done)
    unit = done.unit or now.unit
    if _stocked(words, took) or _part_of(words, done, now) or any(_of_else(words, one) for one in (took, *pair)):
        return None
    return Rate(took, done, now, kind, unit)


def _of_two(words: Sequence[str], told: list[Told], asked: frozenset[str]) -> Rate | None:
    """What one of them did, and what is to do: each tin covers 14 m², 123 m² of cladding. Tins?"""
    kind = _alike(told)
    named = [at for at, (word, thing) in enumerate(pairwise(words)) if word in ARTICLES - {"one"} and stem(thing) in asked]
    if not kind or len(named) != 1:
        return None
    at, (first, last) = named[0], told
    before, after = words[first.end : at], words[at + 2 : first.start]
    if at < first.start and not _DOES.isdisjoint(after) and _STOPS.isdisjoint(after):
        return Rate(None, first, last, kind, first.unit or last.unit)
    if first.end <= at < last.start and len(before) <= 1 and words[at] != "a":  # 35 feet per tube
        return Rate(None, first, last, kind, first.unit or last.unit)
    return None


def _alike(pair: Sequence[Told]) -> str:
    """What two quantities both measure, or both count; a number with no thing of its own takes the unit of the other."""
    one, other = pair
    if one.kind == other.kind != "number":
        return one.kind
    if one.kind == other.kind:
        return "number" if not (one.things and other.things) or not set(one.things).isdisjoint(other.things) else ""
    number, sized = (one, other) if one.kind == "number" else (other, one)
    return sized.kind if number.kind == "number" and not number.things else ""


def _told_by_verb(words: Sequence[str], told: list[Told], took: Told) -> bool:
    """Whether a verb tells that a number is how many that took: 14 rolls did | 24, nine windows used | 5."""
    at = told.index(took)
    after = words[took.end : told[at + 1].start] if at + 1 < len(told) else []
    before = words[told[at - 1].end : took.start] if at else []
    return _verb(after, _DOES) or _verb(before, _TAKES)


def _verb(between: Sequence[str], verbs: frozenset[str]) -> bool:
    return not verbs.isdisjoint(between) and _STOPS.isdisjoint(between) and _ASKS.isdisjoint(between)


def _done(words: Sequence[str], took: Told, pair: Sequence[Told]) -> Told | None:
    """Which of two quantities is told together with how many that took; None where neither is, plainly."""
    first, last = pair
    near = [(_closeness(words, took, one), one) for one in pair]
    if first.start < took.start < last.start:
        (one, before), (other, after) = near
        if abs(one - other) < _LEAST:
            return None
        return before if one > other else after
    done, now = (last, first) if took.start > last.start else (first, last)  # the one next to it
    to_go = not _TO_GO.isdisjoint(_around(words, done)) and _BEFORE.isdisjoint(_around(words, done))
    if _closeness(words, took, done) <= _APART or (to_go and _TO_GO.isdisjoint(_around(words, now))):
        return None
    return done


def _closeness(words: Sequence[str], one: Told, other: Told) -> int:
    """How closely two quantities are told together, by the words between them."""
    first, last = sorted((one, other), key=lambda each: each.start)
    between = words[first.end : last.start]
    score = 4 * (not _DOES.isdisjoint(between) or not _TAKES.isdisjoint(between)) + (not _JOINS.isdisjoint(between))
    score += 2 * (not _SAME_AS.isdisjoint(between)) + any(word.endswith("ed") for word in between)
    score -= 5 * (not _STOPS.isdisjoint(between)) + 6 * (not _ASKS.isdisjoint(between)) + 4 * (not _OPENS.isdisjoint(between))
    score -= 2 * (not _AND.isdisjoint(between))
    return score - 3 * (not _NOW.isdisjoint(between)) - 2 * (not _PAUSES.isdisjoint(between))


def _around(words: Sequence[str], one: Told) -> Sequence[str]:
    """The words of the clause that a quantity stands in."""
    ends = _STOPS | _PAUSES
    start = next((at + 1 for at in range(one.start - 1, -1, -1) if words[at] in ends or words[at] in _ASKS), 0)
    return words[start : next((at for at in range(one.end, len(words)) if words[at] in ends or words[at] in _ASKS), len(words))]


def _other_way(words: Sequence[str], took: Told, done: Told) -> bool:
    """Whether what is asked for is what was done: 3 boxes did 40 sheets, how many sheets for 100; that is rounded down."""
    between = words[done.end : took.start]
    return not _DID.isdisjoint(between) and _JOINS.isdisjoint(between) and _STOPS.isdisjoint(between)


def _stocked(words: Sequence[str], took: Told) -> bool:
    """Whether what is left of the stock is told, and not how many it took: I've 3 tubes left."""
    clause = words[took.end : took.end + 1 + len(took.things) + 1]
    return not {"left", "spare", "more", "leftover"}.isdisjoint(clause)


def _of_else(words: Sequence[str], one: Told) -> bool:
    """Whether it is a size, or a number with no thing of its own in a clause about something else: the drill cost 119."""
    if words[one.start - 1 : one.start] == ["many"] or not _SIZED.isdisjoint(words[one.end : one.end + 1]):
        return True  # how many 16 foot boards; 9 high
    return one.kind == "number" and not one.things and not _ELSE.isdisjoint(_around(words, one))


def _part_of(words: Sequence[str], done: Told, now: Told) -> bool:
    """Whether what is to do holds what was done: 40 of the 160 feet; then what is left may be asked."""
    between = words[done.end : now.start]
    return bool(between) and len(between) <= _TRIO and not _PART_OF.isdisjoint(between) and not _is_thing(between)


def _is_thing(between: Sequence[str]) -> bool:
    """Whether what stands between two quantities ends with the thing of the first: 42 m of joint, 95."""
    return between[-1] not in _PART_OF | {"the", "my", "all", "a"}


def _more_asked(words: Sequence[str]) -> bool:
    """Whether it is asked how many more, so that what was done may be a part of what there is."""
    return any(first == "many" and then in ("more", "extra") for first, then in pairwise(words))
