"""Compare: another's number beside the answer, where the difference comes from and what it does."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Any

from assistant.acts import Talk, act
from assistant.pending import Pending
from assistant.record import put_asked, put_noted
from assistant.said_over import places_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.reading import Reading
from intents.talk import Said, numbers_in
from solvers.gap import FACE, joint_gap
from solvers.quantities import AREA, LENGTH, VOLUME, WEIGHT, Quantity
from solvers.rounding import reading
from solvers.tape import tape

DIFFERENCE = "difference"
NOTHING = "What should I compare it with? Nothing was worked out before this: ask the question first."
SAME_ANGLE = 0.051  # degrees: a saw's scale and an answer rounded to a tenth show no less
SAME_LENGTH = 1 / 32 + 1e-9  # inches: half a sixteenth of the tape
SMALL_LENGTH = 1 / 16 + 1e-9
KERF = 1 / 8
NOT_CUT = frozenset(("foot out", "penetration", "depth to the face", "drop", "change of length", "change of width"))
SIZES = ({unit: float(size) for unit, size in sizes.items()} for sizes in (LENGTH, AREA, VOLUME, WEIGHT))
LENGTHS, AREAS, VOLUMES, WEIGHTS = SIZES
_AT_LEAST = ("least length",)  # answers that more than them does for as well
SAW = ("saw setting", "miter", "plumb cut", "level cut", "bevel", "edge angle", "dial")


_CONCLUDES = expression(
    r"\W*(?:(?:so|ok|okay|right|then|and|well)[ ,]+)*(?:so|then)[ ,]+(?:(?:i|we) (?:just )?)?"
    r"(?:it['’]?s|it is|that['’]?s|that is|set (?:it|the saw) (?:to|at)|cut (?:it|them|that) at|call it)?[ ,]*"
    r"(?P<n>(?:an? |about )?[^,;?]*\d[^,;?]*?|[^,;?]+?)"
    r"(?:\s+(?:on|at) (?:the|my) (?:saw|scale|gauge)|\s+then|\s+it is|\s+each|\s+right)*\W*",
    re.IGNORECASE,
)
_ARTICLE = expression(r"\s*(?:an?|about)\s+", re.IGNORECASE)


def concluded(record: dict[str, Any], text: str) -> Said | None:
    """What a line concludes from the answer, as a number set beside it: "so it's a 46", where the page has a 46."""
    found, answer = _CONCLUDES.fullmatch(text), record.get("answer")
    if found is None or not answer or answer["value"] is None:
        return None
    said = _ARTICLE.sub("", found["n"], count=1)
    places = places_of(said)
    if len(places) != 1 or said[: places[0].start].strip() or said[places[0].end :].strip():
        return None
    other = in_unit(numbers_in(said), answer["unit"])
    if other is None:
        return None
    near = abs(other - answer["value"]) <= _same(answer["unit"], answer["value"])
    line = _other_line({"also": record["also"], "givens": []}, answer["unit"], other)
    return Said("compare", {"value": tuple(numbers_in(said))}, {"value": said}) if near or line else None


@act("compare")
def compare(talk: Talk) -> None:
    """Set another's number beside the answer: how far off, whether it matters, or which other value it is."""
    record = talk.conversation.last.record if talk.conversation.last else None
    answer = record["answer"] if record else None
    if not record or not answer:
        put_asked(talk.record, "compare", NOTHING)
        return
    if answer["value"] is None or answer["unit"] == "yesno":
        put_noted(talk.record, "compare", f"Mine is a word, {answer['text']}: there is no number to set beside yours")
        return
    if "value" not in talk.said.words:
        talk.conversation.pending = Pending(compare=True)
        put_asked(talk.record, "compare", f"I have {answer['name']} {answer['text']}. What do you get?")
        return
    other = in_unit(talk.said.values.get("value", ()), answer["unit"])
    if other is None:
        words, unit = talk.said.words["value"], answer["text"]
        put_asked(talk.record, "compare", f"“{words}” can't be set beside {unit}. What is your number, with its unit?")
        return
    put_noted(talk.record, "compare", spoken(_sentence(record, answer, other)))
    if answer["unit"] in LENGTHS:
        off = other - answer["value"]
        talk.conversation.shown = {"name": DIFFERENCE, "value": off, "unit": answer["unit"], "text": reading(off, answer["unit"])}


def in_unit(found: Sequence[Reading], unit: str) -> float | None:
    """The number that was said, in the answer's unit; a bare one is taken in it."""
    quantities = [row.value for row in found if isinstance(row.value, Quantity)]
    for value in quantities:
        for sizes in (LENGTHS, AREAS, VOLUMES, WEIGHTS):
            if value.unit in sizes and unit in sizes:
                return float(value.value) * sizes[value.unit] / sizes[unit]
        if value.unit == unit:
            return float(value.value)
    return next((float(value.value) for value in quantities if value.unit in ("none", "ratio")), None)


