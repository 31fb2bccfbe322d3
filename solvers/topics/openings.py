"""Courses that land on sills and heads: whole courses in every zone, exposures as near alike as can be."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Annotated

from solvers.common import HEIGHT_CAUTION
from solvers.errors import Refusal
from solvers.exact import Term
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.story_pole import Mark, courses_between, draw_pole, put_marks, refuse_crowd
from solvers.topics.courses import POLE_CAUTION
from solvers.working import Working
from solvers.zones import Zone, miss, smallest_spread

FEET_OR_INCHES = ("ft", "in")
NOTHING = Length(Fraction(0), "in", "0 in")

Bottom = Annotated[Length, Slot("Where do the courses start?", bare=("in",), least=0, usual=(0, 24))]
Sill = Annotated[Length, Slot("How high is the sill?", bare=FEET_OR_INCHES, plain=12, above=0, usual=(12, 120))]
Head = Annotated[Length, Slot("How high is the head?", bare=FEET_OR_INCHES, plain=12, above=0, unless="window", usual=(36, 160))]
Top = Annotated[
    Length, Slot("How high is the top of the wall?", bare=FEET_OR_INCHES, plain=20, above=0, unless="over", usual=(60, 300))
]
Window = Annotated[
    Length,
    Slot(
        "How far is it from sill to head?",
        bare=FEET_OR_INCHES,
        plain=12,
        above=0,
        name="sill to head",
        cued=True,
        usual=(12, 120),
    ),
]
Over = Annotated[
    Length,
    Slot(
        "How far is it from head to top?", bare=FEET_OR_INCHES, plain=12, above=0, name="head to top", cued=True, usual=(2, 120)
    ),
]
Least = Annotated[
    Length, Slot("What is the least exposure you allow?", bare=("in",), above=0, name="least exposure", usual=(2, 12))
]
Greatest = Annotated[
    Length, Slot("What is the greatest exposure you allow?", bare=("in",), above=0, name="greatest exposure", usual=(3, 16))
]
Lines = Annotated[tuple[Length, ...], Slot("How high are the other sills and heads?", name="other sills and heads", cued=True)]


@topic("courses to openings", "courses")
def courses_to_openings(
    work: Working,
    sill: Sill,
    least: Least,
    greatest: Greatest,
    head: Head | None = None,
    top: Top | None = None,
    bottom: Bottom = NOTHING,
    lengths: Lines | None = None,
    window: Window | None = None,
    over: Over | None = None,
) -> None:
    """Exposure, inches, in the zone between sill and head, and in the others, whole courses that land on every line.

    Head and top are heights, or the distance from the line below them (`window`, `over`). Of all whole counts in range
    it takes those whose exposures differ least. Refuses lines out of order, and a zone that no exposure in range fills,
    with what the nearest choices cost. Source: common practice of the story pole.
    """
    if head is None:
        head = work.step("head", sill + window, "the sill, and the window above it", "in")
    if top is None:
        top = work.step("top", head + over, "the head, and the wall above it", "in")
    _refuse_disorder(work, bottom, sill, head, top)
    work.refuse_when(
        work.value(least) > work.value(greatest),
        f"the least exposure of {work.text(least)} is more than the greatest of {work.text(greatest)}: say them again",
    )
    refuse_crowd(work, work.value(top / least), "courses", least)
    zones = _zones(work, bottom, sill, head, top, lengths)
    low, high = Fraction(work.value(least)), Fraction(work.value(greatest))
    counts = smallest_spread(zones, low, high)
    if counts is None:
        raise Refusal(_cost(work, zones, low, high))
    exposures = [
        _work_zone(work, zone, count, zone.bottom == work.value(sill)) for zone, count in zip(zones, counts, strict=True)
    ]
    _finish(work, zones, counts, exposures, least, greatest)
    marks = _marks(zones, counts)
    put_marks(work, marks)
    _draw_wall(work, zones, marks, (bottom, sill, head, top))
    draw_pole(work, marks, float(zones[-1].top))


def _refuse_disorder(work: Working, bottom: Term, sill: Term, head: Term, top: Term) -> None:
    for low, high in ((sill, head), (head, top)):
        work.refuse_when(
            work.value(low) >= work.value(high) if low is sill else work.value(low) > work.value(high),
            f"the {low.name} at {work.text(low)} is not below the {high.name} at {work.text(high)}: "
            "give all heights from the same line",
        )
    work.refuse_when(
        work.value(bottom) > work.value(sill),
        f"the courses start at {work.text(bottom)}, above the sill at {work.text(sill)}: check the bottom and the sill",
    )


def _zones(work: Working, bottom: Term, sill: Term, head: Term, top: Term, others: tuple[Length, ...] | None) -> list[Zone]:
    """The bands between all lines, the first opening's sill and head named, other lines by their height."""
    names = {Fraction(work.value(term)): name
             for term, name in ((top, "top"), (bottom, "bottom"), (sill, "sill"), (head, "head"))}  # fmt: skip
    for other in others or ():
        at = other.to("in").value
        line = work.term("line", at, "in")
        work.refuse_when(
            not work.value(bottom) <= at <= work.value(top),
            f"a line at {work.text(line)} is not on the wall, which runs from {work.text(bottom)} to {work.text(top)}",
        )
        names.setdefault(at, f"line at {work.text(line)}")
    lines = sorted(names)
    return [Zone(f"{names[a]} to {names[b]}", a, b) for a, b in pairwise(lines)]


