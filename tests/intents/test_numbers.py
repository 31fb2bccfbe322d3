"""Numbers said and written: read back what an independent speller says, and refuse what only looks like a number."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.measures import broken_number, readings
from intents.tokens import tokenize
from tests.intents.spoken import figures, mixed, quantity, read, sure, values, whole

F = Fraction

SAID = [
    ("7", F(7)),
    ("7.5", F(15, 2)),
    ("7 1/2", F(15, 2)),
    ("7-1/2", F(15, 2)),
    ("7½", F(15, 2)),
    ("7 & 1/2", F(15, 2)),
    ("7 and 1/2", F(15, 2)),
    ("seven and a half", F(15, 2)),
    ("seven and one half", F(15, 2)),
    ("half", F(1, 2)),
    ("a half", F(1, 2)),
    ("three quarters", F(3, 4)),
    ("three-eighths", F(3, 8)),
    ("5/16ths", F(5, 16)),
    ("five thirty seconds", F(5, 32)),
    ("point three seven five", F(3, 8)),
    ("two point oh five", F(41, 20)),
    ("ten and five eighths", F(85, 8)),
    ("ten five eighths", F(85, 8)),
    ("a dozen", F(12)),
    ("half a dozen", F(6)),
    ("a couple", F(2)),
    ("twenty two", F(22)),
    ("a hundred and twenty", F(120)),
    ("twelve hundred", F(1200)),
    ("two thousand four hundred and ten", F(2410)),
    ("one fifty", F(150)),
    ("one oh five", F(105)),
    ("1,250.5", F(2501, 2)),
    ("zero", F(0)),
    ("minus four", F(-4)),
    ("-4", F(-4)),
    ("minus three and a half", F(-7, 2)),
]


@pytest.mark.parametrize(("text", "value"), SAID)
def test_said(text: str, value: F) -> None:
    assert values(text, "number")[0] == (value, "none")


@given(st.integers(0, 999_999))
def test_whole_numbers_read_back(n: int) -> None:
    best = read(whole(n), "number")[0]
    assert (quantity(best).value, best.sure) == (n, 1.0)


@given(st.integers(1, 150 * 64))
def test_tape_numbers_read_back_in_words_and_figures(n: int) -> None:
    value = F(n, 64)
    assert values(figures(value), "number")[0][0] == value
    said = read(mixed(value), "number")[0]
    assert value in (quantity(said).value, *(other.value for other in said.also))
    assert said.sure < 1 or quantity(said).value == value


def test_two_meanings_are_both_kept_and_neither_is_certain() -> None:
    for text in ("twenty five eighths", "twenty one thirty seconds", "71/2"):
        best = read(text, "number")[0]
        assert best.sure < 0.8
        assert len(best.also) == 1
    assert read("twenty five eighths", "number")[0].also[0].value == F(25, 8)
    assert read("71/2", "number")[0].also[0].value == F(15, 2)


def test_part_of_a_longer_number_is_less_sure_than_the_whole_of_it() -> None:
    assert sure("seven and a half", "number", F(7)) == 0.5
    assert sure("twenty two", "number", F(20)) == 0.5


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("1 1/2, 3/4", F(9, 4)),
        ("10 - 1/2", F(21, 2)),
        ("12, 6", F(126)),
        ("the third course", F(1, 3)),
        ("five twelve", F(512)),
        ("for the twelve foot wall", F(4)),
        ("what is it to me", F(2)),
        ("12 minus 4", F(-4)),
        ("3/4/26", F(3, 4)),
        ("twenty fourth", F(20, 4)),
        ("oh what is it", F(0)),
        ("won it", F(1)),
    ],
)
def test_never_read_with_confidence(text: str, value: F) -> None:
    assert sure(text, "number", value) <= 0.5


def test_a_number_that_cannot_be_is_named() -> None:
    assert broken_number(tokenize("rip it to 7/0 please")) == "7/0 divides by zero: say the fraction again."
    assert "too long" in (broken_number(tokenize("4" * 5000)) or "")
    assert broken_number(tokenize("rip it to 7/8, or 0/8")) is None
    assert not any(each.end > 1 for each in readings(tokenize("7/0"))[0])
