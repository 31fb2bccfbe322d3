"""A line after an answer that came to nothing, or only read a value off the page though it tells a new number, taken as the plain
change that it tells (`plain_change.py`, `lists_in_talk.py`). Where it tells none, a number it supposes is asked about."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from itertools import chain
from typing import TYPE_CHECKING

from assistant.also_asked import said_so
from assistant.heard_all import unheard
from assistant.lists_in_talk import list_cores
from assistant.plain_change import FAR_OFF, LONGEST, Core, cores
from assistant.record import put_asked
from assistant.said_over import Place, places_of, same_value, times_apart
from assistant.several import told_of
from assistant.speech import spoken
from assistant.told_round import State, take_shorter
from assistant.who_says_so import WHO, as_said, opened, told_in
from intents.elsewhere import outside_of
from intents.expressions import expression
from solvers.quantities import Money, Quantity
from solvers.sums import Sum

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

_PRICED = expression(r"[£$€]|\b(?:dollars|bucks|quid|euros?|cents)\b", re.IGNORECASE)
_HOW_MANY = expression(r"\bhow many\b", re.IGNORECASE)
READ_WITH = "With the "  # as it is said of a value that was read with what the line tells
_LETTING = frozenset(
    "got only all carry carries stock stocks sell sells has does can could stretch go making make let lets wants use".split()
)
_SOLD = expression(r"\d['’]?s\b|\bfooters\b|\blengths\b", re.IGNORECASE)  # all they have is 12s


def look_for_change(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line that came to nothing as the plain change that it tells, where it tells one; a new number is never let fall."""
    last: Asked | None = before[1]  # type: ignore[assignment]
    if last is None or before[0] is not None or not last.record.get("answer") or len(text) > LONGEST:
        return
    if _PRICED.search(text) and not any(issubclass(parameter.kind, Money) for parameter in last.topic.parameters):
        return  # £24.50 each is no weight
    refused = record["outcome"] == "declined" and c.last is not last and c.last is not None and c.last.topic is last.topic
    if refused or not fell(record, text, last) or outside_of(text) is not None:
        return

    def good(trial: Record, core: Core) -> bool:
        return is_that_change(c, trial, core, without(last, core.gone) if core.gone else last)

    line = as_said(text)
    rests = list(dict.fromkeys(told_in(line, last)))
    every = list(chain(cores(rests, last), list_cores(c, line, rests, last)))
    if _between_two(c, record, last):
        every = [core for core in every if core.label]  # it was asked between two readings of it: only a name tells which
    found = any(_taken(c, record, text, before, core, good) for core in every)
    if record["say"].startswith(READ_WITH):
        return
    if not found and record["outcome"] == "noted" and record["topic"] == "explain" and supposes(text, last):
        c.pending, c.last = None, last
        names = " or ".join(f"the {last.topic.parameter(name).label}" for name in told_of(last))
        put_asked(record, "follow-up", f"What is “{text.strip()}”: {names}?")


def say_what_was_read(c: Conversation, record: Record, text: str) -> None:
    """Say with a changed answer the count that the line before read off the page, where this one asks how many again: how many
    courses is that | and how many if the wall was ten foot three."""
    before = c.records[-1] if c.records else None
    if before is None or record["outcome"] != "answered" or (before["outcome"], before["topic"]) != ("noted", "explain"):
        return
    read = before["also"][0] if len(before["also"]) == 1 else None
    if read is None or read["unit"] != "count" or not _HOW_MANY.search(text) or record["answer"]["unit"] == "count":
        return
    now = next((line for line in record["also"] if line["name"] == read["name"]), None)
    if now is not None and said_so(now) not in record["say"]:
        record["say"] = spoken(f"{said_so(now)[:1].upper()}{said_so(now)[1:]}. ") + record["say"]


def _between_two(c: Conversation, record: Record, last: Asked) -> bool:
    """Whether it was asked between readings of a change, or whether a number is meant; and not for a piece that is known."""
    pending = c.pending if record["topic"] == last.topic.name else None
    return pending is not None and pending.asked is not None and (bool(pending.ways) or pending.wanted not in last.givens)


