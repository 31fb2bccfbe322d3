"""Trim round openings told in whatever order: how many there are of each, which sides and which faces are trimmed.

"Both legs and across the head", "three sides", "up both sides and over" are the two legs and a head; "inside and out" and "both
sides of the wall" are both faces; "one face", "room side only" one. A number that is none of these is not let fall.
"""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart, span
from intents.expressions import expression
from intents.in_line import Item, all_taken, aside, counts_unused, heard, items
from intents.lengths import FOOTERS
from intents.listed_openings import NAMES
from intents.openings_in_line import Openings, openings_in, several_named
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Dims
from intents.timber_names import section
from solvers.quantities import Length, Percent
from solvers.slots import Parameter

TOPIC, SCORE = "trim round openings", 9.0
_N = r"(?:both|two|the|2|all|each)"
_LEGS = rf"(?:(?:{_N} )*(?:sides|legs|jambs|uprights|stiles))"
_TOP = r"(?:top|head|header|over|heads|tops)"
_JOIN = r"(?:(?:and|plus|&|\+|,|then) ?)?(?:(?:across|over|a|the|one|along) )*"
THREE_SIDES = expression(
    rf"{_LEGS}[ ,]*{_JOIN}{_TOP}\b|{_TOP} {_JOIN}{_LEGS}|(?:three|3) (?:sides|edges)|no (?:sill|bottom|threshold)\b"
    r"|(?:not|except|less|minus|without|skip(?:ping)?|leav(?:e|ing) (?:off|out)) (?:the |a |along the |across the )?"
    r"(?:sill|bottom|floor|threshold)\b"
)
NO_SILL = expression(r"sill|bottom")  # which no door has that is trimmed: so it is of the windows
ALL_SIDES = expression(
    r"all (?:the )?(?:four|4) (?:sides|edges)|\b(?:four|4) (?:sides|edges)|all round|all around|all the way (?:a)?round"
    r"|right round|all sides|all edges|all (?:of )?their edges|every (?:side|edge)|(?:full|whole) perimeter|picture frame"
)
BOTH_FACES = expression(
    r"\b(?:both|two|2) (?:faces|faces of the wall)\b"
    r"|\binside (?:and|&|n|plus|\+) (?:the )?(?:out|outside)\b|\boutside (?:and|&) (?:the )?in(?:side)?\b|\bin and out\b"
    r"|\b(?:both|each|either|two|2) (?:sides?|faces?) of (?:the|each|every|a|this|that) (?:wall|opening|door|window|doorway)\b"
    r"|\bboth (?:the )?inside and (?:the )?out"
)
TWO_SIDES = expression(r"\b(?:two|2) sides\b")  # the two legs, or the two faces
BOTH_SIDES = expression(r"\bboth sides\b")
ONE_FACE = expression(
    r"\bone (?:side|face)\b|\b(?:room|inside|outside|interior|exterior|hall|street|near) (?:side |face |trim )?(?:only|alone)\b"
    r"|\bsingle (?:side|face)\b|\bon one (?:side|face)\b|\broom side\b"
)
_SIDED = frozenset("sides side edges edge faces face legs leg jambs heads".split())
_MADE = frozenset("trim casing pine cedar boards board stock flat mdf oak fir wall walls stud studs framing".split())
_ASKED = frozenset(
    "trim trims trimmed trimming casing casings case architrave architraves brickmould brickmold surround channel moulding"
    " molding bead beading round around wrap how what what's whats total length lengths need needed much"
    " perimeter staff reveal liner lineal linear edges edge frame frames picture j sides".split()
)
_OF = frozenset("of in with from using out".split())
_STOCK = frozenset("sticks stick lengths stock footers".split())
_STOPS = frozenset((".", ",", ";", "?"))
_FOUR, _NEAR = 4, 4
_PLACES = frozenset(
    "units unit floors floor storeys storey stories story houses house rooms room flats flat apartments buildings building sets"
    " jobs sheds cabins".split()
)
_LEADS = tuple((word,) for word in "× ( there's theres are got have of off each".split())
_TIMES = frozenset(("pair", "couple", "pairs", "couples"))


def trim_told(chart: Chart) -> Question | None:
    """The question of a line whose every number is of an opening, counts them, or tells what the trim is sold in."""
    if _ASKED.isdisjoint(chart.words):
        return None  # two windows 3 by 4 and a door, of the wall before
    left = aside(chart) | _prices(chart)
    passed = left | _sides_counted(chart) | _section(chart) | _square_one(chart)
    told = openings_in(chart, passed)
    if told is None or told.uncounted or not _TIMES.isdisjoint(chart.words):
        return None
    line = " ".join(chart.words)
    givens = {"openings": told.told}
    if not _sides(chart, told, line, givens) or not _rest(chart, told.rest, givens):
        return None
    taken = passed
    for size in told.sizes:
        taken |= span(size.start, size.end)
    counted = [item for item in items(chart, passed, pairs=True) if item.whole]
    for item in (*told.rest, *counted):
        taken |= span(item.reading.start, item.reading.end)
    if not all_taken(chart, [], taken):
        return None
    return Question(TOPIC, givens, SCORE, left=chart.said_in(left), words=["trim"])


