"""Triangles and arcs against values from outside; each with its source."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from tests.working import also, answer, work

# The framing-square table, common rafter per foot of run, printed to 2 decimals; degrees from the same table.
# published: US Navy Builder manual (NAVEDTRA 14044) for 7; the other rows geometry, hypot(12, rise).
RAFTERS = [(3, 12.37, 14.036), (4, 12.65, 18.435), (6, 13.42, 26.565), (7, 13.89, 30.256), (8, 14.42, 33.690),
           (10, 15.62, 39.806), (12, 16.97, 45.000)]  # fmt: skip


@pytest.mark.parametrize(("rise", "slope", "angle"), RAFTERS)
def test_rafter_table(rise: int, slope: float, angle: float) -> None:
    worked = work("right triangle", rise=f"{rise} in", run="12 in")
    assert answer("right triangle", rise=f"{rise} in", run="12 in") == pytest.approx(slope, abs=0.005)
    assert also(worked, "angle") == pytest.approx(angle, abs=0.0005)


def test_rafter_of_a_sixteen_foot_span() -> None:
    """published: NAVEDTRA 14044, 7 in 12 over an 8 ft run is 9 ft 3 1/8 in."""
    worked = work("right triangle", rise="56 in", run="8 ft")
    assert worked.working and worked.working.result
    assert worked.working.result.text == "111 1/8 in (9 ft 3 1/8 in)"


@pytest.mark.parametrize(
    ("side", "other", "diagonal"),
    [
        ("3 ft", "4 ft", 60),
        ("12 ft", "16 ft", 240),
        ("5 ft", "12 ft", 156),
        ("8 ft", "15 ft", 204),
        ("20 in", "21 in", 29),
    ],
)
def test_whole_number_right_triangles(side: str, other: str, diagonal: int) -> None:
    """geometry: the right triangles with whole sides."""
    assert answer("square check", side=side, other_side=other) == diagonal


def test_three_four_five_of_a_deck() -> None:
    """common practice: the biggest 3-4-5 in whole feet; 12 × 16 takes 12-16-20."""
    worked = work("square check", side="12 ft", other_side="16 ft")
    legs = [also(worked, f"3-4-5, {leg}") / 12 for leg in ("short leg", "long leg", "diagonal")]
    assert legs == [12, 16, 20]


@pytest.mark.parametrize(("working_length", "base", "height"), [(16, 4, 15.492), (20, 5, 19.365), (24, 6, 23.238)])
def test_ladder_table(working_length: int, base: int, height: float) -> None:
    """published: 29 CFR 1926.1053, a quarter of the working length out; the height it reaches is geometry."""
    rise = answer("right triangle", slope=f"{working_length} ft", run=f"{base} ft")
    assert rise / 12 == pytest.approx(height, abs=0.0005)
    worked = work("right triangle", slope=f"{working_length} ft", run=f"{base} ft")
    assert also(worked, "angle") == pytest.approx(75.522, abs=0.0005)


# geometry, the formula r = h/2 + s²/8h as published on a public boards thread; radius exact, arc to 3 decimals.
ARCS = [(72, 12, 60, 77.220), (60, 18, 34, 73.497), (96, 24, 60, 111.275), (30, 15, 15, 47.124)]


@pytest.mark.parametrize(("width", "rise", "radius", "length"), ARCS)
def test_arc_table(width: int, rise: int, radius: int, length: float) -> None:
    worked = work("arc", width=f"{width} in", rise=f"{rise} in")
    assert answer("arc", width=f"{width} in", rise=f"{rise} in") == radius
    assert also(worked, "arc length") == pytest.approx(length, abs=0.0005)
    assert answer("arc", width=f"{width} in", radius=f"{radius} in") == pytest.approx(rise, abs=1e-9)


def test_arc_angle() -> None:
    """geometry: a 72 in chord with 12 in of rise turns 73.740°."""
    assert also(work("arc", width="72 in", rise="12 in"), "angle the arc turns") == pytest.approx(73.740, abs=0.0005)


def test_offsets_lie_on_the_circle() -> None:
    """LIB numpy: a circle through the two ends and the crown, fitted by least squares, passes through every mark."""
    worked = work("arc", width="41 1/2 in", rise="6 3/4 in", every="3 in")
    assert worked.working
    places = [*(3 * i for i in range(14)), 41.5]
    heights = [float(mark.value or 0) for mark in worked.working.marks]
    assert len(heights) == len(places)
    rows = np.array([[2 * x, 2 * y, 1] for x, y in ((0, 0), (41.5, 0), (20.75, 6.75))])
    centre_x, centre_y, rest = np.linalg.solve(
        rows, np.array([x * x + y * y for x, y in ((0, 0), (41.5, 0), (20.75, 6.75))])
    )
    radius = np.sqrt(rest + centre_x**2 + centre_y**2)
    away = np.hypot(np.array(places) - centre_x, np.array(heights) - centre_y)
    assert np.allclose(away, radius, atol=1e-9)


def test_out_of_square_by_coordinates() -> None:
    """LIB numpy: a frame built leaning by 1/2 in over 8 ft × 10 ft, its diagonal taped, is found leaning by 1/2 in."""
    lean, up = 0.5, np.sqrt(120.0**2 - 0.5**2)
    taped = float(np.hypot(96 + lean, up))
    worked = work("out of square", side="96 in", other_side="120 in", diagonal=f"{Fraction(taped)} in")
    assert also(worked, "slide it back along the first side") == pytest.approx(lean, abs=1e-9)
    corner = np.degrees(np.arccos((96.0**2 + 120.0**2 - taped**2) / (2 * 96 * 120)))
    assert also(worked, "corner facing the measured diagonal") == pytest.approx(corner)
    assert corner > 90
    assert also(worked, "other diagonal, if opposite sides are equal") == pytest.approx(np.hypot(96 - lean, up))
