"""A number of the question before that is said to be another: "sixty should be seventy five", "80's 90", "the 80 is really 90".

No word beside the two names a given: the first is what it was, and so tells which.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.meant_for import Wanted
from assistant.nth_one import nth_one
from assistant.said_over import places_of, whole
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

_ONE_IS_OTHER = expression(
    r"\W*(?:(?:no|sorry|and|but|oh|actually|wait|that|the)\b\W*)*(?P<old>[^,;?]+?)"
    r"(?: (?:should(?:['’]ve| have)? (?:be|been|read)|ought to be|was meant to be"
    r"|(?:wants|needs|has|had|is|got|supposed|is supposed) to (?:be|read|go to|come to|come up to)|must be|becomes|gets to be)"
    r"|(?:['’]s| is| was)(?: (?:really|actually|now|wrong,? it['’]?s))?) (?P<new>[^,;?]+?)\W*",
    re.IGNORECASE,
)


def told_by_place(text: str, last: Asked | None) -> Wanted | None:
    """The change of one number that a line tells by where it stood, or by what it was; None where it tells none so."""
    return (nth_one(text, last) if last is not None else None) or should_be(text, last)


def should_be(text: str, last: Asked | None) -> Wanted | None:
    """The change that puts one number of the question before right; None where the line tells no such thing of it."""
    found = _ONE_IS_OTHER.fullmatch(text) if last is not None else None
    if found is None or last is None:
        return None
    old = whole(found["old"])
    if old is None or whole(found["new"]) is None or unheard(found["old"], last.givens.values()):
        return None
    if [place.value.value for place in places_of(last.text)].count(old.value.value) != 1:
        return None
    return Wanted(found["new"], found["old"], corrects=True, led=True)


def in_a_row(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one length of a row of them other than it was, whatever else was told since: the legs of a bend."""
    old, new = places_of(wanted.old), places_of(wanted.rest)
    if len(old) != 1 or len(new) != 1:
        return []
    for name, given in last.givens.items():
        row = given.value if isinstance(given.value, tuple) else ()
        at = [n for n, one in enumerate(row) if isinstance(one, Length) and one.value == old[0].value.value]
        if len(at) != 1:
            continue
        was = row[at[0]]
        unit = was.unit if new[0].value.unit == "none" else new[0].value.unit
        now = (*row[: at[0]], replace(was, value=new[0].value.value, unit=unit, text=""), *row[at[0] + 1 :])
        return [Question(last.topic.name, {name: Heard(now, 0, len(wanted.rest), wanted.rest)}, 1.0)]
    return []
