"""Roles and topics that the words themselves speak against, though everything found a place.

A question that is whole is looked at once more: a size taken for what holds the nail that no word says holds anything, a
number passed over in the middle of a list, a length of the stock among the legs of a bend, a count asked of a topic that
was given it. What is doubted is put right where only one way is left, and named otherwise: the conversation asks.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.chart import LIGHT, Chart
from intents.counted_things import into_itself
from intents.idle_numbers import LAYERED
from intents.left_out import FIXED, HAVE, KEPT
from intents.left_standing import taken_back
from intents.listed_layers import LAYER_WORDS
from intents.neighbours import known
from intents.phrases import Phrases
from intents.question import Heard, Question
from intents.second_reader import places_of, tokens_of
from intents.untold_layers import kind_of, let_fall, studs_among
from solvers.quantities import Angle, Length, Quantity
from solvers.slots import Layer

LAYERS, PENETRATION, LEGS = "layers", "penetration", "lengths"
_STOPS = frozenset((".", ";", "?", "!"))
# One of these near a size says that it is what holds: into the stud, 40 in the rafter, must be an inch in the header.
_HOLDS = frozenset(
    "in into penetration pen bite biting bites embed embedded embedment grip grips hold holds holding stud studs framing deep"
    " seat seats wood timber meat solid past beyond enter enters catch catches grab grabs bury buried sink sunk left leave leaves"
    " leaving behind min minimum least less settle want wants need needs calls requires rafter joist rim header plate post"
    " penetrate penetrates purchase thread girt girts bearer bearers far".split()
)
_SMALL = frozenset("the my a our s of".split())
_SPLITS = frozenset("split splits splitting break breaking broken divide dividing divided spread spreading faceted".split())
_ROUNDS = frozenset("round rounded curve curved curves smooth smoother softer soft pieces several few facets segments".split())
_TRIM_ENDS = frozenset("butt plumb rake pitch level".split())
_BEFORE, _AFTER, _NAMED = 6, 5, 8  # tokens in which such a word stands, and the name of a layer before its size
_OUT_OF = frozenset("take taking remove removing ditch scrap lose pull rip strip skip omit".split())
_GOES = {(verb, way) for verb in "goes comes going coming go come".split() for way in ("out", "off", "away")}
_TIMES = frozenset("times layers × sheets coats".split())  # a number before one of these counts what comes after
_TAKEN = _OUT_OF | frozenset("took taken removed scrapped pulled ripped stripped left tore torn".split())
_THEY = frozenset(("they", "they're", "theyre"))
_SUBJECT, _PANELS = 10, frozenset(("panel", "panels"))
_EAVES = frozenset("soffit soffits eave eaves overhang overhangs run runs porch wall".split())
_TIMED = frozenset(("×", "by", "times"))
_NO_LEG = frozenset("fit fits come comes lengths long".split())
LEAST_STOCK = 5  # ft; so long a size is of the stock and no leg of a bend
HEARD_APART = 0.3  # a length no surer than this was put together across a comma
_SPACES = frozenset(
    "gap gaps space spaces spaced spacing apart between even evenly equal equally spread centre center centres centers"
    " divide divided clearance reveal reveals margin margins".split()
)
_LONGER = frozenset("longer shorter wider narrower taller bigger smaller".split())
_PROPS = frozenset("brace strut prop kicker raker stay rafter".split())  # what leans and is no ladder
_REACHES = frozenset("reach reaches get gets touch touches go goes".split())
_NOT_OF = {  # what speaks of another topic: a drop of moisture, the board along the rake
    "right triangle": frozenset("hip hips valley valleys span".split()),
    "ladder footing": frozenset("overnight carry carries per".split()),
    "fall": frozenset("shrink shrinks shrinkage swell swells swelling moisture grain".split()),
    "gable courses": frozenset("fascia barge bargeboard rakeboard".split()),
}
_ANGLED = ("right triangle", "pitch of an angle")
_FOOTED = frozenset(  # one of these is in what asks where a ladder's foot goes
    "foot feet base bottom out away from lean leans leaned far distance stand stands set setting put pitch back kick angle how"
    " rule quarter four where sits sit footing landing eave eaves gutter plate height high bears bear bearing tall reach reaches"
    " climb rests rest up at to".split()
)
_UPRIGHTS = frozenset("wall plumb vertical upright post".split())
_LEAVES = frozenset("leaves leave leaving off from".split())
_LEANS, _LEANS_LITTLE = frozenset("lean leans leaned leaning".split()), 45  # degrees: so little is told from upright
_BOUGHT = frozenset("pieces boards sticks lengths".split())
_COSTS = frozenset("cost costs".split())
_TALL = frozenset("height hgt hi hight heigth peek high tall rise rises peak ridge apex up top above tip point".split())
_MIDDLE, _HALVED = frozenset(("middle", "centre", "center")), frozenset("run half level out in from".split())
_SPREAD = frozenset(
    "area areas square squares sq sqft sf wall surface ft2 m2 much cover covers coverage siding cladding paint painting triangle"
    " triangular shingles shingle feet² material membrane wrap net gross".split()
)
_BY_WIDTH = frozenset(("rake length", "gable height", "arc", "fall"))
_OPENS = {(how, gap) for how in ("what", "big", "wide", "much") for gap in ("gap", "crack", "opening")}
_HOW_WIDE = {("how", "wide"), ("what", "width")}
_AT_END = 3  # tokens from the end of a sentence in which it says what is asked


def take_back(chart: Chart, question: Question) -> None:
    """Take back a role that no word tells where only one other is left; what is missing then is asked for."""
    if question.topic == "fastener length":
        _penetration(chart, question)
        _at_hand(chart, question)
    if question.topic == "miter for a corner":
        _split_up(chart, question)
    if question.topic == "soffit panels":
        _panels_own(chart, question)


def in_doubt(chart: Chart, phrases: Phrases, question: Question) -> list[str]:
    """The quantities that can't be what they were taken for, as they were said."""
    found = [] if question.topic not in LAYERED else _untold(chart, question) + _out_of(chart, question)
    if question.topic in LAYERED:
        found += let_fall(chart.words, [places_of(chart, heard) for heard in question.givens.values() if heard.end > heard.start])
    if question.topic == "build-out" and (layers := question.givens.get(LAYERS)) and layers.end > layers.start:
        found += studs_among(chart.words, *places_of(chart, layers))
    if question.topic == "bent flashing":
        found += _no_legs(chart, question)
    if question.topic == "equal spacing":
        found += _their_length(chart, question)
    found += _off_plumb(chart, question)
    for name in (LAYERS, LEGS):
        found += _passed_over(chart, question, question.givens.get(name))
    found += _cut_dash(chart, question.givens.get("openings"))
    found += taken_back(chart, question)
    return found + _apart(question) + _more_than_another(chart, question) + _misheard_part(chart, phrases)


