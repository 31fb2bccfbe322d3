"""How each topic is asked: the examples of the grammars with every number taken out and its kind left in its place.

"miter for a 5-in-12 rake return" becomes "miter for a <pitch> rake return". From these patterns and
quantities.jsgf, sentences are drawn for the recogniser to learn from.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from math import log2
from pathlib import Path
from random import Random

from intents.grammars import BUILT_IN, FOLDER, QUANTITIES, WORDS, load
from intents.jsgf import Either, Maybe, Node, Ref, Repeat, Series, Tagged, Word
from intents.measures import readings
from intents.reading import Reading
from intents.tokens import tokenize

SWAP = 0.15  # how often a word gives way to another of its class, so that the recogniser knows them all
MOST = 100  # sentences past this many add no weight to a part: hundreds are no likelier than tens
MAYBE = 0.3  # how often a part that may be left out is said when drawing a sentence
SURE = 0.35  # a reading less sure than this is no way to say the example
GENERAL = ("number", "length", "temperature", "tempchange")  # when readings tie, the more telling kind is taken
# What recognisers write for a word of the trade: grammars know it so that it is understood, but nobody says it.
MISHEARD = frozenset(
    "angel brake break cable calk coarse cork curf do due eve eves facer fasha it join joins latter meter of peek "
    "pique plum rough sheeting sighting soft waist".split()
)
NO_CLASS = ("filler", "ordinary")  # rules of words.jsgf whose words do not mean one thing
FIXED = ("in twelve", "over twelve", "three four five")  # numbers that are part of a phrase, never another number


@dataclass(frozen=True, slots=True)
class Phrasing:
    """One way to ask for a topic: words, and references to the quantities between them."""

    topic: str
    parts: tuple[Word | Ref, ...]


class Phrasings:
    """The phrasings of a folder of grammars, and the words of its quantities."""

    def __init__(self, folder: Path = FOLDER) -> None:
        self.book = load(folder)
        self.quantities = self.book.grammars[QUANTITIES]
        self._sizes: dict[int, float] = {}

    @cached_property
    def all(self) -> list[Phrasing]:
        """Every example of every topic as a phrasing, none twice."""
        found = {
            Phrasing(rule.topic, parts): None
            for _, rule in self.book.topics()
            for example in rule.examples
            if (parts := self.parts(example))
        }
        return list(found)

    def parts(self, text: str) -> tuple[Word | Ref, ...]:
        """A sentence with references in place of its quantities; empty when part of it can't be said."""
        tokens = tokenize(text)
        words = [token.text for token in tokens]
        spans = {reading.start: reading for reading in _spans(readings(tokens), words, set(self.quantities.rules))}
        parts: list[Word | Ref] = []
        at = 0
        while at < len(words):
            if at in spans:
                parts.append(Ref(spans[at].kind, 0))
                at = spans[at].end
                continue
            if words[at].replace("'", "").replace("-", "").isalpha():
                parts.extend(Word(word) for word in words[at].split("-"))
            elif words[at][0].isalnum():
                return ()
            at += 1
        return tuple(parts)

    def expand(self, ref: Ref) -> Node | None:
        """What a reference to a quantity stands for."""
        return None if ref.name in BUILT_IN else self.quantities.rules[ref.name].body

    @cached_property
    def classes(self) -> dict[str, Node]:
        """The class of each word that belongs to exactly one."""
        found: dict[str, list[Node]] = {}
        for rule in self.book.grammars[WORDS].rules.values():
            for word in set() if rule.name in NO_CLASS else set(_words(rule.body)):
                found.setdefault(word, []).append(rule.body)
        return {word: bodies[0] for word, bodies in found.items() if len(bodies) == 1}

    def sentence(self, phrasing: Phrasing, random: Random) -> str:
        """One way to say a phrasing: its quantities drawn at random, some of its words put another way."""
        said: list[str] = []
        for part in phrasing.parts:
            said += self._draw(part, random)
            other = self.classes.get(part.text) if isinstance(part, Word) and random.random() < SWAP else None
            if other and not MISHEARD.intersection(words := self._draw(other, random)):
                said[-1:] = words
        return " ".join(_articles(said)).replace("what is", random.choice(("what is", "what's")))

    def draw(self, parts: Iterable[Node], random: Random) -> list[str]:
        """The words of some parts, one after the other."""
        return [word for part in parts for word in self._draw(part, random)]

    def _draw(self, node: Node, random: Random) -> list[str]:
        match node:
            case Word(text):
                return text.replace("-", " ").split()
            case Ref():
                body = self.expand(node)
                return [] if body is None else self._draw(body, random)
            case Tagged(part, _):
                return self._draw(part, random)
            case Series(parts):
                return self.draw(parts, random)
            case Either(parts):
                weights = [log2(1 + min(MOST, self._size(part))) for part in parts]
                return self._draw(random.choices(parts, weights)[0], random)
            case Maybe(part):
                return self._draw(part, random) if random.random() < MAYBE else []
            case Repeat(part, least):
                return [word for _ in range(random.randint(least, least + 1)) for word in self._draw(part, random)]

    def _size(self, node: Node) -> float:
        """How many sentences a node has, so that "zero" is not drawn as often as all the other numbers together."""
        if id(node) not in self._sizes:
            self._sizes[id(node)] = self._count(node)
        return self._sizes[id(node)]

    def _count(self, node: Node) -> float:
        match node:
            case Word():
                return 1
            case Ref():
                body = self.expand(node)
                return 1 if body is None else self._size(body)
            case Tagged(part, _) | Repeat(part, _):
                return self._size(part)
            case Either(parts):
                return sum(map(self._size, parts))
            case Maybe(part):
                return 1 + self._size(part)
            case Series(parts):
                total = 1.0
                for part in parts:
                    total *= self._size(part)
                return total


