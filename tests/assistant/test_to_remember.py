"""What is to be remembered and is none of a job's values is noted, and never taken for a size of the next question."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    "said", ["remember the north wall is 32 feet", "remember: the wall is 9 feet high", "keep in mind the window is 36 wide"]
)
def test_it_is_noted(said: str) -> None:
    talk = Conversation()
    found = talk.answer(said)
    assert found["outcome"] == "noted"
    assert "Noted: the " in found["say"]
    assert talk.answer("7 inch exposure, how many courses")["outcome"] == "asks"


def test_values_of_the_job_are_kept_as_such() -> None:
    assert "pitch 5 in 12 and exposure 7 in" in Conversation().answer("remember the pitch is 5/12 and the exposure is 7")["say"]


def test_a_question_told_to_be_remembered_is_answered() -> None:
    assert Conversation().answer("remember the corner is 92, what miter")["answer"]["value"] == pytest.approx(44)


def test_a_label_that_says_something_tags_nothing() -> None:
    found = Conversation().answer("the label says fourteen fahrenheit what is that in celsius")
    assert found["answer"]["value"] == pytest.approx(-10)


def test_sheets_of_another_size_are_counted_for_the_same_wall() -> None:
    talk = Conversation()
    talk.answer("how many sheets of osb for a wall 32 by 9")
    assert talk.answer("4 by 9 sheets")["answer"]["value"] == pytest.approx(8)
    assert talk.answer("take out a 3 by 4 window")["answer"]["value"] == pytest.approx(8)


def test_what_no_act_has_a_word_for_is_declined_in_a_sentence() -> None:
    talk = Conversation()
    talk.answer("gap 3/8 behind the cladding, drain or vent?")
    assert talk.answer(" ".join(["a what's good beer"] * 5))["say"]
