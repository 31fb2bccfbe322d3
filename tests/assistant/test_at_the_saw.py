"""Whether the saw reaches a joint that is named and not set."""

from __future__ import annotations

from math import atan, degrees
from typing import Any

import pytest

from assistant.conversation import Conversation
from tests.talking import last

RETURN_5_12 = (90 + degrees(atan(5 / 12))) / 2  # geometry: 56.31°


def given(record: dict[str, Any], name: str) -> dict[str, Any]:
    return next(line for line in record["givens"] if line["name"] == name)


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        (["my saw stops at 50", "can my saw cut the rake return at 5/12"], "no"),
        (["my saw stops at 60", "can my saw cut the rake return at 5/12"], "yes"),
        (["my saw stops at 50", "the roof is 5/12", "can it cut the peak joint"], "yes"),
        (["saw stops at 52, can it do the rake to level joint on a nine twelve"], "yes"),
        (["will my saw make a plumb cut at 14/12, it stops at 47"], "no"),
        (["can the saw reach the plumb cut of a 12 12, limit 47"], "yes"),
        (["can my saw do the rake return if it goes to 60", "5/12"], "yes"),
        (["can my saw do the rake return", "5/12", "50"], "no"),
        (["can my saw cut the miter for a 30 degree corner", "72"], "no"),
    ],
)
def test_a_named_joint_is_worked_for_the_saw(lines: list[str], answer: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", "can my saw cut it")
    assert record["answer"]["text"] == answer


def test_the_setting_is_a_given_that_names_its_joint_and_its_working_is_shown() -> None:
    record = last("my saw stops at 50", "can my saw cut the rake return at 5/12")
    assert given(record, "setting")["value"] == pytest.approx(RETURN_5_12, abs=0.01)
    assert "rake return" in given(record, "setting")["text"] and given(record, "pitch")["text"] == "5/12"
    assert record["say"].startswith("The rake return sets the saw to 56.3 degrees.")
    assert len(record["steps"]) > len(last("can my saw cut 56.3 degrees if it stops at 50")["steps"])


def test_how_gives_the_dial_of_the_jig() -> None:
    record = last("how do I cut the rake return for 5/12 when my saw stops at 50")
    assert record["answer"]["value"] == pytest.approx(90 - RETURN_5_12, abs=0.01)


def test_what_is_missing_is_asked_and_no_number_left_in_the_record() -> None:
    record = last("can my saw do the rake return", "5/12")
    assert record["outcome"] == "asks" and "saw" in record["ask"] and record["answer"] is None and not record["steps"]


@pytest.mark.parametrize(
    "line",
    [
        "what do I set the saw to for a rake return at 5/12",
        "can you tell me what to set the saw to to make a rake return at 5/12",
        "where does the saw go for a rake return at 5/12",
    ],
)
def test_a_setting_that_is_asked_for_stays_one(line: str) -> None:
    assert last(line)["topic"] == "rake return"


def test_each_side_of_a_saw_told_before_the_cut_is_its_own() -> None:
    record = last("the saw stops at 52 to the left and 60 to the right", "can i cut a 56")
    sides = {given["name"]: given["value"] for given in record["givens"]}
    assert (sides["swing left"], sides["swing right"]) == (52, 60)


def test_a_joint_past_what_the_saw_goes_to_says_so() -> None:
    told = last("saw goes to 45, rake return on an 8/12")
    assert told["answer"]["text"] == "61.8°"
    assert "past the 45 degrees" in told["say"]
    how = last("saw goes to 45, rake return on an 8/12", "how do i cut it")
    assert how["topic"] == "can my saw cut it" and how["answer"]["text"] == "28.2°"
    kept = last("my saw stops at 50", "rake return 8/12")
    assert "past the 50 degrees" in kept["say"]
    assert "past the" not in last("my saw stops at 50", "rake return 2/12")["say"]


def test_the_jig_is_asked_for_by_its_name() -> None:
    assert last("saw stops at 52 can i cut 58", "what do i set the jig")["answer"]["text"] == "32°"


def test_where_the_saw_stands_is_no_limit_of_it() -> None:
    conversation = Conversation()
    found = conversation.answer("saw's at 33, corner's 114, is that right")
    assert found["answer"]["value"] == pytest.approx(33)
    assert "saw limit" not in conversation.facts.values
