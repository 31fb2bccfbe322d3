"""Loads, walls, corners and slopes told without their terms, and what a topic has no use for."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

VALUES = (
    ("panels 0.9 by 3 m weigh 7.8 kg a square metre, 22 of them, how heavy", "kg", 463.32),
    ("a roll of lead 300 mm wide and 6 m long at 20 kg a square metre, how heavy", "kg", 36),
    ("lead at 5 pounds a square foot, strip 18 inches wide and 20 ft long, weight", "lb", 150),
    ("12 boards at 18 lb each and 30 battens at 4, total weight", "lb", 336),
    ("40 bags at 25 kg, 12 boxes at 11 kg and 3 rolls at 19, what do they weigh", "kg", 1189),
    ("24 boards at 18 pounds each, how heavy", "lb", 432),
    ("wall 26 by 9 and gable 26 wide 7/12, total area", "ft2", 332.58333),
    ("gable 24 wide 10 high and wall 24 by 9, two windows of 15 sq ft, net", "ft2", 306),
    ("gable 7.2 m wide 2.1 m high plus the wall 7.2 by 2.4 m, area", "m2", 24.84),
    ("lake wall 20 ft by 8 ft, three portholes 16 inches square, net", "ft2", 154.66667),
    ("squares for 640 sq ft at 7 in exposure, 12 percent waste", "square", 7.168),
    ("fall of a 150 mm sill at 5 percent, 2.4 m long", "mm", 7.5),
    ("30 percent slope, how much is that per twelve", "in12", 3.6),
    ("crown 52 from the ceiling into a square corner, miter", "deg", 31.619),
    ("the corner's moved to 88 since, what do I set the saw at", "deg", 46),
    ("7.31 inches, put that in 16ths", "in", 7.31),
    ("8 ft 9 of ceiling, panels 16 cover, equal narrow strips both ends, how wide", "in", 12.5),
)


@pytest.mark.parametrize(("line", "unit", "value"), VALUES)
def test_the_value(line: str, unit: str, value: float) -> None:
    with Desk(keep=False) as desk:
        answer = desk.answer(line)["answer"]
    assert answer is not None
    assert (answer["unit"], answer["value"]) == (unit, pytest.approx(value, abs=0.01))


def test_a_wall_of_another_width_is_asked_about() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("gable 28 wide 8/12 and a wall 20 by 9, area")
    assert record["outcome"] == "asks"


def test_a_year_that_was_asks_for_nothing() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("Forty below in 1989, we burned 6 cords and still froze the pump")
    assert record["outcome"] == "declined"


@pytest.mark.parametrize("line", ["remember the saw on this job stops at 52", "the saw here only goes to 47"])
def test_what_a_saw_does_here_is_kept(line: str) -> None:
    with Desk(keep=False) as desk:
        assert desk.answer(line)["outcome"] == "noted"


def test_flashing_up_a_chimney_wants_its_length() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("how much flashing metal do I need along the chimney at 5 in showing")
    assert (record["topic"], record["outcome"]) == ("step flashing", "asks")
