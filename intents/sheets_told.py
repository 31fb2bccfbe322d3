"""Which size is a sheet's and which the wall's: "plasterboard 2400 by 1200, 30 square metres", "48 x 96 sheets over 30 by 10".

A sheet comes 2 to 5 ft wide and 6 1/2 to 16 ft long, half as long again as wide at least; what it has to cover is larger.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from intents.chart import Chart
from intents.question import Question
from intents.reading import Dims, Reading
from intents.two_sided import sides_as, two_sided
from intents.wall_sizes import LONGEST, SHORTEST, TALLEST, WALL
from solvers.quantities import Length, Quantity
from solvers.slots import Parameter

SHEETS = "sheets"
_WIDTHS, _LENGTHS, _LONGER = (1.9, 5.1), (6.5, 16.5), 1.5  # ft, ft, and how much longer than wide
_SIZE = ("sheet_width", "sheet_length")
_ARE, _ASKED = frozenset("are come were is".split()), frozenset("many need needed order buy count number".split())
_PLANS = frozenset("room bedroom garage shed house building cabin barn attic basement".split())  # whose size is of no wall
_FACE = frozenset(("area", *WALL, "gable_height", "pitch"))


def sheets_told(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the sizes said of the first question to its sheets and to its wall, where it is plain which is which."""
    question = next(iter(questions), None)
    if question is None or question.topic != SHEETS:
        return
    if len(questions) > 1 and _told_only(chart.words):
        questions.pop(0)
        return
    parameters = {p.name: p for p in topics[SHEETS]}
    sizes = _sizes(chart)
    taken = [range(each.start, each.end) for name, each in question.givens.items() if name not in (*_SIZE, *WALL)]
    free = [r for r in sizes if not any(chart.tokens[r.start].start in place for place in taken)]
    open_sizes = [r for r in free if _PLANS.isdisjoint((*chart.words[max(0, r.start - 2) : r.start], *chart.words[r.end :][:2]))]
    sheets = [r for r in open_sizes if _like_a_sheet(r)]
    walls = [r for r in open_sizes if r not in sheets]
    if len(sheets) == 1 and not _says(chart, question, sheets[0], _SIZE):
        _move(chart, question, sheets[0], _SIZE, parameters)
    if len(walls) == 1 and _FACE.isdisjoint(question.givens) and _as_a_wall(walls[0]):  # osb, 24 by 16
        _move(chart, question, walls[0], WALL, parameters)


def _told_only(words: list[str]) -> bool:
    """Whether it is told how large the sheets are, and nobody asks for any: flooring sheets are 2.4 by 1.2."""
    told = any(word == "sheets" and after in _ARE for word, after in pairwise(words))
    return told and _ASKED.isdisjoint(words)


def _sizes(chart: Chart) -> list[Reading]:
    best = two_sided(chart)
    return [r for r in best if not any(o.start <= r.start and r.end <= o.end and o is not r for o in best)]


def _feet(reading: Reading) -> list[list[float]]:
    """What the two sides may be in feet: as said, or where no unit was said, feet, inches or millimetres."""
    assert isinstance(reading.value, Dims)
    sides = [part.value for part in reading.value.parts]
    lengths = [side for side in sides if isinstance(side, Length)]
    if len(lengths) == len(sides):
        return [[float(length.to("ft").value) for length in lengths]]
    numbers = [float(side.value) for side in sides if isinstance(side, Quantity)]
    return [[number * each for number in numbers] for each in (1, 1 / 12, 1 / 304.8)]


def _like_a_sheet(reading: Reading) -> bool:
    return any(
        _WIDTHS[0] <= min(sides) <= _WIDTHS[1] and _LENGTHS[0] <= max(sides) <= _LENGTHS[1] and max(sides) >= _LONGER * min(sides)
        for sides in _feet(reading)
    )


def _as_a_wall(reading: Reading) -> bool:
    return any(min(sides) >= SHORTEST and sides[1] <= TALLEST and sides[0] <= LONGEST for sides in _feet(reading))


def _says(chart: Chart, question: Question, reading: Reading, names: tuple[str, ...]) -> bool:
    """Whether those parameters have the size already."""
    places = range(chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end)
    return all(name in question.givens and question.givens[name].start in places for name in names)


def _move(
    chart: Chart, question: Question, reading: Reading, names: tuple[str, ...], parameters: Mapping[str, Parameter]
) -> None:
    """Give a size to two parameters, and take it from whichever had it."""
    given = sides_as(chart, reading, names, parameters)
    if not given:
        return
    places = range(chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end)
    kept = {name: each for name, each in question.givens.items() if each.start not in places}
    said = chart.said(reading.start, reading.end)
    question.givens, question.swaps, question.rival = {**kept, **given}, [], False
    question.unplaced = [text for text in question.unplaced if text not in said]
