"""Courses under a rake: the step from one to the next, and the length of every course of a gable."""

from __future__ import annotations

from fractions import Fraction
from functools import reduce
from itertools import pairwise
from typing import Annotated

from solvers.binding import Slope
from solvers.common import HEIGHT_CAUTION, SAW_CAUTION, Exposure, RoofPitch
from solvers.exact import Exact, Term, add, atan, ceil, fraction, snapped, tan, times
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.stagger import lengths_between, row_joints
from solvers.story_pole import refuse_crowd
from solvers.working import Working

MOST_COURSES = 120  # a gable of more is a slip of the tongue
MOST_BOARDS = 40  # in one course: stock as short as that was said in another unit

GableWidth = Annotated[
    Length, Slot("How wide is the gable?", bare=("ft",), above=0, name="width", kept="gable width", usual=(48, 900))
]
Stock = Annotated[
    Length,
    Slot(
        "How long is your stock?",
        bare=("ft", "in"),
        plain=24,
        above=0,
        kept="stock length",
        name="stock",
        cued=True,
        usual=(72, 300),
    ),
]
Studs = Annotated[
    Length,
    Slot(
        "How far apart are the studs?",
        bare=("in",),
        above=0,
        most=96,
        cued=True,
        kept="stud spacing",
        name="stud spacing",
        usual=(8, 32),
    ),
]


@topic("step at the rake", "courses")
def step_at_the_rake(work: Working, pitch: RoofPitch, exposure: Exposure) -> None:
    """How much a course's length changes from one to the next at one end under a rake, inches.

    Refuses a flat roof, which has no rake. Source: geometry, exposure over the tangent of the roof angle.
    """
    step = work.answer("step", exposure * pitch.run / pitch.rise, "the rake runs in that far while it climbs one exposure", "in")
    theta = work.step("θ", atan(pitch.rise / pitch.run), "the pitch, as an angle from level")
    work.also("step, both ends of a gable", 2 * step, "in")
    work.also("edge angle of the end cut", theta)
    work.also("saw setting of the end cut", 90 - theta, "deg")
    work.check("exposure over the tangent of the roof angle", exposure / tan(theta), "=", step)
    work.caution(SAW_CAUTION)
    _draw_step(work, exposure, step, theta)


@topic("gable courses", "courses")
def gable_courses(
    work: Working,
    width: GableWidth,
    pitch: RoofPitch,
    exposure: Exposure,
    stock: Stock | None = None,
    studs: Studs | None = None,
    nth: Annotated[
        Count,
        Slot("Which course, counted from the bottom?", least=1, most=2000, name="course asked for", cued=True, usual=(1, 100)),
    ]
    | None = None,
) -> None:
    """Length of every course of a gable, inches, the long edge of each, from the bottom up.

    With a stock length the boards of each course, and with the studs too, joints on studs that miss those below.
    Refuses a flat roof and an exposure higher than the gable. Source: geometry.
    """
    height = work.step("height", width / 2 * pitch.rise / pitch.run, "half the width up the pitch", "in")
    work.refuse_when(
        work.value(exposure - height) > 0,
        f"a course of {work.text(exposure)} is higher than the gable of {work.text(height)}: check the exposure and the width",
    )
    refuse_crowd(work, work.value(height / exposure), "courses", exposure, MOST_COURSES)
    courses = work.step("courses", ceil(height / exposure), "whole courses up to the peak, the last cut to it", "count")
    shorter = work.step("shorter", 2 * exposure * pitch.run / pitch.rise, "each course loses this, half at each end", "in")
    total = work.step("total", courses * width - shorter * courses * (courses - 1) / 2, "all long edges end to end", "in")
    work.answer("longest course", width)
    if nth is not None:
        work.refuse_when(
            work.value(nth - courses) > 0, f"there is no course {work.text(nth)}: the gable has {work.text(courses)}"
        )
        of_it = work.step(f"course {work.text(nth)}", width - shorter * (nth - 1), "the ones below it each lose as much", "in")
        work.also(f"course {work.text(nth)}, counted from the bottom", of_it)
        work.caution(f"Course {work.text(nth)}, counted from the bottom, is {work.text(of_it)} long.")
    work.also("courses", courses)
    work.also("total length", total)
    lengths = _lengths(work, width, shorter, int(work.value(courses)))
    _end_cuts(work, pitch, exposure)
    _check(work, height, exposure, pitch, courses, total, lengths)
    work.caution(SAW_CAUTION, HEIGHT_CAUTION)
    joints = _boards(work, lengths, stock, studs)
    _draw_gable(work, width, height, exposure, lengths, joints)


def _lengths(work: Working, width: Term, shorter: Term, count: int) -> list[Exact]:
    lengths = [snapped(add(width.value, times(shorter.value, Fraction(-i)))) for i in range(count)]
    for i, length in enumerate(lengths):
        work.mark(f"course {i + 1}", length)
    return lengths


