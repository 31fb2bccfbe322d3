"""How many pieces of one length a stick gives: "how many 40s out of a 12", "a 16 foot board, I need 22 and a quarter, how many".

Both readers know sticks that are asked for, not pieces: a 2 foot piece is no stock there. What stands beside the two lengths
tells which is the stick ("a 16 footer", "a board of 16 foot") and which the piece ("pieces of 22", "40s").
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart
from intents.in_line import items
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Count, Length, Number

TOPIC = "pieces from a stick"
_FROM = frozenset(("from", "out", "outta"))
_ARTICLES = frozenset("a an one each the my of every this that per single".split())
_GET = frozenset("s can could do does i we you get will would there come comes cut fit be".split())
_PIECES = frozenset("piece pieces block blocks bit bits strips cleats rips stub stubs spacers pcs cuts blocking nogs".split())
_STICK = frozenset("board stick plank batten footer length stock 2x4 2x6 1x4 1x6 strap lath".split())
_STICKS = frozenset("boards sticks planks battens footers lengths".split())
_FEET = frozenset(("foot", "feet", "ft", "metre", "meter", "m", "long", "mm"))
_LINKS = frozenset(("is", "are", "of", "at", "s", "that", "thats", "that's", "say", ","))
_ANY = frozenset(("?", ".", "!", ",", "and", "so", "i", "the", "a", "me", "do", "can", "of"))
# What such a question has no word for: these ask how a line is set out, or what a wall takes.
_ELSE = frozenset(
    "wall walls high tall wide width course courses exposure reveal apart spacing spaced gap gaps every centre centres center "
    "centers between stud studs area square squares around round perimeter eave rake gable window windows door doors total add "
    "waste percent cost price each cover row rows run fence deck trim fascia angle joist joists degrees pitch height rise "
    "lap slope need order buy".split()
)
_KERF, _CUT = frozenset(("kerf", "blade")), frozenset(("cut", "cuts", "saw"))
_KINDS = ("length", "number", "plural")
_AND_COUNT = 3
_LONGEST, _ALL_OF_IT = 40, frozenset("total ttl tot all of altogether run rail skirting trim".split())
_PLAIN_FEET, _MM, _KERF_TO, _KERF_MM = 24, 100, Fraction(1, 2), 8


def from_a_stick(chart: Chart) -> Question | None:
    """The question of how many pieces a stick gives; None where the words do not ask that."""
    words = chart.words
    asked = ("how", "many") in pairwise(words)
    if not asked and "per" not in words:
        return None
    kerf, sizes = kerf_told(chart, list(_sizes(chart)))
    sticks, sizes = _so_many(chart, sizes)
    if len(sizes) != 2 or (kerf is None and not _KERF.isdisjoint(words)):
        return None
    one, other = sizes
    if asked:
        roles = (one, other) if sticks else _in_order(chart, one, other, kerf) or _by_the_words(chart, one, other)
    else:
        roles = (one, other) if _per_stick(words, one, other) else None
    if roles is None:
        return None
    piece, stock = roles
    givens = {"piece": length_of(chart, piece, stock, False), "stock": length_of(chart, stock, piece, True)}
    if givens["piece"].value.to("in").value > givens["stock"].value.to("in").value:
        return None
    if givens["stock"].value.to("ft").value > _LONGEST and not _ALL_OF_IT.isdisjoint(words):
        return None  # 112.5 m of rail in all, 4.8 lengths
    more = {name: heard for name, heard in (("kerf", kerf), ("sticks", sticks)) if heard is not None}
    return Question(TOPIC, givens | more, 2.0, words=["how", "many", "from"])


def _sizes(chart: Chart) -> Iterator[Reading]:
    """The longest length or bare number at each place, "one" and "a" left out."""

    def is_size(reading: Reading) -> bool:
        article = reading.end == reading.start + 1 and chart.words[reading.start] in _ARTICLES
        return isinstance(reading.value, Length | Number) and reading.kind in _KINDS and not article

    return iter([item.reading for item in items(chart) if is_size(item.reading)])


def _so_many(chart: Chart, sizes: list[Reading]) -> tuple[Heard | None, list[Reading]]:
    """How many sticks there are, where that is told right before how long they are, and the sizes besides."""
    words = chart.words
    if len(sizes) != _AND_COUNT or words[sizes[1].start - 1] not in _FROM | {"of"} or _PIECES.isdisjoint(words[: sizes[1].start]):
        return None, sizes
    count, stick = sizes[1], sizes[2]
    named = "footers" in words[stick.start : stick.end + 1] or not _STICKS.isdisjoint(words[stick.end : stick.end + 2])
    if not isinstance(count.value, Number) or count.value.value.denominator != 1 or count.end != stick.start or not named:
        return None, sizes
    start, end = chart.tokens[count.start].start, chart.tokens[count.end - 1].end
    text = chart.text[start:end]
    return Heard(Count(count.value.value, "count", text), start, end, text), [sizes[0], stick]


def _in_order(chart: Chart, piece: Reading, stock: Reading, kerf: Heard | None) -> tuple[Reading, Reading] | None:
    """Piece and stick in the shortest way to ask: how many 40s out of a 12."""
    words = chart.words
    between = words[piece.end : stock.start]
    lead = [word for word in words[: piece.start] if word not in _PIECES | {"length", "lengths"}]
    at = next((k for k, word in enumerate(between) if word in _FROM), -1)
    may = _PIECES | _GET | {"length", "lengths"}
    if lead[-2:] != ["how", "many"] or at < 0 or not set(between[:at]) <= may or not set(between[at + 1 :]) <= _ARTICLES:
        return None
    rest = set(words[stock.end :]) - _ANY - {"kerf", "no", "with"} - _said(chart, kerf)
    return (piece, stock) if rest <= _STICK | _STICKS | _FEET | {"s"} else None


def _per_stick(words: list[str], piece: Reading, stock: Reading) -> bool:
    """Whether nothing is told but so many pieces of a size in one stick: 14 1/2 blocks per 8' stick."""
    between, after = words[piece.end : stock.start], words[stock.end : stock.end + 1]
    units = _FEET | {"in", "inch", "inches", '"', "'"}
    pieces = [word for word in between if word not in units]
    return len(pieces) == 2 and pieces[0] in _PIECES and pieces[1] == "per" and not _STICK.isdisjoint(after)


