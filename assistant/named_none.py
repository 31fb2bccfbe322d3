"""A change that also says there is none of something: "same but six twelve and no overhang", "16 footers and no waste"."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_NONE_OF = expression(
    r"\b(?:no|without|zero|minus the|leave (?:out|off) the) (?:any |the )?(?P<what>overhangs?|waste|kerf|laps?)\b(?: at all)?",
    re.IGNORECASE,
)
_JOINT_BEFORE = expression(r"(?:\s*[,;]|\s+(?:and|but|with))*\s*$", re.IGNORECASE)
_JOINT_AFTER = expression(r"^(?: (?:at all|this time|now|then))?(?:\s*[,;.]|\s+(?:and|but|just|with)\b)*\s*", re.IGNORECASE)
_SHARES = ("half", "a half", "third", "a third", "quarter", "a quarter", "two thirds", "three quarters")


def half_told(more: Question) -> bool:
    """Whether a share of something was taken for a size beside another: it's only half full so an inch and a half deep."""
    shares = [heard.text.strip().lower() in _SHARES for heard in more.givens.values()]
    return any(shares) and not all(shares)  # a quarter by a quarter


def without_things(more: Question, wanted: Wanted, last: Asked) -> None:
    """Take what a change says there is none of as zero, where the topic takes so much of it and the line tells more."""
    text = wanted.line or wanted.rest
    for found in _NONE_OF.finditer(text) if more.givens else ():
        named = _none(found, last)
        more.givens |= {name: none for name, none in named.items() if name not in more.givens}


def apart(text: str, last: Asked) -> tuple[str, dict[str, Heard]]:
    """A line that tells numbers, without what it says there is none of, and that: no overhang and 5.4 wide."""
    found = _NONE_OF.search(text)
    none = _none(found, last) if found is not None else {}
    if found is None or not none:
        return text, {}
    before, after = _JOINT_BEFORE.sub("", text[: found.start()]), _JOINT_AFTER.sub("", text[found.end() :])
    less = f"{before} {after}".strip()
    return (less, none) if numbers_in(less) else (text, {})


def _none(found: re.Match[str], last: Asked) -> dict[str, Heard]:
    """The given that there is none of, where the question before takes so much of it."""
    label = found["what"].lower().removesuffix("s")
    name = next((p.name for p in last.topic.parameters if p.label.endswith(label) and p.slot.least in (0, None)), "")
    given = last.givens.get(name)
    usual = given.value if given is not None else last.topic.parameter(name).default if name else None  # ten percent of waste
    if not isinstance(usual, Quantity):
        return {}
    return {name: Heard(replace(usual, value=Fraction(0), text=""), found.start(), found.end(), found[0])}
