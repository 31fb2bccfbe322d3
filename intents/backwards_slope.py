"""A slope asked backwards: its run by what it rises or by its rafter, its rise by the rafter, and twice the run where a width is.

"The rise is 5 foot at 7/12, what run", "how far in to get 3 foot of rise", "16 foot rafter at 4/12, what's the run", "the rake's
15 foot, how tall is the gable": the one length is told by the words beside it to be none of what is asked.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise
from typing import Any

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Length

RISE, PITCH, TRIANGLE, SLOPED = "rise over a run", "pitch from rise and run", "right triangle", "sloped length"
_TOPICS = frozenset((RISE, SLOPED, "rake length", "gable height"))
_RISES = frozenset("rise rises rising climb climbs".split())
_HIGH = frozenset("tall high".split())  # after a length only, and of the gable or peak
_RAFTERS = frozenset("rafter rafters rake rakes".split())
_SLOPES = frozenset("slope sloped rafter rake".split())
_IS = frozenset("is was are be being a an at : = by of".split())
_LONG = frozenset(("long", "length"))
_RUNS, _SPANS = frozenset(("run", "runs")), frozenset(("span", "spans", "width"))
_LEVEL = _RUNS | _SPANS | frozenset("wide gable building across overhang wall out".split())
_INWARD = frozenset("in out back".split())
_HEIGHTS = frozenset("rise rises height".split())
_OVER = frozenset("for over on across with from".split())
_ASKS = frozenset("how what whats which need find".split())
_SCORE = 3.0  # of a reading that only these words make


def backwards_slope(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Ask for what is asked, where a length was taken for that very thing."""
    for question in questions:
        if question.topic not in _TOPICS or question.unplaced or question.left:
            continue
        lengths = [h for h in question.givens.values() if h.end > h.start and isinstance(h.value, Length)]
        told = _told(chart, lengths[0]) if len(lengths) == 1 else ""
        asked = _asked(chart.words, told) if told else ""
        if asked:
            pitch = {name: heard for name, heard in question.givens.items() if name == "pitch"}
            given = {**pitch, "run": lengths[0], "across": Heard(told, *_place(lengths[0]))}
            if asked != "RISE":
                given["asked"] = Heard(asked, 0, 0, "")
            questions[:] = [Question(RISE, given, _SCORE, words=question.words, manner=question.manner)]
            questions[0].missing = [] if pitch else ["pitch"]
            return


