"""Sums whose whole line has one of a few outlines, told as what was done: "three pieces 31 1/4 each out of a 10 footer and an
eighth gone each cut", "two 7/16 reveals come off 28 3/4", "11 3/8 twice, then half of one more", "five cuts at 11 3/16 and a
kerf of 1/8 for each", "six slots in 22 7/8, 5/8 dividers between".

Each outline must take every quantity of its line, so that none is let fall.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from re import Match, Pattern
from typing import NamedTuple

from intents.chart import Chart, once
from intents.expressions import expression
from intents.question import Heard, Question
from intents.sum_bound import parts_of
from intents.sum_parts import Parts
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, plain_size, told_as_length

TOPIC, SLOT, SCORE = "tape arithmetic", "sum", 9.0  # as of a rule that fits whole
MOST_COUNT = 60
_THINGS = r"(?:[a-z]+s|pieces|lengths)"
_LEFT = r"\b(?:over|left|remains?|remaining|remainder|spare)\b"
_CUT = r"(?:each|every|per|a|for each|for every) (?:cut|pass|one|time|piece)|for each|each"
_TELLS = frozenset(
    "twice halve halved half split gap gaps joints and between stacked came come each off from out kerf saw blade".split()
)
_ENDS = expression(r"\b(?:each|both|either|the) (?:ends?|outsides?)\b")  # where there are gaps as well
_OTHERS = frozenset("money percent angle area weight pitch".split())
OTHER, LEAST_THING = 0.9, 3  # how sure a quantity of another kind is; letters of a plural, and less
_TWO = Number(Fraction(2), "none", "2")


class Line(NamedTuple):
    """A line as an outline sees it, and its plain quantities from left to right."""

    words: str  # with Q in the place of each quantity
    parts: list[Part]

    def place(self, found: Match[str], name: str) -> int:
        """Which of the quantities a group of a match in the words stands at, counted from the left."""
        return self.words[: found.start(name)].count("Q")


def outlined(chart: Chart) -> Question | None:
    """The sum of a line that has one of the outlines."""
    said = frozenset(chart.words)
    if said.isdisjoint(_TELLS) or ("how" in said and "many" in said) or _ENDS.search(" ".join(chart.words)):
        return None
    line = line_of(chart)
    if line is None:
        return None
    for outline, build in _OUTLINES.get(len(line.parts), ()):
        told = outline.search(line.words)
        if told is None:
            continue
        named = {name: line.parts[line.place(told, name)] for name in told.groupdict()}
        whole = build(named)
        if whole is not None:
            return whole_line(chart, whole, told[0].split())
    return None


def whole_line(chart: Chart, whole: Part, words: list[str], other: Part | None = None) -> Question:
    """The question of a sum that a whole line tells, by these of its words; `other` is what it may come to instead."""
    first, *rest = ({SLOT: Heard(each, 0, len(chart.text), chart.text)} for each in (whole, other) if each is not None)
    return Question(TOPIC, first, SCORE, words=words, swaps=rest)


@once
def line_of(chart: Chart) -> Line | None:
    """The line with a letter for each plain quantity; None where it holds a quantity of another kind."""
    reader = parts_of(chart)
    words: list[str] = []
    parts: list[Part] = []
    at, end = 0, len(reader.tokens)
    while at < end:
        if not reader.chart[at]:
            words.append(reader.words[at])
            at += 1
            continue
        counted = _count_before(reader, at)
        found = reader.value(at, listed=True) if reader.chart[at] and reader.words[at] != "twice" else None
        if found is not None and reader.words[at] in ("one", "half") and not isinstance(found.part, Length):
            found = None
        if counted is not None:
            words.append("Q")
            parts.append(counted)
            at += 1
        elif found is not None and isinstance(found.part, Length | Number):
            words.append("Q")
            parts.append(found.part)
            at = found.end
        elif any(r.sure >= OTHER and r.kind in _OTHERS for r in reader.chart[at]):
            return None
        else:
            words.append(reader.words[at])
            at += 1
    return Line(" ".join(words), parts)


def _count_before(reader: Parts, at: int) -> Number | None:
    """A count said in a word right before a fraction of so many things: two | 7/16 reveals."""
    if not reader.words[at].isalpha() or not reader.words[at + 1][:1].isdigit():
        return None
    size = reader.value(at + 1)
    if size is None or not isinstance(size.part, Number | Length) or size.part.value >= 1:
        return None
    if not reader.words[size.end].endswith("s") or len(reader.words[size.end]) <= LEAST_THING:
        return None
    found = (r.value for r in reader.chart[at] if r.kind == "number" and r.end == at + 1)
    return next((value.said(reader.words[at]) for value in found if isinstance(value, Number) and _counts(value)), None)


def _counts(part: Part) -> bool:
    return isinstance(part, Number) and part.value.denominator == 1 and 2 <= part.value <= MOST_COUNT


def _smaller(told: dict[str, Part], name: str, other: str) -> bool:
    """Whether one is surely a length, and less than the other."""
    return told_as_length(told[name]) and plain_size(told[name]) < plain_size(told[other])


def _cut_from(told: dict[str, Part]) -> Part | None:
    """So many pieces out of a stick, and what goes with each cut."""
    pieces = _with_each(told)
    return (
        Sum(MINUS, told["whole"], pieces) if pieces is not None and plain_size(told["each"]) < plain_size(told["whole"]) else None
    )


def _with_each(told: dict[str, Part]) -> Part | None:
    """So many, with as much more for each."""
    if not _counts(told["n"]) or not _smaller(told, "kerf", "each"):
        return None
    return Sum(TIMES, told["n"], Sum(PLUS, told["each"], told["kerf"]))


def _several_off(told: dict[str, Part]) -> Part | None:
    """So many of a size off a length."""
    if not _counts(told["n"]) or not _smaller(told, "each", "whole"):
        return None
    return Sum(MINUS, told["whole"], Sum(TIMES, told["n"], told["each"]))


def _twice_and_half(told: dict[str, Part]) -> Part | None:
    """A length twice, and half of it again."""
    one = told["one"]
    return Sum(PLUS, Sum(TIMES, _TWO, one), Sum(DIVIDED, one, _TWO)) if told_as_length(one) else None


def _rest_halved(told: dict[str, Part]) -> Part | None:
    """Half of what is left."""
    return Sum(DIVIDED, Sum(MINUS, told["whole"], told["off"]), _TWO) if _smaller(told, "off", "whole") else None


def _between(told: dict[str, Part]) -> Sum | None:
    """What stands between so many, one less than there are of them."""
    count = told["n"]
    if not isinstance(count, Number) or not _counts(count):
        return None
    return Sum(TIMES, Number(count.value - 1, "none", str(count.value - 1)), told["gap"])


def _row(told: dict[str, Part]) -> Part | None:
    """So many, and a gap between each two."""
    gaps = _between(told) if _smaller(told, "gap", "each") else None
    return Sum(PLUS, Sum(TIMES, told["n"], told["each"]), gaps) if gaps is not None else None


def _and_more(told: dict[str, Part]) -> Part | None:
    """A length and so many of a size besides."""
    if not _counts(told["n"]) or not _smaller(told, "each", "one"):
        return None
    return Sum(PLUS, told["one"], Sum(TIMES, told["n"], told["each"]))


def _one_of_them(told: dict[str, Part]) -> Part | None:
    """How big one is of so many that come to a length."""
    return Sum(DIVIDED, told["whole"], told["n"]) if _counts(told["n"]) else None


def _slots(told: dict[str, Part]) -> Part | None:
    """How wide each of so many openings is, with dividers between."""
    between = _between(told) if _smaller(told, "gap", "whole") else None
    return Sum(DIVIDED, Sum(MINUS, told["whole"], between), told["n"]) if between is not None else None


_TAKES = r"(?:take|takes|took|cut|cuts|knock|knocked|saw|sawed|trim|trimmed|rip|ripped|lose|chop|chopped)"
_REST = r"(?:the rest|the remainder|what is left|what left|whats left|what remains|the leftover)"
_HALVES = rf"(?:halved?|half of|split|halve|half) {_REST}"
_SLOTS = r"(?:slots|bays|openings|holes|compartments|cubbies|spaces|sections|pigeonholes|boxes)"
_DIVIDERS = r"(?:divide|dividers?|partitions?|uprights?|fins?|slats?|ribs?)"
_ALL_OF_IT = r"\b(?:wide|long|high|total|all told|in all|altogether|far|overall)\b"
# By how many quantities each takes.
_OUTLINES: dict[int, tuple[tuple[Pattern[str], Callable[[dict[str, Part]], Part | None]], ...]] = {
    1: (
        (
            expression(
                r"(?P<one>Q)(?: \w+)? twice\b(?!.*\b(?:less|minus|off)\b)[^Q]*"
                r"\bhalf (?:of )?(?:one more|another|one|it again|the same|that again)\b"
            ),
            _twice_and_half,
        ),
    ),
    2: (
        (
            expression(
                rf"(?P<n>Q) (?:of (?:them|those|these)|{_THINGS})\b[^Q]*"
                r"\b(?:came to|comes? to|measures?|makes?|total|(?:stacked|together) (?:is|are))\b"
                r"[^Q]*(?P<whole>Q)\b[^Q]*\bhow (?:thick|wide|long|high|tall|big|deep)(?: is)? (?:one|each)\b"
            ),
            _one_of_them,
        ),
        (expression(rf"(?P<whole>Q)\b[^Q]*\b{_TAKES}(?: \w+){{0,2}} (?P<off>Q)\b[^Q]*\b{_HALVES}\b"), _rest_halved),
        (
            expression(rf"\b{_TAKES} (?P<off>Q) (?:off|from|out of)(?: a| the| my)? (?P<whole>Q)\b[^Q]*\b{_HALVES}\b"),
            _rest_halved,
        ),
    ),
    3: (
        (expression(rf"^(?P<one>Q) and (?P<n>Q) {_THINGS} (?:of|at) (?P<each>Q)(?: (?:total|overall))?[ ?.]*$"), _and_more),
        (expression(rf"(?P<n>Q) (?P<each>Q) {_THINGS} (?:\w+ )?(?:off|out of|from)\b[^Q]*(?P<whole>Q)\b"), _several_off),
        (
            expression(
                r"^[^Q]*(?P<n>Q) (?:cuts|pieces|passes|lengths) (?:at|of) (?P<each>Q)\b[^Q]*\b(?:kerf|saw|blade)\b[^Q]*"
                rf"(?P<kerf>Q)\b[^Q]*\b(?:{_CUT})\b(?!.*{_LEFT}).*\b(?:how much|total|what length)\b"
            ),
            _with_each,
        ),
        (
            expression(
                r"\bgaps? (?:of |is )?(?P<gap>Q) between (?:each|every)?(?: of)?(?: the)? ?(?P<n>Q) "
                rf"{_THINGS}\b[^Q]*(?P<each>Q)\b[^Q]*{_ALL_OF_IT}"
            ),
            _row,
        ),
        (
            expression(
                rf"(?P<n>Q) {_SLOTS} in (?:a |the )?(?P<whole>Q)\b[^Q]*(?P<gap>Q) (?:thick )?{_DIVIDERS} (?:in )?"
                r"between\b[^Q]*\bwide\b"
            ),
            _slots,
        ),
    ),
    4: (
        (
            expression(
                rf"(?P<whole>Q)\b[^Q]*?(?P<n>Q) {_THINGS}(?: at| of)? (?P<each>Q)\b[^Q]*(?P<kerf>Q)\b[^Q]*\b(?:{_CUT})\b.*{_LEFT}"
            ),
            _cut_from,
        ),
        (
            expression(
                rf"(?P<n>Q) {_THINGS}(?: at| of)? (?P<each>Q)\b[^Q]*\b(?:out of|off|from)\b[^Q]*(?P<whole>Q)\b[^Q]*(?P<kerf>Q)\b"
                rf"[^Q]*\b(?:{_CUT})\b.*{_LEFT}"
            ),
            _cut_from,
        ),
    ),
}
