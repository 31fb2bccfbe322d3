"""An overhang that somebody says to leave out: "forget the foot of overhang" goes without it.

"24 wide, not counting the foot of overhang" may only tell what the 24 is without, so both ways go on and the conversation asks.
"""

from __future__ import annotations

from intents.by_the_way import set_aside
from intents.chart import Chart, quantities
from intents.question import Question
from intents.second_reader import places_of

RAKE, OVERHANG = "rake length", "overhang"
_OUT = frozenset("mind forget forgetting ignore ignoring leave bother worry".split())
_BEFORE = 5


def overhang_aside(chart: Chart, question: Question) -> None:
    """Leave an overhang out of the rake, or ask, where it is told to be left out of the account."""
    heard = question.givens.get(OVERHANG) if question.topic == RAKE else None
    if heard is None or heard.end <= heard.start:
        return
    start = places_of(chart, heard)[0]
    reading = next((r for r in quantities(chart, 0, len(chart.words)) if r.start <= start < r.end), None)
    if reading is None or not set_aside(chart.words, reading):
        return
    without = {name: given for name, given in question.givens.items() if name != OVERHANG}
    if _OUT.isdisjoint(chart.words[max(0, reading.start - _BEFORE) : reading.start]):
        question.swaps = [without]
    else:
        question.givens, question.swaps = without, []