def _by_the_words(chart: Chart, one: Reading, other: Reading) -> tuple[Reading, Reading] | None:
    """Piece and stick where one stick is named and it is asked how many it gives; None where it may be another thing."""
    words = chart.words
    asked = next(i for i, pair in enumerate(pairwise(words)) if pair == ("how", "many"))
    after = [word for word in words[asked + 2 :] if word not in _ANY]
    if (after and after[0] in _STICKS | {"foot", "feet", "more"}) or not (_ELSE - _needed(words)).isdisjoint(words):
        return None
    if not (_FROM | {"get", "give", "gives", "yield", "yields", "cut"}).isdisjoint(words) or _PIECES & set(after[:1]):
        sticks = [size for size in (one, other) if _is_a_stick(words, size)]
        if len(sticks) == 1:
            piece = other if sticks[0] is one else one
            return (piece, sticks[0]) if _is_a_piece(words, piece) else None
    return None


def _needed(words: list[str]) -> frozenset[str]:
    """What says only that pieces are wanted, where the pieces or the stick are named: I need 14 inch bits out of each."""
    named = not _PIECES.isdisjoint(words) or not _FROM.isdisjoint(words)
    return frozenset(("need", "each")) if named else frozenset()


def _is_a_stick(words: list[str], size: Reading) -> bool:
    """Whether a length is that of one stick: a 16 foot board, each 8 footer, a board of 16 foot."""
    before, after = words[: size.start], words[size.end : size.end + 2]
    after = [word for word in after if word not in _FEET]
    footer = "footer" in words[size.start : size.end]
    named = footer or (bool(after) and after[0] in _STICK)
    if named and any(word in _ARTICLES for word in (before[-1:] or [""])):
        return True
    while before and before[-1] in _LINKS | _FEET:
        before = before[:-1]
    return bool(before) and before[-1] in _STICK and words[size.start - 1] != ","


