"""What a number with no unit is of, where it is to be put in another: 1815 on an inch tape, 9.375 to the sixteenth."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart, quantities
from intents.expressions import expression
from intents.placing import PLACED_IN, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from intents.vocabulary import COUNTING
from solvers.quantities import Length, Number, Temperature
from solvers.sums import Measure, Sum, leaves, metres_and_millimetres

TOPIC = "conversion"
_OF_INCHES = frozenset(("EIGHTH", "SIXTEENTH", "THIRTY_SECOND", "TAPE", "DECIMAL"))
_FROM_MM = frozenset(("TAPE", "EIGHTH", "SIXTEENTH", "THIRTY_SECOND"))
_SCALES = {"FAHRENHEIT": "degC", "CELSIUS": "degF"}  # and what a number with no scale that is put in one is of
_NO_INCHES = expression(r"(?:minus |-)?[a-z0-9. ]+ in")  # no fraction of the tape
_READS = frozenset("says said say reads read shows showed measures measured gives gave has had was is makes made".split())
LEAST_MM = 300  # a whole number from here on, told for an inch tape
_PUT = expression(r", (?:put|say|call) (?:it|that) (?:in|into|as) \w+(?: please)?[ .?]*$")
SURE, _FAR, _TAIL = 0.9, 2, 3
_BURNED = frozenset("burn burned burnt holding hold starts".split())  # an inch of the tape
_PARTS = frozenset("half third quarter a of point and".split())


def conversion_told(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Give the one bare number of a conversion the unit that it can only be of; one that is to be put in a unit is no sum."""
    questions[:] = [question for question in questions if not _read_off(chart, question)]
    first = next(iter(questions), None)
    told = first is not None and first.topic == TOPIC and {"to", "value"} <= first.givens.keys()
    if first is not None and told and _PUT.search(" ".join(chart.words)):
        first.lacking, first.rival, questions[1:] = 0, False, []
    for question in questions:
        _no_other(chart, question)
        _mark_alone(question)
        _metric_sum(question)
        _of_the_answer(chart, question)
        to = question.givens.get("to")
        if question.topic == TOPIC and to is not None and to.value == "MILLIMETRES":
            _in_mm_already(question)
        if question.topic == TOPIC and to is not None and to.value in _SCALES:
            _of_other_scale(question, _SCALES[str(to.value)])
        if question.topic != TOPIC or to is None or "value" not in question.missing:
            continue
        found = [r for r in quantities(chart, 0, len(chart.words)) if chart.words[r.start - 1 : r.start] != ["nearest"]]
        found = [r for r in found if not to.start <= chart.tokens[r.start].start < to.end]
        bare = _bare(chart, found[0]) if len(found) == 1 else None
        unit = _unit(bare.value, str(to.value)) if bare is not None and isinstance(bare.value, Number) else ""
        if bare is not None and to.value == "MILLIMETRES" and _half_of_mm(chart, bare):
            unit = "mm"
        if bare is None or not isinstance(bare.value, Number) or not unit:
            continue
        place = place_of(chart, bare.start, bare.end)
        value = Measure(Length(bare.value.value, unit, place[2]))
        question.givens["value"] = Heard(value, *place, SURE)
        question.missing = [name for name in question.missing if name != "value"]
        question.unplaced = [text for text in question.unplaced if text != place[2]]


def _read_off(chart: Chart, question: Question) -> bool:
    """Whether what is put on a tape was read off one, in its own inches: the tape says 9'1"."""
    to, heard = question.givens.get("to"), question.givens.get("value")
    if question.topic != TOPIC or to is None or heard is None or to.text != "tape" or not isinstance(heard.value, Measure):
        return False
    at = next((n for n, token in enumerate(chart.tokens) if token.start == to.start), len(chart.words))
    return chart.words[at + 1 : at + 2] != [] and chart.words[at + 1] in _READS and heard.value.quantity.unit in ("ft", "in")


def _of_other_scale(question: Question, unit: str) -> None:
    """Minus 12 in Fahrenheit is no length: what is put in one scale was read off the other."""
    heard = question.givens.get("value")
    quantity = heard.value.quantity if heard is not None and isinstance(heard.value, Measure) else None
    if heard is not None and isinstance(quantity, Length) and _NO_INCHES.fullmatch(heard.text):
        said = heard.text.removesuffix(" in")
        question.givens["value"] = replace(heard, value=Measure(Temperature(quantity.value, unit, said)), text=said)


