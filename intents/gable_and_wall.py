"""A gable and the wall under it, each told with its own sizes: "gable 28 wide 8/12 plus wall under it 28 x 9", "gable 24 wide
10 high and wall 24 by 9, two windows of 15 sq ft".

Where both are as wide they are one wall with a gable over it. A line that holds any other quantity is left as it was.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.leaning_told import best_at
from intents.lengths import UNITS
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from solvers.quantities import Area, Length, Number, Pitch, Quantity

WALL = "wall area"
_WALLS = frozenset((WALL, "cladding boards", "squares", "take-off", "membrane rolls", "cost", "weight"))
_OVER = ("pitch", "peak", "gable_height")
_NAMES_GABLE = frozenset(
    "gable gables peak peaks peaked ridge pitch pitched apex triangle triangles triangular point pointed rake rakes rise rises"
    " roof slope sloped slopes over above middle centre center".split()
)
_TOPICS = frozenset((WALL, "gable area"))
_SCORE = 9.0  # as of a rule that fits whole
_GABLE = expression(
    r"\bgable (?:end )?(?:is |of |at )?(?P<width>L)(?: wide| across| long)?(?: ,)?(?: (?:at|and|by|pitched|on))*(?: an?)?"
    r" (?:(?P<pitch>P)|(?P<peak>L)(?: high| tall| rise)?)(?![^ ])"
)
_WALL = expression(r"\bwalls? (?:[a-z]+ ){0,3}?(?P<length>L)(?: wide| long)? (?:by|×|and) (?P<height>L)(?![^ ])")
_AREAS = expression(r"(?P<many>L) (?:windows|doors|openings|vents|holes) (?:of|at) (?P<each>S)|(?P<whole>S) (?:of|in|for) \w+")


def gable_and_wall(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Put the gable over its wall, where a line tells the sizes of both."""
    first = next(iter(questions), None)
    if first is None or first.topic not in _TOPICS or not {"gable", "wall"} <= {*chart.words}:
        return
    openings = first.givens.get("openings")
    found, line = _tagged(chart, openings)
    gable, wall, areas = _GABLE.search(line), _WALL.search(line), _AREAS.search(line)
    if gable is None or wall is None:
        return
    named = {**_named(gable, found, line), **_named(wall, found, line)}
    told = _named(areas, found, line) if areas is not None else {}
    if len(named) + len(told) != len(found) or not _alike(named["width"], named["length"]):
        return
    places = {p.name: p for p in topics[WALL]}
    givens = {name: heard_as(chart, places[name], reading, True) for name, reading in named.items() if name != "width"}
    if None in givens.values():
        return
    kept = {"openings": openings} if openings is not None else {}
    opened = {"opened": _opened(chart, told)} if told else {}
    questions[:] = [Question(WALL, {**kept, **opened, **givens}, _SCORE, words=first.words, manner=first.manner)]  # type: ignore[dict-item]


def no_gable_named(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """No length is a gable's that no word tells of: 6 inches off the top, half a foot of skirt."""
    if not _NAMES_GABLE.isdisjoint(chart.words):
        return
    for question in questions:
        for name in _OVER if question.topic in _WALLS else ():
            heard = question.givens.get(name)
            if heard is not None and not UNITS.isdisjoint(heard.text.lower().split()):
                question.unplaced.append(question.givens.pop(name).text)
                question.givens.pop("over", None)


def _tagged(chart: Chart, openings: Heard | None) -> tuple[list[Reading], str]:
    """The quantities that are no size of an opening, and the line with a letter for each."""
    taken = range(*places_of(chart, openings)) if openings is not None and openings.end > openings.start else range(0)
    found: list[Reading] = []
    words: list[str] = []
    at = 0
    while at < len(chart.words):
        areas = [r for r in chart.readings[at] if isinstance(r.value, Area) and r.kind == "area"]
        best = max(areas, key=lambda r: r.end, default=None) or best_at(chart, at)
        if best is None or at in taken:
            words.append(chart.words[at])
            at += 1
            continue
        kind = {Area: "S", Pitch: "P", Length: "L", Number: "L"}
        found.append(best)
        words.append(next((letter for value, letter in kind.items() if isinstance(best.value, value)), "X"))
        at = best.end
    return found, " ".join(words)


def _named(match: Any, found: list[Reading], line: str) -> dict[str, Reading]:
    """The quantities of a match by the names of its groups."""
    places = [at for at, letter in enumerate(line) if letter in "LPSX"]
    return {name: found[places.index(match.start(name))] for name in match.groupdict() if match[name] is not None}


def _alike(one: Reading, other: Reading) -> bool:
    """Whether two sizes are the same, in the unit of either where one has none."""
    mine, theirs = one.value, other.value
    assert isinstance(mine, Quantity) and isinstance(theirs, Quantity)
    if isinstance(mine, Length) and isinstance(theirs, Length):
        return mine.to("in").value == theirs.to("in").value
    return mine.value == theirs.value


def _opened(chart: Chart, told: dict[str, Reading]) -> Heard:
    """The area of openings told by that: two windows of 15 sq ft."""
    each = told.get("each") or told["whole"]
    first = told.get("many", each)
    assert isinstance(each.value, Area)
    count = first.value.value if isinstance(first.value, Number) else 1
    start, end = chart.tokens[first.start].start, chart.tokens[each.end - 1].end
    text = chart.said(each.start, each.end)
    text = f"{chart.said(first.start, first.end)} × {text}" if first is not each else text
    return Heard(Area(each.value.value * count, each.value.unit, text), start, end, text)
