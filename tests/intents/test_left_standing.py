"""A number that was taken back is never worked with: where nothing plainly stands in its place, it is asked about."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("rake for a 24 foot gable, 6/12, overhang's 12, scrap that, how long", "12"),
        ("rake length, gable 24 ft at 6/12, overhang's 12, no we've had all of them cut right back to the brick, so 6", "6"),
    ],
)  # fmt: skip
def test_it_is_asked(said: str, asked: str) -> None:
    record = Conversation().answer(said)
    assert (record["outcome"], f"What is the {asked}?" in record["ask"]) == ("asks", True)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("rake length, 30 degrees, gable's 7.2 m, overhang's 300, no they trimmed it to 250", 4445.597),
        ("build-out of 7/16 osb, 3/4 strap, and the siding's 1/2, no it's the 5/8 stuff", 1.8125),
        ("rake length, gable 24 ft at 6/12, no overhang at all", 160.997),
    ],
)
def test_what_was_put_right_is_worked(said: str, value: float) -> None:
    record = Conversation().answer(said)
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)
