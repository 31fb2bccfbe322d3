"""Words that speak against the topic that fits: a gap asked for is no saw setting, half of what was told is no half inch, and
what lumber is called by is no number of pieces.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.second_reader import places_of
from solvers.quantities import Length, Number
from solvers.sums import TIMES, Sum

_COVERINGS = frozenset("soffit siding cladding sheathing drywall plasterboard".split())
_OPENS = frozenset("open opens gap gaps gapping".split())
_HOW_WIDE = frozenset(("how", size) for size in ("far", "wide", "big", "much", "open"))
_MOST_PACKS, _A_SQUARE = 6, frozenset((("a", "square"), ("per", "square"), ("each", "square"), ("to", "square")))
_SIGNED = frozenset("$ £ € dollar dollars buck bucks quid cent cents cost costs price".split())
_FIBRED = frozenset("fibre fiber siding cladding weatherboard weatherboards plank planks lap".split())
_HALF_OFF = frozenset((("take", "half", "off"), ("take", "off", "half"), ("knock", "half", "off"), ("half", "off", "?")))
_AT_45 = frozenset((("45", "s"), ("45s", "on"), ("45", "degree"), ("45", "degrees")))
_RISERS, _HIGHEST_RISER = frozenset("riser risers tread treads steps".split()), 12  # inches
_LAID = frozenset("tile tiles brick bricks paver pavers riser risers cobbles".split())
_AREAS = frozenset(("square", unit) for unit in ("inches", "inch", "feet", "foot", "metres", "meters"))
_EVERY_ONE = frozenset(("a", "an", "per", "each", "every", "apiece"))
_OF_A_SHEET = frozenset(("sheet", "sheets", "rip"))
_ON_A_WALL = frozenset("wall walls stud studs centres centers oc straps furring".split())
_FIXINGS = frozenset("nails screws staples clips fasteners fixings".split())
_LED_BY = frozenset("and so ok now what need i the".split())
_PULLED = frozenset("diagonal diagonals corner corners out frame 3-4-5".split())
_DOORS = frozenset("door doors doorway doorways windows openings".split())
_TURNED = frozenset("miter mitre miters mitres angle angles saw setting polygon degrees corner corners".split())
_CUT_FROM = frozenset("stick sticks board boards length lengths stock footer footers from out cut cuts kerf off offcut".split())
_CALLED_BY = expression(r"\b[12] ?[x×] ?(2|3|4|6|8|10|12)(?:s|'s)?\b")
_ALONG_IT = frozenset("fascia gutter gutters guttering eavestrough starter flashing flashings bargeboard barge ridging".split())
_ALONG_IT_TOO = frozenset((
    ("drip", "edge"), ("ridge", "cap"), ("ridge", "caps"), ("rake", "edge"), ("ridge", "vent"), ("hip", "cap"), ("rake", "trim"),
    ("ridge", "tiles"), ("ridge", "capping"), ("verge", "trim"), ("eaves", "trim"),
))  # fmt: skip
_OVER_IT = frozenset(
    "area squares square shingles shingle roofing tiles slates felt underlay underlayment membrane sheathing decking ply plywood"
    " osb sheets metal steel cover covers".split()
)


def asks_how_open(words: Sequence[str]) -> bool:
    """Whether it is asked how far a joint stands open, which no angle tells: how far open on 7 1/4 stock."""
    pairs = set(pairwise(words))
    opens = not _OPENS.isdisjoint(words) and ("no", "gap") not in pairs
    asks = not _HOW_WIDE.isdisjoint(pairs) or words[-1] == "gap" or tuple(words[-2:]) == ("gap", "?")
    return (opens and asks) or ("far", "out") in pairs


def cut_at(words: Sequence[str]) -> bool:
    """Whether corners are cut at 45: I just cut 45s on 4 1/2 stock, how much gap."""
    return any(pair in _AT_45 for pair in pairwise(words)) and any(word.startswith("cut") for word in words)


def half_of_it(words: Sequence[str]) -> bool:
    """Whether half of what was told comes off, and not half an inch: ridge is inch and a half, take half off."""
    return any(trio in _HALF_OFF for trio in zip(words, words[1:], words[2:], strict=False))


def packs_a_square(words: Sequence[str], question: Question) -> bool:
    """Whether a small whole number, with no word of money, is how many packs go to a square: bundles at three a square."""
    price = question.givens.get("price")
    small = price is not None and price.value.value <= _MOST_PACKS and price.value.value.denominator == 1
    return small and _SIGNED.isdisjoint(words) and any(pair in _A_SQUARE for pair in pairwise(words))


def of_one_riser(words: Sequence[str], question: Question) -> bool:
    """Whether what one riser rises would be divided by how many there are: rise 7 1/4, 14 risers."""
    length = question.givens.get("length")
    one = length is not None and isinstance(length.value, Length) and length.value.to("in").value <= _HIGHEST_RISER
    return one and not _RISERS.isdisjoint(words)


def laid_not_cut(words: Sequence[str]) -> bool:
    """Whether what is counted along a length is laid or climbed, with no kerf between: 11 foot 4 of 4 inch tile."""
    return not _LAID.isdisjoint(words) and _CUT_FROM.isdisjoint(words)


def asks_a_covering(words: Sequence[str]) -> bool:
    """Whether the line ends in how much of what covers a face it takes, which is no sum: 40 foot eave at 16, how much soffit."""
    end = [word for word in words if word not in ("?", "do", "i", "we", "need", "is", "that")][-3:]
    return end[:2] == ["how", "much"] and end[-1] in _COVERINGS


def by_area(words: Sequence[str]) -> bool:
    """Whether something is told by the area of each, of which no sum of lengths is made: 37 feet at 18 square inches a foot."""
    return any(pair in _AREAS for pair in pairwise(words)) and not _EVERY_ONE.isdisjoint(words)


def cut_from_a_sheet(words: Sequence[str]) -> bool:
    """Whether what is asked is cut from a sheet, and no straps on a wall: a sheet 48 by 96 into 11 1/4 strips."""
    return not _OF_A_SHEET.isdisjoint(words) and _ON_A_WALL.isdisjoint(words)


def asks_fixings(words: Sequence[str]) -> bool:
    """Whether it is nails or screws that are asked for, and no boards: nails for 1200 sq ft of siding."""
    first = [word for word in words if word not in _LED_BY][:2]
    asked = any(trio[:2] == ("how", "many") and trio[2] in _FIXINGS for trio in zip(words, words[1:], words[2:], strict=False))
    return asked or (first[:1] != [] and first[0] in _FIXINGS and first[1:] == ["for"])


def of_an_area(words: Sequence[str]) -> bool:
    """Whether "square" is of a unit and of no frame to be pulled square: per square foot if they're 4 by 8."""
    return any(pair in _AREAS for pair in pairwise(words)) and _PULLED.isdisjoint(words)


