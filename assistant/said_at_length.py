"""A line after an answer as somebody says it who talks, in the shorter words that it stands for.

"And what's the edge angle, what I'd read with the gauge" is "what's the edge angle"; "what if we flatten it to a two twelve,
what's the rise then" is "make it a two twelve"; "if I bring the foot in to four feet" is "with the foot at four feet".
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from assistant.also_asked import beside
from assistant.heard_all import unheard
from assistant.said_over import places_of
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Temperature
from solvers.registry import load_topics

if TYPE_CHECKING:
    from assistant.pending import Asked

LONGEST = 20  # words of such a line
FEWEST = 6  # of one that asks for a value; what is shorter is read as it is
_LEAD = r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh)\W+)*"
_SUPPOSES = r"(?:what if|what about|how about|if|say|suppose|let['’]?s|can (?:you|we)|could we|i could|we could|please)"
_WHO = r"(?:(?:i|we|you|they|he|she)(?:['’](?:ll|d))?\s+(?:(?:were|was|have|had) to\s+)?)?"
_MOVES = (
    "flatten|steepen|drop|raise|lift|lower|bring|pull|push|move|kick|shorten|lengthen|stretch|widen|narrow|bump|ease|knock|shove"
    "|slide|open|close|take|cut|trim|put|let|carry|extend"
)
_TO_SO_MUCH = expression(
    rf"(?P<lead>{_LEAD})(?:{_SUPPOSES}\s+)?{_WHO}(?:{_MOVES})\s+"
    r"(?:(?P<it>it|that|this|them)|(?:the|my|that|this)\s+(?P<what>[a-z]+(?: [a-z]+)??))"
    r"(?:\s+(?:in|out|up|down|back|over|away))*\s+to\s+(?P<n>(?:an?\s+)?[^,;?]+?)\W*",
    re.IGNORECASE,
)
_ASKS_AFTER = expression(
    r"[,;.]?\s+(?:and |so |then )*(?:what(?:['’]?s| is| would| will)?|how (?:much|many|long|high|tall|wide|deep|far))"
    r"(?: the| my| it| that| does| do| i| is| be)*(?P<what>(?: [a-z]+){0,3}?)"
    r"(?: (?:am i|are we) (?:after|looking for|chasing)| (?:do|would|will|should) (?:i|we|it) (?:want|need|get|have|see|be)"
    r"| (?:does|would) (?:that|it) (?:give|make)(?: (?:me|us))?)?"
    r"(?: (?:then|now|there|on that|with that|of it|be))*\W*$",
    re.IGNORECASE,
)
_ASKED = expression(
    rf"{_LEAD}(?:what(?:['’]?s| is| was| are| would)?|how (?:much|many|long|high|tall|far|wide|deep)\b(?:['’]?s| is)?|the)\b",
    re.IGNORECASE,
)
_ELSE = expression(  # another thing than the last answer is of, or a change of it
    r"\b(?:other|another|next|different|new|north|south|east|west|lake|ramp|front|back|if|instead|make|change|both(?! ends)"
    r"|half|left|squares|cost)\b",
    re.IGNORECASE,
)
_THEM = r"(?:that|it|this|those|them|each|all)\b"
_OF_ELSE = expression(
    rf"\bof (?!{_THEM})|\b(?:for|on|in) (?:the|my|our|a|an|every) (?!(?:saw|gauge|bevel|slope)\b)", re.IGNORECASE
)
_THAT_ONE = expression(r"\b(?:that|this|the same) one\b", re.IGNORECASE)
_PITCHED = expression(
    rf"(?P<ask>{_LEAD}(?:what(?:['’]?s| is)?(?: the)? pitch(?: is (?:that|it))?|as a pitch|the pitch)) (?:in|over|by|on) "
    r"(?:twelve|12)\W*",
    re.IGNORECASE,
)
_ONLY = expression(
    rf"{_LEAD}(?:(?:with|if|it['’]?s|it is|it has|there['’]?s|we['’]ve|got|say|only|just|but)\s+)*(?:just|only)\s+"
    r"(?:got\s+)?(?:the\s+)?(?P<n>one|two|three|four|five|six|\d)"
    r" (?:of (?:the|those|them) )?(?P<what>windows?|doors?|openings?|vents?)"
    r"(?: (?:in it|now|then|there))*\W*",
    re.IGNORECASE,
)
_TAKE_OUT = expression(  # take another window out of that as well, four foot by three foot six
    rf"{_LEAD}(?:take|deduct|knock|leave|take out|deduct) (?P<n>an?|another|one more|one|two|three|four) (?P<what>(?:\w+ )?"
    r"(?:window|door|opening|vent)s?)(?: (?:out|off|away))?(?: of (?:it|that|there))?(?: (?:as well|too|then|now))*[, ]+"
    r"(?P<size>\S.*?(?:\bby\b|\bx\b|×).*?)\W*",
    re.IGNORECASE,
)
_INSTEAD = expression(
    rf"{_LEAD}(?:with |if it['’]?s |only |just )*(?P<new>[^,;?]+?) instead of (?:the |a )?(?:whole |full |all )?"
    r"(?P<old>[^,;?]+?)\W*",
    re.IGNORECASE,
)
_WITH_THAT = expression(r",?(?: with (?:that|it|them|those)| like)\W*$", re.IGNORECASE)
_SUCH_A_ONE = expression(  # the seven foot one, which is no foot and an inch
    r"(\b(?:the|that) [a-z0-9]+(?: [a-z]+)? (?:foot|ft|inch|mil|metre|meter)) one(?=\W*$|,|\s+(?:instead|then|now|again)\b)",
    re.IGNORECASE,
)
_OF_THAT_ONE = expression(r"[,;]\s+(?:for |of |on |at |that['’]?s )?the (?P<n>[^,;?]+?)(?: ones?)?\W*$", re.IGNORECASE)
_HOW_LARGE = expression(r"\bhow (tall|high|long|wide|deep)\b", re.IGNORECASE)
_SIZES = {"tall": {"height", "rise"}, "high": {"height", "rise"}, "long": {"length"}, "wide": {"width"}, "deep": {"depth"}}
_LESS = {"another": "a", "one more": "a"}


def said_at_length(text: str, last: Asked) -> str:
    """The shorter words that a line of a talker stands for; the line as it is where it stands for none."""
    if len(text.split()) > LONGEST:
        return text
    text = _without_what_it_is_of(_SUCH_A_ONE.sub(r"\1", text), last)
    pitched = _PITCHED.fullmatch(text)
    if pitched is not None:
        return pitched["ask"]
    if name := _read_off(text, last):
        return f"and the {name}" if name in load_topics() else f"what's the {name}"  # a topic's own is worked, to go on from
    text = _without_the_same_ask(text, last)
    only, out = _ONLY.fullmatch(text), _TAKE_OUT.fullmatch(text)
    if only is not None:
        return f"only {only['n']} {only['what']}"
    if out is not None and numbers_in(out["size"]):
        return f"less {_LESS.get(out['n'].lower(), out['n'])} {out['what']} {out['size']}"
    return _swing(text, last) or _to_so_much(_WITH_THAT.sub("", text) if numbers_in(text) else text)


def _to_so_much(text: str) -> str:
    """Bring the foot in to four feet: with the foot at four feet."""
    found = _TO_SO_MUCH.fullmatch(text)
    if found is None or len(places_of(text)) != 1 or not places_of(found["n"]) or found["n"].lower().startswith("the "):
        return text
    if found["it"]:
        return f"{found['lead']}make it {found['n']}"
    return f"{found['lead']}with the {found['what']} at {found['n']}"


def _swing(text: str, last: Asked) -> str:
    """A swing of so much in the place of the whole: thirty degrees instead of the whole fifty, of minus ten to forty."""
    found = _INSTEAD.fullmatch(text)
    temperatures = [given.value for given in last.givens.values() if isinstance(given.value, Temperature)]
    old = places_of(found["old"]) if found is not None else []
    if found is None or len(old) != 1 or len(temperatures) != 2 or len(places_of(found["new"])) != 1:
        return ""
    apart = abs(temperatures[0].value - temperatures[1].value)
    return f"with a change of {found['new']}" if apart == old[0].value.value else ""


def _without_what_it_is_of(text: str, last: Asked) -> str:
    """The ask of a line that names at its end a value as the one it is of: and in degrees, the seven foot one."""
    found = _OF_THAT_ONE.search(text)
    if found is None or found.start() == 0 or numbers_in(text[: found.start()]):
        return text
    known = len(places_of(found["n"])) == 1 and not unheard(found["n"], last.givens.values())
    return text[: found.start()] if known else text


def _without_the_same_ask(text: str, last: Asked) -> str:
    """The change of a line that asks at its end for the same as was asked: a two twelve, what's the rise then."""
    found = _ASKS_AFTER.search(text)
    if found is None or found.start() == 0 or numbers_in(found[0]) or len(places_of(text[: found.start()])) != 1:
        return text
    answer = last.record.get("answer") or {}
    named = {*last.topic.name.split(), *str(answer.get("name", "")).lower().split()}
    asked = set(found["what"].lower().split())
    size = _HOW_LARGE.search(found[0])
    if size is not None and not asked - {"is", "it"}:
        asked = _SIZES[size[1].lower()] & named
    return text[: found.start()] if asked and asked <= named else text


def _read_off(text: str, last: Asked) -> str:
    """The name of the one value on the last page that a longer line asks for, with no number and nothing else asked in it."""
    line = _THAT_ONE.sub("that", text)
    if len(text.split()) < FEWEST or not _ASKED.match(line) or numbers_in(line) or _ELSE.search(line) or _OF_ELSE.search(line):
        return ""
    record = last.record
    answer: dict[str, Any] = record["answer"]
    pages = [answer, *record["also"]]
    named = [page for page in pages if _names(line, str(page["name"]))]
    if not named:
        said = beside({**record, "also": record["also"]}, record["topic"] or "", line)
        named = [page for page in record["also"] if f"{page['name']}: {page['text']}" in said]
    return str(named[0]["name"]).partition(",")[0] if len(named) == 1 else ""


def _names(line: str, name: str) -> bool:
    """Whether a line asks for a value by its whole name: the corner in that, inside like; not so corner to corner."""
    head = re.escape(name.partition(",")[0].lower())
    asks = rf"(?:what['’]?s|what is|and|what was) the {head}\b(?! (?:to|of|for|on) (?!{_THEM}))"
    return re.search(asks, line.lower()) is not None
