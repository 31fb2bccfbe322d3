"""What the job is known to be: values remembered once and used where a question leaves them out, saying so."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import Any

from solvers import quantities
from solvers.quantities import Quantity
from solvers.slots import Given, Parameter


class Facts:
    """Remembered values by name ("pitch", "stock length"); `store` writes one down, None forgets it."""

    def __init__(self, kept: dict[str, Any] | None = None, store: Callable[[str, Any], None] | None = None) -> None:
        self.values: dict[str, Quantity] = {name: unpacked(value) for name, value in (kept or {}).items()}
        self.store = store or (lambda name, value: None)

    def remember(self, name: str, value: Quantity) -> None:
        self.values[name] = value
        self.store(name, packed(value))

    def forget(self, name: str) -> bool:
        """Forget a value; whether it was there."""
        known = self.values.pop(name, None) is not None
        if known:
            self.store(name, None)
        return known

    def fill(self, parameters: tuple[Parameter, ...], givens: dict[str, Given]) -> dict[str, Given]:
        """The givens, with what the job knows for parameters that were not said."""
        filled = dict(givens)
        for parameter in parameters:
            value = self.values.get(parameter.slot.kept) if parameter.slot.kept else None
            if parameter.name not in filled and value is not None and isinstance(value, parameter.kind):
                filled[parameter.name] = Given(parameter.name, value, "job")
        return filled


def packed(value: Quantity) -> dict[str, str]:
    """A quantity as plain JSON."""
    return {"kind": type(value).__name__, "value": str(value.value), "unit": value.unit, "text": value.text}


def unpacked(data: dict[str, str]) -> Quantity:
    """The quantity back."""
    kind: type[Quantity] = getattr(quantities, data["kind"])
    return kind(Fraction(data["value"]), data["unit"], data["text"])
