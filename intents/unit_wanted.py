"""One quantity with its unit, and another unit of its kind named last: 40 kg bag, lbs; house 14 squares, m2?"""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart, quantities
from intents.placing import place_of
from intents.question import Heard, Question
from solvers.quantities import Area, Length, Quantity, Volume, Weight
from solvers.sums import Measure

TOPIC, SCORE = "conversion", 5.0
_LAST: dict[str, tuple[type[Quantity], str]] = {
    **dict.fromkeys(("lb", "lbs", "pounds"), (Weight, "POUNDS")), **dict.fromkeys(("kg", "kgs", "kilos"), (Weight, "KILOGRAMS")),
    **dict.fromkeys(("m2", "m²", "sqm"), (Area, "SQUARE_METRES")), **dict.fromkeys(("sf", "sqft", "ft2"), (Area, "SQUARE_FEET")),
    "squares": (Area, "SQUARES"), "mm": (Length, "MILLIMETRES"), "cm": (Length, "CENTIMETRES"),
    "in": (Length, "INCHES"),
    **dict.fromkeys(("gal", "gallons"), (Volume, "GALLONS")), **dict.fromkeys(("litres", "liters"), (Volume, "LITRES")),
}  # fmt: skip
_STOPS, _ASKS = frozenset(".,?!:;="), frozenset("in to as is".split())
MOST_WORDS, SURE = 2, 0.9  # what it is of (a bag; ply); more words may ask for something else
LONGEST = 10  # tokens of such a line


def unit_wanted(chart: Chart) -> Question | None:
    """The conversion of a line that says nothing but a quantity, what it is of, and another unit."""
    if len(chart.words) > LONGEST:
        return None
    said = [at for at, word in enumerate(chart.words) if word not in _STOPS]
    kind, unit = _LAST.get(chart.words[said[-1]], (None, "")) if said else (None, "")
    if kind is None or chart.numbers >> said[-1] & 1:
        return None
    told = [r for r in quantities(chart, 0, said[-1]) if isinstance(r.value, Quantity)]
    if len(told) != 1 or not isinstance(told[0].value, kind) or told[0].sure < SURE:
        return None
    if unit == "INCHES" and not (isinstance(told[0].value, Length) and told[0].value.metric):
        return None  # 12 ft 6 in
    inside = range(told[0].start, told[0].end)
    rest = [at for at in said[:-1] if at not in inside and chart.words[at] not in _ASKS]
    if len(rest) > MOST_WORDS or not all(chart.words[at].isalpha() for at in rest):
        return None
    start, end, text = place_of(chart, told[0].start, told[0].end)
    heard = Heard(Measure(replace(told[0].value, text=text)), start, end, text)
    wanted = Heard(unit, *place_of(chart, said[-1], said[-1] + 1))
    return Question(TOPIC, {"value": heard, "to": wanted}, SCORE, words=[chart.words[said[-1]]])
