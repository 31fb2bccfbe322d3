"""Miters, bevels, polygons and gaps against values from outside the project; each names where it comes from."""

from __future__ import annotations

import pytest

from tests.working import also, answer, work

# Spring from the wall, corner: miter and bevel to the digits shown.
SPRUNG = [
    (38, 90, 31.62, 33.86),  # common practice: tables print 31.6 and 33.9 (from memory)
    (45, 90, 35.26, 30.00),  # common practice: tables print 35.3 and 30.0 (from memory)
    (38, 135, 14.31, 17.55),  # geometry, by vectors
    (45, 135, 16.32, 15.70),  # geometry
    (38, 120, 19.57, 23.20),  # geometry
    (45, 120, 22.21, 20.70),  # geometry, by vectors
    (38, 88, 32.52, 34.53),  # geometry, by vectors
    (38, 92, 30.73, 33.19),  # geometry
    (45, 88, 36.21, 30.57),  # geometry
    (45, 92, 34.33, 29.42),  # geometry
    (38, 100, 27.32, 30.43),  # geometry
    (45, 60, 50.77, 37.76),  # geometry
]


@pytest.mark.parametrize(("spring", "corner", "miter", "bevel"), SPRUNG)
def test_sprung_trim(spring: int, corner: int, miter: float, bevel: float) -> None:
    givens = {"spring": f"{spring} deg", "corner": f"{corner} deg"}
    assert round(answer("compound cut", **givens), 2) == miter
    assert round(also(work("compound cut", **givens), "bevel"), 2) == bevel


@pytest.mark.parametrize(
    ("spring", "corner", "miter", "bevel"),
    [(38, 90, "31.6°", "33.9°"), (45, 90, "35.3°", "30°"), (52, 90, "38.2°", "25.8°")],
)
def test_sprung_trim_as_tables_print_it(spring: int, corner: int, miter: str, bevel: str) -> None:
    """common practice: the printed digits of tables for sprung trim flat on the saw (from memory)."""
    working = work("compound cut", spring=f"{spring} deg", corner=f"{corner} deg").working
    assert working is not None and working.result is not None
    assert (working.result.text, working.also_lines[0].text) == (miter, bevel)


# Sides, lean from plumb: miter, bevel, angle between the faces. Geometry: bevel and dihedral by different routes.
HOPPERS = [
    (4, 10, 9.851, 44.136, 91.728),
    (4, 30, 26.565, 37.761, 104.478),
    (4, 45, 35.264, 30.000, 120.000),
    (6, 10, 5.725, 29.499, 121.003),
    (6, 30, 16.102, 25.659, 128.682),
    (8, 10, 4.114, 22.140, 135.720),
    (8, 45, 16.325, 15.700, 148.600),
]


@pytest.mark.parametrize(("sides", "lean", "miter", "bevel", "dihedral"), HOPPERS)
def test_hopper(sides: int, lean: int, miter: float, bevel: float, dihedral: float) -> None:
    """geometry: leaning sides of a box of n sides."""
    givens = {"spring": f"{lean} deg", "sides": f"{sides} count"}
    worked = work("compound cut", **givens)
    assert answer("compound cut", **givens) == pytest.approx(miter, abs=5e-4)
    assert also(worked, "bevel") == pytest.approx(bevel, abs=5e-4)
    assert also(worked, "angle between the faces") == pytest.approx(dihedral, abs=5e-4)


@pytest.mark.parametrize(("sides", "saw"), [(4, 45), (6, 30), (8, 22.5), (10, 18), (12, 15), (5, 36), (3, 60)])
def test_polygon(sides: int, saw: float) -> None:
    """geometry, and common practice in every miter table: 180 / n."""
    assert answer("polygon", sides=f"{sides} count") == saw


@pytest.mark.parametrize(("corner", "saw"), [(85, 47.5), (95, 42.5), (90, 45), (135, 22.5), (120, 30)])
def test_plain_corner(corner: int, saw: float) -> None:
    """geometry: half of what is left of a straight line."""
    assert answer("miter for a corner", corner=f"{corner} deg") == saw


# Rise in 12 and its angle: from the rafter tables of section 1 (geometry, printed on framing squares).
ANGLES = [(3, 14.036), (4, 18.435), (6, 26.565), (7, 30.256), (8, 33.690), (10, 39.806), (12, 45.000)]


@pytest.mark.parametrize(("rise", "theta"), ANGLES)
def test_cuts_on_a_gable(rise: int, theta: float) -> None:
    """geometry on the table's angles: plumb cut θ, peak θ, level joint θ/2, return (90 + θ)/2, end of a course θ."""
    pitch = f"{rise} in12"
    assert answer("plumb cut", pitch=pitch) == pytest.approx(theta, abs=5e-4)
    assert answer("peak joint", pitch=pitch) == pytest.approx(theta, abs=5e-4)
    assert answer("end cut along the rake", pitch=pitch) == pytest.approx(theta, abs=5e-4)
    assert answer("rake to level joint", pitch=pitch) == pytest.approx(theta / 2, abs=5e-4)
    assert answer("rake return", pitch=pitch) == pytest.approx((90 + theta) / 2, abs=5e-4)


def test_rake_return_of_the_first_page() -> None:
    """geometry: a 5 in 12 roof is the 5-12-13 triangle; 22.62°, 67.38°, 112.62°, saw 56.31°, edge 33.69°."""
    worked = work("rake return", pitch="5 in12")
    found = [also(worked, name) for name in ("roof angle", "corner", "turn", "edge angle")]
    assert [round(value, 2) for value in found] == [22.62, 67.38, 112.62, 33.69]
    assert round(answer("rake return", pitch="5 in12"), 2) == 56.31


def test_gap_of_the_settled_reading() -> None:
    """The project's own definition: 45/45 on a 92° corner and a 3 1/2 in face open 0.173 in."""
    assert round(answer("how far open", corner="92 deg", face="3 1/2 in", setting="45 deg"), 3) == 0.173


@pytest.mark.parametrize(("setting", "dial"), [("56.31 deg", 33.69), ("67.5 deg", 22.5), ("60 deg", 30)])
def test_square_jig(setting: str, dial: float) -> None:
    """common practice: a piece square to the fence is cut at 90° less the setting."""
    worked = work("can my saw cut it", setting=setting, limit="50 deg")
    assert also(worked, "dial against a square jig") == pytest.approx(dial)
