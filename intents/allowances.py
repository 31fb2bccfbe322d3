"""Percents said without the word: "the usual ten for waste", "a tenth extra", "none thrown away"; what a screen takes away.

Looked for only where waste, an extra or a screen is spoken of.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Number, Percent

SURE = 0.9
_WASTE = frozenset("waste wastage waist offcuts spoilage".split())
_EXTRA = frozenset("extra more spare over".split())  # after a fraction; after a number they count: ten extra
_TO = frozenset("for of in the as on to".split())
_NONE = frozenset(("no", "none", "nothing", "zero", "without"))
_ALLOWED = frozenset("allowance allowances extra extras spare spares overage offcuts wastage allowed".split())
_THROWN = frozenset("throw throwing thrown wasting wasted waste chuck lose losing".split())
_LEAST_ALLOWED = 3  # allow one, allow two: of what, is not said
_PLENTY = 40  # percent: no one wastes more
_SCREEN = frozenset("screen mesh bugscreen screening".split())
_TAKES = frozenset("takes take blocks block cuts cut steals steal robs rob loses lose closes eats eat stops stop shuts".split())
_CLOSES = frozenset("blocks block closes close shuts shut steals robs eats".split())  # of the screen named before
_SMALL = frozenset("away out off up down about around of some me only just roughly it by".split())
_LETS, _THROUGH = frozenset("lets let letting passes leaves pass".split()), frozenset("in through by past air".split())
_OPEN = frozenset(("open", "free", "clear"))
_SHUT = frozenset("closed blocked solid shut wire".split())
_ALLOW, _AFTER = frozenset(("allow", "allowing", "allows")), frozenset(("", ",", ".", ";", "?", "!", "so", "and", "how", "on"))
_TELLS = _ALLOW | _WASTE | _ALLOWED | _THROWN | _SCREEN | _EXTRA


def allowances(tokens: list[Token], chart: list[list[Reading]]) -> Iterator[Reading]:
    """Readings of kind percent, told by what the number is for."""
    words = [token.text for token in tokens] + [""] * 4
    if _TELLS.isdisjoint(words):
        return
    screened = not _SCREEN.isdisjoint(words)
    past = 0
    for at, row in enumerate(chart):
        if at < past:  # the quarters of three quarters
            continue
        if words[at] in _NONE and _is_nothing(words, at):
            yield Reading("percent", at, at + 1, Percent(Fraction(0), "percent"), SURE)
        share = (_waste(words, row) or (_through_screen(words, row) if screened else None)) if row else None
        if share is not None:
            past = share.end
            yield share


def _is_nothing(words: list[str], at: int) -> bool:
    """No allowance, none for waste, nothing wasted, none thrown away; "throw none away" is led by its verb."""
    after = words[at + 1]
    if words[at] in ("none", "nothing"):
        return after in _THROWN or (after in _TO and words[at + 2] in _WASTE) or words[at - 1] in _THROWN
    return after in _ALLOWED


def _waste(words: list[str], row: list[Reading]) -> Reading | None:
    """Ten for waste, a tenth extra."""
    numbers = [r for r in row if r.kind == "number" and r.sure >= 0.5]
    number = max(numbers, key=lambda r: r.end, default=None)
    if number is None or not isinstance(number.value, Number) or number.value.value.numerator <= 0:
        return None
    value, at = number.value.value, number.end
    at += words[at] in _EXTRA and words[at + 1] in _TO
    told = words[at] in _TO and words[at + (2 if words[at + 1] == "the" else 1)] in _WASTE
    allowed = words[number.start - 1] in _ALLOW and words[number.end] in _AFTER
    told = told or (allowed and value.denominator == 1 and value >= _LEAST_ALLOWED)  # allow fifteen, how many squares
    if value.numerator < value.denominator:
        told = told or words[number.end] in _WASTE or (words[number.end] in _EXTRA and words[number.end + 1] != "than")
        value *= 100
    return Reading("percent", number.start, number.end, Percent(value, "percent"), SURE) if told and value <= _PLENTY else None


def _through_screen(words: list[str], row: list[Reading]) -> Reading | None:
    """What is open of a screen that takes 45 percent away, that is a third closed, that is three quarters open."""
    for reading in row:
        share = _share(words, reading)
        if share is None or not 0 < share < 100:
            continue
        start = reading.start
        while start > 0 and words[start - 1] in _SMALL:
            start -= 1
        end = reading.end
        told = start > 0 and words[start - 1] in _TAKES and not _SCREEN.isdisjoint(words[max(0, start - 4) : start - 1])
        told = told or (start > 0 and words[start - 1] in _CLOSES and not _SCREEN.isdisjoint(words[: start - 1]))
        if told and words[end] not in _OPEN:
            return Reading("percent", start - 1, end, Percent(100 - share, "percent"), SURE)
        if words[end] in _SHUT:
            return Reading("percent", reading.start, end + 1, Percent(100 - share, "percent"), SURE)
        let = [word for word in words[max(0, start - 3) : start] if word not in _THROUGH]
        if reading.kind == "number" and let[-1:] and let[-1] in _LETS and _SCREEN & {*words[max(0, start - 6) : start]}:
            return Reading("percent", reading.start, end, Percent(share, "percent"), SURE)
        near = not _SCREEN.isdisjoint(words[max(0, reading.start - 4) : reading.start])
        if reading.kind == "number" and near and words[end] in _OPEN and "/" not in words[reading.start : end]:
            return Reading("percent", reading.start, end, Percent(share, "percent"), SURE)
    return None


def _share(words: list[str], reading: Reading) -> Fraction | None:
    """A percent, or a fraction as one."""
    if isinstance(reading.value, Percent):
        return reading.value.value
    fraction = isinstance(reading.value, Number) and 0 < reading.value.value < 1 and reading.sure >= 0.5
    return reading.value.value * 100 if fraction else None  # type: ignore[union-attr]
