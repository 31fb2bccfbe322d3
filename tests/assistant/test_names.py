"""How a topic is named in a question back."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.names import article, meant
from intents.question import Heard, Question
from solvers.quantities import Length
from solvers.registry import load_topics

TOPICS = load_topics()


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("rake return", "a rake return"),
        ("end gap", "an end gap"),
        ("cladding boards", "cladding boards"),
        ("strapping", "strapping"),
        ("how far open", "“how far open”"),
    ],
)
def test_article(name: str, said: str) -> None:
    assert article(name) == said


def test_every_name_ends_so_that_it_can_be_said() -> None:
    one = ("a corner in several pieces", "a height of courses")
    many = [name for name in TOPICS if name.endswith("s") and article(name) not in (name, *one)]
    assert many == []


def triangle(**lengths: int) -> Question:
    givens = {name: Heard(Length(Fraction(size), "ft"), 0, 1, f"{size} ft") for name, size in lengths.items()}
    return Question("right triangle", givens)


def test_one_topic_is_named_with_what_was_understood() -> None:
    assert meant([triangle(rise=3, run=4)], TOPICS) == "a right triangle: rise 3 ft, run 4 ft"
    assert meant([triangle(rise=3, run=4), Question("arc")], TOPICS) == "a right triangle or an arc"
    assert meant([triangle()], TOPICS) == "a right triangle"
