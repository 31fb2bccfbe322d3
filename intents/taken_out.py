"""What comes out of a wall, told as an area: "78 sf out", "less 85 sf", "the doors and windows are 212 of it".

Beside a wall of so much by so much, or beside the area of all the walls, such an area is what is open, and nothing else.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Dims
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from solvers.quantities import Area
from solvers.slots import Parameter

WALL = "wall area"
_BEFORE = frozenset("less minus deduct subtract take taking knock deducting".split())
_AFTER = frozenset("out off open openings opening glass holes windows doors deducted taken".split())
_OF_THEM = frozenset("opening openings window windows door doors glass holes glazing".split())
_SMALL = frozenset("of is are for in the a to come comes add up total it all off out".split())
_WALLS = frozenset("wall walls gross sides elevations faces house everything".split())
_AREAS = frozenset("sf sqft sqm m2 ft2 square sq".split())
_REACH = 3
LEAST_SURE = 0.9


def taken_out(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Put the areas of the first question where their words tell they belong."""
    question = next((q for q in questions if q.topic == WALL or "area" in q.givens), None)
    if question is None:
        return
    if question.topic == WALL or not question.plain:
        _of_all_walls(chart, questions, topics)
    givens = question.givens
    if question.topic == WALL and "faces" in givens and "opened" not in givens and len(question.unplaced) == 1:
        _left_open(chart, question, topics)
    _faces_put_in(chart, question, topics)
    area, sized = givens.get("area"), {"wall_length", "wall_height"} <= givens.keys() and "opened" not in givens
    if sized and area is not None and isinstance(area.value, Area) and _comes_out(chart, area):
        question.givens["opened"] = question.givens.pop("area")
        question.swaps = []


def _left_open(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Beside walls told one by one, the area that found no place and comes out: and 90 square feet of holes."""
    opened = next(p for p in topics[WALL] if p.name == "opened")
    for reading in quantities(chart, 0, len(chart.words)):
        said = chart.said(reading.start, reading.end) == question.unplaced[0]
        if said and isinstance(reading.value, Area) and comes_out(chart.words, reading.start, reading.end):
            heard = heard_as(chart, opened, reading, True)
            if heard is not None:
                question.givens["opened"], question.unplaced = heard, []
                return


def _faces_put_in(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the wall its sizes where they were left over beside an area that comes out: 28' by 10', 78 sf out."""
    area = question.givens.get("area")
    if len(question.unplaced) != 1 or area is None:
        return
    parameters = {p.name: p for p in topics.get(question.topic, ())}
    if not {"wall_length", "wall_height"} <= parameters.keys() - question.givens.keys():
        return
    pairs = (r for row in chart.readings for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2)
    faces = [r for r in pairs if r.sure >= LEAST_SURE and chart.said(r.start, r.end) == question.unplaced[0]]
    if not faces or not _comes_out(chart, area):
        return
    sizes = zip(("wall_length", "wall_height"), faces[0].value.parts, strict=True)  # type: ignore[union-attr]
    heard = {name: heard_as(chart, parameters[name], part, True) for name, part in sizes}
    if all(heard.values()):
        question.givens.update(heard)  # type: ignore[arg-type]
        question.unplaced = []


def _of_all_walls(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """The walls come to so much, and so much of it is open: what is left is asked."""
    walls = next((q for q in questions if q.topic == WALL), None)
    first = questions[0]
    if walls is None or walls.plain or _WALLS.isdisjoint(chart.words):
        return
    if first is not walls and first.topic != "cost" and not _how_much(chart.words):
        return
    sizes = list(quantities(chart, 0, len(chart.words)))
    out = [r for r in sizes if comes_out(chart.words, r.start, r.end) and (r.kind == "number" or isinstance(r.value, Area))]
    areas = [r for r in sizes if isinstance(r.value, Area) and r.sure >= LEAST_SURE and r not in out]
    if len(areas) != 1 or len(out) != 1 or len(sizes) != 2:
        return
    by_name = {p.name: p for p in topics[WALL]}
    faces, opened = heard_as(chart, by_name["faces"], areas[0], True), heard_as(chart, by_name["opened"], out[0], True)
    if faces is not None and opened is not None:
        walls.givens = {"faces": faces, "opened": opened}
        walls.missing, walls.unplaced, walls.swaps, walls.score = [], [], [], max(walls.score, first.score)
        questions[:] = [walls]


def _how_much(words: list[str]) -> bool:
    """Whether an area is asked: how many sf, how many square metres."""
    at = next((at for at, word in enumerate(words) if word in ("many", "much")), len(words))
    return not _AREAS.isdisjoint(words[at + 1 : at + 3])


def _comes_out(chart: Chart, heard: Heard) -> bool:
    return comes_out(chart.words, *places_of(chart, heard))


def comes_out(words: list[str], start: int, end: int) -> bool:
    """Whether the words beside an area from start to end tell that it is taken out."""
    before = [word for word in up_to_stop(words[max(0, start - _REACH) : start][::-1]) if word not in ("the", "a", "another")]
    if before[:1] and before[0] in _BEFORE:
        return True
    after = up_to_stop(words[end : end + _REACH])
    told = [word for word in after if word not in _SMALL - {"off", "out"}]
    if told[:1] and told[0] in _AFTER:
        return True
    return not _OF_THEM.isdisjoint(before)


def in_squares(chart: Chart, question: Question) -> None:
    """The area of a wall asked in squares: "28 wide, 8 to the plate, 7/12. Squares?" """
    if question.topic != WALL or "squares" not in chart.words:
        return
    words, names = [*chart.words, ""], {"length": "wall_length", "height": "wall_height", "peak": "gable_height", "faces": "area"}
    asked = any(
        word == "squares" and (words[at + 1] in ("?", "") or words[at - 1] == "many") and at for at, word in enumerate(words)
    )
    if asked and "over" not in question.givens:
        question.topic = "squares"
        question.givens = {names.get(name, name): replace(heard) for name, heard in question.givens.items()}
        question.swaps = [{names.get(name, name): heard for name, heard in way.items()} for way in question.swaps]
