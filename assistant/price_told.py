"""The price that was asked for of what was just counted or measured: what's that run me | buck eighty apiece."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.from_last import priced
from intents.expressions import expression
from intents.matcher import read_as
from solvers.quantities import Count
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Pending
    from assistant.record import Record

_POINTED = expression(r"\b(?:it|that|this|them|those|these|all|thats|they)\b", re.IGNORECASE)
_AMOUNTS = ("count", "area", "length", "wall_length", "wall_height", "pieces", "bundles")


def price_told(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line tells the price of what was answered last, where a line that pointed at it was asked for one."""
    asked, last = pending.asked, c.last
    answer = last.record.get("answer") if last is not None else None
    if asked is None or last is None or not answer or (asked.topic.name, pending.wanted) != ("cost", "price"):
        return False
    if asked.givens.keys() & {*_AMOUNTS} or not c.records or not _POINTED.search(c.records[-1]["heard"]):
        return False
    if priced(c, record, text) or priced(c, record, f"at {text}"):
        return True
    more = read_as(text, "cost", c.parameters, wanted="price")
    each = more.givens.get("per")
    if "price" not in more.givens or more.givens.keys() - {"price", "per"} or more.unplaced or answer["unit"] != "count":
        return False
    if each is not None and each.value != "EACH":
        return False
    asked.givens["count"] = Given("count", Count(Fraction(str(answer["value"])), "count", answer["text"]), "earlier")
    c.finish(record, c.ways(more, asked), more)
    if record["outcome"] == "answered":
        record["say"] = f"With the count {answer['text']} as before. {record['say']}"
    return True
