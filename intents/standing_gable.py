"""A wall with a gable told by three lengths: how wide, how high to the eave, how far the peak is above that.

Where the words beside each tell which it is, they go to their places, whatever else was made of them; told so by their words
they can be nothing else. A sentence with two of one of them is left alone.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import NamedTuple

from intents.chart import Chart, quantities
from intents.gable_over import FACES
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from intents.remarks import STOPS
from intents.second_reader import places_of
from solvers.quantities import Length
from solvers.slots import Parameter

WALL, GABLE, ROLLS = "wall area", "gable area", "membrane rolls"
_PEAK = frozenset("peak peaks apex ridge point tip gable triangle".split())
_MORE = frozenset("another further extra".split())
_OVER = (
    ("over", "that"), ("above", "that"), ("on", "top"), ("over", "it"), ("above", "it"), ("over", "the"), ("above", "the"),
    ("more",), ("higher",), ("above", "eave"), ("above", "eaves"), ("over", "eave"), ("over", "eaves"), ("again",), ("taller",),
)  # fmt: skip
_ON_WALL = frozenset(("over", "above", "on"))
_WIDE = frozenset("wide across long".split())
_TALL = frozenset("high tall up".split())
_PLATE = frozenset("eave eaves plate walls soffit gutter".split())
_SMALL = frozenset("is are at to the a it's it about just goes rises climbs runs of with up is's and then".split())
_STOPS = STOPS | {"&"}
_AREA = frozenset(("area", "m2", "sf", "sqft", "ft2", "sqm"))
_SQUARED, _SIDES = frozenset(("square", "sq")), frozenset("metres meters feet foot ft m".split())
_REACH = 5
SCORE = 3.0  # of a reading that only these words make


class Told(NamedTuple):
    """The readings of the three lengths; `tall` is None where only the gable was told."""

    wide: Reading
    tall: Reading | None
    peak: Reading


def standing_gable(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Hand the three lengths to the topic that was asked, where that is about faces of walls and they have no place yet."""
    first = next(iter(questions), None)
    if _PEAK.isdisjoint(chart.words) or (first is not None and first.topic not in FACES | {WALL, GABLE, ROLLS}):
        return
    told = _told(chart)
    if told is None or (first is not None and first.plain and told.tall is None):
        return
    if first is None:
        if not _asks_area(chart) or told.tall is None:
            return
        first = Question(WALL, score=SCORE)
        questions.append(first)
    _place(chart, first, told, topics)


