"""Explain: the working of the last answer, a step at a time."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from assistant.acts import Talk, act
from assistant.acts.manners import why_needed
from assistant.also_asked import beside, mark_asked, said_so
from assistant.asked_after import asked_after
from assistant.record import listed, put_asked, put_noted
from assistant.speech import spoken
from intents.chart import LIGHT
from intents.expressions import expression
from intents.phrases import compiled
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from collections.abc import Iterable

ORDINALS = ("first", "second", "third", "fourth", "fifth")
FEW = 2  # steps that are read in one go
CLOSE = 0.006  # a step is shown to two places and more
_LEADING = expression(r"^\(?([−-]?[\d.]+)")
_SMALL = frozenset(
    (
        "the",
        "a",
        "an",
        "that",
        "this",
        "it",
        "its",
        "is",
        "was",
        "so",
        "my",
        "your",
        "in",
        "of",
        "for",
        "on",
        "at",
        "to",
        "and",
        "be",
        "come",
        "from",
    )
)
_UNITS = frozenset("mm cm millimetres millimeters mils centimetres centimeters metres meters inches feet foot".split())
_AT_ANOTHER, _SAME = expression(r"\b(?:at|for|if|with)\s+(?P<n>\S*\d.*|[a-z]+(?: [a-z]+){0,4})$", re.IGNORECASE), 1e-6
SOURCES = {"asked": "as given", "earlier": "as given before", "job": "as kept for this job", "assumed": "which I assumed"}
_SMALL = frozenset("a an the at of on in or and to for my it can".split())  # of topics' names
NOTHING = "What should I explain? Nothing was worked out before this: ask a job question first."


@act("explain")
def explain(talk: Talk) -> bool | None:
    """Read the working a step at a time: the start, one step, the next, the checks, or where one value comes from."""
    record = talk.conversation.last.record if talk.conversation.last else None
    said = talk.said
    if not record or not record["answer"]:
        if "loose" in said.words:
            return False
        put_asked(talk.record, "explain", _pending_why(talk) or NOTHING)
        return None
    if _another_question(talk):
        return False
    turn, ones = said.words.get("turn", ""), talk.conversation.step_shown < 0
    marks = mark_asked(record, talk.record["heard"], ones)
    if marks:
        _put(talk, marks[0][:1].upper() + marks[0][1:])
        talk.record["also"] = [mark for mark in record["marks"] if f"{mark['name']}: {mark['text']}" == marks[0]]
    elif "assumed" in said.words:
        _put(talk, _assumed(record))
    elif turn == "check":
        _put(talk, _checks(record))
    elif "about" in said.words:
        return _about(talk, record, said.words["about"])
    elif "step" in said.words or "ordinal" in said.words:
        _step(talk, record, _number(talk, record) - 1)
    elif turn == "again" and talk.conversation.step_shown < 0:
        _put(talk, record["say"])
    elif turn:
        _step(talk, record, talk.conversation.step_shown + {"next": 1, "back": -1}.get(turn, 0))
    else:
        _put(talk, _start(talk, record))
    return None


def _another_question(talk: Talk) -> bool:
    """Whether the line asks another question by its name, and tells values of it: the step at the rake 6 inches showing."""
    last, best = talk.conversation.last, next(iter(talk.conversation.read(talk.record["heard"]).questions), None)
    if last is None or best is None or best.topic == last.topic.name or best.lacking:
        return False
    return bool(best.givens) and set(best.topic.split()) - _SMALL <= set(best.words)


def _put(talk: Talk, words: str) -> None:
    put_noted(talk.record, "explain", spoken(words))


def _assumed(record: dict[str, Any]) -> str:
    """What was taken for granted, and what it was all worked from."""
    took = [f"{line['name']} {line['text']}" for line in record["givens"] if line.get("from") == "assumed"]
    lead = f"I assumed the {listed(took, 'and')}" if took else "I assumed nothing: all of it was given"
    return f"{lead}. {_worked_from(record)}"


def _pending_why(talk: Talk) -> str:
    pending = talk.conversation.pending
    return why_needed(pending) if pending and pending.asked and pending.wanted else ""


def _start(talk: Talk, record: dict[str, Any]) -> str:
    """The answer, what it was worked from, and the first step (or all, where they are few)."""
    steps = record["steps"]
    parts = [_worked_from(record)]
    shown = len(steps) if len(steps) <= FEW else 1
    parts += [_line(steps, at) for at in range(shown)]
    talk.conversation.step_shown = shown - 1
    if shown < len(steps):
        parts.append("Say “next step” for the rest")
    return ". ".join(parts)


def _worked_from(record: dict[str, Any]) -> str:
    answer = record["answer"]
    given = listed([f"{line['name']} {line['text']}" for line in record["givens"] if line["text"]], "and")
    return f"{answer['name']} {answer['text']}" + (f", worked from {given}" if given else "")


def _line(steps: list[dict[str, str]], at: int) -> str:
    step = steps[at]
    return f"Step {at + 1} of {len(steps)}: {step['why']}: {step['formula']} = {step['filled']} = {step['result']}"


def _step(talk: Talk, record: dict[str, Any], at: int) -> None:
    steps = record["steps"]
    if not steps:
        _put(talk, f"{record['topic']} has no steps: {record['answer']['name']} {record['answer']['text']}")
    elif at < 0:
        _put(talk, f"That is before the first step. {_line(steps, 0)}")
        talk.conversation.step_shown = 0
    elif at >= len(steps):
        _put(talk, f"There are {len(steps)} steps, and that is past the last. {_checks(record)}")
        talk.conversation.step_shown = len(steps) - 1
    else:
        _put(talk, _line(steps, at))
        talk.conversation.step_shown = at


def _number(talk: Talk, record: dict[str, Any]) -> int:
    """The step asked for by number, counted from 1."""
    said = talk.said
    word = (said.words.get("ordinal", "").lower().split() or [""])[-1]
    if word:
        return len(record["steps"]) if word in ("last", "final") else ORDINALS.index(word) + 1
    values = [row.value.value for row in said.values.get("step", ()) if isinstance(row.value, Quantity)]
    return int(values[0]) if values else 1


def _checks(record: dict[str, Any]) -> str:
    checks = record["checks"]
    if not checks:
        return "This one has no separate check"
    held = [f"{check['what']}: {'it holds' if check['holds'] else 'it does not hold'}" for check in checks]
    return f"The check by another road: {'; '.join(held)}"


def _with_another(record: dict[str, Any], about: str) -> str:
    """At which other size than any on the page a value is asked of: what's the setting at 86 1/2; "" where at none."""
    found = _AT_ANOTHER.search(about)
    rows = numbers_in(found["n"]) if found else []
    said = [row.value for row in rows if found and row.start == 0 and row.end == len(tokenize(found["n"]))]  # and no more is said
    if len(said) != 1 or not isinstance(said[0], Quantity):
        return ""
    shown = (record["answer"], *record["givens"], *record["also"], *record["marks"])
    known = any(line["value"] is not None and abs(float(said[0].value) - line["value"]) <= _SAME for line in shown)
    return "" if known or found is None else found[0]


