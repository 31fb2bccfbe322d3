"""Lengths: feet and inches in all the ways they are said and written, millimetres to metres, thousandths and yards."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.length_words import AFTER_ONE, COVERS, NOUNS, ONE_WAY, OTHER_UNITS, OTHER_USES, ROLES, SMALL
from intents.number_words import TAPE
from intents.numbers import Line, Piece, fractions
from intents.reading import Head, Reading
from intents.tokens import literal
from solvers.quantities import Length

FEET = frozenset(("foot", "feet", "ft", "'", "footer", "footers"))
FOOTERS = frozenset(("footer", "footers"))
INCHES = frozenset(("inch", "inches", "in", '"', "ins"))
METRES = frozenset(["m", "metre", "metres", "meter", "meters"])
# word: (unit, how many of it, how sure)
PLAIN = (
    dict.fromkeys(["mm", "millimetre", "millimetres", "millimeter", "millimeters"], ("mm", Fraction(1), 1.0))
    | dict.fromkeys(("mil", "mils"), ("mm", Fraction(1), 0.6))  # a mil is a millimetre on one coast, a thou on another
    | dict.fromkeys(["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"], ("cm", Fraction(1), 1.0))
    | dict.fromkeys(("thou", "thous"), ("in", Fraction(1, 1000), 1.0))
    | dict.fromkeys(["yard", "yards", "yd", "yds"], ("ft", Fraction(3), 1.0))
)
_METRIC = METRES | {word for word, (unit, size, _) in PLAIN.items() if unit in ("mm", "cm") and size == 1 and word[:3] != "mil"}
_WARM = frozenset("f fahrenheit c celsius centigrade k kelvin kelvins".split())  # 5 m | 30 K
DEGREES = frozenset(("deg", "degs", "degree", "degrees"))
UNITS = FEET | INCHES | METRES | frozenset(PLAIN)
_MIDDLE = frozenset("middle centre center".split())  # it rises 150 | in the middle
_JOINED = frozenset(("and", "&", ","))  # between feet and inches, these need the word inches
_JOINTS = _JOINED | {"-"}
_PARTED = frozenset(("equal", "even", "parts", "pieces", "bays"))  # after how many
_SQUARE, _SQUARED = frozenset("squares sqft sqm sf m2 ft2".split()), frozenset("feet foot ft metres meters m footage".split())
_AFTER_PARTS = UNITS | OTHER_UNITS | SMALL | COVERS  # so many of these are no part of the length before them
_EDGE, MOST_FROM_EDGE = frozenset(("from", "off", "past")), 50  # so many and more inches in from an edge nobody counts
_ALONE = 0.8  # "a foot" may be "per foot"
_SIDES = frozenset(("deep", "wide", "thick", "high", "tall"))
MOST_BITE = 9
MOST_SPOKEN, MOST_FEET = 99, 999  # feet of a pair with neither said; of one written 122-6
PAIR = 0.4  # how sure a spoken pair of feet and inches is
LEAST_MM = 40  # in from an end; so much and more is told in millimetres where metres are spoken of
LEAST_MIL = 61  # no film of a roof is thicker in thousandths: from here on a mil is a millimetre
_RULES = frozenset(("tape", "tapes", "ruler", "rule", "scale"))  # "an inch tape" is what it is read with
_WHOSE = frozenset("it the my that this them our your each".split())  # the foot of the ladder
_SUBUNITS = {"cm": Fraction(1, 100), "mm": Fraction(1, 1000)}


_AFTER_AN_INCH = frozenset(
    ("", ",", ".", "?", ";", "corner", "across", "long", "wide", "high", "tall", "diagonally", "so", "but", "end", "overall")
)


def lengths(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """The lengths made of a head at i and the unit after it."""
    word = line.words[head.unit]
    if word in FEET:
        yield from _feet(line, i, head)
    elif word in INCHES:
        yield from _inches(line, i, head)
    elif word in METRES:
        yield from _metres(line, i, head)
    elif word in PLAIN:
        unit, size, sure = PLAIN[word]
        sure = 1.0 if head.value >= LEAST_MIL else sure
        also = (Length(head.value / 1000, "in"),) if sure < 1 else ()
        if word in _YARDS:
            yield from _yards_and_feet(line, i, head)
        yield _reading(i, head.unit + 1, head.value * size, unit, head.sure * sure, also)


def _yards_and_feet(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Eight yards and a foot, 8 yards 1 foot."""
    words = line.words
    at = head.unit + 1 + (words[head.unit + 1] == "and")
    if words[at] in ("a", "one") and words[at + 1] == "foot":
        yield _reading(i, at + 2, head.value * 3 + 1, "ft", head.sure)
    for piece in line.pieces(at):
        if words[piece.end] in FEET and 0 < piece.value < 3:
            yield _reading(i, piece.end + 1, head.value * 3 + piece.value, "ft", head.sure)


