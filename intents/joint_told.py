"""What each angle of a joint is, and which size its face: how far off it is, what both pieces were cut at, the corner.

"a degree shy of square, set the saw at 45", "22.5 each on a 135 corner that's 1 degree out", "both skirtings at 45". The least
angle is how far off it is, what a saw swings to is the setting, and what is wider is the corner; the words beside each agree.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from intents.chart import Chart
from intents.every_size import Row, after, before, clause, every_size
from intents.placing import heard_as, place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Angle, Length, Number, Quantity
from solvers.slots import Parameter

ERROR, CORNER = "angle off", "how far open"
_KINDS = frozenset("angle number length plural".split())
MOST_OFF, FURTHEST, STRAIGHT, SQUARE = 15, 60, 180, 90  # degrees: off, on a saw, of a corner
LEAST_CORNER = 40  # degrees: what is less is what a piece was cut at
_OFF = frozenset(
    "off out wrong error fat fatter shy askew adrift over under tight slack slop open skewed racked twisted missed misses missing"
    " proud short lean leans racking deviates".split()
)
_SAWS = frozenset(
    "cut cuts cutting saw saws sawn sawed set setting settings miter mitre miters mitres mitered mitred mitering mitring meter"
    " each both chopped dialled dialed".split()
)
_FACES = frozenset(
    "face faces wide width trim trims board boards casing casings skirting skirt skirtings fascia facia barge base baseboard"
    " stock architrave moulding molding crown frieze band bead material stuff timber apron deep piece pieces".split()
)
_THICK, _COUNTED = frozenset(("thick", "thickness")), frozenset("cuts pieces boards bits halves sides cut miters mitres".split())
_NEAR, _FAR, _FEW = 5, 4, 2

Parameters = tuple[Parameter, ...]


class _Told(NamedTuple):
    """The quantities of a joint by what they may be."""

    errors: list[Reading]
    settings: list[Reading]
    corners: list[Reading]
    faces: list[Reading]


def joint_told(chart: Chart, question: Question, parameters: Parameters) -> None:
    """Give the angles and the face of a joint their places, where the question has not a place for each as it is."""
    first = question.givens.get("error" if question.topic == ERROR else "corner")
    odd = first is not None and isinstance(first.value, Angle) and _odd(question.topic, first.value)
    if question.plain and not odd and not _closed(question) and _THICK.isdisjoint(chart.words):
        return
    places = {p.name: p for p in parameters}
    for row in every_size(chart, lambda reading: reading.kind in _KINDS):
        told = _told(chart, row)
        given = _placed(chart, told, places, question.topic == CORNER) if told is not None else None
        if given is None:
            continue
        topic = ERROR if "error" in given else CORNER
        wanted = ("error", "setting", "face") if topic == ERROR else ("corner", "setting", "face")
        question.topic, question.givens, question.swaps, question.rival = topic, given, [], False
        question.unplaced, question.lacking = [], 0
        question.missing = [name for name in wanted if name not in given]
        return
    question.lacking = question.lacking or int(odd)


def _odd(topic: str, value: Angle) -> bool:
    """Whether an angle was given a place that it can't have: out of square by 2 is no error of 92 degrees."""
    return value.value > MOST_OFF if topic == ERROR else value.value < LEAST_CORNER


def _closed(question: Question) -> bool:
    """Whether the corner is the one that the cuts make, so that nothing would be open: a 135 corner that's 1 degree out."""
    corner, setting = (question.givens.get(name) for name in ("corner", "setting"))
    if question.topic != CORNER or corner is None or setting is None:
        return False
    return bool(corner.value.value == STRAIGHT - 2 * setting.value.value)


def _told(chart: Chart, row: Row) -> _Told | None:
    """What each quantity of a row may be, by how large it is and the words beside it; None where one is none of it."""
    told = _Told([], [], [], [])
    for reading in row:
        lead = clause(before(chart, reading, row, _NEAR), backwards=True)
        rest = clause(after(chart, reading, row, _FAR))
        kind = _kind(chart, reading, lead, rest)
        if kind is None:
            return None
        if kind:
            getattr(told, kind).append(reading)
    return told


