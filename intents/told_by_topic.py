"""What the words beside the quantities of a question tell, by the reader of its own topic.

Each reader sees a question that is about its topic, whether a rule or what was learned says so, and gives the quantities of the
line the places that the words leave them; where the words leave more than one, it changes nothing and the question is asked.
`outright` is what makes a whole question of a line by its words alone, before it is asked what sentences like it are about.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from intents.boxes_told import BOXES, boxes_outright, boxes_told
from intents.chart import Chart
from intents.circle_told import circle_told, circumference_outright
from intents.half_round import CIRCLE
from intents.question import Question
from intents.rate_by_words import rate_by_words, rate_outright
from intents.rates_told import RATE, told_outright
from intents.wall_side import TOPIC as SIDE
from intents.wall_side import side_told
from solvers.slots import Parameter

Parameters = tuple[Parameter, ...]
TOLD: dict[str, tuple[Callable[[Chart, Question, Parameters], None], ...]] = {
    RATE: (rate_by_words,),
    BOXES: (boxes_told,),
    CIRCLE: (circle_told,),
    SIDE: (side_told,),
}


def told_by_topic(chart: Chart, questions: list[Question], topics: Mapping[str, Parameters]) -> None:
    """Give the quantities of the first question the places that its topic's own readers find for them."""
    first = next(iter(questions), None)
    if first is not None:
        for reader in TOLD.get(first.topic, ()):
            reader(chart, first, topics[first.topic])


def outright(chart: Chart) -> Question | None:
    """The question of a line whose words tell it whole, whichever topic sentences like it are about."""
    return boxes_outright(chart) or told_outright(chart) or rate_outright(chart) or circumference_outright(chart)
