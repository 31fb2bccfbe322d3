"""Where the islands of the topics' phrases stand in a sentence: a walk through the trie of all of them, from each word on."""

from __future__ import annotations

from collections.abc import Set
from functools import cache
from typing import TYPE_CHECKING, NamedTuple

from intents.fitting import STANDS_IN
from intents.number_words import TENS
from intents.phrases import BELOW, END, Capture, Phrases, Trie, compiled
from intents.reading import Reading

if TYPE_CHECKING:
    from intents.chart import Chart

LIGHT = frozenset("a an the of for to at on in with from by and or is it be as per up so".split())
ONE = "one"
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
        if start and words[start] == ONE and words[start - 1] in TENS and any(r.end > start for r in chart.readings[start - 1]):
            continue  # of thirty | one strips
        # "a quarter inch" begins with a filler, and so does "up 7 feet", whose filler is of a class.
        if words[start] not in fillers or chart.readings[start] or chart.classes[start]:
            finder.start = start
            finder.onward(phrases.trie, start, 0, MOST_SKIPS, ())
    return finder.hits


@cache
def light_words() -> frozenset[str]:
    """Words that take nothing away from what a line says: fillers, ordinary words, and the smallest."""
    phrases = compiled()
    return phrases.fillers | phrases.ordinary | LIGHT


@cache
def _skippable(fillers: frozenset[str]) -> frozenset[str]:
    return fillers | LIGHT | {":", "="}


_hit = tuple.__new__  # hundreds a sentence: the class's own way to make one takes twice as long


class _Finder:
    """Walks the trie of islands from one start after another."""

    def __init__(self, chart: Chart, phrases: Phrases, without: Set[str]) -> None:
        self.chart, self.skippable = chart, _skippable(phrases.fillers)
        self.words, self.readings, self.classes = chart.words, chart.readings, chart.classes
        self.wanted = sum([bit for topic, bit in phrases.bits.items() if topic not in without])
        among = [numbers for topic, numbers in phrases.numbers.items() if topic not in without]
        self.among: set[int] = set().union(*among)  # numbers of patterns
        sure = (r for row in chart.readings for r in row if r.kind in MEASURED and r.sure > SURE_WHOLE)
        self.wholes = [span(r.start, r.end) for r in sure if r.end > r.start + 1]
        self.symbols: dict[int, list[tuple[Reading, str, bool]]] = {}  # by place
        self.hits: list[Hit] = []
        self.start = 0

    def walk(self, node: Trie, at: int, depth: int, skipped: int, found: tuple[tuple[int, Reading], ...]) -> None:
        """From a node that leads to a topic that is wanted."""
        ends = node.get(END)
        if ends is not None:
            mask = (1 << at) - (1 << self.start)
            # The "mm" of 600 mm asks for no millimetres: a word inside a quantity is not said on its own.
            of_other = self._of_next(at, found) if found else self._inside(mask)
            if not of_other:
                start, among = self.start, self.among
                self.hits += [
                    _hit(Hit, (number, part, gives, start, at, mask, found))
                    for number, part, gives in ends if number in among
                ]  # fmt: skip
            if len(node) == 2:  # with the mask
                return
        self.onward(node, at, depth, skipped, found)

    def onward(self, node: Trie, at: int, depth: int, skipped: int, found: tuple[tuple[int, Reading], ...]) -> None:
        """Deeper from a node, past filler words: an island does not end on one."""
        barred = False
        after_quantity = bool(found) and found[-1][1].end == at
        words, classes, readings, wanted, last = self.words, self.classes, self.readings, self.wanted, len(self.words)
        while at < last:
            word = words[at]
            below = node.get(word)
            if below is not None and below[BELOW] & wanted:
                self.walk(below, at + 1, depth + 1, 0, found)
            for name, end in classes[at]:
                below = node.get(name)
                if below is not None and below[BELOW] & wanted:
                    self.walk(below, end, depth + 1, 0, found)
            if readings[at] and not barred:
                self._quantities(node, at, depth, found)
            if skipped >= MOST_SKIPS or word not in self.skippable or (after_quantity and word in NEW_PHRASE):
                return
            if depth and not barred:
                barred = word in NOT_BESIDE or (word == "and" and not found and self._of_last())
            at, skipped = at + 1, skipped + 1

    def _inside(self, mask: int) -> bool:
        """Whether words are part of a quantity that says more."""
        return bool(self.wholes) and any(mask & whole == mask != whole for whole in self.wholes)

    def _of_next(self, at: int, found: tuple[tuple[int, Reading], ...]) -> bool:
        """Whether an island that ends in words after a length ends in those of the next: 1600 mm has a | diagonal of 1994."""
        words, readings = self.words, self.readings
        if found[-1][1].kind != "length" or not found[-1][1].end < at < len(words) - 1:
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
        for reading, symbol, instead in self._symbols(at):
            below = node.get(symbol)
            if below is None or not below[BELOW] & self.wanted:
                continue
            if not instead or depth:
                self.walk(below, reading.end, depth + 1, 0, (*found, (depth, reading)))
            elif len(below) > 1 + (END in below):  # on its own a bare number is no length or pitch: some word must tell
                self.onward(below, reading.end, depth + 1, 0, (*found, (depth, reading)))

    def _symbols(self, at: int) -> list[tuple[Reading, str, bool]]:
        """The quantities at a place as the symbols of a phrase, and whether one stands in for another; found once a sentence."""
        known = self.symbols.get(at)
        if known is None:
            known, here = [], self.readings[at]
            ends: dict[str, int] = {}  # of the longest of each kind
            for reading in here:
                ends[reading.kind] = max(reading.end, ends.get(reading.kind, 0))
            for reading in here:
                known.append((reading, "#" + reading.kind, False))
                for edge, symbol in STANDS_IN.get(reading.kind, ()):
                    if edge == "length" and (_slopes(reading, here) or self._counts(reading)):
                        continue
                    # 7/12 is a pitch before it is the number 7/12: what is said outright goes before what could stand in.
                    if ends.get(edge, 0) < reading.end:
                        known.append((reading, symbol, True))
            self.symbols[at] = known
        return known


def _slopes(reading: Reading, here: list[Reading]) -> bool:
    """Whether a bare number is more likely a pitch than a length: "seven to the weather on a nine twelve"."""
    return reading.kind == "number" and any(r.kind == "pitch" and r.end >= reading.end and r.sure >= 0.9 for r in here)


