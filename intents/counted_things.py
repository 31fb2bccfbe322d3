"""A count taken from a number that counts nothing, while another before the name of the things was let fall.

"Cost of 12 boards at 14 each, the van is 60": what is bought is 12, and 60 is no count at all. Asked, never worked.
"""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.consulting import numbers_in
from intents.number_words import SMALL
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Count, Length, Number

_THINGS = frozenset(
    "boards planks sheets panels sticks lengths pieces battens straps bundles rolls tubes boxes bags posts brackets slats pickets"
    " vents blades louvres louvers corbels shingles blocks".split()
)
_PLURALS = _THINGS - frozenset(("lengths", "blocks")) | frozenset(
    "hooks strips parts shelves spindles balusters bits joists studs rafters brackets knobs lights bays gaps flashings"
    " soakers".split()
)
_SAID_OF_IT = frozenset("height high tall length long".split())
_INSIDE = frozenset("in into across over along".split())
_AT = frozenset("at @ on every per by in".split())
_KIND = 2  # words from a number to what it counts: coat hooks
_NO_KIND = frozenset(
    "at of and on for in by to or with the a max min how is are equal even same cover coverage covering wide long tall high deep"
    " thick oc centre centres center centers ctrs".split()
)
_BOUGHT = ("cost", "weight")
_SPACED = ("marks on centre", "balanced panels", "equal spacing", "divide evenly", "strapping", "course layout", "step flashing")
_SIZED = {"sealant": "length", "bent flashing": "lengths", "cut list": "stock_length"}  # topics, and what is no count there
_LEAST_ML = 50  # fewer are so many tubes, and no tube of so many millilitres
_SPACES = frozenset("bays gaps spaces openings".split())
_STOCK = frozenset("stock stocks footers".split())


def no_broken_count(chart: Chart, questions: list[Question], _topics: object) -> None:
    """A number with a fraction counts nothing: 1 1/2 balusters are an inch and a half wide."""
    question = next(iter(questions), None)
    count = question.givens.get("count") if question is not None and question.topic == "equal spacing" else None
    if question is None or count is None or not isinstance(count.value, Count) or count.value.value.denominator == 1:
        return
    taken = question.givens.get("width")
    if taken is not None:  # 3/4 spindles, 3 inch gap: that is the gap
        start, end = places_of(chart, taken) if taken.end > taken.start else (0, 0)
        beside = {*chart.words[max(0, start - 1) : start], *chart.words[end : end + 1]} if end else set()
        if beside.isdisjoint(("gap", "gaps")) or "gap" in question.givens:
            return
        question.givens["gap"] = question.givens.pop("width")
    width = Length(count.value.value, "in", count.text)
    question.givens["width"] = replace(question.givens.pop("count"), value=width)
    question.missing = [name for name in question.missing if name != "width"]


_WALLS = frozenset(("squares", "wall area", "cladding boards", "take-off"))
_ROOFS, _WALLED = frozenset(("roof", "roofs", "roofing")), frozenset("wall walls gable gables siding cladding side sides".split())


def _of_a_roof(question: Question) -> list[str]:
    """The pitch of a roof whose area is asked: its plan is no wall with a gable on it."""
    pitch = question.givens.pop("pitch", None)
    return [pitch.text] if pitch is not None else []


def other_count(chart: Chart, question: Question) -> list[str]:
    """The number of things that no given took, where the count given is of nothing that is named."""
    if question.topic in _WALLS and not _ROOFS.isdisjoint(chart.words) and _WALLED.isdisjoint(chart.words):
        return _of_a_roof(question)
    if other := _two_walls(chart, question):
        return [other]
    if question.topic == "course layout":
        return _stock_length(chart, question)
    if question.topic == "conversion":
        return _several(chart, question)
    if question.topic in _SPACED and (counted := _counted(chart, question)):
        return counted
    if question.topic == "equal spacing":
        _gap_wanted(chart, question)
        return _so_many_spaces(chart, question)
    if question.topic in _SIZED:
        return _counts_in(chart, question)
    if question.topic not in _BOUGHT:
        return []
    counts = [h for h in question.givens.values() if isinstance(h.value, Count) and h.end > h.start]
    if len(counts) != 1:
        return []
    end = places_of(chart, counts[0])[1]
    if _thing(chart, end):
        return []
    return _several(chart, question)


