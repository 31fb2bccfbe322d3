"""Slopes told as a story, with none of the terms: "ridge stands 6 foot 3 over the plate and 12 foot 6 in from it, how long is
the line up the slope", "12 foot rafters meet in the middle, each goes in 9 foot, how high".

Two quantities, each of which words tell the way it goes, and a question about another part: that is a triangle, or a slope at
its pitch, and no sum. A line that holds anything else is left to the other readers.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, NamedTuple

from intents import leaning_words as say
from intents.chart import Chart, once
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Angle, Length, Number, Pitch, Quantity

TRIANGLE, SLOPED, RISE = "right triangle", "sloped length", "rise over a run"
FROM_BOTH, HIP = "pitch from rise and run", "hip or valley length"
_SURE_PITCH, _SURE = 0.85, 0.5
MOST = 3  # quantities that tell a slope, besides a pitch that they are held against
_SCORE = 9.0  # as of a rule that fits whole
_WAYS = (("rise", say.RISE), ("slope", say.SLOPE), ("run", say.RUN))
_ASKS = (("rise", say.HIGH), ("run", say.OUT), ("grade", say.GRADE), ("angle", say.STEEP), ("slope", say.LONG))
_MAY_BE = frozenset((TRIANGLE, SLOPED, RISE, "tape arithmetic"))  # topics that such a line is taken for
_COUNTS = frozenset(("two", "2", "both", "one", "a", "an", "each", "half"))  # the two boards, half round


class Told(NamedTuple):
    """The quantities of a line from left to right, and its words with a letter in the place of each."""

    found: list[Reading]
    words: list[str]

    def at(self, n: int) -> str:
        """The line with the quantity that is looked at as @."""
        place = [at for at, word in enumerate(self.words) if word in ("L", "A", "P")][n]
        return " ".join([*self.words[:place], "@", *self.words[place + 1 :]])


def leaning_told(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Read a line that is all one slope as that."""
    first = next(iter(questions), None)
    if first is not None and (first.claim or (first.plain and first.topic not in _MAY_BE)):
        return
    told = told_of(chart)
    if told is None:
        return
    line = " ".join(told.words)
    if say.NOT_OF_IT.search(line):
        return
    asks = [part for part, words in _ASKS if words.search(line)]
    asked = "grade" if "grade" in asks else asks[0] if len(asks) == 1 else ""
    if not asked:
        return
    question = _from_low_to_high(chart, told, asked, topics) or _of_two(chart, told, asked, topics)
    if question is not None and not (first is not None and first.plain and _says_the_same(first, question, asked)):
        if first is not None:
            question.manner, question.words, question.score = first.manner, first.words, max(first.score, _SCORE)
        questions[:] = [question]


def told_of(chart: Chart) -> Told | None:
    """The line by its quantities; None where it holds one of another kind, or but one, or more than three."""
    told = told_of_lengths(chart)
    return told if told is not None and 2 <= len(told.found) <= MOST else None


@once
def told_of_lengths(chart: Chart) -> Told | None:
    """The line by its lengths, angles and pitches; None where it holds a quantity of another kind, or more than a slope has."""
    found: list[Reading] = []
    words: list[str] = []
    at = 0
    while at < len(chart.words):
        best = best_at(chart, at)
        if best is None or (chart.words[at] in _COUNTS and best.end == at + 1):
            words.append(chart.words[at])
            at += 1
            continue
        letter = "A" if isinstance(best.value, Angle) else "P" if isinstance(best.value, Pitch) else "L"
        if letter == "L" and not isinstance(best.value, Length | Number):
            return None
        found.append(best)
        if len(found) > MOST and sum(not isinstance(reading.value, Pitch) for reading in found) > MOST:
            return None
        words.append(letter)
        at = best.end
    return Told(found, words)


def best_at(chart: Chart, at: int) -> Reading | None:
    """The quantity that stands at a place: a length before the pitch that holds it, a number only where nothing else is."""
    row = chart.readings[at]
    here = [r for r in row if isinstance(r.value, Quantity)] if row else row
    if not here:
        return None
    lengths = [r for r in here if r.kind == "length" and r.sure >= _SURE]
    steep = [r for r in here if isinstance(r.value, Angle | Pitch) and r.sure >= _SURE_PITCH]
    angles = [r for r in steep if isinstance(r.value, Angle)]
    rest = [r for r in here if r.kind not in ("temperature", "tempchange") and r.sure >= _SURE]
    return next((max(some, key=lambda r: r.end) for some in (lengths, angles, steep, rest) if some), None)


