"""What a thing can be leaves one way only: a bay of 135° is a corner, no ring has 135 sides, no room is at 21 °F, a dew point
is said to be one.

Each of these leaves a way out that was there before it (another role, another topic, a question back); none makes up a value.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

from intents.beside import MADE_OF
from intents.chart import Chart
from intents.gaps_told import gap_told, no_ratio
from intents.per_what import PER_AREA, as_area, as_price
from intents.question import Heard, Question, Reading
from intents.second_reader import places_of
from intents.unsaid_units import no_inches
from solvers.quantities import Angle, Length, Quantity, Temperature
from solvers.slots import Layer
from solvers.sums import PLUS

STEEPEST_BAY = 90  # degrees; a bay that turned so far would go back to the wall
MOST_SIDES = 60
SPRUNG = 75  # degrees from the wall; nothing is sprung at more, and corners that are less are rare
WIDEST_SILL = 48  # in; what is wider was said in millimetres
LEAST_READ = 60  # degrees; a gauge set to less may have been read from straight on
WIDEST_ROLL = 12  # ft
WARM_ROOM = (13, 35)  # degrees of a room that people are in, on the Celsius scale
_GAUGES = frozenset("gauge protractor finder goniometer".split())
_SAYS = frozenset("says said reads read shows showing gives measures measured on at is".split())
_TURNS = frozenset("turn turns bend bends kick kicks".split())
_REACHES = ("limit", "left", "right", "bevel", "bevel_limit")
_TO_THE = frozenset(("to", "the", "on", "°", "degree", "degrees", "deg"))
_WEIGHT = frozenset(
    "weigh weighs weighing weight weights heavy heavier load lb lbs pound pounds psf plf kg kilo kilos kilograms ton tons"
    " tonne tonnes lift carry gram grams oz ounces".split()
)
_SILLS = frozenset("sill sills cill cills cap caps coping flashing flashings ledge".split())
_RUNS = frozenset("gutter gutters run runs long ft feet foot inch inches".split())
_SIDES = dict(zip("TRIANGLE SQUARE PENTAGON HEXAGON HEPTAGON OCTAGON NONAGON DECAGON DODECAGON".split(),
                  (3, 4, 5, 6, 7, 8, 9, 10, 12), strict=True))  # fmt: skip
_INDOORS = frozenset("room rooms kitchen bathroom bedroom house cabin inside indoors shop workshop office hall basement".split())
_IN_THERE = (["in", "there"], ["in", "here"])
_OUTDOORS = frozenset("outside outdoors freezer cold frost frosty freezing winter".split())
_DEW = frozenset("dew dewpoint dewpt dp".split())
_OFFSETS = frozenset("offset offsets ordinate ordinates mark marks every ev station stations".split())
_OPENINGS = frozenset("jamb jambs doorjamb doorjambs".split())
_JAMB_ASKED = frozenset("depth deep width extension extensions".split())
_ARE = frozenset("is are at measure measures were being".split())
_LEVEL_CUT = ("level", "cut")
_JOINED = frozenset("trim trims meet meets meeting into joint join joins frieze miter mitre".split())
_CURVES = frozenset("arc arch arched curve curved radius eyebrow".split())
_ALONG = frozenset("the roof slope rafter along deck".split())
_SLOPING = frozenset("ramp ramps slope sloped brace strut prop gangway plank guy rafter stringer hypotenuse".split())
_LEANS = frozenset("rafter rafters tail tails brace strut prop stringer".split())  # what is measured along itself
_OVER, _OFF = frozenset("over run runs out across horizontal horizontally plan".split()), frozenset(("off", "from", "to", "of"))
_EXTREMES = frozenset("hottest coldest warmest coolest highest lowest".split())
_HERE = frozenset("now today outside inside indoors here currently".split())
_PLACES = (["in", "shop"], ["in", "the"], ["in", "here"], ["in", "my"], ["at", "the"], ["out", "here"], ["this", "morning"])
_CHANGES = frozenset("change swing drop drops fall falls rise rises difference by of colder warmer hotter cooler range".split())


def only_way(chart: Chart, question: Question) -> None:
    """Put right what can be only one way."""
    put_right = _BY_TOPIC.get(question.topic)
    if put_right is not None:
        put_right(chart, question)


def rather(chart: Chart, reading: Reading) -> None:
    """Leave out the questions whose words are all part of another's: a level cut is no joint with a level trim."""
    questions = reading.questions
    topics = {question.topic for question in questions}
    left = set()
    level_cut = "plumb cut" in topics and _LEVEL_CUT in pairwise(chart.words)
    if level_cut and _JOINED.isdisjoint(chart.words):
        left.add("rake to level joint")
    if not _CURVES.isdisjoint(chart.words) and any(q.topic == "arc" and "rise" in q.givens for q in questions):
        left.update(("right triangle", "marks on centre"))
    if "rise over a run" in topics and asks_how_high(chart.words):
        left.add("sloped length")
    first = next(iter(reading.unaided), None)
    if "tape arithmetic" in topics and first is not None and first.plain and _no_sum(chart, first):
        doubted = questions[0].topic == "tape arithmetic" and not questions[0].whole
        questions = [first] if doubted or first in questions else questions
    reading.questions = [question for question in questions if question.topic not in left]


