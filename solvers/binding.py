"""Givens become Terms: units turned to the page's, limits kept, a pitch said as an angle turned into rise in 12."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from solvers.errors import Refusal
from solvers.exact import Term, tan
from solvers.printing import SIGNS, decimal
from solvers.quantities import (
    Area,
    Count,
    Expansion,
    Length,
    Pitch,
    Quantity,
    Temperature,
    TemperatureChange,
    Volume,
    Weight,
)
from solvers.slots import Given, Parameter, Slot
from solvers.working import Working

PAGE_UNIT: dict[type, str] = {Length: "in", Area: "ft2", Volume: "in3", Weight: "lb", Expansion: "none"}
LONGEST = 12 * 100_000  # inches; nearly 20 miles of trim
STEEPEST = 48  # rise in 12; past it (76°) what is meant is a wall or a slip of the tongue
KEEPS_ITS_UNIT = (Temperature, TemperatureChange, Weight)  # kg in, kg out


@dataclass(frozen=True, slots=True)
class Slope:
    """A roof pitch on the page: `rise` over `run`, which is 12; no other rise or run there shares their names."""

    rise: Term
    run: Term
    given: Pitch


def bind(work: Working, parameters: tuple[Parameter, ...], givens: list[Given]) -> dict[str, Any]:
    """Arguments for a topic's function. Raises Refusal for a value outside its slot's limits."""
    known = {given.name: given.value for given in givens}
    return {p.name: _argument(work, p, known.get(p.name)) for p in parameters}


def _argument(work: Working, parameter: Parameter, value: Any) -> Any:
    if value is None or not isinstance(value, Quantity):
        return value
    if isinstance(value, Pitch):
        return _slope(work, parameter, value)
    unit = parameter.slot.unit or PAGE_UNIT.get(type(value), value.unit)
    if isinstance(value, KEEPS_ITS_UNIT) and not parameter.slot.unit:
        unit = value.unit
    page = value.to(unit)
    check_limits(parameter.slot, parameter.label, page.value, unit, value.text)
    if isinstance(value, Length) and abs(value.to("in").value) > LONGEST:
        said = value.text or f"{decimal(value.value, 4)}{SIGNS[value.unit]}"
        raise Refusal(f"the {parameter.label} can't be {said}: no length on a job comes near that, so say it again")
    if isinstance(value, Count) and page.value.denominator != 1:
        raise Refusal(f"the {parameter.label} must be a whole number, not {decimal(page.value, 3)}")
    return Term(parameter.label, page.value, unit)


def _slope(work: Working, parameter: Parameter, pitch: Pitch) -> Slope:
    twelve = Term("12", Fraction(12), "in")
    said = pitch.text or f"{decimal(pitch.value, 3)}{SIGNS[pitch.unit]}"
    if pitch.value < 0:
        raise Refusal(f"a roof pitch can't be negative, and I read {said}: give the rise in 12, like 5 in 12")
    slot = parameter.slot
    if slot.above is not None and pitch.value <= slot.above:
        raise Refusal(
            f"a pitch of {said} is flat, so there is no rake, peak or gable to work: give a pitch over 0 in 12"
        )
    if pitch.unit == "deg":
        if pitch.value >= 76:
            raise Refusal(f"a roof of {said} is steeper than I can take: it must be under 76 degrees")
        angle = Term("roof angle", pitch.value, "deg")
        rise = work.step(parameter.label, 12 * tan(angle), "the roof angle, as rise in 12 of run", unit="in12")
        return Slope(Term(parameter.label, rise.value, "in"), twelve, pitch)
    if pitch.value > STEEPEST:
        raise Refusal(
            f"a pitch of {said} can't be right: the steepest I take is {STEEPEST} in 12, so say the rise in 12 again"
        )
    return Slope(Term(parameter.label, pitch.value, "in"), twelve, pitch)


def check_limits(slot: Slot, label: str, value: Fraction, unit: str, said: str = "") -> None:
    """Raises Refusal, naming what was said and what it must be."""
    sign = SIGNS.get(unit, "")
    said = said or f"{decimal(value, 4)}{sign}"
    for wrong, limit, words in _limits(slot, value):
        if wrong:
            must = f"{words} {decimal(Fraction(limit), 4)}{sign}"
            raise Refusal(f"the {label} can't be {said}: it must be {must}")


def past_limits(slot: Slot, value: Fraction) -> bool:
    """Whether a value, in the page's unit, is one that the slot refuses."""
    return any(wrong for wrong, _, _ in _limits(slot, value))


def _limits(slot: Slot, value: Fraction) -> Iterable[tuple[bool, Any, str]]:
    if slot.above is not None:
        yield value <= slot.above, slot.above, "more than"
    if slot.least is not None:
        yield value < slot.least, slot.least, "at least"
    if slot.below is not None:
        yield value >= slot.below, slot.below, "less than"
    if slot.most is not None:
        yield value > slot.most, slot.most, "at most"
