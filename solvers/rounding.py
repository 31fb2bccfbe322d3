"""The one rounding at the end, and how a value reads once rounded."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from solvers.exact import Exact, to_nearest
from solvers.printing import SIGNS, decimal
from solvers.tape import tape

SIXTEENTH = Fraction(1, 16)
# What a value is rounded to for reading, by unit; a length follows the working's own tape fraction.
STEP = {
    "deg": Fraction(1, 10), "percent": Fraction(1, 10), "in12": Fraction(1, 100), "count": Fraction(1),
    "ft2": Fraction(1, 10), "in2": Fraction(1, 10), "m2": Fraction(1, 100), "square": Fraction(1, 100),
    "mm": Fraction(1), "cm": Fraction(1, 10), "m": Fraction(1, 1000), "ft": Fraction(1, 100),
    "in3": Fraction(1, 10), "ft3": Fraction(1, 100), "gal": Fraction(1, 100), "L": Fraction(1, 100),
    "lb": Fraction(1, 10), "kg": Fraction(1, 10), "degF": Fraction(1, 10), "degC": Fraction(1, 10),
    "dF": Fraction(1, 10), "dC": Fraction(1, 10), "in2perft": Fraction(1, 100), "money": Fraction(1, 100),
    "floz": Fraction(1, 10), "none": Fraction(1, 1000), "ratio": Fraction(1, 10000),
    "perC": Fraction(1, 10**7), "perF": Fraction(1, 10**7),
}  # fmt: skip
FEET_FROM = 36  # inches; from here on a length reads in feet as well


def rounding_step(value: Exact, unit: str, tape_step: Fraction) -> Fraction:
    """What this value is rounded to: finer for small ones, so that a small number never reads as nothing."""
    if unit == "in":
        return tape_step
    step = STEP.get(unit, Fraction(1, 1000))
    while unit not in ("count", "money") and value != 0 and abs(float(value)) < 10 * step and step > Fraction(1, 10**6):
        step /= 10
    return step


@lru_cache(maxsize=4096)  # a cut list reads one length hundreds of times
def reading(value: Exact, unit: str, tape_step: Fraction = SIXTEENTH) -> str:
    """A value as a person reads it: `56.3°`, `13 7/16 in`, `161 1/8 in (13 ft 5 1/8 in)`, `16`."""
    if unit == "in":
        text = tape(value, tape_step.denominator)
        if abs(float(value)) >= FEET_FROM:
            text += f" ({tape(value, tape_step.denominator, feet=True)})"
        return text
    if unit == "yesno":
        return "yes" if value else "no"
    rounded = to_nearest(value, rounding_step(value, unit, tape_step))
    if unit == "money":
        whole, cents = divmod(abs(rounded.numerator) * 100 // rounded.denominator, 100)
        return f"{'−' if rounded < 0 else ''}{whole}.{cents:02d}"
    return decimal(rounded, 8) + SIGNS.get(unit, "")
