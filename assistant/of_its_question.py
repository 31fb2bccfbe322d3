"""A line of talk in the words of the question it follows, or of the one it is: "what if it's sixty out when we do it" is how warm
it is now, "if I break it in half" half the length, "and in all on forty foot of it" the length; "… is a seven twelve, keep that,
so I don't have to say it again" is a value to remember.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of, times_apart, whole
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length, Money

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|what if|what about|how about|if|say|when)\W+)*"
_NUMBER = r"(?:minus )?[a-z0-9]+(?:[ -][a-z0-9]+)?"
_KEEP = expression(
    r"\W*(?:(?:right|ok|okay|so|now|listen|well|hey)\W+)*(?P<told>.+?)[,;.]?\s+"
    r"(?:(?:so|and|just|can you|would you|could you|please)\s+)*"
    r"(?:keep|remember|bear|store|hang on to|hold on to)\s+(?:that|it|this)(?! (?:under|over|at|to|as|between|below)\b)"
    r"(?P<rest>\b.*)",
    re.IGNORECASE,
)
_ASKS = expression(r"\?|\b(?:how|what|what['’]?s|whats|which|where|work out|give me|can (?:it|i|my|we))\b", re.IGNORECASE)
_CHANGES = expression(r"\W*(?:no|and|make|change|try|go|with|or|use|put)\b", re.IGNORECASE)
_ONES = expression(r"\bones?\b", re.IGNORECASE)
_ON_TAPE = expression(r"(?<=tape),\s*(?:in\s+)?(?=(?:eighths|sixteenths|thirty[- ]seconds)\W*$)", re.IGNORECASE)
_OUT_NOW = expression(
    rf"{_LEAD}(?P<it>(?:it['’]?s|it is|it was|it were)\s+)?(?P<n>{_NUMBER})(?: degrees)? (?:out|outside)(?: there)?"
    r"(?: (?:right )?now| today)?"
    r"(?: (?:when|the day|by the time|while) (?:we|i|they|it)\b[^,;\d]*)?\W*",
    re.IGNORECASE,
)
_WAIT = expression(
    rf"{_LEAD}(?:i|we|they) (?:wait|leave it|hold off)(?: till| until| for)(?: it['’]?s| it is| it gets to)? (?P<n>{_NUMBER})\W*",
    re.I,
)
_IN_HALF = expression(
    rf"{_LEAD}(?:(?:i|we|they)(?:['’]d)? )?"
    r"(?:(?:it|they)(?:['’]?s| was| is| were| are) )?(?:break|split|cut|broken?|put a joint in)(?: it| that| them)?"
    r" (?:in half|in two|in the middle)(?:[, ]+(?:each|either|per) (?:half|one|piece|bit))?\W*",
    re.IGNORECASE,
)
_IN_PIECES = expression(
    rf"{_LEAD}(?:(?:i|we|they)(?:['’]d| had)? )?(?:done|did|do|made|make|put|ran|run|cut|break|broke)(?: it| that)?(?: up)?"
    r" (?:in|into|as|from) (?P<n>two|three|four|five|six|\d) (?P<size>eights|tens|twelves|fourteens|sixteens|eighteens|twenties"
    r"|\S+(?: foot| ft)(?:ers?|s)?(?: lengths| pieces)?)"
    r"(?:[, ]+(?:each|per) (?:one|piece|length)|[, ]+each)?\W*",
    re.IGNORECASE,
)
_LONG = {"eights": 8, "tens": 10, "twelves": 12, "fourteens": 14, "sixteens": 16, "eighteens": 18, "twenties": 20}
_SO_MUCH_OF_IT = expression(
    r"\W*(?:(?:and|so|ok|then|what['’]?s that|what is that|in all|altogether|total|in total|all told)\W+)*(?:on|over|for|along) "
    r"(?P<n>[^,;?]+?) of (?:it|that|wall)(?: (?:in all|altogether|in total|then))?\W*",
    re.IGNORECASE,
)
_SAW_FIRST = expression(  # where the saw stands is no limit of it: saw's at 33, corner's 114, is that right
    r"\W*(?:(?:my|the|i['’]ve (?:got )?(?:my|the)) )?saw(?:['’]?s| is)? (?:set |sitting )?(?:at|on) (?P<n>[\d.]+)"
    r"(?: degrees| deg|°)?,? (?:and |for |on )?"
    r"(?P<corner>(?:the |a |my )?corner(?:['’]?s| is| reads| measures) [\d.]+(?: degrees| deg|°)?),?"
    r" (?P<rest>(?:is|am|are|does|do|will|right|ok|okay|good)\b.*)",
    re.IGNORECASE,
)
_HALF_FULL = expression(r",? (?P<share>half) full(?: like| then)?\W*$", re.IGNORECASE)
_AT_A_PRICE = expression(
    r"\W*(?:(?:and|or|so|what about|how about|what if it['’]?s|now)\W+)*at (?P<n>[a-z]+(?:[ -][a-z]+)+)\W*", re.IGNORECASE
)
_PRICED_NOW = expression(  # so much each of them, of what was priced: there's 14 would count them
    r"\W*(?:(?:and|or|so|what|now|but)\W+)*if (?:they['’]?re|they are|they were|it['’]?s|it was) "
    r"(?P<n>[a-z0-9.]+(?:[ -](?!even|flat)[a-z0-9.]+)?)"
    r"(?P<even> (?:even|flat))?\W*",
    re.IGNORECASE,
)
_MOVES, _END_GAP = ("thermal movement", "end gap"), "end gap"
_FEET_AND_INCHES = 2  # words
_ONCE_MORE = 2  # times as dear, at most, that a price said in two words is


def kept_in_words(text: str) -> str:
    """A line that tells one value and asks to keep it, as that alone; a tape's marks after a comma, as they are asked for;
    where the saw stands after the corner that it is for."""
    saw = _SAW_FIRST.fullmatch(text)
    if saw is not None:
        return f"{saw['corner']}, saw's at {saw['n']}, {saw['rest']}"
    found = _KEEP.fullmatch(text)
    if found is not None and not (_ASKS.search(text) or _CHANGES.match(text) or numbers_in(_ONES.sub("", found["rest"]))):
        return f"remember {found['told']}" if len(places_of(found["told"])) == 1 else text
    return _ON_TAPE.sub(" in ", text)


def of_its_question(text: str, last: Asked) -> str:
    """What the line stands for after a question of its topic; "" where it stands for nothing else."""
    ways = (_how_warm, _in_parts, _along, _half_full, _priced)
    return next((fuller for way in ways if (fuller := way(text, last))), "")


def _how_warm(text: str, last: Asked) -> str:
    """Sixty out when we do it, of an end gap."""
    found = (_OUT_NOW.fullmatch(text) or _WAIT.fullmatch(text)) if last.topic.name == _END_GAP else None
    return f"temperature now {found['n']}" if found is not None and len(places_of(found["n"])) == 1 else ""


def _in_parts(text: str, last: Asked) -> str:
    """Broken in half, or done in two sixteens, of a length that moves; those must come to that length."""
    length = last.givens["length"].value if last.topic.name in _MOVES and "length" in last.givens else None
    if not isinstance(length, Length):
        return ""
    if _IN_HALF.fullmatch(text):
        return "half the length"
    found = _IN_PIECES.fullmatch(text)
    if found is None:
        return ""
    size = (
        f"{_LONG.get(found['size'].lower(), '')} foot"
        if found["size"].lower() in _LONG
        else re.sub(r"(foot|ft).*", r"\1", found["size"])
    )
    many, long = places_of(found["n"]), places_of(size)
    if len(many) != 1 or len(long) != 1 or not isinstance(long[0].value, Length):
        return ""
    return f"make it {size}" if many[0].value.value * long[0].value.to("in").value == length.to("in").value else ""


def _along(text: str, last: Asked) -> str:
    """In all on forty foot of it, of what was worked per foot."""
    found = _SO_MUCH_OF_IT.fullmatch(text)
    per_foot = str(last.record["answer"]["unit"]) == "in2perft"
    said = places_of(found["n"]) if found is not None else []
    return (
        f"length {found['n']}" if found is not None and per_foot and len(said) == 1 and isinstance(said[0].value, Length) else ""
    )


def _half_full(text: str, last: Asked) -> str:
    """An inch and three quarters deep, half full: the new depth is half the one before, which says no more of it."""
    found = _HALF_FULL.search(text) if last.topic.name == "water in a channel" else None
    depth, said = last.givens.get("depth"), places_of(text[: found.start()]) if found is not None else []
    if found is None or depth is None or len(said) != 1:
        return ""
    return text[: found.start()] if said[0].value.value * 2 in (depth.value.value, depth.value.to("in").value) else ""


def _priced(text: str, last: Asked) -> str:
    """At two ten, after a price of 195: 210, and no count; after one of 2: 2.10."""
    now = _PRICED_NOW.fullmatch(text)
    found = _AT_A_PRICE.fullmatch(text) or now
    prices = [given.value for given in last.givens.values() if isinstance(given.value, Money)]
    said = whole(found["n"]) if found is not None else None
    if found is None or len(prices) != 1 or said is None:
        return ""
    words, value = said.words, said.value.value
    if now is not None and not now["even"] and len(words) == 1 and "." not in words[0]:
        return ""  # if they're 14 may count them
    if isinstance(said.value, Length) and len(words) == _FEET_AND_INCHES:  # two ten, which may be of feet and inches
        feet, inches = (places_of(word) for word in words)
        value = feet[0].value.value * 100 + inches[0].value.value if feet and inches else value
    elif said.value.unit != "none":
        return ""
    near = [
        one for one in (value, value / 100) if min(one, prices[0].value) > 0 and times_apart(one, prices[0].value) <= _ONCE_MORE
    ]
    return f"price {float(near[0]):g}" if len(near) == 1 else ""
