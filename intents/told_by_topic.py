"""What the words beside the quantities of a question tell, by the reader of its own topic.

Each reader sees a question that is about its topic, whether a rule or what was learned says so, and gives the quantities of the
line the places that the words leave them; where the words leave more than one, it changes nothing and the question is asked.

A reader of a whole line takes every number of it or none, so that its question goes before what was read of another topic, where
such lines are mostly about its own.

`outright` is what makes a whole question of a line by its words alone.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from intents.boxes_told import BOXES, boxes_outright, boxes_told
from intents.bundles_told import bundles_told
from intents.chart import Chart
from intents.circle_told import circle_told, circumference_outright
from intents.coil_told import coil_told, coils_counted
from intents.half_round import CIRCLE
from intents.in_line import goes_first
from intents.jacks_told import jacks_told
from intents.joint_told import joint_told
from intents.legs_counted import TOPIC as BENT
from intents.legs_counted import last_is_a_leg
from intents.penetration_told import penetration_told
from intents.question import Question
from intents.rate_by_words import rate_by_words, rate_outright
from intents.rates_told import RATE, told_outright
from intents.roof_told import roof_told
from intents.rounded_told import rounded_told
from intents.sheets_alike import sheets_left, sheets_whole
from intents.sticks_told import sticks_counted, sticks_not_listed, sticks_told
from intents.stringer_told import stringer_told
from intents.studs_told import studs_told
from intents.trim_told import trim_counted, trim_told
from intents.unit_wanted import unit_wanted
from intents.wall_side import TOPIC as SIDE
from intents.wall_side import side_told
from solvers.slots import Parameter

Parameters = tuple[Parameter, ...]
TOLD: dict[str, tuple[Callable[[Chart, Question, Parameters], None], ...]] = {
    RATE: (rate_by_words,),
    BOXES: (boxes_told,),
    CIRCLE: (circle_told,),
    SIDE: (side_told,),
    BENT: (last_is_a_leg,),
    "angle off": (joint_told,), "how far open": (joint_told,),
    "fastener penetration": (penetration_told,), "jack rafters": (jacks_told,),
    "roof area": (roof_told,), "rounded pitch": (rounded_told,),
    "pieces from a stick": (sticks_counted,),
    "sheets": (sheets_left,),
    "strips from a coil": (coils_counted,),
    "trim round openings": (trim_counted,),
}
WHOLE: dict[str, Callable[[Chart], Question | None]] = {
    "cut list": sticks_not_listed,
    "pieces from a stick": sticks_told,
    "sheets": sheets_whole,
    "strips from a coil": coil_told,
    "trim round openings": trim_told,
}
ENOUGH = 2  # words beside the numbers: "two windows 3 by 4" goes on from the question before
POSSIBLE = 0.1  # from which on they may be about it: of 89 rates told outright 11 were none, all of them far less likely
MOSTLY = 0.4  # the share from which on lines like this one are mostly about a topic


def told_by_topic(chart: Chart, questions: list[Question], topics: Mapping[str, Parameters]) -> None:
    """Give the quantities of each question the places that its topic's own readers find for them."""
    questions[:] = [q for q in questions if q.topic != RATE or q.givens.keys() != {"many"}]  # 8 tubes: of the question before
    likeliest = max(chart.likely, key=chart.likely.__getitem__, default="")
    said = (chart.weighs & ~chart.numbers).bit_count()
    whole = WHOLE.get(likeliest) if said >= ENOUGH and chart.likely.get(likeliest, 0) >= MOSTLY else None
    told = whole(chart) if whole is not None else None
    if told is not None:
        goes_first(chart, questions, told)
        return
    for question in questions:
        for reader in TOLD.get(question.topic, ()):
            reader(chart, question, topics[question.topic])


def outright(chart: Chart) -> Question | None:
    """The question of a line whose words tell it whole; of the newer topics, where such lines may be about them at all."""

    def may_be(topic: str) -> bool:
        return chart.likely.get(topic, 0) >= POSSIBLE

    return (
        (may_be(BOXES) and boxes_outright(chart)) or told_outright(chart) or bundles_told(chart)
        or studs_told(chart) or stringer_told(chart)
        or (may_be(RATE) and rate_outright(chart))
        or (may_be(CIRCLE) and circumference_outright(chart)) or unit_wanted(chart)
    )  # fmt: skip
