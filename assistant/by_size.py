"""Which given of the last question a new number is near, and which it can't be: by its size alone, and by its limits."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.said_over import FAR, NEAR, places_of, times_apart
from assistant.usual import GUESSED, is_usual
from intents.fitting import fit
from intents.reading import Reading
from solvers.binding import past_limits
from solvers.quantities import Angle, Area, Count, Length, Number, Percent, Pitch, Quantity, Temperature, TemperatureChange
from solvers.slots import Given, Slot

if TYPE_CHECKING:
    from assistant.pending import Asked
    from intents.question import Question

ALL_BUT_THE_SAME, NO_LONGER = 1.02, 1.15  # times more or less: measured again, and another size than that
_BY_A_QUARTER, _HALF_AGAIN = Fraction(5, 4), Fraction(3, 2)
_ALL_BUT = Fraction(6, 5)  # times as large, at most
_ALIKE, _LEAST_KNOWN = Fraction(3, 2), 2  # times as large; lengths between which there is to choose
FAR_OFF = 4  # a place whose value a new number is this many times farther from than from the nearest is not meant
LEAST_MM = 100  # a bare number from here on may be of millimetres
# Stud spacings, in inches and in millimetres. Common practice.
_CENTRES = (frozenset((12, 16, Fraction(96, 5), 24)), frozenset((300, 400, 450, 600)))
_IT_IS = frozenset("it its s is they re theyre that if what about and so or".split())
_TAPE_ONLY = (4, 8, 16, 32)


def nearest(places: list[str], last: Asked, new: Quantity) -> list[str]:
    """The one place whose value the new number is near while it is far from all others; or all that it is not far from."""
    if len(places) < 2 or new.value <= 0:
        return places
    if spaced := _on_centre(places, last, new):
        return spaced
    ratios = []
    for name in places:
        was = last.givens[name].value
        value = new.beside(was)
        if was.value <= 0:
            continue
        in_mm = was.unit == "m" and new.unit == "none" and new.value >= LEAST_MM
        if in_mm and times_apart(value / 1000, was.value) < times_apart(value, was.value):
            value = value / 1000  # 2040, in place of 2.1 m, is told in millimetres; 155, in place of 140 m, is not
        ratios.append((max(value / was.value, was.value / value), name))
    ratios.sort()
    if len(ratios) < len(places):  # a waste of none is not what 815 is for, where there is an area near it
        none = all(last.givens[name].value.value >= 0 for name in places)  # ten under nothing may be as near
        alone = bool(ratios) and ratios[0][0] <= NEAR
        alone = alone and (len(ratios) == 1 or (none and ratios[1][0] >= FAR * ratios[0][0]))
        return [ratios[0][1]] if alone else places
    if ratios[0][0] <= ALL_BUT_THE_SAME and ratios[1][0] >= NO_LONGER:
        return [ratios[0][1]]
    if ratios[0][0] <= NEAR and ratios[1][0] >= FAR * ratios[0][0]:
        return [ratios[0][1]]
    return [name for name in places if any(name == near and ratio < FAR_OFF * ratios[0][0] for ratio, near in ratios)]


def _on_centre(places: list[str], last: Asked, new: Quantity) -> list[str]:
    """The spacing that the line before told, where a bare number is another that studs stand at: sixteen on centre | 24."""
    said = str(last.record.get("heard", "")).lower()
    told = [name for name in places if last.givens[name].value.text and last.givens[name].value.text.lower() in said]
    if len(told) != 1 or new.unit != "none" or "spacing" not in last.topic.parameter(told[0]).label:
        return []
    was = last.givens[told[0]].value
    return told if new.value != was.value and any({new.value, was.value} <= known for known in _CENTRES) else []


def nearer_to_another(name: str, places: list[str], last: Asked, new: Quantity) -> bool:
    """Whether a bare number is so much nearer to another given that the one that was said bare may not be meant: 27, after 24
    square metres at 42."""
    was = {one: last.givens[one].value.value for one in places}
    if new.value <= 0 or any(value <= 0 for value in was.values()):
        return False
    apart = {one: max(new.value / value, value / new.value) for one, value in was.items()}
    return apart[name] >= _BY_A_QUARTER * min(apart.values())


def far_from(given: Given, last: Asked, new: Quantity) -> bool:
    """Whether a bare number is many times nearer to another given than to this one: 40, of a length of 4.2 and a rise of 30."""
    known = {one.name: one.value.value for one in last.givens.values() if one.source != "assumed" and _positive(one.value)}
    if new.unit != "none" or new.value <= 0 or given.name not in known:
        return False
    apart = {name: max(new.value / was, was / new.value) for name, was in known.items()}
    return bool(apart[given.name] >= FAR_OFF * min(apart.values()))


def _positive(value: object) -> bool:
    return isinstance(value, Quantity) and value.value > 0


def to_the_near(more: Question, last: Asked, rest: str) -> None:
    """Give a length of a line with several numbers to the given that it is near, where it went to one it is far from and no
    word names that: sixteen straps at eighteen inches, of straps 9 foot long with a nail every 18."""
    said = [given for given in last.givens.values() if given.source != "assumed"]
    known = {given.name: given.value for given in said if isinstance(given.value, Length) and given.value.value > 0}
    if len(more.givens) < _LEAST_KNOWN:
        return
    _turned(more, known)
    for name, heard in list(more.givens.items()):
        value, named = heard.value, last.topic.parameter(name).label in rest.lower()
        if name not in known or not isinstance(value, Length) or value.value <= 0 or named:
            continue
        apart = {one: _times(value, was) for one, was in known.items() if one == name or one not in more.givens}
        near = min(apart, key=apart.__getitem__)
        if near != name and apart[near] <= NEAR and apart[name] >= FAR * apart[near]:
            more.givens = {near if one == name else one: given for one, given in more.givens.items()}
            more.swaps = []


def doubt_the_odd(more: Question, last: Asked) -> None:
    """Leave it open whether a length was meant that is unusual and many times off the one before: an exposure of 1 inch after 5,
    where the line said that it starts 1 inch up."""
    for name, heard in more.givens.items():
        was = last.givens[name].value if name in last.givens else None
        slot = last.topic.parameter(name).slot
        if not (isinstance(heard.value, Length) and isinstance(was, Length)) or min(was.value, heard.value.value) <= 0:
            continue
        if is_usual(slot, was, 1) and not is_usual(slot, heard.value, 1) and _times(heard.value, was) >= FAR_OFF:
            more.givens[name] = replace(heard, sure=GUESSED)


def _turned(more: Question, known: dict[str, Length]) -> None:
    """Give two lengths of a line to each other's givens, where that brings both near to what those were: 36 across and 6, of
    an arc 30 wide and 5 high."""
    lengths = {n: heard.value for n, heard in more.givens.items() if isinstance(heard.value, Length) and heard.value.value > 0}
    if len(lengths) != len(more.givens) or len(lengths) != _LEAST_KNOWN or not lengths.keys() <= known.keys():
        return
    one, other = lengths
    apart = max(_times(lengths[one], known[one]), _times(lengths[other], known[other]))
    turned = max(_times(lengths[one], known[other]), _times(lengths[other], known[one]))
    if turned <= NEAR and apart >= FAR * turned:
        more.givens = {one: more.givens[other], other: more.givens[one]}
        more.swaps = []


def _times(one: Length, other: Length) -> float:
    return times_apart(one.to("in").value, other.to("in").value)


def plainly_nearer(last: Asked, new: Quantity) -> str:
    """The one length that a new one is about, where it is half as far again from every other: 9'1, of 18'6 by 8'1."""
    said = {n: g.value for n, g in last.givens.items() if g.source != "assumed"}
    known = {n: value for n, value in said.items() if isinstance(value, Length) and value.value}
    if not isinstance(new, Length) or len(known) < _LEAST_KNOWN or new.value <= 0:
        return ""
    apart = sorted((_times(new, was), name) for name, was in known.items())
    return apart[0][1] if apart[0][0] <= _BY_A_QUARTER and apart[1][0] >= _HALF_AGAIN * apart[0][0] else ""


