"""Constants on the page: a figure stays as its source prints it, where sympy would fold it into the expression."""

from __future__ import annotations

from fractions import Fraction

from solvers.exact import Term

MM_PER_INCH = Term("25.4", Fraction("25.4"), "none")  # exact, 16 CFR 500.19


def constant(text: str) -> Term:
    """A figure as its source prints it: `constant("17.62")` shows as 17.62 in the formula and in the numbers."""
    return Term(text, Fraction(text), "none")
