"""Marks of the tape counted in a length, and what is left of the last length told."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("how many eighths in 5 and 3/4", 46),
        ("how many 16ths is 7/8", 14),
        ("how many sixteenths are there in 2 3/8 inches", 38),
        ("how many 32nds in 3/8", 12),
        ("how many quarters in 1 foot 3", 60),
    ],
)
def test_marks_counted_in_a_length(line: str, count: int) -> None:
    assert last(line)["answer"]["value"] == count


def test_a_length_put_to_the_nearest_mark_is_not_counted() -> None:
    assert last("3 5/8 in sixteenths")["answer"]["value"] == pytest.approx(3.625)


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("add 3/4, 7/16 and 1/2 and tell me what's left of 2 1/4", 0.5625),
        ("took 18 1/2 and 7 3/4 off, what's left of 60", 33.75),
    ],
)
def test_what_is_left_of_the_last(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


def test_so_far_back_from_the_middle_is_no_half_of_it() -> None:
    """From the middle, 118 in; the half of what is left, 109, is another place."""
    record = last("wall's 22 foot 8, centre it and come back 18 for the edge of a 3 foot window")
    assert record["outcome"] == "asks" or record["answer"]["value"] == pytest.approx(118)


def test_a_sum_is_said_before_what_it_comes_to() -> None:
    """So that one that was misheard is heard so."""
    record = last("from 118 I need to lose 1 7/8 twice")
    assert record["say"].startswith("118 minus 2 times 1 7/8 is 114 1/4 inches")
    assert record["givens"][0]["text"] == "118 − (2 × 1 7/8)"
    assert last("12 6 plus 3 4 plus 7/8")["givens"][0]["text"].count("(") == 0


@pytest.mark.parametrize(
    ("line", "degrees"),
    [
        ("temperature of minus 12 in fahrenheit", 10.4),
        ("what's minus five in fahrenheit", 23),
        ("what's thirty two in celsius", 0),
    ],
)
def test_in_before_a_scale_is_no_inches(line: str, degrees: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(degrees)


@pytest.mark.parametrize(
    ("line", "inches"),
    [("four quarters and three eighths how much is that", 1.375), ("31 1/2 and 22 3/8 how much", 53.875)],
)
def test_two_lengths_and_how_much_are_added(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


def test_what_is_put_on_and_never_told_is_not_let_fall() -> None:
    assert last("whats 3 and five eighths plus 3 and five eighths plus the width of a 2x4 flat")["outcome"] != "answered"


def test_the_angle_of_a_corner_is_no_length() -> None:
    line = "my board is 9 and a quarter and the corner is 118 what's the long point longer by"
    assert last(line)["outcome"] != "answered"
    assert last("the corner is at 60 in and the window at 94 in, how far")["answer"]["value"] == pytest.approx(34)