def _kind(chart: Chart, reading: Reading, lead: Sequence[str], rest: Sequence[str]) -> str | None:
    """What a quantity may be; "" where it is nothing that counts, None where it can't be told."""
    value = reading.value
    if isinstance(value, Length) and reading.kind == "length":
        return "" if not _THICK.isdisjoint(rest[:2]) else "faces"
    if not isinstance(value, Angle | Number | Length):
        return None
    if isinstance(value, Angle) and _from_square(chart, reading):
        return "errors"
    size, near = value.value, {*rest[:2], *lead[-2:]}
    if isinstance(value, Number):
        if size == _FEW and not _COUNTED.isdisjoint(rest[:2]):
            return ""  # two cuts at 22.5
        if _is_face(size, lead, rest):
            return "faces"
    if size > FURTHEST or (size > MOST_OFF and "corner" in (*rest[:1], *lead[-1:])):
        return "corners" if size < STRAIGHT else None
    if size > MOST_OFF:
        return "settings"
    if not _OFF.isdisjoint((*rest, *lead)):
        return "errors"
    if not _SAWS.isdisjoint((*lead, *rest[:2])):
        return "settings"
    return "errors" if isinstance(value, Angle) else "faces" if near else None


def _is_face(size: Fraction, lead: Sequence[str], rest: Sequence[str]) -> bool:
    """Whether a number with no unit is how wide the face is: 9 1/4 board, face 6; not 45 miter, nor 2 off."""
    if lead[-1:] == ["at"] and not _SAWS.isdisjoint(lead):
        return False  # both skirtings at 45
    if not _OFF.isdisjoint(rest[:1]) or not _SAWS.isdisjoint((*rest[:1], *lead[-2:])):
        return False
    return not _FACES.isdisjoint((*rest[:2], *lead[-2:])) or size.denominator > _FEW


def _from_square(chart: Chart, reading: Reading) -> bool:
    """Whether an angle is told by how far it is from square, and made a corner of that."""
    words = chart.words[reading.start : reading.end]
    return not {"square", "ninety", "90", "right"}.isdisjoint(words) and len(words) > _FEW


def _placed(chart: Chart, told: _Told, places: dict[str, Parameter], opens: bool) -> dict[str, Heard] | None:
    """The places of the quantities of a joint; None where two differ that should be one, or one has none.

    `opens`: how far it is open is asked, of a corner that may have been told before: the pair was cut at 20.
    """
    errors, settings, faces = (_once(group) for group in (told.errors, told.settings, told.faces))
    if errors is None or settings is None or faces is None:
        return None
    corners = _corners(chart, told.corners, settings, errors)
    if corners is None or (errors and corners) or not (errors or corners or (opens and settings)):
        return None
    if not settings and told.corners and errors:
        return None
    given: dict[str, Heard] = {}
    for name, group in (("error", errors), ("corner", corners), ("setting", settings), ("face", faces)):
        if group:
            heard = _degrees(chart, group[0], name) if name != "face" else heard_as(chart, places["face"], group[0], True)
            if heard is None:
                return None
            given[name] = heard
    return given


def _once(group: list[Reading]) -> list[Reading] | None:
    """The one that a group says, the last of those that say it; None where it says two."""
    values = {(type(r.value), r.value.value) for r in group if isinstance(r.value, Quantity)}
    return None if len({value for _, value in values}) > 1 else group[-1:]


def _corners(
    chart: Chart, corners: list[Reading], settings: list[Reading], errors: list[Reading]
) -> list[Reading] | None:  # fmt: skip
    """The corner as it is: not the one that the cuts are for, where another is told; None where two are left."""
    made = STRAIGHT - 2 * settings[0].value.value if settings else None  # type: ignore[union-attr]
    left = [r for r in corners if r.value.value != made]  # type: ignore[union-attr]
    if left and not errors and len(left) == 1:
        return left
    return [] if not left and (errors or not corners) else None


def _degrees(chart: Chart, reading: Reading, name: str) -> Heard:
    place, value = place_of(chart, reading.start, reading.end), reading.value
    assert isinstance(value, Quantity)
    size = abs(value.value - SQUARE) if name == "error" and _from_square(chart, reading) else value.value
    return Heard(Angle(size, "deg", place[2]), *place)
