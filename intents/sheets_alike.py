"""Sheets over so many faces that are alike: "two slopes of 32 by 14", "three identical rooms each with 380 square feet", "a
partition boarded both sides"; which size is the sheets', how thick they are, and how high a gable is.

Every number of the line has its role, or the line is left to what else reads it.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from intents.chart import Chart, span
from intents.in_line import Item, all_taken, aside, counts_unused, heard, inches, items, leave_aside
from intents.number_words import TAPE
from intents.openings_in_line import Sized, sizes_in
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import places_of
from intents.vocabulary import NUMBER_WORDS
from solvers.quantities import Area, Count, Length, Number, Percent, Pitch, Quantity
from solvers.slots import Parameter

TOPIC, SCORE = "sheets", 9.0
_SHEETS = frozenset(
    "sheet sheets board boards ply plywood osb drywall plasterboard sheetrock wallboard gypsum panels panel sheathing foam"
    " hardboard plyboard polyiso mdf particleboard fiberboard fibreboard cdx chipboard".split()
)
_FACES = frozenset(
    "wall walls floor floors ceiling ceilings lid roof deck subfloor partition slope slopes face faces gable gables".split()
)
_PLANS = frozenset("room bedroom garage shed house building cabin barn attic basement kitchen bathroom".split())
_GABLES = frozenset(("gable", "gables"))
_ALIKE = frozenset(
    "walls gables rooms bedrooms closets units slopes faces ends floors ceilings houses garages sheds partitions apartments flats"
    " bathrooms stalls cheeks dormers sides cabins hallways corridors landings stairwells".split()
)
_SEVERAL = frozenset("walls gables rooms bedrooms closets units slopes".split())
_IN_ALL = frozenset("lineal linear running total altogether perimeter".split())  # how long they are all together
_LAYERED = frozenset("layer layers layered thicknesses".split())
_TWICE = frozenset("sides faces".split())  # of a wall that is counted already
_BOTH = frozenset(("both", "either"))
_EACH = frozenset("each per apiece every identical alike same equal".split())
_WIDE = frozenset("long wide across width w length".split())
_WIDTHS, _LENGTHS, _LONGER = (1.9, 5.1), (5.9, 16.5), 1.4  # ft, ft, and how much longer a sheet is than wide
_THICKEST, _BARE_THICK, _LEAST_THICK = 4, 2, Fraction(1, 8)  # in
_LEAST_FACE, _MOST_FACE = 36, 3600  # in
_MM_FROM, _METRES_TO, _INCHES_FROM = 300, 30, 24
_MOST_ALIKE, _NEAR = 100, 3
_MORE = frozenset("more another short extra".split())
_FIXED = frozenset("screw screws nail nails staples spacing centres centers studs stud joists joist rafters apart".split())
_OTHER = frozenset("strips rip ripped pieces perimeter".split())


def sheets_whole(chart: Chart) -> Question | None:
    """The question of a line whose every number is a face's, a sheet's, an opening's, or how many faces are alike."""
    if not _FIXED.isdisjoint(chart.words) or not _OTHER.isdisjoint(chart.words):
        return None
    left = aside(chart)
    holes = _openings(chart)
    passed = left | (span(holes.start, holes.end) if holes is not None else 0)
    found = items(chart, passed, pairs=True)
    taken = passed
    for item in found:
        taken |= span(item.reading.start, item.reading.end)
    if not all_taken(chart, [], taken):
        return None
    sizes, singles = sizes_in(found, _WIDE)
    sheets = [size for size in sizes if _of_sheets(chart, size, sizes)]
    faces = [size for size in sizes if size not in sheets]
    if len(sheets) > 1 or len(faces) > 1 or (faces and _is_a_plan(chart, faces[0])):
        return None
    givens: dict[str, Heard] = {}
    if not _give_singles(chart, singles, givens):
        return None
    if bool(faces) + ("area" in givens) + ("wall_length" in givens) != 1 or (holes is not None and "alike" in givens):
        return None
    metric = any(isinstance(side, Length) and side.metric for size in sizes for side in size.sides)
    if faces:
        high = "gable_height" if not _GABLES.isdisjoint(chart.words) and "pitch" not in givens else "wall_height"
        if not _give_sides(chart, faces[0], ("wall_length", high), givens, _face_unit(faces[0], metric)):
            return None
        if not all(_LEAST_FACE <= inches(givens[name].value) <= _MOST_FACE for name in ("wall_length", high)):
            return None
    if _uncounted(chart, givens) or (len(faces) == 0 and "wall_length" in givens and "pitch" not in givens):
        return None
    if sheets and not _give_sides(chart, sheets[0], ("sheet_width", "sheet_length"), givens, _sheet_unit(sheets[0])):
        return None
    if holes is not None:
        start, end = chart.tokens[holes.start].start, chart.tokens[holes.end - 1].end
        givens["openings"] = Heard(holes.value, start, end, chart.text[start:end], holes.sure)
    return Question(TOPIC, givens, SCORE, left=chart.said_in(left), words=["sheets"])


