"""What is asked is another thing than the topic that fits: a nail's length and no sum, ply for a gable and not how high it is.

Such a question is not answered as it stands: the conversation asks, or takes the other topic where that fits too.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise

from intents.chart import Chart, quantities
from intents.expressions import expression
from intents.from_a_stick import TOPIC as PIECES
from intents.from_a_stick import from_a_stick
from intents.gable_of_what import gable_of_what
from intents.question import Question, Reading
from intents.reading import Dims
from intents.second_reader import places_of
from intents.words_against import (
    asks_a_covering,
    asks_fixings,
    asks_how_open,
    by_area,
    cut_at,
    cut_from_a_sheet,
    half_of_it,
    laid_not_cut,
    no_area,
    of_an_area,
    of_its_edge,
    of_lumber,
    of_one_riser,
    of_sheets,
    packs_a_square,
    sides_of_a_door,
)
from solvers.quantities import Number
from solvers.sums import TIMES, Sum

_FASTENERS = frozenset("screw nail spike lag bolt staple fastener fixing clout brad".split())
_ASKED = frozenset(("what", "which"))
_SHEETS = frozenset(
    "ply plywood osb sheathing siding cladding felt paper underlay housewrap membrane shingle shingles shiplap paint stain"
    " tile tiles boarding".split()
)
_COVERING = frozenset("painting staining covering cladding siding shingling boarding".split())  # what am I painting
_WE = (("am", "i"), ("are", "we"))
_LINES = frozenset(("rise over a run", "gable height", "fall", "sloped length", "rake length"))
_PANELS = frozenset("panels boards planks sheets bays".split())
_COVERS = frozenset("cover covers covering coverage net face show shows showing".split())
BOARDS, _LAYOUT = "cladding boards", "course layout"
_EACH = frozenset(("of", "at", "@"))
_OF_IT = frozenset("parts part portions divisions shares equal even same".split())  # of the whole, as "six equal parts of 12 ft"
_HIGH = frozenset((("how", "high"), ("how", "tall"), ("what", "height")))
_HOW_SHOWN = frozenset((("exposure", "in"), ("what", "exposure"), ("exposure", "?"), ("exposure", "")))
_RISES = frozenset(
    "high tall height reach reaches up far come comes top total rise wall cover covers make makes fill fills".split()
)
_BOUGHT = ("weight", "cost")  # of so many, which are never what is asked there
_GOODS = frozenset("boards planks sheets panels sticks lengths battens bundles rolls tubes boxes".split())
_OF_A_GABLE = frozenset("gable gables gabled triangle triangles triangular peak end ends dormer dormers point top".split())
_STAGGERED = frozenset(
    "joint joints stagger staggers staggered staggering butt butts butting seam seams offset offsets shift shifted pattern row"
    " rows course courses random repeat repeats break breaks ends boards".split()
)
_GOES = frozenset("goes go runs bends bend strip trim curve length long far radius".split())  # a strip that goes round it
_ROUNDS = frozenset(("round", it) for it in ("it", "that", "them", "up", "down", "to"))
_GETS, _HEATS = frozenset("get gets grow grows go goes".split()), frozenset("summer winter heat sun cold".split())
_ONE_LENGTH = frozenset(("square check", "rake length", "sloped length"))


def _asks_how_much_longer(words: Sequence[str]) -> bool:
    """Whether it is asked by how much one length is more than another: how much longer is the diagonal than the side."""
    more = any(trio[:2] == ("how", "much") and trio[2] in _LONGER for trio in zip(words, words[1:], words[2:], strict=False))
    return more and "than" in words


_CUTS = frozenset(  # some of which tell of boards that end at a rake
    "cut cuts cutting angle angles angel bevel miter mitre saw set degrees trim clip clipped splay edge siding boards board bords"
    " weatherboard weatherboards clapboard clapboards shingle shingles cladding course courses plank planks lap laps".split()
)
_SAW_ANGLES = ("rake return", "peak joint", "rake to level joint", "plumb cut", "miter for a corner",
               "corner in several pieces", "polygon", "compound cut", "roof angle")  # fmt: skip


_SIDED = frozenset("sides ends rakes eaves gables walls".split())
_TILES = frozenset("tile tiles paver pavers".split())
_VENTS = frozenset("vent vents louver louvers louvre louvres".split())
_BY_WORDS: dict[str, Callable[[Sequence[str]], bool]] = {  # topics that their words alone tell not to be asked
    PIECES: laid_not_cut, "polygon": sides_of_a_door, "strapping": cut_from_a_sheet,
    "roof area": of_its_edge,
    "cut list": lambda words: "coil" in words,  # an apron of 6 and 4 out of a 3 foot coil
    "staggered joints": _STAGGERED.isdisjoint,
    "end cut along the rake": lambda words: _CUTS.isdisjoint(words) or asks_how_open(words),  # gables too, on the 24 ends
    **dict.fromkeys(_ONE_LENGTH, _asks_how_much_longer), **dict.fromkeys(_SAW_ANGLES, asks_how_open),
    "square check": lambda words: of_an_area(words) or _asks_how_much_longer(words),
    "arc": lambda words: not _ROUNDS.isdisjoint(pairwise(words)) and _GOES.isdisjoint(words),  # round it to a sixteenth
}
_WEIGHED = frozenset("weight weigh weighs heavy weighing".split())
_SIGNED_MONEY = frozenset("$ £ € dollar dollars buck bucks quid cent cents cost costs price priced euro euros pay".split())
_EACH_ONE = frozenset("a an per each apiece /".split())
_MONEY = frozenset(
    "at @ for $ £ € dollar dollars buck bucks quid cent cents cost costs price priced prices pay paying pays bill worth charge"
    " charges spend quote quoted quotes tax run runs is are each apiece per".split()
)
_HEAT = frozenset(("hottest", "coldest", "warmest"))  # 115, and coldest minus 10: nothing is taken off
_SIDES = {"width": "length", "height": "height", "openings": "openings"}  # of a gable, and of a wall
_EDGES = frozenset("edge edges rake rakes verge verges barge".split())
_CLADS = frozenset("siding cladding".split())
_HOW_FAR = frozenset(("how", size) for size in ("high", "tall", "long", "wide"))
_HOW_MUCH = frozenset((("how", "much"), ("how", "many"), ("area", "of"), ("the", "area"), ("what", "area"), ("how", "big")))
_SPACES = frozenset(("spaces", "spacing", "spacings"))
_UNITS, _END = frozenset(("mm", "cm", "inch", "inches", "metres", "meters")), 3  # that is asked for, so near the end of the line
_ENDS = frozenset(("?", "!", ".", ",", ";"))
_SIZES = frozenset("tall long wide high deep".split())
_SIGNS, _EACH_OF_THEM = frozenset("minus less plus add take".split()), frozenset(("each", "apiece"))
_LEAST_TRIM = 2  # feet of trim that anybody counts sticks for
_OUT_OF, _SO_LONG = frozenset("in from of using".split()), 5  # words back from the lengths: in three point six lengths
_OF_A_WALL = frozenset(
    "on for along over across wall walls high height tall centres centers centre center oc stud studs rows".split()
)
_PARTED = frozenset("divide divided dividing split even evenly equal equally into each apiece share shared".split())
_LONGER = frozenset("longer shorter more less bigger higher wider".split())
_SECTION = expression(r"\b[12]x(?:2|3|4|6|8|10|12)\b", re.IGNORECASE)  # 2x4, and no 2 x 4
_NEAR = 2  # words from "how much" to what it is asked of


def asked_instead(chart: Chart, question: Question) -> bool:
    """Whether the words ask for what the question's topic never gives."""
    words, topic = chart.words, question.topic
    if gable_of_what(chart, question):
        return True
    if topic == "tape arithmetic":
        other = of_lumber(chart, question) or _of_a_section(question) or asks_a_covering(words)
        return other or by_area(words) or _is_no_sum(words) or _signed_alone(chart) or _of_one_size(chart) or _asks_size(chart)
    if topic in _BY_QUESTION:
        return _BY_QUESTION[topic](chart, question)
    if topic in _LINES:
        return _asks_sheets(words)
    if topic == BOARDS:
        return _asks_high(words) or _asks_exposure(words) or of_sheets(words) or no_area(chart, question) or asks_fixings(words)
    if topic == "height of courses":
        return any(pair in _HOW_SHOWN for pair in pairwise((*words, ""))) and _RISES.isdisjoint(words)
    if topic in _BY_WORDS:
        return _BY_WORDS[topic](words)
    if topic == "cost" and (_tells_no_money(words, question) or packs_a_square(words, question)):
        return True
    if topic in _BOUGHT:
        return any(trio[:2] == ("how", "many") and trio[2] in _GOODS for trio in zip(words, words[1:], words[2:], strict=False))
    return False


