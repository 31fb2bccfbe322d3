"""What a line tells of air, water and vents, in the terms of its topic: "if it cools to fifteen, humidity the same" is how warm
the air is, "basement wall's at 58, wet?" a surface, "12 square inches a foot" what the strip lets through.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.given_in_its_terms import AGAIN, LEAD
from assistant.said_over import number_in, whole
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.pending import Asked

_COOLS = expression(  # and if it cools to fifteen up there with the humidity still the same
    rf"{LEAD}(?:it|that|the (?:air|room|temperature|place|hall)|upstairs|downstairs|outside|things)(?:['’]s)?"
    r" (?:cools?|cooled|drops?|dropped|warms?|warmed|falls?|fell|goes|went|gets?|got|comes?|came|climbs?|climbed|rises?"
    r"|rose|heats?)"
    r"(?: (?:off|down|up|back))* to (?P<n>[^,;?]+?)(?: degrees)?(?: (?:up|down|in|out) (?:there|here)| outside| inside| tonight)*"
    r"(?:,? (?:with|and|but|at) (?:the )?(?:humidity|same humidity|damp|rh)(?: (?:still|is|stays|staying|being|the same|as before"
    rf"|unchanged))*)?{AGAIN}",
    re.IGNORECASE,
)
_SURFACE_AT = expression(  # basement wall's at 58, wet?
    rf"{LEAD}(?:the |my |that )?(?:[a-z]+ ){{0,2}}?(?:wall|window|glass|pane|pipe|slab|floor|surface|ceiling|sheathing|rafter"
    rf"|tank|duct"
    r"|concrete|metal|roof|door|frame)(?:['’]?s| is| are| reads?| gets? to)? (?:at |about |only "
    r"|down to )*(?P<n>(?:minus )?[^,;?]+?)"
    r"(?: degrees?)?(?:[,;]? (?:(?:so|and|is|does|will|would) )*(?:it |that )?(?:be |get )?(?:wet|sweat(?:ing)?|damp|dry"
    r"|drip)(?: up)?)?"
    rf"{AGAIN}",
    re.IGNORECASE,
)
_AT_SO_MANY = expression(
    rf"{LEAD}(?:at|on|with)? ?(?:an? )?(?P<n>(?:minus )?[^,;?]+?)(?: degrees?)?(?: (?:pipe|one|glass|window|slab"
    rf"|wall))?{AGAIN}",
    re.IGNORECASE,
)
_BY_THE_FOOT = expression(
    rf"{LEAD}(?:strips?|vents?|it|they|them)?(?:['’]?s| is| are|['’]re)? ?(?:at |with |gives? "
    rf"|lets? )?(?P<n>\d[\d.]*) (?:square inch(?:es)?"
    rf"|sq\.? ?in(?:ch(?:es)?)?)(?: free)? (?:a|per|each|to the|every) (?:foot|ft|lineal foot){AGAIN}",
    re.IGNORECASE,
)
_FREEZES = expression(
    r"[^\d]*\b(?:freez\w+|froze\w*|ice)\b[^\d]*\b(?:rise|rises|swell|swells|come up|go up|expand|grow)s?\b[^\d]*"
    r"|[^\d]*\b(?:rise|swell|come up|go up|expand|grow)s?\b[^\d]*\b(?:freez\w+|froze\w*|ice)\b[^\d]*",
    re.IGNORECASE,
)
_OPEN = (
    r"(?P<unit>square inch(?:es)?|sq\.? ?in(?:ch(?:es)?)?|square cm|sq\.? ?cm|square (?:mm|mils?|millimet(?:re|er)s)|sq\.? ?mm)"
)
_EACH_VENT = (  # how many vents is that if each has 50 square inches free; vents are 65 square inches apiece, how many
    expression(
        r"[^\d]*\bhow many\b[^\d]*\b(?:each|one|they|every one|it)(?: (?:one|vent|of them))?"
        r"(?:['’]s| has| have| had| lets?| gives?| is| are| were| was| gets?)?(?: (?:got|through|about|only|just|me|you))*"
        rf" (?P<n>[^,;?]+?) {_OPEN}(?: [a-z]+){{0,5}}\W*",
        re.IGNORECASE,
    ),
    expression(  # each vent twenty thousand square mil
        r"\W*(?:(?:and|so|ok|if|with)\W+)*(?:each|every|per) vent(?:['’]s| is| has| gives| lets| at)* (?P<n>[^,;?]+?)"
        rf" {_OPEN}(?: [a-z]+){{0,3}}?\W*",
        re.IGNORECASE,
    ),
    expression(
        r"[^\d]*?\bvents?\b[^\d]*?(?:are|is|at|give|gives|let|lets|have|has|come at) (?P<n>[^,;?]+?)"
        rf" {_OPEN}(?: [a-z]+){{0,3}}?[,;.] (?:so |and )?how many\b[^\d]*",
        re.IGNORECASE,
    ),
)
_MILS = expression(r"square (?:mils?|millimet(?:re|er)s)", re.IGNORECASE)


def cools_to(text: str, last: Asked) -> str:
    """How warm the air is to be, with as much water in it for that."""
    said = number_in(_COOLS, text)
    return f"temperature {said}" if said else ""


def on_a_surface(text: str, last: Asked) -> str:
    """How cold another surface is, after one was told: will it sweat on a 40 degree pipe | at 50 degrees?"""
    at = _SURFACE_AT.fullmatch(text)
    if at is not None and whole(at["n"]):
        return f"surface {at['n']} degrees, does it sweat"
    said = number_in(_AT_SO_MANY, text) if "surface" in last.changed else ""
    return f"surface {said} degrees" if said else ""


def each_vent(text: str, last: Asked) -> str:
    """How many vents make up the free area, by what each lets through."""
    found = next((match for shape in _EACH_VENT if (match := shape.fullmatch(text))), None)
    if found is None or not whole(found["n"]):
        return ""
    return f"how many {found['n']} {_MILS.sub('square mm', found['unit'])} vents is that"


def open_by_the_foot(text: str, last: Asked) -> str:
    """How much a foot of the strip lets through."""
    said = number_in(_BY_THE_FOOT, text)
    return f"make it {said} square inches a foot" if said else ""


def as_it_freezes(text: str, last: Asked) -> str:
    """How far the water rises as it turns to ice."""
    return "and frozen?" if _FREEZES.fullmatch(text) else ""
