"""What was measured where a run is wanted: a span, the width of the house, what it rises, or the common rafter itself.

"Hip on a 24 foot wide building" tells twice the run; "it rises 7 foot, how long is the hip" tells none. A quantity that the words
beside it tell to be one of those is still the one length the topic takes, and the topic makes the run of it. Where the words
may mean either (how wide a shed is, whose roof may fall one way), both ways go on and the conversation asks.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise, product

from intents.chart import Chart
from intents.only_way import asks_how_high
from intents.question import Heard, Question
from intents.remarks import STOPS
from intents.second_reader import places_of
from intents.shares import WHOLES
from solvers.quantities import Length

HIP, SLOPED, RISE, PITCH = "hip or valley length", "sloped length", "rise over a run", "pitch from rise and run"
RAKE, GABLE = "rake length", "gable height"
SURE_PITCH = 0.95
LEAST_PITCH, MOST_PITCH = 1.5, 24  # of a roof whose pitch somebody measures, rise in 12
TOPICS = {HIP: "run", SLOPED: "run", RISE: "run", PITCH: "run", RAKE: "width", GABLE: "width"}  # and the length each takes
_SPANS = frozenset("span spans spanning".split())
_ARTICLES = frozenset("a an the on at".split())
_IS = (["is"], ["'s"], ["it's"], ["its"], ["was"])
_RIDGES = frozenset("ridge peak apex middle centre center".split())
_ROOFS = frozenset(("roof", "place", "gable's"))
_WIDE = frozenset("wide width across overall".split())
_BUILDINGS = frozenset(
    "building buildings building's house house's cabin boathouse barn gable gable's gables roof workshop hall bungalow cottage"
    " home place wing boatshed".split()
)
_EITHER = frozenset("shed garage extension addition outbuilding garage's shed's".split())  # its roof may fall one way
_ONE_WAY = frozenset(
    "lean lean-to leanto skillion porch verandah veranda awning canopy monopitch mono pent dormer carport deck monoslope bay"
    " ramp".split()
)
_ONE_SLOPE = frozenset(product(("one", "single"), ("slope", "way", "pitch")))
_ONE_SIDE = frozenset((("one", "side"), ("single", "side")))  # of a rake that is asked for one side, it tells nothing
_SURELY_ONE = frozenset("lean lean-to leanto skillion monopitch mono pent monoslope".split())
_HALF = 6  # words before a length in which it is said to be of half the building
_ONES = frozenset(("run", "runs", "half"))
_GABLES = _BUILDINGS | _WIDE | _SPANS
_RUNS = frozenset("run runs running half level out eave eaves plate wall from in back ridge each every per horizontally".split())
_RISES = frozenset("rise rises rising climbs height up high higher above tall vertical".split())
_SLOPES = frozenset(("slope", "rafter", "roof", "deck"))  # 16 ft of slope, 16 ft up the roof
LEAST_WIDE, MOST_WIDE = 6, 90  # ft, of a building
_HIPS = frozenset("hip hips valley valleys".split())
_RAFTERS = frozenset("rafter rafters commons".split())
_LONG, _ALONG = frozenset("long length lengths".split()), ("up", "along")  # what do I get going up along it
_NAMES = {"RUN": frozenset(("run", "runs")), "GABLE": _WIDE | _SPANS | {"building"}, "RAFTER": _RAFTERS}
_PEAKED = frozenset("gable gables gabled ridge peak apex both hip hips".split())
_DECKS = frozenset("deck porch patio slab floor balcony carport".split())
_LEAST_WIDE, _MOST_WIDE, _LEAST_ROOF = 5, 60, 12  # ft
_PEAKS = frozenset("peak ridge middle centre center apex".split())
_STOPS = STOPS | {":"}
_BEFORE, _AFTER = 6, 3


def run_told(chart: Chart, question: Question) -> None:
    """Say what was measured where the words beside a run tell that it is none."""
    if question.topic == SLOPED and "rise" not in question.givens and _asks_the_rise(chart.words):
        question.topic = RISE
    elif question.topic == RISE and question.givens.keys() == {"pitch", "run"} and _ALONG in pairwise(chart.words):
        question.topic = SLOPED
    name = TOPICS.get(question.topic, "")
    run = question.givens.get(name)
    if not name or run is None or not isinstance(run.value, Length) or run.end <= run.start:
        return
    if "across" in question.givens and question.givens["across"].value == "GABLE":
        question.givens[name] = _building(run)
    elif question.topic == PITCH:
        run = _turned(chart, question, run)
    tell = _told if name == "run" else _width_told
    ways = tell(chart, question, run) if "across" not in question.givens else []
    if ways:
        givens = {name: heard for name, heard in question.givens.items() if name != "rise" or heard != run}
        if ways == ["GABLE"] and name == "run":
            givens[name] = _building(run)
        made = [givens | {"across": Heard(way, run.start, run.end, run.text)} for way in ways]
        question.givens, question.swaps = made[0], made[1:]
    if _falls_one_way(chart.words) and "across" in question.givens and question.givens["across"].value == "GABLE":
        question.givens = {each: heard for each, heard in question.givens.items() if each != "across"}
        question.swaps = []
    if question.topic == PITCH:
        question.givens = _in_feet(_wide_in_feet(chart, question.givens))
        question.lacking = question.lacking or int(_pitch_said(chart, question))


def _falls_one_way(words: list[str]) -> bool:
    """Whether a roof is as high at the back as nowhere else: a shed roof, 7 ft at the front and 9 at the back."""
    one_way = ("shed", "roof") in pairwise(words) or {"back", "front"} <= {*words}
    return one_way and _PEAKED.isdisjoint(words)


def _asks_the_rise(words: list[str]) -> bool:
    """Whether it is asked how high a roof gets, and not how long it is."""
    return asks_how_high(words) and _LONG.isdisjoint(words) and _SLOPES.isdisjoint({*words} - {"roof", "rafter"})


def no_pitch_asked(questions: list[Question]) -> None:
    """Drop a pitch that might be asked for, where one was said and the likeliest question was given it: rise on a nine pitch."""
    first = next(iter(questions), None)
    if first is not None and first.whole and "pitch" in first.givens:
        questions[:] = [question for question in questions if question.topic != PITCH or not question.lacking]


def told_again(words: Iterable[str]) -> str:
    """What a length in a change of the question is, by the one of these that its words name; "" where they name none."""
    said = {*words}
    named = [way for way, cues in _NAMES.items() if not said.isdisjoint(cues)]
    return named[0] if len(named) == 1 else ""


def _pitch_said(chart: Chart, question: Question) -> bool:
    """Whether a pitch stands among what it was to be worked from: rise of 8 in 12 in 3.2 m, a 7 pitch over 16 feet."""
    starts = {places_of(chart, heard)[0] for heard in question.givens.values() if heard.end > heard.start}
    for heard in question.givens.values():
        start, end = places_of(chart, heard) if heard.end > heard.start else (0, 0)
        said = any(r.kind == "pitch" and r.sure >= SURE_PITCH and r.end > end for r in chart.readings[start])
        if end and chart.words[end : end + 2] in (["in", "12"], ["in", "twelve"]) and end + 1 not in starts:
            return True
        if end and (said or (chart.words[end : end + 1] == ["pitch"] and chart.words[start - 1] in _ARTICLES)):
            return True
    return False


def _in_feet(givens: dict[str, Heard]) -> dict[str, Heard]:
    """A rise with no unit beside a run in feet is in feet where inches would make no roof of it: 12 ft wide and rises 3."""
    rise, run = givens.get("rise"), givens["run"]
    if rise is None or not isinstance(rise.value, Length) or not rise.bare or run.bare or run.value.unit != "ft":
        return givens
    level = run.value.value / 2 if "across" in givens and givens["across"].value == "GABLE" else run.value.value
    feet = 12 * rise.value.value / level
    if "/" in rise.text or not LEAST_PITCH <= feet <= MOST_PITCH:
        return givens
    other, inches = Length(rise.value.value, "ft", rise.text), Length(rise.value.value, "in", rise.text)
    sure = feet / 12 < LEAST_PITCH
    return {**givens, "rise": replace(rise, value=other if sure else inches, others=() if sure else (other,))}


def _wide_in_feet(chart: Chart, givens: dict[str, Heard]) -> dict[str, Heard]:
    """A run with no unit is in feet where it is how wide a deck or a building is: the deck's 12 wide and drops 3 inches."""
    run = givens.get("run")
    if run is None or not run.bare or not isinstance(run.value, Length) or run.value.unit != "in" or run.end <= run.start:
        return givens
    start, end = places_of(chart, run)
    near = {*_beside(chart, start, -1, _BEFORE), *_beside(chart, end, 1, _AFTER)}
    if _WIDE.isdisjoint(near) or (_BUILDINGS | _DECKS).isdisjoint(near) or not _LEAST_WIDE <= run.value.value <= _MOST_WIDE:
        return givens
    return {**givens, "run": replace(run, value=Length(run.value.value, "ft", run.text), others=())}