def _place(chart: Chart, question: Question, told: Told, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    places = _names(question.topic, told)
    topic = WALL if question.topic == GABLE and told.tall is not None else question.topic
    parameters = {p.name: p for p in topics[topic]}
    heard = ((name, heard_as(chart, parameters[name], reading, True)) for name, reading in places.items())
    given = {name: size for name, size in heard if size is not None}
    if len(given) < len(places) or not given:
        return
    spans = [(heard.start, heard.end) for heard in given.values()]
    kept = {n: h for n, h in question.givens.items() if n in parameters and not _within(h, spans)}
    if any(isinstance(h.value, Length) and n in given for n, h in kept.items()) or "area" in kept or "pitch" in kept:
        return
    texts = {heard.text for heard in given.values()}
    question.topic, question.swaps, question.rival = topic, [], False
    question.givens = kept | given
    question.missing = [name for name in question.missing if name in parameters and name not in given]
    question.unplaced = [text for text in question.unplaced if text not in texts]


def _names(topic: str, told: Told) -> dict[str, Reading]:
    if told.tall is None:
        return {"width": told.wide, "height": told.peak} if topic == GABLE else {}
    names = ("length", "height", "peak") if topic in (WALL, GABLE) else ("wall_length", "wall_height", "gable_height")
    return dict(zip(names, (told.wide, told.tall, told.peak), strict=True))


def _within(heard: Heard, spans: list[tuple[int, int]]) -> bool:
    return any(heard.start < end and start < heard.end for start, end in spans)


def _told(chart: Chart) -> Told | None:
    """The three lengths, each told once; of a gable with nothing told of the wall, its width and height."""
    found: dict[str, list[Reading]] = {"wide": [], "tall": [], "peak": [], "point": []}
    for reading in quantities(chart, 0, len(chart.words)):
        if isinstance(reading.value, Length) or reading.kind == "number":
            name = _role(chart.words, reading)
            if name:
                found[name].append(reading)
    if len(found["wide"]) != 1:
        return None
    wide = found["wide"][0]
    if len(found["tall"]) == len(found["peak"]) == 1 and not found["point"]:
        return Told(wide, found["tall"][0], found["peak"][0])
    points = found["peak"] + found["point"]
    return Told(wide, None, points[0]) if len(points) == 1 and not found["tall"] else None


def _role(words: list[str], reading: Reading) -> str:
    before = _back(words, reading.start)
    after = _on(words, reading.end)
    peaked = not _PEAK.isdisjoint(before[:_REACH])
    if peaked and (_over(after) or not _MORE.isdisjoint(before[:1])):
        return "peak"
    if before[:1] and before[0] in _MORE and not _PEAK.isdisjoint(after):
        return "peak"
    named = [word for word in after if word not in _SMALL]
    if after[:1] == ["gable"] and after[1:2] and after[1] in _ON_WALL:
        return "peak"  # and a 7 ft gable over
    if named[:1] and named[0] in _PEAK - {"gable", "triangle"} and {"to", "at"} & set(after):
        return "peak" if _over(after) else "point"
    if after[:1] and after[0] in _WIDE:
        return "wide"
    if (named[:1] and named[0] in _PLATE) or (before[:1] and not peaked and not _PLATE.isdisjoint(before[:3])):
        return "tall"
    return "tall" if after[:1] and after[0] in _TALL and not peaked else ""


def _over(after: list[str]) -> bool:
    told = after[1:] if after[:1] and after[0] in _TALL else after
    return any(tuple(told[: len(cue)]) == cue for cue in _OVER)


def _back(words: list[str], start: int) -> list[str]:
    """The words before a place, from it backwards, as far as a stop or another number."""
    found = []
    for word in reversed(words[max(0, start - _REACH - 2) : start]):
        if word in _STOPS or word[:1].isdecimal():
            break
        if word not in _SMALL:
            found.append(word)
    return found


def _on(words: list[str], end: int) -> list[str]:
    found = []
    for word in words[end : end + _REACH]:
        if word in _STOPS or word[:1].isdecimal():
            break
        found.append(word)
    return found


def _asks_area(chart: Chart) -> bool:
    words = chart.words
    squared = any(a in _SQUARED and b in _SIDES for a, b in pairwise(words))
    return squared or not _AREA.isdisjoint(words)


_ACROSS = frozenset(("wide", "across"))
_FURTHER = frozenset("another more above over further extra higher taller on plate top rise rises".split())


def from_the_ground(chart: Chart, question: Question) -> list[str]:
    """A ridge higher than the wall that no word tells from the wall's top: "10 ft high, ridge is 18 ft up"."""
    names = next((pair for pair in (("height", "peak"), ("wall_height", "gable_height")) if {*pair} <= {*question.givens}), None)
    if names is None or not _FURTHER.isdisjoint(chart.words):
        return []
    wall, ridge = (question.givens[name] for name in names)
    if not (isinstance(wall.value, Length) and isinstance(ridge.value, Length)):
        return []
    if ridge.end > ridge.start and not _ACROSS.isdisjoint(chart.words[places_of(chart, ridge)[0] - 1 :][:1]):
        return []  # the gable is 24 wide | 10 high: its own size
    return [ridge.text] if ridge.value.to("ft").value > wall.value.to("ft").value else []
