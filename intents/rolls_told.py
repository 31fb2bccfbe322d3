"""Which size of a roll is which, by the words beside each: "36 inches wide and 72 feet long and I lap it 4 inches", "9 foot wide
in 150 foot rolls, laps are 12 inches now".

Where the area is told and every length has a word that names it, nothing else is meant; a wall has no place beside an area.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Question
from intents.reading import Reading
from solvers.quantities import Area, Length
from solvers.slots import Parameter

ROLLS = "membrane rolls"
_WIDE, _LONG, _ROLLS = frozenset(("wide", "width")), frozenset(("long", "length")), frozenset(("roll", "rolls"))
_LAPS = frozenset("lap laps lapped lapping overlap overlaps overlapped".split())
_NEAR = 5  # words from "laps" to how much
_WIDEST, _SHORTEST = 13, 20  # ft, of a roll


def rolls_told(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the sizes of the rolls to the first question, where the words beside each name it."""
    question = next(iter(questions), None)
    if question is None or question.topic != ROLLS or question.plain:
        return
    sizes = list(quantities(chart, 0, len(chart.words)))
    areas = [r for r in sizes if isinstance(r.value, Area)]
    lengths = [r for r in sizes if isinstance(r.value, Length) and r.kind == "length"]
    roles = [_role(chart.words, size) for size in lengths]
    if len(areas) != 1 or not {"roll_width", "roll_length"} <= set(roles) or "" in roles or len(set(roles)) < len(roles):
        return
    parameters = {p.name: p for p in topics[ROLLS]}
    told = zip(("area", *roles), (*areas, *lengths), strict=True)
    heard = {name: heard_as(chart, parameters[name], size, True) for name, size in told}
    givens = {name: each for name, each in heard.items() if each is not None}
    if len(givens) == len(heard):
        kept = {name: each for name, each in question.givens.items() if name == "waste"}
        question.givens, question.swaps, question.missing = {**kept, **givens}, [], []
        said = {each.text for each in givens.values()}
        question.unplaced, question.rival = [text for text in question.unplaced if text not in said], False


def _role(words: list[str], size: Reading) -> str:
    """What a length of a roll is: its width, its length or the lap; "" where no word tells."""
    assert isinstance(size.value, Length)
    feet, after = size.value.to("ft").value, words[size.end : size.end + 1]
    before = words[max(0, size.start - _NEAR) : size.start]
    if not _WIDE.isdisjoint(after) and feet <= _WIDEST:
        return "roll_width"
    if not (_LONG | _ROLLS).isdisjoint(after) and feet >= _SHORTEST:
        return "roll_length"
    return "lap" if not _LAPS.isdisjoint((*before, *after)) and feet <= 2 else ""
