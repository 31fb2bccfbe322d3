"""What a line after an answer is of: the value each of these talks comes to, worked by hand or from geometry."""

from __future__ import annotations

from math import cos, hypot, radians, sqrt, tan

import pytest

from tests.talking import last

ANSWERED: list[tuple[tuple[str, ...], float, str]] = [
    # two changes in one line, one of them back to a value of before
    (("radius of an arch 60 wide 18 high", "80 wide", "back to sixty but 20 high"), 32.5, "in"),
    (("nail for 3/4 board and half sheathing, 1 1/2 into the stud", "inch and a quarter",
      "back to the inch and a half but five eighths sheathing"), 2.875, "in"),
    (("courses in 108 inches at 7", "and a 9 and a half foot wall", "go back to the 108 and make it 8 inch"), 108 / 14, "in"),
    # the pitch said by its rise, after a roof
    (("gable 24 wide 8/12 how high", "and the rake at 9?"), 180, "in"),
    (("rake on a 7 m gable at 35 degrees", "at 40"), 3500 / cos(radians(40)), "mm"),
    (("gable 20 wide 9/12 how high", "cut list 4 at 30 from 12 footers", "ok back to that gable how high at ten"), 100, "in"),
    # up is the rise and over the run; each number near to what it was
    (("33 inches up in 44 across what's the pitch", "thirty up I mean"), 30 / 44 * 12, "in12"),
    (("pitch if it climbs 50 inches in ninety", "fifty four in ninety"), 7.2, "in12"),
    (("radius for a curve thirty across with a five inch rise", "thirty six across and six inch"), 30, "in"),
    (("diagonal for a wall 20'6 by 8'1", "now 18'6", "and 9'1"), hypot(222, 109), "in"),
    (("how many clips for 12 straps 9 foot high every 18 inches", "sixteen straps at eighteen inches"), 112, "count"),
    # told without its name
    (("lake wall is 11.4 m by 2.4, area", "two windows at 1200 by 900", "three of them"), 24.12, "m2"),
    (("wall 24 by 9 net, one window 3 by 4", "two windows that size", "and the wall's 26 long"), 210, "ft2"),
    (("miter for a 92 degree corner", "and a square one"), 45, "deg"),
    (("boards for 180 square feet, 6 inch reveal, 12 footers", "twenty percent waste", "without any"), 30, "count"),
    (("five pieces at 4'1 out of 16 footers", "out of 12"), 3, "count"),
    (("how many straps for 24 feet at 16", "they're at 24"), 13, "count"),
    (("what's forty percent grade in degrees", "fifty percent"), 26.5650512, "deg"),
    (("45 degree bay saw setting", "and a six sided box", "a pentagon"), 36, "deg"),
    # sums counted again, shares of a new length, feet and inches after a minus
    (("add 3'4 and 5'7 1/2", "times four", "no times three"), 322.5, "in"),
    (("what is 6 3/16 four times", "five times", "and off a 96 inch piece what's left"), 96 - 5 * 6.1875, "in"),
    (("a third of 10 ft 9", "no a third of 11 ft 9"), 47, "in"),
    (("nine four minus eight two",), 14, "in"),
    (("twelve six and a quarter minus seven eleven",), 55.25, "in"),
    # what it costs, and of what
    (("sticks for 140 feet of trim in 12 footers", "and sixteens", "at forty dollars"), 360, "money"),
    (("rake on a 24 foot gable at 6/12", "at three dollars a foot"), sqrt(180) * 3, "money"),
    (("wall 30 by 10 less two 3x5 windows, net area", "at 1.90 a foot what's it cost"), 513, "money"),
    (("rake of a 26 foot gable at 9/12", "what does that weigh at two pounds a foot", "how high is the gable"), 117, "in"),
    (("hip length ten foot run six twelve", "and a common on the same run"), hypot(120, 60), "in"),
    # a frame taped, and how far out
    (("diagonal of a 12 by 14 foot deck", "I measured 18'6 corner to corner how far out is it"), 222 - hypot(144, 168), "in"),
    # metric talk
    (("battens for an eight point four wall at six hundred centres",), 15, "count"),
    (("rake, 5 wide, 42 degrees, 250 overhang",), (2500 + 250) / cos(radians(42)), "mm"),
    (("stock is 4.8", "sticks for 22 metres of trim"), 5, "count"),
    (("battens on a 6.6 m wall, 600 centres", "2.25 high, how much batten altogether"), 12, "count"),
    (("gable 7.2 m wide at 35 degrees, how high", "the other gable's only 5.4 wide"), 2700 * tan(radians(35)), "mm"),
    (("wall 7.2 m by 2.4 area", "with a window 1.2 by 900"), 16.2, "m2"),
    (("3.2 m in feet", "no, 4.5"), 4500 / 304.8, "ft"),
]  # fmt: skip


