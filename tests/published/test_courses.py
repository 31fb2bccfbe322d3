"""Course layouts and spacings against values from outside; each with its source."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from shapely import LineString, Polygon

from solvers.registry import Worked
from solvers.topics.courses import Meant
from solvers.topics.spacing import Ends
from tests.working import also, answer, work


def marks(worked: Worked) -> list[float]:
    assert worked.working is not None, worked.refused or worked.asks
    return [float(mark.value or 0) for mark in worked.working.marks]


@pytest.mark.parametrize(
    ("height", "target", "courses", "exposure"), [("61", "10", 6, 10 + 1 / 6), ("31", "10", 3, 10 + 1 / 3)]
)
def test_courses_over_a_window(height: str, target: str, courses: int, exposure: float) -> None:
    """published: US Navy Builder manual NAVEDTRA 14044, fig. 4-3, 12-in siding at about 10."""
    worked = work("course layout", height=f"{height} in", exposure=f"{target} in", meant=Meant.TARGET)
    assert answer("course layout", height=f"{height} in", exposure=f"{target} in", meant=Meant.TARGET) == pytest.approx(
        exposure
    )
    assert also(worked, "courses") == courses


def test_both_zones_of_that_window_at_once() -> None:
    """published: the same figure as one wall, sill at 31, head at 92: 3 courses and 6."""
    worked = work("courses to openings", sill="31 in", head="92 in", top="92 in", least="10 in", greatest="10 1/2 in")
    assert also(worked, "courses bottom to sill") == 3
    assert also(worked, "exposure bottom to sill") == pytest.approx(10 + 1 / 3)
    assert answer("courses to openings", sill="31 in", head="92 in", top="92 in", least="10 in",
                  greatest="10 1/2 in") == pytest.approx(10 + 1 / 6)  # fmt: skip


# geometry: height over the whole count that keeps each course at the greatest or under.
LAYOUTS = [
    ("108 in", "7 in", 16, 6.75),
    ("96 in", "4 in", 24, 4.0),
    ("102 in", "8 in", 13, 102 / 13),
    ("54 in", "6 in", 9, 6.0),
]


@pytest.mark.parametrize(("height", "greatest", "courses", "exposure"), LAYOUTS)
def test_greatest_exposure(height: str, greatest: str, courses: int, exposure: float) -> None:
    worked = work("course layout", height=height, exposure=greatest)
    assert also(worked, "courses") == courses
    assert answer("course layout", height=height, exposure=greatest) == pytest.approx(exposure)
    assert len(marks(worked)) == courses


def test_risers_divide_as_courses_do() -> None:
    """from memory: IRC R311.7, riser at most 7 3/4; 107 in takes 14 at 7.643, 7 5/8 on the tape."""
    worked = work("course layout", height="107 in", exposure="7 3/4 in")
    assert worked.working and worked.working.result
    assert also(worked, "courses") == 14
    assert worked.working.result.text == "7 5/8 in"
    assert answer("course layout", height="107 in", exposure="7 3/4 in") == pytest.approx(7.643, abs=0.0005)


def test_remainder_is_spread_over_all_courses() -> None:
    """published: Griffith, Carpentry, 'Siding': what is left over is shared by all courses, not left to the last."""
    spots = [0.0, *marks(work("course layout", height="102 3/4 in", exposure="6 1/2 in"))]
    widths = np.diff(spots)
    assert np.allclose(widths, widths[0], atol=1e-12)
    assert spots[-1] == 102.75


@pytest.mark.parametrize(("spacing", "count"), [("16 in", 7), ("19 1/5 in", 6), ("24 in", 5)])
def test_marks_that_land_on_eight_feet(spacing: str, count: int) -> None:
    """common practice: a tape marks 16, 19.2 and 24 in because each lands on 8 ft."""
    worked = work("marks on centre", length="8 ft", spacing=spacing)
    assert also(worked, "last mark") == 96
    assert len(marks(worked)) == count


@pytest.mark.parametrize(
    ("pitch", "exposure", "step"),
    [("6 in12", "8 in", 16), ("12 in12", "5 in", 5), ("4 in12", "4 in", 12), ("8 in12", "4 in", 6)],
)
def test_step_at_the_rake_is_the_gable_stud_rule_turned_round(pitch: str, exposure: str, step: float) -> None:
    """common practice: gable studs 16 in apart at 6 in 12 differ by 8 in, so an 8 in course steps 16 in."""
    assert answer("step at the rake", pitch=pitch, exposure=exposure) == step


@pytest.mark.parametrize(("width", "rise", "exposure"), [(288, 6, 7), (240, 8, 6), (336, 5, 6.5), (150, 8, 7.25)])
def test_gable_courses_cut_out_of_a_triangle(width: int, rise: int, exposure: float) -> None:
    """LIB shapely: the lower edge of each course is the line it cuts through the gable."""
    height = width / 2 * rise / 12
    gable = Polygon([(0, 0), (width, 0), (width / 2, height)])
    worked = work("gable courses", width=f"{width} in", pitch=f"{rise} in12", exposure=f"{int(exposure * 4)}/4 in")
    lengths = marks(worked)
    cuts = [
        gable.intersection(LineString([(-1, i * exposure), (width + 1, i * exposure)])).length
        for i in range(len(lengths))
    ]
    assert lengths == pytest.approx(cuts)
    assert also(worked, "total length") == pytest.approx(sum(cuts))
    assert len(lengths) * exposure >= height > (len(lengths) - 1) * exposure


def test_equal_spacing_is_linspace() -> None:
    """LIB numpy: five 3 1/2 in pieces in 96 in start where linspace puts them."""
    worked = work("equal spacing", length="96 in", width="3 1/2 in", count="5 count")
    assert marks(worked) == pytest.approx(list(np.linspace(0, 96 - 3.5, 5)))
    both = work("equal spacing", length="20 ft", width="5 1/2 in", count="6 count", ends=Ends.BOTH)
    gap = answer("equal spacing", length="20 ft", width="5 1/2 in", count="6 count", ends=Ends.BOTH)
    assert marks(both) == pytest.approx(list(np.linspace(gap, 240 - 5.5 - gap, 6)))


def test_divide_evenly_is_linspace() -> None:
    """LIB numpy: 91 3/8 in five parts."""
    parts = marks(work("divide evenly", length="91 3/8 in", parts="5 count"))
    assert parts == pytest.approx(list(np.linspace(0, 91.375, 6))[1:-1])


@pytest.mark.parametrize(("width", "cover", "rip", "full"), [("388 in", "16 in", 10, 23), ("173 in", "12 in", 8.5, 13),
                                                             ("116 in", "10 in", 8, 10)])  # fmt: skip
def test_balanced_panels(width: str, cover: str, rip: float, full: int) -> None:
    """common practice: take one whole panel off and share it with the rest between both ends."""
    worked = work("balanced panels", width=width, cover=cover)
    assert answer("balanced panels", width=width, cover=cover) == rip
    assert also(worked, "full panels") == full
    assert all(b > a for a, b in pairwise(marks(worked)))


@pytest.mark.parametrize(
    ("length", "spacing", "count"), [("32 ft", "16 in", 25), ("40 ft", "24 in", 21), ("14 ft", "19 1/5 in", 10)]
)
def test_straps(length: str, spacing: str, count: int) -> None:
    """common practice: studs for a wall, its length over the spacing, rounded up, and one more."""
    assert answer("strapping", length=length, spacing=spacing) == count
