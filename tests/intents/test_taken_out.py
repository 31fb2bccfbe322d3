"""What comes out of a wall told as an area, and the area of a wall asked in squares."""

from __future__ import annotations

import pytest

from intents.matcher import read
from solvers.registry import load_topics

TOPICS = {name: topic.parameters for name, topic in load_topics().items()}


@pytest.mark.parametrize(
    ("text", "topic", "out"),
    [
        ("squares of siding for 28' by 10', 78 sf out", "squares", "78 sf"),
        ("price out 33' x 10' wall less 85 sf, at $6.10/sf", "cost", "85 sf"),
        ("14' x 9' wall and 40 sq ft of it is glass, squares", "squares", "40 sq ft"),
        ("All my walls come to 1480 sq ft and the doors and windows are 212 of it. What's that leave me?", "wall area", "212"),
        ("the house is 2100 square feet of wall gross with 260 of openings, whats net", "wall area", "260"),
    ],
)  # fmt: skip
def test_what_is_open_comes_out(text: str, topic: str, out: str) -> None:
    question = read(text, TOPICS).questions[0]
    assert (question.topic, question.givens["opened"].text, question.whole) == (topic, out, True)
    assert "area" not in question.givens


def test_an_area_that_nothing_says_is_open_stays_an_area() -> None:
    question = read("squares of siding for 28' by 10', 280 sf", TOPICS).questions[0]
    assert "opened" not in question.givens


def test_a_wall_asked_in_squares() -> None:
    question = read("It's the gable end. 28' wide, 8' to the plate, 7/12. Squares?", TOPICS).questions[0]
    assert (question.topic, question.givens["wall_height"].text, question.complete) == ("squares", "8'", True)
