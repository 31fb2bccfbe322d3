"""Sizes that a question does not turn on: the 28 foot ladder, the 10 inch saw, the twenty footers in the truck.

A quantity is passed over only where the words tie it to a thing, and the topic has no use for that thing's size. Then
it is not handed to anything either: the length of a ladder is not the height it bears at.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import reduce
from itertools import pairwise
from operator import or_
from typing import NamedTuple

from intents.chart import Chart, once, span
from intents.expressions import expression
from intents.how_warm_it_is import how_warm
from intents.its_answer import off_the_ground
from intents.kit import of_kit
from intents.lengths import FEET
from intents.listed_totals import THEM
from intents.no_layers import is_no_layer, speaks_of_some
from intents.no_money import money_told
from intents.other_sizes import other_sizes
from intents.reading import Dims, Reading
from intents.remarks import up_to_stop
from intents.timber_names import MADE_OF, gauge, made_of, of_fastener, on_tape, section, timber
from solvers.quantities import Count, Length, Number, Quantity
from solvers.slots import Parameter

LADDER, SAW, TRIM, STOCK, SIDE, EXTENDS = "ladder saw trim stock side extends".split()
SPACING, EXTENT, LONG, COUNTED, NOMINAL, TOOL, LEVEL = "spacing extent long counted nominal tool level".split()
WALL, LAYER, FACE, WRAP, APART, AGAIN, LAP, LUMBER, LEGS = "wall layer face wrap apart again lap lumber legs".split()
TIMBER = "timber"
SECTION = "section"
_WOODS, _NAMED = (LUMBER, TIMBER), (NOMINAL, SECTION)
SHEET, _STEPS = "sheet", frozenset("step steps cards soakers".split())
_NOMINAL_THICK, _NOMINAL_WIDE = (1, 2, Fraction(5, 4)), (2, 3, 4, 6, 8, 10, 12)  # in; by what lumber is called
_HOLES = frozenset("window windows door doors opening openings vent vents hatch wall walls".split())
_FEET_OF = FEET | {"of"}
_BENT = frozenset("flashing z cap bend pan drip metal profile".split())
_LUMBER = frozenset(
    "s stock lumber timber sticks lengths pine cedar spruce fir larch redwood board boards planks siding cladding shiplap trim"
    " casing fascia skirting".split()
)
_NAMES = (
    dict.fromkeys(("ladder", "ladders"), LADDER)
    | {"tape": TOOL, "level": LEVEL}
    | dict.fromkeys(("saw", "saws", "chopsaw", "blade"), SAW)
    | dict.fromkeys(
        "trim trims moulding molding mouldings moldings mould casing casings fascia skirt skirting baseboard board boards cove"
        " crown frieze cornerboards cornerboard architrave architraves".split(),
        TRIM,
    )
    | dict.fromkeys("footers lengths sticks stick stock lumber timber planks sheets".split(), STOCK)
    | dict.fromkeys(("felt", "paper", "underlay"), WRAP)
    | {"wall": WALL}
)
_STOCKS = frozenset(name for name, what in _NAMES.items() if what == STOCK)
_SOLD = frozenset("board boards planks trim moulding molding".split())  # by the length, where that is long enough
_BETWEEN = frozenset("extension step long miter mitre chop table sliding skirt wide my of old pine cedar pvc".split())
_FOR = expression(r"(?:.* )?for(?: about| around| another| some)?$")  # it runs level for about | 3 feet
_IS = frozenset("is are was were be a an the my about only just".split())
_AT = frozenset("at of in".split())  # sticks at 8 foot; a ladder at 8 foot bears there
_THEY = frozenset(("they", "they're", "theyre"))
_EXTENSIONS = frozenset("ext extension extending one".split())  # said of a ladder: "against a 12 ft extension" is a building
_IT = frozenset("it's its ladder ladder's it mine".split())
_BEARS = frozenset("height eave eaves gutter plate landing top bears bearing".split())  # how high a ladder bears
_ACROSS = frozenset(("wide", "thick", "deep"))
_COMES = frozenset("comes come came".split())  # the metal comes 10 ft: so long it is sold
_GOODS = frozenset("metal flashing flashings sheets sheet boards stock lengths sticks trim panels lumber timber they it".split())
_PLACED = frozenset("up high above off out along down in into past".split())  # after a size: where a thing is, not how long
_EACH = (("each",), ("a", "side"), ("per", "side"), ("a", "piece"), ("sides",), ("side",), ("across",), ("wide",))
_CENTRES = frozenset("centres centers centre center oc".split())
# Things of which there are so many, whatever is asked of one.
_MANY = frozenset(
    "dormers dormer windows rafters gables walls boards sheets panels posts guys rows layers roofs bays doors corners"
    " frames boxes packs bundles cartons".split()
)
_DONE_AGAIN = frozenset(("joints", "coats"))  # of which one is asked
_HAS = frozenset("has have got there's".split())
_COVERS = {(by, covers) for by in ("only", "batten", "strip") for covers in ("covers", "hides", "laps", "overlaps")}
_ENDS, _SO = frozenset(".,;?!"), frozenset("and so but which that footer".split())
# Topics about angles alone: no length is theirs.
_ANGLES = frozenset((
    "miter for a corner", "rake return", "peak joint", "rake to level joint", "corner in several pieces", "compound cut",
    "can my saw cut it", "polygon", "plumb cut", "roof angle", "pitch of an angle",
))  # fmt: skip
# Topics about the lines of a roof or a frame, which what is bought to build it tells nothing of.
_LINES = frozenset((
    "sloped length", "rise over a run", "rake length", "gable height", "hip or valley length", "pitch from rise and run",
    "step at the rake", "arc", "square check", "out of square",
))  # fmt: skip
# Topics of what is to be bought, whatever it is fixed from.
_TAKEN_OFF = frozenset((
    "wall area", "gable area", "cladding boards", "squares", "soffit panels", "trim sticks", "membrane rolls", "sealant",
    "step flashing", "take-off",
))  # fmt: skip
_PASSED = (
    dict.fromkeys(_TAKEN_OFF, frozenset((LADDER,)))
    | dict.fromkeys(_ANGLES, frozenset((LADDER, SAW, TRIM, STOCK, EXTENT, LONG, *_NAMED, *_WOODS, TOOL, LEVEL, LAYER, FACE)))
    | dict.fromkeys(_LINES, frozenset((LADDER, SAW, *_WOODS, STOCK, TOOL, LAYER, SPACING, WRAP)))
    | dict.fromkeys(("fastener length", "end gap"), frozenset((SPACING, APART)))
    | dict.fromkeys(("angle off", "rounded pitch", "how far open", "staggered joints"), frozenset((AGAIN,)))
    | {
        "right triangle": frozenset((TIMBER, TOOL)),
        "strapping": frozenset((LADDER, LAYER, *_NAMED, *_WOODS)),
        "fasteners": frozenset((SECTION,)),
        "ladder footing": frozenset((LADDER, EXTENDS)),
        "arc": frozenset((LADDER, SAW, STOCK, TOOL, LAYER, WRAP)),  # its offsets are so far apart
        "bent flashing": frozenset((LEGS,)),
        "step flashing": frozenset((LADDER, SHEET)),
        "cut list": frozenset((LUMBER,)),
        "trim sticks": frozenset((LADDER, LUMBER)),
        "cladding boards": frozenset((LADDER, LUMBER)),
        "weight": frozenset((LUMBER,)),
        "cost": frozenset((LUMBER,)),
        "fall": frozenset((LUMBER,)),
        "vent area": frozenset((COUNTED,)),
        "course layout": frozenset((LONG, SECTION)),
        "courses to openings": frozenset((COUNTED,)),  # two windows of one height
        "wood movement": frozenset((SPACING, APART, LONG, LAP)),
        "air gap": frozenset((SPACING, APART, NOMINAL, LUMBER, WALL)),
        "end cut along the rake": frozenset((LADDER, SAW, STOCK, EXTENT)),
        "polygon": frozenset((LADDER, SAW, TRIM, STOCK, EXTENT, LONG, *_NAMED, *_WOODS, SIDE, TOOL, LEVEL, FACE)),
    }
)
_LEGS = 2  # lengths that a level may be one of: 11 inches down over a 2 foot level
_OWN = frozenset("a my our his the".split())
_HELD: tuple[list[str], ...] = ([], [","], ["."], ["on"], ["and"], ["held"], ["along"], ["laid"])
_SAWN, _LED = frozenset("cut ripped made milled planed sawn".split()), 5
_REACH = frozenset(("enough", "reach", "reaches"))
_LAYERED = frozenset(("fastener length", "build-out"))
_HOW, _MEASURED = frozenset(("how", "what")), frozenset(("many", "wide", "high"))
_SIZES = frozenset("long wide high tall length width size big".split())
_CUTS = frozenset("rip saw miter mitre bevel angle degrees cut set setting gauge".split())
_VENTS = frozenset("gable roof ridge soffit turtle box old".split())
_UNCOUNTED = (  # however many there are
    _ANGLES | _LINES | {"ladder footing", "end gap", "air gap", "wood movement", "thermal movement", "fall"}
)
LEAST_STOCK = 4  # ft
WIDEST_FACE = 24  # in
_FACES = frozenset("high tall wide deep thick across".split())
MOST_VENTS, LEAST_SURE = 20, 0.5  # and how sure a reading is that is tied to a thing


class Tied(NamedTuple):
    """Tokens start to end, tied to a kind of thing."""

    what: str
    start: int
    end: int


def passed(chart: Chart, topic: str, parameters: tuple[Parameter, ...]) -> int:
    """Mask of the quantities that a topic passes over; found once a sentence."""
    key = f"beside {topic}"
    if key not in chart.kept:
        mask = of_kit(chart, topic) | how_warm(chart, topic, parameters) | off_the_ground(chart, topic)
        mask |= money_told(chart, parameters) | (_no_layers(chart) if topic in _LAYERED else other_sizes(chart, topic))
        found = tied(chart)
        chart.kept[key] = mask | _mask(found, topic, parameters) if found else mask
    return chart.kept[key]  # type: ignore[no-any-return]


@once
def _no_layers(chart: Chart) -> int:
    """Mask of the sizes that words tell are no layer's, for the topics that add layers up."""
    if not speaks_of_some(chart.words):
        return 0
    words, mask = [*chart.words, *[""] * 8], 0
    for start, row in chart.starts():
        ends = [r.end for _, r in row if r.kind in ("number", "dims") or isinstance(r.value, Length)]
        if ends and is_no_layer(words, start, max(ends)):
            mask |= span(start, max(ends))
    return mask


