"""Replies that only name what a number is for; numbers that leave the doubt as it was; flags with the notebook off."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.talking import last

CEDAR = "red cedar 7 1/4 from 18 to 9"
DEW = "dew point 72F and 55%"


@pytest.mark.parametrize(
    ("lines", "name", "text"),
    [
        ((CEDAR, "5 1/2", "the width"), "width", "5 1/2"),
        (("fall of a sill 5 1/2 at 7 degrees", "what about 10", "the slope"), "slope per foot", "10°"),
        ((DEW, "what if it's 60", "the humidity"), "humidity", "60"),
        ((DEW, "what if it's 60", "temperature"), "temperature", "60 °F"),
        (("cost of 12 boards at 11.50 each", "14", "the count"), "count", "14"),
    ],
)
def test_the_given_that_is_named_has_the_number(lines: tuple[str, ...], name: str, text: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"]
    assert next(given["text"] for given in record["givens"] if given["name"] == name).startswith(text)


def test_a_number_more_does_not_settle_what_the_first_was_for() -> None:
    assert last(CEDAR, "5 1/2", "12")["outcome"] == "asks"


def test_a_part_off_the_tape_is_no_percent() -> None:
    record = last("doug fir 5 1/2 from 15 to 9", "loses 4", "what about 7 1/4")
    assert record["givens"][0]["text"].startswith("7 1/4")


def test_gaining_follows_losing() -> None:
    assert last("doug fir 5 1/2 from 15 to 9", "loses 4", "gains 4")["answer"]["value"] > 0


def test_what_was_flagged_is_listed_with_the_notebook_off() -> None:
    flagged = ("rake return 5 12", "flag that", "fall of a 6 inch sill at 5 percent")
    assert "1 entry flagged" in last(*flagged, "what's flagged")["say"]
    assert "Nothing flagged" in last("rake return 5 12", "flag that", "unflag that", "what's flagged")["say"]
    assert "Nothing flagged" in last("rake return 5 12", "flag that", "strike that", "what's flagged")["say"]


def test_what_was_tagged_is_found_with_the_notebook_off() -> None:
    assert "1 entry tagged" in last("rake return 5 12", "tag that north wall", "what's tagged north wall")["say"]


def test_a_flag_as_well_is_a_flag() -> None:
    conversation = Conversation()
    topics = [conversation.answer(line)["topic"] for line in ("rake return 5 12", "flag it as well")]
    assert topics == ["rake return", "flag"]
