"""What was asked stays open after a line that was no reply to it: a question back, a sum on the way, a value that can't be."""

from __future__ import annotations

import pytest

from tests.talking import last, records

CHANNEL = "how much water sits in a channel an inch wide and 8 foot long"  # how deep it is, is asked
GABLE = "gable height, 24 foot wide"  # the pitch is asked


@pytest.mark.parametrize("line", ["how come you need that", "why's that matter", "what's that for", "whats the difference"])
def test_a_question_back_leaves_the_question_open(line: str) -> None:
    first, back, told = records(CHANNEL, line, "three quarters deep")
    assert (back["outcome"], back["ask"].endswith(first["ask"])) == ("asks", True)
    assert told["answer"]["value"] == pytest.approx(72)


@pytest.mark.parametrize("line", ["what size beam for the opening", "whats the difference", "the lad will know that one"])
def test_what_comes_to_nothing_leaves_the_question_open(line: str) -> None:
    _, back, told = records(GABLE, line, "6/12")
    assert back["outcome"] in ("asks", "declined")
    assert told["answer"]["value"] == 72


def test_a_value_that_can_not_be_leaves_the_question_open() -> None:
    _, refused, told = records("layout for the siding with 6 and a half exposure", "minus 9 foot", "nine foot an inch")
    assert refused["outcome"] == "declined"
    assert told["answer"]["value"] == pytest.approx(109 / 17)


@pytest.mark.parametrize(
    ("line", "value"), [("whats 24 foot in inches", 288), ("whats 8 foot 3 and a half minus 11 and three quarters", 87.75)]
)
def test_a_sum_on_the_way_is_worked_and_the_piece_goes_to_what_was_asked(line: str, value: float) -> None:
    _, sum_, told = records(GABLE, line, "6 twelve")
    assert sum_["answer"]["value"] == value and "Still open: What is the pitch?" in sum_["say"]
    assert (told["topic"], told["answer"]["value"]) == ("gable height", 72)


def test_a_sum_on_the_way_may_go_on_as_a_sum() -> None:
    _, _, more, told = records(GABLE, "whats 8 foot 3 minus 11", "in millimeters", "6 twelve")
    assert more["answer"]["unit"] == "mm"
    assert (told["topic"], told["answer"]["value"]) == ("gable height", 72)


def test_a_whole_question_after_the_sum_is_a_question_of_its_own() -> None:
    assert last(GABLE, "whats 24 foot in inches", "miter for a 92 degree corner")["topic"] == "miter for a corner"


def test_a_change_after_the_sum_is_of_the_sum() -> None:
    assert last(GABLE, "whats 3 times 8", "make it 4 times 8")["topic"] == "tape arithmetic"


@pytest.mark.parametrize("line", ["the boards are 13.50 each", "ok boards are 13.50 apiece"])
def test_a_price_of_each_is_the_price_that_was_asked_and_no_length(line: str) -> None:
    assert last("cost of 46 boards", line)["answer"]["value"] == 621


def test_what_is_told_of_a_wall_goes_to_the_square_that_waits_for_it() -> None:
    found = last(
        "wall frame should be square, 20 foot long, whats the diagonal", "whats 3 times 8", "ok that wall is 8 foot high"
    )
    assert found["answer"]["value"] == pytest.approx(258.487911)


@pytest.mark.parametrize("line", ["half of that", "times 2", "plus 2 feet", "double it"])
def test_what_goes_on_from_the_sum_is_not_the_piece(line: str) -> None:
    assert last(GABLE, "whats 3 times 8 feet", line)["topic"] != "gable height"


@pytest.mark.parametrize("pitch", ["6/12", "six twelve", "6 in 12"])
def test_a_pitch_is_none_of_the_ways_to_take_another(pitch: str) -> None:
    doubt, told = records(GABLE, "14", pitch)[1:]
    assert (doubt["ask"], told["answer"]["value"]) == ("Is the pitch 14 in 12 or 14°?", 72)


@pytest.mark.parametrize("line", ["we used 40 boards yesterday", "they lost 3 sheets in the wind"])
def test_things_that_were_used_are_no_pitch(line: str) -> None:
    _, doubt, told = records(GABLE, line, "6/12")
    assert (doubt["outcome"], told["answer"]["value"]) == ("asks", 72)
