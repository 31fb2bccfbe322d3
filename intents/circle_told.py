"""A circle by its radius or how far across it is, told without those words, and what else is said of it.

"Center to edge is 11", "string 1.1 m from the peg", "halfway across is 33" and "R 2'3"" are radii; a height, a thickness, a
weight or a year is no size of a circle and is left out, where the circle is told without it.
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.chart import Chart, longest, once
from intents.counted_line import settle
from intents.expressions import expression
from intents.half_round import AREAS, CIRCLE, ROUND_IT
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.rates_told import SCORE
from intents.reading import Reading
from solvers.quantities import Length, Number, Quantity, Weight
from solvers.slots import Parameter

_RADIUS, _ACROSS = "circle_radius", "across"
_LINK = r"(?: (?:is|of|at|'s|s|=|:|was|set|about|just|,|a|the))*$"
_MIDDLE, _EDGE = r"(?:cent(?:er|re)|middle|peg|stake)", r"(?:edge|rim|outside|perimeter)"
_RADIUS_BEFORE = expression(
    rf"(?:\bradius|\bradii|(?:^|\s)r|\brad|\b{_MIDDLE} (?:out )?to (?:the )?{_EDGE}(?: of (?:the|a|my)(?: [a-z]+){{1,2}}?)?"
    rf"|\b{_EDGE} to (?:the )?{_MIDDLE}|\bhalf ?way across(?: it)?|\bhalf (?:of it|the diameter)|\bspokes?"
    r"|\b(?:compass|compasses|trammel|dividers)(?: is| are)? set)" + _LINK
)
_RADIUS_AFTER = expression(
    r"(?:of )?(?:radius\b|rad\b|r\b|from (?:the |a |its )?(?:peg|stake|nail|pin|cent(?:er|re)|middle)\b"
    r"|(?:to|out to) (?:the )?edge\b|half ?way across\b)"
)
_STRING_BEFORE = expression(r"\b(?:string|rope|cord|line|tape|trammel|swing|swung|swinging)" + _LINK)
_STRING_AFTER = expression(
    r"(?:long )?(?:of |piece of )?(?:string|rope|cord|trammel)\b|long from\b|from (?:a|the) (?:post|tree)\b"
)
_STRINGS = frozenset("string rope cord trammel".split())
_STAKES = frozenset("peg pegs stake stakes nail pin".split())
_SWUNG = _STAKES | frozenset("post tree pegs stake stakes nail pin swing swung swinging center centre middle".split())
# After a comma it was told of the size before: 900 mm dia, 150 thick.
_ACROSS_BEFORE = expression(r"\b(?:dia|diam|diameter|across|od|wide|width)" + _LINK.replace("|,", r"|\."))
_ACROSS_AFTER = expression(
    r"(?:in )?(?:across|dia\b|diam\b|diameter|wide|od\b|outside diameter|o d\b|round\b|(?:straight )?through\b)"
)
_NOT_ITS_SIZE = frozenset("high tall deep height depth thick long".split())
_THICK_TOO = frozenset(("thick", "long"))  # a post may be six inches thick, a string so long
_OF_TIME = frozenset("year years month months weeks days hours old".split())
_NUMBERED = frozenset("invoice order unit po job room code no number gate flat bay on".split())
_ROUNDS, _TURNS = frozenset(("round", "around")), frozenset(("twice", "thrice", "turns"))
_ARCS = frozenset("arc arch arched arches curve curved rise segment half semicircle fan eyebrow bow bay bays sides".split())
_NAMES = frozenset("circumference girth circumferences".split())


def circle_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give the sizes said of a circle the places that the words beside them tell."""
    sizes = _sizes(chart)
    if asks_across(chart.words) or not _TURNS.isdisjoint(chart.words):
        question.lacking = question.lacking or 1
        return
    radii = [one for one in sizes if _is_radius(chart, one)]
    wide = [one for one in sizes if one not in radii and _is_across(chart.words, one)]
    told = radii + wide
    if not told and _ACROSS in question.givens and not question.swaps:
        given = question.givens[_ACROSS].start
        told = [one for one in sizes if chart.tokens[one.start].start == given and not _of_else(chart.words, one)]
    rest = [one for one in sizes if one not in told]
    if len(told) != 1 or not all(_of_else(chart.words, one) for one in rest):
        _without_heights(chart, question, sizes)
        times = any(before in ("times", "×") and chart.readings[at] for at, before in enumerate(chart.words[:-1], 1))
        question.lacking = question.lacking or int(times and "pi" not in chart.words)
        return
    name = _RADIUS if radii else _ACROSS
    heard = heard_as(chart, next(p for p in parameters if p.name == name), told[0], True)
    if heard is None:
        return
    asked = next((way["asked"] for way in (question.givens, *question.swaps) if "asked" in way), None)
    if asked is None and not AREAS.isdisjoint(chart.words) and ROUND_IT.isdisjoint(chart.words):
        asked = Heard("AREA", 0, 0, "")
    givens = {name: heard} if asked is None else {name: heard, "asked": asked}
    left = [chart.said(one.start, one.end) for one in rest if one.value.value]  # type: ignore[union-attr]
    settle(question, givens, left)


