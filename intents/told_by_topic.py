"""What the words beside the quantities of a question tell, by the reader of its own topic.

Each reader sees a question that is about its topic, whether a rule or what was learned says so, and gives the quantities of the
line the places that the words leave them; where the words leave more than one, it changes nothing and the question is asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from intents.chart import Chart
from intents.jacks_told import jacks_told
from intents.joint_told import joint_told
from intents.penetration_told import penetration_told
from intents.question import Question
from intents.roof_told import roof_told
from intents.rounded_told import rounded_told
from solvers.slots import Parameter

Parameters = tuple[Parameter, ...]
TOLD: dict[str, tuple[Callable[[Chart, Question, Parameters], None], ...]] = {
    "angle off": (joint_told,), "how far open": (joint_told,),
    "fastener penetration": (penetration_told,), "jack rafters": (jacks_told,),
    "roof area": (roof_told,), "rounded pitch": (rounded_told,),
}


def told_by_topic(chart: Chart, questions: list[Question], topics: Mapping[str, Parameters]) -> None:
    """Give the quantities of the first question the places that its topic's own readers find for them."""
    first = next(iter(questions), None)
    if first is None:
        return
    for reader in TOLD.get(first.topic, ()):
        reader(chart, first, topics[first.topic])
