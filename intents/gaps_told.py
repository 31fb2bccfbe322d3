"""What is told of gaps, their screens and falls by the words right beside it: ten mil of air, 16 mesh, falls 3/8."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.second_reader import places_of
from intents.unsaid_units import no_inches
from solvers.quantities import Length, Ratio

THINNEST_GAP = 0.05  # in; a gap of so many thousandths was said in millimetres
_SHEETS = frozenset("poly polythene plastic film membrane wrap housewrap vapour vapor visqueen".split())  # sold by the mil
_GAPS = {"air gap": "depth", "vent opening": "gap"}
_ONE_IN, _ON_TAPE = expression(r"1/([1-9]\d*)"), (2, 4, 8, 12, 16, 32, 64)  # 1/12 is a pitch
_PART = expression(r"\d+/(?:2|4|8|16|32)")
_MATS, THICKEST_MAT = frozenset("mat mats mesh matting".split()), 4  # in; a 6 drainage mat is of millimetres
_FALLS = frozenset("fall falls falling drop drops dropping".split())
_MESH = frozenset(("mesh", "count"))


def gap_told(chart: Chart, question: Question) -> None:
    """Ten mil of air are ten millimetres."""
    _no_share(chart, question)
    name = _GAPS[question.topic]
    heard = question.givens.get(name)
    if heard is None or not isinstance(heard.value, Length):
        return
    start, end = places_of(chart, heard)
    if not _MATS.isdisjoint([*chart.words[end : end + 2], *chart.words[max(0, start - 2) : start]]):
        no_inches(question.givens, name, THICKEST_MAT)
        heard = question.givens[name]
    sheet = heard.text.endswith(("mil", "mils")) and not _SHEETS.isdisjoint(chart.text.lower().split())
    if sheet or chart.words[end : end + 1] == ["rule"]:  # 6 mil poly, the 10 mm rule
        question.unplaced = [heard.text]
        return
    wide = [value for value in (heard.value, *heard.others) if value.to("in").value >= THINNEST_GAP]
    if wide:
        question.givens[name] = replace(heard, value=wide[0], others=tuple(wide[1:]))


def _no_share(chart: Chart, question: Question) -> None:
    """So many wires to the inch are no share of a screen that is open: 16 mesh."""
    heard = question.givens.get("share")
    if heard is None or not heard.text.isdecimal():
        return
    _, end = places_of(chart, heard)
    if chart.words[end : end + 1] and chart.words[end] in _MESH:
        question.unplaced = [f"{heard.text} {chart.words[end]}"]


def no_ratio(chart: Chart, question: Question) -> None:
    """What falls 3/8 falls so much of an inch, and not three in eight; at 1/20, which no tape shows, it is one in twenty."""
    pitch = question.givens.get("pitch")
    one_in = _ONE_IN.fullmatch(pitch.text) if pitch is not None else None
    if pitch is not None and one_in is not None and int(one_in[1]) not in _ON_TAPE:
        kept = {name: heard for name, heard in question.givens.items() if name != "pitch"}
        ratio = Ratio(Fraction(1, int(one_in[1])), "ratio", pitch.text)
        question.givens = kept | {"ratio": replace(pitch, value=ratio, others=())}
        question.swaps = []
    heard = question.givens.get("ratio")
    if heard is not None and _PART.fullmatch(heard.text) and chart.words[places_of(chart, heard)[0] - 1] in _FALLS:
        question.unplaced = [heard.text]
