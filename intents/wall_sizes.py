"""The size of the wall, said with no word for it: "wrap for 38-6 x 9, rolls 9 ft x 100 ft", "9200 x 2700, 180 cover".

Where a topic works from the face of a wall and no face was told, the one size of two lengths that has no place, and that is
as big as a wall, is that: its length and its height. A size that a word names otherwise (rolls, sheets, a house) is left.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from intents.chart import Chart
from intents.expressions import expression
from intents.gable_over import FACES
from intents.question import Heard, Question
from intents.reading import Reading
from intents.two_sided import sides_as, two_sided
from solvers.quantities import Length
from solvers.slots import Parameter

ROLLS = "membrane rolls"
WALL = ("wall_length", "wall_height")
_FACE = frozenset(("area", *WALL, "course_length", "courses", "count", "length"))
_NAMED = frozenset(  # whose size stands beside one of these is no wall's
    "roll rolls sheet sheets panel panels window windows door doors opening openings house building shed cabin barn garage room"
    " porch deck roof slab ply osb board boards stick sticks board stock post posts tile tiles".split()
)
_NEAR = 2
_BESIDE = expression(r"\bwalls?\W+(?:(?:is|are|of|it's|its|that's|at|about)\W+)*$", re.IGNORECASE)
_AFTER = expression(r"\W{0,2}(?:foot |feet |ft |m |metre )?wall\b", re.IGNORECASE)
_BY = expression(r"\W*(?:by|x|×)\W*", re.IGNORECASE)
SHORTEST, TALLEST, LONGEST = 4, 40, 300  # ft


def wall_sizes(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the one unplaced size to the wall of the first question, where nothing else tells its face."""
    question = next(iter(questions), None)
    if question is not None and _told_of_it(chart, question):
        return
    if question is None or question.topic not in FACES | {ROLLS} or not _FACE.isdisjoint(question.givens):
        return
    found = [r for r in _sizes(chart) if chart.said(r.start, r.end) in question.unplaced]
    if len(found) != 1 or len(question.unplaced) != 1:
        return
    parameters = {p.name: p for p in topics[question.topic]}
    given = _wall(chart, found[0], parameters)
    if given:
        question.givens |= given
        question.unplaced, question.swaps = [], []


def _told_of_it(chart: Chart, question: Question) -> bool:
    """Whether a size beside the word wall was taken for anything else, and may be the wall's; then it is that: boards for the
    lake wall, 24 by 9."""
    walls = [way for way in question.swaps if {*WALL} <= way.keys()]
    if len(walls) != 1 or not _FACE.isdisjoint(question.givens.keys() - {"area"}):
        return False
    long, high = (walls[0][name] for name in WALL)
    beside = _BESIDE.search(chart.text[: long.start]) or _AFTER.match(chart.text[high.end :])
    if beside is None or not _BY.fullmatch(chart.text[long.end : high.start]):
        return False
    question.givens, question.swaps, question.rival = walls[0], [], False
    return True


def _sizes(chart: Chart) -> list[Reading]:
    """The sizes of two lengths that no word beside them names otherwise."""
    return [size for size in two_sided(chart) if _NAMED.isdisjoint(_near(chart.words, size.start, size.end))]


def _near(words: list[str], start: int, end: int) -> set[str]:
    """The words that may name a size; not the one after it that has a size of its own: 38-6 x 9, rolls 9 ft x 100 ft."""
    own = words[end + 1 : end + 2] and words[end + 1][0].isdecimal()
    return {*words[max(0, start - _NEAR) : start], *(() if own else words[end : end + 1])}


def _wall(chart: Chart, reading: Reading, parameters: Mapping[str, Parameter]) -> dict[str, Heard]:
    """The length and the height of a wall as a size gives them; nothing where it is as big as none."""
    given = sides_as(chart, reading, WALL, parameters)
    sizes = [each.value.to("ft").value for each in given.values() if isinstance(each.value, Length)]
    fits = len(sizes) == len(WALL) and min(sizes) >= SHORTEST and sizes[1] <= TALLEST and sizes[0] <= LONGEST
    return given if fits else {}