def _mask(found: list[Tied], topic: str, parameters: tuple[Parameter, ...]) -> int:
    classes = _PASSED.get(topic, frozenset())
    if topic in _UNCOUNTED and not any(p.kind in (Count, Number, tuple) for p in parameters):
        classes |= {COUNTED, AGAIN}
    return reduce(or_, (span(each.start, each.end) for each in found if each.what in classes), 0)


@once
def tied(chart: Chart) -> list[Tied]:
    """The quantities that words tie to a thing, from left to right."""
    if _is_the_point(chart):
        lumber = [Tied(LUMBER, at, r.end) for at, row in chart.starts() for _, r in row if r.kind == "dims" and _lumber(chart, r)]
        layers = [Tied(SECTION, at, r.end) for at, row in chart.starts() for _, r in row if of_fastener(chart.words, r)]
        layers += [Tied(LAYER, at, r.end) for at, row in chart.starts() for _, r in row if made_of(chart, r)]
        return lumber + layers + _with_ladders(chart)
    return list(_tied(chart))


def _with_ladders(chart: Chart) -> list[Tied]:
    """The sizes of ladders and of step flashing, where it is asked how many there are and not what a ladder reaches."""
    ladders = not {"ladder", "ladders"}.isdisjoint(chart.words) and _REACH.isdisjoint(chart.words)
    if not ladders and _STEPS.isdisjoint(chart.words):
        return []
    return [each for each in _tied(chart) if each.what == SHEET or (ladders and each.what == LADDER)]


