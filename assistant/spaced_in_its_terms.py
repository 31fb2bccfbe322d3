"""What a line tells after things were spaced in a row, laid or fixed along a wall, or of a roof's edge, in the terms of the
topic: "make it 9" is nine things set in from each end and no nine spaces, "forgot, the eaves hang out a foot" the overhang.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.counts_in_its_terms import count_of
from assistant.said_over import as_length, places_of, times_apart, whole
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Count, Length

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = r"\W*(?:(?:and|so|ok|okay|then|but|now|well|oh|no|sorry|wait|actually|what if|what about|how about|say|if)\W+)*"
_OVER = expression(r"(?P<length>.+) less (?P<end>.+) at each end", re.IGNORECASE)  # as `intents/from_each_end.py` says it
_FEWER = " less one"
_ENDS = expression(  # 4 in from each end; start 4 in from the ends; 5 inches in
    rf"{_LEAD}(?:(?:they|it|first one|the first one|i|we)(?:['’]?(?:s|re|ll|d)| will)? )?(?:starts?(?:ing)?|keep|hold|set|go|come"
    r")?(?: (?:them|it))? ?(?:back )?(?P<n>[^,;?]+?)(?: (?:in|back))?(?: (?:from|off|at|on) (?:the|each|both|either) (?:ends?"
    r"|sides?|edges?)| (?:in|back))(?: (?:instead|then|now))?\W*",
    re.IGNORECASE,
)
_ALONE = expression(  # 9; make it 9; with 9 of them; the board's 60
    rf"{_LEAD}(?:(?:make|with|use|only|just|do|over|on|along|(?:the|that|it|my) ?)\b ?)*(?P<what>(?!it|that)[a-z]+?)?"
    r"(?:['’]?s| is| are| was| were)? ?\b(?P<n>[^,;?]+?)(?: of (?:them|those|'?em))?(?: (?:instead|then|now|long))*\W*",
    re.IGNORECASE,
)
_NEAR = 3  # times as many things, or as long
_LONG = frozenset("board wall shelf rail length run fence span beam panel plank".split())
_MOST_IN = 3  # the end is at most this share of the whole
_GAP = expression(  # 3 inch gap; gap of 3; make the gaps 3
    rf"{_LEAD}(?:(?:make|with|use|at|have)\b ?)?(?:(?:the|an?|it|them)\b ?)?(?:(?P<n>[^,;?]+?) gaps?|gaps?(?: (?:of|at|to|is"
    rf"|are))?"
    r" (?P<m>[^,;?]+?))(?: (?:instead|then|now|between(?: them)?))*\W*",
    re.IGNORECASE,
)
_LONG_AT = expression(  # make it 8.1 metres on 450 centres; the wall is 8.1 metres and studs at 450
    rf"{_LEAD}(?:(?:make|do|with|for|got|have)\b ?)?(?:(?:the|that|it|my|other|next|another|a|one|different|same|again|but"
    rf"|with|thing"
    r"|back|front|side|end|gable|long|short|north|south|east|west)\b ?)*"
    r"(?:(?:wall|run|side|one|it|length)\b)?(?:['’]?s| is| are| was| of|,|) ?(?P<length>[^,;?]+?)(?: long)?,?(?: (?:and|with"
    r"|but))?"
    r"(?: (?:the )?(?:studs|rafters|joists|spacing)(?:['’]?re| are| is)?(?: (?:at|on|every))? | (?:at|on|every) "
    r"| (?=\d[^,;?]* (?:on )?(?:cent(?:re|er)s?|o\.?c\.?)\W*$))"
    r"(?P<apart>[^,;?]+?)(?: (?:on )?cent(?:re|er)s?| o\.?c\.?| apart)?(?: (?:instead|then|now))*\W*",
    re.IGNORECASE,
)
_NINETEEN = expression(r"\b19\.2(?:['’]?s)?\b|\bnineteen (?:point|and) two\b", re.IGNORECASE)
_STEEP = expression(r"\b(?:pitch|slope|in twelve|in 12|twelve|degrees|mm|cm|feet|foot)\b|/ ?12|\d['’](?!s)", re.IGNORECASE)
_FORGOT = expression(
    r"\W*(?:(?:oh|ah|and|sorry|damn|shoot)\W+)*(?:(?:i|we) )?forgot(?: to (?:say|mention|tell you|add))?(?:[\s:;,.-]+(?:but"
    r"|that))?"
    r"[\s:;,.-]+(?P<rest>(?:the |an? |my |our )?.+)",
    re.IGNORECASE,
)
_OUT = expression(r"\b(?:overhangs?|eaves?|hangs? (?:out|over)|sticks? out|tails?|soffits?)\b", re.IGNORECASE)
_FASCIA = expression(  # wait, that fascia's square to the rake, not plumb
    r"\W*(?:(?:oh|wait|hang on|hold on|whoops|oops|no|sorry|actually|ah)\W+)+(?:it['’]?s )?(?:an? |the |that |my |this )?"
    r"(?:(?P<one>square|plumb)(?:-cut)? fascia|fascia(?:['’]?s| is| was)(?: actually| really)? (?P<two>square|plumb))"
    r"(?: (?:to|with) the (?:rake|rafters?|roof|slope))?(?:,? (?:and |it['’]?s )?not (?:square|plumb))?\W*",
    re.IGNORECASE,
)
_COURSES = expression(  # and if I run 16 of em instead, what's the exposure
    rf"{_LEAD}(?:(?:i|we) )?(?:run|make|do|have|lay|put|use|go with|went|with|did|had|make it)? ?(?P<n>\d+|[a-z]+(?:[ -][a-z]+)?)"
    r" of (?:them|'?em|those)(?: (?:instead|then|now))*(?:,? (?:so |then )?what(?:['’]?s| is| would be|['’]?d be)?(?: the| my)?"
    r" (?:exposure|reveal|gauge|to the weather)(?: (?:be|then|now|go to))*)?\W*",
    re.IGNORECASE,
)

_ON_TOP = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:plus|add|put|with|and)(?: an?| the)? (?P<n>[^,;?]*?\d[^,;?]*?"
    r"(?:inch(?:es)?|in|mm|mil|mils|cm|foot|ft|feet|m|met(?:re|er)s?))(?: (?:thick|deep|high))?(?: [a-z]+){0,2}?"
    r"(?: (?:on top|over|above|up top)(?: of)?(?: (?:that|it|them|those|the lot))?)\W*",
    re.IGNORECASE,
)


def between_ends(text: str, last: Asked) -> str:
    """The question again of things set in from each end, with another number of them, another length or end."""
    parts, length = last.givens.get("parts"), last.givens.get("length")
    if parts is None or length is None or not isinstance(parts.value, Count) or not isinstance(length.value, Length):
        return ""
    told = _OVER.fullmatch(length.value.text) if parts.value.text.endswith(_FEWER) else None
    if told is None or len(numbers_in(text)) != 1:
        return ""
    count, over, end = parts.value.text.removesuffix(_FEWER), told["length"], told["end"]
    ends = _ENDS.fullmatch(text)
    unit = length.value.unit
    if ends is not None and (size := _length_of(ends["n"], unit)) is not None:
        inner = size.to("in").value * _MOST_IN <= length.value.to("in").value
        return _spaced(count, over, _with_unit(ends["n"], unit)) if inner else ""
    found = _ALONE.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None:
        return ""
    what, number = (found["what"] or "").lower(), place.value
    if isinstance(number, Length) or what in _LONG:
        size = _length_of(found["n"], unit)
        near = size is not None and times_apart(size.to("in").value, length.value.to("in").value) < _NEAR
        return _spaced(count, _with_unit(found["n"], unit), end) if near and (not what or what in _LONG) else ""
    were = whole(count)
    if what or were is None or number.unit != "none":
        return ""
    counts, spans = times_apart(number.value, Fraction(were.value.value)), times_apart(number.value, length.value.value)
    if spans < min(counts, _NEAR):
        return _spaced(count, _with_unit(found["n"], unit), end)
    whole_number = number.value.denominator == 1 and number.value > 1
    return _spaced(found["n"], over, end) if whole_number and counts < min(spans, _NEAR) else ""


def _spaced(count: str, over: str, end: str) -> str:
    return f"space {count} hooks on a {over} board {end} in from each end"


def _length_of(said: str, unit: str) -> Length | None:
    """A length that is told whole, in a unit where it is told with none."""
    place = whole(said)
    if place is None or not (isinstance(place.value, Length) or place.value.unit == "none"):
        return None
    return as_length(place.value, unit)


def _with_unit(said: str, unit: str) -> str:
    place = whole(said)
    return said if place is None or isinstance(place.value, Length) else f"{said} {unit}"


def long_at(text: str, last: Asked) -> str:
    """Another length and another spacing, of what is fixed at every stud: no marks are asked for."""
    found = _LONG_AT.fullmatch(text)
    length = whole(found["length"]) if found is not None else None
    if found is None or length is None or not isinstance(length.value, Length) or not whole(found["apart"]):
        return ""
    told = "length" in last.givens and "spacing" in last.givens
    return f"length {found['length']} and spacing {found['apart']}" if told else ""


def laid_in_fives(text: str, last: Asked) -> str:
    """The spacing of jacks that is five to eight feet, and no pitch: if they're 19.2."""
    told = _NINETEEN.search(text) and not _STEEP.search(text) and len(numbers_in(text)) == 1
    return "at 19.2 centres" if told else ""