def _work_zone(work: Working, zone: Zone, count: int, first: bool) -> Term:
    """One zone's exposure as a step; the zone that starts at the sill is the answer."""
    height = work.term(f"height {zone.name}", zone.height, "in")
    courses = work.term("courses", count, "count")
    why = f"{count} whole courses from {zone.name.replace(' to ', ' up to ')}"
    if first:
        return work.answer("exposure sill to head", height / courses, why, "in", symbol=f"exposure {zone.name}")
    return work.step(f"exposure {zone.name}", height / courses, why, "in")


def _finish(work: Working, zones: list[Zone], counts: list[int], exposures: list[Term], least: Term, greatest: Term) -> None:
    for zone, count, exposure in zip(zones, counts, exposures, strict=True):
        if not zone.name.startswith("sill to"):
            work.also(f"exposure {zone.name}", exposure)
        work.also(f"courses {zone.name}", work.term("courses", count, "count"))
    wide, narrow = max(exposures, key=work.value), min(exposures, key=work.value)
    spread = work.step("spread", wide - narrow, "the widest exposure less the narrowest, as small as whole courses allow", "in")
    work.also("spread of exposures", spread)
    total = sum((n * e for n, e in zip(counts, exposures, strict=True)), start=work.term("bottom", zones[0].bottom, "in"))
    work.check("all courses stacked reach the top", total, "=", work.term("top", zones[-1].top, "in"))
    work.check("none under the least", narrow, ">=", least)
    work.check("none over the greatest", wide, "<=", greatest)
    work.caution(POLE_CAUTION, HEIGHT_CAUTION)
    work.source("common practice: the story pole")


def _marks(zones: list[Zone], counts: list[int]) -> list[Mark]:
    marks: list[Mark] = []
    for zone, count in zip(zones, counts, strict=True):
        marks += courses_between(zone.bottom, zone.top, count, len(marks) + 1)
    return marks


def _cost(work: Working, zones: list[Zone], least: Fraction, greatest: Fraction) -> str:
    """What each way out costs, for the first zone that no exposure in range fills."""
    zone = next(zone for zone in zones if not zone.counts(least, greatest))
    lost = miss(zone, greatest)

    def text(value: Fraction) -> str:
        return work.text(work.term("", value, "in"))

    ways = [f"{n} course{'s' if n > 1 else ''} at {text(zone.height / n)}" for n in (lost.fewer, lost.more) if n]
    where = zone.name.rsplit(" to ", 1)[1]
    return (
        f"no exposure from {text(least)} to {text(greatest)} lands on the {where}: from {zone.name} is "
        f"{text(zone.height)}, so the nearest are {' or '.join(ways)}, or run {text(greatest)} through and rip the "
        f"course at the {where} to {text(lost.rip)}"
    )


def _draw_wall(work: Working, zones: list[Zone], marks: list[Mark], lines: tuple[Term, ...]) -> None:
    """The wall with its courses and the opening between sill and head."""
    bottom, sill, head, top = (float(work.value(line)) for line in lines)
    wide = (top - bottom) * 0.9
    left, right = wide * 0.3, wide * 0.7
    view = work.view("wall")
    view.polygon([(0, bottom), (wide, bottom), (wide, top), (0, top)], fill="wall")
    for mark in marks:
        at = float(mark.at)
        if sill < at < head:
            view.line((0, at), (left, at), "level")
            view.line((right, at), (wide, at), "level")
        else:
            view.line((0, at), (wide, at), "level")
    view.polygon([(left, sill), (right, sill), (right, head), (left, head)], fill="opening")
    view.dimension((wide, bottom), (wide, sill), f"sill {work.text(lines[1])}", -1)
    view.dimension((wide, sill), (wide, head), f"head {work.text(lines[2])}", -1)
    view.dimension((wide, head), (wide, top), f"top {work.text(lines[3])}", -1)
