"""Panels, straps and boards across a wall: balanced ends, straps over the studs, joints that miss each other."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import DUST_CAUTION, HEIGHT_CAUTION, SAW_CAUTION
from solvers.exact import Term, ceil, floor
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Opening, Slot
from solvers.story_pole import Mark, draw_strip, put_marks, refuse_crowd
from solvers.working import Working

Width = Annotated[
    Length,
    Slot("What is the width to cover?", bare=("ft", "in"), plain=60, doubt=(40, 90), above=0, name="width", usual=(36, 1200)),
]
Cover = Annotated[Length, Slot("What width does one panel cover?", bare=("in",), above=0, name="panel cover", usual=(2, 60))]
WallLong = Annotated[Length, Slot("What is the length of the wall?", bare=("ft", "in"), plain=80, above=0, usual=(72, 2400))]
WallHigh = Annotated[
    Length, Slot("How high is the wall?", bare=("ft", "in"), plain=30, above=0, name="height", cued=True, usual=(60, 480))
]
Studs = Annotated[
    Length,
    Slot(
        "What is the spacing of the studs?",
        bare=("in",),
        above=0,
        most=96,
        kept="stud spacing",
        name="stud spacing",
        usual=(8, 32),
    ),
]
Stock = Annotated[
    Length, Slot("How long is your stock?", bare=("ft", "in"), plain=24, above=0, cued=True, kept="stock length", usual=(60, 300))
]
Board = Annotated[
    Length,
    Slot(
        "How long is each board?", bare=("ft", "in"), plain=24, above=0, kept="board length", name="board length", usual=(60, 300)
    ),
]


@topic("balanced panels", "courses")
def balanced_panels(work: Working, width: Width, cover: Cover) -> None:
    """Equal end rips, inches, so that panels stand balanced across a width; neither rip is under half a panel.

    Refuses a width that one panel covers. Source: common practice.
    """
    work.refuse_when(
        work.value(width) <= work.value(cover),
        f"one panel that covers {work.text(cover)} already covers the width of {work.text(width)}: nothing to balance",
    )
    refuse_crowd(work, work.value(width / cover), "panels", cover)
    whole = work.step("whole", floor(width / cover), "whole panels that fit", "count")
    rest = work.step("rest", width - whole * cover, "what they leave", "in")
    if work.value(rest) == 0:
        full, end = whole, work.answer("end rip", cover, "the panels come out even, so the end ones stay whole", "in")
        spare = work.step("between", whole - 2, "whole panels between the two ends", "count")
        work.also_word("fit", "whole panels fill it: nothing to rip")
    else:
        spare = full = work.step("full", whole - 1, "one whole panel goes into the two ends, so that no sliver is left", "count")
        end = work.answer("end rip", (rest + cover) / 2, "that panel and the rest, half at each end", "in")
        work.also("other choice, end rip", rest / 2, "in")
        work.also("other choice, full panels", whole)
    work.also("full panels", full)
    work.also("panels to buy", ceil(width / cover), "count")
    work.check("ends and full panels fill the width", 2 * end + spare * cover, "=", width)
    work.check("no end under half a panel", end, ">=", cover / 2)
    work.caution(SAW_CAUTION, DUST_CAUTION)
    work.source("common practice: neither end under half a panel")
    _panel_marks(work, width, cover, end, int(work.value(spare)))


def _panel_marks(work: Working, width: Term, cover: Term, end: Term, full: int) -> None:
    first, step = Fraction(work.value(end)), Fraction(work.value(cover))
    marks = [Mark(f"joint {i + 1}", first + i * step) for i in range(full + 1)]
    put_marks(work, marks)
    long, high = float(work.value(width)), float(work.value(width)) / 6
    view = work.view("panels from the left", stretch=True)
    view.polygon([(0, 0), (long, 0), (long, high), (0, high)], fill="wall")
    for mark, line in zip(marks, work.marks, strict=True):
        view.line((float(mark.at), 0), (float(mark.at), high))
        view.tick((float(mark.at), 0), line.text)
    view.dimension((0, high), (float(first), high), work.text(end))
    view.dimension((long - float(first), high), (long, high), work.text(end))


CLOSEST = 3  # inches between straps; anything nearer is a thickness that was said


@topic("strapping", "courses")
def strapping(
    work: Working,
    length: WallLong,
    spacing: Studs,
    height: WallHigh | None = None,
    stock: Stock | None = None,
    openings: Annotated[tuple[Opening, ...], Slot("Which openings?")] | None = None,
) -> None:
    """How many straps over the studs of a wall, one at each end; their total length, and sticks of a stock length.

    Openings add a strap up each side and one along head and sill; the straps they cut short are still counted whole,
    for the pieces above and below. Refuses a spacing wider than the wall. Source: common practice.
    """
    work.refuse_when(
        work.value(spacing) < CLOSEST,
        f"straps {work.text(spacing)} apart can't be meant: give the spacing of the studs, like 16 inches",
    )
    work.refuse_when(
        work.value(spacing) > work.value(length),
        f"studs {work.text(spacing)} apart don't fit a wall of {work.text(length)}: check the spacing and the length",
    )
    refuse_crowd(work, work.value(length / spacing), "straps", spacing)
    spaces = work.step("spaces", ceil(length / spacing), "bays along the wall, the last one short or whole", "count")
    straps = work.answer("straps", spaces + 1, "one at each end of the row of bays", "count")
    places = _strap_marks(work, length, spacing, int(work.value(spaces)))
    work.check("no bay is wider than the spacing", length / spaces, "<=", spacing)
    work.check("the marks counted one by one", work.term("marks", len(places), "count"), "=", straps)
    if height is not None:
        _strap_lengths(work, straps, height, stock, openings)
    work.caution(HEIGHT_CAUTION, DUST_CAUTION)
    work.source("common practice: a strap over every stud and at both ends")
    draw_strip(work, places, float(work.value(length)), "straps from the left end, centre of each")


def _strap_marks(work: Working, length: Term, spacing: Term, spaces: int) -> list[Mark]:
    """A strap on every stud, the last at the end of the wall."""
    pitch, end = Fraction(work.value(spacing)), Fraction(work.value(length))
    places = [Mark(f"strap {i + 1}", min(i * pitch, end)) for i in range(spaces + 1)]
    put_marks(work, places)
    return places


def _strap_lengths(work: Working, straps: Term, height: Term, stock: Term | None, openings: tuple[Opening, ...] | None) -> None:
    total = work.step("total length", straps * height, "all straps end to end", "in")
    if openings:
        around = work.term("round the openings", _around(openings), "in")
        total = work.step("with openings", total + around, "and a strap up each side and along head and sill", "in")
        work.also("round the openings", around)
    work.also("total length", total)
    if stock is None:
        return
    if openings or work.value(height) > work.value(stock):
        sticks = work.step("sticks", ceil(total / stock), "sticks, offcuts used up and butts on the studs", "count")
    else:
        each = work.step("straps per stick", floor(stock / height), "whole straps out of one stick", "count")
        sticks = work.step("sticks", ceil(straps / each), "sticks for all straps", "count")
    work.also("sticks", sticks)
    work.check("the sticks are long enough in all", sticks * stock, ">=", total)


def _around(openings: tuple[Opening, ...]) -> Fraction:
    """Strapping up both sides and along head and sill of every opening, inches."""
    return sum((2 * o.count * (o.width.to("in").value + o.height.to("in").value) for o in openings), Fraction(0))


@topic("staggered joints", "courses")
def staggered_joints(work: Working, board: Board, studs: Studs) -> None:
    """The least shift from row to row so that butt joints land on studs and miss each other, inches, and the pattern.

    Refuses a board that does not reach two bays: its joints can't miss. Source: common practice.
    """
    work.refuse_when(
        work.value(board) < work.value(studs),
        f"a board of {work.text(board)} does not reach over studs {work.text(studs)} apart: check the board and the studs",
    )
    refuse_crowd(work, work.value(board / studs), "studs", studs)
    bays = work.step("bays", floor(board / studs), "whole stud bays in one board", "count")
    work.refuse_when(
        work.value(bays) < 2,
        f"a board of {work.text(board)} reaches one bay of studs {work.text(studs)} apart, so every row would break on "
        "the same studs: say a longer board",
    )
    used = work.step("used", bays * studs, "the board cut so that both ends land on studs", "in")
    shift = work.answer("shift", studs, "one stud on from the row below, the least that lands on a stud", "in")
    work.also("board cut to", used)
    work.also("offcut of each board", board - used, "in")
    work.also("rows until the pattern comes round", bays)
    whole, stud = Fraction(work.value(used)), Fraction(work.value(studs))
    starts = [Mark(f"row {i + 1} starts with", whole - i * stud) for i in range(int(work.value(bays)))]
    put_marks(work, starts)
    work.check("shifted through every stud, the pattern comes round", bays * shift, "=", used)
    on_studs = work.term("starts off a stud", sum(Fraction(mark.at) % stud != 0 for mark in starts), "count")
    work.check("first boards that end off a stud", on_studs, "=", 0)
    work.caution(SAW_CAUTION)
    work.source("common practice: butt joints on studs, none over the one below")
    _draw_rows(work, used, studs, starts)


def _draw_rows(work: Working, used: Term, studs: Term, starts: list[Mark]) -> None:
    board, spacing = float(work.value(used)), float(work.value(studs))
    long, high = board * 2, spacing / 2
    rows = starts[:6]
    view = work.view("rows from the left, studs dashed")
    for i, mark in enumerate(rows):
        joints = [at for at in (float(mark.at), float(mark.at) + board) if at < long]
        view.polygon([(0, i * high), (long, i * high), (long, (i + 1) * high), (0, (i + 1) * high)], fill="piece")
        for joint in joints:
            view.line((joint, i * high), (joint, (i + 1) * high), "cut")
        view.label((float(mark.at) / 2, (i + 0.4) * high), work.text(work.term("", mark.at, "in")))
    for i in range(int(long / spacing) + 1):
        view.line((i * spacing, 0), (i * spacing, len(rows) * high), "hidden")
