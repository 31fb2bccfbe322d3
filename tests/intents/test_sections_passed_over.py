"""What stuff is called by its section, and what a slash, a swing or a unit left out can mean."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "topic", "answer"),
    [
        ("3/4 battens at 16 on a 32 by 9 wall", "strapping", "25"),
        ("32 by 9 wall, three quarter strapping, 24 centres, how many straps", "strapping", "17"),
        ("5/4x4 6 at 7'3 2 at 3'5 12 foot stock", "cut list", "6"),
        ("11 pieces of corner trim at 9 foot 2, 20 foot stock", "cut list", "6"),
        ("cut 8 at 22 1/2 from 8 foot 1x4", "cut list", "2"),
        ("cut 6 at 23 1/2 from 8 footers", "cut list", "2"),
        ("30 foot wall 9 high 4 1/2 exposure 12 foot boards how many", "take-off", "66"),
        ("16mm ply 19 strap 12 clad face out", "build-out", "47 mm"),
        ("valy len 3.2m run 30 deg", "hip or valley length", "4888 mm"),
        ("11'3 / 7", "tape arithmetic", "19 5/16 in"),
        ("8'1 1/8 / 2 less 1 3/4", "tape arithmetic", "46 13/16 in (3 ft 10 13/16 in)"),
        ("roof 7 / 12 angle", "roof angle", "30.3°"),
        ("3 / 8 in mm", "conversion", "9.5 mm"),
        ("halfway along 12'6", "tape arithmetic", "75 in (6 ft 3 in)"),
    ],
)
def test_plain_lines_are_answered(line: str, topic: str, answer: str) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize("line", ["14 ft less 3", "10 foot plus 4"])
def test_a_unit_that_could_be_either_is_asked_for(line: str) -> None:
    assert "feet or inches" in last(line)["ask"]


def test_the_size_is_in_doubt_and_not_how_many() -> None:
    assert last("10 foot board cut 3 at 24 what's left")["ask"] == "Is the 24 feet or inches?"


@pytest.mark.parametrize("line", ["12' of board", "16' minus that", "9' high total foot"])
def test_one_length_alone_is_not_halved(line: str) -> None:
    assert "÷" not in str(last(line)["ask"])