def sheets_left(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Leave out what is of something else, and how many walls there are where they are told two and two."""
    leave_aside(chart, question)
    _one_side_of_a_sheet(chart, question)
    if question.complete and not _MORE.isdisjoint(chart.words):  # we have 22 sheets, how many more
        question.unplaced += counts_unused(chart, question, counts=lambda item: not _SHEETS.isdisjoint(item.after[:2]))
    layers, said = _layers(chart)
    if question.complete and layers > 1 and "alike" not in question.givens:
        question.unplaced.append(chart.said(*said))
    if question.complete and (several := _uncounted(chart, question.givens)):
        question.unplaced.append(several)
    for text in [*question.unplaced]:
        many = next(
            (item for item in items(chart) if item.whole and chart.said(item.reading.start, item.reading.end) == text), None
        )
        if many is not None and many.after[:1] == ("walls",) and many.after[1:2] in ((":",), (",",), (".",)):
            counts = [
                item.whole
                for item in items(chart, pairs=True)
                if item.whole and item is not many and item.reading.start > many.reading.start
            ]
            if sum(counts) == many.whole and len(counts) > 1:
                question.unplaced.remove(text)


def _one_side_of_a_sheet(chart: Chart, question: Question) -> None:
    """Take back a bare number that was given for one side of a sheet and is named by things: ten shelves."""
    width = question.givens.get("sheet_width")
    if width is None or "sheet_length" in question.givens or (not width.bare and width.text.lower() not in NUMBER_WORDS):
        return
    _, end = places_of(chart, width)
    after = chart.words[end : end + 1]
    if after and after[0].isalpha() and after[0].endswith("s") and after[0] not in _WIDE:
        del question.givens["sheet_width"]
        question.unplaced.append(width.text)


def _openings(chart: Chart) -> Reading | None:
    """The longest list of openings in which no sheet is."""
    lists = [r for row in chart.readings for r in row if r.kind == "openings" and r.value]
    mine = [r for r in lists if chart.words[r.end : r.end + 1] == [] or chart.words[r.end] not in _SHEETS]
    mine = [r for r in mine if _SHEETS.isdisjoint(chart.words[r.start : r.end])]
    return max(mine, key=lambda r: r.end - r.start, default=None)


def _of_sheets(chart: Chart, size: Sized, sizes: list[Sized]) -> bool:
    """Whether a size is the sheets' own: one that a sheet has, said beside their name or in the plural, or the only such one."""
    if not _like_a_sheet(size):
        return False
    words = chart.words
    plural = (
        words[size.end - 1].endswith("s")
        or words[size.end : size.end + 1] == ["s"]
        or chart.text[chart.tokens[size.end - 1].start : chart.tokens[size.end - 1].end].endswith("s")
    )
    before = words[max(0, size.start - _NEAR) : size.start]
    stop = max((at for at, word in enumerate(before) if word in _FACES or word in (",", ".")), default=-1)
    named = not _SHEETS.isdisjoint(words[size.end : size.end + 2]) or not _SHEETS.isdisjoint(before[stop + 1 :])
    others = [one for one in sizes if one is not size and _like_a_sheet(one)]
    return plural or named or (not others and _FACES.isdisjoint(before))


def _like_a_sheet(size: Sized) -> bool:
    unit = _sheet_unit(size)
    sides = sorted(float(inches(_as_length(side, unit))) / 12 for side in size.sides)
    fits = _WIDTHS[0] <= sides[0] <= _WIDTHS[1] and _LENGTHS[0] <= sides[1] <= _LENGTHS[1]
    return fits and sides[1] >= _LONGER * sides[0]


def _sheet_unit(size: Sized) -> str:
    """The unit of a sheet's sides that were said with none."""
    said = next((side.unit for side in size.sides if isinstance(side, Length)), "")
    if said:
        return said
    most = max(side.value for side in size.sides)
    least = min(side.value for side in size.sides)
    if most >= _MM_FROM:
        return "mm"
    if most >= _INCHES_FROM:
        return "in"
    return "m" if most < _NEAR + 1 and least.denominator != 1 else "ft"


def _face_unit(size: Sized, metric: bool) -> str:
    """The unit of a face's sides that were said with none: of the other side, else metres beside what is metric, else feet."""
    said = next((side.unit for side in size.sides if isinstance(side, Length)), "")
    if said:
        return said
    most = max(side.value for side in size.sides)
    if most >= 10 * _MM_FROM:
        return "mm"
    off_tape = any(side.value < _NEAR and side.value.denominator not in {1, *TAPE} for side in size.sides)  # a wall 7.2 by 2.4
    return "m" if (metric or off_tape) and most <= _METRES_TO else "ft"


def _as_length(side: Quantity, unit: str) -> Length:
    return side if isinstance(side, Length) else Length(side.value, unit)


def _is_a_plan(chart: Chart, face: Sized) -> bool:
    """Whether a size is how big a room is on plan: nothing names a face of it."""
    near = chart.words[max(0, face.start - _NEAR - 1) : face.start] + chart.words[face.end : face.end + 2]
    return not _PLANS.isdisjoint(near) and _FACES.isdisjoint(near)


def _give_sides(chart: Chart, size: Sized, names: tuple[str, str], givens: dict[str, Heard], unit: str) -> bool:
    for name, part in zip(names, size.parts, strict=True):
        assert isinstance(part.value, Quantity)
        value = _as_length(part.value, unit)
        if name in givens or value.value <= 0:
            return False
        givens[name] = heard(chart, part, value)
    return True


def _give_singles(chart: Chart, singles: list[Item], givens: dict[str, Heard]) -> bool:
    """Give area, waste, pitch, thickness and how many faces are alike; False where a quantity is none of these."""
    times, nouns = _both(chart.words)
    layers, said = _layers(chart)
    named = ""
    for item in singles:
        if layers > 1 and item.reading.start == said[0]:
            continue
        value = item.reading.value
        name = _role(chart, item)
        if not name or (name in givens and name != "alike"):
            return False
        if name == "alike":
            if named:
                return False
            named = next((word for word in item.after[:_NEAR] if word in _ALIKE), "them")
            same = named in nouns or not nouns & _TWICE
            count = item.whole * (1 if same else times)
            given = heard(chart, item.reading, Count(Fraction(count), "count"))
            givens[name] = given
        else:
            assert isinstance(value, Quantity)
            unit = {"sheet_thickness": "in", "wall_length": "ft"}.get(name, "") if isinstance(value, Number) else ""
            givens[name] = heard(chart, item.reading, Length(value.value, unit) if unit else value)
    if not named and times > 1:
        at = next(at for at, word in enumerate(chart.words) if word in _BOTH)
        givens["alike"] = _so_many(chart, at, at + 2, times)
    if layers > 1:  # as many faces again, one over the other
        before = givens.get("alike")
        givens["alike"] = _so_many(chart, *said, layers * (int(before.value.value) if before is not None else 1))
    shared = not _EACH.isdisjoint(chart.words)
    return not ("alike" in givens and "area" in givens and not shared and not layers > 1)


def _so_many(chart: Chart, start: int, end: int, many: int) -> Heard:
    first, last = chart.tokens[start].start, chart.tokens[end - 1].end
    text = chart.text[first:last]
    return Heard(Count(Fraction(many), "count", text), first, last, text)


def _layers(chart: Chart) -> tuple[int, tuple[int, int]]:
    """How many layers there are one over another, and where that is said: two layers, a double layer."""
    words = chart.words
    for at, word in enumerate(words):
        if word in _LAYERED and at and words[at - 1] in ("double", "two", "2", "three", "3", "triple"):
            return (3 if words[at - 1] in ("three", "3", "triple") else 2), (at - 1, at + 1)
        if word in ("doubled", "double-layer"):
            return 2, (at, at + 1)
    return 1, (0, 0)


def _both(words: Sequence[str]) -> tuple[int, set[str]]:
    """Twice as much for both faces, gables or long walls, and what there are both of."""
    nouns = set[str]()
    for at, word in enumerate(words):
        nouns |= {*words[at + 1 : at + 1 + _NEAR]} & _ALIKE if word in _BOTH else set()
    return (2, nouns) if nouns else (1, nouns)


def _uncounted(chart: Chart, givens: dict[str, Heard]) -> str:
    """The name of several faces of which nothing tells how many there are: the walls are all 12 by 8."""
    if "alike" in givens or "wall_length" not in givens or not _IN_ALL.isdisjoint(chart.words):
        return ""
    return next((word for word in chart.words if word in _BOTH or word in _SEVERAL), "")


def _names_alike(item: Item) -> bool:
    """Whether a number counts faces by their name, or "of them"."""
    return not _ALIKE.isdisjoint(item.after[:_NEAR]) or item.after[:2] in (("of", "them"), ("of", "em"), ("of", "those"))


def _role(chart: Chart, item: Item) -> str:
    """What a quantity is that is no size of two sides; "" where the words leave that open."""
    value = item.reading.value
    if isinstance(value, Area):
        return "area"
    if isinstance(value, Percent):
        return "waste"
    if isinstance(value, Pitch):
        return "pitch" if not _GABLES.isdisjoint(chart.words) else ""
    if isinstance(value, Length):
        if inches(value) >= _LEAST_FACE and not _GABLES.isdisjoint(chart.words) and not _WIDE.isdisjoint(item.after[:1]):
            return "wall_length"
        return "sheet_thickness" if _LEAST_THICK <= inches(value) <= _THICKEST else ""
    if item.whole and 1 < item.whole <= _MOST_ALIKE and _names_alike(item):
        return "alike"
    if isinstance(value, Number) and item.after[:1] and item.after[0] in _WIDE and not _GABLES.isdisjoint(chart.words):
        return "wall_length"
    thin = isinstance(value, Number) and value.value.denominator in (2, 4, 8, 16, 32) and value.value < _BARE_THICK
    return "sheet_thickness" if thin and not _SHEETS.isdisjoint((*item.after[:_NEAR], *item.before[-_NEAR:])) else ""
