"""Sums in what was said or typed: "12'6 3/8 + 3'4 1/2", "a third of eight foot one", "take three eighths off".

A sum is a run of lengths, numbers, brackets and operations. In signs × and ÷ go before + and −; in words it is worked
as spoken, left to right, but "two times three and a half inches" and "half of" hold together. Where the two orders
differ the sum says which was taken and carries the other.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from intents.reading import Reading
from intents.sum_orders import folded
from intents.tokens import Token
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, leaves

AGAIN = "again"  # what was done before is done once more; plus when nothing was
# Operations as words, the longest first where one begins another; those in SIGNS are typed signs.
OPERATIONS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("plus", "another"), PLUS),
    (("and", "another"), AGAIN),
    (("and", "knock", "off"), MINUS),
    (("knock", "off"), MINUS),
    (("and", "take", "off"), MINUS),
    (("take", "off"), MINUS),
    (("and", "then", "add"), PLUS),
    (("added", "to"), PLUS),
    (("together", "with"), PLUS),
    (("plus",), PLUS),
    (("+",), PLUS),
    (("add",), PLUS),
    (("and", "add"), PLUS),
    (("minus", "another"), MINUS),
    (("take", "away"), MINUS),
    (("minus",), MINUS),
    (("less",), MINUS),
    (("-",), MINUS),
    (("subtract",), MINUS),
    (("times",), TIMES),
    (("×",), TIMES),
    (("multiplied", "by"), TIMES),
    (("divided", "by"), DIVIDED),
    (("÷",), DIVIDED),
    (("/",), DIVIDED),
    (("split", "by"), DIVIDED),
    (("over",), DIVIDED),
)
SIGNS = frozenset("+-×÷/")
LEADING = {PLUS, TIMES, DIVIDED, AGAIN}  # "minus 4" at the start is a number below zero
TAKE = frozenset(("take", "subtract", "deduct", "knock"))
DIVIDE = frozenset(("divide", "divvy", "split"))
OFF = (("away", "from"), ("off", "of"), ("out", "of"), ("off",), ("from",))
TOGETHER = (
    ("together",), ("added", "together"), ("combined",), ("altogether",), ("in", "total"), ("all", "together"),
    ("put", "together"), ("added", "up"), ("in", "all"),
)  # fmt: skip
SEVERAL = frozenset("pieces pcs boards lengths lots sticks strips".split())
FACTORS = {"twice": 2, "double": 2, "triple": 3}
HALVED = (("halved",), ("in", "half"), ("divided", "in", "half"), ("cut", "in", "half"), ("split", "in", "half"))
SKIPPED = frozenset("the another and ok then so now that it to".split())  # before a part, or a running total
LEAST_SURE = 0.3
MOST_OPERATIONS = 60
MOST_DEPTH = 12
CLAUSE = 8  # words
_TELLS = (
    {words[0] for words, _ in OPERATIONS} | TAKE | DIVIDE | {words[0] for words in (*TOGETHER, *HALVED)} | set(FACTORS)
    | {"of", "multiply", "difference", "another"}
)  # fmt: skip  # without one of these nothing is a sum


@dataclass(frozen=True, slots=True)
class Found:
    """A part and where it ends."""

    part: Part
    end: int


def sums(tokens: list[Token], chart: list[list[Reading]]) -> Iterator[Reading]:
    """Readings of kind sum, none inside another.

    Feet and inches with a free dash between may be a difference: both ways are kept.
    """
    if not any(token.text in _TELLS for token in tokens):
        return
    joining, splitting = (_Reader(tokens, chart, free) for free in (False, True))
    at = 0
    while at < len(tokens):
        split = splitting.sum_at(at)
        if split is None or not isinstance(split.part, Sum) or not _worth(split, at, tokens):
            at += 1
            continue
        found = joining.sum_at(at)
        also: tuple[Sum, ...] = ()
        value: Sum = split.part
        if found is not None and found.part != split.part:
            joined = found.part if isinstance(found.part, Sum) else replace(split.part, operation=PLUS)
            value, also = (
                value.said(str(value)),
                (joined.said(str(joined) if joined is found.part else str(found.part.text)),),
            )
        start = at + (tokens[at].text in ("a", "an"))  # a phrase is not looked for at an article
        yield Reading("sum", start, split.end, value, 1.0, also)  # type: ignore[arg-type]
        at = split.end


def _worth(found: Found, start: int, tokens: list[Token]) -> bool:
    """Bare numbers with × between are sizes, unless nothing else was said."""
    assert isinstance(found.part, Sum)
    parts = leaves(found.part)
    sizes = found.part.operation == TIMES and all(isinstance(part, Number) and part.value >= 1 for part in parts)
    said = any(token.text == "times" for token in tokens[start : found.end])
    return not sizes or said or len(parts) < 2 or (start == 0 and found.end == len(tokens))


_BY_FIRST: dict[str, list[tuple[tuple[str, ...], str]]] = {}
for _words, _operation in OPERATIONS:
    _BY_FIRST.setdefault(_words[0], []).append((_words, _operation))


class _Reader:
    """Reads sums; `free` takes a dash with spaces round it as minus, where otherwise it may join feet and inches."""

    def __init__(self, tokens: list[Token], chart: list[list[Reading]], free: bool) -> None:
        self.tokens, self.chart, self.free = tokens, chart, free
        self.words = [token.text for token in tokens] + [""] * 4
        self.depth = 0

    def sum_at(self, i: int) -> Found | None:
        """The sum that starts at token i, if one does."""
        return self._verb(i) or self._leading(i) or self._series(i) or self._chain(i)

    # ── shapes ──

    def _verb(self, i: int) -> Found | None:
        """add A to B, take A off B, divide A by B, the difference between A and B."""
        word = self.words[i]
        if word in TAKE:
            return self._take(i + 1)
        if word == "add":
            return self._add(i + 1)
        if word in DIVIDE or word == "multiply":
            first = self._chain(i + 1)
            if first and self.words[first.end] == "by" and (second := self._part(first.end + 1)):
                return Found(Sum(DIVIDED if word in DIVIDE else TIMES, first.part, second.part), second.end)
        if word == "difference" and self.words[i + 1] in ("between", "of"):
            return self._difference(i + 2)
        if word in ("sum", "total") and self.words[i + 1] == "of":
            return self._all_of(i + 2)
        return None

    def _take(self, i: int) -> Found | None:
        first = self._part(i)
        joint = self._one_of(OFF, first.end) if first else 0
        if first is None or not joint:
            return None
        second = self._chain(self._past(joint))
        if second:
            return Found(Sum(MINUS, second.part, first.part), second.end)
        return Found(Sum(MINUS, None, first.part), joint)

    def _add(self, i: int) -> Found | None:
        i = self._past(i + (self.words[i] in ("up", "together")))
        first = self._part(i)
        if first is None:
            return None
        if self.words[first.end] in ("to", "onto", "on"):
            start = self._past(first.end + 1)
            second = self._chain(start)
            end = second.end if second else first.end
            return Found(Sum(PLUS, second.part if second else None, first.part), end)
        return self._all_of(i) or Found(Sum(PLUS, None, first.part), first.end)

    def _all_of(self, i: int) -> Found | None:
        """A and B; A, B and C."""
        first = self._part(self._past(i))
        if first is None:
            return None
        total, end = first.part, first.end
        while self.words[end] in ("and", ",", "&") and (after := self._part(self._past(end + 1))):
            total, end = Sum(PLUS, total, after.part), after.end
        return Found(total, end) if isinstance(total, Sum) else None

    def _difference(self, i: int) -> Found | None:
        first = self._part(self._past(i))
        if first is None or self.words[first.end] not in ("and", "to"):
            return None
        second = self._part(self._past(first.end + 1))
        if second is None:
            return None
        less = _size(first.part) < _size(second.part)
        parts = (second.part, first.part) if less else (first.part, second.part)
        return Found(Sum(MINUS, *parts), second.end)

    def _leading(self, i: int) -> Found | None:
        """plus another 4 3/8: more of a running total; its first part was not said here."""
        if any(word not in SKIPPED for word in self.words[:i]):
            return None
        operation = self._operation(i)
        if self.words[i] == "another":
            more = self._part(i + 1)
            return Found(Sum(PLUS, None, more.part), more.end) if more and more.end == len(self.tokens) else None
        if self.words[i] in ("minus", "-"):  # on its own in a line it takes off what went before
            size = self._below_zero(i)
            return Found(Sum(MINUS, None, size.part), size.end) if size and size.end == len(self.tokens) else None
        if operation is None or (operation[0] not in LEADING and self.words[i] not in ("less", "take", "knock")):
            return None
        after = self._part(self._past(operation[1]))
        if after is None:
            return None
        name = PLUS if operation[0] == AGAIN else operation[0]
        return self._more(Found(Sum(name, None, after.part), after.end))

    def _series(self, i: int) -> Found | None:
        """A and B together."""
        found = self._all_of(i) if self.chart[i] else None
        if found is None:
            return None
        end = self._one_of(TOGETHER, found.end)
        alone = found.end == len(self.tokens) and not any(word not in SKIPPED for word in self.words[:i])
        return Found(found.part, end or found.end) if end or alone else None

    # ── a chain of operations ──

    def _chain(self, i: int) -> Found | None:
        """Parts with operations between, folded in their order; the last part may be missing."""
        first = self._part(i)
        return self._more(first) if first else None

    def _more(self, first: Found) -> Found:
        parts: list[Part | None] = [first.part]
        operations: list[str] = []
        signs = True
        end = first.end
        while len(operations) < MOST_OPERATIONS:
            halved = self._one_of(HALVED, end)
            if halved:
                parts, operations, end = [*parts, Number(Fraction(2), "none")], [*operations, DIVIDED], halved
                signs = False
                continue
            operation = self._operation(end) or self._after_clause(end)
            if operation is None:
                break
            after = self._part(self._past(operation[1])) or self._below_zero(end)
            if after is None and (operation[1] < len(self.tokens) or self.words[end] in SIGNS - {"+"}):
                break
            signs = signs and self.words[end] in SIGNS
            again = operations[-1] if operations else PLUS
            operations.append(again if operation[0] == AGAIN else operation[0])
            parts.append(after.part if after else None)
            end = after.end if after else operation[1]
            if after is None:
                break
        return Found(folded(parts, operations, signs), end)

    def _operation(self, i: int) -> tuple[str, int] | None:
        """The operation at i and where it ends."""
        for words, operation in _BY_FIRST.get(self.words[i], ()):
            if tuple(self.words[i : i + len(words)]) == words and self._means_it(i, words[0]):
                return operation, i + len(words)
        return None

    def _after_clause(self, i: int) -> tuple[str, int] | None:
        """The operation after a few words about the part before: "thirteen feet that I measured and knock off"."""
        if self.words[i] not in ("that", "which", "for"):
            return None
        for at in range(i + 1, min(i + CLAUSE, len(self.chart))):
            if self.chart[at] and self.words[at] not in ("one", "a", "an", "for"):
                return None
            operation = self._operation(at)
            if operation is not None:
                return operation
        return None

    def _means_it(self, i: int, word: str) -> bool:
        """A tight hyphen joins feet and inches, a bare slash makes a fraction, "over" is often a place."""
        if word == "-":
            joined = 0 < i < len(self.tokens) - 1 and self.tokens[i - 1].end == self.tokens[i].start
            tight = joined and self.tokens[i].end == self.tokens[i + 1].start
            return not tight or self.words[i - 1] in (")", '"') or self.words[i - 2 : i - 1] == ["/"]
        if word == "/":
            free = 0 < i < len(self.tokens) - 1 and self.tokens[i - 1].end < self.tokens[i].start
            return free or (i > 0 and not self.words[i - 1][-1].isdigit())
        return word != "over"

    # ── parts ──

    def _part(self, i: int) -> Found | None:
        """A length, a number, a bracket, or half of one of these."""
        if i >= len(self.tokens) or self.depth > MOST_DEPTH:
            return None
        self.depth += 1
        found = self._bracket(i) or self._share(i) or self._several(i) or self._value(i)
        self.depth -= 1
        return found

    def _bracket(self, i: int) -> Found | None:
        if self.words[i] not in ("(", "["):
            return None
        inside = self._chain(i + 1)
        if inside is None or self.words[inside.end] not in (")", "]"):
            return None
        return Found(inside.part, inside.end + 1)

    def _share(self, i: int) -> Found | None:
        """half of A, a third of A, three quarters of A, twice A."""
        if self.words[i] in FACTORS:
            whole = self._part(self._past(i + 1))
            return (
                Found(Sum(TIMES, Number(Fraction(FACTORS[self.words[i]]), "none"), whole.part), whole.end)
                if whole
                else None
            )
        for reading in self.chart[i]:
            share = reading.value.value if isinstance(reading.value, Number) else Fraction(1)
            joint = self.words[reading.end] == "of" if reading.end < len(self.tokens) else False
            if reading.kind != "number" or not 0 < share < 1 or not joint:
                continue
            whole = self._part(self._past(reading.end + 1))
            if whole is None or self._longest(i) >= whole.end:
                continue
            if share.numerator == 1:
                return Found(Sum(DIVIDED, whole.part, Number(Fraction(share.denominator), "none")), whole.end)
            return Found(Sum(TIMES, Number(share, "ratio"), whole.part), whole.end)
        return None

    def _several(self, i: int) -> Found | None:
        """3 pieces of A, four boards at A: so many times A."""
        for reading in self.chart[i]:
            at = reading.end
            count = reading.kind == "number" and isinstance(reading.value, Number) and reading.value.value >= 1
            if count and self.words[at] in SEVERAL and self.words[at + 1] in ("of", "at", "@"):
                each = self._value(at + 2)
                if each is not None and isinstance(reading.value, Number):
                    return Found(Sum(TIMES, reading.value.said(self.words[i]), each.part), each.end)
        return None

    def _longest(self, i: int) -> int:
        """Where the longest length at i ends."""
        return max((r.end for r in self.chart[i] if r.kind == "length" and r.sure >= LEAST_SURE), default=0)

    def _value(self, i: int) -> Found | None:
        """The number or length at i: the longest that an operation or nothing follows, else the longest."""
        readings = [r for r in self.chart[i] if r.kind in ("length", "number") and r.sure >= LEAST_SURE]
        if self.free:
            readings = [r for r in readings if not self._dashed(r)]
        if not readings:
            return None
        readings.sort(key=lambda r: (-r.end, r.kind != "length", -r.sure))
        best = next((r for r in readings if self._ends_well(r.end) and r.sure >= 0.5), None) or readings[0]
        said = " ".join(self.words[best.start : best.end])
        value = best.value
        assert isinstance(value, Length | Number)
        return Found(value.said(_tidy(said)), best.end)

    def _below_zero(self, i: int) -> Found | None:
        """What a minus sign was read into: "2400 mm minus 145 mm" holds the reading -145 mm."""
        for reading in self.chart[i] if self.words[i] in ("minus", "-") else ():
            if (
                reading.kind in ("length", "number")
                and isinstance(reading.value, Length | Number)
                and reading.value.value < 0
            ):
                size = replace(reading.value, value=-reading.value.value)
                return Found(size.said(_tidy(" ".join(self.words[i + 1 : reading.end]))), reading.end)
        return None

    def _dashed(self, reading: Reading) -> bool:
        """Whether a dash with spaces round it stands inside."""
        return any(self.words[at] == "-" and self._means_it(at, "-") for at in range(reading.start + 1, reading.end))

    def _ends_well(self, end: int) -> bool:
        return end >= len(self.tokens) or self._operation(end) is not None or self.words[end] in (")", "]", "?")

    # ── words ──

    def _past(self, i: int) -> int:
        while self.words[i] in SKIPPED and not self.chart[i]:
            i += 1
        return i

    def _one_of(self, choices: tuple[tuple[str, ...], ...], i: int) -> int:
        """Where the one of `choices` at i ends, or 0."""
        ends = [i + len(words) for words in choices if tuple(self.words[i : i + len(words)]) == words]
        return max(ends, default=0)


def _size(part: Part) -> Fraction:
    """A plain part in inches, to tell the larger of two; sums count as nothing."""
    if isinstance(part, Sum):
        return Fraction(0)
    return part.to("in").value if isinstance(part, Length) else part.value


def _tidy(said: str) -> str:
    """Tokens as a person writes them: 3 / 8 is 3/8."""
    return said.replace(" / ", "/").replace(" '", "'").replace(' "', '"')
