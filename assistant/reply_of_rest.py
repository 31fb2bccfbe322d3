"""A reply that is whole with the line before it: how much the rest is that was asked of ("there's 165 square metres left to do"),
or the slope of a roof, where it was asked which of two topics is meant."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.pending import Pending
from assistant.said_over import places_of
from assistant.told_round import State, take_shorter
from assistant.who_says_so import opened
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_REST = expression(
    r"\bthe (?:rest|remainder|remaining(?: bit| part)?|other (?:bit|part|side)|lot that's left)\b(?: of it)?", re.I
)
_LEFT = expression(
    r"(?:there'?s|there is|there are|i'?ve|we'?ve|i have|we have|it'?s|that'?s|the rest is"
    r"|about)?(?: got)? ?(?:only |just |another |about )*"
    r"(?P<n>.+?)(?: (?:of (?:it|them|joint|fence|wall)))?(?: (?:left|remaining|more|still|to go|to do|still to do|yet))*",
    re.IGNORECASE,
)


def rest_told(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a reply together with the one line it replies to, where that is whole with it and holds every number of both."""
    waited, said = before[0], c.records[-1] if c.records else None
    if not isinstance(waited, Pending) or said is None or said["outcome"] != "asks" or not (waited.asked or waited.topics):
        return
    line, earlier = opened(text.strip(" .!?").replace("’", "'")), str(said["heard"])
    if len(places_of(line)) != 1:
        return
    topic = waited.asked.topic.name if waited.asked is not None else ""
    found, rest = _LEFT.fullmatch(line), _REST.search(earlier)
    number = places_of(line)[0]
    if topic == "by the same rate" and found is not None and rest is not None and len(places_of(found["n"])) == 1:
        whole, topics = f"{earlier[: rest.start()]}the other {found['n']}{earlier[rest.end() :]}", [topic]
    elif waited.topics and number.value.unit == "in12" and record["outcome"] == "noted":
        whole, topics = f"{line}. {earlier}", [*c.topics]
    else:
        return
    kept = record["say"] if record["outcome"] == "noted" else ""
    state: State = (None, *before[1:])
    numbers = "; ".join(each[place.start : place.end] for each in (line, earlier) for place in places_of(each))

    def good(trial: Record, left: str) -> bool:
        taken = trial["outcome"] == "answered" and trial["topic"] in topics and c.last is not None
        return taken and c.last is not None and not unheard(left, c.last.givens.values())

    if take_shorter(c, record, text, state, [(whole, numbers)], good) and kept:
        record["say"] = f"{kept.rstrip('.')}. {record['say']}"
