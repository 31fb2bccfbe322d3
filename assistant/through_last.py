"""A change of the wall whose area went into what was asked after it: "in squares", and then "make the wall 40".

The area is worked again with the change, and then what was asked of it. Taken as a change of the squares alone, the wall's
length would be their area, and a window that was out of it already would come out twice.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.record import blank
from assistant.several import told_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Area, Count
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record
    from intents.talk import Said

    Change = Callable[[Conversation, Record, str, Said | None, list[Question]], bool]

_OF_THE_WALL = expression(
    r"\b(?:walls?|gables?|windows?|doors?|openings?|vents?|hatch|long|longer|high|higher|tall|taller|wide|wider|shorter|lower"
    r"|height|length|width|pitch|overhangs?)\b",
    re.IGNORECASE,
)
_OF_ITS_OWN = expression(
    r"\b(?:boards?|planks?|sticks?|stock|footers?|rolls?|laps?|exposure|reveal|waste|percent|courses?|panels?|sheets?"
    r"|another|other|next|new|different|what(?:['’]?s| is| are)?|how)\b|%",
    re.IGNORECASE,
)

_NAMED = expression(r"\b(?:waste|exposure|reveal|to the weather|cover|kerf)\b", re.IGNORECASE)
_OF_THE_COUNT = expression(r"\b(?:waste|percent|per cent|exposure|reveal|to the weather|cover|kerf)\b|%", re.IGNORECASE)
_ITS_OWN_COUNT = expression(r"\b(?:tax|vat|discount|off|dearer|cheaper|each|apiece|cost|price|what|how)\b|[$£€]", re.IGNORECASE)
_ASKS_OF_IT = expression(
    r"[, ]+(?:and |so |then )*what(?:['’]?s| is)? the (?:net|area|net area|area left)(?: then| now| left)?\W*$", re.IGNORECASE
)


def through_last(
    c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question], change: Change
) -> bool:  # fmt: skip
    """Whether the line changes the wall that the last question took its area of; then both are worked again."""
    last = c.last
    asks = _ASKS_OF_IT.search(text)
    if last is not None and asks is not None and asks.start() > 0 and (wall := _measured_before(c, last)) is not None:
        c.last = wall  # if I make the wall nine foot high, what's the net
        if change(c, record, text[: asks.start()], said, c.read(text[: asks.start()]).questions):
            return True
        c.last = last
    if last is not None and _through_count(c, record, text, said, questions, change):
        return True
    base = _measured_before(c, last) if last and _OF_THE_WALL.search(text) and not _OF_ITS_OWN.search(text) else None
    if last is None or base is None:
        return False
    c.last, trial = base, blank(record["heard"], record["via"], record["job"], record["file"])
    done = change(c, trial, text, said, questions)
    answer = trial.get("answer")
    if not done or not answer:
        c.last, c.pending = last, None
        return False
    value = Area(Fraction(str(answer["value"])), answer["unit"], answer["text"])
    c.finish(record, [c.worked(last, {**told_of(last), "area": Given("area", value, "earlier")})], Question(last.topic.name))
    record["say"] = spoken(f"With the {answer['name']} {answer['text']}. ") + record["say"]
    return True


def _through_count(
    c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question], change: Change
) -> bool:  # fmt: skip
    """Whether the line changes what the things were counted by whose cost or weight was asked last: 10 percent then."""
    last = c.last
    count = last.givens.get("count") if last is not None and last.topic.name in ("cost", "weight") else None
    if last is None or count is None or not _OF_THE_COUNT.search(text) or _ITS_OWN_COUNT.search(record["heard"]):
        return False
    text_of = getattr(count.value, "text", "")
    counted = ((asked, asked.record.get("answer") or {}) for asked in reversed(c.earlier) if asked.topic is not last.topic)
    base = next((a for a, answer in counted if answer.get("unit") == "count" and answer.get("text") == text_of), None)
    waste = base.givens.get("waste") if base is not None else None
    if base is None or (not _NAMED.search(text) and (waste is None or waste.source == "assumed")):
        return False  # ten percent of what was never told: it may be the price's
    c.last, trial = base, blank(record["heard"], record["via"], record["job"], record["file"])
    answer = trial.get("answer") if change(c, trial, text, said, questions) else None
    answer = trial.get("answer") if answer is None and trial["outcome"] == "answered" else answer
    if not answer or answer["unit"] != "count":
        c.last, c.pending = last, None
        return False
    value = Count(Fraction(str(answer["value"])), "count", answer["text"])
    c.finish(record, [c.worked(last, {**told_of(last), "count": Given("count", value, "earlier")})], Question(last.topic.name))
    record["also"] = [answer, *record["also"]]
    record["say"] = spoken(f"With the {answer['name']} {answer['text']}. ") + record["say"]
    return True


def _measured_before(c: Conversation, last: Asked) -> Asked | None:
    """The question whose answer is the area that the last one went on from."""
    area = last.givens.get("area")
    if area is None or area.source != "earlier":
        return None
    text = getattr(area.value, "text", "")
    answers = [(asked, asked.record.get("answer") or {}) for asked in reversed(c.earlier) if asked.topic is not last.topic]
    return next((asked for asked, answer in answers if answer.get("text") == text and answer.get("unit") in ("ft2", "m2")), None)
