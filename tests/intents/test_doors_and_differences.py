"""Doors in the trade's digits after their name, what is asked by how much more, and what carries load."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("how many lineal feet of trim for 4 windows 32 by 54 and 2 doors 3-0 6-8", 1080),
        ("2 doors 3-0 6-8 and 4 windows 32 by 54, how much trim", 1080),
    ],
)
def test_doors_told_in_the_trades_digits_after_their_name(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


def test_how_much_longer_is_no_diagonal() -> None:
    assert last("how much longer is the diagonal than the long side of a 9 by 12")["outcome"] != "answered"
    assert last("whats the diagonal of a 9 by 12")["answer"]["value"] == pytest.approx(180)


@pytest.mark.parametrize("line", ["can i span 12 feet with a 2x8", "three quarter ply shelf 31 and a half long sags does it"])
def test_what_carries_load_is_for_others(line: str) -> None:
    assert "engineer" in last(line)["say"]
