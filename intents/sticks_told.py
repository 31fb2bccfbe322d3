"""How many pieces so many sticks give: "ten sticks of 6 m rebar chopped at 850", "16 footers, I've five of them, 22 inch blocks".

Of two lengths the longer is the stick. A number counts the sticks where it stands before their length, with nothing between
but what they are called, or before their name; any other number, and the line is left to what else reads it. What a stick is
called by its section (a 2x4, ninety by forty-five) is no size that a length is cut from.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, once, span
from intents.from_a_stick import TOPIC, kerf_told, length_of
from intents.in_line import PASSED, Item, all_taken, aside, counts_unused, heard, inches, items
from intents.number_words import TAPE
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from intents.timber_names import section
from solvers.quantities import Count, Length, Money, Number, Percent
from solvers.slots import Parameter

SCORE = 9.0  # as of a rule that fits whole
_STICKS = frozenset(
    "sticks lengths boards battens studs bars pipes tubes planks sections poles rods footers timbers strips laths joists posts"
    " rails beams channels angles tracks extrusions conduits trims mouldings moldings purlins rafters logs stocks uprights slats"
    " two-by-fours ones of".split()
)
_PIECES = frozenset("pieces bits pcs".split())  # which are sticks only where their own length follows: 5 pieces of 12 ft trim
_LINKS = frozenset(
    (PASSED, *", of the at @ all each × - long being measuring are is that which in ( ) these those my our".split())
)
_TIES = frozenset("at @ all each of × are being measuring".split())  # what ties a length to the thing before it
_CUTS = frozenset(
    "from out outta into need needs want wants cut cuts cutting saw sawing chop chopping chopped how many get gets per for and"
    " with to make makes rip off every".split()
)
_THEM = frozenset("them em 'em those it these this that".split())
_ELSE = frozenset(  # a row set out, a wall, a wage: no pieces of a stick
    "apart spacing spaced gap gaps every centre centres center centers exposure reveal perimeter waste percent cost price"
    " fence buy order".split()
)
_EVERY = frozenset(("every", thing) for thing in "piece one bit cut block slat length".split())
_THICK, _WIDE = range(10, 101), range(15, 401)  # mm, of a section that is told in them
_LONG_SIZES = (6, 8, 10, 12, 14, 16, 18, 20, 22, 24)  # ft, as a stick is called by: 2x12x20
_NAME_AFTER = 3  # words from a count to the name of the sticks
_MOST, _UNKNOWN = 10_000, 2  # sticks; words between a count and a length that are no known name
PAIRS = frozenset(("pair", "couple", "both"))
_MOST_METRES = 9  # of a stick
_LEAST_MM = 100  # a bare number from there on, beside a stick in metres, is of millimetres
_SHORTEST = 24  # in, of a stick


def sticks_told(chart: Chart) -> Question | None:
    """The question of a line whose every number is a stick's, a piece's, the kerf, or how many sticks there are."""
    if any(word in _ELSE and (word, after) not in _EVERY for word, after in pairwise([*chart.words, ""])):
        return None
    sections, long = _sections(chart)
    left = aside(chart) & ~sections
    found = items(chart, sections | left)
    if not all_taken(chart, found, sections | left):
        return None
    kerf, sizes = kerf_told(chart, [item.reading for item in found])
    found = [item for item in found if any(item.reading is size for size in sizes)]
    roles = _roles(chart, found, long)
    if roles is None:
        return None
    piece, stock, count = roles
    pair = _pair(chart, stock) if count is None else None
    if count is None and pair is None and not PAIRS.isdisjoint(chart.words):
        return None
    givens = {"piece": length_of(chart, piece, stock, False), "stock": length_of(chart, stock, piece, True)}
    if inches(givens["piece"].value) > inches(givens["stock"].value) or inches(givens["stock"].value) < _SHORTEST:
        return None
    if kerf is not None:
        givens["kerf"] = kerf
    if pair is not None:
        givens["sticks"] = pair
    if count is not None:
        givens["sticks"] = heard(chart, count.reading, Count(Fraction(count.whole), "count"))
    beside = [piece, stock, *([count.reading] if count is not None else [])]
    left |= sections if any(sections >> size.end & 1 for size in beside) else 0  # a sixteen foot | two by four
    return Question(TOPIC, givens, SCORE, left=chart.said_in(left), words=["how", "many", "from"])


def sticks_not_listed(chart: Chart) -> Question | None:
    """The same of a line like a cut list, where the sticks are counted and the other length is called that of the pieces: 4
    boards 16 foot, pieces 21, how many.
    """
    words = [word for word in chart.words if word not in (",", "?", ".")]
    at = next((k for k, pair in enumerate(pairwise(words)) if pair == ("how", "many")), -1)
    if at < 0 or _STICKS & {*words[at + 2 : at + 3]}:
        return None
    told = sticks_told(chart)
    piece = told.givens["piece"] if told is not None and "sticks" in told.givens else None
    if piece is None:
        return None
    start = next(k for k, token in enumerate(chart.tokens) if token.start == piece.start)
    end = next(k for k, token in enumerate(chart.tokens, 1) if token.end == piece.end)
    return told if _PIECES & {*chart.words[max(0, start - 1) : start], *chart.words[end : end + 1]} else None


def sticks_counted(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Ask about a whole number that may be how many sticks there are, and that a question without it let fall."""
    if not question.complete or "sticks" in question.givens:
        return
    question.unplaced += counts_unused(chart, question, _sections(chart)[0])
    if not PAIRS.isdisjoint(chart.words):
        question.unplaced += [word for word in chart.words if word in PAIRS]


