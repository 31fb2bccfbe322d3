"""Each number after its name, in a row: "length 18 exposure 7", "board length 12, exposure 6, area 300".

Between two numbers a name could go with either; where the row begins with a name and no name ends it, each is of the number
after it.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.listed_totals import AMOUNTS
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.slots import Parameter

_NAMES = frozenset(
    "exposure length spacing pitch width height cover stock depth lap run rise area parts pieces courses slope".split()
)
_CALLED = {"rafter": "slope", "rafters": "slope", "hypotenuse": "slope", "hyp": "slope"}  # of a triangle's sides
_TOPICS = AMOUNTS | {"right triangle", "gable courses", "equal spacing", "marks on centre", "step at the rake", "balanced panels"}
_HEIGHTS = frozenset("sill head top bottom".split())  # of a window and its wall
_POLE = "courses to openings"
_IS = frozenset(("is", "of", "=", ":", "at"))
_LEAST = 2  # numbers of such a row


def by_labels(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the first question's numbers to the parameters whose names stand before them, where all of them are so told."""
    question = next(iter(questions), None)
    pole = question is not None and question.topic == _POLE
    if question is None or not (pole or question.topic in _TOPICS):
        return
    if sum(word in _HEIGHTS if pole else word in _NAMES or word in _CALLED for word in chart.words) < _LEAST:
        return
    parameters = topics.get(question.topic, ())
    row = _row(chart)
    named = [_named(chart, reading, parameters) for reading in row]
    if len(row) < _LEAST or not all(named) or len({p.name for p in named if p}) < len(named):
        return
    led = pole and all(reading.start and chart.words[reading.start - 1] in _IS for reading in row)  # sill at 35, head at 83
    if not led and row[-1].end < len(chart.words) and chart.words[row[-1].end] in _NAMES | _HEIGHTS:
        return  # 40 length 16 spacing
    givens: dict[str, Heard] = {}
    for reading, parameter in zip(row, named, strict=True):
        heard = heard_as(chart, parameter, reading, True)
        if heard is None or parameter is None:
            return
        givens[parameter.name] = heard
    places = [(chart.tokens[r.start].start, chart.tokens[r.end - 1].end) for r in row]
    others = {n: h for n, h in question.givens.items() if not any(h.start < end and start < h.end for start, end in places)}
    if all(name in question.givens and question.givens[name].value == heard.value for name, heard in givens.items()):
        return
    question.givens = {**others, **givens}
    question.missing = [p.name for p in parameters if p.required and p.name not in question.givens]
    question.unplaced, question.swaps, question.rival = [], [], False


def _row(chart: Chart) -> list[Reading]:
    return [r for r in quantities(chart, 0, len(chart.words)) if r.kind in ("number", "length", "pitch", "area")]


def _named(chart: Chart, reading: Reading, parameters: tuple[Parameter, ...]) -> Parameter | None:
    """The one parameter whose name stands right before a number."""
    at = reading.start - (reading.start > 0 and chart.words[reading.start - 1] in _IS)
    for words in (2, 1):
        said = " ".join(_CALLED.get(word, word) for word in chart.words[max(0, at - words) : at])
        exact = [p for p in parameters if p.label == said]
        found = exact or [p for p in parameters if p.required and words == 1 and said in p.label.split()]
        if len(found) == 1 and said:
            return found[0]
    return None
