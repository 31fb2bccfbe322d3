"""What sentences like this one mean, and this one never says: a unit into itself, a half of what is split into so many."""

from __future__ import annotations

from intents import second_sums
from intents.chart import Chart
from intents.question import Question
from solvers.sums import DIVIDED, Sum

CONVERSION, EVENLY = "conversion", "divide evenly"
_TWO = frozenset("half halves halve halved two 2 both pair middle centre center".split())


def into_itself(question: Question) -> bool:
    """Whether a conversion is into the very unit that was said, which no word asks for: membrane for 1500 square feet."""
    to, value = question.givens.get("to"), question.givens.get("value")
    return question.topic == CONVERSION and to is not None and value is not None and value.start <= to.start < to.end <= value.end


def halves_unsaid(chart: Chart, top: Question | None, question: Question) -> bool:
    """Whether a sum takes half of what is split, and no word says into two: split 2750 mm."""
    whole = question.givens["sum"].value if question.topic == second_sums.TOPIC and "sum" in question.givens else None
    halves = isinstance(whole, Sum) and whole.operation == DIVIDED and getattr(whole.right, "value", 0) == 2
    return halves and top is not None and top.topic == EVENLY and _TWO.isdisjoint(chart.words)