@once
def _sections(chart: Chart) -> tuple[int, int]:
    """Mask of what the sticks are called by their section; and the place of a length told after one, 2x12x20, or -1."""
    mask, long = 0, -1
    for reading in (r for row in chart.every for r in row if isinstance(r.value, Dims)):
        parts = reading.value.parts  # type: ignore[union-attr]
        if len(parts) == 2 and (section(chart.words, reading) or _metric(chart, reading)):
            mask |= span(reading.start, reading.end)
        elif len(parts) == 3 and isinstance(parts[2].value, Number) and parts[2].value.value in _LONG_SIZES:
            mask, long = mask | span(reading.start, parts[2].start), parts[2].start
    if long >= 0:
        mask &= ~span(long, long + 1)
    return mask, long


def _metric(chart: Chart, reading: Reading) -> bool:
    """Whether it is a section in millimetres: ninety by forty-five."""
    assert isinstance(reading.value, Dims)
    sizes = [part.value for part in reading.value.parts]
    if any(isinstance(size, Length) and size.unit != "mm" for size in sizes):
        return False
    told = sorted(size.value for size in sizes if isinstance(size, Number | Length))
    return len(told) == 2 and told[0] in _THICK and told[1] in _WIDE and told[1] > 12


def _roles(chart: Chart, found: list[Item], long: int) -> tuple[Reading, Reading, Item | None] | None:
    """Piece, stick and how many sticks; None where the words leave another way."""
    if any(isinstance(item.reading.value, Money | Percent) for item in found):
        return None
    sized = [item for item in found if not item.whole or item.reading.start == long]
    bare = [item for item in found if item not in sized]
    if not 2 <= len(found) <= 3:
        return None
    if len(sized) == 1 and bare:
        return _bare_piece(chart, found, sized[0], bare)
    if len(sized) != 2 or not all(isinstance(item.reading.value, Length | Number) for item in sized):
        return None
    stick, piece = _longer(chart, sized, long)
    if stick is None or piece is None:
        return None
    if not bare:
        return piece.reading, stick.reading, None
    return (piece.reading, stick.reading, bare[0]) if _counts(found, bare[0], stick, piece) else None


def _pair(chart: Chart, stock: Reading) -> Heard | None:
    """Two sticks, as a pair of them: a pair of 20 footers, both 16 footers."""
    words, at = chart.words, stock.start
    of = at - 2 if words[at - 1] in ("of", "the") else at - 1
    if of < 0 or words[of] not in PAIRS or _CUTS.intersection(words[of:at]):
        return None
    start, end = chart.tokens[of].start, chart.tokens[of].end
    return Heard(Count(Fraction(2), "count", chart.text[start:end]), start, end, chart.text[start:end])


def _bare_piece(chart: Chart, found: list[Item], stick: Item, bare: list[Item]) -> tuple[Reading, Reading, Item | None] | None:
    """Piece, stick and count where the piece is told with no unit: six 12 ft lengths cut at 34; a 3.6 batten into 590 packers."""
    if not all(isinstance(one.reading.value, Length | Number) for one in (stick, *bare)):
        return None  # 12/12 is no stick
    if len(bare) == 1:
        size = length_of(chart, bare[0].reading, stick.reading, False).value
        long = length_of(chart, stick.reading, bare[0].reading, True).value
        millimetres = bare[0].whole >= _LEAST_MM and size.unit == "mm" and inches(size) < inches(long)  # nobody cuts so many
        return (bare[0].reading, stick.reading, None) if millimetres and _in_metres(stick) and not _times(bare[0]) else None
    for count, piece in (bare, bare[::-1]):
        size = length_of(chart, piece.reading, stick.reading, False).value
        long = length_of(chart, stick.reading, piece.reading, True).value
        other = _counts(found, piece, stick, count)
        if _counts(found, count, stick, piece) and not other and inches(size) < inches(long):
            return piece.reading, stick.reading, count
    return None


