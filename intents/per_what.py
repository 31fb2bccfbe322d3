"""What a price or a weight is for, told by what there is of it: 22 squares at $189 each are squares at so much a square, 72 of
them at so much the square metre are square metres, 15 sheets 4 by 8 at so much a square foot are 480 of those."""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart
from intents.lengths import FEET, METRES
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.second_reader import places_of
from solvers.quantities import Area, Length, Money, Number, Quantity

LOADS = frozenset(("cost", "weight"))
PER_AREA = {"M2": "m2", "FT2": "ft2", "SQUARE": "square"}
_FACES = ("area", "wall_length", "wall_height", "gable_height", "pitch")
_PER_UNIT = {"m2": "M2", "ft2": "FT2", "square": "SQUARE"}
_MOST_EACH, _TIMES = {"lb": 12, "kg": 6, "money": 40}, {"ft2": 1, "m2": 10, "square": 100}  # for a square foot
_OF_THEM = (["of", "them"], ["of", "those"], ["of", "these"], ["to", "cover"])
_SOLD_IN = frozenset(
    "bundle bundles box boxes roll rolls sheet sheets board boards panel panels carton cartons pallet pallets".split()
)
_SHEETS = frozenset("sheet sheets panel panels slab slabs pane panes".split())
_OF_IT = frozenset("of to".split())
_COVERED = frozenset("it wall walls siding cladding cover side clad roof".split())
_LEAST_FEET = 100  # so many feet of a thing priced by the square foot are square feet; fewer may be its length
_SIDES = (2, 20)  # ft: of a sheet
_METRES, _MILLIMETRES = 20, 100  # a side with no unit beside square metres: up to so many, or from so many on
_WEIGHT = frozenset("weigh weighs weighing weight weights heavy heavier load kg kilo kilos lift".split())
_COST = frozenset("cost costs price priced pay paying spend run bill money quote worth charge charging".split())
_ALREADY, _IN_IT = frozenset("already included".split()), frozenset("includes including included after".split())
_NAMED = 5  # words from a length to its price: lineal feet of cedar at
_COINS = frozenset("$ £ € dollar dollars buck bucks cents quid tax hst".split())
_ONE = frozenset(("a", "an", "the"))


def per_what(chart: Chart, question: Question) -> None:
    """Put right what the price or weight of a load is for, or what there is of it, where that is left one way."""
    if question.topic not in LOADS or question.missing:
        return
    _off_already(chart, question)
    _as_money(chart, question)
    _without_the_unit(chart, question)
    per = question.givens.get("per")
    kind = "" if per is None else str(getattr(per.value, "name", per.value))
    area = question.givens.get("area")
    if per is None and area is not None and "count" not in question.givens:
        _as_the_area(chart, question, area)
    elif per is None and area is None and ("length" in question.givens or {"count", "piece"} <= question.givens.keys()):
        _by_the_length(chart, question)
    elif per is not None and kind == "EACH" and area is not None and area.value.unit == "square":
        if "count" not in question.givens and _SOLD_IN.isdisjoint(chart.words):
            question.givens["per"] = replace(per, value="SQUARE")
    elif kind in PER_AREA and not any(name in question.givens for name in _FACES):
        told = _sheets(chart, question, kind) or _so_many(chart, question, kind) or _feet_of_it(chart, question, kind)
        if told is not None:
            gone = ("count", "length", "piece")
            kept = {name: heard for name, heard in question.givens.items() if name not in gone}
            question.givens, question.swaps, question.rival = kept | {"area": told}, [], False
            question.claim = None if question.claim is not None and question.claim.text in told.text else question.claim


