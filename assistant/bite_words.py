"""Whether a line asks what a screw or nail of such a length bites: its length is then no layer and no penetration."""

from __future__ import annotations

import re

from assistant.said_over import Place
from intents.expressions import expression

_SCREW = expression(
    r"[\s-]*(?:inch(?:es)?|in|mm|\"|”)?[\s-]*(?:long )?(?:[a-z]+ )?(?:screws?|nails?|fasteners?|lags?|spikes?|ones?)\b",
    re.IGNORECASE,
)
_BITES = expression(
    r"\b(?:bites?|biting|leaves?|purchase|penetrat\w+|hold|holds|grabs?|sinks?|embed\w*"
    r"|(?:gets?|goes?|go|left|end up|ends up|be|is) (?:in|into)(?: the)? (?:stud|studs|wood|framing|timber|post|joist))\b"
    r"|\bin(?:to)? the (?:stud|studs|framing)\b",
    re.IGNORECASE,
)
_ASKS = expression(r"\b(?:what|how (?:much|far|deep)|whats)\b", re.IGNORECASE)
_WANTED = expression(r"\b(?:want|need|must|at least|minimum|how long|enough|what length|what size)\b", re.IGNORECASE)


def asks_its_bite(text: str, place: Place) -> bool:
    """Whether the number at a place is how long a fastener is whose bite the line asks for."""
    asks = _BITES.search(text) is not None and _ASKS.search(text) is not None and _WANTED.search(text) is None
    return asks and _SCREW.match(text[place.end :]) is not None
