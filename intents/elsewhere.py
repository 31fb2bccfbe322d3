"""What a line asks that nobody here works out: another trade's work, how long it takes, what holds, what is legal.

Two kinds of rule in grammars/outside.jsgf. Some words give a line away wherever it is no whole question of ours ("snow
load"). The others tell it by what it asks for, though it holds all the givens of one of our topics; they hold unless the
line asks, in other words, for something a topic gives.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path

from intents.expressions import expression
from intents.grammars import FOLDER
from intents.phrases import compiled
from intents.question import Question
from intents.talk import DENIALS, GAP, SEARCHED, Captures, Line, Said
from intents.talk_rules import NUMBER, Part

OUTSIDE, OURS = "outside", "ours"
ASKED, UNLESS = "asked", "unless"  # tags: of a rule that tells by what is asked; of what says that it is ours after all
BESIDE = 1  # words that may stand between two of such a rule
MOST_BETWEEN = 12  # and where it says <anything>
SENTENCE_ENDS = frozenset(".?!;")
_TRADES = frozenset("electric gas plumbing fall".split())  # who may stand in the story before a question
_COUNTED = {
    "by the same rate": ({"length_done", "length"}, {"area_done", "area"}, {"number_done", "number"}),
    "boxes": ({"count", "box"},),
}
_THINGS = frozenset("other paint plumbing structure".split())  # whose things may be counted
_PARTS = expression(r"[,;.!]\s+|\s(?=(?:but|so) )")
_ASKS = expression(r"\?|\b(?:how|whats?|what's|which|can(?!'t)|could|should|will|would|do i|do we|need|want)\b", re.IGNORECASE)


def of_another(text: str, best: Question | None) -> Said | None:
    """What in the line is another's to work out; `best` is a whole question of ours.

    What is only counted by what the line tells of it is ours, whatever it is: nine bundles did three squares, how many for 14.
    """
    other = outside_of(text, best is not None)
    if other is None or best is None or not best.plain:
        return other
    pairs = _COUNTED.get(best.topic, ())
    counted = any(pair <= best.givens.keys() for pair in pairs) and other.words.get("who") in _THINGS
    # What carries is not told by how many did before.
    held = best.topic != "boxes" and other.words.get("who") == "structure"
    return None if counted and not held else other


@lru_cache(maxsize=4)  # asked before and after what the line comes to
def outside_of(text: str, whole: bool = False, folder: Path = FOLDER) -> Said | None:
    """What in the line is another's to work out, or None; of a `whole` question of ours only by what it asks for."""
    rules = compiled(folder).rules[OUTSIDE]
    line = _Asked(text, rules, (), BESIDE)
    for topic, body in rules.values():
        for start, end, captures in line.places(body) if topic else ():
            said = line.said(topic, captures)
            if ASKED in said.words and not line.is_ours(said, start, end):
                return said
    if whole:
        return None
    found = (said for said in Line(text, rules, (), GAP).find(rules) if ASKED not in said.words)
    other = next((said for said in found if not line.spared(said)), None)
    return None if other is not None and other.words.get("who") in _TRADES and _only_told(text, folder) else other


@lru_cache(maxsize=4)
def _only_told(text: str, folder: Path) -> bool:
    """Whether another trade is in the story before a question of ours alone: the electrician's in my way, but what's the …"""
    parts = [part for part in _PARTS.split(text) if part.strip()]
    rules = compiled(folder).rules[OUTSIDE]
    ours = rules[OURS][1]
    for at, part in enumerate(parts[1:], 1):
        line = _Asked(part, rules, (), BESIDE)
        if _ASKS.search(" ".join(parts[:at])):
            return False
        if any(True for _ in line.places(ours)):
            rest = " ".join(parts[at:])
            return any(char.isdigit() for char in rest) and outside_of(rest, folder=folder) is None
    return False


class _Asked(Line):
    """A line searched for what it asks: few words may stand between two, but any where a rule says <anything>."""

    def places(self, body: Part) -> Iterator[tuple[int, int, Captures]]:
        """Where a rule is found, as short as it can be."""
        firsts = body[1]
        for start in range(min(len(self.words), SEARCHED)) if self.possible(body) else ():
            if firsts is not None and self.words[start] not in firsts and NUMBER not in firsts:
                continue
            found = min(self.match(body, start), key=lambda way: way[0], default=None)
            if found:
                yield start, *found

    def is_ours(self, said: Said, start: int, end: int) -> bool:
        """Whether other words of the line ask for what a topic gives, or these ask for it after all."""
        if self.spared(said) or self._stated(end):
            return True
        return any(not start <= at < end for at, _, _ in self.places(self.rules[OURS][1]))

    def _stated(self, end: int) -> bool:
        """Whether what was found stands in a sentence that only states something, and another after it asks."""
        ends = (word for word in self.words[end - 1 :] if word in SENTENCE_ENDS)
        return next(ends, "") in (".", "!", ";") and "?" in ends

    def spared(self, said: Said) -> bool:
        """Whether words of the line say that these are something else after all: guy wire."""
        names = [said.words[UNLESS]] if UNLESS in said.words else []
        return any(True for name in names for _ in self.places(self.rules[name][1]))

    def _anything(self, at: int) -> Iterator[tuple[int, Captures]]:
        """No words, or up to a dozen of the same sentence; none that turns it round."""
        for end in range(at, min(len(self.words), at + MOST_BETWEEN) + 1):
            yield end, ()
            if end < len(self.words) and self.words[end] in SENTENCE_ENDS | DENIALS:
                return
