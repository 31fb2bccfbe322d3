"""What each costs, told before it is known how many there are: 300 square feet of 12 footers | they run 28 each | 6 inch."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.record import Record, become, blank, put_asked
from intents.expressions import expression
from intents.matcher import read_as
from solvers.quantities import Count
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Pending

_COST = "cost"
COUNTED = frozenset((
    "cladding boards", "trim sticks", "membrane rolls", "sealant", "step flashing", "soffit panels", "fasteners", "strapping",
    "take-off", "cut list", "trim round openings", "sheets",
))  # fmt: skip
_EACH = expression(r"\b(?:each|apiece|an? (?:board|stick|piece|roll|tube|panel|sheet|length))\b", re.IGNORECASE)
_LEAD = expression(
    r"\W*(?:(?:and|oh|but|so|ok|by the way)\W+)*"
    r"(?:they(?:['’]?re| are| run| cost)?|(?:the )?[a-z]+s (?:are|run|cost)|at|it['’]?s)\b",
    re.IGNORECASE,
)


def keep_price(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line tells what each costs of what is still to be counted; then that is kept, and the piece asked again."""
    asked = pending.asked
    if asked is None or not pending.wanted or asked.topic.name not in COUNTED or not (_LEAD.match(text) and _EACH.search(text)):
        return False
    told = _EACH.sub("each", text)
    more = read_as(told, _COST, c.parameters, wanted="price")
    each = more.givens.get("per")
    if "price" not in more.givens or more.givens.keys() - {"price", "per"} or (each is not None and each.value != "EACH"):
        return False
    c.pending = replace(pending, price=told, repeated=True)
    put_asked(record, asked.topic.name, pending.question)
    return True


def price_what_was_counted(c: Conversation, record: Record, waited: Pending | None) -> None:
    """What all of them cost, once they are counted; the count is said beside it."""
    if waited is None or not waited.price or waited.asked is None:
        return
    if c.pending is not None and c.pending.asked is not None and c.pending.asked.topic is waited.asked.topic:
        c.pending.price = c.pending.price or waited.price
    last = c.last
    if last is None or record["outcome"] != "answered" or last.record is not record or last.topic is not waited.asked.topic:
        return
    if record["answer"]["unit"] == "count":
        price_the_count(c, record, waited.price, record["answer"])


def price_the_count(c: Conversation, record: Record, price: str, count: Record) -> None:
    """What all of those just counted cost, where the price of each can be read; the count is said beside it."""
    last = c.last
    if last is None:
        return
    last.record = {**record}
    more = read_as(price, _COST, c.parameters, wanted="price")
    base = c.asked(more)
    base.givens["count"] = Given("count", Count(Fraction(str(count["value"])), "count", count["text"]), "earlier")
    trial = blank(record["heard"], record["via"], c.job, record["file"])
    c.finish(trial, c.ways(more, base), more)
    if trial["outcome"] != "answered" or c.last is None:
        c.pending, c.last = None, last
        return
    said = record["say"]
    become(record, trial)
    record["also"].insert(0, count)
    record["say"] = f"{said} {record['say']}"
    c.last.record = record
