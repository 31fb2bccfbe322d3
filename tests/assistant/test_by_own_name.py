"""A given told anew by its own name changes the question before, and asks no other."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation

ROOF = "roof area 16 by 20 feet in plan at 5 in 12"
PIECES = "miter round a 90 degree corner in 3 pieces"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ([PIECES, "hmm the corner really measures ninety six"], "corner in several pieces", 21),
        ([PIECES, "the corner reads 100"], "corner in several pieces", 20),
        ([ROOF, "with a one foot overhang all the way around"], "roof area", 429),
        ([ROOF, "with a one foot overhang all the way around", "with a 10 inch overhang"], "roof area", 414.68),
        (["rake length on a 24 foot gable at 8 in 12", "the overhang measures 14 inches"], "rake length", 189.89),
        (["brace 4 foot out and 5 foot up, how long", "run comes out at 4 foot 1"], "right triangle", 77.47),
    ],
)
def test_the_question_before_is_worked_so(lines: list[str], topic: str, value: float) -> None:
    conversation = Conversation()
    record = [conversation.answer(line) for line in lines][-1]
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)
