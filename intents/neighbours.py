"""A length that no word of its topic placed, right after the name of another thing: it may be of that thing."""

from __future__ import annotations

from intents.chart import LIGHT, Chart
from intents.phrases import Phrases
from intents.placing import Placed
from intents.question import Heard
from solvers.quantities import Length
from solvers.slots import Parameter

MOST_BETWEEN = 2  # small words between a name and its size: "window is at 36 in"
# Things with a size of their own that people mention beside a question about something else.
THINGS = frozenset(
    "window windows door doors ladder ladders exposure reveal overhang eave kerf board boards siding cladding".split()
)


def of_something_else(
    chart: Chart, phrases: Phrases, placed: Placed, parameters: tuple[Parameter, ...]
) -> list[str]:  # fmt: skip
    """The lengths with no role from their topic, as they were said, that stand after another thing's name."""
    if not placed.loosely:
        return []
    small = phrases.fillers | LIGHT
    own = {p.name: f"{p.label} {p.slot.ask} {p.slot.kept or ''}".lower() for p in parameters if p.name in placed.loosely}
    found = ((name, heard) for name, heard in placed.givens.items() if name in placed.loosely)
    return [
        heard.text
        for name, heard in found
        if isinstance(heard.value, Length) and (thing := _thing(chart, small, placed.covered, heard))
        and thing.removesuffix("s") not in own[name]
    ]  # fmt: skip


def _thing(chart: Chart, small: frozenset[str], covered: int, heard: Heard) -> str:
    """The name of a thing that stands before a length and that the topic has no use for, or nothing."""
    before = max((i for i, token in enumerate(chart.tokens) if token.end <= heard.start), default=-1)
    for _ in range(MOST_BETWEEN):
        if before >= 0 and chart.words[before] in small:
            before -= 1
    unused = before >= 0 and not covered >> before & 1
    return chart.words[before] if unused and chart.words[before] in THINGS else ""
