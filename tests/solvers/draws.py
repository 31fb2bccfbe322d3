"""Random givens for any topic, from its parameters' types and limits; SPECIAL holds what needs a combination."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from typing import Any, get_args, get_origin, get_type_hints

from hypothesis import strategies as st

from solvers.binding import PAGE_UNIT
from solvers.quantities import (
    Angle,
    Area,
    Count,
    Expansion,
    Length,
    Money,
    Number,
    Percent,
    Pitch,
    Quantity,
    Ratio,
    Temperature,
    TemperatureChange,
    Volume,
    Weight,
)  # fmt: skip
from solvers.registry import Topic
from solvers.slots import Given, Layer, Opening, Parameter, Piece, Stock
from solvers.sums import Measure, Sum
from solvers.topics.conversion import Unit

Draw = st.SearchStrategy[Any]
# What a number of each kind runs over where its slot sets no limit, and how finely.
RANGES: dict[type, tuple[str, Fraction, Fraction, Fraction]] = {
    Length: ("in", Fraction(1, 8), Fraction(360), Fraction(1, 16)),
    Angle: ("deg", Fraction(1), Fraction(179), Fraction(1, 4)),
    Area: ("ft2", Fraction(10), Fraction(4000), Fraction(1, 2)),
    Count: ("count", Fraction(1), Fraction(24), Fraction(1)),
    Percent: ("percent", Fraction(1), Fraction(60), Fraction(1, 2)),
    Ratio: ("ratio", Fraction(1, 300), Fraction(1, 10), Fraction(1, 300)),
    Temperature: ("degF", Fraction(-20), Fraction(110), Fraction(1, 2)),
    Expansion: ("perC", Fraction(1, 10**6), Fraction(200, 10**6), Fraction(1, 10**6)),
    TemperatureChange: ("dF", Fraction(5), Fraction(150), Fraction(1, 2)),
    Money: ("money", Fraction(1, 4), Fraction(90), Fraction(1, 100)),
    Volume: ("floz", Fraction(5), Fraction(30), Fraction(1, 10)),
    Weight: ("lb", Fraction(1), Fraction(120), Fraction(1, 2)),
    Number: ("none", Fraction(1), Fraction(100), Fraction(1, 8)),
}
OTHER_UNITS = {Length: ("in", "ft", "mm", "m"), Area: ("ft2", "square", "m2"), Temperature: ("degF", "degC")}


def stepped(low: Fraction, high: Fraction, step: Fraction) -> st.SearchStrategy[Fraction]:
    """Multiples of `step` from low to high."""
    return st.integers(-(-low // step), max(-(-low // step), high // step)).map(lambda n: n * step)


def quantity(kind: type[Quantity], parameter: Parameter | None = None) -> Draw:
    """A quantity inside the limits of the parameter's slot."""
    unit, low, high, step = RANGES[kind]
    slot = parameter.slot if parameter else None
    if slot is None:
        return stepped(low, high, step).map(lambda value: kind(value, unit))
    page = slot.unit or PAGE_UNIT.get(kind, unit)
    if kind in OTHER_UNITS and page != unit and kind is not Temperature:
        low, high = kind(low, unit).to(page).value, kind(high, unit).to(page).value
    limits = [Fraction(limit) for limit in (slot.above, slot.least) if limit is not None]
    low = max([*limits, low]) if limits and max(limits) > 0 else low
    tops = [Fraction(limit) for limit in (slot.below, slot.most) if limit is not None]
    high = min([*tops, high])
    if low + step > high:
        step = (high - low) / 16 or Fraction(1)
    edge = step if slot.above is not None and low == slot.above else Fraction(0)
    under = step if slot.below is not None and high == slot.below else Fraction(0)
    page = page if page in kind.units else unit
    values = stepped(low + edge, high - under, step).map(lambda value: kind(value, page))
    others = OTHER_UNITS.get(kind, ())
    if page not in others:
        return values
    return st.tuples(values, st.sampled_from((page, page, *others))).map(lambda pair: pair[0].to(pair[1]))


def pitch(parameter: Parameter) -> Draw:
    said = stepped(Fraction(1, 2), Fraction(24), Fraction(1, 2)).map(lambda value: Pitch(value, "in12"))
    return said | stepped(Fraction(2), Fraction(60), Fraction(1, 2)).map(lambda value: Pitch(value, "deg"))


