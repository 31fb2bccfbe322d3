"""Temperatures on the page: one scale, absolute zero, and how far apart two of them are."""

from __future__ import annotations

from fractions import Fraction

from solvers.constants import constant
from solvers.exact import Term
from solvers.working import Working

ABSOLUTE_ZERO = {"degF": Fraction("-459.67"), "degC": Fraction("-273.15")}
SCALE = {"degF": "°F", "degC": "°C"}
CHANGE_UNIT = {"degF": "dF", "degC": "dC"}
KELVIN_PER_FAHRENHEIT = Fraction(5, 9)


def refuse_impossible(work: Working, *temperatures: Term | None) -> None:
    """Decline a temperature under absolute zero, naming it."""
    for term in temperatures:
        if term is not None:
            work.refuse_when(
                term.value < ABSOLUTE_ZERO[term.unit],
                f"the {term.name} can't be {work.text(term)}: absolute zero is "
                f"{work.text(absolute_zero(work, term.unit))}, and nothing is colder",
            )


def absolute_zero(work: Working, unit: str) -> Term:
    return work.term("absolute zero", ABSOLUTE_ZERO[unit], unit)


def on_scale(work: Working, term: Term, unit: str) -> Term:
    """The temperature on a scale; a step of its own when it was said on the other."""
    if term.unit == unit:
        return term
    ninths, freezing = constant("1.8"), constant("32")
    expression = (term - freezing) / ninths if unit == "degC" else term * ninths + freezing
    name = term.name.removesuffix(" in °C").removesuffix(" in °F")
    return work.step(
        f"{name} in {SCALE[unit]}", expression, "to the other scale: 1.8 °F to the °C, and 32 °F at freezing", unit
    )


def kelvins(work: Working, change: Term) -> Term:
    """A difference of temperatures in °C; a step when it was in °F. A difference has no 32 in it."""
    if change.unit == "dC":
        return change
    return work.step("change in °C", change * KELVIN_PER_FAHRENHEIT, "a difference of 9 °F is one of 5 °C", unit="dC")