def other_topic(chart: Chart, question: Question) -> bool:
    """Whether the sentence asks for something that the topic does not answer."""
    words, topic = chart.words, question.topic
    end = len(words) - (words[-1:] == ["?"])
    if topic not in ("cost", "take-off", "tape arithmetic") and not _COSTS.isdisjoint(words[max(0, end - _AT_END) : end]):
        return True
    if topic == "miter for a corner":  # what corner a setting makes; how far it opens, cut for another
        pairs = {*pairwise(words)}
        return (("what", "corner") in pairs and "saw" in words and "told" not in question.givens) or not _OPENS.isdisjoint(pairs)
    if topic == "conversion":
        return "rather" in words or into_itself(question)  # in yards, or rather in metres
    if topic in _BY_WIDTH and any(pair in _HOW_WIDE for pair in pairwise(words)) and _said(question, "width"):
        return True  # how wide the gable is was asked, and cannot be what was given
    if topic == "ladder footing":  # a prop's; who has the ladder; or how high it gets
        prop = ("ladder" not in words and not _PROPS.isdisjoint(words)) or not _NOT_OF[topic].isdisjoint(words)
        return prop or _FOOTED.isdisjoint(words) or (not _REACHES.isdisjoint(words) and ("how", "high") in pairwise(words))
    if topic == "tape arithmetic":  # a half more, or half of it? lengths added up are no area
        areas = "area" in words and _TIMED.isdisjoint(words) and not any(r.kind == "area" for row in chart.readings for r in row)
        return areas or words[end - 2 : end] == [",", "half"] or _quarters_in_feet(chart, question)
    if topic in _NOT_OF and not _NOT_OF[topic].isdisjoint(words):
        return True
    if topic == "gable height" and _TALL.isdisjoint(words):
        return True  # "work out the gable" may be its area
    if topic == "gable area" and _SPREAD.isdisjoint(words) and not _TALL.isdisjoint(words):
        return True  # across, up to the point is what
    if topic == "rise over a run" and not _MIDDLE.isdisjoint(words) and _HALVED.isdisjoint(words):
        return True  # the wall's 18-8, how much height at the middle: over half of it
    if topic == "wall area" and "squares" in words[max(0, end - _AT_END) : end]:
        return True
    counts = "count" in question.givens and ("how", "many") in pairwise(words)
    if counts and topic == "equal spacing":
        return _SPACES.isdisjoint(words)
    return counts and topic == "course layout" and any(
        words[at : at + 2] == ["how", "many"] and not _BOUGHT.isdisjoint(words[at + 2 : at + 4]) for at in range(end)
    )  # fmt: skip