def _of_the_answer(chart: Chart, question: Question) -> None:
    """In inches, said after numbers that no board has inches of, is what the answer is to be in: 912, add 12, in inches."""
    bare, whole = question.givens.get("bare"), question.givens.get("sum")
    if bare is None or whole is None or bare.value != "INCHES" or not isinstance(whole.value, Sum) or bare.start < whole.end:
        return
    far = any(isinstance(leaf, Number) and leaf.value >= LEAST_MM for leaf in leaves(whole.value))
    if far and "in" in chart.words[-_TAIL:]:
        question.givens["bare"] = replace(bare, value="MILLIMETRES", others=("INCHES",))


def _mark_alone(question: Question) -> None:
    """The mark that an answer is to be read to is no value: to the nearest thirty second."""
    value, to = question.givens.get("value"), question.givens.get("to")
    if question.topic != TOPIC or value is None or to is None:
        return
    heard_so = value.text.lower().startswith("to ") and value.text.count(" ") == 1  # to mil, heard as two of them
    if to.start <= value.start < value.end <= to.end or heard_so:
        del question.givens["value"]
        question.missing = [*question.missing, "value"]
        question.swaps = []


def _metric_sum(question: Question) -> None:
    """A sum of bare numbers that is less than nothing, unless its decimals are metres: 1.8 less 45 less 45."""
    heard = question.givens.get("sum") if question.topic == "tape arithmetic" and "bare" not in question.givens else None
    made = metres_and_millimetres(heard.value) if heard is not None and isinstance(heard.value, Sum) else None
    if heard is not None and made is not None:
        question.givens["sum"] = replace(heard, value=made)


def _in_mm_already(question: Question) -> None:
    """Half of 1785 in mm: a number with no unit that is no size in inches is in millimetres as it stands."""
    value = question.givens.get("value")
    quantity = value.value.quantity if value is not None and isinstance(value.value, Measure) else None
    if value is None or not isinstance(quantity, Length) or quantity.unit != "in" or quantity.value < LEAST_MM:
        return
    words = value.text.lower().split()
    if all(word.isdecimal() or word in COUNTING or word in _PARTS for word in words):
        made = replace(quantity, unit="mm")
        question.givens["value"] = replace(value, value=Measure(made), others=())


def _half_of_mm(chart: Chart, bare: Reading) -> bool:
    """Half of 1836 in mm, which large as it is was said in them."""
    half = "half" in chart.words[bare.start : bare.end] and isinstance(bare.value, Number)
    return half and bare.value.value >= LEAST_MM  # type: ignore[union-attr]


def _no_other(chart: Chart, question: Question) -> None:
    """Doubt a conversion beside a length that is another by far: burned an inch, the tape says 33 and 5/16."""
    value = question.givens.get("value") if question.topic == TOPIC else None
    measure = getattr(value.value, "quantity", None) if value is not None else None
    if not isinstance(measure, Length) or measure.value <= 0 or _BURNED.isdisjoint(chart.words):
        return
    sizes = [r.value.to("in").value if isinstance(r.value, Length) else r.value.value
             for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Length | Number)]  # fmt: skip
    own = measure.to("in").value
    if any(size > _FAR * own or own > _FAR * size for size in sizes if size > 0):
        question.lacking = 1


def _bare(chart: Chart, reading: Reading) -> Reading | None:
    """The reading as a bare number, where what it may be of is no more than a word after it: 1815 | in inches."""
    if isinstance(reading.value, Number):
        return reading
    numbers = (r for r in chart.readings[reading.start] if isinstance(r.value, Number) and r.end == reading.end - 1)
    return next(numbers, None) if reading.sure <= PLACED_IN else None


def _unit(number: Number, to: str) -> str:
    """Millimetres or inches, where a bare number is to be put in the other; "" where it could be of more."""
    if number.value.denominator == 1:
        return "mm" if number.value >= LEAST_MM and to in _FROM_MM else ""
    return "in" if to in _OF_INCHES and number.value > 0 else ""
