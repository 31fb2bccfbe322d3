"""What is typed in a hurry, read as it stands: products of mixed numbers, inches to millimetres, a pitch beside an exposure."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("what's 11 3/8 x 7", "tape arithmetic", 79.625),
        ("32 5/16 x 6 whats that come to", "tape arithmetic", 193.875),
        ("11-3/8 x 7 =", "tape arithmetic", 79.625),
        ("9 in to mm", "conversion", 228.6),
        ("14 in to cm", "conversion", 35.56),
        ("Rake step, 6/12, 6-1/2 exp =", "step at the rake", 13.0),
        ("1640 sqft no wst sqrs", "squares", 16.4),
        ("ten foot of run and she's ate in twelve, how long's my hip", "hip or valley length", 187.6166),
        ("11 balusters 1 5/8 square in a 58 1/2 inch opening, space at both ends too", "equal spacing", (58.5 - 11 * 1.625) / 12),
        ("Rail opening is 68 1/2 and I've 12 balusters at inch and a half. Space between them, with one at both ends too?",
         "equal spacing", (68.5 - 18) / 13),
        ("goes up 2'3\" in 6 ft of run, so that's a what / 12", "pitch from rise and run", 4.5),
        ("The man next door says my roof is a 4 in 12. How many degrees is that?", "roof angle", 18.434949),
        ("Gable end on plot nine is 9.2 metres wide at 35 degrees, how tall is it", "gable height", 3220.9546),
    ],
)  # fmt: skip
def test_it_is_worked_as_it_was_typed(said: str, topic: str, value: float) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["topic"]) == ("answered", topic)
    assert found["answer"]["value"] == pytest.approx(value, rel=1e-3)


def test_a_dash_in_a_mixed_number_is_said_back_as_no_minus() -> None:
    assert "11-3/8 times 7" in Conversation().answer("11-3/8 x 7")["say"]


@pytest.mark.parametrize(
    ("said", "answer"),
    [("my saw only swings 50 each way, can it do 52.5?", "no"), ("saw goes 50 either way, will it do 48", "yes")],
)
def test_how_far_it_swings_each_way_asks_no_way_to_cut(said: str, answer: str) -> None:
    assert Conversation().answer(said)["answer"]["text"] == answer


def test_what_turns_at_so_much_is_asked_about() -> None:
    found = Conversation().answer("Fascia turns at 118 degrees on the splay, what angle on each fascia?")
    assert found["outcome"] == "asks"
    assert "corner" in found["ask"]


def test_six_inches_said_twice_are_not_all_taken_for_one() -> None:
    assert Conversation().answer("roof is 6/12, 6-")["outcome"] != "answered"
