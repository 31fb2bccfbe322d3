"""A diagonal that is told and not asked for is no side."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

THIRD_SIDES = (
    ("diagonal is 10 foot, one side 6, other side?", 96, "in"),
    ("diagonal's 5 m, one side's 3, what's the other side", 4000, "mm"),
    ("corner to corner is 20 foot and it's 12 wide, how long is it", 192, "in"),
    ("what width gives a 20 foot diagonal on a 16 foot side", 144, "in"),
    ("diagonal 150, width 90, height?", 120, "in"),
    ("diag is 12'6, one leg 7'6, other leg", 120, "in"),
)
DIAGONALS = (
    ("how long is the diagonal with one side 6 foot and the other 8", 120),
    ("one side 6 foot, other side 8 foot diagonal?", 120),
    ("diagonal for 12 and 16", 240),
    ("diagonal of a square 6 foot each side", 101.82),
    ("what's the diagonal of a 10 foot square", 169.71),
)


@pytest.mark.parametrize(("line", "value", "unit"), THIRD_SIDES)
def test_side_left_of_a_diagonal_and_a_side(line: str, value: float, unit: str) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(line)
    assert record["topic"] == "right triangle"
    assert float(record["answer"]["value"]) == pytest.approx(value, abs=0.01 if unit == "in" else 0.5)
    assert record["answer"]["unit"] == unit


@pytest.mark.parametrize(("line", "value"), DIAGONALS)
def test_diagonal_that_is_asked_for(line: str, value: float) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(line)
    assert record["topic"] == "square check"
    assert float(record["answer"]["value"]) == pytest.approx(value, abs=0.04)


@pytest.mark.parametrize(
    ("line", "asks"),
    (
        ("10 by 10, one diagonal 14-1, the other 14-2", "measured diagonal"),
        ("diagonals 14-1 and 14-3, how far out of square", "one side"),
    ),
)
def test_two_diagonals_are_no_sides(line: str, asks: str) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(line)
    assert record["topic"] == "out of square"
    assert asks in record["ask"]