def _turned(chart: Chart, question: Question, run: Heard) -> Heard:
    """The run, once it has changed places with a rise that is a building's width: 6 ft from plate to ridge, barn's 36 wide."""
    rise = question.givens.get("rise")
    if rise is None or rise.end <= rise.start or not isinstance(rise.value, Length):
        return run
    start, end = places_of(chart, rise)
    before, after = _beside(chart, start, -1, _BEFORE), _beside(chart, end, 1, _AFTER)
    if _WIDE.isdisjoint(after[:1]) or not before or before[0] not in _BUILDINGS | _EITHER:
        return run
    question.givens["rise"], question.givens["run"] = run, rise
    return rise


def _building(width: Heard) -> Heard:
    """How wide a building is; a whole number with no unit is in feet: the house is 32 across."""
    size = width.value
    if size.unit not in ("ft", "in") or not width.text.isdigit() or not LEAST_WIDE <= size.value <= MOST_WIDE:
        return width
    return replace(width, value=Length(size.value, "ft", width.text), others=())


def _rafter_told(chart: Chart, before: list[str], after: list[str]) -> list[str]:
    """The ways to mean a length beside rafters: how long they are, or their run; none where only hip rafters are spoken of."""
    near = {*before, *after}
    if _RAFTERS.isdisjoint(near) or not _WIDE.isdisjoint(after[:1]) or _of_hip(chart.words):
        return []
    its = (before[1:2] if before[:1] == ["is"] else before[:1]) == ["rafter"]  # the rafter's 14 feet
    return ["RAFTER"] if its or not _LONG.isdisjoint(near) or not _RAFTERS.isdisjoint(after[:2]) else ["RUN", "RAFTER"]