def _end_cuts(work: Working, pitch: Slope, exposure: Term) -> None:
    theta = work.step("θ", atan(pitch.rise / pitch.run), "both ends are cut to the roof angle")
    work.also("shorter each course", 2 * exposure * pitch.run / pitch.rise, "in")
    work.also("shorter at each end", exposure * pitch.run / pitch.rise, "in")
    work.also("edge angle of both end cuts", theta)
    work.also("saw setting of both end cuts", 90 - theta, "deg")


def _check(work: Working, height: Term, exposure: Term, pitch: Slope, courses: Term, total: Term, lengths: list[Exact]) -> None:
    down = height - (courses - 1) * exposure
    top = work.term("top course", lengths[-1], "in")
    work.check("the top course, measured down from the peak", 2 * down * pitch.run / pitch.rise, "=", top)
    added = work.term("lengths added one by one", reduce(add, lengths), "in")
    work.check("all lengths added one by one", added, "=", total)


def _boards(work: Working, lengths: list[Exact], stock: Term | None, studs: Term | None) -> list[list[Fraction]]:
    """The boards of each course from a stock length, centred on a stud where the studs are known."""
    if stock is None:
        return []
    rows: list[list[Fraction]] = []
    spacing = None if studs is None else Fraction(work.value(studs))
    longest = Fraction(work.value(stock))
    refuse_crowd(work, lengths[0] / longest, "boards in a course", stock, MOST_BOARDS)
    total = 0
    for i, length in enumerate(lengths):
        half = fraction(length) / 2
        joints = _row(work, half, longest, spacing, rows[-1] if rows else [])
        boards = lengths_between(-half, half, joints)
        if len(boards) > 1:
            texts = " + ".join(work.text(board, "in") for board in boards)
            work.also_word(f"course {i + 1} in {len(boards)} boards", texts)
        rows.append(joints)
        total += len(boards)
    work.also("boards in all", work.term("boards", total, "count"))
    if spacing is not None:
        _check_misses(work, rows, spacing)
    return rows


def _row(work: Working, half: Fraction, stock: Fraction, spacing: Fraction | None, below: list[Fraction]) -> list[Fraction]:
    if spacing is None:
        count = -(-2 * half // stock)
        return [-half + 2 * half * i / count for i in range(1, int(count))]
    joints = row_joints(-half, half, stock, spacing, frozenset(below))
    if joints is None:
        said = work.text(work.term("", stock, "in")), work.text(work.term("", spacing, "in"))
        work.refuse_when(True, f"boards of {said[0]} on studs {said[1]} apart can't miss the joints of the row below: "
                               "say longer stock, or leave the studs out")  # fmt: skip
    return joints or []


def _check_misses(work: Working, rows: list[list[Fraction]], spacing: Fraction) -> None:
    """Joints of neighbouring rows stand at least one stud apart."""
    nearest = min((abs(a - b) for below, row in pairwise(rows) for a in below for b in row), default=None)
    if nearest is not None:
        apart = work.term("nearest joints", nearest, "in")
        stud = work.term("stud spacing", spacing, "in")
        work.check("joints miss those of the row below by a stud or more", apart, ">=", stud)
    work.caution("The joints assume a stud at the middle of the gable: check before you cut.")


def _draw_step(work: Working, exposure: Term, step: Term, theta: Term) -> None:
    up, back, steep = float(work.value(exposure)), float(work.value(step)), float(work.value(theta))
    long = back * 3
    view = work.view("two courses under the rake")
    for i in range(2):
        base, left, right = i * up, i * back, (i + 1) * back
        view.polygon([(left, base), (long, base), (long, base + up), (right, base + up)], fill="piece")
    view.line((-back * 0.2, -up * 0.2), (back * 2.2, up * 2.2), "cut")
    view.angle((0, 0), back * 0.6, 0, steep, work.text(theta))
    view.dimension((0, 0), (back, 0), work.text(step), -1)
    view.dimension((long, 0), (long, up), work.text(exposure), -1)


def _draw_gable(
    work: Working, width: Term, height: Term, exposure: Term, lengths: list[Exact], rows: list[list[Fraction]]
) -> None:
    wide, high, up = (float(work.value(term)) for term in (width, height, exposure))
    view = work.view("gable")
    view.polygon([(-wide / 2, 0), (wide / 2, 0), (0, high)], fill="wall")
    for i, length in enumerate(lengths):
        view.line((-float(length) / 2, i * up), (float(length) / 2, i * up), "level")
        for joint in rows[i] if rows else ():
            view.line((float(joint), i * up), (float(joint), min((i + 1) * up, high)), "cut")
    view.dimension((-wide / 2, 0), (wide / 2, 0), work.text(width), -1)
    view.dimension((wide / 2, 0), (wide / 2, high), work.text(height), -1)
    listed = work.view("course lengths, bottom up", stretch=True)
    listed.line((0, 0), (0, high))
    for i, mark in enumerate(work.marks):
        listed.tick((0, i * up), mark.text)
