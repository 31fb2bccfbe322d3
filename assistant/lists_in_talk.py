"""Changes of lists and choices as they are told in talk, in the plain words that they stand for: "forgot there's a window too,
1200 by 1050" is "less a window 1200 by 1050", "make the 4 1/4 leg a 5" "make the 4 1/4 5", "client wants nine of the 34s now"
"nine of the 34s", "scrap the 7, just give me 14 courses" the courses and no 7, "do me white ash instead" white ash.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.of_them import COUNTED
from assistant.plain_change import Core
from assistant.said_over import places_of
from assistant.units_kept import openings
from intents.expressions import expression
from intents.matcher import read_as
from intents.talk import numbers_in
from solvers.slots import Choice

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_N = r"the|an?|one|another|two|three|four|five|six|seven|eight|nine|ten|\d+"
_AS_WELL = (
    r"(?:[ ,]+(?:too|as well|an all|and all|in (?:it|there|that(?: wall)?)|there|on (?:it|that wall)|also|(?:that )?i"
    r" (?:missed|forgot)"
    r"|to come (?:out|off)|to take (?:out|off)|each))*"
)
_OPENING = expression(
    rf"(?:[a-z'’]+[ ,]+){{0,6}}?(?P<n>{_N}) (?P<what>(?:[a-z]+ )?(?:window|door|opening|vent|hatch|slider)s?)\b{_AS_WELL}"
    r"(?:[ ,:–—-]+| at | of )+(?P<size>\S.*?(?:\bby\b|\bx\b|×).*?)" + _AS_WELL + r"\W*",
    re.IGNORECASE,
)
_SIZED_OPENING = expression(
    rf"(?:[a-z'’]+[ ,]+){{0,6}}?(?P<n>{_N}) (?P<size>\S+(?: (?:foot|feet|ft|mm|m|inch))?(?: \d+/\d+)? ?(?:by|x|×) ?\S+"
    r"(?: (?:foot|feet|ft|mm|m|inch))?) (?P<what>(?:[a-z]+ )?(?:window|door|opening|vent|hatch|slider)s?)" + _AS_WELL + r"\W*",
    re.IGNORECASE,
)
_MISSED = expression(  # said so, it is no other question
    r"\b(?:forgot|forgotten|missed|didn['’]t (?:say|tell|mention|count)|never (?:said|mentioned))\b", re.IGNORECASE
)
_FORGOT = expression(
    r"\b(?:forgot|forgotten|missed|didn['’]t (?:say|tell|mention|count)|never (?:said|mentioned)|there['’]?s|there (?:is"
    r"|are)|theres"
    r"|also|plus|as well|too|an all|and all|another|in it|has got|it['’]s got|has)\b",
    re.IGNORECASE,
)
_NOUN = r"(?:legs?|ones?|pieces?|sides?|layers?|lengths?|cuts?|windows?|bits?|returns?|flanges?)"
_INTO = expression(
    rf"(?:can you |could you |please |let's |we'll |i'll )?(?:make|change|turn|call|swap|cut) (?:the|that|those)"
    rf" (?P<old>\d[^a-z]*?)['’]?s?"
    rf"(?: (?:inch|in|mm|foot|ft))?(?: {_NOUN})? (?:(?:to|into|for|be|at) )?(?:an? )?(?P<new>\d[^a-z,;]*?"
    r"(?: ?(?:inch(?:es)?|in|mm|foot|ft|feet|m|cm))?)(?: (?:instead|now|then))*",
    re.IGNORECASE,
)
_IS_NOW = expression(  # the 3's a 3 1/2; the 140 at 160
    r"(?:the |that )?(?P<old>\d[\d./ ]*?)(?: (?:leg|one|piece|layer))?(?:['’]s| is| at| to| as)(?: now| really)?"
    r"(?: (?:at|an?))* "
    r"(?P<new>\d[\d./ ]*?(?: ?(?:inch(?:es)?|in|mm|m))?)",
    re.IGNORECASE,
)
_SCRAP = expression(
    r"(?:scrap|forget|drop|lose|never mind|ditch|skip|bin|not|scratch|ignore)(?: about)? (?:the |that )?(?P<old>[^,;.]+?)(?:"
    r" (?:max|limit"
    r"|exposure|rule))?\s*[,;.–—-]+\s*(?:(?:and|just|instead|then|so|now|but|let's|give me|do|do me|make it|go with|use|call"
    r" it|have|i want"
    r"|we want|say)\s+)*(?P<new>.+)",
    re.IGNORECASE,
)
_MORE = expression(
    rf"(?:(?:plus|and|add|also|need|i need|we need|with)\s+)*(?:another )?(?P<n>{_N}) (?:more |extra |other |further )?"
    r"(?:(?:pieces?|lengths?|bits?|cuts?|ones?) )?(?:at|of) (?P<size>[^,;]+?)(?: (?:as well|too|each|long))*",
    re.IGNORECASE,
)
_AND_MORE = expression(r"\b(?:plus|add|also|more|another|extra|other|further|as well|too)\b", re.IGNORECASE)
_OF_THEM = expression(r"\b(?P<n>\d+|[a-z]+) of (?:them|those|these|em)\W*$", re.IGNORECASE)  # inspector says ten of em
_ONE_EACH_END = expression(
    r"(?:(?:yeah|yes|put|leave|add|with|have|want|and|i|we|a|the|same)\s+)*(?:one|gaps?|it|spaces?)(?: the same)? (?:at|on) "
    r"(?:both|each|either|the) (?:ends?|sides?)\b.*",
    re.IGNORECASE,
)
_ASKED_FOR = expression(
    r"(?:(?:the|my|our) )?[a-z]+(?:['’]s)? (?:wants?|wanted|says?|said|asked for|asking for|prefers?|calls? for|going with"
    r"|gone with|(?:can )?only (?:got|gets?|has|have|carr(?:y|ies)|stocks?|sells?|does?)|specs?|specified|changed (?:it )?to"
    r"|switched to"
    r"|swapped (?:it )?(?:to|for)|likes|decided on|going for|rather have)(?: (?:it|the|to|in|us|go|with|use))*\s+(?P<new>.+)",
    re.IGNORECASE,
)
_DO_ME = expression(
    r"(?:(?:do|give|make|try|use|put|go|run|work|what|how|if|suppose|say|and|with|was|were|about|it|it's|that|them|they|me"
    r"|in|for|us|to|be"
    r"|out|of)\s+)+(?P<new>[a-z].*)",
    re.IGNORECASE,
)
_INSTEAD = expression(
    r"[ ,]+(?:instead(?: of .+)?|rather(?: than .+)?|in place of .+|not .+|this time|then|now|please)\W*$", re.IGNORECASE
)
_STAYS = expression(r"[, ]+(?:(?:and|but|with) )?(?:still|same|keep(?:ing)?(?: it| the)?|again)\b(?P<what>.*)$", re.IGNORECASE)
_ALIKE = frozenset(("square", "plumb", "level", "up", "down", "yes", "no"))  # words that may be of other things
LONGEST_CHOICE = 4  # words


def list_cores(c: Conversation, line: str, rests: list[str], last: Asked) -> Iterator[Core]:
    """The plain changes of a list or a choice that a line may stand for; `rests`: it without who says it."""
    yield from _openings(line, last)
    for rest in dict.fromkeys((*rests, line)):
        into, more = _INTO.fullmatch(rest), _MORE.fullmatch(rest)
        if into is not None and not unheard(into["old"], last.givens.values()):
            yield Core(f"make the {into['old'].strip()} {into['new']}", into["new"], listed=True)
            yield Core(f"no, {into['new']}, not {into['old'].strip()}", into["new"], listed=True)
        if more is not None and _AND_MORE.search(line) and "pieces" in last.givens and len(places_of(more["size"])) == 1:
            yield Core(f"add {more['n']} at {more['size']}", more["size"], listed=True)
        is_now = _IS_NOW.fullmatch(rest)
        if is_now is not None and not unheard(is_now["old"], last.givens.values()) and _in_a_list(last):
            yield Core(f"no, {is_now['new']}, not {is_now['old']}", is_now["new"], listed=True)
        scrap = _SCRAP.fullmatch(rest)
        if scrap is not None and places_of(scrap["old"]) and not unheard(scrap["old"], last.givens.values()):
            yield Core(f"{scrap['new']} instead", scrap["new"], listed=True, gone=scrap["old"])
        them = _OF_THEM.search(rest)
        if them is not None and last.topic.name in COUNTED:
            yield Core(f"make it {them['n']} of them", them["n"], listed=True)
        if last.topic.name == "equal spacing" and _ONE_EACH_END.fullmatch(rest) and len(numbers_in(rest)) <= 1:
            yield Core("gaps at both ends", "", listed=True)
        if rest != line and len(places_of(rest)) > 1:
            yield Core(rest, rest, listed=True)
    if not numbers_in(line):
        yield from _choices(c, line, last)


def forgotten(text: str, last: Asked) -> str:
    """A line that says an opening was forgotten, as what takes it out of the wall; the line as it is where it says none."""
    core = next(_openings(text.strip(" .!?"), last), None) if _MISSED.search(text) else None
    return core.line if core is not None else text


def _in_a_list(last: Asked) -> bool:
    return any(isinstance(given.value, tuple) for given in last.givens.values())


def _openings(line: str, last: Asked) -> Iterator[Core]:
    """An opening that was forgotten, taken out besides."""
    if not any(parameter.name == "openings" for parameter in last.topic.parameters) or not _FORGOT.search(line):
        return
    known = any(openings(given.value) for given in last.givens.values())
    found = _OPENING.fullmatch(line) or _SIZED_OPENING.fullmatch(line)
    if found is None or len(places_of(found["size"])) not in (1, 2) or not (known or "area" in last.topic.name):
        return
    many = "a" if found["n"].lower() in ("the", "an", "another", "one", "1") else found["n"]
    yield Core(f"less {many} {found['what']} {found['size']}", found["size"], listed=True)


def _choices(c: Conversation, line: str, last: Asked) -> Iterator[Core]:
    """Another of the choices of the question before: white ash instead, still quarter sawn."""
    stays = _STAYS.search(line)
    if stays is not None and stays.start() > 0 and _as_it_is(c, stays["what"], last):
        line = line[: stays.start()]
    line = _INSTEAD.sub("", line).strip()
    for pattern in (_ASKED_FOR, _DO_ME):
        found = pattern.fullmatch(line)
        new = found["new"].strip(" .!") if found is not None else line
        if len(new.split()) > LONGEST_CHOICE or new.lower() in _ALIKE:
            continue
        chosen = _chosen(c, new, last)
        if len(chosen) == 1:
            yield Core(new, "", listed=True)
            yield Core(f"{new} instead", "", listed=True)


def _as_it_is(c: Conversation, words: str, last: Asked) -> bool:
    """Whether words name choices that were made already, or nothing."""
    return all(
        name in last.givens and getattr(last.givens[name].value, "name", "") == value
        for name, value in _chosen(c, words, last).items()
    )


def _chosen(c: Conversation, words: str, last: Asked) -> dict[str, str]:
    """The choices that words name of the question before."""
    more = read_as(words, last.topic.name, c.parameters)
    kinds = {parameter.name: parameter.kind for parameter in last.topic.parameters}
    return {name: str(heard.value) for name, heard in more.givens.items() if issubclass(kinds[name], Choice)}
