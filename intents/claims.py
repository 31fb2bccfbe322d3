"""What a person has or hopes for, set beside the answer: "will 60 boards do?", "is a quarter inch end gap enough".

Such a quantity belongs to no parameter. It is only looked for where a question has no other place for it.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Claim
from intents.reading import Dims
from solvers.quantities import Quantity

_ASKS = frozenset("will would is are does do can".split())
_ENOUGH = frozenset("enough do cover covers plenty suffice sufficient".split())
_RIGHT = frozenset("right correct true".split())  # is 45 right for a 92 corner
_HARDLY = frozenset("about still actually really the a far".split())
_STATES = frozenset(("is", "are"))  # these ask only where a question begins: "the soffit is 7.4 m" states
_BEGINS = frozenset(", . ? ! ; : - ( and so but or then well ok okay hey now how what there theres here".split())
_MORE = frozenset("over above more exceed beyond past".split())
_LESS = frozenset("under below less".split())
_TOLD = frozenset("swears swore reckons reckon claims insists bets guesses thinks says quoted quotes".split())
_QUOTED, _FOR = frozenset(("quoted", "quotes")), frozenset(("for", "a", "per", "an"))
_COSTS = frozenset("cost costs price bill total come comes pay spend money much worth charge budget".split())
_STOPS = frozenset(".?!;")
_TURNS, _WHO = frozenset("but i we though however".split()), frozenset("he she they".split())
_AGO = 4  # words from who tells it to what is told
_FASTENERS = frozenset("screw screws nail nails staple staples lag lags bolt bolts spike spikes shank shanks".split())
_KINDS = frozenset("trim deck siding wood roofing finish ring shank galvanised galvanized stainless structural framing".split())
_ENOUGH_FOR = frozenset("enough ok okay do".split())
_REACHES = frozenset("reach reaches make get gets go goes hold holds bite bites catch grab long work".split())
_IS, _SOON = frozenset("is be are was it's".split()), 5
_LED, _AFTER = 5, 9  # words between the asking word and the quantity, and from it to "enough"


def claim_of(chart: Chart) -> Claim | None:
    """The quantity that the answer is to be held against, or None."""
    for i, word in enumerate(chart.words):
        if word not in _ASKS or (word in _STATES and not _begins(chart.words, i)):
            continue
        for at in range(i + 1, len(chart.words)):
            found = [r for r in chart.readings[at] if isinstance(r.value, Quantity)]
            if not found:
                continue
            best = max(found, key=lambda r: (r.end, r.kind != "number"))
            way = _way(chart, i, at, best.end)
            if way:
                return Claim(best.value, chart.said(best.start, best.end), way, best.start, best.end)
            if at > i + _LED:
                break
    return _opens(chart) or _told(chart)


def _opens(chart: Chart) -> Claim | None:
    """The size of a nail that opens the line, of which it is asked whether it is enough: 2 1/2 in ring shank enough for."""
    for at in range(min(2, len(chart.words))) if not _ENOUGH_FOR.isdisjoint(chart.words) else ():
        found = [r for r in chart.readings[at] if isinstance(r.value, Quantity)]
        best = max(found, key=lambda r: (r.end, r.kind != "number"), default=None)
        if best is None:
            continue
        end = best.end + 1 + (chart.words[best.end : best.end + 1] != [] and chart.words[best.end] in _KINDS)
        if not _FASTENERS.isdisjoint(chart.words[end - 1 : end]) and not _ENOUGH_FOR.isdisjoint(chart.words[end : end + 3]):
            return Claim(best.value, chart.said(best.start, best.end), "enough", best.start, best.end)
    return None


def _begins(words: list[str], i: int) -> bool:
    return not i or words[i - 1] in _BEGINS


def _told(chart: Chart) -> Claim | None:
    """What somebody is told to hold the answer for: "he swears it's sixty degrees"."""
    for at in () if _TOLD.isdisjoint(chart.words) else range(len(chart.words)):
        found = [r for r in chart.readings[at] if isinstance(r.value, Quantity)]
        near = chart.words[max(0, at - _AGO) : at]
        sized = any(isinstance(r.value, Dims) for r in chart.readings[at])  # he reckons it is ten foot by thirteen
        if found and _quoted_for(chart.words, near, max(r.end for r in found)):
            continue
        best = max(found, key=lambda r: (r.end, r.kind != "number"), default=None)
        if best is not None and not sized and (_says(near) or _said_after(chart.words[best.end : best.end + 2])):
            return Claim(best.value, chart.said(best.start, best.end), "same", best.start, best.end)
    return None


def _says(near: list[str]) -> bool:
    """Whether what is told next is what somebody says: the yard says | 23; not he says so but I measured | 23."""
    at = max((at for at, word in enumerate(near) if word in _TOLD), default=-1)
    return at >= 0 and _STOPS.isdisjoint(near) and _TURNS.isdisjoint(near[at + 1 :])


def _said_after(after: list[str]) -> bool:
    """Whether it is told after it who says so: 25 squares | he says."""
    return after[:1] != [] and after[0] in _WHO and not _TOLD.isdisjoint(after[1:])


def _quoted_for(words: list[str], near: list[str], end: int) -> bool:
    """Whether it is money that was quoted, where no money is asked: quoted 4,200 for the wall, 12 a foot."""
    priced = not _QUOTED.isdisjoint(near) and not _FOR.isdisjoint(words[end : end + 1])
    return priced and _COSTS.isdisjoint(words)


def _way(chart: Chart, start: int, at: int, end: int) -> str:
    """How it is held against the answer: "enough", "more", "less", or "" when it is not."""
    before = set(chart.words[max(start, at - 3) : at])
    if before & _MORE:
        return "more"
    if {"out", "of"} <= before:  # ten pieces out of two sticks
        return "enough"
    if before & _LESS:
        return "less"
    if at > start + _LED:
        return ""
    if _fastener(chart.words, end) or not _ENOUGH.isdisjoint(chart.words[end : end + _AFTER]):
        return "enough"  # does a 2 1/2 inch screw make it through
    return "same" if _called_right(chart.words[end : end + _SOON]) else ""


def _fastener(words: list[str], end: int) -> bool:
    """Whether a size is that of a nail or a screw, of which it is asked how far it gets."""
    at = end + (words[end : end + 1] != [] and words[end] in _KINDS)
    return not _FASTENERS.isdisjoint(words[at : at + 1]) and not _REACHES.isdisjoint(words[at + 1 : at + 3])


def _called_right(after: list[str]) -> bool:
    """Whether it is asked if a quantity is right: 45 | be about right for; 15 ft | the right diagonal. A right angle is none."""
    rest = [word for word in after if word not in _HARDLY and word not in _IS]
    at = after.index(rest[0]) if rest else 0
    return bool(rest) and rest[0] in _RIGHT and after[at + 1 : at + 2] not in (["angle"], ["angled"], ["triangle"])
