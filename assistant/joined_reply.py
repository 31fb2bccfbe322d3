"""A list that was told in reply and came to nothing by itself, read in one sentence with the question it was asked for: trim
round seven windows | 3 foot by 5 foot, all four sides.

It is taken where the two together are that question, answered, with all that was told before as it was.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.pending import Pending
from assistant.record import Record, become, blank
from assistant.said_over import same_value
from assistant.told_round import MOST_READ, State, may_read, may_take, put_back, state_of
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation


def joined_reply(c: Conversation, record: Record, text: str, before: State) -> None:
    """Answer a question with a reply that was not understood alone, where both in one sentence are that question."""
    waited, asked_for = before[0], c.records[-1] if c.records else None
    if not isinstance(waited, Pending) or waited.asked is None or not waited.wanted or waited.ways or asked_for is None:
        return
    if record["outcome"] not in ("asks", "declined") or asked_for["outcome"] != "asks" or not numbers_in(text):
        return
    if waited.asked.topic.parameter(waited.wanted).kind is not tuple:
        return  # one number is told by itself; a price beside it is none
    mine = c.pending is not None and c.pending.asked is not None and c.pending.asked.topic is waited.asked.topic
    line = f"{asked_for['heard'].rstrip(' .?!,')}, {text}"
    if mine or not may_read(c, line, MOST_READ) or not may_take(c, line):
        return
    after = state_of(c)
    put_back(c, before)
    c.pending = None
    trial = blank(text, record["via"], c.job, record["file"])
    c.take(trial, line)
    now = c.last
    told = {name: given.value for name, given in waited.asked.givens.items() if given.source == "asked"}
    good = trial["outcome"] == "answered" and now is not None and now.topic is waited.asked.topic
    kept = good and now is not None and all(n in now.givens and same_value(now.givens[n].value, v) for n, v in told.items())
    if not kept or now is None:
        put_back(c, after)
        return
    become(record, trial)
    now.record = record
