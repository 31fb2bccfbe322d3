"""Exact evaluation of a step, and the degree functions the steps are written in.

A step is a sympy expression in Terms. Its value is a Fraction wherever arithmetic allows (sums, products, whole powers,
perfect squares, the angles whose sines are rational) and otherwise a 40-digit float, so that no rounding reaches a
person before the one at the end. The functions work in degrees because the page, the saw and the trade do.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import reduce
from math import ceil as whole_above
from math import floor as whole_below
from math import isqrt
from typing import Any, TypeAlias

import mpmath
from sympy import Dummy, Expr, Function, pi

MP = mpmath.mp.clone()
MP.dps = 40
FINE = 10**24
SLACK = Fraction(1, FINE)  # closer than this to a whole number is that number: 40 digits carry no more noise

Exact: TypeAlias = "Fraction | mpmath.mpf"


def _with_fractions(other: Any, plain: Callable[[Any], Any] = MP.mpf.mpf_convert_rhs) -> Any:
    """What mpmath takes the other side of a sum or comparison for: left alone it stumbles on a Fraction."""
    return real(other)._mpf_ if isinstance(other, Fraction) else plain(other)


MP.mpf.mpf_convert_rhs = staticmethod(_with_fractions)  # the number type of this context alone


class Term(Dummy):  # type: ignore[misc]
    """A named value on the page: a symbol that knows what it stands for and in which unit."""

    value: Exact
    unit: str

    def __new__(cls, name: str, value: Exact, unit: str) -> Term:
        term: Term = Dummy.__new__(cls, name)
        term.value, term.unit = value, unit
        return term


class sin(Function):  # noqa: N801  (the page's own spelling)  # type: ignore[misc]
    """Sine of an angle in degrees."""


class cos(Function):  # noqa: N801  # type: ignore[misc]
    """Cosine of an angle in degrees."""


class tan(Function):  # noqa: N801  # type: ignore[misc]
    """Tangent of an angle in degrees."""


class asin(Function):  # noqa: N801  # type: ignore[misc]
    """The angle in degrees whose sine this is."""


class acos(Function):  # noqa: N801  # type: ignore[misc]
    """The angle in degrees whose cosine this is."""


class atan(Function):  # noqa: N801  # type: ignore[misc]
    """The angle in degrees whose tangent this is."""


class exp(Function):  # noqa: N801  # type: ignore[misc]
    """e to the power."""


class ln(Function):  # noqa: N801  # type: ignore[misc]
    """Natural logarithm."""


class sqrt(Function):  # noqa: N801  # type: ignore[misc]
    """The square root, left as it is written; sympy's own asks at length what is under it, four times the work."""


class ceil(Function):  # noqa: N801  # type: ignore[misc]
    """The next whole number up, or the number itself when it is whole."""


class floor(Function):  # noqa: N801  # type: ignore[misc]
    """The next whole number down, or the number itself when it is whole."""


class nearest(Function):  # noqa: N801  # type: ignore[misc]
    """nearest(x, step): x to the nearest multiple of step; exact halves go away from zero."""


class smaller(Function):  # noqa: N801  # type: ignore[misc]
    """The smaller of its arguments."""


class larger(Function):  # noqa: N801  # type: ignore[misc]
    """The larger of its arguments."""


def real(value: Exact) -> mpmath.mpf:
    """As a 40-digit float."""
    if isinstance(value, Fraction):
        return MP.mpf(value.numerator) / value.denominator
    return value


def snapped(value: Exact) -> Exact:
    """A float that is a whole number but for the last digits of 40, as that whole number."""
    if isinstance(value, Fraction):
        return value
    whole = MP.nint(value)
    return Fraction(int(whole)) if abs(value - whole) < real(SLACK) else value


def root(value: Exact) -> Exact:
    """Square root: exact when numerator and denominator are perfect squares."""
    if value < 0:
        raise ValueError("the square root of a negative number")
    if isinstance(value, Fraction):
        top, bottom = isqrt(value.numerator), isqrt(value.denominator)
        if top * top == value.numerator and bottom * bottom == value.denominator:
            return Fraction(top, bottom)
    return MP.sqrt(real(value))


def to_nearest(value: Exact, step: Fraction) -> Fraction:
    """`value` to the nearest multiple of `step`, exact halves away from zero."""
    return step * whole_steps(value, step.numerator, step.denominator)


def whole_steps(value: Exact, top: int, bottom: int) -> int:
    """How many steps of `top` / `bottom` are nearest `value`, exact halves away from zero.

    In whole numbers throughout: a page rounds a hundred times, and Fractions take four times as long over it.
    """
    exact = fraction(snapped(value))
    over, under = abs(exact.numerator) * bottom, exact.denominator * top
    size = (2 * over * FINE + under * (FINE + 2)) // (2 * under * FINE)  # over / under + 1/2 + SLACK
    return size if exact.numerator >= 0 else -size


