"""The one record: what screen, voice, notebook, exports and scripts all get. Its shape is fixed; see RECORD below."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable
from datetime import datetime
from enum import Enum
from fractions import Fraction
from typing import Any

from assistant.also_asked import also_asked, said_so
from assistant.speech import spoken
from intents.fitting import TAKEN
from solvers.printing import page_number
from solvers.quantities import Quantity
from solvers.registry import Topic, Worked
from solvers.rounding import SIXTEENTH, reading
from solvers.slots import Given, Layer, Opening, Piece
from solvers.sums import Sum

Record = dict[str, Any]
VERSION = 1
RECORDED = {"floz": "gal", "perC": "none", "perF": "none"}  # units of ours that the record has no name for
FINE, SIXTY_FOURTH = (32, 64), Fraction(1, 64)  # parts of an inch that a given keeps, and how fine it is read then
KEPT = frozenset("record id at job via file heard doubt".split())  # of a record, whatever comes of its line


def blank(heard: str, via: str, job: str | None, file: str | None = None) -> Record:
    """A record with every field there, nothing answered yet."""
    return {
        "record": VERSION, "id": None, "at": datetime.now().astimezone().isoformat(timespec="seconds"), "job": job,
        "via": via, "file": file, "heard": heard, "doubt": [], "outcome": "declined", "topic": None, "givens": [],
        "answer": None, "also": [], "steps": [], "checks": [], "marks": [], "figure": None, "cautions": [],
        "sources": [], "say": "", "ask": "",
    }  # fmt: skip


def put_worked(record: Record, worked: Worked) -> None:
    """Fill in an answered working."""
    working = worked.working
    assert working is not None and working.result is not None
    record.update(
        outcome="answered",
        topic=worked.topic.name,
        givens=given_lines(worked.topic, worked.givens),
        answer=working.result.data(),
        also=[line.data() for line in working.also_lines],
        steps=working.steps,
        checks=working.checks,
        marks=[line.data() for line in working.marks],
        figure=working.figure(),
        cautions=[*working.cautions],
        sources=[*working.sources],
        ask="",
    )
    record["say"] = _say(worked, also_asked(record))


def become(record: Record, trial: Record) -> None:
    """Make the record of a line what a trial of other words for it came to."""
    record.update({name: value for name, value in trial.items() if name not in KEPT})


def say_first(record: Record, line: dict[str, Any]) -> None:
    """Make a number of the page the answer, said before what was the answer."""
    was = record["answer"]
    record["also"] = [was, *(other for other in record["also"] if other is not line)]
    record["answer"] = line
    told = spoken(said_so(line))
    told = f"{told[:1].upper()}{told[1:]}."
    record["say"] = re.sub(r" {2,}", " ", f"{told} {record['say'].replace(told, '')}").strip()


def leave_out(record: Record, left: Collection[str]) -> None:
    """Say in the record of an answer what was left out of account."""
    if left:
        text = listed(left, "and")
        record["also"].append({"name": "left out", "value": None, "unit": "word", "text": text})
        record["say"] += f" Left out: {text}."


def put_asked(record: Record, topic: str | None, question: str, givens: list[dict[str, Any]] | None = None) -> None:
    record.update(outcome="asks", topic=topic, ask=question, say=question, givens=givens or [])


def put_declined(record: Record, sentence: str) -> None:
    record.update(outcome="declined", topic=None, say=_sentence(sentence))


def put_noted(record: Record, topic: str, sentence: str) -> None:
    record.update(outcome="noted", topic=topic, say=_sentence(sentence))


def given_lines(topic: Topic, givens: Collection[Given]) -> list[dict[str, Any]]:
    """The givens as the record has them; one that a choice says what it is goes by that name: the common rafter 14 ft."""
    called = names_of(topic, givens)
    return [given_line(called[given.name], given) for given in givens if topic.parameter(given.name).slot.names not in called]


def names_of(topic: Topic, givens: Collection[Given]) -> dict[str, str]:
    """What each given is called on the page."""
    called = {given.name: topic.parameter(given.name).label for given in givens}
    told = {topic.parameter(given.name).slot.names: given.value for given in givens}
    return {name: str(told[name].value) if name in told else label for name, label in called.items()}


def given_line(label: str, given: Given) -> dict[str, Any]:
    """One given as the record has it."""
    value, unit, text = value_line(given.value)
    return {"name": label, "value": value, "unit": unit, "text": text, "from": given.source}


def value_line(value: Any) -> tuple[float | None, str, str]:
    """A given's number, unit and text; structured ones and choices are words."""
    if isinstance(value, Quantity):
        unit = RECORDED.get(value.unit, value.unit)
        number = value.to(unit).value
        fine = SIXTY_FOURTH if value.unit == "in" and value.value.denominator in FINE else SIXTEENTH  # a kerf of 3/32
        return page_number(Fraction(number)), unit, value.text or reading(value.value, value.unit, fine)
    if isinstance(value, Enum):
        return None, "word", str(value.value)
    if isinstance(value, tuple):
        return None, "word", ", ".join(_structured(part) for part in value)
    return None, "word", value.formula if isinstance(value, Sum) and value.all_said else str(value)


def _structured(part: Any) -> str:
    if isinstance(part, Piece):
        return f"{part.count} at {_short(part.length)}"
    if isinstance(part, Opening):
        return f"{part.count} {part.what} {_short(part.width)} by {_short(part.height)}"
    if isinstance(part, Layer):
        return f"{_short(part.thickness)} {part.what}" if part.thickness else part.what
    return _short(part) if isinstance(part, Quantity) else str(part)


def _short(quantity: Quantity) -> str:
    return reading(quantity.value, quantity.unit).split(" (")[0]


def _say(worked: Worked, besides: list[str]) -> str:
    working = worked.working
    assert working is not None and working.result is not None
    result = working.result
    parts = [working.said or f"{result.name}: {result.text}", *besides]
    parts += [f"I took the {worked.topic.parameter(g.name).label} as {value_line(g.value)[2]}"
              for g in worked.givens if g.source == "assumed"]  # fmt: skip
    parts += [f"the {worked.topic.parameter(g.name).label} is {value_line(g.value)[2]}, as you told me"
              for g in worked.givens if g.source == "job"]  # fmt: skip
    parts += working.cautions[:1]
    return spoken(" ".join(_sentence(part) for part in parts))


def _sentence(text: str) -> str:
    text = text.strip()
    text = text[:1].upper() + text[1:]
    return text if text.endswith((".", "?", "!")) else text + "."


def listed(items: Iterable[str], last: str = "or") -> str:
    """a, b or c."""
    words = list(items)
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} {last} {words[-1]}" if words else ""


def the_same(record: Record) -> str:
    """What an answer took from the question before it, as a sentence to say first: with the pitch 5/12 as before."""
    same = [f"the {given['name']} {given['text']}" for given in record["givens"] if given["from"] == "earlier"]
    return spoken(f"With {listed(same, 'and')} as before. ")


def said_as(worked: Worked) -> str:
    """What was said as one thing and taken as another: an area in plain feet."""
    said = [given.value for given in worked.givens if given.source == "asked"]
    texts = [value.text for value in said if isinstance(value, Quantity)]
    return "".join(f" I took {text.replace(TAKEN, ' as ')}." for text in texts if TAKEN in text)
