"""What is said round a sum: the length it goes on from ("it's 94 1/4, take 2 off it"), and what is left of one cut."""

from __future__ import annotations

from dataclasses import replace
from functools import reduce
from itertools import pairwise
from typing import Any

from intents.reading import Reading
from intents.sum_counts import BOTH, both_ends, sized, thing
from intents.sum_counts import ENDS as END_WORDS
from intents.sum_parts import Found, Parts
from intents.sum_words import CUT, LEFT, TAKE
from solvers.quantities import Length, Number
from solvers.sums import MINUS, PLUS, Part, Sum, leaves, plain_size

MOST_NAMING = 5  # words before the first length
MOST_SAID = 6  # lengths before a sum that it may say again
BEFORE = 4  # words between the verb and the length that is cut off
ENDS = frozenset("left leftover over remaining remains it off from of".split())
APART = 14  # words between the last length and what is to be done with all
MOST_SUMMED = 12
_ADDED = (
    "overall|all in|stack it|stack them|add that up|add all that up|make what|makes what|come to what|the whole wall|the "
    "whole run"
    "|tot it up|tot them up|tot that up|tot it all up|sum it up|sum them up|tally it up|tally them up"
    "|whole thing|whole lot|the total|total length|add all that length up|all told|add them|add those|add these|add it up|"
    "add it all|add that up|add up to|add them up|all together|put together|end to end"
)
_SUBTRACTED = (
    "subtract it|subtract them|subtract that|take it off|take that off|take one from other|the difference|deduct it|deduct that"
)
_LOOSE = {("overall",), ("all", "in"), ("whole", "thing"), ("whole", "lot"), ("the", "total")}  # said of other things too
_QUESTIONS = frozenset("what whats how length height width".split())
_LOST = frozenset("lose loses losing lost less minus deduct subtract overlap overlaps lapped lapping".split())
NEAR = 7  # words from the last length to one of those
_SUMMED: dict[str, list[tuple[tuple[str, ...], str]]] = {}
for _phrases, _operation in ((_ADDED, PLUS), (_SUBTRACTED, MINUS)):
    for _words in (tuple(phrase.split()) for phrase in _phrases.split("|")):
        _SUMMED.setdefault(_words[0], []).append((_words, _operation))
_HEADS = frozenset(
    "the boss says said wants he she they we it its it's that is cut make mark need needs i want ok so now right and".split()
)
_TAILS = frozenset(
    "what whats do i mark cut cutting leaves leave make makes does that come comes to is where how number on my tape the "
    "reading give"
    " gives me get say so then final finished please left now end up we am are at have got it . ? , ! period".split()
)
_SIDES = frozenset("the side hand end edge one gable wall".split())  # left is a side beside these
_SHARED = frozenset("halve halved half double split divide divided third thirds quarters equal".split())  # what is left, again
_CUTS = CUT | TAKE | frozenset("off comes used use minus less out lose loses losing".split())


def with_remarks(reader: Parts, sum_: Reading) -> Reading:
    """The sum with the one length that was said before it for the part it lacks, or with those it says again."""
    whole: Any = sum_.value
    before = _said_before(reader, sum_.start)
    if not before:
        return sum_
    if _lacking(whole):
        one = before[0][1].part
        if len(before) > 1 or not isinstance(one, Length | Number) or one.value <= 1:
            return sum_
        return replace(sum_, start=_named_from(before[0][0]), value=_filled(whole, one))  # type: ignore[arg-type]
    own = {plain_size(leaf) for leaf in leaves(whole)}
    told = {plain_size(found.part) for _, found in before}
    again = len(before) <= MOST_SAID and (told <= own or own <= told)
    return replace(sum_, start=_named_from(before[0][0])) if again else sum_


def _named_from(start: int) -> int:
    """Where the words that name the first length begin: "the sill's at 34 1/2"; a sentence led by them is all theirs."""
    return 0 if start <= MOST_NAMING else start


def whole_line(reader: Parts, sum_: Reading) -> Reading:
    """The sum with what the line says round it, where that is nothing but who wants it and what is asked."""
    end, last = sum_.end, len(reader.tokens)
    start = 0 if sum_.start and all(word in _HEADS for word in reader.words[: sum_.start]) else sum_.start
    tail = reader.words[end:last]
    end = last if tail and _TAILS.issuperset(tail) and not reader.numbers_after(end) else end
    return replace(sum_, start=start, end=end) if (start, end) != (sum_.start, sum_.end) else sum_


