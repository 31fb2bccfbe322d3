"""Talk about the work itself, read as whole lines: "note: …", "flag that", "what did I ask about soffit".

Questions vary their order and are found by islands (matcher.py). Talk does not: what makes "show me step two" talk is
that nothing else is said. So a rule of a talk grammar must account for every word of the line; <anything> stands for
words of the person's own. Only the rules of `outside` are found anywhere in a line (see elsewhere.py).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from intents.fitting import EDGE_KINDS
from intents.grammars import FOLDER
from intents.measures import readings
from intents.phrases import compiled
from intents.put_right import put_right
from intents.reading import Reading
from intents.said_once import said_once
from intents.sound_alikes import settled
from intents.spelling import Speller
from intents.talk_rules import (
    ANYTHING,
    EITHER,
    KINDS,
    KNOWN,
    MAYBE,
    NUMBER,
    REPEAT,
    RULE,
    SERIES,
    TAG,
    WORD,
    Part,
    Rules,
    apart,
)
from intents.tokens import Token, tokenize
from intents.vocabulary import NUMBER_WORDS

JOB, GIST = "job", "gist"
_SIGNS = ("%", "°", "'", '"')  # what these stand after is nothing without them
LONGEST = 4800  # characters read for commands; a note keeps the rest as it stands
MOST_PASSED = 12  # signs and small words in a row that are passed over; a page of brackets is no talk
SHORT = 60  # tokens; in a longer line one's own words run to its end
GAP = 5  # words that may stand between two of an outside rule
DENIALS = frozenset(("not", "no", "never"))  # turn what follows round, so they are never passed over
SEARCHED = 80  # tokens of a line in which something is sought that may stand anywhere
Captures = tuple[tuple[str, int, int], ...]  # tag, first token, token after the last


@dataclass(frozen=True, slots=True)
class Said:
    """A line read as talk: which rule, the quantities and the words it was said with, and how much was free words.

    `values` holds every reading of a quantity's words, for the act to choose by dimension.
    """

    topic: str
    values: Mapping[str, tuple[Reading, ...]] = field(default_factory=dict)
    words: Mapping[str, str] = field(default_factory=dict)
    free: int = 0

    @property
    def loose(self) -> bool:
        """Whether a question, if the line could be one, goes first."""
        return "loose" in self.words or "about" in self.words


def talk_of(text: str, names: Iterable[str] = (), folder: Path = FOLDER) -> Said | None:
    """The line as talk about the job, or None. `names`: what values are kept under, beside the grammar's own."""
    return _talk_of(text, tuple(names), folder)


@lru_cache(maxsize=8)  # a line is held against it as a question, as a change, and beside what was stated
def _talk_of(text: str, names: tuple[str, ...], folder: Path) -> Said | None:
    rules = compiled(folder).rules[JOB]
    line = Line(text, rules, names)
    found = line.read()
    if found is None and len(_tokens_of(text, True)[0]) != len(line.tokens):
        found = Line(text, rules, names, mend=True).read()
    if found is None and line.respell(_speller(folder)):
        found = line.read()
    return found


def gists_of(text: str, names: Iterable[str] = (), folder: Path = FOLDER) -> Iterator[Said]:
    """What a long line that is no question may come to, as talk about the job, the likeliest first."""
    rules = compiled(folder).rules
    line = Line(text, rules[GIST] | rules[JOB], tuple(names), GAP, mend=True)
    found = 0
    for said in line.find(rules[GIST]):
        found += 1
        yield said
    if not found and line.respell(_speller(folder)):
        yield from line.find(rules[GIST])


@cache
def _speller(folder: Path) -> Speller:
    phrases = compiled(folder)
    return Speller(phrases.talk | NUMBER_WORDS, phrases.vocabulary | phrases.ordinary | phrases.fillers)


def _apart(token: Token, text: str) -> list[Token]:
    """A token as the words it is: "what's" and "whats" are what is, and a possessive may be an is."""
    words = _plain(token.text) if token.text[:1].isalpha() else (token.text,)
    found = [Token(word, token.start, token.end) for word in words]
    after = text[token.end : token.end + 3].replace("’", "'").lower()
    possessive = after[:2] == "'s" and not after[2:].isalnum() and text[token.end - 1 : token.end].isalpha()
    if possessive and words[-1] != "is":
        found.append(Token("is", token.end, token.end + 2))
    return found


_plain = lru_cache(maxsize=4096)(apart)


@lru_cache(maxsize=8)  # a line is held against several grammars
def _typed(text: str) -> tuple[list[Token], list[list[Reading]]]:
    typed = tokenize(text[:LONGEST])
    starts = {token.start for token in typed}
    typed = settled(typed).tokens
    tokens = [part for token in typed for part in _apart(token, "" if token.end in starts else text)]
    return tokens, readings(tokens)


@lru_cache(maxsize=8)
def _tokens_of(text: str, mend: bool) -> tuple[list[Token], list[list[Reading]]]:
    tokens, rows = _typed(text)
    if mend and put_right(tokens, rows) is None:
        return _tokens_of(text, False)
    return said_once(tokens, mend, rows)


