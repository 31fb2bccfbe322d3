"""Exact evaluation: fractions stay fractions, forty digits elsewhere, whole numbers found at the edge of a float."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.exact import (
    MP,
    Term,
    acos,
    asin,
    atan,
    ceil,
    cos,
    evaluate,
    exp,
    floor,
    fraction,
    larger,
    ln,
    nearest,
    real,
    sin,
    smaller,
    snapped,
    sqrt,
    tan,
    to_nearest,
)  # fmt: skip

FRACTIONS = st.fractions(min_value=-1000, max_value=1000, max_denominator=64)


def term(value: str | Fraction, unit: str = "in") -> Term:
    return Term("x", Fraction(value), unit)


@settings(max_examples=100, deadline=None, derandomize=True, database=None)
@given(FRACTIONS, FRACTIONS, FRACTIONS)
def test_sums_and_products_are_exact(a: Fraction, b: Fraction, c: Fraction) -> None:
    x, y, z = term(a), term(b), term(c)
    assert evaluate(x + y * z - x / 3) == a + b * c - a / 3
    assert isinstance(evaluate(x + y * z), Fraction)
    assert evaluate((x - y) ** 3) == (a - b) ** 3
    if c:
        assert evaluate((x + y) / z) == (a + b) / c
        assert evaluate(x * z**-2) == a / c**2


@pytest.mark.parametrize(
    ("expression", "want"),
    [
        (sin(term("30")), "1/2"), (cos(term("60")), "1/2"), (tan(term("45")), "1"), (sin(term("180")), "0"),
        (cos(term("90")), "0"), (asin(term("1/2")), "30"), (acos(term("0")), "90"), (atan(term("1")), "45"),
        (atan(term("-1")), "-45"), (tan(term("135")), "-1"), (sqrt(term("9/16")), "3/4"), (sqrt(term("144")), "12"),
        (ceil(term("7/2")), "4"), (floor(term("-7/2")), "-4"), (nearest(term("5/32"), term("1/16")), "3/16"),
        (nearest(term("-5/32"), term("1/16")), "-3/16"), (smaller(term("2"), term("-3")), "-3"),
        (larger(term("2"), term("-3"), term("5/2")), "5/2"),
    ],
)  # fmt: skip
def test_what_is_rational_stays_so(expression: object, want: str) -> None:
    value = evaluate(expression)
    assert isinstance(value, Fraction)
    assert value == Fraction(want)


@settings(max_examples=100, deadline=None, derandomize=True, database=None)
@given(st.fractions(min_value=Fraction(1, 100), max_value=Fraction(8999, 100), max_denominator=100))
def test_angles_agree_with_the_math_library(angle: Fraction) -> None:
    x, turned = term(angle, "deg"), math.radians(angle)
    for ours, theirs in ((sin(x), math.sin), (cos(x), math.cos), (tan(x), math.tan)):
        assert float(evaluate(ours)) == pytest.approx(theirs(turned), rel=1e-9)  # radians in a double
    assert float(evaluate(atan(tan(x)))) == pytest.approx(float(angle), rel=1e-12)
    assert float(evaluate(ln(exp(x / 10)))) == pytest.approx(float(angle / 10), rel=1e-12)


def test_forty_digits_are_kept() -> None:
    value = evaluate(sqrt(term("2")))
    assert abs(value**2 - 2) < MP.mpf(10) ** -38
    assert abs(real(fraction(value)) - value) < MP.mpf(10) ** -33


def test_a_whole_number_is_found_at_the_edge_of_a_float() -> None:
    fifty = evaluate(50 * tan(atan(term("3/7"))) * 7 / 3)
    assert not isinstance(fifty, Fraction)
    assert snapped(fifty) == 50 and isinstance(snapped(fifty), Fraction)
    assert evaluate(ceil(50 * tan(atan(term("3/7"))) * 7 / 3)) == 50
    assert evaluate(floor(50 * tan(atan(term("3/7"))) * 7 / 3)) == 50
    assert evaluate(ceil(term("50") + Fraction(1, 10**9))) == 51


@settings(max_examples=200, deadline=None, derandomize=True, database=None)
@given(FRACTIONS, st.sampled_from([Fraction(1, 16), Fraction(1, 10), Fraction(1), Fraction(1, 3)]))
def test_the_nearest_is_nearest_and_halves_go_away_from_zero(value: Fraction, step: Fraction) -> None:
    found = to_nearest(value, step)
    assert found % step == 0
    assert abs(found - value) <= step / 2
    if abs(found - value) == step / 2:
        assert abs(found) > abs(value)
    assert to_nearest(-value, step) == -found


@pytest.mark.parametrize("expression", [1 / (term("2") - 2), tan(term("90")), (term("1") - 1) ** -2])
def test_a_division_by_zero_is_raised(expression: object) -> None:
    with pytest.raises(ZeroDivisionError):
        evaluate(expression)


@pytest.mark.parametrize("expression", [sqrt(term("-1")), acos(term("2")), asin(term("-3/2"))])
def test_what_is_no_real_number_is_raised(expression: object) -> None:
    with pytest.raises(ValueError, match=r"negative|more than 1"):
        evaluate(expression)


def test_fractions_and_floats_meet_in_any_order() -> None:
    third, root = Fraction(1, 3), evaluate(sqrt(term("2")))
    assert third < root and root > third and max(third, root) is root
    assert abs(third + root - (root + third)) == 0
    assert abs((root - third) + (third - root)) < MP.mpf(10) ** -38
    assert abs(third * root * 3 - root) < MP.mpf(10) ** -38
    assert abs(third / root * root - real(third)) < MP.mpf(10) ** -38


def test_a_stand_in_re_derives_a_line() -> None:
    x, y = term("2"), term("3")
    assert evaluate(x**2 + y, lambda each: Fraction(10) if each is x else Fraction(1)) == 101
