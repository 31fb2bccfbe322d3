"""A hip or valley told by where it lies, and the level cut asked for after the plumb cuts are done."""

from __future__ import annotations

from math import atan, degrees, hypot

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    "said",
    [
        "how long is the rafter that runs up the inside corner where two roofs meet, with an 8 in 12 roof and a run of 6 feet",
        "length up the corner where the roofs meet, 8 in 12, run 6 foot",
        "two roofs meet at a corner, 8 in 12, run 6 feet, how long is the rafter",
    ],
)
def test_a_rafter_in_the_corner_of_two_roofs_is_a_valley(said: str) -> None:
    found = Conversation().answer(said)
    assert found["topic"] == "hip or valley length"
    assert found["answer"]["value"] == pytest.approx(hypot(72, 72, 48))  # its plan run is the diagonal of the common run


def test_a_rafter_with_no_corner_is_a_common_one() -> None:
    found = Conversation().answer("how long is the rafter with an 8 in 12 roof and a run of 6 feet")
    assert (found["topic"], found["answer"]["value"]) == ("sloped length", pytest.approx(hypot(72, 48)))


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("I've done the plumb cuts, all 16 of them, now the level cut, 6 in 12 roof", "level cut"),
        ("I have the plumb cut already, what's the level cut on a 6 in 12", "level cut"),
        ("plumb cut and level cut for 6 in 12", "plumb cut"),
    ],
)
def test_the_cut_that_is_not_done_is_the_one_that_is_asked(said: str, asked: str) -> None:
    plumb = degrees(atan(6 / 12))
    found = Conversation().answer(said)["answer"]
    assert found["name"] == asked
    assert found["value"] == pytest.approx(plumb if asked == "plumb cut" else 90 - plumb)
