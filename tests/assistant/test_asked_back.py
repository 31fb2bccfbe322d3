"""What is said while a piece is waited for and is no reply: it stays open, is explained, or waits while another is worked."""

from __future__ import annotations

import pytest

from tests.talking import last, records

BOARDS = "how many boards for 300 square feet"


@pytest.mark.parametrize(
    "said",
    [
        "what's that?",
        "what do you mean by exposure",
        "why do you need it",
        "how come you need that",
        "does it matter",
        "huh?",
        "how would I measure that",
    ],
)
def test_a_question_back_is_told_what_the_piece_is_for(said: str) -> None:
    _, told, after = records(BOARDS, said, "7 inch")
    assert told["outcome"] == "asks"
    assert "depends on the exposure" in told["ask"]
    assert told["ask"].endswith("What is the exposure?")
    assert after["ask"] == "How long are the boards?"


@pytest.mark.parametrize(
    "said", ["what's usual", "what's a common reveal?", "which would you use", "what do most people go with"]
)
def test_what_is_usual_is_told_as_a_range(said: str) -> None:
    _, told, after = records(BOARDS, said, "7 inch")
    assert told["ask"] == "The exposure is mostly 3 to 16 in. What is the exposure?"
    assert after["ask"] == "How long are the boards?"


def test_long_things_are_told_in_feet() -> None:
    assert "mostly 2 to 80 ft" in last("step flashing up the rake", "what's normal")["ask"]


@pytest.mark.parametrize("said", ["size me a beam for 12 feet", "what's the football score"])
def test_what_comes_to_nothing_leaves_it_open(said: str) -> None:
    _, between, after = records(BOARDS, said, "7 inch")
    assert between["answer"] is None
    assert after["ask"] == "How long are the boards?"


def test_what_is_left_is_not_mixed_with_the_next() -> None:
    *_, gable, back = records(
        "area of the ramp wall, 9 foot tall",
        "skip it for now. area of a 24 wide gable at 8 twelve",
        "back to the ramp wall its 30 foot long",
    )
    assert (gable["topic"], gable["answer"]["value"]) == ("gable area", 96)
    assert (back["topic"], back["answer"]["value"]) == ("wall area", 270)


@pytest.mark.parametrize(
    ("open_", "between", "reply", "topic", "value"),
    [
        ("pitch of it if it goes up 3 foot", "what's 3 foot times 4", "ok run is 6 foot", "pitch from rise and run", 6),
        (
            "how many sticks of trim for 74 feet of it",
            "12 foot 6 less 3 and a half",
            "the trim comes in 16 foot lengths",
            "trim sticks",
            5,
        ),
        ("straps every 16 inches on the east gable, how many", "25 foot 4 less 16 inches", "it's 24 feet", "strapping", 19),
        (
            "how many boards for 300 square feet, 12 footers",
            "rake length 24 foot gable 6/12",
            "7 inch exposure",
            "cladding boards",
            48,
        ),
    ],
)
def test_the_piece_may_come_after_another_answer(open_: str, between: str, reply: str, topic: str, value: float) -> None:
    asked, other, found = records(open_, between, reply)
    assert (asked["outcome"], other["outcome"], found["topic"]) == ("asks", "answered", topic)
    assert found["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("open_", "between", "change", "topic"),
    [
        ("how many boards for 300 square feet", "rake length 24 foot gable 6/12", "8/12", "rake length"),
        ("pitch of it if it goes up 3 foot", "what's 3 foot times 4", "plus 6 inches", "tape arithmetic"),
        ("lay out courses on a 9 foot wall", "miter for a 92 degree corner", "and 88", "miter for a corner"),
    ],
)
def test_what_changes_the_answer_between_is_no_piece(open_: str, between: str, change: str, topic: str) -> None:
    assert last(open_, between, change)["topic"] == topic


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("height of the gable, it's a 22 footer", "sorry 24 not 22", "6 in 12"), 72),
        (
            ("screw length half inch ply 3/4 strap 3/4 siding", "strap is one and a half not three quarter", "one and a half"),
            4.25,
        ),
        (("nail through 5/8 siding and 3/4 strapping", "5/8 siding is really seven eighths", "1 1/4"), 2.875),
        (("boards for a wall 7.2 by 2.4, 4.8 m lengths", "sorry 2.7 high not 2.4", "150 cover"), 30),
        (("cost of 40 boards", "it's 44 instead of 40", "12"), 528),
        (("screw for 19 board, 38 batten, 50 foam, 38 mm in the stud", "25 foam, not 50"), 120),
    ],
)
def test_a_number_told_is_said_to_be_another(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


def test_two_alike_are_not_told_apart_by_the_number_alone() -> None:
    same = last("screw length 3/4 strap 3/4 siding, 1 1/2 in the stud", "1 not 3/4")
    assert same["outcome"] == "asks"


def test_what_is_left_is_not_open() -> None:
    assert last("rake return", "never mind", "five twelve")["outcome"] != "answered"
