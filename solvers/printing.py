"""Expressions as a builder reads them: `atan(rise / 12)`, and the same line with the numbers put in."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from functools import lru_cache
from math import floor, log10

from sympy import Expr
from sympy.printing.str import StrPrinter

from solvers.exact import Exact, Term, evaluate, fraction, to_nearest, whole_steps

PLACES = {"deg": 2, "percent": 2, "money": 2, "square": 4, "degF": 2, "degC": 2}
DEFAULT_PLACES = 4
MOST_PLACES = 14
SIGNS = {
    "deg": "°", "percent": " %", "in12": " in 12", "in": " in", "ft": " ft", "mm": " mm", "cm": " cm", "m": " m",
    "in2": " in²", "ft2": " ft²", "m2": " m²", "square": " squares", "in3": " in³", "ft3": " ft³", "gal": " gal",
    "L": " L", "lb": " lb", "kg": " kg", "degF": " °F", "degC": " °C", "dF": " °F", "dC": " °C", "in2perft": " in²/ft",
    "floz": " fl oz", "perC": " per °C", "perF": " per °F",
}  # fmt: skip


def decimal(value: Exact, places: int) -> str:
    """Plain decimal to at most `places`, exact halves away from zero, no trailing zeros, a real minus sign."""
    parts = whole_steps(value, 1, 10**places)
    whole, rest = divmod(abs(parts), 10**places)
    digits = f"{whole}.{rest:0{places}d}".rstrip("0").rstrip(".") if places else str(whole)
    return ("−" if parts < 0 else "") + digits


def shown(value: Exact, unit: str) -> str:
    """A step's result: the value to the page's places, with its sign or unit."""
    places = PLACES.get(unit, DEFAULT_PLACES)
    if value != 0 and places > 2 and abs(float(value)) < 10 ** (2 - places):
        # Small numbers (coefficients, gaps in a joint) keep four significant digits.
        places = min(MOST_PLACES, 3 - floor(log10(abs(float(value)))))
    return decimal(value, places) + SIGNS.get(unit, "")


PLACE = "\x02{}\x02"  # where a Term goes


class _Page(StrPrinter):  # type: ignore[misc]
    """sympy's own precedence and signs; only the leaves and the operators are ours."""

    def __init__(self) -> None:
        super().__init__({"order": None})
        self.terms: list[Term] = []

    def _print_Dummy(self, term: Term) -> str:  # noqa: N802  (the printer's own name for it)
        self.terms.append(term)
        return PLACE.format(len(self.terms) - 1)

    def _as_ordered_terms(self, expr: Expr, order: str | None = None) -> list[Expr]:
        """A sum begins with something that is added, where it has such: `depth − rib` and not `−rib + depth`."""
        terms: list[Expr] = super()._as_ordered_terms(expr, order)
        return sorted(terms, key=lambda term: bool(term.could_extract_minus_sign()))

    def _print_smaller(self, call: Expr) -> str:
        return f"min({self.stringify(call.args, ', ')})"

    def _print_larger(self, call: Expr) -> str:
        return f"max({self.stringify(call.args, ', ')})"


_PLACE = re.compile("\x02(\\d+)\x02")
_POWER = re.compile(r"\*\*(?:2(?![\d.]))")
_CUBE = re.compile(r"\*\*(?:3(?![\d.]))")


@lru_cache(maxsize=256)
def _frame(expression: Expr) -> tuple[str, tuple[Term, ...]]:
    """The expression as text with a numbered place for each Term: made once for its names and its numbers."""
    page = _Page()
    text: str = page.doprint(expression)
    return text, tuple(page.terms)


def written(expression: Expr, leaf: Callable[[Term], str]) -> str:
    """The expression as text, each Term by `leaf`."""
    text, terms = _frame(expression)
    text = _PLACE.sub(lambda place: leaf(terms[int(place[1])]), text)
    text = _CUBE.sub("³", _POWER.sub("²", text)).replace("**", "^")
    return re.sub(r"\s*\*\s*", " × ", re.sub(r"\s*/\s*", " / ", text)).replace("-", "−")


def formula(expression: Expr) -> str:
    """The expression in names."""
    return written(expression, lambda term: term.name)


def _number(value: Exact, places: int) -> str:
    if isinstance(value, Fraction) and 10**4 % value.denominator and value.denominator <= 960:
        return f"({value.numerator}/{value.denominator})".replace("-", "−")
    text = decimal(value, places)
    return f"({text})" if text.startswith("−") else text


def _rounded(value: Exact, places: int) -> Exact:
    if isinstance(value, Fraction) and 10**4 % value.denominator and value.denominator <= 960:
        return value
    return to_nearest(value, Fraction(1, 10**places))


def filled(expression: Expr, unit: str, result: Exact) -> str:
    """The expression with its numbers put in, to as many digits as it takes for the line to give the shown result."""
    want = shown(result, unit)
    for extra in range(0, MOST_PLACES):
        # The digits of each number grow together until the line, worked from what is printed, gives what is printed.
        def places(term: Term, extra: int = extra) -> int:
            return PLACES.get(term.unit, DEFAULT_PLACES) + extra

        try:
            again = evaluate(expression, lambda term: _rounded(term.value, places(term)))
        except (ZeroDivisionError, ValueError):
            continue
        if shown(again, unit) == want:
            break
    return written(expression, lambda term: _number(term.value, places(term)))


def page_number(value: Exact) -> float:
    """A JSON number with all the digits a float holds."""
    return float(fraction(value)) if isinstance(value, Fraction) else float(value)