def much_nearer(last: Asked, new: Quantity) -> str:
    """The one given that a new number is about as large as, where it is many times more or less than any other: 180 mm, of
    a wall 2.7 m high at 7 inches."""
    of_all = all_but_one(last, new)
    if of_all or any(isinstance(given.value, Angle) for given in last.givens.values()):
        return of_all or _nearer_angle(last, new)
    kinds = (Length, Area) if isinstance(new, Number) else (Length,)
    known = {n: g.value for n, g in last.givens.items() if g.source != "assumed" and isinstance(g.value, kinds)}
    if not isinstance(new, Length | Number) or len(known) < _LEAST_KNOWN or new.value <= 0:
        return ""
    sizes = {name: (new.to(was.unit).value if isinstance(new, Length) else new.value) for name, was in known.items()}
    ratios = sorted((max(size / known[name].value, known[name].value / size), name)
                    for name, size in sizes.items() if known[name].value > 0)  # fmt: skip
    return ratios[0][1] if len(ratios) > 1 and ratios[0][0] <= _ALIKE and ratios[1][0] >= FAR_OFF * ratios[0][0] else ""


def all_but_one(last: Asked, new: Quantity) -> str:
    """The one given that a bare number is all but, where it is many times off every other: 300, of 250 square feet in boards
    of 8 foot at 5."""
    known = {n: g.value.value for n, g in last.givens.items() if g.source != "assumed" and isinstance(g.value, Quantity)}
    if new.unit != "none" or new.value <= 0 or len(known) < _LEAST_KNOWN or any(was <= 0 for was in known.values()):
        return ""
    ratios = sorted((max(new.value / was, was / new.value), name) for name, was in known.items())
    return ratios[0][1] if ratios[0][0] <= _ALL_BUT and ratios[1][0] >= FAR_OFF else ""


