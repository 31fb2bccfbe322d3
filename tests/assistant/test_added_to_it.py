"""Another of the same put to what was just worked, and a share of a wall that is asked in one line."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "after", "value"),
    [
        ("step flashing 16 foot at 7", "add the other side, it's 12 foot", 49),
        ("strap 30 foot wall at 16", "add the other wall, 20 foot", 40),
        ("wall 30 by 9 area", "add the other one, 20 by 9", 450),
        ("soffit 50 foot 2 foot deep 16 panel", "plus the back, that's 44", 71),
        ("gable 24 wide 8 12 area", "plus the other gable, 20 wide", 162.667),
        ("24 boards at 12.50", "plus the other lot, 10 boards", 425),
    ],
)
def test_another_is_put_to_it(line: str, after: str, value: float) -> None:
    assert last(line, after)["answer"]["value"] == pytest.approx(value, abs=0.001)


@pytest.mark.parametrize(
    ("line", "after", "value"),
    [
        ("wall 30 by 9 area", "add two windows 3 by 4", 246),
        ("wall 30 by 9 area", "add the back door 3 by 7", 249),
        ("wall 30 by 9", "add 10 percent", 297),
        ("strap 30 foot wall at 16", "and the other wall, 20 foot", 16),
    ],
)
def test_openings_and_percents_are_no_other_wall(line: str, after: str, value: float) -> None:
    assert last(line, after)["answer"]["value"] == pytest.approx(value, abs=0.001)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("half a 24 by 9 wall, area", 108),
        ("a third of a 30 by 9 wall in square feet", 90),
        ("half of a 24 foot gable 8 12 area", 48),
        ("two thirds of the north wall 30 by 9 in squares no waste", 1.8),
        ("strap half of a 24 foot wall at 16", 10),
    ],
)
def test_a_share_of_a_wall(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value, abs=0.001)


def test_a_door_comes_off_both_together() -> None:
    assert last("wall 24 by 8", "plus the back wall 30 by 8", "less a 3 by 7 door")["answer"]["value"] == 411


def test_both_of_two_that_were_told_apart() -> None:
    assert last("gable 20 foot 6 12 area", "the other one's 24 foot", "both")["answer"]["value"] == 122


def test_both_together_is_asked_about_where_nothing_tells_of_two() -> None:
    assert last("wall 24 by 8", "30 by 8", "both together")["outcome"] == "asks"
