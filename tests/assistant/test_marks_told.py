"""Notes, flags, tags and strikes told in one's own words, and lines that only sound like them."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.talking import last


@pytest.mark.parametrize(
    "line, say",
    [
        ("Flag the east gable flashing", "Noted and flagged: the east gable flashing"),
        ("put a flag on the sill by the door", "Noted and flagged: the sill by the door"),
        ("flag this for the boss: 3 sheets short", "Noted and flagged: 3 sheets short"),
        ("Tag the lake wall as done", "Noted and tagged done: the lake wall"),
        ("log it: 3 tubes of sealant left", "Noted: 3 tubes of sealant left"),
        ("make a memo: the corner at the ramp is 92 degrees not 90", "Noted: the corner at the ramp is 92 degrees not 90"),
        ("mark it down, the sill's out of level by a quarter", "Noted: the sill's out of level by a quarter"),
    ],
)
def test_what_is_told_in_any_words_is_noted(line: str, say: str) -> None:
    record = last(line)
    assert record["outcome"] == "noted" and record["say"].startswith(say)


@pytest.mark.parametrize(
    "line",
    [
        "mark 16 inch centres along a 20 foot plate",
        "add it up, 12 and 13 and 14 inches",
        "get me the rake length: 6 twelve, 24 foot gable",
        "write out the courses for a 108 inch wall: 7 max",
        "take the lot: 12 foot less 3 inches",
        "put up 12 courses at 7, how high",
    ],
)
def test_a_question_is_no_note(line: str) -> None:
    assert last(line)["outcome"] == "answered"


def test_an_entry_is_flagged_by_its_own_name() -> None:
    record = last("rake return 5 twelve", "note: felt is torn", "flag the rake return")
    assert record["topic"] == "flag" and "rake return 5 twelve" in record["say"]


def test_the_note_that_is_named_is_struck() -> None:
    conversation = Conversation()
    for line in ("note: felt is torn on the north wall", "rake return 5 twelve"):
        conversation.answer(line)
    assert "felt is torn" in conversation.answer("delete the note about the felt")["say"]
    assert "no entry about" in conversation.answer("delete the note about the soffit")["say"]
    assert len(conversation.records) == 3  # the strike and its refusal beside the answer


def test_a_flagged_note_is_found_among_the_flagged() -> None:
    assert "soffit vents" in last("flag the soffit vents", "what have I flagged")["say"]
    assert "lake wall" in last("tag the lake wall as done", "what's tagged done")["say"]


def test_the_entry_is_the_last_one() -> None:
    record = last("wall area 20 by 9", "label the entry with lake wall")
    assert record["topic"] == "tag" and "wall area 20 by 9" in record["say"]
