"""Which pitch is the roof's own and which a joint that stands open was cut for: "cut for 14.5 on a 14/12", "joiner cut for 19".

The words on both sides of each pitch tell, the nearer the more; a second one said bare is of the same kind as the first. Which
joint it is the words tell too: the rakes' at the top, the return, rake to level.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart
from intents.every_size import Row, after, before, clause, every_size
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Angle, Length, Number, Pitch
from solvers.slots import Parameter

TOPIC = "rounded pitch"
_READ_AS = frozenset(("peak joint", "rake return", "rake to level joint", "equal spacing", "how far open", "angle off"))
_KINDS = frozenset("pitch angle number length".split())
_CUT = frozenset(
    "cut cuts cutting sawn sawed saw made set shop rounded rounding dial dialed dialled used use call called treated mitered"
    " mitred figured figure did suit drawing drawn plan assumed laid guessed joiner apprentice helper".split()
)
_TRUE = frozenset(
    "roof real really true truly actual actually measures measured measuring gable slope came comes turned turns string built"
    " house should surveyed settled reads lies sits pitched framed level's exactly".split()
)
_FACES = frozenset(
    "face faces wide width deep trim trims board boards barge barges bargeboards fascia facia stock rakes band frieze".split()
)
_GAPS = frozenset("gap gaps gape gapes gaping open opens opened opening crack cracks daylight show shows".split())
_ROUNDED, _REAL = frozenset("rounded rounding leave leaves".split()), frozenset("actual actually real really true truly".split())
_ROOFS = frozenset("roof roofs gable gables rake rakes barge barges bargeboards verge verges pitch pitched slope cornice".split())
_PEAKS, _RETURNS = frozenset("peak peaks apex ridge".split()), frozenset("return returns wraps".split())
_LEVELS = frozenset(("level", "horizontal"))
_TOPS = frozenset((("the", "top"), ("top", "joint"), ("rake", "tops"), ("rakes", "top")))
_IN, _TWELVE = frozenset(("in", "over", "per", ":")), 12
_STEEPEST, _MOST_DEGREES, _FAR, _ROUND = 18, 65, 6, frozenset("rounded rounding round".split())
_MEET = frozenset("meet meets returns rakes boards barges bargeboards pieces bits trims".split())
_SCORE = 2.0  # of what takes every size of the line
_PAIR, _PLAINLY = 2, Fraction(1, 4)

Places = Mapping[str, Parameter]


def rounded_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give a question about a rounded pitch its two pitches and its face, where it is not whole as it stands; and its joint."""
    if not question.plain:
        given = _every_place(chart, {p.name: p for p in parameters})
        if given is not None:
            kept = {name: heard for name, heard in question.givens.items() if isinstance(heard.value, str)}
            question.givens, question.swaps, question.rival = kept | given, [], False
            question.unplaced, question.lacking, question.missing = [], 0, []
    _of_one_kind(question)
    if "joint" not in question.givens and (joint := _joint(chart)) is not None:
        question.givens["joint"] = joint


def _of_one_kind(question: Question) -> None:
    """Take a pitch said bare for one of the kind that the other is: cut for 19, and the gable is 18.4 degrees."""
    both = [name for name in ("pitch", "cut_pitch") if name in question.givens]
    for name, other in (both, both[::-1]) if len(both) == _PAIR else ():
        bare, told = question.givens[name], question.givens[other]
        units = {each.unit for each in (bare.value, *bare.others)}
        if bare.others and not told.others and told.value.unit in units:
            value = next(each for each in (bare.value, *bare.others) if each.unit == told.value.unit)
            question.givens[name] = replace(bare, value=value, others=(), sure=told.sure)


