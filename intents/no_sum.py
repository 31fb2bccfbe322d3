"""Sums that are none: "13 risers out of it" are parts of a length and no inches off it, "22 bags, 9.85 each" is money, and so is
"13 gallons, $46.75 a gallon"."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from intents.chart import Chart, quantities
from intents.expressions import expression
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from intents.stated_units import stated_metric
from solvers.quantities import Count, Length, Money, Quantity
from solvers.slots import Parameter

SUM = "tape arithmetic"
_OUT = ("out", "of")
_IT = frozenset("it that this them those".split())
_EACH, _ONE = frozenset(("each", "apiece", "ea")), frozenset(("a", "an", "per", "the"))
_COSTS = frozenset("cost costs price owe bill pay $ £ € dollars bucks quid".split())
_PARTS = frozenset("side end gap space course row step tread riser joint bay".split())  # which are so long, and cost nothing
_ASKING = frozenset(("what", "how", "whats"))
_AMOUNTS = frozenset(("count", "area", "length"))
EACH, AT = "each", "at"
_AT = frozenset(("at", "@"))
TOLD = 5.0  # as the score of a rule that fits
SAID = 0.9  # how sure a length is that was said with its unit
_ALIKE = frozenset("each every equal even same evenly equally apiece".split())
_PRICE = expression(r"\d{1,4}\.\d\d")
_UNITS = frozenset("in inch inches ft feet foot m mm cm metres meters metre meter long wide".split())
_EXPOSED = frozenset("exposure exposures exp exposed reveal weather showing".split())
_WORKS = frozenset(
    "+ - × ÷ = plus minus add adding added less take off from subtract times half halve double twice divide divided split over"
    " difference sum into between".split()
)
_NEAR = 3  # words of the name of a thing


def no_sum(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Make the first question, where it is a sum, of what it asks: parts of a length, or money."""
    question = next(iter(questions), None)
    if question is None and any(r.kind == "money" for row in chart.readings for r in row):
        cost = Question("cost", score=TOLD)
        _so_much_a(chart, cost)
        asked = any(word in _ASKING and then != "a" for word, then in pairwise(chart.words))
        questions += [cost] if cost.givens and asked and "last" not in chart.words else []
    if question is None or question.topic not in (SUM, "cost"):
        return
    if question.topic == SUM and not _EXPOSED.isdisjoint(chart.words) and _WORKS.isdisjoint(chart.words):
        question.lacking = question.lacking or 1  # 14 ft each side, 5 5/8 exposure: what shows is not put to a length
    if question.topic == SUM and "bare" not in question.givens and stated_metric(chart.words) == "mm":
        question.givens["bare"] = Heard("MILLIMETRES", 0, 0, "")  # 2440 - 3 x 586, mm
    _cost_rather(questions)
    if question.topic == "cost" and not question.swaps:
        _amount_left(chart, question, topics["cost"])
    if (question.topic == SUM or _AMOUNTS.isdisjoint(question.givens)) and not (_EACH | _ONE | _AT).isdisjoint(chart.words):
        _so_much_a(chart, question)
    if question.topic == SUM and "out" in chart.words and (parts := _parts_out_of_it(chart)) is not None:
        _divide(chart, question, parts)


def _cost_rather(questions: list[Question]) -> None:
    """Leave out the sum where a cost takes "at 6.20 a metre" as it was said; nobody adds 35 m and 6.20."""
    cost = next((q for q in questions if q.topic == "cost" and q.complete and {"price", "per"} <= q.givens.keys()), None)
    if cost is None or _AMOUNTS.isdisjoint(cost.givens) or _ONE.isdisjoint(cost.givens["per"].text.split()):
        return
    kept = [q for q in questions if q.topic != SUM]
    if len(kept) < len(questions):
        questions[:], cost.lacking = kept, 0


