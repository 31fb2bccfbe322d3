"""A pitch told by its rise alone, where a question lacks nothing else: rake return 7, peak joint at 9, plumb cut at 8 and a half.

Asked for the pitch a builder says "seven"; said with the question it is no less a pitch, if it ends what is said of it.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.fitting import fit
from intents.placing import place_of
from intents.question import Heard, Question
from solvers.quantities import Pitch, Quantity
from solvers.slots import Parameter

# After the number: nothing more of it, or a word for what slopes.
_ENDS = frozenset((*".,;?!", "", *"roof roofs slope and with on for plumb square fascia rake gable what whats".split()))
LEAST = 2  # of rise; "one rake" has none
_BEFORE = frozenset("return joint level peak cut at is a of for on with roof angle rake height rise length".split())


def bare_pitch(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the first question the pitch that it lacks, where the one number that is left can be that."""
    question = next(iter(questions), None)
    if question is None or len(question.missing) != 1 or question.swaps:
        return
    parameter = next((p for p in topics.get(question.topic, ()) if p.name == question.missing[0]), None)
    if parameter is None or parameter.kind is not Pitch:
        return
    spans = [(heard.start, heard.end) for heard in question.givens.values()]
    said = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Quantity)]
    left = [r for r in said if not any(start <= chart.tokens[r.start].start < end for start, end in spans)]
    if len(left) != 1 or left[0].kind != "number":
        return
    after, before = chart.words[left[0].end : left[0].end + 1] or [""], chart.words[left[0].start - 1 : left[0].start]
    if after[0] not in _ENDS or not before or before[0] not in _BEFORE:
        return
    place = place_of(chart, left[0].start, left[0].end)
    found = fit(left[0], parameter, place[2], cued=True)
    if found is not None and found.value.value >= LEAST and {place[2]}.issuperset(question.unplaced):
        question.givens[parameter.name] = Heard(found.value, *place, found.sure, found.others)
        question.missing, question.unplaced = [], []
