"""Course layout: whole courses on a wall, marks cumulative from the bottom."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Annotated

from solvers.common import HEIGHT_CAUTION, Exposure
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, larger, nearest, to_nearest
from solvers.quantities import Count, Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.story_pole import Mark, courses_between, draw_pole, put_marks, refuse_crowd
from solvers.working import Working

POLE_CAUTION = "Mark every course from the one end of the pole: stepping off course by course lets the error grow."
OVER = Fraction(1, 4)  # inches that courses may come out over what was said with their number


class Meant(Choice):
    """How a said exposure is meant."""

    GREATEST = "the greatest allowed"
    TARGET = "about that"


@topic("course layout", "courses")
def course_layout(
    work: Working,
    height: Annotated[
        Length, Slot("What is the height to fill?", bare=("ft", "in"), plain=30, doubt=(15, 36), above=0, usual=(36, 360))
    ],
    exposure: Exposure | None = None,
    least: Annotated[
        Length,
        Slot(
            "What is the least exposure?", bare=("in",), above=0, most=36, cued=True, quiet=True, name="least exposure",
            usual=(2, 12),
        ),
    ]
    | None = None,
    meant: Annotated[
        Meant,
        Slot("Is that exposure the greatest allowed, or about what you want?", name="exposure said", beside="exposure"),
    ] = Meant.GREATEST,
    count: Annotated[Count, Slot("How many courses?", least=1, most=2000, cued=True, name="courses", usual=(1, 150))]
    | None = None,
    begins: Annotated[
        Length,
        Slot(
            "How high up does the first course start?", bare=("in",), least=0, most=360, cued=True, quiet=True, name="start",
            usual=(0, 120),
        ),
    ]
    | None = None,
) -> None:
    """Exposure, inches, that fills a height with whole courses, and every mark from the bottom.

    A bare exposure is the greatest allowed (the count rounds up); a target takes the nearest count; a count that is said
    is kept to. Where the courses start at `begins`, the height is that of the top from the same zero, and so are the marks.
    Refuses an exposure higher than the wall, and a range that no whole number of courses meets. Source: common practice of
    the story pole.
    """
    foot = Fraction(0)
    if begins is not None:
        foot = _exact(work, begins)
        work.refuse_when(
            work.value(begins) >= work.value(height),
            f"the courses can't start at {work.text(begins)} and end at {work.text(height)}: say the two again",
        )
        height = work.step("height to fill", height - begins, "from where the courses start to where they end", "in")
    if count is not None:
        refuse_crowd(work, work.value(count), "courses", height)
        if exposure is not None:
            _refuse_over(work, height, count, exposure)
        even = _lay_out(work, height, count, foot)
        if exposure is not None:
            work.also("change from what you said", even - exposure, "in")
        return
    if exposure is None:
        raise NeedMore("exposure")
    work.refuse_when(
        work.value(exposure) > work.value(height),
        f"a course of {work.text(exposure)} is higher than the wall of {work.text(height)}: check the exposure and the height",
    )
    refuse_crowd(work, work.value(height / exposure), "courses", exposure)
    courses = _count(work, height, exposure, meant)
    if least is not None:
        _refuse_out_of_range(work, height, exposure, least, courses)
    even = _lay_out(work, height, courses, foot)
    work.also("change from what you said", even - exposure, "in")
    if meant is Meant.GREATEST:
        work.check("one course fewer would not reach", (courses - 1) * exposure, "<=", height)


def _refuse_over(work: Working, height: Term, count: Term, exposure: Term) -> None:
    """So many courses may come out a little over what was said with them, but no more than that."""
    even, whole = height / count, ceil(height / exposure)
    work.refuse_when(
        work.value(even - exposure) > OVER,
        f"{work.text(count)} courses on {work.text(height)} are {work.text(even, 'in')} each, over the {work.text(exposure)} "
        f"you said: say {work.text(whole, 'count')} courses, or the exposure again",
    )


def _lay_out(work: Working, height: Term, courses: Term, start: Fraction) -> Term:
    """The exposure of so many courses on a height, and their marks and the pole from where they start."""
    even = work.answer("exposure", height / courses, "the same for every course, so the last lands on the top", "in")
    work.also("courses", courses)
    _drift(work, even, courses)
    top = start + _exact(work, height)
    marks = courses_between(start, top, int(work.value(courses)))
    put_marks(work, marks)
    work.check("courses times exposure is the height", courses * even, "=", height)
    _check_marks(work, marks, start, height)
    work.caution(POLE_CAUTION, HEIGHT_CAUTION)
    work.source("common practice: the story pole")
    draw_pole(work, marks, float(top))
    return even


def _count(work: Working, height: Term, exposure: Term, meant: Meant) -> Term:
    if meant is Meant.TARGET:
        whole = larger(1, nearest(height / exposure, 1))
        return work.step("courses", whole, "the nearest whole number of courses", "count")
    return work.step("courses", ceil(height / exposure), "whole courses, none over that exposure", "count")


def _refuse_out_of_range(work: Working, height: Term, exposure: Term, least: Term, courses: Term) -> None:
    work.refuse_when(
        work.value(least) > work.value(exposure),
        f"the least exposure of {work.text(least)} is more than the greatest of {work.text(exposure)}: say them again",
    )
    if work.value(height / courses) >= work.value(least):
        return
    fewer = courses - 1
    over = f"{work.text(fewer, 'count')} courses at {work.text(height / fewer, 'in')}, over the greatest, or "
    work.refuse_when(
        True,
        f"no whole number of courses fills {work.text(height)} with an exposure from {work.text(least)} to "
        f"{work.text(exposure)}: the nearest are {over if work.value(fewer) > 0 else ''}"
        f"{work.text(courses)} at {work.text(height / courses, 'in')}, under the least",
    )


def _drift(work: Working, even: Term, courses: Term) -> None:
    """What stepping off the rounded exposure would do by the top: why the marks are cumulative."""
    tape = nearest(even, work.tape_step)
    if not work.metric and work.value(tape - even) != 0:
        work.also("error at the top if stepped off course by course", courses * (tape - even), "in")


def _check_marks(work: Working, marks: list[Mark], start: Fraction, height: Term) -> None:
    """The courses laid one on the other must end at the height, and no read mark may stand off its place."""
    steps = [Fraction(marks[0].at) - start, *(Fraction(b.at) - Fraction(a.at) for a, b in pairwise(marks))]
    work.check("the courses laid one on the other", work.term("all courses", sum(steps, Fraction(0)), "in"), "=", height)
    unit = Fraction(10, 254) if work.metric else work.tape_step
    worst = max(abs(to_nearest(mark.at, unit) - mark.at) for mark in marks)
    work.check("the mark furthest off, once read from the tape",
               work.term("worst", worst, "in"), "<=", work.term("half a mark", unit / 2, "in"))  # fmt: skip


def _exact(work: Working, height: Term) -> Fraction:
    value = work.value(height)
    assert isinstance(value, Fraction)
    return value


@topic("height of courses", "courses")
def height_of_courses(
    work: Working,
    count: Annotated[Count, Slot("How many courses?", least=1, most=2000, cued=True, name="courses", usual=(1, 150))],
    exposure: Exposure,
) -> None:
    """How high so many courses come at an exposure, inches, from the bottom of the first to the top of the last.

    Refuses a count that is not whole. Source: arithmetic.
    """
    height = work.answer("height", count * exposure, "every course shows as much", "in", "height")
    work.check("the height in courses of that exposure", height / exposure, "=", count)
    work.caution(POLE_CAUTION, HEIGHT_CAUTION)
