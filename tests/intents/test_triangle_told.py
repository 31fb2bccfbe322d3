"""What words tell of a triangle's lengths, a roof's run and a corner's turn, in conversations, with near misses beside them."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

ANSWERED = [  # a line, its topic, and the answer as it is given
    ("prop foots 5 ft out from the wall, bears 9 ft up, length?", "right triangle", "123 9/16 in"),
    ("guywire, staked 18 feet out, tied 24 feet up, how much wire", "right triangle", "360 in"),
    ("the cable's made off 30 ft up and it's staked 22 ft away, how much cable is that", "right triangle", "446 7/16 in"),
    ("brace leans at 60 degrees, foot is 2 ft out, how high up does it touch", "right triangle", "41 9/16 in"),
    ("the tether is 30 ft at 50 degrees, how far out is the peg", "right triangle", "231 3/8 in"),
    ("ramp's 12 ft long along the ground at 6 degrees, how much higher is the top", "right triangle", "15 1/8 in"),
    ("plank sits at 12 degrees and is 9 ft long, how high does it get", "right triangle", "22 7/16 in"),
    ("rises 3 foot 4 in 12 foot of run, what pitch", "pitch from rise and run", "3.33 in 12"),
    ("it goes up 2 foot 6 in 10 foot 6, what pitch is that", "pitch from rise and run", "2.86 in 12"),
    ("run 14 ft, 4 in 12, rise", "rise over a run", "56 in"),
    ("7 in 12, 90 inches of run, how high'll it be", "rise over a run", "52 1/2 in"),
    ("barge board, one side, house is 8 m wide, 30 degrees, no overhang", "rake length", "4619 mm"),
    ("spar length, plan projection 10 ft, 6/12", "sloped length", "134 3/16 in"),
    ("what's the catercorner of a 9 by 12 ft slab", "square check", "180 in"),
    ("compound cut, 38 spring, 90 corner, two settings", "compound cut", "31.6°"),
]


@pytest.fixture
def desk() -> Desk:
    """A desk that keeps nothing."""
    return Desk(keep=False)


@pytest.mark.parametrize(("line", "topic", "answer"), ANSWERED)
def test_what_lies_level_leans_and_is_asked(desk: Desk, line: str, topic: str, answer: str) -> None:
    """The topic and the value, whatever the words."""
    record = desk.answer(line)
    assert (record["topic"], record["outcome"]) == (topic, "answered")
    assert record["answer"]["text"].startswith(answer)


def test_a_cut_off_is_a_sum(desk: Desk) -> None:
    """Where a brace is cut, "off" is no way that it leans."""
    assert desk.answer("how long is the brace if I cut 4 inches off 3 ft")["answer"]["text"] == "32 in"


def test_how_long_stays_along_the_slope(desk: Desk) -> None:
    """A roof asked how long it is was not asked how high."""
    assert desk.answer("7 in 12, 90 inches of run, how long is the rafter")["topic"] == "sloped length"
