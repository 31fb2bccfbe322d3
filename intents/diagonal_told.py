"""A diagonal that is told and not asked for: "the diagonal's 10 foot and one side 6, what's the other side".

With one side it is the long side of a right triangle, whose third is asked; two of them are held against the sides, and are
none themselves. Of a square one side is told.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from solvers.quantities import Length

CHECK, OUT, TRIANGLE, SUM = "square check", "out of square", "right triangle", "tape arithmetic"
_DIAGONALS = frozenset("diagonal diagonals diag diags corner corners".split())
_PHRASES = tuple(
    tuple(said.split("-"))
    for said in "diagonal diagonals diag diags diagonally corner-to-corner across-corners across-the-corners".split()
)
_IS = frozenset("is are was were measures measured measure reads read at came comes out to of tape says said a : =".split())
_SIDES = frozenset("side sides width height length depth wide high deep long tall way leg wall top".split())
_OTHER, _HOW = frozenset("other second missing remaining".split()), frozenset("wide high tall deep long".split())
_ONES, _EACH = frozenset(("one", "first", "other", "second")), frozenset("each every both all".split())
_HOW_SQUARE = frozenset("square squared out off racked skewed true whack rhombus plumb".split())
_ASKED_SIDES = frozenset("width height length depth side".split())
_SCORE = 3.0  # of a reading that only these words make


@dataclass(slots=True)
class _Said:
    """A length, and what the words beside it tell it is of."""

    reading: Reading
    diagonal: bool
    side: bool


def diagonal_told(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Read a told diagonal as one, where words leave no doubt that it is."""
    words = chart.words
    first = next(iter(questions), None)
    if _DIAGONALS.isdisjoint(words) or (first is not None and first.topic not in (CHECK, OUT, SUM, TRIANGLE)):
        return
    if first is not None and first.topic in (OUT, TRIANGLE) and first.plain:
        return
    said = _lengths(chart)
    told = [one for one in said if one.diagonal]
    if len(said) == 1:
        _of_a_square(chart, questions, topics, said[0])
    elif len(said) == 2 and len(told) == 1 and not _paired(words, said):
        _third_side(chart, questions, topics, told[0], next(one for one in said if one is not told[0]))
    elif len(told) == 2:
        _two_of_them(chart, questions, topics, said, told)


def _third_side(chart: Chart, questions: list[Question], topics: Mapping[str, Any], long: _Said, side: _Said) -> None:
    """The side that is left, of a diagonal and one side."""
    if not _HOW_SQUARE.isdisjoint(chart.words):  # how far out a frame is takes its other side
        first = next(iter(questions), None)
        if first is not None and first.topic == CHECK and {"side", "other_side"} <= first.givens.keys():
            _lacks_a_side(chart, questions, topics, long, side)
        return
    if not (side.side or _asks_side(chart, side)):
        return
    place = next(p for p in topics[CHECK] if p.name == "side")
    heard = [heard_as(chart, place, one.reading, True) for one in (side, long)]
    if heard[0] is None or heard[1] is None:
        return
    run, slope = _alike(heard[0], heard[1])
    if run.value.to("in").value < slope.value.to("in").value:
        given = {"run": run, "slope": slope, "wanted": Heard("RISE", 0, 0, "")}
        questions[:] = [Question(TRIANGLE, given, _SCORE, words=["diagonal"])]


def _lacks_a_side(chart: Chart, questions: list[Question], topics: Mapping[str, Any], long: _Said, side: _Said) -> None:
    """A diagonal and one side, asked whether they are square: what is missing is the other side."""
    places = {p.name: p for p in topics[OUT]}
    given = {"side": heard_as(chart, places["side"], side.reading, True)}
    given["diagonal"] = heard_as(chart, places["diagonal"], long.reading, True)
    if None not in given.values():
        questions[:] = [Question(OUT, given, _SCORE, words=["diagonal"], missing=["other_side"])]  # type: ignore[arg-type]


def _alike(side: Heard, long: Heard) -> tuple[Heard, Heard]:
    """Two lengths with no unit in one: 25 across the corners and 15 one way."""
    if not (side.bare and long.bare) or long.value.value <= side.value.value:
        return side, long
    size = Length(long.value.value, side.value.unit, long.text)
    return replace(side, others=()), replace(long, value=size, others=())