def _as_the_area(chart: Chart, question: Question, area: Heard) -> None:
    """So much area at so much is at so much for one in its own unit: 38 square metres at 22 kilos."""
    each = question.givens.get("price") or question.givens.get("weight")
    if each is None or question.swaps or not _SOLD_IN.isdisjoint(chart.words) or area.value.unit not in _PER_UNIT:
        return
    start, end = places_of(chart, each)
    if each.value.value > _MOST_EACH[each.value.unit] * _TIMES[area.value.unit]:
        return  # 400 square feet at 55 pounds: of a sheet, or money
    per = chart.words[end : end + 1] == ["per"] and chart.words[end + 1 : end + 2] in ([], [","], ["?"], ["."])  # 1.9 pounds per
    if per or chart.words[max(0, start - 1)] in ("at", "@"):
        question.givens["per"] = Heard(_PER_UNIT[area.value.unit], each.start, each.end, each.text)


def _by_the_length(chart: Chart, question: Question) -> None:
    """So much a metre, or a foot, of so much of it: 120 ft at 7 dollars a metre."""
    each = question.givens.get("price") or question.givens.get("weight")
    end = places_of(chart, each)[1] if each is not None and each.end > each.start else len(chart.words)
    if each is None or chart.words[end : end + 1] not in (["a"], ["per"], ["/"], ["the"]):
        _as_the_length(chart, question, each)
        return
    unit = chart.words[end + 1 : end + 2]
    kind = "M" if unit and unit[0] in METRES else "FT" if unit and unit[0] in FEET else ""
    if kind:
        start, stop = chart.tokens[end].start, chart.tokens[end + 1].end
        question.givens["per"] = Heard(kind, start, stop, chart.text[start:stop])


def _off_already(chart: Chart, question: Question) -> None:
    """What is off already is taken off no more: he charges $38.50 each, and that's with the 3 percent off."""
    off = question.givens.get("off")
    if off is None or off.end <= off.start:
        return
    start, end = places_of(chart, off)
    before, after = chart.words[max(0, start - 3) : start], chart.words[end : end + 3]
    if not _ALREADY.isdisjoint(after) or before[-2:] in (["with", "the"], ["after", "the"]) or not _IN_IT.isdisjoint(before):
        question.givens.pop("off")
        question.left = [*question.left, off.text]


def _as_the_length(chart: Chart, question: Question, each: Heard | None) -> None:
    """So much length right before its price is at so much for one in its own unit: 250 lineal feet at $6.35."""
    length = question.givens.get("length")
    if each is None or length is None or length.value.unit not in ("ft", "m") or "count" in question.givens:
        return
    if not (_COST | _WEIGHT | _COINS) & {*chart.words} and each.text.replace(".", "").isdecimal() and "." not in each.text:
        return  # strap 30 foot at 16
    start, (_, end) = places_of(chart, each)[0], places_of(chart, length)
    between = chart.words[end:start]
    if between[-1:] in (["at"], ["@"]) and len(between) <= _NAMED and not _SOLD_IN & {*between}:
        question.givens["per"] = Heard("FT" if length.value.unit == "ft" else "M", each.start, each.end, each.text)


def _as_money(chart: Chart, question: Question) -> None:
    """Pounds a metre are money, where a cost is asked for and no word tells of weight; where neither is, it is asked."""
    weight, per = question.givens.get("weight"), question.givens.get("per")
    if weight is None or per is None or weight.text.split()[-1:] != ["pounds"] or per.value not in ("M", "M2"):
        return
    if not _WEIGHT.isdisjoint(chart.words):
        return
    if _COST.isdisjoint(chart.words):
        question.lacking = 1
        return
    as_price(question, weight)


def as_price(question: Question, weight: Heard) -> None:
    """Make the question of a weight one of a cost: what was taken for the weight of each is its price."""
    price = replace(weight, value=Money(weight.value.value, "money", weight.text), others=())
    kept = {name: heard for name, heard in question.givens.items() if name != "weight"}
    question.topic, question.givens, question.swaps = "cost", {"price": price, **kept}, []


def as_area(count: Heard, kind: str) -> Heard:
    """So many of what is priced or weighed by an area, as that area; `kind` is one of PER_AREA."""
    return replace(count, value=Area(count.value.value, PER_AREA[kind], count.text), others=())