def _of_house(topic: str, before: list[str], after: list[str]) -> bool:
    """Whether a length is told of a building: over a 32 foot house, the gable's 21 foot, its 30 ft span."""
    subject = before[1:2] if before[:1] == ["is"] else before[:1]
    houses = _BUILDINGS - _ROOFS
    own = not houses.isdisjoint(after[:1]) or (after[:1] == ["deep"] and not houses.isdisjoint({*before, *after}))
    own = own or (not after and not houses.isdisjoint(subject))
    return not _SPANS.isdisjoint({*before[:3], *after[:2]}) or (own and topic != SLOPED)


def _of_hip(words: list[str]) -> bool:
    """Whether the rafters that are spoken of are hips: the hip rafter."""
    named = [before for before, word in pairwise(words) if word in _RAFTERS]
    return bool(named) and {*named} <= _HIPS


def _told(chart: Chart, question: Question, run: Heard) -> list[str]:
    """The ways to mean it, the likeliest first; none where it is the run."""
    start, end = places_of(chart, run)
    before, after = _beside(chart, start, -1, _BEFORE), _beside(chart, end, 1, _AFTER)
    after = after or [word for word in chart.words[end : end + 1] if word in _WIDE]  # read as one slope: 28 foot across, 4 foot 8
    if before[:1] and before[0] in _BUILDINGS and not _WIDE.isdisjoint(after[:1]):
        before = before[:1]  # 7 ft above the plate and the building's 24 wide
    to_ridge = chart.words[end : end + 2] == ["across", "to"] and not _RIDGES.isdisjoint(chart.words[end + 2 : end + 5])
    if to_ridge or (before[:1] == ["out"] and "level" in before[:3]):
        return []  # 9 foot 4 across to under the ridge; held the level out 24 inches
    near = {*before, *after}
    own = chart.words[start:end]
    if _half_is(chart.words[max(0, start - _HALF) : start]):
        return []  # half of the building is 13 ft 4
    if "half" in own[:2] and not (WHOLES | _BUILDINGS).isdisjoint(own):
        return ["GABLE"]  # "half the span is 14 ft" was read as the span
    sloping = not _RAFTERS.isdisjoint({*before[:3], *after[:3]}) or not _SLOPES.isdisjoint(after[1:3])
    if question.topic == PITCH and sloping and "run" not in near:
        return ["RAFTER"]  # rises 4 ft in 10 ft of rafter
    if question.topic == SLOPED and "half" in own and _RISES.isdisjoint(near):
        return ["RUN"]  # half of 22 feet is half the width
    if question.topic == RISE and not _SLOPES.isdisjoint(after[1:3]) and after[0] in ("up", "of", "along", "down"):
        return ["RAFTER"]  # 4 ft up the slope, how high
    if question.topic == HIP and "plan" in near and "run" in before:
        return ["RUN", "HIP"]  # the hip's plan run
    if "half" not in own and not _SPANS.isdisjoint(after[:1]):
        return _across(chart, question.topic, before, after)  # an 8 foot ridge over a 28 foot span
    if "half" in own or not _RUNS.isdisjoint(near):
        return []
    if question.topic in (HIP, RISE) and (ways := _rafter_told(chart, before, after)):
        return ways
    if question.topic == HIP and not _RISES.isdisjoint({*before[:2], *after[:1]}):
        return ["RISE"]
    ways = _across(chart, question.topic, before, after)
    roofed = question.topic == PITCH and any(size.to("ft").value >= _LEAST_ROOF for size in (run.value, *run.others))
    return ["RUN", "GABLE"] if not ways and roofed and after[:1] == ["wide"] and not _one_way(chart, _ONE_WAY) else ways


