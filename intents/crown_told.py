"""The spring and the corner of a sprung moulding by two bare angles: crown 38 on a 90 inside, 52/38 crown for a 92.

The number beside the moulding's name is what it springs at; 52/38 is the same said from the ceiling and from the wall, in
whichever order: the smaller is from the wall.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from itertools import pairwise
from typing import Any

from intents.chart import Chart, quantities
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Angle, Number, Quantity

COMPOUND, CORNER, RING = "compound cut", "miter for a corner", "polygon"
_LEANS = frozenset("lean leans leaning tilt tilts tilted splay splayed flare flared".split())
_SPRUNG = frozenset("crown cornice cove coving".split())
_SMALL = frozenset(
    "moulding molding mouldings moldings mould mold trim at on a an the for of in with is to angle angles degree degrees ° spring"
    " corner inside outside wall what whats what's s miter mitre bevel saw settings setting cut cuts set and , . ? i do my round"
    " around going goes meets which from ceiling into square lay laid lie it flat down dead".split()
)
SPRINGS, CORNERS, SQUARE = (20, 70), (60, 175), 90  # degrees
SAID_OF_PAIR = 3  # numbers, two of them the moulding's name
SAID = 3.5  # as the score of a rule that fits


def crown_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Make the line a compound cut, where it says a sprung moulding, two angles, and no more."""
    if _SPRUNG.isdisjoint(chart.words):
        _spring_named(chart, questions)
        return
    said = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Quantity)]
    inside = {at for reading in said for at in range(reading.start, reading.end)}
    said = _paired(said)
    if len(said) == 1:
        _no_spring(questions)
    if len(said) == 1 and questions and questions[0].topic == CORNER:  # nested against the fence it is cut as a flat one
        questions[0].lacking = 1
        questions[1:] = [Question(COMPOUND, {**questions[0].givens}, score=questions[0].score, missing=["spring"])]
    if len(said) == 1 and ("square", "corner") in pairwise(chart.words):
        _into_a_square(chart, questions, said[0])
        return
    if len(said) != 2 or any(w not in _SPRUNG | _SMALL for at, w in enumerate(chart.words) if at not in inside):
        return
    spring, corner = sorted(said, key=lambda r: _apart(chart, r))
    told = _spring(chart, spring)
    if not told or not isinstance(corner.value, Number | Angle) or not CORNERS[0] <= corner.value.value <= CORNERS[1]:
        return
    givens = {"spring": _heard(chart, spring, told), "corner": _heard(chart, corner, corner.value.value)}
    kept = _measured(chart, questions)
    questions[:] = [Question(COMPOUND, {**kept, **givens}, score=SAID, words=["crown"])]


def _spring_named(chart: Chart, questions: list[Question]) -> None:
    """A spring angle that is named makes a compound cut of a miter whose corner is still to be told."""
    first, words = next(iter(questions), None), chart.words
    if first is None or first.topic != CORNER or first.givens or "spring" not in words:
        return
    at = next((k for k in range(words.index("spring") + 1, len(words)) if words[k] not in ("angle", "is", "of", "at", "'s")), 0)
    said = chart.readings[at] if at else []
    spring = next((r for r in said if isinstance(r.value, Number | Angle) and _spring(chart, r)), None)
    if spring is not None:
        givens = {"spring": _heard(chart, spring, _spring(chart, spring)), **_measured(chart, questions)}
        questions[:] = [Question(COMPOUND, givens, score=SAID, missing=["corner"], words=["spring"])]


def leaning_sides(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Sides that lean make a compound cut: what they lean by is no turn of a bay."""
    ring = next((question for question in questions if question.topic == RING and "bay" in question.givens), None)
    if ring is None or _LEANS.isdisjoint(chart.words):
        return
    sides = {name: given for name, given in ring.givens.items() if name == "sides"}
    missing = [] if sides else ["corner"]
    questions[:] = [Question(COMPOUND, {"spring": ring.givens["bay"], **sides}, score=SAID, missing=missing, words=["sides"])]


def _into_a_square(chart: Chart, questions: list[Question], spring: Reading) -> None:
    """The one number springs, where the corner is told to be square: crown's 52 from the ceiling into a square corner."""
    told = _spring(chart, spring)
    inside = range(spring.start, spring.end)
    if not told or any(w not in _SPRUNG | _SMALL for at, w in enumerate(chart.words) if at not in inside):
        return
    at = [*pairwise(chart.words)].index(("square", "corner"))
    corner = Heard(Angle(Fraction(SQUARE), "deg", "square"), *place_of(chart, at, at + 2))
    givens = {"spring": _heard(chart, spring, told), "corner": corner}
    questions[:] = [Question(COMPOUND, {**_measured(chart, questions), **givens}, score=SAID, words=["crown"])]


def _measured(chart: Chart, questions: list[Question]) -> dict[str, Heard]:
    """Where the spring is measured from, as the rule found it, or the ceiling where that is named."""
    kept = {n: h for q in questions if q.topic == COMPOUND for n, h in q.givens.items() if isinstance(h.value, str)}
    ceiling = "ceiling" in chart.words and {"measured": Heard("CEILING", 0, 0, "")}
    return {**(ceiling or {}), **kept}


def _paired(said: list[Reading]) -> list[Reading]:
    """The numbers with the two of a moulding's name, 52 38, as the one it springs at."""
    for one, two in pairwise(said):
        both = [r.value.value for r in (one, two) if isinstance(r.value, Number | Angle)]
        if len(said) == SAID_OF_PAIR and one.end == two.start and len(both) == 2 and sum(both) == SQUARE:
            spring = one if both[0] < both[1] else two
            return [spring, *(r for r in said if r is not one and r is not two)]
    return said


def _no_spring(questions: list[Question]) -> None:
    """Take for the corner what nothing springs at: crown 90."""
    first = next(iter(questions), None)
    spring = first.givens.get("spring") if first is not None and first.topic == COMPOUND else None
    if first is not None and spring is not None and len(first.givens) == 1 and SPRINGS[1] < spring.value.value <= CORNERS[1]:
        questions[:] = [Question(CORNER, {"corner": spring}, score=first.score, words=first.words)]


def _apart(chart: Chart, reading: Reading) -> int:
    """How many words lie between a number and the moulding's name; one beside the corner's name is farther."""
    names = [at for at, word in enumerate(chart.words) if word in _SPRUNG]
    beside = "corner" in chart.words[max(0, reading.start - 1) : reading.end + 1]
    return min(min(abs(at - reading.end), abs(reading.start - 1 - at)) for at in names) + beside * len(chart.words)


def _spring(chart: Chart, reading: Reading) -> Any:
    """What a moulding springs at, from the wall; 0 where the number can't be that."""
    words = chart.words[reading.start : reading.end]
    if len(words) == 3 and words[1] == "/" and words[0].isdecimal() and words[2].isdecimal():
        return min(int(words[0]), int(words[2])) if int(words[0]) + int(words[2]) == SQUARE else 0
    value = reading.value.value if isinstance(reading.value, Number | Angle) else 0
    return value if SPRINGS[0] <= value <= SPRINGS[1] else 0


def _heard(chart: Chart, reading: Reading, degrees: Any) -> Heard:
    place = place_of(chart, reading.start, reading.end)
    return Heard(Angle(degrees, "deg", place[2]), *place, reading.sure)