def _is_the_point(chart: Chart) -> bool:
    """Whether something may be asked of the size of a thing: will a 20 footer reach, how wide, how many."""
    words = chart.words
    asked = not _MEASURED.isdisjoint(words) and any(a == "how" and b in _MEASURED for a, b in pairwise(words))
    return asked or not _REACH.isdisjoint(words)


def _tied(chart: Chart) -> Iterator[Tied]:
    words = chart.words
    sized = not _SIZES.isdisjoint(words) and any(a in _HOW and b in _SIZES for a, b in pairwise(words))
    cuts = not sized and not _CUTS.isdisjoint(words)
    for start, row in chart.starts():
        for _, reading in row:
            if made_of(chart, reading):
                yield Tied(LAYER, start, reading.end)
                break
            if _lumber(chart, reading):
                yield Tied(LUMBER, start, reading.end)
                break
            if reading.kind == "dims" and not _STEPS.isdisjoint(chart.words[reading.end : reading.end + 2]):
                yield Tied(SHEET, start, reading.end)  # 8x8 steps
                break
            if _stick(reading):
                yield Tied(NOMINAL, start, reading.end)
                break
            if timber(chart, reading):
                yield Tied(TIMBER, start, reading.end)
                break
            if section(words, reading) or gauge(words, reading) or of_fastener(words, reading):
                yield Tied(SECTION, start, reading.end)
                break
            if cuts and _face(words, reading):
                yield Tied(FACE, start, reading.end)
                break
            if reading.sure < LEAST_SURE or not isinstance(reading.value, Quantity):
                continue
            what = _length_of(chart, reading, cuts) if isinstance(reading.value, Length) else _number_of(chart, reading)
            if what:
                yield Tied(what, start, reading.end)
                break


