"""What shows of a board told by its width and its lap."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.talking import last


def exposure(line: str) -> Fraction:
    """The exposure that a line tells, in inches, by the count of courses it fills a height with."""
    given_ = next(row for row in last(line)["givens"] if row["name"] == "exposure")
    return Fraction(given_["value"]).limit_denominator(1000) / (Fraction(254, 10) if given_["unit"] == "mm" else 1)


@pytest.mark.parametrize(
    ("line", "shows"),
    [
        ("8 1/4 siding with 1 1/4 lap, 9 foot wall, how many courses", Fraction(7)),
        ("lap siding 8 1/4 with 1 1/4 lap on 9 foot 6 wall courses", Fraction(7)),
        ("9 foot wall, 8 inch boards lapped an inch, courses", Fraction(7)),
        ("courses on 9 foot 6 wall, 8 1/4 boards, 1 1/4 overlap", Fraction(7)),
        ("boards are 8 1/4 and lap 1 1/4, wall is 114, lay out courses", Fraction(7)),
        ("how many boards for 264 sq ft, 8 1/4 siding with 1 1/4 lap, 12 foot boards", Fraction(7)),
    ],
)
def test_a_board_shows_what_its_lap_leaves(line: str, shows: Fraction) -> None:
    assert exposure(line) == shows


@given(wide=st.integers(5, 12), lap=st.integers(1, 2))
def test_the_courses_are_those_of_what_shows(wide: int, lap: int) -> None:
    told = last(f"{wide} inch boards with a {lap} inch lap, 9 foot wall, lay out the courses")
    plain = last(f"9 foot wall, {wide - lap} inch exposure, lay out the courses")
    assert told["answer"]["value"] == plain["answer"]["value"]


def test_laps_of_a_roll_are_its_own() -> None:
    record = last("rolls of wrap for 1800 sq ft, 9 by 100 roll, 6 inch laps")
    assert record["answer"]["text"] == "3"


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        (("8 1/4 siding with 1 1/4 lap, 9 foot wall, how many courses", "lap of 1 inch"), "7 3/16 in"),
        (("9 foot wall, 8 inch boards lapped an inch, courses", "lap them 2 inches"), "6 in"),
        (("9 foot wall, 8 inch boards lapped an inch, courses", "and 7 inch boards"), "6 in"),
    ],
)
def test_another_lap_or_another_board(lines: tuple[str, ...], answer: str) -> None:
    assert last(*lines)["answer"]["text"] == answer
