"""What a line tells of so many for so much, by its words and never by how near its number is to the ones before: "and for thirty
holes" is how much there is to do, "they did 16 with them" how much was done, "it took 6" how many that took.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import Place, places_of, stem, whole
from assistant.several import told_of
from intents.expressions import expression
from solvers.quantities import Count, Quantity
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = (
    r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|ah|no|nah|sorry|wait|hang on|actually|also|what if|what about|say"
    r"|how about|suppose|if|it['’]?s|there['’]?s|make it|call it|only|just|really|more like|about)\b\W*)*"
)
_THING = r"(?: (?:more|other|of (?:the|those|them|these)))?"
_THING += r"(?: (?P<thing>(?!(?:did|done|took|left|to|with|in|on|for|now|then|not)\b)[a-z]+))?"
_N = r"(?P<n>(?:an? )?[^,;?]+?)"
_AGAIN = r"(?:[, ]+(?:instead|then|now|please|after all|again|at (?:that|the same) rate|altogether|in all))*\W*"
_LEFT = r"(?: (?:left|to (?:do|go|cover|fill|fix|hang|lay)|still|yet|remaining|and not .*))*"
_TO_DO = expression(  # and for thirty holes; how many for 30; only 12 holes left to do
    rf"(?:{_LEAD}(?:(?:how many|how much|what)(?:['’]?s| is| are)?(?: [a-z]+){{0,4}}?\W+)?(?:for|to (?:do|cover|fill|hang|lay)"
    rf"|over)"
    rf" (?:the |all )?{_N}{_THING}{_LEFT}|{_LEAD}(?:(?:i|we)(?:['’]ve)? (?:got|have) )?(?P<m>[^,;?]+?)"
    r"(?: (?:more|other|of (?:the|those|them|these)))?(?: (?P<what>[a-z]+))? (?:left|to (?:do|go)|remaining)(?: (?:to do|to go"
    r"|now))*)"
    rf"{_AGAIN}",
)
_DID = expression(  # they did 16 with them; I only got 12 holes out of it; it was 16 that they did
    rf"{_LEAD}(?:they|it|we|i|you|those|them|that|he|she|the [a-z]+)(?: (?:only|really|actually|just))*"
    rf" (?:did|covered|got|got me|managed|filled|made|hung|laid|ran|went)(?: (?:only|just|over|about))* {_N}{_THING}"
    rf"(?: (?:with|from|out of|off) (?:them|it|that|those|the [a-z]+))?{_AGAIN}",
)
_TOOK = expression(  # it took 6; that was 6 bags; say it took six of them
    rf"{_LEAD}(?:(?:it|that|they|those|we|i)(?: (?:only|really|actually|just))* (?:took|used|needed|went through|was|were|had))"
    rf"(?: (?:me|us|only|just))* {_N}{_THING}{_AGAIN}",
)

_PUTS_RIGHT = expression(r"\W*(?:no|nope|nah|sorry|wait|actually|make it|call it|hang on|hold on)\b", re.IGNORECASE)
_CALLED = {"ft2": "square feet", "m2": "square metres", "in": "inches"}
_NAMES = ("number used", "work done", "work to do")
_SO_MANY = expression(rf"{_LEAD}{_N}{_THING}{_AGAIN}")  # what about 12 holes

_EACH = r"(?:each|apiece|(?:an?|per) [a-z]+)"
_COSTS = expression(  # cost of those at one pound sixty four each; at 1.64 a block what's that come to
    rf"{_LEAD}(?:(?:what do (?:they|those)|what['’]?s|what is|the|those|how much do they) )*"
    r"(?:costs?|price)(?: (?:of|for) (?:those|them|these|it|the lot|all that))?(?: at)? (?P<n>[^,;?]+?)"
    rf" {_EACH}\W*"
    rf"|{_LEAD}at (?P<m>[^,;?]+?) {_EACH}[, ]+(?:so )?(?:what['’]?s (?:that|it) (?:come to|cost|run)|what do they cost|cost)\W*",
    re.IGNORECASE,
)
_POUNDS = expression(r"(?P<pounds>[^ ]+|an?) pounds? (?:and )?(?P<pence>[^ ]+(?: [^ ]+)?)", re.IGNORECASE)  # one pound sixty four
_PENCE = 100


def costs_each(text: str, last: Asked) -> str:
    """What the things just weighed cost, at so much each."""
    found = _COSTS.fullmatch(text)
    said = (found["n"] or found["m"]) if found is not None else ""
    coins = _POUNDS.fullmatch(said)
    if coins is not None:
        pounds, pence = (whole({"a": "one"}.get(coins[name], coins[name])) for name in ("pounds", "pence"))
        if pounds is None or pence is None or not pence.value.value < _PENCE:
            return ""
        said = f"{float(pounds.value.value + pence.value.value / _PENCE):.2f}"
    return f"what do they cost at {said} each" if said and (coins is not None or whole(said)) else ""


def rate_of(text: str, last: Asked) -> str:
    """So many for so much, said over with the one number that a line tells; "" where it tells none for certain."""
    parts = _parts(last)
    if parts is None:
        return ""
    took, done, now = parts
    for shape, at in ((_TO_DO, 2), (_DID, 1), (_TOOK, 0), (_SO_MANY, 2)):
        found = shape.fullmatch(text.lower())
        if found is None:
            continue
        groups = found.groupdict()
        said, thing = groups["n"] or groups.get("m") or "", groups["thing"] or groups.get("what") or ""
        united = whole(f"{said} {thing}") if thing else None
        said, thing = (f"{said} {thing}", "") if united is not None and united.value.unit != "none" else (said, thing)
        if shape is _SO_MANY and not thing and (_PUTS_RIGHT.match(text) or not isinstance(now, Count)):
            return ""
        which = 0 if shape is _SO_MANY and _counts(last, took, thing) else at
        place, old = whole(said), (took, done, now)[which]
        if place is None or not _fits(place, old) or (thing and stem(thing) not in last.things):
            return ""
        return f"make the {_NAMES[which]} {_in_unit(said, place, old)}"
    return ""


def _parts(last: Asked) -> tuple[Quantity, Quantity, Quantity] | None:
    """How many it took, what they did, and what there is to do, where all of it was told and nothing else."""
    told = told_of(last)
    done = next((name for name in told if name.endswith("_done")), "")
    three: list[Given | None] = [told.get("many"), told.get(done), told.get(done.removesuffix("_done"))]
    values = [given.value for given in three if given is not None and isinstance(given.value, Quantity)]
    return (values[0], values[1], values[2]) if done and len(values) == len(three) == len(told) else None


def _counts(last: Asked, value: Quantity, thing: str) -> bool:
    """Whether a thing is what a number of the question counts: 5 bags did it."""
    after = (last.text[place.end :].lower().split() for place in places_of(last.text) if place.value.value == value.value)
    return any(words and stem(words[0].strip(",.;")) == stem(thing) for words in after)


def _fits(place: Place, old: Quantity) -> bool:
    bare = place.value.unit == "none"
    return bare or type(place.value) is type(old)


def _in_unit(said: str, place: Place, old: Quantity) -> str:
    bare = place.value.unit == "none" and old.unit not in ("none", "count")
    return f"{said} {_CALLED.get(old.unit, old.unit)}" if bare else said
