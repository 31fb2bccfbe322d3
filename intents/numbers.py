"""Numbers from tokens: digits, words, fractions, decimals and the mixed numbers a tape is read in.

Everything is exact. Where words could be two numbers ("twenty five eighths"), both come back, each less than sure.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from intents.number_words import (
    GROUPS,
    LONG_ORDINALS,
    LONGEST_RUN,
    MINUS,
    MIXED,
    ORDINALS,
    PLURALS,
    POINTS,
    SCALES,
    SMALL,
    STARTS,
    TAPE,
    TENS,
)
from intents.tokens import Token, literal

AREA_WORDS = frozenset("square sq sqft sf ft2 m2 sqm lineal linear".split())  # after thousands written with a space
IN_FULL = 4  # digits of a number of millimetres that is said digit by digit
KEPT = 1024  # numbers kept as they were read
_EACH_OF = frozenset(("walls", "sides", "gables", "faces"))  # two 300 square foot walls
_AT = frozenset(("at", "@"))  # before a size: a count that ends before one is of the next size


class Piece(NamedTuple):
    """One number in the line: where it ends, its value, its form and what else it may be."""

    end: int
    value: Fraction
    form: str = "whole"  # whole, decimal, fraction, bare (a denominator alone), mixed
    sure: float = 1.0
    also: tuple[Fraction, ...] = ()
    digits: bool = False  # written in digits, not words


_RATIOS = frozenset((150, 300))  # of an attic to its vents, and no part of an inch


class Line:
    """The tokens being read, and the numbers found in them so far. Words past the end are ""."""

    def __init__(self, tokens: list[Token]) -> None:
        self.tokens = tokens
        self.words = [token.text for token in tokens] + [""] * 8
        self._pieces: dict[int, tuple[Piece, ...]] = {}

    def tight(self, i: int) -> bool:
        """Whether token i touches the next one."""
        return 0 <= i < len(self.tokens) - 1 and self.tokens[i].end == self.tokens[i + 1].start

    def pieces(self, i: int) -> tuple[Piece, ...]:
        """Every number that starts at token i, longest first."""
        word = self.words[i]
        if not word or not (word in STARTS or word[0].isdecimal()):
            return ()
        found = self._pieces.get(i)
        if found is None:
            found = self._pieces[i] = _settled(_signed(self, i))
        return found


def _settled(found: list[Piece]) -> tuple[Piece, ...]:
    """Longest first, each once; a number that a surer and longer one begins with is half as sure."""
    if len(found) < 2:
        return tuple(found)
    found.sort(key=lambda piece: (-piece.end, -piece.sure))
    longest = next((piece.end for piece in found if piece.sure >= 0.8), 0)
    kept: list[Piece] = []
    for piece in found:
        if not any(piece[:2] == other[:2] for other in kept):
            kept.append(piece._replace(sure=piece.sure / 2) if piece.end < longest else piece)
    return tuple(kept)


def _signed(line: Line, i: int) -> list[Piece]:
    word = line.words[i]
    if word not in MINUS:
        return _unsigned(line, i)
    after_number = i > 0 and (line.words[i - 1][-1].isdecimal() or line.words[i - 1] in SMALL)
    if word == "-" and (not line.tight(i) or (i > 0 and line.tight(i - 1))):
        return []
    sure = 0.5 if after_number else 1.0  # "12 minus 4" is a sum far more often than two numbers
    return [
        piece._replace(value=-piece.value, sure=piece.sure * sure, also=tuple(-other for other in piece.also))
        for piece in _unsigned(line, i + 1)
    ]


def _unsigned(line: Line, i: int) -> list[Piece]:
    found = fractions(line, i)
    wholes = _wholes(line, i)
    for whole in wholes:
        found.append(whole)
        if whole.form == "whole":
            found += _mixed(line, i, whole)
            found += _decimal(line, whole.end, whole.value, whole.sure)
    if line.words[i] == "point" and i and (line.words[i - 1].isdecimal() or _digit(line.words[i - 1])):
        return []  # one point two: no 0.2 by itself
    if line.words[i] == "point":
        if line.words[i - 1 : i] and line.words[i - 1] in POINTS:
            return found
        found += _decimal(line, i, Fraction(0), 0.5 if literal(line.words[i + 1]) else 1.0)
    return found


def _under_hundred(line: Line, i: int) -> list[tuple[int, int]]:
    """(end, value) of a number word or two under a hundred, longest first."""
    word, after = line.words[i], line.words[i + 1]
    if word in TENS:
        tens = TENS[word]
        units = SMALL.get(after, 0) or PLURALS.get(after, 0)
        return ([(i + 2, tens + units)] if 0 < units < 10 else []) + [(i + 1, tens)]
    return [(i + 1, SMALL[word])] if word in SMALL else []


def _wholes(line: Line, i: int) -> list[Piece]:
    """Whole numbers (and decimals in digits) at i: every end they could have."""
    word = line.words[i]
    if literal(word):
        return _figures(line, i)
    if word in PLURALS:
        return [Piece(i + 1, Fraction(PLURALS[word]), sure=0.8)]
    if word == "oh":
        return [Piece(i + 1, Fraction(0), sure=0.5)] if line.words[i + 1] == "point" else []  # or else a sigh
    found = [Piece(end, Fraction(value)) for end, value in _under_hundred(line, i)]
    if not found:
        return _one_group(line, i)
    return found + _scaled(line, found[0].end, found[0].value) + _run_together(line, i)


def _figures(line: Line, i: int) -> list[Piece]:
    """A number in digits, with a hundred or thousand said after it."""
    word = line.words[i]
    if _over_zero(line, i):
        return []
    first = Piece(i + 1, _worth(word), "whole" if word.isdecimal() else "decimal", digits=True)
    return [first, *_scaled(line, first.end, first.value), *_spaced(line, i)]


@lru_cache(maxsize=KEPT)
def _worth(figures: str) -> Fraction:
    """A number in digits; a line's are asked for by each of its readers, and most lines have the same."""
    return Fraction(int(figures)) if figures.isdecimal() else Fraction(figures)


