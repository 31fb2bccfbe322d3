"""What a line between leaves open: one let fall, a reply read with its question, a talk in metres, a number that became what such
numbers are not, and chat."""

from __future__ import annotations

import pytest

from tests.talking import last

METRES = ("panels cover 1000 and the wall is 9.4 metres, balance them, how wide are the ends", "say the wall was 10.4 metres")
STICK = ("how many 16 inch blocks from a 12 footer",)
CORNER = ("miter for a 92 degree corner",)
GABLE = ("how high is a 24 foot gable at 6/12",)
CUTS = ("cut list: six at 38 1/2, four at 27, two at 55", "stock is 12 foot")
DEW = ("dew point at 21 C and 55 percent",)
JACKS = ("jack rafters 7/12 at 16",)
BACK = "the eave at the back is 58 ft, how many for that one"
SOFFIT = ("soffit 64 foot of eave, 20 inches deep, panels cover ten inches, how many panels",)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*METRES, "a round flue 150 across, how far round is it"), 471.2, "mm"),
        ((*METRES, "diagonal of a 4 by 3 slab"), 5000, "mm"),
        ((*METRES, "diagonal of a 4 foot by 3 foot panel"), 60, "in"),
        (("how much casing to go round 7 windows", "3 foot by 5 foot, all four sides", "make it nine windows"), 1728, "in"),
        ((*SOFFIT, BACK, "both eaves together"), 147, "count"),
        ((*GABLE, "next one twenty eight"), 84, "in"),
        (("equal spacing 12 balusters 1 1/2 wide in 68 inches, a space at both ends", "my wife says 13 balusters"), 3.464, "in"),
    ],
)
def test_a_line_is_read_with_what_was_said_before(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["answer"]["unit"] == unit
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)


@pytest.mark.parametrize(
    ("lines", "asks"),
    [
        ((*SOFFIT, BACK, "both eaves"), "the one before it"),
        (("18 courses 36 foot long, one nail every 16 inches", "how many nails if its every 24, still two a spot"), "24"),
        ((*CUTS, "It should be eleven at 38 1/2, not six"), "Do you mean the cut list again"),
        ((*DEW, "and if I heat it to 24 with the humidity still showing the same?"), "temperature 24"),
        ((*JACKS, "it was 35 at the beach on saturday and not a breath of wind"), "Do you mean the jack rafters again"),
    ],
)
def test_what_is_doubtful_is_asked(lines: tuple[str, ...], asks: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks", record["say"]
    assert asks in record["ask"]


def test_a_change_after_a_line_that_was_let_fall_is_asked_about() -> None:
    fell = (*CORNER, "boss wants a 3/8 deep rebate as well", "the corner is 88")
    record = last(*fell)
    assert record["outcome"] == "asks"
    assert record["ask"].startswith("I did not take “boss wants a 3/8 deep rebate as well”")
    assert last(*fell, "yes")["answer"]["value"] == 46


def test_an_answer_asks_nothing() -> None:
    pulled = ("diagonal of a 12 by 18 foot slab", "I pulled 21 foot 9, how far out")
    record = last(*pulled, "other frame is 9 by 12 foot, what diagonal")
    assert (record["outcome"], record["ask"], record["answer"]["value"]) == ("answered", "", 180)
