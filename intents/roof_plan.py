"""A roof told by its plan and pitch, of which squares or an area are asked: "squares for a 24 by 40 roof at 6/12".

The plan is no wall, and lies flat: what is asked lies along the slope.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.second_reader import places_of
from solvers.quantities import Length

TOPIC = "roof area"
_TOPICS = frozenset(("squares", "wall area", "sloped length", "rise over a run"))
_ROOFS = frozenset("roof roofs roofing".split())
_WALLED = frozenset("wall walls gable gables siding cladding dormer dormers soffit rafter rafters".split())
_AREA = frozenset("squares area sqft footage".split())
_ASKS = frozenset(
    (("much", "roof"), ("much", "roofing"), ("square", "feet"), ("square", "foot"), ("sq", "ft"), ("square", "metres"))
)
_OVER, _SURE = frozenset("overhang overhangs eave eaves overhanging".split()), 0.9
_LEAST, _MOST = 4, 300  # ft, of a side
_SCORE = 3.0  # of a reading that only these words make
_KEPT = ("pitch", "waste")


def roof_plan(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for the roof's area where its plan has no place in what was asked."""
    first, words = next(iter(questions), None), chart.words
    if first is None or first.topic not in _TOPICS or TOPIC not in topics:
        return
    if _ROOFS.isdisjoint(words) or not _WALLED.isdisjoint(words):
        return
    asks = not _AREA.isdisjoint(words) or not _ASKS.isdisjoint(pairwise(words))
    found = {(r.start, r.end): r for row in chart.readings for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2}
    if not asks or len(found) != 1:
        return
    places = {p.name: p for p in topics[TOPIC]}
    sides = _sides(chart, next(iter(found.values())), places)
    kept = {name: heard for name, heard in first.givens.items() if name in _KEPT}
    if sides and "pitch" not in kept:
        sides, pitch = _pitch_at_its_end(chart, next(iter(found.values())), sides, places)
        kept |= pitch
    lengths = _besides(chart, next(iter(found.values())), kept)
    if len(lengths) == 1 and (over := _overhang(chart, lengths[0], places)) is not None:
        kept, lengths = kept | {"overhang": over}, []
    if sides and "pitch" in kept and not lengths:
        questions[:] = [Question(TOPIC, {**sides, **kept}, _SCORE, words=first.words, manner=first.manner)]


def _besides(chart: Chart, size: Reading, kept: Mapping[str, Heard]) -> list[Reading]:
    """The lengths with a unit that are told besides the plan."""
    taken = [places_of(chart, heard) for heard in kept.values() if heard.end > heard.start] + [(size.start, size.end)]
    found: dict[int, Reading] = {}
    for row in chart.readings:
        for reading in row:
            apart = all(reading.end <= start or end <= reading.start for start, end in taken)
            if reading.kind == "length" and reading.sure >= _SURE and apart:
                found[reading.end] = min(found.get(reading.end, reading), reading, key=lambda one: one.start)
    return [*found.values()]


def _overhang(chart: Chart, reading: Reading, places: Mapping[str, Any]) -> Heard | None:
    """A length that the words beside it tell to be the overhang all round."""
    near = chart.words[max(0, reading.start - 2) : reading.start] + chart.words[reading.end : reading.end + 3]
    return None if _OVER.isdisjoint(near) else heard_as(chart, places["overhang"], reading, True)


def _pitch_at_its_end(
    chart: Chart, size: Reading, sides: dict[str, Heard], places: Mapping[str, Any]
) -> tuple[dict[str, Heard], dict[str, Heard]]:
    """The plan and the pitch that was read as a fraction of its width: 40 by 24 6/12."""
    assert isinstance(size.value, Dims)
    wide = size.value.parts[-1]
    for start in range(wide.start + 1, size.end):
        pitch = next((r for r in chart.readings[start] if r.kind == "pitch" and r.end == size.end), None)
        width = next((r for r in chart.readings[wide.start] if r.kind == "number" and r.end == start), None)
        if pitch is None or width is None:
            continue
        heard, told = heard_as(chart, places["width"], width, True), heard_as(chart, places["pitch"], pitch, True)
        if heard is not None and told is not None:
            return {**sides, "width": heard}, {"pitch": told}
    return {}, {}


def _sides(chart: Chart, reading: Reading, places: Mapping[str, Any]) -> dict[str, Heard]:
    """The plan's length and width; none where a side is as long as no roof."""
    parts = reading.value.parts if isinstance(reading.value, Dims) else ()
    heard = {name: heard_as(chart, places[name], part, True) for name, part in zip(("length", "width"), parts, strict=True)}
    sides = {name: one for name, one in heard.items() if one is not None and isinstance(one.value, Length)}
    fits = all(_LEAST <= one.value.to("ft").value <= _MOST for one in sides.values())
    return sides if len(sides) == len(parts) and fits else {}