def _face(words: list[str], reading: Reading) -> bool:
    """Whether it is how wide a piece is, of which an angle alone is asked: 5 1/2 high, 12 inches across."""
    if reading.kind not in ("number", "length") or _FACES.isdisjoint(words[reading.end : reading.end + 1]):
        return False
    wide = reading.value.to("in").value if isinstance(reading.value, Length) else reading.value.value  # type: ignore[union-attr]
    return bool(wide <= WIDEST_FACE)


def _stick(reading: Reading) -> bool:
    """Whether it is the name of a stick: 1x8s."""
    first = reading.value.parts[0] if isinstance(reading.value, Dims) else None
    return first is not None and first.kind == "number" and first.value.value == 1  # type: ignore[union-attr]


def _lumber(chart: Chart, reading: Reading) -> bool:
    """Whether it is what the stuff is called that a length is cut from: 8 foot | 1x4; 2x6s."""
    parts = reading.value.parts if isinstance(reading.value, Dims) else ()
    sizes = [part.value.value for part in parts if isinstance(part.value, Number)]
    if len(sizes) != len(parts) or len(sizes) != 2 or sizes[0] not in _NOMINAL_THICK or sizes[1] not in _NOMINAL_WIDE:
        return False
    words, written = chart.words, chart.text[chart.tokens[reading.start].start : chart.tokens[reading.end - 1].end]
    told = words[max(0, reading.start - 1)] in _FEET_OF or not _LUMBER.isdisjoint(words[reading.end : reading.end + 2])
    came = words[max(0, reading.start - _LED) : reading.start]
    cut = not (_SAWN.isdisjoint(came) or {"from", "out"}.isdisjoint(came))  # we cut it from a wet 2 by 8
    near = words[max(0, reading.start - 1) : reading.start] + words[reading.end : reading.end + 1]
    spoken = written.replace(" ", "").isalpha() and not _LUMBER.isdisjoint(near) and _HOLES.isdisjoint(near)
    five_quarter = sizes[0].denominator > 1 and " " not in written  # 5/4x4, wherever it stands
    return cut or five_quarter or (told and " " not in written) or spoken  # clear cedar one by four


