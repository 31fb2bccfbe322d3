"""What a line stated is used by a question after it that lacks a value, and by no other."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (["the pad is 15 feet by 20 feet", "what diagonal makes it square?"], "square check", 300),
        (["panels have a cover of 12 inches", "balance them on a wall 18 ft 7 wide"], "balanced panels", 9.5),
        (["we framed it at 12 in 12", "what's the plumb cut?"], "plumb cut", 45),
        (["corner's 95 degrees", "do it in three pieces, what miter per joint?"], "corner in several pieces", 21.25),
        (["there are 6 posts, 3 1/2 wide each", "what equal gap between them in 15 feet"], "equal spacing", 31.8),
        (["east gable is 25 feet wide and nine twelve", "exposure is 7 1/2", "how long is each gable course"],
         "gable courses", 300),
        (["the deck is 12 feet by 16 feet", "the diagonal measures 20 feet 1 inch, how far out of square is it?"],
         "out of square", 1),
    ],
)  # fmt: skip
def test_a_question_is_whole_with_what_was_stated(lines: list[str], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value)


def test_it_says_what_it_took_from_before() -> None:
    record = last("the pad is 15 feet by 20 feet", "what diagonal makes it square?")
    assert record["say"].startswith("With side 15 feet and other side 20 feet.")
    assert {given["from"] for given in record["givens"]} == {"earlier"}
    again = last("diagonal of a pad of 15 feet by 20 feet")
    assert {given["from"] for given in again["givens"]} == {"asked"}  # what was kept of the working is not changed


def test_all_that_a_question_lacks_is_as_before_and_said_to_be() -> None:
    record = last("rake return for 5/12", "peak joint?")
    assert (record["outcome"], record["topic"]) == ("answered", "peak joint")
    assert record["say"].startswith("With the pitch 5/12 as before.")
    assert {given["from"] for given in record["givens"]} == {"earlier"}


def test_the_plumb_cut_is_no_plumb_fascia() -> None:
    record = last("rake return for 6/12, square fascia", "and the plumb cut")
    assert (record["topic"], record["answer"]["text"]) == ("plumb cut", "26.6°")


def test_what_another_question_lacks_and_was_not_said_is_asked_for() -> None:
    assert last("rake return for 5/12", "gable height?")["outcome"] == "asks"


def test_what_was_stated_is_left_behind_by_a_question_that_needs_none_of_it() -> None:
    assert last("the pad is 15 feet by 20 feet", "rake return at 5/12", "what diagonal makes it square?")["outcome"] == "asks"


def test_numbers_that_have_no_place_are_not_used() -> None:
    assert last("the pad is 15 feet by 20 feet by 4 inches by 9", "what diagonal makes it square?")["outcome"] == "asks"


@pytest.mark.parametrize("back", ["forget everything", "no, it is not", "sorry, wrong wall"])
def test_what_was_taken_back_is_not_used(back: str) -> None:
    assert last("the pad is 15 feet by 20 feet", back, "what diagonal makes it square?")["outcome"] == "asks"


def test_what_was_put_right_is_used() -> None:
    record = last("the pad is 15 feet by 21 feet", "no, the pad is 15 feet by 20 feet", "what diagonal makes it square?")
    assert record["answer"]["value"] == 300
