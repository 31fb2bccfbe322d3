"""Heights of a window and its wall told in any order: "33 to the sill, 77 1/2 to the head", "48 from sill to head, 24 more".

A sill is under its head and a head under the top, so three heights are what they are by their size, where no word beside one of
them names it otherwise. What stands over the sill or over the head is told by words. Nothing is put right that is in order.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length, Number
from solvers.slots import Parameter

POLE = "courses to openings"
SURE_TOPIC = 0.8  # share from which on no other word need tell the topic
LEAST_SHOWN, MOST_SHOWN = 2, 16  # in
PAIR = 2
LOWEST_SILL, HIGHEST_START = 12, 24  # in
_NAMES: dict[str, frozenset[str]] = {
    **dict.fromkeys(("sill", "sills", "cill"), frozenset(("sill", "window"))),
    **dict.fromkeys(("head", "heads", "header"), frozenset(("head", "window", "over"))),
    **dict.fromkeys(("soffit", "eave", "eaves", "frieze", "plate", "ceiling"), frozenset(("top", "over"))),
    "wall": frozenset(("top",)),
}
_STARTS = frozenset("start starts starting bottom base begin begins starter zero 0 nothing".split())
_TALL, _WALLS = frozenset(("tall", "high")), frozenset(("wall", "top", "soffit", "eave", "eaves"))
_COUNTED = frozenset("window windows door doors opening openings coats coat walls sides other".split())
_MORE = frozenset("more above over left another remaining then".split())
_LOW = frozenset("bottom base start starter edge ground floor deck slab zero ledger foundation sill".split())  # above those
_STOPS = frozenset((*".,;?!", "and"))
_FROM_SILL = (("sill", "to"), ("of", "window"), ("of", "glass"), ("of", "opening"))


@dataclass(slots=True)
class _Size:
    """One size, its value in inches, and the words up to the one before and the one after it."""

    reading: Reading
    inches: Fraction
    before: Sequence[str]
    after: Sequence[str]


def pole_told(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Give the heights of the first question, and the least and the most that shows, what they can only be."""
    question = next(iter(questions), None)
    if question is None or question.topic != POLE:
        return
    settled = question.plain and _in_order(question.givens)
    if question.lacking and chart.likely.get(POLE, 0.0) < SURE_TOPIC:
        return
    parameters = {p.name: p for p in topics[POLE]}
    sizes = _sizes(chart, parameters["sill"])
    pair = _shown(sizes)
    roles = _roles([size for size in sizes if size not in pair]) if pair else None
    if roles is None or (settled and ("window" not in roles or "window" in question.givens)):
        return
    roles |= dict(zip(("least", "greatest"), pair, strict=True))
    heard = {name: heard_as(chart, parameters[name], size.reading, True) for name, size in roles.items()}
    givens = {name: each for name, each in heard.items() if each is not None}
    if len(givens) == len(heard):
        question.givens, question.unplaced, question.missing = givens, [], []
        question.swaps, question.rival, question.lacking = [], False, 0


def _in_order(givens: Mapping[str, Heard]) -> bool:
    """Whether the heights that were given rise from the sill to the top."""
    told = [givens[name].value for name in ("bottom", "sill", "head", "top") if name in givens]
    sizes = [value.to("in").value for value in told if isinstance(value, Length)]
    return all(low < high for low, high in pairwise(sizes))


def _sizes(chart: Chart, height: Parameter) -> list[_Size]:
    """Every length and bare number of the sentence that could be a height, in the order said."""
    readings = list(_plain_sizes(chart))
    edges = [(0, 0), *((r.start, r.end) for r in readings), (len(chart.words), len(chart.words))]
    found = []
    for at, reading in enumerate(readings, 1):
        heard = heard_as(chart, height, reading, True)
        counts = reading.kind == "number" and not _COUNTED.isdisjoint(chart.words[reading.end : reading.end + 1])
        if heard is not None and isinstance(heard.value, Length) and not counts:
            before = chart.words[edges[at - 1][1] : reading.start]
            after = chart.words[reading.end : edges[at + 1][0]]
            found.append(_Size(reading, heard.value.to("in").value, before, after))
    return _as_shown(chart, found)


