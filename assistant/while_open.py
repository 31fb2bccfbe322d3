"""What is told while a question is open, and is no reply to it: another number of what was asked ("and at 35"), and what the
job knew otherwise ("no, it's a 40 degree roof")."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.acts.memory import short
from assistant.heard_all import unheard
from assistant.meant_for import Wanted, put_in_place, targets_of
from assistant.said_over import places_of
from assistant.units_kept import in_its_unit
from assistant.usual import is_usual
from assistant.ways import Way, differences
from intents.expressions import expression
from intents.fitting import fit
from intents.question import Heard, Question
from intents.reading import Reading
from intents.talk import numbers_in
from solvers.exact import real
from solvers.quantities import Length, Number, Pitch, Quantity
from solvers.slots import Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending
    from assistant.record import Record

_RIGHTS = "no|nope|sorry|wait|hang on|hold on|oops|actually|i meant|i mean|i said"
_PUTS_RIGHT = expression(rf"\W*(?:{_RIGHTS})\b", re.IGNORECASE)
_CORRECTS = expression(rf"\W*(?:{_RIGHTS}|nah|scratch that|make (?:it|that))\b", re.IGNORECASE)
_NEAR_IT, _NEARLY = Fraction(5, 4), Fraction(3, 2)  # so many times as much, either way, of what was put right
_ALONE = expression(  # what may stand beside a number that says nothing of what it is for
    r"(?:\b(?:and|so|ok|then|or|but|no|sorry|wait|hang on|hold on|oops|at|on|with|for|if|it['’]?s|that['’]?s|make|it|that|what"
    r"|how|about|i said|i meant|say|actually|instead|now)\b|\W)*",
    re.IGNORECASE,
)
_SIZES = {"long": "length", "high": "height", "tall": "height", "wide": "width", "across": "width", "deep": "depth"}
_SIZE = expression(rf"\b(?:{'|'.join(_SIZES)})\b", re.IGNORECASE)
_MEASURES = expression(
    r"\b(?:measures?|measured|reads?|i get|i got|we get|we got|i['’]ve got)\b|\bcorner to corner\b|\bdiagonal(?:'s| is)\b",
    re.IGNORECASE,
)
_HOW_FAR = expression(r"\bhow (?:far|much)\b.*\b(?:out|off)\b", re.IGNORECASE)
_OF_IT = Fraction(1, 20)  # of a diagonal that a frame is out by, at most
_SQUARE = "square check"


def measured(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a diagonal that was measured tells the unit of the sides, which was in doubt; then it is held against theirs."""
    places = places_of(text) if _MEASURES.search(text) else []
    if len(places) != 1 or not pending.ways or pending.ways[0].worked.topic.name != _SQUARE:
        return False
    value = places[0].value
    units = ("mm", "in") if value.unit == "none" else (value.unit,)
    sizes = [Length(value.value, unit).to("in").value for unit in units if unit in Length.units]
    fits = [way for way in pending.ways if any(_near(way, size) for size in sizes)]
    if len(fits) != 1:
        return False
    c.finish(dict(record), fits, Question(_SQUARE))
    asks = _HOW_FAR.search(text) or not re.search(r"[a-z]{3}.*,|\?", text)
    c.take(record, f"how far out of square if it measures {text[places[0].start : places[0].end]}" if asks else text)
    return True


def _near(way: Way, size: Fraction) -> bool:
    """Whether a size is all but the diagonal that one way to mean the sides comes to."""
    result = way.worked.working.result if way.worked.working else None
    if result is None or result.value is None or result.unit not in Length.units:
        return False
    inches = real(result.value) * float(Length(Fraction(1), result.unit).to("in").value)
    return abs(inches - float(size)) <= _OF_IT * inches