def asks_how_high(words: list[str]) -> bool:
    """Whether it is asked how high something gets; how far up the roof is along it."""
    for at in range(len(words) - 2):
        if words[at : at + 3] in (["how", "far", "up"], ["how", "high", "up"]):
            return _ALONG.isdisjoint(words[at + 3 : at + 5])
        if words[at : at + 2] == ["how", "high"]:
            return True
    return False


def _no_sum(chart: Chart, question: Question) -> bool:
    """Whether the words that name a question's topic are never said of a sum: a diagonal that is off, a saw's two sides."""
    if question.topic == "can my saw cut it":
        sides_of_the_saw(chart, question)
    words, given = chart.words, question.givens
    if question.topic == "miter for a corner":
        return not _GAUGES.isdisjoint(words)
    if question.topic == "out of square":
        return len(given) == 3 and "diagonal" in given
    if question.topic == "can my saw cut it":
        return {"left", "right", "setting"} <= given.keys() and {"left", "right"} <= set(words)
    return question.topic == "right triangle" and not _SLOPING.isdisjoint(words) and len(given) >= 2


# ── corners ──


def _bay(chart: Chart, question: Question) -> None:
    """A bay that would turn past square is told by its corner; a number of sides that is its angle said again goes."""
    givens = question.givens
    bay, sides, shape = givens.get("bay"), givens.get("sides"), givens.get("shape")
    if shape is not None and sides is not None and sides.value.value != _SIDES.get(str(shape.value).upper()):
        question.unplaced = [sides.text]  # an octagon 24 across
    if bay is None or not isinstance(bay.value, Angle):
        return
    if sides is not None and sides.value.value == bay.value.value:
        del givens["sides"]
    if bay.value.value > STEEPEST_BAY and len(givens) == 1:
        question.topic, question.givens, question.swaps = "miter for a corner", {"corner": bay}, []


def _sprung(chart: Chart, question: Question) -> None:
    """A corner taken for a number of sides that no ring has, or for what the moulding springs at."""
    sides, spring = question.givens.get("sides"), question.givens.get("spring")
    other = question.givens.get("corner") or sides
    if spring is not None and other is not None and other.value.value < SPRUNG < spring.value.value:
        sprung = replace(other, value=Angle(other.value.value, "deg", other.text))
        kept = {name: heard for name, heard in question.givens.items() if name != "sides"}
        question.givens, question.swaps = {**kept, "spring": sprung, "corner": spring}, []
        return
    if sides is None or "corner" in question.givens or not MOST_SIDES < sides.value.value < 180:
        return
    corner = replace(sides, value=Angle(sides.value.value, "deg", sides.text))
    question.givens = {name: heard for name, heard in question.givens.items() if name != "sides"} | {"corner": corner}
    question.swaps = []


