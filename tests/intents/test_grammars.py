"""The grammars hold together: with the topics, each other and the open standard, and every alternative is said."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from enum import Enum
from pathlib import Path
from typing import Any

import pytest

from assistant import acts
from assistant.conversation import Conversation
from intents.chart import chart_of
from intents.elsewhere import OUTSIDE
from intents.grammars import FOLDER, QUANTITIES, TALK, WORDS, load
from intents.jsgf import Either, Grammar, Maybe, Node, Ref, Repeat, Rule, Series, Tagged
from intents.matcher import speller
from intents.phrases import compiled
from intents.searching import MANNER
from solvers.quantities import Quantity
from solvers.registry import load_topics
from tests.understanding import lines
from tests.understanding import load as questions

BOOK, TOPICS, ACTS = load(), load_topics(), acts.load()
RULES = [(grammar, rule) for grammar, rule in BOOK.topics() if grammar.name not in TALK and rule.topic != MANNER]
BEFORE = "miter for a 5-in-12 rake return"  # what is talked about when an example of talk says "that"
EXAMPLES = [
    (rule.topic, example) for _, rule in BOOK.topics() for example in rule.examples if rule.topic in {**TOPICS, **ACTS}
]


def tags(grammar: Grammar, node: Node) -> Iterator[str]:
    """The tags of a body, those of the rules it refers to included."""
    if isinstance(node, Tagged):
        yield node.tag
        yield from tags(grammar, node.part)
    elif isinstance(node, Maybe | Repeat):
        yield from tags(grammar, node.part)
    elif isinstance(node, Series | Either):
        for part in node.parts:
            yield from tags(grammar, part)
    elif isinstance(node, Ref) and node.name not in ("NULL", "VOID"):
        source, rule = BOOK.find(grammar, node)
        if source.name not in (QUANTITIES, WORDS):
            yield from tags(source, rule.body)


@pytest.mark.parametrize(("grammar", "rule"), RULES, ids=[rule.name for _, rule in RULES])
def test_every_tag_is_a_parameter_of_its_topic(grammar: Grammar, rule: Rule) -> None:
    topic = TOPICS[rule.topic]
    parameters = {parameter.name: parameter for parameter in topic.parameters}
    for tag in tags(grammar, rule.body):
        names, _, fixed = tag.partition("=")
        for name in (each.strip() for each in names.split(",")):
            assert name in parameters, f"{rule.topic} has no parameter {name}"
            if fixed:
                kind = parameters[name].kind
                known = fixed.strip() in kind.__members__ if issubclass(kind, Enum) else issubclass(kind, Quantity)
                assert known, f"{name} is never {fixed}"


def test_every_topic_has_a_rule_and_every_rule_a_topic() -> None:
    asked = {rule.topic for _, rule in BOOK.topics()} - {MANNER, OUTSIDE}
    assert set(TOPICS) - asked == set()
    assert asked - set(TOPICS) - set(ACTS) == set()


@pytest.mark.parametrize("topic", sorted({**TOPICS, **ACTS}))
def test_every_topic_has_examples(topic: str) -> None:
    assert compiled().examples.get(topic), f"{topic} wants an @example line"


@pytest.mark.parametrize(("topic", "example"), EXAMPLES, ids=[f"{topic}: {example}" for topic, example in EXAMPLES])
def test_every_example_is_understood_as_its_topic(topic: str, example: str) -> None:
    conversation = Conversation()
    if topic in ACTS:
        conversation.answer(BEFORE)
    record = conversation.answer(example)
    if topic == OUTSIDE:
        assert record["outcome"] == "declined" and "not for me" in record["say"], record["say"]
    elif topic in ACTS:
        assert record["outcome"] in ("noted", "asks", "answered"), record["say"]
    else:
        assert record["outcome"] in ("answered", "asks"), record["say"]
        assert record["topic"] == topic, record["say"] or record["ask"]


def sentences() -> Iterator[tuple[str, str]]:
    """What is said in the question sets and examples, each with its topic."""
    yield from EXAMPLES
    for cases in questions().values():
        for case in cases:
            for line in lines(case):
                yield case.get("topic", ""), line


def test_every_alternative_is_said() -> None:
    phrases = compiled()
    silent: dict[int, str] = {
        number: pattern.topic for number, pattern in enumerate(phrases.patterns) if pattern.topic != MANNER
    }
    for topic, line in sentences():
        wanted = [number for number, of in silent.items() if not topic or of == topic]
        if not wanted:
            continue
        there: dict[int, set[int]] = {}
        for hit in chart_of(line, phrases, speller()).hits:
            there.setdefault(hit.pattern, set()).add(hit.number)
        for number in wanted:
            pattern = phrases.patterns[number]
            must = {n for n, required in enumerate(pattern.required) if required and not pattern.fills[n]}
            if number in there and must <= there[number]:
                del silent[number]
    assert [named(number, topic) for number, topic in silent.items()] == []


def named(number: int, topic: str) -> str:
    """Which alternative of its rule a pattern is."""
    first = next(n for n, pattern in enumerate(compiled().patterns) if pattern.topic == topic)
    return f"{topic}: alternative {number - first + 1} of its rule is said by no sentence"


def test_words_stand_for_one_thing() -> None:
    """A word of two classes would make two trade words of one."""
    found: dict[str, set[str]] = {}
    stack: list[tuple[tuple[str, ...], Any]] = [((), compiled().classes)]
    while stack:
        said, node = stack.pop()
        for symbol, below in node.items():
            if symbol == "":
                found.setdefault(" ".join(said), set()).update(below)
            else:
                stack.append(((*said, symbol), below))
    assert {word: classes for word, classes in found.items() if len(classes) > 3} == {}


# ── the open standard: another program reads the very files ──

READ = """
import sys, pocketsphinx
for name in sys.argv[1:]:
    grammar = pocketsphinx.Jsgf(f"{name}.gram")
    assert grammar.get_name() == name, name
    print(name)
"""


def test_pocketsphinx_reads_every_file_and_finds_its_imports(tmp_path: Path) -> None:
    names = [path.stem for path in sorted(FOLDER.glob("*.jsgf"))]
    for name in names:
        (tmp_path / f"{name}.gram").write_bytes((FOLDER / f"{name}.jsgf").read_bytes())
    done = subprocess.run(
        [sys.executable, "-c", READ, *names], cwd=tmp_path, capture_output=True, text=True, check=False,
        env={**os.environ, "JSGF_PATH": str(tmp_path)},
    )  # fmt: skip
    assert done.stdout.split() == names, done.stderr
    assert "ERROR" not in done.stderr, done.stderr


@pytest.mark.parametrize("grammar", BOOK.grammars.values(), ids=BOOK.grammars)
def test_only_public_rules_are_imported(grammar: Grammar) -> None:
    """As the standard has it: a private rule is seen in its own file alone."""

    def all_of(node: Node) -> Iterator[Ref]:
        if isinstance(node, Ref):
            yield node
        elif isinstance(node, Series | Either):
            for part in node.parts:
                yield from all_of(part)
        elif isinstance(node, Maybe | Repeat | Tagged):
            yield from all_of(node.part)

    refs = [ref for rule in grammar.rules.values() for ref in all_of(rule.body) if ref.name not in ("NULL", "VOID")]
    found = [(ref, *BOOK.find(grammar, ref)) for ref in refs]
    private = {f"<{source.name}.{rule.name}>" for _, source, rule in found if source is not grammar and not rule.public}
    assert private == set()
