"""Sums told as what was done with the pieces, whole lines at a time."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

SUMS = (
    ("four pieces of 22 1/2 out of a 12 footer and an eighth lost every cut, what's left over", 53.5),
    ("a 10 footer, three pieces 31 and 1/4 each out of it and an eighth gone each cut, what's over", 25.875),
    ("three 9/16 beads off 31 1/4, what's between", 29.5625),
    ("14 5/8 twice and then half of another, total length", 36.5625),
    ("the post is 9 ft 2, I cut 7 1/2 off and halve what's left, how long is each", 51.25),
    ("took 340 mm off 2.4 m and split the rest, how long's each bit", 1030 / 25.4),
    ("81 and 1/2, I take 1 and 3/16 off the bottom, then half of what's left, what have I got", 40.15625),
    ("81 1/2 less 1 3/16, what have I got", 80.3125),
    ("six pieces at 14 1/4 with a kerf of 1/8 each, how much length is gone in total", 86.25),
    ("gap of 3/16 between nine slats, slats 3 1/2, how wide all told", 33),
    ("five bays in 8 ft, 3/4 inch partitions between them, how wide is a bay", 18.6),
    ("2400 minus 4 times 38, millimetres", 2248 / 25.4),
    ("2400 less four times 38, all millimetres", 2248 / 25.4),
    ("all millimetres, 3000 take off five times 95", 2525 / 25.4),
)


def asked(line: str) -> dict[str, object]:
    with Desk(keep=False) as desk:
        return dict(desk.answer(line))


@pytest.mark.parametrize(("line", "value"), SUMS)
def test_the_whole_line_is_one_sum(line: str, value: float) -> None:
    answer = asked(line)["answer"]
    assert isinstance(answer, dict)
    assert float(answer["value"]) / (25.4 if answer["unit"] == "mm" else 1) == pytest.approx(value, abs=0.001)


def test_pieces_counted_are_no_sum() -> None:
    record = asked("four 24 inch pieces out of eight foot boards with a saw, how many boards really")
    assert record["topic"] == "cut list"


def test_what_is_in_the_notebook_is_read_back() -> None:
    with Desk(keep=False) as desk:
        desk.answer("note: bug screen ran out on the north wall")
        record = desk.answer("what notes have I got about the north wall")
    assert record["outcome"] == "noted"
