"""A sum of money: 6 rolls at 118 less a 50 credit, what do I hand over; 9 tubes at 8.25 and 3 rolls at 94, what do I owe."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.fitting import TAPE_PARTS
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Money, Number, Percent
from solvers.sums import MINUS, PLUS, TIMES, Part, Sum, leaves

TOPIC, UNIT, COST = "tape arithmetic", "MONEY", "cost"
_PAID = frozenset(
    "spent spend spending owe owes owed pay pays paid paying cost costs worth price refund refunded credit dollars dollar"
    " money delivery"
    " bucks quid euros euro cents change invoice".split()
)
_HANDED = (("hand", "over"), ("set", "back"), ("out", "of", "pocket"))
_HANDS = frozenset(so[0] for so in _HANDED)
_AT = frozenset(("at", "@"))
_EACH = frozenset(
    "each apiece a an the piece per one $ of them square board box roll tube sheet bundle stick length bag pail can".split()
)
_OFF = frozenset("less minus".split())
_ON = frozenset("plus and add then".split())
_MORE = frozenset(", a an the $ another of delivery freight for with so that's that thats its it's".split())
_MEASURED = frozenset("end long wide high tall inch inches length across deep apart".split())
_CENTS = expression(r"\d+\.\d\d")
_SCORE = 3.0
Term = tuple[str, Part]


def of_money(words: Sequence[str]) -> bool:
    """Whether a line speaks of what is paid."""
    if not _PAID.isdisjoint(words) or "$" in words:
        return True
    if _HANDS.isdisjoint(words):
        return False
    return any(tuple(words[at : at + len(so)]) == so for so in _HANDED for at in range(len(words)))


def money_sums(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Take a sum of bare numbers for one of money, where the line asks what is paid; and several prices for their sum."""
    money = any(isinstance(r.value, Money) for _, row in chart.starts() for _, r in row)
    priced = bool(questions) and questions[0].topic == COST and _too_much(questions[0])
    if not (of_money(chart.words) or money or priced or _in_cents(chart)):
        return
    left = not questions or (questions[0].topic in (COST, TOPIC) and not questions[0].whole)
    whole = _several(chart) if left or priced else None
    if whole is not None:
        whole.givens["bare"] = Heard(UNIT, 0, 0, "")
        questions[:] = [whole]
    for question in questions:
        heard = question.givens.get("sum")
        if question.topic != TOPIC or heard is None or not isinstance(heard.value, Sum) or "bare" in question.givens:
            continue
        if all(isinstance(leaf, Number) and leaf.value.denominator not in TAPE_PARTS for leaf in leaves(heard.value)):
            question.givens["bare"] = Heard(UNIT, 0, 0, "")


def _too_much(question: Question) -> bool:
    """Whether a cost has no place for all that was told, or counts both things and area."""
    return bool(question.unplaced) or {"count", "area"} <= question.givens.keys()


def _in_cents(chart: Chart) -> bool:
    """Whether so many things are at so much each in dollars and cents: 58 lengths at 14.60 each."""
    words = chart.words
    if not _MEASURED.isdisjoint(words):
        return False
    each = (at for at, word in enumerate(words) if word in ("each", "apiece") and at > 1)
    return any(words[at - 2] in _AT and _CENTS.fullmatch(words[at - 1]) for at in each)


def _several(chart: Chart) -> Question | None:
    """So many of one at a price and so many of another, and what comes off or on; None where not every number is so told."""
    found = list(_amounts(chart))
    if len(found) <= 2 or any(isinstance(r.value, Length | Percent) and r.sure > 0.5 for row in chart.readings for r in row):
        return None
    words, terms, at, end = chart.words, list[Term](), 0, 0
    while at < len(found):
        lead = words[end : found[at].start] if at else []
        between = words[found[at].end : found[at + 1].start] if at + 1 < len(found) else []
        priced = any(word in _AT for word in between) and len(between) <= 4 and set(between[-2:]) & _AT
        sign = _sign(lead) if at else PLUS
        if not sign or (not at and not priced):
            return None
        first = _number(chart, found[at])
        terms.append((sign, Sum(TIMES, first, _number(chart, found[at + 1])) if priced else first))
        at += 1 + bool(priced)
        end = found[at - 1].end
    whole = terms[0][1]
    for sign, part in terms[1:]:
        whole = Sum(sign, whole, part)
    start, last, text = place_of(chart, found[0].start, found[-1].end)
    if not isinstance(whole, Sum) or not terms[1:] or any("/" in leaf.text for leaf in leaves(whole)):
        return None  # 2 at 3 5/8 are lengths
    return Question(TOPIC, {"sum": Heard(whole, start, last, text)}, _SCORE, words=[word for word in words if word in _PAID])


def _amounts(chart: Chart) -> list[Reading]:
    """The counts and prices from left to right."""
    found: list[Reading] = []
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if isinstance(r.value, Number | Money) and r.kind in ("number", "money")]
        here = [r for r in here if r.end > at + 1 or chart.words[at] not in ("a", "an", "one")]
        best = max(here, key=lambda r: (r.end, r.sure), default=None)
        if best is not None:
            found.append(best)
        at = best.end if best is not None else at + 1
    return found


def _sign(lead: Sequence[str]) -> str:
    """What the words before a term do with it; "" where they do not tell."""
    rest = [word for word in lead if word not in _EACH]
    told = [word for word in rest if word in _OFF | _ON]
    if not told or len(rest) > len(told) + 2 or not set(rest) <= _OFF | _ON | _MORE:
        return ""
    return MINUS if told[-1] in _OFF else PLUS


def _number(chart: Chart, reading: Reading) -> Number:
    assert isinstance(reading.value, Number | Money)
    return Number(reading.value.value, "none", chart.said(reading.start, reading.end))
