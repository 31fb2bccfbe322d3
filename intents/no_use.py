"""What is told of a thing and its topic has no use for: the exposure of shingles whose area is told, how long a flashing is.

It is left out, and the answer says so, where the words beside it name it and the question is whole without it.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Length

_THICK = 4  # inches, at most, that sheets and slabs are
_PART = expression(r"\d+/\d+(?!.*\d)|\d+ ?mm\b")  # as sheets are named by: 5/8, 19 mm
_OF_EACH = {"weight": "weight", "cost": "price"}  # what is told of each, by topic
_LOOSE = frozenset(("gable_height", "wall_length", "wall_height"))  # of a wall, where its area is told already
_STUFF = expression(
    r"@ (?:thick )?(?:mdf|ply(?:wood)?|osb|chipboard|particle ?board|plasterboard|drywall|gyprock|glass|slabs?"
    r"|slates?|steel|marble"
    r"|granite|cement ?board|fibre ?cement|fiber ?cement|sheathing|sheets?|boards?|panels?|hardboard|melamine"
    r"|tiles?|pavers?|rock|sheetrock|gyproc)\b"
)
# Of a topic: what has no use in it, told with the words to its left and right; @ is the quantity.
_NO_USE = {
    "squares": expression(
        r"@ (?:of )?(?:exposure|exposed|showing|to the weather|reveal)\b|\b(?:exposure|showing)(?: of| is| at)? @"
    ),
    "weight": _STUFF,  # whose own weight or price is told
    "cost": _STUFF,
    "fall": expression(
        r"@ (?:of )?(?:flat |long |length |run )?(?:copper|flashing|metal|sill|gutter|lead|zinc|long)\b|@ (?:of )?flat\b"
    ),
}


def no_use(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Leave out the one quantity that has no place, where it is of no use to the topic by its own words."""
    first = next(iter(questions), None)
    words = _NO_USE.get(first.topic) if first is not None else None
    if first is None or words is None or first.missing:
        return
    text = chart.text.lower()
    loose = {n: h.text for n, h in first.givens.items() if isinstance(h.value, Length) and n in _LOOSE}
    each = first.topic in _OF_EACH
    told = each and {"count", _OF_EACH[first.topic]} <= first.givens.keys()
    if told:
        loose |= {n: h.text for n, h in first.givens.items() if n == "piece" and _thin(h.value)}
    idle = [one for one in {*first.unplaced, *loose.values()} if text.count(one.lower()) == 1]
    idle = [one for one in idle if words.search(text.replace(one.lower(), "@"))]
    if each:
        idle = [one for one in idle if one in loose.values() or (told and _PART.match(one))]  # 12 sheets may be a count of them
    if len(idle) != 1 or not {*first.unplaced} <= {*idle}:
        return
    if idle[0] in loose.values() and "area" not in first.givens and not told:
        return
    first.givens = {n: h for n, h in first.givens.items() if loose.get(n) != idle[0]}
    first.unplaced, first.swaps, first.rival = [], [], False
    first.left = [*first.left, idle[0]]


def _thin(value: object) -> bool:
    """Whether a length is how thick a sheet or a slab may be."""
    return isinstance(value, Length) and value.to("in").value <= _THICK
