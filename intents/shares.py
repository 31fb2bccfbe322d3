"""A length told by another: "half of nineteen feet", "a foot and a half short of 30", "32 wide, and the rise is half of that".

Each is one quantity wherever a quantity can stand. What a share is of stops being said on its own; the sums, which are read
before these, still show how it was told. Looked for only where a word stands that begins one.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.lengths import FEET, UNITS
from intents.number_words import SMALL, TENS
from intents.reading import Reading
from intents.tokens import Token, literal
from solvers.quantities import Area, Length, Number, Quantity

SURE = 0.9
_TIMES = {"twice": Fraction(2), "double": Fraction(2)}
_SHORT = frozenset(("short", "shy"))
_THAN = {"less": -1, "shorter": -1, "narrower": -1, "more": 1, "longer": 1, "wider": 1, "taller": 1, "higher": 1, "deeper": 1}
_TELLS = frozenset(("of", "that", "as")) | _TIMES.keys()
_ARTICLES = frozenset(("a", "an", "the", "my"))
_SIDES = frozenset("wide deep high long tall thick".split())
_ENDS = _SIDES | frozenset(", . ; : ? ! and for so across again with on what how by".split()) | {""}  # after "half that"
_COMPARING = frozenset("is are was does do".split())  # "is 3/8 less than 10 mm" asks which is more
WHOLES = frozenset("span width gable building house".split())
_BEING = frozenset("of is = : 's at about".split())
FINEST = 16  # 1/150 of a floor is a ratio of vents
_HALVED = (("half", "span"), ("half", "width"))
_FAR = 12  # words back to what "that" is
_KINDS = ("length", "number", "area")


def shares(tokens: list[Token], chart: list[list[Reading]]) -> Iterator[Reading]:
    """The quantities that are told as a share of another, or as so much short of it."""
    words = [token.text for token in tokens] + [""] * 4
    if _TELLS.isdisjoint(words) and "half" not in words and _SHORT.isdisjoint(words) and _THAN.keys().isdisjoint(words):
        return
    for at, row in enumerate(chart):
        if not row and words[at] not in _TIMES:
            continue
        yield from _differences(words, chart, row)
        if words[at] == "half":
            yield from _whole(words, chart, at)
        elif (half := _sized(row)) and half.kind == "length" and tuple(words[half.end : half.end + 2]) in _HALVED:
            yield _part(at, half.end + 2, half, Fraction(2))  # a 13 foot 6 half span
        for end, share in _shares_at(words, row, at):
            found = _of_another(words, chart, at, end, share) or _of_that(words, chart, at, end, share)
            if found is not None:
                yield found
                break


def _shares_at(words: list[str], row: list[Reading], at: int) -> Iterator[tuple[int, Fraction]]:
    """The factors said at a place, each with where it ends; the fraction of a mixed number is none."""
    if words[at] in _TIMES:
        yield at + 1, _TIMES[words[at]]
        return
    before = words[at - 1] if at else ""
    if before == "/" or literal(before) or (before in ("and", "&") and at > 1 and _counts_on(words[at - 2])):
        return
    for reading in row:
        share = reading.value.value if isinstance(reading.value, Number) else None
        if share is not None and 0 < share.numerator < share.denominator <= FINEST:
            yield reading.end, share


def _counts_on(word: str) -> bool:
    """Whether a fraction after "and" belongs to what this word ends: seven | and a half, a foot | and a half."""
    return literal(word) or word in SMALL or word in TENS or word in UNITS


def _of_another(words: list[str], chart: list[list[Reading]], at: int, end: int, share: Fraction) -> Reading | None:
    """Half of nineteen feet, three quarters of the 18 feet."""
    if words[end] != "of" and not (share > 1 and end < len(chart)):
        return None
    start = end + (words[end] == "of")
    start += words[start] in _ARTICLES and not (start < len(chart) and _sized(chart[start]))
    whole = _sized(chart[start]) if start < len(chart) else None
    if whole is None or (whole.kind == "number" and words[end] != "of"):
        return None
    own = max((r.end for r in chart[at] if r.kind == "length"), default=0)  # half of an inch is a length as it is
    return _part(at, whole.end, whole, share) if own < whole.end else None


def _of_that(words: list[str], chart: list[list[Reading]], at: int, end: int, share: Fraction) -> Reading | None:
    """3/8 wide and half that deep, 20 feet long and half as high: a share of the size said last."""
    points = end + (words[end] == "of")
    alike = words[points] == "as" and words[points + 1] in _SIDES
    if not alike and (words[points] != "that" or words[points + 1] not in _ENDS):
        return None
    for before in range(at - 1, max(-1, at - _FAR), -1):
        whole = _sized(chart[before])
        if whole is not None and whole.end <= at:
            first = next((r for b in range(max(0, before - 4), before) if (r := _sized(chart[b])) and r.end >= whole.end), whole)
            return _part(at, points + 1, first, share)
    return None


def _differences(words: list[str], chart: list[list[Reading]], row: list[Reading]) -> Iterator[Reading]:
    """A foot and a half short of 30, three inches less than 12 feet."""
    for less in row:
        short = words[less.end] in _SHORT and words[less.end + 1] == "of"
        sign = -1 if short else _THAN.get(words[less.end], 0) if words[less.end + 1] == "than" else 0
        if less.kind != "length" or not sign or (not short and words[less.start - 1] in _COMPARING):
            continue
        start = less.end + 2 + (words[less.end + 2] in ("the", "an"))
        whole = _sized(chart[start]) if start < len(chart) else None
        size = _as_length(whole, words[less.start : less.end]) if whole is not None else None
        if whole is None or size is None or not isinstance(less.value, Length):
            continue
        value = size.to("in").value + sign * less.value.to("in").value
        if value > 0:
            yield Reading("length", less.start, whole.end, _in_unit(value, size.unit), SURE)
            return


def _whole(words: list[str], chart: list[list[Reading]], at: int) -> Iterator[Reading]:
    """Half the span is 14 ft, half width 9 ft 8: the whole is twice that."""
    noun = at + 1 + (words[at + 1] in _ARTICLES)
    start = noun + 1 + (words[noun + 1] in _BEING)
    half = _sized(chart[start]) if words[noun] in WHOLES and start < len(chart) else None
    if half is not None and half.kind == "length":
        yield _part(at - (words[at - 1] == "a" and at > 0), half.end, half, Fraction(2))


def _in_unit(inches: Fraction, unit: str) -> Length:
    size = Length(Fraction(1), unit).to("in").value
    return Length(inches / size, unit)


def _as_length(whole: Reading, said: list[str]) -> Length | None:
    """What is fallen short of; a bare number is of feet where what it lacks is told in feet."""
    if isinstance(whole.value, Length):
        return whole.value
    in_feet = isinstance(whole.value, Number) and not FEET.isdisjoint(said) and whole.value.value > 1
    return Length(whole.value.value, "ft") if in_feet else None  # type: ignore[union-attr]


def _sized(row: list[Reading]) -> Reading | None:
    """The longest size or number at a place."""
    sizes = [r for r in row if r.kind in _KINDS and r.sure >= 0.7]
    return max(sizes, key=lambda r: (r.end, r.kind != "number", r.sure), default=None)


def _part(start: int, end: int, whole: Reading, share: Fraction) -> Reading:
    value = whole.value
    assert isinstance(value, Quantity)
    sort: type[Quantity] = next(sort for sort in (Length, Area, Number) if isinstance(value, sort))
    return Reading(whole.kind, start, end, sort(value.value * share, value.unit), min(SURE, whole.sure))
