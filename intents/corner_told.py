"""Angles that words tell to be no corner and no roof: what a piece is cut at, a turn in so many joints."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart, quantities
from intents.from_square import LESS, MORE
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Angle, Number, Quantity

_SET = frozenset("cut cuts set dialed dialled".split())
_AT = frozenset(("at", "to", "on"))
_SAW = frozenset("the my saw blade it miter mitre".split())  # set the saw at 30
_WHATS = frozenset("what what's whats which".split())
_CORNERS = frozenset("corner corners angle inside outside cnr bend turn".split())
_SIDES = frozenset(("inside", "outside"))
_SHARPEST, STRAIGHT = 30, 180  # degrees; of a corner of trim
MITER, SAW, FURTHEST = "miter for a corner", "can my saw cut it", 60  # degrees; no saw is swung further
_SCORE = 3.0  # of a reading that only these words make
_SETTINGS = frozenset("saw setting settings miter mitre miters cutting blade".split())
_PIECES = frozenset("each both two saw".split())
_IS = frozenset("is at of a reads measures , =".split())
_DEGREES = frozenset("degree degrees deg ° on the".split())
_SET_WHAT = frozenset(("what", do, i, verb) for do in ("do", "would", "should") for i in ("i", "you") for verb in ("set", "dial"))
_MAKES = frozenset(("makes", "make", "gives"))
_TURNS, _BY = frozenset("turn turns turned turning bend bends bent".split()), frozenset("by about a an is of out".split())
SQUARE, _OFF_MOST, SUM = 90, 15, "tape arithmetic"
_ITS = frozenset("its my along across of a".split())
_ROOFS = frozenset(  # one of these is in what asks for a pitch
    "pitch pitches pitched pich roof roofs rafter rafters twelve twelfths twelfs 12 slope slopes sloped rise rises inches inch"
    " foot ft rake rakes gable barge steep percent grade".split()
)


def _asks_corner(words: list[str]) -> bool:
    """Whether it is the corner that is asked for: the miter's 44.5, what's the corner."""
    after = [*words[1:], "?", "?"]
    last = ("?", ".", "then")
    corners = [at for at, word in enumerate(words) if word == "corner"]
    ends = [at for at in corners if after[at] in last or (after[at] == "angle" and after[at + 1] in last)]
    return any(not _WHATS.isdisjoint(words[max(0, at - 3) : at]) or words[at - 1 : at] == [","] for at in ends)


def no_corner(chart: Chart, question: Question) -> bool:
    """Whether the one angle of a question is no corner (each piece is cut 31, corner?) or no roof (a turn in two joints)."""
    words = chart.words
    if question.topic == "pitch of an angle":
        return _ROOFS.isdisjoint(words)
    if question.topic == "corner in several pieces":
        pieces = question.givens.get("parts")
        at = places_of(chart, pieces)[1] if pieces is not None and pieces.end > pieces.start else 0
        return bool(at) and words[at : at + 1] == ["joints"]  # a turn in two joints is in three pieces, or in two
    corner = question.givens.get("corner") if question.topic == "miter for a corner" else None
    if corner is None or corner.end <= corner.start:
        return False
    start, end = places_of(chart, corner)
    if _asks_corner(words[end:]) and (_CORNERS - _SIDES).isdisjoint(words[max(0, start - 2) : start]):
        return True
    at = start - 1
    while at >= 0 and words[at] in _AT | _SAW:
        at -= 1
    return at >= 0 and words[at] in _SET and _CORNERS.isdisjoint(words[end : end + 1]) and _CORNERS.isdisjoint(words[start:end])


def setting_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """What both pieces are cut at is no corner, where it is the corner that is asked for: both cut at 40, what corner."""
    words = chart.words
    if "corner" not in words or words.count("corner") > 1:
        return
    for question in questions:
        heard = next((h for h in question.givens.values() if isinstance(h.value, Angle) and h.end > h.start), None)
        if question.topic != MITER or heard is None or len(question.givens) > 1 or heard.value.value >= FURTHEST:
            continue
        start, end = places_of(chart, heard)
        named = [word for word in words[end : end + 3] if word not in _DEGREES][:1]
        at = words.index("corner")
        told = at < start and all(word in _IS for word in words[at + 1 : start])
        if _CORNERS.isdisjoint(named) and not told and (_makes_corner(words, at) or not _SETTINGS.isdisjoint(named)):
            given = {"turn": heard, "told": Heard("SETTING", heard.start, heard.end, heard.text)}
            questions[:] = [Question(MITER, given, _SCORE, words=["corner"])]
            return


def corner_by_square(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """An angle told by how far it is from square is a corner, and no setting: three degrees shy of square, miter it to what."""
    for question in questions:
        setting = question.givens.get("setting") if question.topic == SAW and len(question.givens) == 1 else None
        told = chart.words[slice(*places_of(chart, setting))] if setting is not None and setting.end > setting.start else []
        if setting is not None and told[-1:] and told[-1] in ("square", "ninety", "90") and len(told) > 1:
            question.topic, question.givens, question.missing = MITER, {"corner": setting}, []


def to_each_other(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """What two things stand at to each other is the corner between them, and nothing is so many times that."""
    words = chart.words
    first = next(iter(questions), None)
    if "other" not in words or (first is not None and first.whole and first.topic not in (MITER, "tape arithmetic", "cost")):
        return
    said = [r for row in chart.readings for r in row if r.kind in ("number", "angle")]
    said = [r for r in said if words[r.end : r.end + 3] == ["to", "each", "other"]]
    said = [r for r in said if isinstance(r.value, Quantity) and _SHARPEST <= r.value.value < STRAIGHT]
    place = next(p for p in topics[MITER] if p.name == "corner")
    heard = heard_as(chart, place, max(said, key=lambda r: (r.end - r.start, r.kind == "angle")), True) if said else None
    if heard is not None:
        questions[:] = [Question(MITER, {"corner": heard}, _SCORE, words=["corner"])]


def out_by(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """So many degrees that a corner is fat or tight by are no turn of it, but how far from square it is."""
    for question in questions:
        turn = question.givens.get("turn") if question.topic == MITER and len(question.givens) == 1 else None
        if turn is None or turn.end <= turn.start or turn.value.value >= _OFF_MOST or not _TURNS.isdisjoint(chart.words):
            continue
        start = places_of(chart, turn)[0]
        before = [word for word in chart.words[max(0, start - 4) : start] if word not in _BY]
        way = 1 if before[-1:] and before[-1] in MORE else -1 if before[-1:] and before[-1] in LESS else 0
        if way:
            question.givens = {"corner": replace(turn, value=Angle(SQUARE + way * turn.value.value, "deg", turn.text), others=())}


def parts_of_corner(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Two settings put together tell a corner, and no length: 22.5 and 22.5 makes what corner."""
    first = next(iter(questions), None)
    words = chart.words
    if first is None or first.topic != SUM or "corner" not in words or not _makes_corner(words, words.index("corner")):
        return
    said = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Number | Angle)]
    if len(said) == 2 and said[0].value.value == said[1].value.value < FURTHEST:  # type: ignore[union-attr]
        place = place_of(chart, said[0].start, said[0].end)
        turn = Heard(Angle(said[0].value.value, "deg", place[2]), *place)  # type: ignore[union-attr]
        questions[:] = [Question(MITER, {"turn": turn, "told": Heard("SETTING", *place)}, _SCORE, words=["corner"])]
    elif len(said) == 2 and all(isinstance(r.value, Number) for r in said):
        questions[:] = []


