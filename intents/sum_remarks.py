"""What is said round a sum: the length it goes on from ("it's 94 1/4, take 2 off it"), and what is left of one cut."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

from intents.reading import Reading
from intents.sum_parts import Found, Parts
from intents.sum_words import CUT, LEFT, TAKE
from solvers.quantities import Length, Number
from solvers.sums import MINUS, Part, Sum, leaves

MOST_NAMING = 5  # words before the first length
MOST_SAID = 3  # lengths before a sum that it may say again
BEFORE = 4  # words between the verb and the length that is cut off
ENDS = frozenset("left leftover over remaining remains it off from of".split())
_SIDES = frozenset("the side hand end edge one gable wall".split())  # left is a side beside these
_CUTS = CUT | TAKE | frozenset("off comes used use minus less out".split())


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
    own = {_size(leaf) for leaf in leaves(whole)}
    again = len(before) <= MOST_SAID and all(_size(found.part) in own for _, found in before)
    return replace(sum_, start=_named_from(before[0][0])) if again else sum_


def _named_from(start: int) -> int:
    """Where the words that name the first length begin: "the sill's at 34 1/2"; a sentence led by them is all theirs."""
    return 0 if start <= MOST_NAMING else start


def remainder(reader: Parts) -> Reading | None:
    """What is left of a length that another is cut off: "whats left of a 16 footer after I cut 61 3/8 off it"."""
    words = reader.words
    tells = [i for i, word in enumerate(words) if word in LEFT and words[i - 1] not in _SIDES and words[i + 1] not in _SIDES]
    if not tells:
        return None
    said = _said_before(reader, len(reader.tokens))
    if len(said) != 2 or not any(isinstance(found.part, Length) for _, found in said):
        return None
    sizes = [_size(found.part) for _, found in said]
    if any(isinstance(found.part, Number) and found.part.value.denominator == 1 for _, found in said):
        return None  # two of them: a count, or feet
    large, small = (said[0], said[1]) if sizes[0] > sizes[1] else (said[1], said[0])
    at, end = small[0], small[1].end
    cuts = [i for i in (*range(max(0, at - BEFORE), at), end, end + 1) if words[i] in _CUTS]
    if not cuts:
        return None
    start, end = min(tells[0], cuts[0], said[0][0]), said[1][1].end
    while words[end] in ENDS:
        end += 1
    end = max(end, *(i + 1 for i in (*tells, *cuts)))
    return Reading("sum", start, end, Sum(MINUS, large[1].part, small[1].part))  # type: ignore[arg-type]


def _said_before(reader: Parts, end: int) -> list[tuple[int, Found]]:
    """The lengths and numbers that stand before a place, each with where it starts."""
    found: list[tuple[int, Found]] = []
    at = 0
    while at < end:
        part = reader.part(at) if reader.chart[at] else None
        if part is None:
            if any(r.sure >= 0.8 and r.kind != "tempchange" for r in reader.chart[at]):
                return []  # pounds, degrees: the line is about more than lengths
            at += 1
            continue
        if part.end > end or isinstance(part.part, Sum):
            return []
        found.append((at, part))
        at = part.end
    return found


def _size(part: Part | None) -> Fraction:
    return part.to("in").value if isinstance(part, Length) else part.value if isinstance(part, Number) else Fraction(0)


def _lacking(part: Part | None) -> bool:
    """Whether the first part of a sum was not said."""
    return part is None or (isinstance(part, Sum) and _lacking(part.left))


def _filled(part: Part | None, one: Length | Number) -> Part | None:
    if isinstance(part, Sum):
        return replace(part, left=_filled(part.left, one), text="")
    return one if part is None else part
