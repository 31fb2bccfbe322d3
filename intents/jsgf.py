"""JSGF, the open JSpeech Grammar Format, read into a small tree.

Covers what the grammars use: header, grammar name, imports, rules (public or not), alternatives, grouping, optional
parts, repeats, tags, weights, comments, and documentation comments with @topic and @example lines.
A broken file raises GrammarError with file, line and reason.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from intents.expressions import expression

_PIECE = expression(
    r"(?P<doc>/\*\*.*?\*/)|(?P<comment>/\*.*?\*/|//[^\n]*)|(?P<weight>/\s*[\d.]+\s*/)|(?P<space>\s+)"
    r"|(?P<rule><[^<>\s]+>)|(?P<tag>\{(?:\\.|[^}\\])*\})|(?P<sign>[=;|()\[\]*+])"
    r'|(?P<quoted>"[^"\n]*")|(?P<word>[^\s=;|()\[\]*+<>{}"/]+)',
    re.DOTALL,
)


class GrammarError(ValueError):
    """A grammar that can't be used: which file, which line, and why."""

    def __init__(self, file: str, line: int, reason: str) -> None:
        super().__init__(f"{file}, line {line}: {reason}")
        self.file, self.line, self.reason = file, line, reason


@dataclass(frozen=True, slots=True)
class Word:
    """A literal word."""

    text: str


@dataclass(frozen=True, slots=True)
class Ref:
    """A reference to another rule."""

    name: str
    line: int


@dataclass(frozen=True, slots=True)
class Series:
    """Parts said one after the other."""

    parts: tuple[Node, ...]


@dataclass(frozen=True, slots=True)
class Either:
    """One of several parts."""

    parts: tuple[Node, ...]


@dataclass(frozen=True, slots=True)
class Maybe:
    """A part that may be left out."""

    part: Node


@dataclass(frozen=True, slots=True)
class Repeat:
    """A part said again and again: at least `least` (0 or 1) times."""

    part: Node
    least: int


@dataclass(frozen=True, slots=True)
class Tagged:
    """A part that carries a tag, as `<pitch> {pitch}` or `(square) {fascia=SQUARE}`."""

    part: Node
    tag: str


Node = Word | Ref | Series | Either | Maybe | Repeat | Tagged


@dataclass(slots=True)
class Rule:
    """A rule; `topic` and `examples` come from its documentation comment."""

    name: str
    public: bool
    body: Node
    line: int
    topic: str = ""
    summary: str = ""
    examples: tuple[str, ...] = ()
    whole: bool = False  # @whole: every island outside [ ] must be said, those that hold a quantity too


@dataclass(slots=True)
class Grammar:
    """One file: its name, what it imports, its rules in order."""

    name: str
    file: str
    imports: list[tuple[str, int]] = field(default_factory=list)
    rules: dict[str, Rule] = field(default_factory=dict)


def read_grammar(path: Path) -> Grammar:
    """Parse one file. Raises GrammarError."""
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        raise GrammarError(path.name, 1, "it is not UTF-8 text") from None
    return parse(text, path.name)


def parse(text: str, file: str = "grammar") -> Grammar:
    """Parse the text of a grammar. Raises GrammarError."""
    first = text.split("\n", 1)[0].rstrip("\r; \t")
    if not re.fullmatch(r"#JSGF V1\.0( [\w-]+( [\w-]+)?)?", first):
        raise GrammarError(file, 1, "the first line must be the header, like #JSGF V1.0 UTF-8 en;")
    return _Parser(file, list(_pieces(text, file))).grammar()


def _pieces(text: str, file: str) -> Iterator[tuple[str, str, int]]:
    at, line = text.find("\n") + 1 or len(text), 2
    while at < len(text):
        match = _PIECE.match(text, at)
        if match is None:
            raise GrammarError(file, line, f"{text[at]!r} can't stand here")
        kind = match.lastgroup or ""
        if kind not in ("space", "comment"):
            yield kind, match.group(), line
        line += match.group().count("\n")
        at = match.end()


