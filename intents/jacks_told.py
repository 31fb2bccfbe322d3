"""How far apart jack rafters are, and on what pitch: "jacks on sixteens", "16s, 9:12", "five pitch, 24s".

A size said as a plural is what they are spaced at, as studs are. How long one of them is tells nothing of how much longer each is
than the one before; that is left out where so much is said of it, and said so.
"""

from __future__ import annotations

from fractions import Fraction

from intents.chart import Chart
from intents.every_size import HARDLY, Row, after, before, clause, every_size
from intents.fitting import fit
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Angle, Length, Number, Pitch, Quantity
from solvers.slots import Parameter

_KINDS = frozenset("pitch angle length number plural".split())
_SPACED = frozenset("centres centers centre center oc apart spacing spaced spacings on at every".split())
_ONE = frozenset("first second third longest shortest last top".split())
_IS = (["is"], ["at"], ["of"], ["jack"], ["rafter"], ["one"])
_CLOSEST, _WIDEST = 8, 48  # in
_NEAR = 3


def jacks_told(chart: Chart, question: Question, parameters: tuple[Parameter, ...]) -> None:
    """Give jack rafters their spacing and their pitch, where the question lacks one or has a quantity left over."""
    if question.plain:
        return
    places = {p.name: p for p in parameters}
    for row in every_size(chart, lambda reading: reading.kind in _KINDS and reading.sure > HARDLY):
        given, left = {}, list[str]()
        for reading in row:
            name = _role(chart, reading, row)
            heard = _heard(chart, places[name], reading) if name in places else None
            if name == "left":
                left.append(chart.said(reading.start, reading.end))
            elif heard is None or name in given:
                break
            else:
                given[name] = heard
        else:
            question.givens, question.swaps, question.rival = given, [], False
            question.unplaced, question.left = [], left
            question.missing = [p.name for p in parameters if p.lacks(given)]
            return


def _role(chart: Chart, reading: Reading, row: Row) -> str:
    """What a quantity of jack rafters is by its kind and the words beside it; "" where they do not tell."""
    value = reading.value
    if isinstance(value, Pitch | Angle):
        return "pitch"
    lead = clause(before(chart, reading, row, _NEAR + 1), backwards=True)
    rest = clause(after(chart, reading, row, _NEAR))
    if rest[:1] == ["pitch"] or lead[-1:] == ["pitch"]:
        return "pitch"
    if isinstance(value, Length) and not _ONE.isdisjoint(lead) and lead[-1:] in _IS:
        return "left"  # the first jack is 22 inches
    if isinstance(value, Length | Number) and _may_space(value, reading.kind == "plural"):
        return "spacing" if reading.kind == "plural" or not _SPACED.isdisjoint((*lead[-2:], *rest[:2])) else ""
    return ""


def _may_space(value: Length | Number, plural: bool) -> bool:
    """Whether a size can be how far apart rafters are; a plural is so many inches."""
    return isinstance(value, Length) or not plural or _CLOSEST <= value.value <= _WIDEST


def _heard(chart: Chart, place: Parameter, reading: Reading) -> Heard | None:
    said, value = place_of(chart, reading.start, reading.end), reading.value
    assert isinstance(value, Quantity)
    if reading.kind == "plural":
        return Heard(Length(Fraction(value.value), "in", said[2]), *said)
    if place.kind is Pitch and reading.kind == "number":
        found = fit(reading, place, said[2], cued=True)
        return None if found is None else Heard(found.value, *said, found.sure, found.others)
    return heard_as(chart, place, reading, True)
