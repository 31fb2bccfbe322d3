"""What a fastener is held in is no layer it goes through: 25 mm boards on 45 mm battens, 40 mm into the battens.

How deep it is held may be told between two layers, whose list then runs over it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from intents.chart import Chart
from intents.idle_numbers import LAYERED
from intents.no_layers import held_in_frame
from intents.placing import heard_as
from intents.question import Question
from intents.untold_layers import kind_of
from solvers.slots import Layer, Parameter

HELD, LENGTH, PENETRATION = "penetration", "fastener length", "fastener penetration"
_FRAMES = frozenset("stud studs framing frame frames joist joists rafter rafters plate block blocking".split())
_SMALL = frozenset(("the", "those", "my", "our"))


def held_between(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the first question its penetration where that stands among the layers: straps, 1 1/2 in the stud, 7/16 sheathing.

    Where such a size is told beside what was taken for a build-out, it is asked whether a fastener is meant.
    """
    question = next(iter(questions), None)
    if question is None or question.topic not in LAYERED or question.unplaced:
        return
    if question.missing != ([HELD] if question.topic == LENGTH else []):
        return
    words = [*chart.words, "", "", ""]
    found = [r for row in chart.readings for r in row if r.kind in ("length", "number") and held_in_frame(words, r.end)]
    longest = max(found, key=lambda r: (r.end - r.start, r.sure), default=None)
    if longest is None or any(r.start < longest.start or r.end > longest.end for r in found):
        return
    heard = heard_as(chart, next((p for p in topics[LENGTH] if p.name == HELD), None), longest, True)
    if heard is not None:
        question.lacking = int(question.topic != LENGTH)  # what holds in the stud builds nothing out
        question.topic = LENGTH
        question.givens[HELD], question.missing = heard, []


def held_in(chart: Chart, question: Question) -> None:
    """Without the last layer, where the fastener goes into that and no frame is spoken of."""
    heard, words = question.givens.get("layers"), chart.words
    if question.topic not in (LENGTH, PENETRATION) or heard is None or "into" not in words or not _FRAMES.isdisjoint(words):
        return
    layers = heard.value
    last = layers[-1] if isinstance(layers, tuple) and len(layers) > 1 else None
    if not isinstance(last, Layer):
        return
    at = words.index("into") + 1
    at += at < len(words) and words[at] in _SMALL
    if at < len(words) and kind_of(words[at]) == kind_of(last.what.split()[-1]):
        question.givens["layers"] = replace(heard, value=layers[:-1])


def length_rather(chart: Chart, questions: list[Question], _topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """A fastener of no told length has its length asked: nobody told me how far into the framing, which screw.

    How far one should go in may ask for what is called enough, and is asked about.
    """
    question = next(iter(questions), None)
    if question is None or question.topic != PENETRATION:
        return
    if "fastener" in question.missing:
        question.topic, question.missing = LENGTH, [HELD, *(name for name in question.missing if name != "fastener")]
    elif "should" in chart.words:
        question.lacking = 1
