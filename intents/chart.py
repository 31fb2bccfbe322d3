"""Everything the words can be, by place: tokens with slips forgiven, quantities, word classes, islands of phrases."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any, NamedTuple, TypeVar

from intents.allowances import allowances
from intents.fitting import STANDS_IN
from intents.grades import grades
from intents.lengths import FOOTERS
from intents.lists import lists
from intents.phrases import END, Capture, Phrases, Trie
from intents.plurals import plural_sizes
from intents.rates import plain_rates
from intents.reading import Dims, Reading
from intents.said_once import said_once
from intents.shares import shares
from intents.sound_alikes import settled
from intents.spelling import Speller
from intents.sum_steps import is_left
from intents.sums import sums
from intents.tokens import Token, literal, tokenize
from intents.unit_apart import beside_numbers
from solvers.quantities import Quantity

MINUS = frozenset(["-", "−", "minus", "negative"])
SURE_WHOLE = 0.8  # from here on a reading is one thing, and its pieces are not said on their own
WHOLE = frozenset("number length pitch angle temperature percent area money volume weight".split())
SIZED = ("length", "number")
COUNTED = frozenset(
    "courses rows pieces parts pcs walls pickets slats balusters spindles brackets blades fins posts corbels".split()
)  # a number before one of these counts them
MEASURED = frozenset(["length", "pitch", "angle", "temperature"])  # quantities whose unit is a word of its own
NEW_PHRASE = frozenset(
    "at for with from and by or to if what which how where".split()
)  # after a quantity: a new phrase
T = TypeVar("T")
NOT_BESIDE = frozenset("in with from by per".split())  # what follows one of these has no role from the word before it
_EIGHTHS = (["eights"], ["eighths"], ["sixteenths"])
_RATIOS = (["one"], ["a"], ["three"], ["150"], ["300"])
MOST_SKIPS = 2  # filler words in a row inside one phrase
LIGHT = frozenset("a an the of for to at on in with from by and or is it be as per up so".split())


class Hit(NamedTuple):
    """One island found: where (also as a mask of tokens), what it gives, the reading behind each quantity symbol."""

    pattern: int
    number: int
    captures: tuple[Capture, ...]
    start: int
    end: int
    mask: int
    found: tuple[tuple[int, Reading], ...]


Doubts = tuple[tuple[int, str], ...]
Row = tuple[int, list[tuple[int, Reading]]]  # a token, and each reading that starts there with the mask of its tokens


@dataclass(slots=True)
class Chart:
    """One sentence, read."""

    text: str
    tokens: list[Token]
    words: list[str]
    readings: list[list[Reading]]
    classes: list[list[tuple[str, int]]]
    hits: list[Hit] = field(default_factory=list)
    weighs: int = 0  # mask of the tokens that carry meaning
    known: int = 0  # mask of those whose word is in some grammar
    numbers: int = 0  # mask of the tokens that are part of some quantity
    heard: dict[tuple[int, int, bool], Any] = field(default_factory=dict)  # what a reading is for a parameter
    changed: list[tuple[str, str]] = field(default_factory=list)
    doubts: tuple[tuple[int, str], ...] = ()  # places of small words that may have been numbers, and which
    kept: dict[str, Any] = field(default_factory=dict)  # what was found of the whole sentence, by the question
    rows: list[Row] = field(default_factory=list)

    def said(self, start: int, end: int) -> str:
        """The person's own words for tokens start to end."""
        return self.text[self.tokens[start].start : self.tokens[end - 1].end]

    def starts(self) -> list[Row]:
        """Where quantities start, from left to right, with all that can be read there."""
        if not self.rows:
            self.rows = [(at, [(span(r.start, r.end), r) for r in row]) for at, row in enumerate(self.readings) if row]
        return self.rows


def once(work: Callable[[Chart], T]) -> Callable[[Chart], T]:
    """A question about the whole sentence, answered once: every topic asks it of every quantity."""

    def answer(chart: Chart) -> T:
        if work.__name__ not in chart.kept:
            chart.kept[work.__name__] = work(chart)
        return chart.kept[work.__name__]  # type: ignore[no-any-return]

    return answer


def chart_of(text: str, phrases: Phrases, speller: Speller, typed: list[Token] | None = None) -> Chart:
    """Read a sentence (or no more than its tokens `typed`) against the phrases of all topics."""
    typed = tokenize(text) if typed is None else typed
    tokens, changed = [], []
    for token in typed:
        word = speller.read(token.text)
        if word != token.text:
            changed.append((token.text, word))
        tokens += [Token(part, token.start, token.end) for part in word.split(" ")]
    tokens, doubts = settled(beside_numbers(plain_rates(plural_sizes(tokens))))
    heard = tokens
    tokens, found = said_once(heard)
    if doubts and tokens is not heard:
        doubts = _moved(doubts, heard, tokens)
    words = [token.text for token in tokens]
    listed = [*lists(tokens, found)]
    for i, here in enumerate(found[:-1]):
        if here and words[i] in MINUS:  # "-5/12" is never 5/12: a minus sign that was said is not to be lost
            # No area is below zero: "minus 45 sq ft of openings" takes them out of what was said before.
            taken = [r for r in found[i + 1] if r.kind == "area"] if any(found[:i]) else []
            found[i] = [r for r in here if r.kind != "area"] if taken else here
            found[i + 1] = taken
    summed = [*sums(tokens, found)]
    if listed and summed and is_left(words, summed):  # what is left of a board is no list of pieces to cut
        listed = [r for r in listed if r.kind != "pieces"]
    composed = [*listed, *summed, *grades(tokens, found)]
    for reading in [*shares(tokens, found), *allowances(tokens, found)]:
        found[reading.start].insert(0, reading)
    found = _whole(found, words)
    for reading in composed:
        found[reading.start].append(reading)
    chart = Chart(text, tokens, words, found, _classes(words, phrases.classes), changed=changed, doubts=doubts)
    _weigh(chart, phrases)
    finder = _Finder(chart, phrases)
    for start in range(len(words)):
        # "a quarter inch" begins with a filler, and so does "up 7 feet", whose filler is of a class.
        if words[start] not in phrases.fillers or found[start] or chart.classes[start]:
            finder.start = start
            finder.walk(phrases.trie, start, 0, 0, ())
    chart.hits = finder.hits
    return chart