def _nearer_angle(last: Asked, new: Quantity) -> str:
    """The one angle that a new number is all but, where it is twice as far from any other: 24, of a slope of 25 on a 92."""
    known = {n: g.value.value for n, g in last.givens.items() if g.source != "assumed" and isinstance(g.value, Angle)}
    if new.unit not in ("none", "deg") or new.value <= 0 or len(known) < _LEAST_KNOWN:
        return ""
    ratios = sorted((max(new.value / was, was / new.value), name) for name, was in known.items() if was > 0)
    near = len(ratios) == len(known) and ratios[0][0] <= _BY_A_QUARTER and ratios[1][0] >= NEAR * ratios[0][0]
    return ratios[0][1] if near else ""


def fits_in(last: Asked, name: str, reading: Reading) -> bool:
    """Whether a given can be what was read: no broken count, nothing past its limits, no tape's fraction of a percent."""
    fitted = fit(reading, last.topic.parameter(name), "", cued=True)
    broken = fitted is not None and isinstance(fitted.value, Count) and fitted.value.value.denominator != 1
    slot = last.topic.parameter(name).slot
    past = fitted is not None and (_past_all(fitted.value, slot, reading.kind) or _no_angle(fitted.value, slot))
    taped = fitted is not None and isinstance(fitted.value, Percent | Temperature | TemperatureChange) and _off_a_tape(reading)
    return fitted is not None and not broken and not past and not taped


def _off_a_tape(reading: Reading) -> bool:
    """Whether a number has a part that only a tape shows: 7 1/4 is no percent and no temperature."""
    return isinstance(reading.value, Number) and reading.value.value.denominator in _TAPE_ONLY and reading.end - reading.start > 1


def _no_angle(value: object, slot: Slot) -> bool:
    """Whether an angle is more, or less, than a given can be: a spring angle of 92."""
    return isinstance(value, Angle) and (past_limits(slot, value.value) or not is_usual(slot, value, 1))


def _past_all(value: object, slot: Slot, kind: str) -> bool:
    """Whether a length or a percent is more than a given can be: 9 foot 3 is no exposure, 150 no waste."""
    if isinstance(value, Percent):
        return slot.most is not None and value.value > slot.most
    told = kind == "length" and isinstance(value, Length) and slot.unit in ("", "in")
    return told and slot.most is not None and value.to("in").value > slot.most  # type: ignore[attr-defined]


def another_try(places: list[str], rest: str, last: Asked) -> list[str]:
    """The piece that was asked for and told last, for a number said alone: sixteen, of a spacing, and then 24.

    A count may be meant as well as what was told of each; then it is asked.
    """
    said = places_of(rest)
    others = f"{rest[: said[0].start]} {rest[said[0].end :]}" if len(said) == 1 else rest
    kinds = {name: last.topic.parameter(name).kind for name in places}
    counted = any(issubclass(kind, Count) for kind in kinds.values())
    pitched = Pitch in kinds.values() and kinds.get(last.piece) is not Pitch  # and nine, after 8/12 and a width
    alone = set(re.findall(r"[a-z]+", others.lower())) <= _IT_IS
    again = len(places) > 1 and last.piece in places and alone and not (counted or pitched)
    return [last.piece] if again else places
