"""Sheets over faces that are alike, in layers, on both sides; and what is not told of them is asked."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "sheets"),
    [
        ("Roof has two slopes of 32 by 14. Deck it in 4 x 8 plywood, how many?", 28),
        ("three identical rooms each with 380 square feet of wall drywall in four by twelve sheets how many", 24),
        ("Sheathing both gables, they match, 28 ft wide and 7 ft tall at the peak, 4x8 sheets. Total?", 7),
        ("two gables alike, 9 m wide 2.5 m high, OSB at 1.2 by 2.4, sheets for both", 8),
        ("we've a partition 6.3 m long by 2.4 high boarded both sides, 2.4 by 1.2 boards, how many boards", 11),
        ("shaft wall ten foot wide twenty eight foot high both faces four by ten board how many", 14),
        ("two layers of 5/8 board on a ceiling 20 by 12, sheets", 15),
        ("how many eight by fours for a floor 5.4 metres by 3.6", 7),
        ("give me the sheets needed on a wall fifty five by eleven in four by tens", 16),
        ("foam bd 3/4 in, 2x8 ft sheets, 410 sq ft", 26),
        ("theres for walls all twelve foot by eight how many sheets of board", 12),
        ("What's it take in OSB: wall twenty six by nine, two windows 3 by 4 feet in it", 7),
        ("tally the sheets for both long walls they are the same thirty two by nine four by eight plywood", 18),
        ("Six closets, back wall 7 by 8 each, drywall, sheets?", 11),
        ("garage lid 22 x 24, 5/8 drywall, sheets 4 by 12, how many", 11),
        ("1,850 sf sheathing, 8% waste. Sheets? Inspector 1:30.", 63),
    ],
)
def test_sheets_over_so_many(line: str, sheets: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"] and record["answer"]["value"]) == ("sheets", sheets), record["ask"] or record["say"]


@pytest.mark.parametrize(
    "line",
    [
        "garage walls 24 by 9, all four the same, how many sheets of osb",
        "we have 22 sheets, the wall's 60 by 9, how many more sheets do we need",
        "room 12 by 14 with 8 foot walls, drywall sheets",
        "sheets of ply for ten shelves 8 ft by 1 ft",
    ],
)
def test_what_is_let_open_is_asked(line: str) -> None:
    assert last(line)["outcome"] != "answered"


def test_a_wall_in_decimals_is_in_metres() -> None:
    assert last("sheets for a wall 7.2 by 2.4")["answer"]["value"] == 6  # 17.28 m² in sheets of 4 by 8 ft