def _without_the_unit(chart: Chart, question: Question) -> None:
    """Without the ways that take "a foot" after a price for how long the thing is."""
    if not question.swaps:
        return
    ways = [question.givens, *question.swaps]
    kept = [way for way in ways if not ("length" in way and _is_unit(chart, way["length"]))]
    if kept and len(kept) < len(ways):
        question.givens, question.swaps = kept[0], kept[1:]
        question.rival = question.rival and bool(question.swaps)


def _is_unit(chart: Chart, heard: Heard) -> bool:
    """Whether a length is the one foot that is priced: 4.35 a foot."""
    if heard.end <= heard.start or not isinstance(heard.value, Length) or heard.value.value != 1:
        return False
    start, _ = places_of(chart, heard)
    return chart.words[start] in _ONE or chart.words[start - 1] in ("per", "/")


def _so_many(chart: Chart, question: Question, kind: str) -> Heard | None:
    """So many of them, where nothing is counted but what is priced."""
    count = question.givens.get("count")
    if count is None or count.end <= count.start or question.unplaced:
        return None
    end = places_of(chart, count)[1]
    if chart.words[end : end + 2] not in _OF_THEM or not _SOLD_IN.isdisjoint(chart.words):
        return None
    return as_area(count, kind)


def _sheets(chart: Chart, question: Question, kind: str) -> Heard | None:
    """The area of so many sheets of a size."""
    count = question.givens.get("count")
    if count is None or count.end <= count.start or _SHEETS.isdisjoint(chart.words):
        return None
    sizes = [r for row in chart.readings for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2]
    if len({r.start for r in sizes}) != 1:
        return None
    size = max(sizes, key=lambda r: (kind == "M2", r.end) if kind == "M2" else (r.sure, r.end))
    sides = [_side(part, kind) for part in size.value.parts]  # type: ignore[union-attr]
    if not all(_SIDES[0] <= side <= _SIDES[1] for side in sides):
        return None
    total = Area(count.value.value * sides[0] * sides[1], "ft2").to("m2" if kind == "M2" else "ft2")
    start, end = chart.tokens[size.start].start, chart.tokens[size.end - 1].end
    said = f"{count.text} × {chart.text[start:end]} = {float(total.value):g} {'m²' if kind == 'M2' else 'sq ft'}"
    question.unplaced = [text for text in question.unplaced if text not in chart.text[start:end]]
    return Heard(total.said(said), start, end, said)


def _side(part: Reading, kind: str) -> float:
    """In feet; with no unit beside square metres it is in metres or millimetres."""
    value = part.value
    assert isinstance(value, Quantity)
    if kind == "M2" and isinstance(value, Number):
        unit = "m" if value.value <= _METRES else "mm" if value.value >= _MILLIMETRES else "ft"
        value = Length(value.value, unit)
    return value.to("ft").value if isinstance(value, Length) else value.value  # type: ignore[return-value]


def _feet_of_it(chart: Chart, question: Question, kind: str) -> Heard | None:
    """Feet of wall, or of what is priced by the square foot: there's 1,120 feet of it."""
    if kind == "M2" or "count" in question.givens or question.unplaced:
        return None
    lengths = [r for row in chart.readings for r in row if isinstance(r.value, Length) and r.sure >= 1]
    if len({r.start for r in lengths}) != 1:
        return None
    told = max(lengths, key=lambda r: r.end)
    after = chart.words[told.end : told.end + 3]
    if told.value.unit != "ft" or told.value.value < _LEAST_FEET:  # type: ignore[union-attr]
        return None
    if after[:1] == [] or after[0] not in _OF_IT or _COVERED.isdisjoint(after[1:]):
        return None
    start, end = chart.tokens[told.start].start, chart.tokens[told.end - 1].end
    text = chart.text[start:end]
    return Heard(Area(told.value.value, "ft2", text), start, end, text)  # type: ignore[union-attr]