def gap_of(text: str, last: Asked) -> str:
    """The gap between pieces in a row, where one was told before: 3 inch gap."""
    found = _GAP.fullmatch(text)
    said = (found["n"] or found["m"]) if found is not None else ""
    name = next((name for name in ("widest", "gap") if name in last.givens), "")
    if not name or not said or (size := _length_of(said, "in")) is None:
        return ""
    at_most = "max gap" if name == "widest" else last.topic.parameter(name).label
    return f"{at_most} {_with_unit(said, 'in')}" if size.value > 0 else ""


def eaves_forgotten(text: str, last: Asked) -> str:
    """What was forgotten of a roof: forgot, the eaves hang out a foot all round."""
    found = _FORGOT.fullmatch(text)
    places = places_of(found["rest"]) if found is not None and _OUT.search(found["rest"]) else []
    return f"with {found['rest'][places[0].start : places[0].end]} overhang" if found is not None and len(places) == 1 else ""


def fascia_is(text: str, last: Asked) -> str:
    """How the fascia is, put right."""
    found = _FASCIA.fullmatch(text)
    return f"{(found['one'] or found['two']).lower()} fascia" if found is not None else ""


def courses_instead(text: str, last: Asked) -> str:
    """How many courses there are to be: 16 of them instead."""
    found = _COURSES.fullmatch(text)
    return f"make it {found['n']} courses" if found is not None and (count_of(found["n"]) or 0) > 1 else ""


def on_top_of_it(text: str, last: Asked) -> str:
    """What is laid on top of courses, put to how high they come: plus a 140 mil lintel on top of that."""
    found = _ON_TOP.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    return f"add {found['n']} to that" if found is not None and place is not None and isinstance(place.value, Length) else ""
