"""Courses that start above the zero the heights are taken from."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "exposure", "courses"),
    [
        ("courses from 18 inches up to 94, 7 greatest", 76 / 11, 11),
        ("courses between 18 and 94, 7 max", 76 / 11, 11),
        ("story pole from 18 inches up to 112 inches, 6 and a half greatest", 94 / 15, 15),
        ("siding starting 14 inches up and going to 9 foot 2, nothing over 7, layout", 96 / 14, 14),
    ],
)
def test_the_height_is_between_the_two(line: str, exposure: float, courses: int) -> None:
    record = last(line)
    assert record["answer"]["value"] == pytest.approx(exposure)
    assert next(also["value"] for also in record["also"] if also["name"] == "courses") == courses


def test_marks_are_from_the_zero_that_both_are_taken_from() -> None:
    marks = [mark["value"] for mark in last("courses from 18 inches up to 94, 7 greatest")["marks"]]
    assert marks[0] == pytest.approx(18 + 76 / 11)
    assert marks[-1] == pytest.approx(94)


def test_a_range_of_exposures_is_no_start() -> None:
    assert last("courses on a 9 foot wall exposure from 6 to 7")["answer"]["value"] == pytest.approx(6.75)


def test_no_number_is_of_millimetres_beside_inches() -> None:
    """94 is no least exposure of 94 mm where another length is told in inches."""
    record = last("courses 18 inches, 94, 7 greatest")
    assert all(given["unit"] != "mm" for given in record["givens"])
