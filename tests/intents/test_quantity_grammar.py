"""What the grammar of quantities lets the recogniser hear, the reader reads: every rule, sentence by sentence."""

from __future__ import annotations

import random

import pytest

from intents.grammars import FOLDER
from intents.jsgf import read_grammar
from tests.intents.spoken import read, sample

GRAMMAR = read_grammar(FOLDER / "quantities.jsgf")
KINDS = {"whole": "number", "fraction": "number"}
RULES = [
    "number",
    "whole",
    "fraction",
    "length",
    "pitch",
    "angle",
    "temperature",
    "tempchange",
    "percent",
    "ratio",
    "expansion",
    "area",
    "money",
    "volume",
    "weight",
    "dims",
    "plural",
]
COMPOSED = [
    "sum",
    "layers",
    "lengths",
    "openings",
    "pieces",
    "stocks",
    "runs",
    "areas",
]  # made of other readings: tests/intents/test_sums.py and the tests of lists


def test_the_public_rules_are_the_kinds_of_quantity() -> None:
    assert sorted(rule.name for rule in GRAMMAR.rules.values() if rule.public) == sorted(RULES + COMPOSED)


@pytest.mark.parametrize("name", RULES)
def test_every_sentence_of_a_rule_is_read_as_its_kind(name: str) -> None:
    rng = random.Random(name)
    for _ in range(300):
        text = sample(GRAMMAR, GRAMMAR.rules[name].body, rng)
        found = read(text, KINDS.get(name, name))
        assert found, f"<{name}> allows {text!r}, which is not read as one"
        assert max(reading.sure for reading in found) >= 0.5, text
