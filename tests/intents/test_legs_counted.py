"""How many legs a bend has is none of their sizes."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "girth"),
    [
        ("girth on a drip flashing 2 legs, 1 and a quarter and three", 4.25),
        ("girth of a flashing with 3 legs, 2, 4 and 1", 7),
        ("girth 2, 3 and 4 inch legs", 9),
    ],
)
def test_the_girth_is_of_the_sizes_alone(line: str, girth: float) -> None:
    assert last(line)["answer"]["value"] == girth


def test_a_count_said_before_its_sizes_never_goes_into_the_girth() -> None:
    found = last("drip flashing, two legs 1 1/4 and 3, girth")
    assert found["outcome"] == "asks" or found["answer"]["value"] == 4.25
