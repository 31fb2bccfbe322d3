"""The last two answers are put together, or set against each other, where they are of two things."""

import pytest

from tests.talking import last

WALLS = ("north wall's 36 by 10, area?", "lake wall is 22 by 8 1/2")
STRAPS = ("straps at sixteen on a wall twenty two foot long", "and the one beside it is ten foot eight")
DEPTH = ("half inch ply 3/8 strapping 5/8 cladding depth to the face", "go to three quarter strapping")


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*WALLS, "add the two together"), 547, "ft2"),
        ((*WALLS, "total for both"), 547, "ft2"),
        ((*WALLS, "add the two together", "how many squares is that without waste"), 5.47, "square"),
        ((*STRAPS, "both together"), 27, "count"),
        ((*STRAPS, "both together", "four dollars each"), 108, "money"),
        ((*DEPTH, "how much more is that"), 0.375, "in"),
        ((*DEPTH, "how much deeper is that", "in mm"), 9.525, "mm"),
    ],
)
def test_two_answers_together_or_apart(lines: tuple[str, ...], value: float, unit: str) -> None:
    answer = last(*lines)["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(value), unit)


def test_what_was_put_right_is_no_second_one() -> None:
    record = last("wall area 20 by 9", "no, 22 by 9", "add the two together")
    assert record["outcome"] != "answered" or record["answer"]["value"] != 378
    pair = last("rake length 24 foot gable 7/12", "both together")["answer"]["value"]
    assert pair == pytest.approx(2 * (144**2 + 84**2) ** 0.5)
