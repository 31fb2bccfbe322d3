"""A wall that kicks out at 135 degrees meets the other at that corner: turned by so much it would go back on itself."""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of

TOPIC = "miter for a corner"
MOST_TURNED, SURELY = 90, 120  # degrees; between the two it may be either, and is asked about
_TURNED = frozenset("turn turns turned turning off straight deflection".split())
_BY_THAT = {(turns, "by") for turns in ("turn", "turns", "turning")}
_AT_THAT = {(turns, "at") for turns in ("turn", "turns", "turning")}
_NEAR = 4  # words from the angle; "what do I turn the saw to" is of the saw


def kicked_out(chart: Chart, question: Question) -> None:
    """Take what was given for a turn as the corner, where it is more than a wall turns and no word says that it is one."""
    if question.topic == TOPIC and "turn" not in question.givens and not _BY_THAT.isdisjoint(pairwise(chart.words)):
        question.givens = {("turn" if name == "corner" else name): heard for name, heard in question.givens.items()}
        question.swaps = []  # the board turns by that much
    turn = question.givens.get("turn") if question.topic == TOPIC else None
    if turn is None or turn.end <= turn.start or turn.value.value <= MOST_TURNED or "corner" in question.givens:
        return
    start, end = places_of(chart, turn)
    at_it = not _AT_THAT.isdisjoint(pairwise(chart.words))  # it turns at 118: the corner, or the turn
    if not at_it and not _TURNED.isdisjoint(chart.words[max(0, start - _NEAR) : end + _NEAR]):
        return
    cornered = {name: heard for name, heard in question.givens.items() if name != "turn"} | {"corner": turn}
    if turn.value.value < SURELY:
        question.swaps = [cornered]
    else:
        question.givens, question.swaps = cornered, []
