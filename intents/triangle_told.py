"""What words tell of the lengths of a right triangle: which lies on the level, which leans, and which part is asked for.

"The ramp's 24 ft long on the flat", "the wire's 50 feet", "anchored 18 feet out, hooked 24 feet up, how much wire": none of
these is a sum, and none of the lengths is told by a number. Where both ways are open the conversation still asks.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from solvers.quantities import Angle, Length, Number, Quantity

TRIANGLE, SUM, LADDER = "right triangle", "tape arithmetic", "ladder footing"
LEANERS = frozenset(
    "wire wires rope ropes cable cables guy guyline guywire stay stays shroud shrouds brace strut raker prop kicker shore chain"
    " plank ramp gangway line tether".split()
)
_PLANKS = frozenset("plank planks board prop brace strut pole gangway rope cable wire".split())
_ROPES = frozenset("rope ropes cable wire guy guyline guywire stay line".split())
_LONG_SIDES = LEANERS | frozenset("hypotenuse hypot hyp slope slant".split())
_LEVEL, _FOR = frozenset("flat level plan ground floor".split()), frozenset("long of it the a".split())
_SLOPING = frozenset("slope slopes sloped rafter roof ramp deck incline rake brace shingles slates tiles".split())
_OUTS, _UPS = frozenset("out off away back".split()), frozenset(("up", "above"))
_TOUCHES = frozenset("touches touching reaches reaching hits meets bears lands".split())
_FEET = frozenset("foot base bottom wall".split())
_UPRIGHTS = frozenset("post wall stud column mast pole".split())
_FROM = frozenset(("from", "to", ",", "?"))
_FLAT = frozenset("along out across over off".split())
_ALONG = frozenset("roof slope deck sheathing".split())
_LEAD = frozenset("at to about around it 's comes come".split())
_LENGTH_AND_ANGLE = expression(r"\blength (?:and|&) (?:(?:what|the|its) )?angle\b")
_HIGH = frozenset("tall high higher".split())
_ON, _THEN = frozenset(("on", "at")), frozenset("with and how what so the is".split())
_ASKS_LONG = frozenset((("how", "long"), ("what", "length")))
_SUMS = frozenset("minus less plus difference left remaining total altogether area squares cost".split())
SLOPED, _STEEP, _SAID = "sloped length", frozenset("pitch angle percent ratio".split()), 0.9
_ANGLES = frozenset("angle steep degrees".split())
LEAST_LEG = 24  # in; less may be the inches in a foot of run
_SCORE = 3.0  # of a reading that only these words make
_REACH = 6  # words from what is told to its length: the hypotenuse of the gusset is 41 1/2


def level_told(chart: Chart, question: Question) -> None:
    """A length told along the level is the run though it is called long; one told of what leans is the slope."""
    for name in ("slope", "rise", "run"):
        heard = question.givens.get(name)
        if heard is None or heard.end <= heard.start or not isinstance(heard.value, Length):
            continue
        start, end = places_of(chart, heard)
        level = _on_the_level(chart.words[end : end + 5])
        level = level or (name != "rise" and chart.words[end : end + 1] == ["across"] and _told_up(chart, question.givens))
        if level and name == "slope" and "run" not in question.givens:
            _move(question, "slope", "run")
            return
        goes = _goes(chart.words[end : end + 3])  # guy wire 20 foot up: so long is no wire
        flat = goes == "rise" and name == "slope" and "run" not in question.givens
        if flat and _lies_along(chart, question.givens.get("rise")):
            _move(question, "rise", "run")  # 4 ft 2 up and 3 foot along
        if goes and name == "slope" and goes not in question.givens:
            _move(question, "slope", goes)
            return
        before = chart.words[max(0, start - _REACH) : start]
        leans = not level and not goes and (_leans(before) or _of_a_leaner(chart.words, start, end))
        if leans and name == "slope":
            question.swaps = []
        if leans and name != "slope" and "slope" not in question.givens:
            _move(question, name, "slope")


def _told_up(chart: Chart, givens: Mapping[str, Heard]) -> bool:
    """Whether the rise is told as so much up or high, so that what goes across is the other leg: 6 ft across and 4 ft up."""
    rise = givens.get("rise")
    if rise is None or rise.end <= rise.start:
        return False
    return chart.words[places_of(chart, rise)[1] :][:1] in (["up"], ["high"], ["tall"])


def both_legs(chart: Chart, question: Question) -> None:
    """Two lengths told one by the other, of which neither is the brace that is asked for: a brace 2 foot by 2 foot 6."""
    slope, legs = question.givens.get("slope"), [name for name in ("rise", "run") if name in question.givens]
    if slope is None or len(legs) != 1 or slope.end <= slope.start or _ASKS_LONG.isdisjoint(pairwise(chart.words)):
        return
    other = question.givens[legs[0]]
    if other.end <= other.start:
        return
    (_, first), (second, _) = sorted((places_of(chart, slope), places_of(chart, other)))
    if chart.words[first:second] in (["by"], ["×"]):
        _move(question, "slope", "run" if legs[0] == "rise" else "rise")


def run_on_the_flat(chart: Chart, question: Question) -> None:
    """A length told on the flat is the run of a slope, and no rise: 16 ft 4 on the flat by the plan."""
    for name in ("run", "rise"):
        heard = question.givens.get(name)
        end = places_of(chart, heard)[1] if heard is not None and heard.end > heard.start else 0
        if end and _on_the_level(chart.words[end : end + 5]):
            if name == "run":
                question.swaps = []
            elif "run" not in question.givens:
                _move(question, name, "run")


def up_the_roof(chart: Chart, question: Question) -> None:
    """How far up the roof it is, is measured along it; how far up the roof goes is how high."""
    words = chart.words
    for at in range(len(words) - 4):
        if words[at : at + 4] == ["how", "far", "up", "the"] and words[at + 4] in _ALONG:
            after = words[at + 5 : at + 7]
            if not after or after == ["is", "it"] or after[0] in _FROM:
                question.topic = SLOPED


def leans_at(chart: Chart, question: Question) -> None:
    """A number with no unit that something is on or at is its angle, where no name of a side comes after it: on a 45."""
    if "angle" in question.givens:
        return
    words = chart.words
    for name in ("slope", "rise", "run"):
        heard = question.givens.get(name)
        if heard is None or heard.end <= heard.start or not isinstance(heard.value, Length):
            continue
        start, end = places_of(chart, heard)
        lead, value = words[max(0, start - 2) : start], fitting_number(chart, start, end)
        if value is None or not 0 < value < 90 or lead[-1:] != ["a"] or lead[0] not in _ON:
            continue
        if end < len(words) and words[end].isalpha() and words[end] not in _THEN:
            continue
        del question.givens[name]
        question.givens["angle"] = replace(heard, value=Angle(value, "deg", heard.text), others=())
        question.swaps, question.unplaced = [], []
        part = question.givens.get("wanted")
        if part is not None and str(part.value).lower() in question.givens:
            del question.givens["wanted"]
        return


def fitting_number(chart: Chart, start: int, end: int) -> Fraction | None:
    """The number, said without a unit, that is all of these tokens."""
    found = [r.value for r in chart.readings[start] if r.end == end and isinstance(r.value, Number)]
    return found[0].value if found else None


def part_asked(chart: Chart, question: Question) -> None:
    """The part that "how" asks for, where no rule told one: how tall up the wall does it land; of a length and an
    angle the length, which the angle stands beside."""
    if "wanted" in question.givens:
        both = _LENGTH_AND_ANGLE.search(" ".join(chart.words)) is not None
        if both and "slope" not in question.givens and str(question.givens["wanted"].value).upper() == "ANGLE":
            question.givens["wanted"] = replace(question.givens["wanted"], value="SLOPE")
        return
    words = chart.words
    for at in (n for n, word in enumerate(words) if word == "how"):
        part = _part_after([word for word in words[at + 1 : at + 5] if word != "much"])
        if part and part.lower() not in question.givens:
            question.givens["wanted"] = Heard(part, chart.tokens[at].start, chart.tokens[at].end, words[at])
        if part:
            return


def out_and_up(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Two lengths, one told out and one up, of what leans are rise and run and no sum: staked 9 ft out, tied 12 ft up."""
    words = chart.words
    first = next(iter(questions), None)
    if LEANERS.isdisjoint(words) and (first is None or first.topic != LADDER):
        return
    asked = "SLOPE" if _asks_long(words) else "ANGLE" if not _ANGLES.isdisjoint(words) else ""
    ladder = first is not None and first.topic == LADDER and (asked == "ANGLE" or not _ASKS_LONG.isdisjoint(pairwise(words)))
    if (LEANERS.isdisjoint(words) and not ladder) or not _SUMS.isdisjoint(words) or not (asked == "SLOPE" or (asked and ladder)):
        return
    others = {question.topic for question in questions}
    known = first is not None and first.topic == TRIANGLE and first.whole and len(others) < 2
    if known or (first is not None and not ladder and first.topic not in (SUM, TRIANGLE)):
        return
    told = _out_up(chart)
    places = {p.name: p for p in topics[TRIANGLE]}
    heard = {name: heard_as(chart, places[name], reading, True) for name, reading in told.items()}
    if len(heard) == 2 and None not in heard.values():
        wanted = {"wanted": Heard(asked, 0, 0, "")} if asked == "ANGLE" else {}
        questions[:] = [Question(TRIANGLE, {**heard, **wanted}, score=_SCORE, words=["out", "up"])]  # type: ignore[dict-item]


