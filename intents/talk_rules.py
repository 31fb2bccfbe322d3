"""Rules of talk, compiled for talk.py: plain tuples, each with the words it can begin with and those it must have.

A line is held against every rule, and nearly every rule fails at its first word; knowing the words beforehand, most are
never tried. Words are kept read apart ("whats" is what is), as the line's own are.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from intents.grammars import Book, leaves
from intents.jsgf import Either, Grammar, Maybe, Node, Ref, Repeat, Tagged, Word

WORD, RULE, ANYTHING, QUANTITY, TAG, MAYBE, EITHER, REPEAT, SERIES = range(9)
KINDS = frozenset(("length", "pitch", "angle", "percent", "number", "temperature", "area", "money", "weight", "volume"))
KNOWN = "<known>"  # stands among first words for the names that values are kept under
NUMBER = "#"  # and this for any quantity

# (what it is, words it can begin with or None for any, sets of words of which each must have one in the line, then:
# the words | a rule's name | nothing | a kind | part, tag | part | parts | part, least times | parts)
Part = tuple[Any, ...]
Firsts = frozenset[str] | None
Needs = tuple[frozenset[str], ...]
Rules = dict[str, tuple[str, Part]]  # a rule's name → its topic and its body

# Run together in speech and in typing: read apart, in the line and in the grammar alike.
APART = {
    "whats": "what is", "hows": "how is", "thats": "that is", "its": "it is", "wheres": "where is",
    "whatve": "what have", "theres": "there is", "heres": "here is", "weve": "we have", "ive": "i have", "im": "i am",
    "youve": "you have", "youre": "you are",
    "dont": "do not", "doesnt": "does not", "didnt": "did not", "isnt": "is not", "wasnt": "was not", "cant": "can not",
    "couldnt": "could not", "shouldnt": "should not", "wouldnt": "would not", "howd": "how did", "whatd": "what did",
    "id": "i would", "ill": "i will", "lets": "let us", "theyve": "they have", "cannot": "can not",
    "whered": "where did", "shouldve": "should have", "wouldve": "would have", "youd": "you would", "whens": "when is",
    "whos": "who is",
    "wats": "what is", "wat": "what", "wot": "what", "eye": "i", "inn": "in", "reed": "read", "rite": "right",
    "arent": "are not", "werent": "were not", "hasnt": "has not", "havent": "have not", "wont": "will not",
    "theyre": "they are", "shes": "she is", "hes": "he is", "wood": "would", "wrongs": "wrong is",
}  # fmt: skip


def apart(text: str) -> tuple[str, ...]:
    """The words of a text, read apart."""
    return tuple(
        part for word in text.split() for part in APART.get(word.replace("'", ""), word.replace("'", "")).split()
    )


def talk_rules(book: Book, names: Iterable[str]) -> dict[str, Rules]:
    """The compiled rules of the grammars of these names, those they import from one another among them."""
    found: dict[str, Rules] = {}
    for name in names:
        if name in book.grammars:
            compiler = _Compiler(book.grammars[name], found.get("job", {}))
            rules = book.grammars[name].rules.values()
            found[name] = {rule.name: (rule.topic, compiler.rule(rule.name)) for rule in rules}
            found[name]["fluff"] = ("", _fluff(book.grammars[name]))
    return found


def _fluff(grammar: Grammar) -> Part:
    """Words that may stand between any two, as one part that begins with each of them."""
    rule = grammar.rules.get("fluff")
    words = frozenset(leaf.text for leaf in leaves(rule.body) if isinstance(leaf, Word)) if rule else frozenset()
    return (EITHER, words, (), ())


class _Compiler:
    def __init__(self, grammar: Grammar, more: Rules) -> None:
        self.rules, self.more = grammar.rules, more
        self.known: dict[str, Part] = {}

    def rule(self, name: str) -> Part:
        if name not in self.known:
            self.known[name] = self.part(self.rules[name].body)
        return self.known[name]

    def part(self, node: Node) -> Part:
        if isinstance(node, Word):
            words = apart(node.text)
            return (WORD, frozenset(words[:1]), tuple(frozenset((word,)) for word in words), words)
        if isinstance(node, Ref):
            return self.reference(node.name.rsplit(".", 1)[-1])
        if isinstance(node, Tagged):
            part = self.part(node.part)
            return (TAG, part[1], part[2], part, node.tag)
        if isinstance(node, Maybe):
            return (MAYBE, None, (), self.part(node.part))
        if isinstance(node, Repeat):
            part = self.part(node.part)
            return (REPEAT, part[1], part[2], part, 1) if node.least else (REPEAT, None, (), part, 0)
        parts = tuple(self.part(part) for part in node.parts)
        if isinstance(node, Either):
            return (EITHER, _united(part[1] for part in parts), _either_needs(parts), parts)
        return (SERIES, _first_of(parts), tuple(need for part in parts for need in part[2]), parts)

    def reference(self, name: str) -> Part:
        if name == "anything":
            return (ANYTHING, None, ())
        if name in KINDS and name not in self.rules:
            return (QUANTITY, frozenset((NUMBER,)), (frozenset((NUMBER,)),), name)
        part = self.rule(name) if name in self.rules else self.more[name][1] if name in self.more else None
        if part is None:
            return (EITHER, frozenset(), (), ())
        if name == "known":
            return (RULE, part[1] and part[1] | {KNOWN}, (), name)
        return (RULE, part[1], part[2], name)


def _united(firsts: Iterable[Firsts]) -> Firsts:
    found: set[str] = set()
    for words in firsts:
        if words is None:
            return None
        found |= words
    return frozenset(found)


def _first_of(parts: tuple[Part, ...]) -> Firsts:
    """What a sequence can begin with: parts that may be left out, up to the first that may not."""
    found: set[str] = set()
    for part in parts:
        inner = part[3] if part[0] in (MAYBE, REPEAT) else part
        if inner[1] is None:
            return None
        found |= inner[1]
        if part[1] is not None:
            return frozenset(found)
    return None


def _either_needs(parts: tuple[Part, ...]) -> Needs:
    """One word of each alternative's rarest need, where every alternative has one."""
    if not parts or not all(part[2] for part in parts):
        return ()
    return (frozenset(word for part in parts for word in min(part[2], key=len)),)
