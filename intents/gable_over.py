"""The wall under a gable: in "24 ft wide, 9 ft to the eave, 6/12 over it" the nine feet are the wall's, not the gable's.

A height beside a pitch, that words tell to be of the wall, goes to the wall; a gable of a width, a height and a pitch is then
a wall with a gable over it, or the gable alone where that is what is asked.
"""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart
from intents.question import Heard, Question
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from solvers.quantities import Length

FACES = frozenset(("squares", "cladding boards", "weight", "cost"))
_PLATE = frozenset("eave eaves eve eves plate plates soffit soffits walls overhang overhangs".split())  # how high a wall is
_UP = frozenset("up high tall".split())  # may be of either
_PEAK = frozenset("peak peaks apex ridge point tip triangle rise rises".split())
_OVER = frozenset("over top above plus including".split())  # a gable so told stands on the wall whose height was said
_ALONE = frozenset("triangle alone only just".split())
_WHOLE = frozenset("wall walls all lot total whole end plus together including".split()) | _OVER
_WALLED = frozenset("wall walls all lot total whole plus together including".split())
_FULL = frozenset("end ends side sides face faces elevation".split())  # of a gable, down to the ground
_NOT = frozenset("not no without except excluding ignore ignoring never don't dont leave forget".split())
_COUNTS, _ARTICLES = frozenset("count counting include including".split()), frozenset("the a that any no out".split())
_WALLS = {"width": "length", "height": "height", "openings": "openings"}
_REACH = 4


def gable_over(chart: Chart, question: Question) -> None:
    """Give a height to the wall under a gable, where the words beside it tell that it is the wall's."""
    if question.topic == "wall area":
        _triangle_alone(chart, question)
        return
    if question.topic == "gable area" and _left_out(chart.words) and {"width", "height"} <= question.givens.keys():
        question.topic, question.swaps = "wall area", []
        question.givens = {_WALLS[n]: heard for n, heard in question.givens.items() if n in _WALLS}
        return
    if question.topic == "gable height" and question.swaps:  # no wall is told of a gable whose width is not
        question.swaps = [swap for swap in question.swaps if "width" in swap]
    name, givens = "height" if question.topic == "gable area" else "gable_height", question.givens
    heard = givens.get(name)
    if heard is None or "pitch" not in givens or not isinstance(heard.value, Length) or not _of_wall(chart, heard):
        return
    if question.topic in FACES and "wall_height" not in givens and "wall_length" in givens:
        givens["wall_height"] = givens.pop(name)
    elif question.topic == "gable area" and "count" not in givens:
        _of_gable(chart, question)


def _of_gable(chart: Chart, question: Question) -> None:
    """A gable's area is asked, of which the width, the pitch, and the height of the wall under it were said."""
    givens = question.givens
    if not _ALONE.isdisjoint(chart.words):
        del givens["height"]
    elif not _WHOLE.isdisjoint(chart.words):
        question.topic, question.swaps, question.lacking = "wall area", [], 0
        openings = {name: heard for name, heard in givens.items() if name == "openings"}
        question.givens = {"length": givens["width"], "height": givens["height"], "pitch": givens["pitch"], **openings}
    else:
        question.lacking = 1


def _left_out(words: list[str]) -> bool:
    """Whether the words say that no gable is meant: we do not count the gable, without the gable."""
    at = next((at for at, word in enumerate(words) if word == "gable"), -1)
    before = words[max(0, at - _REACH) : at] if at >= 0 else []
    return not _NOT.isdisjoint(before) and not (_COUNTS | _ARTICLES).isdisjoint(before[-2:])


def _triangle_alone(chart: Chart, question: Question) -> None:
    """Take what was read as a wall for the gable that it was called: a gable 30 foot wide 10 foot high less a window."""
    givens, words = question.givens, chart.words
    first = min((places_of(chart, heard)[0] for heard in givens.values() if heard.end > heard.start), default=0)
    named = [after for word, after in pairwise((*words[:first], "")) if word == "gable"]  # of which sizes are then told
    if not named or not (_WALLED | _OVER | _PLATE).isdisjoint(words) or question.swaps:
        return
    tall = givens.keys() & {"height", "pitch"}
    if len(tall) != 1 or givens.keys() - tall - {"openings"} != {"length"}:
        return
    if "height" in tall and not _FULL.isdisjoint(named):
        question.lacking = question.lacking or 1  # the triangle of a gable end, or all of it
    else:
        question.topic, question.lacking = "gable area", 0
        question.givens = {"width" if name == "length" else name: heard for name, heard in givens.items()}


def _of_wall(chart: Chart, heard: Heard) -> bool:
    words, (start, end) = chart.words, places_of(chart, heard)
    after = up_to_stop(words[end : end + _REACH])
    before = up_to_stop(words[max(0, start - _REACH) : start][::-1])
    if not _PEAK.isdisjoint(after + before):
        return False
    if not _PLATE.isdisjoint(after):
        return True
    by_itself = "gable" not in before and "gables" not in before
    return by_itself and not _UP.isdisjoint(after + before) and not _OVER.isdisjoint(words)
