"""Lines that lean on what was said before: in words that name it, count it anew, or leave it out; and those that only look so."""

from __future__ import annotations

import pytest

from tests.talking import last

LAYERS = ("12 mm ply, 50 mm foam, 19 mm batten: how far off the stud is the face",)
BENT = ("bent flashing legs 2, 1 1/2 and 5/8 inch, girth?",)
RAKE = ("rake length on a 30 foot wide gable with 18 inch overhang at 6 in 12",)
ROW = ("9 slats 65 wide in 1200 opening with gaps at both ends, gap?",)
SHELVES = ("five shelves at 900 and three at 650 from 2.4 m boards, how many boards",)
GABLE = ("gable 30 ft wide at 8 in 12, area",)
FALL = ("deck runs 12 feet from the house at 1/8 inch per foot, how much fall",)
WALL = ("wall 6.2 m long 2.4 high, what area",)
SLAB = ("slab is 7.2 by 4.8 m, diagonals", "8.67 is what I pulled, how far out")
STICK = ("how many 16 inch blocks from a 12 footer",)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*LAYERS, "how long a screw through the lot for 38 mm into the stud"), 119, "mm"),
        ((*LAYERS, "how long a screw through all three with 32 mm into the stud"), 113, "mm"),
        ((*BENT, "how many strips like that would I get across a 24 inch coil"), 5, "count"),
        ((*BENT, "how many of those can I get out of a 20 inch roll"), 4, "count"),
        ((*BENT, "how many strips from a 24 inch coil", "and across a fourteen inch one"), 3, "count"),
        ((*BENT, "how many strips from a 24 inch coil", "if I make the first leg two and a half what's the girth"), 4.625, "in"),
        ((*BENT, "how many strips from a 24 inch coil", "make the first leg 2 1/2"), 4.625, "in"),
        ((*BENT, "how many strips from a 24 inch coil", "if the girth was 5 inches"), 4, "count"),
        ((*RAKE, "what if there is no overhang at all"), 201.25, "in"),
        ((*RAKE, "leave the overhang off"), 201.25, "in"),
        ((*ROW, "what about one less slat"), 75.56, "mm"),
        ((*ROW, "what if I use one fewer"), 75.56, "mm"),
        ((*ROW, "one more slat"), 50, "mm"),
        ((*SHELVES, "I need one more of the 900s"), 4, "count"),
        ((*SHELVES, "we want two more of the 650 ones please"), 4, "count"),
        ((*GABLE, "the wall below it is 10 foot high, what's the total"), 450, "ft2"),
        ((*GABLE, "there are two gables like that, so what's the area of both together"), 300, "ft2"),
        ((*STICK, "how many of those do I need for 40 blocks"), 5, "count"),
        (("14 foot 3 plus 6 foot 2 and 1/4", "no first one is 14 foot 5"), 247.25, "in"),
        (("circle 400 mm across, how far round", "what about one with a 250 mm radius"), 1570.8, "mm"),
        (("step flashing up 19 foot of wall at 5 5/8 exposure", "two of those", "both sides are 23 foot"), 100, "count"),
    ],
)
def test_it_is_of_what_was_said_before(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=0.51), unit)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*FALL, "the mason says 1 in 60"), 2.4, "in"),
        (("rafter length for 14 foot run at 6 in 12", "my neighbour reckons the run is 13 foot 6"), 181.12, "in"),
        (("rafter length for 14 foot run at 6 in 12", "my brother says it's an 8 in 12"), 201.94, "in"),
        ((*WALL, "my wife says the wall is 6.5 long, not 6.2"), 15.6, "m2"),
        ((*WALL, "the plasterer says the height is 2.7"), 16.74, "m2"),
        (
            ("slab is 7.2 by 4.8 m, diagonals", "8.67 is what I pulled, how far out", "the lad says the short side is 4.81"),
            11,
            "mm",
        ),
    ],
)
def test_a_given_that_somebody_says_is_a_change(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=0.51), unit)


@pytest.mark.parametrize(
    "lines",
    [
        (*FALL, "the mason says it's 2 inches"),
        (*WALL, "my wife says it's 15 square metres"),
        (*BENT, "I make it 4 3/4"),
        ("rafter length for 14 foot run at 6 in 12", "my brother says it's 15 foot 8"),
    ],
)
def test_what_may_be_the_answer_is_set_beside_it(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("noted", "compare")


@pytest.mark.parametrize(
    ("lines", "asks"),
    [
        ((*LAYERS, "how long a screw through both with 38 mm into the stud"), "Which of the 3 layers"),
        ((*GABLE, "the wall below it is 10 foot high"), "the wall alone, or the gable and the wall"),
    ],
)
def test_what_has_two_readings_is_asked_about(lines: tuple[str, ...], asks: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks"
    assert asks in record["ask"]


def test_a_door_among_openings_cased_on_four_sides_is_not_guessed() -> None:
    windows = "casing 4 windows 900 by 1200 on all four sides, how much"
    assert last(windows, "stick a 900 by 2100 door in with them")["outcome"] != "answered"
    assert last(windows, "throw in a 600 by 900 window as well")["answer"]["value"] == pytest.approx(19800)


def test_one_more_post_is_no_more_of_the_balusters_between_posts() -> None:
    record = last("12 balusters 38 wide between posts 1900 apart gap at both ends, what's the gap", "one more post")
    assert not any(given["name"] == "pieces" and given["value"] == 13 for given in record["givens"])


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("6 tubes did 80 feet of joint. How many for the remainder?", "about 140 feet to go"), 11),
        (("3 tins of stain went over 42 square metres. How many tins for the rest?", "there's 165 square metres left to do"), 12),
        (("4 tins did 62 square metres. How many for 150 square metres?", "how many if there's only 90 square metres left"), 6),
    ],
)
def test_the_rest_is_what_is_left_to_do(lines: tuple[str, ...], value: int) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"]
    assert record["answer"]["value"] == value


def test_a_slope_told_where_two_topics_were_meant_is_a_reply_and_kept() -> None:
    asked = "We're siding the end of our house and the triangle up top has me stumped. It's 26 feet across, so how tall is it?"
    record = last(asked, "Oh, sorry. The roof is a 7 in 12.")
    assert record["answer"]["value"] == pytest.approx(91)
    assert record["say"].startswith("Kept for this job: pitch 7 in 12.")
