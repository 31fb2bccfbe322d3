"""Openings told after a wall without their sizes are asked about, and the sizes that come next are theirs."""

import pytest

from tests.talking import last

WALL = "wall area, 20 foot long and 10 high"


@pytest.mark.parametrize(
    ("told", "sizes", "area"),
    [
        ("with 2 windows in it", "3 by 5 feet each", 170),
        ("there's two windows", "3 by 5", 170),
        ("minus a door", "3 by 6 8", 180),
        ("oh and there's three windows in it", "48 by 36 inches", 164),
    ],
)
def test_sizes_after_openings_are_theirs(told: str, sizes: str, area: float) -> None:
    asked = last(WALL, told)
    assert asked["outcome"] == "asks" and asked["ask"].startswith("How big is each")
    assert last(WALL, told, sizes)["answer"]["value"] == pytest.approx(area)


def test_openings_told_with_their_sizes_are_not_asked_about() -> None:
    assert last(WALL, "with a 3 by 7 door")["answer"]["value"] == 179
    assert last(WALL, "with 2 windows", "never mind")["outcome"] == "noted"
    assert last("roof angle for 7/12", "with 2 windows")["outcome"] != "answered"


def test_two_lengths_are_no_pieces() -> None:
    assert last("sixteens", "24 foot by 32 foot")["outcome"] in ("asks", "declined")
    assert "tripped" not in last("sixteens", "24 foot by 32 foot")["say"]
    assert last("sixteens", "50, 45 and 40 inches")["answer"]["value"] == 1
