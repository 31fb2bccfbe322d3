"""Words heard for others, and numbers beside a question that are none of it; through the conversation."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("five sixteens plus three eights", 11 / 16, "in"),
        ("haf of 9 foot 5 and 3/8", 56.6875, "in"),
        ("number of 8' sticks of quarter round trim for 61 feet, no waste", 8, "count"),
        ("0.6 of a foot in inches", 7.2, "in"),
        ("5 US gallons is how many litres", 5 * 3.785411784, "L"),
        ("how many pounds is a 20 kg pail", 20 / 0.45359237, "lb"),
        ("I measured it three times because the tape froze, so what is 81 5/8 less 3 1/2", 78.125, "in"),
        ("shop closes at four so quick, half of 10 5/8", 5.3125, "in"),
        ("how much water sits in 6 feet of U channel, 1 1/4 inside and 7/8 deep", 78.75, "in3"),
        ("attic of 1620 square feet at one square foot in a hundred and fifty, what total vent area", 1555.2, "in2"),
        ("3/8 open at the base of the cladding and a 52 percent mesh, what does each foot let in", 2.34, "in2perft"),
    ],
)
def test_right(line: str, value: float, unit: str) -> None:
    record = Conversation().answer(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-5)
    assert record["answer"]["unit"] == unit


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("the strips are seven sixteenths instead of three quarters, does that air gap count as ventilated", "ventilated"),
        ("it bottoms out at 22 F and the dew point is way down at 9 F, is frost likely", "no"),
        ("low of 26 F and the dew point is right up at 31 F, is frost likely", "yes"),
    ],
)
def test_right_word(line: str, word: str) -> None:
    assert Conversation().answer(line)["answer"]["text"] == word
