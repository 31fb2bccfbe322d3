"""A count taken from a number that counts nothing, while another before the name of the things was let fall.

"Cost of 12 boards at 14 each, the van is 60": what is bought is 12, and 60 is no count at all. Asked, never worked.
"""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.consulting import numbers_in
from intents.number_words import SMALL
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Count, Length

_THINGS = frozenset(
    "boards planks sheets panels sticks lengths pieces battens straps bundles rolls tubes boxes bags posts brackets slats pickets"
    " vents blades louvres louvers corbels shingles blocks".split()
)
_BOUGHT = ("cost", "weight")
_SIZED = {"sealant": "length", "bent flashing": "lengths", "cut list": "stock_length"}  # topics, and what is no count there
_LEAST_ML = 50  # fewer are so many tubes, and no tube of so many millilitres
_SPACES = frozenset("bays gaps spaces openings".split())
_STOCK = frozenset("stock stocks footers".split())


def no_broken_count(chart: Chart, questions: list[Question], _topics: object) -> None:
    """A number with a fraction counts nothing: 1 1/2 balusters are an inch and a half wide."""
    question = next(iter(questions), None)
    count = question.givens.get("count") if question is not None and question.topic == "equal spacing" else None
    if question is None or count is None or not isinstance(count.value, Count) or count.value.value.denominator == 1:
        return
    taken = question.givens.get("width")
    if taken is not None:  # 3/4 spindles, 3 inch gap: that is the gap
        after = chart.words[places_of(chart, taken)[1] :][:1] if taken.end > taken.start else []
        if after not in (["gap"], ["gaps"]) or "gap" in question.givens:
            return
        question.givens["gap"] = question.givens.pop("width")
    width = Length(count.value.value, "in", count.text)
    question.givens["width"] = replace(question.givens.pop("count"), value=width)
    question.missing = [name for name in question.missing if name != "width"]


_WALLS = frozenset(("squares", "wall area", "cladding boards", "take-off"))
_ROOFS, _WALLED = frozenset(("roof", "roofs", "roofing")), frozenset("wall walls gable gables siding cladding side sides".split())


def _of_a_roof(question: Question) -> list[str]:
    """The pitch of a roof whose area is asked: its plan is no wall with a gable on it."""
    pitch = question.givens.pop("pitch", None)
    return [pitch.text] if pitch is not None else []


def other_count(chart: Chart, question: Question) -> list[str]:
    """The number of things that no given took, where the count given is of nothing that is named."""
    if question.topic in _WALLS and not _ROOFS.isdisjoint(chart.words) and _WALLED.isdisjoint(chart.words):
        return _of_a_roof(question)
    if question.topic == "course layout":
        return _stock_length(chart, question)
    if question.topic == "conversion":
        return _several(chart, question)
    if question.topic == "equal spacing":
        _gap_wanted(chart, question)
        return _so_many_spaces(chart, question)
    if question.topic in _SIZED:
        return _counts_in(chart, question)
    if question.topic not in _BOUGHT:
        return []
    counts = [h for h in question.givens.values() if isinstance(h.value, Count) and h.end > h.start]
    if len(counts) != 1:
        return []
    end = places_of(chart, counts[0])[1]
    if _thing(chart, end):
        return []
    return _several(chart, question)


def _counts_in(chart: Chart, question: Question) -> list[str]:
    """How many there are, taken for a size: 3 tubes, two 3 inch legs, 18 sticks at 14 dollars."""
    tube = question.givens.get("tube")
    bare = tube is not None and (tube.text.isdecimal() or tube.text in SMALL)
    if tube is not None and bare and tube.end > tube.start and tube.value.value < _LEAST_ML:
        end = places_of(chart, tube)[1]
        if chart.words[end : end + 1] == ["tubes"]:
            return [f"{tube.text} tubes"]
    heard = question.givens.get(_SIZED[question.topic])
    if heard is None or heard.end <= heard.start or (question.topic == "cut list" and "price" not in question.givens):
        return []
    start, end = places_of(chart, heard)
    words = [*chart.words, "", ""]
    if question.topic == "bent flashing":
        pairs = (at for at in range(start, end) if words[at] in SMALL and words[at] != "one" and words[at + 1][:1].isdecimal())
        return [chart.said(at, at + 2) for at in pairs]
    counted = words[end] in _THINGS and words[end + 1] in ("at", "@")
    counted = counted or (words[end] in ("tube", "tubes") and words[start - 1] != "length")
    return [f"{heard.text} {words[end]}"] if counted and heard.bare else []


def _gap_wanted(chart: Chart, question: Question) -> None:
    """The gap that is wanted, taken for how many pieces there are: pickets 3 1/2, gap 2, how many."""
    count = question.givens.get("count")
    if count is None or count.end <= count.start or not {"gap", "widest"}.isdisjoint(question.givens):
        return
    start, end = places_of(chart, count)
    after = chart.words[end : end + 1]
    if chart.words[start - 1 : start] in (["gap"], ["gaps"]) and not (after and after[0].isalpha() and after[0].endswith("s")):
        metric = any(isinstance(h.value, Length) and h.value.metric for h in question.givens.values())
        gap = Length(count.value.value, "mm" if metric else "in", count.text)
        question.givens["gap"] = replace(question.givens.pop("count"), value=gap)


def _so_many_spaces(chart: Chart, question: Question) -> list[str]:
    """How many bays or gaps there are, taken for how wide a piece is: two posts so that all three bays are the same."""
    width = question.givens.get("width")
    if width is None or width.end <= width.start:
        return []
    end = places_of(chart, width)[1]
    return [f"{width.text} {chart.words[end]}"] if end < len(chart.words) and chart.words[end] in _SPACES else []


def _stock_length(chart: Chart, question: Question) -> list[str]:
    """The length of the stock, taken for the height of the wall: "reveal max 8 in, courses? 14 ft stock"."""
    height = question.givens.get("height")
    if height is None or height.end <= height.start:
        return []
    end = places_of(chart, height)[1]
    return [height.text] if chart.words[end : end + 1] and chart.words[end] in _STOCK else []


def _several(chart: Chart, question: Question) -> list[str]:
    """How many things there are, where no given took it: 4 sticks of 16 ft, how many feet."""
    left = chart.numbers & ~numbers_in(chart, question)
    counts = [i for i, word in enumerate(chart.words) if left >> i & 1 and word != "1" and _thing(chart, i + 1)]
    return [chart.said(counts[0], counts[0] + 2)] if counts else []


def _thing(chart: Chart, at: int) -> bool:
    """Whether the name of things that are counted stands at a place."""
    return at < len(chart.words) and chart.words[at] in _THINGS


def into_itself(question: Question) -> bool:
    """Whether the only unit that is told is the value's own: 50 square inches each."""
    value, to = question.givens.get("value"), question.givens.get("to")
    return value is not None and to is not None and value.start <= to.start and to.end <= value.end


def system_told(chart: Chart, question: Question) -> None:
    """The system that is told is what the value goes into, and not the unit it has: 640 sq ft, metric."""
    told = next((at for at, word in enumerate(chart.words) if word in _SYSTEMS), None)
    if told is None or not into_itself(question):
        return
    token = chart.tokens[told]
    to = question.givens["to"]
    question.givens["to"] = replace(to, value=_SYSTEMS[token.text], start=token.start, end=token.end, text=token.text)


_SYSTEMS = {"metric": "METRIC", "imperial": "IMPERIAL"}