def _two_walls(chart: Chart, question: Question) -> str:
    """What is told of another wall, taken for how high this one is: a 30 foot wall and a 12 foot wall."""
    places = [(heard, places_of(chart, heard)[1]) for name in ("length", "height") if (heard := question.givens.get(name))]
    walls = [heard for heard, end in places if heard.end > heard.start and _wall_ends(chart.words[end : end + 2])]
    return max(walls, key=lambda heard: heard.start).text if len(walls) > 1 else ""


def _wall_ends(after: list[str]) -> bool:
    return after[:1] == ["wall"] and _SAID_OF_IT.isdisjoint(after[1:])


def _counted(chart: Chart, question: Question) -> list[str]:
    """A number of things, taken for a length: 6 coat hooks are no spacing, 7 strips no 7 feet."""
    for heard in question.givens.values():
        if not isinstance(heard.value, Length) or heard.end <= heard.start or heard.value.value.denominator > 1:
            continue
        start, end = places_of(chart, heard)
        number = any(r.kind == "number" and r.end == end for r in chart.readings[start])
        words = chart.words[end : end + _KIND]
        if not number or end - start > 1 or (chart.words[start - 1 : start][:1] and chart.words[start - 1] in _AT):
            continue
        at = next((n for n, word in enumerate(words) if word in _PLURALS), -1)
        if at >= 0 and _NO_KIND.isdisjoint(words[:at]) and all(word.isalpha() for word in words[:at]):
            return [chart.said(start, end + at + 1)]
    return []


def _counts_in(chart: Chart, question: Question) -> list[str]:
    """How many there are, taken for a size: 3 tubes, two 3 inch legs, 18 sticks at 14 dollars."""
    tube = question.givens.get("tube")
    bare = tube is not None and (tube.text.isdecimal() or tube.text in SMALL)
    if tube is not None and bare and tube.end > tube.start and tube.value.value < _LEAST_ML:
        end = places_of(chart, tube)[1]
        if chart.words[end : end + 1] == ["tubes"]:
            return [f"{tube.text} tubes"]
    heard = question.givens.get(_SIZED[question.topic])
    if heard is None or heard.end <= heard.start or (question.topic == "cut list" and "price" not in question.givens):
        return []
    start, end = places_of(chart, heard)
    words = [*chart.words, "", ""]
    if question.topic == "bent flashing":
        pairs = (at for at in range(start, end) if words[at] in SMALL and words[at] != "one" and words[at + 1][:1].isdecimal())
        return [chart.said(at, at + 2) for at in pairs]
    counted = words[end] in _THINGS and words[end + 1] in ("at", "@")
    counted = counted or (words[end] in ("tube", "tubes") and words[start - 1] != "length")
    return [f"{heard.text} {words[end]}"] if counted and heard.bare else []


def how_many_in(chart: Chart, questions: list[Question], _topics: object) -> None:
    """What it is asked how many go in is a length and no count: inch and three quarter slats, gap 3/4, how many in 47."""
    for question in questions:
        count, long = question.givens.get("count"), question.givens.get("length")
        if question.topic != "equal spacing" or count is None or count.end <= count.start or long is None:
            continue
        start, after = places_of(chart, count)[0], places_of(chart, long)[1]
        led = chart.words[max(0, start - 3) : start]
        inside = led[:2] == ["how", "many"] and not _INSIDE.isdisjoint(led[2:])
        if inside and not _PLURALS.isdisjoint(chart.words[after : after + 2]):
            question.givens["length"] = replace(question.givens.pop("count"), value=Length(count.value.value, "in", count.text))
            thin = question.givens.pop("width", None)
            question.givens["width"] = long
            if thin is not None:
                question.givens["gap"] = thin
            question.swaps, question.rival = [], False


