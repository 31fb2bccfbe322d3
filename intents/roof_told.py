"""A roof told by its plan and its pitch: which size is a side, which the overhang, which area the plan's.

"24 wide, 36 long, 6/12", "twenty six hundred square feet on the ground", "eaves 400 all round", "40x28 5/12". Every quantity
must find its place by its kind and the words beside it; one that finds none leaves the question as it was.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart
from intents.every_size import HARDLY, Row, after, before, clause, every_size
from intents.fitting import fit
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.second_reader import places_of
from intents.two_sided import two_sided
from solvers.quantities import Angle, Area, Length, Number, Percent, Pitch, Quantity
from solvers.slots import Parameter

TOPIC = "roof area"
_READ_AS = frozenset(("squares", "rise over a run", "wall area", "sloped length", "hip or valley length"))
_KINDS = frozenset("pitch angle percent area length number".split())
_OVERHANGS = frozenset(
    "overhang overhangs overhanging oversail eave eaves eves rake rakes verge verges out past beyond hang hangs oh".split()
)
_EAVES = frozenset("overhang overhangs eave eaves".split())
_ROUND = frozenset((("all", "round"), ("all", "around"), ("all", "rnd"), ("every", "side"), ("all", "sides"), ("each", "side")))
_SLOPES = frozenset("pitch pitched pitches slope slopes sloped tilt tilted tips angle".split())
_PLANS = frozenset("plan footprint floor ground flat covers cover above down below drone beneath level".split())
_FLAT = _PLANS - {"cover", "covers", "floor", "below"}  # told of a plan in any clause
_WIDE = frozenset("wide width across deep depth".split())
_LONG = frozenset(("long", "length"))
_SQUARE, _SIDES = frozenset(("square", "squared", "both", "each")), frozenset(("side", "way", "ways"))
_ROOFS = frozenset("roof roofs roofing roofed reroofing hip hipped pyramid slates tiles tin metal steel".split())
_WALLED = frozenset("wall walls siding cladding dormer dormers soffit rafter rafters gutter ladder rakes valley".split())
_AREAS = frozenset("squares square sq area sqft footage m2 m² surface".split())
_ASKS = frozenset((
    ("much", "roof"), ("much", "roofing"), ("square", "feet"), ("square", "foot"), ("sq", "ft"), ("square", "metres"),
    ("square", "meters"), ("many", "squares"), ("square", "of"), ("how", "much"),
))  # fmt: skip
_NONE = frozenset("no zero without nil".split())
_IN_IT = frozenset("included in already counted includes including".split())
_WITH_THEM, _ARE = (["with", "the"], ["including", "the"]), (["it", "is"], ["it", "comes"], ["it", "measures"], [",", "it"])
_LEAST_AREA, _LEAST_SIDE, _MOST_SIDE, _LONG_SIDE = 100, 2, 300, 4  # of a plan with no unit; ft
_NEAR, _FAR = 3, 5
_SQUARES = "SQUARES"
_NO_OVERHANG = Length(Fraction(0), "in", "none")

_ONE = frozenset(("one", "per", "each", "single", "half"))
_NO_AREA = frozenset("rafter rafters truss trusses volume".split())
_GABLES = frozenset(
    "gable gables gabled triangle triangles triangular peak end ends dormer dormers point under attic siding wall".split()
)
_WALLS = frozenset(("wall", "gable"))
_SLOPES_OF_IT = frozenset("slope plane face".split())

Places = dict[str, Parameter]


def roof_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give the quantities of a question about a roof their places, where each has one by the words beside it."""
    if question.topic != TOPIC:
        return
    places = {p.name: p for p in parameters}
    given = _every_place(chart, places)
    if given is None:
        _name_what_is_over(chart, question)
        return
    other = not _NO_AREA.isdisjoint(chart.words) and _AREAS.isdisjoint(chart.words)  # what rafters, what volume
    if other or _of_one_slope(chart.words) or _of_a_wall(chart, given):
        question.lacking = question.lacking or 1
        return
    question.givens, question.swaps, question.rival = _by_words_alone(question) | given, [], False
    question.unplaced, question.lacking = [], 0
    question.missing = [p.name for p in parameters if p.lacks(question.givens)]


def _by_words_alone(question: Question) -> dict[str, Heard]:
    """What no number tells: that squares are asked for, that there is no waste."""
    return {name: heard for name, heard in question.givens.items() if isinstance(heard.value, str) or name == "waste"}


