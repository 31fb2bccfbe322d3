"""A number of what the question itself gives: "I've got 4 tubes in the truck, is that enough for 70 ft", "will 11 sticks do".

Such a number is no given of that question. It is left out only from one that is whole without it, which says so
(`left_out.py`), and never where it is asked how many more. How high up a thing is, is passed over where only its length is
asked of: "the eave is nine foot off the ground and runs 26".
"""

from __future__ import annotations

from intents.chart import Chart, once, quantities, span
from intents.question import Claim, Question
from solvers.quantities import Length, Quantity

_GIVES: dict[str, frozenset[str]] = {
    "sealant": frozenset("tube tubes cartridge cartridges sausage sausages".split()),
    "soffit panels": frozenset("panels".split()),
    "trim sticks": frozenset("sticks".split()),
    "membrane rolls": frozenset(("rolls",)),
    "cladding boards": frozenset("boards planks clapboards".split()),
    "take-off": frozenset("boards planks clapboards".split()),
    "step flashing": frozenset("steps flashings soakers".split()),
    "strapping": frozenset("straps battens".split()),
}
_UP = (["off", "the", "ground"], ["above", "the", "ground"], ["above", "ground"], ["off", "ground"], ["from", "the", "ground"])
_NO_HEIGHT = frozenset(("soffit panels", "trim sticks", "sealant", "step flashing"))
_MORE = frozenset("more another extra short left still remaining besides over less minus add".split())
_ENOUGH = frozenset("enough do cover covers plenty suffice sufficient".split())
_EACH = frozenset(("per", "each", "every", "apiece", "a", "an"))
CUES = frozenset().union(*_GIVES.values())


@once
def its_answer(chart: Chart) -> int:
    """Mask of such numbers, of the topic that the sentence is likeliest about."""
    words = chart.words
    if CUES.isdisjoint(words) or not chart.likely or not _MORE.isdisjoint(words):
        return 0
    things = _GIVES.get(max(chart.likely, key=chart.likely.__getitem__), frozenset())
    mask = 0
    for reading in quantities(chart, 0, len(words)):
        after = words[reading.end : reading.end + 2]
        if reading.kind == "number" and not things.isdisjoint(after[:1]) and _EACH.isdisjoint(after[1:]):
            mask |= span(reading.start, reading.end)
    return mask


def have_enough(chart: Chart, question: Question) -> None:
    """Hold the one such number, which is no given, against the answer, where it is asked whether so many are enough."""
    if question.claim is not None or _ENOUGH.isdisjoint(chart.words) or question.topic not in _GIVES:
        return
    mask = its_answer(chart)
    had = [r for r in quantities(chart, 0, len(chart.words)) if mask >> r.start & 1]
    if len(had) != 1 or not isinstance(had[0].value, Quantity):
        return
    start, said = chart.tokens[had[0].start].start, chart.said(had[0].start, had[0].end)
    if any(given.start <= start < given.end for given in question.givens.values()) or question.left not in ([], [said]):
        return
    text = chart.said(had[0].start, had[0].end + 1)  # 40 boards
    question.claim, question.left = Claim(had[0].value, text, "enough", had[0].start, had[0].end), []


def off_the_ground(chart: Chart, topic: str) -> int:
    """Mask of how high up the thing is, for a topic that asks for no height."""
    if topic not in _NO_HEIGHT or "ground" not in chart.words:
        return 0
    mask = 0
    for reading in quantities(chart, 0, len(chart.words)):
        after = chart.words[reading.end : reading.end + 3]
        if isinstance(reading.value, Length) and any(after[: len(up)] == up for up in _UP):
            mask |= span(reading.start, reading.end)
    return mask
