"""Rows of `leans_on_it.py` for openings: another wall that is the same but for them ("south wall is the same but no windows, only
the door")."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.plain_lines import Plain
from assistant.said_over import stem
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.pending import Asked

_SAME_BUT = expression(  # south wall is the same but no windows, only the door; the far one's the same without the door
    r"(?:(?:the|that|our|my) )?(?:[a-z]+ ){0,2}?(?:wall|side|end|gable|one|elevation)(?:'s| is|'ll be)?"
    r"(?: (?:just|exactly|all|got))* (?:the )?same(?: (?:size|thing|again|wall|height|length))?,?"
    r" (?:but|only|just|except|and)?,? ?(?:it'?s |it has |there(?:'s| are) )?"
    r"(?:got |has |have |with )?(?:no|without(?: the| any)?|minus the|less the|not the) (?P<gone>windows?|doors?|openings?)"
    r"(?:,? (?:(?:only|just|and|but|still) )+(?:the |that |a |one )?(?P<left>windows?|doors?))?",
    re.IGNORECASE,
)


def same_without(line: str, last: Asked) -> Iterator[Plain]:
    """Another wall like the one just measured, without some of its openings; what is said to be left must be what is."""
    found = _SAME_BUT.fullmatch(line) if "openings" in last.givens else None
    if found is None:
        return
    gone, left = stem(found["gone"].lower()), stem((found["left"] or "").lower())

    def without(now: Asked, before: Asked) -> bool:
        kept = now.givens.get("openings")
        kinds = {stem(str(getattr(one, "what", ""))) for one in kept.value} if kept is not None else set()
        return gone not in kinds and (not left or kinds == {left})

    if gone != left:
        yield Plain(f"no {gone}", holds=without)
