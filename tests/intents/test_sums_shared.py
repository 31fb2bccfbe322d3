"""Sums whose result is halved, doubled or parted, and middles of two: what was said of the whole is never let fall."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    "said, inches",
    [
        ("59 1/4 minus 3 1/2 and halve the rest", 27.875),
        ("59 1/4 minus 3 1/2 then halve what's left", 27.875),
        ("14 foot 6 less two at 3 1/2 and half of what's left", 83.5),
        ("seven foot minus 3/16 then split in two", (84 - 0.1875) / 2),
        ("14 foot 2 less 6 and then cut the rest in three", 164 / 3),
        ("12 foot 3 less 4 and a half then double it", 285),
        ("88 3/4 div by 3", 88.75 / 3),
        ("average of 31 1/8 and 31 3/8", 31.25),
        ("split the difference between 30 1/8 and 31 3/8", 30.75),
        ("how much more is 9 foot 4 and 5/8 than 8 foot 11 and 3/4", 4.875),
        ("3 1/2 times 4 plus 1 1/2 times 2", 17),
        ("six times 4 plus 3 inches", 27),
    ],
)
def test_what_is_done_to_the_whole_is_done(said: str, inches: float) -> None:
    record = Conversation().answer(said)
    assert record["outcome"] == "answered" and record["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize(
    "said",
    [
        "16 foot less 3 cuts of 38 and a half plus 3 kerfs of an eighth",  # lost as well
        "centre of a 13 foot 9 wall less half of a 36 window",
    ],
)
def test_what_would_let_something_fall_is_asked_about(said: str) -> None:
    assert Conversation().answer(said)["outcome"] == "asks"


def test_feet_and_inches_told_after_their_numbers() -> None:
    answer = Conversation().answer("12 6 and a half less 5 9 and three quarters thats feet and inches")["answer"]
    assert answer["value"] == 80.75
