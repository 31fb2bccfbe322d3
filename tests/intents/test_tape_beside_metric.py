"""A number in the parts of a tape is in inches whatever stands beside it; a half beside millimetres may be and is asked about.

Values: worked by hand from 25.4 mm to the inch, exact.
"""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("4 5/8 plus 5 mm", 122.475, "mm"),
        ("12 3/16 minus 3 mm", 306.5625, "mm"),
        ("4 5/8 plus three 5 mm gaps", 132.475, "mm"),
        ("1200 mm less 3 1/4", 1117.45, "mm"),
        ("450 and a half less 5 mm", 445.5, "mm"),
        ("12.5 plus 3 mm", 15.5, "mm"),
        ("two and a half times 30 mm", 75, "mm"),
        ("3 strips of 45 mm in 36 1/4, even gaps", 15.4675, "in"),
        ("8 1/4 exposure on a 2700 mm wall", 8.177, "in"),
        ("4 1/4 by 6 m deck diagonal", 7352.72, "mm"),
        ("7 joists 1 1/2 thick over 10 feet, spaces", 18.25, "in"),
        ("24 courses of 100, how tall mm", 2400, "mm"),
        ("two and a half by 3.6 m, diagonal", 4382.92, "mm"),
    ],
)
def test_parts_of_a_tape_beside_metric(line: str, value: float, unit: str) -> None:
    answer = last(line)["answer"]
    assert (answer["unit"], answer["value"]) == (unit, pytest.approx(value, abs=0.01))


@pytest.mark.parametrize(
    ("line", "units"),
    [
        ("36 1/2 less 12 mm", "inches or millimetres"), ("2.4 m less 9 1/2", "inches or metres"),
        ("1220 less 3/16", "inches or millimetres"), ("600 less half an inch each side", "inches or millimetres"),
        ("1.2 plus 300 mm", "metres or millimetres"), ("12.6 minus 4 foot 2", "feet or inches"),
    ],
)  # fmt: skip
def test_a_half_beside_metric_is_asked_about(line: str, units: str) -> None:
    assert units in last(line)["ask"]


def test_the_unit_told_in_reply() -> None:
    assert last("36 1/2 less 12 mm", "inches")["answer"]["value"] == pytest.approx(915.1, abs=0.01)
    assert last("36 1/2 less 12 mm", "millimetres")["answer"]["value"] == pytest.approx(24.5, abs=0.01)


def test_large_numbers_told_to_be_millimetres() -> None:
    assert last("1220 less 3/16", "mm")["answer"]["value"] == pytest.approx(1220 / 25.4 - 3 / 16, abs=0.001)
    assert last("1220 less 3/16", "inches")["answer"]["value"] == pytest.approx(1219.8125)
    assert last("1220 minus 600")["answer"]["value"] == 620


@pytest.mark.parametrize("reply", ["in", "inch", "inches."])
def test_a_unit_alone_in_reply(reply: str) -> None:
    assert last("36 1/2 less 12 mm", reply)["answer"]["value"] == pytest.approx(915.1, abs=0.01)


def test_decimals_of_a_list_beside_millimetres_are_metres() -> None:
    record = last("cut list 6 at 1.2, 4 at 900 from 3.6")  # 6 × 1.2 + 4 × 0.9 is 10.8 m and saw kerfs, more than three sticks
    assert record["answer"]["value"] == 4


def test_metres_told_in_reply() -> None:
    assert last("1.2 plus 300 mm", "metres")["answer"]["value"] == pytest.approx(1500)
    assert last("400 mm plus 12.5")["answer"]["value"] == pytest.approx(412.5)  # no decimal of metres


@pytest.mark.parametrize("line", ["4 5/8 plus 3 spaces", "12 and 14, how long in inches"])
def test_no_sum_where_something_else_is_asked(line: str) -> None:
    assert last(line)["outcome"] == "asks"


@pytest.mark.parametrize(
    "line",
    ["5 at 800 4 at 650 from 2400, how many", "5 at 800, 4 at 650 from 2400 stock", "cut list: 5 at 800, 4 at 650, stock 2400"],
)
def test_bare_pieces_too_long_for_inches(line: str) -> None:
    answer = last(line)["answer"]  # 5 × 800 + 4 × 650 is 6600 mm, more than two sticks
    assert (answer["value"], answer["unit"]) == (3, "count")


def test_a_stick_shorter_than_a_piece_is_none() -> None:
    assert last("5 at 800 4 at 650 from 600")["outcome"] == "asks"


@pytest.mark.parametrize("line", ["3.6 by 2.7 diagonal", "wall 9.6 by 4.2, area"])
def test_decimals_that_no_tape_shows_may_be_metres(line: str) -> None:
    assert " m" in last(line)["ask"]
    assert last("3.6 by 2.7 diagonal", "metres")["answer"]["value"] == pytest.approx(4500)


def test_decimals_beside_bare_millimetres_are_metres() -> None:
    assert last("marks at 600 along 4.3 start 300")["answer"]["value"] == 7  # 300, 900 … 3900


def test_a_gap_under_so_much_is_the_greatest() -> None:
    record = last("balusters 1 1/2, under 4 inch gap, 6 foot 5")
    assert "greatest gap" in [given["name"] for given in record["givens"]]
    assert record["answer"]["value"] < 4


def test_nails_at_each_joist_of_boards_that_are_counted() -> None:
    assert last("2 screws each joist 14 boards 10 joists")["answer"]["value"] == 280  # 2 × 14 × 10
    assert last("2 nails each joist 14 boards 10 joists")["answer"]["value"] == 280
    assert last("2 nails each joist, 14 boards")["outcome"] == "asks"  # over how many joists is not said


@pytest.mark.parametrize(
    "line",
    [
        "A string runs from the top of a 12 foot post to a peg, 35 degrees to level ground. How far is the peg from the post?",
        "The sloping side of a right-angled piece is 40 inches and one of its legs is 44. How long's the other leg?",
    ],
)
def test_a_leg_that_is_asked_is_no_slope(line: str) -> None:
    answer = last(line)["answer"]
    assert answer is None or answer["name"] != "slope"


def test_a_sum_keeps_the_length_that_the_others_are_small_beside() -> None:
    line = "The old door was 79 1/2, the floor's coming up 3/4 and I want 3/8 clear underneath, so what do I trim the door to?"
    answer = last(line)["answer"]  # 79 1/2 − 3/4 − 3/8
    assert answer is None or answer["value"] == pytest.approx(78.375)