def rounded_rather(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Take for a rounded pitch what was read as the joint itself, where two pitches are told and it is asked how it opens."""
    question, words = next(iter(questions), None), chart.words
    asks = not (_GAPS | _ROUNDED).isdisjoint(words) or ("cut" in words and not _REAL.isdisjoint(words))
    if question is None or question.topic not in _READ_AS or not asks or _ROOFS.isdisjoint(words):
        return
    joint = _joint(chart)
    given = _every_place(chart, {p.name: p for p in topics[TOPIC]}) if joint is not None else None
    if given is not None and joint is not None:
        score, said, manner = max(question.score, _SCORE), question.words, question.manner
        questions[:] = [Question(TOPIC, given | {"joint": joint}, score, words=said, manner=manner)]


def _every_place(chart: Chart, places: Places) -> dict[str, Heard] | None:
    for row in every_size(chart, lambda reading: reading.kind in _KINDS):
        given = _placed(chart, row, places)
        if given is not None:
            return given
    return None


def _placed(chart: Chart, row: Row, places: Places) -> dict[str, Heard] | None:
    """The roof's pitch, the one it was cut for and the face; None where a quantity is none of them, or two may be the same."""
    said = [r for r in row if not (_in_twelve(chart, r) or _counts(chart, r))]
    if any(not isinstance(r.value, Pitch | Angle | Number | Length) for r in said):
        return None
    lengths = [r for r in said if r.kind == "length"]
    faces = lengths or [r for r in said if r.kind == "number" and _as_face(chart, r, row)]
    slopes = [r for r in said if r not in faces]
    if len(faces) != 1 or len(slopes) != _PAIR or not _alike(slopes):
        return None
    first, second = slopes
    told = [_told(chart, r, row) for r in slopes]
    if _rounded_to(chart, first, second):
        told = [Fraction(1), Fraction(-1)]
    if max(told) <= 0 or min(told) >= 0 or abs(told[0] - told[1]) < _PLAINLY:
        return None
    true, cut = (first, second) if told[0] > told[1] else (second, first)
    degrees = any(isinstance(r.value, Angle) for r in slopes)
    face = heard_as(chart, places["face"], faces[0], True)
    if face is None:
        return None
    pitches = {name: _pitch(chart, places[name], r, degrees) for name, r in (("pitch", true), ("cut_pitch", cut))}
    found = {name: heard for name, heard in pitches.items() if heard is not None}
    return {"face": face} | found if len(found) == _PAIR else None


def _in_twelve(chart: Chart, reading: Reading) -> bool:
    """Whether a number is the run of what was said before: both in 12."""
    value = reading.value
    return isinstance(value, Number) and value.value == _TWELVE and chart.words[max(0, reading.start - 1)] in _IN


def _counts(chart: Chart, reading: Reading) -> bool:
    """Whether a number counts the two that meet: two returns."""
    value = reading.value
    return isinstance(value, Number) and value.value == _PAIR and not _MEET.isdisjoint(chart.words[reading.end : reading.end + 2])


def _as_face(chart: Chart, reading: Reading, row: Row) -> bool:
    lead = clause(before(chart, reading, row, 3), backwards=True)
    rest = clause(after(chart, reading, row, 2))
    if not (_CUT | _ROOFS - _FACES).isdisjoint(rest[:1]) or not _CUT.isdisjoint(lead):
        return False
    return not _FACES.isdisjoint((*lead, *rest))


def _alike(slopes: list[Reading]) -> bool:
    """Whether two slopes can be of one kind, degrees or so much in 12, and differ."""
    sizes = [r.value.value for r in slopes]  # type: ignore[union-attr]
    kinds = {type(r.value) for r in slopes}
    if {Angle, Pitch} <= kinds or sizes[0] == sizes[1] or Length in kinds:
        return False
    most = _MOST_DEGREES if Angle in kinds else _STEEPEST
    return all(0 < size <= most for size in sizes)


def _told(chart: Chart, reading: Reading, row: Row) -> Fraction:
    """How far the words of its clause tell a slope to be the roof's own, and not the one it was cut for; the nearer the more."""
    lead = clause(before(chart, reading, row, _FAR), backwards=True)
    rest = clause(after(chart, reading, row, _FAR))
    sure = Fraction(0)
    for words in ([*reversed(lead)], rest):
        for far, word in enumerate(words):
            sure += Fraction((word in _TRUE) - (word in _CUT), 1 + far)
    return sure


def _rounded_to(chart: Chart, first: Reading, second: Reading) -> bool:
    """Whether the first is rounded to the second: rounded 9.6/12 up to 10/12."""
    led = chart.words[max(0, first.start - 2) : first.start]
    return not _ROUND.isdisjoint(led) and "to" not in led and "to" in chart.words[first.end : second.start]


def _pitch(chart: Chart, place: Parameter, reading: Reading, degrees: bool) -> Heard | None:
    """A slope, one said bare in degrees or in 12 as the other is."""
    if not isinstance(reading.value, Number):
        return heard_as(chart, place, reading, True)
    place_said, size = place_of(chart, reading.start, reading.end), reading.value.value
    value = Pitch(size, "deg", f"{place_said[2]}°") if degrees else Pitch(size, "in12", f"{place_said[2]} in 12")
    return Heard(value, *place_said)


def _joint(chart: Chart) -> Heard | None:
    """Which joint it is; None where no word tells, or words of two do."""
    words = chart.words
    pairs = [*pairwise(words)]
    at_top = next((n for n, pair in enumerate(pairs) if pair in _TOPS), -1)
    found: dict[str, int] = {}
    for name, told in (("PEAK", _PEAKS), ("RETURN", _RETURNS), ("LEVEL", _LEVELS)):
        at = next((n for n, word in enumerate(words) if word in told), -1)
        if at >= 0:
            found[name] = at
    if at_top >= 0:
        found.setdefault("PEAK", at_top)
    if len(found) != 1:
        return None
    (name, at), *_ = found.items()
    return Heard(name, *place_of(chart, at, at + 1))
