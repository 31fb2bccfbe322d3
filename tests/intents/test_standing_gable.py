"""A wall with a gable told by three lengths, and what is asked of it."""

from __future__ import annotations

import pytest

from intents.matcher import read
from solvers.registry import load_topics

TOPICS = {name: topic.parameters for name, topic in load_topics().items()}


def first(text: str) -> tuple[str, dict[str, str]]:
    """The topic of the first question, and its givens as they were said."""
    question = read(text, TOPICS).questions[0]
    assert question.complete, (question.missing, question.unplaced)
    return question.topic, {name: heard.text for name, heard in question.givens.items()}


@pytest.mark.parametrize(
    ("text", "topic", "sizes"),
    [
        ("ramp end 24 feet across, 8 to the plate and another 6 to the peak, whats the area", "wall area", ("24 feet", "8", "6")),
        ("end wall 30 ft wide, 9 ft high, ridge goes up another 7 ft 6, squares", "squares", ("30 ft", "9 ft", "7 ft 6")),
        ("how many squares, 26 ft wide, walls 9 ft, peak is 7 ft above the plate", "squares", ("26 ft", "9 ft", "7 ft")),
        ("gable end 22' wide, 8' walls, peak 5'6 above the walls, squares?", "squares", ("22'", "8'", "5'6")),
    ],
)  # fmt: skip
def test_each_length_goes_where_its_words_tell(text: str, topic: str, sizes: tuple[str, ...]) -> None:
    found, givens = first(text)
    names = ("length", "height", "peak") if topic == "wall area" else ("wall_length", "wall_height", "gable_height")
    assert (found, tuple(givens[name] for name in names)) == (topic, sizes)


def test_a_ridge_so_far_up_may_be_told_from_the_ground() -> None:
    questions = read("end wall 30 ft wide, 10 ft high, ridge is 18 ft up, area?", TOPICS).questions
    assert not questions or not questions[0].plain
