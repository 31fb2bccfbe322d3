"""Sums of money told as a story, and the unit that an answer is asked in."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "money"),
    [
        ("So 6 rolls at 118 less a 50 credit, what do I hand over?", 658),
        ("I've bought 24 sheets at 46.80, so how much have I spent?", 1123.2),
        ("So that's 9 tubes at 8.25 and 3 rolls at 94, what do I owe?", 356.25),
        ("9 tubes at $8.25 plus 3 rolls at $94", 356.25),
        ("12 at 14.50 and 8 at 9.75, what's that cost", 252),
    ],
)
def test_what_is_paid_is_money(line: str, money: float) -> None:
    answer = last(line)["answer"]
    assert (answer["unit"], answer["value"]) == ("money", money)


def test_a_sum_of_lengths_is_no_money() -> None:
    assert last("4 boards at 14 3/8 end to end, how long")["answer"]["unit"] == "in"


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("six times 14 and 3/4, feet and inches", 88.5),
        ("29 3/4 plus 14 7/8, feet and inches please", 44.625),
        ("16 foot less 43 and three eighths, in feet and inches", 148.625),
        ("29 3/4 plus 14 7/8 to the nearest eighth", 44.625),
        ("9.375 to the sixteenth", 9.375),
        ("2440 on an inch tape", 2440 / 25.4),
    ],
)
def test_the_unit_or_the_mark_that_is_asked_for_is_none_of_the_numbers(line: str, inches: float) -> None:
    """Feet and inches said of the answer never make 14 3/4 so many feet."""
    assert last(line)["answer"]["value"] == pytest.approx(inches, abs=1 / 32)


@pytest.mark.parametrize(("line", "feet"), [("8 yards 1 foot in feet", 25), ("8 yards and a foot in feet", 25)])
def test_yards_and_feet_are_one_length(line: str, feet: int) -> None:
    assert last(line)["answer"]["value"] == feet


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("Overshot by 5/16, wanted 29 7/8, so what did I cut?", 30.1875),
        ("I came up 3/16 short, wanted 41 1/2, what did I cut", 41.3125),
        ("window 36 with 4 inch casing each side, what's it overall", 44),
        ("I've got three offcuts, 14, 22 and 31 inches, how long would they be end to end?", 67),
        ("16 ft board, cut 3 at 4 ft 2 1/4, drop? ignore kerf", 41.25),
    ],
)
def test_what_stands_outside_or_past_or_is_left(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)
