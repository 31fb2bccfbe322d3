"""What was held against the answer, said anew: "will 2 1/2 inch nails do, 5/8 siding, 1 1/4 bite", and then "and 3 inch?".

The new size is of what somebody has, as the old one was, and no given of the question.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of
from intents.expressions import expression
from intents.islands import light_words
from intents.tokens import tokenize

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_VERDICTS = ("enough", "not enough")
_ONES = frozenset("ones one nails screws".split())
_UNIT = expression(r"[\s-]*(?:inch(?:es)?|feet|foot|mm|in\b|ft\b|[\"'])", re.IGNORECASE)


def claimed_anew(c: Conversation, record: Record, rest: str) -> bool:
    """Whether the line is another size of what was held against the last answer; then that is asked with it."""
    last = c.last
    if last is None or not last.text:
        return False
    held = next((line["name"] for line in last.record["also"] if line["text"] in _VERDICTS and line["unit"] == "word"), "")
    said = places_of(rest)
    if not held or len(said) != 1 or last.text.lower().count(held.lower()) != 1 or _says_more(rest, said[0].first, said[0].after):
        return False
    at = last.text.lower().index(held.lower())
    bare = said[0].value.unit == "none" and not _UNIT.match(rest[said[0].end :])
    unit = _UNIT.search(held)
    new = rest[said[0].start : said[0].end] + (unit[0] if bare and unit else "")
    text = last.text[:at] + new + last.text[at + len(held) :]
    c.take(record, text)
    if c.last is not None and c.last is not last:
        c.last.text = text
    return True


def _says_more(rest: str, first: int, after: int) -> bool:
    """Whether there is a word in it beside the size."""
    words = [token.text for at, token in enumerate(tokenize(rest)) if not first <= at < after and token.text.isalpha()]
    return any(word not in light_words() and word not in _ONES for word in words)