def _is_a_piece(words: list[str], size: Reading) -> bool:
    """Whether a length is that of the pieces: pieces of 22, 14 inch bits, 40s, at 455."""
    before = words[size.start - 1] if size.start else ""
    after = [word for word in words[size.end : size.end + 3] if word not in _FEET]
    plural = size.kind == "plural" or after[:1] == ["s"]
    of = before in ("of", "at", "are") and size.start > 1
    return plural or of or before in _PIECES or (bool(after) and after[0] in _PIECES) or before == "many"


def _said(chart: Chart, heard: Heard | None) -> set[str]:
    return set() if heard is None else {t.text for t in chart.tokens if heard.start <= t.start < heard.end}


def kerf_told(chart: Chart, sizes: list[Reading]) -> tuple[Heard | None, list[Reading]]:
    """The kerf, where it is told ("kerf 1/8", "the blade takes an eighth"), and the sizes besides."""
    words = [*chart.words, "", ""]
    metric = any(isinstance(r.value, Length) and r.value.metric for r in sizes)
    cuts = (r.end for r in sizes if words[r.end] in _CUT and _is_kerf(r, metric))  # 3 mm cut
    at = next((i for i, word in enumerate(words) if word in _KERF), next(cuts, -1))
    if at < 0:
        return None, sizes
    if words[at - 1] == "no":
        token = chart.tokens[at]
        none = Heard(Length(Fraction(0), "in", "no"), chart.tokens[at - 1].start, token.end, "no kerf")
        return none, [r for r in sizes if r.start != at - 1]
    near = [r for r in sizes if _is_kerf(r, metric) and (r.end in (at, at - 1) or at < r.start <= at + 3)]
    if len(near) != 1:
        return None, sizes
    value = near[0].value
    assert isinstance(value, Length | Number)
    unit = "mm" if value.value >= 1 else "in"  # the blade takes 3, beside millimetres
    heard = _heard(chart, near[0], value if isinstance(value, Length) else Length(value.value, unit))
    return heard, [r for r in sizes if r is not near[0]]


def _is_kerf(reading: Reading, metric: bool) -> bool:
    """Whether a saw's blade takes no more than so much; beside metric sizes a whole number is of millimetres."""
    value = reading.value
    if metric and isinstance(value, Number) and value.value.denominator == 1:
        return 1 <= value.value <= _KERF_MM
    size = value.to("in").value if isinstance(value, Length) else value.value if isinstance(value, Number) else Fraction(0)
    return 0 < size <= _KERF_TO


def length_of(chart: Chart, reading: Reading, other: Reading, long: bool) -> Heard:
    """A size, in the unit that was said, or that it is told in beside the other: inches from so many feet."""
    value, beside = reading.value, other.value
    assert isinstance(value, Length | Number)
    if isinstance(value, Length):
        return _heard(chart, reading, value)
    if isinstance(beside, Length) and beside.metric:
        unit = "mm" if value.value >= _MM else "m" if long or "." in chart.said(reading.start, reading.end) else "cm"
    elif value.value >= 2 * _MM or (not long and isinstance(beside, Number) and beside.value < _PLAIN_FEET <= _MM <= value.value):
        unit = "mm"
    elif long and "." in chart.said(reading.start, reading.end):
        unit = "m"
    else:
        unit = "ft" if long and value.value <= _PLAIN_FEET else "in"
    return _heard(chart, reading, Length(value.value, unit))


def _heard(chart: Chart, reading: Reading, value: Length) -> Heard:
    start, end = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
    text = chart.text[start:end]
    return Heard(Length(value.value, value.unit, text), start, end, text)
