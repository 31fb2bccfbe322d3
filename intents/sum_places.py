"""Places on a tape told by one another: "the head is 44 7/8 above that", "centre of 133 and 3/8", "half 93 3/8"."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.reading import Reading
from intents.sum_counts import both_ends, thing
from intents.sum_parts import ARTICLES, Found, Parts
from intents.sum_words import ASKED, FACTORED, SKIPPED
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum

_ABOVE = frozenset("above over past beyond up from higher further".split())
_BELOW = frozenset("below under beneath lower short shy".split())
_FROM = frozenset(("than", "of"))
_THAT = frozenset(("that", "it", "this"))
MIDDLE = frozenset("centre center middle midpoint halfway".split())
BETWEEN = MIDDLE | frozenset("average mean midway".split())  # of two
_KERFS = frozenset("kerf kerfs".split())
_LED = SKIPPED | ASKED | frozenset("where does what's whats find mark a get me".split())
_HALF = Number(Fraction(2), "none")
LEAST_SHARE = 2  # "5 inches over 9" is a slope, "100 inches over 3" none
_ENDS = frozenset(("", "?", ".", "="))
_AFTERWARDS = frozenset("halve halved halves split divide divided double doubled".split())


def placed_by_another(reader: Parts) -> Reading | None:
    """A sum of two lengths that the whole line tells, one from the other."""
    words = reader.words
    if _THAT.isdisjoint(words) or (_ABOVE | _BELOW).isdisjoint(words):
        return None
    said = two_lengths(reader)
    if said is None:
        return None
    (start, first), (_, second) = said
    at = second.end
    second = Found(both_ends(reader, Found(second.part, at + 2)).part, at)  # an inch past it | on both sides
    if words[at] not in _ABOVE | _BELOW:
        return None
    end = at + 1 + (words[at + 1] in _FROM)
    if words[end] not in _THAT or (words[end + 1].isalpha() and words[end + 1] in ("wall", "roof", "board")):
        return None
    operation = PLUS if words[at] in _ABOVE else MINUS
    rest = words[end + 1 :]
    if not {"how", "what", "where", "whats", "?"} & set(rest):
        return None
    whole = Sum(operation, first.part, second.part)
    return Reading("sum", 0 if start <= 6 else start, len(reader.tokens), whole)  # type: ignore[arg-type]


def two_lengths(reader: Parts) -> tuple[tuple[int, Found], tuple[int, Found]] | None:
    """The two lengths of a line that tells no other quantity."""
    found: list[tuple[int, Found]] = []
    at = 0
    while at < len(reader.tokens):
        part = reader.part(at) if reader.chart[at] else None
        if part is None:
            if any(r.sure >= 0.8 and r.kind not in ("tempchange", "plural") for r in reader.chart[at]):
                return None
            at += 1
            continue
        if isinstance(part.part, Sum):
            return None
        if reader.words[at] == "one" and part.end == at + 1:
            at += 1  # one's 6 foot 8, the other's 5 foot 11
            continue
        if isinstance(part.part, Number) and part.part.value == 2 and thing(reader, part.end):
            at = part.end  # my two side legs came out at …
            continue
        found.append((at, part))
        at = part.end
    return (found[0], found[1]) if len(found) == 2 else None


def between_two(reader: Parts, i: int) -> Found | None:
    """The length halfway between two: average of 31 1/8 and 31 3/8, midway between 22 and 61, split the difference between."""
    words = reader.words
    split = words[i] == "difference" and words[max(0, i - 2) : i] == ["split", "the"]
    if not (split or words[i] in BETWEEN) or words[i + 1] not in ("of", "between"):
        return None
    first = reader.part(reader.past(i + 2))
    if first is None or words[first.end] not in ("and", "to"):
        return None
    second = reader.part(reader.past(first.end + 1))
    if second is None or reader.numbers_after(second.end):
        return None
    return Found(Sum(DIVIDED, Sum(PLUS, first.part, second.part), _HALF), second.end)


def loses_the_middle(part: Part | None, before: list[str]) -> bool:
    """Whether the words before a sum ask for the middle of it, which the sum is not."""
    asks = any(word in MIDDLE and after in ("of", "between") for word, after in pairwise(before))
    return asks and not (isinstance(part, Sum) and part.operation == DIVIDED)


_ARTICLES, _AGAIN = frozenset("the a an my his".split()), frozenset("same one other last rest half".split())


def done_after(words: list[str], end: int) -> bool:
    """Whether something is done to all of it after the sum that was read, which must not be let fall: then split it in half;
    or what is put on was never told: plus the width of a 2x4."""
    if words[end : end + 1] == ["plus"] and not _ARTICLES.isdisjoint(words[end + 1 : end + 2]):
        return _AGAIN.isdisjoint(words[end + 2 : end + 3])
    return any(word == "then" and not _AFTERWARDS.isdisjoint(words[n + 1 : n + 4]) for n, word in enumerate(words) if n >= end)


def lost_in(part: Part | None, words: list[str], start: int) -> bool:
    """Whether a sum from a word on lets what was asked for fall: the middle of it, or the kerf that is lost as well."""
    return loses_the_middle(part, words[:start]) or gives_back_kerf(part, words[start:])


def divides(part: Part | None) -> bool:
    """Whether something in the sum is divided."""
    return _has(part, DIVIDED)


def scaled(part: Part | None) -> bool:
    """Whether something in the sum is divided, or taken so many times."""
    return _has(part, TIMES) or divides(part)


def lets_go(found: Found, split: Found, words: list[str]) -> bool:
    """Whether one way to read a sum stops before what the other divides or doubles: that was said, so it is no other way."""
    return scaled(split.part) and not FACTORED.isdisjoint(words[found.end : split.end])


def gives_back_kerf(part: Part | None, after: list[str]) -> bool:
    """Whether the saw's kerf is said to be added where something is cut off: it is lost as well, so that is asked about."""
    if not isinstance(part, Sum) or _KERFS.isdisjoint(after) or not _has(part, MINUS):
        return False
    return part.operation == PLUS


