"""How many pieces of one length a stick gives: "how many 40s out of a 12", "how many 2 foot pieces from a 16".

Both readers know sticks that are asked for, not pieces: a 2 foot piece is no stock there. The words tell it outright.
"""

from __future__ import annotations

from fractions import Fraction

from intents.chart import Chart, quantities
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number, Quantity

TOPIC = "pieces from a stick"
_FROM, _ARTICLES = frozenset(("from", "out")), frozenset("a an one each the my of every".split())
_GET = frozenset("s can could do does i we you get will would there come comes cut fit be".split())
_PIECES = frozenset("piece pieces block blocks length lengths bit bits strips cleats rips stub stubs spacers pcs cuts".split())
_STICK = frozenset("board boards stick sticks stock footer footers foot long length lengths plank batten 2x4 s".split())
_ENDS = frozenset(("?", ".", "!", ","))
_PLAIN_FEET, _MM = 24, 100


def from_a_stick(chart: Chart) -> Question | None:
    """The question of how many pieces a stick gives; None where the words do not ask that."""
    words = chart.words
    if "many" not in words or _FROM.isdisjoint(words):
        return None
    sizes = [r for r in quantities(chart, 0, len(words)) if isinstance(r.value, Length | Number)]
    kerf, sizes = _kerf(chart, sizes)
    if len(sizes) != 2 or (kerf is None and "kerf" in words):
        return None
    piece, stock = sizes
    between = words[piece.end : stock.start]
    lead = [word for word in words[: piece.start] if word not in _PIECES]
    led = lead[-2:] == ["how", "many"]
    at = next((k for k, word in enumerate(between) if word in _FROM), -1)
    if not led or at < 0 or not set(between[:at]) <= _PIECES | _GET or not set(between[at + 1 :]) <= _ARTICLES:
        return None
    if not set(words[stock.end :]) - (_ENDS | {"kerf", "no", "with", "and"}) - _said(chart, kerf) <= _STICK:
        return None
    givens = {"piece": _length(chart, piece, stock, False), "stock": _length(chart, stock, piece, True)}
    if givens["piece"].value.to("in").value > givens["stock"].value.to("in").value:
        return None
    return Question(TOPIC, givens | ({"kerf": kerf} if kerf else {}), 2.0, words=["how", "many", "from"])


def _said(chart: Chart, heard: Heard | None) -> set[str]:
    return set() if heard is None else {t.text for t in chart.tokens if heard.start <= t.start < heard.end}


def _kerf(chart: Chart, sizes: list[Reading]) -> tuple[Heard | None, list[Reading]]:
    """The kerf, where it is told, and the sizes besides."""
    words = [*chart.words, "", ""]
    if "kerf" not in words:
        return None, sizes
    at = words.index("kerf")
    if words[at - 1] == "no":
        token = chart.tokens[at]
        none = Heard(Length(Fraction(0), "in", "no"), chart.tokens[at - 1].start, token.end, "no kerf")
        return none, [r for r in sizes if r.start != at - 1]
    near = [r for r in sizes if r.end == at or r.start == at + 1]
    if len(near) != 1:
        return None, sizes
    value = near[0].value
    assert isinstance(value, Quantity)
    heard = _heard(chart, near[0], value if isinstance(value, Length) else Length(value.value, "in"))
    return heard, [r for r in sizes if r is not near[0]]


def _length(chart: Chart, reading: Reading, other: Reading, long: bool) -> Heard:
    """A size, in the unit that was said, or that it is told in beside the other: inches from so many feet."""
    value, beside = reading.value, other.value
    assert isinstance(value, Quantity)
    if isinstance(value, Length):
        return _heard(chart, reading, value)
    if isinstance(beside, Length) and beside.metric:
        unit = "mm" if value.value >= _MM else "m" if long or "." in chart.said(reading.start, reading.end) else "cm"
    else:
        unit = "ft" if long and value.value <= _PLAIN_FEET else "in"
    return _heard(chart, reading, Length(value.value, unit))


def _heard(chart: Chart, reading: Reading, value: Length) -> Heard:
    start, end = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
    text = chart.text[start:end]
    return Heard(Length(value.value, value.unit, text), start, end, text)
