"""Talk about the job in other words: numbers that differ, what was assumed, what was noted, what is kept."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from assistant.desk import Desk

Record = dict[str, Any]
Say = Callable[..., Record]


@pytest.fixture
def say(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Say:
    """Says lines one after the other, at a desk of one's own, and gives back the last record."""
    monkeypatch.setenv("LATHMARK_HOME", str(tmp_path))
    desk = Desk()

    def last(*lines: str) -> Record:
        return [desk.answer(line) for line in lines][-1]

    return last


def test_a_number_that_differs_is_asked_for_and_then_compared(say: Say) -> None:
    asked = say("rake return 5/12", "my helper got a different answer")
    assert asked["outcome"] == "asks" and "56.3" in asked["ask"]
    compared = say("33.7")
    assert compared["topic"] == "compare" and "edge angle" in compared["say"]


def test_what_was_assumed_is_told_with_what_it_was_worked_from(say: Say) -> None:
    told = say("rake return 5/12", "what did you assume")["say"]
    assert "fascia plumb" in told and "pitch 5/12" in told
    assert "assumed" in say("rake length 6/12 on a 26 foot gable", "does that include the overhang")["say"]


def test_talk_about_an_answer_needs_one_before_it(say: Say) -> None:
    for line in ("is it safe to take out this wall", "how's your morning going"):
        assert say(line)["outcome"] == "declined", line


def test_a_word_and_a_day_are_both_looked_for(say: Say) -> None:
    found = say("note: lake wall flashing is short", "what did I note about flashing today")["say"]
    assert "1 entry about “flashing” today" in found
    assert say("what did I note about flashing yesterday")["say"].startswith("Nothing about “flashing” yesterday")


def test_waste_that_is_kept_is_used(say: Say) -> None:
    answered = say("waste is 12 percent", "squares for 900 square feet")
    assert answered["answer"]["value"] == pytest.approx(10.08)


@pytest.mark.parametrize("line", ["the wall's 32 foot, my mistake", "change the 30 to a 32", "32 rather than 30"])
def test_a_correction_changes_the_one_thing_it_is_near(say: Say, line: str) -> None:
    record = say("straps on a 30 foot wall 9 foot high, 24 inch centres", line)
    given = {row["name"]: row["value"] for row in record["givens"]}
    assert (given["length"], given["height"]) == (32, 9)
