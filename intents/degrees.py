"""Angles, temperatures and changes of temperature: what "degrees" can mean."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from intents.numbers import Line
from intents.reading import Head, Reading, heads
from solvers.quantities import Angle, Temperature, TemperatureChange

DEGREES = frozenset(["°", "degree", "degrees", "deg", "degs"])
SCALES = {"f": "degF", "fahrenheit": "degF", "c": "degC", "celsius": "degC", "centigrade": "degC"}
_KELVIN = frozenset(("k", "kelvin", "kelvins"))
_DOWN = frozenset(["drop", "fall", "colder", "cooler", "down", "cooling"])
_UP = frozenset(["swing", "change", "rise", "difference", "spread", "range", "warmer", "hotter", "increase", "warming", "climb"])
_CHANGES = _DOWN | _UP
LED = _CHANGES - frozenset(["colder", "cooler", "down", "warmer", "hotter", "range", "spread"])
_SIDES = {"below": -1, "above": 1}
_NOT_ZERO = frozenset(["the", "a", "an", "my", "that", "this", "its"])
STARTS = frozenset((*DEGREES, *SCALES, *_KELVIN, *_SIDES))  # after a number
_EXTREMES = frozenset("coldest lowest least minimum min".split())
_MINUTES = frozenset(("minute", "minutes", "min", "mins", "arcminutes"))
# After 30' these leave it no length: "88° 30' corner".
_AFTER_MINUTES = frozenset([*"corner angle turn bend saw setting mitre miter cut roof spring and , . ; ? !".split(), ""])
_LEANING = frozenset("angle angles slope slopes sloped pitch pitched roof leans".split())
_SWEATS = frozenset("sweat sweats sweating condense condenses condensing condensation dew dewpoint humidity".split())
_PARTS = {"half": Fraction(1, 2), "quarter": Fraction(1, 4)}
_UNDER, _LEADS_TO = frozenset(("minus", "negative")), frozenset(("at", "from", "to", "between", "hits", "reaches"))
_UNSAID = 0.6  # a change with no scale said: degrees Fahrenheit more often than Celsius here


def under_nothing(words: Sequence[str]) -> bool:
    """Whether a number under nothing is told, which takes nothing off: "from minus 20 to plus 30", "the wall's at minus 2"."""
    return not _UNDER.isdisjoint(words) and any(word in _UNDER and before in _LEADS_TO for before, word in pairwise(words))


def degrees(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Angles, temperatures and changes made of a head at i and the unit after it."""
    words, at = line.words, head.unit
    word = words[at]
    if word in DEGREES and words[at - 2 : at] == ["/", "12"]:
        return  # 3/12 degrees is a pitch asked in degrees, not a quarter of one
    if word in DEGREES:
        scale = words[at + 1]
        if scale in SCALES:
            yield from _scaled(line, i, head, at + 2, SCALES[scale])
        elif (part := _PARTS.get(words[at + 3])) and words[at + 1 : at + 3] == ["and", "a"]:
            yield Reading("angle", i, at + 4, Angle(head.value + part, "deg"), head.sure)  # a degree and a half
        else:
            yield from _with_minutes(line, i, head, at + 1)
            yield from _unscaled(line, i, head, at + 1)
    elif head.form == "one":
        return
    elif word in SCALES:
        yield from _scaled(line, i, head, at + 1, SCALES[word])
    elif word in _KELVIN:
        yield _change(i, _change_end(line, at + 1)[0], head.value, "dC", head.sure)
    elif word in _SIDES:
        yield from _either_side(line, i, head, at)


def _with_minutes(line: Line, i: int, head: Head, end: int) -> Iterator[Reading]:
    """Degrees and the sixtieths after them: 75 degrees 30 minutes, 88° 30'."""
    words = line.words
    start = end + (words[end] in ("and", "&"))
    for minutes in line.pieces(start) if head.form == "whole" else ():
        mark = words[minutes.end]
        said = mark in _MINUTES
        signed = mark == "'" and words[end - 1] == "°" and words[minutes.end + 1] in _AFTER_MINUTES
        if (said or signed) and minutes.form == "whole" and 0 <= minutes.value < 60:
            yield Reading("angle", i, minutes.end + 1, Angle(head.value + minutes.value / 60, "deg"), head.sure)


def _scaled(line: Line, i: int, head: Head, end: int, scale: str) -> Iterator[Reading]:
    """A number of degrees whose scale was said: a temperature, or a change when a word for one follows."""
    if line.words[end : end + 2] == ["below", "zero"] and head.value > 0:
        yield Reading("temperature", i, end + 2, Temperature(-head.value, scale), head.sure)  # 12 F below zero
        return
    stop, sign = _change_end(line, end)
    changed = stop > end
    unit = "dF" if scale == "degF" else "dC"
    if changed:
        yield _change(i, stop, sign * head.value, unit, head.sure)
    yield Reading("temperature", i, end, Temperature(head.value, scale), head.sure * (0.3 if changed else 1.0))
    if not changed:
        yield Reading("tempchange", i, end, TemperatureChange(head.value, unit), 0.4 * head.sure)