def _said(question: Question, name: str) -> bool:
    return any(given.endswith(name) and heard.end > heard.start for given, heard in question.givens.items())


def _clause(chart: Chart, start: int, end: int, at: int) -> list[str]:
    """The words from start to end that stand in one sentence with the token at."""
    words = chart.words
    first = max((k + 1 for k in range(max(0, start), at) if words[k] in _STOPS), default=max(0, start))
    last = next((k for k in range(at, min(end, len(words))) if words[k] in _STOPS), min(end, len(words)))
    return words[first:last]


# ── what holds ──


def _penetration(chart: Chart, question: Question) -> None:
    """A size that nothing says holds anything, and that stands after the name of a layer, is how thick that is."""
    heard, layers = question.givens.get(PENETRATION), question.givens.get(LAYERS)
    if heard is None or layers is None or not isinstance(heard.value, Length):
        return
    start, end = places_of(chart, heard)
    name = "" if _holds(chart, start, end) else _layer_before(chart, start, layers)
    if name:
        thick = Layer(heard.value, name)
        value = (thick, *layers.value) if heard.start < layers.start else (*layers.value, thick)
        first, last = min(heard.start, layers.start), max(heard.end, layers.end)
        question.givens[LAYERS] = Heard(value, first, last, chart.text[first:last], layers.sure)
    elif _into_last(chart, end, heard, layers):
        last = chart.text.rfind(layers.value[-1].thickness.text, layers.start, layers.end)
        stop = last if last > layers.start else layers.end
        question.givens[LAYERS] = replace(layers, value=layers.value[:-1], end=stop, text=chart.text[layers.start : stop])
        return
    else:
        return
    del question.givens[PENETRATION]
    question.missing, question.swaps = [PENETRATION], []


def _at_hand(chart: Chart, question: Question) -> None:
    """The sizes of the nails somebody has are no penetration: I've 65s and 75s in the van."""
    heard = question.givens.get(PENETRATION)
    if heard is None or heard.end <= heard.start or not isinstance(heard.value, Length):
        return
    start, end = places_of(chart, heard)
    after = [word for word in _clause(chart, end, end + _AFTER, end) if word not in _SMALL]
    several = chart.words[end : end + 1] == ["s"] or (heard.text.endswith("s") and heard.text[:-1].isdigit())
    kept = after[:2] and after[0] == "in" and not KEPT.isdisjoint(after[1:3])
    if kept or (several and not HAVE.isdisjoint(_clause(chart, start - _NAMED, start, start))):
        del question.givens[PENETRATION]
        question.missing, question.swaps = [PENETRATION], []


def _split_up(chart: Chart, question: Question) -> None:
    """A corner that is split up so that it looks round is gone round in pieces, and how many is asked."""
    words = chart.words
    at = next((at for at, word in enumerate(words) if word in _SPLITS), -1)
    if at >= 0 and {"corner", "turn"} & question.givens.keys() and _ROUNDS & {*words} and _TRIM_ENDS.isdisjoint(words):
        question.topic, question.missing, question.swaps = "corner in several pieces", ["parts"], []


def _holds(chart: Chart, start: int, end: int) -> bool:
    near = _clause(chart, start - _BEFORE, start, start) + _clause(chart, end, end + _AFTER, end)
    return chart.words[end - 1] in _HOLDS or not _HOLDS.isdisjoint(near)


def _layer_before(chart: Chart, start: int, layers: Heard) -> str:
    """The name of a layer before a size, with no other size between, that has no thickness of its own."""
    taken = tokens_of(chart, layers)
    for at in range(start - 1, max(-1, start - 1 - _NAMED), -1):
        if chart.numbers >> at & 1 or chart.words[at] in _STOPS:
            return ""
        if chart.words[at] in LAYER_WORDS and not taken >> at & 1:
            return chart.words[at]
    return ""


