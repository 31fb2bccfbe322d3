"""How far a fastener of a told length holds past the layers: which length is its own, and every layer as often as it is there.

"two 13 mm plasterboards, a 60 mm screw", "two and a half inch ring shank through …", "fixing 22 mm larch with 60 mm nails through
a 12 mm board". What stands right before a screw or nail, or right after it, is how long it is; all else must be layers.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from intents.chart import Chart
from intents.every_size import Row, every_size
from intents.no_layers import held_in_frame
from intents.placing import heard_as, place_of
from intents.question import Claim, Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number
from solvers.slots import Layer, Parameter

TOPIC, LENGTH = "fastener penetration", "fastener length"
_READ_AS = frozenset((LENGTH, "tape arithmetic", "build-out"))
_KINDS = frozenset(("layers", "length", "number"))
_FASTENERS = frozenset(
    "screw screws nail nails staple staples spike spikes brad brads lag lags fastener fasteners shank shanks".split()
)
_APART = frozenset("and with by on over through thru past for to in into of behind under from or then plus is are".split())
_IS = frozenset("is are was of at has have a an length long size only being = :".split())
_HOLDS = frozenset(
    "bite bites biting penetration hold holds holding grip grips grab embedment embed left stud studs joist joists rafter framing"
    " frame thread threads anchorage deep".split()
)
_ASKS_LONG = frozenset((("how", "long"), ("what", "length"), ("which", "length"), ("what", "size"), ("which", "screw")))
_LENGTH_OF = frozenset((("what", "length", "of"), ("how", "long", "of")))
_GAUGED = frozenset(("#", "no", "no.", "number", "gauge"))
_ENOUGH = frozenset("enough ok okay do does will".split())
_NEED = frozenset("need needs want wants require requires least".split())
_ENDED = frozenset(("", ",", ".", "?"))
_ADJECTIVES, _LIKELY = 3, 0.15

Places = Mapping[str, Parameter]


class _Told(NamedTuple):
    """The fastener and the layers of a line, and how much is wanted to hold, where that is told."""

    givens: dict[str, Heard]
    wanted: Reading | None

    def claim(self, chart: Chart) -> Claim | None:
        """What the answer is held against: need 1 1/4 in the stud, is it enough."""
        size = self.wanted
        if size is None or not isinstance(size.value, Length | Number):
            return None
        value = size.value if isinstance(size.value, Length) else Length(size.value.value, "in", chart.said(size.start, size.end))
        return Claim(value, chart.said(size.start, size.end), "wanted", size.start, size.end)


def penetration_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give a question of how far a fastener holds its own length and all its layers, where it lacks or lets fall any."""
    told = _every_place(chart, {p.name: p for p in parameters})
    if told is None or "should" in chart.words:  # how far it should go in is what is called enough
        return
    mine, had = told.givens, question.givens
    alike = "fastener" in had and had["fastener"].start == mine["fastener"].start
    if question.plain and alike and told.wanted is None and _many(mine) < _many(had):
        return
    question.givens, question.swaps, question.rival = mine, [], False
    question.unplaced, question.lacking, question.missing = [], 0, []
    question.claim = question.claim or told.claim(chart)


