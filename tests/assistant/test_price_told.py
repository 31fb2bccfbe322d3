"""A price that was asked for of what was just counted, and the count asked again after it."""

from __future__ import annotations

import pytest

from tests.talking import last, records

STEPS = "step flashing up a 17 foot rake at 7 inch"  # 30 pieces
SQUARES = "squares for 2000 square feet of wall"  # 22, with waste


@pytest.mark.parametrize("asks", ["whats that run me", "what's that gonna cost", "what do those cost"])
@pytest.mark.parametrize(("price", "money"), [("buck eighty apiece", 54), ("2 dollars each", 60), ("1.50", 45)])
def test_the_price_that_was_asked_is_of_what_was_counted(asks: str, price: str, money: float) -> None:
    asked, told = records(STEPS, asks, price)[1:]
    assert (asked["outcome"], told["topic"], told["answer"]["value"]) == ("asks", "cost", money)


def test_a_price_of_a_square_is_of_the_squares() -> None:
    assert last(SQUARES, "whats that gonna cost", "210 a square")["answer"]["value"] == 4620


def test_a_price_of_a_foot_is_not_of_the_pieces() -> None:
    assert last(STEPS, "whats that cost", "2 bucks a foot")["outcome"] == "asks"


def test_a_price_that_points_at_nothing_is_of_nothing_before_it() -> None:
    assert last(STEPS, "cost of trim", "4 bucks each")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "count"),
    [
        ((STEPS, "at 2 bucks each", "do it at 5 inch how many"), 41),
        ((STEPS, "at 2 bucks each", "how many at 8 inch"), 26),
        ((SQUARES, "whats that cost", "210 a square", "how many squares with no waste"), 20),
        (("how many boards for 300 square feet 12 footers 6 inch", "at 28 each", "how many if theyre 16 footers"), 42),
        (("how many boards for 300 square feet 12 footers 6 inch", "at 28 each", "how many boards for 200 square feet"), 37),
    ],
)
def test_after_its_price_a_count_is_asked_again(lines: tuple[str, ...], count: float) -> None:
    assert last(*lines)["answer"]["value"] == count


def test_another_question_of_how_many_is_its_own() -> None:
    found = last(STEPS, "at 2 bucks each", "how many courses on a 9 foot wall at 6 inch")
    assert found["topic"] == "course layout"


BOARDS = "how many boards for 300 square feet 12 footers"


@pytest.mark.parametrize("price", ["they run 28 each", "they're 28 bucks a board", "at 28 each by the way"])
def test_a_price_told_before_the_count_is_kept_for_it(price: str) -> None:
    _, asked, told = records(BOARDS, price, "6 inch")
    assert (asked["outcome"], asked["ask"]) == ("asks", "What is the exposure?")
    assert told["answer"]["value"] == 1540 and told["also"][0]["value"] == 55


def test_after_a_price_that_was_kept_both_may_be_changed() -> None:
    lines = (BOARDS, "they run 28 each", "6 inch")
    assert last(*lines, "what if they were 24 bucks")["answer"]["value"] == 1320
    assert last(*lines, "how many if theyre 16 footers")["answer"]["value"] == 42


def test_a_size_of_each_is_no_price() -> None:
    assert last(BOARDS, "they're 8 inches each", "6 inch")["topic"] != "cost"


def test_a_price_of_each_strap_is_kept_while_their_spacing_is_asked() -> None:
    found = last("how many straps on a 30 foot wall", "they're 3 dollars each", "16")
    assert (found["answer"]["value"], found["also"][0]["value"]) == (72, 24)
