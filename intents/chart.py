"""Everything the words can be, by place: tokens with slips forgiven, quantities, word classes, islands of phrases."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from typing import Any, NamedTuple, TypeVar

from intents.allowances import allowances
from intents.degrees import under_nothing
from intents.from_square import from_square
from intents.grades import grades
from intents.islands import LIGHT, SURE_WHOLE, Hit, islands, span
from intents.lapped import lapped
from intents.lengths import FOOTERS
from intents.listed import Listing
from intents.listed_parts import TOPICS, parts
from intents.lists import KINDS, lists, totals_and_prices
from intents.phrases import END, Phrases, Trie
from intents.plurals import plural_sizes
from intents.rates import plain_rates
from intents.reading import SIZED, Reading
from intents.said_once import meant_once
from intents.shares import shares
from intents.sound_alikes import settled
from intents.spelling import Speller
from intents.sum_steps import is_left
from intents.sums import sums
from intents.texted import texted
from intents.tokens import Token, literal, tokenize
from intents.two_words import put_together
from intents.unit_apart import beside_numbers
from solvers.quantities import Length, Quantity

MINUS = frozenset(["-", "−", "minus", "negative"])
WHOLE = frozenset("number length pitch angle temperature percent area money volume weight".split())
SUMS = "tape arithmetic"  # the one topic whose sums are read
T = TypeVar("T")
_EIGHTHS = (["eights"], ["eighths"], ["sixteenths"])
_CUTS = frozenset(("eights", "eighths", "sixteenths"))
_RATIOS = (["one"], ["a"], ["three"], ["150"], ["300"])


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
    likely: dict[str, float] = field(default_factory=dict)  # how likely each topic is, where a second reader told
    unlikely: frozenset[str] = frozenset()  # topics that were not looked for
    weighs: int = 0  # mask of the tokens that carry meaning
    known: int = 0  # mask of those whose word is in some grammar
    numbers: int = 0  # mask of the tokens that are part of some quantity
    heard: dict[tuple[int, int, bool], Any] = field(default_factory=dict)  # what a reading is for a parameter
    sure: dict[tuple[int, int], float] = field(default_factory=dict)  # how sure it is for one that words beside it tell
    changed: list[tuple[str, str]] = field(default_factory=list)
    doubts: tuple[tuple[int, str], ...] = ()  # places of small words that may have been numbers, and which
    kept: dict[str, Any] = field(default_factory=dict)  # what was found of the whole sentence, by the question
    rows: list[Row] = field(default_factory=list)
    every: list[list[Reading]] = field(default_factory=list)  # each way to read a quantity, as sums take them

    def said(self, start: int, end: int) -> str:
        """The person's own words for tokens start to end."""
        return self.text[self.tokens[start].start : self.tokens[end - 1].end]

    def said_in(self, mask: int) -> list[str]:
        """The person's own words for each run of tokens that a mask holds."""
        found, at = list[str](), 0
        while mask >> at:
            end = at
            while mask >> end & 1:
                end += 1
            if end > at:
                found.append(self.said(at, end))
            at = end + 1
        return found

    def starts(self) -> list[Row]:
        """Where quantities start, from left to right, with all that can be read there."""
        if not self.rows:
            self.rows = [(at, [(span(r.start, r.end), r) for r in row]) for at, row in enumerate(self.readings) if row]
        return self.rows


def once(work: Callable[[Chart], T]) -> Callable[[Chart], T]:
    """A question about the whole sentence, answered once: every topic asks it of every quantity."""

    name = work.__name__

    def answer(chart: Chart) -> T:
        kept = chart.kept
        if name in kept:
            return kept[name]  # type: ignore[no-any-return]
        found = kept[name] = work(chart)
        return found

    return answer


class Guess(NamedTuple):
    """What sentences like one are about: how likely each topic is, those not worth looking for, the lists the others take."""

    likely: dict[str, float] = {}
    unlikely: frozenset[str] = frozenset()
    kinds: frozenset[str] = KINDS


class Worded(NamedTuple):
    """The words of a sentence: slips forgiven (as typed, as read), sound-alikes settled, each quantity said once, by place."""

    tokens: list[Token]
    changed: list[tuple[str, str]]
    doubts: Doubts
    readings: list[list[Reading]]


def worded(typed: list[Token], speller: Speller) -> Worded:
    """What a sentence's words are, before anything is known of what it asks."""
    tokens: list[Token] = []
    changed: list[tuple[str, str]] = []
    for token in put_together(texted(typed)):
        word = speller.read(token.text)
        if word == token.text:
            tokens.append(token)
            continue
        changed.append((token.text, word))
        tokens += [Token(part, token.start, token.end) for part in word.split(" ")]
    heard, doubts = settled(beside_numbers(plain_rates(plural_sizes(tokens))))
    tokens, readings = meant_once(heard)
    if doubts and tokens is not heard:
        doubts = _moved(doubts, heard, tokens)
    return Worded(tokens, changed, doubts, readings)