def _plain_sizes(chart: Chart) -> Iterator[Reading]:
    """The longest length or number at each place; 5 to 6 is no slope here."""
    at = 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if r.kind in ("length", "number") and isinstance(r.value, Length | Number)]
        if here:
            yield max(here, key=lambda r: (r.end, r.kind == "length"))
        at = max((r.end for r in here), default=at + 1)


def _as_shown(chart: Chart, sizes: list[_Size]) -> list[_Size]:
    """Those of small bare numbers, which a height takes for feet, in inches."""
    for size in sizes:
        value = getattr(size.reading.value, "value", None)
        if size.reading.kind == "number" and value is not None and value <= MOST_SHOWN and value * 12 == size.inches:
            size.inches = value
    return sizes


def _shown(sizes: list[_Size]) -> list[_Size]:
    """The least and the most that shows: the one pair beside each other of which both are no height."""
    small = [size for size in sizes if LEAST_SHOWN <= size.inches <= MOST_SHOWN and _STARTS.isdisjoint(size.before)]
    small = [size for size in small if not (_is_over(size) or _is_window(size))] if len(small) > PAIR else small
    alike = len(small) == PAIR and sizes.index(small[1]) - sizes.index(small[0]) == 1
    return sorted(small, key=lambda size: size.inches) if alike and small[0].inches != small[1].inches else []


def _roles(sizes: list[_Size]) -> dict[str, _Size] | None:
    """Which size is which; None where a word names one otherwise, or there are more or fewer than it takes."""
    roles: dict[str, _Size] = {}
    low = [size for size in sizes if size.inches < LOWEST_SILL or (size.inches <= HIGHEST_START and _starts(size))]
    if len(low) == 1 and _starts(low[0]):
        roles["bottom"] = low[0]
    heights = [size for size in sizes if size not in low]
    if len(heights) != 3 or len(low) > len(roles):
        return None
    for name, tells in (("window", _is_window), ("over", _is_over)):
        told = [size for size in heights if size not in roles.values() and tells(size)]
        if len(told) > 1:
            return None
        roles |= dict.fromkeys([name] * len(told), *told)
    rest = sorted((size for size in heights if size not in roles.values()), key=lambda size: size.inches)
    open_to = [name for name in ("sill", "head", "top") if {"head": "window", "top": "over"}.get(name) not in roles]
    if len(rest) != len(open_to) or any(a.inches == b.inches for a, b in pairwise(rest)):
        return None
    roles |= dict(zip(open_to, rest, strict=True))
    return roles if all(_may_be(name, size) for name, size in roles.items()) and _rises(roles) else None


def _rises(roles: Mapping[str, _Size]) -> bool:
    head = roles["head"].inches if "head" in roles else roles["sill"].inches + roles["window"].inches
    return ("bottom" not in roles or roles["bottom"].inches < roles["sill"].inches) and (
        "top" not in roles or head < roles["top"].inches
    )


def _starts(size: _Size) -> bool:
    return not size.inches or not _STARTS.isdisjoint(_near(size.before[::-1]))


def _is_window(size: _Size) -> bool:
    """Whether it is how tall the window is: 48 from sill to head, 4 foot of window, window is 46 tall."""
    after = _near(size.after)
    if any(pair in _FROM_SILL for pair in pairwise(after)):
        return True
    return not _TALL.isdisjoint(after[:1]) and _WALLS.isdisjoint(size.before)


def _is_over(size: _Size) -> bool:
    """Whether it is what is left over the head: 24 more to the top, then 1'8 above, 510 left over it."""
    after, before = _near(size.after), size.before[-2:]
    return not _MORE.isdisjoint((*after, *before)) and _LOW.isdisjoint(after)


def _may_be(name: str, size: _Size) -> bool:
    """Whether no word beside a size names another line alone; where words on both sides name one, either may be meant."""
    if name in ("window", "over", "bottom"):
        return True
    sides = (_near(size.before[::-1]), _near(size.after))
    named = [_NAMES[word] for side in sides for word in side if word in _NAMES]
    return not named or any(name in names for names in named)


def _near(words: Sequence[str]) -> list[str]:
    """The words up to the first stop."""
    end = next((at for at, word in enumerate(words) if word in _STOPS), len(words))
    return list(words[:end])
