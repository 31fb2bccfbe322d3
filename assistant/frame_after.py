"""What is told of a frame after its diagonal was worked: what the tape reads on it, or another frame."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.pending import Asked
from assistant.record import become, blank
from assistant.said_over import as_length, places_of
from assistant.two_sizes import frame_of
from assistant.usual import ODD
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Length, Number
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

MEASURED_AGAIN = ("square check", "out of square")
_NEAR_IT = Fraction(1, 33)  # of a diagonal: so near to it, a length is that as it was measured
_SIDES = ("side", "other_side")
_OF_A_SIDE = expression(r"\b(?:side|sides|leg|legs|wide|long|high|tall|change|by)\b|\bx\b|×|^\W*(?:\w+ )?make\b", re.IGNORECASE)
_ACROSS = expression(r"[,\s]*\b(?:corner to corner|diagonals?)\b[?\s]*", re.IGNORECASE)
_MEASURED_TOO = expression(r"\b(?:pull|pulled|pulling|taped?|how far|square|off)\b", re.IGNORECASE)


def taped_across(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells what the diagonal just worked measures on the frame: how far out of square that is."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last else None
    if last is None or not answer or last.topic.name != MEASURED_AGAIN[0] or _OF_A_SIDE.search(text):
        return False
    places = [place for place in places_of(text) if place.words != ("one",)]  # on one of them
    if len(places) != 1 or not isinstance(places[0].value, Length | Number):
        return False
    true, told = Length(Fraction(str(answer["value"])), answer["unit"]), as_length(places[0].value, answer["unit"])
    if not _NEAR_IT * true.to("in").value >= abs(told.to("in").value - true.to("in").value):
        return False
    topic = c.topics[MEASURED_AGAIN[1]]
    given = Given("diagonal", replace(told, text=text[places[0].start : places[0].end]), "asked")
    sides = {n: Given(n, one.value, "earlier") for n, one in last.givens.items() if n in _SIDES}
    asked = Asked(topic, {}, last.tape_step, last.metric)
    c.finish(record, [c.worked(asked, {**sides, "diagonal": given})], Question(topic.name))
    return True


def another_frame(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells both sides of another frame, after how far out of square one is: its diagonal, and no old tape's."""
    last = c.last if c.pending is None else None
    said = places_of(text) if last is not None and last.topic.name == MEASURED_AGAIN[1] else []
    places = [place for place in said if place.words != ("one",)]  # the small one
    if last is None or len(places) != len(_SIDES) or not re.fullmatch(r"\s*(?:by|x|×)\s*", text[places[0].end : places[1].start]):
        return False
    topic = c.topics[MEASURED_AGAIN[0]]
    sides = {name: given for name, given in last.givens.items() if name in _SIDES}
    true = next((line for line in last.record["also"] if line["name"] == "true diagonal"), None)
    frame = Asked(topic, sides, last.tape_step, last.metric, record={**last.record, "topic": topic.name, "answer": true})
    frame.text = last.text
    c.last, trial = frame, blank(record["heard"], record["via"], c.job, record["file"])
    c.take(trial, _ACROSS.sub("", text))
    c.last = c.last if trial["outcome"] == "answered" else last
    if c.last is last and ODD not in trial["ask"] and not _MEASURED_TOO.search(text):  # no frame is 114 feet
        c.pending = None
        way = c.worked(Asked(topic, {}, last.tape_step, last.metric), frame_of(places, last))
        c.finish(trial, [way], Question(topic.name))
    become(record, trial)
    if c.last is not None and c.last.record is trial:
        c.last.record = record
    return True
