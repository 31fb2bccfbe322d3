"""What people hold against an answer, areas in plain feet, and sizes that a comma keeps apart."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.conversation import Conversation
from assistant.speech import spoken


def _answer(text: str) -> dict[str, Any]:
    record = Conversation().answer(text)
    assert record["outcome"] == "answered", record["say"]
    return record


@pytest.mark.parametrize(
    ("text", "value", "verdict"),
    [
        ("will 60 boards do? 12 foot boards, 7 inch exposure, 400 square feet", 63, "not enough"),
        ("is 500 nails enough for 15 courses of 36 foot on 16 inch centers", 420, "enough"),
        ("is 500 bucks enough for 29 sticks at $16.40", 475.6, "enough"),
        ("is the dew point over 60 at 85 F and 50% humidity", 64.3, "yes, it is more"),
    ],
)
def test_the_answer_says_whether_what_is_there_will_do(text: str, value: float, verdict: str) -> None:
    record = _answer(text)
    assert record["answer"]["value"] == pytest.approx(value, abs=0.1)
    assert verdict in [line["text"] for line in record["also"]]
    assert verdict in record["say"]


def test_an_area_in_plain_feet_is_named_as_taken() -> None:
    record = _answer("six hundred and forty foot of wall, seven inch to the weather, twelve foot boards, how many")
    assert record["answer"]["value"] == 101  # 640 × 12 / 7 × 1.1 / 12 = 100.6
    assert "square feet" in record["say"]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("step flashing, 20 feet, 7 inch exposure", 35),  # 240 / 7 = 34.3
        ("step flashing 17ft 6in exposure", 34),
        ("corner trim, 76 ft total, 10 footers", 8),
        ("how many 12 foot sticks for 90 feet of trim", 8),
    ],
)
def test_sizes_keep_their_roles(text: str, value: int) -> None:
    assert _answer(text)["answer"]["value"] == value


def test_openings_said_as_an_area_come_out_of_the_wall() -> None:
    assert _answer("50 by 11 wall, 64 square feet of openings, net area")["answer"]["value"] == 486


@pytest.mark.parametrize(
    ("text", "said"), [("1/16 in", "1/16 inch"), ("3 1/16 in", "3 1/16 inches"), ("1 in", "1 inch"), ("1 ft", "1 foot")]
)
def test_one_inch_and_part_of_one_are_singular(text: str, said: str) -> None:
    assert spoken(text) == said
