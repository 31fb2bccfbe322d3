"""What a short line asks of the last answer: a value that stands beside it, or one of its marks; read off its page."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.also_asked import beside, mark_asked
from assistant.names import by_its_name
from assistant.record import put_noted
from assistant.speech import spoken
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

LONGEST = 8  # words of such a line
# Another thing than the last answer is of, or a change of it.
_ANOTHER = re.compile(
    r"\b(?:other(?! (?:corner|cut|joint|setting))|another|next|different|new|north|south|east|west|lake|ramp|front|back"
    r"|if|instead|make|change|(?:left|right)[ -](?:side|wall|hand|end|one))\b",
    re.IGNORECASE,
)
_SETTING = re.compile(
    r"\W*(?:(?:and|so|what['’]?s|what is|whats|the|my)\W+)*(?:miter|mitre|saw setting|setting)\W*", re.IGNORECASE
)
_NAMED = re.compile(
    r"\W*(?:(?:and|so|ok|okay|then|but|now|what['’]?s|what is|what was|what are|give me|tell me|how much is|the|my|it['’]?s)"
    r"\W+)*(?P<name>(?!in )[a-z][a-z ,'’-]*?)(?:\W+(?:then|again|of (?:it|that)|now|on (?:it|that)|there|there then|please))*\W*",
    re.IGNORECASE,
)
_SIZES = {"long": "length", "high": "height", "tall": "height", "wide": "width", "steep": "angle"}
_HOW = re.compile(rf"\W*(?:(?:and|so|ok|then)\W+)*how (?P<size>{'|'.join(_SIZES)})(?: (?:is|was) (?:it|that))?\W*", re.IGNORECASE)
_HOW_MANY = re.compile(
    r"\W*(?:(?:and|so|ok|then|but|now)\W+)*how many(?: (?P<things>[a-z]+))?(?: (?:is|are|was|were) (?:that|there|it|those))?"
    r"(?: (?:do|will|would|did) (?:i|we|you) (?:need|want|get|say|buy))?"
    r"(?: (?:in all|altogether|in total|total|then|again|now))*\W*",
    re.IGNORECASE,
)
_SQUARES = re.compile(r"\bsquares\b", re.IGNORECASE)  # which have a waste in them


def asked_after(c: Conversation, record: Record, text: str) -> bool:
    """Whether a short line asks for a value, or a mark, that stands beside the last answer; then that is read."""
    last = c.last.record if c.last and c.pending is None else None
    if last is None or not last.get("answer") or len(text.split()) > LONGEST or _ANOTHER.search(text):
        return False
    squares = _SQUARES.search(text) and last["answer"]["unit"] in ("ft2", "m2")
    if squares or _asked_anew(c, last, text) or _of_another(c, last, text):
        return False
    again = by_its_name(text, c.topics)
    if again is not None and again.topic == last["topic"]:
        put_noted(record, "explain", said_of([f"{last['answer']['name']}: {last['answer']['text']}"]))
        return True
    lines = mark_asked(last, text, c.step_shown < 0)
    if not lines and not numbers_in(text):
        lines = beside({**last, "also": [last["answer"], *last["also"]]}, last["topic"] or "", text)
    if not lines and _SETTING.fullmatch(text) and last["answer"]["name"] in ("saw setting", "miter"):
        lines = [f"{last['answer']['name']}: {last['answer']['text']}"]
    if not lines and not numbers_in(text):
        lines = _named(last, text) or _counted(last, text)
    if lines:
        put_noted(record, "explain", said_of(lines))
    return bool(lines)


def _asked_anew(c: Conversation, last: Record, text: str) -> bool:
    """Whether the line is the name of a topic, which is worked as a question of its own; not so the cut of the hip itself."""
    question = by_its_name(text, c.topics)
    if question is None or question.topic == last["topic"] or question.topic != text.lower().strip(" .!?"):
        return False  # by no name, by that of the last, or by a short one: how many sticks
    beside_it = {line["name"].lower() for line in last["also"]}
    if any(name.startswith(f"{question.topic} of the ") for name in beside_it):
        return False
    return c.of_the_same(question) or question.topic not in beside_it


def _of_another(c: Conversation, last: Record, text: str) -> bool:
    """Whether the line names another topic whole, that no value on the page goes by: vent area, after the area of a soffit."""
    first = next(iter(c.read(text).questions), None)
    name = set(first.topic.split()) if first is not None and first.topic != last["topic"] else set()
    named = len(name) > 1 and name <= set(re.findall(r"[a-z]+", text.lower()))
    return named and not any(name <= set(line["name"].lower().split()) for line in (last["answer"], *last["also"]))


def _named(last: Record, text: str) -> list[str]:
    """The one value on the page that the line is the name of, or the end of its name: the rise, the area."""
    found, how = _NAMED.fullmatch(text), _HOW.fullmatch(text)
    name = _SIZES[how["size"].lower()] if how else found["name"].lower().strip() if found else ""
    lines = [last["answer"], *last["also"]]
    same = [line for line in lines if line["name"].lower().partition(",")[0] == name]
    if not same:
        same = [line for line in lines if line["name"].lower().endswith(f" {name}")]
        same = same[:1] if same[:1] == lines[:1] else same  # the answer first: the area of a wall is the net one
    if name == "angle" and lines[0]["unit"] == "deg":
        same = lines[:1]  # what the saw is set to, and no edge angle
    return [f"{same[0]['name']}: {same[0]['text']}"] if len(same) == 1 and same[0]["unit"] != "word" else []


def _counted(last: Record, text: str) -> list[str]:
    """The count that was worked, asked for by what it counts, or by no name."""
    found, answer = _HOW_MANY.fullmatch(text), last["answer"]
    if found is None or answer["unit"] != "count":
        return []
    name = answer["name"].lower()
    things = (found["things"] or "").lower()
    return [f"{answer['name']}: {answer['text']}"] if not things or things in (name, name.split()[0]) else []


def said_of(lines: list[str]) -> str:
    """Such values as they are spoken."""
    return spoken(". ".join(line[:1].upper() + line[1:] for line in lines))
