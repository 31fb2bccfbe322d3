"""Circles: how far round, and their area."""

from __future__ import annotations

from math import pi

import pytest

from tests.talking import last
from tests.working import also, answer, work


@pytest.mark.parametrize(
    ("given_", "inches"),
    [({"across": "36 in"}, 113.0973), ({"across": "10 in"}, 31.4159), ({"circle_radius": "18 in"}, 113.0973)],
)
def test_how_far_round(given_: dict[str, str], inches: float) -> None:
    """Geometry: π to four decimals by hand."""
    assert answer("circle", **given_) == pytest.approx(inches, abs=1e-3)


def test_area_is_pi_r_squared() -> None:
    assert also(work("circle", across="48 in"), "area") == pytest.approx(pi * 2**2, rel=1e-6)


def test_across_and_a_radius_that_is_not_half_of_it_are_refused() -> None:
    assert "leave one out" in work("circle", across="36 in", circle_radius="20 in").refused
    assert "across" in work("circle").asks


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("what is the circumference of a 10 inch post", 31.4159),
        ("circumference of a 300 mm duct", 942.478),
        ("area of a circle 4 foot across", 12.5664),
        ("what's the area of a 12 foot circle", 113.097),
    ],
)
def test_circles_as_asked(line: str, value: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("circle", pytest.approx(value, rel=1e-4))


def test_a_half_circle_is_an_arc() -> None:
    line = "Round head trim, 36 wide and a full half circle, how long is it round the curve"
    assert last(line)["topic"] == "arc"