def _gauged(chart: Chart, question: Question) -> None:
    """What a gauge set into the corner says is the corner."""
    heard = question.givens.get("corner")
    if heard is None or not question.swaps or heard.value.value < LEAST_READ or not _TURNS.isdisjoint(chart.words):
        return
    start, _ = places_of(chart, heard)
    before = chart.words[max(0, start - 3) : start]
    if not _GAUGES.isdisjoint(before) and not _SAYS.isdisjoint(before):
        question.swaps = [swap for swap in question.swaps if "turn" not in swap]


def sides_of_the_saw(chart: Chart, question: Question) -> None:
    """52 to the left and 58 to the right."""
    told: dict[str, Heard] = {}
    for name in _REACHES:
        heard = question.givens.get(name)
        if heard is not None and heard.end > heard.start:
            _, end = places_of(chart, heard)
            side = next((word for word in chart.words[end : end + 4] if word not in _TO_THE), "")
            if side in ("left", "right"):
                told[side] = heard
    if len(told) == 2:
        kept = {name: heard for name, heard in question.givens.items() if heard not in told.values()}
        question.givens, question.swaps = {**kept, **told}, []


# ── curves ──


def _arc(chart: Chart, question: Question) -> None:
    """A radius that would not reach half across, beside the rise that makes it, is how far apart the offsets are."""
    givens = question.givens
    radius, width = givens.get("radius"), givens.get("width")
    if radius is None or width is None or "rise" not in givens or "every" in givens:
        return
    if radius.value.to("in").value * 2 >= width.value.to("in").value:
        if ("what", "radius") in pairwise(chart.words):
            question.left = [*question.left, givens.pop("radius").text]  # what is asked was not given: a bar of six feet
        return
    start, end = places_of(chart, radius)
    if not MADE_OF.isdisjoint(chart.words[end : end + 1]):
        del givens["radius"]  # strips of 1/4 ply
        question.swaps = []
    elif not _OFFSETS.isdisjoint(chart.words[max(0, start - 3) : start]):
        givens["every"] = givens.pop("radius")
        question.swaps = []


# ── cold and heat ──


def _frost(chart: Chart, question: Question) -> None:
    """A bare number is no dew point where no word says so."""
    dew = question.givens.get("dew")
    if dew is not None and dew.bare and _DEW.isdisjoint(chart.words):
        del question.givens["dew"]
        question.missing, question.swaps = ["dew"], []


def _room(chart: Chart, question: Question) -> None:
    """Degrees of no scale in a room with people in it: 21 can only be Celsius."""
    heard = question.givens.get("temperature")
    if heard is None or not heard.others or not isinstance(heard.value, Temperature):
        return
    celsius = next((value for value in (heard.value, *heard.others) if value.unit == "degC"), None)
    words = chart.words
    within = not _INDOORS.isdisjoint(words) or any(words[at : at + 2] in _IN_THERE for at in range(len(words)))
    if celsius is not None and within and _OUTDOORS.isdisjoint(words) and WARM_ROOM[0] <= celsius.value <= WARM_ROOM[1]:
        question.givens["temperature"] = replace(heard, value=celsius, others=())


def _hot_and_cold(chart: Chart, question: Question) -> None:
    """The hottest it gets is not under the coldest, where neither was said by its name: 60 at worst, down to -15."""
    hot, cold = question.givens.get("hottest"), question.givens.get("coldest")
    if not _EXTREMES.isdisjoint(chart.words):
        return
    if hot is not None and cold is not None and hot.value.unit == cold.value.unit and hot.value.value < cold.value.value:
        question.givens, question.swaps = {**question.givens, "hottest": cold, "coldest": hot}, []