def chart_of(
    text: str,
    phrases: Phrases,
    speller: Speller,
    said: Worded | None = None,
    guess: Callable[[Chart], Guess] = lambda chart: Guess(),
) -> Chart:
    """Read a sentence (its words as `said`) against the phrases of all topics that a guess by its words leaves."""
    tokens, changed, doubts, readings = said or worded(tokenize(text), speller)
    found = [*readings]
    words = [token.text for token in tokens]
    listing = Listing(tokens, readings)
    for i, here in enumerate(found[:-1]):
        if here and words[i] in MINUS:  # "-5/12" is never 5/12: a minus sign that was said is not to be lost
            # No area is below zero: "minus 45 sq ft of openings" takes them out of what was said before.
            taken = [r for r in found[i + 1] if r.kind == "area"] if any(found[:i]) else []
            found[i] = [*_taken_off(found, words, i), *([r for r in here if r.kind != "area"] if taken else here)]
            found[i + 1] = taken
    signed = [*found]
    composed, told = [*totals_and_prices(listing), *grades(tokens, found)], list[Reading]()
    for read in (shares, allowances, from_square, lapped):
        told += read(tokens, found)
    for reading in told:
        found[reading.start] = [reading, *found[reading.start]]
    found = _whole(found, words)
    for reading in composed:
        found[reading.start].append(reading)
    chart = Chart(text, tokens, words, found, _classes(words, phrases.classes), changed=changed, doubts=doubts, every=signed)
    chart.likely, chart.unlikely, kinds = guess(chart)
    if under_nothing(words):  # no sum
        chart.unlikely |= {SUMS}
        chart.likely = {topic: 0.0 if topic == SUMS else share for topic, share in chart.likely.items()}
    for reading in parts(listing) if not chart.unlikely >= TOPICS else ():
        found[reading.start].append(reading)
    listed = [*lists(listing, kinds)]
    summed = [*sums(tokens, signed)] if SUMS not in chart.unlikely else []
    if listed and summed and is_left(words, summed):  # what is left of a board is no list of pieces to cut
        listed = [r for r in listed if r.kind != "pieces"]
    for reading in [*listed, *summed]:
        found[reading.start].append(reading)
    _weigh(chart, phrases)
    chart.hits = islands(chart, phrases, chart.unlikely)
    return chart


def _taken_off(found: list[list[Reading]], words: list[str], i: int) -> list[Reading]:
    """Feet and inches with neither said after a minus sign, where a length stands before it: 9 4 minus 8 2."""
    if not any(r.kind == "length" and r.end == i for row in found[:i] for r in row):
        return []
    longest = max((r.end for r in found[i]), default=0)
    pairs = [r for r in found[i + 1] if isinstance(r.value, Length) and r.value.unit == "in" and r.end >= longest]
    pairs = [r for r in pairs if words[r.end : r.end + 1] != ["and"] and not words[r.end - 1].endswith("s")]
    return [replace(r, start=i, value=replace(r.value, value=-r.value.value)) for r in pairs]  # type: ignore[type-var,union-attr]


def _moved(doubts: Doubts, before: list[Token], now: list[Token]) -> Doubts:
    """The doubts about words that are still there, at their new places."""
    places = {id(token): at for at, token in enumerate(now)}
    return tuple((places[id(before[at])], word) for at, word in doubts if id(before[at]) in places)


def _weigh(chart: Chart, phrases: Phrases) -> None:
    """Which tokens carry meaning, which words are known, which are part of a number."""
    for i, word in enumerate(chart.words):
        if word not in phrases.fillers and word not in LIGHT and (word[0].isalnum() or word in "'\""):
            chart.weighs |= 1 << i
            if word in phrases.vocabulary:
                chart.known |= 1 << i
    for row in chart.readings:
        for reading in row:
            if isinstance(reading.value, SIZED):  # the words of a list are words
                chart.numbers |= span(reading.start, reading.end)


def _whole(found: list[list[Reading]], words: list[str]) -> list[list[Reading]]:
    """The readings without pieces of a longer one: "five" of "forty five", "8 in" of 18'-8", "feet" of 12 feet.

    A spoken pitch is not so sure ("six twelve foot boards"), nor is a size "by" another, so their pieces stay.
    """
    if not _CUTS.isdisjoint(words) or ("one" in words and "to" in words):
        found = [[r for r in row if not _cuts_fraction(r, words)] for row in found]
    kept: list[list[Reading]] = []
    holding: list[tuple[int, int]] = []
    for start, row in enumerate(found):
        # No number begins with the denominator of another: 1 1/2 and 1/2.
        here = [] if start > 1 and words[start - 1] == "/" and words[start - 2].isdecimal() else row
        if not here:
            kept.append([])
            continue
        holding = [(a, b) for a, b in holding if b > start]
        holding += [
            (r.start, r.end) for r in here if r.kind in WHOLE and r.sure >= (1.0 if r.kind == "pitch" else SURE_WHOLE)
        ]
        if not holding:
            kept.append([*here])
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
    for at, word in enumerate(words, start=1):
        here: list[tuple[str, int]] = []
        node, end = trie.get(word), at
        while node is not None:
            here += [(name, end) for name in node.get(END, ())]
            node, end = node.get(words[end]) if end < len(words) else None, end + 1
        found.append(here)
    return found


def quantity_word(word: str) -> bool:
    """Whether a token is a number in digits or one of its signs."""
    return literal(word) or not word[0].isalnum()


@once
def signs(chart: Chart) -> int:
    """Mask of the words for minus that begin a quantity: an island of that word alone hides no number."""
    return sum(1 << at for at, row in enumerate(chart.readings) if row and chart.words[at] in MINUS)


def quantities(chart: Chart, start: int, end: int) -> Iterator[Reading]:
    """The longest quantity at each place of a clause."""
    return longest(chart, start, end, lambda reading: isinstance(reading.value, Quantity))


def longest(chart: Chart, start: int, end: int, fits: Callable[[Reading], bool]) -> Iterator[Reading]:
    """The longest reading that fits at each place of a clause, a bare number last among equals."""
    at = start
    while at < end:
        row = chart.readings[at]
        found = [r for r in row if r.end <= end and fits(r)] if row else row
        if not found:
            at += 1
            continue
        best = max(found, key=lambda r: (r.end, r.kind != "number"))
        yield best
        at = best.end