def legs_told(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """How long a thing is along its slope, told by how far it goes up and out and no pitch, is the long side of a triangle."""
    first = next(iter(questions), None)
    if first is not None and first.topic == SLOPED and (apart := _legs_of_pitch(chart, first, topics)):
        questions[0] = Question(TRIANGLE, {**apart, "wanted": Heard("SLOPE", 0, 0, "")}, first.score, words=first.words)
        return
    if first is None or first.topic != SLOPED or first.missing != ["pitch"] or first.unplaced or first.swaps:
        return
    legs = {name: heard for name, heard in first.givens.items() if heard.end > heard.start and isinstance(heard.value, Length)}
    steep = any(r.kind in _STEEP and r.sure >= _SAID for row in chart.readings for r in row)
    if legs.keys() == {"rise", "run"} and not steep:
        questions[0] = Question(TRIANGLE, {**legs, "wanted": Heard("SLOPE", 0, 0, "")}, first.score, words=first.words)


def _legs_of_pitch(chart: Chart, question: Question, topics: Mapping[str, Any]) -> dict[str, Heard]:
    """Rise and run that were read as a pitch, where nothing else tells how long the slope is: up 8 foot 4 and out 11 foot."""
    pitch = question.givens.get("pitch")
    if pitch is None or question.givens.keys() != {"pitch"} or question.unplaced or pitch.end <= pitch.start:
        return {}
    start, end = places_of(chart, pitch)
    sizes = [r for at in range(start, end) for r in chart.readings[at] if r.kind == "length" and r.sure >= _SAID]
    legs = [r for r in sizes if r.start == start or r.end == end]
    place = {p.name: p for p in topics[TRIANGLE]}
    if len(legs) != 2 or legs[0].end > legs[1].start or min(r.value.to("in").value for r in legs) < LEAST_LEG:  # type: ignore[union-attr]
        return {}
    heard = {name: heard_as(chart, place[name], leg, True) for name, leg in zip(("rise", "run"), legs, strict=True)}
    return {} if None in heard.values() else heard  # type: ignore[return-value]


def _move(question: Question, name: str, other: str) -> None:
    question.givens[other] = question.givens.pop(name)
    question.swaps = []
    wanted = question.givens.get("wanted")
    if wanted is not None and str(wanted.value).lower() == other:
        del question.givens["wanted"]


def _goes(after: list[str]) -> str:
    """Which way a length goes by the words right after it, where they tell that it goes up or out and along no slope."""
    if after[:2] == ["along", "the"] and after[2:3] and after[2] in _UPRIGHTS:
        return "rise"  # 48 along the post
    if not after or not _SLOPING.isdisjoint(after[1:]):
        return ""
    return "rise" if after[0] in _UPS | _HIGH else "run" if after[0] in _OUTS else ""


def _lies_along(chart: Chart, heard: Heard | None) -> bool:
    """Whether a length goes along or out by the word right after it."""
    end = places_of(chart, heard)[1] if heard is not None and heard.end > heard.start else 0
    return end > 0 and not _FLAT.isdisjoint(chart.words[end : end + 1])


def _on_the_level(after: list[str]) -> bool:
    """Whether words say that what stood before them lies level: long on the flat; 'on level ground' may be told of no length."""
    said = after[1:] if after[:1] == ["long"] else after
    return said[:1] in (["on"], ["along"]) and said[1:2] == ["the"] and said[2:3] != [] and said[2] in _LEVEL


def _leans(before: list[str]) -> bool:
    """Whether what is measured is what leans: the wire's 50 feet, hypotenuse of the gusset is 41 1/2."""
    back = up_to_stop(before[::-1])
    if back[:1] and back[0] in _LONG_SIDES:
        return True
    return back[:1] in (["is"], ["measures"]) and (
        (back[1:2] != [] and back[1] in _LONG_SIDES)
        or (len(back) > 3 and back[2 + (back[2] == "the")] == "of" and back[3 + (back[2] == "the")] in _LONG_SIDES - LEANERS)
    )


def _of_a_leaner(words: list[str], start: int, end: int) -> bool:
    """Whether a length is that of a thing which leans: a 16 ft plank; the 5 m pole that a rope goes to stands."""
    if words[end : end + 1] == ["pole"] and not _ROPES.isdisjoint(words):
        return False
    return words[max(0, start - 1)] in ("a", "an", "my") and not _PLANKS.isdisjoint(words[end : end + 1])


def _part_after(after: list[str]) -> str:
    """The part that the words after "how" name."""
    if not after:
        return ""
    if after[0] in _HIGH:
        return "RISE"
    if after[0] == "long":
        return "SLOPE"
    if after[0] != "far":
        return ""
    if after[1:2] == ["up"]:
        return "RISE" if _SLOPING.isdisjoint(after[2:]) else "SLOPE"
    return "RUN" if not _OUTS.isdisjoint(after[1:2]) else ""


def _asks_long(words: list[str]) -> bool:
    """Whether it is asked how long what leans is: how long, the length, how much wire."""
    asked = {*pairwise(words)}
    much = any(a == "much" and b in LEANERS for a, b in asked) and ("how", "much") in asked
    return much or "length" in words or not _ASKS_LONG.isdisjoint(asked)


def _out_up(chart: Chart) -> dict[str, Reading]:
    """The rise and run of a line that holds no other quantities; nothing where it holds others."""
    found: dict[str, Reading] = {}
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if isinstance(r.value, Quantity) and r.sure >= 0.5]
        best = max(here, key=lambda r: (r.end, isinstance(r.value, Length)), default=None)
        at = best.end if best else at + 1
        if best is None:
            continue
        way = _way(chart.words, best)
        if not way or way in found or not isinstance(best.value, Length):
            return {}
        found[way] = best
    return found


def _way(words: list[str], length: Reading) -> str:
    """Which way a length goes, by the words right after it, or else right before."""
    after = words[length.end : length.end + 3]
    if (after[:1] == ["off"] and not _LEVEL.isdisjoint(after[1:])) or not _HIGH.isdisjoint(after[:1]):
        return "rise"
    if after[:1] == ["from"] and not _FEET.isdisjoint(after[1:]):
        return "run"  # a stake 12 feet from the foot
    before = [word for word in words[max(0, length.start - 3) : length.start] if word not in _LEAD][-1:]
    for near in (after[:1], before):
        if near and (near[0] in _UPS or (near is before and near[0] in _TOUCHES)):
            return "rise"
        if near and near[0] in _OUTS:
            return "run"
    return ""
