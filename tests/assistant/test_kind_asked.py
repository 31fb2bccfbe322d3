"""A changed answer is of the kind that the line asks for, or it is asked about."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def _last(lines: list[str]) -> dict:  # type: ignore[type-arg]
    conversation = Conversation()
    return [conversation.answer(line) for line in lines][-1]


BRACE = ["brace 4 foot out and 5 foot up, how long"]
ARCH = ["arch 36 wide rising 9, what radius"]


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ([*BRACE, "what angle if its 6 foot up"], 56.31, "deg"),
        ([*BRACE, "what angle if its 6 foot up", "and the length then"], 86.53, "in"),
        ([*ARCH, "how long is the curve if it rises 12"], 45.87, "in"),
        ([*ARCH, "how long is the curve if it rises 12", "and 10"], 42.99, "in"),
        ([*ARCH, "and 10"], 21.2, "in"),
        (["wall 9 foot, exposure no more than 6, what exposure", "how many courses if the wall is ten foot two"], 21, "count"),
        (["ladder reaches 16 foot up, how far out does the foot go", "what angle is that at 18 foot"], 75.96, "deg"),
        (["rafter run 12 foot at 6 in 12, how long is it", "how high does it rise if its 8 in 12"], 96, "in"),
        (["miter for a 92 degree corner", "what's the edge angle if it's 88"], 44, "deg"),
        (["pitch with 6 foot rise and 12 foot run", "what angle with 7 foot rise"], 30.26, "deg"),
        (["nails for 20 courses 16 foot long every 16", "how many boxes of 500 if it's 24 courses"], 1, "count"),
        (["three tubes did 40 foot of joint, how many for 160", "at 9.50 a tube whats the damage?"], 114, "money"),
        (["screw for 3/4 siding over 1 inch strapping, 1 1/2 into the stud", "a 4 inch one, how much of it is in the stud?"],
         2.25, "in"),
        (["circle 30 inches across, how far round", "I've two of those to do, so how much all told?"], 188.5, "in"),
        (["common slope run 13 ft 6, pitch 8", "and 4 pitch"], 170.76, "in"),
        (["pitch is 5 in 12", "16 by 20 feet in plan, how much roof area?"], 346.67, "ft2"),
    ],
)
def test_it_answers_what_is_asked(lines: list[str], value: float, unit: str) -> None:
    record = _last(lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["answer"]["unit"] == unit
    assert record["answer"]["value"] == pytest.approx(value, abs=0.03)


def test_what_was_the_answer_stands_beside_it() -> None:
    record = _last([*ARCH, "how long is the curve if it rises 12"])
    assert record["say"].startswith("Arc length: 45 7/8 inches")
    assert "radius" in [line["name"] for line in record["also"]]


@pytest.mark.parametrize(
    "lines",
    [
        ["wall area 32 by 9", "what does it cost if it's 10 high"],
        ["3/8 in mm", "what angle if it's 1/2"],
        ["weight of 14 sheets at 38 kg each", "how many sheets if it's 40"],
    ],
)
def test_nothing_of_another_kind_is_answered(lines: list[str]) -> None:
    assert _last(lines)["outcome"] != "answered"
