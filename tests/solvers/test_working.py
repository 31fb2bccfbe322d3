"""A working: steps that carry on, one rounding at the end, checks that stop it, metric out for metric in."""

from __future__ import annotations

from fractions import Fraction

import pytest
from sympy import sympify

from solvers.errors import NotSure, Refusal
from solvers.exact import Term, atan, ceil, sqrt, tan
from solvers.working import Working

EIGHTH = Fraction(1, 8)


def term(name: str, value: str, unit: str = "in") -> Term:
    return Term(name, Fraction(value), unit)


def worked(tape_step: Fraction = Fraction(1, 16), metric: bool = False, value: str = "100/7") -> Working:
    work = Working(tape_step, metric)
    long = work.step("long", term("run", value) * 2, "twice the run", unit="in")
    work.answer("length", long)
    work.check("half of it is the run", long / 2, "=", term("run", value))
    work.finished()
    return work


def test_steps_show_formula_numbers_and_result() -> None:
    work = Working()
    theta = work.step("θ", atan(term("rise", "5") / 12), "rise over run")
    assert work.steps == [
        {"why": "rise over run", "formula": "θ = atan(rise / 12)", "filled": "atan(5 / 12)", "result": "22.62°"}
    ]
    assert float(theta.value) == pytest.approx(22.619864948040426, rel=1e-15)


def test_steps_are_written_out_once_and_compared_row_by_row() -> None:
    one, other = worked(), worked()
    one.steps[0]["why"] = "changed by whoever was given it"
    assert one.steps == other.steps and one.same_steps(other)
    assert not one.same_steps(worked(value="101/7"))
    assert not one.same_steps(worked(value="3/8"))  # one row less


def test_the_one_rounding_is_the_last_step() -> None:
    work = worked()
    assert work.steps[-1]["why"] == "rounded once, at the end, to the nearest 1/16"
    assert work.steps[-1]["result"] == work.result.text == "28 9/16 in"  # type: ignore[union-attr]
    assert work.result.value == Fraction(200, 7)  # type: ignore[union-attr]
    assert [step for step in work.steps if "rounded" in step["why"]] == work.steps[-1:]


def test_what_needs_no_rounding_is_not_rounded() -> None:
    assert "rounded" not in worked(value="3/8").steps[-1]["why"]


def test_the_tape_can_be_coarser() -> None:
    assert worked(EIGHTH).result.text == "28 5/8 in"  # type: ignore[union-attr]


def test_metric_in_is_metric_out_and_shown_as_a_step() -> None:
    work = worked(metric=True)
    result = work.result
    assert result is not None and result.unit == "mm"
    assert float(result.value) == pytest.approx(200 / 7 * 25.4, rel=1e-15)  # type: ignore[arg-type]
    assert work.steps[-2]["formula"] == "long in mm = 127 × long / 5"
    assert result.text == "726 mm"


def test_a_check_that_fails_stops_the_answer() -> None:
    work = Working()
    work.answer("length", term("run", "3"))
    work.check("this can't be", term("a", "2"), "=", term("b", "3"))
    with pytest.raises(NotSure, match="this can't be: 2 = 3"):
        work.finished()


@pytest.mark.parametrize(
    ("left", "relation", "right", "holds"),
    [
        ("2", "<=", "2", True),
        ("2", "<=", "1", False),
        ("2", ">=", "1", True),
        ("1", ">=", "2", False),
        ("1", "=", "1", True),
    ],
)
def test_relations(left: str, relation: str, right: str, holds: bool) -> None:
    work = Working()
    work.check("it", term("a", left), relation, term("b", right))
    assert work.checks[0]["holds"] is holds
    assert work.yes_or_no("fits", term("a", left), ">=", term("b", right), "why") == (Fraction(left) >= Fraction(right))


def test_two_roads_agree_in_doubles_but_not_in_hundredths() -> None:
    work = Working()
    work.check("near", sympify(1) + Fraction(1, 10**14), "=", sympify(1))
    work.check("off", sympify(1) + Fraction(1, 10**4), "=", sympify(1))
    assert [check["holds"] for check in work.checks] == [True, False]


@pytest.mark.parametrize("wrong", [1 / (term("a", "2") - 2), sqrt(term("a", "-4")), tan(term("a", "90"))])
def test_what_can_not_be_worked_is_refused_in_words(wrong: object) -> None:
    with pytest.raises(Refusal, match="can't be worked"):
        Working().step("x", wrong, "why")


def test_an_answer_needs_a_check_and_a_working_an_answer() -> None:
    work = Working()
    work.answer("length", term("run", "3"))
    with pytest.raises(RuntimeError):
        work.finished()
    other = Working()
    other.check("it", sympify(1), "=", sympify(1))
    with pytest.raises(RuntimeError):
        other.finished()


def test_counts_go_up_and_are_not_rounded_again() -> None:
    work = Working()
    count = work.answer("pieces", ceil(term("length", "100") / term("each", "16")), "whole pieces", "count")
    work.check("they reach", count * 16, ">=", sympify(100))
    work.finished()
    assert work.result is not None and (work.result.text, len(work.steps)) == ("7", 1)


def test_cautions_and_sources_are_said_once() -> None:
    work = Working()
    work.caution("mind the blade", "mind the blade")
    work.caution("mind the blade")
    work.source("geometry", "geometry")
    assert (work.cautions, work.sources) == (["mind the blade"], ["geometry"])


def test_marks_round_each_for_itself() -> None:
    work = Working()
    for i in range(1, 8):
        work.mark(f"{i}", Fraction(i * 100, 7))
    assert [mark.text.split(" (")[0] for mark in work.marks][-1] == "100 in"
    assert all(abs(mark.value - Fraction(i * 100, 7)) == 0 for i, mark in enumerate(work.marks, 1))  # type: ignore[operator]
