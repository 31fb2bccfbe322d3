"""A line that first says what goes and then asks what comes of it: "lose the hem, how many strips then".

What it asks may be read off the page, and what goes would be let fall with it. It is taken away first, alone; where that changes
the question that is asked about, the changed one is the answer, and else it is asked what is meant.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.line_apart import without_opening
from assistant.pending import Asked
from assistant.plain_lines import told_otherwise
from assistant.record import KEPT, Record, become, blank, put_asked
from assistant.several import told_of
from assistant.told_round import State, may_take, put_back, state_of
from intents.expressions import expression
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_DROPS = expression(
    r"^(?P<goes>\W*(?:(?:and|ok|so|now|but|then|no|actually|what if (?:i|we)|if (?:i|we)|let['’]?s) )*"
    r"(?:lose|drop|forget|skip|scrap|ditch|remove|leave out|leave off|take out|take away|no|without|minus)"
    r"(?: (?:the|that|those|any|my|all the))? [a-z]+(?: [a-z]+)?(?: (?:out|off))?)\s*[,;.]\s+"
    r"(?P<asks>(?:and |so |then )*(?:how (?:many|much|long|wide|high|far)|what(?:['’]?s)?)\b[^,;.?]*)\W*$",
    re.IGNORECASE,
)


def dropped_first(c: Conversation, record: Record, text: str, before: State) -> bool:
    """Whether a line told first what goes; then the record is of the question without it, or asks what that is of."""
    found, last = _DROPS.fullmatch(text.strip()), before[1]
    if found is None or before[0] is not None or not isinstance(last, Asked) or not last.record.get("answer") or numbers_in(text):
        return False
    other = record["topic"] in c.topics and record["topic"] != last.topic.name  # which was read from its own words
    if other or record["outcome"] == "asks" or _changed(c, last) or not may_take(c, found["goes"]):
        return False
    goes, after = found["goes"].strip(), state_of(c)
    put_back(c, before)
    trial = blank(text, record["via"], c.job, record["file"])
    c.take(trial, without_opening(goes, last))
    if trial["outcome"] != "answered" or c.last is None or not _changed(c, last):
        put_back(c, after)
        c.pending = None
        kept = {name: record[name] for name in KEPT}
        record.update(blank(record["heard"], record["via"], record["job"], record["file"]), **kept)
        put_asked(record, "follow-up", f"What has “{goes}” to do with the {last.topic.name}? Say that again as a whole question.")
        return True
    become(record, trial)
    c.last.record = record
    return True


def _changed(c: Conversation, last: Asked) -> bool:
    """Whether the question is the last one with another given."""
    now = c.last
    return now is not None and now is not last and now.topic is last.topic and (
        bool(told_otherwise(now, last)) or any(name not in now.givens for name in told_of(last))
    )
