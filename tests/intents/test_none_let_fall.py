"""Numbers that were let fall though they are of the job: so many of a length, what is measured at the peak, what comes off."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ('soffit 2 @ 38\' x 18" d, 12" pnl', "2 @ 38'"),
        ("strap 2 @ 30' wall at 16", "2 @ 30'"),
        ("wall 24 long 9 on the sides 15 in the middle, area", "15"),
        ("wall 24 wide 9 at the eaves 15 at the peak area", "15"),
        ("wall 24 by 9 with 6 inches off the top, area", "6 inches"),
        ("wall 24 by 9, half a foot of skirt at the bottom, area", "half a foot"),
    ],
)
def test_it_is_asked(line: str, said: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert said in record["ask"]


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("cut list 3 @ 40 inches, 12 foot stock", 1),
        ("3 boards at 12 foot weigh 1.1 lb a foot", 39.6),
        ("screws for 10 rows at 32 foot every 16", 250),
        ("gable 8 12 at 24 foot, area", 96),
        ("wall 24 by 9 and 6 feet more to the peak, area", 288),
        ("how many tubes for 6 windows, 14 foot round each, quarter by quarter", 4),
        ("8 foot 4 wall. 6 inch exposure max. start 2 inches up.", 98 / 17),
        ("10 rows 32 foot at 16 on centre, add 10 percent screws", 275),
        ("area of wall 38 by 9 foot 6 with 3 windows at 12 square feet each", 325),
        ("wall 38 by 9, 3 windows of 12 sq ft each and a door 3 by 7", 285),
        ("3 walls at 320 square feet each, area", 960),
    ],
)
def test_all_is_used(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("30 foot wall and a 12 foot wall, strapped at 24, straps on both", "12 foot"),
        ("screw every 8 along the edges of a strip 14 foot, 2 edges, 9 strips", "2 edges"),
        ("hip's not in it. gable 22 foot, 5 12. area of two", "two"),
        ("12 foot 4 wall, studs 16, strap it, and dont count the last one cause its already there", "last one"),
    ],
)
def test_another_is_asked_about(line: str, said: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert said in record["ask"]


def test_both_gables_are_two() -> None:
    assert last("gable 22 foot 5 12 area for both")["answer"]["value"] == pytest.approx(100.8333, abs=0.001)
