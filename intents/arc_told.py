"""A curved top told without the terms, and the length of its curve asked for: "door header's an arch, 42 across with a rise of
7, how long a bendy strip goes round it", "half round top, 510 across, how much strip to go over it".

Where the curve alone is asked for, its length is the answer, and the radius stands beside it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.leaning_told import told_of_lengths
from intents.placing import heard_as
from intents.question import Heard, Question
from solvers.quantities import Length

ARC = "arc"
_SCORE = 9.0  # as of a rule that fits whole
_CURVED = expression(
    r"\b(?:arch|arches|arched|arc|curved?|curves|eyebrow|segment|segmental|half (?:a )?(?:round|circle|moon)|semi ?circ\w*"
    r"|(?:round|rounded|circle) (?:head|headed|top|topped))\b"
)
_SOME_CURVE = ("arc", "curve", "eyebrow", "segment", "half", "semi", "round", "circle")  # one is in all that tells of a curve
_HALF = expression(r"\bhalf (?:a )?(?:round|circle|moon)\b|\bsemi ?circ\w*\b")
_STRIP = (
    r"(?:strips?|trim|bead\w*|casing|mould\w*|mold\w*|band|piece|lath|batten|flashing|tape|string|wire|curve|arc|edge|bend\w*)"
)
_CURVE = expression(
    rf"\bhow (?:long|much)\b[^.?]*\b(?:{_STRIP}|round|around|over it|along it)\b"
    rf"|\b(?:length|distance|far) (?:of|round|around|along|over)(?: the| that| a| its)? (?:{_STRIP}|it|top|head|arch)\b"
    rf"|\b(?:arc|curve|curved trim|trim|strip) length\b"
)
_RADIUS = expression(r"\b(?:radius|radii|trammel|swing|offsets?|marks?)\b")
_OTHERS = expression(r"\b(?:diameter|gutter|pipe|each|every|half of|courses?|boards|sticks|minus|less|plus)\b")
_ACROSS = expression(
    r"@ (?:wide|across|width|span|opening|clear|over|between)\b|\b(?:width|span|spans|across|opening|over|wide)(?: of| is)? @"
)
_UP = expression(
    r"@ (?:of )?(?:rise|high|up|tall|height|sagitta|in the middle|at the (?:middle|top|crown))\b"
    r"|\b(?:rise|rises|rising|high|height|up|climbs?|comes up|crown)(?: of| is| to| about)? @"
)


def arc_told(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Take the length of the curve for what is asked, where that and no radius is; and the arc itself from plain words."""
    line = " ".join(chart.words)
    if not any(curved in line for curved in _SOME_CURVE):
        return
    if not (_CURVED.search(line) and _CURVE.search(line)) or _RADIUS.search(line) or _OTHERS.search(line):
        return
    first = next(iter(questions), None)
    if first is None or first.topic != ARC or not first.plain:
        told = _read(chart, topics)
        if told is None:
            return
        if first is not None:
            told.manner = first.manner
        first = told
    first.givens["asked"] = Heard("CURVE", 0, 0, "")
    questions[:] = [first]


def _read(chart: Chart, topics: Mapping[str, Any]) -> Question | None:
    """The arc of a line whose one or two lengths are its width and its rise; a half round has the first alone."""
    told = told_of_lengths(chart)
    if told is None or not 1 <= len(told.found) <= 2:
        return None
    half = _HALF.search(" ".join(chart.words)) is not None
    places = {p.name: p for p in topics[ARC]}
    givens: dict[str, Heard] = {}
    for n, reading in enumerate(told.found):
        line = told.at(n)
        name = "rise" if _UP.search(line) else "width" if _ACROSS.search(line) else ""
        heard = heard_as(chart, places[name], reading, True) if name else None
        if heard is None or name in givens or not isinstance(heard.value, Length):
            return None
        givens[name] = heard
    if half and "rise" not in givens:
        givens["head"] = Heard("HALF", 0, 0, "")
    if "width" not in givens or len(givens) != 2:
        return None
    return Question(ARC, {name: replace(heard, others=()) for name, heard in givens.items()}, _SCORE, words=["curve"])
