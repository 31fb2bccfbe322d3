"""Other openings than were told, in the terms of the question before: "another window same size", "eight of them are 30 by 48",
"2 of each", "forgot one, make it three windows".
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.next_in_its_terms import LEAD
from assistant.said_over import places_of, stem, times_apart, whole
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Number, Quantity
from solvers.slots import Opening

if TYPE_CHECKING:
    from assistant.pending import Asked

_SO_MANY_OPENINGS = expression(  # forgot one, make it three windows; there's seven of em actually
    r"\W*(?:(?:and|so|ok|well|sorry|no|oh|wait|actually)\W+)*(?:(?:i )?"
    r"(?:forgot|missed|miscounted|counted (?:them |it |'?em )?wrong)(?: one| some| it)?[,;.]? )?"
    r"(?:how many [a-z]+ )?(?:if )?(?:make (?:it|that)|there(?:['’]?s| are| is| were)|it['’]?s|we['’]?ve(?: got)?"
    r"|i['’]?ve(?: got)?|call it)"
    r" (?P<n>\d{1,2}|[a-z]+)(?: of (?:them|those|'?em|these))?(?: (?P<what>windows?|doors?|openings?))?"
    r"(?: like (?:that|those|them|it))?(?: (?:actually|now|then|in all))*\W*",
    re.IGNORECASE,
)
_SOME_SIZED = expression(  # eight of them are 30 by 48; two of the windows are only 2 by 3
    rf"{LEAD}(?P<n>\d{{1,2}}|[a-z]+) of (?:(?:them|those|these|'?em)|the(?: [a-z]+)? (?P<what>windows|doors|openings))"
    r"(?:['’]re| are| were)(?: (?:only|really|actually|just))* (?P<size>[^,;?]+?(?: by |x| x |×)[^,;?]+?)(?: (?:though"
    r"|not [^,;?]+))*\W*",
    re.IGNORECASE,
)
_COUNTED_AFTER = expression(
    r"\W*(?:(?:and|so|ok|oh|less|minus|with|forgot|there['’]?s)\W+)*(?:the )?(?P<what>windows|doors|openings)(?:['’]re"
    r"| are)? (?P<size>[^,;?]+?)"
    r"[,;]? (?P<n>two|three|four|five|six|seven|eight|ten|\d{1,2}) of (?:them|'?em|those)\W*",
    re.IGNORECASE,
)
_ONE_SO_WIDE = expression(
    r"\W*(?:(?:and|so|ok|oh|no|sorry|wait|actually|but)\W+)*(?:(?P<the>the|those|these)|one|one of the|my) (?P<what>window"
    r"|door|opening)s?"
    r"(?:['’]?s| is| are| was| were|['’]re)(?: (?:actually|really|only|just|more like))* (?P<n>[^,;?]+?) (?P<how>wide|high|tall)"
    r"(?:,? not [^,;?]+)?\W*",
    re.IGNORECASE,
)
_IN_THAT_WALL = expression(
    r"\W*(?:(?:and|so|oh|ok|but|sorry|wait|plus|forgot|i forgot)\W+)*(?:there(?:['’]?s| is| are|['’]re)|it(?:['’]?s got| has))?"
    r" ?(?:also )?(?P<n>an?|one|two|three) (?P<what>(?:patio |sliding |entry )?(?:door|window|slider|opening)s?)"
    r" (?:in|on) (?:that|the|this|the same) (?:wall|side|one|end),? (?P<w>[^,;?]+?)(?: wide)? (?:by|x|×|and) (?P<h>[^,;?]+?)"
    r"(?: (?:high|tall))?\W*",
    re.IGNORECASE,
)
_OF_EACH = expression(
    r"\W*(?:(?:and|so|ok|no|wait|now|make it|there['’]?s|there are|it['’]?s|i['’]?ve got|we['’]?ve got|call it)\W+)*"
    r"(?P<n>\d{1,2}|two|three|four|five|six|seven|eight|ten|a pair) of (?:each|both|every one)(?: (?:of them|size|kind|one))?\W*",
    re.IGNORECASE,
)
_ANOTHER_ALIKE = expression(  # another window same size; one more of those windows
    r"\W*(?:(?:and|so|oh|sorry|wait|no|but|also|plus|i forgot|forgot|there['’]?s|add|with)\W+)*(?:another|one more|a (?:second"
    r"|third|fourth))"
    r" (?:(?P<what>window|door|opening)(?:,? (?:the|of the|that['’]?s|exactly)? ?(?:same(?: size| again)?|like (?:that|those"
    r"|them|it)))"
    r"|of (?:those|these|the) (?P<that>windows|doors|openings))(?: (?:too|as well|then|now))*\W*",
    re.IGNORECASE,
)


def counted_after(text: str, last: Asked) -> str:
    """Openings to be taken out, counted after their size: doors 3 by 6 8, two of em."""
    found = _COUNTED_AFTER.fullmatch(text)
    if found is None or len(places_of(found["size"])) != len(("wide", "high")):
        return ""
    return f"less {found['n']} {found['what']} {found['size']}"


def openings_otherwise(text: str, last: Asked) -> str:
    """Other openings than were told: one more alike, so many of one kind, or some of another size."""
    ways = (_in_that_wall, _one_so_wide, one_opening_more, _some_of_another_size, _so_many_of_each, so_many_openings)
    return next((fuller for way in ways if (fuller := way(text, last))), "")


def _in_that_wall(text: str, last: Asked) -> str:
    """An opening more, with where it is before its size: there's also a door in that wall 3 foot wide by 6 foot 8."""
    found = _IN_THAT_WALL.fullmatch(text)
    if found is None or not whole(found["w"]) or not whole(found["h"]):
        return ""
    return f"and {found['n']} {found['what']} {found['w']} by {found['h']}"


