"""The question before, said over with one quantity in the place of another.

What was given as a list or a sum ("6 foot 4 plus 2 foot 8", "six at 38", "450 mm in inches") has no parameter of its own
for each number in it. So the words of the question are said over with the new number where the old one stood, and read
as any question is; it is a change only if that changes one given and leaves all others as they were.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.ways import ways_of
from intents.expressions import expression
from intents.islands import light_words
from intents.matcher import read
from intents.question import Heard, Question
from intents.reading import Reading
from intents.talk import heard_in, numbers_in
from intents.tokens import Token, tokenize
from solvers.quantities import Count, Length, Number, Pitch, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

TEENS = {13 + n: 30 + 10 * n for n in range(7)}  # thirteen and thirty … nineteen and ninety are heard for each other
NEAR, FAR = 2, 2  # a new number within twice of an old one, and twice as far from every other, is for that one
_FEET, _FAR_OFF = expression(r"\b(?:feet|foot|ft)\b|['′’]", re.IGNORECASE), 4
SAID_AS = dict(zip("one two three four five six seven eight nine ten eleven twelve feet".split(),
                   [*map(str, range(1, 13)), "foot"], strict=True))  # fmt: skip
ALIKE = 2  # words more that a number said again shares with the one it corrects than with any other
BESIDE = 3  # words between a name and its number, at most
LED_BY = frozenset("at on for in from of by every over under with to past".split())  # words that tell one number from another
OF_THEM = expression(r"\s*\bof (?:them|those|these|em)\b", re.IGNORECASE)
UNIT_WORDS = {
    "in": "inches", "ft": "feet", "mm": "mm", "cm": "cm", "m": "metres", "deg": "degrees", "percent": "percent",
    "ft2": "square feet", "m2": "square metres", "degF": "degrees F", "degC": "degrees C", "lb": "pounds", "kg": "kg",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Place:
    """A number of a line: its value, its words, and where it stands (tokens and characters)."""

    value: Quantity
    words: tuple[str, ...]
    first: int
    after: int
    start: int
    end: int


def places_of(text: str) -> list[Place]:
    """The numbers of a line, in the order said."""
    tokens, _ = heard_in(text)
    return [
        Place(row.value, tuple(t.text for t in tokens[row.start : row.end]), row.start, row.end,
              tokens[row.start].start, tokens[row.end - 1].end)
        for row in numbers_in(text) if isinstance(row.value, Quantity) and not _thing(tokens, row)
    ]  # fmt: skip


def whole(words: str) -> Place | None:
    """The one number that these words are, and nothing else."""
    places = places_of(words)
    return places[0] if len(places) == 1 and (places[0].start, places[0].end) == (0, len(words)) else None


def as_length(told: Quantity, unit: str) -> Length:
    """A length as it was told; a bare number in this unit."""
    return told if isinstance(told, Length) else Length(told.value, unit)


def number_in(shape: re.Pattern[str], text: str, name: str = "n") -> str:
    """The words in which a line of this shape tells its one number; "" where it has another shape, or those tell more or less."""
    found = shape.fullmatch(text)
    return found[name] if found is not None and whole(found[name]) else ""


def _thing(tokens: Sequence[Token], row: Reading) -> bool:
    """Whether what reads as a length is none: the foot of a ladder, 38 mm to inches."""
    one = row.end == row.start + 1 and tokens[row.start].text in ("foot", "inch")
    return one or (tokens[row.start].text in ("to", "too", "for") and row.start > 0)


def said_over(
    c: Conversation, last: Asked, rest: str, old: str, corrects: bool, lead: str
) -> tuple[Question, str] | None:  # fmt: skip
    """The last question with the one number of `rest` in its place, and its words; None where its place can't be told."""
    counted, rest = OF_THEM.search(rest), OF_THEM.sub("", rest)
    said = places_of(rest)
    if len(said) != 1 or not last.text:
        return None
    new = said[0]
    held = [place for place in places_of(last.text) if _takes_the_place(new.value, place.value)]
    held = [place for place in held if isinstance(place.value, Number)] if counted else held
    counts = [given.value.text for given in last.givens.values() if isinstance(given.value, Count)] if counted else []
    held = [place for place in held if last.text[place.start : place.end] in counts] or held
    place = _place_for(new, held, last.text, rest, old, corrects, lead)
    if place is None:
        return None
    text = last.text[: place.start] + _in_the_unit(new, place, rest) + last.text[place.end :]
    more = _changing_one(c, last, text)
    return (more, text) if more else None


