"""The parts of a sum: lengths, numbers, brackets, shares of them; and the operations that join them."""

from __future__ import annotations

from abc import ABC, abstractmethod
from dataclasses import dataclass, replace
from fractions import Fraction

from intents.lengths import METRES
from intents.reading import Reading
from intents.stated_units import MILLIMETRES
from intents.sum_words import (
    BIDS,
    BY_FIRST,
    DOING,
    EACH,
    FACTORS,
    LAID,
    LEAST_SURE,
    MOST_DEPTH,
    OVER,
    PARTED,
    PIECES,
    PRONOUNS,
    SEVERAL,
    SKIPPED,
    SO_FAR,
    STOPS,
    TOTALS,
    WHOLE,
)
from intents.tokens import Token
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, TIMES, Part, Sum


@dataclass(frozen=True, slots=True)
class Found:
    """A part and where it ends; None is what was said before."""

    part: Part | None
    end: int


LED_BY = frozenset("a an the my another".split())
ANSWERED_IN = MILLIMETRES | METRES | frozenset(("cm", "centimetres", "centimeters", "metric"))
ARTICLES = frozenset("a an the my that this".split())
OTHERS = frozenset("weight money percent angle temperature volume".split())


class Parts(ABC):
    """Reads the parts; `free` takes a dash with spaces round it as minus, where otherwise it may join feet and inches."""

    def __init__(self, tokens: list[Token], chart: list[list[Reading]], free: bool) -> None:
        self.tokens, self.chart, self.free = tokens, chart, free
        self.words = [DOING.get(token.text, token.text) for token in tokens] + [""] * 4
        self.commas = "," in self.words
        self.depth = 0
        self.counts: dict[int, Found | None] = {}  # so many of a length, as each is found
        self.parts: dict[tuple[int, bool], Found | None] = {}  # asked for again by each shape of sum
        self.values: dict[tuple[int, bool], Found | None] = {}

    @abstractmethod
    def chain(self, i: int) -> Found | None:
        """Parts with operations between, from token i."""

    def operation(self, i: int) -> tuple[str, int] | None:
        """The operation at i and where it ends."""
        for words, operation in BY_FIRST.get(self.words[i], ()):
            if tuple(self.words[i : i + len(words)]) == words and self._means_it(i, words[0]):
                return operation, i + len(words)
        return None

    def _means_it(self, i: int, word: str) -> bool:
        """A tight hyphen joins feet and inches, a bare slash makes a fraction, "over" is often a place."""
        if word == "-":
            joined = 0 < i < len(self.tokens) - 1 and self.tokens[i - 1].end == self.tokens[i].start
            tight = joined and self.tokens[i].end == self.tokens[i + 1].start
            return not tight or self.words[i - 1] in (")", '"') or self.words[i - 2 : i - 1] == ["/"]
        if word == "/":
            free = 0 < i < len(self.tokens) - 1 and self.tokens[i - 1].end < self.tokens[i].start
            return free or i == 0 or not self.words[i - 1][-1].isdigit()
        return word != "over"

    # ── parts ──

    def part(self, i: int, listed: bool = False) -> Found | None:
        """A length, a number, a bracket, or half of one of these; in a list a comma is none of feet and inches."""
        listed = listed and self.commas
        if (i, listed) in self.parts:
            return self.parts[i, listed]
        if i >= len(self.tokens) or self.depth > MOST_DEPTH:
            return None
        self.depth += 1
        found = self._bracket(i) or self._share(i) or self._several(i) or self.value(i, listed)
        if found is None and self.words[i] in LED_BY and self._operated(i) and i + 1 < len(self.chart) and self.chart[i + 1]:
            found = self.part(i + 1, listed)  # plus a 1/4 gap
        self.depth -= 1
        if not self.depth:  # within another part the depth may have cut it short
            self.parts[i, listed] = found
        return found

    def _operated(self, i: int) -> bool:
        """Whether a plus or a less stands right before a place."""
        return i > 0 and self.words[i - 1] in ("plus", "less", "minus", "+")

    def _bracket(self, i: int) -> Found | None:
        if self.words[i] not in ("(", "["):
            return None
        inside = self.chain(i + 1)
        if inside is None or self.words[inside.end] not in (")", "]"):
            return None
        return Found(inside.part, inside.end + 1)

    def _share(self, i: int) -> Found | None:
        """half of A, a third of A, three quarters of A, twice A; of it, what went before."""
        if self.words[i] in FACTORS:
            whole = self.pronoun(i + 1) or self.part(self.past(i + 1))
            factor = Number(Fraction(FACTORS[self.words[i]]), "none")
            return Found(_times(factor, whole.part), whole.end) if whole else None
        for reading in self.chart[i]:
            after = self.words[reading.end]
            if reading.kind != "number" or not isinstance(reading.value, Number) or (after != "of" and after not in ARTICLES):
                continue
            share = reading.value.value
            if not 0 < share.numerator < share.denominator:
                continue
            start = reading.end + (after == "of")
            whole = self.pronoun(start) or self.part(self.past(start)) or self.part(start + (self.words[start] in ARTICLES))
            if whole is None or self._longest(i) >= whole.end:
                continue
            if share.numerator == 1:
                return Found(Sum(DIVIDED, whole.part, Number(Fraction(share.denominator), "none")), whole.end)
            return Found(_times(Number(share, "ratio"), whole.part), whole.end)
        return None

    def numbers_after(self, i: int) -> bool:
        """Whether any quantity begins at token i or later."""
        return any(r.sure >= LEAST_SURE and r.kind != "ratio" for row in self.chart[i:] for r in row)

    def numbers_after_one(self, i: int) -> bool:
        """Whether a quantity follows the word at i: "seven times | six"."""
        return i + 1 < len(self.chart) and bool(self.chart[i + 1])

    def pronoun(self, i: int) -> Found | None:
        """it, that: what was said or worked before, where no part follows."""
        if self.words[i] not in PRONOUNS or self.part(self.past(i)):
            return None
        return Found(None, i + 1)

    def _several(self, i: int) -> Found | None:
        """3 pieces of A, four boards at A: so many times A."""
        for reading in self.chart[i]:
            at = reading.end
            named = self.words[at] in SEVERAL
            if reading.kind != "number" or self.words[at + named] not in ("of", "at", "@"):
                continue
            if not isinstance(reading.value, Number) or reading.value.value < 1:
                continue
            each = self.value(at + named + 1)
            told = each is not None and self.words[each.end] in EACH
            if each is None:
                continue
            summed = self.words[0] in ("sum", "total", "add") or self.one_of(LAID, self.past_stop(each.end)) > 0
            if not (named or summed or (told and not TOTALS.isdisjoint(self.words[each.end :]))):
                continue
            assert isinstance(reading.value, Number)
            said = " ".join(self.words[i : reading.end])
            laid = self.one_of(LAID, self.past_stop(each.end))
            return Found(Sum(TIMES, reading.value.said(said), each.part), laid or each.end + told)
        return None

    def _longest(self, i: int) -> int:
        """Where the longest length at i ends."""
        return max((r.end for r in self.chart[i] if r.kind == "length" and r.sure >= LEAST_SURE), default=0)

    def value(self, i: int, listed: bool = False) -> Found | None:
        """The number or length at i: the longest that an operation or nothing follows, else the longest."""
        if i >= len(self.chart) or not self.chart[i]:
            return None
        listed = listed and self.commas
        if (i, listed) not in self.values:
            self.values[i, listed] = self._value(i, listed)
        return self.values[i, listed]

    def _value(self, i: int, listed: bool) -> Found | None:
        row = self.chart[i]
        readings = [r for r in row if r.kind in ("length", "number") and r.sure >= LEAST_SURE]
        if listed:
            readings = [r for r in readings if "," not in self.words[r.start : r.end]]
        if self.free:
            readings = [r for r in readings if not self._dashed(r)]
        readings = [r for r in readings if not self._into(r)] or readings
        if not readings or self._of_another_kind(i, readings):
            return None
        readings.sort(key=lambda r: (-r.end, r.kind != "length", -r.sure))
        best = next((r for r in readings if self._ends_well(r.end) and r.sure >= 0.5), None) or readings[0]
        said = " ".join(self.words[best.start : best.end])
        value = best.value
        assert isinstance(value, Length | Number)
        return Found(value.said(_tidy(said)), best.end)

    def _of_another_kind(self, i: int, readings: list[Reading]) -> bool:
        """Whether what starts here is surely pounds or degrees, so that its number is no part of a sum of lengths."""
        others = [r.end for r in self.chart[i] if r.kind in OTHERS and r.sure >= 0.9]
        if not others:
            return False
        return max(others) > max((r.end for r in readings if r.kind in ("length", "number")), default=len(self.words))

    def below_zero(self, i: int) -> Found | None:
        """What a minus sign was read into: "2400 mm minus 145 mm" holds the reading -145 mm."""
        rows = self.chart[i] if self.words[i] in ("minus", "-") else []
        if self._of_another_kind(i, rows):
            return None
        for reading in sorted(rows, key=lambda row: -row.end):
            if reading.kind in ("length", "number") and isinstance(reading.value, Length | Number) and reading.value.value < 0:
                size = replace(reading.value, value=-reading.value.value)
                return Found(size.said(_tidy(" ".join(self.words[i + 1 : reading.end]))), reading.end)
        return None

    def _dashed(self, reading: Reading) -> bool:
        """Whether a dash with spaces round it stands inside."""
        if "-" not in self.words[reading.start + 1 : reading.end]:
            return False
        return any(self.words[at] == "-" and self._means_it(at, "-") for at in range(reading.start + 1, reading.end))

    def _into(self, reading: Reading) -> bool:
        """Whether an "in" that was read as inches leads to the unit of the answer: divided by 7 | in mm; not half of 36 in."""
        if self.words[reading.start - 1 : reading.start] == ["of"]:
            return False
        return self.words[reading.end - 1] == "in" and self.words[reading.end] in ANSWERED_IN

    def _ends_well(self, end: int) -> bool:
        return end >= len(self.tokens) or self.operation(end) is not None or self.words[end] in (")", "]", "?")

    # ── done over ──

    def done_over(self, i: int) -> tuple[str, Number, int] | None:
        """What is done to all before it: doubled, in half, four times, then halve it. The operation, by what, and its end."""
        at = self.past_stop(i)
        first = self.words[at]
        for words, operation, factor in OVER:
            if words[0] == first and tuple(self.words[at : at + len(words)]) == words:
                end = at + len(words)
                return operation, Number(Fraction(factor), "none"), end + (words[-1] in BIDS and self.words[end] in WHOLE)
        then = at + (self.words[at] == "and")
        then += self.words[then] == "then"
        bid = BIDS.get(self.words[then]) if then > i else None  # "and halve it", ", halve it"
        whole = self.one_of(SO_FAR, then + 1)
        if bid is not None and whole:
            return bid[0], Number(Fraction(bid[1]), "none"), whole
        of = self.one_of(SO_FAR, then + 2) if self.words[then : then + 2] == ["half", "of"] else 0
        if then > i and of:
            return DIVIDED, Number(Fraction(2), "none"), of  # and half of what's left
        if then > i and self.words[then] in PARTED:
            return self._parted(whole or then + 1)
        for reading in self.chart[at] if at < len(self.chart) else ():
            number, end = reading.value, reading.end
            counts = reading.kind == "number" and isinstance(number, Number) and number.value.denominator == 1
            if counts and self.words[end] == "times" and (self.words[end + 1] in STOPS or self.operation(end + 1)):
                return TIMES, Number(number.value, "none", str(number.value)), end + 1  # type: ignore[union-attr]
        return None

    def done_to(self, every: Found) -> Found:
        """All of a list with what is then done to it: add 18, 22 and 11 | then divide by 3."""
        done = self.done_over(every.end)
        return Found(Sum(done[0], every.part, done[1]), done[2]) if done else every

    def _parted(self, at: int) -> tuple[str, Number, int] | None:
        """Into so many: then split it | in three."""
        if self.words[at] not in ("in", "into", "by"):
            return None
        for reading in self.chart[at + 1] if at + 1 < len(self.chart) else ():
            number, end = reading.value, reading.end
            if reading.kind != "number" or not isinstance(number, Number) or number.value.denominator > 1:
                continue
            if self.words[end] in STOPS or self.words[end] in PIECES:
                return DIVIDED, Number(number.value, "none", str(number.value)), end + (self.words[end] in PIECES)
        return None

    def past_stop(self, i: int) -> int:
        """Past a comma or a full stop."""
        return i + (self.words[i] in (",", "."))

    # ── words ──

    def past(self, i: int) -> int:
        while self.words[i] in SKIPPED and not self.chart[i]:
            i += 1
        return i

    def one_of(self, choices: tuple[tuple[str, ...], ...], i: int) -> int:
        """Where the one of `choices` at i ends, or 0."""
        first, end = self.words[i], 0
        for words in choices:
            if words[0] == first and i + len(words) > end and tuple(self.words[i : i + len(words)]) == words:
                end = i + len(words)
        return end


def _times(factor: Number, whole: Part | None) -> Sum:
    """A factor of a part; what is not said comes first, where a running total goes."""
    return Sum(TIMES, factor, whole) if whole is not None else Sum(TIMES, None, factor)


def _tidy(said: str) -> str:
    """Tokens as a person writes them: 3 / 8 is 3/8, 11 - 3/8 is 11-3/8."""
    return said.replace(" / ", "/").replace(" - ", "-").replace(" '", "'").replace(' "', '"')