def _stated(chart: Chart, question: Question) -> None:
    """How warm it is now is no change of temperature: it's 62 F in the shop."""
    change = question.givens.get("change")
    if change is None or not {"start", "end"}.isdisjoint(question.givens):
        return
    start, end = places_of(chart, change)
    words = chart.words
    before, after = words[max(0, start - 2) : start], words[end : end + 2]
    temperature = any(r.kind == "temperature" and r.end == end and r.sure > change.sure for r in chart.readings[start])
    here = not _HERE.isdisjoint(after[:1]) or after in _PLACES
    if temperature and (here or not {"it's", "its"}.isdisjoint(before)) and _CHANGES.isdisjoint(before + after):
        del question.givens["change"]
        question.missing, question.swaps = ["change"], []


# ── the wall ──


def _fall(chart: Chart, question: Question) -> None:
    """A sill is no 140 inches wide, and two in twelve is no sixth of an inch per foot."""
    no_ratio(chart, question)
    if not _SILLS.isdisjoint(chart.words) and _RUNS.isdisjoint(chart.words):
        no_inches(question.givens, "width", WIDEST_SILL)
    heard, width = question.givens.get("pitch"), question.givens.get("width")
    if heard is not None and heard.value.unit == "deg" and width is not None and not _LEANS.isdisjoint(chart.words):
        angle = replace(heard, value=Angle(heard.value.value, "deg", heard.text))
        question.topic, question.swaps = "right triangle", []
        level = any(word in _OVER or (word == "level" and before not in _OFF) for before, word in pairwise(["", *chart.words]))
        question.givens = {"run" if level else "slope": width, "angle": angle, "wanted": Heard("RISE", 0, 0, "")}
        return
    if heard is None or not heard.text.replace(" ", "").endswith("/12"):
        return
    ways = [way for way in (question.givens, *question.swaps) if "pitch" in way]
    rise = max(way["pitch"].value.value for way in ways)
    question.givens, *question.swaps = [way for way in ways if way["pitch"].value.value == rise]


def _layers(chart: Chart, question: Question) -> None:
    """The depth of a jamb is no layer: jambs are 6 9/16, a 6 9/16 jamb."""
    heard = question.givens.get("layers")
    if heard is None or _OPENINGS.isdisjoint(chart.words) or not isinstance(heard.value, tuple) or len(heard.value) < 3:
        return
    last = heard.value[-1]
    if not isinstance(last, Layer) or last.thickness is None:
        return
    _, end = places_of(chart, heard)
    rows = chart.readings[max(0, end - 8) : end]
    ending = [r.start for row in rows for r in row if r.end == end and isinstance(r.value, Quantity)]
    start = min(ending, default=end)
    told = chart.words[start - 1] in _ARE and chart.words[start - 2] in _OPENINGS
    after = [word for word in chart.words[end : end + 3] if word not in ("window", "door")]
    if told or (not _OPENINGS.isdisjoint(after[:1]) and _JAMB_ASKED.isdisjoint(after[1:2])):
        question.givens["layers"] = _but_last(chart, heard, start - 2 if told else start)


def _but_last(chart: Chart, heard: Heard, stop: int) -> Heard:
    text = chart.text[heard.start : chart.tokens[stop].start].rstrip(" .,;")
    return replace(heard, value=heard.value[:-1], end=heard.start + len(text), text=text)


def _measured_across(chart: Chart, question: Question) -> None:
    """Two sides and what was measured across: there is nothing else to ask of those three."""
    if len(question.givens) == 3 and not question.swaps:
        question.lacking = 0


def _priced(chart: Chart, question: Question) -> None:
    """38.90 the square metre is a price, where no word tells of weight; a whole number may be either."""
    weight = question.givens.get("weight")
    if weight is None or not weight.bare or not _WEIGHT.isdisjoint(chart.words):
        return
    if re.fullmatch(r"\d+\.\d\d", weight.text) is None:
        question.lacking = 1
        return
    as_price(question, weight)