def _sentence(record: dict[str, Any], answer: dict[str, Any], other: float) -> str:
    mine, unit = answer["value"], answer["unit"]
    off = other - mine
    yours, name = _shown(other, unit), f"my {answer['name']}, {answer['text']}"
    if abs(off) <= _same(unit, mine):
        joint = " The joint closes the same." if _is_saw(answer) else ""
        return f"Yours, {yours}, is {name}: the same to what a scale or tape can show.{joint}"
    line = _other_line(record, unit, other)
    if line is not None:
        return _same_working(answer, line, yours, mine, other)
    if answer["name"] in _AT_LEAST:
        by = _shown(abs(off), unit)
        return f"Yours, {yours}, is {'long enough, ' + by + ' over' if off > 0 else 'too short, ' + by + ' under'} {name}"
    related = _relation(mine, other, unit)
    if related:
        return f"Yours, {yours}, is {related} {name}. {_consequence(answer, off)}"
    more = "more" if off > 0 else "less"
    return f"Yours, {yours}, is {_shown(abs(off), unit)} {more} than {name}. {_consequence(answer, off)}"


def _same(unit: str, mine: float) -> float:
    if unit == "deg":
        return SAME_ANGLE
    if unit in LENGTHS:
        return SAME_LENGTH / LENGTHS[unit]
    return 1e-9 if unit == "count" else max(0.0051, 0.0005 * abs(mine))


def _other_line(record: dict[str, Any], unit: str, other: float) -> dict[str, Any] | None:
    """Another value of the same working that the number is."""
    lines: Iterable[dict[str, Any]] = (*record["also"], *record["givens"])
    near = [line for line in lines if line["value"] is not None and line["unit"] == unit
            and abs(line["value"] - other) <= max(_same(unit, other), 0.06 if unit == "deg" else 0)]  # fmt: skip
    return near[0] if near else None


def _same_working(answer: dict[str, Any], line: dict[str, Any], yours: str, mine: float, other: float) -> str:
    relation = _relation(mine, other, answer["unit"])
    how = f", which is {relation} {answer['text']}" if relation else ""
    words = f"{answer['text']} is the {answer['name']}; your {yours} is the {line['name']}{how}"
    if answer["unit"] == "deg" and "from" not in line:
        return f"{words}: same joint, but set the saw to {answer['text']}" if _is_saw(answer) else f"{words}"
    return f"{words}, {'as given' if 'from' in line else 'another value of the same working'}"


def _relation(mine: float, other: float, unit: str) -> str:
    """How one number could come from the other, in words that go before "my …"."""
    near = 0.06 if unit == "deg" else max(1e-6, 0.002 * abs(mine))
    ways = [("twice", 2 * mine), ("half of", mine / 2)]
    if unit == "deg":
        ways = [("90 −", 90 - mine), ("180 −", 180 - mine), *ways]
    elif unit in LENGTHS or unit in AREAS:
        ways += [("twelve times", 12 * mine), ("a twelfth of", mine / 12)]
    return next((words for words, value in ways if abs(value - other) <= near), "")


def _is_saw(answer: dict[str, Any]) -> bool:
    return answer["unit"] == "deg" and any(word in answer["name"].lower() for word in SAW)


def _consequence(answer: dict[str, Any], off: float) -> str:
    """Whether the difference matters where it is cut."""
    if _is_saw(answer):
        gap = joint_gap(min(abs(answer["value"]), 89.0), off)
        matters = "nobody will see it" if gap < SAME_LENGTH else "make a test cut before you trust either"
        return f"Cut both pieces at yours and the joint opens {gap:.2f} in over a face of {tape(FACE)}: {matters}"
    if answer["unit"] in LENGTHS and answer["name"] in NOT_CUT:
        return "Nothing is cut by it: see what each was worked from"
    if answer["unit"] in LENGTHS:
        size = abs(off) * LENGTHS[answer["unit"]]
        if size <= SMALL_LENGTH:
            return "That is a mark of the tape, and seldom matters"
        if size <= KERF:
            return "That is no more than a saw kerf; in trim it shows"
        return "That is too much to cut by: measure again before cutting"
    return "Check what each was worked from before ordering or cutting"


def _shown(value: float, unit: str) -> str:
    from fractions import Fraction

    if unit == "deg":
        return f"{value:.2f}".rstrip("0").rstrip(".") + "°"
    return reading(Fraction(value).limit_denominator(10**6), unit)
