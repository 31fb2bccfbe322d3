"""So many alike in a row, joined: "ten pieces at 9 5/8 with an eighth between each", "lap two 8 foot pieces by 5 inches".

There is one joint less than there are pieces: a gap is added so many times, a lap is taken off. Read only where the line tells
one row and the one size of its joints, and asks how far that goes.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, once
from intents.lengths import UNITS
from intents.question import Question, Reading
from intents.sum_average import averaged
from intents.sum_backed_out import backed_out, swapped
from intents.sum_bound import parts_of
from intents.sum_burned import burned
from intents.sum_counts import MOST_COUNT, counted, thing
from intents.sum_each_side import each_side
from intents.sum_marks import counted_marks
from intents.sum_miscut import miscut
from intents.sum_outlines import outlined, whole_line
from intents.sum_parts import Found, Parts
from solvers.quantities import Length, Number
from solvers.sums import MINUS, PLUS, TIMES, Part, Sum, plain_size, told_as_length

_LAPS = frozenset("lap laps lapped lapping overlap overlaps overlapped overlapping".split())
_BETWEEN = frozenset(("between", "in-between", "gaps", "joints", "spacers"))  # with eighth gaps: one fewer than the pieces
_TELLS = _LAPS | _BETWEEN
_ASKS = frozenset(
    "overall total altogether length long far reach reaches cover covers wide width high tall finished whole lot run"
    " everything".split()
)
_OTHERS = frozenset(
    "exposure courses course studs stud centres centers center centre oc spaced spacing evenly even equal fit roll rolls"
    " sticks marks weather showing shows area square squares cost price weigh degrees left".split()
)
_EACH = frozenset("each apiece".split())
_AT, _FEET_AND_INCHES = frozenset(("at", "@")), frozenset("in into as to feet foot ft and inches inch".split())
_WITHIN = frozenset("across over within along in into".split())  # what these lead to is the whole, and no size of one
_INTO = frozenset((("go", "in"), ("fit", "in"), ("fits", "in")))
_NO = frozenset("no without none not nothing".split())
_ENDS = frozenset("end ends outside outsides".split())
_SHAPES = (outlined, burned, averaged, miscut, counted_marks, backed_out, swapped, each_side)  # each tells a whole sum
SURE, LEAST_SURE = 0.8, 0.5  # of a quantity of another kind, and of a count
MOST_NAMES = 3  # words that name what is counted: nine | cedar deck boards


@once
def in_a_row(chart: Chart) -> Question | None:
    """The sum that a whole line tells as one row and its joints, or in another outline that is known."""
    told = (shape(chart) for shape in (*_SHAPES, _row_and_joints))
    return next((question for question in told if question is not None), None)


def _row_and_joints(chart: Chart) -> Question | None:
    said = set(chart.words)
    laps = not said.isdisjoint(_LAPS)
    if laps != said.isdisjoint(_BETWEEN) or not said.isdisjoint(_OTHERS) or _asks_how_many(chart.words):
        return None
    if any(a in _NO and _BETWEEN & {b, c} for a, b, c in zip(chart.words, chart.words[1:], chart.words[2:], strict=False)):
        return None  # a post on each end, no posts between
    if said.isdisjoint(_ASKS) and not (laps and chart.words[0] in _LAPS):
        return None
    if _asks_each(chart.words) or not _INTO.isdisjoint(pairwise(chart.words)):
        return None  # 6 lights across 51 inches, how wide each
    reader = parts_of(chart)
    told = _told(reader)
    whole = _whole(*told, MINUS if laps else PLUS, 0 if laps else _at_ends(reader.words)) if told else None
    if whole is None:
        return None
    told_by = sorted(said & (_TELLS | _ASKS))
    return whole_line(chart, whole, told_by)


def all_of_them(chart: Chart, reading: Reading) -> None:
    """Put right a conversion of one where so many were told: 7 at 16 inches, in feet and inches, are 112.

    In another system than they were told in it is asked what the count is for.
    """
    first = next(iter(reading.questions), None)
    value = first.givens.get("value") if first is not None and first.topic == "conversion" else None
    if first is None or value is None or _AT.isdisjoint(chart.words):
        return
    reader = parts_of(chart)
    rows = [found for at in range(len(reader.tokens)) if reader.chart[at] and (found := counted(reader, at)) is not None]
    if len(rows) != 1 or not isinstance(rows[0].part, Sum) or _size(rows[0].part.right) != _size(value.value):
        return
    into, row = first.givens.get("to"), rows[0].part
    if into is not None and {*into.text.lower().split()} <= _FEET_AND_INCHES and getattr(row.right, "unit", "") in ("in", "ft"):
        reading.questions = [whole_line(chart, row, first.words)]
    else:
        first.unplaced = [getattr(row.left, "text", "")]


def _size(value: object) -> tuple[object, object]:
    """A quantity apart from the words it was said in, and from what a conversion holds it in."""
    value = getattr(value, "quantity", value)
    return getattr(value, "value", None), getattr(value, "unit", None)


def _asks_each(words: list[str]) -> bool:
    """Whether it is asked how much of it one of them is, or the last."""
    last = max((at for at, word in enumerate(words) if word in ("how", "what")), default=-1)
    return last >= 0 and not {"each", "one", "apiece", "last"}.isdisjoint(words[last:])


def _asks_how_many(words: list[str]) -> bool:
    """Whether a count is asked for: how many | pieces, and no how many | feet."""
    return any(a == "many" and b not in UNITS for a, b in pairwise([*words, ""]))


def _told(reader: Parts) -> tuple[Sum, Part] | None:
    """The row, and the size of a joint; None where the line tells any other quantity."""
    rows: list[Sum] = []
    sizes: list[Part] = []
    at = 0
    while at < len(reader.tokens):
        row = _row_at(reader, at) if reader.chart[at] else None
        found = row or (reader.part(at) if reader.chart[at] else None)
        if found is None or found.part is None:
            if any(r.sure >= SURE and r.kind not in ("plural", "tempchange") for r in reader.chart[at]):
                return None
            at += 1
            continue
        if row is not None:
            rows.append(row.part)  # type: ignore[arg-type]
        elif isinstance(found.part, Sum):
            return None
        elif not (reader.words[at] == "one" and found.end == at + 1):
            sizes.append(found.part)
        at = found.end
    return (rows[0], sizes[0]) if len(rows) == len(sizes) == 1 else _told_apart(reader) if not rows else None


def _told_apart(reader: Parts) -> tuple[Sum, Part] | None:
    """The same where the count and the size of each are told apart: two boards lapped 1 1/2, each is 7 1/4."""
    counts: list[Number] = []
    sizes: dict[bool, Part] = {}  # by whether it is each one's
    at = 0
    while at < len(reader.tokens):
        found = reader.value(at) if reader.chart[at] else None
        if found is None or found.part is None:
            at += 1
            continue
        if isinstance(found.part, Number) and not counts and _counts_things(reader, found):
            counts.append(found.part)
        else:
            each = not _EACH.isdisjoint(reader.words[max(0, at - 2) : at]) or reader.words[found.end] in _EACH
            if each in sizes or isinstance(found.part, Sum):
                return None
            sizes[each] = found.part
        at = found.end
    if not counts or len(sizes) != 2 or not 2 <= counts[0].value <= MOST_COUNT:
        return None
    return Sum(TIMES, counts[0], sizes[True]), sizes[False]


def _row_at(reader: Parts, i: int) -> Found | None:
    """So many of a length: of those that sums know, and with no word between: six boards | 5 1/2, two | ten footers."""
    several = counted(reader, i)
    if several is not None and isinstance(several.part, Sum):
        return several
    for reading in reader.chart[i]:
        count = reading.value
        if not isinstance(count, Number) or reading.kind != "number" or count.value.denominator != 1 or reading.sure < LEAST_SURE:
            continue
        if not 2 <= count.value <= MOST_COUNT:
            continue
        at = reading.end
        while at - reading.end < MOST_NAMES and reader.words[at] not in _TELLS | _WITHIN and (
            thing(reader, at) or (at > reading.end and reader.words[at] == "of")
        ):
            at += 1
        at += reader.words[at] in ("at", "@") and at > reading.end
        size = reader.value(at)
        named = at > reading.end or (size is not None and size.end > at and reader.words[size.end - 1] in ("footers", "footer"))
        if named and size is not None and isinstance(size.part, Length | Number) and not _counts_things(reader, size):
            return Found(Sum(TIMES, count.said(" ".join(reader.words[i : reading.end])), size.part), size.end)
    return None


def _counts_things(reader: Parts, size: Found) -> bool:
    """Whether a whole number counts things itself: six boards | five gaps."""
    whole = isinstance(size.part, Number) and size.part.value.denominator == 1
    return whole and thing(reader, size.end) and reader.words[size.end].endswith("s")


def _at_ends(words: list[str]) -> int:
    """How many joints more than between the pieces: two where there is one at both ends too."""
    at = next((i for i, word in enumerate(words) if word in _ENDS and words[i - 1] in ("both", "each", "either", "the")), -1)
    return 2 if at > 0 and _NO.isdisjoint(words[max(0, at - 5) : at]) else 0


def _whole(row: Sum, joint: Part, operation: str, more: int) -> Sum | None:
    count = row.left
    assert isinstance(count, Number)
    joints = count.value - 1 + more
    metric = any(isinstance(part, Length) and part.unit in ("m", "mm", "cm") for part in (row.right, joint))
    if not any(told_as_length(part) for part in (row.right, joint)) or _inches(joint, metric) >= _inches(row.right, metric):
        return None
    each = joint if joints == 1 else Sum(TIMES, Number(Fraction(joints), "none", str(joints)), joint)
    return Sum(operation, row, each)


def _inches(part: Part | None, metric: bool) -> Fraction:
    """A size in inches; a bare number beside metric is millimetres."""
    return Length(part.value, "mm").to("in").value if metric and isinstance(part, Number) else plain_size(part)