def _moved(doubts: Doubts, before: list[Token], now: list[Token]) -> Doubts:
    """The doubts about words that are still there, at their new places."""
    places = {id(token): at for at, token in enumerate(now)}
    return tuple((places[id(before[at])], word) for at, word in doubts if id(before[at]) in places)


def span(start: int, end: int) -> int:
    """Tokens start to end as a mask."""
    return (1 << end) - (1 << start)


def _weigh(chart: Chart, phrases: Phrases) -> None:
    """Which tokens carry meaning, which words are known, which are part of a number."""
    for i, word in enumerate(chart.words):
        if word not in phrases.fillers and word not in LIGHT and (word[0].isalnum() or word in "'\""):
            chart.weighs |= 1 << i
            if word in phrases.vocabulary:
                chart.known |= 1 << i
    for row in chart.readings:
        for reading in row:
            if isinstance(reading.value, Quantity | Dims):  # the words of a list are words
                chart.numbers |= span(reading.start, reading.end)


def _whole(found: list[list[Reading]], words: list[str]) -> list[list[Reading]]:
    """The readings without pieces of a longer one: "five" of "forty five", "8 in" of 18'-8", "feet" of 12 feet.

    A spoken pitch is not so sure ("six twelve foot boards"), nor is a size "by" another, so their pieces stay.
    """
    found = [[r for r in row if not _cuts_fraction(r, words)] for row in found]
    kept: list[list[Reading]] = []
    holding: list[tuple[int, int]] = []
    for start, row in enumerate(found):
        # No number begins with the denominator of another: 1 1/2 and 1/2.
        here = [] if start > 1 and words[start - 1] == "/" and words[start - 2].isdecimal() else row
        holding = [(a, b) for a, b in holding if b > start]
        holding += [
            (r.start, r.end) for r in here if r.kind in WHOLE and r.sure >= (1.0 if r.kind == "pitch" else SURE_WHOLE)
        ]
        if not holding or not here:
            kept.append(here)
            continue
        kept.append([
            r for r in here
            if _before_footers(r, words) or not any(r.end <= b and (a, b) != (start, r.end) for a, b in holding)
        ])  # fmt: skip
    return kept


def _cuts_fraction(reading: Reading, words: list[str]) -> bool:
    """Whether a number ends within a fraction: a hundred and fifty feet three | eights wide."""
    if words[reading.end - 1 : reading.end + 1] == ["one", "to"] and reading.kind == "length":
        return words[reading.end + 1 : reading.end + 2] in _RATIOS  # forty foot | one to one fifty
    cut = words[reading.end : reading.end + 1] in _EIGHTHS and words[reading.end - 1].isalpha()
    return cut and reading.kind in ("length", "number") and words[reading.end - 1] not in ("feet", "foot", "inches", "inch")


def _before_footers(reading: Reading, words: list[str]) -> bool:
    """Whether a length is said by the sticks of it: sixteen | footers."""
    return reading.kind == "length" and reading.end < len(words) and words[reading.end] in FOOTERS


def _classes(words: list[str], trie: Trie) -> list[list[tuple[str, int]]]:
    """For each place, the word classes that begin there and where they end."""
    found: list[list[tuple[str, int]]] = []
    for start in range(len(words)):
        here: list[tuple[str, int]] = []
        node, at = trie, start
        while True:
            here += [(name, at) for name in node.get(END, ())]
            below = node.get(words[at]) if at < len(words) else None
            if below is None:
                break
            node, at = below, at + 1
        found.append(here)
    return found


_hit = tuple.__new__  # hundreds a sentence: the class's own way to make one takes twice as long


class _Finder:
    """Walks the trie of islands from one start after another."""

    def __init__(self, chart: Chart, phrases: Phrases) -> None:
        self.chart, self.skippable = chart, phrases.fillers | LIGHT | {":", "="}
        sure = (r for row in chart.readings for r in row if r.kind in MEASURED and r.sure > SURE_WHOLE)
        self.wholes = [span(r.start, r.end) for r in sure if r.end > r.start + 1]
        self.hits: list[Hit] = []
        self.start = 0

    def walk(self, node: Trie, at: int, depth: int, skipped: int, found: tuple[tuple[int, Reading], ...]) -> None:
        ends = node.get(END)
        if ends is not None:
            mask = span(self.start, at)
            # The "mm" of 600 mm asks for no millimetres: a word inside a quantity is not said on its own.
            inside = not found and any(mask & whole == mask != whole for whole in self.wholes)
            if not inside and not self._of_next(at, found):
                start = self.start
                self.hits += [_hit(Hit, (number, part, gives, start, at, mask, found)) for number, part, gives in ends]
            if len(node) == 1:
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
                if below is None or not (depth or len(below) > (END in below)):
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


def quantity_word(word: str) -> bool:
    """Whether a token is a number in digits or one of its signs."""
    return literal(word) or not word[0].isalnum()
