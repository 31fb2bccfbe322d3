"""The length that a thing is sold in, said as a bare number: "sold at 3.66", "comes in 4.8", "bought in 3660".

A number so led is of nothing else, so where a topic takes the length of what is bought, and was not told it, it goes there.
"""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart, quantities
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length
from solvers.slots import Parameter, Piece

BOUGHT = {
    "soffit panels": "panel_length", "trim sticks": "stock", "cut list": "stock_length", "cladding boards": "board_length",
    "take-off": "board_length", "trim round openings": "stock",
}  # fmt: skip
_SOLD = frozenset("sold sell sells bought buy buys come comes coming stocked available supplied delivered stocks get got".split())
_TELLS = _SOLD | {"from", "out"}
_AT = frozenset(("at", "in", "as", "by", "@"))
_THEY = frozenset("it they we i them only all they'll me 'em".split())
_NOT_AFTER = frozenset("each a per apiece ea dollars bucks % percent / off pieces sticks boards panels".split())
_LONGEST = 24  # ft
_BACK = 4


def sold_in(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the length a thing is sold in to the first question, where it has no place for that number."""
    question = next(iter(questions), None)
    if question is not None and question.topic == "trim sticks":
        _footers(chart, question, {p.name: p for p in topics[question.topic]})
    name = BOUGHT.get(question.topic) if question is not None else None
    if question is None or name is None or name in question.givens:
        return
    if len(question.unplaced) != 1 or _TELLS.isdisjoint(chart.words):
        return
    parameter = next(p for p in topics[question.topic] if p.name == name)
    for reading in quantities(chart, 0, len(chart.words)):
        cut = _cut_from(chart.words, reading) if question.topic == "cut list" else False
        if chart.said(reading.start, reading.end) != question.unplaced[0] or not (cut or _led(chart.words, reading)):
            continue
        heard = heard_as(chart, parameter, reading, True)
        fits = heard is not None and isinstance(heard.value, Length) and heard.value.to("ft").value <= _LONGEST
        if fits and heard is not None and (not cut or _holds_each(question, heard)):
            question.givens[name] = heard
            question.unplaced, question.missing = [], [missing for missing in question.missing if missing != name]
            return


def _footers(chart: Chart, question: Question, parameters: Mapping[str, Parameter]) -> None:
    """So many footers are what is bought, and not all that is needed: how many twelve footers, if each is eleven foot."""
    total = question.givens.get("total")
    reading = next((r for row in chart.readings for r in row if total is not None and chart.tokens[r.start].start == total.start
                    and r.kind == "length" and chart.words[r.end - 1] in ("footer", "footers")), None)  # fmt: skip
    stock = heard_as(chart, parameters["stock"], reading, True) if reading is not None else None
    if stock is not None:
        question.givens = {name: given for name, given in question.givens.items() if name not in ("total", "stock")}
        question.givens["stock"], question.missing, question.swaps = stock, ["total"], []


def _cut_from(words: list[str], reading: Reading) -> bool:
    """Whether pieces are cut from so much: 5 at 800, 4 at 650 from 2400."""
    before = words[max(0, reading.start - 2) : reading.start]
    return before[-1:] == ["from"] or before == ["out", "of"]


def _holds_each(question: Question, heard: Heard) -> bool:
    """Whether the longest piece comes out of such a length."""
    pieces = question.givens.get("pieces")
    sizes = [piece.length.to("in").value for piece in pieces.value if isinstance(piece, Piece)] if pieces is not None else []
    return bool(sizes) and max(sizes) <= heard.value.to("in").value


def _led(words: list[str], reading: Reading) -> bool:
    """Whether words before a number tell that something is sold so long, and none after it that it is a price."""
    before = [word for word in words[max(0, reading.start - _BACK) : reading.start] if word not in _THEY]
    sold = before[-1:] and before[-1] in _AT and not _SOLD.isdisjoint(before[-2:-1])
    return bool(sold) and _NOT_AFTER.isdisjoint(words[reading.end : reading.end + 1])