def _of_two(chart: Chart, told: Told, asked: str, topics: Mapping[str, Any]) -> Question | None:
    """A triangle of two parts, each told by its words, for a third."""
    if len(told.found) != 2:
        return None
    roles: dict[str, Heard] = {}
    twice = ""
    for n, reading in enumerate(told.found):
        line = told.at(n)
        steep = "angle" if isinstance(reading.value, Angle) else "pitch" if isinstance(reading.value, Pitch) else ""
        role = steep or next((way for way, words in _WAYS if words.search(line)), "")
        heard = heard_as(chart, _place(topics, "run" if role in ("rise", "run", "slope") else role), reading, True)
        if not role or role in roles or heard is None:
            return None
        roles[role] = heard
        twice = role if say.APART.search(line) and say.TENT.search(line) else twice
    if twice == "run":
        whole = roles["run"].value
        roles["run"] = replace(roles["run"], value=replace(whole, value=whole.value / 2, text=f"half of {whole.text}"), others=())
    return _question(roles, asked, say.HIP.search(" ".join(told.words)) is not None)


def _place(topics: Mapping[str, Any], name: str) -> Any:
    topic = SLOPED if name == "pitch" else TRIANGLE
    return next((p for p in topics[topic] if p.name == name), None)


def _question(roles: dict[str, Heard], asked: str, hip: bool) -> Question | None:
    """The topic that gives what is asked of these parts."""
    if asked in roles:
        return None
    if "pitch" in roles:
        return _at_pitch(roles, asked, hip)
    if asked == "grade":
        if roles.keys() != {"rise", "run"}:
            return None
        return Question(FROM_BOTH, {**roles, "asked": Heard("GRADE", 0, 0, "")}, _SCORE, words=["grade"])
    return Question(TRIANGLE, {**roles, "wanted": Heard(asked.upper(), 0, 0, "")}, _SCORE, words=["slope"])


def _at_pitch(roles: dict[str, Heard], asked: str, hip: bool) -> Question | None:
    """The same at a pitch: the length along the slope, the rise, or the run."""
    name = next(part for part in roles if part != "pitch")
    heard, pitch = roles[name], {"pitch": roles["pitch"]}
    if asked == "slope" and name == "run" and hip:
        return Question(HIP, {**pitch, name: heard}, _SCORE, words=["hip"])
    if asked == "slope":
        return Question(SLOPED, {**pitch, name: heard}, _SCORE, words=["slope"])
    if asked not in ("rise", "run"):
        return None
    given = {**pitch, "run": heard}
    if name != "run":
        across = "RISE" if name == "rise" else "RAFTER"
        given["across"] = Heard(across, heard.start, heard.end, heard.text)
    if asked == "run":
        given["asked"] = Heard("RUN", 0, 0, "")
    return Question(RISE, given, _SCORE, words=["slope"])


def _from_low_to_high(chart: Chart, told: Told, asked: str, topics: Mapping[str, Any]) -> Question | None:
    """What slopes from one height to another: the difference is the rise."""
    if len(told.found) != 3 or asked not in ("slope", "angle"):
        return None
    lines = [told.at(n) for n in range(3)]
    high = [n for n, line in enumerate(lines) if say.LOW_TO_HIGH.search(line)]
    along = [n for n in range(3) if n not in high]
    heard = [heard_as(chart, _place(topics, "run"), reading, True) for reading in told.found]
    if len(high) != 2 or any(h is None or not isinstance(h.value, Length) for h in heard):
        return None
    short, tall = sorted((heard[n].value for n in high), key=lambda length: length.to("in").value)  # type: ignore[union-attr]
    rise = Length(tall.value - short.to(tall.unit).value, tall.unit, f"{tall.text} − {short.text}")
    first = heard[high[1]]
    assert first is not None
    parts = {"rise": replace(first, value=rise, others=()), "run": heard[along[0]]}
    return Question(TRIANGLE, {**parts, "wanted": Heard(asked.upper(), 0, 0, "")}, _SCORE, words=["slope"])  # type: ignore[dict-item]


def _says_the_same(first: Question, question: Question, asked: str) -> bool:
    """Whether the question that is there gives what is asked, of the same length."""
    known = {name for name in ("rise", "run", "slope") if name in first.givens}
    mine = {name for name in ("rise", "run", "slope") if name in question.givens}
    gives = {SLOPED: "slope", RISE: "rise"}.get(first.topic)
    return known == mine and gives == asked and not {"across", "asked"} & {*first.givens, *question.givens}
