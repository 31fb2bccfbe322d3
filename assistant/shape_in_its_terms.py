"""What a line asks of a corner, a ring or a circle just worked, in the terms of its topic: "and the inside corner on that five
sided one", "what area does that cover", "outside corner".
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.counts_in_its_terms import said_length
from assistant.given_in_its_terms import AGAIN, LEAD
from assistant.said_over import as_length, number_in, places_of, whole
from intents.expressions import expression
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

_TURNED_OUT = expression(
    rf"{LEAD}(?:for |on )?(?:it['’]s |that['’]s )?(?:an? |the )?(?:outside|inside|external|internal)(?: (?:corner"
    rf"|one))?{AGAIN}", re.IGNORECASE
)
_CORNER_OF_IT = expression(  # and the inside corner on that five sided one whats it measure
    r"(?!.*\b(?:saw|miter|mitre|set)\b).*\b(?:inside|internal|included|interior) (?:corner|angle)s?\b.*", re.IGNORECASE
)
_RADIUS = expression(
    rf"{LEAD}(?:it['’]s |that['’]s )?(?:(?:with )?(?:a |the )?radius(?: is| of|['’]s| was"
    rf"| at)? (?P<n>[^,;?]+?)){AGAIN}", re.IGNORECASE
)
SLOPES = ("roof angle", "pitch from rise and run", "pitch of an angle")
_IN_TWELVE = expression(
    r"\W*(?:(?:and|so|ok|then|now|what(?:['’]?s| is)|that|it|is|how)\W+)*(?:(?:as |in )?(?:so )?(?:many |much )?(?:in|over"
    r"|on) (?:12|twelve)"
    r"|in twelfths)(?: (?:then|is (?:that|it)(?: one)?|pitch))*\W*",
    re.IGNORECASE,
)
_AREA_OF_IT = expression(  # what area does that cover; how much does it cover
    r"\W*(?:(?:and|so|ok|then|now|well)\W+)*(?:what|how much|whats|what['’]s|how many (?:square|sq) (?:feet|ft|met(?:re"
    r"|er)s))\b[^\d]*"
    r"\b(?:area|covers?|square (?:feet|foot|ft|met(?:re|er)s))\b[^\d]*",
    re.IGNORECASE,
)

_RADIUS_OVER = expression(
    r"\W*(?:(?:and|so|ok|then|now|what['’]?s|the)\W+)*radius (?:again |then |now )?"
    r"(?:with|for|over|if it['’]?s|on) (?:an? |the )?(?P<n>[^,;?]+?) (?:opening|span|chord|wide|width|across)\W*",
    re.IGNORECASE,
)


def outside_or_in(text: str, last: Asked) -> str:
    """The same corner of a crown turned the other way, which is cut to the same numbers."""
    corner = last.givens.get("corner")
    said = corner is not None and corner.source != "assumed" and _TURNED_OUT.fullmatch(text)
    return f"corner {float(corner.value.value):.10g}" if said and corner is not None else ""


def corner_inside(text: str, last: Asked) -> str:
    """The corner inside the polygon just worked, where no other is told."""
    sides = last.givens.get("sides")
    told = [place.value.value for place in places_of(text) if place.words not in (("one",), ("a",))]
    same = sides is not None and all(number == sides.value.value for number in told)
    return "what's the corner inside" if same and _CORNER_OF_IT.fullmatch(text) else ""


def area_in_it(text: str, last: Asked) -> str:
    """The area of the circle just worked."""
    return "the area" if _AREA_OF_IT.fullmatch(text) else ""


def by_radius(text: str, last: Asked) -> str:
    """The radius of the circle just worked, in the place of how far across it is: radius is 6 foot."""
    found = _RADIUS.fullmatch(text) if "across" in last.givens else None
    place = whole(found["n"]) if found is not None else None
    was = last.givens["across"].value if place is not None else None
    if place is None or not isinstance(was, Length):
        return ""
    size = as_length(place.value, was.unit)
    return f"make it {said_length(Length(2 * size.value, size.unit))} across"


def in_twelve(text: str, last: Asked) -> str:
    """The slope of a triangle whose rise and run were told, as so many in twelve: in 12."""
    if last.topic.name in SLOPES:
        return "what's the pitch" if _IN_TWELVE.fullmatch(text) else ""
    legs = [last.givens[name].value for name in ("rise", "run") if name in last.givens]
    if not _IN_TWELVE.fullmatch(text) or len(legs) != 2 or not all(isinstance(leg, Length) for leg in legs):
        return ""
    rise, run = (said_length(leg) for leg in legs)
    return f"what pitch is a rise of {rise} over a run of {run}"


def radius_over(text: str, last: Asked) -> str:
    """The radius again over another opening: radius again with a 1350 opening."""
    said = number_in(_RADIUS_OVER, text)
    return f"make it {said} wide" if said else ""
