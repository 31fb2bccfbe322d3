"""Sizes of two sides as they are said, "36 by 48", and the two quantities of a topic that one of them is."""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard
from intents.reading import Dims, Reading
from solvers.slots import Parameter


def two_sided(chart: Chart) -> list[Reading]:
    """The sizes of two sides, the surest one at each place."""
    found = [r for row in chart.readings for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2]
    return [*{(r.start, r.end): r for r in sorted(found, key=lambda r: r.sure)}.values()]


def sides_as(chart: Chart, size: Reading, names: tuple[str, ...], parameters: Mapping[str, Parameter]) -> dict[str, Heard]:
    """The two sides as the parameters of those names; nothing where one of them can't be."""
    assert isinstance(size.value, Dims)
    heard = [heard_as(chart, parameters[name], part, True) for name, part in zip(names, size.value.parts, strict=True)]
    given = {name: each for name, each in zip(names, heard, strict=True) if each is not None}
    return given if len(given) == len(names) else {}