_YARDS = frozenset(("yard", "yards", "yd", "yds"))
_THICK_LAYERS = frozenset(
    "bite penetration foam insulation ply plywood osb polyiso eps xps rigid sheathing strapping strap furring batten battens mesh"
    " board boards siding cladding drywall decking deck shiplap plank planks trim".split()
)
_AFTER_LAYERS = frozenset((*",?.;:&+", "and", "then", "plus", "over", "through", "on", "with", "are", "is"))
_ENDED = frozenset(("", ",", ".", ";"))


def bare_lengths(line: Line, i: int) -> Iterator[Reading]:
    """Lengths whose unit means one of itself: foot and a half, inch and three eighths."""
    word = line.words[i]
    before = line.pieces(i - 1) if i else ()
    led = bool(before) or line.words[i - 1] in ("an", "a", "per", "of")
    if word == "inch" and not led and line.words[i + 1] in _SIDES:
        yield _reading(i, i + 1, Fraction(1), "in", 0.9)  # channel, inch deep
    if word == "inch" and not led and line.words[i + 1] in _THICK_LAYERS and (not i or line.words[i - 1] in _AFTER_LAYERS):
        yield _reading(i, i + 1, Fraction(1), "in", 0.9)  # 5/8 siding, inch foam
    after_layer = i > 1 and line.words[i - 1] == "," and line.words[i - 2] in _THICK_LAYERS
    if word == "inch" and after_layer and line.words[i + 1] in _ENDED:
        yield _reading(i, i + 1, Fraction(1), "in", 0.9)  # skirt board, inch.
    whose = line.words[i + 2] in _WHOSE or (line.words[i + 2] in ("a", "an") and i > 0 and line.words[i - 1] == "the")
    if word in ("foot", "inch") and not led and line.words[i + 1] == "of" and not whose:
        yield _reading(i, i + 1, Fraction(1), "ft" if word == "foot" else "in", 0.9)  # 5/12, foot of overhang
    if word == "foot" and not led and line.words[i + 1] in ("overhang", "overhangs", "wide", "deep"):
        yield _reading(i, i + 1, Fraction(1), "ft", 0.9)  # a gable 22 feet wide, foot overhang
    if word == "foot" and line.words[i - 1] == "every" and i:
        yield _reading(i, i + 1, Fraction(1), "ft", 0.9)
    if word not in ("foot", "inch", "metre", "meter") or not fraction_after(line, i + 1):
        return
    head = Head(i, Fraction(1), 0.3 if before and before[-1].end == i else 1.0, form="one")
    for reading in lengths(line, i, head):
        if reading.end > i + 1:
            yield reading


