"""Rows of `leans_on_it.py` for one given told in a word of its own: so many degrees, the radius, the eave, centres, a layer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.plain_lines import Plain
from assistant.said_over import places_of, whole
from assistant.several import told_of
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length, Temperature

if TYPE_CHECKING:
    from assistant.pending import Asked

_DEGREES = expression(  # and say it's nine degrees
    r"(?:(?:say|if|what if|when|suppose|now|make) )*(?:it'?s|it is|it was|it|it goes to"
    r"|it drops to)? ?(?P<n>\S+(?: \S+)?) degrees?"
    r"(?: (?:with|at) (?:the|that) same humidity| (?:in here|outside|out|instead|then|now))*",
    re.IGNORECASE,
)
_IN_FACT = expression(r",? in (?:fact|truth|reality|the end|actual fact)\b", re.IGNORECASE)
_LAYER = expression(
    r"(?:the )?(?P<what>[a-z]+)(?:'s| is| are| was|s)? (?:only |really "
    r"|actually )?(?P<n>[\d/ ]+?)(?P<unit> ?[a-z]+)?,? not (?P<old>[\d/ ]+)",
    re.IGNORECASE,
)
_CENTRES = expression(
    r"(?:(?:do|make|put|set|go|try|use|what if) ?(?:it|them|that|they're|we)?(?: go)? ?)?(?:at|to|on"
    r"|with)? ?(?P<n>.+?) ?(?:inch )?"
    r"(?:cent(?:er|re)s?|on cent(?:er|re)|o\.?c\.?)(?: instead| then| now)?",
    re.IGNORECASE,
)
_RADIUS = expression(
    r"(?:(?:what about|how about|what if|and|for|one|make|it's|it) )*(?:with |of "
    r"|has )*(?:an? )?(?P<n>.+?) radius(?: (?:one|instead))?",
    re.IGNORECASE,
)
_EAVE = expression(
    r"(?:the )?(?:eaves?)(?:'s| is| are| comes to)? (?P<n>.+?)(?:,? (?:re-?measured|measured again|now|actually))*", re.I
)

_SAWN = expression(
    r"[^\d]*?\b(?P<grain>(?:quarter|flat|plain|rift)[ -]?sawn|(?:vertical|flat|edge) grain)(?P<wood> [a-z]+)?\b[^\d]*",
    re.IGNORECASE,
)
_WOODS = frozenset("walnut cherry maple ash poplar mahogany teak oak cedar pine fir".split())


def other_grain(line: str, last: Asked) -> Iterator[Plain]:
    """How the same board is sawn, and its wood where that is told with it."""
    found = _SAWN.fullmatch(line) if "grain" in last.givens else None
    if found is not None:
        wood = (found["wood"] or "").strip().lower()
        yield Plain(f"{found['grain']} {wood}" if wood in _WOODS else found["grain"])


_TAIL = expression(  # with a 450 tail on the end, measured level
    r"(?:(?:with|and|plus|allow|allowing|add|there's|it's got|has|put) )*(?:an?|the) (?P<n>[^,;?]+?) (?:of )?"
    r"(?:tail|overhang|eaves?)(?: (?:on|at|past|over|off|beyond|down) (?:the |each |its |that )?"
    r"(?:ends?|bottom|foot|wall|eaves?|it|low end|outside))+"
    r"(?P<how>,? (?:measured|taken|and that's|that's|all) (?:level|along the slope|up the slope))?",
    re.IGNORECASE,
)


def tail_on_it(line: str, last: Asked) -> Iterator[Plain]:
    """The tail that a rafter has, wherever it is said to be: on the end, past the wall."""
    found = _TAIL.fullmatch(line) if any(p.label == "overhang" for p in last.topic.parameters) else None
    if found is not None and whole(found["n"]):
        yield Plain(f"with a {found['n']} overhang{found['how'] or ''}", told=found["n"])


def on_its_scale(line: str, last: Asked) -> Iterator[Plain]:
    """So many degrees, of the scale that the one temperature told before was on."""
    told = [given.value for given in told_of(last).values() if isinstance(given.value, Temperature)]
    found = _DEGREES.fullmatch(line) if len(told) == 1 else None
    if found is not None and len(places_of(f"{found['n']} C")) == 1:
        yield Plain(f"temperature {found['n']} {'F' if 'f' in told[0].unit.lower() else 'C'}")


def in_fact(line: str, last: Asked) -> Iterator[Plain]:
    """What is so in fact is no number of inches: batten's 38 in fact."""
    if _IN_FACT.search(line):
        rest = _IN_FACT.sub("", line)
        yield Plain(rest, told=rest)


def layer_not(line: str, last: Asked) -> Iterator[Plain]:
    """A layer put right by its name and what it was: the cladding is 22, not 18."""
    found = _LAYER.fullmatch(line) if "layers" in last.givens else None
    if found is None:
        return
    metric = [one.thickness.unit for one in last.givens["layers"].value if getattr(one, "thickness", None) is not None]
    named = [one for one in last.givens["layers"].value if found["what"].lower() in getattr(one, "what", "").lower()]
    old = _number(found["old"])
    if len(named) == 1 and len(set(metric)) == 1 and old is not None and getattr(named[0].thickness, "value", None) == old:
        yield Plain(
            f"{found['n'].strip()} {found['unit'] or metric[0]} {found['what']}, not {found['old']}",
            told=f"{found['n']} {metric[0]}",
        )


def _number(words: str) -> object:
    said = numbers_in(words)
    return getattr(said[0].value, "value", None) if len(said) == 1 else None


def at_centres(line: str, last: Asked) -> Iterator[Plain]:
    """How far apart, told by the word for it: do it at 16 centers."""
    found = _CENTRES.fullmatch(line) if any(last.topic.parameter(key).label == "centres" for key in last.givens) else None
    places = places_of(found["n"]) if found is not None else []
    if found is not None and len(places) == 1 and places[0].value.unit == "none" and places[0].value.value.denominator == 1:
        old = next(given.value for key, given in last.givens.items() if last.topic.parameter(key).label == "centres")
        unit = "mm" if getattr(old, "unit", "") in ("mm", "m", "cm") else "inches"
        yield Plain(f"centres {places[0].value.value} {unit}", told=f"{places[0].value.value} {unit}")


def by_radius(line: str, last: Asked) -> Iterator[Plain]:
    """Another circle told by its radius, where the last was told by how far across it is."""
    found = _RADIUS.fullmatch(line) if last.topic.name == "circle" and "across" in " ".join(last.givens) else None
    places = places_of(found["n"]) if found is not None else []
    if len(places) == 1 and isinstance(places[0].value, Length):
        across = f"{float(2 * places[0].value.value):g} {places[0].value.unit}"
        yield Plain(f"make it {across} across", told=across)


def eave_long(line: str, last: Asked) -> Iterator[Plain]:
    """How long the eave is, of soffit panels, where the number is no depth."""
    found = _EAVE.fullmatch(line) if last.topic.name == "soffit panels" and "run" in last.givens else None
    places = places_of(found["n"]) if found is not None else []
    if found is not None and len(places) == 1 and places[0].value.unit in ("ft", "m", "in"):
        yield Plain(f"run {found['n']}", told=found["n"], holds=lambda now, before: now.givens["depth"] == before.givens["depth"]
                    if "depth" in before.givens else True)  # fmt: skip
