"""Grammars compiled for matching: every topic's rule as patterns of islands, all islands in one trie.

An island is one element of a topic rule's top-level sequence: a phrase that is said in one piece. People vary the order
of the islands and put other words between them, so the matcher finds islands wherever they stand. Runs of plain words
form one island. Words of <filler> count for nothing and are dropped on both sides; rules of words.jsgf are classes
of words that mean one thing, and rules of quantities.jsgf stand for whatever the quantity reader finds.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass, field, fields
from functools import cache, cached_property, reduce
from itertools import product
from operator import or_
from pathlib import Path
from typing import Any, NamedTuple

from intents import grammars, jsgf, kept, talk_rules, tokens
from intents.grammars import BUILT_IN, COMMON, FOLDER, QUANTITIES, TALK, WORDS, Book
from intents.jsgf import Either, Grammar, GrammarError, Maybe, Node, Ref, Repeat, Rule, Series, Tagged, Word
from intents.talk_rules import Rules
from intents.tokens import tokenize

MANNER = "manner"  # the topic of the rules that say how to answer ("to the nearest 32nd"); they go with any other
KEPT = "phrases"  # the name of the copy beside the grammars
MOST_WAYS = 4000  # ways to say one island; more is a sign that it wants splitting
END = ""  # the trie's key for what ends at a node
BELOW = "\0"  # and for the topics that anything at or below it is of, as a mask of Phrases.bits

# One symbol of a phrase: a word, "<class>" of words, or "#kind" of quantity.
Symbol = str
Capture = tuple[str, int, str]  # parameter, index of the symbol it names (-1 for a fixed value), fixed value
Trie = dict[str, Any]  # a symbol leads deeper; END holds what ends here


@dataclass(frozen=True, slots=True)
class Way:
    """One way to say an island: its symbols and what they give."""

    symbols: tuple[Symbol, ...]
    captures: tuple[Capture, ...] = ()


class Island(NamedTuple):
    """Where a way belongs: pattern number, island number in it, and what it gives; plain tuples of it end the trie."""

    pattern: int
    number: int
    captures: tuple[Capture, ...]


@dataclass
class Pattern:
    """One alternative of a topic's rule: which islands it must have; `fills` names the parameters of each island."""

    topic: str
    required: list[bool] = field(default_factory=list)
    fills: list[frozenset[str]] = field(default_factory=list)
    whole: bool = False  # all that is outside [ ] must be said, the quantities too

    @cached_property
    def needed(self) -> int:
        """Mask of the islands outside [ ]."""
        return sum(1 << number for number, required in enumerate(self.required) if required)

    @cached_property
    def plain(self) -> int:
        """Mask of those that hold no quantity: all of them must be said."""
        return sum(1 << n for n, required in enumerate(self.required) if required and not self.fills[n])


@dataclass(slots=True)
class Phrases:
    """All patterns, the trie of their islands, the trie of word classes, and the words that mean something."""

    patterns: list[Pattern] = field(default_factory=list)
    trie: Trie = field(default_factory=dict)
    classes: Trie = field(default_factory=dict)
    fillers: frozenset[str] = frozenset()
    ordinary: frozenset[str] = frozenset()
    vocabulary: frozenset[str] = frozenset()
    topics_of: dict[str, set[str]] = field(default_factory=dict)  # symbol → topics whose islands use it
    examples: dict[str, tuple[str, ...]] = field(default_factory=dict)  # topic → sentences that ask for it
    talk: frozenset[str] = frozenset()  # words of the grammars matched as whole lines: no slips of trade words
    rules: dict[str, Rules] = field(default_factory=dict)  # those grammars themselves (see talk_rules.py)
    searched: frozenset[str] = frozenset()  # topics that have patterns
    bits: dict[str, int] = field(default_factory=dict)  # topic → the bit it has in masks of topics
    numbers: dict[str, set[int]] = field(default_factory=dict)  # topic → the numbers of its patterns
    kinds: dict[str, set[str]] = field(default_factory=dict)  # topic → kinds of quantities that its islands name


