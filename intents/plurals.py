"""Sizes said as a plural: stock in sixteens, studs on 24s, twelves. They are lengths of stock or spacings, and nothing else."""

from __future__ import annotations

from intents.number_words import PLURALS, SMALL, TENS
from intents.tokens import Token, literal
from solvers.quantities import Count
from solvers.slots import Parameter

_WORDS = {str(value): word for word, value in PLURALS.items()} | {"20": "twenties", "24": "twenty fours"}
_BY = frozenset(("×", "by"))
LINEAL = frozenset(("linear", "lineal", "running"))  # feet are told so, and no things
KEPT = frozenset(("stock length", "board length", "stud spacing", "fastener spacing"))  # what one can be, as it is remembered


def plural_sizes(tokens: list[Token]) -> list[Token]:
    """16s as sixteens; 4x5s, which are sizes, as 4x5."""
    found: list[Token] = []
    if not any(token.text == "s" for token in tokens):
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


def is_plural(words: list[str], start: int, end: int) -> bool:
    """Whether a number from start to end is said as a plural: sixteens, twenty fours; not three eights."""
    if words[end - 1] not in PLURALS or PLURALS[words[end - 1]] == 2:
        return False
    return (end - start == 1 and (not start or (words[start - 1] not in SMALL and words[start - 1] not in TENS))) or (
        end - start == 2 and words[start] in TENS
    )


def can_be(words: list[str], start: int, end: int, parameter: Parameter) -> bool:
    """Whether a bare number can be what a parameter asks for: sixteens are stock or a spacing, 640 linear no count."""
    if parameter.kind is Count and not LINEAL.isdisjoint(words[end : end + 1]):
        return False
    return parameter.slot.kept in KEPT or not is_plural(words, start, end)