def spoken_pairs(line: Line, i: int) -> Iterator[Reading]:
    """12-6, 12 6 1/2, twelve six and a half: feet and inches with neither said, so never sure."""
    words = line.words
    for feet in line.pieces(i):
        top, size = feet.value.numerator, feet.value.denominator
        if feet.form != "whole" or feet.sure <= 0.5 or not size <= top <= MOST_FEET * size:
            continue
        dashed = words[feet.end] == "-" and line.tight(feet.end - 1) and line.tight(feet.end)
        if top > MOST_SPOKEN * size and not (dashed and feet.digits):
            continue
        for inches in line.pieces(feet.end + 1 if dashed else feet.end):
            after = inches.end
            mixture = feet.digits != inches.digits and (inches.form == "whole" or inches.value < 1)  # 10 two windows
            if (
                mixture
                or inches.sure <= 0.5
                or not _can_be_inches(line, inches)
                or words[after] in UNITS
                or words[after - 1] in ("eights", "sixteens")  # five eights is five eighths
                or _goes_on(line, after)
            ):
                continue
            sure = 0.6 if dashed else PAIR if inches.form == "whole" else 0.6 if inches.digits else 0.5
            yield _reading(i, inches.end, feet.value * 12 + inches.value, "in", min(sure, feet.sure))


def _reading(
    start: int, end: int, value: Fraction, unit: str, sure: float = 1.0, also: tuple[Length, ...] = ()
) -> Reading:
    return Reading("length", start, end, Length(value, unit), sure, also)


def _feet(line: Line, i: int, head: Head) -> Iterator[Reading]:
    end = head.unit + 1
    others = tuple(Length(other, "ft") for other in head.also)
    longer: list[Reading] = []
    if head.form in ("whole", "one") and line.words[head.unit] not in FOOTERS:  # a 16 footer, five of 27 out of it
        longer += _feet_and_inches(line, i, head)
        longer += _feet_and_part(line, i, head)
    yield from longer
    if line.words[head.unit] in FOOTERS:  # the sticks of it: 16 | footers
        yield _reading(i, head.unit, head.value, "ft", head.sure, others)
    certain = any(reading.sure >= 0.5 for reading in longer)
    likely = 0.5 if certain else _ALONE if head.form == "one" else 1.0
    yield _reading(i, end, head.value, "ft", head.sure * likely, others)