def _name_what_is_over(chart: Chart, question: Question) -> None:
    """Name sizes that have no place in a roof: less two skylights 2 by 4."""
    taken = [(heard.start, heard.end) for heard in question.givens.values()]
    for size in two_sided(chart) if not question.unplaced else ():
        place = place_of(chart, size.start, size.end)
        if not any(start < place[1] and place[0] < end for start, end in taken):
            question.unplaced.append(place[2])


def _asks_the_plan(words: Sequence[str]) -> bool:
    """Whether the plan is what is asked for: my roof is 24 squares at 6/12, what's the footprint."""
    places = [at for at, word in enumerate(words) if word in ("plan", "footprint")]
    return any("what" in words[max(0, at - _NEAR) : at] for at in places)


def _of_one_slope(words: Sequence[str]) -> bool:
    """Whether one slope alone is asked for, and not how far an overhang is on each side."""
    pairs = [*pairwise(words)]
    return any(one in _ONE and two in _SLOPES_OF_IT for one, two in pairs) or ("one", "side") in pairs


def _of_a_wall(chart: Chart, given: Mapping[str, Heard]) -> bool:
    """Whether the sizes are said to be those of a wall: the wall is 24 by 9."""
    side = given.get("length")
    start = places_of(chart, side)[0] if side is not None else 0
    return not _WALLS.isdisjoint(clause(chart.words[max(0, start - _NEAR) : start], backwards=True))