def _spaced(line: Line, i: int) -> list[Piece]:
    """Thousands with a space after them, as they are written abroad: 2 300 square feet."""
    word, after = line.words[i], line.words[i + 1]
    if not (word.isdecimal() and after.isdecimal() and len(after) == 3 and len(word) <= 3) or word[0] == "0":
        return []
    told = line.words[i + 2] in AREA_WORDS and _EACH_OF.isdisjoint(line.words[i + 3 : i + 7])
    return [Piece(i + 2, Fraction(int(word + after)), digits=True)] if told else []


_DOZENS = frozenset("a an half of couple few several by the".split())  # before a dozen: another number, or none


def _one_group(line: Line, i: int) -> list[Piece]:
    """A hundred, hundred, a dozen, dozen, half a dozen, couple dozen."""
    word, after = line.words[i], line.words[i + 1]
    if word in ("a", "an") and (after in SCALES or after in GROUPS):
        return _scaled(line, i + 1, Fraction(1))
    if word in SCALES:
        return [piece._replace(sure=0.9) for piece in _scaled(line, i, Fraction(1))]
    if word == "dozen" and not (i and (line.pieces(i - 1) or line.words[i - 1] in _DOZENS)):
        return [Piece(i + 1, Fraction(12))]  # need dozen battens
    if word == "couple" and line.words[i + 1 + (after == "of")] == "dozen":
        return [Piece(i + 2 + (after == "of"), Fraction(24))]
    dozen = i + (3 if line.words[i + 1 : i + 3] == ["of", "a"] else 2 if after == "a" else 1)
    return [Piece(dozen + 1, Fraction(6))] if word == "half" and line.words[dozen] == "dozen" else []


def _scaled(line: Line, i: int, base: Fraction, below: int = 10**9) -> list[Piece]:
    """`base` times the hundred, thousand or dozen at i (a scale under `below`), with what follows it.

    "(two) hundred and twenty thousand five hundred": each end that the number could have.
    """
    word = line.words[i]
    if word in GROUPS:
        return [Piece(i + 1, base * GROUPS[word])]
    scale = SCALES.get(word, below)
    if scale >= below or (scale == 100 and base > 99):
        return []
    size = base * scale
    found = [Piece(i + 1, size)]
    after = i + 2 if line.words[i + 1] == "and" else i + 1
    tails = _under_hundred(line, after)
    if after > i + 1 and tails and line.words[tails[0][0]] in _AT and not _AT.isdisjoint(line.words[max(0, i - 3) : i]):
        return found  # seven at eighteen hundred | and three at eleven fifty
    found += [Piece(end, size + value) for end, value in tails]
    if tails and scale > 100:
        smaller = _scaled(line, tails[0][0], Fraction(tails[0][1]), scale)
        found += [Piece(piece.end, size + piece.value) for piece in smaller if piece.value < scale]
    if scale == 100:
        longest = max(found)
        larger = _scaled(line, longest.end, longest.value, below) if line.words[longest.end] in SCALES else []
        found += [piece for piece in larger if piece.value > 999]
    return found


