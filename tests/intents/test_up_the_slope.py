"""What is asked up or along the slope is the length there; and other words for what is asked."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    "line", ["how far up the slope is it over a 13 foot run", "how long up the roof slope is it with a 13 foot run"]
)
def test_up_the_slope_is_the_length_there(line: str) -> None:
    found = last(line)
    assert (found["topic"], found["ask"]) == ("sloped length", "What is the pitch?")


@pytest.mark.parametrize("line", ["how far up does it go in 12 foot at 6/12", "how high is it over a 12 foot run at 6/12"])
def test_how_far_up_is_the_rise(line: str) -> None:
    assert last(line)["answer"]["value"] == 72


@pytest.mark.parametrize("line", ["which miter for the hex planter", "saw setting for a hex post box"])
def test_a_hex_has_six_sides(line: str) -> None:
    assert last(line)["answer"]["value"] == 30
