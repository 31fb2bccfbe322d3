"""More than one size put to the answer of a sum: they hold together, and the answer is not lost."""

from __future__ import annotations

import pytest

from tests.talking import last

SUM = "5 foot 6 plus 4 foot 2"  # 116 inches


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("less 2 times 3 1/2", 109),
        ("minus two times 3 and a half", 109),
        ("minus 2 x 3 1/2", 109),
        ("take 2 times 3 1/2 off that", 109),
        ("add 3 times 7 inches", 137),
        ("add 3 at 7", 137),
        ("and add 3 at 7 1/2 each", 138.5),
        ("that plus 3 times 7 inches", 137),
        ("plus half of 3 foot", 134),
        ("add half of 3 foot to that", 134),
        ("minus half of 3 foot", 98),
        ("plus a third of 9 inches", 119),
        ("the post's 3 foot so take half the post off that", 98),
        ("add 3 at the end", 119),
        ("plus a half", 116.5),
    ],
)
def test_what_is_put_to_it_holds_together(line: str, inches: float) -> None:
    assert last(SUM, line)["answer"]["value"] == pytest.approx(inches)


def test_half_of_a_thing_is_half_of_what_the_sum_told_of_it() -> None:
    told = "the rail is 5 foot 6 and the post is 4 foot 2, total"
    assert last(told, "and half the rail again")["answer"]["value"] == pytest.approx(116 + 33)
    assert last(told, "less half the post")["answer"]["value"] == pytest.approx(116 - 25)


@pytest.mark.parametrize("first", ["one rail is 5 foot 6 and the other is 4 foot 2, total", SUM])
def test_half_of_a_thing_that_no_length_was_told_of_is_asked(first: str) -> None:
    assert last(first, "and half the rail again")["outcome"] == "asks"


@pytest.mark.parametrize("first", ["from 14 9 take 3 2", "14 foot 9 less 3 foot 2"])
def test_feet_and_inches_with_no_unit_stay_that_in_a_changed_sum(first: str) -> None:
    assert last(first, "make the fourteen nine fourteen ten")["answer"]["value"] == pytest.approx(140)


@pytest.mark.parametrize(
    ("line", "inches"), [("what's a third", 46.375 / 3), ("what is half", 46.375 / 2), ("so what's a quarter", 46.375 / 4)]
)
def test_what_a_share_is_is_asked_of_the_answer(line: str, inches: float) -> None:
    assert last("take 5/8 off 47", line)["answer"]["value"] == pytest.approx(inches)


def test_another_fraction_may_be_either_and_is_asked() -> None:
    assert last("take 5/8 off 47", "what about a quarter")["outcome"] == "asks"


def test_what_goes_on_from_an_answer_after_a_change_that_was_not_taken_is_asked() -> None:
    before = ("rise on one point six of run at thirty three degrees", "no thirty eight was right run is one point seven")
    found = last(*before, "less forty five mil")
    assert found["outcome"] == "asks"
    assert "1039 mm" in found["ask"]