@cache
def compiled(folder: Path = FOLDER) -> Phrases:
    """The phrases of a folder of grammars; compiled once for as long as the files stay. Raises GrammarError."""
    stamp = kept.stamp(sorted(folder.glob("*.jsgf")), (jsgf, grammars, talk_rules, tokens, sys.modules[__name__]))
    plain = kept.fetch(folder, KEPT, stamp)
    if plain is not None:
        return Phrases([Pattern(*pattern) for pattern in plain[0]], *plain[1:])
    made = _Compiler(grammars.load(folder)).phrases()
    plain = [getattr(made, each.name) for each in fields(made)]
    plain[0] = [(pattern.topic, pattern.required, pattern.fills, pattern.whole) for pattern in made.patterns]
    kept.store(folder, KEPT, stamp, plain)
    return made


class _Compiler:
    def __init__(self, book: Book) -> None:
        self.book, self.out = book, Phrases()
        self.known: dict[tuple[str, str], list[Way]] = {}

    def phrases(self) -> Phrases:
        words = self.book.grammars.get(WORDS)
        if words:
            self.out.fillers = frozenset(self._words_of(words, "filler"))
            self.out.ordinary = frozenset((*self._words_of(words, "ordinary"), *self._common()))
            for rule in words.rules.values():
                if rule.name not in ("filler", "ordinary"):
                    self._add_class(words, rule)
        for grammar, rule in self.book.topics():
            self.out.examples[rule.topic] = self.out.examples.get(rule.topic, ()) + rule.examples
            if grammar.name in TALK:
                continue
            for alternative in rule.body.parts if isinstance(rule.body, Either) else (rule.body,):
                self._add_pattern(grammar, rule, alternative)
        for number, pattern in enumerate(self.out.patterns):
            self.out.numbers.setdefault(pattern.topic, set()).add(number)
        self.out.bits = {topic: 1 << at for at, topic in enumerate(self.out.numbers)}
        self.out.searched = frozenset(self.out.numbers) - {MANNER}
        self._mark(self.out.trie)
        self.out.vocabulary = frozenset(self._vocabulary())
        self.out.talk = frozenset(self.book.words(TALK))
        self.out.rules = talk_rules.talk_rules(self.book, TALK)
        return self.out

    def _mark(self, node: Trie) -> int:
        """Note at every node of the trie which topics it leads to: where none is likely, nobody need go on."""
        mask = 0
        for symbol, below in node.items():
            if symbol == END:
                mask |= reduce(or_, (self.out.bits[self.out.patterns[number].topic] for number, _, _ in below))
            else:
                mask |= self._mark(below)
        node[BELOW] = mask
        return mask

    def _common(self) -> Iterator[str]:
        common = self.book.grammars.get(COMMON)
        return self._words_of(common, COMMON) if common else iter(())

    def _words_of(self, grammar: Grammar, name: str) -> Iterator[str]:
        if name in grammar.rules:
            for way in self._ways(grammar, grammar.rules[name].body):
                yield from way.symbols

    def _add_class(self, grammar: Grammar, rule: Rule) -> None:
        for way in self._ways(grammar, rule.body):
            _insert(self.out.classes, way.symbols, f"<{rule.name}>")

    def _add_pattern(self, grammar: Grammar, rule: Rule, body: Node) -> None:
        number = len(self.out.patterns)
        pattern = Pattern(rule.topic, whole=rule.whole)
        self.out.patterns.append(pattern)
        for part in _islands(body):
            optional = isinstance(part, Maybe)
            ways = list(self._ways(grammar, part.part if isinstance(part, Maybe) else part))
            ways = [way for way in ways if way.symbols] or [Way(())]
            if len(ways) > MOST_WAYS:
                raise GrammarError(
                    grammar.file, rule.line, f"<{rule.name}> has an island of {len(ways)} ways: split it"
                )
            fills = frozenset(capture[0] for way in ways for capture in way.captures)
            pattern.required.append(not optional)
            pattern.fills.append(fills)
            for way in ways:
                if not way.symbols:
                    continue
                _insert(self.out.trie, way.symbols, tuple(Island(number, len(pattern.required) - 1, way.captures)))
                for symbol in way.symbols:
                    if symbol[0] == "#":
                        self.out.kinds.setdefault(rule.topic, set()).add(symbol[1:])
                    else:
                        self.out.topics_of.setdefault(symbol, set()).add(rule.topic)

    def _ways(self, grammar: Grammar, node: Node) -> list[Way]:
        if isinstance(node, Word):
            # A class keeps its small words ("back up"); elsewhere they count for nothing.
            skip = self.out.fillers if grammar.name != WORDS else ()
            return [Way(tuple(t.text for t in tokenize(node.text) if t.text not in skip))]
        if isinstance(node, Ref):
            return self._ref(grammar, node)
        if isinstance(node, Tagged):
            return [_tagged(way, node.tag) for way in self._ways(grammar, node.part)]
        if isinstance(node, Maybe):
            return [Way(()), *self._ways(grammar, node.part)]
        if isinstance(node, Repeat):  # said once is how a repeat is recognised; the quantity readers take long runs
            ways = self._ways(grammar, node.part)
            return ways if node.least else [Way(()), *ways]
        if isinstance(node, Either):
            return list(dict.fromkeys(way for part in node.parts for way in self._ways(grammar, part)))
        return [_joined(ways) for ways in product(*(self._ways(grammar, part) for part in node.parts))]

    def _ref(self, grammar: Grammar, ref: Ref) -> list[Way]:
        if ref.name in BUILT_IN:
            return [Way(())]
        source, rule = self.book.find(grammar, ref)
        if source.name == QUANTITIES:
            return [Way((f"#{rule.name}",))]
        if source.name == WORDS and grammar.name != WORDS:
            return [Way(())] if rule.name == "filler" else [Way((f"<{rule.name}>",))]
        key = (source.name, rule.name)
        if key not in self.known:
            self.known[key] = self._ways(source, rule.body)
        return self.known[key]

    def _vocabulary(self) -> Iterator[str]:
        yield from (symbol for symbol in self.out.topics_of if symbol[0] not in "#<")
        stack = [self.out.classes]
        while stack:
            for symbol, below in stack.pop().items():
                if symbol != END:
                    yield symbol
                    stack.append(below)