def fraction(value: Exact) -> Fraction:
    """A fraction that agrees with a 40-digit float in all of its digits."""
    if isinstance(value, Fraction):
        return value
    return Fraction(int(MP.floor(value * 10**34 + MP.mpf(0.5))), 10**34)


_SINES = {0: Fraction(0), 30: Fraction(1, 2), 90: Fraction(1), 150: Fraction(1, 2), 180: Fraction(0)}
_TANGENTS = {0: Fraction(0), 45: Fraction(1), 135: Fraction(-1), 180: Fraction(0)}


def sine(angle: Exact) -> Exact:
    return _SINES[int(angle)] if angle in _SINES else MP.sin(MP.radians(real(angle)))


def cosine(angle: Exact) -> Exact:
    return sine(90 - angle) if isinstance(angle, Fraction) and 90 - angle in _SINES else MP.cos(MP.radians(real(angle)))


def tangent(angle: Exact) -> Exact:
    if angle == 90:
        raise ZeroDivisionError("the tangent of 90 degrees")
    return _TANGENTS[int(angle)] if angle in _TANGENTS else MP.tan(MP.radians(real(angle)))


def _inverse(name: str, table: dict[Fraction, int]) -> Callable[[Exact], Exact]:
    def angle(value: Exact) -> Exact:
        if isinstance(value, Fraction) and value in table:
            return Fraction(table[value])
        if name != "atan" and abs(value) > 1:
            raise ValueError(f"{name} of more than 1")
        return MP.degrees(getattr(MP, name)(real(value)))

    return angle


def _whole_up(value: Exact) -> Exact:
    value = snapped(value)
    return Fraction(whole_above(value) if isinstance(value, Fraction) else int(MP.ceil(value)))


def _whole_down(value: Exact) -> Exact:
    value = snapped(value)
    return Fraction(whole_below(value) if isinstance(value, Fraction) else int(MP.floor(value)))


CALLS: dict[str, Callable[..., Exact]] = {
    "sin": sine,
    "cos": cosine,
    "tan": tangent,
    "asin": _inverse("asin", {Fraction(0): 0, Fraction(1, 2): 30, Fraction(1): 90, Fraction(-1): -90}),
    "acos": _inverse("acos", {Fraction(1): 0, Fraction(1, 2): 60, Fraction(0): 90, Fraction(-1): 180}),
    "atan": _inverse("atan", {Fraction(0): 0, Fraction(1): 45, Fraction(-1): -45}),
    "exp": lambda value: MP.exp(real(value)),
    "ln": lambda value: MP.log(real(value)),
    "ceil": _whole_up,
    "floor": _whole_down,
    "nearest": lambda value, step: to_nearest(value, fraction(step)),
    "smaller": lambda *values: min(values, key=real),
    "larger": lambda *values: max(values, key=real),
    "sqrt": root,
}


def add(left: Exact, right: Exact) -> Exact:
    if isinstance(left, Fraction) and isinstance(right, Fraction):
        return left + right
    return real(left) + real(right)


def times(left: Exact, right: Exact) -> Exact:
    if isinstance(left, Fraction) and isinstance(right, Fraction):
        return left * right
    return real(left) * real(right)


def power(base: Exact, exponent: Exact) -> Exact:
    """Exact for whole powers, and for halves of perfect squares."""
    if isinstance(exponent, Fraction):
        if exponent.denominator == 1:
            whole = exponent.numerator
            if isinstance(base, Fraction):
                return base**whole
            return base**whole
        if exponent.denominator == 2:
            return power(root(base), Fraction(exponent.numerator))
    return MP.power(real(base), real(exponent))


def evaluate(expression: Expr, stand_in: Callable[[Term], Exact] | None = None) -> Exact:
    """The exact value of an expression in Terms; `stand_in` gives other values for them (for re-deriving a line).

    Raises ZeroDivisionError or ValueError where no real number is the answer.
    """
    if isinstance(expression, Term):
        return stand_in(expression) if stand_in else expression.value
    if expression.is_Rational:
        return Fraction(int(expression.p), int(expression.q))
    if expression is pi:
        return MP.pi + 0
    values = [evaluate(argument, stand_in) for argument in expression.args]
    if expression.is_Add:
        return reduce(add, values)
    if expression.is_Mul:
        return reduce(times, values)
    if expression.is_Pow:
        if values[0] == 0 and values[1] < 0:
            raise ZeroDivisionError("a division by zero")
        return power(values[0], values[1])
    return CALLS[type(expression).__name__](*values)