def roof_rather(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Take for a roof's area what was read as squares, or as a rise, where a plan and a pitch are told and an area is asked."""
    question, words = next(iter(questions), None), chart.words
    if question is not None and question.topic == "gable area" and "roof" in words and _GABLES.isdisjoint(words):
        question.lacking = question.lacking or 1  # a 6/12 roof, 30 foot wide, area?
    if question is None or question.topic not in _READ_AS or TOPIC not in topics:
        return
    if not _WALLED.isdisjoint(words) or (_AREAS.isdisjoint(words) and _ASKS.isdisjoint(pairwise(words))):
        return
    if (_ROOFS | _FLAT | _EAVES).isdisjoint(words):
        return
    given = _every_place(chart, {p.name: p for p in topics[TOPIC]})
    if given is None or "pitch" not in given or not ("plan" in given or {"length", "width"} <= given.keys()):
        return
    given = _by_words_alone(question) | given
    questions[:] = [Question(TOPIC, given, question.score, words=question.words, manner=question.manner)]


def _every_place(chart: Chart, places: Places) -> dict[str, Heard] | None:
    """What each quantity is, in the surest way to read them in which all have a place; None where there is none."""
    for row in every_size(chart, _fits):
        given = _placed(chart, row, places)
        if given is not None:
            return given | _besides(chart, places, given)
    return None


def _fits(reading: Reading) -> bool:
    if isinstance(reading.value, Dims):
        return len(reading.value.parts) == 2
    return reading.kind in _KINDS and reading.sure > HARDLY


def _placed(chart: Chart, row: Row, places: Places) -> dict[str, Heard] | None:
    """The places of a row of quantities by the words beside each; None where one has none, or a place is told twice."""
    given: dict[str, Heard] = {}
    for reading in row:
        told = _role(chart, reading, row, places)
        if told is None or told.keys() & given.keys():
            return None
        given |= told
    sides = {"length", "width"} & given.keys()
    if ("plan" in given and sides) or not (given.keys() & {"pitch", "plan", "length", "width"}):
        return None
    return given


def _role(chart: Chart, reading: Reading, row: Row, places: Places) -> dict[str, Heard] | None:
    value = reading.value
    if isinstance(value, Dims):
        return _sides(chart, value, places)
    lead, rest = before(chart, reading, row, _NEAR), after(chart, reading, row, _FAR)
    near = {*clause(lead, backwards=True), *clause(rest)}
    if isinstance(value, Percent):
        return None if near & _SLOPES else _as("waste", chart, reading, places)
    if isinstance(value, Pitch | Angle):
        return _as("pitch", chart, reading, places)
    if isinstance(value, Area):
        if (_FLAT.isdisjoint(chart.words) and not near & _PLANS) or _asks_the_plan(chart.words):
            return None  # 1200 square feet of roof may be up the slopes
        return _as("plan", chart, reading, places)
    if isinstance(value, Length | Number):
        return _size(chart, reading, (clause(lead, backwards=True), clause(rest)), places)
    return None


def _size(
    chart: Chart, reading: Reading, beside: tuple[list[str], list[str]], places: Places
) -> dict[str, Heard] | None:  # fmt: skip
    """A length, or a number with no unit, by the words of its own clause beside it."""
    lead, rest = beside
    near = {*lead, *rest}
    number = isinstance(reading.value, Number)
    side = rest[:1] != [] and rest[0] in _WIDE | _LONG
    if number and not reading.value.value:  # type: ignore[union-attr]
        return {}  # no overhang to speak of, so zero
    if not side and (_told_over(lead, rest) or (not _ROUND.isdisjoint(pairwise(rest)) and not _as_long_as_a_roof(reading))):
        return _as("overhang", chart, reading, places)
    if number and (rest[:1] == ["pitch"] or lead[-2:] in (["pitched", "at"], ["pitch", "of"]) or lead[-1:] == ["pitch"]):
        return _as("pitch", chart, reading, places)
    if _SQUARE & {*rest[:2], *lead[-2:]} and ("square" in near or "squared" in near) and not number:
        return _both(chart, reading, places)
    if _SIDES & {*rest[:3]} and "square" in chart.words:
        return _both(chart, reading, places)
    for name, words in (("width", _WIDE), ("length", _LONG)):
        if not words.isdisjoint((*rest[:1], *lead[-1:])):
            return _as(name, chart, reading, places)
    if number and near & _PLANS and reading.value.value >= _LEAST_AREA:  # type: ignore[union-attr]
        return _plan(chart, reading)
    return None


def _told_over(lead: Sequence[str], rest: Sequence[str]) -> bool:
    """Whether words of its clause tell that it is the overhang: 16 inches every side, eaves 400 all round."""
    return not _OVERHANGS.isdisjoint({*lead, *rest})


def _as(name: str, chart: Chart, reading: Reading, places: Places) -> dict[str, Heard] | None:
    if name == "pitch" and reading.kind == "number":
        place = place_of(chart, reading.start, reading.end)
        found = fit(reading, places[name], place[2], cued=True)
        return None if found is None else {name: Heard(found.value, *place, found.sure, found.others)}
    heard = heard_as(chart, places[name], reading, True)
    return None if heard is None else {name: heard}


def _sides(chart: Chart, size: Dims, places: Places) -> dict[str, Heard] | None:
    """The plan's length and width; none where a side is as long as of no roof."""
    heard = [heard_as(chart, places[name], part, True) for name, part in zip(("length", "width"), size.parts, strict=True)]
    sides = {name: one for name, one in zip(("length", "width"), heard, strict=True) if one is not None}
    return sides if len(sides) == len(size.parts) and all(_as_of_roof(one) for one in sides.values()) else None


def _both(chart: Chart, reading: Reading, places: Places) -> dict[str, Heard] | None:
    """The one side that is told of a square plan, for both."""
    heard = [heard_as(chart, places[name], reading, True) for name in ("length", "width")]
    sides = {name: one for name, one in zip(("length", "width"), heard, strict=True) if one is not None}
    return sides if len(sides) == len(heard) and all(_as_of_roof(one) for one in sides.values()) else None


def _as_long_as_a_roof(reading: Reading) -> bool:
    value = reading.value
    return isinstance(value, Length) and value.to("ft").value >= _LONG_SIDE


def _as_of_roof(heard: Heard) -> bool:
    value = heard.value
    return isinstance(value, Length) and _LEAST_SIDE <= value.to("ft").value <= _MOST_SIDE


def _plan(chart: Chart, reading: Reading) -> dict[str, Heard]:
    """A number with no unit that is told of the plan, in the unit of the rest: footprint 2,200."""
    place, value = place_of(chart, reading.start, reading.end), reading.value
    assert isinstance(value, Quantity)
    return {"plan": Heard(Area(value.value, "ft2", place[2]), *place)}


def _besides(chart: Chart, places: Places, given: dict[str, Heard]) -> dict[str, Heard]:
    """What words alone tell: that there is no overhang, or that it is in the sizes; that squares are asked for."""
    found: dict[str, Heard] = {}
    words = chart.words
    at = next((i for i, word in enumerate(words) if word in _OVERHANGS and word.startswith(("overhang", "eave"))), -1)
    if at >= 0 and "overhang" not in given and "overhang" in places:
        beside = {*clause(words[max(0, at - _NEAR) : at], backwards=True), *clause(words[at + 1 : at + _FAR])}
        # With the overhangs it's 32 by 52.
        with_them = words[max(0, at - 2) : at] in _WITH_THEM and words[at + 1 : at + 3] in _ARE
        if with_them or not beside.isdisjoint(_NONE | _IN_IT):
            found["overhang"] = Heard(replace(_NO_OVERHANG, text="none"), *place_of(chart, at, at + 1))
    asked = next((i for i, word in enumerate(words) if word == "squares" and not chart.numbers >> i & 1), -1)
    if asked >= 0:
        found["asked"] = Heard(_SQUARES, *place_of(chart, asked, asked + 1))
    return found