def _one_so_wide(text: str, last: Asked) -> str:
    """One of several openings alike, of another width or height: one window's actually 1.5 wide."""
    found, told = _ONE_SO_WIDE.fullmatch(text), last.givens["openings"].value
    one = told[0] if isinstance(told, tuple) and len(told) == 1 else None
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or one is None or stem(one.what) != stem(found["what"].lower()):
        return ""
    which = "width" if found["how"].lower() == "wide" else "height"
    if stem(one.what) == "door" and _high_first(one, which, place.value):
        one = replace(one, width=one.height, height=one.width)
    side = getattr(one, which)
    size = found["n"] if place.value.unit != "none" else f"{found['n']} {side.unit}"
    new = f"{size} by {float(one.height.value):.10g} {one.height.unit}"
    if which == "height":
        new = f"{float(one.width.value):.10g} {one.width.unit} by {size}"
    if found["the"] or one.count == 1:
        return f"make it {_so_many(one.count, one.what)} {new}"
    return f"make it {_so_many(one.count - 1, one.what)} {_size_of(one)} and 1 {one.what} {new}"


def _high_first(one: Opening, which: str, new: Quantity) -> bool:
    """Whether a door was told by its height first: the side that is put right is nearer to the other one, of 2.1 by 0.9."""
    unit = one.width.unit
    if new.value <= 0 or one.height.unit != unit or one.width.value <= one.height.value:
        return False
    size = new.to(unit).value if new.unit != "none" else new.value
    side, other = (one.width, one.height) if which == "width" else (one.height, one.width)
    return times_apart(size, other.value) < times_apart(size, side.value)


def _so_many_of_each(text: str, last: Asked) -> str:
    """So many of every kind of opening there is one of: 2 of each."""
    found, told = _OF_EACH.fullmatch(text), last.givens["openings"].value
    kinds = [one.what for one in told] if isinstance(told, tuple) else []
    alike = len(set(kinds)) < len(kinds) or any(one.count > 1 for one in told)
    if found is None or len(kinds) < len(("a door", "a window")) or alike:
        return ""
    many = "two" if found["n"].lower() == "a pair" else found["n"]
    return "make it " + " and ".join(f"{many} {one.what}s {_size_of(one)}" for one in told)


def _some_of_another_size(text: str, last: Asked) -> str:
    """Openings of one kind, of which some are of another size: eight of them are 30 by 48."""
    found, told = _SOME_SIZED.fullmatch(text), last.givens["openings"].value
    said = numbers_in(found["n"]) if found is not None and isinstance(told, tuple) and len(told) == 1 else []
    many = int(said[0].value.value) if len(said) == 1 and isinstance(said[0].value, Number) else 0
    if found is None or not 0 < many < told[0].count or (found["what"] and stem(found["what"].lower()) != stem(told[0].what)):
        return ""
    one, sizes = told[0], places_of(found["size"])
    unit = f" {one.width.unit}" if all(place.value.unit == "none" for place in sizes) and one.width.unit == "in" else ""
    others = f"{_so_many(one.count - many, one.what)} {_size_of(one)}"
    return f"make it {others} and {_so_many(many, one.what)} {found['size']}{unit}"


def so_many_openings(text: str, last: Asked) -> str:
    """How many openings there are, of one kind or of the kind that is named."""
    found = _SO_MANY_OPENINGS.fullmatch(text)
    said = numbers_in(found["n"]) if found is not None else []
    if found is None or len(said) != 1 or not isinstance(said[0].value, Number):
        return ""
    whats = {one.what for one in last.givens["openings"].value} if "openings" in last.givens else set()
    named = (found["what"] or "").lower()
    mine = [what for what in whats if what and (not named or stem(named) == stem(what))]
    of_them = named or re.search(r"\bof (?:them|those|'?em|these)\b", text, re.IGNORECASE)
    return f"{found['n']} {mine[0]}s" if len(mine) == 1 and of_them else ""


def one_opening_more(text: str, last: Asked) -> str:
    """One opening more, of the size of the one kind that there is: another window same size."""
    found = _ANOTHER_ALIKE.fullmatch(text)
    if found is None:
        return ""
    what = stem((found["what"] or found["that"]).lower())
    mine = [one for one in last.givens["openings"].value if stem(one.what) == what]
    return f"{mine[0].count + 1} {mine[0].what}s" if len(mine) == 1 else ""


def _so_many(count: int, what: str) -> str:
    return f"{count} {what}{'s' if count > 1 else ''}"


def _size_of(one: Opening) -> str:
    return " by ".join(f"{float(side.value):.10g} {side.unit}" for side in (one.width, one.height))
