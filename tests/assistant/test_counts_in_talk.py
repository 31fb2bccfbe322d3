"""Counts that follow on an answer: so many pieces are no angle, and what was counted is priced by whatever word."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize("line", ["if it was 4 pieces", "what about 4 pieces", "in four pieces"])
def test_so_many_pieces_are_no_angle_of_a_bay(line: str) -> None:
    """A bay of 30 degrees sets the saw to 15; four pieces of it are no bay of 4 degrees."""
    record = last("bay with 3 sides 30 degrees each", line)
    assert record["outcome"] == "asks" or record["answer"]["value"] != pytest.approx(2)


def test_a_count_said_again_is_still_one() -> None:
    assert last("90 degree corner in 3 pieces", "if it was 4 pieces")["answer"]["value"] == pytest.approx(15)
    assert last("miter for 8 sides", "what about 6 sides")["answer"]["value"] == pytest.approx(30)


@pytest.mark.parametrize(("line", "cost"), [("price them at 21.40", 1369.6), ("price those at 21 dollars each", 1344)])
def test_boards_just_counted_are_priced(line: str, cost: float) -> None:
    record = last("boards for a 32 by 9 wall 5 inch exposure 12 footers", line)
    assert (record["topic"], record["answer"]["value"]) == ("cost", pytest.approx(cost))


def test_a_wall_told_by_its_sides_is_no_sum() -> None:
    record = last("wall is 32 long 9 high")
    assert "32 − 9" not in record["ask"]
    assert record["topic"] == "wall area" or "wall area" in record["ask"]


def test_pickets_and_their_width_are_no_division() -> None:
    assert last("5 pickets inch and a half")["outcome"] != "answered"
    assert last("divide 60 into 5 parts")["answer"]["value"] == 12


def test_a_fraction_of_the_tape_is_no_price() -> None:
    assert last("3 boards at 5 1/2")["topic"] != "cost"
    assert last("3 boards at 5.50")["answer"]["value"] == pytest.approx(16.5)


def test_the_most_that_may_be_is_no_part_of_a_sum() -> None:
    record = last("fence 82 foot", "posts at 8 foot max", "how far apart exactly")
    assert record["outcome"] != "answered" or record["answer"]["value"] == pytest.approx(89.45, abs=0.01)


def test_a_surface_too_near_to_the_dew_point_is_taken_as_wet() -> None:
    near, far = (last(f"it's 20 c and 60 percent, will glass at {surface} c sweat") for surface in (12, 15))
    assert any("take it as wet" in caution for caution in near["cautions"])
    assert not any("take it as wet" in caution for caution in far["cautions"])


def test_a_sum_that_goes_on_with_a_count_and_a_length() -> None:
    """ "Another three foot two" tripped over the two pieces that were named before."""
    lines = (
        "add 7 foot 4 and 3/8 to 5 foot 9 and 1/4, that's the two pieces over the big door",
        "and another three foot two on the end of that for the return round the corner",
    )
    assert last(*lines)["answer"]["value"] == pytest.approx(88.375 + 69.25 + 38)


def test_courses_that_are_counted_are_no_length() -> None:
    """Two inches shared over 14 courses; 14 less 2 is another number altogether."""
    record = last("top course is 2 inches short, 14 courses, how much to open each one")
    assert record["outcome"] == "asks" or record["answer"]["value"] == pytest.approx(1 / 7)
    assert last("14 courses at 6 1/4 less 2 inches")["answer"]["value"] == pytest.approx(85.5)
