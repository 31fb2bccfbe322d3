"""Slashes that set the pieces of a note apart, as commas do: 16 ft stock / 6 at 62 / 4 at 38; legs 20 / 75 / 240 / 75 / 20 mm.

One alone may divide, or be a pitch (12'6 / 5, 6 / 12), and so may two between bare numbers: 96 / 4 / 2.
"""

from __future__ import annotations

from itertools import pairwise

from intents.tokens import Token

_UNITS = frozenset("in ft mm cm m inch inches foot feet metres meters deg degrees lb kg '".split())
_WORKS = frozenset("+ = ÷ plus minus times divided".split())  # a line that works with its numbers
_ASKS = frozenset("whats what is s so please quick how much work out calc".split())
_NAMES = frozenset("run rise wide width high height long length span exp exposure deep depth stock kerf".split())
_BENT = frozenset(
    "girth girht bent bend fold folded folds flashing flashng flshng flshg flashg flsh flash apron drip strtchout stretchout"
    " strchout legs".split()
)
LEAST_LEG = 5  # mm, of a bend of three; 1/2/3 may hold a part of an inch
LIST = 3  # slashes from which on bare numbers are a list and no sum


def set_apart(tokens: list[Token], said: set[str]) -> list[Token]:
    """The tokens with a comma in the place of each slash that sets pieces apart."""
    if "/" not in said:
        return tokens
    tokens = _listed_tight(tokens, LIST if _BENT.isdisjoint(said) else LIST - 1)
    places = [at for at in range(1, len(tokens) - 1) if tokens[at].text == "/" and _stands_apart(tokens, at)]
    works = said & _WORKS
    if not places or (works and not (works == {"+"} and _waste_only(tokens))):
        return tokens
    if len(places) == 1 and not _after_a_word(tokens, places[0]):
        return tokens
    if 1 < len(places) < LIST and not any(_names(tokens[start:end]) for start, end in _after(places, len(tokens))):
        return tokens
    return [Token(",", token.start, token.end) if at in places else token for at, token in enumerate(tokens)]


def _waste_only(tokens: list[Token]) -> bool:
    """Whether each plus is of a percentage, which is added to no number: / +10% /."""
    signs = [[each.text for each in tokens[at + 1 : at + 3]] for at, token in enumerate(tokens) if token.text == "+"]
    return all(len(after) > 1 and after[0].isdecimal() and after[1] in ("%", "percent", "pct") for after in signs)


def _listed_tight(tokens: list[Token], least: int) -> list[Token]:
    """With commas between whole numbers that stand in a row with slashes between, as the legs of a bend do: 25/90/150/15."""
    row = [token.text == "/" or token.text.isdecimal() for token in tokens]
    close = [True, *(a.end == b.start for a, b in pairwise(tokens))]  # to the one before it
    found = list(tokens)
    start = 0
    while start < len(tokens):
        end = start
        while end < len(tokens) and row[end] and (end == start or close[end]) and (tokens[end].text == "/") == (end - start) % 2:
            end += 1
        parts = least < LIST and any(int(token.text) < LEAST_LEG for token in tokens[start:end:2])
        if end - start > 2 * (LIST if parts else least):
            found[start:end] = [Token(",", t.start, t.end) if t.text == "/" else t for t in tokens[start:end]]
        start = max(end, start + 1)
    return found


def _stands_apart(tokens: list[Token], at: int) -> bool:
    return tokens[at - 1].end < tokens[at].start and tokens[at].end < tokens[at + 1].start


def _after_a_word(tokens: list[Token], at: int) -> bool:
    """Whether a slash stands between a word and a number, which divide nothing: jacks 24 oc / 9/12 hip."""
    before, after = tokens[at - 1].text, tokens[at + 1].text
    if after in _NAMES:
        return True  # rise 3-8 / run 9-2
    return before.isalpha() and before not in _UNITS | _ASKS and after[:1].isdigit()


def _after(places: list[int], end: int) -> list[tuple[int, int]]:
    """Where each piece after a slash starts and ends."""
    return list(zip([at + 1 for at in places], [*places[1:], end], strict=True))


def _names(piece: list[Token]) -> bool:
    """Whether a piece says more than a number: 9/12 rake."""
    return any(token.text.isalpha() and token.text not in _UNITS and token.text not in _ASKS for token in piece)
