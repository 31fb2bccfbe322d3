"""Talks of a working day, each line of which has one meaning: what it came to once, and must not come to again."""

from __future__ import annotations

import pytest

from tests.talking import last


def test_the_eave_a_ladder_stands_at_is_no_overhang() -> None:
    record = last("ladder to a 17 foot eave, how far out", "eave's really 19")
    assert (record["topic"], record["answer"]["value"]) == ("ladder footing", 57)  # a quarter of 19 feet
    assert last("gable 24 wide at 8/12 how tall", "eave's 16 inches")["topic"] == "remember"


@pytest.mark.parametrize(("line", "count"), [("both sides", 42), ("both sides of the roof", 42)])
def test_both_sides_are_no_polygon(line: str, count: int) -> None:
    record = last("rafters at 24 on centre, building 40 feet, how many", line)
    assert (record["topic"], record["answer"]["value"]) == ("marks on centre", count)  # 40 / 2 + 1, twice
    assert last(line)["topic"] != "polygon"


def test_boards_of_a_wall_are_no_courses() -> None:
    lines = ("courses: 96 inches from starter to soffit, 5 inch max exposure", "and how many boards for a 30 foot wall at that")
    assert last(*lines)["outcome"] == "asks"
    record = last(*lines, "12 footers")
    assert (record["topic"], record["answer"]["value"]) == ("cladding boards", 55)  # 20 courses, 30 over 12, ten percent


@pytest.mark.parametrize(
    "lines",
    [
        ("got a corner at 87 on the finder what do i cut each at", "and with a 3 piece return on that one",
         "back to the first one, if i just cut 45s on 4 1/2 stock how much gap"),
        ("back to the first one, if i just cut 45s on 4 1/2 stock how much gap",),
    ],
)  # fmt: skip
def test_a_gap_is_no_cut_list_and_no_sum(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks" or record["topic"] == "how far open"
