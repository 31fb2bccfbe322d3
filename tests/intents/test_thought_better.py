"""A number that somebody thinks better of as he speaks: the later is used, or it is asked; it is never let fall."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("soffit 46 foot, well let's say 48, 16 deep, 12 inch panels", 48),
        ("siding's 4.85 a foot and i need 640 foot, well 660 to be safe, whats the bill", 3201),
        ("wall's 30 foot well maybe 31 by 9, area", 279),
        ("strap a 40 foot wall, well it's 38 really, at 16", 30),
        ("gable 24 wide, well 24 foot 6, 8 12, area", 100.04),
        ("i want 4 nails per stud, no scratch that, 2 a stud, 22 studs, 15 courses", 660),
    ],
)
def test_the_later_number_is_used(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_a_start_put_right() -> None:
    record = last("marks at two foot centers on a 31 footer starting at 9 inches, no start at a foot")
    given = {each["name"]: each["text"] for each in record["givens"]}
    assert (given["first mark"], record["answer"]["value"]) == ("a foot", 16)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("wall 24 foot, well 9 foot high, area", 216),
        ("30 foot wall, well 6 inch exposure 9 high how many 12 foot boards", 50),
        ("gable 24 wide, well 8 12 pitch, area", 96),
        ("as well 9 inch exposure on a 9 foot wall", 9),
    ],
)
def test_well_before_another_size_takes_nothing_back(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("got a fella here says 25 squares, I say 2350 square feet, that's how many squares before waste", 23.5),
        ("25 squares he says but I measured 2350 square feet, how many squares no waste", 23.5),
        ("the yard says 23 squares, it's 2350 square feet, how many squares before waste", 23.5),
        ("he says the wall is 30 foot, I say 31, 9 high, area", 279),
    ],
)
def test_what_i_say_goes_before_what_he_says(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    ("line", "name", "text"),
    [
        ("strapping 1x3 at 16 on an 11 m wall", "stud spacing", "16, taken as inches"),
        ("wall's 2438 high and the exposure max is 7 inches", "height", "2438, taken as millimetres"),
    ],
)
def test_the_one_unit_that_can_be(line: str, name: str, text: str) -> None:
    assert {each["name"]: each["text"] for each in last(line)["givens"]}[name] == text
