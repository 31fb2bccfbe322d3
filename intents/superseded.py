"""Numbers that another of the same sentence has taken the place of, and that are no given: what the drawing had before
somebody taped it, what it used to be and now is not, what the wall before took, how many are done of those asked about.

"40 on paper but I taped it at 39-4", "it was 11.50, now they're 13": the later is the one. Such a number is left out only
from a question that is whole without it (`left_out.py`), so a topic that needs both ("12 percent then, 16 now") keeps both.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from intents.chart import Chart, once, span
from intents.reading import Dims, Reading
from intents.remarks import ASKING, ENDS
from solvers.quantities import Length, Money, Number, Percent, Pitch, Quantity, Temperature

_TURNS = frozenset("but though although however only".split())  # between what was told and what holds
_PAPER = frozenset("paper drawing drawings plan plans blueprint sketch brochure listing supposed supposedly according".split())
_TAPE = frozenset("tape taped measured measure measures actual actually really reality checked".split())
_WAS, _NOW = frozenset("was were used had started began".split()), frozenset("now today nowadays".split())
_AIR = frozenset("humidity humid rh air dew outside radio forecast".split())
_BEGAN = frozenset(("started", "began"))
_THOUGHT = frozenset("thought assumed figured guessed reckoned".split())  # it was so, and then it's not
_BOTH = frozenset(  # with one of these the two are held against each other
    "difference between than change changed changes grow grown grew shrink shrunk move moved moves swell swelled gain gained lost"
    " increase from average both longer shorter growth movement expand expands contract contracts narrower wider".split()
)
_MOVED = frozenset("pulled moved brought pushed dropped raised shortened shifted".split())  # it in to six foot
_WHOSE = frozenset("north south east west lake ramp back front other last first side garage shed".split())
_TOOK = frozenset("did done took used needed".split())
_ITS = frozenset("it's its it they're theyre".split())
_HERE = frozenset("here this that".split())
_MORE = frozenset("more another extra left still remaining besides over enough short".split())
_NEAR, _LEAD = Fraction(5, 4), 4  # times as large at most; words before what it was
_KINDS = frozenset("number length money area pitch ratio percent temperature".split())
_UNITS = ("ft", "in", "m", "mm")
_PEOPLE = frozenset(
    "dad grandad grandpa granddad father mum mother brother sister uncle cousin nephew neighbour neighbor neighbours neighbors"
    " fellow fellows mate".split()
)
_LEADS, _BEGINS = frozenset("my our the his her and but so though next door last old".split()), 4
_USED, _DID = frozenset("used went".split()), frozenset("did done put had made built hung".split())
_THEIRS = frozenset("his hers theirs their her".split())
_PLACED = frozenset("window windows door doors opening openings vent vents".split())  # in this wall, whoever did it
_LIKE_THEM, _TOO = frozenset("same like match matches matching copy alike as".split()), frozenset("too also both".split())
_FORGET = (("forget", "it"), ("forget", "that"), ("forget", "them"), ("never", "mind"), ("ignore", "it"), ("ignore", "that"))
CUES = _PAPER | _WAS | _TOOK | _PEOPLE | frozenset(("forget", "never", "ignore"))
_COUNTED = 4  # letters of a plural that is counted twice: rows, bays


class _Told(NamedTuple):
    """A quantity, or sizes said together, at its tokens."""

    start: int
    end: int
    sizes: tuple[Quantity, ...]


def may_be_superseded(words: Sequence[str]) -> bool:
    """Whether a sentence could tell of such a number: by one of its words, or by a thing that is counted twice."""
    plurals = [word for word in words if word.endswith("s") and len(word) >= _COUNTED]
    return not CUES.isdisjoint(words) or len(set(plurals)) < len(plurals)


@once
def superseded(chart: Chart) -> int:
    """The mask of the quantities that another has taken the place of."""
    if not may_be_superseded(chart.words):
        return 0
    told = [(place, list(_told(chart, *place))) for place in _segments(chart.words)]
    mask = 0
    for n, (place, said) in enumerate(told):
        asks = not said or chart.words[place[0]] in ASKING
        if not asks and any(_takes_over(chart, told[n], each) for each in told[n + 1 : n + 3]):
            mask |= _mask(said)
    return mask | _of_those_asked(chart, told) | _of_another(chart, told) | _disowned(chart, told)


def _mask(said: Sequence[_Told]) -> int:
    return sum(span(each.start, each.end) for each in said)


def _segments(words: Sequence[str]) -> Iterator[tuple[int, int]]:
    """The stretches between stops, commas and the words that turn to what holds."""
    start = 0
    turns = {at for at, word in enumerate(words) if word in ENDS or word in _TURNS}
    turns |= {at for at, pair in enumerate(pairwise(words)) if pair == ("and", "now")}
    for end in (*sorted(turns), len(words)):
        if end > start:
            yield start, end
        start = end + 1


def _told(chart: Chart, start: int, end: int) -> Iterator[_Told]:
    """What is told in a stretch, each once, from left to right."""
    at = start
    while at < end:
        found = [_Told(at, r.end, sizes) for r in chart.readings[at] if r.end <= end and (sizes := _sizes(r))]
        if found:
            yield max(found, key=lambda each: each.end)
        at = max((each.end for each in found), default=at + 1)


def _sizes(reading: Reading) -> tuple[Quantity, ...]:
    if isinstance(reading.value, Dims):
        return tuple(part.value for part in reading.value.parts if isinstance(part.value, Quantity))
    single = isinstance(reading.value, Quantity) and reading.kind in _KINDS
    return (reading.value,) if single else ()  # type: ignore[return-value]


_Segment = tuple[tuple[int, int], list[_Told]]


def _takes_over(chart: Chart, before: _Segment, after: _Segment) -> bool:
    """Whether what is told in the later stretch holds in the place of all that is told in the earlier."""
    words = chart.words
    (start, end), (first, last) = before[0], after[0]
    earlier, later = ([size for each in said for size in each.sizes] for said in (before[1], after[1]))
    if not later or len(earlier) not in (1, len(later)) or not _BOTH.isdisjoint(words):
        return False
    papers = not _PAPER.isdisjoint(words[start:end]) and not _TAPE.isdisjoint(words[first:last])
    papers = papers or (not {"old", "drawings", "plans"}.isdisjoint(words[start : start + 2]) and "actually" in words[first:last])
    said = before[1][0].start
    was = len(earlier) == 1 and not _WAS.isdisjoint(words[max(start, said - _LEAD) : said])
    moved = was and not _MOVED.isdisjoint(words[first:last]) and not _ITS.isdisjoint(words[first:last])
    wet = any(isinstance(size, Percent) for size in later) and _AIR.isdisjoint(words)  # moistures are told as they go
    now = was and not wet and not _NOW.isdisjoint(words[first:last]) and _NOW.isdisjoint(words[start:end])
    if now and not _BEGAN.isdisjoint(words[start:said]):
        return all(type(a) is type(b) for a, b in zip(earlier, later, strict=False))  # it started out at 3/8, it's 3/4 now
    thought = was and not _THOUGHT.isdisjoint(words[start:said]) and not _ITS.isdisjoint(words[first : first + 2])
    return (papers or now or moved or thought) and all(_near(a, b) for a, b in zip(earlier, later, strict=False))


def _near(a: Quantity, b: Quantity) -> bool:
    """Whether two could be of one thing: of one kind, or one with no unit, and about as large."""
    if isinstance(a, Length) and isinstance(b, Length):
        return _about(a.to("in").value, b.to("in").value)
    for one, other in ((a, b), (b, a)):
        if isinstance(one, Number) and isinstance(other, Length):
            return any(_about(one.value, other.to(unit).value) for unit in _UNITS)
        if isinstance(one, Number) and isinstance(other, Number | Money):
            return _about(one.value, other.value)
    alike = type(a) is type(b) and a.unit == b.unit
    return alike and (isinstance(a, Pitch | Percent | Temperature) or _about(a.value, b.value))


def _about(a: Fraction, b: Fraction) -> bool:
    return 0 < max(a, b) <= _NEAR * min(a, b)


def _of_those_asked(chart: Chart, told: list[_Segment]) -> int:
    """Counts of what is done and to be done, where it is asked of so many: 8 rows up and 4 more, how high will 12 rows be."""
    words = chart.words
    asked = {
        words[each.end] for (start, end), said in told for each in said
        if words[start] in ASKING and each.end < end and isinstance(each.sizes[0], Number) and words[each.end].endswith("s")
    } if any(words[start] in ASKING for (start, _), _ in told) else set()  # fmt: skip
    if not asked:
        return 0
    clauses = (said for (start, _), said in told if words[start] not in ASKING)
    counts = [each for said in clauses for each in said if isinstance(each.sizes[0], Number)]
    named = [each for each in counts if not asked.isdisjoint(words[each.end : each.end + 1])]
    return _mask([each for each in counts if each in named or words[each.end : each.end + 1] == ["more"]]) if named else 0


def _disowned(chart: Chart, told: list[_Segment]) -> int:
    """What is to be forgotten: a 16 footer but it's twisted so forget it, boxes hold 1000 but never mind that."""
    mask = 0
    for n, ((start, end), said) in enumerate(told):
        if any(pair in _FORGET for pair in pairwise(chart.words[start:end])):
            before = told[n - 1] if n and chart.words[start - 1] in _TURNS else None
            mask |= _mask(said) if said else _mask(before[1]) if before else 0
    return mask


