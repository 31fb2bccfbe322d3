"""Pitches told by a rise and a run."""

from __future__ import annotations

from fractions import Fraction

import pytest

from intents.grades import grades
from intents.measures import readings
from intents.tokens import tokenize
from solvers.quantities import Pitch


def found(text: str) -> list[Fraction]:
    tokens = tokenize(text)
    values = [reading.value for reading in grades(tokens, readings(tokens))]
    return [value.value for value in values if isinstance(value, Pitch)]


@pytest.mark.parametrize(
    ("text", "rise"),
    [
        ("roof climbs 125 mm in every 300 mm", Fraction(5)),
        ("rises 200 mm in 600 mm", Fraction(4)),
        ("rise 400 mm, run 1000 mm", Fraction(24, 5)),
        ("run is 12 feet and rise 5 feet", Fraction(5)),
        ("goes up 5 feet in a run of 10 feet", Fraction(6)),
        ("8 inches of rise over 12 inches of run", Fraction(8)),
        ("4 ft run with a 2 ft rise", Fraction(6)),
        ("6 inches of rise in 20 of run", Fraction(18, 5)),
        ("rises 90 mm in every 270", Fraction(4)),
        ("goes up 200 for every 500 of run", Fraction(24, 5)),
        ("rise is 120 and run is 360", Fraction(4)),
        ("run 18, rise 9", Fraction(6)),
    ],
)
def test_a_rise_in_a_run_is_a_pitch(text: str, rise: Fraction) -> None:
    assert found(text) == [rise]


@pytest.mark.parametrize(
    "text",
    [
        "a wall 12 feet long and 9 feet high",
        "12 feet by 16 feet",
        "7 inch exposure on a 9 foot wall",
        "rise 5 ft, run 12 ft, how long is the rafter",  # asked of both, they are lengths
        "goes up 9 feet, boards 12 feet",
    ],
)
def test_other_lengths_are_none(text: str) -> None:
    assert found(text) == []