def _two_of_them(
    chart: Chart, questions: list[Question], topics: Mapping[str, Any], said: list[_Said], told: list[_Said]
) -> None:
    """Both diagonals beside the two sides: either may be held against the true one; without the sides those are asked for."""
    places = {p.name: p for p in topics[OUT]}
    sides = [one for one in said if not one.diagonal]
    if len(sides) not in (0, 2):
        return
    names = dict(zip(("side", "other_side"), sides, strict=False))
    given = {name: heard_as(chart, places[name], one.reading, True) for name, one in names.items()}
    ways = [{**given, "diagonal": heard_as(chart, places["diagonal"], one.reading, True)} for one in told]
    if any(None in way.values() for way in ways):
        return
    question = Question(OUT, ways[0], _SCORE, words=["diagonals"])  # type: ignore[arg-type]
    if sides:
        question.swaps = [ways[1]]  # type: ignore[list-item]
    else:
        question.missing = ["side", "other_side"]
        question.left = [ways[1]["diagonal"].text]  # type: ignore[union-attr]
    questions[:] = [question]


def _of_a_square(chart: Chart, questions: list[Question], topics: Mapping[str, Any], one: _Said) -> None:
    """One side of a square is both: the diagonal of a 12 foot square, of a square 8 foot each side."""
    words, end = chart.words, one.reading.end
    square = words[end : end + 1] == ["square"]
    each = "square" in words and any(a in _EACH and b in _SIDES for a, b in pairwise(words[end:]))
    first = next(iter(questions), None)
    if not (square or each) or (first is not None and first.topic != CHECK):
        return
    places = {p.name: p for p in topics[CHECK]}
    given = {name: heard_as(chart, places[name], one.reading, True) for name in ("side", "other_side")}
    if None not in given.values():
        questions[:] = [Question(CHECK, given, _SCORE, words=["diagonal"])]  # type: ignore[arg-type]


def _lengths(chart: Chart) -> list[_Said]:
    """The lengths of the sentence in order, with a bare number for one; the one of "one side" is none."""
    found: list[Reading] = []
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if isinstance(r.value, Length | Dims) or r.kind == "number"]
        best = max(here, key=lambda r: (r.end, r.kind != "number"), default=None)
        at = best.end if best else at + 1
        if best is not None and isinstance(best.value, Dims):
            found.extend(best.value.parts)
        elif best is not None and not (best.end == best.start + 1 and chart.words[best.start] == "one"):
            found.append(best)
    seen: list[_Said] = []
    for reading in found:
        side = _side_beside(chart.words, reading)
        row = bool(seen) and seen[-1].diagonal and _with_the_other(chart.words, seen[-1].reading, reading)
        seen.append(_Said(reading, not side and (row or _told(chart.words, reading)), side))
    return seen


def _told(words: list[str], reading: Reading) -> bool:
    """Whether a length is said to be the diagonal's."""
    after = words[reading.end : reading.end + 3]
    if any(tuple(after[: len(phrase)]) == phrase for phrase in _PHRASES):
        return True
    at = reading.start
    while at and words[at - 1] in _IS:
        at -= 1
    return any(tuple(words[max(0, at - len(phrase)) : at]) == phrase for phrase in _PHRASES)


def _with_the_other(words: list[str], first: Reading, second: Reading) -> bool:
    """Whether a length follows that of a diagonal as the other's: diagonals are 20-1 and 19-11; and the other's 14-2."""
    between = [word for word in words[first.end : second.start] if word not in _IS and word not in (",", "the")]
    both = not {"diagonals", "diags"}.isdisjoint(words[: first.start])
    return between in (["other"], ["and", "other"], ["second"], ["and", "second"]) or (both and between in (["and"], ["&"], []))


def _side_beside(words: list[str], reading: Reading) -> bool:
    """Whether a length is said to be a side's: one side 6, 12 wide, 15 one way."""
    after = words[reading.end : reading.end + 2]
    if after and (after[0] in _SIDES or (after[0] in _ONES and (after[1:2] == [] or after[1] in _SIDES))):
        return True
    at = reading.start
    while at and words[at - 1] in _IS:
        at -= 1
    return at > 0 and words[at - 1] in _SIDES


def _paired(words: list[str], said: list[_Said]) -> bool:
    """Whether the two are the sides of one thing: 32 by 9; 12 and 16."""
    joint = words[said[0].reading.end : said[1].reading.start][:1]
    return joint in (["by"], ["x"], ["×"]) or (joint in (["and"], ["&"]) and not any(one.side for one in said))


def _asks_side(chart: Chart, side: _Said) -> bool:
    """Whether a side is asked for: the other side, how wide, what width."""
    words = chart.words
    for a, b in pairwise(words):
        if (a in _OTHER and b in _SIDES) or (a == "how" and b in _HOW) or (a in ("what", "which") and b in _ASKED_SIDES):
            return True
    return side.reading.end < len(words) and words[-1].strip("?") in _ASKED_SIDES
