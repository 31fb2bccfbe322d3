"""One given of a question told in words of the job: where a row starts, how warm it gets, what comes out of a wall."""

from __future__ import annotations

import pytest

from tests.talking import last

MARKS = ("marks at 16 on centre on a plate 22 ft 8, pulling from 0, how many",)
DEW = ("it's 18 celsius with 65 percent humidity, dew point?",)
OPEN = ("corner is 94, 120 mm boards both cut at 45, how far open",)
COURSES = ("wall 8 foot 7 high, no more than 7 inches exposure, what comes out even",)
WALL = ("wall 11.4 m long by 5.2 m high, area",)
SHEETS = ("wall 42 by 9, how many 4x8 sheets",)
VENTS = ("attic is 1350 sq ft at 1/300, vent area",)
LADDER = ("ladder to a 19 foot eave, how far out is the foot",)
COIL = ("how many 6 1/2 inch strips from a 20 inch coil",)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*MARKS, "start em at 15 1/4 instead"), 17, "count"),  # 256 3/4 over 16, and the first
        ((*MARKS, "begin the layout from 8 inches"), 17, "count"),
        ((*MARKS, "go with 24"), 12, "count"),  # which is no start
        ((*DEW, "and if it cools to fifteen up there with the humidity still the same"), 8.5, "degC"),
        ((*DEW, "when it drops to 10"), 3.7, "degC"),
        ((*OPEN, "and if I'd cut the two of them at 44, how far open then"), 5.8, "mm"),
        ((*OPEN, "what if I cut both at 46"), 18.08, "mm"),
        ((*COURSES, "could I stretch it to 7 1/2 at the most, what would it come to"), 103 / 14, "in"),
        ((*COURSES, "what exposure do I end up with if 6 is the max"), 103 / 18, "in"),
        ((*COURSES, "tape says 9 foot 6 on this side, exposure there"), 114 / 17, "in"),
        ((*COURSES, "no wait, the height is 9 foot 6", "ok 8 foot 7 was right, keep the 7"), 103 / 15, "in"),
        ((*WALL, "sorry, two windows have to come out of that, each 1.2 by 1.1 metres"), 56.64, "m2"),
        (
            (*WALL, "less two windows 1.2 by 1.1 metres each", "and then the door as well, that's 900 by 2100 mm"),
            54.75,
            "m2",
        ),
        ((*SHEETS, "take out two 3x5 windows n a 6-0 x 6-8 slider"), 10, "count"),  # 308 over 32
        ((*SHEETS, "knock off a 16 by 7 garage door"), 9, "count"),  # 266
    ],
)
def test_a_given_is_told_in_words_of_the_job(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=0.06), unit)


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ((*VENTS, "how many vents is that for all of it, if each has 50 square inches free"), "Vents for all of it: 13."),
        ((*VENTS, "roof vents are 65 square inches apiece, how many would cover the whole thing"), "Vents for all of it: 10."),
        ((*LADDER, "how long a ladder gets me 3 ft past the edge there"), "Length for 3 feet past the landing: 272 1/8 inches"),
        ((*COIL, "what's left of the coil after those"), "Left over of the coil's width 1/2 inch."),
    ],
)
def test_what_the_page_tells_is_read_off_it(lines: tuple[str, ...], said: str) -> None:
    assert said in last(*lines)["say"]


def test_a_ladder_past_its_landing_by_another_length_is_asked_about() -> None:
    assert last(*LADDER, "how long a ladder gets me 5 ft past the edge")["outcome"] == "asks"


@pytest.mark.parametrize(
    "lines",
    [
        (*MARKS, "we start at 7 tomorrow"),
        (*DEW, "it got to 40 miles on the clock"),
        (*COURSES, "the lads go to 7 on Fridays"),
        (*WALL, "take out the bins and two coffees"),
        (*LADDER, "the old one was right"),
    ],
)
def test_chat_in_such_words_is_no_given(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"
