"""The topics, read from their functions' signatures: what each needs, what it assumes, what it asks.

    @topic("rake return", "corners")
    def rake_return(work: Working, pitch: RoofPitch, fascia: Fascia = Fascia.PLUMB) -> None: ...

A parameter's type says what to look for, its Slot what to ask when it is missing; a default is an assumption and is
named as one in the answer.
"""

from __future__ import annotations

import inspect
import pkgutil
import types
import typing
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from enum import Enum
from fractions import Fraction
from functools import cache, lru_cache
from importlib import import_module
from typing import Annotated, Any, get_args, get_origin, get_type_hints

from solvers.binding import bind
from solvers.errors import NeedMore, NotSure, Refusal
from solvers.quantities import Area, Length, Quantity
from solvers.rounding import SIXTEENTH
from solvers.slots import Given, Parameter, Slot, displaced
from solvers.working import Working

FAMILIES = "solvers.topics"


@dataclass(frozen=True, slots=True)
class Topic:
    """One thing the assistant can work out."""

    name: str
    family: str
    work: Callable[..., None]
    parameters: tuple[Parameter, ...]

    @property
    def summary(self) -> str:
        """The first line of the function's docstring."""
        return (self.work.__doc__ or "").strip().splitlines()[0]

    def parameter(self, name: str) -> Parameter:
        return next(p for p in self.parameters if p.name == name)


@dataclass(slots=True)
class Worked:
    """What came of working a topic: exactly one of `working`, `refused` and `asks` is set."""

    topic: Topic
    givens: list[Given]
    working: Working | None = None
    refused: str = ""
    asks: str = ""
    wanted: str = ""  # the parameter that `asks` asks for


@dataclass(slots=True)
class Registry:
    """Topics by name, in the order they were declared."""

    topics: dict[str, Topic] = field(default_factory=dict)

    def topic(self, name: str, family: str) -> Callable[[Callable[..., None]], Callable[..., None]]:
        """Register a function as the topic `name` of a family (one grammar file)."""

        def register(function: Callable[..., None]) -> Callable[..., None]:
            if name in self.topics:
                raise ValueError(f"two topics are called {name}")
            self.topics[name] = Topic(name, family, function, tuple(_parameters(function)))
            return function

        return register


REGISTRY = Registry()
topic = REGISTRY.topic


@cache
def load_topics() -> dict[str, Topic]:
    """All topics, by name; imports every module of solvers.topics once."""
    package = import_module(FAMILIES)
    for module in pkgutil.iter_modules(package.__path__):
        import_module(f"{FAMILIES}.{module.name}")
    return REGISTRY.topics


def _parameters(function: Callable[..., None]) -> Iterable[Parameter]:
    hints = get_type_hints(function, include_extras=True)
    for name, parameter in list(inspect.signature(function).parameters.items())[1:]:
        kind, slot = _kind(hints[name], function, name)
        empty = parameter.default is inspect.Parameter.empty
        yield Parameter(name, kind, slot, empty or bool(slot.unless), None if empty else parameter.default)


def _kind(hint: Any, function: Callable[..., None], name: str) -> tuple[type, Slot]:
    slot = Slot(f"What is the {name.replace('_', ' ')}?")
    if get_origin(hint) in (typing.Union, types.UnionType):
        hint = next(part for part in get_args(hint) if part is not type(None))
    if get_origin(hint) is Annotated:
        hint, *extras = get_args(hint)
        slot = next((extra for extra in extras if isinstance(extra, Slot)), slot)
    if get_origin(hint) in (typing.Union, types.UnionType):
        hint = next(part for part in get_args(hint) if part is not type(None))
    if get_origin(hint) is tuple:
        return tuple, slot
    if not isinstance(hint, type):
        raise TypeError(f"{function.__name__}: {name} has no type a topic can look for")
    return hint, slot


def work_out(
    topic: Topic, givens: dict[str, Given], tape_step: Fraction = SIXTEENTH, metric: bool | None = None
) -> Worked:
    """Work a topic with what is given. `metric` None follows the givens: all lengths metric gives metric out."""
    known, missing = _complete(topic, givens)
    if missing:
        return Worked(topic, known, asks=missing.slot.ask, wanted=missing.name)
    return _outcome(topic, tuple(known), tape_step, _all_metric(known) if metric is None else metric)


@lru_cache(maxsize=64)
def _outcome(topic: Topic, known: tuple[Given, ...], tape_step: Fraction, metric: bool) -> Worked:
    """Kept for a while, since one line is often worked again, to compare the ways it could be read."""
    worked, working = Worked(topic, list(known)), Working(tape_step, metric)
    try:
        topic.work(working, **bind(working, topic.parameters, worked.givens))
        working.finished()
        worked.working = working
    except Refusal as refusal:
        worked.refused = str(refusal)
    except NeedMore as need:
        worked.wanted = need.parameter
        worked.asks = need.question or topic.parameter(need.parameter).slot.ask
    except NotSure as doubt:
        worked.refused = f"my own check does not hold ({doubt}), so I give no number: measure again and ask again"
    except ZeroDivisionError:
        worked.refused = "that divides by zero, so no number can be right: check what you gave me"
    return worked


def _complete(topic: Topic, givens: dict[str, Given]) -> tuple[list[Given], Parameter | None]:
    """The givens in the order of the signature, defaults added as assumptions, and the first that is missing.

    What is told another way needs no default.
    """
    known: list[Given] = []
    told = displaced(topic.parameters, givens)
    missing: Parameter | None = None
    for parameter in topic.parameters:
        given = givens.get(parameter.name)
        if given is not None:
            known.append(replace(given, name=parameter.name))
        elif not parameter.required:
            beside = parameter.slot.beside
            assumed = parameter.default is not None and (not beside or beside in givens)
            if assumed and parameter.name not in told:
                known.append(Given(parameter.name, parameter.default, "assumed"))
        elif missing is None and parameter.lacks(givens):
            missing = parameter
    return known, missing


def _all_metric(givens: list[Given]) -> bool:
    """Whether every measure that was asked with a unit was metric, and at least one was."""
    units = [unit for given in givens if given.source != "assumed" for unit in _units(given.value)]
    return bool(units) and all(unit in ("mm", "cm", "m", "m2") for unit in units)


def _units(value: Any) -> Iterable[str]:
    if isinstance(value, Length | Area):
        if value.value:  # no kerf is of no unit
            yield value.unit
    elif isinstance(value, tuple):
        for part in value:
            yield from _units(part)
    elif hasattr(value, "__dataclass_fields__") and not isinstance(value, Quantity | Enum):
        for name in value.__dataclass_fields__:
            yield from _units(getattr(value, name))
