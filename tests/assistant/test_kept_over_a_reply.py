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


@pytest.mark.parametrize(
    ("lines", "degrees"),
    [
        (("miter for a 92 corner", "what's the setting at 95"), 42.5),
        (("corner's 84 1/2 where's the saw go", "saw stops at forty seven can it do it", "what's the setting at 86 1/2"), 46.75),
    ],
)
def test_a_value_asked_at_another_size_is_worked_anew(lines: tuple[str, ...], degrees: float) -> None:
    """The old setting read back for another corner is a wrong number."""
    assert last(*lines)["answer"]["value"] == pytest.approx(degrees)


def test_what_is_on_the_page_is_still_explained() -> None:
    assert "Step" in last("rake return 5 in 12", "why 56.3")["say"]


def test_sides_that_lean_are_no_bay() -> None:
    record = last("a six sided planter what angle do i cut", "with sides leaning out ten degrees", "6 sides")
    assert (record["topic"], record["answer"]["value"]) == ("compound cut", pytest.approx(5.725, abs=0.01))


def test_so_many_footers_are_what_is_bought() -> None:
    assert last("how many twelve footers do i need if each one is eleven foot high")["outcome"] != "answered"
    assert last("how many 16 footers for 148 feet")["answer"]["value"] == 10