def _takes_the_place(new: Quantity, old: Quantity) -> bool:
    bare = isinstance(new, Number) and not isinstance(old, Pitch)  # a slope of 30 said bare may be degrees or in twelve
    return type(new) is type(old) or bare or isinstance(old, Number)


def _in_the_unit(new: Place, old: Place, rest: str) -> str:
    """The new number's words; said bare, in the unit of the old one."""
    words = rest[new.start : new.end]
    bare = isinstance(new.value, Number) and not isinstance(old.value, Number)
    unit = "ft" if of_feet(new.value.value, old.value, " ".join(old.words)) else old.value.unit
    return f"{words} {UNIT_WORDS.get(unit, '')}".strip() if bare else words


def of_feet(number: Fraction, before: Quantity, text: str) -> bool:
    """Whether a bare number is of feet, in place of what was said in feet and inches: 16 is nearer to 11'6 as feet than as
    inches, and far from it as inches."""
    if not isinstance(before, Length) or before.unit != "in" or not _FEET.search(text) or min(number, before.value) <= 0:
        return False
    as_feet, as_inches = (max(size / before.value, before.value / size) for size in (12 * number, number))
    return as_feet <= NEAR and as_inches >= _FAR_OFF


def _changing_one(c: Conversation, last: Asked, text: str) -> Question | None:
    """The question that a text is, where it is of the same topic, whole, and one given differs."""
    best = next((q for q in read(text, c.parameters).questions[:1] if q.score > 0), None)
    if best is None or best.topic != last.topic.name or not best.complete or best.lacking:
        return None
    ways = ways_of(best, last.topic.parameters)
    if len(ways) != 1:
        return None
    before = {name: given.value for name, given in last.givens.items() if given.source in ("asked", "earlier")}
    now = {name: given.value for name, given in ways[0].items()}
    changed = [name for name in now if not same_value(before.get(name), now[name])]
    if before.keys() != now.keys() or len(changed) != 1:
        return None
    was, is_now = before[changed[0]], now[changed[0]]
    if isinstance(was, tuple) and isinstance(is_now, tuple) and len(was) != len(is_now):
        return None  # the words do not tell the foam that was put to them since
    heard = best.givens.get(changed[0])
    if heard is None:
        return None  # another way to hand them out has it
    return Question(best.topic, {changed[0]: Heard(now[changed[0]], heard.start, heard.end, heard.text)}, 1.0)


def same_value(one: object, other: object) -> bool:
    """Whether two values are of one size, however they were said."""
    if isinstance(one, Quantity) and isinstance(other, Quantity):
        return (one.value, one.unit) == (other.value, other.unit)
    return one == other


# ── which number gives way ──


def _place_for(
    new: Place, held: list[Place], text: str, rest: str, old: str, corrects: bool, lead: str
) -> Place | None:  # fmt: skip
    """The one number that the new one is for, by all that tells them apart; none where several are left."""
    replaced = [row.value.value for row in numbers_in(old) if isinstance(row.value, Quantity)]
    gives_way = [place for place in held if place.value.value in replaced]
    named = None if gives_way else _beside_its_name(held, text, rest)
    held = gives_way or held
    if named is not None:
        held = named
    for test in _tests(new, held, text, corrects, word_before(new, rest, lead)):
        fitting = [place for place in held if test(place)]
        held = fitting or held
        if len(held) == 1:
            return held[0]
    ranked = sorted(held, key=lambda place: _ratio(place.value, new.value))
    if len(ranked) < 2 or new.value.value <= 0 or any(place.value.value <= 0 for place in ranked):
        return ranked[0] if len(ranked) == 1 else None
    first, second = (_ratio(place.value, new.value) for place in ranked[:2])
    return ranked[0] if first <= NEAR and second >= FAR * first else None


