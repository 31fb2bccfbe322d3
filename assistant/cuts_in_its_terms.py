"""What a line tells of a cut list, in the terms of its topic: "make them 27 1/4 long", "forgot two at 60", "make the short ones
27 inches".
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from assistant.counts_in_its_terms import LEAD, count_of, length_of_given, list_of, said_length
from assistant.said_over import places_of, times_apart, whole
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

_NEARER, _FAR_NEARER = 1.4, 3  # times as near to the piece as to the stock, where it is told of the pieces, and else
_FOR_THEM = expression(  # what if it's all 12s for the 33
    r"(?P<first>[^,;]*[,;] )?\W*(?:(?:and|so|ok|then|now|but)\W+)*(?:what if (?:it['’]?s|they['’]?re|i use|we use)"
    r"|how about|what about"
    r"|with|using|how many)(?: all| just| only)? (?P<size>[a-z0-9./' ]+?s)(?: (?:do i need|instead|then))*"
    r"(?: (?:for|to get|to make) (?:the|those|all|all the) (?P<n>[a-z0-9]+))?\W*",
    re.IGNORECASE,
)
_THEM_SO_LONG = expression(  # make them 27 1/4 long; cut them at 27 and a quarter, how many sixteens then
    rf"{LEAD}(?:cut(?:ting)? |rip |make |have |want |need |theyre |re |ll be |(?:they|the pieces)(?: are| were| should be) )?"
    r"(?P<them>them|those|these|'?em|all of them|the pieces|each(?: one| of them)?)?(?: all)?(?: (?:at|to|be|to be|are|down to))*"
    r" ?(?P<n>\S.*?)"
    r"(?P<long>(?: (?:long|each|apiece|instead|now|then|not \S+(?: \d+/\d+)?))*)"
    r"(?:[,;.]? (?:and |so )?how many(?: of)?(?: (?P<stock>\S+?))?(?: (?:sticks|lengths|boards))?"
    r"(?: (?:then|now|is (?:that|it)|do i need|does (?:that|it) take|will i need|for (?:that|them|those)))*)?\W*",
    re.IGNORECASE,
)
_MAKE_THE = expression(
    r"(?P<first>.*\S)\W+(?:but |and )?(?:make|change|turn) the (?P<old>\d+)['’]?s (?:into |to |be )?"
    r"(?P<new>\d[\d /]*)(?: (?:now|instead))?\W*",
    re.IGNORECASE,
)
_SHORT_ONES = expression(
    r"\W*(?:(?:and|so|ok|no|oh|actually|wait|on second thoughts?|then|now|but)\W+)*(?:make|cut|have"
    r"|change)? ?the (?P<which>short|shorter|small"
    r"|smaller|little|long|longer|big|bigger) (?:ones|pieces)(?:['’]re| are| to| at| should be)? (?P<n>[^,;?]+?)(?: (?:instead"
    r"|now|then))*\W*",
    re.IGNORECASE,
)
_FORGOT = expression(  # forgot 3 more at 31 1/2; I missed a 40
    r"\W*(?:(?:and|so|oh|ah|no|damn|sorry|wait|but|also)\W+)*(?:(?:i|we)(?:['’]ve)? )?(?:forgot|missed|left out"
    r"|left off)(?: about)?"
    r" (?:(?P<n>\d{1,2}|two|three|four|five|six|seven|eight|nine|ten) (?:(?:more|others?)(?: (?:at|of))?|at|of|pieces (?:at|of))"
    r"|(?:one|an?|the|another)(?: (?:more )?(?:at|of|piece at)(?= ))?) (?P<size>[^,;?]+?)(?: (?:one|piece|too|as well))*\W*",
    re.IGNORECASE,
)
_OUT_OF = expression(r"\b(?:out of|no more|no|short of|short on)\s+\S+s\b", re.IGNORECASE)  # the yard's out of 16s
_THEY_ARE = expression(
    r"\b(?:them|those|these|em|each|apiece|long|they|pieces)\b|\bthey['’]?re\b", re.IGNORECASE
)
_OF_STICKS = expression(r"\b(?:footers?|sticks?|lengths?|stock|boards?|from|out of|using|\d+['’]?s)\b", re.IGNORECASE)


def other_sticks(text: str, last: Asked) -> str:
    """A cut list of one piece from other sticks: what if it's all 12s for the 33."""
    pieces: tuple[Any, ...] = last.givens["pieces"].value if "pieces" in last.givens else ()
    found = _FOR_THEM.fullmatch(text) if len(pieces) == 1 and "stock_length" in last.givens else None
    stock = length_of_given(found["size"].strip(), last, "stock_length") if found is not None else None
    if found is None or stock is None or (found["n"] and count_of(found["n"]) != pieces[0].count) or _let_fall(found["first"]):
        return ""
    return list_of(pieces[0].count, pieces[0].length, stock, last)


