"""Sizes said as a plural: stock in sixteens, studs on 24s, twelves. They are lengths of stock or spacings, and nothing else."""

from __future__ import annotations

from intents.number_words import PLURALS, SMALL, TENS
from intents.tokens import Token, literal
from solvers.quantities import Angle, Count, Money
from solvers.slots import Parameter

_WORDS = {str(value): word for word, value in PLURALS.items()} | {"20": "twenties", "24": "twenty fours"}
_DIGITS = dict(zip("twos threes fours fives sixes sevens eights nines".split(), range(2, 10), strict=True))
_BY = frozenset(("×", "by"))
LINEAL = frozenset(("linear", "lineal", "running"))  # feet are told so, and no things
_THICK, _WIDE = frozenset(("1", "2", "4")), frozenset(("2", "3", "4", "6", "8", "10", "12"))
_FEET = frozenset("foot feet ft footer footers long".split())
_SIZED = frozenset("' \" in inch inches ft foot feet × by / - mm window windows door doors opening openings".split())
KEPT = frozenset(("stock length", "board length", "stud spacing", "fastener spacing"))  # what one can be, as it is remembered


def plural_sizes(tokens: list[Token]) -> list[Token]:
    """16s as sixteens; 4x5s, which are sizes, as 4x5."""
    said = {token.text for token in tokens}
    if "×" in said:
        tokens = _without_stick_names(tokens)
    if "point" in said:
        tokens = _decimals(tokens)
        said = {token.text for token in tokens}
    found: list[Token] = []
    if "s" not in said:
        return tokens
    for token in tokens:
        last = found[-1] if found else None
        if token.text != "s" or last is None or not literal(last.text) or last.end != token.start:
            found.append(token)
        elif len(found) > 1 and found[-2].text in _BY:
            found[-1] = Token(last.text, last.start, token.end)
        elif last.text in _WORDS and not (len(found) > 1 and found[-2].text == "/"):  # 5 1/2s are no twos
            found[-1:] = [Token(word, last.start, token.end) for word in _WORDS[last.text].split()]
        else:
            found.append(token)
    return found


def _decimals(tokens: list[Token]) -> list[Token]:
    """Stock that is told by its metres in words, as it is in figures: four point twos are 4.2s."""
    found: list[Token] = []
    for token in tokens:
        point = len(found) > 1 and found[-1].text == "point" and found[-2].text in SMALL
        if point and token.text in _DIGITS:
            first = found[-2]
            figures = f"{SMALL[first.text]}.{_DIGITS[token.text]}"
            found[-2:] = [Token(figures, first.start, token.end - 1), Token("s", token.end - 1, token.end)]
        else:
            found.append(token)
    return found


def _without_stick_names(tokens: list[Token]) -> list[Token]:
    """Without the 2x10 of "a 12 foot 2x10", typed in one: what the stick is called is no 2 inches, and multiplies nothing."""
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        name = tokens[at : at + 3]
        named = len(name) == 3 and name[1].text == "×" and name[0].text in _THICK and name[2].text in _WIDE and bool(found)
        in_one = named and name[0].end == name[1].start and name[1].end == name[2].start and found[-1].end < name[0].start
        after = tokens[at + 3].text if at + 3 < len(tokens) else ""
        if in_one and found[-1].text in _FEET and after not in _SIZED and not after[:1].isdecimal():
            at += 4 if after == "s" else 3
            continue
        found.append(tokens[at])
        at += 1
    return found


def is_plural(words: list[str], start: int, end: int) -> bool:
    """Whether a number from start to end is said as a plural: sixteens, twenty fours; not three eights."""
    if words[end - 1] not in PLURALS or PLURALS[words[end - 1]] == 2:
        return False
    return (end - start == 1 and (not start or (words[start - 1] not in SMALL and words[start - 1] not in TENS))) or (
        end - start == 2 and words[start] in TENS
    )


_MEASURED = frozenset("across wide".split())
_COUNTED = frozenset("pieces sides boards sticks walls courses joints segments bits lengths people windows doors".split())


def can_be(words: list[str], start: int, end: int, parameter: Parameter) -> bool:
    """Whether a bare number can be what a parameter asks for: sixteens are stock or a spacing, 24 across is no count, 4 pieces
    are no angle."""
    if parameter.kind is Money and "/" in words[start:end]:
        return False  # 3 boards at 5 1/2
    if parameter.kind is Angle and not _COUNTED.isdisjoint(words[end : end + 1]):
        return False
    if parameter.kind is Count and end < len(words) and (words[end] in LINEAL or words[end] in _MEASURED):
        return False
    return parameter.slot.kept in KEPT or not is_plural(words, start, end)
