"""What a line after an answer tells, without who says it, that it is supposed, what stays, and what it asks of the question
before: "inspector's making us go 1/150" tells 1/150, "what's the pitch if it only climbs 35" that it climbs 35.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.also_asked import asking_words
from assistant.heard_all import unheard
from assistant.said_over import places_of, stem
from intents.chart import LIGHT
from intents.expressions import expression
from intents.phrases import compiled
from intents.talk import numbers_in
from intents.tokens import tokenize

if TYPE_CHECKING:
    from assistant.pending import Asked

_OPENS = expression(
    r"\W*(?:(?:and|but|so|ok|okay|right|no|oh|ah|well|then|now|actually|sorry|wait|hang on|hold on|hm+|or|ok so"
    r"|just|yeah"
    r"|turns out|apparently|looks like|i see|hey|mind you|damn|great)\b[\s,.:;/–—-]*)+",
    re.IGNORECASE,
)
WHO = expression(
    r"(?:(?:and|but|so|if|all|what if|what|now) )*(?:(?:the|my|our|your|his|her|a|that) )?(?:(?:building|local|head|site|old"
    r"|other|timber"
    r"|lumber|metal|code|main) )?(?P<who>inspector|supplier|yard|lumberyard|merchant|merchants|store|shop|boss|owner|owners"
    r"|client"
    r"|clients|customer|homeowner|engineer|foreman|gaffer|architect|designer|drawings?|plans?|specs?|code|control|council"
    r"|department"
    r"|roofer|framer|carpenter|joiner|builder|mason|plumber|tiler|mill|missus|wife|husband|lads?|apprentice|helper|fella"
    r"|guys?|man"
    r"|surveyor|manufacturer|maker|instructions|label|they|he|she|we|somebody|someone|partner|brother|dad|crew|landlord"
    r"|planner|depot)"
    r"(?:['’]?(?P<short>s|re|ve|ll|d))?(?=[\s,])",
    re.IGNORECASE,
)
_SAYING = frozenset(
    "say says said saying tell tells told reckon reckons reckoned think thinks want wants wanted wanting need needs needed"
    " ask asks"
    " asked asking insist insists insisted insisting specify specifies specified spec specs specced call calls called make makes"
    " making made let lets letting allow allows allowed change changes changed changing move moves moved put puts get gets got"
    " carry carries stock stocks sell sells sold send sent bring brought supply supplies have has had do does did going go"
    " goes went"
    " gone decide decides decided bump bumped drop dropped raise raised push pushed gave give gives come comes came draw"
    " drew drawn"
    " show shows showed like likes prefer prefers call stretch use run try require requires required accept accepts lower lowered"
    " settle settled switch switched agree agrees agreed measure measured".split()
)  # fmt: skip
_GOES_ON = frozenset(
    "me us it it's its that this them i we you i've we've they're is are was will would can could should must may might ought to"
    " be has have only just now really actually after all up down out back far as with for on at in of about his her their"
    " my mind"
    " minds the a an ones one some those these already today instead i'd we'd he'd she'd they'd s d ll ve re not than more"
    " least"
    " rather today's there which they you he she here round em theyre theyve its hes shes they've he's she's he'll they'll"
    " looking after".split()
)
_OWNS = frozenset("has have had got gets".split())  # the owner has a 24, which is a ladder; a yard has what it sells
_SELLS = expression(r"supplier|yard|lumberyard|merchants?|store|shop|mill|depot|they|we", re.IGNORECASE)
_DENIES = frozenset("not than more least rather no never without nothing less over under except".split())
_STOCKED = expression(  # supplier has 40 in stock; he wants 4 of them
    r"\b(?:in stock|left over|on hand|in the (?:yard|shed|van|truck)|available|of (?:them|those|these|em|the lot))\b",
    re.IGNORECASE,
)
_TELLS = expression(r"code|specs?|plans?|drawings?|label|instructions", re.IGNORECASE)  # which say by what they are
_TURNS = expression(r"\b(?:not|no|never|forget|without|instead|how|what)\b", re.IGNORECASE)
_SUPPOSES = expression(
    r"(?:(?:what|and|so) )*(?:if|suppose|supposing|say|imagine|assume|assuming|let['’]?s say|pretend|how about if|what about"
    r" if)\b\W*",
    re.IGNORECASE,
)
_IT_IS = expression(
    r"(?:(?:that|it|they|we|i|you|there|this|those|these)\b(?:['’](?:s|re|d|ve|ll))?\W*)?"
    r"(?:(?:only|just|really|actually|was|were|is|are|be|had|have|got|has|went|did|do|use|used|go|make|made|take|took|say|to|been"
    r"|at|with|on|an?|the|about|more like)\b\W*)*",
    re.IGNORECASE,
)
_ASKS = expression(
    r"(?P<ask>(?:(?:and|so|then|ok|now) )*(?:what(?:['’]?s| is| would| do| does| will|s)?\b|how (?:many|much|long|high|tall"
    r"|wide|deep|far|big"
    r"|steep)\b|(?=[a-z]+ (?:if|w/|with|for|at)\b))[^\d,;]*?)[, ]+(?P<told>(?:if|when|supposing|w/|with|for|from|on|off|at"
    r"|using)\b .+)",
    re.IGNORECASE,
)
_ASKS_AFTER = expression(
    r"[,;.?/–—-]?\s+(?:and |so |then |now )*(?:what|whats|how (?:many|much|long|high|tall|wide|deep|far|big|steep))\b[^\d]*$",
    re.IGNORECASE,
)
_STAYS = expression(
    r"[,;/]?\s+(?:(?:and|but|with)\s+)*(?:(?:the )?same\b|all the rest\b|everything else\b|rest (?:the )?same\b|still\b"
    r"|keep(?:ing)? the\b"
    r"|the rest\b|all else\b)(?P<what>.*)$",
    re.IGNORECASE,
)
_SOUNDED = expression(  # make it too percent
    r"\b(?P<n>too?|for|fore|ate|won)(?= (?:percent|per cent|%|degrees?|inch(?:es)?|foot|feet|mil|mm|met(?:re|er)s?|courses"
    r"|twelve|of (?:those|them|these|'?em))\b)",
    re.IGNORECASE,
)
_SOUNDS = {"to": "two", "too": "two", "for": "four", "fore": "four", "ate": "eight", "won": "one"}
SMALL = frozenset(
    "the a an of for in on at to and with if it its it's that they them is are was be only just but or from out so say i we you"
    " do does as one ones this those these my our there not s then now make go use be used got have has all each up down by take"
    " w were had did instead again yes really real realy".split()
)


def as_said(text: str) -> str:
    """A line without what it begins with, and its small words that can only be numbers as those: make it too percent."""
    return sounded(opened(text.strip(" .!?").replace("’", "'")))


def sounded(line: str) -> str:
    """A line with its small words that can only be numbers as those: for of those sixteens."""
    return _SOUNDED.sub(lambda found: _SOUNDS[found["n"].lower()], line)


def opened(text: str) -> str:
    found = _OPENS.match(text)
    return (text[found.end() :] if found is not None else text).strip()


def told_in(line: str, last: Asked) -> Iterator[str]:
    """What a line tells, without who says it, without that it is supposed, and without what it asks of the question before."""
    asks = _ASKS.fullmatch(line)
    if asks is not None and _of_the_question(asks["ask"], last):
        line = re.sub(r"^(?:w/|with|for|from|on|off|at|using|when)\s+", "", asks["told"], flags=re.IGNORECASE)
    after = _ASKS_AFTER.search(line)
    if after is not None and after.start() > 0 and _of_the_question(after[0], last):
        line = line[: after.start()]
    stays = _STAYS.search(line)
    if stays is not None and stays.start() > 0 and not unheard(stays["what"], last.givens.values()):
        line = line[: stays.start()]
    if not places_of(line) or _STOCKED.search(line):
        return
    who = WHO.match(line)
    if who is not None and (
        rest := _said_by(
            line[who.end() :], bool(who["short"] or _TELLS.fullmatch(who["who"])), _SELLS.fullmatch(who["who"]) is not None
        )
    ):
        yield rest
    supposed = _SUPPOSES.match(line)
    if supposed is not None:
        line = line[supposed.end() :]
    it = _IT_IS.match(line)
    yield line[it.end() :] if it is not None else line
    head, comma, tail = line.rpartition(",")
    if comma and not numbers_in(head) and not _TURNS.search(head):
        yield tail.strip()  # just re-measured, wall's really 8 foot 11 and a half


def _said_by(rest: str, short: bool, sells: bool) -> str:
    """What somebody says, after the words that say that they do; "" where nothing says so."""
    words = list(re.finditer(r"[^\s,;:]+", rest))
    said = short
    for word in words:
        plain = word[0].lower().strip(".!?")
        if plain in _DENIES:
            return ""
        number = places_of(rest[word.start() :])
        if number and number[0].start == 0:
            return rest[word.start() :] if said else ""
        if plain not in _SAYING and plain not in _GOES_ON:
            return rest[word.start() :] if said else ""
        said = said or (plain in _SAYING and (sells or plain not in _OWNS)) or plain == "only"
    return ""


def _of_the_question(ask: str, last: Asked) -> bool:
    """Whether what is asked is what was asked before, or stands beside its answer, or is nothing by name: how many, what"
    " pitch."""
    answer = last.record.get("answer") or {}
    beside = " ".join(str(line["name"]) for line in last.record.get("also", ()))
    names = f"{last.topic.name} {answer.get('name', '')} {beside} {last.text}".lower()
    known = {stem(word) for word in re.findall(r"[a-z]+", names)} | {stem(word) for word in asking_words(last.topic.name, ask)}
    phrases = compiled()
    small = phrases.fillers | LIGHT | SMALL | frozenset("what whats how many much long high tall wide deep far big would".split())
    words = [token.text for token in tokenize(ask) if token.text.isalpha()]
    return not numbers_in(ask) and all(word in small or stem(word) in known for word in words)
