"""A corner told by its angle alone, with a word for its joint and no more: miter for 92, what's the miter for a hundred and five.

An angle that a saw's scale may as well show is asked about: 45 may be the setting.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart, quantities
from intents.placing import place_of
from intents.question import Heard, Question
from solvers.quantities import Angle, Number

CORNER = "miter for a corner"
_MITERS = frozenset("miter miters mitre mitres mitered mitred".split())
_SMALL = frozenset(
    "for of on at a an the is s what whats what's angle angles cut cuts set setting saw degree degrees do i my to and need"
    " with , ? . each piece joint".split()
)
LEAST, SURE, MOST = 20, 60, 180  # degrees: from the first on it may be a corner, from the second it is one
SAID = 3.0  # as the score of a rule that fits


def bare_corner(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Make the line a corner's miter, where it says the one word and the one angle."""
    if _MITERS.isdisjoint(chart.words):
        return
    said = [*quantities(chart, 0, len(chart.words))]
    inside = {at for reading in said for at in range(reading.start, reading.end)}
    if any(word not in _MITERS | _SMALL for at, word in enumerate(chart.words) if at not in inside):
        return
    if not said:
        questions[:] = [Question(CORNER, score=SAID, missing=["corner"], words=["miter"])]
        return
    value = said[0].value
    if len(said) > 1 or not isinstance(value, Number | Angle) or not LEAST <= value.value < MOST:
        return
    place = place_of(chart, said[0].start, said[0].end)
    corner = Heard(Angle(value.value, "deg", place[2]), *place, said[0].sure)
    questions[:] = [Question(CORNER, {"corner": corner}, score=SAID, lacking=int(value.value < SURE), words=["miter"])]
