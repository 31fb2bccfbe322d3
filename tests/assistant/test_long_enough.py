"""Whether a nail or a screw is long enough, asked after the least length; and how many pieces a gap is asked for."""

from __future__ import annotations

import pytest

from tests.talking import last

SCREW = "screw length through 3/4 and 1/2 with 1 1/4 bite"  # 2 1/2 in


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("3 inch enough", "long enough, 1/2 inch over"),
        ("are 3 inch screws long enough", "long enough, 1/2 inch over"),
        ("is 2 inch enough", "too short, 1/2 inch under"),
        ("will a 2 1/2 do", "is my least length"),
    ],
)
def test_a_length_is_held_against_the_least(line: str, said: str) -> None:
    record = last(SCREW, line)
    assert (record["outcome"], record["topic"]) == ("noted", "compare")
    assert said in record["say"]


def test_another_bite_is_still_a_change() -> None:
    assert last(SCREW, "an inch and a half in the stud")["answer"]["text"] == "2 3/4 in"


def test_the_gap_for_so_many_is_no_air_gap() -> None:
    record = last("picket fence 3 1/2 pickets 2 inch gap 8 foot panel", "what gap for 17")
    assert (record["topic"], record["answer"]["text"]) == ("equal spacing", "2 5/16 in")


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("how many 2 inch screws for 20 battens 8 foot long at 12", "180"),
        ("2 1/2 inch nails for 16 courses 32 feet long every 16 inches", "400"),
        ("fasteners for 16 courses 32 feet long every 16 inches", "400"),
    ],
)
def test_how_long_the_screws_are_is_no_part_of_how_many(line: str, count: str) -> None:
    assert last(line)["answer"]["text"] == count
