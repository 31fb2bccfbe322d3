"""Several of one size, and areas of several faces, read as one total."""

from __future__ import annotations

import random

import pytest

from intents.grammars import FOLDER
from intents.jsgf import read_grammar
from intents.listed import Listing
from intents.lists import totals_and_prices
from intents.measures import readings
from intents.tokens import tokenize
from tests.intents.spoken import sample


def found(text: str, kind: str) -> list[tuple[float, ...]]:
    tokens = tokenize(text)
    read = [reading for reading in totals_and_prices(Listing(tokens, readings(tokens))) if reading.kind == kind]
    return [tuple(float(value.to("ft2" if kind == "areas" else "ft").value) for value in reading.value) for reading in read]


@pytest.mark.parametrize(
    ("text", "feet"),
    [
        ("both eaves, 36 ft each, 12 in deep", [(72.0,)]),
        ("frieze is 64 feet per side, two sides", [(128.0,)]),
        ("four joints of 11 ft", [(44.0,)]),
        ("both eaves, 36 ft, 12 in deep", [(72.0, 36.0)]),
        ("both eaves, 72 ft in all", []),
        ("both eaves, 72 ft the pair", [(72.0,)]),
        ("two windows 3 ft by 4 ft each", []),
        ("16 courses 32 ft each", []),
    ],
)
def test_runs_of_one_length_are_added_up(text: str, feet: list[tuple[float, ...]]) -> None:
    assert found(text, "runs") == feet


@pytest.mark.parametrize(
    ("text", "feet"),
    [
        ("three walls at 320 square feet each", [(960.0,)]),
        ("two walls, 540 square feet the pair", [(540.0,)]),
        ("three walls, 540 square feet", [(1620.0, 540.0)]),
        ("lake wall is 432 sq ft and the ramp wall 268 sq ft, how many together", [(700.0,)]),
        ("640 sq ft less 84 sq ft of openings together", []),
        ("300 sq ft at 2 pounds a square foot all together", []),
    ],
)
def test_areas_of_several_faces_are_added_up(text: str, feet: list[tuple[float, ...]]) -> None:
    assert set(found(text, "areas")) == set(feet)


@pytest.mark.parametrize("kind", ["runs", "areas"])
def test_what_the_grammar_allows_is_read(kind: str) -> None:
    grammar, rng = read_grammar(FOLDER / "quantities.jsgf"), random.Random(kind)
    for _ in range(50):
        text = sample(grammar, grammar.rules[kind].body, rng)
        assert found(text, kind), text