class _Parser:
    def __init__(self, file: str, pieces: list[tuple[str, str, int]]) -> None:
        self.file, self.pieces, self.at = file, pieces, 0

    def fail(self, reason: str) -> GrammarError:
        line = self.pieces[min(self.at, len(self.pieces) - 1)][2] if self.pieces else 1
        return GrammarError(self.file, line, reason)

    def peek(self) -> str:
        return self.pieces[self.at][1] if self.at < len(self.pieces) else ""

    def kind(self) -> str:
        return self.pieces[self.at][0] if self.at < len(self.pieces) else ""

    def take(self) -> str:
        text = self.peek()
        self.at += 1
        return text

    def expect(self, text: str) -> None:
        if self.peek() != text:
            found = self.peek() or "the end of the file"
            raise self.fail(f"expected {text!r} and found {found!r}")
        self.at += 1

    def grammar(self) -> Grammar:
        while self.kind() == "doc":
            self.take()
        self.expect("grammar")
        grammar = Grammar(self.take(), self.file)
        self.expect(";")
        while self.at < len(self.pieces):
            doc = ""
            while self.kind() == "doc":
                doc = self.take()
            if self.peek() == "import":
                self.take()
                if self.kind() != "rule":
                    found = self.peek() or "the end of the file"
                    raise self.fail(f"an import names a rule, like <words.*>, and not {found!r}")
                grammar.imports.append((self.peek()[1:-1], self.pieces[self.at][2]))
                self.take()
                self.expect(";")
            elif self.at < len(self.pieces):
                rule = self.rule(doc)
                if rule.name in grammar.rules:
                    raise GrammarError(self.file, rule.line, f"<{rule.name}> is defined twice")
                grammar.rules[rule.name] = rule
        return grammar

    def rule(self, doc: str) -> Rule:
        public = self.peek() == "public"
        if public:
            self.take()
        if self.kind() != "rule":
            raise self.fail(f"expected a rule and found {self.peek()!r}")
        line = self.pieces[self.at][2]
        name = self.take()[1:-1]
        self.expect("=")
        body = self.either()
        self.expect(";")
        notes = [row.strip().lstrip("*").strip() for row in doc.strip("/*").splitlines()]
        topic = next((row[6:].strip() for row in notes if row.startswith("@topic")), "")
        examples = tuple(row[8:].strip() for row in notes if row.startswith("@example"))
        summary = " ".join(row for row in notes if row and not row.startswith("@"))
        return Rule(name, public, body, line, topic, summary, examples, "@whole" in notes)

    def either(self) -> Node:
        parts = [self.series()]
        while self.peek() == "|":
            self.take()
            parts.append(self.series())
        return parts[0] if len(parts) == 1 else Either(tuple(parts))

    def series(self) -> Node:
        if self.kind() == "weight":
            self.take()
        parts: list[Node] = []
        while self.at < len(self.pieces) and self.peek() not in ("|", ")", "]", ";"):
            parts.append(self.item())
        if not parts:
            raise self.fail("an alternative is empty: use [ ] or <NULL>")
        return parts[0] if len(parts) == 1 else Series(tuple(parts))

    def item(self) -> Node:
        kind, text, line = self.pieces[self.at]
        self.at += 1
        node: Node
        if text in ("(", "["):
            inner = self.either()
            self.expect(")" if text == "(" else "]")
            node = Maybe(inner) if text == "[" else Series((inner,)) if not isinstance(inner, Either) else inner
        elif kind == "rule":
            node = Ref(text[1:-1], line)
        elif kind in ("word", "quoted"):
            node = Word(text.strip('"'))
        else:
            self.at -= 1
            raise self.fail(f"{text!r} can't stand here")
        while self.peek() in ("*", "+") or self.kind() == "tag":
            mark = self.take()
            node = Tagged(node, mark[1:-1].strip()) if mark[0] == "{" else Repeat(node, int(mark == "+"))
        return node