def _amount_left(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """The one length that found no place is how much of it there is: 3.40 a metre and | 30 metres."""
    if len(question.unplaced) != 1 or not _AMOUNTS.isdisjoint(question.givens) or "per" not in question.givens:
        return
    length = next(p for p in parameters if p.name == "length")
    lengths = (r for row in chart.readings for r in row if r.kind == "length")
    found = [r for r in lengths if chart.said(r.start, r.end) == question.unplaced[0]]
    heard = heard_as(chart, length, found[0], True) if found else None
    if heard is not None and str(question.givens["per"].value).upper() in ("FT", "M"):
        question.givens["length"], question.unplaced, question.missing = heard, [], []


def _divide(chart: Chart, question: Question, parts: Reading) -> None:
    """As many parts of the one length that was told; a sum that may be meant is asked about."""
    lengths = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Length)]
    if len(lengths) != 1 or _ALIKE.isdisjoint(chart.words):
        question.lacking = 1
        return
    place = place_of(chart, lengths[0].start, lengths[0].end)
    assert isinstance(lengths[0].value, Length)
    length = Heard(Length(lengths[0].value.value, lengths[0].value.unit, place[2]), *place)
    question.topic, question.swaps, question.lacking = "divide evenly", [], 0
    question.givens = {"length": length, "parts": _heard(chart, parts, Count, "count")}


def _parts_out_of_it(chart: Chart) -> Reading | None:
    """How many things are to come out of a length: 13 | risers out of it."""
    words = chart.words
    for at, pair in enumerate(pairwise(words)):
        if pair != _OUT or _IT.isdisjoint(words[at + 2 : at + 3]):
            continue
        for start in range(max(0, at - _NEAR), at - 1):
            counts = [r for r in chart.readings[start] if r.kind == "number" and r.end < at]
            if counts and all(_names(word) for word in words[counts[0].end : at]):
                return counts[0]
    return None


def _so_much_a(chart: Chart, question: Question) -> None:
    """Make a cost of so many things at so much each or a thing: 22 bags, 9.85 each; 13 gallons of stain, $46.75 a gallon."""
    words = [*chart.words, "", ""]
    numbers = [r for row in chart.readings for r in row if r.kind in ("number", "volume", "weight")]
    prices = [(r, thing) for row in chart.readings for r in row if (thing := _priced(chart, words, r))]
    if len({price.start for price, _ in prices}) != 1:
        return
    price, thing = max(prices, key=lambda found: (found[0].end, found[0].kind == "money"))
    counts = [r for r in numbers if _counts(words, r, thing) and not price.start <= r.start < price.end]
    sized = any(isinstance(r.value, Length) and r.sure >= SAID for row in chart.readings for r in row)
    if len({r.start for r in counts}) != 1 or sized:
        return
    question.topic, question.swaps, question.missing, question.unplaced = "cost", [], [], []
    question.rival, question.lacking = False, 0
    question.givens = {"count": _heard(chart, counts[-1], Count, "count"), "price": _heard(chart, price, Money, "money")}


def _priced(chart: Chart, words: list[str], reading: Reading) -> str:
    """The thing of which so much is the price of one; EACH of what was counted."""
    after, thing = words[reading.end], words[reading.end + 1]
    said = reading.kind == "money" or (
        reading.kind == "number" and (_PRICE.fullmatch(words[reading.start]) or not _COSTS.isdisjoint(words))
    )
    if not said or not isinstance(reading.value, Quantity):
        return ""
    if after in _EACH:
        return EACH
    if reading.kind == "money" and reading.start and words[reading.start - 1] in _AT and not after:
        return AT
    return thing if after in _ONE and thing.isalpha() and thing not in _UNITS | _PARTS else ""


def _counts(words: list[str], reading: Reading, thing: str) -> bool:
    """Whether a number counts the things that are priced: 13 gallons; of "each" any plural."""
    if thing == AT:  # 12 gallons at $45
        return reading.kind in ("volume", "weight") and words[reading.end] in _AT
    named = words[reading.end] if reading.kind == "number" else words[reading.end - 1]
    if thing == EACH:
        return named.isalpha() and named.endswith("s") and named not in _UNITS and words[reading.end + 1] in ("of", ",")
    return named in (f"{thing}s", f"{thing}es")


def _heard(chart: Chart, reading: Reading, kind: type[Quantity], unit: str) -> Heard:
    place = place_of(chart, reading.start, reading.end)
    assert isinstance(reading.value, Quantity)
    return Heard(kind(reading.value.value, unit, place[2]), *place)


def _names(word: str) -> bool:
    return word.isalpha() and word not in _UNITS
