"""The quantities of a line one after another, each with the words up to the next, for readers that take every one of them.

What is clearly of something else (an hour, a date, the number on a docket, money, cups of tea) is told apart by the words
beside it: such a reader leaves it out, and says so.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction
from functools import reduce
from operator import or_
from typing import NamedTuple

from intents.chart import Chart, once, quantity_word, span
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.second_reader import tokens_of
from solvers.quantities import Length, Money, Number, Quantity, Weight

_KINDS = frozenset("number length plural percent area money pitch temperature weight volume angle".split())
PASSED = "…"  # stands in the words between quantities for what is passed over
_SURE = 0.65  # a quantity no surer than this may be two: six | 4.8, twelve | ten foot
_SURE_PAIR = 0.6
_UNIT_WORDS = frozenset("foot feet ft inch inches in mm cm m metre metres meter meters ' \"".split())
_UNSAID = frozenset("foot feet ft lf".split())  # a unit alone, with no number: LF of casing?
_ARTICLES = frozenset("one a an".split())
_MONTHS = frozenset(
    "january february march april june july august september october november december jan feb mar apr jun jul aug sept oct nov"
    " dec".split()
)
_NUMBERED = frozenset("docket ticket invoice po ref wo lot plot page drawing dwg permit phone ext job bay".split())
_NO_STUFF = frozenset(  # what is counted and is none of the job's
    "cups cup teas coffees beers lads guys men blokes helpers hands hours hour minutes minute mins days day weeks week months"
    " years year kids dogs am pm o'clock oclock degrees dollars dollar bucks buck quid euros cents pence".split()
)
_HOLDERS, _NEAR = frozenset("trailer truck van ute pickup lorry".split()), 5
_FAMILY = frozenset("she he she's he's lad lads son daughter kid boy girl wife lad's son's daughter's turned turns".split())
_ENDS, _OUTSIDE = frozenset(".,;!?") | {""}, frozenset("out outside here today zero freezing this and ,".split())
_OF_US = frozenset(("us", "tea", "coffee", "beer"))
_EACH = frozenset("a an each per apiece the every /".split())
_PRICED = frozenset("at for cost costs are is they're theyre price paid @ was were be".split())
_CENTS = 2  # digits of them
_HUNDRED_FEET = 1200  # inches
_HOURS, _MINUTES, _PITCH_OF = 24, 60, "12"  # 6:12 is a pitch
_MARKS = frozenset(("$", "£", "€"))
_YEARS = range(1850, 2101)


class Item(NamedTuple):
    """A quantity, the words since the one before it and those up to the next."""

    reading: Reading
    before: tuple[str, ...]
    after: tuple[str, ...]

    @property
    def whole(self) -> int:
        """The number where it is a whole one with no unit, else 0."""
        value = self.reading.value
        bare = self.reading.kind == "number" and isinstance(value, Number) and value.value.denominator == 1
        return int(value.value) if bare else 0  # type: ignore[union-attr]


def items(chart: Chart, passed: int = 0, pairs: bool = False) -> list[Item]:
    """The quantities of a line without those of the mask `passed`; with `pairs`, sizes of two sides are one."""
    passed |= chart.kept.get("gone", 0)
    found = [r for r in _in_turn(chart, passed, pairs) if not _article(chart, r)]
    edges = [0, *(r.end for r in found)], [*(r.start for r in found), len(chart.words)]
    gaps = [_gap(chart, passed, start, end) for start, end in zip(*edges, strict=True)]
    return [Item(reading, before, after) for reading, before, after in zip(found, gaps, gaps[1:], strict=False)]


def _gap(chart: Chart, passed: int, start: int, end: int) -> tuple[str, ...]:
    """The words between two quantities; what is passed over is one word, as it may name a thing: ten | 2x6s, fourteen foot."""
    words = [PASSED if passed >> at & 1 else chart.words[at] for at in range(start, end)]
    return tuple(word for at, word in enumerate(words) if word != PASSED or words[at - 1 : at] != [PASSED])


def all_taken(chart: Chart, found: list[Item], passed: int) -> bool:
    """Whether every number of a line is in an item or passed over: one that no reading takes is none to forget."""
    taken = reduce(or_, (span(item.reading.start, item.reading.end) for item in found), passed | chart.kept.get("gone", 0))
    return not any(quantity_word(word) and word[0].isdigit() and not taken >> at & 1 for at, word in enumerate(chart.words))


def counts_unused(
    chart: Chart, question: Question, passed: int = 0, counts: Callable[[Item], bool] = lambda item: True
) -> list[str]:  # fmt: skip
    """The whole numbers from two on that are in none of a question's givens, nor left out, nor of something else."""
    passed |= aside(chart) | reduce(or_, (tokens_of(chart, heard) for heard in question.givens.values()), 0)
    found = (item.reading for item in items(chart, passed) if item.whole > 1 and counts(item))
    return [text for r in found if (text := chart.said(r.start, r.end)) not in question.left]


def _in_turn(chart: Chart, passed: int, pairs: bool) -> Iterator[Reading]:
    at = 0
    while at < len(chart.words):
        best = _best(chart, at, passed, pairs)
        if best is not None:
            yield best
        at = best.end if best is not None else at + 1


