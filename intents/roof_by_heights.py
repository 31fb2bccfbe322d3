"""A roof told by how high its parts are: "eave's at 8 foot and the ridge at 13, building's 20 wide, what pitch", "the porch
leaves the house at 9 foot 4 and comes down to 7 foot 10, eight foot out", "32 foot gable, the peak's 10 foot 8 up, how long is
the rake".

Two heights of one slope give its rise, and half the width of what has a ridge gives its run. Where words do not tell each of the
lengths, or whether it is the whole width or the run, the line is left to the other readers.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart
from intents.expressions import expression
from intents.leaning_told import Told, told_of_lengths
from intents.placing import heard_as
from intents.question import Heard, Question
from solvers.quantities import Length, Pitch, Quantity

PITCH, TRIANGLE, SUM = "pitch from rise and run", "right triangle", "tape arithmetic"
_OTHERS = frozenset((PITCH, TRIANGLE, SUM, "rake length", "sloped length", "roof angle", "pitch of an angle", "gable height"))
LEAST_MM = 300  # a size of a roof from here on is in millimetres
_SCORE = 9.0  # as of a rule that fits whole
_HIGHS = (
    r"(?:ridge|peak|apex|eaves?|plates?|gutter|beam|wall|house|front|back|top|bottom"
    r"|(?:low|high|one|other|short|tall) (?:end|side)|other)"
)
_STANDS = r"(?: (?:is|at|about|stands|sits|up|a|high|end|side))*"
_HEIGHT = expression(
    rf"\b{_HIGHS}{_STANDS} @(?! (?:wide|out|across|away|long|deep|off|apart))"
    rf"|@ (?:high |tall |up )?(?:at|to) (?:the |its )?(?:low |high |lower |higher )?{_HIGHS}\b"
    r"|\b(?:leaves?|starts?|begins?|comes down|drops?|falls?|down|ends?|goes|meets?)(?: the \w+)?(?: at| to| down to) @"
    r"|\bfrom @ (?:(?:down|up) )?to\b|\bfrom L (?:(?:down|up) )?to @"
)
_OVER_PLATE = expression(
    r"\b(?:ridge|peak|apex|gable|it)\b(?: \w+){0,3} @ (?:up|over|above|high|tall|higher|rise)\b"
    r"|\b(?:ridge|peak|apex)(?: (?:is|at|stands|sits))* @"
)
_WIDTH = expression(
    r"\b(?:building|house|garage|shed|barn|span|spans|spanning|width|gable|gable end)(?: (?:is|of|a))* @"
    r"(?! (?:up|high|tall|over|above)\b)"
    r"|@ (?:of )?(?:wide|across|building|house|garage|shed|barn|span|gable)\b"
)
_OUT = expression(r"@ (?:out|away|off|deep|long|back|of run|run|on the (?:level|flat)|level)\b|\b(?:run|over|in)(?: is| of)? @")
_WALLS = expression(r"\b(?:walls?|sidewalls?|eaves?|posts?)\b")
_RIDGED = expression(r"\b(?:ridge|peak|apex|gable)\b")
_ONE_WAY = expression(
    r"\b(?:lean to|porch|shed roof|skillion|mono|monopitch|carport|awning|verandah?|(?:low|high) (?:side|end))\b"
)
_ASKS_STEEP = expression(
    r"\bpitch\b|\bin twelve\b|\bin 12\b|\b(?:what|which|what is the|find the) angle\b|\bdegrees\b|\bhow steep\b"
)
_ASKS_LONG = expression(
    r"\b(?:how long|what length|length of|what is|find|what are)\b(?: (?:is|are|the|each|one|a|does|do|of|common))*"
    r" (?:rafters?|rakes?|slope)\b"
    r"|\b(?:rafter|rake|slope) (?:length|line)\b|, (?:the )?(?:rafter|rake)[ ?.]*$"
)
_ASKED = ("is ", "pitch", "steep", "angle", "degrees", "12", "twelve", "rafter", "rake", "slope")  # one is in all that asks
_IS_IT = expression(r"\bis (?:that|it|this)(?: \w+){0,2} P\b[ ?.]*$")
_NOT_OF_IT = expression(
    r"\b(?:overhangs?|hangs?|sticks?|hips?|valleys?|courses?|squares?|area|exposure|window|door|sill|head|ladder|stairs?|in L"
    r"|L in 12)\b"
)


def roof_by_heights(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Read a line whose lengths are heights of a roof and how wide it is, or how far out it comes, as that."""
    first = next(iter(questions), None)
    other = first is not None and (first.claim is not None or first.topic not in _OTHERS or "pitch" in first.givens)
    if other and "is" not in chart.words:
        return
    said = " ".join(chart.words)
    if not any(word in said for word in _ASKED):
        return
    told = told_of_lengths(chart)
    line = " ".join(told.words) if told is not None else ""
    if told is None or _NOT_OF_IT.search(line):
        return
    whether = _IS_IT.search(line) is not None
    told = _without_pitch(told) if whether else told
    if other and not whether:
        return
    if len(told.found) not in (2, 3) or {"A", "P"} & {*told.words}:
        return
    long, steep = _ASKS_LONG.search(line), _ASKS_STEEP.search(line)
    if not (long or whether) and not (steep and len(told.found) > 2):  # a rise and a run told outright have rules of their own
        return
    parts = _parts(chart, told, " ".join(told.words), topics)
    if parts is None:
        return
    rise, run, half = parts
    manner = {} if first is None else first.manner
    if long:
        given = {"rise": rise, "run": _half(run) if half else run, "wanted": Heard("SLOPE", 0, 0, "")}
        questions[:] = [Question(TRIANGLE, given, _SCORE, words=["slope"], manner=manner)]
        return
    across = {"across": Heard("GABLE", run.start, run.end, run.text)} if half else {}
    questions[:] = [Question(PITCH, {"rise": rise, "run": run, **across}, _SCORE, words=["pitch"], manner=manner)]