@lru_cache(maxsize=8)
def _by_words(names: tuple[str, ...]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """What values are kept under, each with its words."""
    return tuple((name, _plain(name)) for name in names)


@lru_cache(maxsize=128)
def heard_in(text: str) -> tuple[list[Token], list[list[Reading]]]:
    """The tokens of a text and their readings, each quantity as it was meant in the end."""
    return said_once(settled(tokenize(text)).tokens)


class Line:
    """One line being matched: `gap` is how many words that are nobody's may be passed over; `mend` reads a quantity that
    was put right as what it was put right to."""

    def __init__(self, text: str, rules: Rules, names: tuple[str, ...], gap: int = 0, mend: bool = False) -> None:
        self.text, self.rules, self.gap = text, rules, gap
        self.names = _by_words(names)
        self.known = frozenset(words[0] for _, words in self.names if words)
        self.fluff = rules["fluff"][1][1]
        self.tokens, self.rows = _tokens_of(text, mend)
        self.soft = {i for i, t in enumerate(self.tokens) if t.text == "is" and text[t.start : t.end][:1] in "'’"}
        self._take([token.text for token in self.tokens])

    def _take(self, words: list[str]) -> None:
        self.words = words
        self.passable = [
            at in self.soft or word in self.fluff or not (word[0].isalnum() or word[0] in "'\"-") for at, word in enumerate(words)
        ]
        self.all = {*words, NUMBER} if any(self.rows) else set(words)
        self.begins: dict[tuple[int, bool], set[str]] = {}
        self.could: dict[int, bool] = {}

    def respell(self, speller: Speller) -> bool:
        """Forgive slips in the words; whether there were any."""
        words = [speller.read(word) for word in self.words]
        changed = words != self.words
        if changed:
            self.rows = readings([Token(word, t.start, t.end) for word, t in zip(words, self.tokens, strict=True)])
            self._take(words)
        return changed

    def read(self) -> Said | None:
        """The rule that takes the whole line with the fewest free words; of equals the first."""
        best: Said | None = None
        starts, last = self._after("polite", 0), len(self.words)
        for topic, body in self.rules.values():
            for start in starts if topic and self.possible(body) else ():
                for end, captures in self.match(body, start):
                    if last not in {self._past(end) for end in self._after("close", end)}:
                        continue
                    said = self.said(topic, captures)
                    if best is None or (said.loose, said.free) < (best.loose, best.free):
                        best = said
        return best

    def _after(self, name: str, at: int) -> set[int]:
        """Where a line may go on from `at`, with what is only polite said or not."""
        if name not in self.rules:
            return {at}
        return {at, *(end for end, _ in self._repeat(self.rules[name][1], at, 0, True))}

    def find(self, rules: Rules) -> Iterator[Said]:
        """The rules found anywhere in the line, each once, as long as it can be."""
        for topic, body in rules.values():
            for start in range(min(len(self.words), SEARCHED)) if topic and self.possible(body) else ():
                found = max(self.match(body, start), key=lambda way: way[0], default=None)
                if found:
                    yield self.said(topic, found[1])
                    break

    def possible(self, part: Part) -> bool:
        """Whether the line has every word the part can't do without."""
        key = id(part)
        found = self.could.get(key)
        if found is None:
            found = self.could[key] = not any(need.isdisjoint(self.all) for need in part[2])
        return found

    def _begins(self, at: int, first: bool) -> set[str]:
        """The words with which something could begin at token `at`."""
        key = (at, first)
        if key not in self.begins:
            found = {self.words[start] for start in self._starts(at, first)}
            if not found.isdisjoint(self.known):
                found.add(KNOWN)
            if any(self.rows[start] for start in self._starts(at, False)):
                found.add(NUMBER)
            self.begins[key] = found
        return self.begins[key]

    def match(self, part: Part, at: int, first: bool = True) -> Iterator[tuple[int, Captures]]:
        """Every way to say `part` from token `at` on: the token after it, and what it captures."""
        what, firsts = part[0], part[1]
        if firsts is not None and firsts.isdisjoint(self._begins(at, first)):
            return
        if what == EITHER:
            begins = self._begins(at, first)
            for one in part[3]:
                if (one[1] is None or not one[1].isdisjoint(begins)) and self.possible(one):
                    yield from self.match(one, at, first)
        elif what == SERIES:
            yield from self._series(part[3], at, first)
        elif what == TAG:
            for end, captures in self.match(part[3], at, first):
                yield end, (*captures, (part[4], self._from(at), end))
        elif what == MAYBE:
            yield from self.match(part[3], at, first)
            yield at, ()
        elif what == REPEAT:
            yield from self._repeat(part[3], at, part[4], first)
        elif what == ANYTHING:
            yield from self._anything(at)
        else:
            yield from self._leaf(what, part[3], at, first)

    def _leaf(self, what: int, said: Any, at: int, first: bool) -> Iterator[tuple[int, Captures]]:
        if what == WORD:
            yield from self._literal(said, at, first)
        elif what == RULE:
            yield from self._rule(said, at, first)
        else:
            yield from self._quantity(said, at)

    def _series(self, parts: tuple[Part, ...], at: int, first: bool) -> Iterator[tuple[int, Captures]]:
        """The parts one after another; what comes to the same by two roads is gone on from once."""
        states: dict[tuple[int, Captures], None] = {(at, ()): None}
        for part in parts:
            states = {
                (end, captures + more): None
                for here, captures in states
                for end, more in self.match(part, here, first and here == at)
            }
        yield from states

    def _repeat(self, part: Part, at: int, least: int, first: bool) -> Iterator[tuple[int, Captures]]:
        if least == 0:
            yield at, ()
        ahead: list[tuple[int, Captures]] = [(at, ())]
        seen = set(ahead)
        while ahead:
            here, captures = ahead.pop()
            for end, more in self.match(part, here, first and here == at):
                state = (end, captures + more)
                if end > here and state not in seen:
                    seen.add(state)
                    ahead.append(state)
                    yield state

    def _literal(self, wanted: tuple[str, ...], at: int, first: bool) -> Iterator[tuple[int, Captures]]:
        for start in self._starts(at, first):
            end = start
            for word in wanted:
                end = end if end == start else self._past(end)
                if end >= len(self.words) or self.words[end] != word:
                    break
                end += 1
            else:
                yield end, ()
                return

    def _starts(self, at: int, first: bool) -> Iterator[int]:
        """Places from `at` on, past what may be passed over."""
        passed, last = 0, min(len(self.words), at + MOST_PASSED)
        while at < last:
            yield at
            if not self.passable[at]:
                if self.words[at] in DENIALS:
                    return
                if self.rows[at] and self.words[at] != "one":
                    return  # a number is somebody's
                passed += 1
                if passed > self.gap or (first and self.gap):
                    return
            at += 1

    def _past(self, at: int) -> int:
        while at < len(self.words) and self.passable[at]:
            at += 1
        return at

    def _from(self, at: int) -> int:
        return self._past(at) if at < len(self.words) and not self.words[at][0].isalnum() else at

    def _rule(self, name: str, at: int, first: bool) -> Iterator[tuple[int, Captures]]:
        yield from self.match(self.rules[name][1], at, first)
        for known, words in self.names if name == "known" else ():
            for end, _ in self._literal(words, at, first):
                yield end, ((f"what={known}", at, end),)

    def _anything(self, at: int) -> Iterator[tuple[int, Captures]]:
        """Any words: to the end of the line first, then fewer."""
        last = len(self.words)
        while at < last and not (self.words[at][0].isalnum() or self.words[at][0] in "'\""):
            at += 1
        for end in range(last, at, -1) if last <= SHORT else ((last,) if at < last else ()):
            yield end, (("", at, end),)

    def _quantity(self, kind: str, at: int) -> Iterator[tuple[int, Captures]]:
        kinds = EDGE_KINDS.get(kind, (kind,))
        for start in self._starts(at, False):
            for reading in self.rows[start]:
                if reading.kind in kinds:
                    yield reading.end, ()

    def said(self, topic: str, captures: Captures) -> Said:
        values: dict[str, tuple[Reading, ...]] = {}
        words: dict[str, str] = {}
        free = 0
        for tag, start, end in captures:
            name, fixed, value = tag.partition("=")
            if fixed:
                words[name.strip()] = value.strip()
            elif not tag:
                free += end - start
            else:
                words[name] = self._spoken(start, end)
                found = [row for at in range(start, end) for row in self.rows[at] if row.end == end]
                first = max(self._past(start), min((row.start for row in found), default=0) if self.gap else 0)
                if found and min(row.start for row in found) <= first:
                    values[name] = tuple(row for row in found if row.start <= first)
        return Said(topic, values, words, free)

    def _spoken(self, start: int, end: int) -> str:
        """The person's own words for tokens start to end; to the end of the line all that was said."""
        if start >= end:
            return ""
        end += end < len(self.tokens) and self.tokens[end].text in _SIGNS
        last = len(self.text) if end == len(self.tokens) else self.tokens[end - 1].end
        return re.sub(r"^[\s:,;.–—-]+(?=[^\s\d])", "", self.text[self.tokens[start].start : last]).strip()


def readings_in(text: str) -> tuple[Reading, ...]:
    """All readings of the first quantity of a text that are as long as the longest."""
    for row in heard_in(text)[1]:
        longest = max((reading.end for reading in row if reading.kind in KINDS), default=0)
        if longest:
            return tuple(reading for reading in row if reading.end == longest)
    return ()


def numbers_in(text: str) -> list[Reading]:
    """The quantities of a text, one after the other, the longest reading of each."""
    return list(_numbers(text))


@lru_cache(maxsize=128)
def _numbers(text: str) -> tuple[Reading, ...]:
    """The same, kept for a while: what a line may change is asked of the same few texts a hundred times."""
    rows = heard_in(text)[1]
    found: list[Reading] = []
    at = 0
    while at < len(rows):
        plain = [row for row in rows[at] if row.kind in KINDS]  # a ratio is not: 1/8 is a length's number first
        if plain:
            found.append(max(plain, key=lambda row: (row.end, row.kind != "number", row.sure)))
            at = found[-1].end
        else:
            at += 1
    return tuple(found)
