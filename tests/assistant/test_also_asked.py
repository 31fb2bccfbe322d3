"""What is asked beside the value that a topic answers is said with it."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value", "said"),
    [  # √(192² + 48²) in; 30 in × 2 × asin(18 / 30)
        ("how long a ladder to reach a 16 ft eave", 48, "Working length: 197 15/16 inches"),
        ("what length ladder for a 16 ft gutter", 48, "Length for 3 feet past the landing: 235 inches"),
        ("how long is bendy trim round an arch 36 inches wide with a 6 inch rise?", 30, "Arc length: 38 5/8 inches"),
    ],
)
def test_said_with_the_answer(line: str, value: float, said: str) -> None:
    record = last(line)
    assert record["answer"]["value"] == value
    assert said in record["say"]


@pytest.mark.parametrize(
    ("line", "name"),
    [("ladder footing for a 16 foot eave", "Working length"), ("radius of an arch 36 in wide with a rise of 6 in", "Arc length")],
)
def test_not_said_where_it_is_not_asked(line: str, name: str) -> None:
    assert name not in last(line)["say"]
