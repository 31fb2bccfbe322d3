"""Air, vents, falls, water and cold against values from outside; each names its source."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import psychrolib
import pytest

from solvers.quantities import Percent, Ratio, Temperature
from tests.working import also, answer, work

psychrolib.SetUnitSystem(psychrolib.SI)


def warm(value: float | str, unit: str) -> Temperature:
    return Temperature(Fraction(str(value)), unit)


def damp(value: float | str) -> Percent:
    return Percent(Fraction(str(value)), "percent")


def lines(topic: str, **givens: Any) -> dict[str, str]:
    worked = work(topic, **givens)
    assert worked.working is not None, worked.refused or worked.asks
    return {line.name: line.text for line in worked.working.also_lines}


# ── dew and frost ──


@pytest.mark.parametrize(
    ("celsius", "humidity", "expected"),
    [(20, 50, 9.27), (25, 60, 16.70), (21, 40, 6.90), (30, 70, 23.93), (10, 80, 6.71), (35, 50, 23.02), (0, 90, -1.27)],
)
def test_dew_point_table(celsius: int, humidity: int, expected: float) -> None:
    """LIB psychrolib and CoolProp, °C, to two decimals; the last is a frost point, over ice."""
    assert answer("dew point", temperature=warm(celsius, "degC"), humidity=damp(humidity)) == pytest.approx(
        expected, abs=0.05
    )


@pytest.mark.parametrize(
    ("fahrenheit", "humidity", "expected"),
    [(70, 50, 50.53), (68, 40, 42.81), (75, 60, 60.19), (80, 70, 69.34), (90, 50, 68.86), (70, 40, 44.60)],
)
def test_dew_point_in_fahrenheit(fahrenheit: int, humidity: int, expected: float) -> None:
    """LIB psychrolib in IP units, °F."""
    assert answer("dew point", temperature=warm(fahrenheit, "degF"), humidity=damp(humidity)) == pytest.approx(
        expected, abs=0.09
    )


@pytest.mark.parametrize("celsius", [-30, -15, -5, -1, 1, 5, 12, 20, 28, 40])
@pytest.mark.parametrize("humidity", [10, 30, 55, 80, 95, 100])
def test_dew_point_beside_psychrolib(celsius: int, humidity: int) -> None:
    """LIB psychrolib 2.5: dew point over water, frost point over ice, a tenth of a degree over the whole range."""
    expected = psychrolib.GetTDewPointFromRelHum(celsius, humidity / 100)
    assert answer("dew point", temperature=warm(celsius, "degC"), humidity=damp(humidity)) == pytest.approx(
        expected, abs=0.1
    )


def test_the_frost_point_is_named_and_lies_over_the_dew_point() -> None:
    """LIB psychrolib for −1.27; Magnus over water −1.45 (WMO constants, from memory): a few tenths apart."""
    worked = work("dew point", temperature=warm(0, "degC"), humidity=damp(90))
    assert worked.working is not None and "frost point" in worked.working.said
    assert also(worked, "dew point over water") == pytest.approx(-1.45, abs=0.02)


def test_saturated_air_is_at_its_dew_point() -> None:
    """By definition: at 100 % the dew point is the temperature."""
    assert answer("dew point", temperature=warm(12, "degC"), humidity=damp(100)) == pytest.approx(12, abs=1e-9)


# ── attic and soffit vents: IRC R806.2 (published) and NBC 9.19.1.2 (published); arithmetic ──


@pytest.mark.parametrize(
    ("area", "ratio", "inches"),
    [("1500 ft2", 150, 1440), ("1500 ft2", 300, 720), ("2400 ft2", 150, 2304), ("2400 ft2", 300, 1152)],
)
def test_vent_area(area: str, ratio: int, inches: float) -> None:
    assert answer("vent area", area=area, ratio=Ratio(Fraction(1, ratio), "ratio")) == pytest.approx(inches)


@pytest.mark.parametrize(("ratio", "square_metres"), [(300, 0.40), (150, 0.80)])
def test_vent_area_of_a_metric_ceiling(ratio: int, square_metres: float) -> None:
    """Ontario Building Code 9.19.1.2 (published): 1/300 of 120 m² is 0.40 m²."""
    assert answer("vent area", area="120 m2", ratio=Ratio(Fraction(1, ratio), "ratio")) == pytest.approx(square_metres)


# ── the rain screen: NBC 9.27.2.2.(1) (published), at least 10 mm ──


def test_three_eighths_is_under_ten_millimetres() -> None:
    """16 CFR 500.19 (published): 3/8 in is 9.525 mm, 0.475 mm short of the 10 mm of NBC 9.27.2.2."""
    worked = work("air gap", depth="3/8 in")
    assert also(worked, "against 10 mm") == pytest.approx(-0.475)
    assert lines("air gap", depth="3/8 in")["by the 10 mm rule"] == "not deep enough"
    assert lines("air gap", depth="10 mm")["by the 10 mm rule"] == "deep enough"


# ── falls ──


def test_a_sill_falls_six_in_a_hundred() -> None:
    """NBC 9.27.3.8.(4) (published): 6 % outward; a 2 in sill falls 0.12 in, and 6 % is 3.434°."""
    worked = work("fall", width="2 in", slope=damp(6))
    assert answer("fall", width="2 in", slope=damp(6)) == pytest.approx(0.12)
    assert also(worked, "angle from level") == pytest.approx(3.434, abs=5e-4)
    assert answer("fall", width="12 in", slope=damp(6)) == pytest.approx(0.72)


# ── water and ice ──


def test_ice_takes_a_tenth_more_room() -> None:
    """Published tabulated densities 999.8426 and 916.9076 kg/m³: +9.0 to 9.1 % on freezing."""
    worked = work("water in a channel", width="1 in", depth="1 in", length="10 ft")
    assert also(worked, "growth on freezing") == pytest.approx(9.07, abs=0.05)
    assert also(worked, "rise on freezing") == pytest.approx(0.0907, abs=5e-4)


def test_a_gallon_of_channel() -> None:
    """NIST Handbook 44, Appendix C (published): 231 in³ to the US gallon; 8.34 lb to the gallon (from memory)."""
    worked = work("water in a channel", width="1 in", depth="231/12 in", length="1 ft")
    assert answer("water in a channel", width="1 in", depth="231/12 in", length="1 ft") == pytest.approx(231)
    assert also(worked, "weight of the water") == pytest.approx(8.34, abs=0.02)


@pytest.mark.parametrize(
    ("gap", "millimetres"),
    [("1/16 in", 9.36), ("3/8 in", 1.56), ("1/8 in", 4.68), ("1/4 in", 2.34), ("1 mm", 14.86), ("10 mm", 1.49)],
)
def test_height_of_a_water_film(gap: str, millimetres: float) -> None:
    """Parallel plates, h = 2σ/(ρ g d) (published derivation); σ 72.75 mN/m at 20 °C (CRC, from memory)."""
    worked = work("water in a channel", width=gap, depth="1 in", length="1 ft")
    assert also(worked, "water hangs, mouth down, at most") * 25.4 == pytest.approx(millimetres, rel=0.003)
