"""Trim round openings: how many there are is never let fall, and words tell which sides and faces are trimmed."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("Five basement windows 32 by 16 inches, trim one side, in feet ta", 480),
        ("casing for three double hung windows 34 by 58, lineal feet", 552),
        ("Dad cut the window holes at 25-1/2 x 37-1/2 inches and there are two. Trim for all their edges, total inches?", 252),
        ("how many feet of casing for all the windows in the hall, they're 32 by 54 and there are five", 860),
        ("I've got six windows along the lake wall, each one 3 foot by 4-6, and they want flat stock all the way round.", 1080),
        ("need brick mold for a thirty six inch by eighty inch door and too windows beside it fourteen by seventy total", 532),
        ("2 windows 60x48, 1 door 32x80. Total casing, inches. Delivered 17 May.", 624),
        ("seven feet high and ate wide garage door, trim up both sides and over, in feet", 264),
        ("casing inside and outside one window 24 by 36 inches total please", 240),
        ("window 6 ft wide 4 ft high, 3 sides only as there's a stool at the bottom, trim?", 168),
        ("Add it up for me: door 36 x 82 one side, window 36 x 36 all round. Casing in inches.", 344),
        ("12 doors 30 x 80, casing both sides of every door, feet", 4560),  # no door is 30 feet wide
        ("trim both doors, 32 by 80, one side", 384),
        ("two 36x48 windows and one 3-0 x 6-8 door less the sill, trim total", 460),
        ("window 36 by 48 in a 2x6 wall, trim inside", 168),
    ],
)
def test_trim_round_so_many(line: str, inches: int) -> None:
    record = last(line)
    assert record["topic"] == "trim round openings", record["ask"] or record["say"]
    assert record["answer"] and record["answer"]["value"] == inches, record["ask"]


@pytest.mark.parametrize(
    ("line", "millimetres"),
    [
        ("I've four sash windows 0.95 by 1.65 metres. Length of staff bead right round all of them?", 20800),
        ("800x600 window x 6, facing strip all sides, total mm", 16800),
        ("4 off 1200 x 900 windows, trim inside and out, total metres", 33600),
        ("need architrave for seven internal doors 820 by 2040 both sides of the wall, in metres", 68600),
        ("French doors, opening 1.5 m wide x 2.1 m high, architrave both sides. Metres?", 11400),
    ],
)
def test_trim_in_metric(line: str, millimetres: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("trim round openings", millimetres)


@pytest.mark.parametrize(
    "line",
    [
        "The windows are all 36 by 48. What's the total trim for the whole house?",
        "door 900 x 2100 architrave two sides, how many metres",
        "4 windows 30 by 40 per unit, 6 units, casing total",
        "3 floors with 4 windows each, 36 by 48, trim",
        "2 pairs of windows 36 by 42, trim all round",
        "one picture window six foot by four foot and two casements two foot by four foot, total trim",
    ],
)
def test_what_is_not_told_is_asked(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_openings_of_any_kind_are_counted_for_a_wall_too() -> None:
    record = last("wall 40 by 9 less four sash windows 3 by 5, area")
    assert (record["topic"], record["answer"]["value"]) == ("wall area", 300)
