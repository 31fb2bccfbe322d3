"""Pieces cut at one size that were meant to be another, and small words that were heard for numbers beside a mark."""

from __future__ import annotations

import pytest

from tests.talking import last

MISCUT = (
    ("The boy cut four of them at 22 and 5/8 before he told me they were meant to be 22 and 3/8, so how much do I trim off all"
     " four together?", 1.0),
    ("four cut at 22 5/8 should be 22 3/8, how much off all four together", 1.0),
    ("I cut three at 31 1/2, supposed to be 31 1/4, how much do I lose in total", 0.75),
    ("six of them cut at 18 3/4 and they want 18 1/2, how much waste altogether", 1.5),
    ("six of them cut at 18 3/4 and they want 18 1/2, how much off each", 0.25),
    ("five boards came out 7 5/8 and should have been 7 1/2, how far out is that all told", 0.625),
    ("cut one at 22 5/8 should be 22 3/8, how much off", 0.25),
)  # fmt: skip
HEARD = (
    (("63 mm to inches", "to the nearest thirty second"), 63 / 25.4),
    (("63 mm to inches", "two the nearest thirty second"), 63 / 25.4),
    (("12 1/3 inches plus 4", "to the nearest thirty second"), 12 + 1 / 3 + 4),
    (("how long a nail through for quarters siding and half inch foam with one and a quarter in the stud",), 2.75),
    (("1/2 siding 3/4 foam face?", "make the foam too inch"), 2.5),
    (("hauf o' 2.37 metres less 20",), 1165 / 25.4),
    (("84 minus 3 1/2", "and another 3 1/2 the other end"), 77),
    (("84 minus 3 1/2", "another three and a half on the far side"), 77),
    (("84 plus 3 1/2", "another 3 1/2 the other end"), 91),
)


@pytest.mark.parametrize(("line", "value"), MISCUT)
def test_what_comes_off_is_so_many_times_the_difference(line: str, value: float) -> None:
    record = last(line)
    assert (record["outcome"], record["answer"]["unit"]) == ("answered", "in")
    assert record["answer"]["value"] == pytest.approx(value)


def test_whether_of_each_or_of_all_is_asked() -> None:
    record = last("six of them cut at 18 3/4 and they want 18 1/2, how much do I take off")
    assert record["ask"] == "Is the sum six × (18 3/4 − 18 1/2) or 18 3/4 − 18 1/2?"


@pytest.mark.parametrize(("lines", "value"), HEARD)
def test_a_small_word_is_what_it_must_be(lines: tuple[str, ...], value: float) -> None:
    answer = last(*lines)["answer"]
    assert answer["value"] / (25.4 if answer["unit"] == "mm" else 1) == pytest.approx(value)


def test_a_mark_alone_is_no_value() -> None:
    assert last("to the nearest thirty second")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "topic"),
    [
        ("equal spacing, 1800 mm overall, 8 pieces 90 mm wide, what's the gap", "equal spacing"),
        ("ten by fourteen foot pad should be square but pulls 17 foot 3 on the diagonal, out by?", "out of square"),
        ("the north wall averages 9 foot 3 tall, and it's 34 long, what's that in square feet", "wall area"),
        ("1,850 sq ft of wall, 4 inch reveal, boards average 12 feet. Boards, ten over?", "cladding boards"),
    ],
)
def test_what_is_no_sum_is_none(line: str, topic: str) -> None:
    assert last(line)["topic"] == topic