def rafter_and_run(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """A rafter told beside its run or rise, for a pitch: "the rafter's 15 foot and the run's 13, what pitch"."""
    for question in questions:
        lengths = [h for h in question.givens.values() if h.end > h.start and isinstance(h.value, Length)]
        if question.topic == PITCH and _rafter_for_rise(chart, question):
            continue
        lacks = question.topic == SLOPED and question.missing == ["pitch"]  # which is what is asked
        asks = question.topic == PITCH or ((lacks or question.topic == TRIANGLE) and "pitch" in chart.words)
        if not asks or len(lengths) != 2 or "across" in question.givens or question.left or question.unplaced:
            continue
        named = [_named(chart, heard, before=True) for heard in lengths]
        if "" in named:
            named = [_named(chart, heard, before=False) for heard in lengths]
        told = dict(zip(named, _alike(chart, lengths), strict=True))
        if "RAFTER" not in told or not {"RUN", "RISE"} & told.keys():
            continue
        rafter = told["RAFTER"]
        given = {"rise": told.get("RISE", rafter), "run": told.get("RUN", rafter)}
        given["rise_as" if "RUN" in told else "across"] = Heard("RAFTER", *_place(rafter))
        question.topic, question.givens, question.missing, question.swaps, question.rival = PITCH, given, [], [], False


def _rafter_for_rise(chart: Chart, question: Question) -> bool:
    """Whether a rafter beside the width of a building was taken for what it rises: 20 foot wide, 12 foot rafters, what pitch."""
    rise, run = question.givens.get("rise"), question.givens.get("run")
    if rise is None or run is None or rise.end <= rise.start or "rise_as" in question.givens:
        return False
    start, end = places_of(chart, rise)
    near = [*[word for word in chart.words[max(0, start - 3) : start] if word not in _IS][-1:], *chart.words[end : end + 1]]
    if _RAFTERS.isdisjoint(near) or _named(chart, run, before=True):
        return False
    question.givens["rise_as"], question.swaps, question.lacking = Heard("RAFTER", *_place(rise)), [], 0
    return True


def slope_for(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """A length the slope is asked for is its run: "what's the slope length for 16 foot 6 with 4 foot 4 of rise"."""
    for question in questions:
        long, rise = question.givens.get("slope") or question.givens.get("run"), question.givens.get("rise")
        if question.topic != TRIANGLE or long is None or rise is None or question.left or not _wants_slope(question):
            continue
        start = places_of(chart, long)[0]
        before = [word for word in chart.words[max(0, start - 6) : start] if word not in ("a", "an", "the")]
        asked = [word for word in before[:-1] if word not in _LONG]
        if before[-1:] and before[-1] in _OVER and asked[-1:] and asked[-1] in _SLOPES:
            kept = {name: heard for name, heard in question.givens.items() if name != "slope"}
            question.givens = kept | {"run": long, "wanted": Heard("SLOPE", long.start, long.start, "")}
            question.swaps, question.rival, question.lacking = [], False, 0


def _wants_slope(question: Question) -> bool:
    """Whether of two parts of a triangle the slope may be asked for, no other part being."""
    wanted = question.givens.get("wanted")
    return len(question.givens.keys() - {"wanted"}) == 2 and (wanted is None or str(wanted.value).upper() == "SLOPE")


def _alike(chart: Chart, lengths: list[Heard]) -> list[Heard]:
    """The lengths, a bare number in the unit of the other."""
    bare = []
    for start, end in [places_of(chart, heard) for heard in lengths]:
        bare.append(any(reading.kind == "number" and reading.end == end for reading in chart.readings[start]))
    units = {heard.value.unit for heard, is_bare in zip(lengths, bare, strict=True) if not is_bare}
    if len(units) != 1:
        return lengths
    unit = units.pop()
    both = zip(lengths, bare, strict=True)
    return [replace(h, value=Length(h.value.value, unit)) if is_bare else h for h, is_bare in both]


def _named(chart: Chart, length: Heard, before: bool) -> str:
    """What the word before a length, or the one after it, calls it: RISE, RUN, RAFTER, or nothing of these."""
    start, end = places_of(chart, length)
    words = chart.words
    at = start
    while at and words[at - 1] in _IS | _LONG:
        at -= 1
    near = words[at - 1 : at] if before else [word for word in words[end : end + 3] if word not in _IS | _LONG][:1]
    for name, called in (("RISE", _RISES), ("RUN", _RUNS), ("RAFTER", _RAFTERS | {"slope"})):
        if not called.isdisjoint(near):
            return name
    return ""


def _place(heard: Heard) -> tuple[int, int, str]:
    return heard.start, heard.end, heard.text


def _told(chart: Chart, length: Heard) -> str:
    """What the words right beside a length say it is: RISE, RAFTER, or nothing of these."""
    start, end = places_of(chart, length)
    words = chart.words
    at = start
    while at and words[at - 1] in _IS:
        at -= 1
    before = words[max(0, at - 2) : at]
    after = [word for word in words[end : end + 3] if word not in ("of", "common", "the", "long")]
    of_rafter = at < start and not _RAFTERS.isdisjoint(after[:1]) and after[1:2] != ["length"]  # the run of a 16 foot rafter
    if not _LEVEL.isdisjoint(after[:1]) or (not of_rafter and not (_RUNS | _SPANS).isdisjoint(before[-1:])):
        return ""
    if after and after[0] in _RISES | _RAFTERS | {"slope"}:
        return "RISE" if after[0] in _RISES else "RAFTER"
    if after[:2] in (["up", "slope"], ["along", "slope"], ["up", "roof"], ["on", "slope"]):
        return "RAFTER"
    if after and after[0] in _HIGH:
        return "RISE" if {"gable", "peak", "ridge"} & {*words[max(0, start - 3) : start]} else ""
    if (len(before) == 2 and before[1] in _LONG and before[0] in _SLOPES) or (before and before[-1] in _RAFTERS | {"slope"}):
        return "RAFTER"
    return "RISE" if before and before[-1] in _RISES else ""


def _asked(words: list[str], told: str) -> str:
    """What is asked, where the words leave one thing; RUN, SPAN, RISE."""
    pairs = {*pairwise(words)}
    found = set()
    if not _RUNS.isdisjoint(words) or any(a == "far" and b in _INWARD for a, b in pairs):
        found.add("RUN")
    if ("how", "wide") in pairs or any(a in _ASKS and b in _SPANS for a, b in _near(words)):
        found.add("SPAN")
    high = any(pair in pairs for pair in (("how", "high"), ("how", "tall"))) or not _HEIGHTS.isdisjoint(words)
    if told == "RAFTER" and high:
        found.add("RISE")
    return found.pop() if len(found) == 1 and not _ASKS_LONG & pairs else ""


_ASKS_LONG = {("how", "long"), ("what", "length")}


def _near(words: list[str]) -> list[tuple[str, str]]:
    """Each word with those up to three further on: what is the span."""
    return [(a, b) for at, a in enumerate(words) for b in words[at + 1 : at + 4]]
