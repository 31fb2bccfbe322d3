"""A beginner's polite sentences, who describes what a tradesman has a word for, and what is asked next in whole sentences."""

from __future__ import annotations

import pytest

from tests.talking import last

RAKE = "The roof rises 5 in 12 and the building is 22 feet wide, how long is the sloping edge of the end wall on one side?"
BAY = "The window bay turns 30 degrees at each corner, what do I set the saw to for the trim?"
SQUARE = "The base measures 3.6 metres by 4.8 metres, what should the distance from corner to corner be?"
PEAK = "What should I set the saw to where the two sloping trim boards meet each other at the very top of a 5 in 12 roof?"
LESS = "If I take 2 feet 5 1/2 inches off a board that is 12 feet long, how much is left?"
WEIGHT = "Each board weighs 14 pounds and I have bought 36 of them, what do they weigh altogether?"
SUM = "What is 2.36 metres less 875 millimetres, please?"
ROWS = "The wall is 8 feet 4 inches tall and I want no more than 7 inches of each board left showing, how many rows is that?"


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        ((RAKE,), "143 in (11 ft 11 in)"),
        ((RAKE, "Sorry, the wall is actually 24 feet wide."), "156 in (13 ft)"),
        ((RAKE, "And how high is the peak above the level of the eaves?"), "55 in (4 ft 7 in)"),
        ((BAY, "What if it turned 45 degrees at each corner?"), "22.5°"),
        ((BAY, "Sorry, I measured it and each corner turns 40 degrees."), "20°"),
        ((PEAK,), "22.6°"),
        ((LESS, "And if I take off another 3 feet 2 inches?"), "76 1/2 in (6 ft 4 1/2 in)"),
        ((SUM, "And how much is a quarter of that?"), "371 mm"),
        ((SUM, "And how much is a quarter of that?", "What would that be in inches?"), "14 5/8 in"),
        (("The thin strips behind the boards stand every 450 mm along a wall of 9 metres, how many, one at each end?",), "21"),
        (("At the top of the end wall the two sloping boards come together in a point, what do I set the mitre saw to for a roof"
          " of 32 degrees?",), "32°"),
    ],
)  # fmt: skip
def test_what_is_described_is_understood(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ((PEAK, "And what is the full angle between the two boards there?"), "134.8 degrees"),
        ((ROWS, "And how much of each board would then be left showing?"), "6 11/16 inches"),
        (("Two of my walls meet at 135 degrees, what should I set the mitre saw to?",
          "And what would the bevel gauge read along the edge?"), "67.5 degrees"),
    ],
)  # fmt: skip
def test_a_value_beside_the_answer_is_read_off(lines: tuple[str, ...], said: str) -> None:
    assert said in last(*lines)["say"]


@pytest.mark.parametrize(
    "lines",
    [
        (SQUARE, "And what if the side by the road were 5.4 metres?", "Could you give me that in feet and inches?"),
        (WEIGHT, "And if I leave 6 of them behind?", "What is that in kilograms?"),
    ],
)
def test_a_unit_is_not_put_to_an_answer_that_was_to_be_changed(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks" and record["ask"].startswith("I did not take")


def test_it_is_remembered_when_that_is_asked_last() -> None:
    record = last("The roof is 8 in 12, could you remember that please?")
    assert (record["outcome"], record["topic"]) == ("noted", "remember"), record["ask"] or record["say"]