def _best(chart: Chart, at: int, passed: int, pairs: bool) -> Reading | None:
    if chart.words[at] in _UNSAID or (chart.words[at] == "one" and _one_of_feet(chart, at)):
        return None
    fits = [r for r in chart.every[at] if not passed & span(r.start, r.end) and _is_one(r, pairs)]
    least = {"dims": _SURE_PAIR}
    sure = [r for r in fits if r.sure >= least.get(r.kind, _SURE) or (r.kind == "length" and passed >> r.end & 1)]
    return max(sure or fits, key=lambda r: (r.end, r.kind != "number", r.sure), default=None)


def _one_of_feet(chart: Chart, at: int) -> bool:
    """Whether one thing is so many feet long, which nothing is a hundred of: one | twelve foot stick."""
    after = [r for r in chart.every[at + 1] if r.kind == "length"] if at + 1 < len(chart.words) else []
    whole = [r for r in chart.every[at] if r.kind == "length" and any(r.end == other.end for other in after)]
    return any(inches(r.value) >= _HUNDRED_FEET and r.value.unit == "ft" for r in whole)  # type: ignore[union-attr]


def _is_one(reading: Reading, pairs: bool) -> bool:
    value = reading.value
    if isinstance(value, Dims):
        return pairs and len(value.parts) == 2
    return isinstance(value, Quantity) and reading.kind in _KINDS


def _article(chart: Chart, reading: Reading) -> bool:
    """Whether it is one thing and no number: from one 3.6 m board."""
    return reading.end == reading.start + 1 and chart.words[reading.start] in _ARTICLES and reading.kind == "number"


@once
def aside(chart: Chart) -> int:
    """Mask of the numbers that are of something else, as the words beside them tell."""
    words = [*chart.words, "", "", "", ""]
    mask = 0
    for at, word in enumerate(chart.words):
        if _is_hour(words, at):
            mask |= span(at, at + 3)
        elif quantity_word(word) and word[0].isdigit() and _of_else(chart, words, at):
            mask |= span(at, at + 1)
    for reading in (r for row in chart.every for r in row):
        counted = words[reading.end] in _NO_STUFF or words[reading.end : reading.end + 2] in (["of", us] for us in _OF_US)
        counted = counted or _age_or_weather(words, reading)
        if isinstance(reading.value, Money | Weight) or _held(words, reading) or (reading.kind == "number" and counted):
            mask |= span(reading.start, reading.end)
    return mask


def _is_hour(words: list[str], at: int) -> bool:
    """Whether an hour begins there: 11:15, 13:00."""
    hour, colon, minutes = words[at : at + 3]
    told = colon == ":" and hour.isdecimal() and minutes.isdecimal() and len(minutes) == _CENTS
    return told and int(hour) < _HOURS and int(minutes) < _MINUTES and minutes != _PITCH_OF


def _of_else(chart: Chart, words: list[str], at: int) -> bool:
    before, after = words[at - 1] if at else "", words[at + 1]
    raw = chart.text[chart.tokens[at - 1].start : chart.tokens[at - 1].end].lower() if at else ""
    if before in _MARKS or after in _MONTHS or before in _MONTHS or _is_may(chart, at + 1) or _is_may(chart, at - 1):
        return True
    if raw in _NUMBERED and words[at].isdecimal() and after not in _UNIT_WORDS | {"by", "×"}:
        return True
    if words[at].isdecimal() and int(words[at]) in _YEARS and before in ("in", "since") and after not in _UNIT_WORDS:
        return True
    return words[at][-1 - _CENTS] == "." and before in _PRICED and after in _EACH if len(words[at]) > _CENTS else False


def _held(words: list[str], reading: Reading) -> bool:
    """Whether a number is what a trailer or a van takes: I can fit maybe fifty sheets in the trailer."""
    return reading.kind == "number" and not _HOLDERS.isdisjoint(words[reading.end : reading.end + _NEAR])


def _age_or_weather(words: list[str], reading: Reading) -> bool:
    """Whether it is how old somebody is, or how cold it is: she's 9. its ten below out here."""
    before, after = words[reading.start - 1] if reading.start else "", words[reading.end : reading.end + 2]
    return (before in _FAMILY and after[0] in _ENDS) or (after[0] == "below" and after[1] in _OUTSIDE)


def _is_may(chart: Chart, at: int) -> bool:
    """Whether a word is the month: 17 May."""
    return 0 <= at < len(chart.tokens) and chart.text[chart.tokens[at].start : chart.tokens[at].end] == "May"


def heard(chart: Chart, reading: Reading, value: Quantity) -> Heard:
    """A value that a reading was taken for, with the words it was said in."""
    start, end, text = place_of(chart, reading.start, reading.end)
    return Heard(type(value)(Fraction(value.value), value.unit, text), start, end, text)


def inches(value: object) -> Fraction:
    """How long it is in inches; a bare number is so many."""
    if isinstance(value, Length):
        return Fraction(value.to("in").value)
    return value.value if isinstance(value, Number) else Fraction(0)


def leave_aside(chart: Chart, question: Question) -> None:
    """Leave out, and say so, what has no place in a question and is clearly of something else."""
    texts = {*chart.said_in(aside(chart))}
    question.left += [text for text in question.unplaced if text in texts]
    question.unplaced = [text for text in question.unplaced if text not in texts]


def goes_first(chart: Chart, questions: list[Question], told: Question) -> None:
    """Put a question that takes all of its line in the place of those that were read, with how to answer as they had it."""
    told.manner = next((q.manner for q in questions if q.manner), {})
    questions[:] = [told]