def _into_last(chart: Chart, end: int, heard: Heard, layers: Heard) -> bool:
    """Whether it holds in the last layer, and so need not pass it: 16 mm board on 40 mm battens, 30 mm into the batten."""
    last = layers.value[-1]
    if len(layers.value) < 2 or not isinstance(last, Layer) or last.thickness is None:
        return False
    words = chart.words[end : end + 3]
    named = [word for word in words if word not in LIGHT and word not in ("into", "my")]
    if not {"in", "into"} & set(words) or not named or kind_of(named[0]) not in map(kind_of, last.what.split()):
        return False
    return bool(heard.value.to("in").value <= last.thickness.to("in").value)


def _untold(chart: Chart, question: Question) -> list[str]:
    """What was taken for the penetration, where no word says that anything is to hold."""
    heard = question.givens.get(PENETRATION)
    if heard is None or not isinstance(heard.value, Length):
        return []
    start, end = places_of(chart, heard)
    had = not FIXED.isdisjoint(chart.words[end : end + 1]) and not HAVE.isdisjoint(_clause(chart, start - _NAMED, start, start))
    counts = not _BOUGHT.isdisjoint(chart.words[end : end + 1]) and heard.bare  # 14 boards
    return [heard.text] if had or counts or not _holds(chart, start, end) else []  # got 3 inch nails in the truck


# ── lists ──


def _panels_own(chart: Chart, question: Question) -> None:
    """The length of the panels themselves, taken for the run: "panels cover 250 mm and are 3.6 m long"."""
    run = question.givens.get("run")
    if run is None or "panel_length" in question.givens or not isinstance(run.value, Length):
        return
    start, end = places_of(chart, run)
    before = _clause(chart, start - _SUBJECT, start, start)
    last = next((word for word in reversed(before) if word in _PANELS or word in _EAVES), "")
    if last in _PANELS and before[-1] == "are" and chart.words[end : end + 1] == ["long"]:
        question.givens["panel_length"] = question.givens.pop("run")
        question.missing, question.swaps = ["run"], []


def _out_of(chart: Chart, question: Question) -> list[str]:
    """A layer told as what is taken out: take the 3/8 mesh out of 1/2 ply, 3/8 mesh, 7/8 siding."""
    heard = question.givens.get(LAYERS)
    layers, words = (heard.value, chart.words) if heard else ((), chart.words)
    start = places_of(chart, heard)[0] if heard and heard.end > heard.start else 0
    if any(words[at] in _TAKEN and words[at + 1] in ("off", "out", "away") for at in range(max(0, start - _BEFORE), start - 1)):
        return [chart.said(start, _end_of(chart, start))]  # I've taken off the 3/8 mat
    if _OUT_OF.isdisjoint(words) and not any(pair in _GOES for pair in pairwise(words)) and "gone" not in words:
        return []
    sizes = [(layer.thickness, layer.what) for layer in layers if isinstance(layer, Layer) and layer.thickness]
    return [f"{size.text} {what}" for n, (size, what) in enumerate(sizes) if (size, what) in sizes[:n]]


def _end_of(chart: Chart, start: int) -> int:
    """The end of the longest quantity that starts at a token."""
    return max((r.end for r in chart.readings[start] if isinstance(r.value, Quantity)), default=start + 1)


def _passed_over(chart: Chart, question: Question, heard: Heard | None) -> list[str]:
    """The numbers in the middle of a list put together size by size that are none of its sizes, nor another given."""
    if heard is None or not isinstance(heard.value, tuple) or not heard.value:
        return []
    start, end = places_of(chart, heard)
    if any(r.end == end and r.value == heard.value for r in chart.readings[start]):
        return []  # it was said in a row
    lengths = [item.thickness if isinstance(item, Layer) else item for item in heard.value]
    sizes = {size.value for size in (*lengths, *(each.value for each in question.givens.values())) if isinstance(size, Length)}
    found, at = [], start
    while at < end:
        last = at
        while last < end and chart.numbers >> last & 1:
            last += 1
        counts = not _TIMES.isdisjoint(chart.words[last : last + 1])
        if last > at and not counts and _bare(chart, at, last) and not _sized(chart, at, last, sizes):
            found.append(chart.said(at, last))
        at = last + 1
    return found


def _bare(chart: Chart, start: int, end: int) -> bool:
    """Whether tokens are a number that could be a size: no "one" or "a"."""
    words = chart.words[start:end]
    return any(word[0].isdecimal() for word in words) or words not in (["one"], ["a"], ["an"])


def _sized(chart: Chart, start: int, end: int, sizes: set[Fraction]) -> bool:
    inside = (r for at in range(start, end) for r in chart.readings[at] if r.end <= end)
    return any(isinstance(r.value, Quantity) and r.value.value in sizes for r in inside)


