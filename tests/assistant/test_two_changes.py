"""A line that changes two things of the question before it, each in words of its own."""

from __future__ import annotations

import pytest

from tests.talking import last

SILL = ("how much drop across a 6 inch sill at a quarter inch to the foot", "try five percent")
SCREW = ("screw length through 1/2 siding, 3/4 strapping and 1/2 sheathing with 1 1/2 into the stud",)  # 3 1/4
ROW = ("fourteen balusters 1 1/4 wide in 72 inches with gaps at both ends, gap?",)
CORNER = ("90 corner in 4 pieces, saw setting at each joint",)
SHEETS = ("cost of 12 sheets at 17.85",)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*SILL, "make the sill 200 mm and put it back to a quarter to the foot"), 4.1667, "mm"),
        ((*SCREW, "now make the strapping inch and a half thick and only an inch and a quarter of bite"), 3.75, "in"),
        ((*ROW, "try twelve and they're inch and a half wide"), 4.1538, "in"),
        ((*CORNER, "finder says it's 100 not 90, and do it in 5 pieces"), 10, "deg"),
        ((*CORNER, "forty eight inch circle, circumference", "back on the corner, finder says 100 not 90, and do it in 5 pieces"),
         10, "deg"),
        ((*SHEETS, "make it 14 sheets and 19.40"), 271.6, "money"),
    ],
)  # fmt: skip
def test_two_things_are_changed_in_one_line(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=1e-3), unit)


def test_both_changes_are_said_before_the_answer() -> None:
    assert last(*SHEETS, "make it 14 sheets and 19.40")["say"].startswith("With count 14. With price 19.40. Cost: ")


@pytest.mark.parametrize(
    "lines",
    [
        (*SHEETS, "twelve lads and 3 vans turned up"),
        (*CORNER, "we start at 7 and it's 40 miles"),
        (*SILL, "make the sill 200 mm and the dog is 13"),
    ],
)
def test_what_changes_one_thing_and_tells_another_number_is_no_answer(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"