def gaps_counted(chart: Chart, questions: list[Question], _topics: object) -> None:
    """How many gaps there are tells whether one is at each end: 5 gaps with 4 pickets."""
    for question in questions:
        count = question.givens.get("count")
        if question.topic != "equal spacing" or count is None or "ends" in question.givens or len(question.unplaced) != 1:
            continue
        at = next((at for at, word in enumerate(chart.words) if word in _SPACES and at > 1), 0)
        said = [r for r in range(max(0, at - _KIND), at) if chart.numbers >> r & 1]
        readings = [r for r in (chart.readings[said[0]] if said else ()) if isinstance(r.value, Number)]
        more = readings[0].value.value - count.value.value if readings else 0  # type: ignore[union-attr]
        if more in (1, -1) and chart.said(said[0], said[0] + 1) == question.unplaced[0]:
            ends = "BOTH" if more == 1 else "BETWEEN"
            question.givens["ends"] = Heard(ends, *_span(chart, said[0], at + 1), chart.said(said[0], at + 1))
            question.unplaced = []


def _span(chart: Chart, start: int, end: int) -> tuple[int, int]:
    return chart.tokens[start].start, chart.tokens[end - 1].end


def _gap_wanted(chart: Chart, question: Question) -> None:
    """The gap that is wanted, taken for how many pieces there are: pickets 3 1/2, gap 2, how many."""
    count = question.givens.get("count")
    if count is None or count.end <= count.start or not {"gap", "widest"}.isdisjoint(question.givens):
        return
    start, end = places_of(chart, count)
    after = chart.words[end : end + 1]
    if chart.words[start - 1 : start] in (["gap"], ["gaps"]) and not (after and after[0].isalpha() and after[0].endswith("s")):
        metric = any(isinstance(h.value, Length) and h.value.metric for h in question.givens.values())
        gap = Length(count.value.value, "mm" if metric else "in", count.text)
        question.givens["gap"] = replace(question.givens.pop("count"), value=gap)


def _so_many_spaces(chart: Chart, question: Question) -> list[str]:
    """How many bays or gaps there are, taken for how wide a piece is: two posts so that all three bays are the same."""
    width = question.givens.get("width")
    if width is None or width.end <= width.start:
        return []
    end = places_of(chart, width)[1]
    return [f"{width.text} {chart.words[end]}"] if end < len(chart.words) and chart.words[end] in _SPACES else []


def _stock_length(chart: Chart, question: Question) -> list[str]:
    """The length of the stock, taken for the height of the wall: "reveal max 8 in, courses? 14 ft stock"."""
    height = question.givens.get("height")
    if height is None or height.end <= height.start:
        return []
    end = places_of(chart, height)[1]
    return [height.text] if chart.words[end : end + 1] and chart.words[end] in _STOCK else []


def _several(chart: Chart, question: Question) -> list[str]:
    """How many things there are, where no given took it: 4 sticks of 16 ft, how many feet."""
    left = chart.numbers & ~numbers_in(chart, question)
    counts = [i for i, word in enumerate(chart.words) if left >> i & 1 and word != "1" and _thing(chart, i + 1)]
    return [chart.said(counts[0], counts[0] + 2)] if counts else []


def _thing(chart: Chart, at: int) -> bool:
    """Whether the name of things that are counted stands at a place."""
    return at < len(chart.words) and chart.words[at] in _THINGS


def into_itself(question: Question) -> bool:
    """Whether the only unit that is told is the value's own: 50 square inches each."""
    value, to = question.givens.get("value"), question.givens.get("to")
    return value is not None and to is not None and value.start <= to.start and to.end <= value.end


def system_told(chart: Chart, question: Question) -> None:
    """The system that is told is what the value goes into, and not the unit it has: 640 sq ft, metric."""
    told = next((at for at, word in enumerate(chart.words) if word in _SYSTEMS), None)
    if told is None or not into_itself(question):
        return
    token = chart.tokens[told]
    to = question.givens["to"]
    question.givens["to"] = replace(to, value=_SYSTEMS[token.text], start=token.start, end=token.end, text=token.text)


_SYSTEMS = {"metric": "METRIC", "imperial": "IMPERIAL"}
