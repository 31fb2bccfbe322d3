"""So much for one of something, in one spelling: "230 lb to the square", "a dollar eighty-five a foot", "a square is $385".

Each becomes "per" and the unit, so that the foot of a price is never a length of one foot. Looked for only after weights
and money.
"""

from __future__ import annotations

from intents.amounts import CURRENCIES
from intents.measures import readings
from intents.number_words import SMALL, TENS
from intents.tokens import Token

_WEIGHTS = frozenset("lb lbs pound pounds kg kgs kilo kilos kilogram kilograms ton tons tonne tonnes oz ounce ounces".split())
_MONEY = frozenset("dollar dollars bucks buck cent cents euro euros".split())
_POUNDS, _PENCE_FOR = frozenset(("pound", "pounds", "quid")), frozenset("a an per each for the / apiece".split())
_PENCE = 6  # words back from a number to its dollars: "a dollar eighty-five"
_JOINTS = (
    ("to", "the"), ("to", "a"), ("for", "each"), ("for", "every"), ("for", "a"), ("for", "the"), ("on", "the"), ("on", "a"),
    ("per",), ("a",), ("an",), ("each",), ("every",), ("/",), ("the",),
)  # fmt: skip
_UNITS: dict[tuple[str, ...], str] = {
    **dict.fromkeys([("square", "foot"), ("square", "feet"), ("sq", "ft"), ("sq", "foot"), ("sqft",), ("ft2",), ("sf",),
                     ("foot", "squared")], "square foot"),
    **dict.fromkeys([("square", "metre"), ("square", "meter"), ("sq", "m"), ("sq", "metre"), ("sqm",), ("m2",),
                     ("metre", "squared"), ("meter", "squared")], "m2"),
    **dict.fromkeys([("square",), ("sq",)], "square"),
    **dict.fromkeys([("foot",), ("ft",), ("lineal", "foot"), ("linear", "foot"), ("running", "foot"), ("lin", "ft")], "foot"),
    **dict.fromkeys([("metre",), ("meter",), ("m",), ("lineal", "metre"), ("linear", "metre"), ("running", "metre")], "metre"),
}  # fmt: skip
_NOT_SQUARE = frozenset("foot feet ft metre meter metres meters inch inches yard yards m corner cut".split())
_ONES = frozenset(("a", "an", "each", "every", "one", "per"))
_COSTS = frozenset("is costs weighs runs are at".split())
_NAMING = 4  # words between "a square" and what it costs: "a square of cedar shingles is"


def plain_rates(tokens: list[Token]) -> list[Token]:
    """The tokens with every rate said as "per" and its unit."""
    tokens = _pounds_of_money(tokens)
    words = [token.text for token in tokens]
    if _WEIGHTS.isdisjoint(words) and _MONEY.isdisjoint(words) and CURRENCIES.isdisjoint(words):
        return tokens
    words += [""] * 4
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        rate = _rate(words, at)
        if rate is None:
            found.append(tokens[at])
            at += 1
            continue
        end, unit = rate
        start, stop = tokens[at].start, tokens[end - 1].end
        found += [Token(word, start, stop) for word in ("per", *unit.split())]
        at = end
    return _unit_first(found)


def _pounds_of_money(tokens: list[Token]) -> list[Token]:
    """Pounds with the pence after them as the money they are: one pound twenty a metre, two pounds fifty each."""
    if _POUNDS.isdisjoint([token.text for token in tokens]):
        return tokens
    words = [*(token.text for token in tokens), *[""] * 4]
    found = [*tokens]
    for at, word in enumerate(words[: len(tokens)]):
        end = at + 2 + (words[at + 1] in TENS and words[at + 2] in SMALL)
        pence = words[at + 1] in TENS or words[at + 1] in SMALL or (words[at + 1].isdecimal() and len(words[at + 1]) == 2)
        if word == "quid" or (word in _POUNDS and pence and words[end] in _PENCE_FOR):
            found[at] = Token("dollars", tokens[at].start, tokens[at].end)
    return found


def _rate(words: list[str], at: int) -> tuple[int, str] | None:
    """Where the rate after a weight or a price ends, and what it is of."""
    if not at or not _is_amount(words, at):
        return None
    for joint in _JOINTS:
        if tuple(words[at : at + len(joint)]) == joint:
            unit = _unit_at(words, at + len(joint))
            if unit is not None:
                return unit
    return None


def _unit_at(words: list[str], at: int) -> tuple[int, str] | None:
    for size in (2, 1):
        unit = _UNITS.get(tuple(words[at : at + size]))
        if unit and not (unit == "square" and words[at + size] in _NOT_SQUARE):
            return at + size, unit
    return None


def _is_amount(words: list[str], at: int) -> bool:
    """Whether a weight or a price ends before a place."""
    before = words[at - 1]
    if before in _WEIGHTS or before in _MONEY:
        return True
    if before[0].isdecimal():
        return at > 1 and words[at - 2] in CURRENCIES
    told = before in SMALL or before in TENS
    return told and not _MONEY.isdisjoint(words[max(0, at - _PENCE) : at])


def _unit_first(tokens: list[Token]) -> list[Token]:
    """ "A square of shingles is $385" turned round to "$385 per square"."""
    words = [token.text for token in tokens] + [""] * 4
    for at, word in enumerate(words[: len(tokens)]):
        unit = _unit_at(words, at + 1) if word in _ONES else None
        costs = next((i for i in range(unit[0], min(unit[0] + _NAMING, len(tokens))) if words[i] in _COSTS), 0) if unit else 0
        if not unit or not costs or costs + 1 >= len(tokens):
            continue
        row = readings(tokens)[costs + 1]
        amount = max((r for r in row if r.kind in ("money", "weight") and r.sure >= 0.7), key=lambda r: r.end, default=None)
        if amount is not None:
            place = tokens[at : unit[0]]
            said = [Token(part, place[0].start, place[-1].end) for part in ("per", *unit[1].split())]
            return [*tokens[:at], *tokens[unit[0] : amount.end], *said, *tokens[amount.end :]]
    return tokens