def _unscaled(line: Line, i: int, head: Head, end: int) -> Iterator[Reading]:
    """Bare degrees: an angle first, a temperature or a change of one if the topic wants that."""
    stop, sign = _change_end(line, end)
    value = head.value
    if not _LEANING.isdisjoint(line.words[max(0, i - 2) : i]) or line.words[end : end + 2] == ["rise", "?"]:
        stop = end  # run 7-2, angle 34 deg, rise: no rise of 34 degrees
    if stop > end and line.words[stop] in SCALES:  # an 80 degree swing F
        yield _change(i, stop + 1, sign * value, "dF" if SCALES[line.words[stop]] == "degF" else "dC", head.sure)
        return
    if stop > end:
        yield _change(i, stop, sign * value, "dF", _UNSAID * head.sure)
    others = tuple(Angle(other, "deg") for other in head.also)
    if _SWEATS.isdisjoint(line.words):
        yield Reading("angle", i, end, Angle(value, "deg"), head.sure * (0.3 if stop > end else 1.0), others)
    if head.form == "one":
        return
    if line.words[end] in _SIDES:
        yield from _either_side(line, i, head, end)
    yield Reading("temperature", i, end, Temperature(value, "degF"), 0.5 * head.sure, (Temperature(value, "degC"),))
    if stop == end:
        yield _change(i, end, value, "dF", 0.4 * head.sure)


def _change(start: int, end: int, value: Fraction, unit: str, sure: float) -> Reading:
    also = (TemperatureChange(value, "dC"),) if unit == "dF" and sure <= _UNSAID else ()
    return Reading("tempchange", start, end, TemperatureChange(value, unit), sure, also)


def _change_end(line: Line, at: int) -> tuple[int, int]:
    """Where a word for a change ends, if one is at `at`, and the sign it gives: "(100 degree) temperature drop"."""
    words = line.words
    start = at + (words[at] in ("of", "temperature", "temp"))
    start += words[at] == "of" and words[start] in ("a", "an")  # 50 C of a difference
    start += words[start] in ("temperature", "temp")
    return (start + 1, -1 if words[start] in _DOWN else 1) if words[start] in _CHANGES else (at, 1)


def _either_side(line: Line, i: int, head: Head, at: int) -> Iterator[Reading]:
    """Twenty below, five above zero, ten below freezing."""
    words = line.words
    value, after = head.value * _SIDES[words[at]], words[at + 1]
    coldest = after == "the" and words[at + 2] in _EXTREMES  # twenty below the coldest it'll see
    if value == 0 or head.value < 0 or (after in _NOT_ZERO and not coldest) or head.form not in ("whole", "decimal", "mixed"):
        return
    if after == "freezing":
        celsius, fahrenheit = Temperature(value, "degC"), Temperature(value + 32, "degF")
        yield Reading("temperature", i, at + 2, fahrenheit, 0.5 * head.sure, (celsius,))
        return
    end = at + 2 if after == "zero" else at + 1
    end += words[end] in DEGREES
    if words[end] in SCALES:
        yield Reading("temperature", i, end + 1, Temperature(value, SCALES[words[end]]), head.sure)
        return
    sure = (0.8 if after == "zero" else 0.6) * head.sure
    yield Reading("temperature", i, end, Temperature(value, "degF"), sure, (Temperature(value, "degC"),))


def named_temperatures(line: Line, i: int) -> Iterator[Reading]:
    """Freezing."""
    if line.words[i] == "freezing":
        yield Reading("temperature", i, i + 1, Temperature(Fraction(0), "degC"), 0.9)


def led_changes(line: Line, i: int) -> Iterator[Reading]:
    """A change said before its number: "swing of 100 degrees", "temperature drop of 40 C"."""
    words = line.words
    start = i + (words[i] == "temperature")
    if words[start] not in LED or words[start + 1] != "of":
        return
    sign = -1 if words[start] in _DOWN else 1
    for head in heads(line, start + 2):
        at = head.unit + (words[head.unit] in DEGREES)
        value = sign * head.value
        if words[at] in SCALES:
            unit = "dF" if SCALES[words[at]] == "degF" else "dC"
            yield _change(i, at + 1, value, unit, head.sure)
        elif words[at] in _KELVIN:
            yield _change(i, at + 1, value, "dC", head.sure)
        elif at > head.unit:
            yield _change(i, at, value, "dF", _UNSAID * head.sure)
