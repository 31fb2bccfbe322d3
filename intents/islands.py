"""Where the islands of the topics' phrases stand in a sentence: a walk through the trie of all of them, from each word on."""

from __future__ import annotations

from collections.abc import Set
from functools import cache
from typing import TYPE_CHECKING, NamedTuple

from intents.fitting import STANDS_IN
from intents.phrases import BELOW, END, Capture, Phrases, Trie
from intents.reading import Reading

if TYPE_CHECKING:
    from intents.chart import Chart

LIGHT = frozenset("a an the of for to at on in with from by and or is it be as per up so".split())
SURE_WHOLE = 0.8  # from here on a reading is one thing, and its pieces are not said on their own
SIZED = ("length", "number")
COUNTED = frozenset(
    "courses rows pieces parts pcs walls pickets slats balusters spindles brackets blades fins posts corbels".split()
)  # a number before one of these counts them
MEASURED = frozenset(["length", "pitch", "angle", "temperature"])  # quantities whose unit is a word of its own
NEW_PHRASE = frozenset(
    "at for with from and by or to if what which how where".split()
)  # after a quantity: a new phrase
NOT_BESIDE = frozenset("in with from by per".split())  # what follows one of these has no role from the word before it
MOST_SKIPS = 2  # filler words in a row inside one phrase


class Hit(NamedTuple):
    """One island found: where (also as a mask of tokens), what it gives, the reading behind each quantity symbol."""

    pattern: int
    number: int
    captures: tuple[Capture, ...]
    start: int
    end: int
    mask: int
    found: tuple[tuple[int, Reading], ...]


def span(start: int, end: int) -> int:
    """Tokens start to end as a mask."""
    return (1 << end) - (1 << start)


def islands(chart: Chart, phrases: Phrases, without: Set[str] = frozenset()) -> list[Hit]:
    """The islands of all topics but those in `without`."""
    finder = _Finder(chart, phrases, without)
    words, fillers = chart.words, phrases.fillers
    for start in range(len(words)):
        # "a quarter inch" begins with a filler, and so does "up 7 feet", whose filler is of a class.
        if words[start] not in fillers or chart.readings[start] or chart.classes[start]:
            finder.start = start
            finder.walk(phrases.trie, start, 0, 0, ())
    return finder.hits


@cache
def _skippable(fillers: frozenset[str]) -> frozenset[str]:
    return fillers | LIGHT | {":", "="}


_hit = tuple.__new__  # hundreds a sentence: the class's own way to make one takes twice as long


class _Finder:
    """Walks the trie of islands from one start after another."""

    def __init__(self, chart: Chart, phrases: Phrases, without: Set[str]) -> None:
        self.chart, self.skippable = chart, _skippable(phrases.fillers)
        self.wanted = sum(bit for topic, bit in phrases.bits.items() if topic not in without)
        self.barred: set[int] = set().union(*(phrases.numbers[topic] for topic in without))  # numbers of patterns
        sure = (r for row in chart.readings for r in row if r.kind in MEASURED and r.sure > SURE_WHOLE)
        self.wholes = [span(r.start, r.end) for r in sure if r.end > r.start + 1]
        self.hits: list[Hit] = []
        self.start = 0

    def walk(self, node: Trie, at: int, depth: int, skipped: int, found: tuple[tuple[int, Reading], ...]) -> None:
        if not node[BELOW] & self.wanted:
            return
        ends = node.get(END)
        if ends is not None:
            mask = span(self.start, at)
            # The "mm" of 600 mm asks for no millimetres: a word inside a quantity is not said on its own.
            inside = not found and any(mask & whole == mask != whole for whole in self.wholes)
            if not inside and not self._of_next(at, found):
                start, barred = self.start, self.barred
                self.hits += [
                    _hit(Hit, (number, part, gives, start, at, mask, found))
                    for number, part, gives in ends if number not in barred
                ]  # fmt: skip
            if len(node) == 2:  # with the mask
                return
        self.onward(node, at, depth, MOST_SKIPS if not depth else skipped, found)

    def onward(self, node: Trie, at: int, depth: int, skipped: int, found: tuple[tuple[int, Reading], ...]) -> None:
        """Deeper from a node, past filler words: an island does not end on one."""
        barred = False
        taken = not found and depth > 0 and self._of_last()
        after_quantity = bool(found) and found[-1][1].end == at
        while at < len(self.chart.words):
            word = self.chart.words[at]
            below = node.get(word)
            if below is not None:
                self.walk(below, at + 1, depth + 1, 0, found)
            for name, end in self.chart.classes[at]:
                below = node.get(name)
                if below is not None:
                    self.walk(below, end, depth + 1, 0, found)
            if not barred and self.chart.readings[at]:
                self._quantities(node, at, depth, found)
            barred = barred or (depth > 0 and word in NOT_BESIDE) or (taken and word == "and")
            if skipped >= MOST_SKIPS or word not in self.skippable or (after_quantity and word in NEW_PHRASE):
                return
            at, skipped = at + 1, skipped + 1

    def _of_next(self, at: int, found: tuple[tuple[int, Reading], ...]) -> bool:
        """Whether an island that ends in words ends in those of the next quantity: 1600 mm has a | diagonal of 1994."""
        words, readings = self.chart.words, self.chart.readings
        if not found or found[-1][1].kind != "length" or not found[-1][1].end < at < len(words) - 1:
            return False
        apart = not {"a", "an"}.isdisjoint(words[found[-1][1].end : at])
        after = readings[at + 1] if words[at] == "of" else readings[at] if apart else ()
        return any(r.kind in SIZED and r.sure >= SURE_WHOLE for r in after)

    def _counts(self, reading: Reading) -> bool:
        """Whether a bare number is of things, and no length: the height of 11 courses."""
        after = self.chart.words[reading.end] if reading.end < len(self.chart.words) else ""
        return reading.kind == "number" and after in COUNTED

    def _of_last(self) -> bool:
        """Whether the words an island begins with are those of the quantity before them: 52 inches of | run and 30 of rise."""
        before = self.start - 1
        if before > 0 and self.chart.words[before] in ("of", "a"):
            before -= 1
        return any(whole >> before & 1 and not whole >> before + 1 for whole in self.wholes) if before >= 0 else False

    def _quantities(self, node: Trie, at: int, depth: int, found: tuple[tuple[int, Reading], ...]) -> None:
        here = self.chart.readings[at]
        for reading in here:
            kind = reading.kind
            below = node.get("#" + kind)
            if below is not None:
                self.walk(below, reading.end, depth + 1, 0, (*found, (depth, reading)))
            for edge, symbol in STANDS_IN.get(kind, ()):
                below = node.get(symbol)
                # On its own a bare number is no length or pitch: some word beside it must tell.
                if below is None or not (depth or len(below) > 1 + (END in below)):
                    continue
                if edge == "length" and (_slopes(reading, here) or self._counts(reading)):
                    continue
                # 7/12 is a pitch before it is the number 7/12: what is said outright goes before what could stand in.
                if any(r.kind == edge and r.end >= reading.end for r in here):
                    continue
                go = self.walk if depth else self.onward
                go(below, reading.end, depth + 1, 0, (*found, (depth, reading)))


def _slopes(reading: Reading, here: list[Reading]) -> bool:
    """Whether a bare number is more likely a pitch than a length: "seven to the weather on a nine twelve"."""
    return reading.kind == "number" and any(r.kind == "pitch" and r.end >= reading.end and r.sure >= 0.9 for r in here)


