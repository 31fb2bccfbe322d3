"""Review: what the notebook holds of a day, about a word, or under a mark, in a few lines."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from assistant.acts import Talk, act
from assistant.notebook_entry import own_marks
from assistant.record import put_asked, put_noted
from intents.expressions import expression
from intents.talk import numbers_in

NO_WORDS = "What should I look for? Say it in one go, like “what did I ask about soffit”."
MOST = 6  # entries read out; the newest, since those are asked for most
TALK = frozenset([*"review recall explain help greeting flag tag strike compare forget".split(), "never mind", "not known"])
_SMALL = frozenset(
    "the a an my our your any some of to for on about in it that this please i we you me one ones again there before "
    "earlier already yet previously".split()
)
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
# Words at either end of what is looked for that say when, and not what.
_WHEN = expression(
    r"[\s,]*\b(?:(?:from|on|for|of|last|earlier|back|this)\s+)*"
    r"(today|yesterday|(?:this |last )?week|morning|afternoon|" + "|".join(WEEKDAYS) + r")\b(?:\s+(?:morning|afternoon))?\W*$",
    re.IGNORECASE,
)


_RANGE = expression(r"\W*anything (?:from|under|over|between|up to)\b", re.IGNORECASE)


@dataclass(slots=True)
class Seen:
    """One entry as it is read back."""

    record: dict[str, Any]
    flagged: bool = False
    struck: bool = False
    tags: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


@act("review")
def review(talk: Talk) -> bool | None:
    """Read back a day, what was flagged, tagged or noted, or what is found about some words."""
    words = talk.said.words
    day = words.get("day", "")
    if "tagged" in words:
        wanted = words["tagged"].strip(" ?.!")
        _put(talk, _tagged(talk, wanted), f"tagged “{wanted}”")
    elif "find" in words:
        return _find(talk, words["find"], day)
    elif "marked" in words:
        _marked(talk, words["marked"], day)
    else:
        _put(talk, _of_day(talk, day or "today"), LABELS.get(day, day))
    return None


LABELS = {"": "today", "week": "in the last seven days", **{day: f"on {day.title()}" for day in WEEKDAYS}}


def _find(talk: Talk, said: str, day: str) -> bool | None:
    """What is found about the words, on the day where one was said with them."""
    if _RANGE.match(talk.text) and numbers_in(talk.text):
        return False  # anything from 5 5/8 to 6 inches suits me
    when = _WHEN.search(said)
    if when and when.start() > 0:
        said = said[: when.start()]
        day = "today" if when[1].lower() in ("morning", "afternoon") else when[1].lower().split()[-1]
    wanted = _wanted(said)
    if not wanted:
        put_asked(talk.record, "review", NO_WORDS)
        return None
    found = _about(talk, wanted)
    if day:
        first, last = _days(day)
        found = [seen for seen in found if first <= _date(seen) <= last]
    if not found and talk.said.loose:
        return False  # "find the gable height": a question, where the notebook has nothing of it
    _put(talk, found, f"about “{wanted}”" + (f" {LABELS.get(day, day)}" if day else ""))
    return None


def _wanted(words: str) -> str:
    return " ".join(word for word in re.findall(r"[^\W_]+(?:['’][^\W_]+)?", words) if word.lower() not in _SMALL)


def _entries(found: Iterable[Any]) -> list[Seen]:
    return [Seen(e.record, e.flagged, e.struck, e.tags, e.notes) for e in found]


def _all(talk: Talk) -> list[Seen]:
    conversation = talk.conversation
    if conversation.notebook is not None and conversation.writes:
        return _entries(conversation.notebook.find("", job=conversation.job))
    return [_seen(talk, record) for record in conversation.records]


def _seen(talk: Talk, record: dict[str, Any]) -> Seen:
    """An entry of this conversation, with what was put on it: by itself, or by a later line that was not struck out."""
    own, records = own_marks(record), talk.conversation.records
    on_it = [(kind, by) for kind, target, by in talk.conversation.pointed if target is record and any(by is r for r in records)]
    tags = [word for kind, by in on_it if kind == "tag" for word in (g["text"] for g in by["givens"] if g["name"] == "tag")]
    flagged = "flag" in own or any(kind == "flag" for kind, _ in on_it)
    return Seen(record, flagged, tags=(*own.get("tag", ()), *tags))


def _of_day(talk: Talk, day: str) -> list[Seen]:
    first, last = _days(day)
    return [seen for seen in _all(talk) if first <= _date(seen) <= last]


def _date(seen: Seen) -> date:
    return datetime.fromisoformat(seen.record["at"]).date()


def _days(day: str) -> tuple[date, date]:
    """The first and the last day that are meant; a weekday is the last one of that name."""
    today = date.today()
    if day in WEEKDAYS:
        on = today - timedelta(days=(today.weekday() - WEEKDAYS.index(day)) % 7)
        return on, on
    back = {"yesterday": 1, "week": 6}.get(day, 0)
    return today - timedelta(days=back), today - timedelta(days=1 if day == "yesterday" else 0)


def _about(talk: Talk, words: str) -> list[Seen]:
    conversation = talk.conversation
    known = _all(talk)
    if conversation.notebook is not None and conversation.writes:
        known = _entries(conversation.notebook.find(words, job=conversation.job))
    # What was said counts, not the cautions read out with it; plurals and the like are the notebook's to see through.
    wanted = [word.lower()[: max(3, len(word) - 2)] for word in words.split()]
    return [seen for seen in known if all(word in _said(seen) for word in wanted)]


def _said(seen: Seen) -> str:
    return " ".join((seen.record["heard"], seen.record["topic"] or "", *seen.tags, *seen.notes)).lower()


def _tagged(talk: Talk, word: str) -> list[Seen]:
    return [seen for seen in _all(talk) if any(word.lower() == tag.lower() for tag in seen.tags)]


def _marked(talk: Talk, mark: str, day: str) -> None:
    found = _of_day(talk, day) if day else _all(talk)
    if mark == "last":
        asked = [seen for seen in found if seen.record["outcome"] == "answered"]
        _put(talk, asked[-1:], "asked before this")
    elif mark == "notes":
        _put(talk, [seen for seen in found if seen.record["topic"] == "note" or seen.notes], "noted")
    else:
        _put(talk, [seen for seen in found if seen.flagged], "flagged")


def _put(talk: Talk, found: list[Seen], label: str) -> None:
    """The entries in a few lines, the newest last; what was struck and talk about talk are left out."""
    done = [seen for seen in found if seen.record["outcome"] in ("answered", "noted") and not seen.struck]
    shown = [seen for seen in done if seen.record["topic"] not in TALK]
    off = "" if talk.conversation.writes else " (the notebook is off, so I know this conversation only)"
    if not shown:
        put_noted(talk.record, "review", f"Nothing {label} in the notebook{off}")
        return
    lines = [_line(seen) for seen in shown[-MOST:]]
    earlier = len(shown) - len(lines)
    more = f", and {earlier} earlier" if earlier else ""
    count = f"{len(shown)} {'entry' if len(shown) == 1 else 'entries'} {label}{more}{off}"
    put_noted(talk.record, "review", f"{count}: " + "; ".join(lines))


def _line(seen: Seen) -> str:
    record = seen.record
    at = datetime.fromisoformat(record["at"]).strftime("%H:%M")
    heard = " ".join(record["heard"].split())
    heard = heard if len(heard) <= 80 else heard[:77] + "…"
    answer = f" → {record['topic']}: {record['answer']['text']}" if record["answer"] else ""
    marks = ["flagged"] if seen.flagged else []
    marks += [f"tagged {tag}" for tag in seen.tags] + [f"note: {note}" for note in seen.notes]
    return f"{at} {heard}{answer}" + (f" ({', '.join(marks)})" if marks else "")
