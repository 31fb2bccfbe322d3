"""How many of the piece just worked come out of a stick: "how many do I get from a 5.4 length"; and a metric length in inches."""

from __future__ import annotations

import re
from fractions import Fraction
from math import ceil
from typing import TYPE_CHECKING

from assistant.metric_talk import told_in_metric
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

# What is worked there is how long a piece is.
_CUT = ("sloped length", "rake length", "hip or valley length", "right triangle", "tape arithmetic", "square check", "arc")
_ROUND = "circle"
_AND = r"\W*(?:(?:and|so|ok|okay|then|now)\W+)*"
_GET = expression(
    rf"{_AND}how many(?: of (?:them|those|these|'?em))?(?: (?:do|can|will|would|could) (?:i|we|you) (?:get|cut|make))?"
    r"(?: comes?)? (?:from|out of|off) (?:an?|each|one|every) (?P<n>[^,;?]+?)"
    r"(?:[ -]?(?P<unit>m|metres?|meters?|ft|foot|feet|mm))?(?:[ -]?(?:length|lengths|stick|board|piece|stock)|er)\W*",
    re.IGNORECASE,
)
_NEED = expression(  # need ten of em, how many 16s
    rf"{_AND}(?:(?:i|we)(?:['’]ll)? )?(?:need|want|got to make|have to make|make|for)"
    r" (?P<count>\d+|[a-z]+) of (?:them|em|'em|those|these)[ ,]+(?:so |then )?how many"
    r" (?P<n>\d+(?:\.\d+)?|eight|ten|twelve|fourteen|sixteen|eighteen|twenty)[ -]?"
    r"(?:(?:(?P<unit>m|metres?|meters?|ft|foot|feet)|'|er|s)s?)+(?: (?:lengths|sticks|boards|pieces))?"
    r"(?: (?:do|will|would|should) (?:i|we) (?:need|load|buy|get|take|order|want)| is that| does that take)?\W*",
    re.IGNORECASE,
)
_SO_MANY = (
    r"(?:both|the two|the pair|one|each|two|three|four|five|six|\d{1,2})(?: of (?:them|those))?(?: (?:sides?|rakes?|hips?))?"
)
_STICKS_FOR = expression(  # which is how many 16 foot sticks for the two of them
    rf"{_AND}(?:which (?:is|makes) |that(?:['’]s| is) )?how many (?P<n>[\d./ -]+?)[ -]?(?P<unit>m|metres?|meters?|ft|foot|feet)"
    r"[ -]?(?:lengths|sticks|boards|pieces)(?: (?:is|are) (?:that|it|those))?(?: (?:do|will|would) (?:i|we) need)?"
    rf"(?: for (?P<them>{_SO_MANY}))?\W*",
    re.IGNORECASE,
)
_MANY = {"one": 1, "each": 1, "both": 2, "two": 2, "pair": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_IN_INCHES = expression(
    rf"{_AND}(?:in|to) (?P<unit>inches|feet|feet and inches) (?:what(?:['’]?s| is)|how much is) (?P<n>\d+\.\d+)\W*", re.IGNORECASE
)


def from_a_length(text: str, last: Asked) -> str:
    """The line as a whole question of the piece just worked, or of metres; as it is where it is no such line."""
    metric, asked = told_in_metric(last), _IN_INCHES.fullmatch(text)
    if asked and metric:
        return f"what is {asked['n']} m in {asked['unit']}"
    if sticks := _sticks_for(text, last):
        return sticks
    if pieces := _so_many_of_it(text, last, metric):
        return pieces
    found, answer = _GET.fullmatch(text), last.record.get("answer")
    if found is None or not answer or last.topic.name not in _CUT or answer["unit"] not in Length.units:
        return text
    said = numbers_in(found["n"])
    if len(said) != 1 or not (found["unit"] or metric):
        return text
    unit = found["unit"] or ("mm" if said[0].value.value >= 100 else "m")  # type: ignore[union-attr]
    return f"how many {float(answer['value']):.2f} {answer['unit']} pieces from a {found['n']} {unit} length"


def _so_many_of_it(text: str, last: Asked, metric: bool) -> str:
    """The line as a cut list of so many of the piece just worked; "" where it is no such line."""
    found, size = _NEED.fullmatch(text), _piece_of(last)
    count, stock = (numbers_in(found["count"]), numbers_in(found["n"])) if found is not None else ([], [])
    if found is None or size is None or len(count) != 1 or len(stock) != 1:
        return ""
    many, long = (float(rows[0].value.value) for rows in (count, stock))  # type: ignore[union-attr]
    return (
        f"cut {many:g} at {float(size.value):.2f} {size.unit} from {long:g} {found['unit'] or ('m' if metric else 'ft')} lengths,"
        " how many lengths"
    )


def _piece_of(last: Asked) -> Length | None:
    """How long the piece is that was just worked, or asked out of a stick."""
    if last.topic.name == "pieces from a stick":
        piece = last.givens["piece"].value
        return piece if isinstance(piece, Length) else None
    answer = last.record.get("answer")
    if not answer or last.topic.name not in _CUT or answer["unit"] not in Length.units:
        return None
    return Length(Fraction(str(answer["value"])), answer["unit"])


def _round_in_sticks(last: Asked, size: Length, many: int, stick: Length, words: str) -> str:
    """The line as sticks of trim round the circle just worked, or so many; not where how they are cut makes other ones."""
    count = Fraction(last.times) * many
    whole, long = size.to("in").value * many, stick.to("in").value
    each = whole / count
    if count > 1 and (each > long or ceil(count / (long // each)) != ceil(whole / long)):
        return ""
    return f"trim sticks for {float(many * size.value):.2f} {size.unit}, {words} lengths"


def _sticks_for(text: str, last: Asked) -> str:
    """The line as a whole question of so many of the piece just worked, where it asks how many sticks they take; "" otherwise.

    A piece that is longer than a stick is joined, and so is told by how much it comes to.
    """
    found, answer = _STICKS_FOR.fullmatch(text), last.record.get("answer")
    if found is None or not answer or last.topic.name not in (*_CUT[:3], _ROUND) or answer["unit"] not in Length.units:
        return ""
    said = numbers_in(f"{found['n']} {found['unit']}")
    if len(said) != 1 or not isinstance(said[0].value, Length):
        return ""
    them = (found["them"] or "one").lower().split()
    many = next((_MANY.get(word) or int(word) for word in them if word in _MANY or word.isdecimal()), 1)
    size = Length(Fraction(str(answer["value"])), answer["unit"])
    if last.topic.name == _ROUND:
        round_it = answer["name"].startswith("circumf")
        return _round_in_sticks(last, size, many, said[0].value, f"{found['n']} {found['unit']}") if round_it else ""
    if size.to("in").value <= said[0].value.to("in").value:
        return f"cut {many} at {float(size.value):.2f} {size.unit} from {found['n']} {found['unit']} lengths, how many lengths"
    return f"trim sticks for {float(many * size.value):.2f} {size.unit}, {found['n']} {found['unit']} lengths"
