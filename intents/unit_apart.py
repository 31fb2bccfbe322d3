"""A unit said apart from its numbers: "75 up, 30 out, 20 down. Millimetres.", "225 wide (mm)", "metres: 29".

The unit is put beside every number it was meant for, so that whatever reads the line after this sees it said the plain way.
A unit that is only asked for ("23 kg. Pounds?", "in mm?") is no number's. One look at each word; more where a unit stands free.
"""

from __future__ import annotations

from itertools import takewhile

from intents.lengths import METRES, PLAIN
from intents.measures import readings
from intents.number_words import SMALL, TAPE
from intents.reading import Reading
from intents.tokens import Token, literal
from solvers.quantities import Number

_FEET, _INCHES = frozenset(("foot", "feet", "ft")), frozenset(("inch", "inches", "ins"))
# Each unit word, and how the unit is put beside a number.
_UNITS = (
    dict.fromkeys(_FEET, "ft")
    | dict.fromkeys(_INCHES, "inches")
    | dict.fromkeys(METRES, "m")
    | {word: unit for word, (unit, size, _) in PLAIN.items() if size == 1}
)
_ASKED = frozenset("pounds kilos kilograms kg lbs gallons litres liters fahrenheit celsius".split())
_STOPS = frozenset((",", ".", ";", ":", "(", ")", "-", "?", "!", ""))
_ALL = frozenset("all everything dimensions measurements measures sizes numbers figures units unit both them every".split())
_SAYING = _ALL | frozenset("in is are the that's thats these those my of being given each".split())
_BEING = frozenset(("being", "is", "are"))
_POINTS = frozenset(("the", "that", "those", "these"))
_SIDES = frozenset("wide high long deep tall thick across up down out face".split())
_NAMED = frozenset("pitch angle slope corner waste degrees roof spring nearest top".split())  # a number after one has no length
_SHARED = frozenset("divided divide split multiplied multiply cut".split())  # by 3
_FACTORS = frozenset("times into over ÷ /".split())
_LINKS = frozenset("of is at a an : =".split())
_ANGLES = frozenset("setting settings pitch miter mitre corner corners twelve".split())  # after a number, which has no length
_COUNTING = frozenset("at @ of no nr off pcs ea each courses pieces parts sided in".split())  # after a number: it counts
_NO_THINGS = frozenset("across less plus minus times comes goes runs leaves thats this whats".split())
_BETWEEN = frozenset(", and & by × + wide high long deep up out down".split())  # between the numbers after "in mm:"
_OTHERS = frozenset("length pitch angle area percent money weight volume temperature".split())
_OPENINGS = frozenset("window windows door doors opening openings".split())
_MOST_SIDE, _LEAST_INCHES = {"ft": 20, "m": 10}, 12  # of a side of an opening
_LEAST_WORDS = 2  # beside the numbers: with fewer, the unit is what they are to be turned into
_NAMING = 4  # words before a bracket
_MOST_COUNT = 12  # "4 × 800" counts, "90 × 45" does not


def beside_numbers(tokens: list[Token]) -> list[Token]:
    """The tokens with a unit that stands apart put beside its numbers."""
    words = [token.text for token in tokens]
    if "(" in words:
        tokens = _exactly(tokens, words)
        words = [token.text for token in tokens]
    if len(words) > 3 and words[-1] == "?" and words[-3] == "." and (words[-2] in _UNITS or words[-2] in _ASKED):
        return [*tokens[:-3], Token("in", tokens[-3].start, tokens[-3].end), *tokens[-2:]]  # 23 kg. Pounds?
    for place, word in enumerate(words):
        if word in _UNITS and not _follows_number(words, place):
            spread = _spread(tokens, words, place)
            if spread is not None:
                return spread
    return tokens


def _exactly(tokens: list[Token], words: list[str]) -> list[Token]:
    """A round number made the exact one that is given in brackets after it: "ten ounce tubes (10.1)"."""
    for place in range(1, len(words) - 2):
        if words[place] != "(" or words[place + 2] != ")" or "." not in words[place + 1] or not literal(words[place + 1]):
            continue
        near = round(float(words[place + 1]))
        for before in range(max(0, place - _NAMING), place - 1):
            if words[before] == str(near) or SMALL.get(words[before]) == near:
                exact = Token(words[place + 1], tokens[before].start, tokens[before].end)
                return [*tokens[:before], exact, *tokens[before + 1 : place], *tokens[place + 3 :]]
    return tokens


def _follows_number(words: list[str], place: int) -> bool:
    return place > 0 and (literal(words[place - 1]) or words[place - 1] in ("per", "a", "an", "square", "sq", "cubic", "to"))


def _spread(tokens: list[Token], words: list[str], place: int) -> list[Token] | None:
    """The line with the unit at `place` beside its numbers and gone from where it stood; None where it tells none."""
    start, end = _clause(words, place)
    before, after = words[start - 1] if start else "", words[end] if end < len(words) else ""
    clause = frozenset(words[start:end]) - {words[place]}
    if after in (":", "=") and end == place + 1:
        return _given(tokens, words[place], _following(tokens, end + 1), range(place - (words[place - 1] == "in"), end))
    if before == "(" and after == ")":
        if words[end + 1 : end + 2] == [":"]:
            return _given(tokens, words[place], _following(tokens, end + 2), range(start - 1, end + 1))
        if clause <= {"in"}:
            return _given(tokens, words[place], _bare(tokens, range(start))[-1:], range(start - 1, end + 1))
    if clause <= _SAYING and (clause & _ALL or (not clause and after != "?" and len(tokens) > end - start)):
        return _announced(tokens, words, place, (start, end), clause)
    return _named(tokens, words, place)


