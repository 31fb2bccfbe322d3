"""What a line tells of a frame that is pulled square, in the terms of its topic: "I was reading the tape wrong, it's 2208" is
the diagonal as measured, "38 long now" the longer of its two sides.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import times_apart, whole
from intents.expressions import expression
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

_READ_WRONG = expression(  # I was reading the tape wrong, it's 2208
    r"(?P<wrong>[^\d]*?\b(?:tape|misread|read|reading|hooked|measured|measuring|pulled|pulling)\b[^\d]*?)[,;.–—-]+\s*"
    r"(?:(?:and|so|it['’]?s|its|it is|it was|that['’]?s|make it|make that|call it|should be|it should be|it reads|i get|now"
    r"|really|actually)\s+)*(?P<n>[^,;?]*\d[^,;?]*?)\W*",
    re.IGNORECASE,
)
_ERRED = expression(
    r"\b(?:wrong|misread|mistake|upside down|backwards|off the (?:burn|wrong)|wrong (?:end|side|edge|mark))\b", re.I
)
_OF_A_SIDE = expression(r"\b(?:height|width|side|sides|wide|high|tall|long|length|opening|jamb|head|leg)\b", re.IGNORECASE)
_ONLY_SO_MUCH = expression(  # no, 2208; moved a stake, now I'm reading 44'11"
    r"(?:[^\d,;]*[,;] )?\W*(?:(?:no|nope|sorry|oops|wait|hang on|hold on|ah|oh|ok|actually|i meant?|it['’]?s|its|it is"
    r"|make (?:it|that)|call it"
    r"|now|and now|i['’]?m|we['’]?re|i|we|it|reading|reads?|get|getting|got|measures?|measured|pulled?|pulling)\W+)+"
    r"(?P<n>[^,;?]+?)(?: (?:now|then|across|corner to corner))*\W*",
    re.IGNORECASE,
)
_WHAT_ABOUT = expression(
    r"\W*(?:(?:and|so|ok|then|now|or)\W+)*(?:what about|how about|what if it['’]?s|and if it['’]?s|if it was|make it|and|with)"
    r" (?:an? |one )?(?P<n>[^,;?]+?)\W*",
    re.IGNORECASE,
)
_ASKS = r"(?:how|what|whats|which|why|does|will|is)"
_LONG_OR_SHORT = expression(  # client's stretched it, 38 long now; it's 40 the long way; the short side's 22
    rf"(?!\W*{_ASKS}\b)(?:(?P<lead>[^\d]*?)[,;.:–—-]\s+|\W*)(?:(?:and|so|ok|no|sorry|wait|but|now|what if|if|it['’]?s|its"
    rf"|it is|make it"
    r"|call it|only|really|say|they['’]re|that['’]?s|should be|it was|was|is)\W+)*(?P<n>[^,;?]+?)"
    r" (?:in |on |for )?(?:the |its )?(?P<which>long|length|short|wide|width|narrow|longer|shorter)(?:ways| way| side| one"
    r"| dimension| axis)?"
    r"(?: (?:now|then|instead|after all|not \S+(?: (?:ft|feet|foot|m|mm))?))*\W*",
    re.IGNORECASE,
)
_TRUE_IF = expression(
    r"\W*(?:(?:and|so|ok|now|then)\W+)*(?:what(?:['’]?s| is|s)? )?(?:(?:the )?(?:true|right) diagonal|(?:it"
    r"|that)?(?: is)? ?(?:the diagonal )?"
    r"(?:supposed|sposed|meant|ought) to (?:pull|be|read|measure|come to))(?: be)? (?:if|with|when) (?:the |that |my "
    r"|it['’]?s )?(?:[a-z]+ )?"
    r"(?:was |is |were |['’]s |['’]?d be )?(?P<n>[^,;?]+?)(?: (?P<which>wide|tall|high|long|deep))?(?: instead)?\W*",
    re.IGNORECASE,
)
_NEARER = 1.1  # times as near to the one side as to the other
_THE_LONG = frozenset(("long", "length", "longer"))
_SIDES = ("side", "other_side")
_BESIDE, _APART = 1.25, 1.5  # times as large: a size that is of one side, and of the other not
_NEAR, _FAR = 1.02, 1.04  # of a diagonal, times as large; and of a side, which it is none of


def as_measured(text: str, last: Asked) -> str:
    """The diagonal as it really measures: said to have been read wrong, or so near to it that it is nothing else."""
    found = _READ_WRONG.fullmatch(text)
    if found is not None and _ERRED.search(found["wrong"]) and whole(found["n"]):
        if _OF_A_SIDE.search(found["wrong"]):
            return _of_the_near_side(found["n"], last) or f"no, {found['n']}"
        return f"the diagonal is {found['n']}"
    only, given = _ONLY_SO_MUCH.fullmatch(text), last.givens.get("diagonal")
    place = whole(only["n"].strip()) if only is not None else None
    was = given.value if given is not None else None
    if only is None or place is None or not isinstance(was, Length):
        return ""
    value = Length(place.value.value, place.value.unit if isinstance(place.value, Length) else was.unit).to("in").value
    sides = [last.givens[name].value.to("in").value for name in ("side", "other_side") if name in last.givens]
    if value <= 0 or times_apart(value, was.to("in").value) > _NEAR or any(times_apart(value, side) < _FAR for side in sides):
        return ""
    return f"the diagonal is {only['n']}"


def _of_the_near_side(words: str, last: Asked) -> str:
    """A size as that of the one side it is near to, and of which the other is far."""
    place = whole(words)
    was = {name: given.value for name, given in last.givens.items() if name in _SIDES and isinstance(given.value, Length)}
    if place is None or len(was) != len(_SIDES) or place.value.value <= 0:
        return ""
    unit = place.value.unit if isinstance(place.value, Length) else ""
    apart = {
        name: times_apart(Length(place.value.value, unit or side.unit).to("in").value, side.to("in").value)
        for name, side in was.items()
    }
    near = min(apart, key=apart.__getitem__)
    if apart[near] > _BESIDE or any(times < _APART for name, times in apart.items() if name != near):
        return ""
    told = {name: f"{float(side.value):g} {side.unit}" for name, side in was.items()}
    told[near] = f"{words}{'' if unit else f' {was[near].unit}'}"
    if last.topic.name == "square check":
        return _with_sides(told)
    return f"other side {told[near]}" if near == "other_side" else ""


def other_frame(text: str, last: Asked) -> str:
    """Another size of one side: what about 3 foot, of one 3 foot 6 by 8."""
    found = _WHAT_ABOUT.fullmatch(text)
    return _of_the_near_side(found["n"], last) if found is not None else ""


def true_with(text: str, last: Asked) -> str:
    """The true diagonal of the frame, had one of its sides another size: and the true diagonal if that opening was 1300 wide."""
    found = _TRUE_IF.fullmatch(text)
    if found is None or not whole(found["n"]):
        return ""
    told = _beside(found["n"], last) or the_long_side(f"{found['n']} {found['which'] or 'long'}", last).removeprefix("make it ")
    return f"diagonal of a frame {told}" if told else ""


def _beside(words: str, last: Asked) -> str:
    """Both sides, with the one that a size is nearer to in its place; "" where it is near to neither, or to both."""
    place = whole(words)
    was = {name: given.value for name, given in last.givens.items() if name in _SIDES and isinstance(given.value, Length)}
    if place is None or len(was) != len(_SIDES) or place.value.value <= 0:
        return ""
    unit = place.value.unit if isinstance(place.value, Length) else ""
    sizes = {name: Length(place.value.value, unit or side.unit).to("in").value for name, side in was.items()}
    apart = {name: times_apart(sizes[name], side.to("in").value) for name, side in was.items()}
    near, far = sorted(apart, key=apart.__getitem__)
    if apart[near] > _BESIDE or apart[far] < _NEARER * apart[near]:
        return ""
    told = {name: f"{float(side.value):.10g} {side.unit}" for name, side in was.items()}
    told[near] = f"{words}{'' if unit else f' {was[near].unit}'}"
    return f"{told['side']} by {told['other_side']}"


def the_long_side(text: str, last: Asked) -> str:
    """The longer of two sides, or the shorter, by its name; nothing where it would not stay the longer."""
    found = _LONG_OR_SHORT.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    was = {name: given.value for name, given in last.givens.items() if name in _SIDES and isinstance(given.value, Length)}
    if found is None or place is None or len(was) != len(_SIDES):
        return ""
    shorter, longer = sorted(was, key=lambda name: was[name].to("in").value)
    which, other = (longer, shorter) if found["which"].lower() in _THE_LONG else (shorter, longer)
    unit = place.value.unit if isinstance(place.value, Length) else was[which].unit
    size, beside = Length(place.value.value, unit).to("in").value, was[other].to("in").value
    if was[longer].to("in").value == was[shorter].to("in").value or size == beside or (size > beside) != (which == longer):
        return ""
    told = {name: f"{float(side.value):g} {side.unit}" for name, side in was.items()}
    told[which] = f"{found['n']}{'' if isinstance(place.value, Length) else f' {unit}'}"
    return _with_sides(told)


def _with_sides(told: dict[str, str]) -> str:
    return f"make it {told['side']} by {told['other_side']}"
