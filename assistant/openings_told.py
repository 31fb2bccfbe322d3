"""Openings told after a wall without their sizes: "there's two windows", "minus a door"; how big each is, is asked.

Until that is known nothing is taken off, and the sizes that come next ("3 by 5") are theirs, and no new wall's.
"""

from __future__ import annotations

import re
from itertools import takewhile
from typing import TYPE_CHECKING

from assistant.pending import Pending
from assistant.record import KEPT, Record, blank, put_asked, put_declined
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Area, Length
from solvers.slots import Opening, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_N = r"(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|\d{1,2}|a couple of|a pair of)"
_WHAT = r"(?P<kind>window|door|opening|skylight|vent)s?"
_LEAD = (
    r"(?:(?:and|but|oh|so|ok|now|also|yeah|then|actually|with|less|minus|take (?:out|off|away)|deduct|subtract|plus|it'?s got"
    r"|it has|has|got|there(?:'s| is| are|'re|s)|(?:i|we)(?:'ve| have)?(?: got)?|what about|what if (?:there's|it has))[ ,]+)*"
)
_TAIL = r"(?:[ ,]+(?:in (?:it|that|there|the wall)|too|as well|off|out|on (?:it|that)|there|though|then|please|i forgot))*"
_TOLD = expression(rf"{_LEAD}(?P<said>{_N} (?:(?!for|of|to|in)[a-z]+ )?{_WHAT}){_TAIL}", re.IGNORECASE)
_BESIDE = expression(  # and not "a 3 by 7 door", which has its size, nor a wall beside a door
    rf"(?:\b(?:with|and|less|minus|plus|has|got|have|there's|there is|there are)\s+|[,&]\s*)(?P<said>{_N} {_WHAT})\b"
    r"(?!\s*(?:\d|[x×]|by\b|at\b|of\b|each\b|that\b|is\b|are\b|measur|one\b|two\b|three\b|four\b|five\b|six\b|seven\b|eight\b|nine\b|ten\b"
    r"|trim|sill|head|frame|casing|opening|side|wide|height|width|or\b))",
    re.IGNORECASE,
)
_SOME = expression(  # with some windows, less the doors: neither how many nor how big
    r"\b(?:with|and|less|minus|plus|has|got|have|there's|there is|there are|net of|take (?:off|out))\s+"
    r"(?P<said>(?:some|a few|several|a bunch of|a number of|a lot of|all|the|its|my)?(?: of the)? ?"
    r"(?P<kind>window|door|opening|skylight|vent)s)\b"
    r"(?!\s*(?:\d|[x×]|by\b|at\b|of\b|each\b|trim|sills?|heads?|frame|casing|area|total|add|come|measur"
    r"|are\b|is\b|out\b|taken\b|that\b|one\b|two\b|three\b))",
    re.IGNORECASE,
)
_COUPLE = expression(
    r"\ba (?:couple|pair)(?: of)? (?=(?:(?!of)[a-z]+ )?(?:windows|doors|openings|skylights|vents)\b)", re.IGNORECASE
)
_SO_MANY = expression(  # three of them, 3 by 4
    rf"\W*(?:(?:there's|there are|it's|they're|about|ok|so|um|uh|well)\W+)*(?P<n>{_N})\b(?: (?:of )?(?:them|em|those|of))?"
    rf"(?: {_WHAT})?[ ,]*(?:at |each |about |all |and |they're |they are |each one is |every one |is |are )*(?P<size>.*)",
    re.IGNORECASE,
)
_OF_THEM = expression(
    rf"\W*(?:(?:and|no|oh|so|ok|wait|sorry|actually|make (?:it|that)|it's|there's|there are)\W+)*"
    rf"(?P<n>{_N}) of (?:them|em|'em|those)\W*",
    re.IGNORECASE,
)
_TELLS_OPENINGS = expression(r"\b(?:windows?|doors?|skylights?|vents?|openings?|of (?:them|em|those))\b", re.IGNORECASE)
_FEET_AND_INCHES = expression(r"\W*\d[ -]\d+ ?(?:by|x)\b", re.IGNORECASE)  # 3 0 by 6 8
_NONE = expression(r"\bno (?:windows?|doors?|openings?)\b", re.IGNORECASE)
_BY = expression(r"\b(?:by|x)\b|×|\d\s*x\s*\d", re.IGNORECASE)
_THE = expression(r"^(?:the|my|this|that) ", re.IGNORECASE)
_COUNTED = expression(rf"\b(?P<said>(?:{_N}|the|my|this|that) {_WHAT})\b", re.IGNORECASE)
_KIND = expression(rf"\b{_WHAT}\b", re.IGNORECASE)
_SIZE_ALONE = expression(
    r"\W*(?:(?:it['’]?s|its|they['’]?re|that['’]?s|they are|it is|each|about|ok|so|um|size is)\W+)*"
    r"(?P<size>[^,;]{1,20}(?:\bby\b|[x×])[^,;]{1,20})",
    re.IGNORECASE,
)
_AGAIN = expression(
    rf"\W*(?:(?:it's|they're|there's|there are|ok|so|um|uh|well|and)\W+)*"
    rf"(?P<all>(?:(?P<n>{_N})|the|both|each|all) (?:of the )?{_WHAT}\b"
    r"(?: (?:is|are|at|measures?|all|each))*)\W*",
    re.IGNORECASE,
)
_MORE = expression(r"\W*(?:and|plus|also|another)\b", re.IGNORECASE)
_UNCOUNTED = "how many "  # so begins what is told of openings that were not counted
_SEALED = ("sealant", "length")  # what is sealed may be told by the size of what it is round
_SIZES = 2  # a width and a height


