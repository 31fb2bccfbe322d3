"""Sizes of a wall beside a gap are neither a count of pieces nor a sum."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    "said",
    [
        "1 1/2 inch rain gap open top and bottom, 9 foot wall 36 long",
        "9 foot wall 36 long, 1 1/2 gap",
        "wall 9 foot, 36 long, 3/4 gap",
        "cut the top at 33.7 and the bottom square, board 6 inch, how much longer is the long point",
    ],
)
def test_how_long_the_wall_is_is_no_count_and_no_sum(said: str) -> None:
    assert Conversation().answer(said)["outcome"] != "answered"


def test_slats_on_a_wall_are_counted() -> None:
    found = Conversation().answer("11 foot wall, 12 slats 1 1/2 wide, gap")
    assert found["answer"]["value"] == pytest.approx((132 - 12 * 1.5) / 11)