def _without_pitch(told: Told) -> Told:
    """The line without the pitch that what was measured is held against."""
    found = [reading for reading in told.found if not isinstance(reading.value, Pitch)]
    return Told(found, [word for word in told.words if word != "P"])


def _parts(chart: Chart, told: Told, line: str, topics: Mapping[str, Any]) -> tuple[Heard, Heard, bool] | None:
    """The rise, the run, and whether that is the whole width of what has its ridge in the middle."""
    place = next(p for p in topics[TRIANGLE] if p.name == "run")
    lines = [told.at(n) for n in range(len(told.found))]
    level = [n for n, one in enumerate(lines) if _WIDTH.search(one) or _OUT.search(one)]
    if len(lines) == 2 and _WALLS.search(line):
        return None  # a height may be of the wall
    up = _HEIGHT if len(lines) == 3 else _OVER_PLATE
    high = [n for n, one in enumerate(lines) if n not in level and up.search(one)]
    heard = _in_units([heard_as(chart, place, reading, True) for reading in told.found], told)
    if len(level) != 1 or len(high) != len(lines) - 1 or any(h is None or not isinstance(h.value, Length) for h in heard):
        return None
    wide = _WIDTH.search(lines[level[0]]) is not None
    ridged, one_way = _RIDGED.search(line) is not None, _ONE_WAY.search(line) is not None
    if wide and ridged == one_way:
        return None  # the whole width, or the run
    run = heard[level[0]]
    rise = heard[high[0]] if len(high) == 1 else _between(*(heard[n] for n in high))  # type: ignore[arg-type]
    return (rise, run, wide and ridged) if rise is not None else None  # type: ignore[return-value]


def _in_units(heard: list[Heard | None], told: Told) -> list[Heard | None]:
    """The lengths, those with no unit in that of the others, or all in what a roof of that size is measured in."""
    bare = [reading.kind == "number" for reading in told.found]
    said = {h.value.unit for h, none in zip(heard, bare, strict=True) if h is not None and not none}
    sizes = [reading.value.value for reading in told.found if isinstance(reading.value, Quantity)]
    decimal = any(size.denominator in (5, 10, 20, 25, 50, 100) for size in sizes)
    alone = "mm" if max(sizes) >= LEAST_MM else "m" if decimal else "ft"
    unit = said.pop() if len(said) == 1 else "" if said else alone
    if not unit:
        return heard
    return [_in_unit(h, unit) if none and h is not None else h for h, none in zip(heard, bare, strict=True)]


def _in_unit(heard: Heard, unit: str) -> Heard:
    unit = "mm" if unit == "m" and heard.value.value >= LEAST_MM else unit  # 2400, beside 6 m
    return replace(heard, value=Length(heard.value.value, unit, heard.text), others=())


def _between(one: Heard, other: Heard) -> Heard | None:
    """What the higher is over the lower."""
    short, tall = sorted((one.value, other.value), key=lambda length: length.to("in").value)
    more = tall.value - short.to(tall.unit).value
    text = f"{tall.text} − {short.text}"
    return replace(other, value=Length(more, tall.unit, text), text=text, others=()) if more > 0 else None


def _half(run: Heard) -> Heard:
    """Half of a width, in any of the units that it may be of."""
    halves = [replace(value, value=value.value / 2, text=f"half of {value.text}") for value in (run.value, *run.others)]
    return replace(run, value=halves[0], others=(*halves[1:],))
