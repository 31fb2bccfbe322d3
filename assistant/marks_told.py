"""Notes, flags, tags and strikes in one's own words: "flag the east gable flashing", "log it: 3 tubes left", "bin that note".

What is flagged or tagged by its own name is the entry that has all those words, where this conversation has one; otherwise
it is a note of those words, flagged or tagged. A line that asks something, or holds what is worked, is none of these.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.talk import Said, numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

FIRST = frozenset(
    "write put jot log mark pop note record enter scribble get take stick chuck add make leave memo heads flag star bookmark "
    "another new earmark highlight asterisk red tag label strike scratch delete remove bin lose scrap drop cross rub erase "
    "ditch "
    "please can could ok and just".split()
)  # what such a line begins with; no other is looked at
_LEAD = r"\W*(?:(?:please|ok|okay|and|just|can you|could you|can we|let's|i want to|we should|go ahead and)[ ,]+)*"
_SMALL_HEAD = r"(?:it|this|that|one|a|an|the|my|our|me|us|you|down|up|in|into|on|to|for|later|file|quick|please|again|somewhere)"
_BOOK = r"(?:memo|note|notes|book|notebook|diary|daybook|log|list|record|file|paper)"
_NOTE = expression(
    rf"{_LEAD}(?:(?:write|put|jot|log|mark|pop|record|enter|scribble|get|take|stick|chuck|add|make|leave|note)"
    rf"(?: {_SMALL_HEAD}){{0,4}}(?: {_BOOK})?(?: {_SMALL_HEAD}){{0,3}}|heads[- ]up(?: for later)?|memo"
    r"|(?:another|new) note)"
    r"\s*(?P<apart>[:;]|,| that |[-–—](?= ))\s*(?P<rest>\S.*)",
    re.IGNORECASE | re.DOTALL,
)
_WANTED = expression(  # there's 20 feet of drip edge left in the truck, which I want noted before somebody walks off with it
    r"(?P<note>.+?),? (?:which|and that|and) (?:i|we)(?: want| need|'d like| would like)(?: it| that)?"
    rf" (?:noted|written down|on record|logged|jotted down|in the {_BOOK})\b.*",
    re.IGNORECASE | re.DOTALL,
)
_ABOUT_IT = expression(r"\bnote (?:to|on|about|against|with|by) (?:that|it|this|the last)\b", re.IGNORECASE)
_KEEPS = expression(rf"\b(?:down|write|log|jot|record|note|heads|{_BOOK})\b", re.IGNORECASE)
_ADDS_UP = expression(rf"\b(?:add|put|make|take)\b(?!.*\b(?:down|{_BOOK})\b)", re.IGNORECASE)
_FLAG = expression(
    rf"{_LEAD}(?:(?:put|stick|set|leave|drop|hang) an? (?:red )?(?:flag|star|pin) (?:on|by|against|beside|next to|at|for)"
    r"|(?P<verb>red[- ]flag|flag|star|bookmark|earmark|highlight|asterisk)(?: up)?)\b\s*(?P<apart>[:,]\s*)?(?P<rest>\S.*)",
    re.IGNORECASE | re.DOTALL,
)
_TAG = expression(rf"{_LEAD}(?:tag|label|mark) (?P<rest>.+?) (?:as|with|under) (?P<tag>[^,;:]+)", re.IGNORECASE)
_STRIKE = expression(
    rf"{_LEAD}(?:strike|scratch|delete|remove|bin|lose|scrap|drop|cross|rub|erase|ditch|chuck|take)(?: out| off)?"
    r" (?:the |my |that |this )?(?:last )?(?:(?P<noun>note|entry|flag|one) (?:about|on|saying|for|with|of) (?P<about>.+)"
    r"|(?P<named>.*?)\s*\b(?P<one>note|entry|one))(?: out| off)?",
    re.IGNORECASE,
)
_IT = r"(?:it|that|this|that one|this one|(?:the|that|this) (?:entry|answer|note)|(?:the |that |this )?last(?: one| answer)?)"
_POINTS = expression(rf"{_IT}(?: (?:for|to|because|so|as|since|on|in|up|down|with)\b.*)?[\s.!]*", re.IGNORECASE)
_POINTS_AND = expression(rf"{_IT}(?: for [a-z]+(?: [a-z]+)?)?\s*[:,–—]\s*(?P<more>\S.*)", re.IGNORECASE)
_I_WILL = expression(r"(?:i|we|so|because|for|to|need|want|must|have)\b", re.IGNORECASE)
_A_THING = expression(
    r"(?:the|this|that|my|our|your|those|these|an?|north|south|east|west|lake|ramp|front|back|left|right|all|both)\b",
    re.IGNORECASE,
)
_OTHER = expression(r"(?:poles?|staffs?|stones?|stone|posts?|paving|down|drive|pattern)\b", re.IGNORECASE)
_ASKS = expression(r"\?|\b(?:how (?:many|much|long|far|wide|deep|high)|what|what's|whats|which|work out)\b", re.IGNORECASE)
_SMALL = frozenset(
    "the a an my our that this those these one ones note entry about on of for in at to and with last please by as is it out "
    "off".split()
)


def told_mark(c: Conversation, text: str) -> Said | None:
    """The line as a note, flag, tag or strike told in one's own words."""
    wanted = _WANTED.fullmatch(text.strip())
    if wanted is not None and not _ASKS.search(wanted["note"]) and "?" not in text:
        return Said("note", words={"note": wanted["note"]})
    first = re.match(r"\W*([a-z]+)", text, re.IGNORECASE)
    if first is None or first[1].lower() not in FIRST:
        return None
    line = text.strip()
    return _flagged(c, line) or _tagged(c, line.rstrip(" .!")) or _struck(c, line.rstrip(" .!")) or _noted(line)


