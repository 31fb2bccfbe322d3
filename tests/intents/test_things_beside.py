"""Lengths a thing is sold in, counts in words before sizes in digits, pounds that are money, and what may go unsaid."""

from __future__ import annotations

import pytest

from intents.matcher import read
from intents.question import Question
from solvers.registry import load_topics

TOPICS = {name: topic.parameters for name, topic in load_topics().items()}


def first(text: str) -> Question:
    """The first question of a line."""
    return read(text, TOPICS).questions[0]


@pytest.mark.parametrize(
    ("text", "name", "said"),
    [
        ("9.75 m of soffit, 380 deep, panel covers 250 mm, sold at 3.66, how many panels", "panel_length", "3.66"),
        ("62 m of trim, it comes in 4.2, how many sticks", "stock", "4.2"),
    ],
)
def test_what_it_is_sold_in(text: str, name: str, said: str) -> None:
    question = first(text)
    assert question.whole
    assert question.givens[name].text == said


@pytest.mark.parametrize(
    "text",
    [
        "boards for the lake wall, 24 by 9",
        "how many boards on a wall 24 by 9",
        "boards for a 24 by 9 wall",
        "cladding, wall 24 x 9",
    ],
)
def test_a_size_beside_a_wall_is_the_wall_s(text: str) -> None:
    question = first(text)
    assert {name: heard.text for name, heard in question.givens.items()} == {"wall_length": "24", "wall_height": "9"}
    assert not question.swaps


def test_a_size_beside_boards_is_not_the_wall_s() -> None:
    assert "wall_length" not in first("6 by 12 boards for the wall").givens


def test_a_price_is_no_length() -> None:
    question = first("9.75 m of soffit, 380 deep, panel covers 250 mm, sold at 3.66 each, how many panels")
    assert "panel_length" not in question.givens


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("cut six 28 1/2 and six 19 from 10 foot stock, least sticks", [(6, 28.5), (6, 19)]),
        ("trim: five 54 1/4, five 36, ten 40. least sticks of 16 foot stock", [(5, 54.25), (5, 36), (10, 40)]),
        ("5.4 metre lengths, seven at eighteen hundred and three at eleven fifty, least i can buy", [(7, 1800), (3, 1150)]),
    ],
)
def test_counts_in_words(text: str, pieces: list[tuple[int, float]]) -> None:
    found = first(text).givens["pieces"].value
    assert [(piece.count, float(piece.length.value)) for piece in found] == pieces


def test_a_count_and_a_small_part_are_not_cut_apart() -> None:
    found = first("got to cut six 28 1/2 and six 9 1/4 from 10 foot stock, least sticks").givens["pieces"].value
    assert all(float(piece.length.value) != 6 for piece in found)  # type: ignore[union-attr]


@pytest.mark.parametrize(("text", "price"), [
    ("batten is one pound twenty a metre and i need 340 metres, what's that in money", 1.2),
    ("120 boards at six quid each, cost", 6),
])  # fmt: skip
def test_pounds_that_are_money(text: str, price: float) -> None:
    question = first(text)
    assert (question.topic, float(question.givens["price"].value.value)) == ("cost", price)


def test_pounds_that_weigh() -> None:
    assert first("300 square feet at two pounds a square foot, weight").topic == "weight"


def test_into_the_timber_is_no_layer() -> None:
    question = first("through 22 mm of cladding and a 45 batten, 30 into the timber. What screw length? I've 75s in the van.")
    assert question.whole
    assert question.givens["penetration"].text == "30"
    assert len(question.givens["layers"].value) == 2


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("Twelve metres is the other wall, not this. This one's 7.5 m, 17 courses, fixed at 450. How many fixings?", "Twelve"),
        ("The tubes are nine dollars. 22 metres of 12 mm joint, 8 mm deep, 290 ml tubes. How many tubes?", "nine"),
        ("They only had sixteens at the yard. 620 sq ft, 7 inches to the weather, 16 footers, how many boards?", "sixteens"),
    ],
)  # fmt: skip
def test_what_is_left_out(text: str, left: str) -> None:
    question = first(text)
    assert question.whole
    assert all(left not in heard.text for heard in question.givens.values())


def test_the_other_side_is_of_a_square_check() -> None:
    assert "other_side" in first("this side is 12 ft, the other side is 14 ft, square check").givens