def _clause(words: list[str], place: int) -> tuple[int, int]:
    """Where the stretch between stops that a place is in starts and ends; at most a few words of it are looked at."""
    start, end = place, place + 1
    while start > 0 and words[start - 1] not in _STOPS and (place - start < 6):
        start -= 1
    while end < len(words) and words[end] not in _STOPS and words[end] != "=" and end - place < 6:
        end += 1
    return start, end


def _announced(
    tokens: list[Token], words: list[str], place: int, told: tuple[int, int], clause: frozenset[str]
) -> list[Token] | None:
    """A unit in a clause of its own: of all numbers, of both, or of those that went before it."""
    start, end = told
    others = [word for word in (*words[:start], *words[end:]) if word.isalpha() and word not in _SAYING]
    if len(others) < _LEAST_WORDS:
        return None
    before, after = _bare(tokens, range(start)), _bare(tokens, range(end, len(tokens)))
    if "both" in clause:
        return _given(tokens, words[place], before[-2:] or after[:2], range(start, end))
    numbers = [*before, *after] if clause & _ALL else before or after
    if not clause & _ALL and not _OPENINGS.isdisjoint(words) and _asked_in(words[place], numbers):
        return None
    return _given(tokens, words[place], numbers, range(start, end))


def _asked_in(unit: str, numbers: list[Reading]) -> bool:
    """Whether a unit is what the answer is wanted in, as no opening is so big or so small in it: doors 30 x 80, trim, feet."""
    sizes = [number.value.value for number in numbers if isinstance(number.value, Number)]
    name = _UNITS[unit]
    large = bool(sizes) and name in _MOST_SIDE and max(sizes) > _MOST_SIDE[name]
    return large or (bool(sizes) and name == "inches" and max(sizes) < _LEAST_INCHES)


def _named(tokens: list[Token], words: list[str], place: int) -> list[Token] | None:
    """The unit of one number, said later on: "96 less 40 mm, the 96 being inches"."""
    at = place - 1 - (words[place - 1] == "in")
    if at < 2 or words[at] not in _BEING or words[at - 2] not in _POINTS or not literal(words[at - 1]):
        return None
    same = [r for r in _bare(tokens, range(at - 2)) if words[r.start : r.end] == [words[at - 1]]]
    return _given(tokens, words[place], same[:1], range(at - 2 - (words[at - 3] == ","), place + 1)) if same else None


def _bare(tokens: list[Token], within: range) -> list[Reading]:
    """The numbers within some places that have no unit and count nothing."""
    words = [*(token.text for token in tokens), "", ""]
    found: list[Reading] = []
    at = within.start
    chart = readings(tokens)
    while at < within.stop:
        row = chart[at]
        other = max((r.end for r in row if r.kind in _OTHERS and r.sure >= 0.5), default=0)
        number = max((r for r in row if r.kind == "number" and r.sure >= 0.5), key=lambda r: r.end, default=None)
        if number is not None and number.end >= other and number.end <= within.stop and _is_size(words, number):
            found.append(number)
        at = max(other, number.end if number else 0, at + 1)
    return found


def _is_size(words: list[str], number: Reading) -> bool:
    """Whether a bare number can be a length: it counts no things and is no angle or waste."""
    after, before = words[number.end], number.start - 1
    value = number.value.value if isinstance(number.value, Number) else 0
    if after == "times" and _few(words, number.end - 1) and _as_digits(words[number.end + 1]) > _MOST_COUNT:
        return False  # three times 412
    if before > 0 and words[before] == "times" and _few(words, before - 1) and value > _MOST_COUNT:
        return True
    if before >= 0 and (words[before] in _FACTORS or (words[before] == "by" and not _SHARED.isdisjoint(words[:before]))):
        return False
    while before >= 0 and words[before] in _LINKS:
        before -= 1
    things = len(after) > 3 and after.endswith("s") and after not in _NO_THINGS and after not in _UNITS
    things = things or (after in _OPENINGS and 0 < value < _MOST_COUNT)  # 1 door 32 x 80
    counts = after in _COUNTING | _ANGLES or things
    small = isinstance(number.value, Number) and number.value.value < _MOST_COUNT
    times = after == "×" and small and literal(words[number.end + 1]) and int(float(words[number.end + 1])) >= 10 * _MOST_COUNT
    one = words[number.start] == "one" and number.end == number.start + 1
    return not (counts or times or one or (before >= 0 and words[before] in _NAMED))


def _few(words: list[str], at: int) -> bool:
    """Whether a word is a number so small that it may count what is said after times."""
    return words[at] in SMALL or 0 < _as_digits(words[at]) < _MOST_COUNT


def _as_digits(word: str) -> float:
    return float(word) if literal(word) and word.replace(".", "", 1).isdigit() else 0


def _following(tokens: list[Token], start: int) -> list[Reading]:
    """The numbers in a row from a place on."""
    words = [token.text for token in tokens]
    found = _bare(tokens, range(start, len(tokens)))
    places = [start, *(number.end for number in found)]
    joined = takewhile(lambda pair: set(words[pair[0] : pair[1].start]) <= _BETWEEN, zip(places, found, strict=False))
    return [number for _, number in joined]


def _given(tokens: list[Token], unit: str, numbers: list[Reading], gone: range) -> list[Token] | None:
    """The tokens with the unit after each number, and without those that told it."""
    name = _UNITS[unit]
    fractions = (r.value.value.denominator for r in numbers if isinstance(r.value, Number))
    if not numbers or (name in ("mm", "cm") and any(size > 1 and size in TAPE for size in fractions)):
        return None
    ends = {number.end - 1 for number in numbers}
    found: list[Token] = []
    for at, token in enumerate(tokens):
        if at not in gone:
            found.append(token)
        if at in ends:
            found.append(Token(name, token.end, token.end))
    return found
