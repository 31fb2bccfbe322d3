"""The average of sizes told one by one: "118 5/8, 118 9/16 and 118 3/4, what's the average of those".

Read only where the line tells sizes alone, and asks for their average; how many there are may be told too ("measured it
three times").
"""

from __future__ import annotations

from fractions import Fraction
from functools import reduce

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.sum_outlines import Line, line_of, whole_line
from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, PLUS, Part, Sum, plain_size, told_as_length

AVERAGE = frozenset("average averages averaged averaging mean halfway midway".split())
_ASKED = expression(  # and not what a wall averages, nor what is so on average
    r"\baverage of\b|\b(?:what is|what|whats|the|their) average\b|^average\b|(?<!\bon )(?<!\ban )\baveraged?(?= [?.,;]|$)"
    r"|\bthe mean\b|\bwhat is (?:halfway|midway)\b"
)
_KNOWN = expression(r"\baverages?(?: \w+){0,3}? (?:is|are|was|were) Q")  # the average rainfall is 40 inches
_TIMES = expression(
    r"Q(?= (?:times|ways|goes|places|spots|readings|measurements|pulls|numbers|sizes|of (?:them|those|these))\b)"
    r"|\bthe Q(?= [,:;.])|\b(?:the|all|them) Q$|\ball Q"
)
_OTHERS = frozenset(
    "exposure course courses gable pitch roof stud studs centres squares area price cost weigh each day days hour hours gap gaps"
    " spacing".split()
)
FEWEST = 2
APART = Fraction(3, 2)


def averaged(chart: Chart) -> Question | None:
    """The sizes of a line that asks for their average, added and shared by how many they are."""
    said = frozenset(chart.words)
    if said.isdisjoint(AVERAGE) or not said.isdisjoint(_OTHERS):
        return None
    line = line_of(chart)
    sizes = _sizes(line) if line is not None and _ASKED.search(line.words) and not _KNOWN.search(line.words) else []
    if len(sizes) < FEWEST or not any(told_as_length(size) for size in sizes) or not _alike(sizes):
        return None
    whole = Sum(DIVIDED, reduce(lambda so_far, size: Sum(PLUS, so_far, size), sizes), Number(Fraction(len(sizes)), "none"))
    return whole_line(chart, whole, sorted(said & AVERAGE))


def _alike(sizes: list[Part]) -> bool:
    """Whether all are readings of one thing: near each other in size, those with a unit and those with none apart."""
    for kind in (Length, Number):
        values = [plain_size(size) for size in sizes if isinstance(size, kind)]
        if values and max(values) > APART * min(values):
            return False
    return True


def _sizes(line: Line) -> list[Part]:
    """What is averaged: all but how many they are; nothing where another count is told."""
    counts = {line.words[: found.end() - 1].count("Q") for found in _TIMES.finditer(line.words)}
    sizes = [part for at, part in enumerate(line.parts) if at not in counts]
    told = {line.parts[at].value for at in counts if isinstance(line.parts[at], Number)}  # type: ignore[union-attr]
    return sizes if told <= {len(sizes)} else []
