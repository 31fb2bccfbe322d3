"""What is shown is what was worked: each step of each topic, on random givens, worked again from its printed text."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import mpmath
import pytest
from hypothesis import HealthCheck, Phase, given, settings

from solvers.exact import CALLS
from solvers.registry import Topic, load_topics, work_out
from solvers.slots import Given
from tests.solvers.arithmetic import FUNCTIONS, Unreadable, names_filled, shown_value, value_of
from tests.solvers.draws import givens

EXAMPLES = 96  # a topic; what is drawn hangs on the constants of all that is loaded, so that a few are not enough
LEAST_ANSWERED = 6  # of them; a topic that refuses more is hardly tested
# Half of what the page rounds a step's result to, by the sign behind the number; money has no sign, so two places do.
HALF = {"°": 0.005, "%": 0.005, "°F": 0.005, "°C": 0.005}
HALF_PLAIN, HALF_MONEY = 0.00005, 0.005
# Half of what a reading is rounded to at the coarsest.
HALF_READ = {
    "deg": 0.05, "percent": 0.05, "in12": 0.005, "count": 0.0, "ft2": 0.05, "in2": 0.05, "m2": 0.005, "square": 0.005,
    "mm": 0.5, "cm": 0.05, "m": 0.0005, "ft": 0.005, "in3": 0.05, "ft3": 0.005, "gal": 0.005, "L": 0.005, "lb": 0.05,
    "kg": 0.05, "degF": 0.05, "degC": 0.05, "dF": 0.05, "dC": 0.05, "in2perft": 0.005, "money": 0.005, "none": 0.0005,
    "ratio": 0.00005, "in": 1 / 32,
}  # fmt: skip
# The same questions on every run. No shrinking: it would work sympy for minutes, and the questions are short.
STEADY = settings(max_examples=EXAMPLES, deadline=None, derandomize=True, database=None, phases=[Phase.generate],
                  suppress_health_check=list(HealthCheck))  # fmt: skip
DIGITS = 30  # that a line is worked again to
TOPICS = load_topics()


@pytest.mark.parametrize("name", sorted(TOPICS))
def test_every_shown_line_gives_what_is_shown(name: str) -> None:
    topic, answered = TOPICS[name], 0

    @settings(STEADY)
    @given(givens(topic))
    def runs(known: dict[str, Given]) -> None:
        nonlocal answered
        answered += rederived(topic, known)

    runs()
    assert answered >= LEAST_ANSWERED, f"only {answered} of {EXAMPLES} random questions about {name} were answered"


def rederived(topic: Topic, known: dict[str, Given]) -> bool:
    """Whether it was answered; if so, every line of it holds."""
    worked = work_out(topic, known)
    if worked.working is None:
        assert worked.refused or worked.asks
        assert "my own check does not hold" not in worked.refused, worked.refused
        return False
    page: dict[str, list[Fraction]] = {}
    money = any(parameter.kind.__name__ == "Money" for parameter in topic.parameters)
    for step in worked.working.steps:
        step_holds(step, page, money)
    for check in worked.working.checks:
        assert check["holds"]
        check_holds(check["what"])
    for line in (worked.working.result, *worked.working.also_lines, *worked.working.marks):
        assert line is not None
        reading_holds(line.data())
    return True


def step_holds(step: dict[str, str], page: dict[str, list[Fraction]], money: bool) -> None:
    """The filled line is the formula with the page's numbers put in, and it works out to the result."""
    name, equals, formula = step["formula"].partition(" = ")
    formula = formula if equals else name
    put_in: dict[str, str] = {}
    for symbol, number in names_filled(formula, step["filled"]):
        assert put_in.setdefault(symbol, number) == number, f"{symbol} is two numbers in one line: {step}"
        if symbol in page:
            assert any(agrees(number, known) for known in page[symbol]), f"{symbol} is not {number} here: {step}"
    if step["result"] in ("yes", "no"):
        assert relation_holds(step["filled"]) == (step["result"] == "yes"), step
        return
    result, unit = shown_value(step["result"])
    half = HALF_MONEY if money and not unit else HALF.get(unit, HALF_PLAIN)
    with mpmath.workdps(DIGITS):  # a volume of eight figures that ends in a half is rounded by its last
        worked = value_of(step["filled"])
        assert abs(worked - mpmath.mpf(result.numerator) / result.denominator) <= half * (1 + 1e-6), (step, worked)
    if equals:
        page.setdefault(name, []).append(result)