def short_or_long_ones(text: str, last: Asked) -> str:
    """A cut list with its shortest pieces, or its longest, of another length: make the short ones 27 inches."""
    found = _SHORT_ONES.fullmatch(text) if "pieces" in last.givens and "stock_length" in last.givens else None
    pieces = last.givens["pieces"].value if found is not None else ()
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or len(pieces) != len(("short", "long")):
        return ""
    by_length = sorted(pieces, key=lambda one: one.length.to("in").value)
    one = by_length[0 if found["which"].lower() in ("short", "shorter", "small", "smaller", "little") else -1]
    size = found["n"] if isinstance(place.value, Length) else f"{found['n']} {one.length.unit}"
    return f"make the {said_length(one.length).split()[0]}s {size}" if one.length.value.denominator == 1 else ""


def some_made(text: str, last: Asked) -> str:
    """A cut list with the pieces of one length made another, told with the sticks they come from as before."""
    found = _MAKE_THE.fullmatch(text) if "pieces" in last.givens and "stock_length" in last.givens else None
    stock = last.givens["stock_length"].value if found is not None else None
    if found is None or not isinstance(stock, Length):
        return ""
    said = [place.value for place in places_of(found["first"])]
    if any(one.value != stock.value for one in said):
        return ""
    return f"make the {found['old']}s {found['new']}"


def more_forgotten(text: str, last: Asked) -> str:
    """More pieces put to a cut list: forgot 3 more at 31 1/2."""
    found = _FORGOT.fullmatch(text) if "pieces" in last.givens and "stock_length" in last.givens else None
    size = whole(found["size"]) if found is not None else None
    if found is None or size is None:
        return ""
    return f"and {found['n'] or 'one'} more at {found['size']}"


def _let_fall(first: str | None) -> bool:
    """Whether what is said before it has a number that would go unheard."""
    return first is not None and bool(numbers_in(_OUT_OF.sub("", first)))


def pieces_so_long(text: str, last: Asked) -> str:
    """A cut list of one piece, that cut to another length: make them 27 1/4 long."""
    pieces: tuple[Any, ...] = last.givens["pieces"].value if "pieces" in last.givens else ()
    found = _THEM_SO_LONG.fullmatch(text) if len(pieces) == 1 and "stock_length" in last.givens else None
    if found is None or _OF_STICKS.search(text[: found.end("long")]):
        return ""
    was, stock = pieces[0].length, last.givens["stock_length"].value
    said = length_of_given(found["n"].strip(), last, "stock_length")
    if said is None or not isinstance(stock, Length) or not isinstance(was, Length):
        return ""
    bare = whole(found["n"].strip())
    long = Length(said.value, was.unit) if bare is not None and not isinstance(bare.value, Length) else said
    asked = length_of_given(found["stock"], last, "stock_length") if found["stock"] else None
    if found["stock"] and (asked is None or asked.to("in").value != stock.to("in").value):
        return ""
    of_piece, of_stock = (times_apart(one.to("in").value, two.to("in").value) for one, two in ((long, was), (said, stock)))
    nearer = _NEARER if _THEY_ARE.search(text) else _FAR_NEARER
    return list_of(pieces[0].count, long, stock, last) if of_piece * nearer < of_stock else ""
