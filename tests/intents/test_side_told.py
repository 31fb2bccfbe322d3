"""The other side of a wall of an area told in other words, and walls that are no one rectangle."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "feet"),
    [
        ("a square and a half went on the garage end thats twelve foot long how high did it go", 12.5),
        ("a square and three quarters on a wall fourteen foot long, how high", 12.5),
        ("wall for foot tall, fifty eight square feet, tell me how long", 14.5),
        ("garage side: 176 sq ft, 22 ft. how high?", 8),
    ],
)
def test_the_other_side(line: str, feet: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("side of a wall", feet)


def test_how_far_it_goes_is_its_length() -> None:
    assert last("how far will 12 squares go on a 10 foot wall")["say"].startswith("Length: 120")


@pytest.mark.parametrize(
    "line", ["two walls same length 9 high 540 square feet in all how long is each", "gable wall 300 sq ft 24 wide how high"]
)
def test_what_is_no_one_rectangle_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] != "answered"
