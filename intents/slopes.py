"""Pitches and ratios: one number against another, in twelve, over, to, or simply said after it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from intents.lengths import DEGREES, FEET, INCHES, METRES, PLAIN, UNITS, fraction_after
from intents.number_words import TAPE
from intents.numbers import Line, Piece
from intents.reading import Head, Reading
from solvers.quantities import Pitch, Ratio

# How sure it is that "5 ? 12" is a pitch, and that "1 ? 300" is a ratio.
_PITCH = {"in": 1.0, "on": 1.0, "over": 1.0, "/": 1.0, ":": 1.0, "-": 0.9, "by": 0.5, "×": 0.3, "to": 0.4, "and": 0.4}
_RATIO = {"in": 1.0, "over": 1.0, "/": 1.0, ":": 1.0, "to": 0.8}
_PER_METRE = {"mm": Fraction(1, 1000), "cm": Fraction(1, 100)}
_VENT = (150, 300)  # the runs of the two vent ratios, heard run together as "one three hundred"
STEEPEST_RUN = 24  # "1 in 300" is a ratio, not a roof
_EVERY_JOINT = frozenset(["for", "in", "per", "to"])  # six for every twelve
_TAPE_PARTS = (2, 4, 8, 16, 32)  # of an inch
_LEVEL = frozenset(["across", "over", "along", "out", "sideways", "horizontal"])
_PERCENT, _GRADES = frozenset(("percent", "%")), frozenset(("grade", "gradient"))
LEAST_GRADE = 8  # percent; less is the fall of a sill
_SLOPES = frozenset("slope pitch grade gradient roof rafter pitched".split())
_SLOPED = frozenset("slope pitch gradient roof rafter rafters rise rises climbs fall falls rake hip valley".split())
_OF_SLOPE, _INTO = frozenset("of at is a to".split()), frozenset("degrees degree deg pitch twelve 12".split())
_PER_SAID, LEAST_PER_METRE, MOST_PER_METRE = frozenset(("per", "every", "each")), 20, 1500  # millimetres, with none said
_ANDS = frozenset(["and", "&"])
_PER = frozenset(["per", "in", "a", "every", "each", "for", "to"])


_STOPS, _LED = frozenset(("", ",", ".", "?", ";", "pitch", "roof")), frozenset((",", ".", ";", "at", "a", "an", "is", "on"))
_ROOFED = frozenset("rafter rafters roof pitch pitched hip valley verge spar spars bargeboard barge rake gable ridge".split())
_ROWS = frozenset("battens batten straps strap courses rows boards studs joists laths furring strips".split())
_HUNDREDTHS = frozenset(("three", "hundred"))


_METRES_WRITTEN = METRES - {"m"}


def slopes(line: Line, i: int) -> Iterator[Reading]:
    """The pitches and ratios whose first number is at i."""
    if line.words[i] in _HUNDREDTHS:
        yield from _hundredth(line, i)
    for rise in line.pieces(i):
        if line.words[rise.end - 2 : rise.end] == ["/", "12"]:
            continue  # 8/12 is a pitch, never the rise of one: 8/12 over 12 feet
        word = line.words[rise.end]
        if word in _PERCENT and rise.value >= LEAST_GRADE and (end := _grade_end(line.words, i, rise.end + 1)):
            yield Reading("pitch", i, end, Pitch(rise.value * 12 / 100, "in12"), 0.9)
        if word in _PER_SAID and line.words[rise.end + 1] in _METRES_WRITTEN and _in_millimetres(line.words, rise):
            yield Reading("pitch", i, rise.end + 2, Pitch(rise.value * 12 / 1000, "in12"), 0.9)
        if rise.value.numerator < rise.value.denominator:
            yield from _part_a_foot(line, i, rise)
        elif line.words[rise.end : rise.end + 3] == ["to", "the", "foot"] and not _ROOFED.isdisjoint(line.words):
            yield Reading("pitch", i, rise.end + 3, Pitch(rise.value, "in12"), 0.9)  # stepped off: nine to the foot
        if word == "on" and _counted(line, rise.end + 1):
            continue
        if word in _PITCH:
            yield from _separated(line, i, rise, word)
        elif word in _EVERY_JOINT or word == "up":
            yield from _every_twelve(line, i, rise)
            yield from _separated(line, i, rise, word) if word in _PITCH else _said_after(line, i, rise)
        elif word == "out" and line.words[rise.end + 1] == "of":
            yield from _ratios(line, i, rise, rise.end + 2, 0.9)
        else:
            yield from _said_after(line, i, rise)


def _counted(line: Line, at: int) -> bool:
    """Whether a number counts what comes after it, and is no twelve of a pitch: every 16 on 12 battens."""
    return any(line.words[piece.end] in _ROWS for piece in line.pieces(at))


def _grade_end(words: Sequence[str], start: int, end: int) -> int:
    """Where a percent ends that is how steep something is, 0 where no word beside it tells: 58 % roof, slope of 40 %."""
    if words[end] in _GRADES or words[end : end + 1] == ["slope"]:
        return end + 1
    before = [word for word in words[max(0, start - 2) : start] if word not in _OF_SLOPE][-1:]
    told = words[end] in _SLOPES or (before and before[0] in _SLOPES)
    told = told or (words[end] in ("in", "to", "as") and words[end + 1] in _INTO)
    return end if told and "waste" not in words else 0


def _in_millimetres(words: Sequence[str], rise: Piece) -> bool:
    """Whether a rise per metre with no unit is in millimetres: rises 200 per metre."""
    return LEAST_PER_METRE <= rise.value <= MOST_PER_METRE and not _SLOPED.isdisjoint(words)


def _hundredth(line: Line, i: int) -> Iterator[Reading]:
    """A share that is only ever one of vents: a three hundredth of the floor, a hundred and fiftieth."""
    words = line.words
    parts = words[i + 1 : i + 3] if words[i + 1] == "and" else words[i + 1 : i + 2]
    share = 300 if (words[i], *parts) == ("three", "hundredth") else 150 if parts[-1:] == ["fiftieth"] else 0
    end = i + 1 + len(parts)
    if share and words[end] != "inch" and words[end : end + 2] != ["of", "an"]:
        yield Reading("ratio", i, end, Ratio(Fraction(1, share), "ratio"), 0.95)


def _part_a_foot(line: Line, i: int, rise: Piece) -> Iterator[Reading]:
    """A fall whose inches are not said: a sixteenth per foot, an eighth to the foot, 1/4 a foot."""
    words, at = line.words, rise.end
    at += 2 if words[at : at + 2] in (["to", "the"], ["in", "the"], ["for", "every"], ["in", "every"]) else 1
    led = words[rise.end] in _PER and words[at] in ("foot", "ft")
    if rise.value.denominator not in _TAPE_PARTS or _after_inches(words, i):
        return
    if led:
        yield Reading("pitch", i, at + 1, Pitch(rise.value, "in12"), 0.9)
    for run in line.pieces(at) if words[rise.end] in _PER_SAID or words[at - 1] == "every" else ():  # 1/4 per 10 feet
        if words[run.end] in FEET and run.value > 1:
            yield Reading("pitch", i, run.end + 1, Pitch(rise.value / run.value, "in12"), 0.9)


def _after_inches(words: Sequence[str], i: int) -> bool:
    """Whether a part goes with the inches before it: an inch and | a half per foot."""
    at = i - (words[i - 1] == "a" and i > 1)
    return at > 1 and words[at - 1] in _ANDS and words[at - 2] in INCHES


def _separated(line: Line, i: int, rise: Piece, word: str) -> Iterator[Reading]:
    at = rise.end + 1
    if word == "-" and not (line.tight(rise.end - 1) and line.tight(rise.end)):
        return
    yield from _pitches(line, i, rise, at, word)
    if word in _RATIO and rise.form == "whole":
        yield from _ratios(line, i, rise, at, _RATIO[word])


def _runs(line: Line, at: int, exact: bool = False) -> Iterator[Piece]:
    """The numbers that a rise may be over: whole (of one they may be `exact`: 1 in 2.5), and twelve even when more follows."""
    pieces = line.pieces(at)
    for place, run in enumerate(pieces):
        told = run.form == "whole" or (exact and run.form in ("decimal", "mixed"))
        if told and run.value.numerator > 0 and (place == 0 or run.sure > 0.5 or run.value == 12):
            yield run


def _pitches(line: Line, i: int, rise: Piece, at: int, word: str) -> Iterator[Reading]:
    for run in _runs(line, at, exact=word in ("in", ":", "over") and rise.value == 1 and rise.form == "whole"):
        top = min(1.0, rise.sure * 2) if word == "/" else rise.sure  # 5/12 as a fraction does not make it less a pitch
        sure = min(top, run.sure) * _PITCH[word] * _after_run(line, run)
        if run.value != 12:
            sure *= _odd_run(rise, run, word)
        elif word == "and" and _told_of_roof(line, i, run):
            sure /= _PITCH[word]
        if sure:
            in_feet = word == "in" and rise.value < 1 and run.value != 12  # a gutter that falls 1/4 in 10
            in_twelve = rise.value if run.value == 12 else rise.value * (1 if in_feet else 12) / run.value
            yield Reading("pitch", i, run.end, Pitch(in_twelve, "in12"), sure)


def _told_of_roof(line: Line, i: int, run: Piece) -> bool:
    """Whether "ten and twelve" stands alone in a line about rafters: common rafter, 13 foot run, ten and twelve."""
    alone = line.words[run.end] in _STOPS and line.words[i - 1] in _LED if i else line.words[run.end] in _STOPS
    return alone and not _ROOFED.isdisjoint(line.words)


def _after_run(line: Line, run: Piece) -> float:
    """A run with a unit is a measurement: "5 in 12 feet" may be a fall, not a roof."""
    word = line.words[run.end]
    if word in FEET:
        return 0.2
    if word in INCHES and not (word == "in" and (line.words[run.end + 1] in DEGREES or line.pieces(run.end + 1))):
        return 0.6
    turned = word == "in" and line.words[run.end + 1] in DEGREES  # a 7 in 12 in degrees: what it is to be turned into
    return 0.2 if (word in UNITS and not turned) or word == "/" else 1.0


def _odd_run(rise: Piece, run: Piece, word: str) -> float:
    """How sure a pitch is whose run is not twelve; 3/8 and its like are inches."""
    if word in ("by", "×", "-", "to", "and") or run.sure < 0.8:
        return 0.0
    if word == "/":
        return 0.0 if run.value in TAPE and rise.value < run.value else 0.5 if run.value <= STEEPEST_RUN else 0.0
    return 0.8 if rise.value <= run.value <= STEEPEST_RUN else 0.4


def _ratios(line: Line, i: int, top: Piece, at: int, sure: float) -> Iterator[Reading]:
    for bottom in _runs(line, at):
        if line.words[bottom.end] == "/" and line.tight(bottom.end - 1):
            continue
        likely = min(top.sure * 2, 1.0) * (0.9 if 0.5 < bottom.sure < 1 else bottom.sure) * sure
        if bottom.value <= STEEPEST_RUN or bottom.value in TAPE or top.value != 1:
            likely *= 0.3 if bottom.value == 12 or top.value != 1 else 0.4
        yield Reading("ratio", i, bottom.end, Ratio(top.value / bottom.value, "ratio"), likely)


_WHICH = frozenset("first last next second this that each every".split())


def _said_after(line: Line, i: int, rise: Piece) -> Iterator[Reading]:
    """Two numbers with nothing between: five twelve, 5 1/2 12, one three hundred; and one three hundredth."""
    words, at = line.words, rise.end
    for run in line.pieces(at):
        if run.value == 12 and run.form == "whole":
            sure = min(rise.sure, 0.8 if run.digits and rise.digits else 0.9)
            inches = words[run.end] in UNITS and not (words[run.end] == "in" and not run.digits)
            sure *= 0.2 if inches else 1.0  # four twelve inch boards
            yield Reading("pitch", i, run.end, Pitch(rise.value, "in12"), sure)
        elif rise.value == 1 and rise.form == "whole":
            if run.value in _VENT and not (i and words[i - 1] in _WHICH):  # the first one 300 in
                yield Reading("ratio", i, run.end, Ratio(1 / run.value, "ratio"), 0.6)
            if words[run.end] in ("hundredth", "hundredths") and run.form == "whole":
                yield Reading("ratio", i, run.end + 1, Ratio(1 / (run.value * 100), "ratio"), 0.9)
    if rise.value == 1 and words[at : at + 2] == ["one", "fiftieth"]:
        yield Reading("ratio", i, at + 2, Ratio(Fraction(1, 150), "ratio"), 0.9)


def _every_twelve(line: Line, i: int, rise: Piece) -> Iterator[Reading]:
    """Six for every twelve across, 6 up in each 12."""
    words = line.words
    at = rise.end + (words[rise.end] == "up")
    if words[at] not in _EVERY_JOINT or words[at + 1] not in ("every", "each"):
        return
    for run in line.pieces(at + 2):
        if run.value == 12 and run.form == "whole" and words[run.end] not in FEET:
            end = run.end + (words[run.end] in INCHES and words[run.end] != "in")
            yield Reading("pitch", i, end + (words[end] in _LEVEL), Pitch(rise.value, "in12"), rise.sure)


def rises(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """Pitches whose rise is in inches: 5 inches in 12, a quarter inch per foot."""
    words, unit = line.words, head.unit
    if PLAIN.get(words[unit], ("",))[0] in _PER_METRE and (words[unit + 1] == "/" or words[unit + 1] in _PER):
        yield from _per_metre(line, i, head)
    part = fraction_after(line, unit + 1) if words[unit] in INCHES and words[unit + 1] in _ANDS else None
    if part is not None:  # an inch and a half per foot
        yield from _rises(line, i, head._replace(value=head.value + part.value), part.end - 1)
    elif words[unit] in INCHES:
        yield from _rises(line, i, head, unit)


def _rises(line: Line, i: int, head: Head, unit: int) -> Iterator[Reading]:
    """The same, where the words of the rise end at `unit`."""
    words = line.words
    if words[unit + 1] not in _PER:
        return
    at = unit + (3 if words[unit + 2] == "the" and words[unit + 1] in ("to", "in") else 2)
    at += words[at] in ("a", "each", "every", "one")
    if words[at] in ("foot", "ft"):
        yield Reading("pitch", i, at + 1, Pitch(head.value, "in12"), 0.8 * head.sure)
    if words[unit + 1] in ("in", "per") or words[at - 1] in ("every", "each"):
        for run in line.pieces(at):
            if run.value == 12 and words[run.end] not in FEET:
                end = run.end + (words[run.end] in INCHES)
                end += words[end] in _LEVEL
                yield Reading("pitch", i, end, Pitch(head.value, "in12"), 0.8 * head.sure)


def _per_metre(line: Line, i: int, head: Head) -> Iterator[Reading]:
    """450 mm per metre, 40 cm to the metre, 350 mm in every metre."""
    words, unit = line.words, head.unit
    at = unit + 2
    slash = words[unit + 1] == "/"
    at += words[at] in ("a", "each", "every", "one", "the")
    if words[at] in METRES - {"m"} or (words[at] == "m" and (slash or words[unit + 1] == "per")):
        rise = head.value * _PER_METRE[PLAIN[words[unit]][0]]
        yield Reading("pitch", i, at + 1, Pitch(rise * 12, "in12"), 0.8 * head.sure)
