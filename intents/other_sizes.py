"""The other sizes of a thing, of which a topic takes one: the wall of a vent is 8 ft high, a board 3/4 thick, the house 60 ft.

Each is passed over only where the word beside it tells which size it is, and where the size that the topic takes is told too.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from intents import building_long
from intents.chart import Chart, once, quantities, span
from intents.reading import Dims, Reading
from intents.remarks import STOPS, up_to_stop
from solvers.quantities import Angle, Length, Pitch, Quantity, Temperature, Weight

_HIGH = frozenset(("high", "tall"))
_ACROSS = frozenset("wide high tall deep across face".split())
_RIDGES = frozenset("ridge peak headroom height".split())
_HALF_WHERE = frozenset("at up low high in down on near along".split())
_IS = frozenset("is are was at of about only".split())
_WALLS = frozenset("wall walls house building elevation side".split())
_PIECES = frozenset("piece pieces each panel panels length lengths stick sticks board boards section sections one".split())
_ALONG = frozenset("along gutter gutters end ends lengthwise lengthways".split())  # it may fall along its length
_UP = frozenset("up high above".split())
_CLADDING = frozenset(
    "siding cladding boards board planks plank shiplap lap larch cedar clapboard clapboards weatherboards weatherboard sheathing"
    " ply plywood osb shingles".split()
)
_GAPS = frozenset("gap gaps cavity space furring strips strip battens batten strapping straps packers spacers".split())
_OFF = frozenset("off out from away clear proud behind gap of".split())
_BESIDES = frozenset("sill sills window windows door scaffold step steps bench".split())
_BEARS = frozenset("bears bear bearing rests resting rest touches touching leans leaning lean leaned hits ladder".split())
_BEYOND = frozenset("past over above beyond".split())
_EDGES = frozenset("it landing edge eave eaves gutter roof plate top that them".split())
_STOPS = STOPS | {"but", "and"}
_WORKS = frozenset("start starting stain staining paint painting finish knock leave leaves come comes coming rain snow".split())
_IN_WOOD = frozenset("studs stud wood sheathing boards joists framing plates siding ply".split())
_AIR = frozenset("outside out now today tonight".split())
_LOFT_LAYERS = frozenset("insulation joists joist rafters rafter wool batts foam".split())
_PANED = frozenset("window windows door doors opening openings".split())
_TWELVE = frozenset(("12", "twelve"))
_ALWAYS = _TWELVE | frozenset("roof chance pound pounds lb lbs kg kilo kilos".split())
WIDEST, LEAST_LONG, LEAST_WALL = 24, 48, 36  # in; of a board or a sill, of a piece, of how high a wall or a ridge is


def other_sizes(chart: Chart, topic: str) -> int:
    """Mask of the quantities that are another size than a topic takes."""
    tells = _TELLS.get(topic)
    if tells is None or (_CUES[topic] | _ALWAYS).isdisjoint(chart.words):
        return 0
    key = f"other sizes {topic}"
    if key not in chart.kept:
        mask, words, sizes = 0, [*chart.words, "", ""], _sizes(chart)
        cued = not _CUES[topic].isdisjoint(chart.words)
        for reading in sizes:
            weighed = isinstance(reading.value, Weight) or words[reading.end : reading.end + 1] == ["chance"]
            if weighed or (cued and tells(words, reading, sizes)) or (topic in _NO_PITCH and _roofs(words, reading)):
                mask |= span(reading.start, reading.end)
        chart.kept[key] = mask | (_plans(chart) if topic in _NO_LENGTH else 0)
    return chart.kept[key]  # type: ignore[no-any-return]


@once
def _sizes(chart: Chart) -> list[Reading]:
    return list(quantities(chart, 0, len(chart.words)))


def _plans(chart: Chart) -> int:
    """Sizes said together, where no length is asked for: a room of 12 by 16 has a dew point."""
    mask = 0
    for _, row in chart.starts():
        for _, reading in row:
            if isinstance(reading.value, Dims) and reading.sure >= 0.9:
                mask |= span(reading.start, reading.end)
    return mask


def _roofs(words: list[str], reading: Reading) -> bool:
    """The roof's pitch, where none is asked for: 5/12, but never a ratio of vents, a fall, or 7 to 12 percent."""
    value = reading.value
    if isinstance(value, Angle) and words[reading.end] in ("roof", "pitch", "slope", "rafters"):
        return True  # with a 40 degree roof
    told = reading.kind == "pitch" and reading.sure >= 0.9 and words[reading.end - 1] in _TWELVE
    steep = told and isinstance(value, Pitch) and value.unit == "in12" and value.value >= LEAST_RISE
    joined = words[reading.start : reading.end]
    return steep and "to" not in joined and words[reading.end] not in ("percent", "%", "feet", "foot", "ft")