def how_set(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """What to set, of a cut and what the saw goes to, is how it is cut: the stop's 47, got to do 58, what do I set."""
    if all(question.topic != SAW for question in questions):
        return
    if not any(words in _SET_WHAT for words in zip(chart.words, chart.words[1:], chart.words[2:], chart.words[3:], strict=False)):
        return
    for question in questions:
        if question.topic == SAW and {"setting", "limit"} == question.givens.keys():
            question.givens["asked"] = Heard("HOW", 0, 0, "")


def edge_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """What a bevel gauge reads on the edge of a piece is no corner: it reads 67 1/2 on the edge, what's that on the saw."""
    words = chart.words
    if "edge" not in words or _SETTINGS.isdisjoint(words):
        return
    for question in questions:
        corner = question.givens.get({MITER: "corner", "polygon": "sides"}.get(question.topic, "setting"))
        if corner is None or len(question.givens) > 1 or corner.end <= corner.start:
            continue
        start, end = places_of(chart, corner)
        before = [word for word in words[max(0, start - 4) : start] if word not in _IS]
        after = [word for word in words[end : end + 4] if word not in _DEGREES | _ITS]
        named = before[-2:] in (["edge", "angle"], ["edge", "angles"]) or before[-1:] == ["edge"]
        if named or after[:1] == ["edge"]:
            corner = replace(corner, value=Angle(corner.value.value, "deg", corner.text), others=())
            told = Heard("EDGE", corner.start, corner.end, corner.text)
            question.topic, question.givens = MITER, {"turn": corner, "told": told}
            question.swaps, question.missing, question.lacking = [], [], 0


def _makes_corner(words: list[str], at: int) -> bool:
    """Whether the corner is what comes of a cut: what corner, and a word of the saw."""
    asked = not _WHATS.isdisjoint(words[max(0, at - 3) : at]) or words[at + 1 :] in ([], ["?"])
    return asked and not (_SET | _SETTINGS | _PIECES | _MAKES).isdisjoint(words)
