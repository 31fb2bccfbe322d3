"""What is asked beside an answer, and stands on its page: how long a ladder is, how many courses, whether the glass sweats.

The answer of a topic is one value, by whatever is asked; what else was asked by name (`asked_beside.py`), which mark was asked
for, and the answer in another unit that was asked for, are said with it. Asked after it in a few words, they are read off it.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.asked_beside import ASKED
from intents.expressions import expression
from solvers.quantities import Area, Quantity, Temperature, Volume, Weight
from solvers.rounding import reading

if TYPE_CHECKING:
    from assistant.record import Record

_ORDINALS = tuple("first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth".split())
_NTH = rf"(?P<nth>{'|'.join(_ORDINALS)}|last|\d+(?:st|nd|rd|th))"
_MARKED = r"mark|line|course|row|strap|batten|piece|baluster|picket|board|panel|joint|fastener|screw|nail|bend|cut"
_MARK = expression(rf"\b{_NTH} (?P<what>{_MARKED})\b", re.IGNORECASE)
_BY_LENGTH = ("gable courses",)
_FROM_BOTTOM = (*_BY_LENGTH, "course layout", "courses to openings")  # whose marks go up the wall
_LEAD = (
    r"(?:and|so|then|ok|the|what['’]?s|what is|what about|where['’]?s|where is|give me|how long['’]?s|how long is|how far up is)"
)
_THAT_ONE = expression(
    rf"\W*(?:{_LEAD}\W+)*(?:(?:mark|measurement|length|number) (?:for|of|on|at) (?:the )?)?"
    rf"(?:{_NTH} one|(?P<end>bottom|longest|lowest|top|shortest) (?:one|course|row))\W*",
    re.IGNORECASE,
)
_WHERE = expression(r"\b(?:where|what|whats|how far|show|tell|give)\b", re.IGNORECASE)
_UP = r"(?: (?:up )?(?:from|off|above) (?:the )?(?:bottom|floor|base|plinth|sill|start))?"
_ONLY = expression(
    rf"\W*(?:(?:and|so|then|the|what['’]?s|what is|where['’]?s|where is)\W+)*{_NTH}(?: (?:{_MARKED}))?{_UP}\W*", re.IGNORECASE
)
_UNIT = expression(
    r"\b(?:in|to|into|as)\s+(?:degrees\s+)?(?:(?P<square>square|sq\.?|cubic)\s+)?(?P<name>[a-z]+(?: metres?| meters?| feet)?)\b",
    re.IGNORECASE,
)
_UNITS: dict[tuple[bool, str], tuple[type[Quantity], str]] = {
    **dict.fromkeys(((False, "fahrenheit"), (False, "f")), (Temperature, "degF")),
    **dict.fromkeys(((False, "celsius"), (False, "centigrade"), (False, "c")), (Temperature, "degC")),
    **dict.fromkeys(((False, "kg"), (False, "kilos"), (False, "kilograms")), (Weight, "kg")),
    **dict.fromkeys(((False, "pounds"), (False, "lbs"), (False, "lb")), (Weight, "lb")),
    **dict.fromkeys(((True, "metres"), (True, "meters"), (True, "m")), (Area, "m2")),
    **dict.fromkeys(((True, "feet"), (True, "foot"), (True, "ft")), (Area, "ft2")),
    **dict.fromkeys(((True, "inches"), (True, "inch"), (True, "in")), (Area, "in2")),
    **dict.fromkeys(((False, "litres"), (False, "liters")), (Volume, "L")),
    **dict.fromkeys(((False, "gallons"), (False, "gallon")), (Volume, "gal")),
}


def also_asked(record: Record) -> list[str]:
    """What else a line asks for, to be said with its answer; none where it asks for nothing else."""
    heard, topic = record["heard"], record["topic"] or ""
    return beside(record, topic, heard) + mark_asked(record, heard) + _in_unit(record["answer"], heard)


def beside(record: Record, topic: str, text: str) -> list[str]:
    """The values beside the answer that the words ask for by name."""
    wanted = [name for asks, names in ASKED.get(topic, ()) if re.search(asks, text, re.IGNORECASE) for name in names]
    found = [
        line
        for name in dict.fromkeys(wanted)
        for line in record["also"]
        if f"{line['name']} ".startswith((f"{name} ", f"{name},"))
    ]
    return [said_so(line) for line in found]


def said_so(line: dict[str, Any]) -> str:
    """A value of the page with its name."""
    return f"{line['name']}{' ' if line['name'].startswith('the ') else ': '}{line['text']}"


def asking_words(topic: str, text: str) -> set[str]:
    """The words of a line that ask for a value that a topic gives beside its answer, be it there or not: out of a coil."""
    found = [re.search(asks, text, re.IGNORECASE) for asks, _ in ASKED.get(topic, ()) if asks]
    return {word for one in found if one for word in re.findall(r"[a-z]+", one[0].lower())}


def mark_asked(record: Record, text: str, ones: bool = False) -> list[str]:
    """Where the mark lies that is asked for by its number; `ones`: as the third one, too, while no step is read."""
    one = _THAT_ONE.fullmatch(text) if ones else None
    found = one or _MARK.search(text) or (_ONLY.fullmatch(text) if ones else None)
    if found is None or not record["marks"] or not (one or _WHERE.search(text) or _ONLY.fullmatch(text)):
        return []
    end = (one["end"] or "").lower() if one else ""
    if end and record["topic"] not in (_BY_LENGTH if end.endswith("est") and end != "lowest" else _FROM_BOTTOM):
        return []
    nth = (found["nth"] or ("last" if end in ("top", "shortest") else "first")).lower()
    at = len(record["marks"]) if nth == "last" else _ORDINALS.index(nth) + 1 if nth in _ORDINALS else int(nth[:-2])
    if not 0 < at <= len(record["marks"]):
        return [f"there are {len(record['marks'])} marks, and no {nth} {found['what'] if found.re == _MARK else 'one'}"]
    return [f"{record['marks'][at - 1]['name']}: {record['marks'][at - 1]['text']}"]


def _in_unit(answer: dict[str, Any], text: str) -> list[str]:
    """The answer in another unit of its kind, where the words ask for that."""
    for found in _UNIT.finditer(text):
        kind, unit = _UNITS.get((bool(found["square"]), found["name"].lower()), (None, ""))
        if kind is not None and answer["value"] is not None and answer["unit"] in kind.units and answer["unit"] != unit:
            value = kind(Fraction(str(answer["value"])), answer["unit"]).to(unit)
            return [f"that is {reading(value.value, unit)}"]
    return []