def _tells_no_money(words: Sequence[str], question: Question) -> bool:
    """Whether nothing tells that a whole number is money: 5 squares a pallet, I need 27 square."""
    price = question.givens.get("price")
    if not _WEIGHED.isdisjoint(words) and _SIGNED_MONEY.isdisjoint(words):
        return True  # weight at 3.6 a foot
    each = any(word == price.text and after in _EACH_ONE for word, after in pairwise(words)) if price is not None else False
    return price is not None and price.text.isdecimal() and _MONEY.isdisjoint(words) and not each  # theyre 54 a roll


def area_rather(chart: Chart, reading: Reading) -> None:
    """Leave out how high or long a gable is where it is asked how much ply or felt covers it, and its area is another way; and
    boards where it is asked how high courses come."""
    told = reading.questions[:1] and reading.questions[0].topic == PIECES and reading.questions[0].plain
    if not told and (stick := from_a_stick(chart)) is not None:
        reading.questions = [stick]
        return
    reading.questions = [_rather_a_rake(chart, question) for question in reading.questions]
    if _of_a_wall(chart.words):
        reading.questions = _walls(chart.words, reading.questions)
    if any(q.topic == BOARDS for q in reading.questions):
        reading.questions = [question for question in reading.questions if not _of_an_inch(question)]
    if any(q.topic == "height of courses" for q in reading.questions) and _asks_high(chart.words):
        reading.questions = [question for question in reading.questions if question.topic != BOARDS]
    if any(q.topic == _LAYOUT and q.whole for q in reading.questions) and _asks_exposure(chart.words):
        reading.questions = [question for question in reading.questions if question.topic not in (BOARDS, "take-off")]
    sold = [question for question in reading.questions if question.topic == "trim sticks" and question.complete]
    if sold and reading.questions[0].missing == ["spacing"] and _in_lengths(chart):
        reading.questions = [replace(sold[0], lacking=0)]
    if any(q.topic == "gable area" and q.whole for q in reading.questions) and _asks_sheets(chart.words):
        reading.questions = [question for question in reading.questions if question.topic not in _LINES]


