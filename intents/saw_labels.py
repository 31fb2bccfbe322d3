"""What each number of a saw is where its name stands right before it: "bevel 38 but tilts to 45, miter 54, limit 48".

Names said before numbers may be taken for those of the number before; where every number of the sentence is led by a name,
the names go with what follows them, and a limit goes with what it limits.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.only_way import sides_of_the_saw
from intents.placing import heard_as
from intents.question import Question
from intents.reading import Reading
from intents.remarks import ASKING, ENDS
from intents.second_reader import places_of
from solvers.quantities import Angle
from solvers.slots import Parameter

SAW = "can my saw cut it"
_TILTS = frozenset("tilts tilt leans".split())
_SWINGS = frozenset("swings swing turns".split())
_NAMES = (
    dict.fromkeys("miter mitre mitres miters setting".split(), "setting")
    | dict.fromkeys(("bevel", "bevels"), "bevel")
    | dict.fromkeys("limit limits stops stop max swings turns goes maxes tilts tilt leans".split(), "limit")
)
_WAYS = frozenset(("way", "side", "direction"))
_STOPS = frozenset("limit limits stop stops max maxes".split())
_REACHES = frozenset("swing get go reach turn move".split())
_BETWEEN = frozenset("to at is of out only by : deg °".split())
_LEAST = 3  # numbers; two alone have rules of their own
_REACH = 3


def saw_labels(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Hand the angles of a saw to what their names tell, where every one is led by its name."""
    question = next(iter(questions), None)
    if question is None or question.topic != SAW:
        return
    if reach_put_right(chart, question) or one_way_and_other(chart, question, topics):
        return
    sides_of_the_saw(chart, question)
    _either_side(chart, question)
    named_before(chart, question, topics)


def named_before(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Hand the angles to the names that stand right before them, where each has one: miter is 40 bevel is 30."""
    told = _told(chart)
    parameters = {p.name: p for p in topics[SAW]}
    heard = {name: heard_as(chart, parameters[name], reading, True) for name, reading in told.items()}
    given = {name: angle for name, angle in heard.items() if angle is not None}
    if len(given) < max(_LEAST, len(told)) or not {"setting", "limit"} <= given.keys():
        return
    kept = {name: h for name, h in question.givens.items() if name in ("asked", "tilt")}
    question.givens, question.swaps, question.missing, question.unplaced = kept | given, [], [], []


def _either_side(chart: Chart, question: Question) -> None:
    """One number of both sides: it stops at 50 left and right."""
    words = chart.words
    at = next((at for at in range(len(words) - 2) if words[at] == "left" and words[at + 1] in ("and", "&", "or")), -1)
    if at < 0 or words[at + 2] != "right" or (words[at + 3 : at + 4] and words[at + 3][:1].isdecimal()):
        return
    one = question.givens.get("left")
    if one is not None and question.givens.keys().isdisjoint(("right", "limit")):
        question.givens = {name: heard for name, heard in question.givens.items() if name != "left"} | {"limit": one}
        question.missing = [name for name in question.missing if name != "right"]


def one_way_and_other(chart: Chart, question: Question, topics: Mapping[str, tuple[Parameter, ...]]) -> bool:
    """Whether how far it goes one way and the other is told, not which: only a setting between the two needs to know that."""
    words = chart.words
    at = next((at for at in range(len(words) - 1) if words[at] == "one" and words[at + 1] in _WAYS), None)
    if at is None or words[at + 2 : at + 3] == ["or"]:  # one way or another
        return False
    other = words.index("other", at) if "other" in words[at:] else None
    angles = (max((r for r in row if r.kind in ("angle", "number")), key=lambda r: r.end, default=None) for row in chart.readings)
    found = [r for r in angles if r is not None and r.start != at]
    of_one, of_other = _last_before(found, at), _last_before(found, other)
    rest = [r for r in found if r is not of_one and r is not of_other]
    parameters = {p.name: p for p in topics[SAW]}
    if of_one is None or of_one is of_other or len(rest) != 1 or (other is not None and of_other is None):
        return False
    heard = [heard_as(chart, parameters["limit"], r, True) for r in (of_one, of_other) if r is not None]
    setting, limits = heard_as(chart, parameters["setting"], rest[0], True), [h for h in heard if h is not None]
    if setting is None or len(limits) != len(heard):
        return False
    asked = {name: heard for name, heard in question.givens.items() if name == "asked" and "way" not in heard.text}
    question.givens, question.swaps, question.unplaced, question.missing = asked | {"setting": setting}, [], [], []
    question.lacking = 0 if len(limits) > 1 else question.lacking  # nothing is open where both sides are told
    limits.sort(key=lambda limit: limit.value.value)
    least, most = limits[0], limits[-1]
    if setting.value.value <= least.value.value:
        question.givens["limit"] = least
    elif len(limits) == 2 and setting.value.value > most.value.value:
        question.givens["limit"] = most
    else:  # how far it goes to the side that was not named is asked
        question.givens["right"] = most
    return True


def _last_before(found: list[Reading], at: int | None) -> Reading | None:
    """The quantity that stands right before a place, with a word or two between."""
    near = [r for r in found if at is not None and r.end <= at < r.end + _REACH]
    return near[-1] if near else None


def reach_put_right(chart: Chart, question: Question) -> bool:
    """Whether its limit and its setting were each taken for the other, and now are not: will it swing to 58, it stops at 52."""
    if not _asked_to_reach(chart, question):
        return False
    setting, limit = question.givens["setting"], question.givens["limit"]
    question.givens, question.swaps = {**question.givens, "setting": limit, "limit": setting}, []
    return True


def _asked_to_reach(chart: Chart, question: Question) -> bool:
    """Whether it is asked to swing to what was taken for its limit, and stops at what was taken for the setting."""
    setting, limit = question.givens.get("setting"), question.givens.get("limit")
    if setting is None or limit is None or _before(chart.words, places_of(chart, setting)[0]) not in _STOPS:
        return False
    start = places_of(chart, limit)[0]
    begins = max((at + 1 for at in range(start) if chart.words[at] in ENDS), default=0)
    return chart.words[begins] in ASKING and _before(chart.words, start) in _REACHES


def _told(chart: Chart) -> dict[str, Reading]:
    """The angles by the name before each; none where one has no name, or two have the same."""
    found: dict[str, Reading] = {}
    of = "setting"
    for reading in quantities(chart, 0, len(chart.words)):
        if not isinstance(reading.value, Angle) and reading.kind != "number":
            continue
        if reading.kind == "number" and chart.words[reading.end : reading.end + 1] in (["in"], ["inch"]):
            continue  # 12 in blade
        name = _name_before(chart.words, reading.start)
        if name in ("setting", "bevel"):
            of = name
        by = _before(chart.words, reading.start)
        limit = "bevel_limit" if by in _TILTS or (of == "bevel" and by not in _SWINGS) else "limit"
        role = limit if name == "limit" else name
        if not role or role in found:
            return {}
        found[role] = reading
    return found


def _before(words: list[str], start: int) -> str:
    at = start - 1
    while at >= 0 and words[at] in _BETWEEN and start - at <= _REACH:
        at -= 1
    return words[at] if at >= 0 else ""


def _name_before(words: list[str], start: int) -> str:
    return _NAMES.get(_before(words, start), "")
