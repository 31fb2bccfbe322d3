"""Ways to give the quantities that no words place to the parameters still open, by dimension and in the order said."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from intents.question import Heard
from solvers.slots import Parameter

MOST_SWAPS = 6
MOST_LOOSE = 6  # quantities with no word beside them that are tried in every place; who says more has to name them


def in_order(way: dict[str, int], takers: list[Parameter], fits: dict[tuple[int, str], Heard]) -> bool:
    """Whether what is always more than something else is so: the total of a trim and a stick of it."""
    for parameter in takers:
        name, less = parameter.name, parameter.slot.over
        if name in way and less in way:
            greater, smaller = fits[way[name], name].value, fits[way[less], less].value
            if greater.to("in").value <= smaller.to("in").value:
                return False
    return True


def ways_of(usable: list[int], names: list[str], fits: dict[tuple[int, str], Heard]) -> list[dict[str, int]]:
    """Ways to give the readings to different parameters, in spoken order first; only the fullest count."""
    for count in range(min(len(usable), len(names), MOST_LOOSE), 0, -1):
        found = list(islice(_full_ways(usable[:count], names, fits), MOST_SWAPS))
        if found:
            return found
    return []


def _full_ways(readings: list[int], names: list[str], fits: dict[tuple[int, str], Heard]) -> Iterator[dict[str, int]]:
    """Every way to give each reading a parameter of its own."""
    if not readings:
        yield {}
        return
    first, *rest = readings
    for name in names:
        if (first, name) in fits:
            for way in _full_ways(rest, [other for other in names if other != name], fits):
                yield {name: first, **way}
