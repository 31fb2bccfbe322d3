"""What the job is known to be: values remembered once and used where a question leaves them out, saying so."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from assistant.usual import is_usual
from intents.fitting import KINDS, fit
from intents.number_words import TAPE
from intents.reading import Reading
from solvers import quantities
from solvers.binding import STEEPEST, check_limits
from solvers.errors import Refusal
from solvers.quantities import Angle, Length, Money, Percent, Pitch, Quantity
from solvers.registry import Topic
from solvers.slots import Given, Parameter, Slot, displaced


class Facts:
    """Remembered values by name ("pitch", "stock length"); `store` writes one down, None forgets it."""

    def __init__(self, kept: dict[str, Any] | None = None, store: Callable[[str, Any], None] | None = None) -> None:
        self.values: dict[str, Quantity] = {name: unpacked(value) for name, value in (kept or {}).items()}
        self.store = store or (lambda name, value: None)

    def remember(self, name: str, value: Quantity) -> Quantity | None:
        """Keep a value; the one it takes the place of, if there was another."""
        before = self.values.get(name)
        self.values[name] = value
        self.store(name, packed(value))
        return before if before is not None and (before.value, before.unit) != (value.value, value.unit) else None

    def forget(self, name: str) -> bool:
        """Forget a value; whether it was there."""
        known = self.values.pop(name, None) is not None
        if known:
            self.store(name, None)
        return known

    def fill(self, parameters: tuple[Parameter, ...], givens: dict[str, Given], lean: bool = False) -> dict[str, Given]:
        """The givens, with what the job knows for parameters that were not said.

        `lean` leaves out what a question may do without. What answers the same question was said in another way.
        """
        filled = dict(givens)
        settled = displaced(parameters, givens)
        for parameter in parameters:
            kept = parameter.slot.kept
            value = self.values.get(kept, self.values.get(parameter.label)) if kept else None  # a stick that is a board
            if parameter.name in settled or (lean and not parameter.required and parameter.default is None):
                continue
            if parameter.name not in filled and value is not None and isinstance(value, parameter.kind):
                filled[parameter.name] = Given(parameter.name, value, "job")
        return filled


def places(topics: Iterable[Topic]) -> dict[str, Parameter]:
    """Every name that values are kept under, read from the topics, with a parameter that takes it."""
    found: dict[str, Parameter] = {}
    for topic in topics:
        for parameter in topic.parameters:
            if parameter.slot.kept:
                found.setdefault(parameter.slot.kept, parameter)
    return found


_SOLD = ("stock length", "board length")
LEAST_MM = 100  # a bare number under this is no millimetres


def value_for(name: str, readings: Sequence[Reading], known: dict[str, Parameter]) -> Quantity | None:
    """The words of a value as one to keep under a name, or None when they can't be. Raises Refusal past its limits."""
    parameter = known.get(name)
    kinds = [parameter.kind] if parameter else [Length, Pitch, Percent, Angle, Money]
    for kind in kinds if not parameter or parameter.kind in KINDS else ():
        place = parameter or Parameter(name, kind, Slot(name), True)
        takes = KINDS[kind]  # 7/12 is a pitch before it is the number 7/12
        for reading in sorted((r for r in readings if r.kind in takes), key=lambda r: (-r.end, takes.index(r.kind))):
            fitted = fit(reading, place, "", cued=True)
            if fitted is not None and isinstance(fitted.value, Quantity):
                value = _in_its_unit(name, fitted.value, place.slot) if reading.kind == "number" else fitted.value
                _check(name, value, place.slot)
                return replace(value, text="")
    return None


def _in_its_unit(name: str, value: Quantity, slot: Slot) -> Quantity:
    """A length with no unit in millimetres, where it is past what the name is in inches: a stud spacing of 600, a kerf of 3.
    Stock of 4.8 is of metres, since none is sold by tenths of a foot."""
    if name in _SOLD and isinstance(value, Length) and value.unit == "ft" and value.value.denominator not in (1, *TAPE):
        return Length(value.value, "m")
    if not isinstance(value, Length):
        return value
    small = Length(value.value, "mm")
    past = slot.most is not None and value.to("in").value > slot.most and value.value >= LEAST_MM
    odd = slot.usual is not None and not is_usual(slot, value, 1) and is_usual(slot, small, 1)
    return small if past or odd else value


def _check(name: str, value: Quantity, slot: Slot) -> None:
    if isinstance(value, Pitch):
        if value.value < 0 or value.value > (STEEPEST if value.unit == "in12" else 76):
            raise Refusal("a pitch like that can't be right: say the rise in 12 again, like 5 in 12")
        return
    unit = slot.unit or ("in" if isinstance(value, Length) else value.unit)
    check_limits(slot, name, value.to(unit).value, unit)


def packed(value: Quantity) -> dict[str, str]:
    """A quantity as plain JSON."""
    return {"kind": type(value).__name__, "value": str(value.value), "unit": value.unit, "text": value.text}


def unpacked(data: dict[str, str]) -> Quantity:
    """The quantity back."""
    kind: type[Quantity] = getattr(quantities, data["kind"])
    return kind(Fraction(data["value"]), data["unit"], data["text"])
