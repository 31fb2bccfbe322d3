"""The grammars folder, loaded and checked: imports resolve, no cycle, every reference has its rule."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from intents.jsgf import (
    Either,
    Grammar,
    GrammarError,
    Maybe,
    Node,
    Ref,
    Repeat,
    Rule,
    Series,
    Tagged,
    Word,
    read_grammar,
)

FOLDER = Path(__file__).resolve().parent.parent / "grammars"
QUANTITIES, WORDS, COMMON = "quantities", "words", "common"
TALK = ("job", "gist", "outside")  # matched as whole lines (see talk.py), not as islands
BUILT_IN = {"NULL", "VOID"}
Place = tuple[str, str]  # a file and a rule in it


@dataclass(slots=True)
class Book:
    """All grammars of a folder."""

    grammars: dict[str, Grammar]

    def find(self, grammar: Grammar, ref: Ref) -> tuple[Grammar, Rule]:
        """The rule a reference names: in its own file, or in one that the file imports. Raises GrammarError."""
        wanted = ref.name.rsplit(".", 1)[-1]
        if wanted in grammar.rules:
            return grammar, grammar.rules[wanted]
        sources = [
            self.grammars[name.split(".")[0]] for name, _ in grammar.imports if name.endswith((".*", f".{wanted}"))
        ]
        found = [(source, source.rules[wanted]) for source in sources if wanted in source.rules]
        if len(found) > 1:
            both = " and ".join(source.name for source, _ in found)
            raise GrammarError(grammar.file, ref.line, f"<{ref.name}> is defined in {both}: rename one")
        if found:
            return found[0]
        raise GrammarError(grammar.file, ref.line, f"<{ref.name}> is not defined here or in what is imported")

    def topics(self) -> Iterator[tuple[Grammar, Rule]]:
        """The public rules that stand for topics."""
        for grammar in self.grammars.values():
            for rule in grammar.rules.values():
                if rule.topic:
                    yield grammar, rule

    def words(self, names: Iterable[str]) -> Iterator[str]:
        """Every word that stands in the grammars of these names."""
        for name in names:
            for rule in self.grammars[name].rules.values() if name in self.grammars else ():
                for node in leaves(rule.body):
                    yield from node.text.split() if isinstance(node, Word) else ()


@cache
def load(folder: Path = FOLDER) -> Book:
    """Read and check all grammars of a folder. Raises GrammarError."""
    book = Book({})
    for path in sorted(folder.glob("*.jsgf")):
        grammar = read_grammar(path)
        if grammar.name != path.stem:
            raise GrammarError(path.name, 2, f"the grammar must be named {path.stem}, like its file")
        book.grammars[grammar.name] = grammar
    ended: set[Place] = set()
    for grammar in book.grammars.values():
        for name, line in grammar.imports:
            if name.split(".")[0] not in book.grammars:
                raise GrammarError(grammar.file, line, f"there is no grammar {name.split('.')[0]} to import")
        for rule in grammar.rules.values():
            _check_ends(book, grammar, rule, (), ended)
    return book


def leaves(node: Node) -> Iterator[Word | Ref]:
    """All words and references in a body."""
    if isinstance(node, Word | Ref):
        yield node
    elif isinstance(node, Series | Either):
        for part in node.parts:
            yield from leaves(part)
    elif isinstance(node, Maybe | Repeat | Tagged):
        yield from leaves(node.part)


def references(node: Node) -> Iterator[Ref]:
    """All references in a body."""
    return (leaf for leaf in leaves(node) if isinstance(leaf, Ref))


def _check_ends(book: Book, grammar: Grammar, rule: Rule, above: tuple[Place, ...], ended: set[Place]) -> None:
    """Raises GrammarError for a rule that leads back to itself: what it says could never end."""
    key = (grammar.file, rule.name)
    if key in above:
        raise GrammarError(grammar.file, rule.line, f"<{rule.name}> leads back to itself and can't end")
    if key in ended:
        return
    for ref in references(rule.body):
        if ref.name not in BUILT_IN:
            source, target = book.find(grammar, ref)
            _check_ends(book, source, target, (*above, key), ended)
    ended.add(key)
