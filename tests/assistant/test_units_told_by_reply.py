"""Sizes of no unit that were told before a reply are worked as if they were told with it: their unit is that of the whole."""

from __future__ import annotations

import math

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        (("verge length, gable 6.4 wide", "35 degrees"), 3200 / math.cos(math.radians(35)), "mm"),
        (("pitch, rise 1.9", "run 2.6"), 12 * 1.9 / 2.6, "in12"),
        (("fixing marks along 3.9", "first one at 150, 600 apart"), 7, "count"),
        (("fixing marks along 5.4", "at 450 centres"), 13, "count"),
        (("cladding for ramp wall, 9.6 by 3", "125 cover, 4.8 lengths"), 53, "count"),
        (("wall area, 8.4 long", "2.55, two windows 1.2 by 1.0 as well"), 8.4 * 2.55 - 2.4, "m2"),
        (
            ("boards for lake wall, 12.0 by 2.8", "less 3 windows 1.2 by 1.4", "plus 15 percent", "140 cover, 4.8 long"),
            49,
            "count",
        ),
    ],
)
def test_a_reply_tells_the_unit_of_what_was_told_before_it(lines: tuple[str, ...], value: float, unit: str) -> None:
    answer = last(*lines)["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(value), unit)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("rake length, gable 24.5 wide", "30 degrees"), 12.25 * 12 / math.cos(math.radians(30))),
        (("fixing marks along 14.5", "16 apart"), 11),
        (("pitch, rise 4 1/2", "run 12"), 4.5),
    ],
)
def test_what_no_reply_tells_to_be_metric_stays_as_it_was(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("lines", [("wall area, 20.8 long", "8.2"), ("diagonal of a 4.8 frame", "call it 3.6 high")])
def test_no_size_is_in_feet_beside_another_in_metres(lines: tuple[str, ...]) -> None:
    asks = last(*lines)["ask"]
    assert asks.count(" m") == asks.count(" ft") == 2


@pytest.mark.parametrize("line", ["6 inch, 12 footers", "12 footers, 6 inch exposure", "12 footers and 6 to the weather"])
def test_stock_told_beside_the_piece_that_is_waited_for(line: str) -> None:
    found = last("boards for a wall 24 by 9 with a 3 by 7 door", line)
    assert found["answer"]["value"] == 36  # 195 ft², 10 percent more, in boards of 6 ft²


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        (("membrane rolls, 118 square metres", "1.5 by 50"), 2, "count"),
        (("girth of the drip", "legs 60, 45 and 15"), 120, "mm"),
        (("girth of the drip", "legs 3, 2 1/2 and 1"), 6.5, "in"),
    ],
)
def test_a_reply_has_the_unit_that_it_has_in_one_line(lines: tuple[str, ...], value: float, unit: str) -> None:
    answer = last(*lines)["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(value), unit)


def test_a_scale_that_made_no_difference_is_not_known_next() -> None:
    lines = ("frost tonight? low of minus 2", "dew point minus 1")
    assert last(*lines)["answer"]["value"] == 1  # on either scale
    assert last(*lines, "low 4, dew point 1?")["outcome"] == "asks"
    assert last(*lines, "low 4, dew point 1?", "celsius", "low 5, dew point 2")["answer"]["value"] == 0


def test_a_scale_that_was_said_is_known_next() -> None:
    assert last("frost tonight? low of minus 2 C", "dew point minus 1", "low 4, dew point 1?")["answer"]["value"] == 0


def test_a_wall_in_decimals_with_no_openings_is_worked() -> None:
    assert last("wall area 7.2 by 2.4, no windows")["answer"]["value"] == pytest.approx(17.28)