@once
def circumference_outright(chart: Chart) -> Question | None:
    """How far round it is, of what is told to be so far across, whatever else is told of it: 5 ft across and 8 ft high."""
    words = chart.words
    if not _asks_round(words) or not AREAS.isdisjoint(words) or not _ARCS.isdisjoint(words):
        return None
    sizes = _sizes(chart)
    told = [one for one in sizes if _is_across(words, one)]
    rest = [one for one in sizes if one not in told]
    if len(told) != 1 or not isinstance(told[0].value, Length) or (not rest and _NAMES.isdisjoint(words) and "many" not in words):
        return None
    across = told[0].value.to("in").value
    # What is higher than half of that is the height of no arch.
    if not all(isinstance(one.value, Length) and _of_else(words, one) and 2 * one.value.to("in").value > across for one in rest):
        return None
    start, end = chart.tokens[told[0].start].start, chart.tokens[told[0].end - 1].end
    text = chart.text[start:end]
    heard = Heard(Length(told[0].value.value, told[0].value.unit, text), start, end, text)
    left = [chart.said(one.start, one.end) for one in rest]
    return Question(CIRCLE, {_ACROSS: heard}, SCORE, words=["circumference", "round", "across"], left=left)


def _asks_round(words: Sequence[str]) -> bool:
    """Whether it is asked how far round something is: its circumference, how far around, how many feet round."""
    if not _NAMES.isdisjoint(words):
        return True
    asked = {(words[at], words[at + 1]) for at in range(len(words) - 1) if words[at] in ("how", "distance", "many")}
    far = not asked.isdisjoint((("how", "far"), ("distance", "round"), ("distance", "around")))
    far = far or not asked.isdisjoint(("many", unit) for unit in ("feet", "inches", "metres", "meters"))
    return far and not _ROUNDS.isdisjoint(words)


def asks_across(words: Sequence[str]) -> bool:
    """Whether how far across it is is what is asked for."""
    return any(
        tuple(words[at : at + 3]) in (("how", "far", "across"), ("how", "wide", "is"), ("what", "is", "across"))
        or (words[at] in ("what", "what's", "whats") and not {"diameter", "radius"}.isdisjoint(words[at + 1 : at + 4]))
        for at in range(len(words))
    )


def _sizes(chart: Chart) -> list[Reading]:
    """The quantities of a line, "one" and "a" left out."""

    def is_size(reading: Reading) -> bool:
        alone = reading.end == reading.start + 1 and chart.words[reading.start] in ("one", "a", "an", "once", "foot", "inch")
        return isinstance(reading.value, Quantity) and not alone and not _is_hour(chart.words, reading)

    return list(longest(chart, 0, len(chart.words), is_size))


def _is_hour(words: Sequence[str], one: Reading) -> bool:
    """Whether a number is part of a time of day: 14 : 00."""
    before, after = words[max(0, one.start - 2) : one.start], words[one.end : one.end + 2]
    hour = len(after) > 1 and after[0] == ":" and after[1].isdigit() and words[one.end - 1].isdigit()
    return hour or (len(before) > 1 and before[1] == ":" and before[0].isdigit() and words[one.start].isdigit())


def _beside(words: Sequence[str], one: Reading) -> tuple[str, str]:
    return " ".join(words[max(0, one.start - 7) : one.start]), " ".join(words[one.end : one.end + 6])


def _is_radius(chart: Chart, one: Reading) -> bool:
    """Whether a size is told as a radius: by its name, from the middle to the edge, or as the string that is swung."""
    if not isinstance(one.value, Length | Number) or _of_else(chart.words, one, strictly=True):
        return False
    before, after = _beside(chart.words, one)
    if _RADIUS_BEFORE.search(before) or _RADIUS_AFTER.match(after):
        return True
    string = _STRING_BEFORE.search(before) or _STRING_AFTER.match(after)
    if _STRINGS.isdisjoint(chart.words):
        return False
    tied = not _STAKES.isdisjoint(chart.words) and not _is_across(chart.words, one)  # a rope to a stake, 9 foot long
    return tied or (bool(string) and not _SWUNG.isdisjoint(chart.words))


def _is_across(words: Sequence[str], one: Reading) -> bool:
    before, after = _beside(words, one)
    if not isinstance(one.value, Length | Number) or _of_else(words, one, strictly=True):
        return False
    return _ACROSS_AFTER.match(after) is not None or _ACROSS_BEFORE.search(before) is not None


def _of_else(words: Sequence[str], one: Reading, strictly: bool = False) -> bool:
    """Whether a quantity is no size of a circle: how high it stands, what it weighs, how old somebody is."""
    before, after = words[max(0, one.start - 2) : one.start], words[one.end : one.end + 2]
    high = _NOT_ITS_SIZE - _THICK_TOO if strictly else _NOT_ITS_SIZE
    if before[-1:] in (["invoice"], ["po"], ["code"]):  # whatever unit it was taken with
        return True
    if isinstance(one.value, Weight) or not high.isdisjoint([*after[:1], *before[-1:]]):
        return True
    if one.kind == "number" and one.end == one.start + 1 and words[one.start] == "no":
        return True
    if isinstance(one.value, Length) and not one.value.value:
        return True  # no lap
    return isinstance(one.value, Number) and not (_OF_TIME.isdisjoint(after) and _NUMBERED.isdisjoint([*before[-1:], *after[:1]]))


def _without_heights(chart: Chart, question: Question, sizes: Sequence[Reading]) -> None:
    """A height is never how far across it is: then that is asked for."""
    heights = {chart.tokens[one.start].start for one in sizes if _of_else(chart.words, one, strictly=True)}
    for name in (_ACROSS, _RADIUS):
        if name in question.givens and question.givens[name].start in heights:
            question.givens = {each: heard for each, heard in question.givens.items() if each != name}
            question.swaps = []