def _feet_and_part(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """A foot and a half is of the foot; three eighths after feet are of an inch; between them, both are kept."""
    part = fraction_after(line, head.unit + 1)
    if not part or line.words[part.end - 2 : part.end] == ["/", "12"]:  # 25 ft and 10/12: no tape has twelfths
        return
    sign = -1 if head.value < 0 else 1
    of_foot = Length(head.value + sign * part.value, "ft")
    of_inch = Length(head.value * 12 + sign * part.value, "in")
    if part.value.denominator > 4:
        yield Reading("length", i, part.end, of_inch, 0.9 * head.sure)
    elif part.value.denominator == 3 or (abs(head.value) == 1 and part.value == Fraction(1, 2)):  # no tape has thirds
        yield Reading("length", i, part.end, of_foot, head.sure)
    else:
        yield Reading("length", i, part.end, of_foot, 0.7 * head.sure, (of_inch,))


def _feet_and_inches(line: Line, i: int, head: Head) -> Iterator[Reading]:
    words, at = line.words, head.unit + 1
    joint = words[at] if words[at] in _JOINTS else ""
    start = at + 1 if joint else at
    sign = -1 if head.value < 0 else 1
    an = at + (words[at] == "and")
    if words[an : an + 2] == ["an", "inch"]:  # 30 foot and an inch corner to corner, nine foot an inch and a half
        part = fraction_after(line, an + 2)
        inches, end = (1 + part.value, part.end) if part else (Fraction(1), an + 2)
        if words[end] in _AFTER_AN_INCH:
            yield _reading(i, end, head.value * 12 + sign * inches, "in", head.sure)
    for piece in line.pieces(start):
        if piece.value < 0:
            continue
        unit = piece.end + 2 if words[piece.end : piece.end + 2] == ["of", "an"] else piece.end
        # twelve foot six in metres; one and a quarter in six equal
        into = words[unit] == "in" and (words[unit + 1] in UNITS or words[unit + 2] in _PARTED)
        if _of_its_own(line, piece, unit, joint):
            continue
        if piece.value == Fraction(1, 2) and joint and words[unit] == "in" and words[unit + 1] in ("from", "past"):
            continue  # a foot and a half | in from the end
        if words[unit] in INCHES and not into:
            preposition = words[unit] == "in" and not line.tight(unit - 1) and _number_next(line, unit + 1)
            if preposition and words[unit + 1] in ("12", "twelve") and not _feet_next(line, unit + 1):  # run 14 ft, 4 in 12
                continue
            if preposition and not joint and _feet_next(line, unit + 1):  # climbs 4 foot 1 in 12 foot 3: inches either way
                yield _reading(i, piece.end, head.value * 12 + sign * piece.value, "in", 0.95 * piece.sure * head.sure)
            apart = joint == "," or (joint == "and" and piece.value > 12)  # 8 foot | and 30 inches
            most = 0.3 if preposition or apart else 0.7 if piece.value >= 12 else 1.0
            for end, inches, sure in _with_fraction(line, piece, unit + 1):
                yield _reading(i, end, head.value * 12 + sign * inches, "in", min(most, sure) * head.sure)
        elif _can_be_inches(line, piece) and not _goes_on(line, piece.end) and joint not in _JOINED:
            typed = words[head.unit] == "'" and line.tight(head.unit) and words[piece.end].isalpha()  # 3 x 6'8 two windows
            sure = min(0.9 if typed else _inches_unsaid(line, piece), piece.sure) * head.sure
            yield _reading(i, piece.end, head.value * 12 + sign * piece.value, "in", sure)


def _of_its_own(line: Line, piece: Piece, unit: int, joint: str) -> bool:
    """Whether what is said after feet is a size of its own, as the word after it tells, and not the inches."""
    words = line.words
    if words[unit] not in INCHES:
        return False
    at = unit + 1 + (words[unit + 1] in ("to", "of")) + (words[unit + 2] == "the")
    if joint == ",":
        named = words[unit + 1].isalpha() and words[unit + 1] not in AFTER_ONE
        plain = words[unit] == "inch" and piece.value > 1 and named
        return words[at] in ROLES or plain or (piece.value < 1 and words[unit + 1] in ("wide", "long", "high"))
    if piece.value < 1 and words[at] in _SIDES:  # 80 feet, half an inch wide and a quarter deep
        then = at + 1 + (words[at + 1] in ("by", "×", "x", "and", ","))
        return any(0 < other.value < 1 for other in (*line.pieces(then), *fractions(line, then)))
    return words[at] in SMALL or (piece.value >= 12 and words[at] in ROLES)


def _inches_unsaid(line: Line, piece: Piece) -> float:
    """How sure it is that a number after feet is the inches, when the word inches is not said."""
    after = line.words[piece.end]
    if after in SMALL or after == "waste":
        return 0.3  # 12 foot 0 waste
    if after in ("on", "over") and not _number_next(line, piece.end + 1):
        return 0.6  # 38 ft 6 on the ramp wall
    if after in ("over", "across") and piece.value < 12 and _feet_next(line, piece.end + 1):
        return 0.9  # rises 3 foot 2 over 11 foot 4
    if after in OTHER_USES:
        return 0.6 if after == "in" and line.words[piece.end + 1] not in ("12", "twelve") else 0.3
    if _number_next(line, piece.end) and line.words[piece.end : piece.end + 2] not in ONE_WAY:
        return 0.8 if line.words[piece.end + 1 : piece.end + 3] == ["/", "12"] else 0.3
    if piece.value == 1 and after.isalpha() and after not in AFTER_ONE:
        return 0.4  # "8 ft one side" counts sides
    if after in ("by", "×") and piece.value < 1 and any(0 < other.value < 1 for other in line.pieces(piece.end + 1)):
        return 0.2  # 120 feet | 1/4 by 1/4
    if after in ("by", "×"):  # three 12 foot 2 by 6s
        if piece.value < 1 and any(part.value < 1 for part in fractions(line, piece.end + 1)):
            return 0.3  # 100 foot 1/4 by 1/4
        tight = line.tight(piece.end - 1) and line.tight(piece.end)  # 8 foot 1x4
        return 0.3 if tight and piece.value in (1, 2) and line.words[piece.end + 2] not in UNITS else 0.7
    return 0.6 if piece.value < 1 and piece.form == "fraction" else 0.9


def _with_fraction(line: Line, piece: Piece, end: int) -> Iterator[tuple[int, Fraction, float]]:
    """The inches of a piece, and with the fraction said after them: "six inches and a half"."""
    after = fraction_after(line, end)
    if after and piece.form == "whole":
        yield after.end, piece.value + after.value, 1.0
    yield end, piece.value, 0.5 if after and piece.form == "whole" else 1.0


def fraction_after(line: Line, at: int) -> Piece | None:
    """The fraction after a unit and "and", unless it has a unit of its own."""
    if line.words[at] not in ("and", "&"):
        return None
    for part in fractions(line, at + 1):
        if line.words[part.end] in ("a", "an") and line.words[part.end + 1] in UNITS:
            continue  # two inch and | half an inch
        after = line.words[part.end]  # an inch and five eighths in the stud, an inch and a half in 4 feet
        into = line.words[part.end + 1 : part.end + 3] == ["to", "the"]
        place = line.words[at - 1] == "inch" and not part.digits  # inch and a quarter in: no two lengths are told so
        place = place or into or line.words[part.end + 1] in (*NOUNS, "from", "past") or _number_next(line, part.end + 1)
        if part.value < 1 and part.sure > 0.5 and (after not in UNITS or (after == "in" and place)) and (
            after != "of" or not line.pieces(part.end + 1)
        ):
            return part
    return None


def _inches(line: Line, i: int, head: Head) -> Iterator[Reading]:
    end = head.unit + 1
    if head.form == "one" and line.words[end] in _RULES:
        return
    if line.words[end] in DEGREES and line.words[head.unit - 2 : end] == ["/", "12", "in"]:
        return  # 7/12 in degrees: no tape has twelfths
    if line.words[head.unit : head.unit + 2] == ["in", "the"] and line.words[head.unit + 2] in _MIDDLE:
        return  # it rises 150 in the middle
    others = tuple(Length(other, "in") for other in head.also)
    after = fraction_after(line, end) if head.form in ("whole", "one") else None
    sure = head.sure * _inch_word_sure(line, head)
    if after:
        value = head.value + (after.value if head.value > 0 else -after.value)
        yield _reading(i, after.end, value, "in", sure)
    yield _reading(i, end, head.value, "in", sure * (0.5 if after else 1.0), others)


def _inch_word_sure(line: Line, head: Head) -> float:
    """How sure it is that "in" is inches and not a place: "6 in", "5 in 12", "6 in the wall"."""
    word, after = line.words[head.unit], line.words[head.unit + 1]
    if word != "in":
        return 1.0
    if head.form == "one":
        return 0.1  # "a in" is nothing anyone says
    squared = after in ("square", "sq") and line.words[head.unit + 2] in UNITS  # 40 by 9 | in square metres
    if squared or _number_next(line, head.unit + 1) or after in NOUNS or after in UNITS or _in_from(line, head):
        return 0.3
    if after in ("solid", "sound") and head.value >= MOST_BITE:
        return 0.3  # 35 in solid wood: no nail goes in by so many inches
    if after in _SQUARE or (after in ("square", "sq") and line.words[head.unit + 2] in _SQUARED):
        return 0.3  # 30 by 8 in squares
    return 0.95 if literal(line.words[head.unit - 1]) or line.tight(head.unit - 1) else 0.4  # "twelve in" is a place


def _in_from(line: Line, head: Head) -> bool:
    """Whether a number is no inches but stands so far in from an edge: 150 in from the end; 40 of a 9.3 m beam."""
    after = line.words[head.unit + 1]
    if after not in _EDGE or head.value < LEAST_MM:
        return False
    if head.value >= MOST_FROM_EDGE and head.form == "whole":
        return True
    return after != "past" and not _METRIC.isdisjoint(line.words) and (FEET | INCHES - {"in"}).isdisjoint(line.words)


def _metres(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Metres, with the centimetres or millimetres after them: two metres forty, 1 m 250 mm."""
    end = head.unit + 1
    others = tuple(Length(other, "m") for other in head.also)
    after = fraction_after(line, end)
    if after and head.form in ("whole", "one"):
        yield _reading(i, after.end, head.value + after.value, "m", head.sure)
    yield from _metres_and_parts(line, i, head)
    yield _reading(i, end, head.value, "m", head.sure, others)


def _metres_and_parts(line: Line, i: int, head: Head) -> Iterator[Reading]:
    words, joined = line.words, line.words[head.unit + 1] in ("and", "&")
    for piece in line.pieces(head.unit + 1 + joined) if head.form == "whole" and head.value > 0 else ():
        size, unit = piece.value, words[piece.end]
        if piece.form != "whole" or not 0 < size < 1000:
            continue
        if unit in PLAIN and PLAIN[unit][0] in _SUBUNITS:
            scale = _SUBUNITS[PLAIN[unit][0]]
            own = words[piece.end + 1] in ROLES  # 6 m and 40 mm spacing
            yield _reading(i, piece.end + 1, head.value + size * scale, "m", head.sure * (0.3 if own and joined else 1.0))
        elif not joined and not _goes_on(line, piece.end) and (_into(words, piece.end) or unit not in _AFTER_PARTS):
            tenths = (Length(head.value + size / 10, "m"),) if size < 10 else ()
            value = head.value + size / (1000 if size >= 100 else 100)
            yield _reading(i, piece.end, value, "m", min(piece.sure, 0.4 if tenths else 0.9), tenths)


def _into(words: list[str], at: int) -> bool:
    """Whether "in" leads to the unit that is wanted: 3 m 81 | in feet."""
    return words[at] == "in" and words[at + 1] in UNITS | {"decimal", "metric"}


def _can_be_inches(line: Line, piece: Piece) -> bool:
    """Whether a number said after feet can be the inches: under 12, whole or a tape fraction."""
    if line.words[piece.end - 2 : piece.end] == ["/", "12"]:
        return False  # a 24 ft gable at 6/12, with the "at" left out
    marked = piece.value.denominator == 1 or piece.value.denominator in TAPE or piece.form == "decimal"
    return marked and 0 <= piece.value < 12 and piece.form != "bare"


def _goes_on(line: Line, at: int) -> bool:
    """Whether the number that ends at `at` belongs to what comes next, a unit of another kind."""
    word = line.words[at]
    if word in ("/", "%", "°", "degree", "degrees", "deg", "percent", "hundred", "thousand", "point", "square", "sq"):
        return True
    if word in FEET or word in METRES or word in PLAIN or (word in _WARM and line.words[at + 1] != "channel"):
        return True
    return word == "-" and line.tight(at - 1) and line.tight(at) and literal(line.words[at + 1])


def _feet_next(line: Line, at: int) -> bool:
    """Whether a length in feet is said next."""
    return any(line.words[piece.end] in FEET for piece in line.pieces(at))


def _number_next(line: Line, at: int) -> bool:
    return line.words[at] != "minus" and any(piece.sure >= 0.5 for piece in line.pieces(at))
