"""Rows of balusters told by what they stand in, how wide one is and what may be between them at most."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    "text",
    [
        "balusters 9 ft 4 between posts, 1 1/2 balusters, 4 inch max",
        "balusters 9 ft 4 between posts, 1 1/2 inch balusters, 4 inch max gap",
        "1 1/2 balusters 112 opening 4 in max",
    ],
)
def test_the_least_count_whose_gap_is_no_more(text: str) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", "equal spacing")
    count = 22  # the least n with (112 - 1.5 n) / (n - 1) <= 4
    assert record["answer"]["value"] == pytest.approx((112 - 1.5 * count) / (count - 1))
    assert (112 - 1.5 * (count - 1)) / (count - 2) > 4


def test_metres_and_millimetres() -> None:
    record = last("2.4 m between posts, 40 mm balusters, 100 max")
    assert (record["outcome"], record["topic"]) == ("answered", "equal spacing")
    assert record["answer"]["value"] <= 100
