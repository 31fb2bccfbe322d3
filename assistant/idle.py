"""What was said, has its place, and changes nothing: the count beside a length that is priced by the foot.

Every number that a person says, they say for a reason. Where the page would be the same without one, either the
number was put in the wrong place or the question is about more than the page works; both are asked about.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.pending import Asked
from assistant.several import worked_out
from solvers.quantities import Count, Quantity
from solvers.registry import Worked
from solvers.slots import Parameter
from solvers.working import Working


def of_no_effect(asked: Asked, worked: Worked) -> list[str]:
    """The quantities of this line, as they were said, without which the page would be word for word the same."""
    idle = []
    for name, given in asked.givens.items():
        parameter = asked.topic.parameter(name)
        if given.source != "asked" or not _counts(given.value) or not _may_be_left_out(parameter):
            continue
        others = {other: kept for other, kept in asked.givens.items() if other != name}
        without = worked_out(asked, others)
        if worked.working is not None and without.working is not None and _same_page(without.working, worked.working):
            idle += [] if _otherwise_matters(asked, name, worked.working) else [given.value.text]
    return idle


def _otherwise_matters(asked: Asked, name: str, page: Working) -> bool:
    """Whether twice as much would change the page: it only says what is taken where nothing is said (marks every eighth)."""
    given = asked.givens[name]
    twice = replace(given, value=replace(given.value, value=given.value.value * 2))
    other = worked_out(asked, {**asked.givens, name: twice})
    return other.working is not None and not _same_page(other.working, page)


def _counts(value: object) -> bool:
    """Whether it is a quantity that must matter; "in one piece" counts nothing."""
    return isinstance(value, Quantity) and not (isinstance(value, Count) and value.value == 1)


def _may_be_left_out(parameter: Parameter) -> bool:
    """Whether a topic does without it, taking nothing in its stead: what is said of a default confirms it."""
    optional = not parameter.required or bool(parameter.slot.unless)
    return optional and parameter.default is None and not parameter.slot.quiet


def _same_page(one: Working, other: Working) -> bool:
    """Whether a person would see the same; the steps, which take longest to write out, last."""
    return _values(one) == _values(other) and one.cautions == other.cautions and one.same_steps(other)


def _values(working: Working) -> list[tuple[str, str]]:
    lines = (*([working.result] if working.result else []), *working.also_lines, *working.marks)
    return [(line.name, line.text) for line in lines]
