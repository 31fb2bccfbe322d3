"""The chart: every reading of every stretch of the question, for the matcher to choose from.

One pass over the tokens; each index is read on its own, and only where a number, a sign or a unit can start.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.amounts import BARE_DOLLAR, CURRENCIES, SQUARED, amounts, bare_dollar, prefixed_money
from intents.amounts import STARTS as AMOUNT_STARTS
from intents.asides import counts_nothing, only_cold
from intents.degrees import LED, degrees, led_changes, named_temperatures
from intents.degrees import STARTS as DEGREE_STARTS
from intents.expansions import LEAST_PARTS, expansions
from intents.expansions import STARTS as EXPANSION_STARTS
from intents.lengths import METRES, UNITS, bare_lengths, lengths, spoken_pairs
from intents.metric_stock import metric_stock
from intents.number_words import MINUS, STARTS
from intents.numbers import Line
from intents.plurals import LINEAL, is_plural
from intents.reading import Dims, Head, Reading, heads
from intents.remarks import idle_places
from intents.sizes import BY, sizes
from intents.slopes import rises, slopes
from intents.stated_units import led_lengths
from intents.times_and_people import AGED, CENTURIES, said_aside
from intents.tokens import LONGEST, Token, literal
from solvers.quantities import Number

__all__ = ["Dims", "Reading", "broken_number", "readings"]

_BARE_UNITS = frozenset(("foot", "inch", "metre", "meter"))
_STARTS = {*_BARE_UNITS, *BARE_DOLLAR, *CURRENCIES, *MINUS, *LED, "a", "an", "temperature", "freezing"}  # besides numbers
_BEGIN = frozenset((*_STARTS, *STARTS))
_UNIT_BEGINS = UNITS | LINEAL | DEGREE_STARTS | AMOUNT_STARTS | EXPANSION_STARTS
_MARKS = frozenset((":", "="))  # between a unit and its number


def readings(tokens: list[Token]) -> list[list[Reading]]:
    """For each token, the readings that start there, longest first, then surest. Never raises."""
    line = Line(tokens)
    words = line.words
    idle = idle_places(words) | _asides(line)
    chart = [
        _at(line, i)
        if (words[i] in _BEGIN or words[i][0].isdecimal() or words[i + 1] in _MARKS) and i not in idle else []
        for i in range(len(tokens))
    ]  # fmt: skip
    sized = not BY.isdisjoint(line.words)
    for i, row in enumerate(chart):
        if row:
            if sized:
                row.extend(sizes(line, chart, i))
            row.sort(key=lambda reading: (-reading.end, -reading.sure))
    return chart


def _asides(line: Line) -> set[int]:
    """The places of numbers of several words that are years or ages."""
    words, found = line.words, set[int]()
    for i, word in enumerate(words):
        if word in CENTURIES or (i and words[i - 1] in AGED):
            pieces = line.pieces(i)
            if pieces and pieces[0].end > i + 1 and said_aside(words, i, pieces[0].end, float(pieces[0].value)):
                found.update(range(i, pieces[0].end))
    return found


def _at(line: Line, i: int) -> list[Reading]:
    word, row = line.words[i], list[Reading]()
    pieces = line.pieces(i)
    if not pieces and word not in _STARTS and line.words[i + 1] not in _MARKS:
        return row
    if only_cold(line.words, i) or (pieces and pieces[0].end == i + 1 and counts_nothing(line.words, i, float(pieces[0].value))):
        return row
    if line.words[i + 1] in _MARKS:
        row += led_lengths(line, i)
    if pieces:
        row += _numbers(line, i)
        row += metric_stock(line.words, i)
        row += spoken_pairs(line, i)
        row += slopes(line, i)
    elif row:
        return row
    elif word in _BARE_UNITS:
        return list(bare_lengths(line, i))
    elif word in BARE_DOLLAR:
        return list(bare_dollar(line, i))
    elif word in CURRENCIES or (word in MINUS and line.words[i + 1] in CURRENCIES):
        return list(prefixed_money(line, i))
    elif word not in ("a", "an"):
        row += named_temperatures(line, i)
        row += led_changes(line, i)
        return row
    for head in heads(line, i):
        unit = line.words[head.unit] in _UNIT_BEGINS or line.words[head.unit + 1] == SQUARED
        if unit or head.value.denominator > LEAST_PARTS:
            row += _with_unit(line, i, head)
    return row


def _numbers(line: Line, i: int) -> Iterator[Reading]:
    for piece in line.pieces(i):
        also = tuple([Number(other, "none") for other in piece.also]) if piece.also else ()
        yield Reading("number", i, piece.end, Number(piece.value, "none"), piece.sure, also)
        if is_plural(line.words, i, piece.end):
            yield Reading("plural", i, piece.end, Number(piece.value, "none"), piece.sure)


def _with_unit(line: Line, i: int, head: Head) -> Iterator[Reading]:
    word = line.words[head.unit]
    if word in LINEAL and line.words[head.unit + 1] in METRES:  # 22 lineal metres
        word, head = line.words[head.unit + 1], head._replace(unit=head.unit + 1)
    if word in UNITS:
        yield from lengths(line, i, head)
        yield from rises(line, i, head)
    if word in DEGREE_STARTS:
        yield from degrees(line, i, head)
    if word in AMOUNT_STARTS or line.words[head.unit + 1] == SQUARED:
        yield from amounts(line, i, head)
    if word in EXPANSION_STARTS or head.value.denominator > LEAST_PARTS:
        yield from expansions(line, i, head)


def broken_number(tokens: list[Token]) -> str | None:
    """One sentence about a number in the question that can't be one, or None: 7/0, or hundreds of digits."""
    texts = [token.text for token in tokens]
    if "/" not in texts and max(map(len, texts), default=0) <= LONGEST:
        return None
    for place, text in enumerate(texts):
        if text.isdecimal() and texts[place + 1 : place + 2] == ["/"]:
            bottom = texts[place + 2] if place + 2 < len(texts) else ""
            if literal(bottom) and not Fraction(bottom):
                return f"{text[:8]}/{bottom[:8]} divides by zero: say the fraction again."
        if text[0].isdecimal() and text[-1].isdecimal() and not literal(text):
            return f"The number that starts {text[:8]} is too long to be a measurement: say it again."
    return None
