"""A number of the question before that is told anew by where it stood or by what it was: "what's it if the first one's 9 7/8",
"the last one's eleven foot seven, not nine", "make the twenty a twenty foot six".

The numbers of a sum, or the sides of a frame, are counted as they were said.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from assistant.heard_all import unheard
from assistant.meant_for import Wanted
from assistant.said_over import Place, places_of, times_apart
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length, Number, Quantity
from solvers.slots import Piece
from solvers.sums import DIVIDED, TIMES, Part, Sum, in_millimetres

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = r"\W*(?:(?:and|no|sorry|but|oh|so|ok|now|actually|wait|hang on|then|right)\W+)*"
_NTH = expression(
    rf"{_LEAD}(?:(?:what(?:['’]?s| is) (?:it|that)(?: now| then)?|what|how about)\W+)?(?:if |make |say |call )?the "
    r"(?P<nth>first|second|third|fourth|fifth|last)(?: (?:one|number|length|piece|side|bit|figure|leg|fold|layer|cut))?"
    r"(?:['’]s| is| was|(?= ))(?: (?:to|at|really|actually|meant to be|supposed to be|should be|should have been|only|now))*\s+"
    r"(?P<new>(?!one\b)[^,;?]+?)(?:,? (?:and )?not (?P<not>[^,;?]+?))?(?: (?:instead|though|then|now))*"
    r"(?:[,;] (?:and |so )?(?:how (?:many|much|wide|long|far)|what(?:['’]?s)?)\b[^,;\d]*)?\W*",
    re.IGNORECASE,
)
_INTO = expression(
    rf"{_LEAD}(?:what if (?:i|we) |can you |could you |please )?(?:make|call|change|turn) (?:the|that) (?P<old>[^,;?]+?)"
    r"(?: (?:an?|to|into|be|to an?|into an?))? (?P<new>[^,;?]+?)(?: (?:instead|then|now))*\W*",
    re.IGNORECASE,
)
_ORDER = ("first", "second", "third", "fourth", "fifth")
_FAR_OFF = 4  # times as large
_SCORE = 3.0  # of a change that only these words make
_SIDES = ("side", "other side")


def nth_one(text: str, last: Asked) -> Wanted | None:
    """The change of one number of the question before, told by its place or its value; None where no one number is told so.

    Where it is told by its place, and can't be found there, it is for no other: that is asked.
    """
    found = _NTH.fullmatch(text)
    if found is None or _one(found["new"]) is None:
        return _into(text, last)
    sides = _sides(last)
    if sides:
        at = _at(found["nth"], len(sides))
        return _in_its_place(sides[at], found["new"], sides) if at < len(sides) else None
    listed = any(isinstance(given.value, tuple | Sum) for given in last.givens.values())
    return Wanted(found["new"], "", corrects=True, led=True, untold=True) if listed else None


def nth_of_sum(wanted: Wanted, last: Asked) -> list[Question]:
    """The sum before with its first, second or last length other than it was; none where the line tells no such thing."""
    found = _NTH.fullmatch(wanted.line) if wanted.untold else None
    given, new = last.givens.get("sum"), _one(found["new"]) if found is not None else None
    if found is None or given is None or new is None or not isinstance(given.value, Sum):
        return []
    said, terms = last.text.lower(), list(_terms(given.value))
    terms.sort(key=lambda term: said.find(term.text.lower()))
    at = _at(found["nth"], len(terms))
    if not 0 <= at < len(terms) or _goes_on(given.value) or any(not term.text or term.text.lower() not in said for term in terms):
        return []
    was, value, unit = terms[at], new.value.value, new.value.unit
    unit = was.unit if unit == "none" else unit
    now = _with(given.value, was, Length(value, unit, found["new"]) if unit != "none" else Number(value, "none", found["new"]))
    if unit not in ("none", *Length.units) or (isinstance(was, Length) and in_millimetres(now) <= 0):
        return []
    now = replace(now, text=str(now))  # whose words are those of the question from here on
    return [Question(last.topic.name, {"sum": Heard(now, 0, len(wanted.line), str(now))}, _SCORE)]


def nth_of_list(wanted: Wanted, last: Asked) -> list[Question]:
    """The legs, layers or single pieces of the question before with the first, second or last other than it was, a bare number in
    the unit that one had; none where the line tells no such thing, or there is none so far down the list."""
    found = _NTH.fullmatch(wanted.line) if wanted.untold else None
    new = _one(found["new"]) if found is not None else None
    lists = [(name, given.value) for name, given in last.givens.items() if isinstance(given.value, tuple)]
    if found is None or new is None or len(lists) != 1 or not isinstance(new.value, Length | Number):
        return []
    name, listed = lists[0]
    at = _at(found["nth"], len(listed))
    if not 0 <= at < len(listed):
        return []
    was = listed[at]
    size = was if isinstance(was, Length) else getattr(was, "length", None) or getattr(was, "thickness", None)
    if not isinstance(size, Length) or getattr(was, "count", 1) != 1 or new.value.value <= 0:
        return []
    bare = new.value.unit == "none"
    if bare and times_apart(new.value.value, size.value) > _FAR_OFF:
        return []  # 3, of a leg of 25 mm
    unit = size.unit if bare else new.value.unit
    told = Length(new.value.value, unit, found["new"] if unit == new.value.unit else "")
    now = told if isinstance(was, Length) else replace(was, **{"length" if isinstance(was, Piece) else "thickness": told})
    heard = Heard((*listed[:at], now, *listed[at + 1 :]), 0, len(wanted.line), found["new"])
    return [Question(last.topic.name, {name: heard}, _SCORE)]


def _terms(part: Part | None) -> Iterator[Length | Number]:
    """What a sum adds and takes off, a bare number with it; and the lengths that are taken so many times."""
    if isinstance(part, Sum):
        for side in (part.left, part.right):
            if not (isinstance(side, Number) and part.operation in (TIMES, DIVIDED)):
                yield from _terms(side)
    elif part is not None:
        yield part


def _goes_on(part: Part | None) -> bool:
    """Whether a sum goes on from an answer, with nothing of its own before its sign: less an inch."""
    return part is None or (isinstance(part, Sum) and (_goes_on(part.left) or _goes_on(part.right)))


def _with(part: Any, was: Part, now: Part) -> Any:
    """A sum with one of its lengths in the place of another."""
    if part is was:
        return now
    if not isinstance(part, Sum):
        return part
    return replace(part, left=_with(part.left, was, now), right=_with(part.right, was, now), text="")


def _at(nth: str, count: int) -> int:
    return count - 1 if nth.lower() == "last" else _ORDER.index(nth.lower())


def _into(text: str, last: Asked) -> Wanted | None:
    """Make the twenty a twenty foot six."""
    into = _INTO.fullmatch(text)
    if into is None:
        return None
    known = [place for place in places_of(last.text) if not unheard(" ".join(place.words), last.givens.values())]
    both = text[into.start("old") : into.end("new")]
    if _one(both) is not None:  # make that twenty two
        return None
    for cut in re.finditer(r"\s+", both):
        old, new = both[: cut.start()], both[cut.end() :]
        new = new if _one(new) else re.sub(r"^(?:to |into |be )?(?:an? )?(?=\w+)", "", new)
        was, number = [place for place in known if _same(_one(old), place)], _one(new)
        if len(was) == 1 and number is not None and _near(number, was[0]) and not old.endswith("s"):  # the 36s are pieces
            return _in_its_place(was[0], _in_feet(number, new), known)
    return None


def _in_feet(number: Place, words: str) -> str:
    """Feet and inches that were said with no unit, in inches: fourteen ten, which beside nothing else could be 1410 mm."""
    bare = number.value.unit == "in" and len(number.words) == 2 and not re.search(r"[\"'’]|\d/\d|inch|foot|feet", words)
    return f"{number.value.value} inches" if bare and number.value.value.denominator == 1 else words


def _near(new: Place, was: Place) -> bool:
    """Whether a number could be another measure of the same: fourteen ten is no 1410 in place of fourteen foot nine."""
    one, other = new.value.value, was.value.value
    if min(one, other) <= 0 or new.value.unit not in ("none", was.value.unit):
        return True
    return times_apart(one, other) <= _FAR_OFF


def _in_its_place(was: Place, new: str, told: list[Place]) -> Wanted | None:
    """The change of one number told, by its value, so that its words are not read anew without those beside them."""
    value = was.value.value
    if [place.value for place in told].count(was.value) != 1:
        return None
    plain = str(value.numerator) if value.denominator == 1 else repr(float(value))
    return Wanted(new, plain, corrects=True, led=True)


def _same(old: Place | None, was: Place) -> bool:
    """Whether a number names one that was told: the twenty, of twenty foot."""
    if old is None:
        return False
    return old.value.value == was.value.value and old.value.unit in ("none", was.value.unit)


def _one(words: str) -> Place | None:
    """The number that words are, and no more; a, before it, stands for nothing."""
    said = places_of(words)
    whole = len(said) == 1 and not words[: said[0].start].strip() and not words[said[0].end :].strip()
    return said[0] if whole else None


def _sides(last: Asked) -> list[Place]:
    """The two sides of a frame, in the order in which they were said; none of any other question."""
    labels = {name: last.topic.parameter(name).label for name in last.givens}
    sizes = [last.givens[name].value for name, label in labels.items() if label in _SIDES]
    sizes = [size for size in sizes if isinstance(size, Quantity)]
    places = [place for place in places_of(last.text) if any(_is(place, size) for size in sizes)]
    return places if len(places) == len(sizes) == len(_SIDES) else []


def _is(place: Place, size: Quantity) -> bool:
    """Whether a number of the line is one of the question's; a bare one in the unit it was taken in."""
    return place.value.value == size.value and place.value.unit in ("none", size.unit)
