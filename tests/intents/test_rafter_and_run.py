"""A rafter told beside its run or rise for a pitch, a length that a slope is asked for, and a minus that was said: by hand."""

from __future__ import annotations

from math import sqrt

import pytest

from tests.talking import last

PITCHES = (
    ("if the rafter's 15 foot and the run's 13, what pitch", 12 * sqrt(15**2 - 13**2) / 13),
    ("the rafter is 10 foot and the run is 8, what pitch is it", 9),  # 6, 8 and 10
    ("rafter 14 foot 3, run 12 foot, pitch?", 12 * sqrt(171**2 - 144**2) / 144),
    ("10 foot rafter 8 foot run what pitch", 9),
    ("rise 6 foot rafter 10 foot pitch", 9),
    ("rafter rises 6 foot over a 12 foot run, what pitch", 6),
    ("8 foot rise 10 foot run what pitch", 9.6),
)


@pytest.mark.parametrize(("line", "value"), PITCHES)
def test_a_rafter_is_the_long_side(line: str, value: float) -> None:
    record = last(line)
    assert record["topic"] == "pitch from rise and run"
    assert record["answer"]["value"] == pytest.approx(value, abs=0.0051)


def test_a_rafter_shorter_than_its_run_is_refused() -> None:
    assert last("rafter 10 foot run 12 foot what pitch")["outcome"] == "declined"


def test_a_whole_question_is_read_whole_after_one_like_it() -> None:
    lines = ("if the rafter's 10 foot and the run's 8, what pitch", "if the rafter's 15 foot and the run's 13, what pitch")
    assert last(*lines)["answer"]["value"] == pytest.approx(12 * sqrt(15**2 - 13**2) / 13, abs=0.0051)


def test_the_slope_for_a_length_is_over_it() -> None:
    asked = last("what's the slope length for 16 foot 6 with 4 foot 4 rise")["answer"]
    assert (asked["name"], asked["value"]) == ("slope", pytest.approx(sqrt(198**2 + 52**2), abs=1 / 32))
    given = last("what is the run for a slope of 16 foot 6 with a 4 foot 4 rise")["answer"]
    assert (given["name"], given["value"]) == ("run", pytest.approx(sqrt(198**2 - 52**2), abs=1 / 32))


@pytest.mark.parametrize("line", ["wall 32 by 9 minus 45, area", "wall 32 by 9 minus 45, how many squares"])
def test_what_is_taken_off_is_not_let_fall(line: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert "minus 45" in record["ask"]


def test_what_is_taken_off_with_its_unit_is_taken_off() -> None:
    assert last("wall 32 by 9 minus 45 square feet of openings, area")["answer"]["value"] == 32 * 9 - 45
