"""What stands beside the numbers of gaps, screens, falls and lows: a mesh is no share, a part off the tape no ratio."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("fall of a 5 1/2 sill, 1/20 slope", 0.275),
        ("fall of a 6 inch sill at 1/10", 0.6),
        ("fall of a 6 inch sill at 1/4", 0.125),
        ("fall of a 6 inch sill at 1/12", 0.5),
        ("40 ft gutter 1/4 inch every 10 feet", 1),
        ("gutter 32' at 1/16 per foot", 2),
    ],
)
def test_a_fall_told_by_a_part(text: str, inches: float) -> None:
    record = last(text)
    assert record["topic"] == "fall"
    assert record["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize("text", ["sill 5 1/2 wide falls 3/8, what percent", "1 inch gap, 20 feet, 16 mesh screen, free area"])
def test_what_is_no_slope_and_no_share_is_asked_about(text: str) -> None:
    assert last(text)["outcome"] == "asks"


def test_a_low_and_a_dew_point_are_no_sum() -> None:
    assert last("minus 2 tonight dew point minus 4")["topic"] != "tape arithmetic"


def test_a_gutter_holds_water_where_that_is_asked() -> None:
    assert last("gutter 4 by 5, 40 ft, how much water")["topic"] == "water in a channel"


def test_so_many_channels_of_it_are_so_many_times_as_much() -> None:
    assert last("j channel 1/2 deep 3/4 wide 12 ft, how much water", "20 channels of it")["answer"]["value"] == pytest.approx(
        1080
    )