def penetration_rather(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Take for how far a fastener holds what was read as how long one should be, where it is told how long it is."""
    question, words = next(iter(questions), None), chart.words
    if question is None or question.topic not in (TOPIC, *_READ_AS) or _FASTENERS.isdisjoint(words) or _HOLDS.isdisjoint(words):
        return
    if _asks_long(words) or chart.likely.get(TOPIC, 0) < _LIKELY:
        return
    if question.topic == TOPIC and len(questions) == 1:
        return
    told = _every_place(chart, {p.name: p for p in topics[TOPIC]})
    if told is not None and (told.wanted is None or question.topic == TOPIC):
        claim, score, manner = told.claim(chart), question.score, question.manner
        questions[:] = [Question(TOPIC, told.givens, score, words=question.words, manner=manner, claim=claim)]


def _asks_long(words: Sequence[str]) -> bool:
    """Whether it is asked how long one should be, and not what length of it is left or ends up in the stud."""
    if "should" in words:
        return True
    asks = any(pair in _ASKS_LONG for pair in pairwise(words))
    return asks and "left" not in words and not any(trio in _LENGTH_OF for trio in zip(words, words[1:], words[2:], strict=False))


def _many(givens: Mapping[str, Heard]) -> int:
    layers = givens.get("layers")
    return len(layers.value) if layers is not None and isinstance(layers.value, tuple) else 0


def _every_place(chart: Chart, places: Places) -> _Told | None:
    """The fastener's length and all layers of the line; None where a quantity of it is neither, or two are the fastener's."""
    fasteners = _fasteners(chart)
    if len({(type(r.value), r.value.value) for r in fasteners}) != 1:  # type: ignore[union-attr]
        return None
    fastener = fasteners[0]

    def fits(reading: Reading) -> bool:
        apart = reading.end <= fastener.start or fastener.end <= reading.start
        own = (reading.start, reading.end) == (fastener.start, fastener.end)
        return reading.kind in _KINDS and (apart or (own and reading.kind == fastener.kind))

    for row in every_size(chart, fits):
        layers, wanted = _layers(chart, row, fastener)
        if layers:
            heard = heard_as(chart, places["fastener"], fastener, True)
            return None if heard is None else _Told({"fastener": heard, "layers": layers}, wanted)
    return None


def _layers(chart: Chart, row: Row, fastener: Reading) -> tuple[Heard | None, Reading | None]:
    """All layers of a row, and what is wanted to hold; none where something in it is neither of these nor the fastener."""
    found = [r for r in row if r.kind == "layers"]
    rest = [r for r in row if r.kind != "layers" and (r.start, r.end) != (fastener.start, fastener.end)]
    rest = [r for r in rest if not _of_gauge(chart, r)]
    wanted = [r for r in rest if _is_wanted(chart, r)]
    layers = tuple(layer for r in found if isinstance(r.value, tuple) for layer in r.value)
    if not layers or len(wanted) < len(rest) or len(wanted) > 1 or not all(isinstance(layer, Layer) for layer in layers):
        return None, None
    start, end, text = place_of(chart, found[0].start, found[-1].end)
    return Heard(layers, start, end, text, min(r.sure for r in found)), next(iter(wanted), None)


def _is_wanted(chart: Chart, reading: Reading) -> bool:
    """Whether it is told how much is to hold, and asked whether it does: need 1 1/4 in the stud, is it enough."""
    words = [*chart.words, "", "", ""]
    lead = chart.words[max(0, reading.start - _ADJECTIVES) : reading.start]
    asked = not _ENOUGH.isdisjoint(words)
    return asked and not _NEED.isdisjoint(lead) and (held_in_frame(words, reading.end) or words[reading.end] in _ENDED)


def _of_gauge(chart: Chart, reading: Reading) -> bool:
    """Whether a number tells how thick a screw is: #8."""
    near = chart.words[max(0, reading.start - 1) : reading.start] + chart.words[reading.end : reading.end + 1]
    return isinstance(reading.value, Number) and not _GAUGED.isdisjoint(near)


def _fasteners(chart: Chart) -> list[Reading]:
    """The sizes that are right before a fastener ("6 inch structural screw"), or else right after it ("nail is 3 1/4")."""
    words = chart.words
    found: list[Reading] = []
    for at, word in enumerate(words):
        if word in _FASTENERS:
            size = _size_before(chart, at) or _size_after(chart, at)
            found += [size] if size is not None else []
    return found


def _size_before(chart: Chart, at: int) -> Reading | None:
    """The longest size that ends at a fastener, or up to three words before it that only say which sort it is."""
    for end in range(at, max(0, at - _ADJECTIVES) - 1, -1):
        here = [r for row in chart.readings[:end] for r in row if r.end == end and _is_size(r)]
        best = max(here, key=lambda r: (r.end - r.start, r.sure), default=None)
        if best is not None and _of_gauge(chart, best):
            return _size_before(chart, best.start - (chart.words[best.start - 1] in _GAUGED))  # 2 1/2 inch #8 screws
        if best is not None:
            return best
        if end == 0 or not chart.words[end - 1].isalpha() or chart.words[end - 1] in _APART:
            return None
    return None


def _size_after(chart: Chart, at: int) -> Reading | None:
    """The longest size that begins after a fastener, past words that say it is so long; what is to go in is none."""
    start = at + 1
    while start < len(chart.words) and chart.words[start] in _IS and not any(map(_is_size, chart.readings[start])):
        start += 1
    here = [r for r in chart.readings[start] if _is_size(r)] if start < len(chart.words) else []
    best = max(here, key=lambda r: (r.end - r.start, r.sure), default=None)
    return best if best is not None and chart.words[best.end : best.end + 1] not in (["into"], ["layers"]) else None


def _is_size(reading: Reading) -> bool:
    return reading.kind in ("length", "number") and isinstance(reading.value, Length | Number) and reading.value.value > 0
