"""Heat and stuff as one tells them: "zinc? no, aluminium", "then it drops 60 degrees", "5 °C at dawn and 60 °C by noon, how much
does it lengthen".

Of two materials the one is taken that the words leave, else it is asked which. Two temperatures stand in the order in which
what is asked comes about: what lengthens was cold first.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from intents.chart import Chart, quantities
from intents.of_other_things import tells_of_next_door
from intents.placing import fixed_value, heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from solvers.quantities import Temperature, TemperatureChange
from solvers.slots import Parameter

Topics = Mapping[str, tuple[Parameter, ...]]
Told = tuple[int, int, str]  # tokens start to end, and the choice that they name

HEAT = "thermal movement"
STUFF = {HEAT: "material", "end gap": "material", "wood movement": "species"}
_ALIKE = frozenset("same like match matching matches copy also too alike".split())
_NOT = frozenset("not no isn't wasn't never".split())
_OLD = frozenset("was were old used old-style existing previous last".split())
_SEVERAL_KINDS = frozenset("cedar oak fir birch".split())  # of which one is white, red, yellow …
_IN_PLACE = frozenset("so it's its instead now rather got using went we're i'm".split())
_NOT_TO_BE_HAD = frozenset("gone couldn't can't cannot out dear dearer scarce none ran rotten rotted sold".split())
_PUT_RIGHT = frozenset("no sorry wait rather actually scratch nope correction".split())
_MEANT = (["i", "mean"], ["make", "that"], ["asking", "about"], ["question", "is"], ["asking", "of"], ["ask", "about"])
_ON = frozenset("on onto over to against into with behind under beside between in off and".split())
_ARTICLES = frozenset("the a an my some our".split())
_HELD_BY = frozenset(
    "nails nail screws screw clips clip fasteners staples brackets bracket posts post studs stud framing frame sheathing wall"
    " walls tape ladder brake saw truck roof house door strapping battens furring".split()
)
_LONGER = frozenset("grow grows growth lengthen lengthens longer gain gains expand expands expansion stretch stretches".split())
_SHORTER = frozenset("shrink shrinks shrinkage shorten shortens shorter lose loses lost contract contracts contraction".split())
_FALLS = frozenset(
    "drop drops dropped dropping fall falls fell falling cool cools cooled cooling loses plunges sinks down colder cooler".split()
)
_RISES = frozenset("rise rises rising warms warmer hotter heats climbs up swing gains increase range change changes".split())
_UP = ("warmer", "hotter", "rise", "increase", "higher")
_BETWEEN = frozenset("by about around roughly another a full some maybe of off down".split())
_ORDERED = frozenset("from to until till".split())
_NOW = frozenset(("now", "today"))
_EXTREMES = {("night", "day"), ("winter", "summer"), ("dawn", "noon"), ("morning", "noon"), ("morning", "afternoon")}
_GOES = frozenset("goes going go went".split())
_HUNG = frozenset("put hung fitted installed laid fixed nailed".split())
_HANGING = 12  # words from what was hung to how warm it was
_NO_MOVE = frozenset(("up", "down", "change"))  # put up at 45 F, how much it will change by 105 F
_REACH = 3
_MOVED = 8  # words from what rises or falls to by how much
SURE = 0.9  # of a temperature that was said with its scale


def heat_told(chart: Chart, question: Question, topics: Topics) -> None:
    """Put a question about movement right by what words tell of its material and its temperatures."""
    _one_material(chart, question, topics)
    if question.topic == HEAT:
        _from_to_is(chart, question, topics)
        _falls_by(chart, question, topics)
        _cooled(chart, question)
        _in_turn(chart, question, topics)
        if {"start", "end"} <= question.givens.keys():
            question.givens.pop("swing", None)  # from what to what says which way


# ── what it is made of ──


def _one_material(chart: Chart, question: Question, topics: Topics) -> None:
    """Of two materials the one that is left by the words; where both are, both ways go on."""
    name = STUFF[question.topic]
    told = _materials(chart, name)
    if name in question.givens and _of_another_kind(chart.words, told):
        del question.givens[name]  # larch you couldn't get, so it's cedar: which cedar, it asks
        question.missing = [*question.missing, name]
        question.swaps = []
        return
    if len({choice for _, _, choice in told}) < 2 or name not in question.givens:
        return
    left = [each for each in told if _asked_of(chart.words, each)]
    left = left or [each for n, each in enumerate(told) if not _not_meant(chart.words, told, n)]
    choices = list(dict.fromkeys(choice for _, _, choice in left)) or list(dict.fromkeys(choice for _, _, choice in told))
    parameter = next(p for p in topics[question.topic] if p.name == name)
    heard = [_heard(chart, parameter, next(each for each in told if each[2] == choice)) for choice in choices]
    question.givens[name] = heard[0]
    question.swaps = [{**swap, name: heard[0]} for swap in question.swaps] if len(heard) == 1 else [
        {**question.givens, name: other} for other in heard[1:]
    ]  # fmt: skip


def _of_another_kind(words: list[str], told: list[Told]) -> bool:
    """Whether a wood that may be several comes in place of the one that is named: larch you couldn't get, so it's cedar."""
    first = max((end for _, end, _ in told), default=len(words))
    named = {at for start, end, _ in told for at in range(start, end)}
    kinds = [at for at in range(first, len(words)) if words[at] in _SEVERAL_KINDS and at not in named]
    return any(not _IN_PLACE.isdisjoint(words[max(first, at - _REACH) : at]) for at in kinds)


def _materials(chart: Chart, name: str) -> list[Told]:
    """The materials that the words name outright, from left to right: the longest name at each place."""
    found: list[Told] = []
    slips = {read for _, read in chart.changed}  # what gap do I leaf: no lead
    hits = [hit for hit in chart.hits if any(n == name and at < 0 and fixed for n, at, fixed in hit.captures)]
    taken = 0
    for hit in sorted(hits, key=lambda hit: (-(hit.mask & ~chart.numbers).bit_count(), hit.start)):
        choice = next(fixed for n, at, fixed in hit.captures if n == name and fixed)
        if not hit.mask & taken and not hit.found and slips.isdisjoint(chart.words[hit.start : hit.end]):
            taken |= hit.mask
            found.append((hit.start, hit.end, choice))
    return sorted(found)


def _not_meant(words: list[str], told: list[Told], n: int) -> bool:
    """Whether a material was put right, or is none of the piece: zinc? no, aluminium; not steel; steel nails; on a wood wall."""
    start, end, _ = told[n]
    if n + 1 < len(told):
        between = words[end : told[n + 1][0]]
        if not _PUT_RIGHT.isdisjoint(between) or between[-2:] in _MEANT:
            return True
        led = words[max(end, told[n + 1][0] - _REACH) : told[n + 1][0]]
        if not (_IN_PLACE.isdisjoint(led) or _NOT_TO_BE_HAD.isdisjoint(words[max(0, start - _REACH) : start] + between)):
            return True  # heart pine's gone, I'm using loblolly
    if tells_of_next_door(up_to_stop(words[:start][::-1])[::-1]) and _ALIKE.isdisjoint(words):
        return True  # the bank next door is aluminium
    before = [word for word in up_to_stop(words[max(0, start - _REACH) : start][::-1]) if word not in _ARTICLES]
    if before[:1] and (before[0] in _NOT or before[:2] in (["of", "instead"], ["than", "rather"])):
        return True
    if not _OLD.isdisjoint(before[:2]) and n + 1 < len(told):
        return True
    held = not _HELD_BY.isdisjoint(words[end : end + 1])
    on = bool(before) and before[0] in _ON - {"and"} and n > 0 and "from" not in words[:start]
    return held or on


def _asked_of(words: list[str], told: Told) -> bool:
    """Whether the thing of a material is named where it is asked: PVC trim in an aluminium channel, growth of the channel."""
    things = [word for word in words[told[1] - 1 : told[1] + 1] if word.isalpha()]
    return any(words[at : at + 2] == ["the", thing] for thing in things for at in range(told[1] + 1, len(words)))


def _heard(chart: Chart, parameter: Parameter, told: Told) -> Heard:
    place = place_of(chart, told[0], told[1])
    return Heard(fixed_value(parameter.kind, told[2], place[2]), *place)


# ── which way it goes ──


def _cooled(chart: Chart, question: Question) -> None:
    """A change beside which it drops, or of which what is lost is asked, is a fall."""
    change = question.givens.get("change")
    if change is not None and "swing" in question.givens and change.text.lower().endswith(_UP):
        del question.givens["swing"]  # 40 F warmer, is it longer or shorter
    if change is None or "swing" in question.givens or not isinstance(change.value, TemperatureChange) or change.value.value < 0:
        return
    start, end = places_of(chart, change)
    words = chart.words
    before = [word for word in up_to_stop(words[max(0, start - 4) : start][::-1]) if word not in _BETWEEN]
    falls = (before[:1] and before[0] in _FALLS) or (_tells_how_far(words, start) and _only_falls(words))
    near = {*before[:1], *words[start:end], *words[end : end + 1]}
    lost = not _SHORTER.isdisjoint(words) and _LONGER.isdisjoint(words) and near.isdisjoint(_RISES)
    if falls or lost:
        question.givens["swing"] = Heard("DOWN", change.start, change.start, "")
        question.swaps = [{**swap, "swing": question.givens["swing"]} if "change" in swap else swap for swap in question.swaps]


def _falls_by(chart: Chart, question: Question, topics: Topics) -> None:
    """It falls from 90 F by 60 F, it starts at 40 F and goes up 60 F: the second is how far; it goes up 70 F."""
    start, end = question.givens.get("start"), question.givens.get("end")
    if end is None or end.end <= end.start or (start is None and "change" in question.givens):
        return
    first, last = places_of(chart, end)
    if not _tells_how_far(chart.words, first):
        return
    parameter = next(p for p in topics[HEAT] if p.name == "change")
    rows = (r for r in chart.readings[first] if r.end == last)
    heard = next((h for r in rows if (h := heard_as(chart, parameter, r, True)) is not None), None)
    if heard is not None:
        question.givens = {n: h for n, h in question.givens.items() if n not in ("start", "end")} | {"change": heard}
        if _only_falls(chart.words):
            question.givens["swing"] = Heard("DOWN", heard.start, heard.start, "")
        question.swaps = []


def _from_to_is(chart: Chart, question: Question, topics: Topics) -> None:
    """Night to day is 45 C: so much is the change, and nothing was 45 C."""
    at = next((at for at, pair in enumerate(zip(chart.words, chart.words[2:], strict=False)) if pair in _EXTREMES), -1)
    if at < 0 or chart.words[at + 1] != "to" or {"start", "end"} <= question.givens.keys():
        return
    first = at + 3 + (chart.words[at + 3 : at + 4] in (["is"], ["of"]))
    parameter = next(p for p in topics[HEAT] if p.name == "change")
    rows = chart.readings[first] if first < len(chart.words) else []
    heard = next((h for r in rows if (h := heard_as(chart, parameter, r, True)) is not None), None)
    if heard is not None:
        question.givens = {n: h for n, h in question.givens.items() if n not in ("start", "end", "swing")} | {"change": heard}
        question.missing, question.swaps = [n for n in question.missing if n != "change"], []


def _only_falls(words: list[str]) -> bool:
    """Whether the words tell of a fall, and of no rise; what is asked for is called a change either way."""
    return not _FALLS.isdisjoint(words) and (_RISES - {"change"}).isdisjoint(words)


def _tells_how_far(words: list[str], at: int) -> bool:
    """Whether degrees are told to be a change: falls from 90 F by 60 F, goes up 60 F; what it does by 105 F is none."""
    led = words[max(0, at - _MOVED) : at]
    if led[-1:] == ["by"]:
        return led[-2:-1] in (["up"], ["down"]) or not (_FALLS | _RISES | _GOES).difference(_NO_MOVE).isdisjoint(led)
    return led[-1:] in (["up"], ["down"]) and not _GOES.isdisjoint(led[-2:-1])


def _in_turn(chart: Chart, question: Question, topics: Topics) -> None:
    """Two temperatures in the order in which the piece lengthens, or shortens, where that is what is asked."""
    change = question.givens.get("change")
    if change is not None and change.end > change.start and _tells_how_far(chart.words, places_of(chart, change)[0]):
        return
    longer, shorter = not _LONGER.isdisjoint(chart.words), not _SHORTER.isdisjoint(chart.words)
    both = {"start", "end"} <= question.givens.keys()
    if both and longer == shorter:
        _now_first(chart, question)
    if both and longer != shorter:
        _than_before(chart, question, longer)
    if both and (longer == shorter or not _against(chart, question, longer)):
        return
    if both and not question.swaps:  # 5 C at dawn up to 45 C by noon: told the one way, and asked the other
        question.givens = {**question.givens, "start": question.givens["end"], "end": question.givens["start"]}
        return
    warm = list(_temperatures(chart))
    if longer == shorter and not _one_let_fall(question, warm, chart):
        return
    if len(warm) != 2 or not _ORDERED.isdisjoint(chart.words[warm[0].end : warm[1].start]):
        return
    lost = {"change", "start", "end"}.intersection(question.missing) or question.unplaced or question.swaps
    if not lost and not {"start", "end"} <= question.givens.keys() and not _one_let_fall(question, warm, chart):
        return
    texts = [chart.said(r.start, r.end) for r in warm]
    parameters = {p.name: p for p in topics[HEAT]}
    one, other = (heard_as(chart, parameters["start"], r, True) for r in warm)
    if one is None or other is None or one.value.unit != other.value.unit or not set(texts).issuperset(question.unplaced):
        return
    cold, hot = sorted((one, other), key=lambda heard: heard.value.value)
    kept = {n: h for n, h in question.givens.items() if n not in ("change", "start", "end", "swing")}
    first, last = (one, other) if longer == shorter else (cold, hot) if longer else (hot, cold)
    question.givens = {**kept, "start": first, "end": last}
    question.missing = [n for n in question.missing if n not in ("change", "start", "end")]
    question.unplaced = []
    others = dict.fromkeys(swap["material"] for swap in question.swaps if "material" in swap)
    question.swaps = [{**question.givens, "material": other} for other in others if other != kept.get("material")]


def _now_first(chart: Chart, question: Question) -> None:
    """How warm it is now is what it starts from, though it is told last: 150 F in sun, 60 F now."""
    start, end = question.givens["start"], question.givens["end"]
    words, (first, _), (last, _) = chart.words, places_of(chart, start), places_of(chart, end)
    now = [not _NOW.isdisjoint(words[places_of(chart, heard)[1] :][:1]) for heard in (start, end)]
    led = [not _NOW.isdisjoint(up_to_stop(words[max(0, at - _REACH) : at][::-1])) for at in (first, last)]
    if end.start < start.start and led[0] and not _HUNG.isdisjoint(words[max(0, last - _HANGING) : last]):
        turned = True  # I put it up at 31 C, and now it's 4 degrees
    elif start.start < end.start and led[1] and not any(now):
        turned = False  # the same, read so already
    elif now == [False, True] and _ORDERED.isdisjoint(words) and start.value.unit == end.value.unit:
        turned = True
    else:
        return
    if turned:
        question.givens = {**question.givens, "start": end, "end": start}
    question.swaps = [swap for swap in question.swaps if not {"start", "end"} <= swap.keys()]


def _than_before(chart: Chart, question: Question, longer: bool) -> None:
    """What a piece is longer at stands before what it is longer than: how much longer is it at 35 C than at 12."""
    start, end = question.givens["start"], question.givens["end"]
    one, other = sorted((start, end), key=lambda heard: heard.start)
    between = chart.words[places_of(chart, one)[1] : places_of(chart, other)[0]] if one.end > one.start else []
    if "than" not in between or start.value.unit != end.value.unit or (end.value.value > start.value.value) == longer:
        return
    question.givens = {**question.givens, "start": end, "end": start}
    question.swaps = [swap for swap in question.swaps if not {"start", "end"} <= swap.keys()]


def _one_let_fall(question: Question, warm: list[Reading], chart: Chart) -> bool:
    """Whether one of two was taken for the change, and the other let fall: put up at 45 F, what does it do by 105 F."""
    change = question.givens.get("change")
    if change is None or len(warm) != 2 or not {"start", "end"}.isdisjoint(question.givens):
        return False
    return places_of(chart, change) in [(r.start, r.end) for r in warm]


def _against(chart: Chart, question: Question, longer: bool) -> bool:
    """Whether the two go against what is asked, or either way round goes on: what does it lose between 5 C and 60 C."""
    start, end = question.givens["start"], question.givens["end"]
    wrong = (end.value.value < start.value.value) == longer and start.value.unit == end.value.unit
    return bool(question.swaps) or (wrong and (end.start < start.start or "between" in chart.words))


def _temperatures(chart: Chart) -> Iterator[Reading]:
    """What is said to be so warm; a change is none."""
    for reading in quantities(chart, 0, len(chart.words)):
        before = [word for word in chart.words[max(0, reading.start - 3) : reading.start] if word not in _BETWEEN]
        if before[-1:] and before[-1] in _FALLS | _RISES - {"up", "down"}:
            continue
        warm = [r for r in chart.readings[reading.start] if r.end == reading.end and isinstance(r.value, Temperature)]
        yield from (r for r in warm[:1] if r.sure >= SURE)
