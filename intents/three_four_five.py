"""A 3-4-5 of which one side is told: "3 4 5 with the short side 6 foot, what's the diagonal", "900 as the three, the others?".

The one side and its share tell the other two, each a third, a quarter or a fifth of it so many times.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.leaning_told import best_at
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Length

CHECK, OUT, TRIANGLE = "square check", "out of square", "right triangle"
FIVE = (4.5, 5.5)  # so long is what was pulled across a 3-4-5 in one of its units
_SCORE = 9.0  # as of a rule that fits whole
_PARTS = {"run": 3, "rise": 4, "slope": 5}
_THE_THREE = expression(r"\b(?:3|three)(?: [-,]| by)? (?:4|four)(?: [-,]| by| and)? (?:5|five)\b")
_NAMES = {
    "run": r"(?:short|shorter|shortest|3|three|small)", "rise": r"(?:long|longer|4|four|big)",
    "slope": r"(?:diagonal|diag|hypotenuse|hyp|5|five|longest|long side of all)",
}  # fmt: skip
_NAMED = frozenset("3 three 4 four 5 five one two".split())
_SIDE = r"(?: (?:side|leg|one|way|end|side's|leg's))?"
_IS = r"(?: (?:is|of|at|as|being|was|measures|measured|reads|read|comes|came|out|to|be))*"
_TOLD = {
    name: expression(
        rf"\b{said}{_SIDE}{_IS} @|@(?: (?:as|for|on|is|was|along|down|of|to be))+(?: (?:the|my|its))? {said}\b|@ {said}\b"
    )
    for name, said in _NAMES.items()
}
_ASKED = {
    name: expression(rf"\b(?:what|where|how long|find|how far|how much)(?: \w+){{0,3}} {said}\b") for name, said in _NAMES.items()
}

_HELD = expression(
    r"\b(?:(?:how|far|much|it|is|that|be) out|out of|off|racked|skewed|is (?:it|that|this) (?:square|good|true|right))\b"
)


def three_four_five(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Make the sides of a 3-4-5 out of the one that is told."""
    if "5" not in chart.words and "five" not in chart.words:
        return
    found, line = _one_size(chart)
    told = [name for name, words in _TOLD.items() if words.search(line)] if found is not None else []
    heard = heard_as(chart, next(p for p in topics[CHECK] if p.name == "side"), found, True) if found is not None else None
    if len(told) != 1 or heard is None:
        return
    if _HELD.search(line):
        if told == ["slope"]:
            _held_against(heard, questions)
        return
    asked = [name for name, words in _ASKED.items() if words.search(line) and name != told[0]]
    sides = {name: _part(heard, name, told[0]) for name in _PARTS}
    if told[0] == "slope" or asked in (["run"], ["rise"]):
        wanted = asked[0] if len(asked) == 1 else "run"
        given = {name: side for name, side in sides.items() if name != wanted}
        question = Question(TRIANGLE, {**given, "wanted": Heard(wanted.upper(), 0, 0, "")}, _SCORE, words=["3-4-5"])
    else:
        question = Question(CHECK, {"side": sides["run"], "other_side": sides["rise"]}, _SCORE, words=["3-4-5"])
    questions[:] = [question]


def _held_against(tape: Heard, questions: list[Question]) -> None:
    """A tape across a 3-4-5 of whole feet, or metres, held against its 5; another size tells none of its sides."""
    whole = "ft" if tape.value.unit in ("ft", "in") else "m"
    unit = whole if FIVE[0] < tape.value.to(whole).value < FIVE[1] else ""
    sides = {name: Heard(Length(Fraction(n), unit, str(n)), 0, 0, "") for name, n in (("side", 3), ("other_side", 4)) if unit}
    given = {**sides, "diagonal": tape}
    missing = [] if unit else ["side", "other_side"]
    questions[:] = [Question(OUT, given, _SCORE, words=["3-4-5"], missing=missing)]


def _one_size(chart: Chart) -> tuple[Reading | None, str]:
    """The one size beside the 3-4-5, and the line with it as @ and without the three numbers; none where there are others."""
    words, places = [], [*range(len(chart.words))]
    line = " ".join(chart.words)
    three = _THE_THREE.search(line)
    if three is None:
        return None, ""
    first = line[: three.start()].count(" ")
    last = first + three[0].count(" ") + 1
    found, at = [], 0
    while at < len(places):
        best = None if first <= at < last else best_at(chart, at)
        named = best is not None and best.end == at + 1 and chart.words[at] in _NAMED
        if best is None or named or not (best.kind == "number" or isinstance(best.value, Length)):
            words += [] if first <= at < last else [chart.words[at]]
            at += 1
            continue
        found.append(best)
        words.append("@")
        at = best.end
    return (found[0], " ".join(words)) if len(found) == 1 else (None, "")


def _part(heard: Heard, name: str, told: str) -> Heard:
    """A side of it by the one that is told, in any of the units that may be of."""
    if name == told:
        return heard
    share = Fraction(_PARTS[name], _PARTS[told])
    values = [replace(v, value=v.value * share, text=f"{share} of {heard.text}") for v in (heard.value, *heard.others)]
    return replace(heard, value=values[0], text=values[0].text, others=(*values[1:],))
