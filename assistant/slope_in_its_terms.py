"""What is said of a slope just worked, in the words of its parts: "plus a 600 eave", "how far up is the ridge", "what do I cut
the ends at".
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import number_in
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = r"\W*(?:(?:and|so|ok|okay|now|then|also|right|but)\W+)*"
_EAVE = expression(  # plus a 600 eave
    rf"{_LEAD}(?:(?:plus|with|add(?: on| in)?|allow(?: for)?|throw in|there['’]?s|it['’]?s got|i want) )?"
    r"(?:an? |the )?(?P<n>[^,;?]+?) (?:of )?(?:eaves?|overhang|over hang|oversail)"
    r"(?: (?:on it|on that|too|as well|at the bottom|past the wall))*\W*",
    re.IGNORECASE,
)
_RIDGE = expression(
    rf"{_LEAD}how (?:far up|high up|high|tall)(?: is|['’]?s| does)? (?:the |that )?(?:ridge|peak|top)"
    r"(?: (?:get|go|come|then|above the (?:plate|wall)))*\W*",
    re.IGNORECASE,
)
_CUT = expression(
    rf"{_LEAD}(?:what['’]?s |whats |what is |what |give me )?(?:(?:is )?the )?"
    r"(?:(?:end |board )?cut(?:ting)? angle|angle (?:of|for) the (?:cut|ends?|end cuts?|boards?)"
    r"|do i cut (?:the (?:ends|boards)|them|it|the ends of the boards) (?:at|to))"
    r"(?: then| too| at that pitch)*\W*",
    re.IGNORECASE,
)
_GOING = expression(  # drop the going to 3200
    rf"{_LEAD}(?:(?:what if|if|with|make|put|change|drop|take|shorten|stretch|say) )?(?:the |a |its |total )*going(?:['’]?s)?"
    r"(?: (?:is|was|to|too|of|down to|up to|out to|at|only|now|should be))* (?P<n>[^,;?]+?)(?: (?:instead|now|then))*\W*",
    re.IGNORECASE,
)


def going_of_it(text: str, last: Asked) -> str:
    """How far a stair goes, which is the run of its triangle."""
    said = number_in(_GOING, text)
    return f"make the run {said}" if said else ""


def eave_on_it(text: str, last: Asked) -> str:
    """What a rafter or a rake has past the wall: plus a 600 eave."""
    said = number_in(_EAVE, text)
    return f"with {said} overhang" if said else ""


def ridge_of_it(text: str, last: Asked) -> str:
    """How high a rafter goes: how far up is the ridge."""
    return "what's the rise" if _RIDGE.fullmatch(text) else ""


def end_cut_of_it(text: str, last: Asked) -> str:
    """The cut of the boards that step along a rake: now the cut angle."""
    return "end cut" if _CUT.fullmatch(text) else ""
