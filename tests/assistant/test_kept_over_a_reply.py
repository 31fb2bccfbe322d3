"""What a first line told is not lost when the piece it lacked comes: numbers with no place, a spring angle, a pending gap."""

from __future__ import annotations

import pytest

from tests.talking import last


def test_a_number_with_no_place_is_said_to_be_left_out() -> None:
    """A run told twice, in two ways: the second had no place, and the answer must not be silent about it."""
    record = last("hip rafter run is 12 six, twelve foot six", "8 12")
    assert record["outcome"] == "asks" or any("twelve foot six" in line["text"] for line in record["also"])


@pytest.mark.parametrize(
    ("lines", "miter"),
    [
        (("spring angle is 38 corners not square whats my miter", "its ninety two"), 30.73),
        (("miter for the corner, spring's 38", "90"), 31.62),
        (("miter for a 92 corner",), 44.0),
    ],
)
def test_a_spring_angle_makes_a_compound_cut(lines: tuple[str, ...], miter: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(miter, abs=0.01)


@pytest.mark.parametrize(
    ("lines", "inches"),
    [
        (("11'3 / 7 equal", "/ 6"), 22.5),
        (("3 and half in x 7", "x 9"), 31.5),
        (("12 foot 6 - 3", "/2"), 73.5),
        (("12 foot 6 - 3", "/2", "x 2"), 147.0),
    ],
)
def test_a_factor_typed_anew_takes_the_place_of_its_like(lines: tuple[str, ...], inches: float) -> None:
    """And of nothing else: a half that is then doubled is whole again."""
    assert last(*lines)["answer"]["value"] == pytest.approx(inches)


def test_what_is_left_at_the_end_of_a_vinyl_piece_is_no_sum() -> None:
    lines = ("leave how much at the end of a 14 foot vinyl piece its 60 out", "make that 16 foot", "hottest 115 coldest minus 10")
    record = last(*lines)
    assert (record["topic"], record["answer"]["value"]) == ("end gap", pytest.approx(0.393, abs=0.01))