def _tests(
    new: Place, held: list[Place], text: str, corrects: bool, led: list[str]
) -> list[Callable[[Place], bool]]:  # fmt: skip
    words = [token.text for token in tokenize(text)]
    alike = {place: shared_words(place.words, new.words) for place in held}
    ranked = sorted(alike.values(), reverse=True)
    clear = ranked[0] if len(ranked) > 1 and ranked[0] - ranked[1] >= ALIKE else 99
    tests: list[Callable[[Place], bool]] = []
    if corrects:
        tests += [lambda place: twins(place.value.value, new.value.value), lambda place: alike[place] >= clear]
    tests += [
        lambda place: place.value.unit == new.value.unit,
        lambda place: bool(led) and words[max(0, place.first - 1) : place.first] == led,
    ]
    return tests


def word_before(number: Place, rest: str, lead: str) -> list[str]:
    """The word that a number of a change is said after, there or in what led to it: the at of "and at 14"."""
    found = [token.text for token in tokenize(rest[: number.start])] or lead.lower().split()
    return [word for word in found[-1:] if word in LED_BY]


def _beside_its_name(held: Sequence[Place], text: str, rest: str) -> list[Place] | None:
    """The numbers that stand beside a word of the change: the battens of "20 mm battens". None where no such word is there.

    A name the question did not have is no place at all.
    """
    light = light_words()
    inside = {at for place in places_of(rest) for at in range(place.first, place.after)}
    names = {stem(token.text) for at, token in enumerate(tokenize(rest))
             if at not in inside and token.text not in light and token.text.isalpha() and len(token.text) > 1}  # fmt: skip
    if not names:
        return None
    words = [stem(token.text) for token in tokenize(text)]
    at = [i for i, word in enumerate(words) if word in names]
    near: list[tuple[int, Place]] = []
    for place in held:
        gaps = [min(abs(i - place.after), abs(place.first - 1 - i)) for i in at]
        if gaps and min(gaps) < BESIDE:
            near.append((min(gaps), place))
    least = min((gap for gap, _ in near), default=0)
    return [place for gap, place in near if gap == least]


def stem(word: str) -> str:
    """A word without the s of several."""
    return word.removesuffix("s") if len(word) > 3 else word


def twins(one: object, other: object) -> bool:
    """Whether two numbers are heard for each other: thirteen and thirty."""
    return TEENS.get(one) == other or TEENS.get(other) == one  # type: ignore[call-overload]


def shared_words(one: Sequence[str], other: Sequence[str]) -> int:
    """How many words two numbers have in common from both ends: 5 3/8 and 5 5/8, 3 foot 6 and three foot seven."""
    one, other = ([SAID_AS.get(word, word) for word in words] for words in (one, other))
    first = 0
    while first < min(len(one), len(other)) and one[first] == other[first]:
        first += 1
    last = 0
    while last < min(len(one), len(other)) - first and one[-1 - last] == other[-1 - last]:
        last += 1
    kept = [*one[:first], *(one[len(one) - last :] if last else ())]
    return sum(word.isalnum() for word in kept)


def _ratio(old: Quantity, new: Quantity) -> float:
    value = new.beside(old)
    return times_apart(value, old.value) if old.value > 0 and value > 0 else float("inf")


def times_apart(one: Fraction, other: Fraction) -> float:
    """How many times the larger of two numbers over nothing is the smaller."""
    return float(max(one / other, other / one))