@once
def of_others(chart: Chart) -> int:
    """The mask of what is told of somebody else's work, for which a question has no place: grandad used five."""
    words, mask = chart.words, 0
    if _PEOPLE.isdisjoint(words) or not _LIKE_THEM.isdisjoint(words):
        return 0
    for start, end in _segments(words):
        clause = words[start:end]
        lead = [word for word in clause[:_BEGINS] if word not in _LEADS]
        did = not _USED.isdisjoint(clause) or not (_DID.isdisjoint(clause) or _THEIRS.isdisjoint(clause))
        if lead and lead[0] in _PEOPLE and did and (_PLACED | _TOO).isdisjoint(clause):
            mask |= _mask(list(_told(chart, start, end)))
    return mask


def _took_alone(words: Sequence[str], each: _Told) -> bool:
    """Whether so many is all that is said of what it took: the last wall took 31 and it was longer."""
    after = words[each.end] if each.end < len(words) else ""
    return words[each.start - 1] in _TOOK and (not after or after in ENDS or after in ("and", "but"))


def _of_another(chart: Chart, told: list[_Segment]) -> int:
    """How many another wall took of what is asked: we did the north one with 23 straps, how many here."""
    words = chart.words
    asked = next((words[at + 2 : at + 3] for at, pair in enumerate(pairwise(words)) if pair == ("how", "many")), None)
    if not asked or not _MORE.isdisjoint(words) or (_HERE.isdisjoint(words) and "last" not in words):
        return 0
    mask = 0
    for (start, end), said in told:
        clause = words[start:end]
        if len(said) == 1 and not _TOOK.isdisjoint(clause) and not _WHOSE.isdisjoint(clause) and _HERE.isdisjoint(clause):
            each = said[0]
            after = words[each.end : each.end + 1]
            counted = _took_alone(words, each) or after == asked or (asked[0] in _HERE and after != [])
            mask |= _mask(said) if counted and isinstance(each.sizes[0], Number) and clause[0] not in ASKING else 0
    return mask
