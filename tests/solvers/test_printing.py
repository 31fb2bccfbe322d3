"""Expressions on the page: nasty ones keep their signs and brackets, and values read as a person writes them."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sympy import Expr, sympify

from solvers.errors import Refusal
from solvers.exact import Term, atan, ceil, cos, evaluate, larger, sin, smaller, snapped, sqrt, tan
from solvers.printing import decimal, filled, formula, shown
from solvers.rounding import reading
from solvers.working import Working
from tests.solvers.arithmetic import names_filled, shown_value, value_of
from tests.solvers.test_rederive import step_holds

NASTY = ("3", "-3", "1/2", "-1/3", "7/16", "0", "22.6", "-0.004", "144", "1/960")
VALUES = st.sampled_from([Fraction(value) for value in NASTY])
TERMS = st.builds(Term, st.sampled_from(("a", "b", "run", "stock length")), VALUES, st.just("in"))
NUMBERS = st.sampled_from([sympify(v) for v in (1, 2, 12, 90, -1, -2)] + [sympify("1/2"), sympify("2/3")])


def _grown(inner: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    pairs = st.tuples(inner, inner)
    return st.one_of(
        pairs.map(lambda p: p[0] + p[1]),
        pairs.map(lambda p: p[0] - p[1]),
        pairs.map(lambda p: p[0] * p[1]),
        pairs.map(lambda p: p[0] / (p[1] + 7)),
        pairs.map(lambda p: smaller(*p)),
        pairs.map(lambda p: larger(*p)),
        inner.map(lambda e: -e),
        inner.map(lambda e: e**2),
        inner.map(lambda e: e**3),
        inner.map(lambda e: (e + 5) ** -2),
        inner.map(lambda e: sqrt(e**2 + 1)),
        inner.map(lambda e: 1 / (e - 11)),
        inner.map(sin),
        inner.map(lambda e: cos(e) / 2),
        inner.map(atan),
        inner.map(ceil),
    )


@settings(max_examples=150, deadline=None, derandomize=True, database=None, suppress_health_check=list(HealthCheck))
@given(st.recursive(TERMS | NUMBERS, _grown, max_leaves=6))
def test_any_expression_re_derives(expression: Expr) -> None:
    terms = {term.name: term for term in sympify(expression).atoms(Term)}
    one_of_each = sympify(expression).xreplace({term: terms[term.name] for term in sympify(expression).atoms(Term)})
    work = Working()
    try:
        work.step("x", one_of_each, "as it comes", "in")
    except Refusal:
        return
    if abs(float(evaluate(one_of_each))) < 10**9:  # past that no line on a page is a measurement
        step_holds(work.steps[0], {}, money=False)


def term(name: str, value: str, unit: str = "in") -> Term:
    return Term(name, Fraction(value), unit)


@pytest.mark.parametrize(
    ("expression", "want"),
    [
        (term("a", "-3") ** 2, "(−3)²"),
        (-(term("a", "3") ** 2), "−3²"),
        (2 - term("a", "-3"), "2 − (−3)"),
        (90 - (term("a", "20") - term("b", "-5")), "90 − 20 + (−5)"),
        (1 / (term("a", "2") * term("b", "4")), "1 / (2 × 4)"),
        (term("a", "2") / (term("b", "4") / term("c", "5")), "2 × 5 / 4"),
        ((term("a", "1/3") + 1) ** -1, "1 / ((1 / 3) + 1)"),
        (term("a", "5") ** 3 / 2, "5³ / 2"),
        (tan(term("a", "45")) * (term("b", "7") - 2), "(7 − 2) × tan(45)"),
    ],
)
def test_signs_and_brackets_stay(expression: Expr, want: str) -> None:
    text = filled(expression, "in", snapped(evaluate(expression)))
    assert abs(value_of(text) - value_of(want)) < 1e-12, text
    names_filled(formula(expression), text)


def test_a_sum_begins_with_what_is_added() -> None:
    rib, depth = term("rib", "3/8"), term("depth", "2")
    assert formula(-rib + depth) == "depth − rib"
    assert formula(-rib - depth).startswith("−")


def test_what_is_shown_has_enough_digits_to_give_the_result() -> None:
    angle = Term("θ", evaluate(atan(term("rise", "5") / 12)), "deg")
    steep = 100000 * tan(angle)
    text = filled(steep, "in", evaluate(steep))
    result, _ = shown_value(shown(evaluate(steep), "in"))
    assert abs(float(value_of(text)) - float(result)) < 5.1e-5


@pytest.mark.parametrize(
    ("value", "places", "want"),
    [("2.5", 0, "3"), ("-2.5", 0, "−3"), ("0.125", 2, "0.13"), ("1/3", 4, "0.3333"), ("-0.004", 2, "0"),
     ("10", 4, "10"), ("1999.9999", 2, "2000"), ("-0.5", 1, "−0.5")],
)  # fmt: skip
def test_decimals_round_halves_away_from_zero(value: str, places: int, want: str) -> None:
    assert decimal(Fraction(value), places) == want


def test_small_numbers_keep_four_digits() -> None:
    assert shown(Fraction("0.0000123456"), "none") == "0.00001235"
    assert shown(Fraction("0.00316"), "in") == "0.00316 in"


@pytest.mark.parametrize(("value", "want"), [("1/64", "0.02"), ("0.004", "0.00"), ("12.5", "12.50"), ("-3.005", "−3.01")])
def test_money_is_in_whole_cents(value: str, want: str) -> None:
    assert reading(Fraction(value), "money") == want
