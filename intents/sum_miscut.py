"""So many pieces cut at one size that were meant to be another: "four cut at 22 5/8, should be 22 3/8, how much off all four".

The two sizes stand against each other, and what comes off all of them is so many times that: never so many times the one
size less the other. Where it isn't said whether of each or of all, it is asked.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.sum_outlines import MOST_COUNT, Line, line_of, whole_line
from solvers.quantities import Number
from solvers.sums import MINUS, TIMES, Part, Sum, plain_size, told_as_length

_MEANT = r"(?:should(?: ?'?ve| have)?|meant|supposed|want|wants|wanted|need|needs|needed|ought|were to|was to|called for)"
_CUT = r"(?:cut|made|ripped|sawed|sawn|marked|came out|come out|are|were|was|is)"
_MISCUT = expression(
    rf"(?P<n>Q)(?: of them| of the \w+| (?!by\b|and\b|to\b)[a-z]+){{0,2}}?(?: {_CUT})?"
    r"(?: (?:at|to|them|out|all|too long|too short))* (?P<cut>Q)\b"
    rf"[^Q]*\b{_MEANT}\b(?: \w+){{0,3}}? (?P<meant>Q)\b(?P<asks>.*)$"
)
_ALL = expression(r"\b(?:total|altogether|together|in all|all told|all of them|all Q|the lot|whole lot)\b")
_EACH = expression(r"\b(?:each|apiece|every one|a piece|per piece|per)\b")
_HOW_MUCH = expression(r"\bhow (?:much|far|long|short)\b|\bwhat\b|\?")
_OTHERS = frozenset("square diagonal corner corners pitch degrees exposure".split())
_TELLS = frozenset("should should've meant supposed want wants wanted need needs needed ought called to".split())


def miscut(chart: Chart) -> Question | None:
    """The sum of a line that tells how many were cut at what, and what they were meant to be."""
    if _TELLS.isdisjoint(chart.words) or not _OTHERS.isdisjoint(chart.words):
        return None
    line = line_of(chart)
    told = _MISCUT.search(line.words) if line is not None else None
    if line is None or told is None or not _HOW_MUCH.search(told["asks"]):
        return None
    count, cut, meant = (line.parts[line.place(told, name)] for name in ("n", "cut", "meant"))
    apart = _apart(cut, meant)
    if apart is None or not _only_these(line, count):
        return None
    whole = Sum(TIMES, count, apart)
    of_all, of_each = (pattern.search(told["asks"]) is not None for pattern in (_ALL, _EACH))
    first, other = (apart, whole) if of_each and not of_all else (whole, apart)
    words = [word for word in chart.words if word in _TELLS]
    return whole_line(chart, first, words, other if of_all == of_each else None)


def _apart(cut: Part, meant: Part) -> Sum | None:
    """How far two sizes are apart that are near each other, the longer one less the shorter; else None."""
    one, other = sorted((plain_size(cut), plain_size(meant)))
    if not 0 < one < other <= one * 3 / 2 or not (told_as_length(cut) and told_as_length(meant)):
        return None
    return Sum(MINUS, cut, meant) if plain_size(cut) > plain_size(meant) else Sum(MINUS, meant, cut)


def _only_these(line: Line, count: Part) -> bool:
    """Whether the line tells no more than how many, the two sizes, and how many again."""
    if not isinstance(count, Number) or count.value.denominator != 1 or not 2 <= count.value <= MOST_COUNT:
        return False
    return len(line.parts) == 3 or (len(line.parts) == 4 and getattr(line.parts[3], "value", None) == count.value)
