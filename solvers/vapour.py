"""Water vapour: saturation pressure and dew or frost point by Magnus' formula, and by Buck's for checking.

Below 0 °C what forms is frost, and its point is that over ice. Humidity of freezing air is taken over ice, as ASHRAE's
tables and the common libraries take it; weather stations give it over water, which is shown beside the answer.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from solvers.constants import constant
from solvers.exact import Term, exp, ln
from solvers.working import Working

MAGNUS_SOURCE = "Magnus formula: over water 17.62 and 243.12, over ice 22.46 and 272.62 (WMO, from memory)"
BUCK_SOURCE = "check: Buck's 1996 equation for saturation pressure (from memory)"
CLOSE = Fraction(1, 100)  # the two equations agree to this, relative, from -70 to 60 °C


@dataclass(frozen=True, slots=True)
class Magnus:
    """One branch: 6.112 hPa × exp(a t / (b + t)), t in °C."""

    a: Term
    b: Term


WATER = Magnus(constant("17.62"), constant("243.12"))
ICE = Magnus(constant("22.46"), constant("272.62"))
BASE = constant("6.112")


def branch(temperature: Term) -> Magnus:
    return ICE if temperature.value < 0 else WATER


def saturation(work: Working, name: str, temperature: Term, by: Magnus, why: str) -> Term:
    """Saturation pressure, hPa, at a temperature in °C."""
    return work.step(name, BASE * exp(by.a * temperature / (by.b + temperature)), why, unit="none")


def point_of(work: Working, name: str, pressure: Term, by: Magnus, why: str) -> Term:
    """The temperature, °C, at which this pressure is saturation."""
    q = work.step("q", ln(pressure / BASE), "the pressure on the formula's own scale", unit="none")
    return work.step(name, by.b * q / (by.a - q), why, unit="degC")


def buck(temperature: Term, over_ice: bool = True) -> Any:
    """Buck's saturation pressure at a temperature in °C, hPa, as an expression; below 0 °C over ice unless told."""
    if temperature.value < 0 and over_ice:
        a, b, c, d = (Fraction(text) for text in ("6.1115", "23.036", "333.7", "279.82"))
    else:
        a, b, c, d = (Fraction(text) for text in ("6.1121", "18.678", "234.5", "257.14"))
    return a * exp((b - temperature / c) * temperature / (d + temperature))
