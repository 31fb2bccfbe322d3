"""What a line tells of a frame that is pulled square, in the terms of its topic: "I was reading the tape wrong, it's 2208" is
the diagonal as measured, "38 long now" the longer of its two sides.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import as_length, times_apart, whole
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
    value = as_length(place.value, was.unit).to("in").value
    sides = [last.givens[name].value.to("in").value for name in _SIDES if name in last.givens]
    if value <= 0 or times_apart(value, was.to("in").value) > _NEAR or any(times_apart(value, side) < _FAR for side in sides):
        return ""
    return f"the diagonal is {only['n']}"


def other_frame(text: str, last: Asked) -> str:
    """Another size of one side: what about 3 foot, of one 3 foot 6 by 8."""
    found = _WHAT_ABOUT.fullmatch(text)
    return _of_the_near_side(found["n"], last) if found is not None else ""


def _of_the_near_side(words: str, last: Asked) -> str:
    """A size as that of the one side it is near to, and of which the other is far."""
    was = _sides(last)
    apart = _apart(words, was)
    if not apart:
        return ""
    (near, nearest), (_, other) = apart
    if nearest > _BESIDE or other < _APART:
        return ""
    told = _with(was, near, words)
    if last.topic.name == "square check":
        return f"make it {_both(told)}"
    return f"other side {told[near]}" if near == "other_side" else ""


def true_with(text: str, last: Asked) -> str:
    """The true diagonal of the frame, had one of its sides another size: and the true diagonal if that opening was 1300 wide."""
    found = _TRUE_IF.fullmatch(text)
    if found is None or not whole(found["n"]):
        return ""
    told = _beside(found["n"], last) or the_long_side(f"{found['n']} {found['which'] or 'long'}", last).removeprefix("make it ")
    return f"diagonal of a frame {told}" if told else ""


def _beside(words: str, last: Asked) -> str:
    """Both sides, with the one that a size is nearer to in its place; "" where it is near to neither, or to both."""
    was = _sides(last)
    apart = _apart(words, was)
    if not apart:
        return ""
    (near, nearest), (_, other) = apart
    return _both(_with(was, near, words)) if nearest <= _BESIDE and other >= _NEARER * nearest else ""


def the_long_side(text: str, last: Asked) -> str:
    """The longer of two sides, or the shorter, by its name; nothing where it would not stay the longer."""
    found, was = _LONG_OR_SHORT.fullmatch(text), _sides(last)
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or not was:
        return ""
    inches = {name: side.to("in").value for name, side in was.items()}
    shorter, longer = sorted(inches, key=inches.__getitem__)
    which, other = (longer, shorter) if found["which"].lower() in _THE_LONG else (shorter, longer)
    size, beside = as_length(place.value, was[which].unit).to("in").value, inches[other]
    if inches[longer] == inches[shorter] or size == beside or (size > beside) != (which == longer):
        return ""
    return f"make it {_both(_with(was, which, found['n']))}"


def _sides(last: Asked) -> dict[str, Length]:
    """Both sides of the frame by their names; none where one was not told."""
    was = {name: last.givens[name].value for name in _SIDES if name in last.givens}
    both = {name: side for name, side in was.items() if isinstance(side, Length)}
    return both if len(both) == len(_SIDES) else {}


def _apart(words: str, was: dict[str, Length]) -> list[tuple[str, float]]:
    """How many times as large the one size that these words are is as each side, or it as that, the nearer first."""
    place = whole(words)
    if place is None or not was or place.value.value <= 0:
        return []
    sizes = {name: as_length(place.value, side.unit).to("in").value for name, side in was.items()}
    apart = [(name, times_apart(sizes[name], side.to("in").value)) for name, side in was.items()]
    return sorted(apart, key=lambda row: row[1])


def _with(was: dict[str, Length], name: str, words: str) -> dict[str, str]:
    """Both sides as they are said, one of them anew; a bare number in the unit that side had."""
    place = whole(words)
    bare = place is None or not isinstance(place.value, Length)
    told = {key: f"{float(side.value):.10g} {side.unit}" for key, side in was.items()}
    return {**told, name: f"{words} {was[name].unit}" if bare else words}


def _both(told: dict[str, str]) -> str:
    return f"{told['side']} by {told['other_side']}"
