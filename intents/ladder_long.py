"""How long a ladder has to be is asked, and not where its foot goes: "how long a ladder for a 16 ft gutter"."""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart
from intents.question import Heard, Question

TOPIC, ASKED, LENGTH = "ladder footing", "asked", "LENGTH"
_LADDERS = frozenset(("ladder", "ladders"))
_ASKS = frozenset((*((w, n) for w in ("what", "which") for n in ("length", "size")), ("how", "long"), ("ladder", "length")))
_FOOT = frozenset("out far bottom base where set stand stands footing lean leans pull angle".split())  # its foot is asked too


def ladder_long(chart: Chart, question: Question) -> None:
    """Tell the first question that a ladder's length is what is asked."""
    words = chart.words
    if question.topic != TOPIC or _LADDERS.isdisjoint(words) or not _FOOT.isdisjoint(words) or ASKED in question.givens:
        return
    at = next((at for at, pair in enumerate(pairwise(words)) if pair in _ASKS), None)
    if at is not None:
        start, end = chart.tokens[at].start, chart.tokens[at + 1].end
        question.givens[ASKED] = Heard(LENGTH, start, end, chart.text[start:end])