def remainder(reader: Parts) -> Reading | None:
    """What is left of a length that another is cut off: "whats left of a 16 footer after I cut 61 3/8 off it"."""
    words = reader.words
    tells = [i for i, word in enumerate(words) if word in LEFT and words[i - 1] not in _SIDES and words[i + 1] not in _SIDES]
    if not tells or not _SHARED.isdisjoint(words):
        return None
    said = _said_before(reader, len(reader.tokens))
    if len(said) != 2 or not any(isinstance(found.part, Length) or _in_parts(found.part) for _, found in said):
        return None
    sizes = [plain_size(found.part) for _, found in said]
    if any(isinstance(found.part, Number) and found.part.value.denominator == 1 for _, found in said):
        return None  # two of them: a count, or feet
    large, small = (said[0], said[1]) if sizes[0] > sizes[1] else (said[1], said[0])
    at, end = small[0], small[1].end
    cuts = [i for i in (*range(max(0, at - BEFORE), at), end, end + 1) if words[i] in _CUTS]
    cuts += [i for i, word in enumerate(words) if word == "without"]  # how much wall is left without the door
    if not cuts:
        return None
    start, end = min(tells[0], cuts[0], said[0][0]), said[1][1].end
    while words[end] in ENDS:
        end += 1
    end = max(end, *(i + 1 for i in (*tells, *cuts)))
    return Reading("sum", start, end, Sum(MINUS, large[1].part, small[1].part))  # type: ignore[arg-type]


def summed_up(reader: Parts) -> Reading | None:
    """Lengths that were told, and what to do with them last: "the wall is 31'4\", the trim 5'9\", subtract it"."""
    words, count = reader.words, len(reader.tokens)
    told = [
        (i, size, how) for i in range(count) for size, how in _SUMMED.get(words[i], ()) if tuple(words[i : i + len(size)]) == size
    ]
    at, size, operation = told[-1] if told else (0, (), "")
    all_said = _said_before(reader, at, operation == PLUS) if at else []
    said = _without_count(reader, all_said)
    if len(said) < 2 or len(said) > MOST_SUMMED or (operation == MINUS and len(said) != 2) or reader.numbers_after(at):
        return None
    if operation == PLUS and not _LOST.isdisjoint(words[:at]):
        return None  # 18 foot 4 and 11 foot 9, I lose 4 inches in the overlap, the total
    metric = any(isinstance(found.part, Length) and found.part.unit == "mm" for _, found in said)
    whole = [found for _, found in said if isinstance(found.part, Number) and found.part.value.denominator == 1]
    if whole and (not metric or any(thing(reader, found.end) for found in whole)):
        return None  # a count of something
    if size in _LOOSE and said[-1][1].end == at and not _QUESTIONS.isdisjoint(words[at:]):
        return None  # half an inch all in. What's the rail
    if said[-1][1].end + (NEAR if size in _LOOSE else APART) < at:
        return None
    parts = [(both_ends(reader, found) if operation == PLUS else found).part for _, found in said]
    doubled = sum(isinstance(part, Sum) for part in parts)
    if doubled < sum(a in BOTH and b in END_WORDS for a, b in pairwise(words[:at])):
        return None  # siding both ends, 5/8
    if operation == MINUS:
        parts.sort(key=plain_size, reverse=True)
    total = reduce(lambda left, right: Sum(operation, left, right), parts)
    return Reading("sum", _named_from(all_said[0][0]) if len(said) == len(all_said) else 0, at + len(size), total)  # type: ignore[arg-type]


def _without_count(reader: Parts, said: list[tuple[int, Found]]) -> list[tuple[int, Found]]:
    """Without the number that counts the others: in three runs, …"""
    if len(said) < 3:
        return said
    first = said[0][1]
    counts = isinstance(first.part, Number) and first.part.value == len(said) - 1 and thing(reader, first.end)
    return said[1:] if counts else said


def _said_before(reader: Parts, end: int, several: bool = False) -> list[tuple[int, Found]]:
    """The lengths and numbers that stand before a place, each with where it starts."""
    found: list[tuple[int, Found]] = []
    at = 0
    while at < end:
        part = (sized(reader, at) if several else reader.part(at)) if reader.chart[at] else None
        if part is None:
            if any(r.sure >= 0.8 and r.kind != "tempchange" for r in reader.chart[at]):
                return []  # pounds, degrees: the line is about more than lengths
            at += 1
            continue
        if reader.words[at] == "one" and part.end == at + 1:
            at += 1  # one side, this one: no number
            continue
        if part.end > end or (isinstance(part.part, Sum) and not several):
            return []
        found.append((at, part))
        at = part.end
    return found


def _in_parts(part: Part | None) -> bool:
    """Whether a number with no unit is read off a tape: 81 5/8."""
    return isinstance(part, Number) and part.value.denominator > 1 and part.value > 1


def _lacking(part: Part | None) -> bool:
    """Whether the first part of a sum was not said."""
    return part is None or (isinstance(part, Sum) and _lacking(part.left))


def _filled(part: Part | None, one: Length | Number) -> Part | None:
    if isinstance(part, Sum):
        return replace(part, left=_filled(part.left, one), text="")
    return one if part is None else part
