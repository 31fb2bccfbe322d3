"""What a story of lengths says of each of them: the words beside it in its own clause, what is asked, and what counts it.

`sum_told.py` makes a sum of these, by rules; the second reader of sums, which learned from sentences, is held against it.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from itertools import pairwise

from intents.sum_counts import BOTH as EACH
from intents.whole_sums import DIVIDES, NOTHING, OF_LAST, OF_NEXT

STOPS = frozenset((",", ".", ";", ":", "?"))
JOINTS = frozenset("and then plus less minus with but".split())
QUESTIONS = frozenset("what whats how where wheres".split())
ORDERS = frozenset("figure give tell work find calculate need want".split())
ENDS = frozenset(
    "end ends side sides edge edges way face faces leg legs jamb jambs round stile stiles post posts wall walls groove grooves"
    " leaf leaves pier piers".split()
)
ALL_ROUND = (
    ("top", "and", "bottom"), ("left", "and", "right"), ("a", "side"), ("an", "end"), ("all", "round"), ("all", "around"),
    ("all", "the", "way", "round"), ("both", "of", "them"), ("on", "both"), ("of", "each", "one"),
    ("per", "side"), ("per", "end"), ("the", "same", "again"),
)  # fmt: skip
_BOTH_BEGINS = frozenset(("both", "either", *EACH, *(so[0] for so in ALL_ROUND)))  # words that may say both ends
WHICH = frozenset("hinge latch outer outside cut short long far front back hanging closing".split())
AT = frozenset(("at", "of", "@", "o"))
NO_THINGS = frozenset(
    "inches plus less minus this across takes gives makes wants needs gets eats swallows sits stands runs goes adds comes covers"
    " laps hangs starts ends measures reads overhangs wastes times drops".split()
)
_SIDES = frozenset("sides jambs ears cheeks ends both".split())  # 23/32 each
LABELS = frozenset(
    "sheet window number unit house page stall room elevation plan detail drawing opening door question dormer lift day lot wall"
    " bay shed block building".split()
)  # before a small number: which one it is
MOST_LABEL, MOST_PARTS = 31, 12
PARTED = frozenset("equal even same".split())
NOUNS = frozenset("runs laps reads drops stands covers".split())  # right after a number, more of them are things
ORDINALS = frozenset("third fourth fifth sixth eighth".split())  # a third of it, or the third mark
CHECKED = frozenset("measured measure measuring checked check taped".split())
PARTS_NEXT = frozenset("between each either gap gaps off of clearance play clear at all on in round".split())  # an eighth | off
ALL_OF = frozenset("all the those these both".split())
CUTS = frozenset(("cuts", "passes", "kerfs"))
SHARED = frozenset("split divide divided dividing cut shared share sharing whacked knock chop parted sawn broken ripped".split())
# A clause led by these remarks on the job: the boss thinks it comes to 8 foot, because the heater is 22, it was 4 euros.
REMARKS = frozenset("thinks reckons guessed guesses because asking worried everyone".split())
MONEY = frozenset("euros euro dollars dollar bucks pounds quid cents".split())
ECHOES = frozenset("that is thats ie the in a counted meaning so which".split())
GAP_WORDS = frozenset("gap gaps space spaces spacing between apart edges".split())
MOST_THING = 3  # letters of a plural, and less
SHORT = 2  # words between a count and its size: 6 | boards at
CLAUSE_BEFORE = 8  # words in which what is shared out is told


class Line:
    """The words of a sentence by what they stand beside."""

    def __init__(
        self, words: Sequence[str], spans: Sequence[tuple[int, int]], sizes: Sequence[float], may: Sequence[bool],
        idle: frozenset[int] = frozenset(),
    ) -> None:  # fmt: skip
        self.words, self.spans, self.sizes, self.may = list(words), spans, sizes, may
        self.inside = {at for start, end in spans for at in range(start, end)} | idle
        told = (at for at in range(len(words)) if at not in self.inside and not (self._from_like(at) or self._checked(at)))
        self.out = [words[at] for at in told]
        self.said = frozenset(self.out)
        self._sides: dict[int, frozenset[str]] = {}  # each shape of sum asks for these again

    def _checked(self, at: int) -> bool:
        """Whether a twice only says how often it was measured."""
        return self.words[at] == "twice" and not CHECKED.isdisjoint(self.words[max(0, at - SHORT) : at])

    def _from_like(self, at: int) -> bool:
        """Whether a word is of a pair that tells how something was measured: middle to middle, centre to centre."""
        words = self.words
        for other in (at - 2, at - 3, at + 2, at + 3):
            if 0 <= other < len(words) and words[other] == words[at] and "to" in words[min(other, at) : max(other, at)]:
                return True
        return False

    @cached_property
    def left(self) -> list[list[str]]:
        """The words before each quantity, back to the stop or the quantity before."""
        found = []
        for n in range(len(self.spans)):
            words = self.between(n)
            while words and words[-1] in STOPS:
                words = words[:-1]
            last = max((at + 1 for at, word in enumerate(words) if word in STOPS), default=0)
            if not last and n:
                last = next((at + 1 for at, word in enumerate(words[:-1]) if word in JOINTS), 0)
            found.append(words[last:])
        return found

    @cached_property
    def right(self) -> list[list[str]]:
        """The words after each, up to the stop, the joint to the next, or the next."""
        found = []
        for n, (_, end) in enumerate(self.spans):
            last = n + 1 == len(self.spans)
            words = self.words[end : None if last else self.spans[n + 1][0]]
            stop = next((at for at, word in enumerate(words) if word in STOPS), None)
            if stop is None and not last:
                stop = next((at for at, word in enumerate(words) if word in JOINTS), None)
            found.append(words[:stop])
        return found

    def between(self, n: int) -> list[str]:
        """All words between a quantity and the one before."""
        return self.words[self.spans[n - 1][1] if n else 0 : self.spans[n][0]]

    def beside(self, n: int) -> frozenset[str]:
        """The words of a quantity's own, to both sides."""
        if n not in self._sides:
            self._sides[n] = frozenset((*self.left[n], *self.right[n]))
        return self._sides[n]

    def clause(self, n: int) -> tuple[list[str], list[str]]:
        """The words of the clause a quantity stands in, before it and after."""
        start, end = low, high = self.spans[n]
        while low and self.words[low - 1] not in STOPS:
            low -= 1
        while high < len(self.words) and self.words[high] not in STOPS:
            high += 1
        return self.words[low:start], self.words[end:high]

    @cached_property
    def asked(self) -> list[str]:
        """The words that ask: from the last what, how or where on, else what is said after the last quantity."""
        last = self.spans[-1][1]
        marked = max((at for at, word in enumerate(self.words) if word == "?"), default=0)
        words = self.words[: marked + 1] if marked > self.spans[0][1] else self.words
        if marked > self.spans[0][1] and last > marked:  # headroom left? the client is six foot four
            last = max(end for _, end in self.spans if end <= marked)
        asks = [at for at, word in enumerate(words) if word in QUESTIONS and at not in self.inside and not _is_worth(words, at)]
        if asks and words[asks[-1] - 1 : asks[-1]] == ["is"] and (words[asks[-1] + 1 :] or [","])[0] in STOPS:
            start = max((at + 1 for at in range(asks[-1]) if words[at] in STOPS or at in self.inside), default=0)
            return words[start : asks[-1]]  # distance between notches is what
        after = [at for at in asks if at >= last]
        if after:
            return words[after[0] :]
        if asks:
            end = next((at for at in range(asks[-1], len(words)) if words[at] in STOPS or at in self.inside), len(words))
            return words[asks[-1] : end]
        if words[:1] and words[0] in ORDERS:
            stop = next((at for at, word in enumerate(words) if word in STOPS), 0)
            if stop and not self.inside & {*range(stop)}:
                return words[:stop]  # figure me the window leg.
        rest = words[last:]
        stop = next((at for at, word in enumerate(rest) if word in STOPS), 0)
        tail = rest[stop:] if not STOPS.issuperset(rest[stop:]) else rest
        return tail if not STOPS.issuperset(tail) else words[: self.spans[0][0]]

    @cached_property
    def asks(self) -> frozenset[str]:
        """The same, in no order."""
        return frozenset(self.asked) - STOPS

    def twice(self, n: int) -> bool:
        """Whether a quantity is told of both ends, each side, top and bottom."""
        return n in self._doubled

    @cached_property
    def _doubled(self) -> set[int]:
        """The quantities that both ends, each side or their like are said of: of two, the nearer, in the same clause."""
        found: set[int] = set()
        words, spans = self.words, list(enumerate(self.spans))
        for at in [at for at, word in enumerate(words) if word in _BOTH_BEGINS]:
            size = self._both_at(at)
            alone = size and words[at - 1 : at] == [","] and words[at + size : at + size + 1] in ([","], ["."])
            before = [n for n, (_, end) in spans if end <= at and STOPS.isdisjoint(words[end : at - bool(alone)])]
            after = [n for n, (start, _) in spans if start >= at + size and STOPS.isdisjoint(words[at:start])]
            if size and (before or after):
                found.add(self._nearer(at, size, before[-1:], after[:1]))
            elif words[at : at + 3] == ["both", "of", "them"]:
                found.update([n for n, (_, end) in spans if end <= at][-1:])
        found.update(n for n, (start, _) in spans if words[start - 1 : start] == ["both"])
        found.update(n for n, _ in spans if self.left[n][-1:] == ["with"] and self.right[n][:1] == ["sides"])
        found.update(n for n, _ in spans if "each" in self.right[n][:2] and not _SIDES.isdisjoint(self._told_before(n)))
        return found

    def _told_before(self, n: int) -> list[str]:
        """The words of a quantity's clause, and of the one before, that stand before it."""
        start = self.spans[n - 1][1] if n else 0
        return self.words[start : self.spans[n][0]]

    def _nearer(self, at: int, size: int, before: list[int], after: list[int]) -> int:
        if not (before and after):
            return (before or after)[0]
        to, on = self.words[self.spans[before[0]][1] : at], self.words[at + size : self.spans[after[0]][0]]
        joined = not JOINTS.isdisjoint(to) and JOINTS.isdisjoint(on)
        return after[0] if joined or len(to) > len(on) + (not JOINTS.isdisjoint(on)) * SHORT else before[0]

    def _both_at(self, at: int) -> int:
        """How many words at a place say both ends."""
        words = self.words
        if at + 1 < len(words) and words[at] in EACH and words[at + 1] in ENDS:
            return 2
        if words[at] in ("each", "either") and words[at + 1 : at + 2] != [] and words[at + 1] in WHICH and words[at + 2 : at + 3]:
            return 3 if words[at + 2] in ENDS else 0  # each hinge side
        return next((len(so) for so in ALL_ROUND if tuple(words[at : at + len(so)]) == so), 0)

    def counts(self) -> list[str]:
        """For each quantity what it counts or shares out, NOTHING where it is a remark's, or "" where it is a length."""
        return [*self._counted]

    @cached_property
    def _counted(self) -> list[str]:
        found = [self._count(n) if self.may[n] else "" for n in range(len(self.spans))]
        return [role or (NOTHING if self._no_length(n) else "") for n, role in enumerate(found)]

    def _no_length(self, n: int) -> bool:
        """Whether a quantity is said by the way, or again, or is an ordinal: the third mark."""
        start, end = self.spans[n]
        word = self.words[start]
        named = self.words[end : end + 1] != [] and self.words[end] not in PARTS_NEXT
        numbered = word[:1].isdigit() and word.endswith(("st", "nd", "rd", "th"))
        ordinal = end == start + 1 and ((word in ORDINALS and named) or numbered)
        return ordinal or self._remarked(n) or self._echoed(n)

    def _count(self, n: int) -> str:
        start, end = self.spans[n]
        before, after = self.words[max(0, start - CLAUSE_BEFORE) : start], self.words[end : end + 2]
        if self._labels(n, before, after):
            return NOTHING
        return self._shares(n, before, after) or self._times(n, before, after) or self._counts_next(n) or self._shared_by(n)

    def _labels(self, n: int, before: list[str], after: list[str]) -> bool:
        """Whether a number only says which of several: window 3 of 9, all three together."""
        last = before[-1] if before else ""
        if n and last == "of" and self.spans[n - 1][1] == self.spans[n][0] - 1 and self._count(n - 1) == NOTHING:
            return True  # door 3 of 5
        if last in LABELS and self.sizes[n] <= MOST_LABEL and after[:1] != ["at"]:
            return True
        return last in ALL_OF and (not after or after[0] in STOPS or after[0] in ("together", "put", "in")) and n > 0

    def _shares(self, n: int, before: list[str], after: list[str]) -> str:
        """A number of parts: split in three, 3600 into 8, four ways."""
        last = before[-1] if before else ""
        shared = last in ("in", "into", "by", "between", "among") and (not SHARED.isdisjoint(before) or last == "into")
        over = last == "over" and not after[1:] and self.sizes[n] <= min(MOST_PARTS, self.sizes[n - 1] / 2)
        shared = shared or over
        parts = len(after) > 1 and after[0] in PARTED and is_plural(after[1])  # five equal bits
        return DIVIDES if parts or (n and (shared or after[:1] == ["ways"]) and after[:1] != ["inches"]) else ""

    def _shared_by(self, n: int) -> str:
        """So many things, where it is asked how much of the one length each has: with six risers, how high is each one."""
        asked = self.asked
        first = self.right[n][:1]
        if not first or not is_plural(first[0]) or len(self.spans) != SHORT or not GAP_WORDS.isdisjoint(self.said):
            return ""
        each = any(a in ("each", "one") and b not in ENDS for a, b in pairwise([*asked, ""]) if a != b)
        return DIVIDES if each and {"how", "what", "whats"} & {*asked} and self.sizes[1 - n] > self.sizes[n] else ""

    def _times(self, n: int, before: list[str], after: list[str]) -> str:
        """How often the one before is taken: 7/8, four times; 1780, there's four of them; an eighth in those two cuts."""
        if not n:
            return ""
        last = before[-1] if before else ""
        if after[:1] and after[0] in CUTS and not {"of", "those", "the", "in", "for"}.isdisjoint(before[-3:]):
            return OF_LAST
        often = after[:1] == ["times"] or after in (["of", "them"], ["of", "em"]) or (last == "times" and not self.between(n)[1:])
        return OF_LAST if often else ""

    def _counts_next(self, n: int) -> str:
        """A number of what the next quantity is the size of: six boards at, four 600 mm joints, twelve risers, 7 3/8 apiece."""
        if n + 1 == len(self.spans):
            return ""
        words = self.words[self.spans[n][1] : self.spans[n + 1][0]]
        after = self.right[n + 1][:1]
        things = any(map(is_plural, words[:SHORT])) or (bool(words) and words[0] in NOUNS)
        each = things and ("each" in words or (bool(after) and after[0] in ("each", "apiece")))
        if not words and self.words[self.spans[n + 1][1] - 1] == "footers":
            return OF_NEXT  # three | twelve footers
        if not STOPS.isdisjoint(words):
            return OF_NEXT if each and len(words) <= SHORT * 2 else ""
        if words[-1:] == ["both"] and any(map(is_plural, words[:SHORT])):
            return OF_NEXT  # two | lengths of gutter both 40 11/16
        if words == ["times"] or (words and words[-1] in AT and len(words) <= (SHORT * 2 if things else SHORT)):
            return OF_NEXT
        named = words[-1:] if words else after
        return OF_NEXT if each or (named and len(words) <= SHORT and is_plural(named[0])) else ""

    def _remarked(self, n: int) -> bool:
        """Whether a quantity is in a clause that only remarks on something."""
        before, after = self.clause(n)
        return len(self.spans) > SHORT and not (REMARKS.isdisjoint(before) and MONEY.isdisjoint(after[:1]))

    def _echoed(self, n: int) -> bool:
        """Whether a quantity says one before it again: eight foot, that's 96; counted in the 64."""
        left = self.left[n][-SHORT:]
        size = self.sizes[n]
        again = any(size in (other, float(int(other))) for other in self.sizes[:n])
        if again and left[-1:] == ["so"]:
            return True  # three thirty-seconds all round so | 3/32 each end
        off = left == ["off", "the"] and size in self.sizes[:n]
        return off or (again and bool(left) and ECHOES.issuperset(left))

    def counts_things(self, n: int) -> bool:
        """Whether a number stands before things that it may count."""
        first = self.right[n][:1]
        return self.may[n] and bool(first) and (is_plural(first[0]) or first[0] in NOUNS)


def _is_worth(words: Sequence[str], at: int) -> bool:
    """Whether a what asks nothing: for what it's worth, what a carry on."""
    if words[at : at + 2] == ["what", "a"] and words[at + 2 : at + 3] != []:
        return at > 0 and words[at - 1] in ("and", ",", ".")
    return words[at - 1 : at] == ["for"] and words[at + 1 : at + 2] in (["it"], ["its"], ["it's"])


def is_plural(word: str) -> bool:
    """Whether a word may be things that are counted."""
    return len(word) > MOST_THING and word.endswith("s") and not word.endswith("ss") and word not in NO_THINGS
