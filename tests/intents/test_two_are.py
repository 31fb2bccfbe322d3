"""So many walls of one size, told by how many of them are."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "area"),
    [
        ("three walls, two of them are 30 by 9 and one is 18 by 9, area", 702),
        ("both walls are 30 by 9 and the end is 18 by 9, area", 702),
        ("two walls are 30 by 9 and two are 18 by 9, area", 864),
        ("the walls are 30 by 9 and 18 by 9 area", 432),
        ("two walls at 34 by 8 and one at 20 by 8, area", 704),
        ("ok so I've 3 walls, two are 30 by 9 and the back one's 18 by 9, what's that altogether", 702),
    ],
)
def test_so_many_are(line: str, area: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(area)


def test_more_walls_than_are_told_are_asked_about() -> None:
    assert last("i have 5 walls, two are 30 by 9 and one is 18 by 9, area")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "length", "height"),
    [
        ("9 foot wall 30 long strapping at 16", "30", "9 foot"),
        ("a 9 foot wall 30 foot long area", "30 foot", "9 foot"),
        ("30 foot wall 9 high area", "30 foot", "9"),
    ],
)
def test_what_is_long_is_the_length(line: str, length: str, height: str) -> None:
    given = {each["name"]: each["text"] for each in last(line)["givens"]}
    assert (given["length"], given["height"]) == (length, height)