def _length_of(chart: Chart, reading: Reading, cuts: bool) -> str:
    """The thing whose size a length is, by the words on either side."""
    words, end = chart.words, reading.end
    assert isinstance(reading.value, Length)
    if "footers" in words[end - 1 : end + 1]:
        return STOCK
    own = "footer" in words[end - 1 : end + 1] and not {LADDER, "ladders"}.isdisjoint(words)
    if own and (end == len(words) or words[end] in _ENDS or words[end] in _SO or words[end] in ("that", "which")):
        return LADDER  # I'm on the ladder, it's a 24 footer
    before = words[max(0, reading.start - 3) : reading.start]
    if words[end : end + 1] and words[end] in _EXTENSIONS and not _IT.isdisjoint(before):
        return EXTENDS  # it's a 28 ft ext
    stops = words[end : end + 1] and "." in chart.text[chart.tokens[end - 1].end : chart.tokens[end].start]  # 8 ft 4 in. Ladder
    name = "" if stops else _named_after(words, end, reading.value.to("ft").value >= LEAST_STOCK)
    name = name or ("" if not _PLACED.isdisjoint(words[end : end + 1]) else _named_before(words, reading.start, end))
    if name == WALL and reading.value.to("ft").value < LEAST_STOCK:
        name = ""  # a 3/8 gap behind the wall
    own = name == LEVEL and words[end : end + 1] == ["level"] and words[reading.start - 1] in _OWN
    lengths = sum(any(r.kind == "length" for _, r in row) for _, row in chart.starts()) if own else 0
    if lengths > _LEGS and words[end + 1 : end + 2] in _HELD:
        return TOOL  # with a four foot level, bubble dead centre
    if name == LADDER and (not _BEARS.isdisjoint(before) or not _BEARS.isdisjoint(words[end : end + 1])):
        name = ""  # eave height 4.2 m, ladder on it
    if name:
        return name
    if _FOR.match(" ".join(words[max(0, reading.start - 2) : reading.start])):
        return EXTENT
    if not _CENTRES.isdisjoint(words[end : end + 2]):
        return SPACING
    if words[reading.start - 1 : reading.start] == ["every"] or "apart" in words[end : end + 2]:
        return APART
    if words[end : end + 1] == ["long"]:
        return LONG
    if tuple(words[max(0, reading.start - 2) : reading.start]) in _COVERS:
        return LAP  # the batten only covers an inch
    return SIDE if cuts and any(tuple(words[end : end + len(each)]) == each for each in _EACH) else ""


def _of_pitched(chart: Chart, end: int) -> bool:
    """Whether a pitch stands at a place, and so many things have it: two | 10/12 roofs."""
    pitches = (r.end for row in chart.readings[end : end + 1] for r in row if r.kind == "pitch")
    return any(not _MANY.isdisjoint(chart.words[at : at + 1]) for at in pitches)


