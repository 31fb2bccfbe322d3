"""So many fasteners at each place: "two nails every 16 inches on 18 boards", "two screws per joist", "three nails at every stud".

The number before the fasteners is of each place, and the rows are the boards or straps that are counted, where both were said.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.placing import heard_as, place_of
from intents.question import Question
from intents.reading import Reading
from solvers.quantities import Number
from solvers.slots import Parameter

TOPIC = "fasteners"
_FIXED = frozenset("nails nail screws screw staples clips fasteners fixings tacks".split())
_EACH = frozenset(("every", "per", "each", "a", "at", "to", "in", "into", "on"))
_PLACES = frozenset("every per each a stud joist batten strap rafter point place support bearer".split())
_ROWS = frozenset("boards planks straps battens courses rows strips sheets furring".split())
_MOST = 6


def at_each_place(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the number at each place, and the rows, to the first question."""
    question = next(iter(questions), None)
    if question is None or question.topic != TOPIC or "at_each" in question.givens:
        return
    numbers = [r for r in quantities(chart, 0, len(chart.words)) if r.kind == "number"]
    each = [r for r in numbers if _of_each(chart.words, r)]
    rows = [r for r in numbers if not _ROWS.isdisjoint(chart.words[r.end : r.end + 2]) and r not in each]
    if len(each) != 1 or len(rows) != 1:
        return
    parameters = {p.name: p for p in topics[TOPIC]}
    heard = {n: heard_as(chart, parameters[n], r, True) for n, r in (("at_each", each[0]), ("rows", rows[0]))}
    given = {name: one for name, one in heard.items() if one is not None}
    said = {chart.said(r.start, r.end) for r in (*each, *rows)}
    if len(given) < len(heard):
        return
    spans = [place_of(chart, r.start, r.end)[:2] for r in (*each, *rows)]
    kept = {n: h for n, h in question.givens.items() if n not in heard and (h.start, h.end) not in spans}
    question.givens = {**kept, **given}
    question.missing = [name for name in question.missing if name not in given]
    question.unplaced = [text for text in question.unplaced if text not in said]
    question.swaps, question.rival = [], False


def _of_each(words: list[str], reading: Reading) -> bool:
    """Two nails every 16 inches; two screws per joist; two screws at each stud."""
    after = words[reading.end : reading.end + 3]
    few = isinstance(reading.value, Number) and 1 <= reading.value.value <= _MOST
    if few and after[:1] == ["each"] and not _FIXED.isdisjoint(words) and after[1:2] in ([], ["?"], ["."]):
        return True  # nails for 16 courses 32 foot every 16, 2 each
    if not few or _FIXED.isdisjoint(after[:1]):
        return False
    return not _EACH.isdisjoint(after[1:2]) and not _PLACES.isdisjoint(after[1:3])
