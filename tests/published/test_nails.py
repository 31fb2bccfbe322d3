"""Nails by the penny, as boxes of them are marked (from memory; ASTM F1667 has the same)."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("penny", "inches"),
    [(6, 2), (8, Fraction(5, 2)), (10, 3), (12, Fraction(13, 4)), (16, Fraction(7, 2)), (20, 4)],
)
def test_a_nail_by_its_pennies(penny: int, inches: Fraction) -> None:
    """From memory: 6d 2, 8d 2 1/2, 10d 3, 12d 3 1/4, 16d 3 1/2, 20d 4 in."""
    record = last(f"{penny}d nail through 3/4 and 1/2, how much in the stud")
    assert record["topic"] == "fastener penetration"
    assert Fraction(record["answer"]["value"]) == inches - Fraction(5, 4)


@pytest.mark.parametrize(
    "line",
    ["how far does a 16d nail go in the stud through 3/4 and 1/2", "how much bite does a sixteen penny get through 3/4 and 1/2"],
)
def test_as_it_is_said(line: str) -> None:
    assert last(line)["answer"]["text"] == "2 1/4 in"


def test_a_nail_is_no_penetration() -> None:
    """What the nail is called by is how long it is, and not how far it must go in."""
    record = last("8d nails, through 3/4 and 1/2 with 1 1/4 in the stud what length")
    assert record["answer"]["text"] == "2 1/2 in"
    assert last("8d nails for 16 courses 32 feet long every 16 inches")["answer"]["text"] == "400"
    assert last("3-D model of the house")["outcome"] == "declined"
