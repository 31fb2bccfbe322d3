"""The other leg of a slope told anew, what sticks out, and the next part of a roof asked for by half its name."""

from __future__ import annotations

import math

import pytest

from assistant.desk import Desk

TALKS = (
    (("sloped length at 5/12 over 12 foot of run", "make the rise 6 foot", "the pitch"), "sloped length", 72 * 13 / 5),
    (("sloped length at 5/12 over 12 foot of run", "make the rise 6 foot", "the run"), "right triangle", math.hypot(144, 72)),
    (("rafter for 14 foot run at 6/12", "the rise is 6 foot", "keep the pitch"), "sloped length", 72 * math.sqrt(5)),
    (("rafter for 14 foot run at 6/12", "the rise is 6 foot", "run stays the same"), "right triangle", math.hypot(168, 72)),
    (("sloped length, 6/12, rise 5 foot", "make the run 9 foot", "the rise"), "right triangle", math.hypot(108, 60)),
    (("hip length 8/12, 12 foot run", "and the common"), "sloped length", 144 * math.sqrt(208) / 12),
    (
        ("roof's 6/12", "how long is a rake on a 22 foot gable", "what if I stick out 8 inches"),
        "rake length",
        140 * math.sqrt(1.25),
    ),
    (("rake on a 22 foot gable at 6/12", "with 8 inches sticking out"), "rake length", 140 * math.sqrt(1.25)),
    (("peak joint at 9/12", "and where it meets the level trim"), "rake to level joint", math.degrees(math.atan(0.75)) / 2),
)


@pytest.mark.parametrize(("lines", "topic", "value"), TALKS, ids=lambda part: str(part)[-60:])
def test_goes_on_from_the_roof(lines: tuple[str, ...], topic: str, value: float) -> None:
    with Desk(keep=False) as desk:
        record = [desk.answer(line) for line in lines][-1]
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=2e-3)


def test_which_stays_is_asked_and_let_go_of() -> None:
    with Desk(keep=False) as desk:
        desk.answer("sloped length, 6/12, rise 5 foot")
        asked = desk.answer("make the run 9 foot")
        other = desk.answer("what's the miter for a 92 corner")
    assert asked["ask"] == "Which stays as it was: the pitch of 6/12, or the rise of 5 foot?"
    assert other["answer"]["value"] == pytest.approx(44)


def test_how_much_longer_a_hip_is_than_the_common() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("hip 5/12 10ft run how much longer than the common")
    longer = next(line for line in record["also"] if line["name"] == "longer than the common")
    assert longer["value"] == pytest.approx(120 * math.sqrt(2 + 25 / 144) - 130, abs=2e-3)
    assert "3 feet 10 15/16 inches" in record["say"]