def _cut_dash(chart: Chart, heard: Heard | None) -> list[str]:
    """The size an opening was cut off in: a door 3 by 6 of "3 by 6-8"."""
    if heard is None or heard.end <= heard.start:
        return []
    end = places_of(chart, heard)[1]
    cut = chart.words[end : end + 1] == ["-"] and chart.words[end + 1 : end + 2] and chart.words[end + 1].isdecimal()
    return [chart.said(end - 1, end + 2)] if cut else []


def _no_legs(chart: Chart, question: Question) -> list[str]:
    """Sizes that are none of a bend's legs: 10 ft lengths, the two of "will two fit"."""
    heard = question.givens.get(LEGS)
    if heard is None or not isinstance(heard.value, tuple):
        return []
    start, end = places_of(chart, heard)
    long = [leg.text for leg in heard.value if isinstance(leg, Length) and leg.to("ft").value >= LEAST_STOCK]
    return long + [
        chart.said(r.start, r.end) for at in range(start, end) for r in chart.readings[at]
        if r.kind == "number" and r.end <= end and not _NO_LEG.isdisjoint(chart.words[r.end : r.end + 1])
    ]  # fmt: skip


# ── angles and lengths ──


def _off_plumb(chart: Chart, question: Question) -> list[str]:
    """An angle that is told from upright, where a triangle's or a roof's is from level: 30 degrees off the wall."""
    heard = question.givens.get("angle" if question.topic in _ANGLED else "pitch")
    steep = heard is not None and (isinstance(heard.value, Angle) or getattr(heard.value, "unit", "") == "deg")
    if heard is None or not steep or heard.end <= heard.start or "measured" in question.givens:
        return []
    start, end = places_of(chart, heard)
    after = [word for word in chart.words[end : end + 3] if word != "the"]
    off = after[:1] in (["off"], ["from"], ["to"], ["out"]) and not _UPRIGHTS.isdisjoint(after)
    before = chart.words[max(0, start - 4) : start]
    leans = not _LEANS.isdisjoint(before[-2:]) and before[-2:] != ["lean", "to"]  # a lean-to's
    off = off or (before[-1:] == ["at"] and not _UPRIGHTS.isdisjoint(before) and not _LEAVES.isdisjoint(before))
    return [heard.text] if off or (leans and heard.value.value < _LEANS_LITTLE and "level" not in after) else []


def _their_length(chart: Chart, question: Question) -> list[str]:
    """The length of the pieces themselves, taken for what they stand in: "they're oak and 8 foot long"."""
    heard = question.givens.get("length")
    if heard is None or not isinstance(heard.value, Length):
        return []
    start, end = places_of(chart, heard)
    theirs = not _THEY.isdisjoint(_clause(chart, start - _BEFORE, start, start)) and chart.words[end : end + 1] == ["long"]
    return [heard.text] if theirs else []


def _apart(question: Question) -> list[str]:
    """Lengths put together across a comma, which may be two: 16 ft, 7 inches."""
    return [
        heard.text for heard in question.givens.values()
        if isinstance(heard.value, Length) and heard.sure <= HEARD_APART and "," in heard.text
    ]  # fmt: skip


def _more_than_another(chart: Chart, question: Question) -> list[str]:
    """Lengths that are only told by another: the other side is one foot longer."""
    if _LONGER.isdisjoint(chart.words):
        return []
    said = (heard for heard in question.givens.values() if isinstance(heard.value, Length) and heard.end > heard.start)
    return [heard.text for heard in said if not _LONGER.isdisjoint(chart.words[(end := places_of(chart, heard)[1]) : end + 1])]


def _quarters_in_feet(chart: Chart, question: Question) -> bool:
    """Whether a number off the tape, 26 3/4, was taken for feet because the answer is wanted in them."""
    unit = question.givens.get("bare")
    if unit is None or unit.value != "FEET" or "in" not in chart.words:
        return False
    return any(r.kind == "number" and r.value.value.denominator > 3 for row in chart.readings for r in row)  # type: ignore


def _misheard_part(chart: Chart, phrases: Phrases) -> list[str]:
    """A word nobody knows where the part of an inch should stand: haff inch."""
    return [
        chart.said(i - 1, i + 1) for i, word in enumerate(chart.words)
        if word == "inch" and i and not chart.numbers >> i & 1 and not known(phrases, chart.words[i - 1])
    ]  # fmt: skip
