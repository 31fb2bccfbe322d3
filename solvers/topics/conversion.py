"""One unit into another, exactly, and how far the tape's nearest mark is from it."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Annotated

from solvers.constants import constant
from solvers.errors import NeedMore
from solvers.exact import Term, nearest
from solvers.heat import ABSOLUTE_ZERO, refuse_impossible
from solvers.printing import decimal
from solvers.quantities import Length, Quantity, Temperature, TemperatureChange
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.sums import Measure
from solvers.tape import tape
from solvers.working import Working

PLACES = 4  # of an inch as a decimal: a 32nd has five, and the last is no length
NIST = "exact factors: 16 CFR 500.19 and NIST SP 811, Appendix B; a US gallon is 231 in³ (NIST Handbook 44, Appendix C)"


class Unit(Choice):
    """The unit wanted; values are how it is said on the page."""

    INCHES = "inches"
    FEET = "feet"
    MILLIMETRES = "millimetres"
    CENTIMETRES = "centimetres"
    METRES = "metres"
    SQUARE_FEET = "square feet"
    SQUARE_INCHES = "square inches"
    SQUARE_METRES = "square metres"
    SQUARES = "squares"
    CUBIC_INCHES = "cubic inches"
    CUBIC_FEET = "cubic feet"
    GALLONS = "gallons"
    LITRES = "litres"
    POUNDS = "pounds"
    KILOGRAMS = "kilograms"
    FAHRENHEIT = "Fahrenheit"
    CELSIUS = "Celsius"
    METRIC = "metric"
    IMPERIAL = "feet and inches"
    DECIMAL = "decimal inches"
    TAPE = "inches on a tape"
    EIGHTH = "eighths"
    SIXTEENTH = "sixteenths"
    THIRTY_SECOND = "thirty-seconds"


CODES = {
    Unit.INCHES: "in",
    Unit.FEET: "ft",
    Unit.MILLIMETRES: "mm",
    Unit.CENTIMETRES: "cm",
    Unit.METRES: "m",
    Unit.SQUARE_FEET: "ft2",
    Unit.SQUARE_INCHES: "in2",
    Unit.SQUARE_METRES: "m2",
    Unit.SQUARES: "square",
    Unit.CUBIC_INCHES: "in3",
    Unit.CUBIC_FEET: "ft3",
    Unit.GALLONS: "gal",
    Unit.LITRES: "L",
    Unit.POUNDS: "lb",
    Unit.KILOGRAMS: "kg",
    Unit.FAHRENHEIT: "degF",
    Unit.CELSIUS: "degC",
}
# A system, for each dimension what a builder reads in it; unit "in" of a length reads in feet too when it is long.
METRIC = {"in": "mm", "ft2": "m2", "in3": "L", "lb": "kg", "degF": "degC", "dF": "dC"}
IMPERIAL = {"mm": "in", "m2": "ft2", "L": "gal", "kg": "lb", "degC": "degF", "dC": "dF"}
MARKS = {Unit.EIGHTH: 8, Unit.SIXTEENTH: 16, Unit.THIRTY_SECOND: 32}
CHANGES = {"degF": "dF", "degC": "dC"}

FEET_TOO = re.compile(r"f(?:oo|ee)?t\b.*\d|'.*\d|f(?:oo|ee)t (?!long|wide|high)[a-z]", re.IGNORECASE)


@topic("conversion", "tape")
def conversion(
    work: Working,
    value: Annotated[Measure, Slot("Convert what? Give a value with its unit.")],
    to: Annotated[Unit, Slot("To which unit: inches, feet, millimetres, metres?", name="unit")],
) -> None:
    """A value in another unit, exactly; for a length, how far the nearest tape mark is from it.

    Refuses a unit of another kind and a temperature under absolute zero. Sources: 16 CFR 500.19, NIST SP 811.
    """
    work.metric = False  # the unit wanted was said
    given = value.quantity
    unit = _code(to, given)
    if to in MARKS:
        work.tape_step = Fraction(1, MARKS[to])
    kind = given.dimension
    a_kind = f"{'an' if kind[0] in 'aeiou' else 'a'} {kind}"
    work.refuse_when(
        unit not in given.units,
        f"{value} is {a_kind}, and {to.value} measure something else: ask for a unit of {kind}",
    )
    if to is Unit.INCHES and unit == given.unit == "in" and given.text.endswith(" in"):  # "2400 in inches": no unit was said
        raise NeedMore("to", f"{given.text or value} is in {to.value} already: into which unit?")
    term = work.term((given.text or "value").replace("/", "⁄").replace("-", "−"), given.value, given.unit)
    warm = isinstance(given, Temperature)
    result = _temperature(work, term, unit) if warm else _scaled(work, term, given, unit)
    if isinstance(given, Length):
        _tape(work, term, result)
        if to is Unit.DECIMAL:
            work.decimals = PLACES
            work.said = f"{decimal(work.value(result), PLACES)} inches"
    work.source(NIST)


def _code(to: Unit, given: Quantity) -> str:
    """The unit of the answer: the one named, or the one a system has for what was given."""
    if to in (Unit.METRIC, Unit.IMPERIAL):
        system = METRIC if to is Unit.METRIC else IMPERIAL
        return next((code for code in system.values() if code in given.units), given.unit)
    unit = CODES.get(to, "in")
    return CHANGES.get(unit, unit) if isinstance(given, TemperatureChange) else unit


def _scaled(work: Working, term: Term, given: Quantity, unit: str) -> Term:
    """By one exact factor."""
    factor = given.units[given.unit] / given.units[unit]
    by = _factor(work, factor)
    expression = term * by if factor >= 1 or factor.denominator > 10**6 else term / _factor(work, 1 / factor)
    result = work.answer("value", expression, "the exact factor between the two units", unit, "x")
    base = next(iter(given.units))
    road = work.term(f"in {base}", given.value * given.units[given.unit], base)
    work.check("by way of another unit", road / work.term(f"{base} in one", given.units[unit], "none"), "=", result)
    return result


def _factor(work: Working, factor: Fraction) -> Term:
    return work.term("factor", factor, "none")


def _temperature(work: Working, term: Term, unit: str) -> Term:
    refuse_impossible(work, work.term("temperature", term.value, term.unit))
    if unit == term.unit:
        expression = term + 0
    elif unit == "degC":
        expression = (term - constant("32")) / constant("1.8")
    else:
        expression = term * constant("1.8") + constant("32")
    result = work.answer("value", expression, "1.8 °F to the °C, and water freezes at 32 °F and 0 °C", unit, "t")
    share = Fraction(9, 5)
    over = (term.value - ABSOLUTE_ZERO[term.unit]) * {("degC", "degF"): share, ("degF", "degC"): 1 / share}.get(
        (term.unit, unit), 1
    )
    work.check(
        "counted from absolute zero",
        work.term("over absolute zero", over, "none") + work.term("absolute zero", ABSOLUTE_ZERO[unit], "none"),
        "=",
        result,
    )
    return result


def _tape(work: Working, term: Term, result: Term) -> None:
    """The nearest sixteenth and whole millimetre, and how far off each is."""
    inches = work.step("inches", term * work.term("in each", Length.units[term.unit], "none"), "the same in inches", unit="in")
    mark = work.step(
        "tape mark",
        nearest(inches, work.term("a mark", work.tape_step, "in")),
        "the nearest mark on the tape",
        unit="in",
    )
    off = work.step("off the mark", inches - mark, "how much it is over that mark; negative is under", unit="in")
    work.also_word("on the tape", tape(mark.value, work.tape_step.denominator))
    work.also_word("in decimals", f"{decimal(work.value(inches), 4)} in")
    work.also("error at that mark", off)
    work.also_lines[-1].text = f"{decimal(work.value(off), 4)} in"  # less than a tape shows
    work.also("error at that mark, in mm", off * constant("25.4"), "mm")
    whole = nearest(inches * constant("25.4"), work.term("1 mm", 1, "mm"))
    work.also("nearest whole millimetre", whole, "mm")
    if result.unit not in ("in", "mm"):
        work.also("in millimetres", inches * constant("25.4"), "mm")