def _rather_a_rake(chart: Chart, question: Question) -> Question:
    """The question as of a rake where trim for the edge of a gable is asked, or an overhang is told beside a sloped board."""
    words = chart.words
    if question.topic == "gable area" and "trim" in words and not _EDGES.isdisjoint(words) and "openings" not in question.givens:
        kept = {name: heard for name, heard in question.givens.items() if name in ("width", "pitch")}
    elif question.topic == "sloped length" and (run := question.givens.get("run")) is not None and run.end > run.start:
        start = places_of(chart, run)[0]
        if words[max(0, start - 4) : start] not in (["and", "the", "overhang", "is"], ["the", "overhang", "is", "about"]):
            return question
        kept = {"overhang": run} | {name: heard for name, heard in question.givens.items() if name == "pitch"}
    else:
        return question
    missing = [name for name in ("pitch", "width") if name not in kept]
    return replace(question, topic="rake length", givens=kept, missing=missing, swaps=[], lacking=0)


def _of_a_wall(words: Sequence[str]) -> bool:
    """Whether a wall is named, and nothing of a gable."""
    return not {"wall", "walls"}.isdisjoint(words) and _OF_A_GABLE.isdisjoint(words)


def _walls(words: Sequence[str], questions: list[Question]) -> list[Question]:
    """The questions with that of a gable as of the wall that is named, and without boards where only the area is asked."""
    left = [q for q in questions if q.topic != BOARDS or not _asks_its_area(words, q)]
    if any(q.topic == "wall area" for q in left):
        return [q for q in left if q.topic != "gable area"] if questions[0].topic == "gable area" else left
    return [_as_a_wall(q) if q.topic == "gable area" and q.givens.keys() <= _SIDES.keys() else q for q in left]


def _as_a_wall(gable: Question) -> Question:
    givens = {_SIDES[name]: heard for name, heard in gable.givens.items()}
    missing = [name for name in ("length", "height") if name not in givens]
    return replace(gable, topic="wall area", givens=givens, missing=missing, lacking=0)


def _asks_its_area(words: Sequence[str], question: Question) -> bool:
    """Whether the area to clad is asked for, which boards are counted from: siding area on a 40 foot wall."""
    return "area" not in question.givens and any(one in _CLADS and two == "area" for one, two in pairwise(words))


def _counts_the_gaps(chart: Chart, question: Question) -> bool:
    """Whether so many gaps were taken for so many pieces, which are one more or one less."""
    count = question.givens.get("count")
    end = places_of(chart, count)[1] if count is not None and count.end > count.start else len(chart.words)
    return chart.words[end : end + 1] in (["gaps"], ["spaces"])


