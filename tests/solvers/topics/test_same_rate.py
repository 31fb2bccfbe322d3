"""How many it takes at a rate that was told."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "needed", "before"),
    [
        ("3 tubes did 40 feet of joint, how many for 160 feet", 12, 12),
        ("3 tubes did 40 feet of joint, how many for 161 feet", 13, 12.075),
        ("a box of nails does 8 squares, how many boxes for 30 squares", 4, 3.75),
    ],
)
def test_needed_is_whole(line: str, needed: int, before: float) -> None:
    record = last(line)
    shown = {each["name"]: each["value"] for each in record["also"]}
    assert record["answer"]["value"] == needed
    assert shown["before rounding up"] == pytest.approx(before, abs=0.001)
