"""Back to a question asked before: "back to the rake length", "go back to the first one", "back to the wall, but 40 long".

It becomes the last question again, and is said again with its answer; what else the line says changes it. A name that is of
two questions, or of none, goes back to nothing.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant import changes
from assistant.line_apart import without_opening
from assistant.record import become, blank
from assistant.said_over import stem
from assistant.several import told_of
from assistant.speech import spoken
from assistant.spelled_out import spelled_out
from intents.expressions import expression
from intents.question import Question

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

MOST = 12  # questions that can be gone back to, the last of each topic
LONGEST = 90  # characters of such a line
_LINE = expression(
    r"\W*(?:(?:ok|okay|right|so|now|and|then|let['’]?s|can we|could we|please|we|i|take me|jump|go|going|get)[ ,]+)*"
    r"back to (?:that |the |my |our |this )?(?P<what>[a-z][a-z ]*?)"
    r"(?P<rest>(?:[,;]| but\b| only\b| at\b| with\b| for\b| make it\b).*)?",
    re.IGNORECASE,
)
_ASKS = expression(  # back to that gable, what's the rake at 10
    r"\W*(?:(?:ok|okay|right|so|now|and|then)[ ,]+)*back to (?:that|the|this) (?P<what>[a-z]+(?: [a-z]+)?)[ ,:]+"
    r"(?P<rest>(?:what|how)(?:['’]?s)?\b.*)",
    re.IGNORECASE,
)
_AGAIN = expression(
    r"\W*(?:(?:ok|okay|so|now|and|then)[ ,]+)*(?:the|that|my) (?P<what>[a-z]+(?: [a-z]+)?) again(?P<rest>)", re.IGNORECASE
)
_FIRST = frozenset(("first", "beginning", "start", "original"))
_SMALL = frozenset("the a an of for in one question answer thing job bit problem sum again then before".split())


def remember(c: Conversation, asked: Asked) -> None:
    """Keep a question that was answered, the last of its topic; its words in full, as lines after it are told by them."""
    asked.text = spelled_out(asked.text)
    c.earlier = [*(old for old in c.earlier if old.topic is not asked.topic), asked][-MOST:]


def goes_back(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes back to a question before; then that is answered again, changed by what else is said."""
    said = text.strip(" .!?") if len(text) <= LONGEST and c.pending is None else ""
    if (asks := _ASKS.fullmatch(said)) is not None:
        return _asks_of_it(c, record, asks["what"], asks["rest"])
    found = _LINE.fullmatch(said) or _AGAIN.fullmatch(said)
    asked = _meant(c, found["what"]) if found else None
    if asked is None or found is None:
        return False
    c.last = asked
    if found["rest"] and changes.change(c, record, re.sub(r"^\W*(?:but|only)?\W*", "", found["rest"]), None, []):
        return True
    c.finish(record, [c.worked(asked, told_of(asked))], Question(asked.topic.name))
    if c.last is not None:
        c.last.text = asked.text
    record["say"] = spoken(f"Back to the {asked.topic.name}. ") + record["say"]
    return True


def _asks_of_it(c: Conversation, record: Record, what: str, rest: str) -> bool:
    """Whether a line asks something of the thing that the last question of its name was about; then that is answered."""
    word = stem(what.lower().split()[0])
    of_it = [asked for asked in c.earlier if word in {stem(each) for each in asked.topic.name.split()} | _told_of(asked)]
    if not of_it:
        return False
    before, c.last = c.last, of_it[-1]
    trial = blank(record["heard"], record["via"], c.job, record["file"])
    c.take(trial, without_opening(rest, c.last))
    if trial["outcome"] != "answered":
        c.last, c.pending = before, None
        return False
    become(record, trial)
    return True


def _told_of(asked: Asked) -> set[str]:
    """What a question was about, by the names of what it was given."""
    kept = (asked.topic.parameter(name).slot.kept or "" for name, given in asked.givens.items() if given.source != "assumed")
    return {stem(word) for name in kept for word in name.split()}


def _meant(c: Conversation, words: str) -> Asked | None:
    """The one question that was answered before of which these words are."""
    said = {stem(word) for word in words.lower().split()} - _SMALL
    if said <= _FIRST:
        return c.earlier[0] if said else None
    named = [asked for asked in c.earlier if said <= {stem(word) for word in asked.topic.name.split()}]
    return named[0] if len(named) == 1 else None