def _is_no_sum(words: Sequence[str]) -> bool:
    ranged = ("to", "plus") in pairwise(words)  # minus 12 to plus 34
    if ranged or not _HEAT.isdisjoint(words) or cut_at(words) or half_of_it(words):
        return True
    return _asks_fastener(words) or _asks_spaces(words)


def _of_a_section(question: Question) -> bool:
    """Whether what lumber is called by is multiplied in a sum: 2x4 less 1/2."""
    heard = question.givens.get("sum")
    return heard is not None and _SECTION.search(heard.text) is not None and _multiplies(heard.value)


def _multiplies(part: object) -> bool:
    """Whether two of the sizes that lumber has are multiplied."""
    if not isinstance(part, Sum):
        return False
    sizes = [each.value for each in (part.left, part.right) if isinstance(each, Number) and each.value.denominator == 1]
    own = part.operation == TIMES and len(sizes) == 2 and sizes[0] in (1, 2) and 2 <= sizes[1] <= 12
    return own or _multiplies(part.left) or _multiplies(part.right)


def _signed_alone(chart: Chart) -> bool:
    """Whether one number alone is put to something or taken off it, and nothing is told of what: minus 1/8 each."""
    signed = bool(chart.words) and chart.words[0] in _SIGNS and chart.words[-1] in _EACH_OF_THEM
    return signed and len([*quantities(chart, 0, len(chart.words))]) == 1


def _of_one_size(chart: Chart) -> bool:
    """Whether the only numbers are the two sides of one thing, taken off: less a 3 by 7 opening."""
    if chart.words[:1] == [] or chart.words[0] not in _SIGNS:
        return False
    sizes = [r for row in chart.readings for r in row if isinstance(r.value, Dims)]
    numbers = [r.start for r in quantities(chart, 0, len(chart.words))]
    return any(all(size.start <= at < size.end for at in numbers) for size in sizes)


def _of_an_inch(question: Question) -> bool:
    """Whether a few inches were taken for all the trim there is, where boards are asked for that show so much."""
    total = question.givens.get("total") if question.topic == "trim sticks" else None
    return total is not None and total.value.to("ft").value < _LEAST_TRIM


def _asks_side(chart: Chart, question: Question) -> bool:
    """Whether the area is told and a side is asked: 40 ft long, area 360, how high."""
    pairs = {*pairwise(chart.words)}
    if pairs.isdisjoint(_HOW_FAR) or not pairs.isdisjoint(_HOW_MUCH):
        return False
    heights = {"height", "peak"} & question.givens.keys()
    told = bool(heights) and not pairs.isdisjoint({("how", "high"), ("how", "tall")})
    told = told or (("how", "long") in pairs and "length" in question.givens)
    told = told or (("how", "wide") in pairs and "width" in question.givens)
    return told or any(word == "area" and chart.numbers >> at + 1 & 1 for at, word in enumerate(chart.words))


def _so_many_panels(chart: Chart, question: Question) -> bool:
    """Whether what was taken for their cover is how many panels there are: 5 panels all the same width."""
    cover = question.givens.get("cover")
    if cover is None or not cover.bare or cover.end <= cover.start or not _COVERS.isdisjoint(chart.words):
        return False
    return not _PANELS.isdisjoint(chart.words[places_of(chart, cover)[1] :][:1])


def _asks_high(words: Sequence[str]) -> bool:
    """Whether it is asked how high and not how many: how high will 13 courses get us."""
    asked = {*pairwise(words)}
    return not _HIGH.isdisjoint(asked) and ("how", "many") not in asked


def _in_lengths(chart: Chart) -> bool:
    """Whether so much is asked for in lengths of a size, and nothing is told of a wall: battens 47 metres in 3.6 lengths."""
    ends = [at for at, word in enumerate(chart.words) if word in ("lengths", "footers") and at]
    sold = any(not _OUT_OF.isdisjoint(chart.words[max(0, at - _SO_LONG) : at]) for at in ends)
    return sold and _OF_A_WALL.isdisjoint(chart.words)


def _asks_exposure(words: Sequence[str]) -> bool:
    """Whether the exposure is asked at the end, and no count of boards: 145 cover, wall 2.7 m, what's the exposure."""
    end = [word for word in words if word not in _ENDS][-3:]
    return end[-1:] == ["exposure"] and not {*_ASKED, "whats"}.isdisjoint(end) and ("how", "many") not in pairwise(words)


def _asks_sheets(words: Sequence[str]) -> bool:
    return any(trio[:2] in _WE and trio[2] in _COVERING for trio in zip(words, words[1:], words[2:], strict=False)) or any(
        pair == ("how", "much") and not _SHEETS.isdisjoint(words[at + 2 : at + 2 + _NEAR])
        for at, pair in enumerate(pairwise(words))
    )


