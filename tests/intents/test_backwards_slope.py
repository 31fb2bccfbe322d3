"""Slopes and corners asked backwards, and what a hip, a percent and a halved sum are: values worked by hand."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

BACKWARDS = (
    ("rise is 5 foot at 7/12, what run", 102.857),
    ("how far in to get 3 foot of rise at 8/12", 54),
    ("run for 16 foot rafter at 4/12", 182.147),
    ("rake 15 foot at 6/12, how tall is the gable", 80.498),
    ("gable 6 foot tall at 6/12, how wide", 288),
    ("rise for a 16 foot run at 6/12", 96),
    ("8/12 run 13-6 slope len", 194.700),
)
ANGLES = (
    ("corner for a 30 saw setting", 120),
    ("saw's at 33.7, what corner does that make", 112.6),
    ("miter for a 30 corner", 75),
    ("plumb cut on the hip, 6/12", 19.471),
    ("hip jack plumb cut 6/12", 26.565),
    ("backing angle hip 8/12", 23.085),
    ("what angle is a 58% roof", 30.114),
    ("ladder angle for 20 foot up 5 foot out", 75.964),
    ("three sided bay, 45s", 22.5),
)
LENGTHS = (
    ("guy wire 20 foot up, 12 foot out", 279.886),
    ("10 foot minus a 32 inch door halved", 44),
    ("10 foot minus a 32 inch door", 88),
    ("2440 minus 3 1/2 inches", 92.563),
    ("7.5 mm times 40 in inches", 11.811),
    ("3 m 81 in feet", 12.5),
    ("half round 36 wide, arc length?", 56.549),
)


def answer(line: str) -> float:
    """The value that a line is answered with."""
    with Desk(keep=False) as desk:
        record = desk.answer(line)
    assert record["answer"] is not None, record["ask"] or record["say"]
    return float(record["answer"]["value"])


@pytest.mark.parametrize(("line", "value"), BACKWARDS)
def test_the_part_of_a_slope_that_is_asked(line: str, value: float) -> None:
    assert answer(line) == pytest.approx(value, abs=0.04)


@pytest.mark.parametrize(("line", "value"), ANGLES)
def test_angles_of_what_they_are_told_of(line: str, value: float) -> None:
    assert answer(line) == pytest.approx(value, abs=0.06)


@pytest.mark.parametrize(("line", "value"), LENGTHS)
def test_lengths_told_beside_words(line: str, value: float) -> None:
    assert answer(line) == pytest.approx(value, abs=0.04)


@pytest.mark.parametrize(("line", "pitch"), (("pitch of a 33% grade", 3.96), ("200 mm per metre as a pitch", 2.4)))
def test_pitch_of_another_slope(line: str, pitch: float) -> None:
    assert answer(line) == pytest.approx(pitch, abs=0.01)


@pytest.mark.parametrize(
    ("line", "said"),
    (
        ("other corner of the rake return 6/12", "31.7"),
        ("edge angle at a 135 corner", "67.5"),
        ("total of both rakes, 24 foot gable 6/12", "322"),
    ),
)
def test_said_beside_the_answer(line: str, said: str) -> None:
    with Desk(keep=False) as desk:
        assert said in desk.answer(line)["say"]


def test_so_long_each_is_no_division() -> None:
    with Desk(keep=False) as desk:
        assert desk.answer("3 legs 3 foot each")["answer"] is None
