"""What a change says is to stay: "stock 16 foot, same pieces", "seven degrees, same six inches", "everything else as before".

Such words change nothing, so the change is read without them. A number among them must be one that the question before has.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from intents.expressions import expression
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.pending import Asked

_APART = expression(
    r"\s*(?:[,;:]|\.(?!\d)|\band\b|\bbut\b|\bwith(?= the same\b| same\b))(?:\s+(?:and|but)\b)?\s*"
    r"|\s+(?=(?:still|(?:the )?same|(?:at|on|with) the [a-z0-9]+\W*$)\b)",  # still a quarter deep, at the fifteen
    re.IGNORECASE,
)
_SAME = expression(
    r"\W*(?:(?:all|everything|the rest|rest|all the rest)(?:\s+else)?\s+(?:is\s+|stays?\s+|as\s+|the\s+)*(?:same|before|was|is)\b"
    r"|otherwise (?:the )?same|(?:all |everything )?else (?:the )?same"
    r"|(?:still |at |on |for |with )?(?:all |it's |its )?(?:the |that |those )?same\b"
    r"|(?:[\w']+\s+){0,3}(?:still|stays?)\b"
    r")",
    re.IGNORECASE,
)
_THE_NUMBER = expression(r"(?:at|on|with) the [a-z0-9]+\W*", re.IGNORECASE)  # at the fifteen, which it had before
_SAME_BUT = expression(
    r"\W*(?:(?:and|now|ok|so|do|for|on)\s+)*(?:the |that |this )?same(?:(?:\s+(?!with\b|but\b|at\b|in\b|on\b)[a-z]+){1,2}[\s,]+"
    r"(?:(?:but|only|just|with|at|in|on)\s+)+|\s+(?:with|at|in|on)\s+)(?:(?:an?|it'?s)\s+)?",
    re.IGNORECASE,
)  # same wall with
_COMPARES = expression(
    r"\W*(?:not (?:at|from) (?:zero|nothing|0)"
    r"|(?:one|two|three|a|an|\d)\s+(?:more|less|fewer)\s+than\s+(?:before|last time|that)"
    r"|(?:double|twice|half|triple)(?:\s+(?:that|it|as (?:much|many|wide|big|deep)))?)\W*$",
    re.IGNORECASE,
)  # sets the new value beside the old one


def without_same(text: str, last: Asked) -> str:
    """The line without what it says is as before; as it is where nothing else is said."""
    led = _SAME_BUT.match(text)
    if led and numbers_in(text[led.end() :]) and not numbers_in(led[0]):
        text = text[led.end() :]
    ends = [(0, 0), *((found.start(), found.end()) for found in _APART.finditer(text)), (len(text), len(text))]
    clauses = [(ends[n][0], ends[n][1], ends[n + 1][0]) for n in range(len(ends) - 1)]
    gone = [(start, end) for start, first, end in clauses if _stays(text[first:end], last)]
    kept = text
    for start, end in reversed(gone):
        kept = kept[:start] + kept[end:]
    kept = kept.strip(" ,;.!?")
    return kept if gone and numbers_in(kept) else text


def _stays(part: str, last: Asked) -> bool:
    """Whether a clause names what is as it was."""
    if _COMPARES.match(part):
        return True
    same = _SAME.match(part) or (_THE_NUMBER.fullmatch(part) and numbers_in(part))
    return bool(same) and all(_counts_all(number, last) for number in unheard(part, last.givens.values()))


def _counts_all(number: str, last: Asked) -> bool:
    """Whether a number is how many there are of all the things in a list: the six of four at 70 and two at 36."""
    lists = [given.value for given in last.givens.values() if isinstance(given.value, tuple)]
    return any(f"{sum(getattr(one, 'count', 0) for one in things)} none" == number for things in lists)
