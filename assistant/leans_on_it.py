"""A line that leans on what was said before and came to nothing, in the plain words it stands for: "how long a screw through all
three with 32 mm into the stud" is one for 32 mm into the stud, "I'd like two more of the 31 inch ones" adds two at 31.

Each row tells the plain line and what must be so of its answer: its topic, and which one given it has other. Where that is not
so, or the words leave two readings, the line stays what it came to.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from itertools import islice
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.leans_rows import FIRST, ROWS, asked_instead
from assistant.leans_squares import packs_of_squares
from assistant.others_say import others_say
from assistant.plain_lines import Plain, told_otherwise
from assistant.record import become, blank, put_asked
from assistant.reply_of_rest import rest_told
from assistant.said_over import places_of
from assistant.several import told_of
from assistant.told_round import MOST_TRIALS, State, take_shorter
from assistant.who_says_so import opened, sounded
from intents.elsewhere import outside_of
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

_MADE_OF = {"strips from a coil": ("bent flashing", expression(r"\b(?:legs?|bend|hem)\b", re.IGNORECASE))}
_BY_WAY = expression(r"\b(?:up|down|out|in|over|vertical|flat|wall) legs?\b", re.IGNORECASE)  # which leg that is, no list tells
_NO_SUCH = expression(r"\bno $", re.IGNORECASE)  # no overhang: no "no" that puts something right
LONGEST = 160  # characters of such a line


def leans_on_it(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line that came to nothing as the plain line it stands for."""
    nothing = record["outcome"] in ("asks", "declined") or record["topic"] in ("compare", "remember")
    if len(text) > LONGEST or not (nothing or record["outcome"] == "answered"):
        return
    if before[0] is not None:
        rest_told(c, record, text, before)
        return
    last: Asked | None = before[1]  # type: ignore[assignment]
    if last is None or not last.record.get("answer") or record["topic"] == "remember":
        return
    plain = opened(text.strip(" .!?"))
    if record["outcome"] == "declined" and outside_of(text) is not None and not packs_of_squares(plain, last):
        return
    own = nothing or record["topic"] == last.topic.name
    if own and last.topic.name in _MADE_OF and _of_before(c, record, text, before, last):
        return
    whole = text.strip(" .!?").replace("’", "'")
    line = opened(whole)
    line = f"no {line}" if _NO_SUCH.search(whole[: len(whole) - len(line)]) and not places_of(line) else sounded(line)
    rows = [(plain.line, plain) for plain in islice(_by_rows(line, last, ROWS if nothing else FIRST), MOST_TRIALS)]
    if take_shorter(c, record, text, before, rows, lambda trial, plain: _good(c, trial, plain, last)):
        return
    if ask := asked_instead(line, last):
        c.pending, c.last = None, last
        asked = blank(text, record["via"], c.job, record["file"])
        put_asked(asked, last.topic.name, ask)
        become(record, asked)


def _of_before(c: Conversation, record: Record, text: str, before: State, last: Asked) -> bool:
    """Whether a line is of what the last question was asked of: a leg, after how many strips of that girth a coil gives."""
    topic, words = _MADE_OF[last.topic.name]
    made = next((asked for asked in reversed(c.earlier) if asked.topic is not last.topic), None)
    if made is None or made.topic.name != topic or not words.search(text) or _BY_WAY.search(text):
        return False
    state: State = (None, made, *before[2:])
    return take_shorter(
        c, record, text, state, [(text, topic)], lambda trial, name: (trial["outcome"], trial["topic"]) == ("answered", name)
    )


def _by_rows(line: str, last: Asked, rows: tuple[Callable[[str, Asked], Iterator[Plain]], ...]) -> Iterator[Plain]:
    for row in rows:
        yield from row(line, last)
    if rows is ROWS:
        yield from others_say(line, last)


def _good(c: Conversation, trial: Record, plain: Plain, last: Asked) -> bool:
    """Whether a plain line was answered as it must be, with every number that was said."""
    now = c.last
    if trial["outcome"] != "answered" or now is None or c.pending is not None or now is last:
        return False
    if trial["topic"] not in (plain.topics or (last.topic.name,)):
        return False
    if plain.topics:
        return plain.holds(now, last)
    was = told_of(last)
    other = told_otherwise(now, last)
    other += [name for name in was if name not in now.givens]
    if plain.changes != len(other):
        return False
    if plain.told and unheard(plain.told, now.givens.values()):
        return False
    return plain.holds(now, last)