def _left_of_it(chart: Chart, question: Question) -> None:
    """How much stick have I got after two cuts asks for what is left of one."""
    if "stick" in chart.words and question.givens.keys() <= {"pieces", "stock_length", "kerf"} and "much" in chart.words:
        question.lacking = 1


def _so_many_of_them(chart: Chart, question: Question) -> None:
    """37.5 of them, at so much the square metre, are square metres."""
    count, per = question.givens.get("count"), question.givens.get("per")
    if count is None or per is None or "area" in question.givens or count.value.value.denominator == 1:
        return
    kind = str(getattr(per.value, "name", per.value))
    if kind in PER_AREA:
        area = as_area(count, kind)
        question.givens = {name: heard for name, heard in question.givens.items() if name != "count"} | {"area": area}


def _no_such_sum(chart: Chart, question: Question) -> None:
    """What is clear between two posts is less than the whole; three of twelve boards are no 36."""
    total = question.givens.get("sum")
    if total is None:
        return
    end = places_of(chart, total)[1]
    things = chart.words[end : end + 1] and chart.words[end].isalpha() and chart.words[end].endswith("s")
    clear = "clear" in chart.words and getattr(total.value, "operation", "") == PLUS
    if clear or (things and re.fullmatch(r"\w+ of (?:the )?\w+", total.text)):
        question.lacking = 1


def _sold_so(chart: Chart, question: Question) -> None:
    """Nothing is sold 15 ft 7 5/8 long: then it is no question of sticks."""
    stock = question.givens.get("stock")
    if stock is not None and isinstance(stock.value, Length) and stock.value.to("in").value.denominator in (4, 8, 16, 32):
        question.lacking = 1


def _ladder(chart: Chart, question: Question) -> None:
    """How far out its feet are is no height: the feet are 5 foot out, how high will it reach."""
    height = question.givens.get("height")
    if height is not None and chart.words[places_of(chart, height)[1] :][:1] == ["out"]:
        del question.givens["height"]
        question.missing, question.swaps = ["height"], []


def _footers(chart: Chart, question: Question) -> None:
    """Twelve footers are sticks, and nothing to put in another unit."""
    value = question.givens.get("value")
    if value is not None and value.text.lower().endswith(("footer", "footers")):
        del question.givens["value"]
        question.missing, question.swaps = ["value"], []


def _rolls(chart: Chart, question: Question) -> None:
    """A roll is longer than wide: of 100 by 5 foot, the five are its width, and both are feet."""
    width, length = question.givens.get("roll_width"), question.givens.get("roll_length")
    if width is None or length is None or not width.bare or length.bare or length.value.unit != "ft":
        return
    if width.value.value > WIDEST_ROLL >= length.value.value:
        long = replace(width, value=Length(width.value.value, "ft", width.text), others=())
        question.givens.update(roll_width=length, roll_length=long)


_BY_TOPIC: dict[str, Callable[[Chart, Question], None]] = {
    "polygon": _bay,
    "compound cut": _sprung,
    "can my saw cut it": sides_of_the_saw,
    "miter for a corner": _gauged,
    "arc": _arc,
    "frost tonight": _frost,
    "dew point": _room,
    "thermal movement": _stated,
    "end gap": _hot_and_cold,
    "air gap": gap_told,
    "vent opening": gap_told,
    "fall": _fall,
    "build-out": _layers,
    "membrane rolls": _rolls,
    "ladder footing": _ladder,
    "weight": _priced,
    "trim sticks": _sold_so,
    "cost": _so_many_of_them,
    "tape arithmetic": _no_such_sum,
    "cut list": _left_of_it,
    "out of square": _measured_across,
    "conversion": _footers,
}
