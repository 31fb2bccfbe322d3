"""Which given a new number is for, by words that name its part: "20 now", "and the hottest 105", "if it stops at 48".

What belongs to the saw, or to the year, stays as it is told: "can it cut 44 | and 48" asks of another cut.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.pending import Asked, told_quantities
from assistant.said_over import places_of, stem, times_apart
from intents.expressions import expression
from solvers.quantities import Angle, Count, Pitch, Quantity
from solvers.registry import Topic
from solvers.slots import Given

if TYPE_CHECKING:
    from intents.question import Question

_TOLD = {
    "temperature now": r"^\W*(?:(?:and|then|so|ok|or|what about|how about|what if|if) )*(?:it['’]?s |it is )?"
    r"at (?:minus )?[a-z0-9-]+\W*$|\b(?:now|today|tonight|this (?:morning|afternoon|evening)|at the moment|currently|outside)\b",
    "measured diagonal": (
        r"^(?!.*\b(?:side|leg|long|wide)\b)"
        r".*(?:\bif it['’]?s\b|\bmeasures?\b|\bmeasured\b|\breads?\b|\bdiagonal\b|\bcorner to corner\b)"
    ),
    "temperature": r"\b(?:out|outside|inside|indoors|degrees|warm|cold|hot|heat(?:ing|er)?|thermostat)\b",
    "setting": r"\bneed\b(?! the saw)",
    "rise": r"\b(?:up|rises?|climbs?|tall)\b(?! (?:to|at|from))",
    "run": r"\b(?:over|across|along|out|runs?)\b",
    "hottest": r"\b(?:hottest|warmest|hot|highs?|summer|july|august|tops? out)\b",
    "panel cover": r"\b(?:panels?|covers?)\b(?!.*\b(?:long|length|lengths|deep)\b)",
    "coldest": r"\b(?:coldest|lowest|lows?|winter|january|february)\b",
}
_AND = expression(r"\W*(?:and|what about|how about|what if|can it|then|or)\b", re.IGNORECASE)  # which put nothing right
_AT = expression(r"\W*(?:(?:and|then|so|ok|now|or|but|what about|how about|what if)\W+)*at (?!the\b).+", re.IGNORECASE)
_LAID_AT = ("exposure", "spacing", "stud spacing", "pitch")  # what is so far apart, or so steep, is at that
_TWO, _NEARLY = 2, 1.4  # pitches between which "at" tells nothing; times as far off as the nearest given
_ABOUT, _FAR_FROM = 1.25, 1.5  # times as large or small
_BACK = expression(r"\bback (?:to|at|on)\b", re.IGNORECASE)
_THE_OTHER = expression(r"\bthe other (?:side|end|one|rake)(?:['’]s| has| is| gets| had)\b", re.IGNORECASE)
_SIDE = expression(r"\bside\b", re.IGNORECASE)
TIMES = frozenset("morning afternoon evening today tonight currently moment".split())
_STANDING = ("saw limit",)
_LIMIT = expression(
    r"\bstops?\b|\blimit\w*|\bmax\w*|\b(?:it|that|which|saw|one) (?:only |just )?(?:goes|swings|reaches)\b", re.IGNORECASE
)
_OF_THE_SAW = expression(r"\bsaw\b|\bgoes\b|\bgo(?: only)? to\b|\bswings?\b|\breach\w*|\bup to\b|\bonly\b", re.IGNORECASE)
OF_A_SAW = expression(f"{_LIMIT.pattern}|{_OF_THE_SAW.pattern}", re.IGNORECASE)


def was_before(text: str, new: Quantity, last: Asked) -> Callable[[Given], bool]:
    """Whether a given once had the value that a line goes "back to"; all pass where it goes back to none."""
    back = bool(_BACK.search(text))
    if not back:
        return lambda given: True
    once = {name for past in last.past for name, value in past.items() if isinstance(value, Quantity) and _same(new, value)}
    return lambda given: given.name in once


def _same(new: Quantity, old: Quantity) -> bool:
    """Whether they are the same: a bare number as it was said."""
    if isinstance(new, type(old)) and new.unit in old.units and (new.unit == old.unit or not isinstance(old, Pitch)):
        return bool(new.to(old.unit).value == old.value)
    return new.unit == "none" and new.value == old.value


def _may_be_laid_at(labels: dict[str, str], last: Asked, new: Quantity) -> bool:
    """Whether a bare number said after "at" can be how far apart, or how steep, something is: not where another is far nearer."""
    known = {n: g.value.value for n, g in last.givens.items() if g.source != "assumed" and isinstance(g.value, Quantity)}
    apart = {n: times_apart(new.value, was) for n, was in known.items() if was > 0 and new.value > 0}
    laid = [n for n in apart if labels[n] in _LAID_AT]
    steep = sum("pitch" in label for label in labels.values())
    near = min((apart[n] for n in laid), default=0)
    return new.unit == "none" and bool(laid) and steep < _TWO and near <= _NEARLY * min(apart.values())


def nearer_the_saw(saw: Asked, text: str) -> bool:
    """Whether the one number of a line is about the setting or the limit, and nothing of the joint: 44, of 46 on an 88."""
    places, joint = places_of(text), saw.joint
    if len(places) != 1 or joint is None or places[0].value.value <= 0:
        return False
    new = places[0].value.value

    def near(asked: Asked) -> float:
        sizes = [g.value.value for g in asked.givens.values() if isinstance(g.value, Angle | Pitch) and g.value.value > 0]
        return min((times_apart(new, size) for size in sizes), default=float("inf"))

    own = replace(saw, givens={name: given for name, given in saw.givens.items() if name in ("setting", "limit")})
    return near(own) <= _ABOUT and near(joint) >= _FAR_FROM


def holds_all(more: Question, rest: str) -> bool:
    """Whether every number of a change with several is in one of its givens: sixteen straps at eighteen inches."""
    places = places_of(rest)
    spans = [(heard.start, heard.end) for heard in more.givens.values()]
    return len(places) > 1 and all(any(a <= place.start and place.end <= b for a, b in spans) for place in places)


def only_as_counted(more: Question, rest: str, topic: Topic) -> None:
    """Leave out the ways to hand out the numbers of a line that make no count of what is counted: sixteen straps."""
    words = {name: {stem(word) for word in topic.parameter(name).label.split()} for name in more.givens}
    counted = [
        name for name, heard in more.givens.items()
        if isinstance(heard.value, Count)
        and (after := re.match(r"\W*([a-z]+)", rest[heard.end :], re.IGNORECASE)) and stem(after[1].lower()) in words[name]
    ]  # fmt: skip
    more.swaps = [way for way in more.swaps if all(name in way for name in counted)]


def _alone(text: str) -> bool:
    """Whether a line is a number and no more."""
    places = places_of(text)
    return len(places) == 1 and not text[: places[0].start].strip() and not text[places[0].end :].strip(" .!?°")


def _near_to(new: Quantity | None, given: Given) -> bool:
    return new is None or not isinstance(given.value, Quantity) or times_apart(new.value, given.value.value) <= _TWO


_PIECES = expression(r"(?:\d|\b(?:two|three|four|five|six|seven|eight)) (?:pieces|sides|joints|segments)\b", re.IGNORECASE)
_LEANS = expression(r"\b(?:lean|leans|leaning|tilt|tilts|tilted|splay|splayed|slope|sloping|flare|flared)\b", re.IGNORECASE)


def counts_pieces(text: str, last: Asked) -> bool:
    """Whether a number counts pieces, and the question before knows only angles: a bay of 30 degrees in 4 pieces;
    or sides lean, which no flat ring does."""
    if last.topic.name == "polygon" and _LEANS.search(text):
        return True  # sides leaning out ten degrees
    known = told_quantities(last) if _PIECES.search(text) else []
    return bool(known) and all(isinstance(value, Angle | Pitch) for value in known)


def role_tests(text: str, last: Asked, new: Quantity | None = None) -> list[Callable[[Given], bool]]:
    """What words of a change tell of the given that its number (`new`) is for; a test that no given passes tells nothing."""
    labels = {p.name: p.label for p in last.topic.parameters}
    wanted = [label for label, told in _TOLD.items() if label in labels.values() and re.search(told, text, re.IGNORECASE)]
    side = bool(_SIDE.search(text)) and any("side" in label for label in labels.values())
    saw, limit = bool(_OF_THE_SAW.search(text) or not (_AND.match(text) or _alone(text))), bool(_LIMIT.search(text))
    at = _AT.fullmatch(text) is not None and new is not None and _may_be_laid_at(labels, last, new)
    other = bool(last.changed) and _THE_OTHER.search(text) is not None  # overhang's 14 | and the other side has 10
    return [
        lambda given: not other or (given.name in last.changed and _near_to(new, given)),
        lambda given: len(wanted) != 1 or labels[given.name] == wanted[0],
        lambda given: not side or "side" in labels[given.name],
        lambda given: not limit or labels[given.name] in _STANDING,
        lambda given: saw or labels[given.name] not in _STANDING,
        lambda given: not at or labels[given.name] in _LAID_AT,
    ]