def openings_told(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells of openings in the wall just worked, and not how big they are; then that is asked."""
    last = c.last if c.pending is None else None
    found = _TOLD.fullmatch(text.strip(" .!?").replace("’", "'")) if last is not None and last.record.get("answer") else None
    if last is None or found is None:
        return False
    told = _told_before(last, found["kind"].lower())
    if told and not _MORE.match(found.string):
        return False  # one door, of two; eight windows, of what was asked for six
    if not any(_takes_openings(p) for p in last.topic.parameters):
        if any("count" in p.name or p.kind is tuple for p in last.topic.parameters):
            return False  # so many of them may be what is counted
        put_declined(record, f"A {found['kind'].lower()} changes nothing of the {last.topic.name}: ask a whole question of it")
        return True
    question = f"How big is each {found['kind'].lower()}: how wide by how high?"
    c.pending = Pending(last, told=f"with {found['said']}", question=question)
    put_asked(record, last.topic.name, question)
    return True


def ask_their_size(c: Conversation, record: Record, text: str) -> None:
    """Ask how big an opening is that a line tells of beside its wall, and gives no size: with a door, and two 3 by 4 windows."""
    open_ = c.pending if c.pending is not None and c.pending.left and c.pending.ways else None
    asked = open_.asked if open_ is not None else c.last
    if asked is None:
        return
    found = _told_of(asked, [text, *still_asked(c, record["topic"])])
    if found is None:
        return
    some = found.re == _SOME
    if open_ is not None and set(open_.left) <= set(found["said"].split()):  # the two of two doors has no other place
        c.finish(record, open_.ways, Question(asked.topic.name))
        record["ask"], c.pending = "", None
    last = c.last
    if last is None or record["outcome"] != "answered" or last.record is not record:
        return
    one = found["said"].lower().split()[0] in ("a", "an", "one")
    which = found["kind"].lower() if one else f"of the {found['said'].lower()}"
    question = _question(f"{found['kind'].lower()}s") if some else f"How big is each {which}: how wide by how high?"
    kept = {name: record[name] for name in KEPT}
    last.record = {**record}
    record.update(blank(record["heard"], record["via"], record["job"], record["file"]), **kept)
    put_asked(record, last.topic.name, question)
    told = f"{_UNCOUNTED}{found['kind'].lower()}s" if some else f"with {found['said']}"
    c.pending = Pending(last, told=told, question=question)


def with_their_openings(c: Conversation, text: str, pending: Pending) -> str:
    """The line as the size of the openings that were told of before it, where it is a size alone: with a door | 3 by 7."""
    asked = pending.asked
    size = _SIZE_ALONE.fullmatch(text) if len(numbers_in(text)) == _SIZES else None
    if asked is None or size is None or not pending.wanted:
        return text
    if pending.wanted.startswith("openings") or (asked.topic.name, pending.wanted) == _SEALED:  # trim around 4 windows | 3 by 5
        lines = still_asked(c, asked.topic.name)
        counted = next(filter(None, (_COUNTED.search(line) for line in lines)), None)
        one = next(filter(None, (_KIND.search(line) for line in lines)), None)
        said = _THE.sub("a ", counted["said"]) if counted is not None else f"a {one['kind']}" if one is not None else ""
        lead = "sealant round " if pending.wanted == "length" else ""
        return f"{lead}{said} {size['size']}" if said else text
    sides = [given.name for given in asked.givens.values() if given.source == "asked" and isinstance(given.value, Length | Area)]
    found = _told_of(asked, still_asked(c, asked.topic.name)) if len(sides) >= _SIZES or "area" in sides else None
    return f"with {found['said']} {size['size']}" if found is not None and found.re != _SOME else text


def still_asked(c: Conversation, topic: str | None) -> list[str]:
    """The lines right before that asked of this topic, and lacked other things as well."""
    lines = takewhile(lambda kept: kept["outcome"] == "asks" and kept["topic"] == topic, reversed(c.records))
    return [kept["heard"] for kept in lines]


def _told_of(asked: Asked, lines: list[str]) -> re.Match[str] | None:
    return next(filter(None, (_without_size(asked, counted_in_words(line)) for line in lines)), None)


def _question(kind: str) -> str:
    return f"How many {kind}, and how big is each: how wide by how high?"


def _counted(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line tells how many the openings are, and perhaps how big."""
    kind, said = pending.told.removeprefix(_UNCOUNTED), text.strip(" .!?").replace("’", "'")
    found = _SO_MANY.fullmatch(said) if numbers_in(said) else None
    if found is None or _BY.match(found["size"].lstrip()) or pending.asked is None:
        if not _BY.search(text) or found is None:
            return False
        put_asked(record, pending.asked.topic.name if pending.asked else None, _question(kind))
        c.pending = pending  # so big, and how many is still open
        return True
    pending.told = f"with {found['n']} {kind}"
    if found["size"]:
        return sized(c, record, found["size"], pending)
    pending.question = f"How big is each of the {found['n']} {kind}: how wide by how high?"
    put_asked(record, pending.asked.topic.name, pending.question)
    c.pending = pending
    return True


def _without_size(asked: Asked, text: str) -> re.Match[str] | None:
    """The first opening of a line that the question has no size of, where it takes openings; none where their area is told."""
    if "opened" in asked.givens or _NONE.search(text) or not any(_takes_openings(p) for p in asked.topic.parameters):
        return None
    lists = [given.value for given in asked.givens.values() if isinstance(given.value, tuple)]
    known = {one.what.split()[-1] for value in lists for one in value if isinstance(one, Opening)}
    told = (*_BESIDE.finditer(text.replace("’", "'")), *_SOME.finditer(text.replace("’", "'")))
    known |= {"opening"} if known else set()  # windows with their sizes are the openings
    return next((one for one in told if one["kind"].lower() not in known), None)


def _told_before(last: Asked, kind: str) -> bool:
    """Whether openings of that kind were told of before, which these are then the number of."""
    lists = [given.value for given in last.givens.values() if isinstance(given.value, tuple)]
    known = any(isinstance(one, Opening) and one.what.split()[-1:] == [kind] for value in lists for one in value)
    return known or re.search(rf"\b{kind}s?\b", last.text, re.IGNORECASE) is not None


def sized(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether the line tells how big the openings are that were told before it; then they are taken off."""
    if pending.told.startswith(_UNCOUNTED):
        return _counted(c, record, text, pending)
    if not _BY.search(text) and len(numbers_in(text)) < _SIZES:
        return False
    door = re.fullmatch(r"(?P<lead>with \S+(?: [a-z]+)?) door", pending.told) if _FEET_AND_INCHES.match(text) else None
    again = _AGAIN.match(text.replace("’", "'"))  # two windows, 3 by 4; the windows are 3 by 4
    size = text[again.end() :] if again else text
    told = f"with {text[again.start('all') :]}" if again and again["n"] else f"{pending.told} {size}"
    c.take(record, f"{door['lead']} {text.strip(' .!?')} door" if door else told)  # a 3-0 by 6-8 door
    return True


def counted_in_words(text: str) -> str:
    """The line with "a couple of windows" as two of them."""
    return _COUPLE.sub("two ", text)


def counted_again(text: str, last: Asked | None) -> str:
    """The line as so many windows, where "four of them" is said right after openings, and is of no four walls."""
    found = _OF_THEM.fullmatch(text) if last is not None else None
    if last is None or found is None:
        return text
    kinds = {one.what.split()[-1] for given in last.givens.values() for one in _openings(given.value)}
    told = " ".join(filter(None, (last.record.get("heard"), *last.changed)))
    return f"{found['n']} {kinds.pop()}s" if len(kinds) == 1 and _TELLS_OPENINGS.search(told) else text


def _openings(value: object) -> list[Opening]:
    return [one for one in value if isinstance(one, Opening)] if isinstance(value, tuple) else []


def _takes_openings(parameter: Parameter) -> bool:
    return parameter.kind is tuple and parameter.name.startswith("openings")
