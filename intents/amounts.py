"""Percents, areas, volumes, weights and money."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.lengths import FEET, INCHES, METRES, UNITS
from intents.numbers import Line
from intents.reading import Head, Reading
from solvers.quantities import Area, Money, Percent, Quantity, Volume, Weight

_QUART = Fraction(1, 4)  # gallons, as the pint is an eighth (NIST HB 44 App. C)
_LITRE = Fraction(1)
_ML = Fraction(1, 1000)
_POUNDS = Fraction(45359237, 100000000)  # kilograms, exact

# word: (kind, class, unit, how many of it, how sure)
_WORDS: dict[str, tuple[str, type[Quantity], str, Fraction, float]] = {}


def _words(words: str, kind: str, sort: type[Quantity], unit: str, size: Fraction | int = 1, sure: float = 1.0) -> None:
    _WORDS.update(dict.fromkeys(words.split(), (kind, sort, unit, Fraction(size), sure)))


_words("% percent pct", "percent", Percent, "percent")
_words("sqft sf ft2", "area", Area, "ft2")
_words("sqin in2", "area", Area, "in2")
_words("sqm m2", "area", Area, "m2")
_words("squares", "area", Area, "square")
_words("cm2", "area", Area, "m2", Fraction(1, 10_000))
_words("mm2", "area", Area, "m2", Fraction(1, 1_000_000))
_words("ft3 cf", "volume", Volume, "ft3")
_words("in3", "volume", Volume, "in3")
_words("m3", "volume", Volume, "L", 1000)
_words("gallon gallons gal gals", "volume", Volume, "gal")
_words("quart quarts qt", "volume", Volume, "gal", _QUART)
_words("pint pints", "volume", Volume, "gal", _QUART / 2)
_words("litre litres liter liters l", "volume", Volume, "L", _LITRE)
_words("ml millilitre millilitres milliliter milliliters cc", "volume", Volume, "L", _ML)
_words("lb lbs pound pounds", "weight", Weight, "lb")
_words("kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes", "weight", Weight, "kg")
_words("gram grams g", "weight", Weight, "kg", _ML)
_words("ton tons", "weight", Weight, "lb", 2000, 0.7)
_words("tonne tonnes", "weight", Weight, "kg", 1000)
_words("dollar dollars bucks buck euro euros", "money", Money, "money")
_words("cent cents", "money", Money, "money", Fraction(1, 100))

CURRENCIES = frozenset("$€£")
_AMERICAN = frozenset(["us", "american"])
_GALLONS = frozenset("gallon gallons gal gals quart quarts pint pints".split())
_OUNCES = frozenset(["oz", "ounce", "ounces"])
_FLUID = frozenset(["fluid", "fl", "us"])
_SHAPES = frozenset("corner corners joint cut box end opening frame miter mitre edge".split())  # a square one of these is no area
# after "square" and "cubic": (unit, how many of it)
_SQUARES = (
    dict.fromkeys(FEET, ("ft2", Fraction(1)))
    | dict.fromkeys(INCHES, ("in2", Fraction(1)))
    | dict.fromkeys(METRES, ("m2", Fraction(1)))
    | dict.fromkeys(["yard", "yards", "yd", "yds"], ("ft2", Fraction(9)))
    | dict.fromkeys(["cm", "centimetres", "centimeters"], ("m2", Fraction(1, 10_000)))
    | dict.fromkeys(["mm", "millimetres", "millimeters"], ("m2", Fraction(1, 1_000_000)))
)
_CUBES = (
    dict.fromkeys(FEET, ("ft3", Fraction(1)))
    | dict.fromkeys(INCHES, ("in3", Fraction(1)))
    | dict.fromkeys(METRES, ("L", Fraction(1000)))
    | dict.fromkeys(["yard", "yards", "yd", "yds"], ("ft3", Fraction(27)))
)
SQUARED = "squared"
STARTS = frozenset((*_WORDS, *_AMERICAN, *_OUNCES, *_FLUID, "per", "square", "sq", "cubic", "cu"))  # else "metres squared"


def amounts(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """The percents, areas, volumes, weights and money made of a head at i and the unit after it."""
    words, at = line.words, head.unit
    at += words[at] in _AMERICAN and words[at + 1] in _GALLONS  # 5 US gallons: no others are meant here
    word, after = words[at], words[at + 1]
    if word == "l" and head.form == "one":
        return  # an L flashing
    twelfths = line.words[head.unit - 2 : head.unit] == ["/", "12"]  # a gable at 8/12, sq ft?
    if word in _WORDS and not (twelfths and _WORDS[word][0] == "area"):
        kind, sort, unit, size, sure = _WORDS[word]
        if kind == "money":
            yield from _dollars(line, i, head)
        else:
            yield _reading(kind, i, at + 1, head, sort, unit, size, sure)
    elif word == "per" and after == "cent":
        yield _reading("percent", i, at + 2, head, Percent, "percent")
    elif word in ("square", "sq") and not twelfths:
        yield from _square(line, i, head)
    elif word in ("cubic", "cu") and after in _CUBES:
        yield _reading("volume", i, at + 2, head, Volume, *_CUBES[after])
    elif word in _OUNCES or word in _FLUID:
        yield from _ounces(line, i, head)
    elif after == SQUARED and word in _SQUARES:
        yield _reading("area", i, at + 2, head, Area, *_SQUARES[word], 0.8)


def _reading(
    kind: str,
    start: int,
    end: int,
    head: Head,
    sort: type[Quantity],
    unit: str,
    size: Fraction = Fraction(1),
    sure: float = 1.0,
) -> Reading:
    also = tuple(sort(other * size, unit) for other in head.also)
    return Reading(kind, start, end, sort(head.value * size, unit), head.sure * sure, also)


_ITS = frozenset("a an the my our your his this that each every".split())


def _square(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Square feet and the like; a square on its own is 100 square feet of cladding."""
    at = head.unit
    after = line.words[at + 1]
    if after == "in" and line.words[at + 2] in _ITS and line.pieces(at + 3):
        return  # eleven of them 1 5/8 square in a 58 inch opening
    if after in _SQUARES:
        place = after in INCHES and after == "in" and bool(line.pieces(at + 2))
        sure = 0.4 if head.form == "one" else 0.7 if place else 1.0  # "a square foot" is mostly "per square foot"
        yield _reading("area", i, at + 2, head, Area, *_SQUARES[after], sure)
    elif line.words[at] == "square" and after not in UNITS and not (head.form == "one" and after in _SHAPES):
        sure = 0.2 if head.form == "one" else 0.7
        yield _reading("area", i, at + 1, head, Area, "square", Fraction(1), sure)


