"""How far a joint stands open is no saw setting: asked of a pitch that was rounded, and of nothing that an angle answers."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    "text",
    [
        "roof's 4 3/4 in 12 but I was calling it 5. how far open on 7 1/4 stock where the rake meets the level",
        "how far open is a peak joint at 6/12",
    ],
)
def test_no_angle_is_given_for_a_gap(text: str) -> None:
    record = last(text)
    assert record["outcome"] != "answered" or record["answer"]["unit"] != "deg"


def test_a_pitch_called_another_leaves_a_gap() -> None:
    record = last("pitch measures 4 3/4 in 12, I've been calling it 5. How far out on a 7 1/4 frieze at the level joint")
    assert (record["outcome"], record["topic"]) != ("answered", "rake to level joint")


@pytest.mark.parametrize("text", ["what's the miter for a 92 corner so there's no gap", "saw setting for a peak at 8/12"])
def test_a_gap_that_is_not_asked_for_changes_nothing(text: str) -> None:
    assert last(text)["answer"]["unit"] == "deg"


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("2 1/2 ring shank through 5/8 siding 1/2 osb, pen?", "fastener penetration", 1.375),
        ("what's left in the joist of a 3 inch screw through a 1 inch board", "fastener penetration", 2),
        ("3x5 backer, 88 sf, sheets", "sheets", 6),
        ("9 ltr covers 72 m2, job is 205 m2, how many ltrs", "by the same rate", 26),
        ("pkts of 50, how many for 312", "boxes", 7),
    ],
)
def test_short_words_of_sheets_screws_and_packs(text: str, topic: str, value: float) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"], record["answer"] and record["answer"]["value"]) == ("answered", topic, value)


def test_sheets_are_no_cladding_boards() -> None:
    assert last("3 x 5 cement board 88 sq ft how many")["outcome"] == "asks"