@pytest.mark.parametrize(("lines", "value", "unit"), ANSWERED)
def test_the_line_is_of_what_was_meant(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["unit"] == unit
    assert record["answer"]["value"] == pytest.approx(value, rel=2e-4)


@pytest.mark.parametrize(
    ("lines", "word"),
    [
        (("gap behind cladding 10 mm", "8 mm", "nineteen by eleven", "in inches"), "nineteen by eleven"),
        (("rake 24 foot gable 8/12", "flurble 88", "half of that"), "flurble 88"),
        (("deck 4.8 by 3.6 diagonal",), "ft"),
        (("90 corner in 3 pieces", "miter for an 11 degree corner"), "corner"),
    ],
)
def test_what_is_in_doubt_is_asked(lines: tuple[str, ...], word: str) -> None:
    """A line that came to nothing, a number in either system, a corner that is hardly one: asked, never used as it is."""
    record = last(*lines)
    assert record["outcome"] == "asks"
    assert word in record["ask"]


def test_an_older_answer_is_taken_up_once_that_is_said() -> None:
    record = last("gap behind cladding 10 mm", "8 mm", "nineteen by eleven", "in inches", "yes")
    assert record["outcome"] == "noted"
    assert "5/16" in record["say"]


def test_what_is_to_be_remembered_asks_for_no_answer() -> None:
    """It is noted; what is asked next is of the value that holds now."""
    record = last("the roof is nine twelve", "end cut along the rake", "remember the roof is eight twelve")
    assert record["outcome"] == "noted"
    record = last("the roof is nine twelve", "end cut along the rake", "remember the roof is eight twelve", "saw setting")
    assert "56.3" in record["say"]


def test_the_talk_keeps_its_system() -> None:
    """Degrees without a scale are Celsius where all was metric so far, and asked about where nothing was told."""
    told = last("battens on a 7.2 m wall at 600", "dew point at 18 degrees 55 percent")
    assert told["answer"]["unit"] == "degC"
    assert last("dew point at 18 degrees 55 percent")["outcome"] == "asks"


def test_nothing_is_read_back_that_is_not_on_the_page() -> None:
    record = last("gable 24 wide 8/12 how high", "what's the rake length at 10 in 12")
    assert record["outcome"] == "answered"
    assert record["answer"]["value"] == pytest.approx(hypot(144, 120), rel=2e-4)


def test_a_layer_put_to_the_others_stays() -> None:
    lines = ("sheathing 11 mm, strapping 38, cladding 16, depth to the face", "foam 25 as well")
    assert last(*lines)["answer"]["value"] == pytest.approx(90)
    assert last(*lines, "what about 19 strapping again with the foam")["answer"]["value"] == pytest.approx(71)


@pytest.mark.parametrize(
    "line",
    [
        "wall is 40 by 8 with a door, area",
        "wall 40 by 8 with 3 windows 4 by 3 and a door, area",
        "boards for a 32 by 9 wall with a door and a 3 by 4 window, 6 inch reveal, 12 footers",
    ],
)
def test_an_opening_without_its_size_is_never_left_in_the_wall(line: str) -> None:
    record = last(line)
    assert (record["outcome"], "How big is each door" in record["ask"]) == ("asks", True)
    taken = last(line, "3 by 7")
    openings = next(given["text"] for given in taken["givens"] if given["name"] == "openings")
    assert taken["outcome"] == "answered"
    assert "1 door 3 ft by 7 ft" in openings


@pytest.mark.parametrize(
    ("line", "area"), [("wall 30 by 9 with a 3 by 7 door by the window, area", 249), ("wall 30 by 9, no doors", 270)]
)
def test_an_opening_with_its_size_or_none_is_answered(line: str, area: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(area)
