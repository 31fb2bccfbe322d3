"""What was given for a run or a width, and is how long the building is: it is taken back, and the run or the width asked for."""

from __future__ import annotations

from intents.building_long import LEAST, TOPICS, told_long
from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Length


def not_across(chart: Chart, question: Question) -> None:
    """Take back what was given for a run or a width where it is how long the building is."""
    name = TOPICS.get(question.topic, "")
    across = question.givens.get(name)
    if across is None or across.end <= across.start or not isinstance(across.value, Length) or "long" not in chart.words:
        return
    if across.value.to("ft").value < LEAST and not across.bare:
        return
    if told_long([*chart.words, "", "", ""], *places_of(chart, across)):
        question.givens = {n: heard for n, heard in question.givens.items() if n not in (name, "across")}
        question.missing, question.swaps = [name, *question.missing], []