def length(low: float, high: float, step: Fraction = Fraction(1, 16), unit: str = "in") -> Draw:
    return stepped(Fraction(low), Fraction(high), step).map(lambda value: Length(value, unit))


def listed(inner: type) -> Draw:
    """The tuples of one-breath questions."""
    count = st.integers(1, 6)
    items: dict[type, Draw] = {
        Length: length(1, 30),
        Piece: st.builds(Piece, count, length(6, 120)),
        Stock: st.builds(Stock, length(120, 240)),
        Opening: st.builds(Opening, st.integers(1, 3), length(18, 40), length(18, 40)),
        Layer: st.builds(Layer, length(0.25, 2), st.sampled_from(("sheathing", "strapping", "siding"))),
    }
    unique = (lambda layer: layer.what) if inner is Layer else None  # two of one name are two numbers on one line
    return st.lists(items[inner], min_size=1, max_size=3, unique_by=unique).map(tuple)


def sums(depth: int = 2) -> st.SearchStrategy[Any]:
    """Sums of lengths and numbers that stay lengths."""
    if depth == 0:
        return length(1, 240)
    inner = sums(depth - 1)
    number = st.integers(1, 9).map(lambda n: Number(Fraction(n), "none"))
    added = st.builds(Sum, st.sampled_from("+−"), inner, inner)
    return inner | added | st.builds(Sum, st.sampled_from("×÷"), inner, number)


def value(topic: Topic, parameter: Parameter) -> Draw:
    """A value for one parameter."""
    kind = parameter.kind
    if kind is Pitch:
        return pitch(parameter)
    if kind is tuple:
        return listed(_inner(topic, parameter.name))
    if kind is Measure:
        return st.one_of([quantity(each) for each in (Length, Area, Weight, Temperature)]).map(Measure)
    if kind is Sum:
        return sums().filter(lambda said: isinstance(said, Sum))
    if issubclass(kind, Enum):
        return st.sampled_from(list(kind))
    return quantity(kind, parameter)


def _inner(topic: Topic, name: str) -> type:
    """What a tuple parameter is a tuple of, from the signature."""
    hint = get_type_hints(topic.work)[name]
    while get_origin(hint) is not tuple:
        hint = next(each for each in get_args(hint) if each is not type(None))
    return next(each for each in get_args(hint) if isinstance(each, type))


def _drawn(topic: Topic, kept: dict[str, Draw | None]) -> Draw:
    """Givens for all that is required and some of the rest; `kept` has strategies of its own, None leaves one out."""
    required: dict[str, Draw] = {}
    optional: dict[str, Draw] = {}
    for parameter in topic.parameters:
        draw = kept[parameter.name] if parameter.name in kept else value(topic, parameter)
        if draw is not None:
            (required if parameter.required or parameter.name in kept else optional)[parameter.name] = draw
    return st.fixed_dictionaries(required, optional=optional)


def givens(topic: Topic) -> st.SearchStrategy[dict[str, Given]]:
    """Givens for a topic, as the conversation would hand them over."""
    ways = SPECIAL.get(topic.name, [{}])
    drawn = st.one_of([_drawn(topic, dict(way)) for way in ways])
    return drawn.map(lambda known: {name: Given(name, said) for name, said in known.items()})


def _temperature(low: int, high: int) -> Draw:
    return stepped(Fraction(low), Fraction(high), Fraction(1, 2)).map(lambda value: Temperature(value, "degF"))


def _converted(kind: type[Quantity], *units: str) -> dict[str, Draw | None]:
    """A measure with units it can be turned into."""
    return {"value": quantity(kind).map(Measure), "to": st.sampled_from([unit for unit in Unit if unit.value in units])}