def _asks_fastener(words: Sequence[str]) -> bool:
    """How long a fastener is to be: spike length, which screw, how long a nail."""
    if ("how", "much", "bite") in zip(words, words[1:], words[2:], strict=False):
        return True  # how much bite through 3/4 and 5/8
    for at, word in enumerate(words):
        if word not in _FASTENERS:
            continue
        asked = not _ASKED.isdisjoint(words[max(0, at - 1) : at]) or words[max(0, at - 3) : at] == ["how", "long", "a"]
        if asked or words[at + 1 : at + 2] == ["length"]:
            return True
    return False


def _asks_a_leg(chart: Chart, question: Question) -> bool:
    """Whether a leg is asked, and the slope was to be answered: how long's the other leg, how far is the peg from the post."""
    wanted, pairs = question.givens.get("wanted"), {*pairwise(chart.words)}
    if wanted is None or str(wanted.value).lower() != "slope":
        return False
    return ("other", "leg") in pairs or (("how", "far") in pairs and "from" in chart.words)


def _asks_spaces(words: Sequence[str]) -> bool:
    """Whether what is asked, at the end, is the spaces between things: 7 joists 1 1/2 thick over 10 feet, spaces."""
    said = [word for word in words if word not in _ENDS]
    sized = said[-3:-2] == ["/"] or not _UNITS.isdisjoint(said[-2:-1])  # plus three 1/4 spaces
    return not _SPACES.isdisjoint(said[-1:]) and not sized


def _asks_size(chart: Chart) -> bool:
    """Whether a size is asked in a unit, and every number was said without one: 24 courses of 100, how tall mm."""
    last = chart.words[-_END:]
    sized = any(r.kind == "length" for row in chart.readings for r in row)
    return not sized and not _UNITS.isdisjoint(last) and any(a == "how" and b in _SIZES for a, b in pairwise(chart.words))


def _so_long_each(chart: Chart, question: Question) -> bool:
    """Whether the length was told of each part: six bays of 1.8 m are not 1.8 m in six."""
    parts, length = question.givens.get("parts"), question.givens.get("length")
    if parts is None or length is None or length.end <= length.start or parts.end <= parts.start:
        return False
    counted, start = places_of(chart, parts)[1], places_of(chart, length)[0]
    between = chart.words[counted:start]
    each = chart.words[places_of(chart, length)[1] :][:1] in (["each"], ["apiece"])
    if each and between and all(word.isalpha() for word in between):
        return True  # 3 legs 3 foot each
    if between and len(between) <= _NEAR and all(word.isalpha() and word.endswith("s") for word in between[-1:]):
        return _PARTED.isdisjoint(chart.words)  # 5 pickets inch and a half
    things = between[:-1]
    told = 0 < len(things) <= _NEAR and between[-1] in _EACH
    return told and all(word.isalpha() for word in things) and _OF_IT.isdisjoint(things)


def _no_even_parts(chart: Chart, question: Question) -> bool:
    """Whether what is parted was told for each part, is one riser, or is one of what was told before: four of those boards."""
    return _so_long_each(chart, question) or of_one_riser(chart.words, question) or ("of", "those") in pairwise(chart.words)


def _no_sheets(chart: Chart, question: Question) -> bool:
    """Whether vents are told of, or tiles of which no size was taken, and no sheets that cover a face."""
    tiles = "sheet_width" not in question.givens and not _TILES.isdisjoint(chart.words)
    return tiles or not _VENTS.isdisjoint(chart.words)


def _no_total(chart: Chart, question: Question) -> bool:
    """Whether it is asked how long a trim gets in the sun, or what was taken for its length is how many sides there are."""
    words, total = chart.words, question.givens.get("total")
    end = places_of(chart, total)[1] if total is not None and total.end > total.start else len(words)
    grows = ("how", "long") in pairwise(words) and not (_GETS.isdisjoint(words) or _HEATS.isdisjoint(words) or "many" in words)
    return grows or (total is not None and total.text.strip().isalnum() and not _SIDED.isdisjoint(words[end : end + 1]))


_BY_QUESTION: dict[str, Callable[[Chart, Question], bool]] = {
    "right triangle": _asks_a_leg, "wall area": _asks_side, "gable area": _asks_side, "equal spacing": _counts_the_gaps,
    "balanced panels": _so_many_panels, "divide evenly": _no_even_parts,
    "sheets": _no_sheets, "trim sticks": _no_total,
}  # fmt: skip
