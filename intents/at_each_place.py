"""So much at each place: "two nails every 16 inches on 18 boards", "two screws per joist", "vents of 50 square inches each",
"the strip gives 6 sq in a foot".

The number before the fasteners is of each place, and the rows are the boards or straps that are counted, where both were said.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.placing import heard_as, place_of
from intents.question import Question
from intents.reading import Reading
from solvers.quantities import Area, Number
from solvers.slots import Parameter

TOPIC, VENTS = "fasteners", "vent area"
_A_FOOT, _ALONG = frozenset("a per each the".split()), frozenset("lineal linear running".split())
_VENTS = frozenset("vent vents louvre louvres louver louvers".split())
_KINDS_OF_VENT = frozenset("roof box gable static soffit".split())
_FIXED = frozenset("nails nail screws screw staples clips fasteners fixings tacks".split())
_EACH = frozenset(("every", "per", "each", "a", "at", "to", "in", "into", "on"))
_PLACES = frozenset("every per each a stud joist batten strap rafter point place support bearer".split())
_BOARDS = frozenset("deck decking fence floor siding cladding soffit".split())  # boards
_ROWS = frozenset("boards planks straps battens courses rows strips sheets furring".split())
_APART = frozenset("oc o.c o.c. centres centers centre center".split())
_MOST = 6


def at_each_place(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the number at each place, and the rows, to the first question."""
    question = next(iter(questions), None)
    if question is None or question.topic != TOPIC:
        return
    _rows_stay(chart, question)
    if not question.givens.keys().isdisjoint(("at_each", "in_each")):
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


def _rows_stay(chart: Chart, question: Question) -> None:
    """Nothing else is what stands right before the boards or straps: no spacing of 20 courses."""
    rows = question.givens.get("rows")
    after = [word.strip(",.").lower() for word in chart.text[rows.end :].split()[:2]] if rows is not None else []
    if after and (after[0] in _ROWS or (after[0] in _BOARDS and after[-1] in _ROWS)):
        question.swaps = [way for way in question.swaps if way.get("rows") == rows]
        question.rival = question.rival and bool(question.swaps)


def _of_each(words: list[str], reading: Reading) -> bool:
    """Two nails every 16 inches; two screws per joist; two screws at each stud."""
    after = words[reading.end : reading.end + 3]
    few = isinstance(reading.value, Number) and 1 <= reading.value.value <= _MOST
    if few and after[:1] == ["each"] and not _FIXED.isdisjoint(words) and after[1:2] in ([], ["?"], ["."]):
        return True  # nails for 16 courses 32 foot every 16, 2 each
    if not few or _FIXED.isdisjoint(after[:1]):
        return False
    return (not _EACH.isdisjoint(after[1:2]) and not _PLACES.isdisjoint(after[1:3])) or _spaced(words[reading.end + 1 :])


def _spaced(after: list[str]) -> bool:
    """Whether it is told right there how far apart they are: 1 nail | 16 oc, two screws | @ 600 centres."""
    after = after[1:] if after[:1] in (["@"], ["at"]) else after
    return after[:1] != [] and after[0].isdecimal() and not _APART.isdisjoint(after[1:2])


def vents_told(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give what a foot of strip, or each vent, has to the first question, which had no place for it."""
    question = next(iter(questions), None)
    if question is None or question.topic != VENTS:
        return
    parameters = {p.name: p for p in topics[VENTS]}
    sizes = [(r, *_of_vents(chart.words, r)) for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Area)]
    attics = [r for r, name, _ in sizes if not name]
    for reading, name, end in sizes:
        heard = heard_as(chart, parameters.get(name), reading, True) if name and name not in question.givens else None
        area = question.givens.get("area")
        taken = area is not None and heard is not None and area.start == heard.start
        attic = heard_as(chart, parameters["area"], attics[0], True) if taken and len(attics) == 1 else None
        if heard is None or (taken and attic is None):
            continue
        question.givens = {**question.givens, name: heard, **({"area": attic} if attic else {})}
        said = {chart.said(r.start, r.end) for r in (reading, *attics)} | {chart.said(reading.end, end)}
        question.unplaced = [text for text in question.unplaced if text not in said]


def _of_vents(words: list[str], reading: Reading) -> tuple[str, int]:
    """Whose area it is and where its words end: 6 sq in a foot, 50 sq in each, 50 square inch roof vents."""
    at = reading.end
    if not isinstance(reading.value, Area):
        return "", at
    foot = at + 1 + (words[at + 1 : at + 2] != [] and words[at + 1] in _ALONG)
    if words[at : at + 1] and words[at] in _A_FOOT and words[foot : foot + 1] in (["foot"], ["ft"]):
        return "strip", foot + 1
    kind = at + (words[at : at + 1] != [] and words[at] in _KINDS_OF_VENT)
    each = words[at : at + 1] in (["each"], ["apiece"]) or not _VENTS.isdisjoint(words[kind : kind + 1])
    each = each or (words[at : at + 1] in (["a"], ["per"]) and not _VENTS.isdisjoint(words[at + 1 : at + 2]))
    return ("each" if each and reading.value.unit == "in2" else ""), at