COUNT = stepped(Fraction(2), Fraction(9), Fraction(1)).map(lambda value: Count(value, "count"))
FEET = stepped(Fraction(8), Fraction(20), Fraction(1)).map(lambda value: Length(value, "ft"))
ACUTE = stepped(Fraction(1), Fraction(88), Fraction(1, 4)).map(lambda value: Angle(value, "deg"))
BOARD = length(96, 192)
_NO_FACE = dict.fromkeys(("wall_length", "wall_height", "pitch", "gable_height", "openings", "opened"))
_FACE_FEET = {"wall_length": length(20, 60, Fraction(1, 2), "ft"), "wall_height": length(8, 20, Fraction(1, 2), "ft")}
# An area outright, a wall, and a gable: what every topic takes that covers one.
FACES: list[dict[str, Draw | None]] = [
    _NO_FACE,
    {**_NO_FACE, **_FACE_FEET, "area": None},
    {**_NO_FACE, "wall_length": _FACE_FEET["wall_length"], "gable_height": length(4, 12, Fraction(1, 2), "ft"), "area": None},
]
# Topics whose givens must go together: ways to draw them, each a strategy by parameter (None leaves one out).
SPECIAL: dict[str, list[dict[str, Draw | None]]] = {
    "arc": [
        {"width": length(24, 96), "rise": length(2, 12), "radius": None, "every": None},
        {"width": length(24, 60), "radius": length(36, 90), "rise": None, "every": length(4, 12)},
    ],
    "balanced panels": [{"width": length(100, 480), "cover": length(16, 48)}],
    "cladding boards": [
        {"area": quantity(Area), "exposure": length(3, 10), "board_length": BOARD, "courses": None, "course_length": None},
        {"courses": COUNT, "course_length": length(60, 480), "board_length": BOARD, "area": None, "exposure": None},
    ],
    "conversion": [
        _converted(Length, "inches", "feet", "millimetres", "centimetres", "metres"),
        _converted(Area, "square feet", "square metres", "squares"),
        _converted(Weight, "pounds", "kilograms"),
        _converted(Temperature, "Fahrenheit", "Celsius"),
    ],
    "course layout": [
        {"begins": None},
        {"height": length(84, 120), "begins": length(0, 24), "exposure": length(4, 8), "least": None, "count": None},
    ],
    "courses to openings": [{
        "sill": length(28, 40), "head": length(76, 84), "top": length(100, 120), "bottom": None, "lengths": None,
        "least": length(3, 4), "greatest": length(6, 7),
    }],
    "cut list": [
        {"pieces": listed(Piece), "stocks": None, "stock_length": length(144, 192), "kerf": length(0.125, 0.25)},
    ],
    "end gap": [
        {"now": _temperature(30, 60), "hottest": _temperature(90, 120), "coldest": _temperature(-20, 20),
         "extreme": None, "opposite": None},
        {"now": _temperature(30, 60), "extreme": _temperature(90, 120), "opposite": _temperature(-20, 20),
         "hottest": None, "coldest": None},
    ],
    "equal spacing": [
        {"length": length(60, 240), "width": length(1, 6), "count": COUNT, "gap": None},
        {"length": length(60, 240), "width": length(1, 6), "gap": length(2, 8), "count": None},
    ],
    "gable area": [
        {"openings": None},
        {"width": length(20, 40, Fraction(1, 2), "ft"), "height": length(10, 14, Fraction(1, 2), "ft"), "pitch": None,
         "count": None},
    ],
    "gable courses": [{"width": length(120, 360), "exposure": length(4, 12), "stock": None, "studs": None}],
    "membrane rolls": [{"roll_width": length(36, 108), "lap": length(2, 8), **face} for face in FACES],
    "circle": [{"across": length(2, 96), "circle_radius": None, "asked": None}],
    "sheets": [
        {"sheet_width": length(2, 5, unit="ft"), "sheet_length": length(7, 12, unit="ft"), "alike": None, **face}
        for face in FACES
    ],
    "squares": FACES,
    "out of square": [{"side": length(48, 240), "other_side": length(48, 240), "diagonal": length(241, 340)}],
    "right triangle": [
        {"rise": length(12, 60), "run": length(12, 60), "slope": None, "angle": None, "lengths": None},
        {"rise": length(12, 36), "slope": length(40, 90), "run": None, "angle": None, "lengths": None},
        {"run": length(12, 36), "slope": length(40, 90), "rise": None, "angle": None, "lengths": None},
        {"slope": length(12, 90), "angle": ACUTE, "rise": None, "run": None, "lengths": None},
        {"rise": length(12, 90), "angle": ACUTE, "slope": None, "run": None, "lengths": None},
    ],
    "sloped length": [{"run": length(12, 240), "rise": None}, {"rise": length(12, 240), "run": None}],
    "take-off": [{
        "length": length(20, 60, Fraction(1, 2), "ft"), "height": length(8, 20, Fraction(1, 2), "ft"),
        "exposure": length(3, 12), "board_length": FEET, "opened": None, "strap_spacing": None, "roll_width": None,
        "roll_length": None, "lap": None,
    }],
    "strapping": [{"length": length(96, 480), "spacing": length(12, 24), "openings": None}],
    "staggered joints": [{"board": length(96, 192), "studs": length(12, 24)}],
}  # fmt: skip