def _half_is(before: list[str]) -> bool:
    """Whether what is told is half of a building: half the house is | 12 ft, half span | 3300."""
    if before[-2:-1] == ["half"] and before[-1] in _SPANS | {"width"}:
        return True
    if before[-1:] not in (["is"], ["measures"], ["comes"], ["at"], ["to"]) or "half" not in before:
        return False
    after = before[len(before) - before[::-1].index("half") :]
    return not _BUILDINGS.isdisjoint(after) and after[:1] != ["inch"]


def _across(chart: Chart, topic: str, before: list[str], after: list[str]) -> list[str]:
    """The ways to mean what may be the whole width of a building: a span, a house 32 foot wide, a shed."""
    near = {*before, *after}
    spans = _of_house(topic, before, after)
    if (not spans and _WIDE.isdisjoint(near)) or (topic != HIP and _one_way(chart, _ONE_WAY)):
        return []
    if topic == PITCH and not _PEAKS.isdisjoint(chart.words) and not _WIDE.isdisjoint(near):
        return ["GABLE"]  # 28 foot across, 4 foot 8 up at the middle
    if spans or not _BUILDINGS.isdisjoint(near) or {"end", "wall"} <= near or topic == HIP:
        return ["GABLE"]
    return ["RUN", "GABLE"] if not _EITHER.isdisjoint(near) or (topic == PITCH and after[:1] == ["width"]) else []


def _one_way(chart: Chart, names: frozenset[str], rake: bool = False) -> bool:
    """Whether the roof falls one way: it has one of the names of such, or one slope."""
    falls = _ONE_SLOPE if rake or ("on", "one") in pairwise(chart.words) else _ONE_SLOPE | _ONE_SIDE  # how long on one side
    return not names.isdisjoint(chart.words) or not falls.isdisjoint(pairwise(chart.words))


def _width_told(chart: Chart, question: Question, width: Heard) -> list[str]:
    """The ways to mean what was taken for the width of a gable; none where it is that."""
    start, end = places_of(chart, width)
    before, after = _beside(chart, start, -1, _BEFORE), _beside(chart, end, 1, _AFTER)
    near = {*before[:3], *after[:2]}
    if "half" in chart.words[start:end][:2]:
        return []
    if not _RAFTERS.isdisjoint(near) and _GABLES.isdisjoint(near):
        return ["RAFTER"]
    if before[:1] in _IS and "to" in before and not _RIDGES.isdisjoint(before) and _GABLES.isdisjoint(near):
        return ["RUN"]  # from the plate in to the ridge
    gabled = not {"gable", "gables"}.isdisjoint(chart.words)
    runs = not _ONES.isdisjoint(near) and before[1:2] != ["rake"] and _GABLES.isdisjoint({*before[:1], *after[:1]})
    if runs or (not gabled and _one_way(chart, _SURELY_ONE, question.topic == RAKE)):
        return ["RUN"]
    shed = not gabled and ("shed", "roof") in pairwise(chart.words)  # some call any roof of one slope so
    return ["RUN", "GABLE"] if shed else []


def _beside(chart: Chart, at: int, step: int, most: int) -> list[str]:
    """The words on one side of a quantity, the nearest first, up to a stop or another quantity."""
    found: list[str] = []
    for place in range(at - 1 if step < 0 else at, at + step * (most + 1), step):
        if not 0 <= place < len(chart.words) or chart.words[place] in _STOPS or chart.numbers >> place & 1 or len(found) == most:
            break
        found.append(chart.words[place])
    return found
