"""Lengths as a tape measure shows them, and in millimetres. The one rounding at the end happens here.

A tape has halves, quarters, eighths, sixteenths and finer powers of two, and nothing else: no fifths, no unreduced
4/8, and never 12 in beside the feet.
"""

from __future__ import annotations

from fractions import Fraction

from solvers.errors import Refusal
from solvers.exact import Exact, fraction, to_nearest

MINUS = "−"
FINEST = 64
_FOOT = 12
_MM_PER_INCH = Fraction(254, 10)  # exact, 16 CFR 500.19


def nearest(value: Fraction, step: Fraction) -> Fraction:
    """The multiple of `step` nearest to `value`; exact halves go away from zero."""
    if step <= 0:
        raise ValueError("a length is rounded to a step above zero")
    return to_nearest(value, step)


class NotOnTape(Refusal, ValueError):
    """A fraction that no tape is marked in."""


def tape(value: Exact | float, denominator: int = 16, feet: bool = False) -> str:
    """Inches as read off a tape: "13 7/16 in", or with `feet` "12 ft 6 1/2 in".

    `denominator` is the finest mark: 1, 2, 4 … 64. Raises NotOnTape for any other.
    """
    if denominator not in (1, 2, 4, 8, 16, 32, FINEST):
        raise NotOnTape(
            f"a tape has marks at halves, quarters and so on to 1/{FINEST} in, not at 1/{denominator}:"
            " say to the nearest 16th or 32nd"
        )
    inches = nearest(_exact(value), Fraction(1, denominator))
    sign, size = (MINUS if inches < 0 else ""), abs(inches)
    if not feet or size < _FOOT:
        return f"{sign}{_mixed(size)} in"
    whole, rest = divmod(size, _FOOT)
    return f"{sign}{whole} ft" + (f" {_mixed(rest)} in" if rest else "")


def millimetres(value: Exact | float) -> str:
    """Inches in millimetres: "341 mm", with one decimal under 10 mm."""
    exact = _exact(value) * _MM_PER_INCH
    fine = abs(nearest(exact, Fraction(1, 10))) < 10
    rounded = nearest(exact, Fraction(1, 10) if fine else Fraction(1))
    sign, size = (MINUS if rounded < 0 else ""), abs(rounded)
    digits = f"{float(size):.1f}".removesuffix(".0") if fine else str(int(size))
    return f"{sign}{digits} mm"


def _exact(value: Exact | float) -> Fraction:
    if isinstance(value, float):
        return Fraction(value)  # exactly; a float that is no number raises, as it should
    return fraction(value)


def _mixed(size: Fraction) -> str:
    """A fraction at or above zero as a person writes it: 13 7/16, 7/16, 13."""
    whole, rest = divmod(size, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)
