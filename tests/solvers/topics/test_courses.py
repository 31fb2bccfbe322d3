"""Courses, panels and spacing: what must hold for any wall, and what must be refused."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Length
from solvers.registry import Worked
from solvers.slots import Opening
from solvers.stagger import lengths_between, row_joints
from solvers.tape import nearest
from solvers.topics.courses import Meant
from solvers.topics.spacing import Ends
from solvers.zones import Zone, smallest_spread
from tests.working import also, answer, work

SIXTEENTH = Fraction(1, 16)
EIGHTHS = st.integers(8 * 40, 8 * 200)  # walls of 40 to 200 in, to an eighth
EXPOSURES = st.integers(8 * 3, 8 * 12)


def inches(eighths: int) -> str:
    return f"{eighths}/8 in"


def marks(worked: Worked) -> list[Fraction]:
    assert worked.working is not None, worked.refused or worked.asks
    values = [mark.value for mark in worked.working.marks]
    return [Fraction(value) for value in values if isinstance(value, Fraction)]


@settings(max_examples=60, deadline=None)
@given(EIGHTHS, EXPOSURES, st.sampled_from(Meant))
def test_courses_times_exposure_is_the_height(height: int, exposure: int, meant: Meant) -> None:
    worked = work("course layout", height=inches(height), exposure=inches(exposure), meant=meant)
    found = marks(worked)
    assert found[-1] == Fraction(height, 8)
    assert len(found) == also(worked, "courses")
    even = found[0]
    assert all(b - a == even for a, b in pairwise(found))
    if meant is Meant.GREATEST:
        assert even <= Fraction(exposure, 8) < Fraction(height, 8) / (len(found) - 1 or Fraction(1, 10**9))


@settings(max_examples=60, deadline=None)
@given(EIGHTHS, EXPOSURES)
def test_no_mark_drifts(height: int, exposure: int) -> None:
    """Each mark as read from the tape stands within 1/32 of where equal courses put it; the last on the height."""
    worked = work("course layout", height=inches(height), exposure=inches(exposure))
    assert worked.working
    found = marks(worked)
    for i, mark in enumerate(found, 1):
        true = Fraction(height, 8) * i / len(found)
        assert abs(nearest(mark, SIXTEENTH) - true) <= Fraction(1, 32)
    assert worked.working.marks[-1].text.startswith(str(int(Fraction(height, 8))))


def test_two_hundred_marks_have_no_gap() -> None:
    worked = work("course layout", height="1391 3/10 in", exposure="6987/1000 in")
    assert len(marks(worked)) == 200


@settings(max_examples=60, deadline=None)
@given(st.lists(st.integers(16, 400), min_size=1, max_size=4), st.integers(16, 80), st.integers(0, 24))
def test_smallest_spread_is_the_smallest(heights: list[int], least: int, room: int) -> None:
    """Against every combination of whole counts."""
    low, high = Fraction(least, 8), Fraction(least + room, 8)
    tops = [Fraction(sum(heights[:i]), 8) for i in range(len(heights) + 1)]
    zones = [Zone(str(i), a, b) for i, (a, b) in enumerate(pairwise(tops))]
    ranges = [[n for n in range(1, 60) if low <= zone.height / n <= high] for zone in zones]
    combinations = [
        max(exposures) - min(exposures)
        for counts in product(*ranges)
        if (exposures := [zone.height / n for zone, n in zip(zones, counts, strict=True)])
    ]
    found = smallest_spread(zones, low, high)
    if not combinations:
        assert found is None
        return
    assert found is not None
    exposures = [zone.height / n for zone, n in zip(zones, found, strict=True)]
    assert all(low <= e <= high for e in exposures)
    assert max(exposures) - min(exposures) == min(combinations)


@settings(max_examples=40, deadline=None)
@given(st.integers(20, 50), st.integers(51, 90), st.integers(91, 130))
def test_courses_land_on_every_line(sill: int, head: int, top: int) -> None:
    worked = work(
        "courses to openings", sill=f"{sill} in", head=f"{head} in", top=f"{top} in", least="5 in", greatest="8 in"
    )
    if worked.refused:
        assert "no exposure from 5 in to 8 in" in worked.refused
        return
    found = marks(worked)
    assert {sill, head, top} <= set(found)
    assert all(5 <= b - a <= 8 for a, b in pairwise([Fraction(0), *found]))


def test_courses_land_on_a_second_opening() -> None:
    more = (Length(Fraction(20), "in"), Length(Fraction(90), "in"))
    worked = work(
        "courses to openings", sill="40 in", head="80 in", top="110 in", least="4 in", greatest="7 in", lengths=more
    )
    assert {20, 40, 80, 90, 110} <= set(marks(worked))


def test_no_landing_says_what_each_way_out_costs() -> None:
    worked = work("courses to openings", sill="36 in", head="84 in", top="112 in", least="6 7/8 in", greatest="7 in")
    assert worked.working is None
    for part in (
        "lands on the sill",
        "5 courses at 7 3/16 in",
        "6 courses at 6 in",
        "rip the course at the sill to 1 in",
    ):
        assert part in worked.refused


@settings(max_examples=40, deadline=None)
@given(st.integers(60, 400), st.integers(2, 24), st.integers(32, 80))
def test_gable_courses_get_shorter_by_twice_the_step(width: int, rise: int, exposure: int) -> None:
    worked = work("gable courses", width=f"{width} in", pitch=f"{rise} in12", exposure=inches(exposure))
    if worked.refused:
        assert Fraction(exposure, 8) > Fraction(width, 2) * rise / 12
        return
    found = marks(worked)
    step = answer("step at the rake", pitch=f"{rise} in12", exposure=inches(exposure))
    assert found[0] == width
    assert all(float(a - b) == pytest.approx(2 * step) for a, b in pairwise(found))
    assert float(found[-1]) <= 2 * step + 1e-9


@settings(max_examples=60, deadline=None)
@given(st.integers(100, 500), st.integers(96, 192), st.sampled_from([12, 16, 24]), st.sets(st.integers(-8, 8)))
def test_row_joints_are_on_studs_and_the_fewest(width: int, stock: int, spacing: int, taken: set[int]) -> None:
    """Against every choice of studs, by counting boards outward from the left end."""
    left, right = Fraction(-width, 2), Fraction(width, 2)
    avoid = frozenset(Fraction(t * spacing) for t in taken)
    found = row_joints(left, right, Fraction(stock), Fraction(spacing), avoid)
    studs = [
        Fraction(i * spacing)
        for i in range(-30, 31)
        if left + spacing <= i * spacing <= right - spacing and Fraction(i * spacing) not in avoid
    ]
    fewest = _fewest(left, right, Fraction(stock), studs)
    if found is None:
        assert fewest is None
        return
    assert all(joint in studs for joint in found)
    assert all(0 < length <= stock for length in lengths_between(left, right, found))
    assert len(found) == fewest


def _fewest(left: Fraction, right: Fraction, stock: Fraction, studs: list[Fraction]) -> int | None:
    """The fewest joints, by trying all studs breadth first."""
    reached, joints = {left}, 0
    while reached:
        if any(right - place <= stock for place in reached):
            return joints
        reached = {stud for stud in studs if any(0 < stud - place <= stock for place in reached)}
        joints += 1
    return None


def test_gable_joints_miss_the_row_below() -> None:
    worked = work("gable courses", width="40 ft", pitch="6 in12", exposure="7 in", stock="12 ft", studs="16 in")
    assert worked.working
    assert any("miss those of the row below" in check["what"] and check["holds"] for check in worked.working.checks)
    assert also(worked, "boards in all") > also(worked, "courses")


@settings(max_examples=60, deadline=None)
@given(st.integers(8 * 20, 8 * 600), st.integers(8 * 4, 8 * 48))
def test_panels_balance(width: int, cover: int) -> None:
    worked = work("balanced panels", width=inches(width), cover=inches(cover))
    if width <= cover:
        assert "already covers" in worked.refused
        return
    rip = answer("balanced panels", width=inches(width), cover=inches(cover))
    assert cover / 16 <= rip <= cover / 8
    full = also(worked, "full panels") - (2 if width % cover == 0 else 0)
    assert 2 * rip + full * cover / 8 == pytest.approx(width / 8)


@settings(max_examples=60, deadline=None)
@given(st.integers(2, 40), st.integers(4, 40), st.integers(0, 800), st.sampled_from(Ends))
def test_pieces_and_gaps_fill_the_length(count: int, width: int, spare: int, ends: Ends) -> None:
    length = Fraction(count * width + spare, 8)
    worked = work("equal spacing", length=f"{length} in", width=inches(width), count=f"{count} count", ends=ends)
    starts = marks(worked)
    at_each_end = {Ends.BETWEEN: Fraction(0), Ends.HALF: Fraction(1, 2), Ends.BOTH: Fraction(1)}[ends]
    gap = Fraction(spare, 8) / (count - 1 + 2 * at_each_end)
    last = starts[-1] + Fraction(width, 8)
    assert starts[0] == length - last == gap * at_each_end
    assert all(b - a == gap + Fraction(width, 8) for a, b in pairwise(starts))


def test_a_wanted_gap_takes_the_count_that_comes_nearest() -> None:
    gaps = {n: abs((120 - n * 2.5) / (n - 1) - 0.75) for n in range(2, 48)}
    worked = work("equal spacing", length="10 ft", width="2 1/2 in", gap="3/4 in")
    assert also(worked, "pieces") == min(gaps, key=lambda n: gaps[n])


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 4000), st.integers(16, 200), st.integers(0, 100))
def test_marks_stay_within_the_length(length: int, spacing: int, first: int) -> None:
    worked = work("marks on centre", length=inches(length), spacing=inches(spacing), first=inches(first))
    if first > length:
        assert "past the end" in worked.refused
        return
    found = marks(worked)
    assert found == [Fraction(first + i * spacing, 8) for i in range(len(found))]
    assert found[-1] <= Fraction(length, 8) < found[-1] + Fraction(spacing, 8)


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 60), st.integers(1, 5000))
def test_parts_are_equal(parts: int, length: int) -> None:
    found = [
        Fraction(0),
        *marks(work("divide evenly", length=inches(length), parts=f"{parts} count")),
        Fraction(length, 8),
    ]
    assert len(found) == parts + 1
    assert len({b - a for a, b in pairwise(found)}) == 1


@pytest.mark.parametrize(("parts", "listed"), [(400, 399), (401, 0), (1980, 0)])
def test_more_marks_than_anybody_sets_out_are_not_listed(parts: int, listed: int) -> None:
    worked = work("divide evenly", length="33 ft", parts=f"{parts} count")
    assert worked.working and worked.working.result
    assert worked.working.result.value == Fraction(33 * 12, parts)
    assert len(worked.working.marks) == listed
    assert any("not listed" in caution for caution in worked.working.cautions) == (not listed)


def test_straps_sticks_and_openings() -> None:
    plain = work("strapping", length="32 ft", height="9 ft", spacing="16 in", stock="20 ft")
    assert answer("strapping", length="32 ft", height="9 ft", spacing="16 in", stock="20 ft") == 25
    assert also(plain, "total length") == 25 * 108
    assert also(plain, "sticks") == 13  # two straps out of each 20 ft stick
    window = (Opening(2, Length(Fraction(36), "in"), Length(Fraction(48), "in"), "window"),)
    more = work("strapping", length="32 ft", height="9 ft", spacing="16 in", openings=window)
    assert also(more, "total length") == 25 * 108 + 2 * 2 * (36 + 48)


def test_stagger_pattern_comes_round_on_studs() -> None:
    worked = work("staggered joints", board="145 in", studs="16 in")
    assert answer("staggered joints", board="145 in", studs="16 in") == 16
    assert also(worked, "board cut to") == 144
    assert also(worked, "offcut of each board") == 1
    assert marks(worked) == [144 - 16 * i for i in range(9)]


@pytest.mark.parametrize(
    ("topic", "givens", "named"),
    [
        ("course layout", {"height": "10 in", "exposure": "14 in"}, "14 in"),
        ("course layout", {"height": "9 ft", "exposure": "-6 in"}, "exposure"),
        ("course layout", {"height": "20 in", "exposure": "7 in", "least": "6 3/4 in"}, "3 at 6 11/16 in"),
        ("course layout", {"height": "20 in", "exposure": "6 in", "least": "7 in"}, "least exposure of 7 in"),
        ("course layout", {"height": "900 ft", "exposure": "1/8 in"}, "check the exposure"),
        ("courses to openings",
         {"sill": "84 in", "head": "36 in", "top": "112 in", "least": "6 in", "greatest": "7 in"}, "sill at 84 in"),
        ("courses to openings",
         {"sill": "36 in", "head": "120 in", "top": "108 in", "least": "6 in", "greatest": "7 in"}, "head at 120 in"),
        ("courses to openings",
         {"sill": "36 in", "head": "84 in", "top": "108 in", "least": "8 in", "greatest": "7 in"}, "least exposure of"),
        ("step at the rake", {"pitch": "0 in12", "exposure": "7 in"}, "rake"),
        ("gable courses", {"width": "24 ft", "pitch": "0 in12", "exposure": "7 in"}, "gable"),
        ("gable courses", {"width": "2 ft", "pitch": "3 in12", "exposure": "7 in"}, "higher than the gable"),
        ("gable courses",
         {"width": "24 ft", "pitch": "3 in12", "exposure": "7 in", "stock": "20 in", "studs": "16 in"}, "can't miss"),
        ("balanced panels", {"width": "20 ft", "cover": "0 in"}, "panel cover"),
        ("equal spacing", {"length": "8 ft", "width": "10 in", "count": "12 count"}, "12 pieces"),
        ("equal spacing", {"length": "8 ft", "width": "10 in", "count": "1 count"}, "one piece"),
        ("marks on centre", {"length": "12 ft", "spacing": "0 in"}, "spacing"),
        ("strapping", {"length": "20 ft", "height": "9 ft", "spacing": "-16 in"}, "spacing"),
        ("staggered joints", {"board": "3 ft", "studs": "4 ft"}, "studs 48 in"),
        ("staggered joints", {"board": "30 in", "studs": "16 in"}, "same studs"),
        ("divide evenly", {"length": "96 in", "parts": "0 count"}, "parts"),
        ("divide evenly", {"length": "10 ft", "parts": "-3 count"}, "parts"),
    ],
)  # fmt: skip
def test_refusals_name_what_is_wrong(topic: str, givens: dict[str, object], named: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None
    assert named in worked.refused


def test_metric_in_gives_metric_out() -> None:
    worked = work("course layout", height="2650 mm", exposure="180 mm")
    assert worked.working and worked.working.result
    assert worked.working.result.unit == "mm"
    assert [mark.unit for mark in worked.working.marks] == ["mm"] * 15
    assert worked.working.marks[-1].text == "2650 mm"


def test_a_count_that_is_said_is_kept_to() -> None:
    worked = work("course layout", height="347/4 in", count="13 count")
    assert len(marks(worked)) == 13 and marks(worked)[0] == Fraction(347, 4) / 13
    assert not [given for given in worked.givens if given.source == "assumed"]  # of an exposure nobody said


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 60), EXPOSURES)
def test_a_height_of_courses_laid_out_again_has_as_many(count: int, exposure: int) -> None:
    height = answer("height of courses", count=f"{count} count", exposure=inches(exposure))
    again = answer("course layout", height=f"{Fraction(height)} in", count=f"{count} count")
    assert again == pytest.approx(exposure / 8)
