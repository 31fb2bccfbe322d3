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
