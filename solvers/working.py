"""A working: givens, steps that compute what they show, the answer rounded once, and checks by another road.

A solver states steps as sympy expressions in the Terms already on the page; the engine puts the numbers in, evaluates
exactly and carries on. The text of a step is made from the same expression that was evaluated, so the page and the
number can't drift apart.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from sympy import sympify

from solvers.errors import NotSure, Refusal
from solvers.exact import Exact, Term, evaluate, nearest, real, snapped, times
from solvers.figure import View
from solvers.printing import decimal, filled, formula, page_number, shown
from solvers.rounding import SIXTEENTH, reading, rounding_step

CLOSE = Fraction(1, 10**12)  # two roads to one number agree to this, relative; doubles from a 3-D check need it
METRIC = {"in": ("mm", Fraction(254, 10)), "ft2": ("m2", Fraction(9290304, 10**8)), "ft": ("m", Fraction(3048, 10**4)),
          "in2": ("m2", Fraction(64516, 10**8)), "lb": ("kg", Fraction(45359237, 10**8)),
          "gal": ("L", Fraction(3785411784, 10**9)), "in3": ("L", Fraction(16387064, 10**9))}  # fmt: skip
Row = Callable[[], dict[str, Any]]
RELATIONS = {"=": "=", "<=": "≤", ">=": "≥"}


@dataclass(slots=True)
class Line:
    """One value of the record: name, number and unit, or a word."""

    name: str
    value: Exact | None
    unit: str
    text: str

    def data(self) -> dict[str, Any]:
        number = None if self.value is None else page_number(self.value)
        return {"name": self.name, "value": number, "unit": self.unit, "text": self.text}


@dataclass(slots=True)
class Working:
    """One question being worked. `tape_step` is what lengths are rounded to; `metric` gives metric out."""

    tape_step: Fraction = SIXTEENTH
    metric: bool = False
    also_lines: list[Line] = field(default_factory=list)
    marks: list[Line] = field(default_factory=list)
    cautions: list[str] = field(default_factory=list)
    sources: list[str] = field(default_factory=list)
    views: list[View] = field(default_factory=list)
    result: Line | None = None
    said: str = ""
    decimals: int = 0  # places that the answer is shown to, where it was asked for as a decimal and not to the tape
    # Rows are written out when they are looked at: of several ways to read a question, all are worked and one is shown.
    _steps: list[Row] = field(default_factory=list)
    _written: dict[int, dict[str, Any]] = field(default_factory=dict)
    _checks: list[tuple[bool, Row]] = field(default_factory=list)
    _answered: tuple[str, Term] | None = None

    @property
    def steps(self) -> list[dict[str, Any]]:
        """What was worked, row by row: why, formula, the numbers put in, result."""
        return [{**self._row(number)} for number in range(len(self._steps))]

    def same_steps(self, other: Working) -> bool:
        """Whether both show the same rows; none is written out after the first that differs."""
        count = len(self._steps)
        return count == len(other._steps) and all(self._row(n) == other._row(n) for n in range(count))

    def _row(self, number: int) -> dict[str, Any]:
        """One row, written out once."""
        if number not in self._written:
            self._written[number] = self._steps[number]()
        return self._written[number]

    @property
    def checks(self) -> list[dict[str, Any]]:
        """What was checked by another road, and that it holds."""
        return [row() for _, row in self._checks]

    def term(self, name: str, value: Exact | int, unit: str) -> Term:
        """A value on the page that is given or looked up, not worked."""
        return Term(name, Fraction(value) if isinstance(value, int) else value, unit)

    def value(self, expression: Any) -> Exact:
        """The exact value of an expression in Terms, for a solver that must choose by it."""
        return snapped(evaluate(sympify(expression)))

    def text(self, expression: Any, unit: str = "") -> str:
        """An expression's value, or a plain one, as a person reads it."""
        unit = unit or getattr(expression, "unit", "none")
        value, unit = self._outward(expression if isinstance(expression, Fraction) else self.value(expression), unit)
        return reading(value, unit, self.tape_step)

    def step(self, name: str, expression: Any, why: str, unit: str = "deg") -> Term:
        """State and work one step; returns the Term that stands for its result on the lines below."""
        expression = sympify(expression)
        try:
            value = snapped(evaluate(expression))
        except ZeroDivisionError:
            raise Refusal(f"that can't be worked: {formula(expression)} divides by zero") from None
        except ValueError as problem:
            raise Refusal(f"that can't be worked: {formula(expression)} would be {problem}") from None
        self._steps.append(lambda: {
            "why": why,
            "formula": f"{name} = {formula(expression)}",
            "filled": filled(expression, unit, value),
            "result": shown(value, unit),
        })  # fmt: skip
        return Term(name, value, unit)

    def answer(self, name: str, expression: Any, why: str = "", unit: str = "", symbol: str = "") -> Term:
        """The primary value: an expression to work as the last step, or a Term already on the page."""
        term = expression
        if not isinstance(expression, Term) or why:
            term = self.step(symbol or name, expression, why, unit or getattr(expression, "unit", "deg"))
        self._answered = name, term
        return term  # type: ignore[no-any-return]

    @property
    def answered(self) -> tuple[str, Term] | None:
        """The name and the Term of the primary value, where it is a number that was worked."""
        return self._answered

    def yes_or_no(self, name: str, left: Any, relation: str, right: Any, why: str) -> bool:
        """The answer is whether a relation (<=, >=) holds; it is worked and shown like any step."""
        holds = self._relate(left, relation, right)
        left, right = sympify(left), sympify(right)
        sign, unit = RELATIONS[relation], getattr(left, "unit", "none")
        self._steps.append(lambda: {
            "why": why,
            "formula": f"{name} = {formula(left)} {sign} {formula(right)}",
            "filled": f"{filled(left, unit, self.value(left))} {sign} {filled(right, unit, self.value(right))}",
            "result": "yes" if holds else "no",
        })  # fmt: skip
        self.result = Line(name, Fraction(int(holds)), "yesno", "yes" if holds else "no")
        return holds

    def word(self, name: str, text: str) -> None:
        """The answer is a word."""
        self.result = Line(name, None, "word", text)

    def also(self, name: str, expression: Any, unit: str = "") -> None:
        """A value a good answer carries beside it: a Term on the page or an expression in them."""
        value, unit = self._outward(self.value(expression), unit or getattr(expression, "unit", "none"))
        self.also_lines.append(Line(name, value, unit, reading(value, unit, self.tape_step)))

    def also_word(self, name: str, text: str) -> None:
        self.also_lines.append(Line(name, None, "word", text))

    def mark(self, name: str, value: Exact, unit: str = "in") -> None:
        """A mark: exact inside, each rounded for itself, so that no error adds up."""
        value, unit = self._outward(value, unit)
        self.marks.append(Line(name, value, unit, reading(value, unit, self.tape_step)))

    def check(self, what: str, left: Any, relation: str, right: Any) -> None:
        """Compute a check by another road; both sides are worked and shown. A check that fails stops the answer."""
        holds = self._relate(left, relation, right)
        self._checks.append((holds, lambda: {
            "what": f"{what}: {self._side(left)} {RELATIONS[relation]} {self._side(right)}",
            "holds": holds,
        }))  # fmt: skip

    def caution(self, *lines: str) -> None:
        self.cautions.extend(line for line in lines if line not in self.cautions)

    def source(self, *lines: str) -> None:
        self.sources.extend(line for line in lines if line not in self.sources)

    def view(self, title: str, stretch: bool = False) -> View:
        """A drawing to add shapes to."""
        self.views.append(View(title, stretch))
        return self.views[-1]

    def refuse_when(self, wrong: bool, sentence: str) -> None:
        """Decline with `sentence` when `wrong`."""
        if wrong:
            raise Refusal(sentence)

    def finished(self) -> None:
        """Raises NotSure when a check fails, and RuntimeError for a solver that gave no answer or no check."""
        for holds, row in self._checks:
            if not holds:
                raise NotSure(row()["what"])
        if self._answered:
            self._round(*self._answered)
        if self.result is None or not self._checks:
            raise RuntimeError("a working needs an answer and at least one check")

    def figure(self) -> dict[str, Any] | None:
        return {"views": [view.data() for view in self.views]} if self.views else None

    def _outward(self, value: Exact, unit: str) -> tuple[Exact, str]:
        """A value in the unit it leaves in: metric in gives metric out."""
        if not self.metric or unit not in METRIC:
            return value, unit
        metric_unit, factor = METRIC[unit]
        return times(value, factor), metric_unit

    def _round(self, name: str, term: Term) -> None:
        """The last steps: to metric where the question was metric, then the one rounding."""
        if self.metric and term.unit in METRIC:
            unit, factor = METRIC[term.unit]
            term = self.step(f"{term.name} in {unit}", term * factor, f"1 {term.unit} is exactly {factor} {unit}", unit)
        value, unit = term.value, term.unit
        shown_as = f"{decimal(value, self.decimals)} {unit}" if self.decimals else reading(value, unit, self.tape_step)
        self.result = Line(name, value, unit, shown_as)
        if unit == "count" or self.decimals:
            return
        step = rounding_step(value, unit, self.tape_step)
        rounded = nearest(term, sympify(step))
        if evaluate(rounded) == value:
            return
        text = self.result.text
        self._steps.append(lambda: {
            "why": f"rounded once, at the end, to the nearest {step}",
            "formula": formula(rounded),
            "filled": filled(rounded, unit, evaluate(rounded)),
            "result": text,
        })  # fmt: skip

    def _relate(self, left: Any, relation: str, right: Any) -> bool:
        a, b = (real(self.value(side)) for side in (left, right))
        near = abs(a - b) <= real(CLOSE) * max(abs(a), abs(b), 1)
        return bool(near or (relation == "<=" and a < b) or (relation == ">=" and a > b))

    def _side(self, side: Any) -> str:
        expression = sympify(side)
        unit = getattr(side, "unit", "none")
        return filled(expression, unit, self.value(expression))