def _vent(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How high the wall is, beside how long; with no unit too, where the one before it has: 9.6 m long and 2.7 high."""
    paned = words[reading.end] == "wide" and _named_before(words, reading.start) in _PANED | {"which"}
    if words[reading.end] == "thick" or paned:
        return True  # the siding is 5/16 thick, never mind the window which is 1.2 wide
    high = words[reading.end] in _HIGH and len(list(_lengths(sizes))) > 1
    bare = reading.kind == "number" and any(_inches(r) >= LEAST_WALL and r.end < reading.start for r in _lengths(sizes))
    return high and (_inches(reading) >= LEAST_WALL or bare)


def _attic(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How high the ridge is: 5 feet high at the ridge, the ridge is 7 ft up; what the answer halves anyhow: half up top."""
    if reading.kind == "number" and words[reading.end - 1] == "half" and words[reading.end] in _HALF_WHERE:
        return True
    if reading.kind == "number" and _named_before(words, reading.start) in _LOFT_LAYERS:
        return True  # the insulation is 270
    if _inches(reading) < LEAST_WALL:
        return bool(_inches(reading)) and reading.sure >= 0.9  # 300 mm of wool on the loft floor
    return words[reading.end] in _HIGH or _named_before(words, reading.start) in _RIDGES


def _fall(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How long a sill or a flashing is, beside how wide."""
    wide = any(words[r.end] in ("wide", "across", "deep") and _inches(r) <= WIDEST for r in _lengths(sizes) if r is not reading)
    wide = wide or any(words[r.end] == "deep" and r.kind == "number" for r in sizes if r is not reading)
    if not wide or not _ALONG.isdisjoint(words):
        return False
    paned = words[reading.end] in ("wide", "across") and _named_before(words, reading.start) in _PANED
    long = words[reading.end] == "long" or _named_before(words, reading.start) == "length"
    bedded = _named_before(words, reading.start) in ("bed", "mortar")
    return long or paned or bedded or (_inches(reading) >= LEAST_LONG and words[reading.end] == "of")


def _thick(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How thick a board is, which widens all the same; how thick at an edge."""
    return words[reading.end] == "thick" or words[reading.end + 1 : reading.end + 3] == ["the", "butt"]


def _heated(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How thick or wide a piece is, beside how long; how long the wall is, beside how long a piece."""
    others = [r for r in _lengths(sizes) if r is not reading]
    if words[reading.end] in _ACROSS | {"thick"} and _inches(reading) <= WIDEST:
        hot = words[reading.end] in _HIGH and not _inches(reading) and _whole(reading)  # 30 now, 110 high
        return not hot and not isinstance(reading.value, Temperature) and any(_inches(r) >= LEAST_LONG for r in others)
    if not _inches(reading):
        return False
    wall = words[reading.end] in _WALLS or _named_before(words, reading.start) in _WALLS
    return wall and any(_of_a_piece(words, r) and _inches(r) < _inches(reading) for r in others)


def _whole(reading: Reading) -> bool:
    return isinstance(reading.value, Quantity) and reading.value.value.denominator == 1


def _of_a_piece(words: list[str], reading: Reading) -> bool:
    before = {*words[max(0, reading.start - 4) : reading.start]}
    return not _PIECES.isdisjoint(before) or not _PIECES.isdisjoint(words[reading.end : reading.end + 3])


def _channel(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How cold it is out, and how high up the channel hangs."""
    cold = isinstance(reading.value, Temperature) or (
        reading.kind == "number" and words[reading.end] in _AIR and _below(words, reading)
    )
    return cold or (_inches(reading) >= LEAST_WALL and words[reading.end] in _UP | _HIGH and len(list(_lengths(sizes))) > 1)


def _below(words: list[str], reading: Reading) -> bool:
    return "minus" in words[max(0, reading.start - 1) : reading.end] or "-" in words[max(0, reading.start - 1) : reading.end]


def _ladder(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How high a sill, the scaffold or the wall is, beside how high the ladder bears."""
    after = words[reading.end : reading.end + 3]
    if _inches(reading) and len(list(_lengths(sizes))) > 1 and after[0] in _BEYOND and not _EDGES.isdisjoint(after[1:]):
        return True  # 3 ft past the landing
    if not _inches(reading) or _bears(words, reading):
        return False
    besides = _named_before(words, reading.start) in _BESIDES or words[reading.end] in _BESIDES
    wall = words[reading.end] in _HIGH and not _WALLS.isdisjoint(words[max(0, reading.start - 2) : reading.start])
    return (besides or wall) and sum(_bears(words, r) for r in sizes) == 1


def _bears(words: list[str], reading: Reading) -> bool:
    """Whether a ladder is said to bear at a height, in that clause."""
    before = words[max(0, reading.start - 6) : reading.start]
    stop = max((at + 1 for at, word in enumerate(before) if word in _STOPS), default=0)
    return reading.kind in ("length", "number") and not _BEARS.isdisjoint(before[stop:])


def _before_gap(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How thick the boards before a gap or the sheathing behind it are, and the gap's own depth told again."""
    if _inches(reading) >= LEAST_WALL:
        return True  # the wall is 30 metres long
    depths = [r for r in sizes if r.kind in ("length", "number", "ratio")]
    if reading not in depths:
        return False
    if any(_same(other, reading) for other in depths if other is not reading and not _of_cladding(words, other)):
        return True
    return _of_cladding(words, reading) and not all(_of_cladding(words, r) for r in depths)


def _of_cladding(words: list[str], reading: Reading) -> bool:
    """3/4 siding, boards are 18 mm, shiplap 3/4 thick; never a 3/8 siding gap, or boards 3/8 off the wall."""
    at = reading.end + (words[reading.end] == "thick")
    if words[at] in _CLADDING:
        return words[at + 1] not in _GAPS
    return _named_before(words, reading.start) in _CLADDING and words[at] not in _OFF


def _same(one: Reading, again: Reading) -> bool:
    """Whether a size is one told again with no unit or another: 19 mm, so the cavity is | 19; ten mil, | ten millimetres."""
    assert isinstance(one.value, Quantity) and isinstance(again.value, Quantity)
    if one.kind != "length" or again.value.value not in (one.value.value, one.value.value * 1000):
        return False
    return again.kind != "length" or one.start < again.start


def _no_length(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """Any length, where none is asked for; what a moisture meter reads in wood; the hour at which somebody starts."""
    before = words[max(0, reading.start - 4) : reading.start]
    if reading.kind == "number" and before[-1:] == ["at"] and words[reading.end] in STOPS | {""}:
        clause = up_to_stop(words[: reading.start][::-1])
        return not _WORKS.isdisjoint(clause) and _whole(reading) and reading.value.value <= 12  # type: ignore[union-attr]
    if "meter" in before and not _IN_WOOD.isdisjoint(words[reading.end : reading.end + 3]):
        return True
    return reading.kind == "length" and bool(_inches(reading)) and reading.sure >= 0.9


def _stuff(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How thick the siding is, where what shows of it is told too: 5/16 lap, 3/4 cedar."""
    if words[reading.end] not in _MADE_OF or not any(_may_show(r) for r in sizes if r is not reading):
        return False
    told = isinstance(reading.value, Quantity) and reading.kind in ("length", "number", "ratio")
    if not told or reading.value.unit in ("ft", "m"):  # type: ignore[union-attr]
        return False
    assert isinstance(reading.value, Quantity)
    size = _inches(reading) or float(reading.value.value)
    most = THINNEST_LAP if words[reading.end] == "lap" else THICKEST_SIDING
    return size <= most and reading.value.value.denominator > 1


def _stuff_alone(words: list[str], reading: Reading, sizes: list[Reading]) -> bool:
    """How thick the siding is, which is so thin that it can be no exposure: boards are 5/16 fibre cement."""
    told = isinstance(reading.value, Quantity) and reading.kind in ("number", "ratio", "length")
    size = (_inches(reading) or float(reading.value.value)) if told else 0.0  # type: ignore[union-attr]
    made = words[reading.end] in _MADE_OF or words[reading.end] == "thick"
    return 0 < size <= THICKEST_SIDING and reading.value.value.denominator > 1 and made  # type: ignore[union-attr]


def _may_show(reading: Reading) -> bool:
    """Whether a size may be what shows of a board."""
    size = _inches(reading) or (float(reading.value.value) if isinstance(reading.value, Quantity) else 0)
    return reading.kind in ("length", "number") and LEAST_SHOWN <= size <= MOST_SHOWN


def _named_before(words: list[str], start: int) -> str:
    at = start - 1
    while at > 0 and words[at] in _IS:
        at -= 1
    return words[at] if at >= 0 else ""


def _lengths(sizes: list[Reading]) -> Iterator[Reading]:
    return (r for r in sizes if isinstance(r.value, Length))


def _inches(reading: Reading) -> float:
    return float(reading.value.to("in").value) if isinstance(reading.value, Length) else 0.0


_MADE_OF = _CLADDING | {"spruce", "pine", "fir", "redwood", "boards", "bevel", "vinyl", "hardboard", "fibre", "fiber"}
THINNEST_LAP, THICKEST_SIDING, LEAST_SHOWN, MOST_SHOWN = 0.5, 1.5, 2.5, 16  # in
_TELLS: dict[str, Callable[[list[str], Reading, list[Reading]], bool]] = {
    "vent opening": _vent,
    "vent area": _attic,
    "cladding boards": _stuff,
    "take-off": _stuff,
    "end cut along the rake": _stuff_alone,
    "step at the rake": _stuff_alone,
    "gable courses": _stuff_alone,
    "course layout": _stuff_alone,
    "fall": _fall,
    "wood movement": _thick,
    "thermal movement": _heated,
    "end gap": _heated,
    "water in a channel": _channel,
    "air gap": _before_gap,
    "ladder footing": _ladder,
    "dew point": _no_length,
    "frost tonight": _no_length,
    **dict.fromkeys(building_long.TOPICS, building_long.building_long),
}
_NO_PITCH = frozenset((
    "vent opening", "vent area", "wood movement", "thermal movement", "end gap", "air gap", "dew point", "frost tonight",
))  # fmt: skip
LEAST_RISE = 2  # in 12; a roof is no flatter, a fall is
_NO_LENGTH = frozenset(("dew point", "frost tonight"))
_ANY_LENGTH = frozenset("by × ft foot feet in inch inches mm m metres meters ' \"".split())
_CUES = {
    "vent opening": _HIGH | {"thick", "wide"},
    "vent area": _HIGH | _RIDGES | _ANY_LENGTH | _LOFT_LAYERS | {"half"},
    "cladding boards": _MADE_OF,
    "take-off": _MADE_OF,
    **dict.fromkeys(("end cut along the rake", "step at the rake", "gable courses", "course layout"), _MADE_OF | {"thick"}),
    "fall": frozenset(("long", "length", "bed", "mortar", "of", "across")) | _PANED,
    "wood movement": frozenset(("thick", "butt")),
    "thermal movement": _ACROSS | _WALLS | {"thick"},
    "end gap": _ACROSS | _WALLS | {"thick"},
    "water in a channel": _AIR | _UP | _HIGH,
    "air gap": _CLADDING | _ANY_LENGTH | {"mil", "millimetres"},
    "ladder footing": _BESIDES | _HIGH | _BEYOND,
    "dew point": _ANY_LENGTH | {"meter", "at"},
    "frost tonight": _ANY_LENGTH | {"at"},
    **dict.fromkeys(building_long.TOPICS, building_long.CUES),
}
