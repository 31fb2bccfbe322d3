"""Sealant round openings told by their sizes: every one of them, on all four sides."""

from __future__ import annotations

import pytest

from tests.talking import last
from tests.working import work


@pytest.mark.parametrize(
    ("line", "tubes"),
    [  # by hand: a tube of 10.1 fl oz is 18.227 in³
        ("tubes for 12 windows 3 by 4 foot 3/8 by 3/8 bead", 16),  # 168 ft × 12 × 9/64 = 283.5 in³
        ("tubes of sealant round 12 windows 3 by 4, joint 3/8 by 1/4", 11),
        ("how many tubes of caulk to go round 8 windows 36 by 48 and two 3-0 by 6-8 doors, 1/4 by 1/4", 7),  # 150.7 ft
        ("seal 4 windows 2 foot 6 by 4, quarter inch by quarter, tubes", 3),
        ("sealant 11 windows 13 ft of joint apiece, 1/4 by 3/8, tubes", 9),
        ("sealant for 100 ft of joint 1/4 by 1/4", 5),
    ],
)
def test_tubes_round_openings(line: str, tubes: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("sealant", tubes)


def test_one_window_comes_to_what_its_length_comes_to() -> None:
    given = {"width": "1/4 in", "depth": "1/4 in"}
    one = last("tubes for a window 3 by 4 foot, 1/4 by 1/4 bead")
    assert one["answer"]["value"] == work("sealant", **given, length="14 ft").working.result.value  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "line",
    [
        "how much caulk round a 3 foot door, 3/8 wide 3/8 deep",
        "caulk round a door 3 foot wide, 3/8 by 3/8 joint",
        "caulk for a 3 foot window, joint 3/8 by 3/8",
        "caulk round 8 windows, 1/4 by 1/4 joint",  # whose size is not round each of them
    ],
)
def test_one_side_of_an_opening_is_no_length_of_joint(line: str) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("asks", "sealant")
    assert "length of the joint" in record["ask"]


@pytest.mark.parametrize(
    ("line", "size", "tubes"),
    [  # by hand, as above
        ("how much caulk round a 3 foot door, 3/8 wide 3/8 deep", "3-0 by 6-8", 2),  # 19 ft 4 × 9/64 = 32.6 in³
        ("caulk round two doors, 3/8 by 3/8 joint", "3-0 by 6-8", 4),
        ("caulk for a 3 foot window, joint 3/8 by 3/8", "3 by 4 foot", 2),  # 14 ft: 23.6 in³
        ("caulk round 8 windows, 1/4 by 1/4 joint", "36 by 48", 5),  # 112 ft × 1/16 = 84 in³
        ("caulk round 8 windows, 1/4 by 1/4 joint", "120 feet", 5),
    ],
)
def test_the_size_that_comes_after_is_of_the_opening(line: str, size: str, tubes: int) -> None:
    record = last(line, size)
    assert (record["topic"], record["answer"]["value"]) == ("sealant", tubes)


@pytest.mark.parametrize(
    "line",
    [
        "sealant for 100 ft of joint round the windows, 1/4 by 1/4",
        "14 foot window perimeter, 1/4 by 1/4 joint, how many tubes",
        "tubes for a window with 14 foot of joint, 1/4 x 1/4",
    ],
)
def test_so_much_joint_beside_an_opening_is_the_joint(line: str) -> None:
    assert last(line)["outcome"] == "answered"