def _about(talk: Talk, record: dict[str, Any], about: str) -> bool | None:
    """Where one value comes from: the step that gave it; the whole working when nothing by that name is on the page."""
    if 0 < len(_bare(about).split()) == len(_UNITS.intersection(_bare(about).split())):  # what's that in mm
        return False
    if anew := _with_another(record, about):
        talk.conversation.take(talk.record, f"and {anew}")
        return None
    beside_it = beside(record, record["topic"] or "", talk.record["heard"])
    if len(beside_it) > 1:  # what is left over: as scrap, and to keep
        asked_after(talk.conversation, talk.record, talk.record["heard"])
        return None
    told = [line for line in record["also"] if beside_it == [said_so(line)]]
    line = told[0] if told else _named(record, about)  # what's the other corner set to: another value than the corner
    talk.record["also"] = [_shown(line)] if line else []
    at = _giving(record, line) if line else _worded(record, about)
    if at is not None:
        lead = f"{line['name']} {line['text']}. " if line else ""
        _put(talk, lead + _line(record["steps"], at))
        talk.conversation.step_shown = at
    elif line:
        source = SOURCES.get(line.get("from", ""), "read off the working above")
        _put(talk, f"{line['name']} {line['text']}, {source}")
    elif "loose" in talk.said.words:
        return False
    elif "used" in talk.said.words:
        _put(talk, f"No {_bare(about)} in that working. {_worked_from(record)}")
    elif _number_in(about) is not None or _names_nothing(about):
        _put(talk, _start(talk, record))
    else:
        names = listed([line["name"] for line in (record["answer"], *record["also"])], "or")
        missing = f"There is no {_bare(about)} in that working"
        put_asked(talk.record, "explain", f"{missing}. What should I explain: the {names}?")
    return None