def _articles(words: list[str]) -> list[str]:
    """ "a eleven" made "an eleven", and no article before another: "a a half"."""
    said: list[str] = []
    for word, after in zip(words, [*words[1:], ""], strict=True):
        if word in ("a", "an"):
            if after not in ("a", "an"):
                said.append("an" if after.startswith(("a", "e", "i", "o", "u")) and after != "one" else "a")
        else:
            said.append(word)
    return said


def _words(node: Node) -> Iterator[str]:
    match node:
        case Word(text):
            yield from text.split()
        case Series(parts) | Either(parts):
            for part in parts:
                yield from _words(part)
        case Maybe(part) | Tagged(part, _) | Repeat(part, _):
            yield from _words(part)


def _spans(found: list[list[Reading]], words: list[str], kinds: set[str]) -> list[Reading]:
    """The quantities of a sentence: the surest first, then the longest, none over another."""

    def rank(reading: Reading) -> tuple[bool, int, int, float]:
        general = GENERAL.index(reading.kind) + 1 if reading.kind in GENERAL else 0
        return (reading.sure < 0.6, reading.start - reading.end, general if general != 2 else 0, -reading.sure)

    chosen: list[Reading] = []
    taken = {at for phrase in FIXED for at in _places(phrase.split(), words)}
    usable = [
        r for here in found for r in here
        if r.kind in kinds and r.sure >= SURE and words[r.start : r.end] != ["one"]
    ]  # fmt: skip
    for reading in sorted(usable, key=rank):
        span = set(range(reading.start, reading.end))
        fixed = reading.kind != "pitch" and span & taken
        if not fixed and not any(span & set(range(r.start, r.end)) for r in chosen):
            chosen.append(reading)
    return chosen


def _places(phrase: list[str], words: list[str]) -> Iterator[int]:
    same = {"12": "twelve", "3": "three", "4": "four", "5": "five"}
    said = [same.get(word, word) for word in words]
    for at in range(len(said)):
        if said[at : at + len(phrase)] == phrase:
            yield from range(at, at + len(phrase))
