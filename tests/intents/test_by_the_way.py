"""Numbers told by the way are left out where the question does without them, and only there."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("52 boards at $16.50 each, what's the bill, last year they were 11", 858),
        ("40 degrees, 3.1 m across on the flat, how long up the slope, the lads say 3.7", 4046.8),
        ("crown springs 38 off the wall, corner's 90, what miter and bevel, it's 5 inch stuff if it matters", 31.619),
        ("step flashing for 12 feet up the slope, showing 6, I've 20 bent", 24),
        ("how high does the peak go, it's 26 foot wide and six twelve, scaffold tops out at 15", 78),
        ("valley length, 7 in 12 both roofs, run 9 foot 3, I was gonna buy 2 tens", 169.807),
    ],
)
def test_it_is_left_out(said: str, value: float) -> None:
    record = Conversation().answer(said)
    assert record["answer"], record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=0.001)


@pytest.mark.parametrize(
    ("said", "name", "text"),
    [
        ("rake length, 24 foot gable at 6/12, the boss says 14 inches of overhang", "overhang", "14 inches"),
        ("how many courses up eleven foot, the boss says 5 and a half", "exposure", "5 and a half"),
        ("marks at 16 on centre along 12 feet, I think first at 4", "first mark", "4"),
        ("I've 40 boards here at $12 each, what do I owe", "count", "40"),
    ],
)
def test_what_is_wanted_stays(said: str, name: str, text: str) -> None:
    given = {line["name"]: line["text"] for line in Conversation().answer(said)["givens"]}
    assert given.get(name) == text


def test_a_role_said_before_keeps_its_number() -> None:
    record = Conversation().answer("rake length, 24 foot gable at 6/12, overhang, I'd say 14")
    assert record["outcome"] == "asks"
