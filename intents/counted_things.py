"""A count taken from a number that counts nothing, while another before the name of the things was let fall.

"Cost of 12 boards at 14 each, the van is 60": what is bought is 12, and 60 is no count at all. Asked, never worked.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.consulting import numbers_in
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Count

_THINGS = frozenset(
    "boards planks sheets panels sticks lengths pieces battens straps bundles rolls tubes boxes bags posts brackets slats pickets"
    " vents blades louvres louvers corbels shingles blocks".split()
)
_BOUGHT = ("cost", "weight")
_SPACES = frozenset("bays gaps spaces openings".split())
_STOCK = frozenset("stock stocks footers".split())


def other_count(chart: Chart, question: Question) -> list[str]:
    """The number of things that no given took, where the count given is of nothing that is named."""
    if question.topic == "course layout":
        return _stock_length(chart, question)
    if question.topic == "conversion":
        return _several(chart, question)
    if question.topic == "equal spacing":
        return _so_many_spaces(chart, question)
    if question.topic not in _BOUGHT:
        return []
    counts = [h for h in question.givens.values() if isinstance(h.value, Count) and h.end > h.start]
    if len(counts) != 1:
        return []
    end = places_of(chart, counts[0])[1]
    if _thing(chart, end):
        return []
    return _several(chart, question)


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