def _run_together(line: Line, i: int) -> list[Piece]:
    """Numbers said without their hundreds: "one fifty", "fifteen fifty", "one oh five", "one two five"."""
    words, found = line.words, []
    first = _under_hundred(line, i)[0]
    if first[1]:
        for end, value in _under_hundred(line, first[0]):
            if value >= 10 and words[end] not in ("footer", "footers"):  # two | ten footers
                found.append(Piece(end, Fraction(first[1] * 100 + value), sure=_hundreds_sure(first[1], value)))
        if words[first[0]] == "oh" and 0 < SMALL.get(words[first[0] + 1], 0) < 10:
            found.append(Piece(first[0] + 2, Fraction(first[1] * 100 + SMALL[words[first[0] + 1]]), sure=0.8))
    run = i
    while run - i < LONGEST_RUN and SMALL.get(words[run], 10) < 10:
        run += 1
    if run - i >= 3:
        digits = "".join(str(SMALL[word]) for word in words[i:run])
        found.append(Piece(run, Fraction(int(digits)), sure=0.4 if run - i != IN_FULL else 0.75))
    return found


def _hundreds_sure(first: int, second: int) -> float:
    """How sure it is that two number words are one number: "five twelve" is a pitch, "one fifty" is not."""
    if second == 12 or first % 10 == 0:
        return 0.2
    return 0.7 if first < 10 and second % 10 == 0 else 0.5


def _over_zero(line: Line, i: int) -> bool:
    """Whether the figures at i stand in a fraction over zero, which is no number."""
    words = line.words
    bottom = i if words[i - 1 : i] == ["/"] else i + 2 if words[i + 1] == "/" else -1
    return bottom >= 0 and literal(words[bottom]) and not words[bottom].strip("0.")


def _ordinal(line: Line, i: int) -> tuple[int, int] | None:
    """(end, denominator) of the denominator word at i."""
    word = line.words[i]
    if word in ORDINALS:
        return i + 1, ORDINALS[word]
    size = LONG_ORDINALS.get((word, line.words[i + 1]))
    return (i + 2, size) if size else None


def fractions(line: Line, i: int) -> list[Piece]:
    """Fractions at i: 3/8, three eighths, a half, half."""
    word = line.words[i]
    if literal(word):
        return _slashed(line, i) or _said(line, i, i + 1, int(word) if word.isdecimal() else 0)
    bare = _ordinal(line, i) if word not in ("sixteens", "halves") else None  # both halves of a joint
    found: list[Piece] = []
    if bare and bare[1] in (2, 4):
        found.append(Piece(bare[0], Fraction(1, bare[1]), "bare"))
    elif bare:
        found.append(Piece(bare[0], Fraction(1, bare[1]), "bare", 0.5))  # "third" may be the third course
    if word in ("a", "an"):
        return found + _said(line, i, i + 1, 1)
    for end, top in _under_hundred(line, i):
        found += _said(line, i, end, top)
    return found


def _said(line: Line, i: int, end: int, top: int) -> list[Piece]:
    """`top` over the denominator word at `end`."""
    bottom = _ordinal(line, end)
    if not bottom or not top or (line.words[end] == "sixteens" and not (top % 2 and top < 16)):
        return []  # four sixteens are sticks
    if line.words[end] == "halves" and top == 2:
        return []  # the two halves
    singular = not line.words[bottom[0] - 1].endswith("s")
    if singular and top > 19:
        return []  # "twenty fourth" is a place in a row
    value, tens = Fraction(top, bottom[1]), line.words[i] in TENS
    if tens and top % 10:  # "twenty five eighths": 25/8 or 20 5/8
        mixed = top - top % 10 + Fraction(top % 10, bottom[1])
        return [Piece(bottom[0], value, "fraction", 0.7 if value < 1 else 0.4, (mixed,))]
    certain = (value < 1 or top == 1) and line.words[end] not in ("eights", "ates", "sixteens")
    return [Piece(bottom[0], value, "fraction", 1.0 if certain else 0.7)]