def _number_of(chart: Chart, reading: Reading) -> str:
    """The thing that a bare number counts or measures."""
    words, end = chart.words, reading.end
    after = words[end : end + 2]
    if reading.kind != "number" or ("/" in words[max(0, reading.start - 1) : end] and not _MANY.isdisjoint(after[:1])):
        return ""  # no twelve roofs: two 10/12 roofs
    if words[reading.start - 1 : reading.start] == ["every"]:
        return APART
    if not _CENTRES.isdisjoint(after[:1]):
        return SPACING
    if after[:1] == ["leg"] and after[1:] and after[1] in _BENT:
        return LEGS  # a three leg flashing
    near = range(end, end + len(up_to_stop(words[end : end + 4])))  # pitch 3/12, the sheets come long
    told = "." in words[reading.start] and bool(near) and _named(words, end) == STOCK  # in 4.8 lengths
    if not (told or _STOCKS.isdisjoint(words[end : end + 4])) and any(_named(words, at) == STOCK for at in near):
        return COUNTED  # a couple of 20 footers
    if "vents" in after and (after[0] == "vents" or after[0] in _VENTS) and _few(reading):  # 2 gable vents
        return COUNTED
    if (len(after) == 2 and after[0] in MADE_OF and after[1] in _MANY) or _of_pitched(chart, end):
        return COUNTED  # a hundred spruce boards
    if after[:1] and (after[0] in _MANY or (after[0] == "of" and not THEM.isdisjoint(after[1:]))):
        return COUNTED
    if after[:1] == ["studs"] and not _HAS.isdisjoint(words[max(0, reading.start - 1) : reading.start]):
        return AGAIN  # the wall has 27 studs
    if not _DONE_AGAIN.isdisjoint(after[:1]) and reading.value.value.denominator == 1:  # type: ignore[union-attr]
        return AGAIN  # 16 joints to go
    if after[:2] in (["more", "like"], ["more", "of"]):
        return COUNTED  # there's 2 more like it
    if not _ACROSS.isdisjoint(after[:1]):
        return _named_before(words, reading.start, end)
    they = not _THEY.isdisjoint(words[max(0, reading.start - 1) : reading.start]) and (not after or after[0] in _ENDS)
    return STOCK if they and _named_before(words, reading.start, end) == STOCK else _face_of_trim(chart, reading)


def _face_of_trim(chart: Chart, reading: Reading) -> str:
    """Whether it is how wide a piece of trim is: the skirting is 140 high, a 5 1/2 board; never the rise of a pitch."""
    words, end = chart.words, reading.end
    pitched = any(r.kind == "pitch" for r in chart.readings[reading.start])
    before, after = _named_before(words, reading.start, end), _named(words, end) if end < len(words) else ""
    faced = before == TRIM and not _FACES.isdisjoint(words[end : end + 1])
    return FACE if not pitched and (faced or (on_tape(reading) and TRIM in (before, after))) else ""


def _few(reading: Reading) -> bool:
    return isinstance(reading.value, Quantity) and reading.value.value in range(1, MOST_VENTS)


def _named(words: list[str], at: int) -> str:
    """The class of thing that a word names; what "sticks out" is none."""
    return "" if words[at + 1 : at + 2] in (["out"], ["up"]) and words[at] == "sticks" else _NAMES.get(words[at], "")


def _named_after(words: list[str], at: int, long: bool) -> str:
    """The class of the thing that the words after a size name: 28 foot | extension ladder."""
    for k in range(at, min(at + 3, len(words))):
        if words[k] in _NAMES:
            return STOCK if long and words[k] in _SOLD else _named(words, k)
        if words[k] not in _BETWEEN:
            return ""
    return ""


def _named_before(words: list[str], at: int, end: int) -> str:
    """The class of the thing a size is said of: the ladder is a | 28 footer; of "they" the last thing that was named."""
    before, sold = at - 1, False
    if words[before : before + 1] == [","] and not _ACROSS.isdisjoint(words[end : end + 1]):
        before -= 1  # fascia, 7 1/4 wide
    if words[before] in _COMES and before > 0:
        return STOCK if words[before - 1] in _GOODS else ""
    while before > 0 and (words[before] in _IS or words[before] in _AT):
        sold = sold or words[before] in _AT
        before -= 1
    if before < 0 or (sold and _NAMES.get(words[before]) != STOCK):
        return ""
    if words[before] in _THEY:
        return next((_NAMES[word] for word in reversed(words[:before]) if word in _NAMES), "")
    return _NAMES.get(words[before], "")