def _taken(
    c: Conversation, record: Record, text: str, before: State, core: Core, good: Callable[[Record, Core], bool]
) -> bool:  # fmt: skip
    """Whether a line was good in the words of one plain change, what it says is gone taken out first."""
    last: Asked = before[1]  # type: ignore[assignment]
    state = (before[0], without(last, core.gone), *before[2:]) if core.gone else before
    return take_shorter(c, record, text, state, [(core.line, core)], good)


def without(last: Asked, gone: str) -> Asked:
    """A question without the one given that is of the number of these words."""
    left = {name: given for name, given in last.givens.items() if unheard(gone, [given])}
    return replace(last, givens=left) if len(left) == len(last.givens) - 1 else last


def fell(record: Record, text: str, last: Asked) -> bool:
    """Whether a line came to nothing: asked about, declined; or read off the page, or held against it, though it tells a number
    that is new."""
    if record["outcome"] in ("asks", "declined"):
        return True
    if record["outcome"] != "noted":
        return False
    fresh = [place for place in places_of(text) if _shown_nowhere(place, last)]
    if record["topic"] == "explain":
        return bool(fresh)
    who = WHO.match(opened(text))
    counts = re.search(r"\bof (?:them|those|em)\b", text, re.IGNORECASE) is not None
    return (
        record["topic"] == "compare"
        and who is not None
        and (counts or ((bool(fresh) or bool(_SOLD.search(text))) and _lets(text)))
    )


def _lets(text: str) -> bool:
    """Whether somebody says what is to be, and not what it comes to: says I can stretch to 7 3/8, is making us go to 12."""
    return not _LETTING.isdisjoint(re.findall(r"[a-z]+", text.lower()))


def _shown_nowhere(place: Place, last: Asked) -> bool:
    """Whether a number is neither of the question before nor on the page of its answer."""
    record = last.record
    shown = [record["answer"], *record["also"], *record["givens"], *record["marks"]]
    known = {round(float(line["value"]), 2) for line in shown if isinstance(line.get("value"), int | float)}
    if round(float(place.value.value), 2) in known or place.words in (("one",), ("a",)):
        return False
    words = " ".join(place.words)
    return bool(unheard(words, last.givens.values())) and words not in str(record.get("say", "")) and not _in_steps(place, record)


def _in_steps(place: Place, record: Record) -> bool:
    number = f"{float(place.value.value):g}"
    return any(re.search(rf"(?<![\d.]){re.escape(number)}(?![\d.])", str(step)) for step in record["steps"])


def supposes(text: str, last: Asked) -> bool:
    """Whether a line supposes something of the question before: "what's the pitch if it only climbs 35"."""
    return re.search(r"\bif\b", text, re.IGNORECASE) is not None and len(told_of(last)) > 0


def is_that_change(c: Conversation, trial: Record, core: Core, last: Asked) -> bool:
    """Whether a trial is the question before with the one given other that the line tells of."""
    if trial["outcome"] != "answered" or trial["topic"] != last.topic.name or c.last is None or c.pending is not None:
        return False
    now, was = c.last.givens, last.givens
    whole = any(
        core.told.lower() == str(getattr(given.value, "text", "")).lower() for given in now.values()
    )  # one over one fifty
    if core.told and not (whole or core.label) and unheard(core.told, now.values()):
        return False  # what is named went to that, in its own unit: 600 of a tube are 0.6 L
    other = [name for name in now if name not in was or not same_value(now[name].value, was[name].value)]
    other = [name for name in other if now[name].source != "assumed" or name not in was]
    told = [name for name in other if now[name].source != "assumed"]
    if len(told) != 1:
        return False
    name = told[0]
    if core.gone and not unheard(core.gone, now.values()):
        return False
    if core.listed:
        return True
    if core.names and core.names not in f" {last.topic.parameter(told[0]).label} ":
        return False
    if core.label:
        return last.topic.parameter(name).label == core.label
    old, new = was[name].value if name in was else None, now[name].value
    if old is None and whole and told_of(last).keys() - now.keys():
        return True  # one in sixty, of a slope in percent
    if core.was is not None:
        return isinstance(old, Quantity) and old.value == core.was.value
    if not (isinstance(old, Quantity) and isinstance(new, Quantity)) or isinstance(old, Sum):
        return False
    same = new.beside(old)
    return same <= 0 or old.value <= 0 or times_apart(same, old.value) <= FAR_OFF
