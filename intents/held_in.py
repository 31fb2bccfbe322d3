"""What a fastener is held in is no layer it goes through: 25 mm boards on 45 mm battens, 40 mm into the battens."""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.question import Question
from intents.untold_layers import kind_of
from solvers.slots import Layer

_FRAMES = frozenset("stud studs framing frame frames joist joists rafter rafters plate block blocking".split())
_SMALL = frozenset(("the", "those", "my", "our"))


def held_in(chart: Chart, question: Question) -> None:
    """Without the last layer, where the fastener goes into that and no frame is spoken of."""
    heard, words = question.givens.get("layers"), chart.words
    if question.topic != "fastener length" or heard is None or "into" not in words or not _FRAMES.isdisjoint(words):
        return
    layers = heard.value
    last = layers[-1] if isinstance(layers, tuple) and len(layers) > 1 else None
    if not isinstance(last, Layer):
        return
    at = words.index("into") + 1
    at += at < len(words) and words[at] in _SMALL
    if at < len(words) and kind_of(words[at]) == kind_of(last.what.split()[-1]):
        question.givens["layers"] = replace(heard, value=layers[:-1])
