"""Sheets and what they cover: which size is whose, by whatever order they are told in."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "sheets"),
    [
        ("plasterboard 2400 by 1200 how many for 30 square metres", 11),  # 30 / 2.88
        ("drywall is 4 by 12, walls are 480 sq ft, how many", 10),
        ("48 x 96 sheets to cover 30 by 10, how many", 10),
        ("sheets of osb 4x8, 24 x 8 wall", 6),
        ("osb 32 by 9 how many sheets", 9),
        ("sheathing sheets: wall 44' x 9', two windows 3x5 and a door 3x7", 11),  # a door 3 by 7 is no sheet
        ("2440 x 1220 sheets of 18 mm ply for a floor 6.1 by 4.9 m", 11),
        ("sheets of 5/8 ply for both gables 26 wide 7 12", 7),  # 2 × 26 × 7.583 / 2 = 197.2 ft²
        ("each side of the roof is 40 by 15, both sides, how many sheets of osb", 38),
        ("need 4x8 sheets of 7/16 osb for three walls 24 by 9, 24 by 9 and 30 by 9", 22),
    ],
)
def test_a_size_is_a_sheets_or_a_walls(line: str, sheets: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("sheets", sheets), record["say"] or record["ask"]


def test_a_sheet_is_no_list_of_pieces() -> None:
    """A 4x8 sheet is not four pieces of 8 inches."""
    assert last("cut a 4x8 sheet into 5 equal strips 1/8 kerf")["outcome"] != "answered"
    assert last("cut 4x30 and 2x22 from 8 foot sticks")["answer"]["value"] == 2


def test_sheets_priced_and_of_the_wall_just_measured() -> None:
    assert last("how many sheets of osb for a wall 32 by 9", "they are 38 dollars a sheet, what does that come to")["answer"][
        "value"
    ] == pytest.approx(342)
    assert last("area of a wall 32 by 9 with two windows 3 by 4", "how many sheets of ply is that")["answer"]["value"] == 9
