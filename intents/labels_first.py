"""Two parts of a triangle told after their names, and the third named last: rafter 10 ft 2, run 8 ft, rise?

The same words may name each part after its size ("rafter? 10 ft 2 run, 8 ft rise"): without a stop or a word that asks before
the last name, both ways go on, and the conversation asks.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading

TRIANGLE = "right triangle"
_PARTS = {
    "rise": "rise", "run": "run", "rafter": "slope", "slope": "slope", "hyp": "slope", "hypotenuse": "slope", "rake": "slope",
}  # fmt: skip
_NAME = rf"({'|'.join(_PARTS)})(?: (?:length|is|of|at))?"
_LINE = expression(
    rf"(?:(?:the|my|common|so|ok|if) )*{_NAME} L(?: ,| and)*(?: (?:the|my))? {_NAME} L"
    rf"(?P<asks>(?: (?:,|\.|and|what|is|the|find|how|long|high))*) {_NAME}(?P<end>[ ?.]*)"
)
_SURE = 0.6  # of a length; one less sure was put together of bare numbers
_SCORE = 9.0  # as of a rule that fits whole


def labels_first(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Read such a line by the names before its sizes, where the long side is the longest of what it tells."""
    if len([word for word in chart.words if word in _PARTS]) < 2:  # two of them stand before the sizes
        return
    found, line = _sizes(chart)
    said = _LINE.fullmatch(line) if len(found) == 2 else None
    if said is None:
        return
    names = [_PARTS[said[n]] for n in (1, 2, 4)]  # the third group is what asks
    place = next(p for p in topics[TRIANGLE] if p.name == "run")
    one, other = (heard_as(chart, place, reading, True) for reading in found)
    if len({*names}) < len(names) or one is None or other is None:
        return
    before = {names[0]: one, names[1]: other, "wanted": Heard(names[2].upper(), 0, 0, "")}
    after = {names[1]: one, names[2]: other, "wanted": Heard(names[0].upper(), 0, 0, "")}
    ways = [way for way in (before, after) if _closes(way)]
    if said["asks"] or "?" in said["end"] or names[2] == "slope":  # which is mostly what is asked
        ways = ways[:1] if before in ways else []
    if ways:
        questions[:] = [Question(TRIANGLE, ways[0], _SCORE, words=["triangle"], swaps=ways[1:])]


def _sizes(chart: Chart) -> tuple[list[Reading], str]:
    """The lengths and bare numbers of a line, and the line with L for each: 12 run 10 is no pitch there."""
    found, words, at = [], [], 0
    while at < len(chart.words):
        here = [r for r in chart.readings[at] if r.kind in ("length", "number") and r.sure >= _SURE]
        best = max(here, key=lambda r: (r.end, r.kind == "length"), default=None)
        words.append("L" if best is not None else chart.words[at])
        found += [best] if best is not None else []
        at = best.end if best is not None else at + 1
    return found, " ".join(words)


def _closes(way: dict[str, Heard]) -> bool:
    """Whether the long side, where it is told, is longer than the other part."""
    slope = way.get("slope")
    legs = [way[name] for name in ("rise", "run") if name in way]
    return slope is None or all(slope.value.to("in").value > leg.value.to("in").value for leg in legs)
