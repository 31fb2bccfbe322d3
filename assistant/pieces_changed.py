"""One thing of a list as it is after all, or gone: "no, 37 1/4", "drop the 52s", "make the 36s 38", "only five windows"."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.said_over import places_of, stem, times_apart
from assistant.who_says_so import opened, told_in
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Quantity
from solvers.slots import Opening, Piece

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_ALIKE, _OTHER = 1.15, 1.5  # times as large: the same size measured again, and another altogether
_SCORE = 3.0  # of a change that only these words make
_LEAD = r"\W*(?:(?:and|then|ok|okay|no|oh|actually|now|so|but|can you|we can|let['’]?s|i['’]?ll|we['’]?ll)[ ,]+)*"
_SIZE = r"(?P<old>[\d][\d /.½¼¾⅛⅜⅝⅞-]*?(?: and (?:a|an|one|three|five|seven) [a-z]+?| (?:inch|foot))?)"
_OUT = expression(
    rf"{_LEAD}(?:drop|lose|take out|take off|leave out|leave off|skip|forget|scrap|without|not|no)(?: about)?"
    rf" (?:the |those |all the |my |any |of the )*{_SIZE}(?:['’]?s| ones| pieces| inch ones)(?: out| off| after all| now)*\W*",
    re.IGNORECASE,
)
_COUNTED = expression(
    rf"{_LEAD}(?:(?:make (?:it|that)|it['’]?s|there['’]?s|there are|we['’]?ve got|got|only|just|say|with|it is|they['’]?re) )*"
    r"(?P<n>\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: of)?(?: the| those| these| my)?"
    r" (?P<what>windows?|doors?|vents?|openings?)"
    r"(?: (?:of )?(?:that size|the same size|the same|like that(?: one)?|alike|that big))?"
    r"(?: (?:now|actually|after all|instead|in all|not \w+))*"
    r"(?:,? (?:so )?(?:what(?:['’]?s| is)|how much(?: is| wall is)?)(?: the)? (?:area|net|total|that|it|left)"
    r"(?: now| then)?)?\W*",
    re.IGNORECASE,
)
_INTO = expression(
    rf"{_LEAD}(?:make|change|cut|turn|swap)(?: it)? (?:the |those |all the |my )+{_SIZE}(?:['’]?s| ones)"
    r" (?:to |into |for |at |be )?(?P<new>\d[^,;]*?)(?: instead| now)?\W*",
    re.IGNORECASE,
)


def piece_changed(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one size of its pieces changed or left out; none where the line tells no such thing."""
    lists = {name: given.value for name, given in last.givens.items() if isinstance(given.value, tuple) and given.value}
    name = next((name for name, value in lists.items() if isinstance(value[0], Piece)), "")
    if not name or (wanted.old and not wanted.led):
        return []
    pieces: tuple[Piece, ...] = lists[name]
    text, rest = f"{wanted.lead}{wanted.rest}", wanted.rest
    out, into = _OUT.fullmatch(text), _INTO.fullmatch(text)
    now: tuple[Piece, ...] = ()
    if out is not None:
        gone = _sized(pieces, out["old"])
        now = tuple(piece for piece in pieces if piece is not gone) if gone else ()
    elif into is not None:
        now = _with(pieces, _sized(pieces, into["old"]), into["new"])
    elif not re.search(r"[a-z]", rest, re.IGNORECASE):
        old = _sized(pieces, wanted.old) if wanted.old else _measured_again(pieces, rest, last)
        now = _with(pieces, old, rest)
    return [Question(last.topic.name, {name: Heard(now, 0, len(rest), rest)}, _SCORE)] if now else []


def openings_counted(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with as many of one kind of opening as the line counts: five windows, of six."""
    text = f"{wanted.lead}{wanted.rest}"
    said = next((found for line in (text, *told_in(opened(text), last)) if (found := _COUNTED.fullmatch(line))), None)
    lists = {name: given.value for name, given in last.givens.items() if isinstance(given.value, tuple) and given.value}
    lists = {name: value for name, value in lists.items() if isinstance(value[0], Opening)}
    places = places_of(said["n"]) if said is not None else []
    if said is None or not lists or len(places) != 1 or places[0].value.value.denominator != 1:
        return []
    ((name, openings),) = lists.items()
    named = [one for one in openings if stem(str(one.what).split()[-1]) == stem(said["what"].lower())]
    if len(named) != 1:
        return []
    now = tuple(replace(one, count=int(places[0].value.value)) if one is named[0] else one for one in openings)
    return [Question(last.topic.name, {name: Heard(now, 0, len(wanted.rest), wanted.rest)}, _SCORE)]


def _with(pieces: tuple[Piece, ...], old: Piece | None, words: str) -> tuple[Piece, ...]:
    """The pieces with one of them as long as the words say, in its own unit where they say none."""
    said = places_of(words)
    if old is None or len(said) != 1:
        return ()
    new = said[0].value
    length = replace(old.length, value=new.value, unit=old.length.unit if new.unit == "none" else new.unit, text="")
    return tuple(replace(piece, length=length) if piece is old else piece for piece in pieces)


def _sized(pieces: tuple[Piece, ...], words: str) -> Piece | None:
    """The one piece that is of a size as it was said."""
    said = places_of(words)
    found = [piece for piece in pieces if len(said) == 1 and piece.length.value == said[0].value.value]
    return found[0] if len(found) == 1 else None


def _measured_again(pieces: tuple[Piece, ...], words: str, last: Asked) -> Piece | None:
    """The one piece that a bare number is all but, where no given that is one number is anything like it."""
    said = [place.value.value for place in places_of(words)]
    single = [g.value.value for g in last.givens.values() if isinstance(g.value, Quantity) and g.source != "assumed"]
    if len(said) != 1 or said[0] <= 0 or any(value > 0 and times_apart(value, said[0]) <= _OTHER for value in single):
        return None
    near = [piece for piece in pieces if piece.length.value > 0 and times_apart(piece.length.value, said[0]) <= _ALIKE]
    return near[0] if len(near) == 1 else None
