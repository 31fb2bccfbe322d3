"""A unit and the opening it goes in: what is left around it is put on to the one, and comes off the other.

"Leave half an inch each side" sounds like taking away; whether it is that depends on what was measured and what is asked for.
Where the window was measured and the rough opening is asked for, the gap is put on; the other way round it comes off. Said of
both sides it counts twice.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, quantities
from intents.question import Question
from intents.reading import Reading
from intents.remarks import ENDS, clauses
from solvers.quantities import Length, Number, Quantity
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum

TOPIC, SLOT = "tape arithmetic", "sum"
_UNITS = frozenset("window unit door slab sash fanlight sidelight leaf tub bath range fridge cooker washer vanity".split())
_OPENINGS = frozenset("opening ro r.o hole aperture recess alcove".split())
_FRAMED = frozenset(("it", "for", "the", "that", "out"))  # how wide do I frame it
_BOTH = (
    ("each", "side"), ("either", "side"), ("both", "sides"), ("every", "side"), ("all", "round"), ("all", "around"),
    ("all", "the", "way", "round"), ("all", "the", "way", "around"), ("top", "and", "bottom"), ("a", "side"), ("each", "end"),
    ("either", "end"), ("both", "ends"), ("per", "side"), ("left", "and", "right"),
)  # fmt: skip
_LEFT = frozenset("clear left through daylight inside between".split())  # the clear opening is what the jambs leave
_TOLD = frozenset("plus add added adding minus less subtract deduct bigger larger smaller + - −".split())  # what to do is said
_NEAR = 4
_TWO = Number(Fraction(2), "none", "2")


def around(chart: Chart, question: Question) -> None:
    """Put the sum of a unit and its gaps right where the words tell what was measured and what is asked for."""
    heard = question.givens.get(SLOT) if question.topic == TOPIC else None
    if heard is None or not isinstance(heard.value, Sum):
        return
    sizes = list(quantities(chart, 0, len(chart.words)))
    if len(sizes) != 2 or heard.value.operation not in (PLUS, MINUS, TIMES):
        return
    if _both_told(chart.words, sizes):
        shared = _gap_asked(chart.words, heard.value)
        if shared is not None:
            _settle(question, shared)
        elif heard.value.operation == PLUS:
            question.lacking = question.lacking or 1  # nobody adds a window to the opening for it
        return
    operation, gap = _operation(chart.words, sizes), _single(heard.value.right)
    if not operation or gap is None or heard.value.operation == TIMES or not isinstance(heard.value.left, Length | Number):
        return
    twice = _said_of_both(chart.words, sizes[1].end)
    if not (twice or isinstance(heard.value.right, Sum)) or not _TOLD.isdisjoint(chart.words):
        return
    right = Sum(TIMES, _TWO, gap) if twice else heard.value.right
    _settle(question, Sum(operation, heard.value.left, right, heard.value.text))


def _settle(question: Question, made: Sum) -> None:
    heard = question.givens[SLOT]
    question.givens = {**question.givens, SLOT: replace(heard, value=made, others=())}
    question.lacking, question.swaps, question.rival = 0, [], False


def _both_told(words: Sequence[str], sizes: list[Reading]) -> bool:
    """Whether one of two sizes is of an opening, and the other of what goes in it: a 34 window in a 35 opening."""
    near = [{words[place] for place in _beside(words, size)} for size in sizes]
    opens = [not _OPENINGS.isdisjoint(each) for each in near]
    return opens[0] != opens[1] and not _UNITS.isdisjoint(near[opens[0]])


def _gap_asked(words: Sequence[str], told: Sum) -> Sum | None:
    """Half of what an opening has over the unit in it, where the gap at each side is asked for."""
    parts = (told.left, told.right)
    if not any(tuple(words[at : at + len(each)]) == each for at in range(len(words)) for each in _BOTH):
        return None
    if not all(isinstance(part, Number) or (isinstance(part, Length) and part.unit == "in") for part in parts):
        return None
    large, small = sorted(parts, key=lambda part: part.value, reverse=True)  # type: ignore[union-attr]
    return Sum(DIVIDED, Sum(MINUS, large, small), _TWO)


def _single(part: Part | None) -> Part | None:
    """The gap at one side."""
    if isinstance(part, Sum):
        return part.right if part.operation == TIMES and isinstance(part.right, Length | Number) and _is_two(part.left) else None
    return part


def _is_two(part: Part | None) -> bool:
    return isinstance(part, Number) and part.value == 2


def _operation(words: Sequence[str], sizes: list[Reading]) -> str:
    """What is done with the gap; "" where the words leave that open."""
    assert isinstance(sizes[0].value, Quantity)
    measured = {*_beside(words, sizes[0])}
    rest = [word for place, word in enumerate(words) if place not in measured]
    near = {words[place] for place in measured}
    if not _OPENINGS.isdisjoint(near):
        return MINUS if not _UNITS.isdisjoint(rest) and _OPENINGS.isdisjoint(rest) else ""
    asks = not _OPENINGS.isdisjoint(rest) or any(a == "frame" and b in _FRAMED for a, b in pairwise(rest))
    return PLUS if asks and _LEFT.isdisjoint(words) and not _UNITS.isdisjoint(near) else ""


def _beside(words: Sequence[str], size: Reading) -> Iterator[int]:
    """The places of the words around what was measured, up to a stop, or to what it is for: rough opening for a | 30 window."""
    start, end = next((s, e) for s, e in clauses(words) if s <= size.start < e)
    for place in range(size.start - 1, max(start, size.start - _NEAR) - 1, -1):
        if words[place] in ENDS or words[place] == "for":
            break
        yield place
    for place in range(size.end, min(end, size.end + _NEAR)):
        if words[place] in ("and", "with", "for", "past", "beyond"):  # 2 1/4 past the opening
            break
        yield place


def _said_of_both(words: Sequence[str], end: int) -> bool:
    """Whether the gap is said to be on both sides, in its own clause."""
    stop = next((at for at in range(end, len(words)) if words[at] in ENDS), len(words))
    after = words[end:stop]
    return any(tuple(after[at : at + len(each)]) == each for at in range(len(after)) for each in _BOTH)
