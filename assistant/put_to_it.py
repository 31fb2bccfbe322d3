"""So much put to the last answer, or taken off it: "plus 10 percent", "less 5 percent", "times 3" of what has a count.

A percent said so is none of the question's own: 10 percent put to a free area are no open share of the screen. Where what
is bought has a waste, so much put to it is that.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.record import put_asked
from assistant.several import told_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.printing import decimal
from solvers.quantities import Number, Percent
from solvers.rounding import reading
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_LEAD = r"(?:(?:and|so|then|now|ok|what'?s|what is|what about|give me|take)[ ,]+)*"
_PUT = expression(
    rf"{_LEAD}(?:plus|add(?: on)?)(?: another)? (?P<n>.+?)(?: (?:to (?:that|it)|on top|more|tax|on))?", re.IGNORECASE
)
_OFF = expression(
    rf"{_LEAD}(?:(?:less|minus|knock off|take off|subtract|deduct) (?:another |a further )?(?P<n>.+?)(?: off)?"
    r"|(?:another |a further )?(?P<m>.+?) (?:off|less|discount))",
    re.IGNORECASE,
)
_TIMES = expression(
    rf"{_LEAD}(?:(?:it |that )?(?:times|multipl(?:y|ied)(?: it| that)? by) (?P<n>[\w. ]+)"
    r"|(?P<word>double|twice|triple)(?: (?:it|that))?)",
    re.IGNORECASE,
)
_PART_OF = expression(rf"{_LEAD}(?P<n>[a-z0-9. ]+?(?: ?%| per ?cent)) of (?:that|it|this)", re.IGNORECASE)
_NO_SHARE = ("degF", "degC", "yesno", "word", "in12", "ratio", "percent", "")  # of which nobody takes a part
_WASTE, _COST = "waste", "cost"
_TAXES = r"(?:tax|hst|gst|pst|vat)"
_RATES = (Percent, Number)
_TAXED = expression(
    rf"{_LEAD}(?:(?:plus|with|add|and|there'?s|it'?s|at) )*(?P<n>[\w.]+ ?(?:%|per ?cent)) (?:sales )?{_TAXES}(?: on .*)?"
    rf"|(?:(?:and|so|oh|the|sales|plus) )*{_TAXES}(?:'?s| is| at| of)? (?P<m>[\w.]+(?: ?(?:%|per ?cent))?)",
    re.IGNORECASE,
)
_TAX = expression(rf"\b(?:taxes|{_TAXES})\b", re.IGNORECASE)


def put_to_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts so much to the last answer, or takes it off; then that is told, or asked about."""
    answer = c.last.record.get("answer") if c.last and c.pending is None else None
    if answer and c.last is not None and c.last.topic.name == _COST and (taxed := _taxed(text)):
        text = taxed
    line = text.strip(" .!?").replace("’", "'")
    said, times = _times(line)
    if c.last is None or not answer or not times:
        return False
    if said.startswith("plus") and any(p.slot.kept == _WASTE for p in c.last.topic.parameters):
        return False
    if answer["value"] is None or answer["unit"] in _NO_SHARE or (answer["unit"] == "deg" and "percent" in said):
        put_asked(
            record,
            "follow-up",
            f"{said[:1].upper()}{said[1:]} of what? Ask the whole question again with it.",
        )
        return True
    name = "" if c.last.topic.name != _COST else "tax" if _TAX.search(line) else "off" if said.startswith("less") else ""
    if name and name not in c.last.givens:  # which stays with it, whatever is changed of it
        percent = Percent(abs(times - 1) * 100, "percent", said.split(" ", 1)[1])
        c.finish(record, [c.worked(c.last, told_of(c.last) | {name: Given(name, percent)})], Question(_COST))
    else:
        last = replace(c.last, times=Fraction(c.last.times) * times)
        c.finish(record, [c.worked(last, told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"{answer['text']} {said} is {record['answer']['text']}.")
    return True


def _taxed(text: str) -> str:
    """A tax told in other words, as so much put to the cost: tax is 13, and 13% hst; "" for any other line."""
    found = _TAXED.fullmatch(text.strip(" .!?").replace("’", "'"))
    told = numbers_in(found["n"] or found["m"]) if found is not None else []
    return f"plus {decimal(told[0].value.value, 3)} percent tax" if len(told) == 1 and isinstance(told[0].value, _RATES) else ""


def _times(line: str) -> tuple[str, Fraction]:
    """What is put to the answer as it is said, and how many times the answer it makes; nothing where the line is none."""
    part = _PART_OF.fullmatch(line)
    if part is not None and len(told := numbers_in(part["n"])) == 1 and isinstance(told[0].value, Percent):
        return f"times {decimal(told[0].value.value, 3)} percent", told[0].value.value / 100
    more = _TIMES.fullmatch(line)
    if more is not None:
        told = numbers_in("3" if (more["word"] or "").lower() == "triple" else "2" if more["word"] else more["n"])
        number = told[0].value if len(told) == 1 else None
        return (f"times {decimal(number.value, 3)}", number.value) if isinstance(number, Number) else ("", Fraction(0))
    put, off = _PUT.fullmatch(line), _OFF.fullmatch(line)
    words = put["n"] if put else (off["n"] or off["m"]) if off else ""
    found = numbers_in(words)
    if (
        len(found) != 1
        or not isinstance(found[0].value, Percent)
        or not re.fullmatch(r"\S+(?: ?%| (?:per ?cent))", words, re.IGNORECASE)
    ):
        return "", Fraction(0)
    percent = found[0].value.value
    named = f"{reading(percent, 'percent').replace(' %', '')} percent"
    return (f"plus {named}", 1 + percent / 100) if put else (f"less {named}", 1 - percent / 100)
