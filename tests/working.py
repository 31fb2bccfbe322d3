"""Topics called directly, past the words: quantities written short, the values that came back by name."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from typing import Any

from solvers.quantities import Angle, Area, Count, Length, Money, Number, Percent, Pitch, Quantity, Ratio
from solvers.registry import Worked, load_topics, work_out
from solvers.slots import Given

UNITS: dict[str, type[Quantity]] = {
    "in": Length, "ft": Length, "mm": Length, "cm": Length, "m": Length, "deg": Angle, "ft2": Area, "square": Area,
    "m2": Area, "percent": Percent, "count": Count, "in12": Pitch, "none": Number, "ratio": Ratio, "money": Money,
}  # fmt: skip


def quantity(text: str) -> Quantity:
    """`"5 in12"`, `"3 1/2 in"`, `"90 deg"`: a value and a unit of the record."""
    value, unit = text.rsplit(" ", 1)
    return UNITS[unit](sum((Fraction(part) for part in value.split()), Fraction(0)), unit)


def _meant(value: Any, kind: type) -> Any:
    if not isinstance(value, str):
        return value
    said = quantity(value)
    return Pitch(said.value, said.unit) if kind is Pitch else said


def work(topic: str, **givens: Any) -> Worked:
    """A topic worked with these givens; strings are quantities, `pitch="30 deg"` is a pitch said as an angle."""
    topics = load_topics()
    known: dict[str, Given] = {}
    for name, value in givens.items():
        kind = topics[topic].parameter(name).kind
        meant = _meant(value, kind)
        assert isinstance(meant, (Enum, tuple, kind)), (name, meant)
        known[name] = Given(name, meant)
    return work_out(topics[topic], known)


def answer(topic: str, **givens: Any) -> float:
    """The primary value, unrounded."""
    worked = work(topic, **givens)
    assert worked.working is not None, worked.refused or worked.asks
    result = worked.working.result
    assert result is not None and result.value is not None
    return float(result.value)


def also(worked: Worked, name: str) -> float:
    """One of the values beside the answer."""
    assert worked.working is not None, worked.refused or worked.asks
    line = next(line for line in worked.working.also_lines if line.name == name)
    assert line.value is not None
    return float(line.value)
