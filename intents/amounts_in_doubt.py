"""Amounts that found a place which no word gives them: they are asked about, never worked.

An area taken for openings where nothing is open, so many squares as no house has, pieces of 12 and 10 foot from which the 12
was taken for inches, an exposure that is aimed at beside the most it may be.
"""

from __future__ import annotations

from dataclasses import replace

from intents.chart import Chart, quantities
from intents.consulting import numbers_in
from intents.let_fall import let_fall
from intents.listed_totals import AMOUNTS, PLACES, THEM
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Area, Length
from solvers.slots import Piece

_OPEN = frozenset(  # one of these tells that something comes out of a wall
    "window windows door doors doorway doorways opening openings glass glazing hole holes out off less minus deduct deducted"
    " subtract take taken taking takes knock except without gross net slider sliders vent vents brick bricks stone not no leave"
    " leaving leaves hatch louvre louver void voids garage open cutouts skip ignoring remove removed - existing already done"
    " but".split()
)
_PRICED = frozenset(  # one of these tells that a bare number may be money
    "cost costs price prices priced pricing charge charges bill pay money damage spend much rate worth total come comes at @ each"
    " per apiece a an every dollars bucks quid cents invoice quote going".split()
)
_PARTS = frozenset("dormer dormers cheeks gables chimneys skylights eaves rakes".split())
_EAVES, _RUNS = frozenset(("soffit panels", "trim sticks")), frozenset("eave eaves run fascia soffit".split())
_OVERHANGS, _PANELS = frozenset(("overhang", "overhangs")), frozenset("panel panels cover coverage wide long".split())
_NEAR = 4  # words from "each" to how many there are
MOST_SQUARES = 150  # no job here is larger; "520 square" is square feet
_FAR = 2  # times an exposure; "24 or 25" are so many courses
LEAST_FEET = 12  # a bare number from here on is taken for inches beside feet (listed.with_units)


def amounts_in_doubt(chart: Chart, question: Question) -> list[str]:
    """The amounts of a whole question whose place is in doubt, as they were said."""
    opened, area = question.givens.get("opened"), question.givens.get("area")
    if opened is not None and _OPEN.isdisjoint(chart.words):
        return [opened.text]
    if area is not None and isinstance(area.value, Area) and area.value.unit == "square" and area.value.value > MOST_SQUARES:
        return [area.text]
    price = question.givens.get("price") if question.topic == "cost" else None
    if price is not None and price.text[:1].isdecimal() and price.text[-1:].isdecimal() and _PRICED.isdisjoint(chart.words):
        return [price.text]  # 3 of 12 boards are bad
    if question.topic == "soffit panels" and (other := _other_depth(chart, question)):
        return other
    if left := (question.topic in AMOUNTS and _of_them(chart, question)) or let_fall(chart, question):
        return left
    if question.topic == "course layout":
        return _aimed_at(chart, question)
    if question.topic == "cut list":
        _feet_too(question)
    return []


def _aimed_at(chart: Chart, question: Question) -> list[str]:
    """An exposure that is aimed at beside another that was taken: aiming for 7 but never over 7 1/4."""
    meant, exposure = question.givens.get("meant"), question.givens.get("exposure")
    if meant is None or meant.value != "TARGET" or exposure is None or meant.end <= meant.start:
        return []
    if exposure.start < meant.end and exposure.end > meant.start:
        return []
    sizes = quantities(chart, *places_of(chart, meant))
    return [chart.said(r.start, r.end) for r in sizes if r.value.value < _FAR * exposure.value.value]  # type: ignore[union-attr]


def _other_depth(chart: Chart, question: Question) -> list[str]:
    """How deep the other eave is, where it was taken for a panel's size: front overhang 16 inches, back 24."""
    found = [question.givens[name] for name in ("cover", "panel_length") if name in question.givens]
    placed = ((heard, places_of(chart, heard)) for heard in found if heard.end > heard.start)
    return [
        heard.text for heard, (start, end) in placed
        if chart.words[start - 1] in PLACES | _OVERHANGS and _PANELS.isdisjoint(chart.words[end : end + 2])
    ]  # fmt: skip


def _of_them(chart: Chart, question: Question) -> list[str]:
    """How many there are of a thing, where no given took it: rakes of 17 foot each, four of them; 4 dormers, each cheek 7."""
    if question.topic in _EAVES and (at := _each_side(chart, question)) >= 0:
        return [chart.said(at, at + 2)]
    if "each" not in chart.words:
        return []
    words, left = chart.words, chart.numbers & ~numbers_in(chart, question)
    found = [at for at, word in enumerate(words[:-2]) if left >> at & 1 and words[at + 1] == "of" and words[at + 2] in THEM]
    parts = [at for at in range(len(words) - 2) if left >> at & 1 and words[at + 1] in _PARTS and words[at + 2] not in _PARTS]
    if parts:
        return [chart.said(parts[0], parts[0] + 2)]
    return [chart.said(at, at + 3) for at in found[:1] if "each" in words[max(0, at - _NEAR) : at]]


def _each_side(chart: Chart, question: Question) -> int:
    """Where "each side" is said of an eave and no given took it in: 48 foot of eave each side; -1 where it is not."""
    words = chart.words
    at = next((k for k in range(1, len(words) - 1) if words[k : k + 2] == ["each", "side"] and words[k - 1] in _RUNS), -1)
    start = chart.tokens[at].start if at >= 0 else 0
    return -1 if at < 0 or any(heard.start <= start < heard.end for heard in question.givens.values()) else at


def _feet_too(question: Question) -> None:
    """Beside pieces told in feet, one of a bare 12 may be 12 feet as well, where the stock is as long: both ways go on."""
    pieces, stock = question.givens.get("pieces"), question.givens.get("stock_length")
    if pieces is None or stock is None or not isinstance(stock.value, Length) or question.swaps:
        return
    listed = [piece for piece in pieces.value if isinstance(piece, Piece)]
    if not any(isinstance(p.length, Length) and p.length.unit == "ft" for p in listed):
        return
    longest = stock.value.to("ft").value
    turned = tuple(_in_feet(piece, longest) for piece in listed)
    if turned != tuple(listed):
        question.swaps = [{**question.givens, "pieces": replace(pieces, value=turned)}]


def _in_feet(piece: Piece, longest: object) -> Piece:
    """A piece of so many inches, whose unit was not said, in feet where it is no longer than the stock."""
    length = piece.length
    bare = isinstance(length, Length) and length.unit == "in" and Heard(length, 0, 0, length.text).bare
    if not bare or not LEAST_FEET <= length.value <= longest:  # type: ignore[operator]
        return piece
    return Piece(piece.count, Length(length.value, "ft", length.text))