def another_number(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a number said alone is none of those that were asked about, and so changes the question before: 16, of a length
    or a rise, and then 20."""
    given = [each for way in pending.ways for each in way.asked.givens.values()]
    if c.last is None or pending.asked is None or c.last.topic is not pending.asked.topic or pending.wanted:
        return False
    if not _alone(text) or places_of(text)[0].value.unit != "none" or not unheard(text, given) or _differ_in_unit(pending.ways):
        return False  # at 60 F tells what it is for, and so what the 55 before it was
    c.take(record, text)
    return True


def _alone(text: str) -> bool:
    """Whether a line is one number, and words that say nothing of what it is for."""
    places = places_of(text)
    return len(places) == 1 and _ALONE.fullmatch(f"{text[: places[0].start]} {text[places[0].end :]}") is not None


def to_the_meant(more: Question, text: str, pending: Pending) -> None:
    """A number said alone while a unit is in doubt goes to the given that it is meant for: 6 wide, 40 degrees | and at 35."""
    given = [each for way in pending.ways for each in way.asked.givens.values()]
    if pending.asked is None or not _alone(text) or not unheard(text, given) or not _differ_in_unit(pending.ways):
        return
    targets = targets_of(Wanted(text, led=True), pending.asked)
    if len(targets) != 1 or targets[0] in more.givens:
        return
    put_in_place(more, pending.asked, targets[0], text)
    if targets[0] in more.givens and targets[0] not in differences(pending.ways):
        more.givens[targets[0]] = in_its_unit(more.givens[targets[0]], pending.asked.givens[targets[0]], pending.asked)


def _differ_in_unit(ways: Sequence[Way]) -> bool:
    """Whether the ways to mean a question give the same numbers to the same givens: 6 ft or 6 m."""
    for name in differences(list(ways)):
        values = [getattr(way.asked.givens[name].value, "value", None) for way in ways if name in way.asked.givens]
        if len(values) < len(ways) or len(set(values)) > 1:
            return False
    return True


def puts_right(text: str) -> bool:
    """Whether a line's first words say that it puts something right."""
    return _CORRECTS.match(text) is not None


def put_right(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a line puts a number right that was told, while another is asked for: 300 square feet of wall | no, it's 320.

    The one told that is near it is meant; further off, it must be nothing that the question waits for.
    """
    asked, rows = pending.asked, numbers_in(text)
    alone, size = _without_size(text)
    if asked is None or not pending.wanted or pending.ways or len(rows) != 1 or not (_CORRECTS.match(text) and _alone(alone)):
        return False
    waited = asked.topic.parameter(pending.wanted)
    if size and size in waited.label.split():
        return False
    reply = fit(rows[0], waited, text, cued=True)
    natural = reply is not None and isinstance(reply.value, Quantity) and is_usual(waited.slot, reply.value, 1)
    most = _NEAR_IT if natural else _NEARLY
    place, near = places_of(text)[0], {}
    words = text[place.start : place.end]
    for name, given in asked.givens.items():
        sizes = {*_SIZES.values(), "run", "rise", "slope"}.intersection(asked.topic.parameter(name).label.split())
        told = given.source == "asked" and (not size or not sizes or size in sizes)  # no height of what is told to be long
        value = anew(rows[0], asked.topic.parameter(name), given.value, words) if told else None
        if value is not None and given.value.value and 1 / most <= value.beside(given.value) / given.value.value <= most:
            near[name] = value
    if len(near) != 1:
        return False
    question = Question(asked.topic.name, {name: Heard(value, 0, len(text), words) for name, value in near.items()}, 1.0)
    c.finish(record, c.ways(question, asked), question)
    return True


def _without_size(text: str) -> tuple[str, str]:
    """A line without the word that says which way a size goes, and what such a size is called: 14 foot long is a length."""
    found = _SIZE.search(text)
    return (text, "") if found is None else (text[: found.start()] + text[found.end() :], _SIZES[found[0].lower()])


def anew(row: Reading, parameter: Parameter, before: object, text: str) -> Quantity | None:
    """A number as another value of what was told, in its unit where it has none; None where it can be none of that."""
    if not isinstance(before, Quantity) or (found := fit(row, parameter, text, cued=True)) is None:
        return None
    if isinstance(row.value, Number) and not isinstance(before, Pitch):
        return replace(before, value=row.value.value, text=text)
    return found.value if isinstance(found.value, type(before)) else None


def kept_right(c: Conversation, record: Record, more: Question, asked: Asked) -> None:
    """Keep as it was put right what the job knew otherwise, and say so: no, it's a 40 degree roof."""
    for name, heard in more.givens.items() if _PUTS_RIGHT.match(record["heard"]) else ():
        kept, before = asked.topic.parameter(name).slot.kept, asked.givens.get(name)
        if kept and before is not None and before.source == "job" and isinstance(heard.value, Quantity):
            was = c.facts.remember(kept, replace(heard.value, text=""))
            if was is not None:
                record["say"] += f" The {kept} kept for this job is now {short(heard.value)}; it was {short(was)}."
