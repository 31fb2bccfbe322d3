"""Ladders and fasteners against the regulations; each value names its source."""

from __future__ import annotations

from fractions import Fraction

import pytest

from solvers.quantities import Length
from solvers.slots import Layer
from tests.working import also, answer, work

# 29 CFR 1926.1053(b)(5)(i) (published wording): the foot a quarter of the working length out. Geometry:
# support height, working length, foot out, feet.
QUARTER_OF_THE_LENGTH = [
    ("15.491933", 16, 4.0),
    ("19.364917", 20, 5.0),
    ("23.237900", 24, 6.0),
    ("12", 12.394, 3.098),
    ("18", 18.590, 4.648),
]


@pytest.mark.parametrize(("height", "length", "out"), QUARTER_OF_THE_LENGTH)
def test_a_quarter_of_the_working_length(height: str, length: float, out: float) -> None:
    worked = work("ladder footing", height=f"{height} ft")
    by_rule = also(worked, "a quarter of the working length")
    assert by_rule / 12 == pytest.approx(out, abs=1e-3)
    assert (by_rule**2 + (12 * float(height)) ** 2) ** 0.5 / 12 == pytest.approx(length, abs=1e-3)


def test_the_angle_of_the_rule() -> None:
    """29 CFR 1926.1053(a)(1)(ii) (published): ladders tested at 75 1/2°; acos(1/4) is 75.522°, atan(4) 75.964°."""
    worked = work("ladder footing", height="16 ft")
    assert also(worked, "angle, a quarter of the working length") == pytest.approx(75.5, abs=0.05)
    assert also(worked, "angle, a quarter of the height") == pytest.approx(75.964, abs=5e-4)


def test_rails_past_the_landing() -> None:
    """29 CFR 1926.1053(b)(1) (published): 3 ft above the landing; geometry: 36 in up is 36 √17/4 in along."""
    worked = work("ladder footing", height="12 ft")
    more = also(worked, "length for 3 ft past the landing") - also(worked, "working length")
    assert more == pytest.approx(36 * 17**0.5 / 4)


def test_vinyl_nail() -> None:
    """IRC R703.11.1.2 (from memory): 1 1/4 in into the substrate; 1/2 in sheathing and a 1/2 in hem, 2 1/4 in nail."""
    layers = (Layer(Length(Fraction(1, 2), "in"), "siding"), Layer(Length(Fraction(1, 2), "in"), "sheathing"))
    worked = work("fastener length", layers=layers, penetration="5/4 in")
    assert answer("fastener length", layers=layers, penetration="5/4 in") == pytest.approx(2.25)
    assert also(worked, "next stocked length") == pytest.approx(2.25)