def _slashed(line: Line, i: int) -> list[Piece]:
    """A fraction in figures, 3/8 or 5/16ths; not a date, and never over zero."""
    words = line.words
    if words[i + 1] != "/" or not words[i].isdecimal() or (i > 1 and words[i - 1] == "/" and literal(words[i - 2])):
        return []
    bottom = words[i + 2]
    size = ORDINALS.get(bottom, 0) if not bottom.isdecimal() else int(bottom) if literal(bottom) else 0
    if not size or (words[i + 3] == "/" and literal(words[i + 4]) and words[i + 4] != "12"):
        return []
    value = Fraction(int(words[i]), size)
    if value == 1 and size not in TAPE:  # 45/45 is two settings, never a fraction
        return []
    if value > 1 and size in TAPE and len(words[i]) > 1:  # 71/2 is likely 7 1/2 with the space dropped
        return [Piece(i + 3, value, "fraction", 0.6, (int(words[i][:-1]) + Fraction(int(words[i][-1]), size),), True)]
    return [Piece(i + 3, value, "fraction", digits=True)]


def _mixed(line: Line, i: int, whole: Piece) -> list[Piece]:
    """A whole number and the fraction after it: 7 1/2, 7-1/2, seven and a half, ten five eighths."""
    end, words = whole.end, line.words
    joined = words[end] in ("and", "&") or (words[end] == "-" and line.tight(end - 1) and line.tight(end))
    found = []
    start = end + joined + (joined and words[end + 1] == "a" and literal(words[end + 2]))  # 71 and a 1/4
    for part in fractions(line, start):
        if part.value >= 1 and part.sure > 0.5:
            continue
        sure, also = _mixed_sure(line, whole, part, joined)
        if sure:
            value = whole.value + part.value
            found.append(Piece(part.end, value, "mixed", whole.sure * sure, also, whole.digits and part.digits))
            if words[part.end] == "dozen":  # two and a half dozen
                found.append(Piece(part.end + 1, value * GROUPS["dozen"], sure=whole.sure * sure))
    return found


def _mixed_sure(line: Line, whole: Piece, part: Piece, joined: bool) -> tuple[float, tuple[Fraction, ...]]:
    """How sure it is that a whole number and a fraction are one number, and what else they may be."""
    end, words = whole.end, line.words
    if part.digits and (whole.digits or joined):
        if part.value.denominator in _RATIOS:
            return 0.0, ()  # attic 24 by 40 | 1/300
        pitch = words[part.end - 2 : part.end] == ["/", "12"]  # a 24 6/12 gable
        return (0.5 if pitch else 1.0 if part.value.denominator in MIXED else 0.7), ()
    if words[end] == "-":
        return 0.0, ()
    if joined and part.form == "bare" and words[part.end] == "of":
        return 0.0, ()  # 6 ft 8 and half of the building
    if joined:
        return (part.sure if part.form != "bare" else 0.9 if part.value == Fraction(1, 2) else 0.6), ()
    if part.form == "bare" or words[end] in ("a", "an"):
        return 0.0, ()
    top, size = part.value.numerator, part.value.denominator
    if words[end - 1] in TENS and words[end] in SMALL:
        one = Fraction(int(whole.value) % 100 + top, size)
        return (0.4 if one < 1 else 0.7), (one,)
    return (0.8 if words[part.end - 1].endswith("s") else 0.6), ()


def _decimal(line: Line, i: int, whole: Fraction, sure: float) -> list[Piece]:
    """`whole` and the digits said after "point" at i."""
    if line.words[i] != "point":
        return []
    digits, end = "", i + 1
    while len(digits) < 12 and _digit(line.words[end]) and not (digits and _begins_another(line, end)):
        digits += _digit(line.words[end])
        end += 1
    if not digits:
        two = [(stop, value) for stop, value in _under_hundred(line, end) if value >= 10]
        if not two:
            return []
        end, digits = two[0][0], str(two[0][1])
    return [Piece(end, whole + Fraction(int(digits), 10 ** len(digits)), "decimal", sure)]


def _begins_another(line: Line, i: int) -> bool:
    """Whether a digit said after a decimal is the hundreds of the next number: two point four | one fifty."""
    return line.words[i] in SMALL and line.words[i + 1] in TENS and line.words[i - 2] == "point"


def _digit(word: str) -> str:
    """A single digit said or written, "" when it is none."""
    if word in SMALL:
        return str(SMALL[word]) if SMALL[word] < 10 else ""
    return word if len(word) == 1 and word in "0123456789" else ""
