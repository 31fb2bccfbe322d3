"""More of a cut list, another count of one size, or one leg of a bent flashing: "add another 1.9", "five at 1150 not four",
"make the 150 180"."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.said_over import places_of, times_apart
from assistant.usual import METRIC
from intents.expressions import expression
from intents.fitting import TAKEN
from intents.question import Heard, Question
from solvers.quantities import Length, Quantity
from solvers.slots import Given, Piece

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SCORE = 3.0  # of a change that only these words make
_ALIKE = 6  # times as long as another piece, at most
_LEAD = r"\W*(?:(?:and|then|ok|okay|no|oh|sorry|actually|now|so|but|also|plus|add|i need|need|we need|put in|cut)[ ,]+)*"
_N = r"\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve"
_MORE = expression(
    rf"{_LEAD}(?:another(?: (?P<n>{_N})(?: (?:at|of|pieces at|pieces of)))?|(?P<few>{_N})"
    r" more(?: (?:pieces|lengths|cuts|bits|ones))?(?: (?:at|of))?) (?P<size>[^,;]+?)"
    r"(?: (?:too|as well|piece|one|long))*\W*",
    re.IGNORECASE,
)
_COUNT = expression(
    rf"{_LEAD}(?:make (?:it|that) |it['’]?s )?(?P<n>{_N}) (?:at|of|pieces at|pieces of) (?P<size>[^,;]+?),?"
    rf" (?:not|instead of|rather than) (?P<old>{_N})\W*",
    re.IGNORECASE,
)
_NUMBER, _UNIT = r"\d[\d.]*(?:[ -]\d+/\d+|/\d+)?", r"(?: ?(?:in|inch|inches|mm|mil)\b)?"
_LEG = expression(
    rf"\W*(?:(?:no|sorry|ok|and|then|so|now|actually|but)[ ,]+)*(?:make|change|turn) the (?P<old>{_NUMBER}){_UNIT}(?: leg| one)?"
    rf" (?:to |into |an? )?(?P<new>{_NUMBER}{_UNIT})\W*"
    rf"|\W*(?:the )?(?P<was>{_NUMBER})(?: leg)?['’]?s (?:now )?(?P<now>{_NUMBER})\W*",
    re.IGNORECASE,
)


def pieces_added(wanted: Wanted, last: Asked) -> list[Question]:
    """The last cut list with more pieces of a size, or with another count of one; none where the line tells no such thing."""
    name, listed = _listed(last, Piece)
    pieces: tuple[Piece, ...] = listed
    text = wanted.line or f"{wanted.lead}{wanted.rest}"
    more, count = _MORE.fullmatch(text), _COUNT.fullmatch(text)
    found = more or count
    size = _size(found["size"], pieces) if name and found is not None else None
    if size is None:
        return []
    same = next((one for one in pieces if one.length.to("in").value == size.to("in").value), None)
    if more is not None:
        many = _many(more["n"] or more["few"] or "one")
        put_to = many == 1 and same is not None  # so many as were counted stay told apart, as they were said
        now = [replace(one, count=one.count + 1) if put_to and one is same else one for one in pieces]
        now += [] if put_to else [Piece(many, size)]
    elif same and count and same.count == _many(count["old"]):
        now = [replace(one, count=_many(count["n"])) if one is same else one for one in pieces]
    else:
        return []
    return [Question(last.topic.name, {name: Heard(tuple(now), 0, len(text), text)}, _SCORE)]


def leg_changed(wanted: Wanted, last: Asked) -> list[Question]:
    """The last bent flashing with one of its legs as long as the line says, in that one's unit."""
    name, legs = _listed(last, Length)
    said = _LEG.fullmatch(wanted.line or f"{wanted.lead}{wanted.rest}")
    if not name or said is None or wanted.old:
        return []
    old, new = (places_of(said[one] or said[two]) for one, two in (("old", "was"), ("new", "now")))
    alike = [leg for leg in legs if len(old) == 1 and leg.value == old[0].value.value]
    if len(alike) != 1 or len(new) != 1:
        return []
    size = new[0].value.to(alike[0].unit).value if isinstance(new[0].value, Length) else new[0].value.value
    now = tuple(replace(leg, value=size, text="") if leg is alike[0] else leg for leg in legs)
    return [Question(last.topic.name, {name: Heard(now, 0, len(wanted.rest), wanted.rest)}, _SCORE)]


def _listed(last: Asked, kind: type) -> tuple[str, tuple]:  # type: ignore[type-arg]
    """The given of the last question that is a list of such things, and its name; "" where there is none."""
    lists = ((n, g.value) for n, g in last.givens.items() if isinstance(g.value, tuple) and g.value and g.source != "assumed")
    return next(((name, value) for name, value in lists if isinstance(value[0], kind)), ("", ()))


def _many(words: str) -> int:
    return int(places_of(words)[0].value.value)


def _size(words: str, pieces: tuple[Piece, ...]) -> Length | None:
    """The one size of the words; a bare one in the unit of the pieces that makes it such a length as they are."""
    places = places_of(re.sub(r"(?<=\d)['’]?s\b", "", words))
    more = [words[: place.start] + words[place.end :].strip(" .!?s'’") for place in places]
    if more != [""] or not isinstance(places[0].value, Quantity):
        return None
    value = places[0].value
    if isinstance(value, Length):
        return value
    if value.unit != "none" or value.value <= 0:
        return None
    return _as_long_as(value.value, pieces)


def _as_long_as(value: Fraction, pieces: tuple[Piece, ...]) -> Length | None:
    """A bare number in the one unit of the pieces that makes it such a length as they are; None where none or two do."""
    units = {one.length.unit for one in pieces}
    told = [Length(value, unit) for unit in (METRIC if units <= {*METRIC} else units)]
    known = [one.length.to("in").value for one in pieces]
    fitting = [size for size in told if any(times_apart(one, size.to("in").value) <= _ALIKE for one in known)]
    return fitting[0] if len(fitting) == 1 else None


def in_their_unit(heard: Heard, before: Given | None) -> Heard:
    """Pieces of no unit in that of the pieces before, where that makes them such lengths as those: 3 at 2.1, after 6 at 1.2 m."""
    was = before.value if before is not None else ()
    if not (isinstance(was, tuple) and was and isinstance(heard.value, tuple) and heard.value):
        return heard
    if not all(isinstance(one, Piece) for one in (*was, *heard.value)) or not all(isinstance(one.length, Length) for one in was):
        return heard
    now = []
    for one in heard.value:
        bare = re.fullmatch(r"[\d./ ]*\d", str(one.length.text).split(TAKEN)[0].strip()) is not None
        size = _as_long_as(one.length.value, was) if bare and one.length.value > 0 else None
        now.append(one if size is None else replace(one, length=size))
    return replace(heard, value=tuple(now))
