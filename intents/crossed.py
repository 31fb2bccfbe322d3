"""Sizes that their units say were handed out the wrong way round: a wall 40 inches long, and a roll 48 wide with no unit said.

Walls are told in feet and rolls in inches, so a number with no unit goes to the one and inches to the other. Where it came
out the other way, both ways go on and the conversation asks.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from intents.placing import possible
from intents.question import Heard, Question
from solvers.quantities import Length
from solvers.slots import Parameter


def crossed(question: Question, parameters: tuple[Parameter, ...]) -> dict[str, Heard] | None:
    """The question's givens with two lengths exchanged, where each is then told in the unit people tell it in."""
    by_name = {parameter.name: parameter for parameter in parameters}
    feet = [*_told(question, by_name, "in", ("ft",))]
    for name, heard in feet:
        for other, bare in _told(question, by_name, "", ("in",)):
            long = Length(bare.value.value, "ft", bare.text)
            if possible(by_name[name], long) == possible(by_name[other], heard.value) == 1:
                return {**question.givens, name: replace(bare, value=long), other: heard}
    return None


def _told(
    question: Question, by_name: dict[str, Parameter], unit: str, usual: tuple[str, ...]
) -> Iterator[tuple[str, Heard]]:  # fmt: skip
    """The lengths said in inches (`unit`), or with no unit and taken for inches (""), whose parameter is told in `usual`."""
    for name, heard in question.givens.items():
        parameter = by_name.get(name)
        if parameter is None or not isinstance(heard.value, Length) or heard.value.unit != "in":
            continue
        takes = parameter.slot.bare or ("in",)
        if heard.bare != bool(unit) and (takes == usual or (heard.bare and "in" in takes)):
            yield name, heard
