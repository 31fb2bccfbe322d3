"""Lengths told by another length, and percents told by what they are for."""

from __future__ import annotations

from fractions import Fraction

import pytest

from intents.allowances import allowances
from intents.measures import readings
from intents.reading import Reading
from intents.shares import shares
from intents.tokens import tokenize
from solvers.quantities import Quantity


def longest(found: list[Reading]) -> Quantity | None:
    best = max(found, key=lambda reading: reading.end - reading.start, default=None)
    return best.value if best is not None and isinstance(best.value, Quantity) else None


def told(text: str) -> Quantity | None:
    tokens = tokenize(text)
    return longest([*shares(tokens, readings(tokens))])


def percents(text: str) -> list[Fraction]:
    tokens = tokenize(text)
    found = allowances(tokens, readings(tokens))
    return [reading.value.value for reading in found if isinstance(reading.value, Quantity)]


@pytest.mark.parametrize(
    ("text", "value", "unit"),
    [
        ("a run of half of seventeen feet", Fraction(17, 2), "ft"),
        ("two thirds of the 33 feet", Fraction(22), "ft"),
        ("three quarters of 1600 mm", Fraction(1200), "mm"),
        ("a quarter of 360 square feet", Fraction(90), "ft2"),
        ("28 inches wide, and the rise is half of that", Fraction(14), "in"),
        ("5/8 wide and half that deep", Fraction(5, 16), "none"),
        ("30 feet long and a third as high", Fraction(10), "ft"),
        ("40 mm deep, twice that wide", Fraction(80), "mm"),
        ("a foot and a half short of 24", Fraction(45, 2), "ft"),
        ("three inches shy of 12 feet", Fraction(47, 4), "ft"),
        ("2 inches longer than 8 feet", Fraction(49, 6), "ft"),
    ],
)
def test_a_length_told_by_another(text: str, value: Fraction, unit: str) -> None:
    found = told(text)
    assert found is not None and (found.value, found.unit) == (value, unit)


@pytest.mark.parametrize(
    "text",
    [
        "1/150 of a 960 square foot attic",  # a ratio of vents
        "half of it",  # what was worked before
        "is 3/8 more than 10 mm",
        "three inches short of 12",  # of what?
        "half that wall is brick",
        "2 1/2 of 12 foot boards",
    ],
)
def test_what_tells_no_length(text: str) -> None:
    assert told(text) is None


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("with a tenth for waste", 10),
        ("usual twelve for waste", 12),
        ("a fifth extra", 20),
        ("no allowance", 0),
        ("nothing wasted", 0),
        ("and I throw none away", 0),
        ("screen takes away 35 percent", 65),
        ("the mesh blocks a third of it", Fraction(200, 3)),
        ("the mesh is 40 percent closed", 60),
        ("screen is three quarters open", 75),
    ],
)
def test_a_percent_without_the_word(text: str, value: Fraction) -> None:
    assert percents(text) == [value]


@pytest.mark.parametrize(
    "text",
    [
        "ten extra boards",  # boards
        "a screen and a 3/4 open slot",  # a length
        "screen 40% open",  # a percent as it is
        "gap 1/2, screened closure 38% open",
        "no boards left, none cut",
        "ninety for waste",  # no one wastes so much
    ],
)
def test_what_is_no_percent(text: str) -> None:
    assert percents(text) == []
