"""A wall asked backwards: how long it is, by its area and its height, or how high by its length.

"Wall area 360 and it's 9 high, how long is it": the area is no side of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart, quantities
from intents.counted_line import Told, counted_line, heard, settle
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Area, Length, Number
from solvers.slots import Parameter

TOPIC = "side of a wall"
_WALLS, _AREAS = frozenset("wall walls".split()), frozenset("area areas".split())
_OTHERS = frozenset(
    "gable gables roof roofs board boards exposure panels panel rolls roll pitch rake soffit courses course strapping straps"
    " window windows door doors opening openings less minus".split()
)
_GABLES = frozenset(("gable", "gables"))  # which are no rectangles
_LONG, _HIGH = frozenset("long wide length width run runs".split()), frozenset("high tall height up".split())
_IS = frozenset("is of a an the = : 's at about and it".split())
_SCORE = 3.0  # of a reading that only these words make
_TWO = 2


def wall_side(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for the side of a wall, where its area and the other side are all that is told."""
    words = chart.words
    if TOPIC not in topics or not _OTHERS.isdisjoint(words) or (_WALLS.isdisjoint(words) and _AREAS.isdisjoint(words)):
        return
    asked = _asked(words)
    if not asked:
        return
    said = [*quantities(chart, 0, len(words))]
    areas = [reading for reading in said if _is_area(words, reading)]
    sides = [reading for reading in said if reading not in areas]
    if len(said) != _TWO or len(areas) != 1 or not isinstance(sides[0].value, Length | Number):
        return
    name = _side(words, sides[0])
    places = {parameter.name: parameter for parameter in topics[TOPIC]}
    givens: dict[str, Heard | None] = {"area": heard_as(chart, places["area"], areas[0], True)}
    if name and name != asked:
        givens[name] = heard_as(chart, places[name], sides[0], True)
    if len(givens) == _TWO and None not in givens.values():
        questions[:] = [Question(TOPIC, givens, _SCORE, words=["how", "wall"])]  # type: ignore[arg-type]


def side_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give the area of a wall and its one side their places, where only those are told: a square and a half, twelve foot long."""
    words = chart.words
    several = any(r.kind == "number" and words[r.end : r.end + 1] == ["walls"] for r in quantities(chart, 0, len(words)))
    if several or not _GABLES.isdisjoint(words):
        question.lacking = question.lacking or 1
        return
    line, asked = counted_line(chart), _asked(words) or _asked_shortly(words)
    if line is None or len(line.told) != _TWO or not asked:
        return
    area, side = sorted(line.told, key=lambda one: one.kind != "area")
    if area.kind != "area" or side.kind != "length" or _side(line.words, side) == asked:
        return
    name = "height" if asked == "length" else "length"
    settle(question, {"area": heard(chart, area, Area, area.unit), name: heard(chart, side, Length, side.unit)})


def _asked(words: list[str]) -> str:
    """Which side is asked for: how long, how high."""
    after = [word for before, word in pairwise(words) if before in ("how", "what")]
    sides = {"length" if word in _LONG else "height" if word in _HIGH else "" for word in after} - {""}
    return sides.pop() if len(sides) == 1 else ""


def _asked_shortly(words: list[str]) -> str:
    """Which side is asked for by its name alone at the end, or by how far it goes: 450 sq ft, total length."""
    last = next((word for word in reversed(words) if word.isalpha()), "")
    far = ("how", "far") in pairwise(words) and "up" not in words
    return "length" if far or last == "length" else "height" if last in ("height", "high") else ""


def _is_area(words: list[str], reading: Reading) -> bool:
    """Whether a number is told as an area: 360 square feet, area is 360."""
    at = reading.start
    while at and words[at - 1] in _IS:
        at -= 1
    return isinstance(reading.value, Area) or (isinstance(reading.value, Number) and words[max(0, at - 1)] in _AREAS)


def _side(words: list[str], reading: Reading | Told) -> str:
    """Which side a number is by the word right after it, or else right before."""
    at = reading.start
    while at and words[at - 1] in _IS:
        at -= 1
    for near in (words[reading.end : reading.end + 1], words[max(0, at - 1) : at]):
        if near and near[0] in _HIGH | _LONG:
            return "height" if near[0] in _HIGH else "length"
    return ""
