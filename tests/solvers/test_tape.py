"""Tape readings: published rounding cases, and that what is read off the tape reads back to the same length."""

from __future__ import annotations

from fractions import Fraction

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st

from solvers.tape import MINUS, millimetres, nearest, tape
from tests.intents.spoken import values

F = Fraction

INCHES = st.fractions(-2000, 2000)


@pytest.mark.parametrize(
    ("value", "denominator", "text"),
    [
        (F(134164, 10000), 16, "13 7/16 in"),
        (F(134164, 10000), 32, "13 13/32 in"),
        (0.7344, 16, "3/4 in"),
        (mpmath.mpf("10.1667"), 16, "10 3/16 in"),
        (10.1667, 32, "10 5/32 in"),
        (F(10000, 254), 16, "39 3/8 in"),
        (F(1400, 254), 16, "5 1/2 in"),
        (F(1, 2), 8, "1/2 in"),
        (F(11, 2), 1, "6 in"),
        (0, 16, "0 in"),
        (F(-1, 100), 16, "0 in"),
        (F(-7, 2), 16, f"{MINUS}3 1/2 in"),
    ],
)
def test_inches(value: F, denominator: int, text: str) -> None:
    assert tape(value, denominator) == text


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (F(301, 2), "12 ft 6 1/2 in"),
        (144, "12 ft"),
        (F(11999, 1000), "1 ft"),
        (6, "6 in"),
        (-150, f"{MINUS}12 ft 6 in"),
    ],
)
def test_feet_never_carry_twelve_inches(value: F, text: str) -> None:
    assert tape(value, feet=True) == text


@pytest.mark.parametrize("denominator", [0, 3, 5, 10, 12, 128, -2])
def test_marks_no_tape_has_are_refused(denominator: int) -> None:
    with pytest.raises(ValueError, match="a tape has marks"):
        tape(F(1), denominator)


@given(INCHES, st.sampled_from([1, 2, 4, 8, 16, 32, 64]), st.booleans())
def test_reads_back_within_half_a_mark(value: F, denominator: int, feet: bool) -> None:
    text = tape(value, denominator, feet)
    size, unit = values(text, "length")[0]
    back = size * 12 if unit == "ft" else size
    assert abs(back - value) <= F(1, 2 * denominator)
    assert back == nearest(value, F(1, denominator))
    assert " 12 in" not in text or not feet


def test_exact_halves_go_away_from_zero() -> None:
    assert nearest(F(1, 32), F(1, 16)) == F(1, 16)
    assert nearest(F(-1, 32), F(1, 16)) == F(-1, 16)


@pytest.mark.parametrize(
    ("inches", "text"),
    [
        (F(134164, 10000), "341 mm"),
        (F(3, 8), "9.5 mm"),
        (F(1, 4), "6.4 mm"),
        (1, "25 mm"),
        (0, "0 mm"),
        (-1, f"{MINUS}25 mm"),
    ],
)
def test_millimetres(inches: F, text: str) -> None:
    assert millimetres(inches) == text
