"""The quantities a builder speaks in: exact values, each with a unit of the record.

A quantity is a value and a unit, never a float: lengths are exact fractions, so that nothing is lost before the
one rounding at the end. The classes differ only in dimension; they are the parameter types of the topics, and
so tell the matcher what to look for.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import ClassVar, Self

# Exact factors to the first unit of each dimension (16 CFR 500.19, NIST SP 811 App. B).
LENGTH = {
    "in": Fraction(1),
    "ft": Fraction(12),
    "mm": Fraction(10, 254),
    "cm": Fraction(100, 254),
    "m": Fraction(10000, 254),
}
AREA = {
    "ft2": Fraction(1),
    "in2": Fraction(1, 144),
    "square": Fraction(100),
    "m2": (Fraction(10000, 254) / 12) ** 2,
}
VOLUME = {
    "in3": Fraction(1),
    "ft3": Fraction(1728),
    "gal": Fraction(231),
    "L": Fraction(1000) / (Fraction(254, 100) ** 3),
    "floz": Fraction(231, 128),
}
WEIGHT = {"lb": Fraction(1), "kg": Fraction(100000000, 45359237)}
PLAIN = {"none": Fraction(1)}


class UnitError(ValueError):
    """A unit that does not belong to the dimension asked for."""


@dataclass(slots=True, unsafe_hash=True)
class Quantity:
    """An exact value in one of the record's units; `text` is how it was said, where it was said.

    Never changed; to say so in code takes four times as long, and a line makes a hundred.
    """

    value: Fraction
    unit: str
    text: str = ""

    units: ClassVar[dict[str, Fraction]] = PLAIN
    dimension: ClassVar[str] = "number"

    def __post_init__(self) -> None:
        if self.unit not in self.units:
            raise UnitError(f"{self.unit} is not a unit of {self.dimension}")

    def to(self, unit: str) -> Self:
        """The same quantity in another unit of its dimension, exactly."""
        if unit not in self.units:
            raise UnitError(f"{unit} is not a unit of {self.dimension}")
        value = self.value if unit == self.unit else self.value * factor(type(self), self.unit, unit)  # type: ignore[arg-type]
        return type(self)(value, unit, self.text)

    def beside(self, other: Quantity) -> Fraction:
        """Its number in the unit of another quantity; its own number where the units are of two kinds."""
        return self.to(other.unit).value if self.unit in other.units and other.unit in self.units else self.value

    def said(self, text: str) -> Self:
        """The same quantity, remembering the words it was said in."""
        return type(self)(self.value, self.unit, text)


@cache
def factor(dimension: type[Quantity], unit: str, other: str) -> Fraction:
    """What a value in one unit is multiplied by to be in another, exactly."""
    return dimension.units[unit] / dimension.units[other]


class Number(Quantity):
    """A bare number, no unit."""

    units = {"none": Fraction(1), "ratio": Fraction(1)}


class Count(Quantity):
    """A whole number of things."""

    dimension = "count"
    units = {"count": Fraction(1)}


class Length(Quantity):
    """A length; `metric` is true when it was said in mm, cm or m."""

    dimension = "length"
    units = LENGTH

    @property
    def metric(self) -> bool:
        return self.unit in ("mm", "cm", "m")


class Area(Quantity):
    """An area: ft2, in2, square (100 ft2) or m2."""

    dimension = "area"
    units = AREA


class Volume(Quantity):
    """A volume: in3, ft3, gal (US), L, floz (US)."""

    dimension = "volume"
    units = VOLUME


class Weight(Quantity):
    """A weight: lb or kg."""

    dimension = "weight"
    units = WEIGHT


class Pitch(Quantity):
    """Roof pitch as inches of rise in 12 of run (unit in12); an angle said instead keeps unit deg."""

    dimension = "pitch"
    units = {"in12": Fraction(1), "deg": Fraction(1)}

    def to(self, unit: str) -> Self:
        if unit != self.unit:
            raise UnitError("a pitch said as an angle is turned into rise in 12 by the working, where it shows")
        return self

    def beside(self, other: Quantity) -> Fraction:
        return self.value  # degrees are no rise in 12


class Angle(Quantity):
    """An angle in degrees."""

    dimension = "angle"
    units = {"deg": Fraction(1)}


class Percent(Quantity):
    """A percentage."""

    dimension = "percent"
    units = {"percent": Fraction(1)}


class Ratio(Quantity):
    """A ratio such as 1/300, as a fraction."""

    dimension = "ratio"
    units = {"ratio": Fraction(1)}


class Money(Quantity):
    """An amount of money, in whatever currency the person uses."""

    dimension = "money"
    units = {"money": Fraction(1)}


class Temperature(Quantity):
    """A temperature; degF and degC differ by an offset as well as a factor."""

    dimension = "temperature"
    units = {"degF": Fraction(1), "degC": Fraction(1)}

    def to(self, unit: str) -> Self:
        if unit not in self.units:
            raise UnitError(f"{unit} is not a unit of temperature")
        if unit == self.unit:
            return self
        value = (self.value - 32) * Fraction(5, 9) if unit == "degC" else self.value * Fraction(9, 5) + 32
        return type(self)(value, unit, self.text)


class Expansion(Quantity):
    """A coefficient of linear thermal expansion: growth per unit of length and degree, on the page per kelvin ("none")."""

    dimension = "expansion"
    units = {"none": Fraction(1), "perC": Fraction(1), "perF": Fraction(9, 5)}


class TemperatureChange(Quantity):
    """A difference of temperatures: dF or dC, factor only, no offset."""

    dimension = "temperature change"
    units = {"dF": Fraction(1), "dC": Fraction(9, 5)}
