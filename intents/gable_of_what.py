"""A gable of which nothing is asked: "work out the gable, 14 ft wide, 6/12" may want its area, its height or its rake.

What speaks of an area is a word for one, what goes on it, or how much of it there is; without any of these it is asked about.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question

TOPIC = "gable area"
_CLASSES = frozenset(("area-word", "siding"))
_MUCH = frozenset(
    "area areas much many big square squares sq sqft sqm sf ft2 m2 footage metreage metres surface face faces coverage"
    " triangle triangles triangular cover covers covering clad cladding side siding paint painting painted wrap stain board"
    " boards shingle shingled sided boarded shingles shakes render order come comes total altogether".split()
)


def gable_of_what(chart: Chart, question: Question) -> bool:
    """Whether a gable's area would be given though no word asks for one."""
    if question.topic != TOPIC or not _MUCH.isdisjoint(chart.words):
        return False
    return not any(name in _CLASSES for row in chart.classes for name, _ in row)