def agrees(number: str, known: Fraction) -> bool:
    """Whether a number put in is the one shown before, to the digits of the one with fewer."""
    said = Fraction(number.replace("−", "-"))
    places = min(_places(said), _places(known))
    return abs(said - known) <= Fraction(51, 100) / 10**places or abs(said - known) <= abs(known) / 1000


def _places(number: Fraction) -> int:
    return next((n for n in range(16) if number.denominator and 10**n % number.denominator == 0), 16)


def relation_holds(line: str) -> bool:
    left, sign, right = next(line.partition(sign) for sign in "≤≥=" if sign in line)
    a, b = value_of(left), value_of(right)
    near = abs(a - b) <= mpmath.mpf(10) ** -3 * max(1, abs(a))
    return bool(near if sign == "=" else a <= b if sign == "≤" else a >= b)


def check_holds(what: str) -> None:
    """A check's two sides, worked from what is printed, stand in the relation printed between them."""
    claim, colon, line = what.rpartition(": ")
    assert colon and claim, f"a check says what it is about: {what}"
    sign = next(sign for sign in "≤≥=" if sign in line)
    left, right = (value_of(side) for side in line.split(sign))
    near = abs(left - right) <= 0.0101 * max(1, abs(left) / 100)
    assert near or (sign == "≤" and left < right) or (sign == "≥" and left > right), what


def reading_holds(line: dict[str, Any]) -> None:
    """What a person reads is the value, rounded no coarser than it says."""
    if line["unit"] == "word":
        assert line["value"] is None and line["text"]
    elif line["unit"] == "yesno":
        assert (line["value"], line["text"]) in ((1.0, "yes"), (0.0, "no"))
    else:
        shown, _ = shown_value(line["text"])
        assert abs(float(shown) - line["value"]) <= HALF_READ[line["unit"]] * (1 + 1e-9) + 1e-12, line


def test_the_parser_reads_what_a_person_would() -> None:
    for text, value in (
        ("2 + 3 × 4", 14), ("(2 + 3) × 4", 20), ("12 / 3 / 2", 2), ("12 / (3 × 2)", 2), ("−3²", -9), ("(−3)²", 9),
        ("2 × (−3)", -6), ("10 − (−3)", 13), ("sin(30)", 0.5), ("nearest(−2.5, 1)", -3), ("ceil(3)", 3), ("2^3", 8),
        ("min(3, −2)", -2), ("sqrt(3² + 4²)", 5), ("(1/3) × 3", 1), ("4^(−1)", 0.25), ("4^(1 / 2)", 2),
    ):  # fmt: skip
        assert abs(value_of(text) - value) < 1e-12, text


@pytest.mark.parametrize(
    ("formula", "filled"),
    [("90 − θ", "90 + 22"), ("a × (b + c)", "2 × 3 + 4"), ("a − b", "5 − −3"), ("a² + b", "3 + 4"), ("sin(a)", "5")],
)
def test_a_lost_sign_or_bracket_is_seen(formula: str, filled: str) -> None:
    with pytest.raises(Unreadable):
        names_filled(formula, filled)


def test_every_function_of_the_page_is_the_calculators() -> None:
    named = {"smaller": "min", "larger": "max"}
    assert {named.get(call, call) for call in CALLS} == set(FUNCTIONS)