def _ounces(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Ounces: of volume on a tube of sealant, which is where a builder meets them; said alone they may be weight."""
    words, at = line.words, head.unit
    while words[at] in _FLUID and at < head.unit + 2:
        at += 1
    if words[at] not in _OUNCES:
        return
    volume = Volume(head.value, "floz")
    if at > head.unit:
        yield Reading("volume", i, at + 1, volume, head.sure)
        return
    weight = Weight(head.value / 16, "lb")
    yield Reading("volume", i, at + 1, volume, 0.9 * head.sure, (weight,))
    yield Reading("weight", i, at + 1, weight, 0.4 * head.sure, (volume,))


_AFTER_CENTS = frozenset(("each", "apiece", "a", "an", "per", "", ".", "?", "!", ","))
BARE_DOLLAR, LEAST_CENTS = frozenset(("buck", "dollar")), 10
_LARGE = frozenset(("hundred", "thousand", "and", "grand"))


def _dollars(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Dollars with the cents after them: 3 dollars, three dollars and fifty cents, three dollars fifty."""
    words, at = line.words, head.unit + 1
    size, certain = _WORDS[words[head.unit]][3], 1.0
    start = at + (words[at] == "and")
    for cents in line.pieces(start) if size == 1 and head.form in ("whole", "one") else ():
        if start > at and cents.form in ("fraction", "bare") and cents.value < 1:
            certain = 0.5
            yield Reading("money", i, cents.end, Money(head.value + cents.value, "money"), head.sure * cents.sure)
        if cents.form != "whole" or not 0 < cents.value < 100:
            continue
        named = words[cents.end] in ("cent", "cents")
        if named or (start == at and cents.value >= 10 and words[cents.end] not in UNITS):
            value = head.value + cents.value / 100
            end = cents.end + named
            certain = 0.5
            yield Reading("money", i, end, Money(value, "money"), head.sure if named else 0.9 * head.sure)
    said = words[i : head.unit]
    if size == 1 and head.value >= 100 and len(said) in (2, 3) and all(map(str.isalpha, said)) and _LARGE.isdisjoint(said):
        whole = Money(head.value, "money")  # twelve fifty bucks: 12.50, or else as many
        yield Reading("money", i, at, Money(head.value / 100, "money"), head.sure, (whole,))
        return
    yield _reading("money", i, at, head, Money, "money", size, certain)


def prefixed_money(line: Line, i: int) -> Iterator[Reading]:
    """Money with its sign first: $3.50, -$3.50."""
    minus = line.words[i] not in CURRENCIES
    for piece in line.pieces(i + 2 if minus else i + 1):
        if piece.digits and piece.value >= 0:
            value = -piece.value if minus else piece.value
            yield Reading("money", i, piece.end, Money(value, "money"), piece.sure)


def bare_dollar(line: Line, i: int) -> Iterator[Reading]:
    """A dollar and cents with the one of it unsaid: buck eighty, dollar ten. Never twenty dollar | ten."""
    if i and (line.pieces(i - 1) or line.words[i - 1] in ("a", "an", "per", "of", "the")):
        return
    for cents in line.pieces(i + 1):
        if line.words[cents.end] not in _AFTER_CENTS:
            continue  # a window buck | thirty six by forty eight
        if cents.form == "whole" and LEAST_CENTS <= cents.value < 100 and not cents.digits:
            yield Reading("money", i, cents.end, Money(1 + cents.value / 100, "money"), cents.sure)
