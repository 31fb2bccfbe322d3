"""The ratio of free area to ceiling that a line tells, where another was told before: "inspector wants 1/150"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.question import Heard, Question
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_RATIO = expression(
    r"(?<![\w./])(?:1 ?/ ?|1 (?:in|over|to|per) |one (?:in|over|to|per) )(?:a )?"
    r"(?:(?P<more>150|(?:one )?hundred (?:and )?fifty|one[- ]fifty)|300|three[- ]hundred)(?:th)?(?![\w./])",
    re.IGNORECASE,
)
_TURNS = expression(
    r"\b(?:not|no longer|isn['’]?t|why|what['’]?s|how|which|difference|instead of|rather than|or)\b", re.IGNORECASE
)
_MOST = 12  # words of such a line


def ratio_in(text: str) -> str:
    """The one ratio of a short line that tells nothing else; "" where it tells none."""
    found = _RATIO.search(text)
    if found is None or len(text.split()) > _MOST or _TURNS.search(text):
        return ""
    rest = f"{text[: found.start()]} {text[found.end() :]}"
    return "" if numbers_in(rest) else "1/150" if found["more"] else "1/300"


def ratio_told(wanted: Wanted, last: Asked) -> list[Question]:
    """The vents asked of before, by the ratio that a change tells."""
    rule = next((p for p in last.topic.parameters if p.name == "rule"), None) if last.topic.name == "vent area" else None
    told = ratio_in(wanted.rest) if rule is not None else ""
    chosen = next((one for one in rule.kind if one.value == told), None) if rule is not None and told else None  # type: ignore[attr-defined]
    if chosen is None:
        return []
    return [Question(last.topic.name, {"rule": Heard(chosen.name, 0, len(wanted.rest), wanted.rest)}, 1.0)]
