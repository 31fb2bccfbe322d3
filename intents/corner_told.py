"""Angles that words tell to be no corner and no roof: what a piece is cut at, a turn in so many joints."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question
from intents.second_reader import places_of

_SET = frozenset("cut cuts set dialed dialled".split())
_AT = frozenset(("at", "to", "on"))
_SAW = frozenset("the my saw blade it miter mitre".split())  # set the saw at 30
_WHATS = frozenset("what what's whats which".split())
_CORNERS = frozenset("corner corners angle inside outside cnr bend turn".split())
_SIDES = frozenset(("inside", "outside"))
_ROOFS = frozenset(  # one of these is in what asks for a pitch
    "pitch pitches pitched pich roof roofs rafter rafters twelve twelfths twelfs 12 slope slopes sloped rise rises inches inch"
    " foot ft rake rakes gable barge steep percent grade".split()
)


def _asks_corner(words: list[str]) -> bool:
    """Whether it is the corner that is asked for: the miter's 44.5, what's the corner."""
    after = [*words[1:], "?"]
    ends = [at for at, word in enumerate(words) if word == "corner" and after[at] in ("?", ".", "then")]
    return any(not _WHATS.isdisjoint(words[max(0, at - 3) : at]) for at in ends)


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
