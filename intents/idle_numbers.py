"""Which numbers may be a remark and nothing more: "already cut three". The rest have a role, or are asked about."""

from __future__ import annotations

from collections.abc import Sequence

from intents.chart import MINUS, Chart
from intents.counting import COUNTED
from intents.features import Mention
from intents.of_both import AMOUNTS
from intents.reading import Reading
from solvers.quantities import Quantity

NOMINAL = frozenset((1, 2))  # the first number of a stick's name: 1x3, 2 by 4
LAYERED = frozenset(("fastener length", "build-out"))
STRAP = 1  # of the sticks that are a layer; a 2x6 is the stud behind them
COUNTS = AMOUNTS - {"strapping"} | {"cut list", "bent flashing"}  # topics in which what is counted multiplies
_WHERE, _REACH = frozenset("at in on to by".split()), 3
_STACK = 6  # words from there to one of the first things gone through
_SPOTS = frozenset("peak ridge apex point middle centre center top bottom eave eaves plate sides ends corners".split())
_LEADS = frozenset(("at", "@"))  # a number after these is the size of a piece


def may_be_idle(topic: str, chart: Chart, found: Sequence[Mention], mention: Mention) -> bool:
    """Whether a number may be let be: no quantity with a unit, no factor, and no part of another number."""
    reading = mention.reading
    if reading.kind != "number" or counts_a_thing(topic, chart, mention) or _runs_on(chart, reading):
        return False
    if topic in LAYERED and _in_the_stack(chart.words, reading):
        return False
    if _somewhere(chart.words[reading.end : reading.end + _REACH]):
        return False
    if not MINUS.isdisjoint(chart.words[max(0, reading.start - 1) : reading.end]):
        return False  # minus 45 takes something off, and is no remark
    if not mention.parts:
        return topic != "cut list" or chart.words[max(0, reading.start - 1)] not in _LEADS
    first = next(other.reading.value for other in found if other.start == mention.start)
    layer = topic in LAYERED and isinstance(first, Quantity) and first.value == STRAP
    return isinstance(first, Quantity) and first.value in NOMINAL and not layer


def _in_the_stack(words: list[str], reading: Reading) -> bool:
    """Whether a number is of what is gone through, whatever that is called: through 22 deck and 18 ply."""
    at = max((at for at, word in enumerate(words[: reading.start]) if word == "through"), default=-1)
    between = words[at + 1 : reading.start]
    return at >= 0 and len(between) <= _STACK and not {".", "?", ";"} & {*between} and words[reading.end : reading.end + 1] != []


def _somewhere(after: list[str]) -> bool:
    """Whether it is told where a number was measured: 15 | at the peak, 9 | on both sides."""
    return after[:1] != [] and after[0] in _WHERE and not _SPOTS.isdisjoint(after[1:])


def counts_a_thing(topic: str, chart: Chart, mention: Mention) -> bool:
    """Whether a number counts what an amount is multiplied by, and so is no mere remark: 2 screws each stud."""
    if topic not in COUNTS:
        return False
    reading = mention.reading
    after = chart.words[reading.end : reading.end + 1]
    lone = reading.kind == "number" and not mention.parts and isinstance(reading.value, Quantity)
    more = lone and reading.value.value > 1  # type: ignore[union-attr]
    return more and not COUNTED.isdisjoint(after)


def _runs_on(chart: Chart, reading: Reading) -> bool:
    """Whether a number in digits stands right beside another, and is a part of it: the 2 of "2 300", the 8 of "6-8"."""
    words, before = chart.words, reading.start - 1
    before -= before > 0 and words[before] == "-"
    after = reading.end + (words[reading.end : reading.end + 1] == ["-"])
    near = [words[at] for at in (before, after) if 0 <= at < len(words)]
    return words[reading.start][:1].isdecimal() and any(word[:1].isdecimal() for word in near)
