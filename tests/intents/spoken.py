"""Numbers and tape lengths into English words, written apart from the reader so that the two can disagree."""

from __future__ import annotations

import random
from fractions import Fraction

from intents.jsgf import Either, Grammar, Maybe, Node, Ref, Repeat, Series, Tagged, Word
from intents.measures import readings
from intents.reading import Reading
from intents.sums import sums
from intents.tokens import Token, tokenize
from solvers.quantities import Quantity
from solvers.sums import Sum, in_millimetres, is_length, with_units

ONES = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
]
TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]
PARTS = {2: "half", 4: "quarter", 8: "eighth", 16: "sixteenth", 32: "thirty second", 64: "sixty fourth"}


def whole(n: int) -> str:
    """0 to 999,999 in words."""
    if n < 20:
        return ONES[n]
    if n < 100:
        return TENS[n // 10] + (" " + ONES[n % 10] if n % 10 else "")
    if n < 1000:
        return whole(n // 100) + " hundred" + (" and " + whole(n % 100) if n % 100 else "")
    rest = n % 1000
    joint = " and " if rest < 100 else " "
    return whole(n // 1000) + " thousand" + (joint + whole(rest) if rest else "")


def part(value: Fraction) -> str:
    """A fraction of the tape, under one, in words."""
    top, bottom = value.numerator, value.denominator
    if top == 1:
        return "a " + PARTS[bottom]
    return f"{whole(top)} {PARTS[bottom]}s"


def mixed(value: Fraction) -> str:
    """A number of 64ths in words: seven and three eighths."""
    size, rest = divmod(value, 1)
    if not rest:
        return whole(size)
    return f"{whole(size)} and {part(rest)}" if size else part(rest)


def figures(value: Fraction) -> str:
    """A number of 64ths in figures: 7 3/8."""
    size, rest = divmod(value, 1)
    return f"{size} {rest}" if size and rest else str(rest or size)


def read(text: str, kind: str) -> list[Reading]:
    """The readings of a kind that cover the whole text (but for a leading article), surest first."""
    tokens = tokenize(text)
    chart = readings(tokens)
    starts = chart[:2] if tokens and tokens[0].text in ("a", "an") else chart[:1]
    found = [each for row in starts for each in row if each.kind == kind and each.end == len(tokens)]
    return sorted(found, key=lambda reading: (reading.start, -reading.sure))


def quantity(reading: Reading) -> Quantity:
    """The quantity of a reading that is not of sizes."""
    assert isinstance(reading.value, Quantity)
    return reading.value


def values(text: str, kind: str) -> list[tuple[Fraction, str]]:
    """(value, unit) of the same readings."""
    return [(quantity(each).value, quantity(each).unit) for each in read(text, kind)]


def sure(text: str, kind: str, value: Fraction) -> float:
    """The most confidence that any stretch of the text is read with as this value of this kind."""
    found = [each for row in readings(tokenize(text)) for each in row if each.kind == kind]
    return max((each.sure for each in found if quantity(each).value == value), default=0.0)


def sample(grammar: Grammar, node: Node, rng: random.Random) -> str:
    """One sentence of a grammar, at random."""
    match node:
        case Word():
            return node.text
        case Ref():
            return sample(grammar, grammar.rules[node.name].body, rng)
        case Series():
            return " ".join(filter(None, (sample(grammar, each, rng) for each in node.parts)))
        case Either():
            return sample(grammar, rng.choice(node.parts), rng)
        case Maybe() | Repeat():
            return sample(grammar, node.part, rng) if rng.random() < 0.5 else ""
        case Tagged():
            return sample(grammar, node.part, rng)


def inches_of(tokens: list[Token], chart: list[list[Reading]]) -> Fraction | None:
    """What the one sum of a text comes to, worked in millimetres; None where there is none."""
    found = [reading.value for reading in sums(tokens, chart)]
    if len(found) != 1 or not isinstance(found[0], Sum):
        return None
    whole = with_units(found[0], "in")
    return in_millimetres(whole) / (Fraction("25.4") if is_length(whole) else 1)