def told_line(talk: Talk, name: str) -> bool:
    """Read a value of the last answer by its name; whether there was one."""
    last = talk.conversation.last
    line = line_named(last.record, name) if last else None
    if line is None:
        return False
    put_noted(talk.record, "explain", spoken(f"In the last answer: {line['name']} {line['text']}"))
    talk.record["also"] = [_shown(line)]
    return True


def _shown(line: dict[str, Any]) -> dict[str, Any]:
    """A value that is read back, in the shape of those beside an answer."""
    return {name: line[name] for name in ("name", "value", "unit", "text")}


def line_named(record: dict[str, Any], name: str) -> dict[str, Any] | None:
    """The value that a record has under a name."""
    return _named(record, name) if record.get("answer") else None


def _lines(record: dict[str, Any]) -> Iterable[dict[str, Any]]:
    return (record["answer"], *record["also"], *record["givens"])


def _names_nothing(words: str) -> bool:
    """Whether these are only small words: why it "goes up so much"."""
    phrases = compiled()
    return set(_bare(words).split()) <= phrases.fillers | phrases.ordinary | LIGHT


def _bare(words: str) -> str:
    return " ".join(word for word in re.findall(r"[^\W_]+", words.lower()) if word not in _SMALL)


def _named(record: dict[str, Any], words: str) -> dict[str, Any] | None:
    """The value of the record that these words name, whole or in part, or that they say the number of."""
    wanted = set(_bare(words).split())
    if not wanted:
        return None
    if wanted == {"angle"} and record["answer"]["unit"] == "deg":
        return record["answer"]  # type: ignore[no-any-return]  # what the saw is set to, and no edge angle
    for line in _lines(record):
        if wanted == set(_bare(line["name"]).split()):
            return line
    for line in _lines(record):
        if wanted <= set(_bare(line["name"]).split()):
            return line
    for line in _lines(record):
        if set(_bare(line["name"]).split()) <= wanted:
            return line
    number = _number_in(words)
    return next((line for line in _lines(record) if number is not None and _near(line["value"], number)), None)


def _number_in(words: str) -> float | None:
    from intents.talk import numbers_in

    found = numbers_in(words)
    return float(found[0].value.value) if found and isinstance(found[0].value, Quantity) else None


def _near(value: float | None, number: float) -> bool:
    return value is not None and abs(value - number) <= max(CLOSE, 0.002 * abs(number))


def _giving(record: dict[str, Any], line: dict[str, Any]) -> int | None:
    """The step whose result is this value."""
    for at, step in enumerate(record["steps"]):
        found = _LEADING.match(step["result"])
        if found and _near(line["value"], float(found.group(1).replace("−", "-").rstrip("."))) and "from" not in line:
            return at
    return None


def _worded(record: dict[str, Any], words: str) -> int | None:
    """The step that speaks of these words."""
    wanted = set(_bare(words).split())
    for at, step in enumerate(record["steps"]):
        if wanted and wanted <= set(_bare(f"{step['why']} {step['formula'].split(' = ')[0]}").split()):
            return at
    return None
