"""More shapes of sums: verbs in -ing, shares of a thing, so many of a length, one off another; and what is no sum."""

from __future__ import annotations

from fractions import Fraction

import pytest

from intents.measures import readings
from intents.tokens import tokenize
from tests.intents.spoken import inches_of


def inches(text: str) -> Fraction | None:
    """What the one sum of a text comes to, worked in millimetres; None where there is none."""
    tokens = tokenize(text)
    return inches_of(tokens, readings(tokens))


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("what do you get adding 4' 7 1/2\" and 2' 10 3/4\"", "90.25"),
        ("subtracting 3/8 from 9 1/4", "8.875"),
        ("doubling 17 3/8", "34.75"),
        ("5'2 1/4\" doubled", "124.5"),
        ("nine and three sixteenths, three times", "27.5625"),
        ("2.4 m less 400 mm, then halve it", "5000/127"),
        ("total: 4 @ 12 1/2 and 3 @ 7 1/4", "71.75"),
        ("half 47 5/8", "23.8125"),
        ("centre of 96 and 1/4", "48.125"),
        ("80 3/4 inches over 5", "16.15"),
        ("the shelf is at 20 1/2 and the top 31 1/4 above that, how high is it?", "51.75"),
        ("the lintel is at 84 1/2 and the latch 45 1/4 below that, what height?", "39.25"),
        ("1 1/4, 3/4 and 5/8 stacked up", "2.625"),
        ("nine at four and a quarter, laid end to end", "38.25"),
        ("half of a thirty seven and a quarter inch opening", "18.625"),
        ("half the 37 1/4 opening", "18.625"),
        ("five pieces of 22 7/16 inches each, how long altogether", "112.1875"),
        ("a dozen at 5 1/4 inches each, end to end", "63"),
        ("7/8 off 15 1/2 inches", "14.625"),
        ("eighty one and five eighths inches so take away three and a half inches", "78.125"),
        ("11 feet minus a kerf of 1/8", "131.875"),
        ("my board is 81 5/8 and I lose 3 1/2 for the trim, what's left", "78.125"),
    ],
)
def test_sums(said: str, expected: str) -> None:
    assert inches(said) == Fraction(expected)


@pytest.mark.parametrize(
    "said",
    ["3 off 95", "12 at 14.50 each", "half an inch", "half the crew", "it is half eaten", "4 inches over 9", "9 at 14 end"],
)
def test_no_sums(said: str) -> None:
    assert inches(said) is None
