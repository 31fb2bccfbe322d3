"""What a joint is round, told by its size: every opening of "round 8 windows 36 by 48 and two 3-0 by 6-8 doors".

Only openings of a size that a window has are taken: what is 3/8 wide and 3/8 deep is the joint. One side of an opening,
"a 3 foot door", is no length of joint: how big it is each way is asked.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.second_reader import places_of
from intents.two_sided import sides_as, two_sided
from solvers.quantities import Length
from solvers.slots import Opening, Parameter

TOPIC, SLOT = "sealant", "sealed_openings"
_JOINT = ("width", "depth")
LIKELY, LEAST = 0.5, 6  # that it is about sealant; inches: of a side of an opening
MOST = 240  # inches that one side of an opening may have
_OPENINGS = frozenset("door doors window windows slider sliders skylight skylights".split())
_ACROSS = frozenset("wide high tall across".split())  # a door 3 foot wide
_BETWEEN = frozenset("of for to per round around a the , ; . ? and".split())  # 14 foot a window is of joint
_OF_JOINT = frozenset("perimeter perimeters perim joint joints casing casings trim frame frames".split())


def sealed_round(
    chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]], known: bool = False
) -> None:  # fmt: skip
    """Take the list of openings of the first question where no length of joint is told, or that of the first of them only.

    `known`: it is about sealant for certain, as when a missing piece was asked for.
    """
    question = next((question for question in questions if question.topic == TOPIC), None)
    if question is None:
        return
    best, parameters = _sized(chart), {p.name: p for p in topics[TOPIC]}
    if best is None:
        _one_side(chart, question, parameters)
    if best is None or not (known or chart.likely.get(TOPIC, 0) >= LIKELY):
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
    _joint(chart, question, best, parameters)
    if question.complete and questions[0] is not question:
        questions[:] = [question]


def _one_side(chart: Chart, question: Question, parameters: Mapping[str, Parameter]) -> None:
    """Let go of a length that is one side of an opening; the one size told beside openings is the joint's."""
    length = question.givens.get("length")
    if SLOT in question.givens or _OPENINGS.isdisjoint(chart.words):
        return
    if length is not None and _is_side(chart, length):
        del question.givens["length"]
        question.missing, question.swaps, question.rival = [*question.missing, "length"], [], False
    _joint(chart, question, None, parameters)


def _is_side(chart: Chart, length: Heard) -> bool:
    """Whether a length is said of an opening alone, "a 3 foot door" or "a door 3 foot wide", or is round the joint's own size."""
    if length.end <= length.start or not isinstance(length.value, Length) or length.value.to("in").value > MOST:
        return False
    start, end = places_of(chart, length)
    if any(start <= size.start and size.end <= end and not _wide(size) for size in two_sided(chart)):
        return True
    after = [*chart.words[end : end + 3], "", "", ""]
    if after[0] in _ACROSS:
        return chart.words[start - 1] in _OPENINGS if start else False
    at = 0 if after[0] in _OPENINGS else 1
    return after[at] in _OPENINGS and after[at - 1 if at else 0] not in _BETWEEN and after[at + 1] not in _OF_JOINT


def _sized(chart: Chart) -> Reading | None:
    """The longest list of openings that have a size, and one that an opening has."""
    lists = [r for row in chart.readings for r in row if r.kind == "openings" and all(map(_large, r.value))]  # type: ignore[arg-type]
    return max(lists, key=lambda r: r.end - r.start, default=None)


def _wide(size: Reading) -> bool:
    """Whether both sides of a size are those of an opening."""
    assert isinstance(size.value, Dims)
    return all(_of_opening(part.value) for part in size.value.parts)


def _large(opening: Opening) -> bool:
    return _of_opening(opening.width) and _of_opening(opening.height)


def _of_opening(side: object) -> bool:
    return isinstance(side, Length) and side.to("in").value >= LEAST


def _joint(chart: Chart, question: Question, taken: Reading | None, parameters: Mapping[str, Parameter]) -> None:
    """Give the one size that is left to the joint, where it has none."""
    if not {*_JOINT}.isdisjoint(question.givens):
        return
    sizes = [size for size in two_sided(chart) if taken is None or not (size.start < taken.end and taken.start < size.end)]
    given = sides_as(chart, sizes[0], _JOINT, parameters) if len(sizes) == 1 else {}
    if given:
        question.givens |= given
        said = chart.said(sizes[0].start, sizes[0].end)
        question.missing = [name for name in question.missing if name not in _JOINT]
        question.unplaced = [text for text in question.unplaced if text not in said]
