"""A change that also says there is none of something: "same but six twelve and no overhang", "16 footers and no waste"."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from intents.question import Heard, Question
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_NONE_OF = re.compile(
    r"\b(?:no|without|zero|minus the|leave (?:out|off) the) (?:any )?(?P<what>overhang|waste|kerf|lap)\b", re.IGNORECASE
)
_SHARES = ("half", "a half", "third", "a third", "quarter", "a quarter", "two thirds", "three quarters")


def half_told(more: Question) -> bool:
    """Whether a share of something was taken for a size beside another: it's only half full so an inch and a half deep."""
    shares = [heard.text.strip().lower() in _SHARES for heard in more.givens.values()]
    return any(shares) and not all(shares)  # a quarter by a quarter


def without_things(more: Question, wanted: Wanted, last: Asked) -> None:
    """Take what a change says there is none of as zero, where the topic takes so much of it and the line tells more."""
    text = wanted.line or wanted.rest
    for found in _NONE_OF.finditer(text) if more.givens else ():
        label = found["what"].lower()
        name = next((p.name for p in last.topic.parameters if p.label.endswith(label) and p.slot.least in (0, None)), "")
        given = last.givens.get(name)
        if given is None or name in more.givens or not isinstance(given.value, Quantity):
            continue
        none = replace(given.value, value=Fraction(0), text="")
        more.givens[name] = Heard(none, found.start(), found.end(), found[0])