def _islands(body: Node) -> Iterator[Node]:
    """The islands of a sequence: its elements, with runs of plain words as one."""
    run: list[Node] = []
    for part in body.parts if isinstance(body, Series) else (body,):
        if isinstance(part, Word):
            run.append(part)
            continue
        if run:
            yield Series(tuple(run))
            run = []
        yield part
    if run:
        yield Series(tuple(run))


def _joined(ways: tuple[Way, ...]) -> Way:
    symbols: list[Symbol] = []
    captures: list[Capture] = []
    for way in ways:
        captures += [(name, at + len(symbols) if at >= 0 else at, fixed) for name, at, fixed in way.captures]
        symbols += way.symbols
    return Way(tuple(symbols), tuple(captures))


def _tagged(way: Way, tag: str) -> Way:
    """`{name}` names the one quantity of the part; `{name=value}` gives a fixed value."""
    name, _, fixed = tag.partition("=")
    if fixed:
        return Way(way.symbols, (*way.captures, (name.strip(), -1, fixed.strip())))
    at = next((i for i, symbol in enumerate(way.symbols) if symbol[0] == "#"), -1)
    return Way(way.symbols, (*way.captures, (name.strip(), at, "")))


def _insert(trie: Trie, symbols: tuple[Symbol, ...], end: object) -> None:
    node = trie
    for symbol in symbols:
        node = node.setdefault(symbol, {})
    node.setdefault(END, []).append(end)