def _in_metres(stick: Item) -> bool:
    """Whether a stick is told in metric, or is so many metres by a decimal that no tape shows."""
    value = stick.reading.value
    if isinstance(value, Length):
        return value.metric
    return isinstance(value, Number) and value.value <= _MOST_METRES and value.value.denominator not in TAPE


def _longer(chart: Chart, sized: Sequence[Item], long: int) -> tuple[Item | None, Item | None]:
    one, other = sized
    if long in (one.reading.start, other.reading.start):
        return (one, other) if one.reading.start == long else (other, one)
    sizes = [length_of(chart, a.reading, b.reading, a.reading.kind == "plural").value for a, b in ((one, other), (other, one))]
    first, second = (inches(size) for size in sizes)
    if first == second:
        return None, None
    return (one, other) if first > second else (other, one)


def _counts(found: list[Item], count: Item, stick: Item, piece: Item) -> bool:
    """Whether a number counts the sticks: it stands before their length or their name, or is so many of them."""
    if not 1 <= count.whole <= _MOST:
        return False
    at = found.index(count)
    follows = at + 1 < len(found) and found[at + 1] is stick
    if follows and _leads_to(count.after):
        return True
    after_it = at > 0 and found[at - 1] is stick and _times(count)
    return after_it or _of_them(count, stick, piece) or _names_sticks(count, stick, piece)


def _times(count: Item) -> bool:
    """Whether a number is how often what stands before it is there: 5.4 m skirting × 2, 16 footers (5)."""
    said = count.before[-1:] in (("×",), ("(",)) and _CUTS.isdisjoint(count.before)
    return said and len(count.before) <= _UNKNOWN + 1 and "." not in count.before


def _leads_to(between: tuple[str, ...]) -> bool:
    """Whether only what the sticks are called stands between how many there are and how long they are."""
    no = between[:2] == ("no", ".")  # 10 no. 4.8 m battens
    between = between[2:] if no else between
    if not _CUTS.isdisjoint(between) or "." in between:
        return False
    words = [word for word in between if word not in _LINKS]
    if not words:
        return "," not in between or PASSED in between[: between.index(",")]  # my lad is 12, a sixteen foot board
    last = max((at for at, word in enumerate(between) if word == ","), default=-1)
    if any(word not in _LINKS | _STICKS for word in between[last + 1 :]) and last >= 0:
        return False
    if words[0] in _PIECES:
        return between[:2] == (words[0], "of")
    plurals = [word for word in words if word.endswith("s") and word not in _STICKS]
    tied = between[-1] in _TIES and len(plurals) == 1
    return len(words) <= _UNKNOWN + 1 and (not plurals or tied)


def _of_them(count: Item, stick: Item, piece: Item) -> bool:
    """Whether so many "of them" are the sticks: they are named last before it."""
    of = [k for k, pair in enumerate(pairwise(count.after)) if pair[0] == "of" and pair[1] in _THEM and k <= 1]
    if not of:
        return False
    lengths = count.after[0] in ("lengths", "sticks", "boards") and of == [1]
    cut_first = piece.reading.start < stick.reading.start < count.reading.start
    return lengths or cut_first or count.reading.start < piece.reading.start


def _names_sticks(count: Item, stick: Item, piece: Item) -> bool:
    """Whether what a number counts is a name of the sticks, eight boards, or goes by the name of the one told: a dowel 36 inch,
    eight dowels; and not by that of the pieces.
    """
    before = stick.before[-2:] if stick.before != count.after else ()
    beside = {_stem(word) for word in (*before, *stick.after[:2])} - _LINKS
    mine = {_stem(word) for word in piece.after[:2]}
    for at, word in enumerate(count.after[:_NAME_AFTER]):
        if word in _CUTS or word == ",":
            return False
        if _stem(word) not in mine and (word in _STICKS - {"of", "ones"} or (word[-1:] == "s" and _stem(word) in beside)):
            return at < _NAME_AFTER
    return False


def _stem(word: str) -> str:
    return word.removesuffix("s")