def sides_of_a_door(words: Sequence[str]) -> bool:
    """Whether the sides told are of doors or windows that are trimmed, and of no polygon: doors three sides."""
    return not _DOORS.isdisjoint(words) and _TURNED.isdisjoint(words)


def of_sheets(words: Sequence[str]) -> bool:
    """Whether what is counted comes in sheets: 3 x 5 cement board."""
    sheets = "drywall" in words or any(("cement", board) in pairwise(words) for board in ("board", "sheet", "sheets"))
    return sheets and _FIBRED.isdisjoint(words)


def no_area(chart: Chart, question: Question) -> bool:
    """Whether how high or long a wall is was taken for its area: 150 cover on a 2640 wall."""
    area = question.givens.get("area")
    bare = area is not None and area.end > area.start and area.text.replace(",", "").isdecimal()
    return area is not None and bare and chart.words[places_of(chart, area)[1] :][:1] == ["wall"]


def of_lumber(chart: Chart, question: Question) -> bool:
    """Whether a length is multiplied by a number that lumber is called by: six 2x4s at 9 foot, feet of 1x6 at 9 ft."""
    heard = question.givens.get("sum")
    whole = heard.value if heard is not None else None
    if not isinstance(whole, Sum) or whole.operation != TIMES or not isinstance(whole.left, Number):
        return False
    return str(whole.left.value) in {found[1] for found in _CALLED_BY.finditer(chart.text.lower())}


def of_its_edge(words: Sequence[str]) -> bool:
    """Whether what goes along the edges of a roof is asked for, and nothing that covers it: drip edge for a 30 by 24 roof."""
    along = not _ALONG_IT.isdisjoint(words) or not _ALONG_IT_TOO.isdisjoint(pairwise(words))
    return along and _OVER_IT.isdisjoint(words)