def trim_counted(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Which sides and faces words tell, of a question that has its openings; and what it let fall is asked about."""
    if not question.complete:
        return
    line = " ".join(chart.words)
    three, both = THREE_SIDES.search(line), BOTH_FACES.search(line)
    if three is not None and _mixed(question) and not NO_SILL.search(three[0]):
        question.unplaced.append(three[0])
    elif three is not None:
        question.givens["sides"] = _words(chart, line, *three.span(), "THREE")
        if both is None:
            question.givens.pop("faces", None)  # up both sides and over
    if both is not None:
        question.givens["faces"] = _words(chart, line, *both.span(), "BOTH")
    if both is None and three is None and (two := TWO_SIDES.search(line)) is not None:
        question.unplaced.append(two[0])
    passed = _sides_counted(chart) | _section(chart) | _prices(chart)
    question.unplaced += counts_unused(chart, question, passed, _may_count)
    question.unplaced += [word for word in chart.words if word in ("pairs", "couples")]
    openings = question.givens["openings"].value
    if not question.unplaced and several_named(chart) and sum(one.count for one in openings) == 1:
        del question.givens["openings"]
        question.missing = ["openings"]


def _may_count(item: Item) -> bool:
    """Whether a number may be how many openings there are."""
    beside = not NAMES.keys().isdisjoint((*item.after[:_NEAR], *item.before[-1:]))
    places = not _PLACES.isdisjoint(item.after[:2])  # 4 windows in each of 3 houses
    return beside or places or item.before[-1:] in _LEADS or item.after[:1] in _LEADS or not item.after[:1]


def _mixed(question: Question) -> bool:
    """Whether there are doors and windows, of which what is said of the sides may be of one kind."""
    return len({"door" in one.what for one in question.givens["openings"].value}) > 1


def _sides(chart: Chart, told: Openings, line: str, givens: dict[str, Heard]) -> bool:
    """Give which sides and faces words tell; False where they tell it of some openings and not of others."""
    three, all_round = THREE_SIDES.search(line), ALL_SIDES.search(line)
    both, one = BOTH_FACES.search(line), ONE_FACE.search(line)
    if both is None and three is None:
        both = BOTH_SIDES.search(line)
    if (both is not None and one is not None) or (both is None and three is None and TWO_SIDES.search(line)):
        return False
    if both is not None:
        givens["faces"] = _words(chart, line, *both.span(), "BOTH")
    if three is not None and all_round is not None:
        return False
    found = three or all_round
    if found is None:
        return True
    doors = {what == "door" for what in told.what}
    if len(doors) > 1:
        at = len(line[: found.start()].split())
        mine = _in_clause(chart, told, at)
        if len(mine) == 1:  # a door 36 by 82, window 36 by 36 all round
            return ("door" in mine) == (three is not None)
        if three is None or not NO_SILL.search(three[0]):
            return False
    givens["sides"] = _words(chart, line, *found.span(), "THREE" if three is not None else "ALL")
    return True


def _in_clause(chart: Chart, told: Openings, at: int) -> set[str]:
    """What the openings are that stand in the clause of a word."""
    stops = [-1, *(n for n, word in enumerate(chart.words) if word in _STOPS), len(chart.words)]
    first, last = next((a, b) for a, b in pairwise(stops) if a < at < b or at <= b)
    return {what for size, what in zip(told.sizes, told.what, strict=True) if first < size.start < last}


def _rest(chart: Chart, rest: list[Item], givens: dict[str, Heard]) -> bool:
    """Give what the trim is sold in and its waste; False where a quantity is neither."""
    for item in rest:
        value = item.reading.value
        sold = not _STOCK.isdisjoint(item.after[:1]) or not FOOTERS.isdisjoint(chart.words[item.reading.start : item.reading.end])
        if isinstance(value, Length) and sold and "stock" not in givens:
            givens["stock"] = heard(chart, item.reading, value)
        elif isinstance(value, Percent) and "waste" not in givens:
            givens["waste"] = heard(chart, item.reading, value)
        else:
            return False
    return True


def _sides_counted(chart: Chart) -> int:
    """Mask of the numbers that count sides, edges or faces: all four sides."""
    mask = 0
    for reading in (r for row in chart.every for r in row if r.kind == "number"):
        after, before = chart.words[reading.end : reading.end + 1], chart.words[max(0, reading.start - 1) : reading.start]
        few = reading.value.value <= _FOUR  # type: ignore[union-attr]
        pieces = after == ["pieces"] and reading.value.value == _FOUR  # type: ignore[union-attr]
        if few and (not _SIDED.isdisjoint(after) or pieces or before in (["those"], ["these"])):  # round those two
            mask |= span(reading.start, reading.end)
    return mask


def _section(chart: Chart) -> int:
    """Mask of what the trim is called by its section: feet of one by three, 1x4 trim."""
    mask = 0
    for reading in (r for row in chart.every for r in row if isinstance(r.value, Dims) and section(chart.words, r)):
        before, after = chart.words[reading.start - 1 : reading.start], chart.words[reading.end : reading.end + 1]
        if not _OF.isdisjoint(before) or not _MADE.isdisjoint(after):
            mask |= span(reading.start, reading.end)
    return mask


def _square_one(chart: Chart) -> int:
    """Mask of "one square" where it is an opening that is square, and no hundred square feet."""
    return sum(span(at, at + 2) for at, two in enumerate(pairwise(chart.words)) if two == ("one", "square"))


def _prices(chart: Chart) -> int:
    """Mask of what one costs: two doors at 149 each, 760 by 2040."""
    mask = 0
    for at, word in enumerate(chart.words[:-1]):
        if word.isdecimal() and chart.words[at - 1 : at] == ["at"] and chart.words[at + 1] in ("each", "apiece", "a"):
            mask |= span(at, at + 1)
    return mask


def _words(chart: Chart, line: str, start: int, end: int, choice: str) -> Heard:
    """A choice with the words it was said in, by their places in the joined words of the line."""
    first = len(line[:start].split())
    last = max(first + 1, len(line[:end].split()))
    return Heard(choice, *place_of(chart, first, last))
