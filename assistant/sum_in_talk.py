"""A line after a sum that tells the size of a thing and what to do with it, or asks for another share of the same length.

"The post's three and a half, so take half the post off that" takes half of three and a half off; "a quarter of it, the eleven
foot four and a half" is a quarter of that length; "what's a third in metric" a third of it.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.names import SUM
from assistant.said_over import places_of, whole
from intents.expressions import expression
from solvers.quantities import Quantity
from solvers.sums import MINUS, PLUS, Sum, does_only

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh)\W+)*"
_SHARES = r"half|third|quarter|fifth|sixth|eighth|two thirds|three quarters"
_OF_A_THING = expression(
    rf"{_LEAD}the (?P<what>[a-z]+)(?:['’]s| is| are| was) (?P<n>[^,;?]+?)"
    r"(?: (?:wide|thick|deep|long|high))?[,;]?(?: (?:so|and|then|just))* (?P<do>take|knock|add|put|lose)"
    r" (?:off |on )?(?:(?P<share>half|a third of|a quarter of) )?(?:of )?(?:the|that|a) (?P=what)"
    r"(?: (?P<to>off|onto|on to|to|on|from)(?: (?:that|it|there))?)?\W*",
    re.IGNORECASE,
)
_OF_IT = expression(
    rf"\b(?P<share>{_SHARES}) of (?:it|that),? (?:the|of the|that(?:['’]s| is)(?: the)?) (?P<n>\S.*)", re.IGNORECASE
)
_ANOTHER_SHARE = expression(
    rf"{_LEAD}(?:what(?:['’]?s| is| about)|how about|and)?\W*(?:(?:an?|one) )?(?P<share>{_SHARES})"
    r"(?P<unit> in (?:metric|mm|mil|millimet(?:re|er)s|inches|feet and inches))?(?: then| now)?\W*",
    re.IGNORECASE,
)
_OF_WHAT = expression(  # and half the rail again, of a rail whose length the sum told
    rf"{_LEAD}(?P<do>plus|add|minus|less|take|and)? ?(?:(?:off|on|away) )?(?P<share>half|a third of|a quarter of) (?:of )?the "
    r"(?P<what>[a-z]+)(?: again| more| on| off| too| to it| to that| off it| off that)?\W*",
    re.IGNORECASE,
)
_PUT_TO_IT = expression(  # plus half of 3 foot, of which the half must not be all
    rf"{_LEAD}(?P<do>plus|add(?: on)?|minus|less) (?P<what>(?:an? )?(?:{_SHARES}) of [^,;?]*?)"
    r"(?: (?:to|on to|onto|off|from) (?:that|it)| on)?\W*",
    re.IGNORECASE,
)
_SO_MANY_MORE = expression(
    rf"{_LEAD}(?P<do>add|plus|minus|less)(?: on)?(?: another)? (?P<many>\w+) (?:at|x|×) (?P<each>[^,;?]+?)(?: each)?\W*",
    re.IGNORECASE,
)
_AND_ALSO = expression(
    r"\W*(?:(?:oh|ok|so)\W+)*(?:and then|and also|and|also|then)(?: (?P<again>another|one more)| an?)? (?P<n>\S.*?)"
    r"(?: (?:too|as well|on top|more|to that|on to that))?\W*",
    re.IGNORECASE,
)
_TAKES = expression(r"\b(?:take|took|taking|knock|shave|trim|lose)\b", re.IGNORECASE)
_TAKEN = expression(rf"\b(?:(?:an?|one) )?(?:{_SHARES}) of (?P<n>.+)", re.IGNORECASE)


def sum_in_talk(text: str, last: Asked) -> str:
    """The plain words of such a line; as it is where it is none."""
    if last.topic.name != SUM or "sum" not in last.givens:
        return text
    thing = _OF_A_THING.fullmatch(text)
    if thing is not None and len(places_of(thing["n"])) == 1:
        share = f"{thing['share'].removesuffix(' of')} of " if thing["share"] else ""
        adds = thing["do"].lower() in ("add", "put")
        return f"that plus {share}{thing['n']}" if adds else f"take {share}{thing['n']} off that"
    of_it = _OF_IT.search(text)
    if of_it is not None and len(places_of(of_it["n"])) == 1 and places_of(of_it["n"])[0].start == 0:
        return f"{text[: of_it.start()]}{of_it['share']} of {of_it['n']}"
    text = _share_of_told(text, last) or text
    puts = _PUT_TO_IT.fullmatch(text)
    if puts is not None and places_of(puts["what"]):
        return f"that plus {puts['what']}" if puts["do"].lower().startswith(("plus", "add")) else f"take {puts['what']} off that"
    also = _AND_ALSO.fullmatch(text)
    before = last.givens["sum"].value
    if also is not None and does_only(before, PLUS) and all(_one_size(size) for size in _sizes(also["n"])):  # and 2 1/2
        sizes = _sizes(also["n"])
        return " plus ".join(["that" if len(sizes) > 1 else "", *sizes]).strip()
    if also is not None and also["again"] and _TAKES.search(last.text) and _same_again(also["n"], before):
        return f"take {also['n']} off that"
    more = _SO_MANY_MORE.fullmatch(text)
    if more is not None and len(places_of(more["many"])) == len(places_of(more["each"])) == 1:
        return f"{'less' if more['do'].lower() in ('minus', 'less') else 'plus'} {more['many']} times {more['each']}"
    return _another_share(text, last)


def _same_again(text: str, before: object) -> bool:
    """Whether a size is that which was taken off: 1/8 off 12 foot 3 | and another 1/8."""
    places = places_of(text) if _one_size(text) and isinstance(before, Sum) and before.operation == MINUS else []
    right = before.right if isinstance(before, Sum) else None
    return bool(places) and isinstance(right, Quantity) and places[0].value.value == right.value


def _sizes(text: str) -> list[str]:
    return re.split(r"\s*(?:,|&|\band\b(?! (?:an? )?(?:half|quarter|eighth|three|five|seven|\d+/)))\s*", text)


def _one_size(text: str) -> bool:
    return whole(text.rstrip(" .!?")) is not None


def _share_of_told(text: str, last: Asked) -> str:
    """Half the rail, where the sum before told how long the one rail is; empty where it told no such thing."""
    found = _OF_WHAT.fullmatch(text)
    told = list(re.finditer(rf"\b{found['what']}\b(?:['’]s| is| at| was)?\s+(?=\S)", last.text, re.IGNORECASE)) if found else []
    if found is None or len(told) != 1 or re.search(r"\bother\b", last.text, re.IGNORECASE):
        return ""
    lengths = [place for place in places_of(last.text) if place.start == told[0].end()]
    if len(lengths) != 1:
        return ""
    takes = (found["do"] or "").lower() in ("minus", "less", "take")
    share = f"{found['share'].removesuffix(' of')} of {last.text[lengths[0].start : lengths[0].end]}"
    return f"{'minus' if takes else 'plus'} {share}"


def _another_share(text: str, last: Asked) -> str:
    """A third, after a quarter of 11 foot 4 1/2: of the same length, in the unit that the line asks for."""
    share, taken = _ANOTHER_SHARE.fullmatch(text), _TAKEN.search(str(last.givens["sum"].value))
    length = taken["n"].strip(" .!?") if taken is not None else ""
    if share is None or text.strip(" .!?").lower() == "half":  # which is of the answer
        return text
    if taken is None and re.match(rf"{_LEAD}what(?:['’]?s| is) ", text, re.IGNORECASE):  # what's a third, after 5/8 off 47
        return f"{_article(share['share'])}{share['share']} of that{share['unit'] or ''}"
    if whole(length) is None:
        return text
    return f"{_article(share['share'])}{share['share'].lower()} of {length}{share['unit'] or ''}"


def _article(share: str) -> str:
    return "" if share.lower() == "half" or " " in share else "a "
