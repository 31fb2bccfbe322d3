"""What a joint is round, told by its size: every opening of "round 8 windows 36 by 48 and two 3-0 by 6-8 doors".

Only openings of a size that a window has are taken: what is 3/8 wide and 3/8 deep is the joint.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from intents.two_sided import sides_as, two_sided
from solvers.slots import Opening, Parameter

TOPIC, SLOT = "sealant", "sealed_openings"
_JOINT = ("width", "depth")
LIKELY, LEAST = 0.5, 6  # that it is about sealant; inches: of a side of an opening


def sealed_round(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Take the list of openings of the first question where no length of joint is told, or that of the first of them only."""
    question = next((question for question in questions if question.topic == TOPIC), None)
    best = _sized(chart) if question is not None and chart.likely.get(TOPIC, 0) >= LIKELY else None
    if question is None or best is None:
        return
    length = question.givens.get("length")
    if length is not None:
        start, end = places_of(chart, length)
        part = start < best.end and best.start < end < best.end
        if length.end <= length.start or (question.whole and not part) or (part and best.end <= end):
            return
    place = place_of(chart, best.start, best.end)
    inside = {name for name, given in question.givens.items() if given.end > given.start and place[0] <= given.start < place[1]}
    question.givens = {name: given for name, given in question.givens.items() if name not in {*inside, "length"}}
    question.givens[SLOT] = Heard(best.value, *place, best.sure)
    question.unplaced = [text for text in question.unplaced if text not in place[2]]
    question.missing = [name for name in question.missing if name != "length"]
    question.swaps, question.rival = [], False
    _joint(chart, question, best, {p.name: p for p in topics[TOPIC]})
    if question.complete and questions[0] is not question:
        questions[:] = [question]


def _sized(chart: Chart) -> Reading | None:
    """The longest list of openings that have a size, and one that an opening has."""
    lists = [r for row in chart.readings for r in row if r.kind == "openings" and all(map(_large, r.value))]  # type: ignore[arg-type]
    return max(lists, key=lambda r: r.end - r.start, default=None)


def _large(opening: Opening) -> bool:
    return all(size is not None and size.to("in").value >= LEAST for size in (opening.width, opening.height))


def _joint(chart: Chart, question: Question, taken: Reading, parameters: Mapping[str, Parameter]) -> None:
    """Give the one size that is left to the joint, where it has none."""
    if not {*_JOINT}.isdisjoint(question.givens):
        return
    sizes = [size for size in two_sided(chart) if not (size.start < taken.end and taken.start < size.end)]
    given = sides_as(chart, sizes[0], _JOINT, parameters) if len(sizes) == 1 else {}
    if given:
        question.givens |= given
        said = chart.said(sizes[0].start, sizes[0].end)
        question.missing = [name for name in question.missing if name not in _JOINT]
        question.unplaced = [text for text in question.unplaced if text not in said]
