"""A question that was put back stays open over a line that comes to nothing, and its record says so."""

from __future__ import annotations

import pytest

from tests.talking import records

SCREW = "screw for 19 board, 38 batten, 50 foam"  # 107 mm, and what goes into the stud is asked


@pytest.mark.parametrize(
    "aside",
    [
        "what's usual",
        "why do you want that",
        "what's common around here",
        "what do you need that for?",
        "what size cable for the outside light",
        "what's the span for a 2 by 8",
    ],
)
def test_the_piece_may_come_after_a_line_that_was_none(aside: str) -> None:
    first, between, last = records(SCREW, aside, "38")
    assert first["outcome"] == "asks"
    assert between["outcome"] in ("asks", "declined")
    assert last["answer"]["value"] == pytest.approx(145)


@pytest.mark.parametrize("aside", ["what's usual", "why do you want that"])
def test_it_says_that_the_question_is_open(aside: str) -> None:
    assert "How much penetration into the stud?" in records(SCREW, aside)[-1]["say"]


def test_a_piece_that_cannot_be_leaves_the_question_open() -> None:
    found = records("what's the dew point at 68 degrees?", "140 percent", "it says 40")
    assert [record["outcome"] for record in found] == ["asks", "declined", "answered"]
    assert found[-1]["answer"]["value"] == pytest.approx(42.76, abs=0.05)


def test_what_was_left_is_open_no_more() -> None:
    assert records(SCREW, "never mind", "38")[-1]["outcome"] != "answered"


def test_a_new_question_closes_the_one_before_it() -> None:
    last = records(SCREW, "roof angle of a 6 in 12", "38")[-1]
    assert last["topic"] != "fastener length"


@pytest.mark.parametrize(
    ("lines", "piece"),
    [
        (("how many courses in a 9 foot wall", "4 inches to the weather", "and 4 and a half?"), ("exposure", "4 1/2 in")),
        (("lay out the siding on an 8 foot wall", "4 inches", "what if it's 5"), ("exposure", "5")),
    ],
)
def test_a_bare_number_next_is_of_the_piece_just_told(lines: tuple[str, ...], piece: tuple[str, str]) -> None:
    last = records(*lines)[-1]
    name, text = piece
    said = next(given["text"] for given in last["givens"] if given["name"] == name)
    assert last["outcome"] == "answered"
    assert said.startswith(text.split()[0])


def test_a_bare_number_that_may_be_of_either_is_asked_about() -> None:
    assert records("65 on the saw, will it go", "can't get past 52", "48 then")[-1]["outcome"] == "asks"


def test_degrees_of_a_swing_are_of_the_weather_where_that_is_asked() -> None:
    found = records("how much will my trim grow from winter to summer", "it's 18 feet of aluminum", "the swing is 80 degrees F")
    assert found[-1]["answer"]["value"] == pytest.approx(0.226, abs=0.01)


def test_the_saw_s_swing_is_kept_for_the_saw() -> None:
    assert records("thermal movement of 16 ft vinyl", "saw swing is 52")[-1]["topic"] == "remember"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("straps every 16 inches, how many", "what's 25 feet 4 less 16 inches", "it's 24 feet"), 19),
        (("how many strips along this wall", "what's 14'7 plus 9'5", "wall is 24 feet and the strips go every 16 inches"), 19),
        (("trim sticks, 3.6 stock", "what's 4 times 2.35 m", "total's 24.5 m"), 7),
        (("nail for 16 board, 45 batten", "what's 16 plus 45", "30 into the stud"), 91),
        (("rake length 24 foot gable", "what's 24 feet divided by 2", "half of that", "roof's 9 in 12"), 180),
        (("gable height, 30 feet wide", "remind me, what's 30 feet in inches", "the roof is 7 in 12"), 105),
    ],
)
def test_a_sum_in_between_leaves_the_question_open(lines: tuple[str, ...], value: float) -> None:
    found = records(*lines)
    assert [record["outcome"] for record in found] == ["asks", *["answered"] * (len(lines) - 1)]
    assert found[-1]["answer"]["value"] == pytest.approx(value)
    assert found[-1]["topic"] == found[0]["topic"]


@pytest.mark.parametrize("line", ["less 3 inches", "and another 6 inches", "in feet", "make it 25 feet 6", "half of that"])
def test_what_goes_on_from_the_sum_is_of_the_sum(line: str) -> None:
    last = records("straps every 16 inches, how many", "what's 25 feet 4 less 16 inches", line)[-1]
    assert last["topic"] != "strapping"


@pytest.mark.parametrize("line", ["what's 3/8 of an inch in millimeters", "what is 22 feet divided by 2"])
def test_a_sum_asked_outright_is_no_piece(line: str) -> None:
    assert records("how long is the rake", line)[-1]["outcome"] == "answered"


@pytest.mark.parametrize(
    ("open_", "back", "piece", "value"),
    [
        ("arched head, 1200 across", "what is rise here", "300", 750),
        ("rake length 24 foot gable", "what does pitch mean", "9 in 12", 180),
        ("rake length 24 foot gable", "which pitch do you mean", "9 in 12", 180),
        (
            "crown 38 degrees from the wall, saw setting",
            "which corner do you mean?",
            "it's an outside corner at 92 degrees",
            30.7331,
        ),
        (SCREW, "what does penetration mean?", "38", 145),
    ],
)
def test_what_the_piece_is_may_be_asked_back(open_: str, back: str, piece: str, value: float) -> None:
    first, again, last = records(open_, back, piece)
    assert (again["outcome"], again["topic"]) == ("asks", first["topic"])
    assert first["ask"] in again["ask"]
    assert last["answer"]["value"] == pytest.approx(value, abs=1e-3)


def test_what_is_usual_nowhere_else_is_the_piece() -> None:
    lines = ("how many boards for a wall 24 feet long and 9 feet high", "12 feet long and 4 and a half inches of each one shows")
    given = {one["name"]: one["text"] for one in records(*lines)[-1]["givens"]}
    assert given["exposure"] == "4 and a half inches"


@pytest.mark.parametrize(
    ("line", "sticks"),
    [("how many 16 foot sticks for the two of them", 2), ("which is how many 10 foot boards for one side?", 2),
     ("how many 12 foot lengths is that for both", 3)],
)  # fmt: skip
def test_sticks_for_the_piece_just_worked(line: str, sticks: int) -> None:
    assert records("rake length 24 foot gable, 9 in 12", line)[-1]["answer"]["value"] == sticks


def test_more_than_one_is_no_count() -> None:
    lines = ("going round a 90 degree corner with more than one piece, what do I set the saw to", "four")
    first, last = records(*lines)
    assert first["outcome"] == "asks"
    assert last["answer"]["value"] == pytest.approx(15)


def test_the_unit_of_the_talk_is_that_of_the_piece() -> None:
    lines = ("rake length, gable 6.4 m wide, 35 degrees", "hip length, 35 degree roof", "3.3")
    assert records(*lines)[-1]["answer"]["unit"] == "mm"
