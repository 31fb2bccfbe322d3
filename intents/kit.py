"""Sizes of the kit on site, which no topic asks for: the scaffold is 14 ft, the van holds 6, a 100 ft chalk box.

What a question works out of is the wall; a size said of kit alone, in a clause or right before its name, is passed over
wherever nothing asks whether the work fits it. Kit whose size some topic takes (a ladder, a saw) is in `beside.py`.
"""

from __future__ import annotations

from collections.abc import Iterator

from intents.chart import Chart, once, span
from solvers.quantities import Length, Quantity

_KIT = frozenset(
    "scaff scaffs scaffold scaffolds scaffolding tower trestle trestles staging chalk gun nailer compressor van truck trailer"
    " lorry ute pickup merchant merchants depot brake blade".split()
)
_OF_BENDS = frozenset(("brake",))  # heard for a rake in any other topic
_BENDS, _LEANS = "bent flashing", "ladder footing"  # a ladder may bear on the scaffold
_HOLDS = frozenset("holds takes carries rated max loaded blade".split())  # a number with no unit is what kit holds
_BLADE, _LEAST_BLADE = "blade", 5  # in; a smaller size said of a blade is its kerf
_BETWEEN = frozenset(
    "box line is are was holds takes carries fits rated for at only a the about to max does of up it's its extension".split()
)
_NAMES_ON = frozenset("box line mobile tow work nail flat bending metal folding".split())  # between a size and its kit
_AFTER = frozenset(
    "long high wide tall off away max each full only capacity total up deep lbs kg bed back off on miles mile reel".split()
)
_ENDS = frozenset(("", ",", ".", ";", "!", "?", "so", "and", "but", "if"))
_ASKS = frozenset(  # with one of these it may be asked whether the work fits the kit
    "fit fits reach reaches enough trip trips load loads clear clears room carry overload overloaded too fill fills cope"
    " short legal safe allowed".split()
)
_WEIGH = frozenset(("weigh", "weighs", "weight"))
_MOST_BETWEEN = 3
_PARTS = frozenset("gable gables roof wall walls rake rakes eave eaves end side".split())


def of_kit(chart: Chart, topic: str) -> int:
    """Mask of the quantities that are told of kit alone, for a topic."""
    found, bends = _told(chart) if topic != _LEANS else (0, 0)
    return found | bends if topic == _BENDS else found


@once
def _told(chart: Chart) -> tuple[int, int]:
    """The mask of what is told of kit, and of what is told of a bending brake."""
    words = [*chart.words, "", ""]
    asks = _ASKS - {"load"} if not _WEIGH.isdisjoint(words) else _ASKS  # what does the load weigh
    if _KIT.isdisjoint(words) or not asks.isdisjoint(words):
        return 0, 0
    found = [(name, span(start, end)) for start, end, name in _sizes(chart, words)]
    kit = bends = 0
    for name, mask in found:
        kit, bends = (kit, bends | mask) if name in _OF_BENDS else (kit | mask, bends)
    return kit, bends


def _sizes(chart: Chart, words: list[str]) -> Iterator[tuple[int, int, str]]:
    """Each quantity said of kit, with the name of that."""
    for start, row in chart.starts():
        ends = [r for _, r in row if isinstance(r.value, Quantity) and r.kind != "money"]
        if not ends:
            continue
        best = max(ends, key=lambda r: (r.end, r.sure))
        name = _before(words, start, best.end) or _after(words, best.end)
        if best.kind == "number" and _HOLDS.isdisjoint(words[max(0, start - 1 - _MOST_BETWEEN) : start]):
            continue
        loaded = words[start - 1 : start] in (["at"], ["@"]) and words[best.end] == "each"  # what goes in the van at 38 kg each
        if name and not loaded and not (name == _BLADE and _is_kerf(best.value)):
            yield start, best.end, name


def _before(words: list[str], start: int, end: int) -> str:
    """The kit that a size is said of, with nothing else said of it after: the scaffold is | 14 ft | high."""
    at = start - 1
    while at >= 0 and words[at] in _BETWEEN and start - at <= _MOST_BETWEEN:
        at -= 1
    at -= at > 0 and words[at] == "," and words[at + 1] in _HOLDS  # trailer, rated 3500
    if at < 0 or words[at] not in _KIT or not _PARTS.isdisjoint(words[max(0, at - _MOST_BETWEEN) : at]):
        return ""  # the gable on this trailer's 14 foot wide
    after = end + (words[end] in _AFTER)
    return words[at] if words[after] in _ENDS else ""


def _after(words: list[str], end: int) -> str:
    """The kit whose size stands before its name: 100 ft | chalk box."""
    at = end + (words[end] in _NAMES_ON)
    return words[at] if words[at] in _KIT else ""


def _is_kerf(value: object) -> bool:
    size = value.to("in").value if isinstance(value, Length) else getattr(value, "value", 0)
    return bool(size < _LEAST_BLADE)
