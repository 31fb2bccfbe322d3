"""Sums in what was said or typed: "12'6 3/8 + 3'4 1/2", "a third of eight foot one", "take three eighths off".

A sum is a run of lengths, numbers, brackets and operations. In signs × and ÷ go before + and −; in words it is worked
as spoken, left to right, but "two times three and a half inches" and "half of" hold together. Where the two orders
differ the sum says which was taken and carries the other.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from intents.reading import Reading
from intents.sum_apart import apart
from intents.sum_counts import both_ends, counted, counts_things, thing, times_over
from intents.sum_named import named
from intents.sum_orders import folded
from intents.sum_parts import Found, Parts
from intents.sum_places import BETWEEN as OF_TWO
from intents.sum_places import between_two, done_after, lost_in, middle, placed_by_another, shared_over
from intents.sum_remarks import remainder, summed_up, whole_line, with_remarks
from intents.sum_steps import walked
from intents.sum_taken import taken_together
from intents.sum_two import told_of_two
from intents.sum_words import (
    AFTER_COMMA,
    AGAIN,
    ASKED,
    BETWEEN,
    CLAUSE,
    COME_TO,
    COMPARED,
    CUT,
    DIVIDE,
    DONE,
    FACTORS,
    LEADING,
    MOST_BETWEEN,
    MOST_NAMED,
    MOST_NAMING,
    MOST_OPERATIONS,
    MULTIPLIED,
    NAMED,
    OFF,
    ONLY_ASKED,
    PLACES,
    PLAINLY,
    PRONOUNS,
    SIDES,
    SIGNS,
    SKIPPED,
    TAKE,
    TAKEN,
    TOGETHER,
    TOGETHER_BEGINS,
    sums_told,
)
from intents.tokens import Token
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, leaves, plain_size


def sums(tokens: list[Token], chart: list[list[Reading]]) -> Iterator[Reading]:
    """Readings of kind sum, none inside another.

    Feet and inches with a free dash between may be a difference: both ways are kept.
    """
    if not sums_told({token.text for token in tokens}):
        return
    joining, splitting = None, _Reader(tokens, chart, True)
    shapes = (named, taken_together, walked, remainder, summed_up, placed_by_another, apart, told_of_two)
    rest = next((read for shape in shapes if (read := shape(splitting)) is not None), None)
    if rest is not None:
        yield rest
        return
    at = 0
    while at < len(tokens):
        split = splitting.sum_at(at)
        if split is None or not isinstance(split.part, Sum) or not _worth(split, at, tokens):
            at = max((r.end for r in chart[at] if r.kind == "number" and split), default=at + 1)  # 11 3/8 x 7 is no 3/8 x 7
            continue
        joining = joining or _Reader(tokens, chart, False)
        found = joining.sum_at(at)
        also: tuple[Sum, ...] = ()
        value: Sum = split.part
        if found is not None and found.part is not None and found.part != split.part:
            joined = found.part if isinstance(found.part, Sum) else replace(split.part, operation=PLUS)
            value, also = (
                value.said(str(value)),
                (joined.said(str(joined) if joined is found.part else str(found.part.text)),),
            )
        start = at + (tokens[at].text in ("a", "an"))  # a phrase is not looked for at an article
        found_here = Reading("sum", start, split.end, value, 1.0, also)  # type: ignore[arg-type]
        yield whole_line(splitting, with_remarks(splitting, found_here))
        at = split.end


def _worth(found: Found, start: int, tokens: list[Token]) -> bool:
    """Bare numbers with × between are sizes, unless nothing else was said."""
    assert isinstance(found.part, Sum)
    words, parts = [token.text for token in tokens], leaves(found.part)
    if lost_in(found.part, words, start) or done_after(words, found.end):
        return False
    sizes = found.part.operation == TIMES and all(isinstance(part, Number) and part.value >= 1 for part in parts)
    said = any(word in MULTIPLIED for word in words[start : found.end])
    each = len(parts) == 2 and isinstance(parts[1], Number) and parts[1].value.denominator > 1 and "/" in parts[1].text
    said = said or (each and any(word in ("of", "each", "apiece") for word in words[start : found.end]))
    around = {*words[:start], *words[found.end :]}
    return not sizes or said or len(parts) < 2 or not around or (around <= ONLY_ASKED and not around.isdisjoint(COME_TO))


_ASKED = SKIPPED | ASKED
STARTS = {*TAKE, *CUT, *DIVIDE, *FACTORS, *OF_TWO, "add", "multiply", "halve", "difference", "sum", "total", "(", "["}


class _Reader(Parts):
    """Reads sums."""

    def __init__(self, tokens: list[Token], chart: list[list[Reading]], free: bool) -> None:
        super().__init__(tokens, chart, free)
        self.led = next(i for i, word in enumerate(self.words) if word not in SKIPPED)  # where all before says nothing
        self.asked = next(i for i, word in enumerate(self.words) if word not in _ASKED)  # where all before only asks
        self.together = max((i for i, word in enumerate(self.words) if word in TOGETHER_BEGINS), default=-1)
        self.compares = not COMPARED.keys().isdisjoint(self.words)

    def sum_at(self, i: int) -> Found | None:
        """The sum that starts at token i, if one does: with a number, with one of a few words, or where the line does."""
        if not self.chart[i] and self.words[i] not in STARTS and i > self.led:
            return None
        bid = self._verb(i) or self._leading(i) or between_two(self, i) or middle(self, i)
        return bid or self._series(i) or self._compared(i) or self._off(i) or self.chain(i)

    # ── shapes ──

    def _verb(self, i: int) -> Found | None:
        """add A to B, take A off B, divide A by B, the difference between A and B."""
        word = self.words[i]
        if word in TAKE or word in CUT:
            return self._take(i + 1)
        if word == "add":
            return self._add(i + 1)
        if word in DIVIDE or word == "multiply":
            first = self.chain(i + 1) or self.pronoun(i + 1)
            if first and word in DIVIDE and self.words[first.end - 1 : first.end + 1] == ["in", "half"]:
                return Found(Sum(DIVIDED, first.part, Number(Fraction(2), "none")), first.end + 1)  # 19 foot five in | half
            if first and self.words[first.end] == "by" and (second := self.part(first.end + 1)):
                return self._more(Found(Sum(DIVIDED if word in DIVIDE else TIMES, first.part, second.part), second.end))
        if word == "halve":
            whole = self.pronoun(i + 1) or self.part(self.past(i + 1))
            return Found(Sum(DIVIDED, whole.part, Number(Fraction(2), "none")), whole.end) if whole else None
        if word == "difference" and self.words[i + 1] in ("between", "of"):
            return between_two(self, i) or self._difference(i + 2)
        if word in ("sum", "total") and self.words[i + 1] in ("of", ":"):
            return self._all_of(i + 2)
        return None

    def _take(self, i: int) -> Found | None:
        first = counted(self, i) or self.part(i)
        twice = both_ends(self, first) if first else None
        if twice is not None and twice != first:  # half an inch off each end of 47
            whole = self.chain(self._named(twice.end + 1)) if self.words[twice.end] == "of" else None
            return Found(Sum(MINUS, whole.part if whole else None, twice.part), whole.end if whole else twice.end)
        joint = self.one_of(OFF, first.end) if first else 0
        if first is None or not joint:  # take half of 33 3/8, then add 2
            return self._more(first) if first and self.words[i] == "half" and self._then_done(first.end) else None
        second = self.part(self._named(joint))
        if second:
            return self._more(Found(Sum(MINUS, second.part, first.part), second.end))
        return Found(Sum(MINUS, None, first.part), joint + (self.words[joint] in PRONOUNS))

    def _named(self, i: int) -> int:
        """Past the name of what a length is of: "off a board that is 14 feet"."""
        while self.words[i] in NAMED and not self.chart[i]:
            i += 1
        return self.past(i)

    def _add(self, i: int) -> Found | None:
        i = self.past(i + (self.words[i] in ("up", "together")))
        first = self.part(i, listed=True) if "," in self.words[i:] else self.part(i)
        if first is None:
            return None
        several = both_ends(self, counted(self, i) or times_over(self, first) or first)
        if several != first and self.words[several.end] not in ("to", "onto"):
            return Found(Sum(PLUS, None, several.part), several.end)
        if self.words[(first := several).end] in ("to", "onto", "on"):
            start = self.past(first.end + 1)
            second = self.chain(start)
            end = second.end if second else first.end
            return Found(Sum(PLUS, second.part if second else None, first.part), end)
        every = self._all_of(i) or self._all_of(i, listed=True)
        return self.done_to(every) if every else Found(Sum(PLUS, None, first.part), first.end)

    def _all_of(self, i: int, listed: bool = False) -> Found | None:
        """A and B; A, B and C."""
        first = self.part(self.past(i), listed)
        if first is None:
            return None
        total, end = first.part, first.end
        while self.words[end] in ("and", ",", "&") and (after := self.part(self.past(end + 1))):
            total, end = Sum(PLUS, total, after.part), after.end
        return Found(total, end) if isinstance(total, Sum) else None

    def _difference(self, i: int) -> Found | None:
        first = self.part(self.past(i))
        if first is None or self.words[first.end] not in ("and", "to"):
            return None
        second = self.part(self.past(first.end + 1))
        if second is None:
            return None
        less = plain_size(first.part) < plain_size(second.part)
        parts = (second.part, first.part) if less else (first.part, second.part)
        return Found(Sum(MINUS, *parts), second.end)

    def _leading(self, i: int) -> Found | None:
        """plus another 4 3/8: more of a running total; its first part was not said here."""
        if i > self.led:
            return None
        operation = self.operation(i)
        if self.words[i] == "another":
            return self._another(i + 1)
        if self.words[i] in ("minus", "-"):  # on its own in a line it takes off what went before
            size = times_over(self, self._below(i))
            alone = size is not None and not self.numbers_after(size.end) and self.words[size.end] != "times"
            return Found(Sum(MINUS, None, size.part), size.end) if size and alone else None
        if self.words[i : i + 2] == ["and", "another"]:
            return self._another(i + 2)
        if operation is None or (operation[0] not in LEADING and self.words[i] not in ("less", "take", "knock")):
            return None
        after = times_over(self, self._stepped(operation))
        if after is None or self.words[after.end] == "times":  # minus 3 times: of what went before
            return None
        name = PLUS if operation[0] == AGAIN else operation[0]
        return self._more(Found(Sum(name, None, after.part), after.end))

    def _another(self, i: int) -> Found | None:
        """Another 3 5/8 (off that): the only quantity of its line."""
        more = self.part(i)
        if more is None or self.numbers_after(more.end):
            return None
        off = self.words[more.end] == "off"
        return Found(Sum(MINUS if off else PLUS, None, more.part), self._off_it(more.end))

    def _series(self, i: int) -> Found | None:
        """A and B together."""
        if i > self.led and i > self.together:
            return None  # not alone in its line, and nothing tells that they are together
        several = counted(self, i)
        if several is not None and (laid := self.one_of(TOGETHER, self.past_stop(several.end))):
            return self._more(Found(several.part, laid))
        found = (self._all_of(i) or self._all_of(i, listed=True)) if self.chart[i] else None
        if found is None:
            return None
        end = self.one_of(TOGETHER, self.past_stop(found.end))
        alone = found.end == len(self.tokens) and i <= self.led
        return Found(found.part, end or found.end) if end or alone else None

    # ── a chain of operations ──

    def chain(self, i: int) -> Found | None:
        """Parts with operations between, folded in their order; the last part may be missing."""
        several = counted(self, i)
        if several and (self.operation(several.end) or self._then_done(several.end)):
            return self._more(several)
        first = self.part(i)
        return self._more(first) if first else None

    def _more(self, first: Found) -> Found:
        parts: list[Part | None] = [first.part]
        operations: list[str] = []
        signs = True
        end = first.end
        while len(operations) < MOST_OPERATIONS:
            done = self.done_over(end)
            if done:
                parts, operations, end = [*parts, done[1]], [*operations, done[0]], done[2]
                signs = False
                continue
            over = shared_over(self, first) if end == first.end else 0
            operation = (DIVIDED, over) if over else self.operation(end) or self._after_clause(end) or self._then_done(end)
            operation = operation or self._after_name(end) or (self._elsewhere(end) if operations else None)
            if operation is None:
                break
            after = self._stepped(operation) or self._below(operation[1] - 1) or self._named_part(operation[1])
            if after is None and (operation[1] < len(self.tokens) or self.words[end] in SIGNS - {"+"}):
                break
            signs = signs and self.words[end] in SIGNS
            again = operations[-1] if operations else PLUS
            operations.append(again if operation[0] == AGAIN else operation[0])
            parts.append(after.part if after else None)
            end = self._off_it(after.end) if after else operation[1]
            if after is None:
                break
        return Found(folded(parts, operations, signs), end)

    def _stepped(self, operation: tuple[str, int]) -> Found | None:
        """The part after an operation; of what is added or taken off, so many of a size, or the same at each end."""
        start = self.past(operation[1])
        if operation[0] not in (PLUS, MINUS, AGAIN):
            return self.part(start)
        found = counted(self, start) or self.part(start)
        return both_ends(self, found) if found and not counts_things(self, found) else None

    def _below(self, i: int) -> Found | None:
        """What a minus sign was read into, as much at each end where that is said."""
        found = self.below_zero(i)
        return both_ends(self, found) if found else None

    def _named_part(self, i: int) -> Found | None:
        """The part after its name: "(minus) a kerf of 1/8"."""
        at = i
        while at - i < MOST_NAMING and at < len(self.chart) and not self.chart[at]:
            if self.words[at] not in NAMED | TAKEN and not thing(self, at):
                break
            at += 1
        found = self.part(at) if at > i and self.words[at - 1] in ("of", "is") else None
        return both_ends(self, found) if found else None

    def _after_clause(self, i: int) -> tuple[str, int] | None:
        """The operation after a few words about the part before: "thirteen feet that I measured and knock off"."""
        if self.words[i] not in ("that", "which", "for"):
            return None
        for at in range(i + 1, min(i + CLAUSE, len(self.chart))):
            if self.chart[at] and self.words[at] not in ("one", "a", "an", "for"):
                return None
            operation = self.operation(at)
            if operation is not None:
                return operation
        return None

    def _elsewhere(self, i: int) -> tuple[str, int] | None:
        """The same done again at another place: "add 3 at the top | and 6 at the bottom"."""
        at = i + (self.words[i] in ("at", "on", "off", "from"))
        at += self.words[at] == "the"
        if at == i or self.words[at] not in PLACES or self.words[at + 1] != "and":
            return None
        return (AGAIN, at + 2) if self.part(at + 2) else None

    def _after_name(self, i: int) -> tuple[str, int] | None:
        """The operation after a word or two that name the part before: "32 inch opening minus", "a 20 foot stick less"."""
        at = i
        while at - i < MOST_NAMED and thing(self, at):
            at += 1
        return self.operation(at) if at > i and self.words[at] in PLAINLY else None

    def _then_done(self, i: int) -> tuple[str, int] | None:
        """The operation after the person's part in it: "43 5/8 and I need to add", "9 foot, take"."""
        i += self.words[i] in SIDES  # 1981 high, add 3
        at = i
        while at - i < MOST_BETWEEN and self.words[at] in BETWEEN and not self.chart[at]:
            at += 1
        word = self.words[at]
        if at == i or (word not in DONE and (word not in AFTER_COMMA or self.words[i:at] not in ([","], ["."]))):
            return None
        if word in CUT or word in TAKE:
            start = at + 1 + (self.words[at + 1] in ("off", "away"))
            what = self.part(start)
            if what is None or (start == at + 1 and word in CUT and not self.one_of(OFF, what.end)):
                return None
            return MINUS, start
        return self.operation(at)

    def _off_it(self, i: int) -> int:
        """Past what only says again what it is done to: "(take 3/8) off it", "(add 2) to that"."""
        off = self.one_of((*OFF, ("to",), ("onto",)), i)
        if not off or self.part(self._named(off)):
            return i
        return off + 1 if self.words[off] in PRONOUNS else off if self.words[off - 1] == "off" else i

    def _off(self, i: int) -> Found | None:
        """7/8 off 15 1/2: a whole line with no verb."""
        first = self.part(i) if self.chart[i] and i <= self.asked else None
        twice = both_ends(self, first) if first else None
        if twice is not None and twice != first and self.words[twice.end] == "of":  # half an inch off each end of 47
            whole = self.part(self._named(twice.end + 1))
            return Found(Sum(MINUS, whole.part, twice.part), whole.end) if whole else None
        joint = self.one_of(OFF, first.end) if first else 0
        second = self.part(self._named(joint)) if joint else None
        if first is None or second is None or any(word not in ("?", "") for word in self.words[second.end :]):
            return None
        sized = any(isinstance(each, Length) or (isinstance(each, Number) and each.value.denominator > 1)
                    for each in (first.part, second.part))  # fmt: skip
        less = sized and 0 < plain_size(first.part) < plain_size(second.part)
        return Found(Sum(MINUS, second.part, first.part), second.end) if less else None

    def _compared(self, i: int) -> Found | None:
        """3/8 less than 4 foot 2, an inch more than 12 feet."""
        first = self.part(i) if self.compares and self.words[i - 1 : i] != ["/"] else None
        if first is None or self.words[first.end] not in COMPARED:
            return None
        if self.words[first.end] == "under" and first.part is not None:  # 3/16 under 27 5/8
            second = self.part(first.end + 1)
            less = second is not None and 0 < 2 * plain_size(first.part) < plain_size(second.part)
            return Found(Sum(MINUS, second.part, first.part), second.end) if second and less else None
        if self.words[first.end + 1] not in ("than", "of") or self.words[i - 1 : i] in (["are"], ["does"]):
            return None
        if self.words[i - 1 : i] == ["is"] and self.words[i - 2 : i - 1] not in (["what"], ["that"]):
            return None  # is 5/8 more than 9/16
        second = self.part(self.past(first.end + 2))
        return Found(Sum(COMPARED[self.words[first.end]], second.part, first.part), second.end) if second else None