def _noted(line: str) -> Said | None:
    found = _NOTE.fullmatch(line)
    if found is None:
        return None
    head = line[: found.start("apart")]
    if _ABOUT_IT.search(head):
        return None  # a note about the last answer: job.jsgf knows those
    sure = found["apart"].strip() in (":", ";") or re.search(rf"\b(?:down|{_BOOK})\b", head, re.IGNORECASE)
    if not sure or not _KEEPS.search(head) or _ADDS_UP.search(head) or _ASKS.search(found["rest"]):
        return None  # "add it up: 3 foot 4 and 7 foot 9" is a sum, "put it down, how many courses" a question
    return Said("note", words={"note": found["rest"]})


def _flagged(c: Conversation, line: str) -> Said | None:
    found = _FLAG.fullmatch(line)
    if found is None or _ASKS.search(line) or _OTHER.match(found["rest"]):
        return None
    plain = (found["verb"] or "flag").lower().endswith("flag")
    if not plain and not found["apart"] and not _A_THING.match(found["rest"]):
        return None  # star drive screws
    also = _POINTS_AND.fullmatch(found["rest"])
    if also is not None:
        return None if _I_WILL.match(also["more"]) else Said("note", words={"note": also["more"], "flag": "yes", "this": "yes"})
    if _POINTS.fullmatch(found["rest"]):
        return None  # no words of its own
    entry = _entry_of(c, found["rest"])
    return Said("flag", words={"which": entry}) if entry else Said("note", words={"note": found["rest"], "flag": "yes"})


def _tagged(c: Conversation, line: str) -> Said | None:
    found = _TAG.fullmatch(line)
    if found is None or _ASKS.search(line) or numbers_in(found["tag"]) or _POINTS.fullmatch(found["rest"]):
        return None
    entry = _entry_of(c, found["rest"])
    if entry:
        return Said("tag", words={"which": entry, "tag": found["tag"]})
    if numbers_in(found["rest"]) or not _A_THING.match(found["rest"]) or re.fullmatch(rf"{_IT}", found["rest"], re.IGNORECASE):
        return None
    return Said("note", words={"note": found["rest"], "tag": found["tag"]})


def _struck(c: Conversation, line: str) -> Said | None:
    found = _STRIKE.fullmatch(line)
    if found is None or numbers_in(line):
        return None
    named = found["about"] or found["named"] or ""
    if not _words(named):
        return Said("strike") if found["one"] and found["one"].lower() != "one" else None
    entry = _entry_of(c, named)
    if entry:
        return Said("strike", words={"which": entry})
    noted = (found["noun"] or found["one"] or "").lower() in ("note", "entry")
    return Said("strike", words={"missing": named}) if noted else None


def _entry_of(c: Conversation, named: str) -> str:
    """Which entry of this conversation has all the words, the last one first, counted from the first; "" for none."""
    words = _words(named)
    for at in range(len(c.records) - 1, -1, -1):
        if words and markable(c.records[at]) and words <= _words(f"{c.records[at]['heard']} {c.records[at]['topic']}"):
            return str(at)
    return ""


def markable(record: Record) -> bool:
    """Whether an entry can be flagged, tagged or struck: an answer, a note, or something kept."""
    return record["outcome"] == "answered" or (record["topic"] in ("note", "remember") and record["outcome"] == "noted")


def _words(text: str) -> set[str]:
    return {word.removesuffix("s") for word in re.findall(r"[a-z0-9]+", text.lower()) if word not in _SMALL}
