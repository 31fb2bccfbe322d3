"""What is told of a topic that is known already, a missing piece or a change, where its quantities need more than their words."""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.only_way import sides_of_the_saw
from intents.question import Question
from intents.run_told import run_told
from intents.saw_labels import named_before, one_way_and_other, reach_put_right
from intents.sealed_round import TOPIC as SEALED
from intents.sealed_round import sealed_round
from solvers.slots import Parameter

SAW = "can my saw cut it"


def known_topic(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Put the quantities of more about a topic to their places."""
    if question.topic == SAW:
        sides_of_the_saw(chart, question)
        if not reach_put_right(chart, question):
            one_way_and_other(chart, question, topics)
        named_before(chart, question, topics)
    if question.topic == SEALED:
        sealed_round(chart, [question], topics, known=True)
    run_told(chart, question)