def _has(part: Part | None, operation: str) -> bool:
    return isinstance(part, Sum) and (part.operation == operation or _has(part.left, operation) or _has(part.right, operation))


def middle(reader: Parts, i: int) -> Found | None:
    """Centre of 133 and 3/8; half 93 3/8, where that is all that is said."""
    words = reader.words
    if words[i] not in MIDDLE and words[i] != "half":
        return None
    if any(word not in _LED for word in words[:i]) and (words[i] not in MIDDLE or any(reader.chart[:i])):
        return None
    if words[i] in MIDDLE and words[i + 1] == "of":
        start = reader.past(i + 2)
        start += words[start] in ARTICLES and not reader.chart[start]
    elif words[i] == "half" and reader.chart[i + 1 : i + 2] and words[i + 1] not in ("a", "an"):
        start = i + 1
    else:
        return None
    whole = reader.part(start)
    loose = words[i] in MIDDLE and whole is not None and isinstance(whole.part, Length) and not reader.numbers_after(whole.end)
    if whole is None or (words[whole.end] not in _ENDS and not loose) or isinstance(whole.part, Sum):
        return None
    return Found(Sum(DIVIDED, whole.part, _HALF), whole.end)


def shared_over(reader: Parts, first: Found) -> int:
    """Where "over 3" after a length ends, when it shares the length out; 0 when it may be a slope or a place."""
    words, at = reader.words, first.end
    if words[at] != "over" or reader.depth:
        return 0
    among = reader.part(at + 1)
    if among is None or not isinstance(among.part, Number) or words[among.end] not in _ENDS or isinstance(first.part, Sum):
        return 0
    size = first.part.value if first.part is not None else Fraction(0)
    whole = among.part.value.denominator == 1 and among.part.value > 1
    return at + 1 if whole and size / among.part.value > LEAST_SHARE else 0
